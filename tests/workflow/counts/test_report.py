"""What a report comes to over all sections, and what it says of the places that nobody looked at."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from count_in_memory import CountInMemory
from scipy.stats import binomtest, hypergeom

from scanflow.domain.counts.stocktake import How
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts.report import Whole, whole, written

ALL = ("D001", "D002", "D003", "D004")


def closed(room: CountInMemory) -> tuple[dict, Whole]:
    report = json.loads(stocktake_report.close(room.unit, room.count.id).report)
    return report, whole(report)


def test_places_differ_where_either_is_found():
    """A thing in the wrong bin makes both differ; what is not clear is neither right nor wrong."""
    room = CountInMemory(*ALL, "D005")
    room.look("A-1-1", "D001", "D003")
    room.look("A-1-2", "D004")
    room.look("A-1-3", unread=1, how=How.PHOTO)
    report, told = closed(room)
    assert ["A-1-1", "A-1-2"] == report["differing"]
    assert (4, 3, 2, 1) == (told.places, told.looked, told.wrong, told.hidden)
    # five things, and a card in the tray
    assert (5 + 1, 5, 2, 1) == (told.expected, told.counted, told.agreed, told.unclear)
    assert (2, 0) == (told.record_not_found, told.found_not_recorded)


def test_the_rest_is_what_a_test_does_not_reject():
    """One of two places differs: as many of the others may as neither tail of 2.5 % speaks against."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", "Q0771")
    room.look("A-1-2", "D003", "D004")
    _, told = closed(room)
    # scipy: the numbers in all four of which neither tail of "one found among two drawn" is below 2.5 %
    stand = [wrong for wrong in range(1, 4) if min(hypergeom.sf(0, 4, wrong, 2), hypergeom.cdf(1, 4, wrong, 2)) > 0.025]
    assert (stand[0] - 1, stand[-1] - 1) == told.rest
    low, high = binomtest(told.agreed, told.counted).proportion_ci()
    assert told.agreement == pytest.approx((low, high), abs=1e-4)


@pytest.mark.parametrize("looked", [True, False])
def test_nothing_is_said_of_a_rest(looked: bool):
    """All was looked at, or nothing."""
    room = CountInMemory(*ALL, area="bin:A-1-1")
    if looked:
        room.look("A-1-1", "D001", "D002")
    _, told = closed(room)
    assert (None, looked) == (told.rest, told.agreement is not None)


def test_what_photos_hide_makes_no_count_better():
    """Of bins of which nothing is clear the interval goes from all of them wrong to all of them right (scipy)."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", how=How.PHOTO)
    room.look("A-1-2", "D003", "D004", how=How.PHOTO)
    _, told = closed(room)
    assert (4, 3, 1, 0, 1) == (told.counted, told.agreed, told.unclear, told.wrong, told.hidden)
    low, high = binomtest(3, 4).proportion_ci().low, binomtest(4, 4).proportion_ci().high
    assert told.agreement == pytest.approx((low, high), abs=1e-4)
    # scipy: of four places two are looked at, and one of these may be wrong
    stand = [wrong for wrong in range(4) if hypergeom.cdf(1, 4, wrong, 2) > 0.025]
    assert (0, stand[-1]) == told.rest


@pytest.mark.parametrize("how", ["withdraw", "moved", "put_right", "ignore"])
def test_putting_right_makes_no_count_better(how: str):
    """What a thing in the wrong bin made of the report stays, whatever was done about it before the end."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001")
    room.look("A-1-2", "D003", "D004")
    room.look("A-1-3", "D002")
    before = whole(stocktake_report.report(room.unit, room.state()))
    room.resolve("elsewhere-D002", how, reason="Found so")
    _, told = closed(room)
    same = ("counted", "agreed", "unclear", "record_not_found", "agreement", "wrong", "rest")
    assert [getattr(before, each) for each in same] == [getattr(told, each) for each in same]
    assert (4, 3, 1, 2) == (told.counted, told.agreed, told.record_not_found, told.wrong)


def test_what_turned_up_was_right_all_the_time():
    """A missing thing that is found in its bin after all agrees, and is not recorded and not found."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001")
    room.resolve("missing-D002", "found_later")
    report, told = closed(room)
    assert ([], 2, 2, 0) == (report["differing"], told.counted, told.agreed, told.record_not_found)


def test_a_second_card_is_found_and_not_recorded():
    """It makes the bin differ where it does not belong, not its own."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", "D002")
    room.look("A-1-2", "D001", "D003", "D004")
    report, told = closed(room)
    assert (["A-1-2"], 4, 4, 1) == (report["differing"], told.counted, told.agreed, told.found_not_recorded)


LATER = {"sample", "unfinished", "unclear", "differing"}


@pytest.mark.parametrize(
    ("area", "differing", "unclear"), [("room", ["A-1-1", "A-1-2"], ["A-1-3"]), ("bin:A-1-1", ["A-1-1"], [])]
)
def test_a_report_of_the_first_form_is_completed(area: str, differing: list[str], unclear: list[str]):
    """What the first reports did not say is worked out from their findings, as far as it is of the area."""
    room = CountInMemory(*ALL, "D005", area=area)
    room.look("A-1-1", "D001", "D003")
    if area == "room":
        room.look("A-1-2", "D004")
        room.look("A-1-3", unread=1, how=How.PHOTO)
    room.resolve("missing-D002", "found_later")
    count = stocktake_report.close(room.unit, room.count.id)
    today = written(count)
    first = {name: value for name, value in today.items() if name not in LATER}
    first["sections"] = [{name: row[name] for name in row.keys() - {"agreement"}} for row in today["sections"]]
    assert (differing, unclear) == (today["differing"], today["unclear"])
    assert today == written(replace(count, report=json.dumps(first)))
