"""Scans, as JSON or as a photograph, their verdicts, and what a live camera sees."""

from __future__ import annotations

from scanflow.domain.derive import OrderState
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason
from scanflow.web.api.schemas.parts import (
    AGE,
    CODE,
    IDENTITY,
    PHOTO,
    PLACE,
    STRING,
    TIME,
    Schema,
    given,
    many,
    maybe,
    one_of,
    taken,
    text,
)

_SCAN = {
    "station": one_of(Station),
    "key": {**IDENTITY, "description": "Made by the client, unique in the shop; a repeat gets the same answer."},
    "via": {**one_of(("wedge", "camera", "typed")), "default": "wedge"},
    "round": {**IDENTITY, "description": "Required at a bin."},
    "table": {**PLACE, "default": "main"},
    "bin": {**PLACE, "description": "Required at a shelf."},
    "take_out": {"type": "boolean", "default": False},
    "at": {**TIME, "description": "The client's clock, for a scan that waited for the network; only recorded."},
    "age_ms": AGE,
}

BODIES: dict[str, Schema] = {
    "NewScan": taken(
        {**_SCAN, "text": {**text(4096), "description": "As the reader gave it; empty where it read nothing."}},
        ("station", "key", "text"),
        examples=[{"station": "table", "key": "phone-1-000017", "text": "D0145"}],
    ),
}

FORMS: dict[str, Schema] = {
    "ScanImage": taken(
        {**_SCAN, "image": {"type": "string", "format": "binary", "description": "A photograph of the card."}},
        ("station", "key", "image"),
    ),
    "Frame": taken(
        {"image": {"type": "string", "format": "binary", "description": "What a live camera sees: grey will do."}},
        ("image",),
    ),
}

ANSWERS: dict[str, Schema] = {
    "Verdict": given(
        {
            "verdict": one_of(("accepted", "refused")),
            "reason": maybe(one_of(Reason)),
            "advice": STRING,
            "replayed": {"type": "boolean"},
            "changed": {"type": "boolean"},
            "code": maybe(CODE),
            "title": maybe(STRING),
            "photo": maybe(PHOTO),
            "order": maybe(IDENTITY),
            "order_number": maybe(STRING),
            "line": maybe(IDENTITY),
            "line_state": maybe(one_of(LineState)),
            "order_state": maybe(one_of(OrderState)),
            "parcel": maybe(IDENTITY),
            "parcel_state": maybe(one_of(ParcelState)),
            "released": {**many(CODE), "description": "The slots whose cards are due back."},
        }
    ),
    "Decoded": given({"texts": many(STRING, description="What was decoded whole, top down; none is matched.")}),
}
