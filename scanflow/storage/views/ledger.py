"""Lines of the ledger for pages, read-only."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import datetime
from typing import Any, NamedTuple

from sqlalchemy import Connection, or_, select

from scanflow.domain import events
from scanflow.storage.tables import ledger
from scanflow.storage.trust.replay import NOW


class ToldEntry(NamedTuple):
    """One entry: what was recorded, without what rows became by it."""

    seq: int
    at: datetime
    actor: str
    event: events.Told


def newest(
    connection: Connection, *, before: int | None = None, about: Sequence[str] = (), limit: int = 50
) -> list[ToldEntry]:
    """Entries with the latest first, only those that name one of `about` (an id, a slot code, a number) if given."""
    query = select(ledger).order_by(ledger.c.seq.desc()).limit(limit)
    if before is not None:
        query = query.where(ledger.c.seq < before)
    if about:
        named = (json.dumps(name, ensure_ascii=False) for name in about)
        query = query.where(or_(*(ledger.c.data.contains(each, autoescape=True) for each in named)))
    return [
        ToldEntry(row.seq, datetime.fromisoformat(row.at), row.actor, events.read(row.kind, _told(row.data)))
        for row in connection.execute(query)
    ]


def _told(data: str) -> dict[str, Any]:
    return {name: value for name, value in json.loads(data).items() if name != NOW}
