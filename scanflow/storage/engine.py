"""Open a database, SQLite or PostgreSQL, so that what is committed stays committed."""

from __future__ import annotations

import logging
import os
import re
import sqlite3
import stat
import sys
import time
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url, text
from sqlalchemy.pool import QueuePool

from scanflow.storage.writing.failing import PATIENCE

log = logging.getLogger(__name__)
DATABASE = "scanflow.db"

CACHE = "cache_size=-16384"
"""KiB of pages that a connection keeps; SQLite's own 2 MiB are few."""

GLANCE = 0.02
"""Seconds that SQLite itself waits to begin a write; then it is asked again, so that nobody who waits is passed by."""

PAUSE = 0.004
UNTIL = "until"
"""In a connection's info: when, by `time.monotonic`, waiting to begin a write is given up."""

PRAGMAS = ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "fullfsync=ON", "checkpoint_fullfsync=ON", CACHE)
"""`fullfsync` makes macOS write to the disk itself (https://www.sqlite.org/pragma.html#pragma_fullfsync)."""

IDLE = 4.0
"""Seconds that a write may do nothing on PostgreSQL; then the server ends it, before `PATIENCE` of others does."""

LONGEST = 60.0
"""Seconds that any one statement may take on PostgreSQL, and that a reading unit may do nothing."""

TCP = {"keepalives": 1, "keepalives_idle": 5, "keepalives_interval": 2, "keepalives_count": 3}

MOUNTS = Path("/proc/self/mounts")
NETWORK_FILESYSTEMS = frozenset({"nfs", "nfs4", "cifs", "smb3", "smbfs", "afs", "ncpfs", "fuse.sshfs", "9p", "afpfs"})


class UnfitFolder(Exception):
    """The data folder can't hold the database."""


def sqlite_url(folder: Path) -> str:
    """The database of a data folder, made if need be. Its write-ahead log does not work on a network share."""
    make_private(folder)
    if _on_network(folder.resolve()):
        raise UnfitFolder(f"{folder} is on a network share. Choose a folder on this machine's own disk.")
    return URL.create("sqlite", database=(folder / DATABASE).resolve().as_posix()).render_as_string()


def file_of(url: str) -> Path | None:
    """The file of an SQLite database; None for any other."""
    parsed = make_url(url)
    return Path(parsed.database) if parsed.get_backend_name() == "sqlite" and parsed.database else None


def make_private(folder: Path) -> None:
    """Make a data folder that this account alone gets into, with its database; one that others can read is tightened,
    and that is logged. What is no folder of a shop's own, such as /tmp, /srv or a home, stays as it is.

    On Windows nothing: a user's data folder is private there.
    """
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    if sys.platform == "win32":
        return
    files = [each for each in folder.glob(f"{DATABASE}*") if _is_open(each)]
    whole = folder.resolve()
    own = not whole.stat().st_mode & stat.S_ISVTX and len(whole.parts) > 2 and whole != Path.home().resolve()
    folders = [folder] if own and _is_open(folder) else []
    for each in (*files, *folders):
        each.chmod(0o700 if each.is_dir() else 0o600)
    if files:
        log.warning("Other accounts of this machine could read the data in %s. From now on yours alone can.", folder)


def _is_open(path: Path) -> bool:
    """Whether other accounts get at what is this one's."""
    found = path.lstat()
    return found.st_uid == os.getuid() and not stat.S_ISLNK(found.st_mode) and bool(found.st_mode & 0o077)


def _on_network(folder: Path) -> bool:
    if sys.platform == "win32":
        import ctypes

        remote = 4  # DRIVE_REMOTE, fileapi.h
        return str(folder).startswith("\\\\") or ctypes.windll.kernel32.GetDriveTypeW(folder.anchor) == remote
    if not MOUNTS.exists():
        return False
    best, kind = 0, ""
    for line in MOUNTS.read_text(errors="surrogateescape").splitlines():
        _, point, filesystem, *_ = line.split(" ")
        point = re.sub(r"\\([0-7]{3})", lambda octal: chr(int(octal[1], 8)), point)  # spaces and such, fstab(5)
        if folder.is_relative_to(point) and len(point) >= best:
            best, kind = len(point), filesystem
    return kind in NETWORK_FILESYSTEMS


