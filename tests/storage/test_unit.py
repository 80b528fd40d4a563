"""The unit of work: in memory, on SQLite and on PostgreSQL it behaves alike."""

from __future__ import annotations

import shutil
import sqlite3
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import psycopg
import pytest
from memory import NOON, Memory

from scanflow.domain import events
from scanflow.domain.closing import ClosingDays
from scanflow.domain.counts.stocktake import Certainty, Chosen, How, Look, Read, Resolved, Sample, Stocktake
from scanflow.domain.life import (
    CardState,
    DoubtEnd,
    DoubtKind,
    Hold,
    LineState,
    ParcelState,
    StayState,
    StocktakeState,
)
from scanflow.domain.things import (
    Bin,
    Doubt,
    Fetch,
    Held,
    Item,
    Line,
    Listing,
    Order,
    Out,
    Parcel,
    Photo,
    Rack,
    Round,
    Scan,
    Section,
    Sighting,
    Slot,
    Station,
    Stay,
    Stop,
)
from scanflow.domain.whereabouts import free_to_give
from scanflow.storage.database import Database
from scanflow.workflow.ports import Settings, SlotFacts, Unit

DERAILLEURS = Section("D", "Derailleurs", 2, "yellow", 3, 3)
LAMPS = Section("LP", "Lamps", 20, "blue", 2, 1)
SLOTS = tuple(Slot(f"D00{number}", "D", number, "A-1-1") for number in (1, 2, 3))
LAMP = Slot("LP01", "LP", 1, "A-1-2")
ITEM = Item("i1", "Rear derailleur, long cage", "scratched")
STAY = Stay("s1", "i1", "D002", 1, NOON)
ORDER = Order("o1", "A-100", "web", NOON, 1, NOON - timedelta(hours=3), None)
LINE = Line("l1", "o1", 1, "D002-01X", "Rear derailleur", "L-77", "s1", LineState.WAITING)


def scan(key: str, station: Station, spot: str, **other: Any) -> Scan:
    return Scan(key, "b" * 64, station, spot, "D002", False, True, True, "l1", None, "{}", **other)


def furnish(unit: Unit) -> None:
    """Two sections with four slots in two bins."""
    for thing in (DERAILLEURS, LAMPS, Rack("A", 0, 1.5)):
        unit.add(thing)
    for thing in (Bin("A-1-1", "A", 1, 1, "D"), Bin("A-1-2", "A", 1, 2, "LP"), *SLOTS, LAMP):
        unit.add(thing)


def store(unit: Unit) -> None:
    """One thing in the second slot, wanted by an order."""
    furnish(unit)
    unit.put(replace(SLOTS[1], turns=1, card=CardState.ON_ITEM))
    for thing in (ITEM, STAY, ORDER, LINE):
        unit.add(thing)


class Place:
    """Where units of work come from: all that a test asks of memory and of a database."""

    def __init__(self, database: Database | None) -> None:
        self.database, self.memory = database, Memory()

    @contextmanager
    def unit(self) -> Iterator[Unit]:
        if self.database is None:
            yield self.memory
        else:
            with self.database.writing(NOON, "tester") as unit:
                yield unit


@pytest.fixture(params=["memory", "sqlite", "postgresql"])
def place(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Place]:
    if request.param == "memory":
        yield Place(None)
        return
    if request.param == "sqlite":
        shutil.copy(request.getfixturevalue("sqlite_template"), tmp_path / "shop.db")
        database = Database(f"sqlite:///{tmp_path / 'shop.db'}")
    else:
        database = Database(request.getfixturevalue("new_postgresql")())
    yield Place(database)
    database.close()


