"""The composition root: database, readers and clock, as web and commands are handed them."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import TypeVar

from scanflow.keeper import Keeper
from scanflow.storage.database import Database
from scanflow.storage.engine import DATABASE, file_of
from scanflow.storage.program import PROGRAM, typed
from scanflow.storage.unit import SqlUnit
from scanflow.storage.writing.trial import TrialUnit
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.vision.workers import Readers

T = TypeVar("T")
SLICE = 0.1
"""Seconds that a part of a long work takes, about; scans wait for no more."""

GAP = 0.02
"""Seconds between two parts: a service in another process that asks for its turn on SQLite gets it."""

BEGUN = "A part of the file is loaded. Send the same file again; it goes on with the rest."


def a_while() -> Callable[[], bool]:
    """Says, from now on, whether a part of a long work has taken long enough."""
    until = time.monotonic() + SLICE
    return lambda: time.monotonic() > until


def _now() -> datetime:
    return datetime.now(UTC)


@dataclass(slots=True)
class Shop:
    """One shop: its database, its readers of images, its clock, its folder on this machine if it has one, and who
    keeps its backups.
    """

    database: Database
    readers: Readers = field(default_factory=Readers)
    clock: Callable[[], datetime] = _now
    folder: Path | None = None
    keeper: Keeper = field(init=False)

    def __post_init__(self) -> None:
        self.keeper = Keeper(self.database, self.folder, lambda: self.clock())

    def act(self, who: str, work: Callable[[SqlUnit], T]) -> T:
        """Do one thing as one transaction: all of it is kept when `work` returns, none of it when it raises."""
        with self.database.writing(self.clock(), who) as unit:
            return work(unit)

    def act_in_parts(self, who: str, work: Callable[[SqlUnit], T | None]) -> T:
        """The same for work that may take long: it does a part each time, and returns None while there is more to do.

        Each part is a transaction, and others have their turn between two.
        """
        begun = False
        try:
            while (done := self.act(who, work)) is None:
                begun = True
                time.sleep(GAP)
        except Unwritable as trouble:
            if not begun:
                raise
            raise Unwritable(trouble.code, f"{trouble.detail} {BEGUN}") from trouble
        return done

    @contextmanager
    def looking(self, who: str = "") -> Iterator[SqlUnit]:
        """One unchanging view of the room, to read from, as `who` sees it."""
        with self.database.reading(self.clock(), who) as unit:
            yield unit

    def trying(self, who: str) -> AbstractContextManager[SqlUnit]:
        """One unchanging view in which work can be tried: it writes nothing, and nobody waits for it."""
        return self.database.reading(self.clock(), who, TrialUnit)

    def command(self, *words: str) -> str:
        """A command for this very shop, as it is typed on this machine. It never tells a database's password."""
        url = str(self.database.engine.url)
        file = file_of(url)
        if file is None:
            where = ("--database", "URL")
        else:
            where = ("--data", str(file.parent)) if file.name == DATABASE else ("--database", url)
        return f"{PROGRAM} {typed(*words, *where)}"

    def close(self) -> None:
        self.keeper.close()
        self.readers.close()
        self.database.close()
