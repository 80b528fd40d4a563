"""What is derived and never stored: states of slots, orders and listings."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol

from scanflow.domain.life import LIVE, CardState, LineState
from scanflow.domain.things import Held, Listing, Slot, Stay


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


class ListingState(StrEnum):
    """`to_take_down`: the thing is not for sale, and the offer may still be up. A channel ends what it sold itself."""

    UP = "up"
    TO_TAKE_DOWN = "to_take_down"
    ENDED = "ended"


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


HAVING = LIVE | {LineState.RELEASED}
"""The states of a line that has its thing: no other order can."""


@dataclass(frozen=True, slots=True)
class ForSale:
    """What tells whether a thing is for sale: that it is `stored`, by its latest stay; that it is `reserved` now, or
    `missing` by an open doubt. `had`: of each line that has it the channel of its order, and the line's listing id.
    """

    stored: bool
    reserved: bool = False
    missing: bool = False
    had: tuple[tuple[str, str], ...] = ()

    def __bool__(self) -> bool:
        return self.stored and not (self.reserved or self.missing or self.had)

    def sold_by(self, listing: Listing) -> bool:
        """Whether an order has the thing that came by this offer: it says its channel, or its id."""
        named = (listing.channel, listing.listing)
        return any(said and said == ours for had in self.had for said, ours in zip(had, named, strict=True))


def listing_state(listing: Listing, thing: ForSale) -> ListingState:
    """An offer is up while its thing is for sale. It is no duty once it ended, or where its channel sold the thing."""
    if listing.ended is not None or thing.sold_by(listing):
        return ListingState.ENDED
    return ListingState.UP if thing else ListingState.TO_TAKE_DOWN