THINGS: tuple[object, ...] = (
    DERAILLEURS,
    Rack("B", 2, 3.25),
    Bin("B-1-1", "B", 1, 1, "D"),
    Slot(
        "D009",
        "D",
        9,
        "B-1-1",
        4,
        CardState.LOST,
        Sighting(Station.TABLE, "two", False, NOON - timedelta(minutes=3), "p9"),
        Out(Station.BIN, "B-1-1", "r9", 5),
        Fetch("helper", NOON + timedelta(hours=1)),
        twin=True,
    ),
    Slot("D010", "D", 10, "B-1-1", 0, CardState.TRAY, Sighting(Station.TRAY, "", True)),
    ITEM,
    Stay("s9", "i1", "D009", 4, NOON, StayState.WITHDRAWN, NOON + timedelta(microseconds=1), "worn out"),
    Parcel("p9", "main", ("o9", "o8"), NOON, ParcelState.HANDED_OVER, NOON + timedelta(1), NOON + timedelta(2)),
    Round("r9", NOON),
    Order("o9", "", "", NOON, 7, None, NOON + timedelta(days=2), "p9", "X-1"),
    Line(
        "l9",
        "o9",
        1,
        "D009-04K",
        "ünïcode \u2028 “title”",
        "",
        "s9",
        LineState.PACKED,
        (Held(Hold.SUSPECT, "“why”"), Held(Hold.DOUBTFUL, "too")),
        "p9",
        "r9",
    ),
    Doubt(
        *("u9", "i1", DoubtKind.MISSING, "“gone”", NOON, "tester", "f" * 64),
        *(DoubtEnd.SEEN, "there", NOON + timedelta(hours=2)),
    ),
    Doubt("u8", "i1", DoubtKind.NOT_THIS, "a lamp", NOON, "tester"),
    Listing("e9", "i1", "fair", "L-78", "l9", NOON, NOON + timedelta(hours=1)),
    Listing("e8", "i1", "", "L-79", None, NOON),
    Stop("r9", 1, "l9", "B-1-1"),
    scan("k9", Station.TABLE, "main", was="picked", at=NOON, stood="[]"),
    Photo("f" * 64, b"jpeg", b"small"),
    Stocktake(
        "c9",
        "shelf:B-1",
        "“note”",
        NOON,
        2**40,
        StocktakeState.CLOSED,
        NOON + timedelta(days=2),
        '{"a": 1}',
        Sample(Chosen.BLIND, 60, ("A-1-1", "B-1-1")),
    ),
    Look(
        "k9",
        "body",
        "c9",
        "B-1-1",
        NOON,
        How.CAMERA,
        (
            Read(
                "D0090", "D009", Certainty.MATCHED, (1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0), True, ("A-1-1", "A-1-2")
            ),
            Read("", None, Certainty.UNREAD),
        ),
        False,
        None,
        (640, 480),
        "f" * 64,
    ),
    Resolved("c9.missing-D009", "c9", "{}", "ignore", "“why”", "tester", NOON, "{}"),
)


def test_things_come_back_as_they_were_added(place: Place) -> None:
    """Every kind of thing survives the way in and out unchanged, in the same unit and in the next one."""
    with place.unit() as unit:
        for thing in THINGS:
            unit.add(thing)
        first = [unit.find(type(thing)) for thing in THINGS]
    with place.unit() as unit:
        second = [unit.find(type(thing)) for thing in THINGS]
        named = [unit.get(type(thing), thing.id) for thing in THINGS if hasattr(thing, "id")]
    of_its_kind = [tuple(each for each in THINGS if type(each) is type(thing)) for thing in THINGS]
    assert of_its_kind == first == second
    assert [thing for thing in THINGS if hasattr(thing, "id")] == named


def test_get_of_the_unknown(place: Place) -> None:
    """What was never added is None."""
    with place.unit() as unit:
        assert (None, None, ()) == (unit.get(Slot, "D001"), unit.facts("D001"), unit.find(Slot))


