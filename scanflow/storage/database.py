"""The database of a shop: brought up to date when opened, then handed out in units of work."""

from __future__ import annotations

import json
import logging
import secrets
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import asdict
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, Executable, Select, bindparam, func, select, text, update

from scanflow.domain import events
from scanflow.storage import tables
from scanflow.storage.engine import UNTIL, connect, connect_frozen, file_of, take_time, unsafe
from scanflow.storage.ledger import FIRST
from scanflow.storage.prepared import Statements
from scanflow.storage.stock_words import StockWords
from scanflow.storage.trust.files import OpenFiles
from scanflow.storage.trust.guard import Guard
from scanflow.storage.trust.note import Notebook
from scanflow.storage.trust.replay import CHUNK, rows_now
from scanflow.storage.trust.verify import Say, Verified, revision, verify
from scanflow.storage.unit import SqlUnit
from scanflow.storage.writing import failing
from scanflow.storage.writing.changes import CHANNEL, Changes
from scanflow.storage.writing.failing import PATIENCE
from scanflow.storage.writing.truncating import Truncating
from scanflow.storage.writing.turn import Turn
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.workflow.ports import Settings

REVISION = max(each.stem[1:5] for each in (Path(__file__).parent / "migrations" / "versions").glob("v*.py"))
"""That of the newest migration."""

LOCK_KEY = 7_265_736  # any number that other programs on the same PostgreSQL are unlikely to take

PROBED = 3.0
"""Seconds for which the last word on whether the database takes writes is good."""

log = logging.getLogger(__name__)


class NewerData(Exception):
    """The database was brought up to date by code that is newer than this."""


