"""The offers of things for pages and lists, read-only."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, and_, func, literal_column, or_, select

from scanflow.domain.derive import ListingState
from scanflow.storage.derived import listing_state
from scanflow.storage.tables import items, listings, slots, stays
from scanflow.storage.views.lists import AnyRow, Rows
from scanflow.storage.views.search import each_in

_LATEST = select(func.max(stays.c.n)).where(stays.c.item == listings.c.item).correlate(listings).scalar_subquery()


def _query(at: datetime, state: ListingState | None = None) -> Any:
    """Listings with their things, where those stand or stood last, and their states at this time."""
    found = listing_state(at)
    query = (
        select(
            *(listings.c[name] for name in ("n", "id", "item", "channel", "listing", "line", "since", "ended")),
            *(stays.c.id.label("stay"), stays.c.code, stays.c.turn, items.c.title, slots.c.section),
            found.label("state"),
        )
        .join(items, items.c.id == listings.c.item)
        .join(stays, and_(stays.c.item == listings.c.item, stays.c.n == _LATEST))
        .join(slots, slots.c.code == stays.c.code)
    )
    if state is not None:
        query = query.where(found == literal_column(f"'{state}'"))
    if state in (ListingState.UP, ListingState.TO_TAKE_DOWN):
        query = query.where(listings.c.ended.is_(None))  # said again, so that the index of those alone is walked
    return query


def listing_page(connection: Connection, state: ListingState | None, after: int, at: datetime, limit: int) -> Rows:
    """Listings in the order in which they came; `n` is the key."""
    query = _query(at, state).where(listings.c.n > after).order_by(listings.c.n)
    return connection.execute(query.limit(limit + 1)).all()


def listing_list(
    connection: Connection, state: ListingState | None, at: datetime, *, words: str = "", skip: int = 0, limit: int = 50
) -> Rows:
    """The same for a page, those with these `words`; the latest first."""
    query = _like(_query(at, state), words).order_by(listings.c.n.desc())
    return connection.execute(query.offset(skip).limit(limit)).all()


def listing_counts(connection: Connection, at: datetime, words: str = "") -> dict[str, int]:
    """How many listings of each state have these words."""
    found = _like(_query(at), words).subquery()
    query = select(found.c.state, func.count()).group_by(found.c.state)
    return {row[0]: row[1] for row in connection.execute(query)}


def to_take_down(connection: Connection, at: datetime) -> int:
    """How many offers are to be taken down."""
    found = _query(at, ListingState.TO_TAKE_DOWN).subquery()
    return connection.execute(select(func.count()).select_from(found)).scalar_one()


def _like(query: Any, words: str) -> Any:
    """Each word in the title, the slot's code or the channel; or the id is this."""
    if not words:
        return query
    return query.where(
        or_(each_in(words, items.c.title, stays.c.code, listings.c.channel), listings.c.listing == words)
    )


def of_item(connection: Connection, item: str, at: datetime) -> Rows:
    """The offers of a thing by channel, those that have ended last."""
    query = _query(at).where(listings.c.item == item)
    return connection.execute(query.order_by(listings.c.ended.is_not(None), listings.c.channel, listings.c.n)).all()


def one(connection: Connection, listing_id: str, at: datetime) -> AnyRow:
    """One listing."""
    return connection.execute(_query(at).where(listings.c.id == listing_id)).one()
