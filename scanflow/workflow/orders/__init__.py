"""Orders come in and their lines are bound; a person settles what is held."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from datetime import datetime
from enum import StrEnum
from itertools import count
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import OF_BINDING, DoubtEnd, DoubtKind, Hold, LineState
from scanflow.domain.orders.binding import Asked, ReferenceFacts, bind, learns
from scanflow.domain.orders.incoming import ChannelStatus, IncomingLine, IncomingOrder
from scanflow.domain.orders.titles import Titled, words_of
from scanflow.domain.things import Item, Line, Order, Parcel, Stay
from scanflow.workflow import parcels
from scanflow.workflow.fields import (
    LONGEST_NAME,
    MOST_LINES,
    Command,
    Identity,
    Listing,
    Maybe,
    Name,
    Note,
    Reason,
    Reference,
    Time,
    words,
)
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import cards, doubts, learned, reserving
from scanflow.workflow.stock.loading import TAKEN_BACK
from scanflow.workflow.stock.sightings import gone
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
    status: Maybe[ChannelStatus] = Field(
        default=None,
        description="`aside`: not paid or cleared yet, held until `pack` is said. Absent: nothing new is said of it.",
    )
    lines: tuple[NewLine, ...] = Field(min_length=1, max_length=MOST_LINES)

    @property
    def incoming(self) -> IncomingOrder:
        lines = tuple(IncomingLine(**line.known()) for line in self.lines)
        return IncomingOrder(self.number, self.channel, self.ordered_at, self.ship_by, lines, status=self.status)


def receive(unit: Unit, incoming: IncomingOrder) -> tuple[Order, Arrival]:
    """Take an order in, once: its number is unique per channel, and the same again changes nothing.

    A later version binds its new lines, holds absent ones (`not_in_file`) and changed ones; nothing is dropped.
    Without a channel two shops may use one number: what has no line of an order that came before is another order.
    """
    known = numbered(unit, incoming)
    again = known[0] if known and incoming.channel else _most_alike(unit, known, incoming)
    if again is not None:
        return _receive_again(unit, again, incoming)
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
    )
    unit.add(order)
    lines = [_new_line(unit, order, place, line) for place, line in enumerate(incoming.lines, 1)]
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
        return (asked & Counter(_identity(line) for line in unit.find(Line, order=order.id))).total()

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


def _new_line(unit: Unit, order: Order, position: int, incoming: IncomingLine) -> Line:
    line = Line(unit.new_id(), order.id, position, **incoming.words)
    asked, found = _found(unit, order, incoming)
    bound = bind(asked, found)
    if bound.stay is not None:
        line = replace(line.after("settle"), stay=bound.stay)
    for each in bound.holds:
        line = line.held(each.hold, each.why)
    unit.add(line)
    if found.item is not None and learns(asked, found, bound):
        learned.learn(unit, asked.listing, found.item.id, line.id)
    return line


def _found(unit: Unit, order: Order, line: IncomingLine | Line) -> tuple[Asked, ReferenceFacts]:
    """What the line says of its thing, and what the room knows of that."""
    bad = line.bad if isinstance(line, IncomingLine) else None
    try:
        named = cards.referred(unit, line.reference)
    except slot_code.CodeError:
        return Asked(False, bad=bad), ReferenceFacts()
    asked = Asked(True, named.turn, line.title, line.listing, order.ordered_at, bad)
    facts = unit.facts(named.code)
    if facts is None:
        return replace(asked, known=False), ReferenceFacts()
    turn = named.turn if named.turn is not None else facts.slot.turns
    stays = unit.find(Stay, code=named.code, turn=turn)
    turns = facts.slot.turns - len(unit.find(Stay, code=named.code, reason=TAKEN_BACK))
    if not stays:
        return asked, ReferenceFacts(turns=turns)
    latest = unit.find(Stay, item=stays[0].item)[-1]
    item = must(unit, Item, latest.item)
    found = ReferenceFacts(
        stays[0],
        latest,
        item,
        _wanted_by(unit, latest),
        turns,
        doubts.said(unit, doubts.open_doubts(unit, item.id)),
        learned.listings_of(unit, item),
        learned.listed(unit, line.listing),
        kept=reserving.why(unit, item),
    )
    return asked, found if found.listed_here else replace(found, closer=_closer(unit, line.title, item))


def _closer(unit: Unit, said: str, item: Item | None) -> Titled | None:
    """Another thing in stock that the title fits better; what has every word of it can't be outdone."""
    ours = item.title if item else ""
    if words_of(said) <= words_of(ours):
        return None
    return unit.stocked().closer(said, ours, item.id if item else "")


