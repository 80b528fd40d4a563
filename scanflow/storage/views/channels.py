"""Channels: those of which something was said, and those that orders and listings name."""

from __future__ import annotations

import json
from typing import NamedTuple

from sqlalchemy import Connection, func, select

from scanflow.domain.things import ChannelStatus
from scanflow.storage.tables import channels, listings, orders


class ChannelRow(NamedTuple):
    """`statuses`: what each value means. `orders`: how many came from it."""

    name: str
    statuses: dict[str, ChannelStatus]
    complete: bool
    orders: int


def channel_rows(connection: Connection) -> list[ChannelRow]:
    """All channels by their names."""
    counts = select(orders.c.channel, func.count()).where(orders.c.channel != "").group_by(orders.c.channel)
    came = {row[0]: row[1] for row in connection.execute(counts)}
    said = {row.name: row for row in connection.execute(select(channels)).all()}
    offered = connection.execute(select(listings.c.channel).distinct().where(listings.c.channel != "")).scalars()
    return [
        ChannelRow(
            name,
            json.loads(said[name].statuses) if name in said else {},
            bool(name in said and said[name].complete),
            came.get(name, 0),
        )
        for name in sorted({*came, *said, *offered}, key=str.casefold)
    ]


def channel_names(connection: Connection) -> list[str]:
    """The same by their names alone."""
    return [row.name for row in channel_rows(connection)]


def spelt(connection: Connection, typed: str) -> str:
    """The channel that is called so but for capitals, as it is spelt here: two spellings would be two channels."""
    return next((name for name in channel_names(connection) if name.casefold() == typed.casefold()), typed)


def without_channel(connection: Connection) -> tuple[int, int]:
    """How many orders and how many listings that are up name no channel."""
    up = select(func.count()).where(listings.c.channel == "", listings.c.ended.is_(None))
    of_orders = select(func.count()).where(orders.c.channel == "")
    return connection.execute(of_orders).scalar_one(), connection.execute(up).scalar_one()
