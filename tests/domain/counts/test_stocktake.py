"""Areas of a count, and the bins they cover."""

import doctest

import pytest

from scanflow.domain.counts import stocktake
from scanflow.domain.counts.stocktake import TRAY, Area, BadArea
from scanflow.domain.things import Bin

BINS = [
    Bin("A-1-1", "A", 1, 1, "D"),
    Bin("A-1-2", "A", 1, 2, "D"),
    Bin("A-2-1", "A", 2, 1, "S"),
    Bin("B-1-1", "B", 1, 1, "S"),
    Bin("A-12-1", "A", 12, 1, "S"),
]


@pytest.mark.parametrize(
    ("area", "places"),
    [
        ("bin:A-1-2", ["A-1-2"]),
        ("shelf:A-1", ["A-1-1", "A-1-2"]),
        ("rack:A", ["A-1-1", "A-1-2", "A-2-1", "A-12-1"]),
        ("section:S", ["A-2-1", "B-1-1", "A-12-1"]),
        ("tray", [TRAY]),
        ("room", [*(each.name for each in BINS), TRAY]),
        ("rack:Z", []),
    ],
)
def test_an_area_covers_its_places(area, places):
    """As it is written; the tray is a place of its own and of the room."""
    assert (places, area) == (list(Area.parse(area).places(BINS)), str(Area.parse(area)))


@pytest.mark.parametrize(
    "text", ["", "shelf", "shelf:A-1-1", "bin:A", "tray:A", "room:", "Room", "section:d", "aisle:1"]
)
def test_what_is_no_area_is_refused(text):
    """A name too many or too few, and a word that is no kind."""
    with pytest.raises(BadArea):
        Area.parse(text)


def test_the_examples_hold():
    """Those in the docstrings."""
    found = doctest.testmod(stocktake, optionflags=doctest.IGNORE_EXCEPTION_DETAIL)
    assert (0, True) == (found.failed, found.attempted > 1)
