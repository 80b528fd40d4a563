"""Readings of several decoders made one per place, and none where they disagree. Pure."""

from __future__ import annotations

from dataclasses import dataclass
from math import dist

from scanflow.vision.places import area, at_least_high, clip
from scanflow.vision.readings import Quad, Reading, Symbology

_SAME_PLACE = 0.25  # of the smaller area; neighbouring symbols don't overlap at all

_LEAST_GAP = 0.1  # of the length; two cards with the same code, one above the other, are further apart


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
    return tuple(sorted(readings, key=lambda r: min((y, x) for x, y in r.corners)))


def _reading(place: list[Found]) -> Reading:
    first = place[0]
    engines = dict.fromkeys(one.engine for one in place)
    return Reading(first.text, first.symbology, "+".join(engines), first.corners)


def _trusted(place: list[Found]) -> bool:
    return any(one.sure for one in place) or len({one.engine for one in place}) > 1


def _agree(one: Found, other: Found) -> bool:
    return _content(one) == _content(other) and (_overlap(one, other) or _continues(one, other))


def _continues(one: Found, other: Found) -> bool:
    """Whether two readings are parts of the same bars, one right below the other: noise can split them."""
    near = _LEAST_GAP * dist(one.corners[0], one.corners[1])
    return any(
        dist(upper[3], lower[0]) < near and dist(upper[2], lower[1]) < near
        for upper, lower in ((one.corners, other.corners), (other.corners, one.corners))
    )


def _dispute(one: Found, other: Found) -> bool:
    return _content(one) != _content(other) and _overlap(one, other)


def _content(found: Found) -> tuple[Symbology, bytes]:
    """What must be equal: zbar ignores Code 128's FNC4, which sets the eighth bit of a Latin-1 character."""
    return found.symbology, bytes(byte & 0x7F for byte in found.text.encode("latin-1", "replace"))


def _overlap(one: Found, other: Found) -> bool:
    first, second = at_least_high(one.corners), at_least_high(other.corners)
    return area(clip(first, second)) > _SAME_PLACE * min(area(first), area(second))
