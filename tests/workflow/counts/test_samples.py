"""A count of bins drawn blind: nobody chooses them, the draw can be made again, and nothing is said of other bins."""

from __future__ import annotations

import json

import pytest
from counted import Counted
from scipy.stats import hypergeom

from scanflow.domain import events
from scanflow.domain.counts.stocktake import Chosen
from scanflow.domain.things import Bin
from scanflow.planning.counting import draw
from scanflow.workflow import stock
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts import stocktakes
from scanflow.workflow.ports import Invalid

ALL = ("D001", "D002", "D003", "D004")


def drawn(sample: int, area: str = "room") -> Counted:
    """The small room with ten bins, and a count of so many of them."""
    floor = Counted(*ALL)
    stock.add_slots(floor.unit, "D", stock.AddSlots(count=14))
    floor.count = stocktakes.open_count(floor.unit, stocktakes.OpenCount(area=area, sample=sample))
    return floor


def test_the_draw_can_be_made_again():
    """From the count's id and the bins that there were, also when more have come since; the ledger tells it too."""
    floor = drawn(4)
    stock.add_slots(floor.unit, "D", stock.AddSlots(count=6))
    sample = floor.count.sample
    assert (Chosen.BLIND, 10) == (sample.chosen, sample.of)
    names = [each.name for each in floor.unit.find(Bin)][: sample.of]
    assert sample.bins == tuple(sorted(draw(names, 4, floor.count.id), key=names.index))
    told = [event for event in floor.unit.ledger if isinstance(event, events.StocktakeOpened)][-1]
    assert {"chosen": "blind", "of": 10, "bins": sample.bins} == told.sample


def test_each_count_draws_anew():
    """By an id of its own."""
    floor = drawn(5)
    assert 1 < len(
        {stocktakes.open_count(floor.unit, stocktakes.OpenCount(area="room", sample=5)).sample.bins for _ in range(5)}
    )


@pytest.mark.parametrize(("area", "sample"), [("room", 11), ("tray", 1), ("bin:A-1-1", 2)])
def test_what_can_not_be_drawn_is_refused(area: str, sample: int):
    """More than there are, and of the tray, which has no bins."""
    with pytest.raises(Invalid) as refusal:
        drawn(sample, area)
    assert ("/sample", "bad_number") == (refusal.value.pointer, refusal.value.code)


def test_a_sample_is_about_its_bins_alone():
    """What is not drawn is no place of the count: it is never missing there, and no look goes there."""
    floor = drawn(9)
    names = [each.name for each in floor.unit.find(Bin)]
    assert list(floor.count.sample.bins) == list(floor.state().places)
    for name in floor.count.sample.bins:
        floor.look(name)
    assert [f"missing-{code}" for code in ALL if floor.slot(code).bin in floor.count.sample.bins] == floor.found()
    for other in {*names, "tray"} - set(floor.count.sample.bins):
        with pytest.raises(Invalid, match="none of the bins that were drawn"):
            floor.look(other)


def test_a_sample_speaks_for_the_bins_it_was_drawn_of():
    """None of four is wrong: as many of the other six may be as are missed in one draw of twenty (hypergeometric)."""
    floor = drawn(4)
    for name in floor.count.sample.bins:
        codes = [each for each in ALL if floor.slot(each).bin == name]
        floor.look(name, *codes)
    told = stocktake_report.whole(json.loads(stocktake_report.close(floor.unit, floor.count.id).report))
    # scipy: the most in all ten of which no draw of four finds one with more than 2.5 %
    most = max(wrong for wrong in range(7) if hypergeom.pmf(0, 10, wrong, 4) > 0.025)
    assert (4, 4, 0, 10, (0, most)) == (told.places, told.looked, told.wrong, told.all_, told.rest)


def test_samples_that_were_given_up_are_told():
    """Who draws until the lot falls well has to say so: those not finished since the last that was closed count."""
    floor = drawn(4)
    stocktakes.cancel(floor.unit, floor.count.id)
    kept = [
        stocktakes.open_count(floor.unit, stocktakes.OpenCount(area=area, sample=2))
        for area in ("rack:A", "room", "room", "room")
    ]
    closed = [stocktake_report.close(floor.unit, each.id) for each in kept[:1] + kept[2:]]
    assert [0, 2, 0] == [json.loads(each.report)["unfinished"] for each in closed]
