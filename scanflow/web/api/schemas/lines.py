"""Lines of orders, and what a person decides about one."""

from __future__ import annotations

from scanflow.domain.life import Hold, LineState
from scanflow.web.api.schemas.parts import CODE, IDENTITY, STRING, Schema, given, many, maybe, one_of, taken, text

BODIES: dict[str, Schema] = {
    "Settlement": taken(
        {
            "stay": {**IDENTITY, "description": "Absent: the one it is bound to."},
            "hold": {**one_of(Hold), "description": "Which hold is settled. Absent: the gravest."},
        },
        examples=[{}],
    ),
    "Note": taken({"note": text(500)}, examples=[{"note": "Not in its bin"}]),
    "Doubt": taken({"why": text(500, least=1)}, ("why",), examples=[{"why": "The picture shows another saddle"}]),
}

ANSWERS: dict[str, Schema] = {
    "Line": given(
        {
            "id": IDENTITY,
            "reference": STRING,
            "code": maybe(CODE),
            "stay": maybe(IDENTITY),
            "title": STRING,
            "state": one_of(LineState),
            "hold": maybe(one_of(Hold)),
            "why": {**STRING, "description": "Of the gravest hold."},
            "holds": many(given({"hold": one_of(Hold), "why": STRING}), description="The gravest first."),
        }
    ),
}
