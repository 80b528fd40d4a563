"""Open a database, SQLite or PostgreSQL, so that what is committed stays committed."""

from __future__ import annotations

import re
import sys
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event

READ_ONLY = "scanflow_read_only"
MOUNTS = Path("/proc/self/mounts")
NETWORK_FILESYSTEMS = frozenset({"nfs", "nfs4", "cifs", "smb3", "smbfs", "afs", "ncpfs", "fuse.sshfs", "9p", "afpfs"})


class UnfitFolder(Exception):
    """The data folder can't hold the database."""


def sqlite_url(folder: Path) -> str:
    """The database of a data folder, made if need be. Its write-ahead log does not work on a network share."""
    folder.mkdir(parents=True, exist_ok=True)
    if _on_network(folder.resolve()):
        raise UnfitFolder(f"{folder} is on a network share. Choose a folder on this machine's own disk.")
    return f"sqlite:///{(folder / 'scanflow.db').resolve().as_posix()}"


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


def connect(url: str) -> Engine:
    """An engine whose transactions are durable: SQLite in WAL with synchronous=FULL, writes begun as IMMEDIATE."""
    if url.startswith("postgresql:"):
        url = url.replace("postgresql:", "postgresql+psycopg:", 1)
    if not url.startswith("sqlite"):
        return create_engine(url, pool_size=16, max_overflow=16, pool_pre_ping=True)
    engine = create_engine(url, pool_size=16, max_overflow=16, connect_args={"isolation_level": None, "timeout": 30.0})
    event.listen(engine, "connect", _set_up_sqlite)
    event.listen(engine, "begin", _begin_sqlite)
    return engine


def _set_up_sqlite(connection: Any, _: Any) -> None:
    cursor = connection.cursor()
    for pragma in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "busy_timeout=30000"):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin_sqlite(connection: Connection) -> None:
    read_only = connection.get_execution_options().get(READ_ONLY, False)
    connection.connection.cursor().execute(f"PRAGMA query_only={read_only:d}")
    connection.exec_driver_sql("BEGIN" if read_only else "BEGIN IMMEDIATE")
