"""Orders come in, for the first time or again: their lines are bound, and what has changed is held."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from datetime import datetime
from enum import StrEnum
from itertools import count
from typing import Annotated, Literal

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import OF_BINDING, Hold, LineState
from scanflow.domain.orders.binding import more_than_one
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import ChannelStatus, Line, Order
from scanflow.workflow import orders
from scanflow.workflow.fields import (
    LONGEST_NAME,
    MOST_LINES,
    Command,
    Listing,
    Maybe,
    Name,
    Reference,
    Time,
    words,
)
from scanflow.workflow.orders import mending
from scanflow.workflow.orders.binding import mend, new_line
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.times import HOW, instant


class Arrival(StrEnum):
    """What an order that comes in is beside what stood of it."""

    NEW = "new"
    CHANGED = "changed"
    UNCHANGED = "unchanged"


class NewLine(Command, json_schema_extra={"examples": [{"reference": "D014-01K"}]}):
    reference: Reference
    title: Annotated[str, words(500)] = ""
    listing: Listing = ""


class NewOrder(
    Command,
    json_schema_extra={
        "examples": [{"number": "1001", "lines": [{"reference": "D014-01K", "title": "Rear derailleur, long cage"}]}]
    },
):
    number: Name
    channel: Annotated[str, words(LONGEST_NAME)] = ""
    ordered_at: Maybe[Time] = None
    ship_by: Maybe[Time] = None
    status: Maybe[Literal[ChannelStatus.PACK, ChannelStatus.ASIDE, ChannelStatus.CANCELLED]] = Field(
        default=None,
        description="`aside`: not paid or cleared yet, held until `pack` is said. Absent: nothing new is said of it.",
    )
    lines: tuple[NewLine, ...] = Field(min_length=1, max_length=MOST_LINES)

    @property
    def incoming(self) -> IncomingOrder:
        lines = tuple(IncomingLine(**line.known()) for line in self.lines)
        return IncomingOrder(self.number, self.channel, self.ordered_at, self.ship_by, lines, status=self.status)


def receive(unit: Unit, incoming: IncomingOrder, load: str | None = None) -> tuple[Order, Arrival]:
    """Take an order in, once: its number is unique per channel, and the same again changes nothing. `load` names the
    file that brings it.

    A later version binds its new lines, holds absent ones (`not_in_file`) and changed ones; nothing is dropped. Where a
    file has other things only, they are held too: it may be another channel's.
    Without a channel two shops may use one number: what has no line of an order that came before is another order.
    """
    known = numbered(unit, incoming)
    again = known[0] if known and incoming.channel else _most_alike(unit, known, incoming)
    if again is not None:
        return _receive_again(unit, again, incoming, load)
    ordered_at, ship_by = _times(unit, incoming)
    number = free_number(unit, incoming) if known else incoming.number
    sent = incoming.number if known else ""
    order = Order(
        unit.new_id(),
        number,
        incoming.channel,
        unit.at,
        unit.next_slip(),
        ordered_at,
        ship_by,
        sent_number=sent,
        note=incoming.note,
        collected=incoming.collected,
        load=load,
    )
    unit.add(order)
    lines = [_told_alone(unit, new_line(unit, order, *each), each[1]) for each in enumerate(incoming.lines, 1)]
    told = tuple(_told(line) for line in lines)
    unit.record(
        events.OrderReceived(
            order=order.id,
            number=order.number,
            channel=order.channel,
            lines=told,
            note=order.note or None,
            collected=order.collected or None,
        )
    )
    if known:
        _hold_both(unit, known, order)
    return _take_status(unit, order, incoming.status, ())[0], Arrival.NEW


def numbered(unit: Unit, incoming: IncomingOrder) -> tuple[Order, ...]:
    """The orders that came under this number: at most one where a channel is named."""
    first = unit.find(Order, number=incoming.number, channel=incoming.channel)
    if not first or incoming.channel:
        return first
    return (*first, *unit.find(Order, sent_number=incoming.number, channel=""))


def _most_alike(unit: Unit, known: Iterable[Order], incoming: IncomingOrder) -> Order | None:
    """The order that has the most lines of the one that comes, None where none has any."""
    asked = Counter(_identity(line) for line in incoming.lines)

    def shared(order: Order) -> int:
        lines = unit.find(Line, order=order.id)
        alike = (asked & Counter(_identity(line) for line in lines)).total()
        return alike or len(mending.pairs(lines, incoming.lines, last=False))

    best = max(known, key=shared, default=None)
    return best if best is not None and (shared(best) or not asked) else None


def _identity(line: Line | IncomingLine) -> str:
    """What tells that two lines are the same: the reference, or the title of a row that has none."""
    return _same(line.reference) or line.title.casefold()


def free_number(unit: Unit, incoming: IncomingOrder) -> str:
    """The number with the next free mark: `1001 (2)`."""
    marked = (f"{incoming.number} ({place})" for place in count(2))
    return next(each for each in marked if not unit.find(Order, number=each, channel=incoming.channel))


def _hold_both(unit: Unit, known: Iterable[Order], order: Order) -> None:
    """Two orders came under one number: nothing of either leaves until a person has looked at each line."""
    names = ", ".join(each.number for each in known)
    held = [
        (each, f"A different order came under the number {order.sent_number}. It is kept as {order.number}.")
        for each in known
    ]
    held.append((order, f"It came under the number {order.sent_number}, which another order already has: {names}."))
    for each, why in held:
        for line in unit.find(Line, order=each.id):
            if line.live or line.state is LineState.UNBOUND:
                unit.put(line.held(Hold.DOUBTFUL, why))
                unit.record(events.LineHeld(line=line.id, why=why))


def _times(unit: Unit, incoming: IncomingOrder) -> tuple[datetime | None, datetime | None]:
    times = []
    for name in ("ordered_at", "ship_by"):
        try:
            times.append(instant(getattr(incoming, name), unit.settings.zone))
        except (ValueError, OverflowError) as error:
            raise Invalid(f"/{name}", "bad_time", HOW) from error
    return times[0], times[1]


def _told(line: Line) -> events.LineTold:
    return {"line": line.id, "reference": line.reference, "stay": line.stay, "hold": line.hold}


def _receive_again(unit: Unit, order: Order, incoming: IncomingOrder, load: str | None) -> tuple[Order, Arrival]:
    ordered_at, ship_by = _times(unit, incoming)
    newer = replace(order, ordered_at=ordered_at or order.ordered_at, ship_by=ship_by or order.ship_by)
    lines = unit.find(Line, order=order.id)
    left: dict[str, list[Line]] = defaultdict(list)
    mended = mending.pairs(lines, incoming.lines)
    for line in lines:
        if line not in mended.values():
            left[_same(line.reference)].append(line)
    changes: list[Line] = []
    added: list[Line] = []
    undated = replace(newer, ordered_at=None)  # what it has more now was ordered later, nobody says when
    position = max((line.position for line in lines), default=0)
    for place, wanted in enumerate(incoming.lines):
        old = left[_same(wanted.reference)]
        if place in mended:
            changes.append(_told_alone(unit, mend(unit, newer, mended[place], wanted), wanted))
        elif old:
            changes += _compare(unit, old.pop(0), wanted)
        else:
            position += 1
            added.append(_told_alone(unit, new_line(unit, undated, position, wanted), wanted))
    if load and len(added) == len(incoming.lines) and any(_has_thing(line) for line in lines):
        added = [line.held(Hold.DOUBTFUL, OTHER_THINGS) for line in added]
        for line in added:
            unit.put(line)
    changes += added
    changes += [line for gone in left.values() for line in hold_absent(unit, gone, WITHOUT_LINE)]
    if newer != order or changes:
        unit.put(newer)
        tell_change(unit, order, changes)
    last, done = _take_status(unit, newer, incoming.status, [line.id for line in lines])
    return last, Arrival.CHANGED if done or newer != order or changes else Arrival.UNCHANGED


def _has_thing(line: Line) -> bool:
    return line.stay is not None and line.state is not LineState.CANCELLED


def tell_change(unit: Unit, order: Order, changes: Iterable[Line]) -> None:
    """Record that something else is said of these lines of an order now."""
    told = tuple(_told(line) for line in changes)
    unit.record(events.OrderChanged(order=order.id, number=order.number, lines=told))


NOT_CLEARED = "Its channel says that it is not paid or not cleared yet."
SENT = "Its channel says that it was sent. Is it still to be packed?"
WITHOUT_LINE = "The order came again without this line."
OTHER_THINGS = "The order came again with other things only. Is it the same order, or another channel's?"
AFTER_ALL = "Its channel said that it was cancelled. Now it says that it is wanted."
TO_PACK = frozenset({LineState.UNBOUND, LineState.WAITING, LineState.PICKED, LineState.SHORT})


def _take_status(unit: Unit, order: Order, status: ChannelStatus | None, before: Collection[str]) -> tuple[Order, bool]:
    """Do what the channel says of the order, and whether anything came of it. `before`: the lines that it had already.

    What was said before is done once, so that a person's answer stands: only a new line of an order that is aside is
    held with the others, and one of a cancelled order is cancelled.
    """
    new = status is not None and order.status != status
    if new and order.status == ChannelStatus.CANCELLED and status is not ChannelStatus.SENT:
        asked_for = (line for line in unit.find(Line, order=order.id) if line.in_file)
        _want_again(unit, [line for line in asked_for if line.status != ChannelStatus.CANCELLED])
    lines = unit.find(Line, order=order.id)
    affected = [line for line in lines if new or line.id not in before]
    match status or order.status:
        case ChannelStatus.ASIDE:
            _hold_for_channel(unit, affected, Hold.NOT_CLEARED, NOT_CLEARED)
        case ChannelStatus.SENT if status is ChannelStatus.SENT:
            _hold_for_channel(unit, [line for line in affected if line.state in TO_PACK], Hold.NOT_IN_FILE, SENT)
        case ChannelStatus.CANCELLED:
            for line in affected:
                if orders.can_be_cancelled(unit, line):
                    orders.cancel(unit, order.id, orders.Cancel(line=line.id))
    if status is ChannelStatus.PACK:
        _clear(unit, order, [line for line in lines if line.has(Hold.NOT_CLEARED)])
    if not new:
        return order, False
    order = replace(must(unit, Order, order.id), status=str(status))
    unit.put(order)
    return order, True


def _want_again(unit: Unit, lines: Iterable[Line]) -> None:
    """What was cancelled is wanted after all, as its channel says: it is held until a person has looked."""
    for line in lines:
        in_box = line.has(Hold.CANCELLED_IN_BOX) and orders.can_be_held(unit, line)
        if in_box or line.state is LineState.CANCELLED:
            again = line.freed((Hold.CANCELLED_IN_BOX,)) if in_box else _revived(unit, line)
            unit.put(again.held(Hold.DOUBTFUL, AFTER_ALL))
            unit.record(events.LineHeld(line=line.id, why=AFTER_ALL))


def _revived(unit: Unit, line: Line) -> Line:
    """Bound to nothing where its thing is out of stock, or another order wants it."""
    try:
        return orders.revive(unit, line.id)
    except Refused as error:
        new = replace(line.freed(OF_BINDING).after("revive unbound"), stay=None, parcel=None, round=None, basket=None)
        return new.held(Hold.ALREADY_SOLD, error.detail)


def _hold_for_channel(unit: Unit, lines: Iterable[Line], hold: Hold, why: str) -> None:
    """A cancelled line keeps it for when it is wanted after all."""
    for line in lines:
        if orders.can_be_held(unit, line):
            unit.put(line.held(hold, why))
            unit.record(events.LineHeld(line=line.id, why=why))


def _clear(unit: Unit, order: Order, lines: Sequence[Line]) -> None:
    for line in lines:
        unit.put(line.freed((Hold.NOT_CLEARED,)))
    if lines:
        told = tuple(line.id for line in lines)
        unit.record(events.Cleared(order=order.id, number=order.number, lines=told))


def _same(reference: str) -> str:
    return slot_code.compact(reference)


def _told_alone(unit: Unit, line: Line, incoming: IncomingLine) -> Line:
    """A line that was bound just now, and what its channel says of it alone."""
    return _called_off(unit, line, incoming.status)[0] if incoming.status else line


def _called_off(unit: Unit, line: Line, status: ChannelStatus) -> list[Line]:
    """The line of which its channel says alone that it was cancelled or sent: cancelled, or held for a person; once,
    so that a person's answer stands.
    """
    if line.status == status:
        return []
    line = replace(line, status=str(status), in_file=True)
    unit.put(line)
    if status is ChannelStatus.CANCELLED and orders.can_be_cancelled(unit, line):
        orders.cancel(unit, line.order, orders.Cancel(line=line.id))
    elif status is ChannelStatus.SENT and line.state in TO_PACK:
        _hold_for_channel(unit, [line], Hold.NOT_IN_FILE, SENT)
    return [must(unit, Line, line.id)]


def _compare(unit: Unit, line: Line, wanted: IncomingLine) -> list[Line]:
    """The line if the order now says something else of it; a live one is held for a person to look."""
    if wanted.status is not None:
        return _called_off(unit, line, wanted.status)
    if line.status == ChannelStatus.CANCELLED:
        _want_again(unit, [line])
        line = must(unit, Line, line.id)
    new = replace(line, **wanted.words | {"reference": line.reference}, in_file=True, status="")
    if new == line:
        return []
    touched = line.state in (LineState.PICKED, LineState.PACKED, LineState.RELEASED)
    hold = Hold.CHANGED_AFTER_PICK if touched else Hold.DOUBTFUL
    if (new.title, new.listing) != (line.title, line.listing):
        new = _held(unit, new, hold, f"The order now says “{wanted.title}”, before it said “{line.title}”.")
    if new.quantity and new.quantity != line.quantity:
        new = _held(unit, new, hold, more_than_one(new.quantity))
    unit.put(new)
    return [new]


def hold_absent(unit: Unit, lines: Iterable[Line], why: str) -> list[Line]:
    """Hold the lines that came before and did not come now; once, so that a person's answer stands."""
    gone = []
    for line in (each for each in lines if each.in_file):
        if line.state is LineState.CANCELLED:
            unit.put(replace(line, in_file=False))
        elif orders.can_be_held(unit, line):
            gone.append(replace(line.held(Hold.NOT_IN_FILE, why), in_file=False))
            unit.put(gone[-1])
    return gone


def _held(unit: Unit, line: Line, hold: Hold, why: str) -> Line:
    return line.held(hold, why) if orders.can_be_held(unit, line) else line
