"""Storage that is full, read-only, gone or kept busy: nothing is lost, the cause is named, and it goes on by itself."""

from __future__ import annotations

import logging
import os
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import pytest
import small_disk
from memory import NOON
from sqlalchemy import create_engine, make_url, text

from scanflow.domain import events
from scanflow.domain.things import Item
from scanflow.storage.database import Database
from scanflow.storage.writing import failing
from scanflow.storage.writing.unwritable import Unwritable

HOLDER = """
import sys, time
from datetime import UTC, datetime
from scanflow.domain import events
from scanflow.storage.database import Database
database = Database(sys.argv[1])
with database.writing(datetime.now(UTC), "other") as unit:
    unit.record(events.Changed())
    print("holds", flush=True)
    time.sleep(60)
"""


@pytest.fixture(params=["mounted", "limited"])
def disk(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Path | None]:
    """The folder of a small disk, or None for a limit on all files of this process."""
    with ExitStack() as stack:
        yield stack.enter_context(small_disk.mounted(tmp_path / "disk")) if request.param == "mounted" else None


def add(database: Database, name: str) -> None:
    with database.writing(NOON, "tester") as unit:
        unit.add(Item(name, "Saddle " * 40))
        unit.record(events.Changed())


def items(database: Database) -> list[str]:
    with database.reading(NOON) as unit:
        return [each.id for each in unit.find(Item)]


def code_of(work: Callable[[], object]) -> str:
    with pytest.raises(Unwritable) as told:
        work()
    return told.value.code


def test_a_full_disk(
    disk: Path | None, tmp_path: Path, sqlite_template: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """Writes fail as `storage_full`, told once; reads go on; with room again the next write works, told once."""
    file = (disk or tmp_path) / "shop.db"
    shutil.copy(sqlite_template, file)
    database = Database(f"sqlite:///{file}")
    add(database, "before")
    with small_disk.full(disk):
        codes = []
        for number in range(200):  # the write-ahead log may have room left
            try:
                add(database, f"n{number}")
            except Unwritable as error:
                codes.append(error.code)
            if len(codes) == 3:
                break
        kept = items(database)
        ill = database.trouble
    add(database, "after")
    told = [(each.levelno, each.getMessage().partition(":")[0]) for each in caplog.records]
    assert (3 * [failing.FULL], failing.FULL) == (codes, ill and ill.code)
    assert ("before", None, [*kept, "after"]) == (kept[0], database.trouble, items(database))
    assert [(logging.ERROR, failing.FULL), (logging.WARNING, "The shop's data are written again.")] == told
    database.close()


def test_a_probe_finds_a_full_disk_and_that_it_has_room(
    disk: Path | None, tmp_path: Path, sqlite_template: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nobody else writes: the probe alone tells, and changes nothing."""
    monkeypatch.setattr("scanflow.storage.database.PROBED", 0.0)
    file = (disk or tmp_path) / "shop.db"
    shutil.copy(sqlite_template, file)
    database = Database(f"sqlite:///{file}")
    before = database.probe()
    with small_disk.full(disk):
        found = {told.code for _ in range(400) if (told := database.probe()) is not None}
    assert (None, {failing.FULL}, None, []) == (before, found, database.probe(), items(database))
    database.close()


def test_a_read_only_folder_is_named_at_the_start(tmp_path: Path, sqlite_template: Path) -> None:
    """A shop there, or none yet: each time the code says what is the matter."""
    with small_disk.mounted(tmp_path / "disk") as disk:
        shutil.copy(sqlite_template, disk / "shop.db")
        small_disk.make_read_only(disk)

        def start(name: str) -> object:
            database = Database(f"sqlite:///{disk / name}")
            try:
                return add(database, "i")
            finally:
                database.close()

        assert 2 * [failing.READONLY] == [code_of(lambda: start("shop.db")), code_of(lambda: start("new.db"))]


@contextmanager
def administrator(url: str) -> Iterator[Callable[[str], None]]:
    """Runs statements on another database of the same PostgreSQL server; the shop's connections end first."""
    shop = make_url(url)
    name, other = shop.database, shop.set(drivername="postgresql+psycopg", database="postgres")
    engine = create_engine(other, isolation_level="AUTOCOMMIT")

    def run(change: str) -> None:
        with engine.connect() as connection:
            connection.execute(text(f"ALTER DATABASE {name} {change}"))
            ended = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = :name"
            connection.execute(text(ended), {"name": name})

    yield run
    engine.dispose()


@pytest.mark.parametrize(
    ("change", "back", "code"),
    [
        ("SET default_transaction_read_only = on", "RESET default_transaction_read_only", failing.READONLY),
        ("ALLOW_CONNECTIONS false", "ALLOW_CONNECTIONS true", failing.GONE),
    ],
)
def test_a_server_that_is_read_only_or_gone(
    new_postgresql: Callable[[], str], change: str, back: str, code: str
) -> None:
    """Writes, and reads of a server that is gone, are answered with the code; they work when it is back."""
    url = new_postgresql()
    database = Database(url)
    add(database, "before")
    with administrator(url) as run:
        run(change)
        told = [code_of(lambda: add(database, "lost")), code_of(lambda: add(database, "lost"))]
        seen = code_of(lambda: items(database)) if code == failing.GONE else items(database)
        ill = database.trouble
        run(back)
    assert (2 * [code], code) == (told, ill and ill.code)
    assert (code if code == failing.GONE else ["before"]) == seen
    add(database, "after")
    assert (["before", "after"], None) == (items(database), database.trouble)
    database.close()


def test_a_writer_that_hangs(own_url: str) -> None:
    """Stopped in the middle of a write, another process holds the others up for seconds, not for ever.

    PostgreSQL ends its transaction. SQLite has nobody who could: each write is answered `storage_busy`.
    """
    database = Database(own_url)
    add(database, "before")
    holder = subprocess.Popen([sys.executable, "-c", HOLDER, own_url], stdout=subprocess.PIPE, text=True)
    try:
        assert holder.stdout is not None
        assert "holds\n" == holder.stdout.readline()
        os.kill(holder.pid, signal.SIGSTOP)
        begun = time.monotonic()
        code = ""
        try:
            add(database, "meanwhile")
        except Unwritable as error:
            code = error.code
        took = time.monotonic() - begun
    finally:
        os.kill(holder.pid, signal.SIGKILL)
        holder.wait()
    add(database, "after")
    expected = ["before", "meanwhile", "after"] if database.kind == "postgresql" else ["before", "after"]
    assert (expected, database.kind == "sqlite") == (items(database), code == failing.BUSY)
    assert took < 6
    database.close()


def test_what_libpq_and_the_server_say_is_one_table() -> None:
    """Every code has its words, which say what happened and what to do."""
    codes = {*failing.SQLITE.values(), *failing.POSTGRESQL.values(), *failing.NUMBERS.values(), failing.GONE}
    assert set(failing.CODES) - {failing.AMISS} == codes == set(failing.WORDS)


def test_durable_whatever_the_servers_default(new_postgresql: Callable[[], str]) -> None:
    """A server with synchronous_commit=off keeps what this one commits all the same."""
    url = new_postgresql()
    with administrator(url) as run:
        run("SET synchronous_commit = off")
        database = Database(url)
        with database.writing(NOON, "tester") as unit:
            shown = unit.connection.execute(text("SHOW synchronous_commit")).scalar()
        database.close()
    assert ("on", True) == (shown, database.caution().startswith("The PostgreSQL server runs with fsync=off"))