def others(unit: Unit, line_id: str) -> tuple[Titled, ...]:
    """The other things that a line's listing id and title name: what a person compares first."""
    line = must(unit, Line, line_id)
    item = unit.get(Item, must(unit, Stay, line.stay).item) if line.stay else None
    closer = _closer(unit, line.title, item)
    found = (*learned.listed(unit, line.listing), *((closer,) if closer else ()))
    return tuple(dict.fromkeys(each for each in found if item is None or each.item != item.id))


def _wanted_by(unit: Unit, stay: Stay) -> str | None:
    """The number of the order that has the thing, or had it shipped."""
    for line in unit.find(Line, stay=stay.id):
        if line.live or line.state is LineState.RELEASED:
            return must(unit, Order, line.order).number
    return None


def _receive_again(unit: Unit, order: Order, incoming: IncomingOrder) -> tuple[Order, Arrival]:
    ordered_at, ship_by = _times(unit, incoming)
    newer = replace(order, ordered_at=ordered_at or order.ordered_at, ship_by=ship_by or order.ship_by)
    lines = unit.find(Line, order=order.id)
    left: dict[str, list[Line]] = defaultdict(list)
    for line in lines:
        left[_same(line.reference)].append(line)
    changes = []
    undated = replace(newer, ordered_at=None)  # what it has more now was ordered later, nobody says when
    position = max((line.position for line in lines), default=0)
    for wanted in incoming.lines:
        old = left[_same(wanted.reference)]
        if old:
            changes += _compare(unit, old.pop(0), wanted)
        else:
            position += 1
            changes.append(_new_line(unit, undated, position, wanted))
    changes += [line for gone in left.values() for line in _absent(unit, gone)]
    if newer != order or changes:
        unit.put(newer)
        told = tuple(_told(line) for line in changes)
        unit.record(events.OrderChanged(order=order.id, number=order.number, lines=told))
    last, done = _take_status(unit, newer, incoming.status, [line.id for line in lines])
    return last, Arrival.CHANGED if done or newer != order or changes else Arrival.UNCHANGED


NOT_CLEARED = "Its channel says that it is not paid or not cleared yet."


def _take_status(unit: Unit, order: Order, status: ChannelStatus | None, before: Collection[str]) -> tuple[Order, bool]:
    """Do what the channel says of the order, and whether anything came of it. `before`: the lines that it had already.

    What was said before is done once, so that a person's answer stands: only a new line of an order that is aside is
    held with the others.
    """
    new = status is not None and order.status != status
    lines = unit.find(Line, order=order.id)
    if ChannelStatus.ASIDE in (status, order.status if status is None else None):
        _hold_aside(unit, [line for line in lines if new or line.id not in before])
    if status is ChannelStatus.PACK:
        _clear(unit, order, [line for line in lines if line.has(Hold.NOT_CLEARED)])
    if status is ChannelStatus.CANCELLED and new and any(_can_be_cancelled(unit, line) for line in lines):
        cancel(unit, order.id, Cancel())
    if not new:
        return order, False
    order = replace(must(unit, Order, order.id), status=str(status))
    unit.put(order)
    return order, True


