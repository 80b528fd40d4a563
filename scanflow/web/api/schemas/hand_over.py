"""Parcels that leave the house."""

from __future__ import annotations

from scanflow.web.api.schemas.parts import IDENTITY, Schema, page, taken, text

BODIES: dict[str, Schema] = {
    "Leaving": taken(
        {
            "key": {
                **IDENTITY,
                "description": "Unique in the shop; a repeat gets the same answer.",
            },
            "text": {**text(400), "description": "What the parcel's shipping label or slip says."},
        },
        ("key", "text"),
        examples=[{"key": "phone-1-000018", "text": "ORD0000017"}],
    ),
}

ANSWERS: dict[str, Schema] = {"ToHandOver": page("parcels", "Parcel")}
"""The answer to a hand-over is that of a scan."""
