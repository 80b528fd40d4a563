"""All rows of a shop as one SQLite file, the same for both databases: read in one snapshot, and checked as a whole.

Pictures are left out but for their hashes, for a place has each once; who may come in is left out for good.
"""

from __future__ import annotations

import sqlite3
from collections import namedtuple
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import Connection, Engine, Table, func, select, text
from sqlalchemy.dialects import sqlite
from sqlalchemy.schema import CreateTable

from scanflow.storage import tables
from scanflow.storage.backups.place import damaged
from scanflow.storage.ledger import FIRST, entry_of, first_break

_ROWS = 2_000
_EMPTY = {"photos": {"picture", "thumb"}}
_LEFT_OUT = {tables.access}
_QUICK = "PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF; PRAGMA cache_size=-65536"
"""For a file that is thrown away unless all of it was written."""

_Entry = namedtuple("_Entry", ("seq", "at", "kind", "actor", "data", "hash"))


class BackupState(NamedTuple):
    """Which shop a file of rows holds, as of which entry; `revision` of its tables, `things` in stock."""

    shop: str
    seq: int
    revision: str
    things: int


def write_rows(engine: Engine, path: Path) -> None:
    """The rows as of one moment, into a new file. `engine` sees one state in each transaction.

    No write of the shop waits for it. OSError, sqlite3.Error, SQLAlchemyError.
    """
    with closing(sqlite3.connect(path, isolation_level=None, uri=True)) as out:
        out.executescript(_QUICK)
        for table in tables.metadata.sorted_tables:
            out.execute(str(CreateTable(table).compile(dialect=sqlite.dialect())))
        out.execute("CREATE TABLE alembic_version (version_num VARCHAR(32) NOT NULL)")
        if engine.dialect.name == "sqlite":
            _from_sqlite(Path(engine.url.database or ""), out)
        else:
            with engine.connect() as connection:
                _from_server(connection, out)


def _copied() -> Iterator[tuple[Table, list[str]]]:
    for table in tables.metadata.sorted_tables:
        if table not in _LEFT_OUT:
            yield table, [column.name for column in table.columns]


def _from_sqlite(shop: Path, out: sqlite3.Connection) -> None:
    """By SQLite itself; reading the head begins the snapshot, which ends with the transaction."""
    out.execute("PRAGMA busy_timeout=30000")
    out.execute("ATTACH ? AS shop", (f"{shop.absolute().as_uri()}?mode=rw",))  # never made anew where it is gone
    out.execute("BEGIN")
    out.execute("SELECT seq FROM shop.head").fetchone()
    for table, names in _copied():
        empty = _EMPTY.get(table.name, set())
        given = ", ".join("x''" if name in empty else f'"{name}"' for name in names)
        columns = ", ".join(f'"{name}"' for name in names)
        out.execute(f'INSERT INTO main."{table.name}" ({columns}) SELECT {given} FROM shop."{table.name}"')
    out.execute("INSERT INTO main.alembic_version SELECT version_num FROM shop.alembic_version")
    out.execute("COMMIT")
    out.execute("DETACH shop")


def _from_server(connection: Connection, out: sqlite3.Connection) -> None:
    """By a cursor of the server, some rows at a time; the first statement begins the snapshot."""
    revision = connection.execute(text("SELECT version_num FROM alembic_version")).scalar_one()
    out.execute("BEGIN")
    for table, names in _copied():
        empty = _EMPTY.get(table.name, set())
        given = ", ".join(r"'\x'::bytea" if name in empty else f'"{name}"' for name in names)
        marks = ", ".join("?" * len(names))
        columns = ", ".join(f'"{name}"' for name in names)
        order = next(iter(table.primary_key)).name
        query = text(f'SELECT {given} FROM "{table.name}" ORDER BY "{order}"')
        with connection.execution_options(yield_per=_ROWS).execute(query) as rows:
            for some in rows.partitions():
                out.executemany(f'INSERT INTO "{table.name}" ({columns}) VALUES ({marks})', map(tuple, some))
    out.execute("INSERT INTO alembic_version VALUES (?)", (revision,))
    out.execute("COMMIT")


def check_rows(path: Path, what: str) -> BackupState:
    """A file of rows is whole: every page of it, and the account from its first entry to the head's.

    BackupError, which names the file as `what`.
    """
    try:
        with closing(sqlite3.connect(path)) as file:
            if file.execute("PRAGMA integrity_check").fetchone() != ("ok",):
                raise damaged(what)
            check_ledger(file, what)
            return state_of(file)
    except (sqlite3.DatabaseError, ValueError, KeyError, TypeError) as error:
        raise damaged(what) from error


def check_ledger(file: sqlite3.Connection, what: str) -> None:
    """Every entry follows from the one before, and the head from the last. BackupError."""
    last = _Entry(0, "", "", "", "", FIRST)

    def entries() -> Iterator[_Entry]:
        nonlocal last
        for row in file.execute("SELECT seq, at, kind, actor, data, hash FROM ledger ORDER BY seq"):
            last = _Entry(*row)
            yield last

    broken = first_break(map(entry_of, entries()))
    head = file.execute("SELECT seq, hash FROM head").fetchone()
    if broken is not None or head != (last.seq, last.hash):
        raise damaged(what)


def state_of(file: sqlite3.Connection) -> BackupState:
    """What a file of rows says of itself. The tables of older revisions have no name of the shop."""
    named = "shop" in {row[1] for row in file.execute("PRAGMA table_info(head)")}
    seq, shop = file.execute(f"SELECT seq, {'shop' if named else chr(39) * 2} FROM head").fetchone()
    (revision,) = file.execute("SELECT version_num FROM alembic_version").fetchone()
    (things,) = file.execute("SELECT count(*) FROM stays WHERE state = 'stored'").fetchone()
    return BackupState(shop, seq, revision, things)


def pictures_in(path: Path) -> list[tuple[int, str]]:
    """Number and hash of each picture that a file of rows names."""
    with closing(sqlite3.connect(path)) as file:
        return file.execute("SELECT n, hash FROM photos ORDER BY n").fetchall()


def picture_sizes(engine: Engine) -> dict[str, int]:
    """Hash of each picture that the shop has now, and the bytes of it with its thumb; neither is read for that."""
    photos = tables.photos.c
    query = select(photos.hash, func.length(photos.picture) + func.length(photos.thumb))
    with engine.connect() as connection, connection.begin():
        return {row[0]: row[1] for row in connection.execute(query)}


def picture(engine: Engine, name: str) -> tuple[bytes, bytes] | None:
    """A picture and its thumb; None where it was deleted meanwhile."""
    photos = tables.photos.c
    with engine.connect() as connection, connection.begin():
        row = connection.execute(select(photos.picture, photos.thumb).where(photos.hash == name)).first()
    return None if row is None else (bytes(row[0]), bytes(row[1]))