def _hold_aside(unit: Unit, lines: Iterable[Line]) -> None:
    for line in lines:
        if line.state is not LineState.CANCELLED and _can_be_held(unit, line):
            unit.put(line.held(Hold.NOT_CLEARED, NOT_CLEARED))
            unit.record(events.LineHeld(line=line.id, why=NOT_CLEARED))


def _clear(unit: Unit, order: Order, lines: Sequence[Line]) -> None:
    for line in lines:
        unit.put(line.freed((Hold.NOT_CLEARED,)))
    if lines:
        told = tuple(line.id for line in lines)
        unit.record(events.Cleared(order=order.id, number=order.number, lines=told))


def _same(reference: str) -> str:
    return slot_code.compact(reference)


def _compare(unit: Unit, line: Line, wanted: IncomingLine) -> list[Line]:
    """The line if the order now says something else of it; a live one is held for a person to look."""
    new = replace(line, **wanted.words | {"reference": line.reference}, in_file=True)
    if new == line:
        return []
    if (new.title, new.listing) != (line.title, line.listing):
        touched = line.state in (LineState.PICKED, LineState.PACKED, LineState.RELEASED)
        hold = Hold.CHANGED_AFTER_PICK if touched else Hold.DOUBTFUL
        new = _held(unit, new, hold, f"The order now says “{wanted.title}”, before it said “{line.title}”.")
    unit.put(new)
    return [new]


def _absent(unit: Unit, lines: Iterable[Line]) -> list[Line]:
    """Hold the lines that the order lacks now and had before; once, so that a person's answer stands."""
    gone = [
        replace(_held(unit, line, Hold.NOT_IN_FILE, "The order came again without this line."), in_file=False)
        for line in lines
        if line.in_file and line.state is not LineState.CANCELLED and _can_be_held(unit, line)
    ]
    for line in gone:
        unit.put(line)
    return gone


def _held(unit: Unit, line: Line, hold: Hold, why: str) -> Line:
    return line.held(hold, why) if _can_be_held(unit, line) else line


def _can_be_held(unit: Unit, line: Line) -> bool:
    """Not what has left or come back; a cancelled line keeps its holds for when it is wanted after all."""
    if line.state is LineState.RELEASED:
        return not gone(unit, must(unit, Parcel, line.parcel or ""))
    return line.state is not LineState.RETURNED


class Cancel(Command, json_schema_extra={"examples": [{}]}):
    line: Maybe[Identity] = Field(default=None, description="Absent: all lines.")


def cancel(unit: Unit, order_id: str, said: Cancel) -> Order:
    """Cancel one line or all that can be. What lies in a parcel is only held: it must come out by a scan first, and a
    closed parcel does not leave meanwhile. Refused: `already_released` where all has left.
    """
    order = must(unit, Order, order_id)
    lines = unit.find(Line, order=order_id)
    if said.line is not None:
        lines = tuple(line for line in lines if line.id == said.line)
        if not lines:
            raise Invalid("/line", "unknown_line", "The order has no such line.")
    open_lines = [line for line in lines if _can_be_cancelled(unit, line)]
    if not open_lines and any(line.state is LineState.RELEASED for line in lines):
        raise Refused("already_released", "It has left. Nothing can be cancelled.")
    cancelled = [_cancel(unit, line) for line in open_lines]
    if cancelled:
        names = tuple(line.id for line in cancelled)
        unit.record(events.Cancelled(order=order.id, number=order.number, lines=names))
    return order


def _can_be_cancelled(unit: Unit, line: Line) -> bool:
    if line.state is LineState.RELEASED:
        return _can_be_held(unit, line)
    return line.live or line.state is LineState.UNBOUND


def _cancel(unit: Unit, line: Line) -> Line:
    match line.state:
        case LineState.PACKED:
            new = line.held(Hold.CANCELLED_IN_BOX, "Cancelled while in the parcel. Take it out with a scan.")
        case LineState.RELEASED:
            new = line.held(
                Hold.CANCELLED_IN_BOX,
                "Cancelled after its parcel was closed. Open the parcel again and take the thing out.",
            )
        case _:
            new = line.after("cancel")
    unit.put(new)
    return new


