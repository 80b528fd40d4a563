"""What each entry of the ledger says of the rows that changed with it, so that the account can be held against them.

An entry's data has a list `now`: for each row its table, its name, its state where its kind has one, and a digest of
all its columns. It is one text, so that a search for a quoted name finds the entries that tell of the thing, not
these. Of a picture the digest is of its small copy: its own hash is its name.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, literal, select

from scanflow.domain import things
from scanflow.storage import tables
from scanflow.storage.rows import COLUMNS, FIELDS, KINDS, thing, values
from scanflow.storage.tables import Instant

NOW = "now"
CHUNK = 2_000
"""Rows of one `Baseline` entry. One or some in a row tell of every row: replay begins at the first of the last ones."""

REPLAYED = tuple(kind for kind in KINDS if kind is not things.Stop)
"""A round's stops have no name of their own, and never change."""

_STATES: dict[type, str] = {things.Slot: "card", things.Doubt: "how"}
_INSTANT = Instant()


def _text(value: Any) -> Any:
    return _INSTANT.process_bind_param(value, None) if isinstance(value, datetime) else str(value)


def digest(new: Any) -> str:
    """Twelve hex digits of the SHA-256 of a thing's columns as JSON; of a picture, of its small copy."""
    if isinstance(new, things.Photo):
        return hashlib.sha256(new.thumb).hexdigest()[:12]
    row = values({name: getattr(new, name) for name in FIELDS[type(new)]})
    return hashlib.sha256(json.dumps(row, default=_text, sort_keys=True).encode()).hexdigest()[:12]


def row_now(kind: type, name: str, new: Any) -> str:
    """`TABLE NAME STATE DIGEST` of a row, with `-` for what it has not; None for a row that is gone."""
    if new is None:
        return f"{KINDS[kind].name} {name} - -"
    state = getattr(new, _STATES.get(kind, "state"), None)
    return f"{KINDS[kind].name} {name} {state or '-'} {digest(new)}"


def rows_now(connection: Connection) -> Iterator[str]:
    """The same of every row that stands in the tables."""
    for kind in REPLAYED:
        columns = COLUMNS[kind]
        if kind is things.Photo:  # all of them may be gigabytes
            columns = [tables.photos.c.hash, literal(b""), tables.photos.c.thumb]
        for row in connection.execute(select(*columns).order_by(KINDS[kind].c.n)):
            yield row_as_read(kind, row)


def row_as_read(kind: type, row: Any) -> str:
    """The same of a row of `COLUMNS[kind]`."""
    found = thing(kind, row)
    return row_now(kind, getattr(found, FIELDS[kind][0]), found)
