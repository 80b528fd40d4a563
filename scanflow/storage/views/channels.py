"""Channels: those of which something was said, and those that orders name."""

from __future__ import annotations

import json
from typing import NamedTuple

from sqlalchemy import Connection, func, select

from scanflow.domain.things import ChannelStatus
from scanflow.storage.tables import channels, orders


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
    return [
        ChannelRow(
            name,
            json.loads(said[name].statuses) if name in said else {},
            bool(name in said and said[name].complete),
            came.get(name, 0),
        )
        for name in sorted({*came, *said})
    ]


def without_channel(connection: Connection) -> int:
    """How many orders name no channel."""
    return int(connection.execute(select(func.count()).where(orders.c.channel == "")).scalar_one())
