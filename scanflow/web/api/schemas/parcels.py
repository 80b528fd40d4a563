"""Parcels: opened, closed, shown."""

from __future__ import annotations

from scanflow.domain.life import ParcelState
from scanflow.web.api.schemas import lines
from scanflow.web.api.schemas.parts import IDENTITY, PLACE, STRING, Schema, given, many, maybe, one_of, ref, taken

BODIES: dict[str, Schema] = {
    "NewParcel": taken(
        {"orders": many(IDENTITY, minItems=1, maxItems=100), "table": {**PLACE, "default": "main"}},
        ("orders",),
        examples=[{"orders": ["4f1c0a9be2d37788"]}],
    ),
    "Closing": taken({"partial": {"type": "boolean", "default": False}}, examples=[{"partial": True}]),
}

ANSWERS: dict[str, Schema] = {
    "Parcel": given(
        {
            "id": IDENTITY,
            "state": one_of(ParcelState),
            "table": STRING,
            "slip": STRING,
            "orders": many(IDENTITY),
            "lines": many(
                ref("LineInParcels"), description="All of its orders, also what is in another parcel or none."
            ),
        }
    ),
    "LineInParcels": given(
        {
            **lines.ANSWERS["Line"]["properties"],
            "parcel": {**maybe(IDENTITY), "description": "In which it is packed or left; null while it is in none."},
        }
    ),
}
