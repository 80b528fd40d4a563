"""Orders and their lines once they are here: a person settles what is held, cancels, misses, finds and doubts."""

from __future__ import annotations

from dataclasses import replace

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.life import OF_BINDING, DoubtEnd, DoubtKind, Hold, LineState
from scanflow.domain.things import Line, Order, Parcel, Stay
from scanflow.workflow import parcels
from scanflow.workflow.fields import (
    Command,
    Identity,
    Maybe,
    Note,
    Reason,
)
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import cards, doubts, listings, reserving
from scanflow.workflow.stock.sightings import gone


def can_be_held(unit: Unit, line: Line) -> bool:
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
    open_lines = [line for line in lines if can_be_cancelled(unit, line)]
    if not open_lines and any(line.state is LineState.RELEASED for line in lines):
        raise Refused("already_released", "It has left. Nothing can be cancelled.")
    cancelled = [_cancel(unit, line) for line in open_lines]
    if cancelled:
        names = tuple(line.id for line in cancelled)
        unit.record(events.Cancelled(order=order.id, number=order.number, lines=names))
    return order


def can_be_cancelled(unit: Unit, line: Line) -> bool:
    """Whether it has neither left nor been cancelled before."""
    if line.state is LineState.RELEASED:
        return can_be_held(unit, line)
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
        new = held_by(unit, new.after("settle"), must(unit, Stay, target).item)
        listings.forget(unit, line=line.id)
        settled = line.hold
    else:
        settled = _settled(line, said.hold)
        new = line.freed((settled,)) if settled is not None else line
    unit.put(new)
    unit.record(events.LineSettled(line=line.id, stay=target, hold=settled))
    if settled is Hold.RESERVED and target is not None and target == line.stay:
        reserving.end(unit, target)
    return new


def held_by(unit: Unit, line: Line, item: str) -> Line:
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
    return held_by(unit, replace(new, stay=latest.id, round=None, basket=None, parcel=None), latest.item)
