"""That the ledger has grown is told within a second, whichever process wrote, and again after the database was gone."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Iterator

import pytest
from memory import NOON
from sqlalchemy import text

from scanflow.domain import events
from scanflow.storage.database import Database
from scanflow.storage.writing import changes

PATIENCE = 20.0
"""Seconds that a test waits on a busy machine before it says that nothing came."""


@pytest.fixture
def elsewhere(database_url: str) -> Iterator[Database]:
    """The same shop, opened once more: what it writes no other `Database` of this process is told of."""
    other = Database(database_url)
    yield other
    other.close()


def write(database: Database) -> int:
    with database.writing(NOON, "tester") as unit:
        unit.record(events.Changed())
    return unit.seq


def delay(writer: Database, listener: Database) -> float:
    """Seconds from a write to its word."""
    before = listener.changes.after(None, PATIENCE)
    begun = time.monotonic()
    seq = write(writer)
    assert seq == listener.changes.after(before, PATIENCE)
    return time.monotonic() - begun


def test_a_write_is_told_within_a_second(
    database: Database, elsewhere: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    """This one's and another's, also where PostgreSQL's word is all there is; the quickest of three, for a busy machine
    may stop for longer than that.
    """
    monkeypatch.setattr(changes, "BEAT", 60.0)
    with database.changes.listening():
        for writer in (database, elsewhere):
            assert min(delay(writer, database) for _ in range(3)) < 1.0


def test_what_is_taken_back_is_not_told(database: Database) -> None:
    """A transaction that fails, or writes nothing into the ledger, is no change."""
    with database.changes.listening():
        before = database.changes.after(None, PATIENCE)
        with pytest.raises(ZeroDivisionError), database.writing(NOON, "tester") as unit:
            unit.record(events.Changed())
            raise ZeroDivisionError
        with database.writing(NOON, "tester"):
            pass
        assert before == database.changes.after(before, 3 * changes.PACE)


def test_a_burst_is_told_to_its_end(database: Database, elsewhere: Database) -> None:
    """Whoever listens hears of the last of many writes; how many words there were on the way is nobody's concern."""
    heard: list[int | None] = []
    with database.changes.listening():
        heard.append(database.changes.after(None, PATIENCE))
        written = [write(each) for each in (database, elsewhere) * 5]
        while heard[-1] != written[-1]:
            heard.append(database.changes.after(heard[-1], PATIENCE))
            assert len(heard) <= len(written) + 1
    assert sorted(set(heard), key=str) == sorted(heard, key=str)


def watchers() -> list[threading.Thread]:
    return [each for each in threading.enumerate() if each.name == "changes"]


def test_nobody_listens_nobody_looks(database: Database) -> None:
    """The thread that looks ends when the last listener has left, and another one begins with the next."""
    for _ in range(2):
        with database.changes.listening(), database.changes.listening():
            assert 0 == database.changes.after(None, PATIENCE)
            assert 1 == len(watchers())
        end = time.monotonic() + PATIENCE
        while watchers():
            assert time.monotonic() < end
            time.sleep(0.01)
    assert None is database.changes.after(None, 0.0)


def test_closing_lets_go(database: Database) -> None:
    """Who waits is let go when the database is closed, and who comes later does not wait."""
    with database.changes.listening():
        now = database.changes.after(None, PATIENCE)
        waiting = threading.Thread(target=database.changes.after, args=(now, 10 * PATIENCE))
        waiting.start()
        database.changes.close()
        waiting.join(PATIENCE)
        assert not waiting.is_alive()
        database.changes.after(now, 10 * PATIENCE)


@pytest.mark.parametrize("database_url", ["postgresql"], indirect=True)
def test_connections_that_were_ended(database: Database, elsewhere: Database, caplog: pytest.LogCaptureFixture) -> None:
    """After the server has ended all connections the next write is told all the same; the log says it once."""
    with database.changes.listening(), caplog.at_level(logging.WARNING, changes.__name__):
        before = database.changes.after(None, PATIENCE)
        with elsewhere.engine.connect() as admin:
            admin.execute(
                text("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database()"
                     " AND pid <> pg_backend_pid()")
            )  # fmt: skip
        seq = write(elsewhere)
        assert seq == database.changes.after(before, PATIENCE)
        assert delay(elsewhere, database) < PATIENCE
    assert len([each for each in caplog.records if each.name == changes.__name__]) <= 1
