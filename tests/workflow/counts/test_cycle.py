"""Every bin is counted within so many weeks: what is due is one count, gone through on the way of rounds too."""

from __future__ import annotations

from datetime import timedelta

import pytest
from counted import Counted
from memory import NOON

from scanflow.domain.counts.stocktake import Chosen
from scanflow.workflow import stock
from scanflow.workflow.counts import cycle, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.ports import Refused

HOUR, WEEK = timedelta(hours=1), timedelta(weeks=1)


def planned(weeks: int = 3) -> Counted:
    """The small room of three bins, each counted within so many weeks."""
    floor = Counted()
    stocktakes.cancel(floor.unit, floor.count.id)
    floor.unit.set_settings(cycle.planned(floor.unit, weeks))
    floor.unit.at += HOUR
    return floor


def due(floor: Counted) -> list[str]:
    return [each.name for each in cycle.plan(floor.unit).due]


def count_due(floor: Counted) -> tuple[str, ...]:
    """All that is due is counted; the bins that were."""
    floor.count = cycle.open_due(floor.unit)
    for name in floor.count.sample.bins:
        floor.look(name)
    stocktake_report.close(floor.unit, floor.count.id)
    return floor.count.sample.bins


def test_without_a_plan_nothing_is_due():
    """Nothing is opened, asked for or refused by the way."""
    floor = Counted("D001")
    cycle.open_on_the_way(floor.unit, ["A-1-1"])
    assert (None, None) == (cycle.plan(floor.unit), cycle.running(floor.unit))
    with pytest.raises(Refused, match="No bin is due"):
        cycle.open_due(floor.unit)


def test_every_bin_has_its_turn():
    """One of three a week; what was counted waits its three weeks, and after the last comes the first."""
    floor = planned()
    seen = []
    for _ in range(4):
        seen += count_due(floor)
        assert [] == due(floor)
        floor.unit.at += WEEK
    assert ["A-1-1", "A-1-2", "A-1-3", "A-1-1"] == seen


def test_any_count_is_a_look():
    """A bin that was counted otherwise is not due; a look of a cancelled count, or at a part, is none."""
    floor = planned()
    floor.open()
    floor.look("A-1-1")
    assert [] == due(floor)
    stocktakes.cancel(floor.unit, floor.count.id)
    assert ["A-1-1"] == due(floor)
    floor.open()
    floor.look("A-1-1", whole=False)
    assert ["A-1-1"] == due(floor)


def test_busy_bins_come_more_often():
    """What comes and goes in one of seven bins makes it due at half the weeks."""
    floor = planned(8)
    stock.add_slots(floor.unit, "D", stock.AddSlots(count=8))
    floor.put_away("D003")
    stock.withdraw(floor.unit, floor.stay("D003").id, stock.Withdraw(reason="Broken"))
    floor.put_away("D005")
    floor.unit.at += 8 * WEEK
    turns = {each.name: each.turn for each in cycle.plan(floor.unit).due}
    assert {2: ["A-1-2"], 4: ["A-1-3"]} == {
        turn: [name for name, its in turns.items() if its == turn] for turn in (2, 4)
    }
    floor.unit.at += cycle.PAST
    assert {8} == {each.turn for each in cycle.plan(floor.unit).due}


def test_one_count_of_what_is_due_runs():
    """Asked for again it is the same, until it is over; what was not looked at in it is due still."""
    floor = planned()
    count = cycle.open_due(floor.unit)
    assert (Chosen.TURN, 3, ("A-1-1",)) == (count.sample.chosen, count.sample.of, count.sample.bins)
    floor.unit.at += 3 * WEEK
    assert count == cycle.open_due(floor.unit) == cycle.running(floor.unit)
    stocktakes.cancel(floor.unit, count.id)
    assert ["A-1-1", "A-1-2", "A-1-3"] == list(cycle.open_due(floor.unit).sample.bins)


def test_a_stop_asks_for_a_photo():
    """A count of what is due begins when one of its bins is on the way; a bin is asked for until it is looked at."""
    floor = planned()
    cycle.open_on_the_way(floor.unit, ["A-1-2", "A-1-3"])
    assert None is cycle.running(floor.unit)
    cycle.open_on_the_way(floor.unit, ["A-1-1", "A-1-2"])
    cycle.open_on_the_way(floor.unit, ["A-1-1"])
    floor.count = cycle.running(floor.unit)
    asked = [cycle.to_photograph(floor.unit, name) for name in ("A-1-1", "A-1-2")]
    assert [floor.count, None] == asked
    floor.look("A-1-1")
    assert None is cycle.to_photograph(floor.unit, "A-1-1")


def test_a_round_begins_the_count_of_what_is_on_its_way():
    """Whoever opened it: a bin that is due and stands on the round is asked for, others are not."""
    floor = planned()
    for code in ("D001", "D003", "D005"):
        floor.put_away(code)
    floor.order("1", "D005")
    floor.round()
    assert None is cycle.running(floor.unit)
    floor.order("2", "D001")
    floor.round()
    assert ("A-1-1",) == cycle.running(floor.unit).sample.bins


def test_a_count_that_saw_all_holds_nothing_up():
    """Looked through and not closed yet, it makes room for the next week's; it can still be closed."""
    floor = planned()
    first = floor.count = cycle.open_due(floor.unit)
    floor.look("A-1-1", whole=False)
    assert first == cycle.running(floor.unit)
    floor.look("A-1-1")
    assert None is cycle.running(floor.unit)
    floor.unit.at += WEEK
    second = cycle.open_due(floor.unit)
    assert [("A-1-1",), ("A-1-2",)] == [each.sample.bins for each in (first, second)]
    assert stocktake_report.close(floor.unit, first.id).report


def test_a_plan_begins_once():
    """Another number of weeks goes on from there; switched off and on it begins anew."""
    floor = planned(3)
    floor.unit.at += WEEK
    floor.unit.set_settings(cycle.planned(floor.unit, 5))
    assert (5, NOON.isoformat()) == (floor.unit.settings.count_weeks, floor.unit.settings.count_began)
    floor.unit.set_settings(cycle.planned(floor.unit, 0))
    assert (0, "") == (floor.unit.settings.count_weeks, floor.unit.settings.count_began)
    floor.unit.set_settings(cycle.planned(floor.unit, 5))
    assert (NOON + HOUR + WEEK).isoformat() == floor.unit.settings.count_began
