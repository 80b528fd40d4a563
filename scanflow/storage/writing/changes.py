"""Watches for new ledger entries, whichever process wrote them: this one, another one, or a command."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from typing import Any

from sqlalchemy import Engine, select

from scanflow.storage import tables
from scanflow.storage.engine import network

CHANNEL = "scanflow_ledger"
"""What a writing transaction notifies on PostgreSQL."""

PACE = 0.25
"""Seconds between two checks of what other processes wrote, on SQLite."""

CALM = 0.1
"""Seconds from a sign to the check: the answer of a scan leaves first, and a burst is told once."""

BEAT = 1.0
"""Seconds between two checks on PostgreSQL where no sign comes: one that was lost comes late."""

AGAIN = 1.0
"""Seconds until a database that was gone is asked again."""

Wait = Callable[[], None]
log = logging.getLogger(__name__)


class Changes:
    """The ledger's last `seq`, for whoever waits for it to move. A thread looks for it while somebody listens."""

    def __init__(self, engine: Engine, reader: Engine) -> None:
        self._engine, self._reader = engine, reader
        self._moved = threading.Condition()
        self._sign = threading.Event()
        self._seq: int | None = None
        self._listeners = 0
        self._watcher: threading.Thread | None = None
        self.closed = False

    @contextmanager
    def listening(self) -> Iterator[None]:
        """`after` works only inside this block."""
        with self._moved:
            self._listeners += 1
            if self._watcher is None and not self.closed:
                self._watcher = threading.Thread(target=self._watch, name="changes", daemon=True)
                self._watcher.start()
        try:
            yield
        finally:
            with self._moved:
                self._listeners -= 1

    def after(self, seq: int | None, seconds: float) -> int | None:
        """The ledger's last `seq` as soon as it is another than this one, or what it is after so many seconds.

        None while it is not known; at once when closed.
        """
        with self._moved:
            self._moved.wait_for(lambda: self.closed or self._seq not in (None, seq), seconds)
            return self._seq

    def wrote(self) -> None:
        """This process has committed."""
        self._sign.set()

    def close(self) -> None:
        """Let all go who wait."""
        with self._moved:
            self.closed = True
            self._moved.notify_all()
            watcher = self._watcher
        self._sign.set()
        if watcher is not None:
            watcher.join(2.0)

    def _wanted(self) -> bool:
        with self._moved:
            if self._listeners and not self.closed:
                return True
            self._watcher = self._seq = None
            return False

    def _watch(self) -> None:
        well = True
        while self._wanted():
            try:
                with self._ear() as wait:
                    while self._wanted():
                        self._look()
                        well = True
                        wait()
                return
            except Exception:
                if well:
                    log.warning("The ledger can't be watched; trying again.", exc_info=True)
                well = False
                self._sign.clear()
                self._sign.wait(AGAIN)

    def _look(self) -> None:
        with self._reader.connect() as connection:
            seq = connection.execute(select(tables.head.c.seq)).scalar_one()
        with self._moved:
            if seq != self._seq:
                self._seq = seq
                self._moved.notify_all()

    @contextmanager
    def _ear(self) -> Iterator[Wait]:
        """What waits for a sign that the ledger may have grown, for a while."""
        if self._engine.dialect.name != "postgresql":
            yield self._wait
            return
        dialect = self._engine.dialect
        # psycopg's, and nobody else's
        positional, named = dialect.create_connect_args(self._engine.url)
        connection: Any = dialect.connect(*positional, **network(self._engine.url), **named)
        with closing(connection):
            connection.autocommit = True
            connection.execute(f"LISTEN {CHANNEL}")

            def wait() -> None:
                if list(connection.notifies(timeout=BEAT, stop_after=1)):
                    time.sleep(CALM)

            yield wait

    def _wait(self) -> None:
        if self._sign.wait(PACE):
            self._sign.clear()
            time.sleep(CALM)
