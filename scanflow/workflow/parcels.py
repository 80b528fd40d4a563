"""The box on the table: opened for orders, closed over what was packed by scan, opened again."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from scanflow.domain.derive import OrderState, order_state
from scanflow.domain.life import CLOSING, REOPENING, LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Slot, Stay
from scanflow.workflow.orders import named
from scanflow.workflow.ports import Refused, Unit, must

ENDED = frozenset({OrderState.RELEASED, OrderState.CANCELLED, OrderState.RETURNED})


@dataclass(frozen=True, slots=True)
class _Packed:
    """A thing in a parcel: what closing and reopening step together."""

    line: Line
    stay: Stay
    card: Slot


def lines_of(unit: Unit, orders: Iterable[str]) -> tuple[Line, ...]:
    return tuple(line for order in orders for line in unit.find(Line, order=order))


def still_wanted(lines: Iterable[Line]) -> tuple[Line, ...]:
    """The lines that keep a parcel from being complete: not yet packed, short, unbound or held."""
    wanted = (LineState.UNBOUND, LineState.WAITING, LineState.PICKED, LineState.SHORT)
    return tuple(line for line in lines if line.state in wanted or line.hold is not None)


def open_parcel_at(unit: Unit, table: str) -> Parcel | None:
    found = unit.find(Parcel, table=table, state=ParcelState.OPEN)
    return found[0] if found else None


def open_parcel(unit: Unit, order_ids: Iterable[str], table: str = "main") -> Parcel:
    """Open the box of these orders at a table, or take the one that was set aside for them.

    Refused: `parcel_open` when the table has one or an order's things lie in another box, `nothing_to_pack`.
    """
    orders = named(unit, order_ids)
    _table_free(unit, table)
    names = tuple(order.id for order in orders)
    for before in {order.parcel: None for order in orders if order.parcel}:
        parcel = must(unit, Parcel, before)
        if parcel.state is ParcelState.ASIDE and set(parcel.orders) == set(names):
            return _resume(unit, parcel, table)
        raise Refused("parcel_open", "Another parcel of this order is not closed yet.", parcel=parcel.id)
    _refuse_ended(unit, orders)
    parcel = Parcel(unit.new_id(), table, names, unit.at)
    unit.add(parcel)
    _bind(unit, names, parcel.id)
    unit.record("parcel opened", {"parcel": parcel.id, "table": table, "orders": list(names)})
    return parcel


def _refuse_ended(unit: Unit, orders: Iterable[Order]) -> None:
    for order in orders:
        if order_state(unit.find(Line, order=order.id)) in ENDED:
            raise Refused("nothing_to_pack", f"Nothing of order {order.number} is left to pack.")


def _table_free(unit: Unit, table: str) -> None:
    parcel = open_parcel_at(unit, table)
    if parcel is not None:
        numbers = ", ".join(must(unit, Order, name).number for name in parcel.orders)
        raise Refused("parcel_open", f"The parcel of {numbers} is open. Close it or set it aside.", parcel=parcel.id)


def _resume(unit: Unit, parcel: Parcel, table: str) -> Parcel:
    parcel = replace(parcel.after("resume"), table=table)
    unit.put(parcel)
    unit.record("parcel resumed", {"parcel": parcel.id, "table": table})
    return parcel


def _bind(unit: Unit, orders: Iterable[str], parcel: str | None) -> None:
    for name in orders:
        unit.put(replace(must(unit, Order, name), parcel=parcel))


def _drop(unit: Unit, parcel: Parcel) -> Parcel:
    parcel = parcel.after("drop")
    unit.put(parcel)
    _bind(unit, parcel.orders, None)
    unit.record("parcel dropped", {"parcel": parcel.id})
    return parcel


def set_aside(unit: Unit, parcel_id: str) -> Parcel:
    """Take an open parcel off the table; an empty one is dropped."""
    parcel = must(unit, Parcel, parcel_id)
    if not unit.find(Line, parcel=parcel.id, state=LineState.PACKED):
        return _drop(unit, parcel)
    parcel = parcel.after("set aside")
    unit.put(parcel)
    unit.record("parcel set aside", {"parcel": parcel.id})
    return parcel


def close_parcel(unit: Unit, parcel_id: str, *, partial: bool = False, scan: str | None = None) -> tuple[str, ...]:
    """Release what was packed: its stays end, their slots are free, their cards are due. Answers the slot codes.

    Refused: `nothing_packed`, `still_in_box` (something in it must come out), `lines_missing` unless `partial`.
    """
    parcel = must(unit, Parcel, parcel_id)
    closed = parcel.after("close")
    packed = unit.find(Line, parcel=parcel.id, state=LineState.PACKED)
    if any(line.hold is not None for line in packed):
        raise Refused("still_in_box", "Something in the parcel is held or cancelled. Take it out with a scan first.")
    if not packed:
        raise Refused("nothing_packed", "Nothing is packed yet.")
    missing = still_wanted(lines_of(unit, parcel.orders))
    if missing and not partial:
        raise Refused("lines_missing", "Not all is packed. Close it as a part, or pack the rest.")
    codes = _step_all(unit, packed, CLOSING, scan)
    unit.put(closed)
    _bind(unit, parcel.orders, None)
    unit.record("parcel closed", {"parcel": parcel.id, "orders": list(parcel.orders), "released": list(codes)})
    return codes


def reopen(unit: Unit, parcel_id: str) -> Parcel:
    """Take back a closing: its things are in the box and stored again. `slot_reused` once a slot has a newer stay."""
    parcel = must(unit, Parcel, parcel_id)
    opened = parcel.after("reopen")
    _table_free(unit, parcel.table)
    for name in parcel.orders:
        if must(unit, Order, name).parcel is not None:
            raise Refused("parcel_open", "Another parcel of this order is not closed yet.")
    released = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    if not released:
        raise Refused("not_allowed", "Nothing of this parcel is still with its buyer.")
    _step_all(unit, released, REOPENING, None)
    unit.put(opened)
    _bind(unit, parcel.orders, parcel.id)
    unit.record("parcel reopened", {"parcel": parcel.id, "orders": list(parcel.orders)})
    return opened


def _step_all(
    unit: Unit, lines: Iterable[Line], steps: tuple[tuple[str, str], ...], scan: str | None
) -> tuple[str, ...]:
    """Each line, its stay and its card by one event each; the lines keep `scan` as what changed them last."""
    codes = []
    for line in lines:
        thing = _packed(unit, line)
        for table, event in steps:
            match table:
                case "line":
                    unit.put(thing.line.after(event, scan if line.scan == scan else None))
                case "stay":
                    unit.put(thing.stay.after(event, unit.at))
                case "card":
                    unit.put(thing.card.after(event))
        codes.append(thing.stay.code)
    return tuple(codes)


def _packed(unit: Unit, line: Line) -> _Packed:
    stay = must(unit, Stay, line.stay or "")
    card = must(unit, Slot, stay.code)
    if card.turns != stay.turn:
        raise Refused("slot_reused", f"Another thing stands in {stay.code} by now.")
    return _Packed(line, stay, card)
