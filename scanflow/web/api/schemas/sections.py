"""Sections, and the slots that are made in them."""

from __future__ import annotations

from labels.paper import COLOURS
from labels.slot_code import DEFAULT_DIGITS
from scanflow.domain.derive import SlotState
from scanflow.web.api.schemas.parts import CODE, COUNT, SECTION, STRING, Schema, given, many, one_of, page, taken, text

BODIES: dict[str, Schema] = {
    "NewSection": taken(
        {
            "code": {**SECTION, "description": "One or two letters that no other section has."},
            "name": text(100, least=1),
            "slots_per_bin": {"type": "integer", "minimum": 1, "maximum": 999},
            "colour": {**one_of(COLOURS), "description": "By default the one least used so far."},
            "digits": {
                "type": "integer",
                "minimum": 2,
                "maximum": 6,
                "default": DEFAULT_DIGITS,
                "description": "Width of its numbers, the same for all: 3 in D014.",
            },
        },
        ("code", "name", "slots_per_bin"),
        examples=[{"code": "D", "name": "Derailleurs", "slots_per_bin": 18, "colour": "yellow"}],
    ),
    "NewSlots": taken(
        {
            "count": {"type": "integer", "minimum": 1, "maximum": 999},
            "rack": {"type": "string", "pattern": r"^[A-Za-z0-9]{1,16}$", "description": "Where new bins stand."},
        },
        ("count",),
        examples=[{"count": 18, "rack": "A"}],
    ),
}

ANSWERS: dict[str, Schema] = {
    "Section": given(
        {
            "code": SECTION,
            "name": STRING,
            "slots_per_bin": COUNT,
            "colour": one_of(COLOURS),
            "digits": COUNT,
            "slots": given({state.value: COUNT for state in SlotState}),
        }
    ),
    "Sections": page("sections", "Section"),
    "Codes": given({"codes": many(CODE)}),
}
