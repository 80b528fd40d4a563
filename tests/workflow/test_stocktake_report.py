"""What a report comes to over all sections, and what it says of the places that nobody looked at."""

from __future__ import annotations

import json

import pytest
from counted import Counted
from scipy.stats import binomtest, hypergeom

from scanflow.domain.stocktake import How
from scanflow.workflow import stocktake_report
from scanflow.workflow.stocktake_report import Whole, whole

ALL = ("D001", "D002", "D003", "D004")


def closed(floor: Counted) -> tuple[dict, Whole]:
    report = json.loads(stocktake_report.close(floor.unit, floor.count.id).report)
    return report, whole(report)


def test_places_differ_where_either_is_found():
    """A thing in the wrong bin makes both differ; what is not clear is left out."""
    floor = Counted(*ALL, "D005")
    floor.look("A-1-1", "D001", "D003")
    floor.look("A-1-2", "D004")
    floor.look("A-1-3", unread=1, how=How.PHOTO)
    report, told = closed(floor)
    assert ["A-1-1", "A-1-2"] == report["differing"]
    assert (4, 2, 2) == (told.places, told.well, told.wrong)
    assert (5 + 1, 4, 2) == (told.expected, told.counted, told.agreed)  # five things, and a card in the tray
    assert (2, 0) == (told.record_not_found, told.found_not_recorded)


def test_the_rest_is_what_a_test_does_not_reject():
    """One of two places differs: as many of the others may as neither tail of 2.5 % speaks against."""
    floor = Counted(*ALL)
    floor.look("A-1-1", "D001", "Q0771")
    floor.look("A-1-2", "D003", "D004")
    _, told = closed(floor)
    # scipy: the numbers in all four of which neither tail of "one found among two drawn" is below 2.5 %
    stand = [wrong for wrong in range(1, 4) if min(hypergeom.sf(0, 4, wrong, 2), hypergeom.cdf(1, 4, wrong, 2)) > 0.025]
    assert (stand[0] - 1, stand[-1] - 1) == told.rest
    low, high = binomtest(told.agreed, told.counted).proportion_ci()
    assert told.agreement == pytest.approx((low, high), abs=1e-4)


@pytest.mark.parametrize("looked", [True, False])
def test_nothing_is_said_of_a_rest(looked: bool):
    """All was looked at, or nothing."""
    floor = Counted(*ALL, area="bin:A-1-1")
    if looked:
        floor.look("A-1-1", "D001", "D002")
    _, told = closed(floor)
    assert (None, looked) == (told.rest, told.agreement is not None)
