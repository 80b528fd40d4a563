"""Open a database, SQLite or PostgreSQL, so that what is committed stays committed."""

from __future__ import annotations

import logging
import os
import re
import sqlite3
import stat
import sys
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Engine, create_engine, event, make_url
from sqlalchemy.pool import QueuePool

log = logging.getLogger(__name__)
DATABASE = "scanflow.db"

CACHE = "cache_size=-16384"
"""KiB of pages that a connection keeps; SQLite's own 2 MiB are few."""

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

    With `read_only` each transaction sees one state and can't change it.
    """
    if url.startswith("postgresql:"):
        url = url.replace("postgresql:", "postgresql+psycopg:", 1)
    # The connection given back last is taken first: what it has cached and prepared is still good.
    pool: dict[str, Any] = {"pool_size": 16, "max_overflow": 16, "pool_use_lifo": True}
    if not url.startswith("sqlite"):
        engine = create_engine(url, pool_pre_ping=True, **pool)
        options: dict[str, Any] = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
        return engine.execution_options(**options) if read_only else engine
    if not read_only:
        _make_file(url)
    engine = create_engine(url, connect_args={"isolation_level": None, "timeout": 30.0}, **pool)
    event.listen(engine, "connect", _reading_sqlite if read_only else _set_up_sqlite)
    begin = "BEGIN" if read_only else "BEGIN IMMEDIATE"
    event.listen(engine, "begin", lambda connection: connection.connection.driver_connection.execute(begin))
    return engine


def _make_file(url: str) -> None:
    """What SQLite puts beside a database is as private as the file that is there first."""
    file = file_of(url)
    if file is not None and not file.exists() and file.parent.exists():
        file.touch(mode=0o600)


def connect_frozen(url: str) -> Engine:
    """An engine that leaves the files of an SQLite database as they are: what stands in its write-ahead log is read,
    and never written into the file. Of PostgreSQL, one that only reads.
    """
    file = file_of(url)
    if file is None:
        return connect(url, read_only=True)
    address = f"{file.resolve().as_uri()}?mode=ro"

    def open_file() -> sqlite3.Connection:
        return sqlite3.connect(address, uri=True, isolation_level=None, timeout=30.0, check_same_thread=False)

    engine = create_engine("sqlite://", creator=open_file, poolclass=QueuePool, pool_size=16, max_overflow=16)
    event.listen(engine, "begin", lambda connection: connection.connection.driver_connection.execute("BEGIN"))
    return engine


def _set_up_sqlite(connection: Any, _: Any) -> None:
    """Once for each connection: SQLite prepares all statements anew after most of these."""
    cursor = connection.cursor()
    for pragma in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "busy_timeout=30000", CACHE):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _reading_sqlite(connection: Any, _: Any) -> None:
    _set_up_sqlite(connection, _)
    connection.execute("PRAGMA query_only=ON")