def connect(url: str, *, read_only: bool = False) -> Engine:
    """An engine whose transactions are durable: SQLite in WAL with synchronous=FULL, writes begun as IMMEDIATE.

    With `read_only` each transaction sees one state and can't change it. Nobody waits for another for more than
    `PATIENCE`.
    """
    if url.startswith("postgresql:"):
        url = url.replace("postgresql:", "postgresql+psycopg:", 1)
    # The connection given back last is taken first: what it has cached and prepared is still good.
    pool: dict[str, Any] = {"pool_size": 16, "max_overflow": 16, "pool_use_lifo": True, "pool_timeout": PATIENCE}
    if not url.startswith("sqlite"):
        engine = create_engine(url, connect_args=network(make_url(url)), pool_pre_ping=True, **pool)
        idle = LONGEST if read_only else IDLE
        event.listen(engine, "connect", lambda driven, _: _set_up_postgresql(driven, idle))
        options: dict[str, Any] = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
        return engine.execution_options(**options) if read_only else engine
    if not read_only:
        _make_file(url)
    engine = create_engine(url, creator=lambda: _open(url, "rw"), poolclass=QueuePool, **pool)
    event.listen(engine, "connect", _reading_sqlite if read_only else _writing_sqlite)
    event.listen(engine, "begin", _begin_reading if read_only else _begin_writing)
    return engine


def _make_file(url: str) -> None:
    """What SQLite puts beside a database is as private as the file that is there first."""
    file = file_of(url)
    if file is not None and not file.exists():
        with suppress(OSError):  # SQLite says better why it can't be
            file.touch(mode=0o600)


def _open(url: str, mode: str) -> sqlite3.Connection:
    """The file of an SQLite database, which is there already: one that was deleted or moved away is never made anew."""
    file = file_of(url)
    address = f"{file.resolve().as_uri()}?mode={mode}" if file is not None else ":memory:"
    return sqlite3.connect(address, uri=True, isolation_level=None, timeout=PATIENCE, check_same_thread=False)


def connect_frozen(url: str) -> Engine:
    """An engine that leaves the files of an SQLite database as they are: what stands in its write-ahead log is read,
    and never written into the file. Of PostgreSQL, one that only reads.
    """
    if file_of(url) is None:
        return connect(url, read_only=True)
    engine = create_engine(url, creator=lambda: _open(url, "ro"), poolclass=QueuePool, pool_size=16, max_overflow=16)
    event.listen(engine, "begin", _begin_reading)
    return engine


def network(url: URL) -> dict[str, Any]:
    """How soon a network that is silent counts as gone; what the URL says itself comes first."""
    patience = int(PATIENCE)
    usual: dict[str, Any] = {"connect_timeout": patience, "tcp_user_timeout": 1000 * patience, **TCP}
    return {name: value for name, value in usual.items() if name not in url.query}


TIMEOUTS = ("lock_timeout", "idle_in_transaction_session_timeout", "statement_timeout")
"""PostgreSQL's names of how long a statement waits for a lock, a transaction does nothing, and a statement takes."""


def _set_up_postgresql(driven: Any, idle: float) -> None:
    """Once for each connection. `synchronous_commit` is what keeps an answered scan, whatever the server's default."""
    for name, seconds in zip(TIMEOUTS, (PATIENCE, idle, LONGEST), strict=True):
        driven.execute(f"SET {name} = {int(1000 * seconds)}")
    driven.execute("SET synchronous_commit = on")
    driven.commit()


def take_time(connection: Connection) -> None:
    """A transaction on PostgreSQL that may wait and work as long as it needs: an upgrade."""
    for name in TIMEOUTS:
        connection.execute(text(f"SET LOCAL {name} = 0"))


def unsafe(connection: Connection) -> str:
    """A word on a server that is told not to keep what it commits; empty where all is well."""
    if connection.dialect.name == "postgresql" and connection.execute(text("SHOW fsync")).scalar() == "off":
        return "The PostgreSQL server runs with fsync=off: a power cut may spoil all data. Set it to on."
    return ""


def _set_up_sqlite(connection: Any, wait: float) -> None:
    """Once for each connection: SQLite prepares all statements anew after most of these."""
    cursor = connection.cursor()
    for pragma in (*PRAGMAS, f"busy_timeout={int(1000 * wait)}"):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _writing_sqlite(connection: Any, _: Any) -> None:
    _set_up_sqlite(connection, GLANCE)


def _reading_sqlite(connection: Any, _: Any) -> None:
    _set_up_sqlite(connection, PATIENCE)
    connection.execute("PRAGMA query_only=ON")


def _begin_reading(connection: Connection) -> None:
    driven(connection).execute("BEGIN")


def _begin_writing(connection: Connection) -> None:
    """Ask until it is `UNTIL` of the connection's info, or for all of `PATIENCE`. SQLite's own waiting asks ever more
    rarely, so that another process which writes again and again would pass it by.
    """
    until = connection.info.pop(UNTIL, None) or time.monotonic() + PATIENCE
    while True:
        try:
            driven(connection).execute("BEGIN IMMEDIATE")
            return
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY or time.monotonic() > until:
                raise
        time.sleep(PAUSE)


def driven(connection: Connection) -> Any:
    """The driver's own connection."""
    found = connection.connection.driver_connection
    assert found is not None  # it is connected
    return found