class Settle(Command, json_schema_extra={"examples": [{}]}):
    stay: Maybe[Identity] = Field(default=None, description="Absent: the one it is bound to.")
    hold: Maybe[Hold] = Field(default=None, description="Which hold is settled. Absent: the gravest.")


def settle(unit: Unit, line_id: str, said: Settle) -> Line:
    """A person decides: this stay it is, or the one it is bound to.

    One hold goes; with another stay all that was about the former thing goes, and
    what is doubted of the new one comes. Refused: `not_held`, `still_in_box`, `doubted`.
    """
    line = must(unit, Line, line_id)
    target = said.stay or line.stay
    if line.state is LineState.UNBOUND and target is None:
        raise Invalid("/stay", "required", "Say which thing this line means.")
    if target != line.stay and target is not None:
        _refuse_in_box(line)
        check_wanted(unit, target)
        new = replace(_unbound(line.freed(OF_BINDING)), stay=target)
        new = _held_by(unit, new.after("settle"), must(unit, Stay, target).item)
        learned.forget(unit, line=line.id)
        settled = line.hold
    else:
        settled = _settled(line, said.hold)
        new = line.freed((settled,)) if settled is not None else line
    unit.put(new)
    unit.record(events.LineSettled(line=line.id, stay=target, hold=settled))
    if settled is Hold.RESERVED and target is not None and target == line.stay:
        reserving.end(unit, target)
    return new


def _held_by(unit: Unit, line: Line, item: str) -> Line:
    """The line with what holds the thing that it is bound to now."""
    return reserving.hold(unit, doubts.hold(unit, line, item), item)


def _refuse_in_box(line: Line) -> None:
    """Of what lies in a closed parcel a person may say that it has left, or is wanted after all."""
    if line.has(Hold.CANCELLED_IN_BOX) and line.state is not LineState.RELEASED:
        raise Refused("still_in_box", "It was cancelled. Take it out of the parcel with a scan.")


def _settled(line: Line, hold: Hold | None) -> Hold | None:
    """The hold that a person's word ends. Doubts end by themselves, and what is packed by a scan at its parcel."""
    chosen = hold or line.hold
    if chosen is None:
        return None
    if not line.has(chosen):
        raise Refused("not_held", f"The line is not held for this reason: {chosen.replace('_', ' ')}.")
    match chosen:
        case Hold.CANCELLED_IN_BOX:
            _refuse_in_box(line)
        case Hold.MISPLACED if line.state is LineState.PACKED:
            raise Refused("still_in_box", "Scan its card at its open parcel, or take it out with a scan.")
        case Hold.SUSPECT:
            why = doubts.sentence(line.why)
            raise Refused("doubted", f"{why} Settle the doubt first: compare it with its picture, then scan its card.")
    return chosen


def _unbound(line: Line) -> Line:
    """The line free of its stay: what was picked for it has to go back, what is packed must come out first."""
    match line.state:
        case LineState.UNBOUND:
            return line
        case LineState.PACKED:
            raise Refused("still_in_box", "Take the other thing out of the parcel with a scan first.")
        case LineState.PICKED:
            line = line.after("put back")
        case LineState.SHORT:
            line = line.after("find")
    return replace(line.after("unbind"), stay=None, round=None, basket=None)


def check_wanted(unit: Unit, stay_id: str) -> None:
    """`not_in_stock` of a thing that has left, `has_live_line` where another order wants it."""
    stay = unit.get(Stay, stay_id)
    if stay is None:
        raise Invalid("/stay", "unknown_stay", "There is no such stay.")
    cards.in_stock(unit, stay_id)
    for line in unit.find(Line, stay=stay_id):
        if line.live:
            number = must(unit, Order, line.order).number
            raise Refused("has_live_line", f"Order {number} wants that thing.")


