"""Things and orders found by words, for pages, read-only."""

from __future__ import annotations

from collections.abc import Sequence
from functools import reduce
from operator import add
from typing import Any

from sqlalchemy import ColumnElement, Connection, and_, case, func, or_, select

from scanflow.domain.life import StayState
from scanflow.storage.derived import SLOTS, UNWANTED
from scanflow.storage.tables import items, lines, listings, orders, slots, stays
from scanflow.storage.views.lists import Rows


def of_thing(words: str, code: ColumnElement[str]) -> ColumnElement[bool]:
    """Whether each word is in the title, notes or packing note of a row's item or in its slot's `code`, or a listing id
    of its is this, be it one that has ended.
    """
    offered = items.c.id.in_(select(listings.c.item).where(listings.c.listing == words))
    return or_(each_in(words, items.c.title, items.c.notes, items.c.packing, code), offered)


def of_order(words: str) -> ColumnElement[bool]:
    """Whether each word is in the number or channel of a row's order, or in the title of one thing of it."""
    thing = (
        select(lines.c.order).outerjoin(stays, stays.c.id == lines.c.stay).outerjoin(items, items.c.id == stays.c.item)
    )
    titled = thing.where(each_in(words, lines.c.title, items.c.title))
    return or_(each_in(words, orders.c.number, orders.c.channel), orders.c.id.in_(titled))


def each_in(words: str, *columns: ColumnElement[str]) -> ColumnElement[bool]:
    """Whether each word stands in one of these columns, in small or capital letters."""
    return and_(*(or_(*(_holds(each, word) for each in columns)) for word in words.split()[:12]))


def search_items(connection: Connection, words: str, limit: int) -> Rows:
    """Stays that `of_thing` finds; those in stock first."""
    query = (
        select(stays.c.id, stays.c.code, stays.c.turn, stays.c.state, items.c.title, slots.c.bin, slots.c.section)
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
        .where(stays.c.state != StayState.MOVED)
    )
    in_stock = case((stays.c.state == StayState.STORED, 0), else_=1)
    found = query.where(of_thing(words, stays.c.code)).order_by(in_stock, stays.c.n.desc()).limit(limit)
    return connection.execute(found).all()


def search_orders(connection: Connection, words: str, limit: int) -> Rows:
    """Orders whose number holds these words, the one that is it first."""
    query = select(orders.c.id, orders.c.number, orders.c.channel, orders.c.ship_by).where(
        _holds(orders.c.number, words)
    )
    first = case((func.lower(orders.c.number) == words.lower(), 0), else_=1)
    return connection.execute(query.order_by(first, orders.c.n.desc()).limit(limit)).all()


def settle_candidates(
    connection: Connection, code: str, words: str, first: Sequence[str] = (), limit: int = 10
) -> Rows:
    """Things in stock that no live line wants: these stays `first`, the one in the slot `code`, then those whose titles
    hold `words`.
    """
    query = SLOTS.where(stays.c.id.is_not(None), UNWANTED)
    told, named = stays.c.id.in_(first), slots.c.code == code
    alike = [_holds(items.c.title, word) for word in words.split()[:8]]
    rank: list[ColumnElement[int]] = [case((told, 0), (named, 1), else_=2)]
    if alike:
        rank.append(-reduce(add, (case((each, 1), else_=0) for each in alike)))
    return connection.execute(query.where(or_(told, named, *alike)).order_by(*rank, slots.c.n).limit(limit)).all()


def _holds(column: Any, words: str) -> Any:
    return func.lower(column).contains(words.lower(), autoescape=True)
