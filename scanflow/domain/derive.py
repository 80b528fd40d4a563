"""What is derived and never stored: states of slots and orders."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from typing import Protocol

from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Held, Slot, Stay


class SlotState(StrEnum):
    """`due`: its last item left, its card was not seen since."""

    FREE = "free"
    TAKEN = "taken"
    DUE = "due"
    RETIRED = "retired"


ENDED = frozenset({LineState.CANCELLED, LineState.RETURNED})


class OrderState(StrEnum):
    """Of all that fit an order the first is its state."""

    HELD = "held"
    WAITING = "waiting"
    PICKING = "picking"
    PACKING = "packing"
    RELEASED = "released"
    CANCELLED = "cancelled"
    RETURNED = "returned"


class Standing(Protocol):
    """Where a line stands, be it a thing of the room or a row of a list."""

    @property
    def state(self) -> LineState: ...

    @property
    def holds(self) -> tuple[Held, ...]: ...

    @property
    def round(self) -> str | None: ...


def slot_state(slot: Slot, stay: Stay | None) -> SlotState:
    """Taken while a stay is open; else due until its card is seen, retired while its card is lost, or free."""
    if stay is not None and stay.open:
        return SlotState.TAKEN
    if slot.card is CardState.LOST:
        return SlotState.RETIRED
    return SlotState.FREE if slot.card is CardState.TRAY else SlotState.DUE


def unseen(slot: Slot, stay: Stay) -> bool:
    """Whether a thing came by file and its card was not read since."""
    return stay.open and stay.load is not None and slot.seen is None


def stands_still(line: Standing) -> bool:
    """Whether a line is held. A cancelled one keeps its holds for when it is wanted after all, and asks for nobody."""
    return bool(line.holds) and line.state not in ENDED


def to_fetch(line: Standing) -> bool:
    """Whether a walk through the room is wanted for a line: it waits, and nothing holds it."""
    return line.state is LineState.WAITING and not stands_still(line)


def to_walk(line: Standing, round_id: str) -> bool:
    """Whether the stop of a line still wants walking to on this round."""
    return to_fetch(line) and line.round == round_id


def order_state(lines: Iterable[Standing]) -> OrderState:
    """The order stands where its least advanced line stands: the first of the list that fits."""
    lines = tuple(lines)
    states = {line.state for line in lines}
    if LineState.UNBOUND in states or any(stands_still(line) for line in lines):
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
