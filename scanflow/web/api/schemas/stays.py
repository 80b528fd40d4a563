"""Stays: what is put away, and where it is."""

from __future__ import annotations

from scanflow.domain.life import StayState
from scanflow.web.api.schemas.parts import (
    CODE,
    IDENTITY,
    PHOTO,
    SECTION,
    STRING,
    Schema,
    given,
    maybe,
    one_of,
    taken,
    text,
)

_ITEM = {"title": text(500, least=1), "listing": text(200), "notes": text(4000)}

BODIES: dict[str, Schema] = {
    "NewStay": taken(
        {
            **_ITEM,
            "text": {**text(200, least=1), "description": "The text of the card in hand."},
            "code": {**CODE, "description": "A free slot."},
            "section": {**SECTION, "description": "The lowest free slot of this section."},
        },
        ("title",),
        oneOf=[{"required": [name]} for name in ("text", "code", "section")],
        examples=[{"title": "Rear derailleur, long cage", "section": "D"}],
    ),
    "ItemChange": taken(_ITEM, minProperties=1, examples=[{"title": "Rear derailleur, short cage"}]),
    "Withdrawal": taken({"reason": text(500, least=1)}, ("reason",), examples=[{"reason": "Cracked on inspection"}]),
    "Exchange": taken(
        {"with": {**IDENTITY, "description": "The other stay, or the code of its slot."}},
        ("with",),
        examples=[{"with": "D015"}],
    ),
    "Move": taken({"to": CODE}, ("to",), examples=[{"to": "D015"}]),
}

ANSWERS: dict[str, Schema] = {
    "Stay": given(
        {
            "id": IDENTITY,
            "item": IDENTITY,
            "code": CODE,
            "turn": {"type": "integer", "minimum": 1},
            "reference": STRING,
            "bin": STRING,
            "state": one_of(StayState),
            "title": STRING,
            "listing": STRING,
            "notes": STRING,
            "photo": maybe(PHOTO),
        }
    ),
}
