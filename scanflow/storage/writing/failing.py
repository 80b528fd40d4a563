"""What an error of the database's driver means where the storage fails: one table of codes, and the words of each."""

from __future__ import annotations

import errno
import sqlite3
import tempfile
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as NoConnection

from scanflow.storage.writing.unwritable import Unwritable

FULL, READONLY, GONE, BUSY = "storage_full", "storage_readonly", "storage_gone", "storage_busy"
AMISS = "amiss"
"""Something was found in the data that must not be written over (`guard`)."""

CODES = (FULL, READONLY, GONE, BUSY, AMISS)
LASTING = (READONLY, GONE)
"""A connection of SQLite stays as it is after these; one that is opened anew sees what became of disk and file."""

PATIENCE = 5.0
"""Seconds that a write waits for the ones before it."""

WORDS = {
    FULL: "The disk of the shop's data is full, so nothing is recorded. Free some space; then it goes on by itself.",
    READONLY: "The shop's data can't be changed: they are read-only. Make them writable; then it goes on by itself.",
    GONE: "The shop's data can't be reached, so nothing is recorded. Bring their disk or server back; then it goes on "
    "by itself.",
    BUSY: "Another program keeps the shop's data locked, so nothing is recorded. Wait a moment. If it lasts, look for "
    "that program and end it.",
}

SQLITE = {
    sqlite3.SQLITE_FULL: FULL,
    sqlite3.SQLITE_READONLY: READONLY,
    sqlite3.SQLITE_PERM: READONLY,
    sqlite3.SQLITE_BUSY: BUSY,
    sqlite3.SQLITE_LOCKED: BUSY,
    sqlite3.SQLITE_PROTOCOL: BUSY,
}
"""By primary result code: https://www.sqlite.org/rescode.html."""

UNCLEAR = frozenset({sqlite3.SQLITE_IOERR, sqlite3.SQLITE_CANTOPEN})
"""What these mean, the folder of the file tells."""

POSTGRESQL = {
    "53100": FULL,
    "25006": READONLY,
    "53300": BUSY,  # too many connections
    "55P03": BUSY,  # lock_timeout
    "57014": BUSY,  # statement_timeout
    "25P03": BUSY,  # idle_in_transaction_session_timeout
    "40P01": BUSY,  # deadlock
    "57P01": GONE,  # the server ends
    "57P02": GONE,
    "57P03": GONE,
    "58030": GONE,  # it can't read or write its files
}
"""By SQLSTATE: https://www.postgresql.org/docs/current/errcodes-appendix.html. All of class 08 is a lost connection."""

NUMBERS = {
    **dict.fromkeys((errno.ENOSPC, getattr(errno, "EDQUOT", errno.ENOSPC), errno.EFBIG), FULL),
    **dict.fromkeys((errno.EROFS, errno.EACCES, errno.EPERM), READONLY),
}


def unwritable(code: str) -> Unwritable:
    """The error of this code, in its words."""
    return Unwritable(code, WORDS[code])


def told(error: BaseException, file: Path | None = None) -> Unwritable | None:
    """What an error says of the storage, None where it is about something else. `file`: the database's, on SQLite."""
    if isinstance(error, Unwritable):
        return error
    cause: Any = error.orig if isinstance(error, DBAPIError) and error.orig is not None else error
    code = None
    if isinstance(cause, NoConnection):
        code = BUSY
    elif isinstance(cause, sqlite3.Error):
        code = _of_sqlite(getattr(cause, "sqlite_errorcode", 0) & 0xFF, file)
    elif hasattr(cause, "sqlstate"):  # psycopg's
        code = _of_postgresql(cause)
    return unwritable(code) if code is not None else None


def _of_sqlite(primary: int, file: Path | None) -> str | None:
    return of_folder(file) if primary in UNCLEAR else SQLITE.get(primary)


def _of_postgresql(cause: Any) -> str | None:
    if cause.sqlstate is None:  # libpq speaks, not the server: there is no connection, or none any more
        return GONE if "OperationalError" in (each.__name__ for each in type(cause).__mro__) else None
    return GONE if cause.sqlstate.startswith("08") else POSTGRESQL.get(cause.sqlstate)


def of_folder(file: Path | None) -> str:
    """Why a file can't be written, as the folder it is in says: a small file is written there, and is gone again."""
    with suppress(OSError, TypeError):
        return _tried((file or Path()).parent)
    return GONE


def _tried(folder: Path) -> str:
    try:
        with tempfile.TemporaryFile(dir=folder, buffering=0) as probe:
            wanted = 64 * 1024
            while wanted > 0:
                wanted -= probe.write(bytes(wanted))
    except OSError as error:
        return NUMBERS.get(error.errno or 0, GONE)
    return GONE


def of_os(error: OSError) -> Unwritable | None:
    """The same for a file or folder that can't be made."""
    code = NUMBERS.get(error.errno or 0)
    return unwritable(code) if code is not None else None
