"""Lines of the ledger for pages, read-only."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import datetime
from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Connection, or_, select

from scanflow.domain import events
from scanflow.domain.orders.evidence import AccountEntry
from scanflow.storage.ledger import FIRST, Entry, entry_of
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
        query = query.where(_names(about))
    return [_entry(row) for row in connection.execute(query)]


def account(connection: Connection, about: Sequence[str]) -> list[AccountEntry]:
    """All entries that name one of `about`, with their hashes, the first one first."""
    query = select(ledger).where(_names(about)).order_by(ledger.c.seq)
    return [AccountEntry(*_entry(row), row.hash) for row in connection.execute(query)]


def hash_before(connection: Connection, seq: int) -> str:
    """The hash of the entry before this one; empty before the first."""
    return connection.execute(select(ledger.c.hash).where(ledger.c.seq == seq - 1)).scalar() or FIRST


def segment(connection: Connection, first: int, last: int, limit: int) -> list[Entry]:
    """Entries from `first` to `last`, at most `limit` of them, whole as they were hashed."""
    query = select(ledger).where(ledger.c.seq >= first, ledger.c.seq <= last).order_by(ledger.c.seq).limit(limit)
    return [entry_of(row) for row in connection.execute(query)]


def _names(about: Sequence[str]) -> ColumnElement[bool]:
    named = (json.dumps(name, ensure_ascii=False) for name in about)
    return or_(*(ledger.c.data.contains(each, autoescape=True) for each in named))


def _entry(row: Any) -> ToldEntry:
    at = datetime.fromisoformat(row.at)
    return ToldEntry(row.seq, at, row.actor, events.read(row.kind, _told(row.data)))


def _told(data: str) -> dict[str, Any]:
    return {name: value for name, value in json.loads(data).items() if name != NOW}
