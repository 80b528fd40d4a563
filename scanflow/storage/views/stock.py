"""Slots and the stays in them for pages, read-only."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, func, or_, select

from scanflow.storage.derived import OF_ITEM, SLOT_STATE, SLOTS
from scanflow.storage.tables import aliases, items, slots, stays
from scanflow.storage.views.lists import AnyRow, Rows


def slot_list(
    connection: Connection, *, section: str = "", state: str = "", skip: int = 0, limit: int = 100, bin_: str = ""
) -> Rows:
    """Slots in the order of their codes; `state` is a `SlotState`."""
    query = _slots_like(section, state).order_by(slots.c.section, slots.c.number)
    if bin_:
        query = query.where(slots.c.bin == bin_)
    return connection.execute(query.offset(skip).limit(limit)).all()


def slot_count(connection: Connection, section: str, state: str) -> int:
    """How many slots `slot_list` has in all."""
    return connection.execute(select(func.count()).select_from(_slots_like(section, state).subquery())).scalar_one()


def _slots_like(section: str, state: str) -> Any:
    query = SLOTS
    if section:
        query = query.where(slots.c.section == section)
    if state:
        query = query.where(SLOT_STATE == state)
    return query


def slot(connection: Connection, code: str) -> AnyRow | None:
    """A slot with what stands in it."""
    return connection.execute(SLOTS.where(slots.c.code == code)).one_or_none()


def slots_of(connection: Connection, codes: Sequence[str]) -> Rows:
    """The slots of these codes, in no order."""
    return connection.execute(SLOTS.where(slots.c.code.in_(codes))).all()


def standing(connection: Connection, at: datetime) -> Rows:
    """What stood here at that moment: the number on its card, its words as they are now, since when it is here."""
    first = select(stays.c.item, func.min(stays.c.began).label("since")).group_by(stays.c.item).subquery()
    borne = select(func.min(aliases.c.printed)).where(aliases.c.code == stays.c.code).scalar_subquery()
    query = (
        select(
            func.coalesce(borne, stays.c.code).label("number"),
            *(items.c.title, items.c.listing, items.c.notes, first.c.since, slots.c.bin),
        )
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
        .join(first, first.c.item == stays.c.item)
        .where(stays.c.began <= at, or_(stays.c.ended.is_(None), stays.c.ended > at))
    )
    return connection.execute(query.order_by(slots.c.section, slots.c.number)).all()


def stay(connection: Connection, stay_id: str) -> AnyRow | None:
    """A stay with its item and where its slot is."""
    query = (
        select(stays, *OF_ITEM, slots.c.bin, slots.c.section, slots.c.card)
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
