"""Units of work on a database: all or nothing, one after the other, and reads that see one state."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import replace
from datetime import timedelta

import psycopg
import pytest
from memory import NOON
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from scanflow.domain import events
from scanflow.domain.life import LineState, ParcelState, StayState
from scanflow.domain.things import Bin, Item, Line, Order, Parcel, Rack, Section, Slot, Stay
from scanflow.storage.database import Database
from scanflow.storage.unit import SqlUnit

Enter = Callable[[], AbstractContextManager[SqlUnit]]
TWICE = (sqlite3.IntegrityError, psycopg.errors.UniqueViolation)
STAY = Stay("s1", "i1", "D001", 1, NOON)
LINE = Line("l1", "o1", 1, "D001-01E", stay="s1", state=LineState.WAITING)
PARCEL = Parcel("p1", "main", ("o1",), NOON)


@pytest.fixture
def write(database: Database) -> Enter:
    return lambda: database.writing(NOON, "tester")


def furnish(unit: SqlUnit) -> None:
    """A slot, two things and an order; nothing is stored yet."""
    for thing in (Section("D", "Derailleurs", 5, "yellow"), Rack("A", 0, 0.0), Bin("A-1-1", "A", 1, 1, "D")):
        unit.add(thing)
    for thing in (
        Slot("D001", "D", 1, "A-1-1"),
        Item("i1", "Rear"),
        Item("i2", "Front"),
        Order("o1", "1", "", NOON, 1),
    ):
        unit.add(thing)


def test_one_open_stay_in_a_slot(write: Enter) -> None:
    """The database itself refuses a second open stay in a slot; an ended one beside it is fine."""
    with write() as unit:
        furnish(unit)
        unit.add(STAY)
        unit.add(replace(STAY, id="s0", turn=2, state=StayState.MOVED))
    with pytest.raises(TWICE), write() as unit:
        unit.add(Stay("s2", "i2", "D001", 3, NOON))
    with pytest.raises(TWICE), write() as unit:
        unit.put(replace(STAY, id="s0", turn=2))


def test_one_live_line_of_a_stay(write: Enter) -> None:
    """The database itself refuses a second live line of a stay in each live state; others beside it are fine."""
    ended = (LineState.CANCELLED, LineState.RELEASED, LineState.RETURNED)
    with write() as unit:
        furnish(unit)
        unit.add(STAY)
        unit.add(LINE)
        for number, state in enumerate(ended):
            unit.add(replace(LINE, id=f"e{number}", state=state))
    for state in (LineState.WAITING, LineState.PICKED, LineState.PACKED, LineState.SHORT):
        with pytest.raises(TWICE), write() as unit:
            unit.add(replace(LINE, id="l2", state=state))
        with pytest.raises(TWICE), write() as unit:
            unit.put(replace(LINE, id="e0", state=state))


def test_one_open_parcel_at_a_table(write: Enter) -> None:
    """The database itself refuses a second open parcel at a table; set aside or elsewhere is fine."""
    with write() as unit:
        unit.add(PARCEL)
        unit.add(replace(PARCEL, id="p2", state=ParcelState.ASIDE))
        unit.add(replace(PARCEL, id="p3", table="side"))
    for second in (replace(PARCEL, id="p4"), replace(PARCEL, id="p5", table="side")):
        with pytest.raises(TWICE), write() as unit:
            unit.add(second)
    with pytest.raises(TWICE), write() as unit:
        unit.put(replace(PARCEL, id="p2"))


@pytest.mark.parametrize(
    "second",
    [
        Stay("s2", "i2", "D001", 1, NOON, StayState.SHIPPED),
        Order("o2", "1", "", NOON, 2),
        Order("o2", "2", "", NOON, 1),
    ],
)
def test_turns_numbers_and_slips_are_given_once(write: Enter, second: object) -> None:
    """A slot's turn, an order's number within its channel and a slip's number belong to one thing."""
    with write() as unit:
        furnish(unit)
        unit.add(STAY)
    with pytest.raises(TWICE), write() as unit:
        unit.add(second)


def test_what_points_to_nothing_is_refused(write: Enter) -> None:
    """A line of no order or a stay in no slot can't be added."""
    missing = (sqlite3.IntegrityError, psycopg.errors.ForeignKeyViolation)
    for thing in (LINE, STAY):
        with pytest.raises(missing), write() as unit:
            unit.add(thing)


