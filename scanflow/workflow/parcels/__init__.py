"""The box on the table: opened for orders, closed over what was packed by scan, opened again."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.derive import OrderState, order_state, stands_still
from scanflow.domain.life import CLOSING, REOPENING, Hold, LineState, NotAllowed, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Slot, Station, Stay
from scanflow.domain.whereabouts import contradicts_closing, contradicts_parcel, place_words
from scanflow.workflow.fields import Command, Flag, Identity, Place
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock.sightings import gone

ENDED = frozenset({OrderState.RELEASED, OrderState.CANCELLED, OrderState.RETURNED})


def lines_of(unit: Unit, orders: Iterable[str]) -> tuple[Line, ...]:
    """The lines of some orders."""
    return tuple(line for order in orders for line in unit.find(Line, order=order))


def named(unit: Unit, order_ids: Iterable[str]) -> list[Order]:
    """The orders of these ids, each once; `unknown_order` where there is none."""
    orders = []
    for place, name in enumerate(dict.fromkeys(order_ids)):
        order = unit.get(Order, name)
        if order is None:
            raise Invalid(f"/orders/{place}", "unknown_order", "There is no such order.")
        orders.append(order)
    return orders


def still_wanted(lines: Iterable[Line]) -> tuple[Line, ...]:
    """The lines that keep a parcel from being complete: not yet packed, short, unbound or held."""
    wanted = (LineState.UNBOUND, LineState.WAITING, LineState.PICKED, LineState.SHORT)
    return tuple(line for line in lines if line.state in wanted or stands_still(line))


def codes_of(unit: Unit, lines: Iterable[Line]) -> list[str]:
    """What to call these lines: the slot of each, or else its reference."""
    stays = ((line, unit.get(Stay, line.stay) if line.stay else None) for line in lines)
    return [stay.code if stay else line.reference for line, stay in stays]


def open_parcel_at(unit: Unit, table: str) -> Parcel | None:
    """The parcel that is open at a table."""
    found = unit.find(Parcel, table=table, state=ParcelState.OPEN)
    return found[0] if found else None


class OpenParcel(Command, json_schema_extra={"examples": [{"orders": ["4f1c0a9be2d37788"]}]}):
    orders: tuple[Identity, ...] = Field(min_length=1, max_length=100)
    table: Place = "main"


def open_parcel(unit: Unit, said: OpenParcel) -> Parcel:
    """Open the box of these orders at a table, or take the one that was set aside for them.

    Refused: `parcel_open` when the table has one or an order's things lie in another box, `nothing_to_pack`.
    """
    orders, table = named(unit, said.orders), said.table
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
    unit.record(events.ParcelOpened(parcel=parcel.id, table=table, orders=names))
    return parcel


def pack_with(unit: Unit, parcel_id: str, order_id: str) -> Parcel:
    """Put another order into an open box, too; a person knows that both go to one buyer.

    Refused: `parcel_open` where its things lie in another box, `nothing_to_pack`, and a parcel that is not open.
    """
    parcel, [order] = _open(unit, parcel_id), named(unit, (order_id,))
    if order.id in parcel.orders:
        return parcel
    if order.parcel:
        raise Refused("parcel_open", "Another parcel of this order is not closed yet.", parcel=order.parcel)
    _refuse_ended(unit, [order])
    parcel = replace(parcel, orders=(*parcel.orders, order.id))
    unit.put(parcel)
    _bind(unit, (order.id,), parcel.id)
    unit.record(events.ParcelJoined(parcel=parcel.id, order=order.id))
    return parcel


def pack_apart(unit: Unit, parcel_id: str, order_id: str) -> Parcel:
    """Take an order out of an open box again, of which nothing lies in it.

    Refused: `still_in_box`, `only_order`.
    """
    parcel = _open(unit, parcel_id)
    if order_id not in parcel.orders:
        return parcel
    if parcel.orders == (order_id,):
        raise Refused("only_order", "A parcel has one order at least. Set it aside instead.")
    if unit.find(Line, order=order_id, parcel=parcel.id, state=LineState.PACKED):
        raise Refused("still_in_box", "Things of this order lie in the parcel. Take them out with a scan first.")
    parcel = replace(parcel, orders=tuple(name for name in parcel.orders if name != order_id))
    unit.put(parcel)
    _bind(unit, (order_id,), None)
    unit.record(events.ParcelParted(parcel=parcel.id, order=order_id))
    return parcel


def _open(unit: Unit, parcel_id: str) -> Parcel:
    parcel = must(unit, Parcel, parcel_id)
    if not parcel.open:
        raise NotAllowed(parcel.state, "pack with")
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
    parcel = replace(parcel.after("resume"), table=table, opened=unit.at)
    unit.put(parcel)
    unit.record(events.ParcelResumed(parcel=parcel.id, table=table))
    return parcel


def _bind(unit: Unit, orders: Iterable[str], parcel: str | None) -> None:
    for name in orders:
        unit.put(replace(must(unit, Order, name), parcel=parcel))


def _drop(unit: Unit, parcel: Parcel) -> Parcel:
    parcel = parcel.after("drop")
    unit.put(parcel)
    _bind(unit, parcel.orders, None)
    unit.record(events.ParcelDropped(parcel=parcel.id))
    return parcel


def set_aside(unit: Unit, parcel_id: str) -> Parcel:
    """Take an open parcel off the table; an empty one is dropped."""
    parcel = must(unit, Parcel, parcel_id)
    if not unit.find(Line, parcel=parcel.id, state=LineState.PACKED):
        return _drop(unit, parcel)
    parcel = parcel.after("set aside")
    unit.put(parcel)
    unit.record(events.ParcelSetAside(parcel=parcel.id))
    return parcel


class Close(Command, json_schema_extra={"examples": [{"partial": True}]}):
    partial: Flag = False


def close_parcel(unit: Unit, parcel_id: str, *, partial: bool = False, scan: str | None = None) -> tuple[str, ...]:
    """Release what was packed: its stays end, their slots are free, their cards are due. Answers the slot codes.

    Refused: `nothing_packed`, `still_in_box` (something in it must come out), `lines_missing` unless `partial`.
    """
    parcel = must(unit, Parcel, parcel_id)
    closed = replace(parcel.after("close"), closed=unit.at)
    packed = unit.find(Line, parcel=parcel.id, state=LineState.PACKED)
    for line in packed:
        if line.holds:
            raise Refused("still_in_box", _in_the_way(unit, line))
    if not packed:
        raise Refused("nothing_packed", "Nothing is packed yet.")
    missing = still_wanted(lines_of(unit, parcel.orders))
    if missing and not partial:
        raise Refused("lines_missing", "Not all is packed. Close it as a part, or pack the rest.")
    codes = _step_all(unit, packed, CLOSING, scan)
    codes = tuple(code for code in codes if not _back_already(unit, code))
    unit.put(closed)
    _bind(unit, parcel.orders, None)
    unit.record(events.ParcelClosed(parcel=parcel.id, orders=parcel.orders, released=codes))
    return codes


def _in_the_way(unit: Unit, line: Line) -> str:
    code = must(unit, Stay, line.stay or "").code
    match line.hold:
        case Hold.MISPLACED:
            return f"{code}: {line.why} Scan it here if it is in the parcel."
        case Hold.CANCELLED_IN_BOX:
            return f"{code} was cancelled. Take it out with a scan first."
    return f"{code} is held: {line.why} Settle that, or take it out with a scan first."


def _back_already(unit: Unit, code: str) -> bool:
    """Whether a card was read in the tray while its thing lay in the parcel: then it is back as the parcel closes."""
    slot = must(unit, Slot, code)
    if slot.seen is None or slot.seen.station is not Station.TRAY or not slot.seen.accepted:
        return False
    unit.put(slot.after("see in tray"))
    return True


def reopen(unit: Unit, parcel_id: str) -> Parcel:
    """Take back a closing: its things are in the box and stored again.

    Refused: `slot_reused` once a slot has a newer stay, `handed_over` once it has left.
    """
    parcel = must(unit, Parcel, parcel_id)
    if gone(unit, parcel):
        raise Refused("handed_over", "This parcel has left. What comes back of it is taken in as a return.")
    opened = replace(parcel.after("reopen"), opened=unit.at, later=False)
    _table_free(unit, parcel.table)
    for name in parcel.orders:
        if must(unit, Order, name).parcel is not None:
            raise Refused("parcel_open", "Another parcel of this order is not closed yet.")
    released = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    if not released:
        raise Refused("not_allowed", "Nothing of this parcel is still with its buyer.")
    _step_all(unit, released, REOPENING, None)
    for line in released:
        _read_again(unit, must(unit, Line, line.id), parcel.closed)
    unit.put(opened)
    _bind(unit, parcel.orders, parcel.id)
    unit.record(events.ParcelReopened(parcel=parcel.id, orders=parcel.orders))
    return opened


def can_reopen(unit: Unit, parcel: Parcel) -> bool:
    """Whether a closed parcel has not left, and no slot of it has a newer stay: its table may be taken still."""
    released = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    stays = [must(unit, Stay, line.stay or "") for line in released]
    unused = all(must(unit, Slot, stay.code).turns == stay.turn for stay in stays)
    return parcel.state is ParcelState.CLOSED and bool(stays) and unused and not gone(unit, parcel)


def _read_again(unit: Unit, line: Line, closed: datetime | None) -> None:
    """A thing that is in its box again, whose card was read elsewhere since that closed, may not be there: its card is
    read at the box before it closes again. Readings of which nobody knows the time say nothing against it. A card that
    was in the tray is on its thing again: it is scanned there once more when the parcel has closed.
    """
    slot = must(unit, Slot, must(unit, Stay, line.stay or "").code)
    if slot.seen is None or line.has(Hold.MISPLACED):
        return
    since = closed is not None and slot.seen.at is not None and slot.seen.at >= closed
    if contradicts_closing(slot.seen) or (since and contradicts_parcel(slot.seen, line.parcel)):
        unit.put(line.held(Hold.MISPLACED, f"Its card was read {place_words(slot.seen)} after the parcel was closed."))
    elif slot.seen.station is Station.TRAY or contradicts_parcel(slot.seen, line.parcel):
        unit.put(replace(slot, seen=None))


def _step_all(
    unit: Unit, lines: Iterable[Line], steps: tuple[tuple[str, str], ...], scan: str | None
) -> tuple[str, ...]:
    """Each line, its stay and its card by one event each; the lines keep `scan` as what changed them last.

    Refused: `slot_reused`.
    """
    codes = []
    for line in lines:
        stay = must(unit, Stay, line.stay or "")
        card = must(unit, Slot, stay.code)
        if card.turns != stay.turn:
            words = f"Another thing stands in {stay.code} by now. Take this one in as a return instead."
            raise Refused("slot_reused", words)
        for table, event in steps:
            match table:
                case "line":
                    unit.put(line.after(event, scan if line.scan == scan else None))
                case "stay":
                    unit.put(stay.after(event, unit.at))
                case "card":
                    unit.put(replace(card.after(event), out=card.out if event == "reopen" else None))
        codes.append(stay.code)
    return tuple(codes)
