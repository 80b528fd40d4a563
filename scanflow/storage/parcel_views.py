"""Parcels, and orders that can be packed, for pages, read-only."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, exists, func, literal_column, select

from scanflow.domain.life import LIVE, LineState, ParcelState
from scanflow.storage.derived import BY_URGENCY
from scanflow.storage.tables import labels, lines, orders, parcels
from scanflow.storage.views import Rows


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


def parcels_to_hand_over(connection: Connection, limit: int) -> Rows:
    """Closed parcels, the latest first, with `ends` of their last label, None without one."""
    last = select(func.max(labels.c.n)).where(labels.c.parcel == parcels.c.id).correlate(parcels).scalar_subquery()
    query = select(parcels, labels.c.ends).outerjoin(labels, labels.c.n == last)
    return connection.execute(
        query.where(parcels.c.state == ParcelState.CLOSED).order_by(parcels.c.n.desc()).limit(limit)
    ).all()


def parcels_without_label(connection: Connection) -> int:
    """How many closed parcels have no label yet."""
    labelled = exists(literal_column("1")).where(labels.c.parcel == parcels.c.id)
    query = select(func.count()).select_from(parcels).where(parcels.c.state == ParcelState.CLOSED, ~labelled)
    return connection.execute(query).scalar_one()


def orders_to_pack(connection: Connection, states: Sequence[LineState], limit: int) -> Rows:
    """Orders without a parcel that have a line in one of these states, the most urgent first."""
    query = _to_pack(states).order_by(*BY_URGENCY).limit(limit)
    return connection.execute(query).all()


def orders_to_pack_count(connection: Connection, states: Sequence[LineState]) -> int:
    return connection.execute(select(func.count()).select_from(_to_pack(states).subquery())).scalar_one()


def _to_pack(states: Sequence[LineState]) -> Any:
    ready, basket = func.count(lines.c.id).label("ready"), func.min(lines.c.basket)
    return (
        select(orders.c.id, orders.c.number, orders.c.ship_by, ready, basket)
        .join(lines, lines.c.order == orders.c.id)
        .where(lines.c.state.in_(states), orders.c.parcel.is_(None))
        .group_by(orders.c.id, orders.c.n, orders.c.number, orders.c.ship_by)
    )