class Database:
    """`url` is SQLAlchemy's; `postgresql://…` goes through psycopg 3. Raises NewerData, and Unwritable where the
    storage fails.

    With a `notebook` it is first held against its note, and with `brief` verified in brief; where something is amiss
    it is read, and never written (`guard`). Raises Unopened where it can't even be read. A new shop has the settings
    that `begun` gives.
    """

    def __init__(
        self,
        url: str,
        notebook: Notebook | None = None,
        *,
        brief: bool = False,
        begun: Callable[[], Settings] = Settings,
    ) -> None:
        self.guard = Guard(url, notebook)
        self._begun = begun
        self._turn = Turn()
        self._url, self._file, self._files = url, file_of(url), OpenFiles(url)
        self.trouble: Unwritable | None = None
        """Why the last write failed, where the storage was the cause."""
        self._known = 0.0
        """When, by `time.monotonic`, `trouble` was last made sure of."""
        self._writer: Connection | None = None
        self._truncating: Truncating | None = None
        self._words = StockWords()
        with self._translated():
            self.guard.check(REVISION, brief=brief)
        self._frozen = bool(self.guard.amiss)
        self.engine: Engine = connect_frozen(url) if self._frozen else connect(url)
        self._reader: Engine = self.engine if self._frozen else connect(url, read_only=True)
        self.kind = self.engine.dialect.name
        self._statements = Statements.of(self.engine.dialect)
        if not self._frozen:
            with self._translated():
                self._upgrade()
                self._begin_writing()
        self.changes = Changes(self.engine, self._reader)

    def _begin_writing(self) -> None:
        if self.kind == "sqlite":
            self._writer = self.engine.connect()
            self._truncating = Truncating(self.engine)
        self._files.remember()
        self.guard.keep(self._reader)

    def _upgrade(self) -> None:
        with self.engine.begin() as connection:
            if self.kind == "postgresql":
                take_time(connection)
                connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": LOCK_KEY})
            found = revision(connection)
            if found != REVISION:
                run_migrations(connection, found)
            if connection.execute(select(tables.head)).one_or_none() is None:
                first = {"one": 1, "seq": 0, "hash": FIRST, "settings": json.dumps(asdict(self._begun()))}
                connection.execute(tables.head.insert(), first | {"shop": secrets.token_hex(8)})
            elif found != REVISION:
                self._begin_replay(connection)

    def _begin_replay(self, connection: Connection) -> None:
        """An upgrade changes rows without a word: the ledger tells of all of them anew."""
        head = self._statements.get("head", _head).run(connection, {}).fetchone()
        unit = SqlUnit(connection, self._statements, datetime.now(UTC), "scanflow", head)
        tell_all(unit)

    def verify(self, at: datetime, *, whole: bool, pace: float = 0.0, say: Say = lambda what: None) -> Verified:
        """Verify it (`storage.trust.verify`), keep the outcome, and write no more where something is amiss."""
        result = verify(self._reader, whole=whole, note=self.guard.note, pace=pace, say=say)
        result.findings[:0] = self.guard.differences(self._reader)
        self.guard.checked(self._reader, result, at if whole else None)
        return result

    def accept(self, at: datetime, who: str, reason: str) -> None:
        """A person says to go on with what is amiss: the ledger has it, and tells of all rows as they stand."""
        found = [each.words for each in self.guard.amiss]
        self._thaw()
        with self._writing() as connection, connection.begin():
            _end_head(connection)
            head = self._statements.get("lock", lambda: _head().with_for_update()).run(connection, {}).fetchone()
            unit = SqlUnit(connection, self._statements, at, who, head)
            unit.record(events.AcceptedAmiss(reason=reason, found=tuple(found)))
            tell_all(unit)
        self.guard.settled(self._reader)

    def clear(self) -> None:
        """A person had all of it verified, and nothing is amiss any more."""
        self._thaw()
        self.guard.settled(self._reader)

    def keep_note(self) -> None:
        """The note follows the ledger, and what another process found amiss or accepted counts here too."""
        if self.guard.follow():
            self._thaw()
            self.guard.amiss = ()
        if self.gone() is None:  # else the folder would stand again without its database, in the right one's way
            self.guard.keep(self._reader)

    def _thaw(self) -> None:
        """Where something was amiss at the start its files were left alone until now."""
        if self._frozen:
            self.engine = connect(self._url)
            self._begin_writing()
            self._frozen = False

    @contextmanager
    def writing(self, at: datetime, who: str) -> Iterator[SqlUnit]:
        """A unit that is committed, durably, when the block ends, and leaves no trace when the block raises.

        Writes follow each other: each locks the ledger's head first. Unwritable where the storage fails; the next
        write tries anew.
        """
        self.guard.refuse()
        with self._translated(), self._writing() as connection, connection.begin():
            head = self._statements.get("lock", lambda: _head().with_for_update()).run(connection, {}).fetchone()
            unit = SqlUnit(connection, self._statements, at, who, head, self._words)
            yield unit
            unit.settle()
            if unit.seq != head[0]:
                moved = self._statements.get("move head", lambda: _move_head(self.kind))
                moved.run(connection, {"new_seq": unit.seq, "new_hash": unit.hash})
            self._files.refuse()
        if unit.dropped and self._truncating is not None:  # what was deleted stands in the write-ahead log still
            self._truncating.wanted()
        if unit.seq != head[0]:
            self.guard.committed(unit.seq, unit.hash)
            self._tell(None)
            self.changes.wrote()

    def gone(self) -> Unwritable | None:
        """Why nothing could be kept: its file is not at its place any more."""
        return self._files.gone()

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        if self._writer is None:
            with self.engine.connect() as connection:
                yield connection
            return
        # SQLite lets one write at a time; waiting here is fair and wakes at once, waiting there is polling.
        until = time.monotonic() + PATIENCE
        if not self._turn.take(PATIENCE):
            raise failing.unwritable(failing.BUSY)
        try:
            self._writer.info[UNTIL] = until
            yield self._writer
        except Exception as error:
            trouble = failing.told(error)
            if trouble is not None and trouble.code in failing.LASTING:
                self._writer.invalidate()
            raise
        finally:
            self._turn.give()

    @contextmanager
    def _translated(self) -> Iterator[None]:
        """What the driver says of a storage that fails comes out as Unwritable, and is told once."""
        try:
            yield
        except Exception as error:
            trouble = failing.told(error, self._file)
            if trouble is None:
                raise
            self._tell(trouble)
            if trouble is error:
                raise
            raise trouble from error

    def _tell(self, trouble: Unwritable | None) -> None:
        """Remember whether writes get through; the log has a line when that changes."""
        before, self.trouble, self._known = self.trouble, trouble, time.monotonic()
        if trouble is not None and (before is None or before.code != trouble.code):
            log.error("%s: %s", trouble.code, trouble)
        if trouble is None and before is not None:
            log.warning("The shop's data are written again.")

    def probe(self) -> Unwritable | None:
        """Why the database takes no writes, None where it does: as the last write found, or a small one of its own.

        A transaction with nothing in it succeeds on a full disk, so a row is written as it is.
        """
        if not self.guard.amiss and time.monotonic() - self._known > PROBED:
            with suppress(Unwritable):
                with self._translated(), self._writing() as connection, connection.begin():
                    connection.execute(update(tables.head).values(one=tables.head.c.one))
                    self._files.refuse()
                self._tell(None)
        return self.trouble

    def caution(self) -> str:
        """What the database does not promise, in a sentence; empty where all is well."""
        with self._reader.connect() as connection:
            return unsafe(connection)

    @contextmanager
    def reading(self, at: datetime, who: str = "", kind: type[SqlUnit] = SqlUnit) -> Iterator[SqlUnit]:
        """A unit that sees one state of the database and can't change it. Unwritable where the storage fails.

        With `kind` a `TrialUnit`, it tells what its work would change.
        """
        try:
            with self._reader.connect() as connection, connection.begin():
                head = self._statements.get("head", _head).run(connection, {}).fetchone()
                yield kind(connection, self._statements, at, who, head, self._words)
        except Exception as error:
            trouble = failing.told(error, self._file)
            if trouble in (None, error) or trouble.code == failing.READONLY:  # the unit itself can't be changed
                raise
            raise trouble from error

    def close(self) -> None:
        self.changes.close()
        if self.gone() is None:
            self.guard.keep(self._reader)
        if self._truncating is not None:
            self._truncating.close()
        if self._writer is not None:
            self._writer.close()
        self.engine.dispose()
        self._reader.dispose()


