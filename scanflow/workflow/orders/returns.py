"""What comes back: expected, arrived, and each thing of it checked.

A return is of the order whose things left. Of a parcel that nobody expects its check says whose things they are, or
that they were never ours.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import Condition, Hold, LineState, ReturnState
from scanflow.domain.things import CheckedThing, Line, Order, Parcel, Return, Stay
from scanflow.workflow import parcels
from scanflow.workflow.fields import MOST_LINES, CardText, Command, Identity, Maybe, Note, Time, words
from scanflow.workflow.parcels import shipping, slips
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import begin, doubts, in_hand
from scanflow.workflow.times import instant

STORED = (Condition.RESELL, Condition.CHECK)
"""These conditions put the thing into a slot."""

OTHERWISE: dict[Condition, tuple[Condition, ...]] = {
    Condition.RESELL: (),
    Condition.CHECK: (),
    Condition.SCRAP: STORED,
    Condition.STAYS: (*STORED, Condition.SCRAP),
}
"""How a thing that was checked may be checked once more, if that was a slip."""


class Expect(Command, json_schema_extra={"examples": [{"order": "4f1c0a9be2d37788", "why": "Too small"}, {}]}):
    order: Maybe[Identity] = Field(default=None, description="Absent: a parcel that nobody expects.")
    lines: Maybe[Annotated[tuple[Identity, ...], Field(min_length=1, max_length=MOST_LINES)]] = Field(
        default=None, description="Absent: all of the order that can come back."
    )
    why: Note = ""
    until: Maybe[Time] = Field(default=None, description="From then on it is overdue.")


def expect(unit: Unit, said: Expect) -> Return:
    """Expect things of an order to come back, or take down a parcel that nobody expects.

    Refused: `not_left` while their parcel can be opened again, or where nothing has left; `already_expected`.
    """
    lines: tuple[Line, ...] = ()
    if said.order is not None:
        lines = _chosen(unit, said.order, said.lines)
    elif said.lines is not None:
        raise Invalid("/order", "required", "Say which order these lines are of.")
    until = instant(said.until, unit.settings.zone)
    names = tuple(line.id for line in lines)
    new = Return(unit.new_id(), said.order, names, said.why, until, ReturnState.EXPECTED, unit.at)
    unit.add(new)
    unit.record(
        events.ReturnExpected(
            return_=new.id, order=new.order, lines=names, why=new.why, until=until.isoformat() if until else None
        )
    )
    return new


def _chosen(unit: Unit, order_id: str, names: Sequence[str] | None) -> tuple[Line, ...]:
    order = unit.get(Order, order_id)
    if order is None:
        raise Invalid("/order", "unknown_order", "There is no such order.")
    lines = {line.id: line for line in unit.find(Line, order=order.id)}
    if names is None:
        return _all_that_can_come(unit, order, tuple(lines.values()))
    for place, name in enumerate(names):
        if name not in lines:
            raise Invalid(f"/lines/{place}", "unknown_line", f"Order {order.number} has no such line.")
        _refuse_here(unit, lines[name])
    return tuple(lines[name] for name in dict.fromkeys(names))


def _all_that_can_come(unit: Unit, order: Order, lines: tuple[Line, ...]) -> tuple[Line, ...]:
    found = tuple(line for line in lines if can_come_back(unit, line))
    left = [line for line in lines if line.state is LineState.RELEASED]
    if not found and left:
        _refuse_here(unit, left[0])
    if not found:
        raise Refused("not_left", f"Nothing of order {order.number} is with its buyer.")
    return found


def can_come_back(unit: Unit, line: Line) -> bool:
    """Whether a line's thing may be expected: it has left, and no open return has it."""
    if line.state is not LineState.RELEASED:
        return False
    try:
        _refuse_here(unit, line)
    except Refused:
        return False
    return True


def _refuse_here(unit: Unit, line: Line, own: str = "") -> Line:
    """The line after its return. `Refused` while its parcel can be opened again instead, or if a return other than
    its `own` has it.
    """
    returned = line.after("return").freed((Hold.MISPLACED,))
    if parcels.can_reopen(unit, must(unit, Parcel, line.parcel or "")):
        raise Refused("not_left", "Its parcel is still here. Open it again, and take the thing out with a scan.")
    for each in open_returns(unit, line.order):
        if line.id in each.left and each.id != own:
            raise Refused("already_expected", "Another return has this thing. Take it in there.", **{"return": each.id})
    return returned


def open_returns(unit: Unit, order: str) -> tuple[Return, ...]:
    """The returns of an order that are expected, or have arrived and are not checked."""
    return tuple(each for each in unit.find(Return, order=order) if each.open)


def arrive(unit: Unit, return_id: str) -> Return:
    """Say that it is here."""
    back = replace(must(unit, Return, return_id).after("arrive"), arrived=unit.at)
    unit.put(back)
    unit.record(events.ReturnArrived(return_=back.id))
    return back


def not_arrived(unit: Unit, return_id: str) -> Return:
    """Take that back, as long as nothing of it was checked. Refused: `checked`."""
    back = replace(must(unit, Return, return_id).after("not arrived"), arrived=None)
    if back.checks:
        raise Refused("checked", "A thing of it was checked, so it is here.")
    unit.put(back)
    unit.record(events.ReturnNotArrived(return_=back.id))
    return back


class TakeIn(Command):
    text: Annotated[str, words(400, least=1)] = Field(title="Slip, shipping label or order number")


