"""An order's slip is scanned at the table: it opens that order's parcel."""

from __future__ import annotations

from typing import Any

from scanflow.domain.derive import OrderState, order_state
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Line, Order, Parcel
from scanflow.domain.verdict import Reason
from scanflow.workflow import parcels
from scanflow.workflow.ports import Unit

ENDED = {
    OrderState.RELEASED: (Reason.ALREADY_RELEASED, "This order has left already."),
    OrderState.RETURNED: (Reason.ALREADY_RELEASED, "This order left and came back."),
    OrderState.CANCELLED: (Reason.CANCELLED, "This order was cancelled. Put its slip away."),
}


def open_by_slip(unit: Unit, order: Order, table: str) -> dict[str, Any]:
    """The answer of the scan; refused while the table has another order's parcel, or nothing is left to pack."""
    now = parcels.open_parcel_at(unit, table)
    state = order_state(unit.find(Line, order=order.id))
    if now is not None:
        if order.id in now.orders:
            return _answer(order, state, now, None, "This order's parcel is open. Scan its cards.")
        return _answer(order, state, now, Reason.OTHER_ORDER, "Close the open parcel or set it aside first.")
    if state in ENDED:
        reason, words = ENDED[state]
        return _answer(order, state, None, reason, words)
    before = unit.get(Parcel, order.parcel) if order.parcel else None
    if before is not None and before.state is ParcelState.OPEN:
        return _answer(order, state, None, Reason.OTHER_ORDER, f"Its parcel is open at table {before.table}.")
    parcel = parcels.open_parcel(unit, before.orders if before else (order.id,), table)
    return _answer(order, state, parcel, None, f"Parcel of {order.number} is open. Scan its cards.", changed=True)


def _answer(
    order: Order, state: OrderState, parcel: Parcel | None, reason: Reason | None, words: str, *, changed: bool = False
) -> dict[str, Any]:
    return {
        "verdict": "accepted" if reason is None else "refused",
        "reason": reason,
        "advice": words,
        "replayed": False,
        "changed": changed,
        "code": None,
        "title": None,
        "photo": None,
        "order": order.id,
        "order_number": order.number,
        "line": None,
        "line_state": None,
        "order_state": state,
        "parcel": parcel.id if parcel else None,
        "parcel_state": parcel.state if parcel else None,
        "released": [],
    }
