"""What was deleted leaves the disk, and nobody who writes waits for that."""

from __future__ import annotations

import shutil
import time
from pathlib import Path

import pytest
from memory import NOON

from scanflow.domain.things import Item, Photo
from scanflow.storage.database import Database

PICTURE = b"a picture that nobody may see any more " * 200


@pytest.fixture
def file(tmp_path: Path, sqlite_template: Path) -> Path:
    return Path(shutil.copy(sqlite_template, tmp_path / "shop.db"))


def on_disk(file: Path) -> bool:
    return any(PICTURE[:39] in each.read_bytes() for each in file.parent.glob("shop.db*"))


def drop(database: Database) -> None:
    with database.writing(NOON, "tester") as unit:
        unit.add(Photo("p", PICTURE, PICTURE))
    with database.writing(NOON, "tester") as unit:
        unit.drop(Photo, "p")


def test_a_reader_delays_it_and_no_write(file: Path) -> None:
    """While another reads, writes go on at once; when it has ended, the picture is on the disk no more."""
    database, other = Database(f"sqlite:///{file}"), Database(f"sqlite:///{file}")
    with other.reading(NOON) as view:
        view.find(Item)
        begun = time.monotonic()
        drop(database)
        with database.writing(NOON, "tester") as unit:
            unit.add(Item("i", "Saddle"))
        took = time.monotonic() - begun
        seen = on_disk(file)
    until = time.monotonic() + 10
    while on_disk(file) and time.monotonic() < until:
        time.sleep(0.05)
    assert (True, False) == (seen, on_disk(file))
    assert took < 2
    other.close()
    database.close()


def test_the_last_attempt_is_at_the_end(file: Path) -> None:
    """A reader went just before the database is closed, which another process still has open: it is gone by then."""
    database, other = Database(f"sqlite:///{file}"), Database(f"sqlite:///{file}")
    with other.reading(NOON) as view:
        view.find(Item)
        drop(database)
    database.close()
    assert not on_disk(file)
    other.close()