def trouble_of(database: Database) -> Unwritable | None:
    """Why it takes no writes now; None while it does."""
    return database.guard.unwritable() or database.gone() or database.trouble


def tell_all(unit: SqlUnit) -> None:
    """Baseline entries of all rows, and the head moved behind them."""
    rows = list(rows_now(unit.connection))
    for first in range(0, len(rows), CHUNK):
        unit.record(events.Baseline(first=first, of_=len(rows)), rows[first : first + CHUNK])
    unit.settle()
    unit.connection.execute(update(tables.head).values(seq=unit.seq, hash=unit.hash))


def _end_head(connection: Connection) -> None:
    """The head where the last entry is, whatever it says."""
    last = select(tables.ledger.c.seq, tables.ledger.c.hash).order_by(tables.ledger.c.seq.desc()).limit(1)
    seq, said = connection.execute(last).one_or_none() or (0, FIRST)
    connection.execute(update(tables.head).values(seq=seq, hash=said))


def _head() -> Select[Any]:
    return select(tables.head.c.seq, tables.head.c.hash, tables.head.c.settings)


def _move_head(kind: str) -> Executable:
    """PostgreSQL tells who listens, when the transaction is committed."""
    move = update(tables.head).values(seq=bindparam("new_seq"), hash=bindparam("new_hash"))
    return move.returning(func.pg_notify(CHANNEL, "")) if kind == "postgresql" else move


def run_migrations(connection: Connection, found: str | None, wanted: str = REVISION) -> None:
    """From the revision that was found, None for a database with nothing in it, to the one that is wanted.

    Raises NewerData.
    """
    from alembic import command
    from alembic.config import Config
    from alembic.script import ScriptDirectory

    config = Config()
    config.set_main_option("script_location", "scanflow:storage/migrations")
    known = {script.revision for script in ScriptDirectory.from_config(config).walk_revisions()}
    if {found or wanted, wanted} - known:
        raise NewerData(
            f"A newer scanflow has opened this database: its tables are of revision {found}, and this one knows them "
            f"up to {REVISION}. Start the newer one, or a copy of the data from before."
        )
    config.attributes["connection"] = connection
    command.upgrade(config, wanted)
