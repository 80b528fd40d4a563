"""What a room's past says, as numbers for its plans: read-only."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, func, select

from scanflow.domain.life import StayState
from scanflow.storage.tables import slots, stays


def left_since(connection: Connection, since: datetime) -> dict[str, int]:
    """How many things left each section since then, moves within the room aside; sections without any left out."""
    query = (
        select(slots.c.section, func.count())
        .join(stays, stays.c.code == slots.c.code)
        .where(stays.c.ended >= since, stays.c.state != StayState.MOVED)
        .group_by(slots.c.section)
    )
    return {row[0]: row[1] for row in connection.execute(query)}
