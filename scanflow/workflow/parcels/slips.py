"""An order's slip is scanned at the table: it opens that order's parcel, and closes it where the shop likes that."""

from __future__ import annotations

import json
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from functools import partial

from labels import slot_code
from scanflow.domain.derive import OrderState, order_state
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Scan, Station
from scanflow.domain.verdict import Reason
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of, recalled
from scanflow.workflow.ports import Invalid, Unit, must

ENDED = {
    OrderState.RELEASED: (Reason.ALREADY_RELEASED, "This order has left already."),
    OrderState.RETURNED: (Reason.ALREADY_RELEASED, "This order left and came back."),
    OrderState.CANCELLED: (Reason.CANCELLED, "This order was cancelled. Put its slip away."),
}


@dataclass(frozen=True, slots=True)
class _Before:
    """Of a slip that was scanned just before: its order, the parcel, and the slips of that parcel that were scanned one
    after another since all was packed.
    """

    order: str = ""
    parcel: str = ""
    slips: tuple[str, ...] = ()


def order_named(unit: Unit, text: str) -> Order:
    """The order of a slip's text or of this number; `Invalid` where it is none, or several channels'."""
    found = unit.find(Order, number=text)
    with suppress(slot_code.CodeError):
        found = unit.find(Order, slip=slot_code.parse_slip(text)) or found
    if len(found) != 1:
        why = "Several orders have this number. Scan the slip." if found else "No order has this slip or number."
        raise Invalid("/text", "unknown_order", why)
    return found[0]


def scan_slip(unit: Unit, order: Order, table: str, key: str) -> tuple[Answer, str]:
    """The answer of a slip's scan at a table, and what it leaves, for the scan after it."""
    now = parcels.open_parcel_at(unit, table)
    if not unit.settings.slip_closes:
        return _open(unit, order, table, now), ""
    last = unit.last_scan(Station.TABLE, table)
    before = _left_by(unit, last)
    if last is not None and before.order == order.id:
        return recalled(last.answer, changed=False), last.stood
    if now is None or order.id not in now.orders:
        answer = _open(unit, order, table, now)
        return answer, _left(unit, order, answer, ()) if answer["changed"] else ""
    so_far = before.slips if before.parcel == now.id else ()
    answer, slips = _close(unit, order, now, tuple(dict.fromkeys((*so_far, order.id))), key)
    return answer, _left(unit, order, answer, slips) if slips else ""


def _left(unit: Unit, order: Order, answer: Answer, slips: tuple[str, ...]) -> str:
    return json.dumps([order.id, answer["parcel"], _stands(unit, answer["parcel"] or ""), slips])


def _left_by(unit: Unit, last: Scan | None) -> _Before:
    """What the scan just before left, if that was a slip's and its parcel stands as it left it."""
    if last is None or last.code is not None or not last.stood:
        return _Before()
    order, parcel, stood, slips = json.loads(last.stood)
    return _Before(order, parcel, tuple(slips)) if stood == _stands(unit, parcel) else _Before()


def _stands(unit: Unit, parcel_id: str) -> str:
    """How a parcel stands, in a word: opened once more, it stands otherwise."""
    parcel = must(unit, Parcel, parcel_id)
    return f"{parcel.state} {parcel.opened.isoformat()}"


def _open(unit: Unit, order: Order, table: str, now: Parcel | None) -> Answer:
    """Refused while the table has another order's parcel, or nothing is left to pack."""
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
    parcel = parcels.open_parcel(unit, parcels.OpenParcel(orders=before.orders if before else (order.id,), table=table))
    return told(None, f"Parcel of {order.number} is open. Scan its cards.", parcel=parcel, changed=True)


def _close(
    unit: Unit, order: Order, parcel: Parcel, slips: tuple[str, ...], key: str
) -> tuple[Answer, tuple[str, ...]]:
    """The answer, and the slips of the parcel that were scanned since all was packed: the last of them closes it."""
    wanted = parcels.still_wanted(parcels.lines_of(unit, parcel.orders))
    left = [must(unit, Order, name).number for name in parcel.orders if name not in slips]
    released: tuple[str, ...] = ()
    if wanted:
        words, slips = _missing(unit, wanted), ()
    elif not unit.find(Line, parcel=parcel.id, state=LineState.PACKED):
        words, slips = "The parcel is empty. Set it aside.", ()
    elif left:
        words = f"Everything is packed. Scan the {'slip' if len(left) == 1 else 'slips'} of {', '.join(left)} too."
    else:
        released = parcels.close_parcel(unit, parcel.id, scan=key)
        words = f"Parcel closed. Put back in the tray: {', '.join(released)}." if released else "Parcel closed."
    state = order_state(unit.find(Line, order=order.id))
    now = must(unit, Parcel, parcel.id)
    closed = now.state is ParcelState.CLOSED
    told = partial(answer_of, order=order, order_state=state, parcel=now, changed=closed, released=released)
    return told(None, words), slips


def _missing(unit: Unit, wanted: Sequence[Line]) -> str:
    """What keeps a parcel from being complete."""
    held = [line for line in wanted if line.holds]
    missing = parcels.codes_of(unit, [line for line in wanted if not line.holds])
    words = [f"Still to pack: {', '.join(missing)}."] if missing else []
    words += [f"{code} is held: {line.why}" for code, line in zip(parcels.codes_of(unit, held), held, strict=True)]
    return " ".join(words)
