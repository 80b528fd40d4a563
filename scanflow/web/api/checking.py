"""What a call sends, parsed and held against its schema; what does not fit is a `Problem` with pointers."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any

from flask import request
from jsonschema_rs import Draft202012Validator, ValidationError

from scanflow.web.api import schemas
from scanflow.web.api.schemas.parts import IMAGES, ref
from scanflow.web.door import bodies
from scanflow.web.problem import Problem

CODES = {
    "required": "required",
    "additionalProperties": "unknown_field",
    "type": "type",
    "enum": "not_allowed_value",
    "pattern": "pattern",
    "maxLength": "too_long",
    "minLength": "too_short",
    "maxItems": "too_many",
    "minItems": "too_few",
    "minProperties": "too_few",
    "maximum": "too_large",
    "minimum": "too_small",
    "oneOf": "exactly_one",
}
"""Of a schema's keywords."""

Errors = list[tuple[str, str]]


@cache
def _validator(name: str) -> Draft202012Validator:
    schema = schemas.QUERIES.get(name) or {**ref(name), "components": schemas.COMPONENTS}
    return Draft202012Validator(schema)


def fits(name: str, value: Any) -> bool:
    """Whether `value` fits the schema of this name."""
    return _validator(name).is_valid(value)


def check(name: str, value: Any) -> None:
    """`Problem` 422 with every fault of `value` unless it fits the schema of this name."""
    if not fits(name, value):
        fail([fault for error in _validator(name).iter_errors(value) for fault in _faults(error)])


def _faults(error: ValidationError) -> Iterator[tuple[str, str]]:
    kind = error.kind
    path = list(error.instance_path)
    code = CODES.get(kind.name, "invalid")
    if kind.name == "required":
        yield pointer([*path, kind.property]), code
    elif kind.name == "additionalProperties":
        for name in kind.unexpected:
            yield pointer([*path, name]), code
    else:
        yield pointer(path), code


def fail(errors: Errors) -> None:
    """Raises 422; fields that nobody knows come first, for they are most often a misspelt one that is missing."""
    errors.sort(key=lambda error: error[1] != "unknown_field")
    where, code = errors[0]
    words = code.replace("_", " ")
    raise Problem(422, code, f"{where or 'The body'}: {words}.", tuple(errors))


def pointer(path: list[Any]) -> str:
    """The JSON pointer (RFC 6901) of a path."""
    return "".join("/" + str(part).replace("~", "~0").replace("/", "~1") for part in path)


def body(name: str) -> Any:
    """The JSON body; absent it counts as an empty object. Problems 400, 413, 415, 422."""
    request.max_content_length = bodies.USUAL
    raw = request.get_data()
    if request.mimetype != "application/json" and (raw or request.mimetype):
        raise Problem(415, "unsupported_media_type", "Send JSON: Content-Type: application/json.")
    value = parse(raw) if raw else {}
    check(name, value)
    return value


def parse(raw: bytes) -> Any:
    """The value of a JSON text (RFC 8259). Problem 400; 422 for a text that is not Unicode."""
    try:
        words = raw.decode("utf-8")
        value = json.loads(words, parse_constant=_refuse, parse_float=_number, object_pairs_hook=_object)
    except (ValueError, RecursionError) as error:
        raise Problem(400, "malformed", f"The body is not JSON in UTF-8: {error}.") from None
    if "\\u" in words and (errors := list(_not_unicode(value, []))):
        fail(errors)
    return value


def _refuse(word: str) -> None:
    raise ValueError(f"{word} is no number")


def _number(word: str) -> float:
    """JSON has one kind of number: 3.0 is the integer 3."""
    value = float(word)
    if not math.isfinite(value):
        raise ValueError("a number is too large")
    return int(value) if value.is_integer() else value


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    value = dict(pairs)
    if len(value) != len(pairs):
        raise ValueError("a name stands twice in one object")
    return value


def _not_unicode(value: Any, path: list[Any]) -> Iterator[tuple[str, str]]:
    """Texts and names that hold a lone surrogate or NUL."""
    match value:
        case str() if "\0" in value or re.search("[\ud800-\udfff]", value):
            yield pointer(path).encode(errors="replace").decode(), "not_text"
        case list():
            for place, each in enumerate(value):
                yield from _not_unicode(each, [*path, place])
        case dict():
            for name, each in value.items():
                yield from _not_unicode(name, [*path, name])
                yield from _not_unicode(each, [*path, name])


def query(name: str) -> dict[str, Any]:
    """The query's parameters with their defaults; `Problem` 422 with `/name` as pointer."""
    declared = schemas.QUERIES[name]["properties"]
    values = {
        each: _integer(sent[0]) if declared.get(each, {}).get("type") == "integer" else sent[0]
        for each, sent in _single(request.args.to_dict(flat=False))
    }
    check(name, values)
    defaults = {each: schema["default"] for each, schema in declared.items() if "default" in schema}
    return {**defaults, **values}


def _single(fields: Mapping[str, list[Any]]) -> Iterator[tuple[str, list[Any]]]:
    for name, sent in fields.items():
        if len(sent) > 1:
            fail([(pointer([name]), "repeated")])
        yield name, sent


def _integer(word: str) -> int | str:
    return int(word) if re.fullmatch("-?[0-9]{1,18}", word) else word


def form(name: str, file: str) -> tuple[dict[str, Any], bytes]:
    """The fields of a multipart form and the bytes of its one `file`. Problems 413, 415, 422."""
    if request.mimetype != "multipart/form-data":
        raise Problem(415, "unsupported_media_type", "Send a form: Content-Type: multipart/form-data.")
    declared = schemas.FORMS[name]["properties"]
    sent = {**request.form.to_dict(flat=False), **request.files.to_dict(flat=False)}
    fields = {each: _field(values[0], declared.get(each, {})) for each, values in _single(sent)}
    content = fields.pop(file, None)
    if content is not None:
        check(name, {**fields, file: "" if isinstance(content, bytes) else None})
    else:
        check(name, fields)
    return fields, content


def image() -> bytes:
    """The body, said to be a picture. Problems 413, 415."""
    if request.mimetype not in IMAGES:
        raise Problem(415, "unsupported_media_type", f"Send a picture: Content-Type one of {', '.join(IMAGES)}.")
    return request.get_data()


def _field(value: Any, declared: Mapping[str, Any]) -> Any:
    if declared.get("format") == "binary":
        return value if isinstance(value, str) else value.read()  # without a file name it was decoded: of no use
    if not isinstance(value, str):
        return None  # a file where a text belongs: of the wrong type
    if declared.get("type") == "boolean":
        return {"true": True, "false": False}.get(value, value)
    if declared.get("type") == "integer":
        return _integer(value)
    if "\0" in value:
        return None
    return value
