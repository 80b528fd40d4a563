"""Rounds and their stops."""

from __future__ import annotations

from scanflow.domain.life import LineState, RoundState
from scanflow.web.api.schemas.parts import (
    CODE,
    COUNT,
    IDENTITY,
    MOST_LINES,
    PHOTO,
    STRING,
    Schema,
    given,
    many,
    maybe,
    one_of,
    taken,
)

BODIES: dict[str, Schema] = {
    "NewRound": taken(
        {"orders": {**many(IDENTITY, maxItems=MOST_LINES), "description": "Absent: all that wait."}}, examples=[{}]
    ),
}

ANSWERS: dict[str, Schema] = {
    "Round": given(
        {
            "id": IDENTITY,
            "state": one_of(RoundState),
            "stops": many(
                given(
                    {
                        "bin": {**STRING, "description": "Where to walk to: while it waits, where the thing is now."},
                        "code": maybe(CODE),
                        "title": STRING,
                        "photo": maybe(PHOTO),
                        "order": IDENTITY,
                        "line": IDENTITY,
                        "basket": maybe(COUNT),
                        "state": one_of(LineState),
                    }
                )
            ),
            "left_out": {
                "type": "array",
                "items": given({"order": IDENTITY, "why": one_of(("held", "on_round", "not_waiting"))}),
                "description": "Said when the round is opened; empty afterwards.",
            },
        }
    ),
}
