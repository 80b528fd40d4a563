"""The answer to a scan: every field is always there, None where it doesn't apply."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scanflow.domain.derive import OrderState
from scanflow.domain.things import Line, Order, Parcel
from scanflow.domain.verdict import Reason

Answer = dict[str, Any]


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
