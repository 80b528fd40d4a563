"""Readings of several decoders made one per place, and none where they disagree. Pure."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from scanflow.vision.readings import Point, Quad, Reading, Symbology

# Bars go on above and below the rows a decoder happened to read. ISO/IEC 15417 recommends a height of at least 15 % of
# the symbol's length, so a thinner place is taken for a part of one that is.
_LEAST_HEIGHT = 0.15
_SAME_PLACE = 0.25  # of the smaller area; neighbouring symbols don't overlap at all


@dataclass(frozen=True, slots=True)
class Found:
    """One engine's reading at a place; what is not ``sure`` needs another engine to agree."""

    text: str
    symbology: Symbology
    engine: str
    corners: Quad
    sure: bool = True


def merge(found: list[Found]) -> tuple[Reading, ...]:
    """One reading per place, top down; where two texts or symbologies claim one place, none.

    Engines earlier in ``found`` give the corners of what several read.
    """
    places: list[list[Found]] = []
    for one in found:
        agreeing = [place for place in places if _agree(place[0], one)]
        for place in agreeing:
            place.append(one)
        if not agreeing:
            places.append([one])
    undisputed = [place for place in places if not any(_dispute(place[0], other[0]) for other in places)]
    readings = [_reading(place) for place in undisputed if _trusted(place)]
    return tuple(sorted(readings, key=lambda r: (r.corners[0][1], r.corners[0][0])))


def _reading(place: list[Found]) -> Reading:
    first = place[0]
    engines = dict.fromkeys(one.engine for one in place)
    return Reading(first.text, first.symbology, "+".join(engines), first.corners)


def _trusted(place: list[Found]) -> bool:
    return any(one.sure for one in place) or len({one.engine for one in place}) > 1


def _agree(one: Found, other: Found) -> bool:
    return _content(one) == _content(other) and _overlap(one, other)


def _dispute(one: Found, other: Found) -> bool:
    return _content(one) != _content(other) and _overlap(one, other)


def _content(found: Found) -> tuple[Symbology, bytes]:
    """What must be equal: zbar ignores Code 128's FNC4, which sets the eighth bit of a Latin-1 character."""
    return found.symbology, bytes(byte & 0x7F for byte in found.text.encode("latin-1", "replace"))


def _overlap(one: Found, other: Found) -> bool:
    first, second = _at_least_high(one.corners), _at_least_high(other.corners)
    return _area(_clip(first, second)) > _SAME_PLACE * min(_area(first), _area(second))


def _at_least_high(quad: Quad) -> list[Point]:
    """The quadrilateral, or a rectangle about its middle line where it is thinner than bars are."""
    a, b, c, d = quad
    start, end = ((a[0] + d[0]) / 2, (a[1] + d[1]) / 2), ((b[0] + c[0]) / 2, (b[1] + c[1]) / 2)
    length = max(hypot(end[0] - start[0], end[1] - start[1]), 1.0)
    if _area(list(quad)) >= _LEAST_HEIGHT * length * length:
        return list(quad)
    half = _LEAST_HEIGHT / 2
    across = (-(end[1] - start[1]) * half, (end[0] - start[0]) * half)
    up, down = (-across[0], -across[1]), across
    return [(p[0] + v[0], p[1] + v[1]) for p, v in ((start, up), (end, up), (end, down), (start, down))]


def _area(polygon: list[Point]) -> float:
    """Of a clockwise polygon (y points down), by the shoelace formula."""
    turned = [*polygon[1:], *polygon[:1]]
    return sum(p[0] * q[1] - q[0] * p[1] for p, q in zip(polygon, turned, strict=True)) / 2


def _clip(subject: list[Point], window: list[Point]) -> list[Point]:
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
