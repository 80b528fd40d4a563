"""Slots and the stays in them for pages, read-only."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, case, func, or_, select

from scanflow.domain.life import StayState
from scanflow.storage.derived import OF_ITEM, SLOT_STATE, SLOTS, UNSEEN
from scanflow.storage.tables import aliases, items, listings, slots, stays
from scanflow.storage.views.ledger import newest
from scanflow.storage.views.lists import AnyRow, Rows
from scanflow.storage.views.search import of_thing


@dataclass(frozen=True, slots=True)
class Load:
    """What is in stock of what a file brought: how many things, how many of them were not seen yet, the first and the
    last slot, and when it was loaded.
    """

    load: str
    things: int
    unseen: int
    first: str
    last: str
    at: datetime | None


NOT_YET_SEEN = "unseen"
"""In place of a slot's state: those whose thing came by file and was not seen since."""


def slot_list(
    connection: Connection,
    *,
    section: str = "",
    state: str = "",
    words: str = "",
    skip: int = 0,
    limit: int = 100,
    bin_: str = "",
) -> Rows:
    """Slots in the order of their codes; `state` is a `SlotState` or `NOT_YET_SEEN`, with these `words`."""
    query = _slots_like(section, state, words).order_by(slots.c.section, slots.c.number)
    if bin_:
        query = query.where(slots.c.bin == bin_)
    return connection.execute(query.offset(skip).limit(limit)).all()


def slot_count(connection: Connection, section: str, state: str, words: str) -> int:
    """How many slots `slot_list` has in all."""
    return connection.execute(
        select(func.count()).select_from(_slots_like(section, state, words).subquery())
    ).scalar_one()


def _slots_like(section: str, state: str, words: str) -> Any:
    query = SLOTS
    if section:
        query = query.where(slots.c.section == section)
    if state:
        query = query.where(UNSEEN if state == NOT_YET_SEEN else SLOT_STATE == state)
    return query.where(of_thing(words, slots.c.code)) if words else query


def slot(connection: Connection, code: str) -> AnyRow | None:
    """A slot with what stands in it."""
    return connection.execute(SLOTS.where(slots.c.code == code)).one_or_none()


def slots_of(connection: Connection, codes: Sequence[str], words: str = "") -> Rows:
    """The slots of these codes, in no order; where there are `words`, those that have them."""
    return connection.execute(_slots_like("", "", words).where(slots.c.code.in_(codes))).all()


@dataclass(frozen=True, slots=True)
class StandingThing:
    """What stood here: the number on its card, its words as they are now with the ids of its offers that have not
    ended, since when it is here, and its bin.
    """

    number: str
    title: str
    listings: tuple[str, ...]
    notes: str
    packing: str
    since: datetime
    undated: bool
    bin: str


def standing(connection: Connection, at: datetime) -> list[StandingThing]:
    """What stood here at that moment."""
    unknown = func.max(case((stays.c.undated, 1), else_=0)).label("undated")
    first = select(stays.c.item, func.min(stays.c.began).label("since"), unknown).group_by(stays.c.item).subquery()
    borne = select(func.min(aliases.c.printed)).where(aliases.c.code == stays.c.code).scalar_subquery()
    query = (
        select(
            func.coalesce(borne, stays.c.code).label("number"),
            *(items.c.id, items.c.title, items.c.notes, items.c.packing),
            *(first.c.since, first.c.undated, slots.c.bin),
        )
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
        .join(first, first.c.item == stays.c.item)
        .where(stays.c.began <= at, or_(stays.c.ended.is_(None), stays.c.ended > at))
    )
    rows = connection.execute(query.order_by(slots.c.section, slots.c.number)).all()
    ids = _ids_by_item(connection)
    return [
        StandingThing(
            row.number,
            row.title,
            tuple(ids[row.id]),
            row.notes,
            row.packing,
            row.since,
            bool(row.undated),
            row.bin,
        )
        for row in rows
    ]


def _ids_by_item(connection: Connection) -> dict[str, list[str]]:
    """The ids of all offers that have not ended, by their things."""
    found: dict[str, list[str]] = defaultdict(list)
    query = select(listings.c.item, listings.c.listing).where(listings.c.ended.is_(None)).order_by(listings.c.n)
    for item, listing in connection.execute(query):
        found[item].append(listing)
    return found


def loads(connection: Connection) -> list[Load]:
    """The files that were loaded and brought something that is in stock, the latest first."""
    unseen, first, last = func.sum(case((UNSEEN, 1), else_=0)), func.min(slots.c.code), func.max(slots.c.code)
    query = (
        select(stays.c.load, func.count(), unseen, first, last)
        .join(slots, slots.c.code == stays.c.code)
        .where(stays.c.load.is_not(None), stays.c.state == StayState.STORED)
        .group_by(stays.c.load)
        .order_by(func.max(stays.c.n).desc())
    )
    found = []
    for load, things, yet, low, high in connection.execute(query).all():
        told = newest(connection, about=[load], limit=1)
        found.append(Load(load, things, yet, low, high, told[0].at if told else None))
    return found


def unseen(connection: Connection) -> int:
    """How many things came by file and were not seen since."""
    query = select(func.count()).select_from(stays).join(slots, slots.c.code == stays.c.code).where(UNSEEN)
    return connection.execute(query).scalar_one()


def away(connection: Connection) -> Rows:
    """The slots whose things are out of their bins for a while, the longest first."""
    return connection.execute(SLOTS.where(items.c.away_since.is_not(None)).order_by(items.c.away_since)).all()


def kept_until(connection: Connection, at: datetime) -> tuple[str, ...]:
    """The latest stays of the things whose reservation is over by this time."""
    over = select(items.c.id).where(items.c.kept_until <= at)
    latest = select(func.max(stays.c.n)).where(stays.c.item.in_(over)).group_by(stays.c.item)
    return tuple(connection.execute(select(stays.c.id).where(stays.c.n.in_(latest))).scalars())


def stay(connection: Connection, stay_id: str) -> AnyRow | None:
    """A stay with its item and where its slot is."""
    query = (
        select(stays, *OF_ITEM, slots.c.bin, slots.c.section, slots.c.card, UNSEEN.label("unseen"))
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
    )
    return connection.execute(query.where(stays.c.id == stay_id)).one_or_none()


def stay_of(connection: Connection, code: str, turn: int) -> str | None:
    """The id of a slot's stay of this turn."""
    return connection.execute(select(stays.c.id).where(stays.c.code == code, stays.c.turn == turn)).scalar()


def stays_where(connection: Connection, **equal: str) -> Rows:
    """Stays of a slot (`code`) or of an item (`item`), the latest first."""
    query = select(stays, items.c.title).join(items, items.c.id == stays.c.item)
    for name, value in equal.items():
        query = query.where(stays.c[name] == value)
    return connection.execute(query.order_by(stays.c.n.desc()).limit(100)).all()
