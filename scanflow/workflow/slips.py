"""An order's slip is scanned at the table: it opens that order's parcel."""

from __future__ import annotations

from functools import partial

from scanflow.domain.derive import OrderState, order_state
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Line, Order, Parcel
from scanflow.domain.verdict import Reason
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of
from scanflow.workflow.ports import Unit

ENDED = {
    OrderState.RELEASED: (Reason.ALREADY_RELEASED, "This order has left already."),
    OrderState.RETURNED: (Reason.ALREADY_RELEASED, "This order left and came back."),
    OrderState.CANCELLED: (Reason.CANCELLED, "This order was cancelled. Put its slip away."),
}


def open_by_slip(unit: Unit, order: Order, table: str) -> Answer:
    """The answer of the scan; refused while the table has another order's parcel, or nothing is left to pack."""
    now = parcels.open_parcel_at(unit, table)
    state = order_state(unit.find(Line, order=order.id))
    told = partial(answer_of, order=order, order_state=state)
    if now is not None:
        if order.id in now.orders:
            return told(None, "This order's parcel is open. Scan its cards.", parcel=now)
        return told(Reason.OTHER_ORDER, "Close the open parcel or set it aside first.", parcel=now)
    if state in ENDED:
        return told(*ENDED[state])
    before = unit.get(Parcel, order.parcel) if order.parcel else None
    if before is not None and before.state is ParcelState.OPEN:
        return told(Reason.OTHER_ORDER, f"Its parcel is open at table {before.table}.")
    parcel = parcels.open_parcel(unit, before.orders if before else (order.id,), table)
    return told(None, f"Parcel of {order.number} is open. Scan its cards.", parcel=parcel, changed=True)
