"""What is derived and never stored: states of slots and orders, and put-back duties."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Line, Slot, Station, Stay


class SlotState(StrEnum):
    FREE = "free"
    TAKEN = "taken"
    DUE = "due"
    RETIRED = "retired"


class OrderState(StrEnum):
    HELD = "held"
    WAITING = "waiting"
    PICKING = "picking"
    PACKING = "packing"
    RELEASED = "released"
    CANCELLED = "cancelled"
    RETURNED = "returned"


def slot_state(slot: Slot, stay: Stay | None) -> SlotState:
    """Taken while a stay is open; else due until its card is seen, retired while its card is lost, or free."""
    if stay is not None and stay.open:
        return SlotState.TAKEN
    if slot.card is CardState.LOST:
        return SlotState.RETIRED
    return SlotState.FREE if slot.card is CardState.TRAY else SlotState.DUE


def order_state(lines: Iterable[Line]) -> OrderState:
    """The order stands where its least advanced line stands: the first of the list that fits."""
    lines = tuple(lines)
    states = {line.state for line in lines}
    if LineState.UNBOUND in states or any(line.hold for line in lines):
        return OrderState.HELD
    for state, those in (
        (OrderState.WAITING, {LineState.WAITING, LineState.SHORT}),
        (OrderState.PICKING, {LineState.PICKED}),
        (OrderState.PACKING, {LineState.PACKED}),
        (OrderState.RELEASED, {LineState.RELEASED}),
    ):
        if states & those:
            return state
    return OrderState.RETURNED if LineState.RETURNED in states else OrderState.CANCELLED


def seen_away(slot: Slot) -> bool:
    """Whether the card was last seen away from its own bin: pulled on a round, at a table, or in another bin."""
    if slot.seen is None:
        return False
    match slot.seen.station:
        case Station.BIN:
            return slot.seen.accepted
        case Station.TABLE:
            return True
        case Station.SHELF:
            return slot.seen.place != slot.bin
        case Station.TRAY:
            return False


def must_go_back(slot: Slot, stay: Stay | None, line: Line | None) -> bool:
    """A put-back duty: a stored thing that is out of its bin without a live line that wants it."""
    return stay is not None and stay.open and line is None and seen_away(slot)


def stands_in(slot: Slot) -> str:
    """The bin to walk to for this slot's thing: where it was seen last on a shelf, else its own."""
    seen = slot.seen
    return seen.place if seen is not None and seen.station is Station.SHELF else slot.bin