def take_in(unit: Unit, said: TakeIn) -> Return:
    """What is here, by a slip, a shipping label or the number of an order: its return has arrived.

    One that nobody expected is made for all that can come back. Refused: `which_return` where the order has several,
    and as `expect`. Invalid where no order is named, or a label names several.
    """
    order = order_of(unit, said.text)
    found = open_returns(unit, order.id)
    if len(found) > 1:
        raise Refused("which_return", f"Order {order.number} has several returns. Choose which one this is.")
    back = found[0] if found else expect(unit, Expect(order=order.id))
    return back if back.state is ReturnState.ARRIVED else arrive(unit, back.id)


def order_of(unit: Unit, text: str) -> Order:
    """The order of a slip, a shipping label or a number; `Invalid` where it is none, or several."""
    label = None if slot_code.is_slip_like(text) else shipping.label_of(unit, text)
    if label is None:
        return slips.order_named(unit, text)
    orders = shipping.orders_of(unit, must(unit, Parcel, label.parcel))
    if len(orders) == 1:
        return orders[0]
    numbers = ", ".join(order.number for order in orders)
    raise Invalid("/text", "unknown_order", f"This label was on the parcel of {numbers}. Type which order this is.")


class CheckReturn(
    Command, json_schema_extra={"examples": [{"line": "b8b5aef19f3d0c21", "condition": "resell", "text": "D0145"}]}
):
    line: Maybe[Identity] = Field(
        default=None,
        description="Of a parcel that nobody expects, any line that has left; absent for a thing that was never ours.",
    )
    condition: Condition = Field(
        description="`resell`: it gets the slot of the card in hand. `check`: the same, in doubt. `scrap`: it is "
        "thrown away. `stays`: it did not come back, and stays with the buyer; a thing that was never ours goes back."
    )
    text: Maybe[CardText] = Field(default=None, description="Of the card in hand; needed for `resell` and `check`.")


def check(unit: Unit, return_id: str, said: CheckReturn) -> Return:
    """Say how one thing of it is. What was said to be scrapped or to stay with the buyer may be put right so.

    Refused: `checked` for what stands in a slot since, `not_left`, `already_expected`, `taken`.
    """
    back = must(unit, Return, return_id)
    done = back.after("check")
    if said.line is None:
        return _never_ours(unit, back, said.condition)
    line = _named(unit, back, said.line)
    before = back.check(line.id)
    if before is not None and said.condition not in OTHERWISE[before.condition]:
        raise Refused("checked", "This thing was checked before.")
    stay = _take(unit, back, line, said, scrapped=before is not None and before.condition is Condition.SCRAP)
    others = tuple(each for each in back.checks if each.line != line.id)
    lines = back.lines if back.order else tuple(dict.fromkeys((*back.lines, line.id)))
    checks = (*others, CheckedThing(line.id, said.condition, stay.id if stay else None))
    back = replace(back, lines=lines, checks=checks)
    if not back.left:
        back = replace(back, state=done.state, checked=back.checked or unit.at)
    unit.put(back)
    unit.record(events.ReturnChecked(return_=back.id, line=line.id, condition=said.condition))
    return back


def _named(unit: Unit, back: Return, line_id: str) -> Line:
    line = unit.get(Line, line_id)
    if line is None or (back.order is not None and line.id not in back.lines):
        raise Invalid("/line", "unknown_line", "This return has no such line.")
    return line


def _take(unit: Unit, back: Return, line: Line, said: CheckReturn, *, scrapped: bool) -> Stay | None:
    """The line steps as its thing was found; the stay that this began, if any."""
    returned = line if scrapped else _refuse_here(unit, line, back.id)
    if said.text is not None and said.condition not in STORED:
        raise Invalid("/text", "no_card", "A card was scanned, but so the thing gets no slot. Choose anew.")
    if said.condition is Condition.STAYS:
        return None
    stay = _store(unit, line, said) if said.condition in STORED else None
    unit.put(returned)
    if stay is not None:
        unit.record(events.Returned(line=line.id, stay=stay.id, code=stay.code, turn=stay.turn))
        if said.condition is Condition.CHECK:
            why = f": {doubts.sentence(back.why)}" if back.why else "."
            doubts.not_this(unit, stay.item, f"Came back: to be checked{why}")
    return stay


def _store(unit: Unit, line: Line, said: CheckReturn) -> Stay:
    """The next stay of the line's thing, in the slot of the card in hand."""
    if said.text is None:
        raise Invalid("/text", "required", "Scan the free card in your hand: the thing gets its slot.")
    item = must(unit, Stay, line.stay or "").item
    if any(stay.open for stay in unit.find(Stay, item=item)):
        raise Refused("checked", "This thing stands in a slot already.")
    return begin(unit, in_hand(unit, said.text), item)


def _never_ours(unit: Unit, back: Return, condition: Condition) -> Return:
    """A thing that is no shop's: it goes back, or is thrown away, and the return is given up."""
    if back.order is not None or back.checks or condition in STORED:
        raise Invalid("/line", "required", "Say which thing this is.")
    return _give_up(unit, replace(back, checks=(CheckedThing(None, condition),)), condition)


def give_up(unit: Unit, return_id: str) -> Return:
    """Stop waiting for it; what did not come back stays with its buyer."""
    return _give_up(unit, must(unit, Return, return_id), None)


def _give_up(unit: Unit, back: Return, never_ours: Condition | None) -> Return:
    back = back.after("give up")
    unit.put(back)
    unit.record(events.ReturnGivenUp(return_=back.id, never_ours=never_ours))
    return back
