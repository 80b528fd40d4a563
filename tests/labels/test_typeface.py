"""Measures of the typeface."""

import doctest
import re

import pytest

from labels import typeface


def test_doctests():
    """The examples in the module's docstrings hold."""
    assert doctest.testmod(typeface).failed == 0


@pytest.mark.parametrize(
    ("metres", "minutes", "cap_height"),
    [(1, 16, 4.65), (1, 20, 5.82), (1, 22, 6.40), (2, 16, 9.31), (2, 20, 11.64), (2, 22, 12.80)],
)
def test_reading_distance(metres, minutes, cap_height):
    """Type of these heights is seen under these angles from these distances."""
    # 2 d tan(angle / 2); 16 minutes at least, 20 to 22 preferred, ISO 9241-3
    assert pytest.approx(metres, rel=1e-3) == typeface.reading_distance(cap_height, minutes)


@pytest.mark.parametrize("font", [typeface.REGULAR, typeface.BOLD])
def test_digits_are_tabular(font):
    """All digits are equally wide, so that numbers stand below each other."""
    assert 1 == len({typeface.width(digit, 10, font) for digit in "0123456789"})


@pytest.mark.parametrize("char", "D0é–")
def test_outline_lies_in_its_glyphs_width(char):
    """An outline is path data in thousandths of the size, inside the width that the type is set with."""
    data = typeface.outline(char, typeface.BOLD)
    points = [(float(x), float(y)) for x, y in re.findall(r"(-?\d+) (-?\d+)", data)]
    assert ("M", True) == (data[0], data.endswith("Z"))
    assert 0 <= min(x for x, _ in points) and max(x for x, _ in points) <= typeface.width(char, 1000, typeface.BOLD)
    assert -1000 < min(y for _, y in points) < 0


def test_height_of_capitals():
    """The outline of a flat capital is as high as the cap height says."""
    heights = [-float(y) for _, y in re.findall(r"(-?\d+) (-?\d+)", typeface.outline("H", typeface.BOLD))]
    assert pytest.approx(1000 * typeface.CAP_HEIGHT, abs=1) == max(heights)
