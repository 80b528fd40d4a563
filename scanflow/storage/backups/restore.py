"""Puts a backup back, into a folder or a database that holds nothing: built aside and checked before it counts."""

from __future__ import annotations

import os
import secrets
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, MetaData, inspect, select, text
from sqlalchemy.exc import SQLAlchemyError

from scanflow.domain import events
from scanflow.storage import tables
from scanflow.storage.backups import Progress, read_through, write_out
from scanflow.storage.backups import place as places
from scanflow.storage.backups.key import recipient_of
from scanflow.storage.backups.pictures import taken_out
from scanflow.storage.backups.place import Backup, BackupError, Store, damaged
from scanflow.storage.backups.rows import BackupState, check_ledger, check_rows, pictures_in
from scanflow.storage.database import LOCK_KEY, Database, NewerData, run_migrations
from scanflow.storage.engine import DATABASE, connect, sqlite_url, take_time
from scanflow.storage.ledger import entry_of, first_break
from scanflow.storage.trust import note

_WORK = "restoring-"
_OWN = {"alembic_version", "access", "photos"}
"""Tables that are filled in another way, or not at all."""


@dataclass(frozen=True, slots=True)
class Restored:
    """What stands again: so many things in stock, as of entry `seq`, `at` the time of the backup of this name.

    `secret` is that of a one-time link which sets the owner's password.
    """

    name: str
    at: datetime
    seq: int
    things: int
    secret: str


@dataclass(frozen=True, slots=True)
class _BackupCopy:
    """A backup's rows as a file, and its pictures as they are read."""

    source: Path
    store: Store
    backup: Backup
    key: str
    rows: Path
    state: BackupState
    progress: Progress | None

    def pictures(self) -> Iterator[tuple[int, str, bytes, bytes]]:
        """Number, hash, picture and thumb of each; BackupError where one is not what its hash says."""
        recipient = recipient_of(self.key) if self.backup.encrypted else ""
        wanted = pictures_in(self.rows)
        for done, (n, name) in enumerate(wanted, 1):
            with places.in_words(self.source):
                picture, thumb = taken_out(self.store, name, recipient, self.key)
            yield n, name, picture, thumb
            if self.progress is not None:
                self.progress(done, len(wanted))


def restore(
    source: Path,
    data: Path | None,
    url: str | None,
    *,
    key: str = "",
    which: str = "",
    progress: Progress | None = None,
    clock: Callable[[], datetime] = lambda: datetime.now(UTC),
) -> Restored:
    """The newest backup of a place or of a packed file, or the one whose name begins with `which`, is a shop again.

    It goes into the database at `url`, else into the folder `data`; neither may hold anything of a shop. Nobody is
    signed in any more: passwords, tokens and paired devices are not in a backup. BackupError; UnfitFolder.
    """
    if url is None and data is None:
        raise ValueError("a folder or a database is needed")
    with places.opened(source) as store:
        backup = _chosen(store, source, which)
        read_through(store, backup, key)
        if url is not None:
            with tempfile.TemporaryDirectory(prefix="scanflow-restore-") as work, _in_words(Path(work)):
                _fill_server(_fetched(source, store, backup, key, Path(work), progress), url)
                return _opened(url, backup, clock())
        assert data is not None
        with _in_words(data):
            return _into_folder(source, store, backup, key, data, progress, clock())


def _chosen(store: Store, source: Path, which: str) -> Backup:
    found = places.backups_in(store)
    if not found:
        raise BackupError("not_a_place", f"{source} holds no whole backup. Choose the folder or file of a backup.")
    fitting = [each for each in found if each.name.startswith(which)]
    if not fitting:
        names = ", ".join(each.name for each in found)
        raise BackupError("not_a_place", f"{source} holds no backup {which}. It holds {names}.")
    return fitting[0]


def _fetched(
    source: Path, store: Store, backup: Backup, key: str, work: Path, progress: Progress | None
) -> _BackupCopy:
    rows = work / "rows"
    return _BackupCopy(source, store, backup, key, rows, write_out(store, backup, key, rows), progress)


@contextmanager
def _in_words(target: Path) -> Iterator[None]:
    try:
        with places.in_words(target):
            yield
    except NewerData as error:
        detail = "This backup was made by a newer scanflow. Install the newer one, then restore again."
        raise BackupError("newer", detail) from error
    except (sqlite3.Error, SQLAlchemyError) as error:
        cause = getattr(error, "orig", None) or error
        if getattr(cause, "sqlite_errorcode", 0) & 0xFF == sqlite3.SQLITE_FULL:
            raise places.full(target) from error
        raise BackupError("stopped", f"Nothing was restored: {str(cause).strip()}") from error


def _into_folder(
    source: Path, store: Store, backup: Backup, key: str, data: Path, progress: Progress | None, now: datetime
) -> Restored:
    """Built in a folder of its own within `data`, whole and durable before it gets its name."""
    _refuse_a_shop(data)
    data.mkdir(mode=0o700, parents=True, exist_ok=True)
    sqlite_url(data)  # UnfitFolder on a network share
    for left in data.glob(f"{_WORK}*"):
        shutil.rmtree(left)
    work = data / f"{_WORK}{secrets.token_hex(4)}"
    work.mkdir(mode=0o700)
    try:
        _fill_file(_fetched(source, store, backup, key, work, progress), work)
        done = _opened(sqlite_url(work), backup, now)
        check_rows(work / DATABASE, "What was restored")
        _move(work / DATABASE, data)
        return done
    finally:
        shutil.rmtree(work, ignore_errors=True)


