"""Bins on a rack, and the cautions."""

from __future__ import annotations

import pytest

from scanflow.planning.measures import Size, size
from scanflow.planning.racking import BinShape, Measured, NoBinFits, RackShape, racking
from scanflow.planning.room import DEFAULT

WIRE = RackShape(size("24x48x72in"))
BIN = BinShape(size("23x8x6in"))


def test_a_wire_rack() -> None:
    """A 23 x 8 x 6 in bin stands five across on a 48 in wire rack, six tiers high."""
    # common practice, no source
    fit = racking(BIN, WIRE)
    assert (5, 6) == (fit.positions, fit.tiers)


@pytest.mark.parametrize(
    ("rim", "base", "across"),
    [(200, None, 5), (200, 180, 5), (200, 201, 4), (201, 150, 4), (1000, None, 1)],
)
def test_the_widest_point_counts(rim: float, base: float | None, across: int) -> None:
    """Side by side, sloped bins take their widest point, whether that is the rim or the base."""
    rack = RackShape(Size(500, 1050, 1000))
    assert across == racking(BinShape(Size(400, rim, 150), base), rack).positions


def test_what_stays_free() -> None:
    """Width of bins and what is spared add up to the width between the posts, and tiers to no more than the height."""
    fit = racking(BIN, WIRE)
    assert pytest.approx(48 * 25.4 - 50) == 5 * 203.2 + fit.spare
    assert fit.top(6) <= 72 * 25.4
    assert 4 == fit.low_tiers  # shelves at 40, 332, 625 and 917 mm
    assert 5 == fit.easy_tiers  # rims at 192, 485, 777, 1070 and 1362 mm, then at 1654
    assert (332.4 + 152.4) == pytest.approx(fit.top(2))


def test_the_room_of_such_racks() -> None:
    """The shape in metres has the racks' measures, and a walkway between them."""
    shape = racking(BIN, WIRE).shape()
    assert (6, 5, 0.2032, 1.2192, 0.6096) == pytest.approx(
        (shape.tiers, shape.positions, shape.bin_width, shape.rack_width, shape.rack_depth)
    )
    assert pytest.approx(0.8) == shape.aisle_pitch - 2 * shape.rack_depth


@pytest.mark.parametrize(
    ("rack", "words"),
    [
        (
            WIRE,
            ["Tier 6 is above easy reach", "3.0 times as high as deep", "It can tip", "local rules", "Weigh a full"],
        ),
        (RackShape(size("18x48x86in")), ["Tiers 6 to 7 are above", "stand out 127 mm", "4.8 times", "tips easily"]),
    ],
)
def test_cautions(rack: RackShape, words: list[str]) -> None:
    """Ladders, bins that stand out, weight and tip-over are told, and left to the maker's rating and local rules."""
    said = " ".join(racking(BIN, rack).cautions())
    assert [] == [word for word in words if word not in said]


@pytest.mark.parametrize(
    ("rated", "words"),
    [(None, "Compare that with the maker's rating"), (50, "more than its maker's rating of 50 kg"), (60, "within its")],
)
def test_weight_of_a_shelf(rated: float | None, words: str) -> None:
    """Five bins of 12 kg make 60 kg, held against the rating where it is known."""
    said = " ".join(racking(BIN, WIRE).cautions(12, rated))
    assert "5 full bins carries 60 kg" in said and words in said


@pytest.mark.parametrize("rack", [Size(600, 240, 1800), Size(600, 1200, 290)])
def test_not_one_bin(rack: Size) -> None:
    """A rack too narrow or too low for one bin is an error."""
    with pytest.raises(NoBinFits):
        racking(BIN, RackShape(rack))


def test_measures_as_typed() -> None:
    """Typed measures give the same room as measured ones; the table stands before the aisle that was named."""
    typed = Measured("24 x 48 x 72 in", "23x8x6in", table="1,5")
    shape = racking(BIN, WIRE).shape()
    assert (shape.rack_width, shape.positions, 1.5 * shape.aisle_pitch) == (
        typed.shape().rack_width,
        typed.shape().positions,
        typed.shape().table,
    )
    assert 4 == Measured("500x1050x1000", "400x200x150", "201").fit().positions


def test_nothing_typed() -> None:
    """Racks that were not measured are the usual ones."""
    assert DEFAULT == Measured().shape()
    assert 4.0 == Measured(table="2").shape().table


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        (Measured("24x48x72in", "wide"), "no size"),
        (Measured("24x48x72in", "23x8x6in", table="left"), "The table's aisle: write a number"),
        (Measured("24x48x72in", "23x8x6in", "wide"), "no length"),
        (Measured("24x48x72in", "23x80x6in"), "Not one such bin"),
    ],
)
def test_measures_that_make_no_sense(typed: Measured, words: str) -> None:
    """What was typed wrong is said in words."""
    with pytest.raises(ValueError, match=words):
        typed.shape()
