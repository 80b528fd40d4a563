"""Where things and cards are, for pages: rows go to `domain.whereabouts`, which alone says so."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, Select, and_, exists, func, literal_column, or_, select

from scanflow.domain import events
from scanflow.domain.life import LIVE, CardState, DoubtKind, LineState, ParcelState
from scanflow.domain.things import Slot, Station
from scanflow.domain.whereabouts import Account, PlaceKind, Whereabouts, whereabouts
from scanflow.storage.derived import OPEN_STAY
from scanflow.storage.rows import COLUMNS, thing
from scanflow.storage.tables import doubts, items, ledger, lines, orders, parcels, slots, stays


@dataclass(frozen=True, slots=True)
class Duty:
    """A thing or a card that is not where it belongs; `stay` and `title` are None of a card without a thing."""

    code: str
    section: str
    title: str | None
    stay: str | None
    where: Whereabouts


_MISSING = and_(doubts.c.item == stays.c.item, doubts.c.kind == DoubtKind.MISSING, doubts.c.how.is_(None))
_MISSED = select(func.max(doubts.c.since)).where(_MISSING).correlate(stays).scalar_subquery()
_OWN = len(COLUMNS[Slot])


def _accounts() -> Select[Any]:
    return (
        select(
            *COLUMNS[Slot],
            stays.c.id.label("stay"),
            items.c.title,
            lines.c.state,
            orders.c.number.label("wanted_by"),
            lines.c.parcel,
            parcels.c.at_table,
            parcels.c.state.label("parcel_state"),
            lines.c.round,
            lines.c.basket,
            _MISSED.label("missed"),
        )
        .select_from(slots)
        .outerjoin(stays, OPEN_STAY)
        .outerjoin(items, items.c.id == stays.c.item)
        .outerjoin(lines, and_(lines.c.stay == stays.c.id, lines.c.state.in_(sorted(LIVE))))
        .outerjoin(orders, orders.c.id == lines.c.order)
        .outerjoin(parcels, parcels.c.id == lines.c.parcel)
    )


def _where(row: Any) -> Whereabouts:
    packed = row.state is LineState.PACKED
    return whereabouts(
        Account(
            slot=thing(Slot, tuple(row)[:_OWN]),
            taken=row.stay is not None,
            line=row.state,
            order=row.wanted_by,
            parcel=row.parcel if packed else None,
            table=row.at_table if packed and row.parcel_state is ParcelState.OPEN else None,
            round=row.round,
            basket=row.basket,
            missed=row.missed,
        )
    )


def whereabouts_of(connection: Connection, codes: Iterable[str | None]) -> dict[str, Whereabouts]:
    """Where the cards of these slots and their things are, by code."""
    wanted = {code for code in codes if code}
    rows = connection.execute(_accounts().where(slots.c.code.in_(wanted))) if wanted else ()
    return {row.code: _where(row) for row in rows}


def duties(connection: Connection) -> list[Duty]:
    """Things to put back and cards to bring to the tray, by code."""
    rows = connection.execute(_accounts().where(_may_stray()).order_by(slots.c.section, slots.c.number))
    found = map(_duty, rows)
    return [duty for duty in found if duty.where.to_put_back or _loose(duty)]


def missing(connection: Connection) -> list[Duty]:
    """Things that are missing, that no order wants, and that nobody read since, by code."""
    unwanted = and_(exists(literal_column("1")).where(_MISSING), lines.c.id.is_(None))
    rows = connection.execute(_accounts().where(unwanted).order_by(slots.c.section, slots.c.number))
    return [duty for duty in map(_duty, rows) if duty.where.missing and not duty.where.misplaced]


def twins(connection: Connection) -> list[Duty]:
    """The slots of which two cards were read, after one was printed again, until one of them is destroyed."""
    rows = connection.execute(_accounts().where(slots.c.twin).order_by(slots.c.section, slots.c.number)).all()
    if not rows:
        return []
    kinds = (events.CardReprinted.kind, events.TwoCardsRead.kind)
    told = select(ledger.c.kind, ledger.c.data).where(ledger.c.kind.in_(kinds)).order_by(ledger.c.seq)
    last = {json.loads(data)["code"]: kind for kind, data in connection.execute(told)}
    return [_duty(row) for row in rows if last.get(row.code) == events.TwoCardsRead.kind]


def _duty(row: Any) -> Duty:
    return Duty(row.code, row.section, row.title, row.stay, _where(row))


def _loose(duty: Duty) -> bool:
    """A card without a thing that was read away from the tray, or missed there."""
    return duty.stay is None and duty.where.misplaced and duty.where.place in (PlaceKind.TRAY, PlaceKind.LOST)


def _may_stray() -> Any:
    """Of all slots the few that may be amiss: a superset of the duties, so that not every slot is looked at."""
    read_off = or_(
        slots.c.out_station.is_not(None),
        slots.c.seen_station == Station.TRAY,
        and_(slots.c.seen_station == Station.SHELF, slots.c.seen_place != slots.c.bin),
        and_(slots.c.seen_station.in_([Station.TABLE, Station.BIN]), slots.c.seen_accepted.is_(False)),
        exists(literal_column("1")).where(_MISSING),
        lines.c.state == LineState.PICKED,
    )
    strayed = and_(
        slots.c.seen_station.is_not(None),
        or_(slots.c.seen_station != Station.TRAY, slots.c.seen_accepted.is_(False)),
        slots.c.card.in_([CardState.TRAY, CardState.LOST]),
    )
    return or_(and_(stays.c.id.is_not(None), read_off), and_(stays.c.id.is_(None), strayed))
