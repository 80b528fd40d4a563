"""Doubts of a thing, and how a person settles one."""

from __future__ import annotations

from scanflow.domain.life import DoubtKind, Settled
from scanflow.web.api.schemas.parts import IDENTITY, INSTANT, STRING, Schema, given, many, one_of, taken, text

BODIES: dict[str, Schema] = {
    "DoubtSettlement": taken(
        {
            "how": {
                **one_of((Settled.SEEN, Settled.CORRECTED)),
                "description": "`seen`: the card was read, and its thing is the one in the picture. `corrected`: what "
                "was wrong is put right.",
            },
            "text": {**text(200), "description": "Of its card; needed for what was seen."},
            "note": text(500),
        },
        ("how",),
        examples=[{"how": "seen", "text": "D0145"}, {"how": "corrected", "note": "The listing had another picture"}],
    ),
}

_DOUBT: dict[str, Schema] = {
    "id": IDENTITY,
    "kind": {
        **one_of(DoubtKind),
        "description": "`not_this`: it may not be what its card says. `missing`: it may not be there.",
    },
    "words": STRING,
    "since": INSTANT,
    "by": STRING,
}

ANSWERS: dict[str, Schema] = {
    "Doubts": given({"doubts": many(given(_DOUBT), description="The oldest first.")}),
    "SettledDoubt": given({**_DOUBT, "how": one_of(Settled), "ended": INSTANT}),
}
