"""Plane geometry of where symbols lie: quadrilaterals in pixels, y pointing down."""

from __future__ import annotations

from math import dist, hypot

from scanflow.vision.readings import Point, Quad

# ISO/IEC 15417 recommends bars of at least 15 % of the symbol's length.
_LEAST_HEIGHT = 0.15


def extreme_corners(hull: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Top left, top right, bottom right, bottom left of a hull's points, for a symbol less than 45° off a right angle.

    zbar gives the hull of where its scan lines entered and left the symbol, as few as two points.
    """
    return [
        min(hull, key=lambda p: p[0] + p[1]),
        max(hull, key=lambda p: p[0] - p[1]),
        max(hull, key=lambda p: p[0] + p[1]),
        min(hull, key=lambda p: p[0] - p[1]),
    ]


def clockwise(corners: list[tuple[float, float]]) -> Quad:
    """The same quadrilateral and the same first edge's direction of reading, corners clockwise (y points down)."""
    a, b, c, d = corners
    doubled_area = (c[0] - a[0]) * (d[1] - b[1]) - (c[1] - a[1]) * (d[0] - b[0])
    return (a, b, c, d) if doubled_area >= 0 else (d, c, b, a)


def whole(quad: Quad) -> Quad:
    """All of the bars, from the part that scan lines crossed from end to end.

    Decoders scan rows or columns, so of a tilted symbol they report a slanted part: its ends lie on the first and
    last bar, and one corner of each end is missing. Both ends are drawn out to the same height along the bars. A part
    too low to know the bars' direction is given back as it is.
    """
    a, b, c, d = quad
    length = dist(a, b)
    if min(dist(a, d), dist(b, c)) <= _LEAST_HEIGHT * length:
        return quad
    along = (d[0] - a[0] + c[0] - b[0], d[1] - a[1] + c[1] - b[1])
    heights = [p[0] * along[0] + p[1] * along[1] for p in quad]
    if heights[3] <= heights[0] or heights[2] <= heights[1]:  # ends that cross tell no direction
        return quad
    top, bottom = min(heights[0], heights[1]), max(heights[2], heights[3])

    def at(height: float, first: int, last: int) -> Point:
        share = (height - heights[first]) / (heights[last] - heights[first])
        p, q = quad[first], quad[last]
        return p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])

    return at(top, 0, 3), at(top, 1, 2), at(bottom, 1, 2), at(bottom, 0, 3)


def at_least_high(quad: Quad) -> list[Point]:
    """The quadrilateral, or a rectangle about its middle line if it is lower than bars are; about a point a square."""
    a, b, c, d = quad
    start, end = ((a[0] + d[0]) / 2, (a[1] + d[1]) / 2), ((b[0] + c[0]) / 2, (b[1] + c[1]) / 2)
    length = hypot(end[0] - start[0], end[1] - start[1])
    if length < 1:
        x, y = start
        return [(x - 1, y - 1), (x + 1, y - 1), (x + 1, y + 1), (x - 1, y + 1)]
    if area(list(quad)) >= _LEAST_HEIGHT * length * length:
        return list(quad)
    half = _LEAST_HEIGHT / 2
    across = (-(end[1] - start[1]) * half, (end[0] - start[0]) * half)
    up, down = (-across[0], -across[1]), across
    return [(p[0] + v[0], p[1] + v[1]) for p, v in ((start, up), (end, up), (end, down), (start, down))]


class Quadrangle:
    """A clockwise quadrilateral, drawn out to the least height of bars, to be asked for many points."""

    def __init__(self, quad: Quad) -> None:
        self.polygon = at_least_high(quad)
        across, down = zip(*self.polygon, strict=True)
        self._box = min(across), min(down), max(across), max(down)

    def contains(self, point: Point) -> bool:
        left, top, right, bottom = self._box
        x, y = point
        return (
            left <= x <= right
            and top <= y <= bottom
            and all(
                (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) >= 0
                for a, b in zip(self.polygon, [*self.polygon[1:], self.polygon[0]], strict=True)
            )
        )


def area(polygon: list[Point]) -> float:
    """Of a clockwise polygon (y points down), by the shoelace formula."""
    turned = [*polygon[1:], *polygon[:1]]
    return sum(p[0] * q[1] - q[0] * p[1] for p, q in zip(polygon, turned, strict=True)) / 2


def clip(subject: list[Point], window: list[Point]) -> list[Point]:
    """The part of one convex clockwise polygon inside another (Sutherland and Hodgman, 1974)."""
    for a, b in zip(window, [*window[1:], window[0]], strict=True):
        sides = [(b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) for p in subject]
        kept: list[Point] = []
        for i, (point, side) in enumerate(zip(subject, sides, strict=True)):
            before, side_before = subject[i - 1], sides[i - 1]
            if (side >= 0) != (side_before >= 0):
                t = side_before / (side_before - side)
                kept.append((before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])))
            if side >= 0:
                kept.append(point)
        subject = kept
    return subject
