"""A shop with 5,000 things that orders want, in every state of a busy day: for pages that must stay short."""

from __future__ import annotations

from filled_shop import AT, LINES, fill
from sqlalchemy import Connection, insert, select, update

from scanflow.domain.life import CardState, Hold, LineState, ParcelState, RoundState, StayState
from scanflow.domain.things import Held, Station
from scanflow.shop import Shop
from scanflow.storage.tables import bins, lines, orders, parcels, rounds, slots, stays, stops

THINGS, DUE, AWAY, CLOSED = 5000, 500, 500, 300
WANTED = THINGS // LINES
ROUND = "walk"

KINDS = (
    {"state": LineState.WAITING, "round": ROUND},
    {"state": LineState.WAITING, "round": None},
    {"state": LineState.PICKED, "round": None},
    {"state": LineState.WAITING, "round": None, "holds": (Held(Hold.DOUBTFUL, "Two things may be meant."),)},
    {"state": LineState.SHORT, "round": None},
)
"""What the lines of every five orders are, in turn."""


def fill_big_shop(shop: Shop) -> None:
    """The first slots hold what orders want; behind them come cards that are due, then things to put back."""
    fill(shop.database, THINGS + DUE + AWAY, WANTED)
    with shop.database.engine.begin() as connection:
        connection.execute(insert(rounds).values(id=ROUND, opened=AT, state=RoundState.OPEN))
        for rest, values in enumerate(KINDS):
            those = select(orders.c.id).where(orders.c.slip <= WANTED, orders.c.slip % len(KINDS) == rest)
            connection.execute(update(lines).where(lines.c.order.in_(those)).values(values))
        _walk(connection)
        due = select(slots.c.code).where(slots.c.number > THINGS, slots.c.number <= THINGS + DUE)
        left = update(stays).where(stays.c.code.in_(due), stays.c.turn == 2)
        connection.execute(left.values(state=StayState.SHIPPED, ended=AT))
        connection.execute(update(slots).where(slots.c.code.in_(due)).values(card=CardState.DUE))
        connection.execute(
            update(slots).where(slots.c.number > THINGS + DUE).values(out_station=Station.TABLE, out_place="main")
        )
        _close(connection)


def _walk(connection: Connection) -> None:
    """The stops of the round, in the order of their codes."""
    there = lines.join(stays, stays.c.id == lines.c.stay).join(slots, slots.c.code == stays.c.code)
    walked = select(lines.c.id, slots.c.bin).select_from(there).where(lines.c.round == ROUND).order_by(slots.c.number)
    rows = connection.execute(walked).all()
    values = [{"round": ROUND, "position": n, "line": row.id, "bin": row.bin} for n, row in enumerate(rows, 1)]
    connection.execute(insert(stops), values)


def _close(connection: Connection) -> None:
    """Parcels of the latest orders that have left, one each."""
    names = connection.execute(select(orders.c.id).order_by(orders.c.slip.desc()).limit(CLOSED)).scalars().all()
    closed = {"at_table": "main", "opened": AT, "state": ParcelState.CLOSED}
    connection.execute(insert(parcels), [{"id": name, "orders": name, **closed} for name in names])
    connection.execute(update(orders).where(orders.c.id.in_(names)).values(parcel=orders.c.id))
    connection.execute(update(lines).where(lines.c.order.in_(names)).values(parcel=lines.c.order))


def some_bin(shop: Shop) -> str:
    with shop.looking() as unit:
        return str(unit.connection.execute(select(bins.c.name).order_by(bins.c.n)).scalars().first())
