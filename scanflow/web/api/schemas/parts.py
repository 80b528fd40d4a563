"""What schemas are made of: the small ones that many calls share, and the ways to put them together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from typing import Any

from scanflow.vision.upright import MEDIA_TYPES
from scanflow.workflow.times import YEARS

Schema = dict[str, Any]

ID = r"^[A-Za-z0-9_-]{1,64}$"
MOST_LINES = 500


def text(most: int, least: int = 0) -> Schema:
    """A text of at most `most` characters; with `least` 1 not of spaces alone."""
    pattern = r"^[^\u0000]*[^\s\u0000][^\u0000]*$" if least else r"^[^\u0000]*$"
    return {"type": "string", "minLength": least, "maxLength": most, "pattern": pattern}


def ref(name: str) -> Schema:
    return {"$ref": f"#/components/schemas/{name}"}


def one_of(kind: type[StrEnum] | Iterable[str]) -> Schema:
    return {"type": "string", "enum": [str(each) for each in kind]}


def maybe(schema: Schema) -> Schema:
    """The same, or null."""
    if "enum" in schema:
        return {**schema, "type": ["string", "null"], "enum": [*schema["enum"], None]}
    return {**schema, "type": [schema["type"], "null"]} if "type" in schema else {"anyOf": [schema, {"type": "null"}]}


def taken(properties: Mapping[str, Schema], required: Iterable[str] = (), **more: Any) -> Schema:
    """An object of a call: unknown fields are refused."""
    return {
        "type": "object",
        "properties": dict(properties),
        "required": list(required),
        "additionalProperties": False,
        **more,
    }


def given(properties: Mapping[str, Schema], **more: Any) -> Schema:
    """An object of an answer: all fields are always there."""
    return taken(properties, properties, **more)


def page(name: str, of: str, following: Schema | None = None) -> Schema:
    """A page of a list. `next` asks for the following page, null at the end."""
    return given({name: {"type": "array", "items": ref(of)}, "next": following or maybe({"type": "string"})})


def many(schema: Schema, **more: Any) -> Schema:
    return {"type": "array", "items": schema, **more}


STRING: Schema = {"type": "string"}
COUNT: Schema = {"type": "integer", "minimum": 0}
IDENTITY: Schema = {"type": "string", "pattern": ID}
SECTION: Schema = {"type": "string", "pattern": r"^[A-Z]{1,2}$"}
CODE: Schema = {"type": "string", "pattern": r"^[A-Z]{1,2}[0-9]{2,6}$"}
PLACE = text(64, least=1)
_DAY = "[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])"
_HOUR = r"([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\.[0-9]{1,6})?)?"
TIME: Schema = {
    "type": "string",
    "maxLength": 40,
    "pattern": rf"^{_DAY}([T ]{_HOUR}(Z|[+-]([01][0-9]|2[0-3]):[0-5][0-9])?)?$",
    "description": "RFC 3339; without offset in the shop's zone; a date alone is the end of that day. "
    f"Years {YEARS[0]} to {YEARS[-1]}.",
    "examples": ["2026-11-03T14:05:00+01:00"],
}
AGE: Schema = {
    "type": "integer",
    "minimum": 0,
    "maximum": 31 * 24 * 3_600_000,
    "description": "How long it waited for the network, in ms, as the client measured it.",
}
INSTANT: Schema = {"type": "string", "format": "date-time"}
PHOTO: Schema = {
    "type": "string",
    "format": "uri-reference",
    "description": "The address of the thing's picture; another picture has another address.",
}
JPEG = "image/jpeg"
IMAGES = MEDIA_TYPES
"""Media types of pictures that are taken, HEIC and AVIF where the service can open them."""

LIMIT = {"limit": {"type": "integer", "minimum": 1, "maximum": 500, "default": 100}}
PAGED = {**LIMIT, "cursor": {"type": "string", "pattern": r"^[A-Za-z0-9_-]{1,200}$"}}
