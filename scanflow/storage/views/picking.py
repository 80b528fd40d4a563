"""Rounds and their stops for pages, read-only."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection, case, func, select

from scanflow.domain.life import RoundState
from scanflow.storage.derived import LINES, TO_WALK
from scanflow.storage.tables import lines, rounds, stops
from scanflow.storage.views.lists import AnyRow, LineRow, Rows, line_rows


def open_rounds(connection: Connection) -> Rows:
    """Open rounds on which a stop still wants walking to, with how many do and how many stops there are."""
    waiting = func.sum(case((TO_WALK, 1), else_=0))
    query = (
        select(rounds.c.id, rounds.c.opened, func.count().label("stops"), waiting.label("waiting"))
        .join(stops, stops.c.round == rounds.c.id)
        .join(lines, lines.c.id == stops.c.line)
        .where(rounds.c.state == RoundState.OPEN)
        .group_by(rounds.c.id, rounds.c.n, rounds.c.opened)
        .having(waiting > 0)
    )
    return connection.execute(query.order_by(rounds.c.n)).all()


def round_(connection: Connection, round_id: str) -> AnyRow | None:
    """A round."""
    return connection.execute(select(rounds).where(rounds.c.id == round_id)).one_or_none()


def round_stops(connection: Connection, round_id: str) -> Sequence[LineRow]:
    """The stops of a round in the order to walk, each with its line as it stands now.

    `here` is the stop's bin, `stop` its own number.
    """
    own = (stops.c.position, stops.c.bin.label("here"), stops.c.n.label("stop"))
    query = LINES.add_columns(*own).join(stops, stops.c.line == lines.c.id)
    return line_rows(connection, query.where(stops.c.round == round_id).order_by(stops.c.position))


def round_of_stop(connection: Connection, number: int) -> str | None:
    """The round on which the stop of this number is."""
    return connection.execute(select(stops.c.round).where(stops.c.n == number)).scalar()
