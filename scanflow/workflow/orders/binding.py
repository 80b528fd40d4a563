"""What a line asks for is looked up in the room, and the line is bound to its thing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from labels import slot_code
from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.binding import Asked, ReferenceFacts, bind, learns
from scanflow.domain.orders.incoming import IncomingLine
from scanflow.domain.orders.titles import Titled, words_of
from scanflow.domain.things import Item, Line, Order, Stay
from scanflow.workflow.orders import wrong
from scanflow.workflow.ports import Unit, must
from scanflow.workflow.stock import cards, doubts, listings, reserving
from scanflow.workflow.stock.loading import TAKEN_BACK


def new_line(unit: Unit, order: Order, position: int, incoming: IncomingLine) -> Line:
    """The line of an order, added and bound, or unbound and held; it may teach a listing id."""
    line = Line(unit.new_id(), order.id, position, **incoming.words)
    return _take(unit, order, line, incoming, unit.add)


def mend(unit: Unit, order: Order, line: Line, incoming: IncomingLine) -> Line:
    """A line that couldn't be read, with the words of a row that can be: bound anew, as a new line is."""
    line = replace(line.freed((Hold.BAD_ROW,)), **incoming.words, in_file=True)
    return _take(unit, order, line, incoming, unit.put)


def _take(unit: Unit, order: Order, line: Line, incoming: IncomingLine, keep: Callable[[Line], None]) -> Line:
    asked, found = _found(unit, order, incoming)
    bound = bind(asked, found)
    if bound.stay is not None:
        line = replace(line.after("settle"), stay=bound.stay)
    for each in bound.holds:
        line = line.held(each.hold, each.why)
    keep(line)
    if found.item is not None and learns(asked, found, bound):
        listings.learn(unit, asked.listing, found.item.id, line.id, order.channel)
    return line


def _found(unit: Unit, order: Order, line: IncomingLine) -> tuple[Asked, ReferenceFacts]:
    """What the line says of its thing, and what the room knows of that."""
    if line.bad is not None:
        return Asked(False, bad=line.bad, quantity=line.quantity), ReferenceFacts()
    try:
        named = cards.referred(unit, line.reference)
    except slot_code.CodeError:
        why = wrong.reference(unit, line.reference)
        return Asked(False, wrong=why, quantity=line.quantity), ReferenceFacts()
    asked = Asked(True, named.turn, line.title, line.listing, order.ordered_at, quantity=line.quantity)
    facts = unit.facts(named.code)
    if facts is None:
        return replace(asked, known=False, wrong=wrong.slot(unit, line.reference, named.code)), ReferenceFacts()
    turn = named.turn if named.turn is not None else facts.slot.turns
    stays = unit.find(Stay, code=named.code, turn=turn)
    turns = facts.slot.turns - len(unit.find(Stay, code=named.code, reason=TAKEN_BACK))
    if not stays:
        return replace(asked, wrong=wrong.turn(facts.slot, turn)), ReferenceFacts(turns=turns)
    latest = unit.find(Stay, item=stays[0].item)[-1]
    item = must(unit, Item, latest.item)
    found = ReferenceFacts(
        stays[0],
        latest,
        item,
        _wanted_by(unit, latest, order),
        turns,
        doubts.said(unit, doubts.open_doubts(unit, item.id)),
        listings.known(unit, item.id, order.channel),
        listings.listed(unit, line.listing, order.channel),
        kept=reserving.why(unit, item),
    )
    return asked, found if found.listed_here else replace(found, closer=_closer(unit, line.title, item))


def _closer(unit: Unit, said: str, item: Item | None) -> Titled | None:
    """Another thing in stock that the title fits better."""
    ours = item.title if item else ""
    if words_of(said) == words_of(ours):  # asks for no look at all titles
        return None
    return unit.stocked().closer(said, ours, item.id if item else "")


def others(unit: Unit, line_id: str) -> tuple[Titled, ...]:
    """The other things that a line's listing id and title name: what a person compares first."""
    line = must(unit, Line, line_id)
    item = unit.get(Item, must(unit, Stay, line.stay).item) if line.stay else None
    closer = _closer(unit, line.title, item)
    found = (
        *listings.listed(unit, line.listing, must(unit, Order, line.order).channel),
        *((closer,) if closer else ()),
    )
    return tuple(dict.fromkeys(each for each in found if item is None or each.item != item.id))


def _wanted_by(unit: Unit, stay: Stay, order: Order) -> str | None:
    """The number of the order that has the thing, or had it shipped; empty where it is this one."""
    for line in unit.find(Line, stay=stay.id):
        if line.live or line.state is LineState.RELEASED:
            return "" if line.order == order.id else must(unit, Order, line.order).number
    return None
