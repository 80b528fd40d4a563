"""One walk through the room for the orders that wait."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import count
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.closing import ClosingDays
from scanflow.domain.derive import OrderState, order_state, to_fetch, to_walk
from scanflow.domain.life import LineState, RoundState
from scanflow.domain.things import Bin, Line, Order, Rack, Round, Stay, Stop
from scanflow.planning import room
from scanflow.planning.layout import ladder
from scanflow.planning.walking import ladder_tour
from scanflow.workflow.counts import cycle
from scanflow.workflow.fields import MOST_LINES, Command, Identity, Maybe
from scanflow.workflow.parcels import named
from scanflow.workflow.ports import Unit, must
from scanflow.workflow.stock import sightings


@dataclass(frozen=True, slots=True)
class LeftOut:
    """An order that is not on the round, and why: `held`, `on_round` or `not_waiting`."""

    order: str
    why: str


class OpenRound(Command, json_schema_extra={"examples": [{}]}):
    orders: Maybe[Annotated[tuple[Identity, ...], Field(max_length=MOST_LINES)]] = Field(
        default=None, description="Absent: all that wait, as many as the shop has baskets."
    )


def open_round(unit: Unit, said: OpenRound, *, most: int | None = None) -> tuple[Round, tuple[LeftOut, ...]]:
    """Plan a round for these orders, or for all that wait; its stops stand in the order to walk.

    `most` things are on it, of the first orders, unless the first alone has more. Of all that wait it takes as many
    orders as the shop has baskets; orders that go into one box have one. A round without stops is closed at once. Where
    a bin on the way is due to be counted, the count of what is due begins.
    """
    baskets = 0 if said.orders else unit.settings.baskets
    orders = _orders(unit, said.orders)
    round_ = Round(unit.new_id(), unit.at)
    unit.add(round_)
    left_out: list[LeftOut] = []
    chosen: list[tuple[Line, str]] = []
    free = _free_baskets(unit)
    shared: dict[str, int] = {}
    for order in orders:
        lines = unit.find(Line, order=order.id)
        why = _left_out(unit, lines)
        if why:
            left_out.append(LeftOut(order.id, why))
            continue
        waiting = [line for line in lines if to_fetch(line)]
        if most is not None and chosen and len(chosen) + len(waiting) > most:
            break
        box = order.parcel or order.id
        if baskets and box not in shared and len(shared) == baskets:
            break
        if box not in shared:
            shared[box] = next(free)
        chosen += [(replace(line, round=round_.id, basket=shared[box]), _bin_of(unit, line)) for line in waiting]
    for position, (line, where) in enumerate(_walk(unit, chosen), 1):
        unit.put(line)
        unit.add(Stop(round_.id, position, line.id, where))
    if not chosen:
        round_ = round_.after("close")
        unit.put(round_)
    unit.record(events.RoundOpened(round=round_.id, lines=tuple(line.id for line, _ in chosen)))
    cycle.open_on_the_way(unit, (where for _, where in chosen))
    return round_, tuple(left_out)


def _free_baskets(unit: Unit) -> Iterator[int]:
    """Numbers from 1 on that no basket of an open round has, and none that still holds picked things."""
    rounds = unit.find(Round, state=RoundState.OPEN)
    lines = [must(unit, Line, stop.line) for walk in rounds for stop in unit.find(Stop, round=walk.id)]
    used = {line.basket for line in (*lines, *unit.find(Line, state=LineState.PICKED))}
    return (number for number in count(1) if number not in used)


def _orders(unit: Unit, order_ids: Iterable[str] | None) -> list[Order]:
    """The orders asked for, or all with a line that waits; the most urgent first."""
    if order_ids is None:
        waiting = unit.find(Line, state=LineState.WAITING)
        orders = [must(unit, Order, name) for name in dict.fromkeys(line.order for line in waiting)]
        closing, zone = unit.settings.closing, ZoneInfo(unit.settings.zone)
        return sorted(orders, key=lambda order: _urgency(order, closing, zone))
    return named(unit, order_ids)


def _urgency(order: Order, closing: ClosingDays, zone: ZoneInfo) -> tuple[datetime, datetime, int]:
    """By when it must leave, and of those due on one day the one that is to be shipped first."""
    if order.ship_by is None:
        return order.received, order.received, order.slip
    return closing.leave_by(order.ship_by, zone), order.ship_by, order.slip


def _left_out(unit: Unit, lines: tuple[Line, ...]) -> str:
    if order_state(lines) is OrderState.HELD:
        return "held"
    if not any(to_fetch(line) for line in lines):
        return "not_waiting"
    rounds = [must(unit, Round, name) for name in {line.round for line in lines if line.round is not None}]
    if any(each.state is RoundState.OPEN and to_walk(line, each.id) for each in rounds for line in lines):
        return "on_round"
    return ""


def _bin_of(unit: Unit, line: Line) -> str:
    """The bin to walk to: that in which the card was read last, else the slot's own."""
    facts = unit.facts(must(unit, Stay, line.stay or "").code)
    assert facts is not None  # a stay has a slot
    stands = sightings.where(unit, facts)
    return stands.walk_to if unit.get(Bin, stands.walk_to) is not None else stands.home


def _walk(unit: Unit, chosen: list[tuple[Line, str]]) -> list[tuple[Line, str]]:
    """The same, in the order of the shortest walk from the table and back to it."""
    by_bin: dict[str, list[tuple[Line, str]]] = defaultdict(list)
    for line, where in chosen:
        by_bin[where].append((line, where))
    racks, shape = {rack.name: rack for rack in unit.find(Rack)}, unit.settings.racks.shape()
    bins = [must(unit, Bin, name) for name in by_bin]
    spots = [room.spot(racks[each.rack], each, shape) for each in bins]
    tour = ladder_tour(ladder(racks.values(), shape), spots)
    return [pair for index in tour.order for pair in by_bin[bins[index].name]]


def close_finished(unit: Unit) -> None:
    """Close each round on which nothing is left to walk to; its baskets are free once they are packed."""
    for walk in unit.find(Round, state=RoundState.OPEN):
        lines = (must(unit, Line, stop.line) for stop in unit.find(Stop, round=walk.id))
        if not any(to_walk(line, walk.id) for line in lines):
            close_round(unit, walk.id)


def close_round(unit: Unit, round_id: str) -> Round:
    """The walk is over; what was not picked waits for another round."""
    round_ = must(unit, Round, round_id).after("close")
    unit.put(round_)
    unit.record(events.RoundClosed(round=round_.id))
    return round_
