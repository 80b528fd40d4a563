"""The room for pages, read-only: its papers, sections, racks and bins, and how much there is to do in it."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, and_, case, exists, func, literal_column, select

from scanflow.domain.derive import SlotState
from scanflow.domain.life import CardState, LineState, RoundState, StayState
from scanflow.storage.derived import HELD, OPEN_STAY, SLOT_STATE, TO_FETCH, TO_SETTLE, TO_WALK
from scanflow.storage.tables import bins, lines, racks, rounds, sections, slots, stays
from scanflow.storage.views.lists import Rows


def papers(connection: Connection) -> dict[str, tuple[str, str]]:
    """Colour and name of each section, by its letters."""
    rows = connection.execute(select(sections.c.code, sections.c.colour, sections.c.name).order_by(sections.c.n))
    return {row.code: (row.colour, row.name) for row in rows}


def digits(connection: Connection) -> dict[str, int]:
    """How many figures the numbers of each section have."""
    rows = connection.execute(select(sections.c.code, sections.c.digits).order_by(sections.c.n))
    return {row.code: row.digits for row in rows}


def counts(connection: Connection) -> dict[str, int]:
    """How much of each duty there is: lines that wait, walk, are picked, short or held; cards, things, slots."""
    walking = exists(literal_column("1")).where(TO_WALK, rounds.c.state == RoundState.OPEN).correlate(lines)
    kinds = {
        "waiting": and_(TO_FETCH, ~walking),
        "walking": walking,
        "picked": and_(lines.c.state == LineState.PICKED, ~HELD),
        "short": lines.c.state == LineState.SHORT,
        "held": TO_SETTLE,
    }
    found = {name: _count(connection, lines, condition) for name, condition in kinds.items()}
    found["due"] = _count(connection, slots, slots.c.card == CardState.DUE)
    found["stored"] = _count(connection, stays, stays.c.state == StayState.STORED)
    found["slots"] = _count(connection, slots, literal_column("1") == 1)
    return found


def _count(connection: Connection, table: Any, condition: Any) -> int:
    return connection.execute(select(func.count()).select_from(table).where(condition)).scalar_one()


def section_list(connection: Connection) -> Rows:
    """Sections with how many of their slots are free, taken, due and retired."""
    stands = slots.c.code.is_not(None)
    states = {each.value: func.sum(case((and_(stands, SLOT_STATE == each.value), 1), else_=0)) for each in SlotState}
    query = (
        select(sections, func.count(slots.c.code).label("slots"), *(each.label(name) for name, each in states.items()))
        .outerjoin(slots, slots.c.section == sections.c.code)
        .outerjoin(stays, OPEN_STAY)
        .group_by(*sections.c)
    )
    return connection.execute(query.order_by(sections.c.n)).all()


def section_bins(connection: Connection, code: str) -> Rows:
    """Name of each bin of a section that has slots, how many it has and how many of those are taken, in their order."""
    taken = func.sum(case((stays.c.id.is_not(None), 1), else_=0)).label("taken")
    query = select(slots.c.bin, func.count(slots.c.code).label("slots"), taken).select_from(slots)
    query = query.outerjoin(stays, OPEN_STAY).where(slots.c.section == code).group_by(slots.c.bin)
    return connection.execute(query.order_by(func.min(slots.c.number))).all()


def rack_list(connection: Connection) -> Rows:
    """The racks, with how many bins each has."""
    query = select(racks, func.count(bins.c.name).label("bins")).outerjoin(bins, bins.c.rack == racks.c.name)
    return connection.execute(query.group_by(*racks.c).order_by(racks.c.n)).all()


def bin_names(connection: Connection) -> list[str]:
    """All bins, in the order in which they were made."""
    return list(connection.execute(select(bins.c.name).order_by(bins.c.n)).scalars())