def test_find_by_fields(place: Place) -> None:
    """Things are found by any equal fields, None too, in the order they were added."""
    with place.unit() as unit:
        store(unit)
        other = replace(LINE, id="l2", position=2, stay=None, state=LineState.UNBOUND)
        unit.add(other)
        taken = replace(SLOTS[1], turns=1, card=CardState.ON_ITEM)
        assert (SLOTS[0], taken, SLOTS[2]) == unit.find(Slot, section="D")
        assert (SLOTS[0], SLOTS[2]) == unit.find(Slot, section="D", card=CardState.TRAY)
        assert (other,) == unit.find(Line, stay=None)
        assert (LINE,) == unit.find(Line, order="o1", state=LineState.WAITING, round=None)
        assert () == unit.find(Line, order="o1", state=LineState.PACKED)


def test_find_keeps_the_order_of_adding(place: Place) -> None:
    """A thing that was changed keeps its place in the list."""
    with place.unit() as unit:
        furnish(unit)
        changed = replace(SLOTS[0], turns=5)
        unit.put(changed)
    with place.unit() as unit:
        assert (changed, *SLOTS[1:], LAMP) == unit.find(Slot)


def test_put_replaces(place: Place) -> None:
    """A put thing is there at once and in the next unit; None and composite fields are written too."""
    seen = replace(SLOTS[0], seen=Sighting(Station.TABLE, "main", True), card=CardState.DUE)
    with place.unit() as unit:
        furnish(unit)
        unit.put(seen)
        assert seen == unit.get(Slot, "D001")
    with place.unit() as unit:
        assert (seen,) == unit.find(Slot, card=CardState.DUE)
        unit.put(replace(seen, seen=None))
    with place.unit() as unit:
        assert replace(seen, seen=None) == unit.get(Slot, "D001")


def test_parcel_fields(place: Place) -> None:
    """A parcel's table and orders are found and replaced by their own names."""
    parcel = Parcel("p1", "main", ("o1",), NOON)
    with place.unit() as unit:
        unit.add(parcel)
        unit.put(replace(parcel, table="side", orders=("o1", "o2")))
        assert () == unit.find(Parcel, table="main")
        assert (replace(parcel, table="side", orders=("o1", "o2")),) == unit.find(Parcel, table="side")


@pytest.mark.parametrize("act", ["add", "put"])
def test_add_and_put_keep_names_apart(place: Place, act: str) -> None:
    """Adding what is there and putting what is not raises."""
    known, unknown = SLOTS[0], Slot("D099", "D", 99, "A-1-1")
    refused = (ValueError, KeyError, sqlite3.IntegrityError, psycopg.IntegrityError)
    with pytest.raises(refused), place.unit() as unit:
        furnish(unit)
        getattr(unit, act)(known if act == "add" else unknown)


def test_facts_of_an_empty_slot(place: Place) -> None:
    """A slot that never had anything is told alone."""
    with place.unit() as unit:
        furnish(unit)
        assert SlotFacts(SLOTS[0]) == unit.facts("D001")


def test_facts_of_a_wanted_thing(place: Place) -> None:
    """The latest stay is told with its item, its live line and that line's order."""
    with place.unit() as unit:
        store(unit)
        slot = replace(SLOTS[1], turns=1, card=CardState.ON_ITEM)
        assert SlotFacts(slot, STAY, ITEM, LINE, ORDER) == unit.facts("D002")


def test_facts_of_the_latest_turn(place: Place) -> None:
    """Of a slot's stays only the last counts, even when an older one has lines."""
    newer = Stay("s2", "i2", "D002", 2, NOON)
    with place.unit() as unit:
        store(unit)
        unit.put(replace(LINE, state=LineState.RELEASED))
        unit.put(STAY.after("release", NOON))
        unit.add(Item("i2", "Crank"))
        unit.put(replace(SLOTS[1], turns=2, card=CardState.ON_ITEM))
        unit.add(newer)
        slot = replace(SLOTS[1], turns=2, card=CardState.ON_ITEM)
        assert SlotFacts(slot, newer, Item("i2", "Crank")) == unit.facts("D002")


