"""Count every bin at least every so many weeks: what is due is one count, gone through on the way of rounds too."""

from __future__ import annotations

from datetime import timedelta

import pytest
from count_in_memory import CountInMemory
from memory import NOON

from scanflow.domain.counts.stocktake import Chosen
from scanflow.workflow import stock
from scanflow.workflow.counts import cycle, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.ports import Refused

HOUR, WEEK = timedelta(hours=1), timedelta(weeks=1)


def planned(weeks: int = 3) -> CountInMemory:
    """The small room of three bins, each counted within so many weeks."""
    room = CountInMemory()
    stocktakes.cancel(room.unit, room.count.id)
    room.unit.set_settings(cycle.planned(room.unit, weeks))
    room.unit.at += HOUR
    return room


def due(room: CountInMemory) -> list[str]:
    return [each.name for each in cycle.plan(room.unit).due]


def count_due(room: CountInMemory) -> tuple[str, ...]:
    """All that is due is counted; the bins that were."""
    room.count = cycle.open_due(room.unit)
    for name in room.count.sample.bins:
        room.look(name)
    stocktake_report.close(room.unit, room.count.id)
    return room.count.sample.bins


def test_without_a_plan_nothing_is_due():
    """Nothing is opened, asked for or refused by the way."""
    room = CountInMemory("D001")
    cycle.open_on_the_way(room.unit, ["A-1-1"])
    assert (None, None) == (cycle.plan(room.unit), cycle.running(room.unit))
    with pytest.raises(Refused, match="No bin is due"):
        cycle.open_due(room.unit)


def test_every_bin_has_its_turn():
    """One of three a week; what was counted waits its three weeks, and after the last comes the first."""
    room = planned()
    seen = []
    for _ in range(4):
        seen += count_due(room)
        assert [] == due(room)
        room.unit.at += WEEK
    assert ["A-1-1", "A-1-2", "A-1-3", "A-1-1"] == seen


def test_any_count_is_a_look():
    """A bin that was counted otherwise is not due; a look of a cancelled count, or at a part, is none."""
    room = planned()
    room.open()
    room.look("A-1-1")
    assert [] == due(room)
    stocktakes.cancel(room.unit, room.count.id)
    assert ["A-1-1"] == due(room)
    room.open()
    room.look("A-1-1", whole=False)
    assert ["A-1-1"] == due(room)


def test_busy_bins_come_more_often():
    """What comes and goes in one of seven bins makes it due at half the weeks."""
    room = planned(8)
    stock.add_slots(room.unit, "D", stock.AddSlots(count=8))
    room.put_away("D003")
    stock.withdraw(room.unit, room.stay("D003").id, stock.Withdraw(reason="Broken"))
    room.put_away("D005")
    room.unit.at += 8 * WEEK
    turns = {each.name: each.turn for each in cycle.plan(room.unit).due}
    assert {2: ["A-1-2"], 4: ["A-1-3"]} == {
        turn: [name for name, its in turns.items() if its == turn] for turn in (2, 4)
    }
    room.unit.at += cycle.PAST
    assert {8} == {each.turn for each in cycle.plan(room.unit).due}


def test_one_count_of_what_is_due_runs():
    """Asked for again it is the same, until it is over; what was not looked at in it is due still."""
    room = planned()
    count = cycle.open_due(room.unit)
    assert (Chosen.TURN, 3, ("A-1-1",)) == (count.sample.chosen, count.sample.of, count.sample.bins)
    room.unit.at += 3 * WEEK
    assert count == cycle.open_due(room.unit) == cycle.running(room.unit)
    stocktakes.cancel(room.unit, count.id)
    assert ["A-1-1", "A-1-2", "A-1-3"] == list(cycle.open_due(room.unit).sample.bins)


def test_a_stop_asks_for_a_photo():
    """A count of what is due begins when one of its bins is on the way; a bin is asked for until it is looked at."""
    room = planned()
    cycle.open_on_the_way(room.unit, ["A-1-2", "A-1-3"])
    assert None is cycle.running(room.unit)
    cycle.open_on_the_way(room.unit, ["A-1-1", "A-1-2"])
    cycle.open_on_the_way(room.unit, ["A-1-1"])
    room.count = cycle.running(room.unit)
    asked = [cycle.to_photograph(room.unit, name) for name in ("A-1-1", "A-1-2")]
    assert [room.count, None] == asked
    room.look("A-1-1")
    assert None is cycle.to_photograph(room.unit, "A-1-1")


def test_a_round_begins_the_count_of_what_is_on_its_way():
    """Whoever opened it: a bin that is due and stands on the round is asked for, others are not."""
    room = planned()
    for code in ("D001", "D003", "D005"):
        room.put_away(code)
    room.order("1", "D005")
    room.round()
    assert None is cycle.running(room.unit)
    room.order("2", "D001")
    room.round()
    assert ("A-1-1",) == cycle.running(room.unit).sample.bins


def test_a_count_that_saw_all_holds_nothing_up():
    """Looked through and not closed yet, it makes room for the next week's; it can still be closed."""
    room = planned()
    first = room.count = cycle.open_due(room.unit)
    room.look("A-1-1", whole=False)
    assert first == cycle.running(room.unit)
    room.look("A-1-1")
    assert None is cycle.running(room.unit)
    room.unit.at += WEEK
    second = cycle.open_due(room.unit)
    assert [("A-1-1",), ("A-1-2",)] == [each.sample.bins for each in (first, second)]
    assert stocktake_report.close(room.unit, first.id).report


def test_a_plan_begins_once():
    """Another number of weeks goes on from there; switched off and on it begins anew."""
    room = planned(3)
    room.unit.at += WEEK
    room.unit.set_settings(cycle.planned(room.unit, 5))
    assert (5, NOON.isoformat()) == (room.unit.settings.count_weeks, room.unit.settings.count_began)
    room.unit.set_settings(cycle.planned(room.unit, 0))
    assert (0, "") == (room.unit.settings.count_weeks, room.unit.settings.count_began)
    room.unit.set_settings(cycle.planned(room.unit, 5))
    assert (NOON + HOUR + WEEK).isoformat() == room.unit.settings.count_began
