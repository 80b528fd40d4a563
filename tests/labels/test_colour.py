"""Colour arithmetic against published values, and the section papers held to it."""

import doctest

import pytest
from sight import Sight, ciede2000, lab, nearest

from labels import colour
from labels.paper import COLOURS

# Sharma, Wu, Dalal 2005, Table 1: L*, a*, b* of both colours and their CIEDE2000 difference. From memory; the pairs
# agree with those quoted in public implementations.
PAIRS = """
50.0000 2.6772 -79.7751 50.0000 0.0000 -82.7485 2.0425
50.0000 3.1571 -77.2803 50.0000 0.0000 -82.7485 2.8615
50.0000 2.8361 -74.0200 50.0000 0.0000 -82.7485 3.4412
50.0000 -1.3802 -84.2814 50.0000 0.0000 -82.7485 1.0000
50.0000 -1.1848 -84.8006 50.0000 0.0000 -82.7485 1.0000
50.0000 -0.9009 -85.5211 50.0000 0.0000 -82.7485 1.0000
50.0000 0.0000 0.0000 50.0000 -1.0000 2.0000 2.3669
50.0000 -1.0000 2.0000 50.0000 0.0000 0.0000 2.3669
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0009 7.1792
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0010 7.1792
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0011 7.2195
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0012 7.2195
50.0000 -0.0010 2.4900 50.0000 0.0009 -2.4900 4.8045
50.0000 -0.0010 2.4900 50.0000 0.0010 -2.4900 4.8045
50.0000 -0.0010 2.4900 50.0000 0.0011 -2.4900 4.7461
50.0000 2.5000 0.0000 50.0000 0.0000 -2.5000 4.3065
50.0000 2.5000 0.0000 73.0000 25.0000 -18.0000 27.1492
50.0000 2.5000 0.0000 61.0000 -5.0000 29.0000 22.8977
50.0000 2.5000 0.0000 56.0000 -27.0000 -3.0000 31.9030
50.0000 2.5000 0.0000 58.0000 24.0000 15.0000 19.4535
50.0000 2.5000 0.0000 50.0000 3.1736 0.5854 1.0000
50.0000 2.5000 0.0000 50.0000 3.2972 0.0000 1.0000
50.0000 2.5000 0.0000 50.0000 1.8634 0.5757 1.0000
50.0000 2.5000 0.0000 50.0000 3.2592 0.3350 1.0000
60.2574 -34.0099 36.2677 60.4626 -34.1751 39.4387 1.2644
63.0109 -31.0961 -5.8663 62.8187 -29.7946 -4.0864 1.2630
61.2901 3.7196 -5.3901 61.4292 2.2480 -4.9620 1.8731
35.0831 -44.1164 3.7933 35.0232 -40.0716 1.5901 1.8645
22.7233 20.0904 -46.6940 23.0331 14.9730 -42.5619 2.0373
36.4612 47.8580 18.3852 36.2715 50.5065 21.2231 1.4146
90.8027 -2.0831 1.4410 91.1528 -1.6435 0.0447 1.4441
90.9257 -0.5406 -0.9208 88.6381 -0.8985 -0.7239 1.5381
6.7747 -0.2908 -2.4247 5.8714 -0.0985 -2.2286 0.6377
2.0776 0.0795 -1.1350 0.9033 -0.0636 -0.5514 0.9082
"""


@pytest.mark.parametrize("row", PAIRS.strip().splitlines())
def test_ciede2000_of_the_published_pairs(row):
    """Every published pair has its published difference to four decimals, whichever colour comes first."""
    *values, expected = map(float, row.split())
    one, other = tuple(values[:3]), tuple(values[3:])
    found = [round(ciede2000(one, other), 4), round(ciede2000(other, one), 4)]
    assert [expected, expected] == found


def test_doctests():
    """The examples in the module's docstrings hold."""
    assert doctest.testmod(colour).failed == 0


@pytest.mark.parametrize(
    ("hexed", "expected"),
    [("#ffffff", (100, 0, 0)), ("#ff0000", (53.24, 80.09, 67.20)), ("#0000ff", (32.30, 79.19, -107.86))],
)
def test_lab_of_known_colours(hexed, expected):
    """sRGB primaries have their known CIELAB values."""
    # from memory
    assert pytest.approx(expected, abs=0.02) == lab(hexed)