@pytest.mark.parametrize(
    ("states", "told"),
    [
        ((LineState.CANCELLED, LineState.WAITING), 2),
        ((LineState.WAITING, LineState.CANCELLED), 1),
        ((LineState.CANCELLED, LineState.CANCELLED), 2),
        ((LineState.RELEASED, LineState.CANCELLED), 1),
        ((LineState.CANCELLED, LineState.SHORT, LineState.RETURNED), 2),
    ],
)
def test_facts_choose_one_line(place: Place, states: tuple[LineState, ...], told: int) -> None:
    """The live line of a stay is told, else the released one, else the last."""
    with place.unit() as unit:
        store(unit)
        unit.put(replace(LINE, stay=None))
        for number, state in enumerate(states, 1):
            unit.add(replace(LINE, id=f"m{number}", position=number + 1, state=state))
        facts = unit.facts("D002")
        assert facts is not None and facts.line is not None
        assert (f"m{told}", "o1") == (facts.line.id, facts.order.id if facts.order else None)


def test_lowest_free(place: Place) -> None:
    """The lowest number counts whose card is in the tray and where nothing stands."""
    with place.unit() as unit:
        store(unit)
        assert "D001" == unit.lowest_free("D").code
        unit.put(replace(SLOTS[0], card=CardState.DUE))
        assert "D003" == unit.lowest_free("D").code
        unit.put(replace(SLOTS[2], card=CardState.LOST))
        assert (None, None) == (unit.lowest_free("D"), unit.lowest_free("Z"))


READ = (
    None,
    Sighting(Station.TRAY, "", True),
    Sighting(Station.TRAY, "", False),
    Sighting(Station.SHELF, "A-1-1", True),
    Sighting(Station.SHELF, "A-1-1", False),
    Sighting(Station.TABLE, "main", False),
    Sighting(Station.BIN, "", False),
)


@pytest.mark.parametrize("seen", READ)
@pytest.mark.parametrize("card", CardState)
def test_what_is_free_is_free_to_give(place: Place, card: CardState, seen: Sighting | None) -> None:
    """A slot is found and counted where the domain says that its number can be handed out, and only there.

    While a thing stands in it, it never is.
    """
    slot = replace(LAMP, card=card, seen=seen)
    with place.unit() as unit:
        furnish(unit)
        unit.put(slot)
        free = free_to_give(slot, taken=False)
        assert (slot if free else None) == unit.lowest_free("LP")
        assert {"D": 3, **({"LP": 1} if free else {})} == unit.free_slots(20)
        unit.put(replace(slot, turns=1))
        unit.add(ITEM)
        unit.add(replace(STAY, code=slot.code))
        assert (None, {"D": 3}) == (unit.lowest_free("LP"), unit.free_slots(20))


def test_numbers_that_are_fetched(place: Place) -> None:
    """A number is kept from all but its fetcher until its time is over; the fetcher's own are told."""
    with place.unit() as unit:
        store(unit)
        until = unit.at + timedelta(minutes=10)
        unit.put(replace(SLOTS[0], fetch=Fetch("ann", until)))
        told = {}
        for who, at in ((unit.who, unit.at), ("ann", unit.at), (unit.who, until), ("ann", until)):
            unit.who, unit.at = who, at
            free = unit.lowest_free("D")
            told[who, at] = (free.code if free else "", unit.free_slots(2), [slot.code for slot in unit.fetched()])
        both = {"D": 2}
        assert [("D003", {"D": 1}, []), ("D001", both, ["D001"]), ("D001", both, []), ("D001", both, [])] == list(
            told.values()
        )


def test_a_card_in_the_tray_frees_nothing_taken(place: Place) -> None:
    """A slot with an open stay is not free, wherever its card is."""
    with place.unit() as unit:
        store(unit)
        unit.put(replace(SLOTS[1], turns=1, card=CardState.TRAY))
        unit.put(replace(SLOTS[0], card=CardState.DUE))
        assert ("D003", {"D": 1}) == (unit.lowest_free("D").code, unit.free_slots(2))


