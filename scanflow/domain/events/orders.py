"""Orders, their lines, and the listings that they brought."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import TypedDict

from scanflow.domain.events.kinds import LEFT_OUT, Event, ItemId, LineId, NamedThing, Noun, OrderId, StayId, event


class LineTold(TypedDict):
    """A line as it came, and what it was bound to."""

    line: str
    reference: str
    stay: str | None
    hold: str | None


def _with_lines(order: Event, lines: tuple[LineTold, ...]) -> tuple[NamedThing, ...]:
    stays = (NamedThing(Noun.STAY, each["stay"]) for each in lines if each["stay"] is not None)
    return (*Event.about(order), *(NamedThing(Noun.LINE, each["line"]) for each in lines), *stays)


@event("order received", moves=())
class OrderReceived(Event):
    """`note` and `collected` are told of one that a person took down by hand."""

    order: OrderId
    number: str
    channel: str
    lines: tuple[LineTold, ...]
    note: str | None = field(default=None, metadata=LEFT_OUT)
    collected: bool | None = field(default=None, metadata=LEFT_OUT)

    def about(self) -> tuple[NamedThing, ...]:
        return _with_lines(self, self.lines)


@event("order sent or collected", moves=())
class WayChanged(Event):
    """The buyer comes for it after all, or it is sent after all."""

    order: OrderId
    number: str
    collected: bool


@event("order cleared", moves=())
class Cleared(Event):
    """Its channel now says to pack it: these lines of it wait no longer."""

    order: OrderId
    number: str
    lines: tuple[LineId, ...]


@event("order changed", moves=())
class OrderChanged(Event):
    """It came again; `lines` are those of which it says something else now."""

    order: OrderId
    number: str
    lines: tuple[LineTold, ...]

    def about(self) -> tuple[NamedThing, ...]:
        return _with_lines(self, self.lines)


@event("orders loaded", moves=())
class OrdersLoaded(Event):
    """A part of a file of orders is in; each order has an entry of its own before it."""

    load: str
    loaded: int
    changed: int


@event("order taken back", moves=())
class OrderTakenBack(Event):
    """The file that brought it, or changed it, was taken back: these lines of it are cancelled, or as before."""

    order: OrderId
    number: str
    load: str
    lines: tuple[LineId, ...]


@event("channel changed", moves=())
class ChannelChanged(Event):
    """What the statuses of a channel mean, and whether its file lists all open orders."""

    channel: str
    statuses: Mapping[str, str]
    complete: bool


@event("orders of channel", moves=())
class OrdersOfChannel(Event):
    """Orders and listings that named no channel are of this one, as a person says."""

    channel: str
    orders: tuple[OrderId, ...]
    listings: int


@event("held", moves=())
class LineHeld(Event):
    line: LineId
    why: str


@event("settled", moves=("line",))
class LineSettled(Event):
    """A person decided what a held line means; what was picked for it has to go back."""

    line: LineId
    stay: StayId | None
    hold: str | None


@event("short", moves=())
class LineShort(Event):
    """Its thing is not there: nobody knows where it is, so nothing is known to have moved."""

    line: LineId
    note: str


@event("found", moves=("line",))
class LineFound(Event):
    line: LineId
    note: str


@event("cancelled", moves=())
class Cancelled(Event):
    order: OrderId
    number: str
    lines: tuple[LineId, ...]


@event("revived", moves=())
class Revived(Event):
    line: LineId
    stay: StayId | None


@event("sent again", moves=())
class SentAgain(Event):
    line: LineId
    stay: StayId | None


@event("listing learned", moves=())
class ListingLearned(Event):
    """A line with an exact reference brought an id that nobody knew."""

    listing: str
    item: ItemId
    line: LineId
    channel: str | None = field(default=None, metadata=LEFT_OUT)


@event("listing forgotten", moves=())
class ListingForgotten(Event):
    listing: str
    item: ItemId
    line: LineId
