"""A count of bins drawn blind: nobody chooses them, the draw can be made again, and nothing is said of other bins."""

from __future__ import annotations

import json

import pytest
from count_in_memory import CountInMemory
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


def drawn(sample: int, area: str = "room") -> CountInMemory:
    """The small room with ten bins, and a count of so many of them."""
    room = CountInMemory(*ALL)
    stock.add_slots(room.unit, "D", stock.AddSlots(count=14))
    room.count = stocktakes.open_count(room.unit, stocktakes.OpenCount(area=area, sample=sample))
    return room


def test_the_draw_can_be_made_again():
    """From the count's id and the bins that there were, also when more have come since; the ledger tells it too."""
    room = drawn(4)
    stock.add_slots(room.unit, "D", stock.AddSlots(count=6))
    sample = room.count.sample
    assert (Chosen.BLIND, 10) == (sample.chosen, sample.of)
    names = [each.name for each in room.unit.find(Bin)][: sample.of]
    assert sample.bins == tuple(sorted(draw(names, 4, room.count.id), key=names.index))
    told = [event for event in room.unit.ledger if isinstance(event, events.StocktakeOpened)][-1]
    assert {"chosen": "blind", "of": 10, "bins": sample.bins} == told.sample


def test_each_count_draws_anew():
    """By an id of its own."""
    room = drawn(5)
    assert 1 < len(
        {stocktakes.open_count(room.unit, stocktakes.OpenCount(area="room", sample=5)).sample.bins for _ in range(5)}
    )


@pytest.mark.parametrize(("area", "sample"), [("room", 11), ("tray", 1), ("bin:A-1-1", 2)])
def test_what_can_not_be_drawn_is_refused(area: str, sample: int):
    """More than there are, and of the tray, which has no bins."""
    with pytest.raises(Invalid) as refusal:
        drawn(sample, area)
    assert ("/sample", "bad_number") == (refusal.value.pointer, refusal.value.code)


def test_a_sample_is_about_its_bins_alone():
    """What is not drawn is no place of the count: it is never missing there, and no look goes there."""
    room = drawn(9)
    names = [each.name for each in room.unit.find(Bin)]
    assert list(room.count.sample.bins) == list(room.state().places)
    for name in room.count.sample.bins:
        room.look(name)
    assert [f"missing-{code}" for code in ALL if room.slot(code).bin in room.count.sample.bins] == room.found()
    for other in {*names, "tray"} - set(room.count.sample.bins):
        with pytest.raises(Invalid, match="none of the bins that were drawn"):
            room.look(other)


def test_a_sample_speaks_for_the_bins_it_was_drawn_of():
    """None of four is wrong: as many of the other six may be as are missed in one draw of twenty (hypergeometric)."""
    room = drawn(4)
    for name in room.count.sample.bins:
        codes = [each for each in ALL if room.slot(each).bin == name]
        room.look(name, *codes)
    told = stocktake_report.whole(json.loads(stocktake_report.close(room.unit, room.count.id).report))
    # scipy: the most in all ten of which no draw of four finds one with more than 2.5 %
    most = max(wrong for wrong in range(7) if hypergeom.pmf(0, 10, wrong, 4) > 0.025)
    assert (4, 4, 0, 10, (0, most)) == (told.places, told.looked, told.wrong, told.all_, told.rest)


def test_samples_that_were_given_up_are_told():
    """Who draws until the lot falls well has to say so: those not finished since the last that was closed count."""
    room = drawn(4)
    stocktakes.cancel(room.unit, room.count.id)
    kept = [
        stocktakes.open_count(room.unit, stocktakes.OpenCount(area=area, sample=2))
        for area in ("rack:A", "room", "room", "room")
    ]
    closed = [stocktake_report.close(room.unit, each.id) for each in kept[:1] + kept[2:]]
    assert [0, 2, 0] == [json.loads(each.report)["unfinished"] for each in closed]