def test_free_slots(place: Place) -> None:
    """Free slots are counted for sections of at least that bulk, those without any left out."""
    with place.unit() as unit:
        store(unit)
        assert [{}, {"D": 2}, {"D": 2, "LP": 1}] == [unit.free_slots(most) for most in (1, 2, 20)]
        unit.put(replace(LAMP, card=CardState.HAND))
        assert {"D": 2} == unit.free_slots(20)


def test_things_in_stock_by_their_words(place: Place) -> None:
    """What stands here is found by its title, as it is now; what has left is not."""
    with place.unit() as unit:
        store(unit)
        assert "D002" == getattr(unit.stocked().closer("long cage"), "code", None)
        unit.put(replace(ITEM, title="Brass bell"))
        bell = unit.stocked().closer("bell")
        assert ("s1", None) == (bell and bell.stay, unit.stocked().closer("long cage"))
        unit.put(replace(STAY, state=StayState.WITHDRAWN))
        assert None is unit.stocked().closer("bell")


def test_last_scan(place: Place) -> None:
    """The last scan of a station and spot is the one added last there."""
    with place.unit() as unit:
        one, two = scan("k2", Station.TABLE, "main"), scan("k1", Station.TABLE, "main")
        for each in (one, two, scan("k3", Station.TABLE, "side"), scan("k4", Station.SHELF, "main")):
            unit.add(each)
        assert (two, None) == (unit.last_scan(Station.TABLE, "main"), unit.last_scan(Station.TRAY, "main"))


def test_the_parcel_that_a_table_closed_last(place: Place) -> None:
    """By the time of its closing; one that is open again does not count, one that has left since does."""
    later = NOON + timedelta(hours=1)
    with place.unit() as unit:
        unit.add(Parcel("p1", "main", (), NOON, ParcelState.CLOSED, later))
        unit.add(Parcel("p2", "main", (), NOON, ParcelState.CLOSED, NOON))
        unit.add(Parcel("p3", "main", (), NOON, ParcelState.ASIDE, later + timedelta(hours=1)))
        unit.add(Parcel("p4", "side", (), NOON, ParcelState.HANDED_OVER, NOON, later, "Van", "Ann", "Bob", True))
    with place.unit() as unit:
        names = [each.id if each else None for each in map(unit.last_closed, ("main", "side", "none"))]
        assert ["p1", "p4", None] == names
        assert ("Van", "Ann", "Bob", True) == tuple(
            getattr(unit.last_closed("side"), name) for name in ("carrier", "handed_by", "collected_by", "later")
        )


def test_when_places_were_looked_at_last(place: Place) -> None:
    """The newest look at each that showed all of it, in counts that run or are closed."""
    with place.unit() as unit:
        for number, state in enumerate(StocktakeState):
            unit.add(Stocktake(state, "room", "", NOON, number, state))
        for number, (count, name, whole) in enumerate(
            [("open", "A", True), ("closed", "A", True), ("cancelled", "A", True), ("open", "B", False)]
        ):
            at = NOON + number * timedelta(hours=1)
            unit.add(Look(f"k{number}", "body", count, name, at, How.PHOTO, (), whole))
        unit.add(Look("k9", "body", "open", "A", NOON + timedelta(days=1), How.PHOTO, (), True, "k0"))
    with place.unit() as unit:
        assert {"A": NOON + timedelta(hours=1)} == unit.last_looks()


def test_how_busy_bins_are(place: Place) -> None:
    """What came and what left since then, in each bin."""
    hours = [NOON + number * timedelta(hours=1) for number in range(4)]
    with place.unit() as unit:
        furnish(unit)
        unit.add(ITEM)
        for number, (code, state, began, ended) in enumerate(
            [
                ("D001", StayState.SHIPPED, hours[0], hours[1]),
                ("D001", StayState.SHIPPED, hours[1], hours[2]),
                ("D003", StayState.STORED, hours[3], None),
                ("LP01", StayState.SHIPPED, hours[0], hours[1]),
            ]
        ):
            unit.add(Stay(f"s{number}", "i1", code, number, began, state, ended))
    with place.unit() as unit:
        told = [dict(unit.visits_since(at)) for at in (hours[2], hours[1])]
    assert [{"A-1-1": 2}, {"A-1-1": 4, "A-1-2": 1}] == told


