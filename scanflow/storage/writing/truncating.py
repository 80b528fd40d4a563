"""What was deleted leaves SQLite's write-ahead log: beside the writes, in short attempts, until one comes through."""

from __future__ import annotations

import logging
import threading
from contextlib import closing

from sqlalchemy import Engine

AGAIN = 0.5
"""Seconds from an attempt that readers prevented to the next."""

LAST = 5.0
"""Seconds that closing waits for an attempt under way."""

log = logging.getLogger(__name__)


class Truncating:
    """Empties the write-ahead log of a database once it is `wanted`. An attempt waits a few ms for locks, no more."""

    def __init__(self, engine: Engine) -> None:
        self._engine = engine
        self._lock = threading.Lock()
        self._ended = threading.Event()
        self._wanted = 0
        self._done = 0
        self._thread: threading.Thread | None = None

    def wanted(self) -> None:
        """Something was deleted, and that is committed."""
        with self._lock:
            self._wanted += 1
            if self._thread is None and not self._ended.is_set():
                self._thread = threading.Thread(target=self._run, name="truncating", daemon=True)
                self._thread.start()

    @property
    def pending(self) -> bool:
        """Whether something deleted may still be in the log."""
        return self._done < self._wanted

    def close(self) -> None:
        """No attempt begins from here on but the last one, where one is pending."""
        self._ended.set()
        if self._thread is not None:
            self._thread.join(LAST)
        if self.pending:
            self._attempt()

    def _run(self) -> None:
        while not self._ended.is_set():
            self._attempt()
            with self._lock:
                if not self.pending:
                    self._thread = None
                    return
            self._ended.wait(AGAIN)

    def _attempt(self) -> None:
        """First the pages that can be moved while others write; only then what needs the turn to write."""
        aim = self._wanted
        try:
            with closing(self._engine.raw_connection()) as pooled:
                pooled.cursor().execute("PRAGMA wal_checkpoint(PASSIVE)").fetchall()
                busy = pooled.cursor().execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]
        except Exception as error:  # the next attempt is soon; a storage that fails is told of by the writes
            log.debug("The write-ahead log was not emptied: %s", error)
            return
        if not busy:
            self._done = aim