def _refuse_a_shop(data: Path) -> None:
    if any((data / name).exists() for name in (DATABASE, f"{DATABASE}-wal", f"{DATABASE}-shm", note.NAME)):
        raise BackupError("not_empty", f"{data} holds a shop, or what is left of one. Restore into another folder.")


def _fill_file(copy: _BackupCopy, work: Path) -> None:
    """Tables of the backup's revision, made by the migrations, and its rows in them."""
    engine = connect(sqlite_url(work))
    with engine.begin() as connection:
        run_migrations(connection, None, copy.state.revision)
    engine.dispose()
    with closing(sqlite3.connect(work / DATABASE, isolation_level=None)) as file:
        file.executescript("PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF; PRAGMA cache_size=-65536")
        file.execute("ATTACH ? AS backup", (str(copy.rows),))
        file.execute("BEGIN")
        for table, columns in _tables(file, "backup"):
            names = ", ".join(columns)
            file.execute(f'INSERT INTO main."{table}" ({names}) SELECT {names} FROM backup."{table}"')
        file.executemany("INSERT INTO photos (n, hash, picture, thumb) VALUES (?, ?, ?, ?)", copy.pictures())
        file.execute("COMMIT")
        if file.execute("PRAGMA foreign_key_check").fetchone() is not None:
            raise damaged(copy.backup.name)
        check_ledger(file, copy.backup.name)


def _tables(file: sqlite3.Connection, schema: str) -> list[tuple[str, list[str]]]:
    """Name and columns, quoted, of each table of a backup that is copied as it is."""
    found = file.execute(f"SELECT name FROM {schema}.sqlite_master WHERE type = 'table' ORDER BY name").fetchall()
    names = [name for (name,) in found if name not in _OWN and not name.startswith("sqlite_")]
    return [(name, [f'"{row[1]}"' for row in file.execute(f'PRAGMA {schema}.table_info("{name}")')]) for name in names]


def _fill_server(copy: _BackupCopy, url: str) -> None:
    """The same in one transaction of PostgreSQL."""
    engine = connect(url)
    if engine.dialect.name != "postgresql":
        raise BackupError("not_empty", "This is no PostgreSQL database. Restore into a folder by --data instead.")
    try:
        with engine.begin() as connection, closing(sqlite3.connect(copy.rows)) as rows:
            take_time(connection)
            connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": LOCK_KEY})
            if inspect(connection).get_table_names():
                raise BackupError("not_empty", "This database holds tables already. Make a new one, and restore there.")
            run_migrations(connection, None, copy.state.revision)
            order = MetaData()
            order.reflect(connection)
            found = dict(_tables(rows, "main"))
            for table in (each.name for each in order.sorted_tables):
                if table == "photos":
                    _pour(connection, table, ['"n"', "hash", "picture", "thumb"], copy.pictures())
                elif table in found:
                    names = found[table]
                    _pour(connection, table, names, rows.execute(f'SELECT {", ".join(names)} FROM "{table}"'))
            _check_account(connection, copy)
    finally:
        engine.dispose()


def _pour(connection: Connection, table: str, names: list[str], rows: Iterator[tuple[object, ...]]) -> None:
    """Rows into a table by COPY, and the numbers that its next rows get."""
    driver = connection.connection.driver_connection
    assert driver is not None  # it is connected
    with driver.cursor() as cursor:
        with cursor.copy(f'COPY "{table}" ({", ".join(names)}) FROM STDIN') as copy:
            for row in rows:
                copy.write_row(row)
        if '"n"' in names:
            number = f"pg_get_serial_sequence('{table}', 'n')"
            cursor.execute(f'SELECT setval({number}, coalesce(max(n), 0) + 1, false) FROM "{table}"')


def _check_account(connection: Connection, copy: _BackupCopy) -> None:
    ledger = connection.execute(select(tables.ledger).order_by(tables.ledger.c.seq))
    last = connection.execute(text("SELECT seq FROM head")).scalar_one()
    if first_break(map(entry_of, ledger)) is not None or last != copy.state.seq:
        raise damaged(copy.backup.name)


FORGOTTEN_SLIPS = 1000
"""Numbers of slips that are skipped: slips that were printed after the backup are out still, and mean other orders."""


def _opened(url: str, backup: Backup, now: datetime) -> Restored:
    """Brought up to date; the ledger tells of it, and the owner can set a password."""
    database = Database(url)
    try:
        with database.writing(now, "scanflow restore") as unit:
            unit.record(events.ShopRestored(from_=backup.name, seq=backup.seq))
            slips = unit.next_slip() + FORGOTTEN_SLIPS
            unit.set_settings(replace(unit.settings, restored_at=now.isoformat(), slips_from=slips))
            secret = unit.access.make_setup_link("restored")
            stored = tables.stays.c.state == "stored"
            things = len(unit.connection.execute(select(tables.stays.c.id).where(stored)).all())
    finally:
        database.close()
    return Restored(backup.name, backup.at, backup.seq, things, secret)


def _move(file: Path, data: Path) -> None:
    """Durable, then named; never over another file."""
    file.chmod(0o600)
    with file.open("rb+") as written:
        os.fsync(written.fileno())
    _refuse_a_shop(data)
    try:
        os.link(file, data / DATABASE)
    except FileExistsError:
        _refuse_a_shop(data)
    except OSError:  # a file system without links
        file.rename(data / DATABASE)
    places.sync_folder(data)
