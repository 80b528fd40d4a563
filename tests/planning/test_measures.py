"""Sizes as a person types them."""

import re
from dataclasses import astuple

import pytest

from scanflow.planning.measures import length, size


@pytest.mark.parametrize(
    ("text", "sides"),
    [
        ("23x8x6in", (584.2, 203.2, 152.4)),
        ("584 × 203 x 152", (584, 203, 152)),
        ("58.4x20,3x15.2 CM", (584, 203, 152)),
        ("23in x 20cm x 152mm", (584.2, 200, 152)),
        ('8 1/2 x 11 x 3/4"', (215.9, 279.4, 19.05)),
    ],
)
def test_sizes(text: str, sides: tuple[float, float, float]) -> None:
    """Three sides, with one unit behind them all or one each, come out in millimetres."""
    assert sides == pytest.approx(astuple(size(text)))


@pytest.mark.parametrize(("text", "mm"), [("584", 584), ("72in", 1828.8), ("1.2 cm", 12), ("5 1/4in", 133.35)])
def test_lengths(text: str, mm: float) -> None:
    """A single length comes out in millimetres."""
    assert pytest.approx(mm) == length(text)


NO_SIZES = ["", "23x8", "23x8x6x2", "axbxc", "23x8x6ft", "0x8x6in", "-2x8x6", "23inx8x6mm"]
LONG = [f"1x2x{'3' * 5000}", "1x2x3" + " " * 9_000_000 + "!"]


@pytest.mark.parametrize("text", [*NO_SIZES, *LONG])
def test_no_sizes(text: str) -> None:
    """What is no size, names a unit for some sides only, or has a side of zero is an error that quotes it."""
    with pytest.raises(ValueError, match=re.escape(repr(text[:100]))):
        size(text)


def test_a_fraction_of_nothing() -> None:
    """A fraction without a number below its bar is an error."""
    with pytest.raises(ValueError, match="below its bar"):
        size("1x2x3/0in")