class Short(Command, json_schema_extra={"examples": [{"note": "Not in its bin"}]}):
    note: Note = ""


def short(unit: Unit, line_id: str, said: Short) -> Line:
    """Its thing is not where it should be; it is missing until somebody sees it, whoever orders it next."""
    line = _step(unit, line_id, "miss", events.LineShort(line=line_id, note=said.note))
    doubts.doubt(unit, must(unit, Stay, line.stay or "").item, DoubtKind.MISSING, said.note)
    return _held_by_doubts(unit, line)


def found(unit: Unit, line_id: str) -> Line:
    """It turned up, as somebody says; the line waits again."""
    line = _step(unit, line_id, "find", events.LineFound(line=line_id, note=""))
    doubts.found(unit, must(unit, Stay, line.stay or "").item, DoubtEnd.CORRECTED)
    return _held_by_doubts(unit, line)


def _held_by_doubts(unit: Unit, line: Line) -> Line:
    """The line as the doubts of its thing have it now."""
    line = doubts.hold(unit, line, must(unit, Stay, line.stay or "").item)
    unit.put(line)
    return line


def _step(unit: Unit, line_id: str, step: str, event: events.Event) -> Line:
    line = must(unit, Line, line_id).after(step)
    unit.put(line)
    unit.record(event)
    return line


class NotThis(Command, json_schema_extra={"examples": [{"why": "The picture shows another saddle"}]}):
    why: Reason


def hold(unit: Unit, line_id: str, said: NotThis) -> Line:
    """“Not this thing”: its item is in doubt, and the line stands still until a person settles that.

    Said of what lies in a closed parcel that has not left, the parcel is opened again; where its table is taken, it is
    held closed.
    """
    line = must(unit, Line, line_id)
    if line.stay is None or not (line.live or line.state is LineState.RELEASED):
        raise Refused("not_allowed", f"The line is {line.state}; there is nothing to hold.")
    if line.state is LineState.RELEASED:
        _open_if_can_be(unit, line)
    doubts.doubt(unit, must(unit, Stay, line.stay).item, DoubtKind.NOT_THIS, said.why)
    line = _held_by_doubts(unit, must(unit, Line, line_id))
    unit.record(events.LineHeld(line=line.id, why=said.why))
    return line


def _open_if_can_be(unit: Unit, line: Line) -> None:
    """Open its closed parcel again, unless the table or a slot is taken by now. Refused: `handed_over` once it left."""
    parcel = must(unit, Parcel, line.parcel or "")
    if gone(unit, parcel) or (parcels.can_reopen(unit, parcel) and parcels.open_parcel_at(unit, parcel.table) is None):
        parcels.reopen(unit, parcel.id)


def revive(unit: Unit, line_id: str) -> Line:
    """A cancelled line is wanted after all, while its thing is in stock and no other order has it.

    It is held as before, and by what is doubted of its thing now; one that was bound to nothing is unbound again.
    """
    line = must(unit, Line, line_id)
    new = line.after("revive unbound") if line.stay is None else _wanted_again(unit, line, "revive")
    unit.put(new)
    unit.record(events.Revived(line=line.id, stay=new.stay))
    return new


def send_again(unit: Unit, line_id: str) -> Line:
    """What came back goes to its buyer once more: the line waits for the thing where it stands now."""
    new = _wanted_again(unit, must(unit, Line, line_id), "send again")
    unit.put(new)
    unit.record(events.SentAgain(line=new.id, stay=new.stay))
    return new


def _wanted_again(unit: Unit, line: Line, event: str) -> Line:
    """The line bound to its thing's present stay, held by what holds the thing."""
    new = line.after(event).freed((Hold.MISPLACED, Hold.CANCELLED_IN_BOX))
    latest = unit.find(Stay, item=must(unit, Stay, line.stay or "").item)[-1]
    check_wanted(unit, latest.id)
    return _held_by(unit, replace(new, stay=latest.id, round=None, basket=None, parcel=None), latest.item)
