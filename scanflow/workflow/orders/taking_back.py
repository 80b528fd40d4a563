"""A file of orders is taken back whole: what it brought is cancelled, and what it changed is as before."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from itertools import count
from typing import Any

from scanflow.domain import events
from scanflow.domain.life import Hold, LineState
from scanflow.domain.orders.incoming import WORDS
from scanflow.domain.things import ChangedOrder, Held, Line, Order, Stay, Stop
from scanflow.workflow import orders
from scanflow.workflow.ports import Refused, Unit, must
from scanflow.workflow.stock import listings

Image = dict[str, Any]
AT_REST = frozenset({LineState.UNBOUND, LineState.WAITING, LineState.CANCELLED})


def image(unit: Unit, order: Order) -> Image:
    """How an order stands with its lines, as JSON has it."""
    return {
        "ordered_at": order.ordered_at.isoformat() if order.ordered_at else None,
        "ship_by": order.ship_by.isoformat() if order.ship_by else None,
        "status": order.status,
        "lines": {line.id: _line(line) for line in unit.find(Line, order=order.id)},
    }


def _line(line: Line) -> Image:
    return {
        **{name: getattr(line, name) for name in WORDS},
        "stay": line.stay,
        "state": str(line.state),
        "holds": [[str(each.hold), each.why] for each in line.holds],
        "in_file": line.in_file,
        "status": line.status,
    }


def keep(unit: Unit, load: str, order: Order, before: Image) -> None:
    """Keep how a file changed an order, which stood so before."""
    was = json.dumps({"before": before, "after": image(unit, must(unit, Order, order.id))}, ensure_ascii=False)
    unit.add(ChangedOrder(unit.new_id(), load, order.id, unit.at, was))


def in_parts(view: Unit, load: str, enough: Callable[[], Callable[[], bool]]) -> Callable[[Unit], int | None]:
    """What takes back the next part of what a file did, until `enough` of its own says so: None while there is more to
    do, at last how many orders it was.

    Refused: `built_on` where something of it went on in `view`: a file is taken back whole or not at all.
    """
    for order in view.find(Order, load=load):
        _refuse_begun(view, order)
    for changed in view.find(ChangedOrder, load=load):
        _refuse_built_on(view, changed)
    total = 0

    def part(unit: Unit) -> int | None:
        nonlocal total
        until = enough()
        for order in unit.find(Order, load=load):
            _refuse_begun(unit, order)
            _cancel_whole(unit, order, load)
            total += 1
            if until():
                return None
        for changed in reversed(unit.find(ChangedOrder, load=load)):
            _refuse_built_on(unit, changed)
            _put_back(unit, changed)
            total += 1
            if until():
                return None
        return total

    return part


def _refuse_begun(unit: Unit, order: Order) -> None:
    """An order that somebody went on with stays."""
    for line in unit.find(Line, order=order.id):
        begun = line.state not in AT_REST
        if begun or line.parcel or unit.find(Stop, line=line.id):
            raise Refused("built_on", f"Order {order.number} is being picked, so the file can't be taken back whole.")


def _refuse_built_on(unit: Unit, changed: ChangedOrder) -> None:
    order, was = must(unit, Order, changed.order), json.loads(changed.was)
    _refuse_begun(unit, order)
    if image(unit, order) != was["after"] or any(_is_gone(unit, *each) for each in was["before"]["lines"].items()):
        raise Refused("built_on", f"Order {order.number} has changed since, so the file can't be taken back whole.")


def _is_gone(unit: Unit, line_id: str, before: Image) -> bool:
    """Whether a line can't be again what it was: it was being picked, its thing has left or moved, or another order has
    it by now.
    """
    if before["state"] not in AT_REST:
        return True
    if before["state"] != LineState.WAITING:
        return False
    others = unit.find(Line, stay=before["stay"])
    return not must(unit, Stay, before["stay"]).open or any(each.live and each.id != line_id for each in others)


def _cancel_whole(unit: Unit, order: Order, load: str) -> None:
    """Its number is free again, for the right file."""
    lines = unit.find(Line, order=order.id)
    for line in lines:
        _cancel(unit, line)
    marked = (f"{order.number} (taken back{f' {place}' if place > 1 else ''})" for place in count(1))
    number = next(each for each in marked if not unit.find(Order, number=each, channel=order.channel))
    unit.put(replace(order, number=number, sent_number="", load=None))
    told = tuple(line.id for line in lines)
    unit.record(events.OrderTakenBack(order=order.id, number=number, load=load, lines=told))


def _cancel(unit: Unit, line: Line) -> None:
    listings.forget(unit, line=line.id)
    open_line = line if line.state is LineState.CANCELLED else line.after("cancel")
    unit.put(replace(open_line, in_file=False))


def _put_back(unit: Unit, changed: ChangedOrder) -> None:
    order, before = must(unit, Order, changed.order), json.loads(changed.was)["before"]
    ordered_at, ship_by = _time(before["ordered_at"]), _time(before["ship_by"])
    unit.put(replace(order, status=before["status"], ordered_at=ordered_at, ship_by=ship_by))
    lines = unit.find(Line, order=order.id)
    for line in lines:
        told = before["lines"].get(line.id)
        if told is None:
            _cancel(unit, line)
            continue
        holds = tuple(Held(Hold(hold), why) for hold, why in told["holds"])
        was = replace(line, **{**told, "holds": holds, "state": LineState(told["state"])})
        unit.put(_held_by_thing(unit, was) if was.live else was)
    unit.drop(ChangedOrder, changed.id)
    told_lines = tuple(line.id for line in lines)
    unit.record(events.OrderTakenBack(order=order.id, number=order.number, load=changed.load, lines=told_lines))


def _held_by_thing(unit: Unit, line: Line) -> Line:
    """The line with what was said of its thing since."""
    return orders.held_by(unit, line, must(unit, Stay, line.stay or "").item)


def _time(told: str | None) -> datetime | None:
    return datetime.fromisoformat(told) if told else None
