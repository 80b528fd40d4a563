"""The service and the pure model are driven side by side: they answer alike and hold the same room."""

from __future__ import annotations

import shutil
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any, ClassVar

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule, run_state_machine_as_test
from memory import NOON
from service_and_model import ServiceAndModel

from scanflow.domain.things import Order, Station
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers

EXAMPLES, STEPS, LEAST, EVERY = 30, 30, 1000, 3
Draw = Callable[[st.SearchStrategy[Any]], Any]

N = st.integers(0, 15)
NEW = st.sampled_from([0, 0, 0, 1, 1, 2, 5, 9])
YES = st.booleans()
TITLES = st.sampled_from(["Rear derailleur", "Front derailleur, clamp", "Head lamp"])
WORDS = st.sampled_from(["", "", "Rear derailleur", "Velvet curtain"])
LISTINGS = st.sampled_from(["", "", "L-1", "L-2"])
TIMES = st.sampled_from([None, None, "2026-03-01", "2026-03-03T08:00:00+01:00", "2026-02-31"])
TABLES = st.sampled_from(["main", "main", "main", "side"])
FORMS = st.sampled_from([0, 0, 0, 0, 1, 2, 3])
MISREAD = st.sampled_from([0, 0, 0, 0, 0, 1, 2, 3, 4])
STATIONS = st.sampled_from([Station.TABLE, Station.TABLE, *Station])
LATE = st.sampled_from([{}, {}, {"at": "2026-03-02T12:00:00Z"}, {"via": "typed"}])


def trade(both: ServiceAndModel, draw: Draw) -> None:
    """Things are put away and sold, and the work goes on."""
    sold = draw(st.integers(1, 3))
    for _ in range(sold):
        both.store({"title": "Rear derailleur", "section": "D"})
    both.receive(100 + len(both.room.all(Order)), [(n, 0, "", "") for n in range(sold)], (None, None))
    work(both, draw)


def work(both: ServiceAndModel, draw: Draw) -> None:
    n = draw(N)
    for _ in range(draw(st.integers(1, 4))):
        both.go_on(n)


def put_away(both: ServiceAndModel, draw: Draw) -> None:
    section = draw(st.sampled_from(["D", "D", "D", "LP", "Q"]))
    both.store({"title": draw(TITLES), "listing": draw(LISTINGS), "section": section})


