"""The answer to a scan: every field is always there, None where it doesn't apply."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypedDict

from scanflow.domain.derive import OrderState
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel
from scanflow.domain.verdict import Reason
from scanflow.workflow.fields import Code, Identity

Count = Annotated[int, Field(ge=0)]
Photo = Annotated[
    str,
    Field(
        description="The address of the thing's picture; another picture has another address.",
        json_schema_extra={"format": "uri-reference"},
    ),
]


class Answer(TypedDict):
    verdict: Literal["accepted", "refused"]
    reason: Reason | None
    advice: str
    replayed: bool
    changed: bool
    code: Code | None
    title: str | None
    photo: Photo | None
    order: Identity | None
    order_number: str | None
    line: Identity | None
    line_state: LineState | None
    order_state: OrderState | None
    parcel: Identity | None
    parcel_state: ParcelState | None
    released: Annotated[list[Code], Field(description="The slots whose cards are due back.")]


def recalled(kept: str, *, changed: bool | None = None, replayed: bool = False) -> Answer:
    """An answer that was kept as JSON; `changed` as it was, unless it is said anew."""
    answer: Answer = json.loads(kept)
    answer["replayed"] = replayed
    if changed is not None:
        answer["changed"] = changed
    return answer


def answer_of(  # noqa: PLR0913 - the fields of an answer
    reason: Reason | None,
    advice: str,
    *,
    changed: bool = False,
    code: str | None = None,
    title: str | None = None,
    photo: str | None = None,
    order: Order | None = None,
    order_state: OrderState | None = None,
    line: Line | None = None,
    parcel: Parcel | None = None,
    released: Sequence[str] = (),
) -> Answer:
    """Accepted without a reason, refused with one. `released` are the slots whose cards are due back."""
    return {
        "verdict": "accepted" if reason is None else "refused",
        "reason": reason,
        "advice": advice,
        "replayed": False,
        "changed": changed,
        "code": code,
        "title": title,
        "photo": photo,
        "order": order.id if order else None,
        "order_number": order.number if order else None,
        "line": line.id if line else None,
        "line_state": line.state if line else None,
        "order_state": order_state,
        "parcel": parcel.id if parcel else None,
        "parcel_state": parcel.state if parcel else None,
        "released": list(released),
    }
