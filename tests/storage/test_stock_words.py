"""The words of what is in stock are kept between units, and are those of now all the same."""

from __future__ import annotations

from dataclasses import replace

import pytest
from memory import NOON

from scanflow.domain.life import StayState
from scanflow.domain.orders.titles import Stocked
from scanflow.domain.things import Bin, Item, Rack, Section, Slot, Stay
from scanflow.storage.database import Database


def words(database: Database) -> Stocked:
    with database.reading(NOON) as unit:
        return unit.stocked()


@pytest.fixture
def stocked(database: Database) -> Stocked:
    """Of a room with a saddle in it."""
    with database.writing(NOON, "tester") as unit:
        for thing in (Section("D", "Derailleurs", 5, "yellow"), Rack("A", 0, 0.0), Bin("A-1-1", "A", 1, 1, "D")):
            unit.add(thing)
        for number in (1, 2):
            unit.add(Slot(f"D00{number}", "D", number, "A-1-1"))
        unit.add(Item("i1", "Saddle"))
        unit.add(Stay("s1", "i1", "D001", 1, NOON))
    return words(database)


def test_kept_while_no_thing_moves(database: Database, stocked: Stocked) -> None:
    """Another entry of the ledger, or none, leaves them as they are."""
    with database.writing(NOON, "tester") as unit:
        unit.add(Slot("D003", "D", 3, "A-1-1"))
        assert unit.stocked() is stocked
    assert words(database) is stocked


def test_new_ones_when_a_thing_comes_goes_or_is_named_anew(database: Database, stocked: Stocked) -> None:
    """By any unit, also in the unit that does it, before that is committed."""
    with database.writing(NOON, "tester") as unit:
        unit.add(Item("i2", "Lamp"))
        unit.add(Stay("s2", "i2", "D002", 1, NOON))
        assert "i2" == unit.stocked().closer("Lamp").item
    assert "i2" == words(database).closer("Lamp").item
    with database.writing(NOON, "tester") as unit:
        unit.put(Item("i2", "Bell"))
    assert ("i2", None) == (words(database).closer("Bell").item, words(database).closer("Lamp"))
    with database.writing(NOON, "tester") as unit:
        unit.put(replace(unit.get(Stay, "s2"), state=StayState.SHIPPED, ended=NOON))
    assert words(database).closer("Bell") is None


def test_what_was_taken_back_is_not_kept(database: Database, stocked: Stocked) -> None:
    """A unit that fails leaves no words behind."""
    with pytest.raises(ZeroDivisionError), database.writing(NOON, "tester") as unit:
        unit.add(Item("i2", "Lamp"))
        unit.add(Stay("s2", "i2", "D002", 1, NOON))
        unit.stocked()
        1 / 0  # noqa: B018
    assert words(database).closer("Lamp") is None


def test_an_older_view_has_its_own(database: Database, stocked: Stocked) -> None:
    """A view that began before a thing came does not see it, though others have its words already."""
    with database.reading(NOON) as view:
        view.seq  # noqa: B018
        with database.writing(NOON, "tester") as unit:
            unit.add(Item("i2", "Lamp"))
            unit.add(Stay("s2", "i2", "D002", 1, NOON))
        assert "i2" == words(database).closer("Lamp").item
        assert view.stocked().closer("Lamp") is None