def receive(both: ServiceAndModel, draw: Draw) -> None:
    lines = draw(st.lists(st.tuples(N, FORMS, WORDS, LISTINGS), min_size=1, max_size=3))
    both.receive(draw(st.integers(1, 4)) + len(both.room.all(Order)) // 2, lines, (draw(TIMES), draw(TIMES)))


def scan(both: ServiceAndModel, draw: Draw) -> None:
    both.scan(draw(STATIONS), draw(N), draw(MISREAD), draw(st.integers(0, 2)), draw(LATE), draw(YES), draw(TABLES))


def repeat(both: ServiceAndModel, draw: Draw) -> None:
    """The same key again, the same card under a new key, the same key for another card."""
    both.repeat_a_scan(draw(NEW), draw(YES))
    if draw(YES):
        both.beep_again()
    both.reuse_a_key(draw(N))


def change_item(both: ServiceAndModel, draw: Draw) -> None:
    words = st.fixed_dictionaries({"title": TITLES}, optional={"listing": LISTINGS, "notes": WORDS, "packing": WORDS})
    both.change_item(draw(N), draw(words))


ACTS: dict[Callable[[ServiceAndModel, Draw], None], int] = {
    trade: 4,
    work: 10,
    put_away: 1,
    receive: 3,
    scan: 8,
    repeat: 2,
    change_item: 1,
    lambda both, draw: both.store({"title": "Crank", "code": both.code(draw(N))}): 1,
    lambda both, draw: both.store({"title": "Crank", "text": both.card(draw(N), draw(MISREAD)) or "?"}): 1,
    lambda both, draw: both.withdraw(draw(N)): 1,
    lambda both, draw: both.move(draw(N), draw(N)): 2,
    lambda both, draw: both.cancel(draw(NEW), draw(st.none() | N)): 2,
    lambda both, draw: both.settle(draw(NEW), draw(st.none() | N)): 1,
    lambda both, draw: both.say_of_a_line(draw(NEW), draw(st.sampled_from(["short", "found", "hold", "revive"]))): 3,
    lambda both, draw: both.open_round(draw(st.none() | st.lists(N, max_size=2))): 1,
    lambda both, draw: both.close_round(draw(NEW)): 1,
    lambda both, draw: both.open_parcel(draw(st.lists(NEW, min_size=1, max_size=2)), draw(TABLES)): 2,
    lambda both, draw: both.close_parcel(draw(NEW), draw(YES)): 1,
    lambda both, draw: both.set_aside(draw(NEW)): 1,
    lambda both, draw: both.reopen(draw(NEW)): 1,
    lambda both, draw: both.doubt(draw(N)): 2,
    lambda both, draw: both.show_at_shelf(draw(N), draw(YES)): 2,
    lambda both, draw: both.scan_a_slip(draw(NEW), draw(TABLES), draw(STATIONS)): 2,
    lambda both, draw: both.repeat_a_call(draw(NEW), draw(YES)): 1,
    lambda both, draw: both.undo(draw(NEW)): 3,
}
"""What can happen → how often. One rule draws from it: of several rules Hypothesis would leave most out of a run."""


FAR = {
    "accepted",
    "released",
    "replayed",
    "repeated",
    "undone",
    "no_parcel",
    "other_order",
    "slot_free",
    "not_allowed",
} | {*("key_reused", "section_full", "not_found", "parcel_open", "held", "already_sold", "lines_missing", "wrong_bin")}
"""What must have happened somewhere in all runs, or they did not get far enough to show anything."""


class Room(RuleBasedStateMachine):
    """Mostly the day's work as a person would do it, and on top of it whatever can be called."""

    calls = 0
    seen: ClassVar[Counter[str]] = Counter()

    def __init__(self, shop: Shop) -> None:
        super().__init__()
        self.both, self.steps = ServiceAndModel(shop), 0

    @initialize(auto_close=st.booleans(), scan_at_bin=st.sampled_from([True, True, False]))
    def furnish(self, auto_close: bool, scan_at_bin: bool) -> None:
        self.both.furnish(auto_close, scan_at_bin)

    @rule(act=st.sampled_from([act for act, weight in ACTS.items() for _ in range(weight)]), data=st.data())
    def act(self, act: Callable[[ServiceAndModel, Draw], None], data: st.DataObject) -> None:
        act(self.both, data.draw)

    @invariant()
    def both_hold_the_same(self) -> None:
        """Every few steps, as it reads all rows; what went wrong before still shows then, or at the end."""
        self.steps += 1
        if self.steps % EVERY == 0:
            self.both.lists_agree()
            self.both.rows_stand_as_told()

    def teardown(self) -> None:
        type(self).calls += self.both.calls
        type(self).seen.update(self.both.seen)
        try:
            self.both.lists_agree()
            self.both.rows_stand_as_told()
            self.both.all_agrees()
        finally:
            self.both.shop.database.close()


@pytest.fixture(params=["sqlite", "postgresql"])
def new_url(request: pytest.FixtureRequest, tmp_path: Path) -> Callable[[], str]:
    """Makes an empty shop's database, one after the other."""
    if request.param == "postgresql":
        create: Callable[[], str] = request.getfixturevalue("emptied_postgresql")
        return create
    template = request.getfixturevalue("sqlite_template")

    def copy() -> str:
        path = tmp_path / f"{len(list(tmp_path.iterdir()))}.db"
        shutil.copy(template, path)
        return f"sqlite:///{path}"

    return copy


def test_service_and_model_agree(new_url: Callable[[], str], readers: Readers) -> None:
    """Over at least 1,000 calls on each database, of every kind and in any order, both sides always agree."""
    Room.calls, Room.seen = 0, Counter()
    run_state_machine_as_test(
        lambda: Room(Shop(Database(new_url()), readers, clock=lambda: NOON)),
        settings=settings(
            max_examples=EXAMPLES,
            stateful_step_count=STEPS,
            derandomize=True,
            deadline=None,
            database=None,
            phases=[Phase.generate],
            suppress_health_check=list(HealthCheck),
        ),
    )
    assert LEAST <= Room.calls
    assert set() == FAR - set(Room.seen)
