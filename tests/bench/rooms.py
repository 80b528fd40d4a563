"""A room that honest people work in, in memory or in a database: one call is one transaction."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Protocol, TypeVar

from memory import Memory

from scanflow.storage.database import Database
from scanflow.workflow.ports import Settings, Unit

T = TypeVar("T")


class Room(Protocol):
    def do(self, at: datetime, work: Callable[[Unit], T]) -> T:
        """Do it at that time: all of it or, when it raises, nothing."""
        ...

    def see(self, at: datetime, work: Callable[[Unit], T]) -> T:
        """Only look."""
        ...


class MemoryRoom:
    def __init__(self, settings: Settings) -> None:
        self.memory = Memory(settings)

    def do(self, at: datetime, work: Callable[[Unit], T]) -> T:
        trial = self.memory.fork()
        trial.at = at
        trial.ledger.clear()
        done = work(trial)
        self.memory = trial
        return done

    def see(self, at: datetime, work: Callable[[Unit], T]) -> T:
        return work(self.memory)


class DatabaseRoom:
    def __init__(self, database: Database, settings: Settings, at: datetime) -> None:
        self.database = database
        with database.writing(at, "bench") as unit:
            unit.set_settings(settings)

    def do(self, at: datetime, work: Callable[[Unit], T]) -> T:
        with self.database.writing(at, "bench") as unit:
            return work(unit)

    def see(self, at: datetime, work: Callable[[Unit], T]) -> T:
        with self.database.reading(at) as unit:
            return work(unit)
