"""Orders and their lines for pages, read-only."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import NamedTuple

from sqlalchemy import Connection, case, func, select

from scanflow.domain.life import Hold, LineState
from scanflow.storage.derived import BY_URGENCY, HELD, LINES, ORDER_STATE, TO_SETTLE
from scanflow.storage.tables import changed_orders, lines, orders
from scanflow.storage.views.lists import AnyRow, LineRow, Rows, line_rows
from scanflow.storage.views.search import of_order


def held_lines(connection: Connection, limit: int, first: str = "") -> Rows:
    """The most urgent held lines, those of the order `first` before all others."""
    begin = case((lines.c.order == first, 0), else_=1)
    return connection.execute(LINES.where(TO_SETTLE).order_by(begin, *BY_URGENCY, lines.c.position).limit(limit)).all()


def held_by_reason(connection: Connection) -> dict[Hold, list[str]]:
    """All lines that wait to be settled, by their gravest hold, the gravest first."""
    found: dict[Hold, list[str]] = {hold: [] for hold in Hold}
    for line_id, holds in connection.execute(select(lines.c.id, lines.c.holds).where(TO_SETTLE).order_by(lines.c.n)):
        found[holds[0].hold].append(line_id)
    return {hold: each for hold, each in found.items() if each}


def short_lines(connection: Connection, limit: int) -> Rows:
    """The most urgent lines whose thing was not found."""
    query = LINES.where(lines.c.state == LineState.SHORT, ~HELD)
    return connection.execute(query.order_by(*BY_URGENCY, lines.c.position).limit(limit)).all()


def order_list(connection: Connection, states: Sequence[str], skip: int, limit: int, words: str = "") -> Rows:
    """Orders in these states (all where there are none), the most urgent first; of all orders the newest first. Where
    there are `words`, the orders that have them.
    """
    query = (
        select(
            orders.c.id,
            orders.c.number,
            orders.c.channel,
            orders.c.received,
            orders.c.ship_by,
            ORDER_STATE.label("state"),
        )
        .join(lines, lines.c.order == orders.c.id, isouter=True)
        .group_by(orders.c.id, orders.c.n, orders.c.number, orders.c.channel, orders.c.received, orders.c.ship_by)
    )
    query = query.where(of_order(words)) if words else query
    query = query.having(ORDER_STATE.in_(states)).order_by(*BY_URGENCY) if states else query.order_by(orders.c.n.desc())
    return connection.execute(query.offset(skip).limit(limit)).all()


def order_counts(connection: Connection, words: str = "") -> dict[str, int]:
    """How many orders stand in each state, of those that have these `words`."""
    counted = select(ORDER_STATE.label("state")).group_by(lines.c.order)
    if words:
        counted = counted.join(orders, orders.c.id == lines.c.order).where(of_order(words))
    each = counted.subquery()
    return {row[0]: row[1] for row in connection.execute(select(each.c.state, func.count()).group_by(each.c.state))}


def order_state(connection: Connection, order_id: str) -> str:
    """The state of an order, derived."""
    state: str = connection.execute(select(ORDER_STATE).where(lines.c.order == order_id)).scalar_one()
    return state


def order_lines(connection: Connection, *order_ids: str) -> Sequence[LineRow]:
    """The lines of some orders, in the order in which they came."""
    return line_rows(connection, LINES.where(lines.c.order.in_(order_ids)).order_by(orders.c.n, lines.c.position))


def lines_by_order(connection: Connection, order_ids: Iterable[str]) -> dict[str, list[LineRow]]:
    """The same by order."""
    found: dict[str, list[LineRow]] = defaultdict(list)
    for row in order_lines(connection, *order_ids):
        found[row.order].append(row)
    return found


def line(connection: Connection, line_id: str) -> AnyRow | None:
    """A line with its order and thing."""
    return connection.execute(LINES.where(lines.c.id == line_id)).one_or_none()


def lines_by_id(connection: Connection, line_ids: Sequence[str]) -> Rows:
    """Some lines, the most urgent first."""
    return connection.execute(LINES.where(lines.c.id.in_(line_ids)).order_by(*BY_URGENCY, lines.c.position)).all()


def lines_of_stays(connection: Connection, stay_ids: Sequence[str]) -> Rows:
    """The lines that ask for some stays, the oldest first."""
    return connection.execute(LINES.where(lines.c.stay.in_(stay_ids)).order_by(lines.c.n)).all()


def numbers(connection: Connection, order_ids: Sequence[str]) -> Rows:
    """These orders, without their lines."""
    query = select(*(orders.c[name] for name in ("id", "number", "slip", "ship_by", "note", "collected")))
    return connection.execute(query.where(orders.c.id.in_(order_ids)).order_by(orders.c.n)).all()


class LoadedOrders(NamedTuple):
    """What a file of orders brought and changed that was not taken back, and when: `first` is one of the new ones."""

    load: str
    at: datetime
    new: int
    changed: int
    first: str


def loads(connection: Connection, limit: int) -> list[LoadedOrders]:
    """The files of orders that were loaded last, the latest first."""
    brought = select(orders.c.load, func.max(orders.c.received), func.count(), func.min(orders.c.number))
    brought = brought.where(orders.c.load.is_not(None)).group_by(orders.c.load)
    changed = select(changed_orders.c.load, func.max(changed_orders.c.at), func.count()).group_by(changed_orders.c.load)
    found = {load: LoadedOrders(load, at, new, 0, first) for load, at, new, first in connection.execute(brought).all()}
    for load, at, count in connection.execute(changed).all():
        new = found.get(load, LoadedOrders(load, at, 0, 0, ""))
        found[load] = new._replace(at=max(at, new.at), changed=count)
    return sorted(found.values(), key=lambda each: each.at, reverse=True)[:limit]


def picked_lines(connection: Connection) -> Rows:
    """What was picked and not packed yet, by basket."""
    query = LINES.where(lines.c.state == LineState.PICKED)
    return connection.execute(query.order_by(lines.c.basket, orders.c.n, lines.c.position)).all()