def everything(database: Database) -> dict[str, list[tuple[object, ...]]]:
    tables = ("sections", "slots", "items", "ledger", "head")
    with database.engine.connect() as connection:
        return {name: [tuple(row) for row in connection.execute(text(f"SELECT * FROM {name}"))] for name in tables}


def test_an_exception_leaves_no_trace(database: Database, write: Enter) -> None:
    """Things, ledger and its head are as before when the block raises, and the next write goes on from there."""
    with write() as unit:
        furnish(unit)
        unit.record(events.Changed())
    before = everything(database)
    with pytest.raises(ZeroDivisionError), write() as unit:
        unit.add(Item("i3", "Saddle"))
        unit.put(replace(unit.get(Slot, "D001"), turns=9))
        unit.record(events.Changed())
        1 / 0  # noqa: B018
    assert before == everything(database)
    with write() as unit:
        unit.record(events.Changed())
        assert 2 == unit.seq


def test_a_refused_statement_leaves_no_trace(database: Database, write: Enter) -> None:
    """What the database refuses takes the whole unit with it."""
    with write() as unit:
        furnish(unit)
    before = everything(database)
    with pytest.raises(TWICE), write() as unit:
        unit.record(events.Changed())
        unit.add(Item("i3", "Saddle"))
        unit.add(Item("i3", "Saddle again"))
    assert before == everything(database)


@pytest.mark.parametrize("change", ["add", "put", "record"])
def test_reading_cannot_write(database: Database, write: Enter, change: str) -> None:
    """A reading unit refuses each kind of change, and the connection it used can write again afterwards."""
    with write() as unit:
        furnish(unit)
    before = everything(database)
    acts: dict[str, Callable[[SqlUnit], object]] = {
        "add": lambda unit: unit.add(Item("i3", "Saddle")),
        "put": lambda unit: unit.put(Item("i1", "Other")),
        "record": lambda unit: (unit.record(events.Changed()), unit.settle()),
    }
    refused = (sqlite3.OperationalError, psycopg.errors.ReadOnlySqlTransaction, DBAPIError)
    with pytest.raises(refused), database.reading(NOON) as unit:
        acts[change](unit)
    assert before == everything(database)
    with write() as unit:
        acts[change](unit)
    assert before != everything(database)


def test_reading_sees_one_state(database: Database, write: Enter) -> None:
    """What others commit meanwhile is not seen by a reading unit, but by the next one."""
    with write() as unit:
        furnish(unit)
    with database.reading(NOON) as view:
        with write() as unit:
            unit.add(Item("i3", "Saddle"))
            unit.put(Item("i1", "Other"))
            unit.record(events.Changed())
        seen = (len(view.find(Item)), view.get(Item, "i1").title, view.seq)
    with database.reading(NOON) as view:
        later = (len(view.find(Item)), view.get(Item, "i1").title, view.seq)
    assert [(2, "Rear", 1), (3, "Other", 2)] == [seen, later]


def test_writes_follow_each_other(database: Database) -> None:
    """Many threads that each read, then write what they read plus one, lose nothing; the ledger has no gap."""
    with database.writing(NOON, "tester") as unit:
        furnish(unit)

    def work() -> None:
        for _ in range(10):
            with database.writing(NOON, "tester") as unit:
                slot = unit.get(Slot, "D001")
                unit.put(replace(slot, turns=slot.turns + 1))
                unit.record(events.Changed())

    threads = [threading.Thread(target=work) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    with database.reading(NOON) as view:
        assert (80, 81) == (view.get(Slot, "D001").turns, view.seq)


def test_a_second_process_sees_what_was_committed(database: Database, database_url: str, write: Enter) -> None:
    """Another door to the same database finds the same room, and its writes are seen here."""
    with write() as unit:
        furnish(unit)
        unit.record(events.Changed())
    other = Database(database_url)
    with other.writing(NOON + timedelta(seconds=1), "other") as unit:
        assert "Rear" == unit.get(Item, "i1").title
        unit.put(Item("i1", "Other"))
        unit.record(events.Changed())
    other.close()
    with database.reading(NOON) as view:
        assert ("Other", 2) == (view.get(Item, "i1").title, view.seq)
