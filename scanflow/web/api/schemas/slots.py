"""Slots, as lists show them."""

from __future__ import annotations

from scanflow.domain.derive import SlotState
from scanflow.domain.life import CardState
from scanflow.web.api.schemas.parts import (
    CODE,
    IDENTITY,
    PAGED,
    SECTION,
    STRING,
    Schema,
    given,
    maybe,
    one_of,
    page,
    taken,
)

QUERIES: dict[str, Schema] = {
    "SlotQuery": taken({"section": SECTION, "state": one_of(SlotState), **PAGED}),
}

ANSWERS: dict[str, Schema] = {
    "Slot": given(
        {
            "code": CODE,
            "section": SECTION,
            "state": one_of(SlotState),
            "bin": STRING,
            "stay": maybe(IDENTITY),
            "card": one_of(CardState),
        }
    ),
    "Slots": page("slots", "Slot"),
}
