"""What the calls take and give, as JSON Schemas (2020-12): checked against, and shown in the OpenAPI document.

A module for each noun, named as its blueprint; what several nouns take or give stands here. Every object that is taken
refuses unknown fields. Texts are Unicode without NUL, which no database keeps.
"""

from __future__ import annotations

from scanflow.storage.writing.failing import CODES
from scanflow.web.api.schemas import (
    doubts,
    hand_over,
    ledger,
    lines,
    orders,
    parcels,
    rounds,
    scans,
    sections,
    slots,
    stays,
    stocktakes,
)
from scanflow.web.api.schemas.parts import COUNT, PAGED, STRING, Schema, given, many, one_of, taken

BODIES: dict[str, Schema] = {
    **sections.BODIES,
    **stays.BODIES,
    **orders.BODIES,
    **lines.BODIES,
    **doubts.BODIES,
    "Nothing": taken({}, examples=[{}]),
    **rounds.BODIES,
    **parcels.BODIES,
    **hand_over.BODIES,
    **scans.BODIES,
    **stocktakes.BODIES,
}

FORMS: dict[str, Schema] = {**scans.FORMS, **stocktakes.FORMS, **orders.FORMS}

QUERIES: dict[str, Schema] = {
    "NoQuery": taken({}),
    "Page": taken(PAGED),
    "PhotoQuery": taken(
        {
            "size": {**one_of(("whole", "small")), "default": "whole", "description": "At most 1600 or 320 pixels."},
            "hash": {
                "type": "string",
                "pattern": "^[0-9a-f]{64}$",
                "description": "Of the picture expected: if it is that one, it may be kept for ever.",
            },
        }
    ),
    **slots.QUERIES,
    **orders.QUERIES,
    **stocktakes.QUERIES,
    **ledger.QUERIES,
}

_HEALTH: dict[str, Schema] = {"database": one_of(("sqlite", "postgresql"))}

ANSWERS: dict[str, Schema] = {
    "Health": given({"status": {"const": "ok"}, **_HEALTH, "ledger": COUNT}),
    "Ill": given({"status": one_of(CODES), **_HEALTH, "ledger": {"type": ["integer", "null"]}, "detail": STRING}),
    **sections.ANSWERS,
    **slots.ANSWERS,
    **stays.ANSWERS,
    **lines.ANSWERS,
    **doubts.ANSWERS,
    **orders.ANSWERS,
    **rounds.ANSWERS,
    **parcels.ANSWERS,
    **hand_over.ANSWERS,
    **scans.ANSWERS,
    **stocktakes.ANSWERS,
    **ledger.ANSWERS,
    "Problem": {
        "type": "object",
        "description": "RFC 9457. `pointer` is a JSON pointer into the body, or `/name` of a parameter or form field.",
        "properties": {
            "type": {"type": "string", "format": "uri"},
            "title": STRING,
            "status": {"type": "integer"},
            "detail": STRING,
            "code": STRING,
            "errors": many(given({"pointer": STRING, "code": STRING})),
        },
        "required": ["type", "title", "status", "detail", "code", "errors"],
    },
    "Document": {"type": "object", "description": "An OpenAPI 3.1 document: this one."},
}

COMPONENTS = {"schemas": {**BODIES, **FORMS, **ANSWERS}}
"""Where references between schemas lead."""
