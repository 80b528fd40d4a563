"""Parcels, and orders that can be packed, for pages, read-only."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, and_, exists, func, literal_column, select

from scanflow.domain.life import LIVE, LineState, ParcelState
from scanflow.domain.things import Held
from scanflow.storage.derived import BY_URGENCY, HELD
from scanflow.storage.tables import labels, lines, orders, parcels
from scanflow.storage.views.lists import Rows


def open_parcels(connection: Connection) -> Rows:
    """Parcels on a table or set aside, with the ids of their orders in `orders`; `wanted`: something is packed in it,
    or is still to be.
    """
    open_lines = exists(literal_column("1")).where(
        lines.c.order == orders.c.id, orders.c.parcel == parcels.c.id, lines.c.state.in_([LineState.UNBOUND, *LIVE])
    )
    query = select(parcels, open_lines.correlate(parcels).label("wanted")).where(
        parcels.c.state.in_([ParcelState.OPEN, ParcelState.ASIDE])
    )
    return connection.execute(query.order_by(parcels.c.n)).all()


def _waiting(gone_before: datetime | None) -> Any:
    """The condition of closed parcels that have not left: they hold something, and were not closed before then."""
    holds = exists(literal_column("1")).where(lines.c.parcel == parcels.c.id, lines.c.state == LineState.RELEASED)
    here = and_(parcels.c.state == ParcelState.CLOSED, holds)
    return here if gone_before is None else and_(here, parcels.c.closed >= gone_before)


def waiting_page(connection: Connection, gone_before: datetime | None, after: int, limit: int) -> Rows:
    """Closed parcels that have not left, in the order they were opened first; `n` is the key."""
    query = select(parcels.c.n, parcels.c.id).where(_waiting(gone_before), parcels.c.n > after)
    return connection.execute(query.order_by(parcels.c.n).limit(limit + 1)).all()


def _collected() -> Any:
    """As `shipping.is_collected`: one of the orders whose things are in it is collected."""
    inside = lines.join(orders, orders.c.id == lines.c.order)
    of_it = (lines.c.parcel == parcels.c.id, lines.c.state == LineState.RELEASED, orders.c.collected)
    return exists(literal_column("1")).select_from(inside).where(*of_it).correlate(parcels)


def _listed() -> Any:
    """Parcels with `ends` of their last label, None without one, and whether they are `collected`."""
    last = select(func.max(labels.c.n)).where(labels.c.parcel == parcels.c.id).correlate(parcels).scalar_subquery()
    query = select(parcels, labels.c.ends, _collected().label("collected"))
    return query.outerjoin(labels, labels.c.n == last)


def parcels_to_hand_over(
    connection: Connection, gone_before: datetime | None, limit: int, *, collected: bool = False
) -> Rows:
    """Closed parcels that have not left, the latest first; `collected`: only those for which a buyer comes."""
    query = _listed().where(_waiting(gone_before), *((_collected(),) if collected else ()))
    return connection.execute(query.order_by(parcels.c.n.desc()).limit(limit)).all()


def parcels_handed_over(connection: Connection, since: datetime, until: datetime, limit: int) -> Rows:
    """Parcels that were handed over from then until then, the first of them first."""
    when = (parcels.c.handed >= since, parcels.c.handed <= until, parcels.c.handed_by != "")
    query = _listed().where(parcels.c.state == ParcelState.HANDED_OVER, *when)
    return connection.execute(query.order_by(parcels.c.handed, parcels.c.n).limit(limit)).all()


def last_carrier(connection: Connection) -> str:
    """Who took the last parcel along, as far as that was said."""
    named = select(parcels.c.carrier).where(parcels.c.carrier != "", parcels.c.handed.is_not(None))
    return connection.execute(named.order_by(parcels.c.handed.desc()).limit(1)).scalar() or ""


def waiting_count(connection: Connection, gone_before: datetime | None) -> int:
    """How many closed parcels have not left."""
    return connection.execute(select(func.count()).select_from(parcels).where(_waiting(gone_before))).scalar_one()


def slips_without_label(connection: Connection, gone_before: datetime | None) -> list[tuple[str, int]]:
    """Closed parcels that have not left, are sent and have no label yet, once for the slip of each of their orders."""
    labelled = exists(literal_column("1")).where(labels.c.parcel == parcels.c.id)
    own = select(lines.c.parcel, lines.c.order).where(lines.c.state == LineState.RELEASED).distinct().subquery()
    query = select(parcels.c.id, orders.c.slip).join(own, own.c.parcel == parcels.c.id)
    query = query.join(orders, orders.c.id == own.c.order)
    query = query.where(_waiting(gone_before), ~labelled, ~_collected())
    return [(row.id, row.slip) for row in connection.execute(query.order_by(parcels.c.n))]


def held_in(connection: Connection, parcel_ids: Sequence[str]) -> dict[str, list[Held]]:
    """Why each of these closed parcels must not leave; an empty list for what may."""
    query = select(lines.c.parcel, lines.c.holds).where(lines.c.parcel.in_(parcel_ids), HELD)
    found: dict[str, list[Held]] = {name: [] for name in parcel_ids}
    for row in connection.execute(query.where(lines.c.state == LineState.RELEASED)):
        found[row.parcel] += row.holds
    return found


def parcels_with_things(connection: Connection) -> int:
    """How many parcels that are not closed have something packed in them."""
    packed = select(func.count(lines.c.parcel.distinct())).where(lines.c.state == LineState.PACKED)
    return connection.execute(packed).scalar_one()


def orders_to_pack(connection: Connection, states: Sequence[LineState], limit: int) -> Rows:
    """Orders without a parcel that have a line in one of these states, the most urgent first."""
    query = _to_pack(states).order_by(*BY_URGENCY).limit(limit)
    return connection.execute(query).all()


def orders_to_pack_count(connection: Connection, states: Sequence[LineState]) -> int:
    """How many orders have something to pack, as `orders_to_pack` lists them."""
    return connection.execute(select(func.count()).select_from(_to_pack(states).subquery())).scalar_one()


def _to_pack(states: Sequence[LineState]) -> Any:
    ready, basket = func.count(lines.c.id).label("ready"), func.min(lines.c.basket)
    return (
        select(orders.c.id, orders.c.number, orders.c.ship_by, ready, basket)
        .join(lines, lines.c.order == orders.c.id)
        .where(lines.c.state.in_(states), orders.c.parcel.is_(None))
        .group_by(orders.c.id, orders.c.n, orders.c.number, orders.c.ship_by)
    )


def label_of(connection: Connection, parcel_id: str) -> str:
    """The end of the label that was bound to a parcel last; empty without one."""
    query = select(labels.c.ends).where(labels.c.parcel == parcel_id).order_by(labels.c.n.desc()).limit(1)
    return connection.execute(query).scalar() or ""