@pytest.mark.parametrize("sight", Sight)
@pytest.mark.parametrize("grey", ["#000000", "#777777", "#ffffff"])
def test_greys_look_grey_to_everyone(sight, grey):
    """No sight changes a grey."""
    assert pytest.approx(lab(grey), abs=0.02) == lab(grey, sight)


# deltaE of the simulated sRGB colours, computed with coloraide 8.13.1 (filters by Machado et al. 2009, delta_e "2000")
@pytest.mark.parametrize(
    ("sight", "one", "other", "expected"),
    [
        (Sight.PROTANOPIA, "#b3ebff", "#ffffff", 10.88),
        (Sight.PROTANOPIA, "#e6a2c9", "#b7b7ae", 16.33),
        (Sight.PROTANOPIA, "#ff9241", "#e6a2c9", 38.73),
        (Sight.PROTANOPIA, "#305090", "#902050", 14.4),
        (Sight.DEUTERANOPIA, "#b3ebff", "#ffffff", 14.33),
        (Sight.DEUTERANOPIA, "#e6a2c9", "#b7b7ae", 10.76),
        (Sight.DEUTERANOPIA, "#ff9241", "#e6a2c9", 33.5),
        (Sight.DEUTERANOPIA, "#305090", "#902050", 27.61),
        (Sight.TRITANOPIA, "#b3ebff", "#ffffff", 21.54),
        (Sight.TRITANOPIA, "#e6a2c9", "#b7b7ae", 21.06),
        (Sight.TRITANOPIA, "#ff9241", "#e6a2c9", 11.48),
        (Sight.TRITANOPIA, "#305090", "#902050", 54.29),
    ],
)
def test_simulated_distance_of_an_independent_library(sight, one, other, expected):
    """Colours are as far apart for a dichromat as another implementation of the same model says."""
    found = ciede2000(lab(one, sight), lab(other, sight))
    assert pytest.approx(expected, abs=0.05) == found


@pytest.mark.parametrize("sight", Sight)
def test_papers_are_told_apart_by_every_sight(sight):
    """Any two section papers are at least 10 apart by CIEDE2000, however colours are seen."""
    distance, *names = nearest({name: paper.hex for name, paper in COLOURS.items()}, sight)
    assert (True, 2) == (distance >= 10, len(names)), f"{names} are {distance:.1f} apart"


def test_the_measure_finds_papers_that_look_alike():
    """A pale pink and a grey of its lightness, far apart for most, are one colour to a deuteranope."""
    pair = {"pink": "#ffc4d3", "grey": "#d6d3ce"}
    apart = {sight: nearest(pair, sight)[0] for sight in (Sight.USUAL, Sight.DEUTERANOPIA)}
    assert (True, True) == (apart[Sight.USUAL] > 15, apart[Sight.DEUTERANOPIA] < 2)


# Red-light scanners see red, orange and yellow paper as white, green, blue and violet as dark: published trade advice
@pytest.mark.parametrize(
    ("hexed", "bright"),
    [
        ("#ff0000", True),
        ("#ffa500", True),
        ("#ffff00", True),
        ("#008000", False),
        ("#0000ff", False),
        ("#4b0082", False),
    ],
)
def test_what_a_red_light_scanner_sees(hexed, bright):
    """Warm papers give bars full contrast under red light, cold ones next to none."""
    assert (bright, not bright) == (colour.contrast_under_red(hexed) > 0.9, colour.contrast_under_red(hexed) < 0.1)


def test_no_contrast_is_none():
    """Paper darker than ink for a reader has a contrast of 0, never less."""
    assert (0.0, 0.0) == (colour.contrast_under_red("#0000ff"), colour.contrast_for_camera("#000000"))


def test_a_camera_sees_red_dark():
    """Red paper, white to a scanner, has little contrast on a photo."""
    assert (True, True) == (colour.contrast_for_camera("#dc143c") < 0.2, colour.contrast_under_red("#dc143c") > 0.65)


@pytest.mark.parametrize("name", COLOURS)
def test_bars_have_contrast_on_every_section_paper(name):
    """Black bars straight on a section's paper reach grade C contrast for scanner and camera alike."""
    # SC of at least 40 %, ISO/IEC 15416:2000
    seen = (colour.contrast_under_red(COLOURS[name].hex), colour.contrast_for_camera(COLOURS[name].hex))
    assert min(seen) >= 0.4
