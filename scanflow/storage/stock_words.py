"""The words of all things in stock, made once and kept for as long as no thing comes, goes or is named anew."""

from __future__ import annotations

from collections.abc import Callable

from sqlalchemy import Connection, or_, select

from scanflow.domain.orders.titles import Stocked
from scanflow.storage import tables

FAR = 2_000
"""Entries of the ledger after which it is not asked any more whether a thing was among them."""


class StockWords:
    """What units of one database share: the words as they were at an entry of the ledger."""

    def __init__(self) -> None:
        self._kept: tuple[int, Stocked] | None = None

    def at(self, connection: Connection, seq: int, make: Callable[[], Stocked]) -> Stocked:
        """Those of a unit that sees the ledger up to `seq`, and has changed no thing itself."""
        if self._kept is not None:
            since, words = self._kept
            if 0 <= seq - since <= FAR and not _moved(connection, since, seq):
                self._kept = (seq, words)
                return words
        words = make()
        if self._kept is None or self._kept[0] <= seq:
            self._kept = (seq, words)
        return words


def _moved(connection: Connection, since: int, seq: int) -> bool:
    """Whether an entry tells of a row of these tables, as `storage.trust.replay` writes it; one too many is fine."""
    if since == seq:
        return False
    entries = tables.ledger.c
    told = or_(*(entries.data.contains(f'"{table.name} ') for table in (tables.items, tables.stays)))
    query = select(entries.seq).where(entries.seq > since, entries.seq <= seq, told).limit(1)
    return connection.execute(query).first() is not None
