"""Where symbols lie, from what decoders say of it."""

from math import cos, dist, radians, sin

import numpy as np
import pytest
from pictures import HIGH, TRUTH, WIDE, card
from PIL import Image

from scanflow.vision import read
from scanflow.vision.places import area, at_least_high, clip, clockwise, extreme_corners, whole
from scanflow.vision.readings import Point, Quad


def turned(quad: Quad, degrees: float, about: Point = (0, 0), to: Point = (0, 0)) -> Quad:
    """Clockwise about a point, which then lies elsewhere."""
    along, across = cos(radians(degrees)), sin(radians(degrees))
    moved = [(x - about[0], y - about[1]) for x, y in quad]
    a, b, c, d = ((along * x - across * y + to[0], across * x + along * y + to[1]) for x, y in moved)
    return a, b, c, d


def farthest(one: Quad, other: Quad) -> float:
    return max(dist(p, q) for p, q in zip(one, other, strict=True))


@pytest.mark.parametrize("degrees", [-14, -5, 0, 8, 100, 180])
def test_slanted_part_is_drawn_out_to_the_whole(degrees: float) -> None:
    """A part whose ends lie on the first and last bar gives back the rectangle it was cut from."""
    rectangle: Quad = (0, 0), (300, 0), (300, 120), (0, 120)
    part: Quad = (0, 40), (300, 0), (300, 80), (0, 120)

    assert 1e-9 > farthest(turned(rectangle, degrees), whole(turned(part, degrees)))


@pytest.mark.parametrize(
    "quad",
    [
        ((0, 0), (300, 20), (300, 24), (0, 4)),
        ((0, 0), (300, 0), (300, 0), (0, 0)),
        ((5, 5), (5, 5), (5, 5), (5, 5)),
        ((0, 0), (100, 100), (100, 0), (0, 100)),
    ],
    ids=["thin", "line", "point", "crossed"],
)
def test_what_shows_no_direction_of_bars_stays(quad: Quad) -> None:
    """A line, a point or a thin strip can't tell where the bars end, and is given back."""
    assert quad == whole(quad)


@pytest.mark.parametrize("degrees", [-12, -6, 3, 10, 95, 183])
def test_corners_of_a_turned_card_are_near_the_truth(degrees: float) -> None:
    """Through the real decoders, each corner of turned bars lies within a tenth of their height."""
    image = card().rotate(-degrees, expand=True, fillcolor=255, resample=Image.Resampling.BICUBIC)
    (one,) = read(np.asarray(image)).decoded
    truth = turned(TRUTH, degrees, about=(WIDE / 2, HIGH / 2), to=(image.width / 2, image.height / 2))

    assert dist(TRUTH[0], TRUTH[3]) / 10 > farthest(truth, one.corners)


def test_clockwise_keeps_the_direction_of_reading() -> None:
    """A mirrored quadrilateral is turned over about its line of text."""
    mirrored = [(0.0, 10.0), (40.0, 10.0), (40.0, 0.0), (0.0, 0.0)]

    assert ((0, 0), (40, 0), (40, 10), (0, 10)) == clockwise(mirrored)


def test_extreme_corners_of_a_hull() -> None:
    """Four points are picked from a hull of many, or of two."""
    hull = [(2.0, 1.0), (20.0, 0.0), (40.0, 2.0), (41.0, 9.0), (20.0, 11.0), (1.0, 10.0)]

    assert [(2, 1), (40, 2), (41, 9), (1, 10)] == extreme_corners(hull)
    assert [(0, 5), (40, 6), (40, 6), (0, 5)] == extreme_corners([(0.0, 5.0), (40.0, 6.0)])


def test_a_line_is_thickened_to_the_least_height_of_bars() -> None:
    """A line of 100 pixels becomes a rectangle 15 high about it; what is higher stays."""
    line: Quad = (0, 50), (100, 50), (100, 50), (0, 50)
    high: Quad = (0, 0), (100, 0), (100, 30), (0, 30)

    assert [(0, 42.5), (100, 42.5), (100, 57.5), (0, 57.5)] == at_least_high(line)
    assert list(high) == at_least_high(high)


def test_clip_leaves_the_common_part() -> None:
    """Two squares, shifted by half a side, share a quarter; apart, nothing."""
    square: list[Point] = [(0, 0), (10, 0), (10, 10), (0, 10)]
    shifted, away = ([(x + by, y + by) for x, y in square] for by in (5, 20))

    assert 25 == area(clip(square, shifted)) == area(clip(shifted, square))
    assert 0 == area(clip(square, away))
    assert 100 == area(clip(square, square))
