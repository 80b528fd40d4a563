"""A small shop with a bit of everything, and what a disk, a person or a foreign file does to its data."""

from __future__ import annotations

import hashlib
import shutil
import sqlite3
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

from furnished import furnish
from memory import NOON
from sqlalchemy import text

from scanflow.domain import events
from scanflow.domain.things import Photo
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.trust.note import DataFault, Notebook, for_file
from scanflow.vision.workers import Readers
from scanflow.workflow.stock import photos

GUARDS_AWAY = ("DROP TRIGGER IF EXISTS ledger_kept_update", "DROP TRIGGER IF EXISTS ledger_kept_delete")
PICTURE = b"a brass bell, seen from the side" * 40


def fill_small_shop(shop: Shop, things: int = 8) -> None:
    """Things, orders, a round, a parcel, and one picture."""
    room = furnish(shop, things)
    kept = Photo(hashlib.sha256(PICTURE).hexdigest(), PICTURE, PICTURE[:8])
    shop.act("owner", lambda unit: photos.keep(unit, room.stays[0].id, kept))


def filled_database(database: Database, things: int = 8) -> Database:
    fill_small_shop(Shop(database, Readers(), lambda: NOON), things)
    return database


def fault_words(database: Database, *, whole: bool = True) -> list[str]:
    return [each.words for each in data_faults(database, whole=whole)]


def data_faults(database: Database, *, whole: bool = True) -> list[DataFault]:
    return database.verify(NOON, whole=whole).findings


def damage(database: Database, *statements: str) -> None:
    """Run SQL as whoever owns the database can: past the ledger's guards and past foreign keys."""
    if database.kind == "sqlite":
        with closing(sqlite3.connect(str(database.engine.url.database), isolation_level=None)) as connection:
            for statement in (*GUARDS_AWAY, *statements):
                connection.execute(statement)
        return
    with database.engine.execution_options(isolation_level="AUTOCOMMIT").connect() as connection:
        for statement in (text("SET session_replication_role = replica"), *map(text, statements)):
            connection.execute(statement)
        connection.execute(text("SET session_replication_role = DEFAULT"))


def write_entries(database: Database, count: int = 1, at: datetime = NOON) -> None:
    for number in range(count):
        with database.writing(at + timedelta(seconds=number), "tester") as unit:
            unit.record(events.TwoCardsRead(code="D001", words="a card was held before the station " * 20))


class DataFolder:
    """A data folder of an SQLite shop, whose service can be opened, killed and replaced."""

    def __init__(self, path: Path) -> None:
        self.path, self.file = path, path / "scanflow.db"
        path.mkdir(exist_ok=True)

    @property
    def log(self) -> Path:
        return self.path / "scanflow.db-wal"

    @property
    def note(self) -> Notebook:
        return for_file(self.file)

    def open(self, *, brief: bool = True) -> Database:
        return Database(f"sqlite:///{self.file}", self.note, brief=brief)

    def killed(self, to: Path) -> DataFolder:
        """What a kill of the service that runs now would leave, in another folder."""
        shutil.copytree(self.path, to, ignore=shutil.ignore_patterns("*-shm"))
        return DataFolder(to)

    def bytes(self) -> dict[str, bytes]:
        """Its database as it lies on the disk."""
        return {each.name: each.read_bytes() for each in (self.file, self.log) if each.exists()}
