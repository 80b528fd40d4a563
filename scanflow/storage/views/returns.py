"""Returns for lists and pages, read-only."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, and_, case, func, or_, select

from scanflow.domain.life import LineState, ReturnState
from scanflow.storage.derived import LINES
from scanflow.storage.tables import lines, orders, returns
from scanflow.storage.views.lists import Rows
from scanflow.storage.views.search import of_order

_ROWS = select(returns, orders.c.number).outerjoin(orders, orders.c.id == returns.c.order)
"""With the number of their order, None of a parcel that nobody expects; the ids of `lines` are one text."""


def return_page(connection: Connection, state: ReturnState | None, after: int, limit: int) -> Rows:
    """Returns in the order in which they were opened; `n` is the key."""
    query = select(returns.c.n, returns.c.id).where(returns.c.n > after).order_by(returns.c.n).limit(limit + 1)
    return connection.execute(query.where(returns.c.state == state) if state else query).all()


def return_list(connection: Connection, state: ReturnState | None, skip: int, limit: int) -> Rows:
    """Returns in this state, or all, the newest first."""
    query = _ROWS.order_by(returns.c.n.desc()).offset(skip).limit(limit)
    return connection.execute(query.where(returns.c.state == state) if state else query).all()


def return_counts(connection: Connection) -> dict[str, int]:
    """How many returns stand in each state."""
    query = select(returns.c.state, func.count()).group_by(returns.c.state)
    return {row[0]: row[1] for row in connection.execute(query)}


def return_duties(connection: Connection, now: datetime, limit: int) -> Rows:
    """Those that have arrived and are not checked, then those that are overdue."""
    arrived = returns.c.state == ReturnState.ARRIVED
    overdue = and_(returns.c.state == ReturnState.EXPECTED, returns.c.until < now)
    first = case((arrived, 0), else_=1)
    query = _ROWS.where(or_(arrived, overdue)).order_by(first, returns.c.until, returns.c.n)
    return connection.execute(query.limit(limit)).all()


def lines_with_buyers(connection: Connection, words: str, order_ids: tuple[str, ...], limit: int) -> Rows:
    """Lines that are with their buyers: of these orders, or else of those that have these words, the latest first."""
    asked = lines.c.order.in_(order_ids) if order_ids else of_order(words)
    query = LINES.where(lines.c.state == LineState.RELEASED, asked)
    return connection.execute(query.order_by(lines.c.n.desc()).limit(limit)).all()
