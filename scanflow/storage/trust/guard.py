"""What keeps writes from a database where something is amiss, until a person says to go on."""

from __future__ import annotations

import logging
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Engine, select
from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from scanflow.storage import tables
from scanflow.storage.engine import connect_frozen, file_of
from scanflow.storage.program import PROGRAM
from scanflow.storage.trust import note
from scanflow.storage.trust.note import RESTORE, DataFault, Note, Notebook, Unopened
from scanflow.storage.trust.verify import UNREADABLE, Verified, revision, verify
from scanflow.storage.writing.failing import AMISS
from scanflow.storage.writing.unwritable import Unwritable

DAMAGED = frozenset({1, 11, 26})
"""SQLITE_ERROR (a table is not what it was), SQLITE_CORRUPT and SQLITE_NOTADB, sqlite.org/rescode.html."""

STOPPED = "Nothing is recorded: something is amiss with the data."

log = logging.getLogger(__name__)


class Guard:
    """Holds a database against its note. `amiss` is what was found and not accepted; it outlives the service."""

    def __init__(self, url: str, notebook: Notebook | None) -> None:
        self._url, self._notebook = url, notebook
        self.amiss: tuple[DataFault, ...] = ()
        self._shop = ""
        """The name of the shop, once the note has it."""
        self._kept = True
        """Whether the note has what is amiss: its disk may be full, or read-only."""

    @property
    def note(self) -> Note | None:
        return self._notebook.read() if self._notebook else None

    def check(self, newest: str, *, brief: bool) -> None:
        """Before anything writes, and without a trace in the database's files. Raises Unopened.

        A write-ahead log that a killed service left may be another database's: then it is verified in any case. What
        has not the `newest` tables is not verified: an upgrade comes first.
        """
        if self._notebook is None:
            return
        file = file_of(self._url)
        if file is not None:
            note.must_stand(file, self._notebook)
            if not file.exists():
                return
        engine = connect_frozen(self._url)
        try:
            self._compare(engine, self._notebook, newest, brief or _log_left(file))
        except UNREADABLE as error:
            cause = getattr(error, "orig", None) or error
            if isinstance(error, DBAPIError) and getattr(cause, "sqlite_errorcode", 0) & 0xFF not in DAMAGED:
                raise
            raise Unopened(
                f"The database is damaged: {cause}. Nothing was changed. Copy the data folder as it is, then {RESTORE}."
                f"{self._last_good()}"
            ) from error
        finally:
            engine.dispose()

    def _compare(self, engine: Engine, notebook: Notebook, newest: str, brief: bool) -> None:
        known = notebook.read()
        with engine.connect() as connection, connection.begin():
            found = revision(connection)
            if found is None:
                if known is not None:
                    raise note.gone("The database has no tables", notebook)
                return
            findings = note.differences(connection, known) if known else []
        if found != newest:
            if findings:
                said = " ".join(f"{each.words} {each.advice} Nothing was changed." for each in findings)
                raise Unopened(f"{said}{self._last_good()}")
            return
        if known is None:
            log.warning("There was no note beside the database; %s is written anew.", notebook.path)
        if brief:
            result = verify(engine, whole=False, note=None if findings else known)
            findings += result.findings
            if not findings:
                self._write(engine, verified=result.seq, verified_hash=result.hash)
        self.found(engine, findings)

    def found(self, reader: Engine, findings: Iterable[DataFault]) -> None:
        """These are amiss too, until they are accepted."""
        known = self.note
        fresh = dict.fromkeys((*self.amiss, *(known.amiss if known else ()), *findings))
        for finding in fresh.keys() - set(self.amiss):
            log.error("Something is amiss: %s %s", finding.words, finding.advice)
        self.amiss = tuple(fresh)
        if self.amiss:
            self._kept = self._write(reader, amiss=self.amiss)

    def checked(self, reader: Engine, result: Verified, whole: datetime | None = None) -> None:
        """What a verification came to, at this time if it was of all."""
        self.found(reader, result.findings)
        if not self.amiss:
            new: dict[str, Any] = {"verified": result.seq, "verified_hash": result.hash}
            if whole is not None:
                new["whole"] = whole.isoformat(timespec="seconds")
            self._write(reader, **new)

    def differences(self, reader: Engine) -> list[DataFault]:
        known = self.note
        if known is None:
            return []
        with reader.connect() as connection, connection.begin():
            return note.differences(connection, known)

    def keep(self, reader: Engine) -> None:
        """The note follows the ledger; not while something is amiss, which it gets where it could not be written."""
        if not self.amiss:
            self._write(reader)
        elif not self._kept:
            self.found(reader, ())

    def follow(self) -> bool:
        """What another process found amiss counts here too; whether one has accepted what is amiss here."""
        known = self.note
        if known is not None and known.amiss:
            self.amiss, self._kept = known.amiss, True
        return bool(self.amiss) and self._kept and known is not None and not known.amiss

    def committed(self, seq: int, hash_: str) -> None:
        """The ledger's end is this now."""
        if self._notebook is not None and self._shop:
            self._notebook.committed(self._shop, seq, hash_)

    def settled(self, reader: Engine) -> None:
        """Nothing is amiss any more: the note is written anew from what stands in the database."""
        self.amiss = ()
        self._write(reader, anew=True)

    def _write(self, reader: Engine, *, anew: bool = False, **new: Any) -> bool:
        """Whether the note is as it should be."""
        if self._notebook is None:
            return True
        try:
            before = self._notebook.read()
            now = self._next(reader, None if anew else before)
            if anew:
                now = replace(now, verified=now.seq, verified_hash=now.hash)
                if before is not None:
                    now = replace(now, whole=before.whole, backup=before.backup, backup_at=before.backup_at)
            now = replace(now, **new)
            if now != self._notebook.stored():
                self._notebook.write(now)
            self._shop = now.shop
        except (OSError, SQLAlchemyError) as error:
            log.warning("The note %s can't be written: %s", self._notebook.path, error)
            return False
        return True

    def _next(self, reader: Engine, before: Note | None) -> Note:
        """The note with the ledger's end of now; what is amiss, and what was further on, stays."""
        if before is not None and (before.amiss or self.amiss):
            return before
        with reader.connect() as connection, connection.begin():
            head = connection.execute(select(tables.head)).one()
        if before is None:
            return Note(head.shop, head.seq, head.hash)
        return replace(before, seq=head.seq, hash=head.hash) if head.seq >= before.seq else before

    def unwritable(self) -> Unwritable | None:
        """Why nothing is written; None while nothing is amiss."""
        if not self.amiss:
            return None
        first, more = self.amiss[0], len(self.amiss) - 1
        rest = f" {PROGRAM} verify lists {more} more {'finding' if more == 1 else 'findings'}." if more else ""
        return Unwritable(AMISS, f"{STOPPED} {first.words} {first.advice}{rest}{self._last_good()}")

    def backed_up(self, file: Path, at: datetime) -> None:
        """A backup was made that counts: the note names it, whatever becomes of the database."""
        if self._notebook is not None:
            try:
                self._notebook.change(backup=str(file), backup_at=at.isoformat(timespec="seconds"))
            except OSError as error:
                log.warning("The note %s can't be written: %s", self._notebook.path, error)

    def _last_good(self) -> str:
        known = self.note
        return f" {known.last_good}" if known and known.backup else ""

    def refuse(self) -> None:
        if self.amiss and (why := self.unwritable()) is not None:
            raise why


def _log_left(file: Path | None) -> bool:
    if file is None:
        return False
    left = file.with_name(f"{file.name}-wal")
    return left.exists() and left.stat().st_size > 0