def test_slips_count_on(place: Place) -> None:
    """Each order gets the next slip number, from 1."""
    numbers = []
    for number in range(3):
        with place.unit() as unit:
            numbers.append(unit.next_slip())
            unit.add(replace(ORDER, id=f"o{number}", number=str(number), slip=numbers[-1]))
    assert [1, 2, 3] == numbers


def test_new_ids_differ(place: Place) -> None:
    """No id is given twice."""
    with place.unit() as unit:
        assert 100 == len({unit.new_id() for _ in range(100)})


def test_settings_stay(place: Place) -> None:
    """Settings hold in this unit and the next."""
    closing = ClosingDays(("sunday",), ("2026-12-24/2027-01-02",))
    new = Settings(auto_close=False, scan_at_bin=False, zone="Europe/Lisbon", name="Barn", closing=closing)
    with place.unit() as unit:
        assert Settings() == unit.settings
        unit.set_settings(new)
        assert new == unit.settings
    with place.unit() as unit:
        assert new == unit.settings


def test_when_something_was_told(place: Place) -> None:
    """The time of the entry of this kind that names the thing, whole; of another kind or thing there is none."""
    for event in (events.Cancelled(order="o1", number="A-1", lines=("l1", "l2")), events.LineHeld(line="l3", why="")):
        with place.unit() as unit:
            unit.record(event)
    asked = ((events.Cancelled, "l2"), (events.LineHeld, "l2"), (events.LineHeld, "l"))
    with place.unit() as unit:
        told = [unit.told_at(of, name) for of, name in asked]
    assert [NOON, None, None] == told


def test_what_was_told_since(place: Place) -> None:
    """The entries after one, with their numbers, in order, this unit's own among them."""
    first, second = events.CardLost(code="D001"), events.ParcelReopened(parcel="p1", orders=("o1", "o2"))
    for event in (first, second):
        with place.unit() as unit:
            unit.record(event)
    with place.unit() as unit:
        unit.record(first)
        told, seq = list(unit.told_since(1)), unit.seq
    assert [(2, second), (3, first)] == told
    assert 3 == seq


def test_what_is_dropped_is_gone(place: Place) -> None:
    """In the same unit and in the next one; nothing else is."""
    with place.unit() as unit:
        unit.add(Photo("a", b"one", b"1"))
        unit.add(Photo("b", b"two", b"2"))
        assert 2 == len(unit.find(Photo))
        unit.drop(Photo, "a")
        first = unit.get(Photo, "a"), unit.find(Photo)
    with place.unit() as unit:
        second = unit.get(Photo, "a"), unit.find(Photo)
    assert (None, (Photo("b", b"two", b"2"),)) == first == second


def test_a_photo_that_is_dropped_is_not_left_in_the_file(tmp_path: Path, sqlite_template: Path) -> None:
    """Nor, soon, in the log beside it, while the database is open: SQLite overwrites what was deleted when it is told
    to.
    """
    path, picture = tmp_path / "shop.db", b"what the camera saw " * 5_000
    shutil.copy(sqlite_template, path)
    database = Database(f"sqlite:///{path}")

    def left() -> int:
        return sum(b"what the camera saw" in each.read_bytes() for each in tmp_path.glob("shop.db*"))

    with database.writing(NOON, "tester") as unit:
        unit.add(Photo("a", picture, b""))
    there = left()
    with database.writing(NOON, "tester") as unit:
        unit.drop(Photo, "a")
    until = time.monotonic() + 20
    while left() and time.monotonic() < until:
        time.sleep(0.02)
    assert (1, 0) == (there, left())
    database.close()
