"""Readings of several decoders made one per place, and none where they disagree. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import dist, hypot

from scanflow.vision.places import area, at_least_high, clip
from scanflow.vision.readings import Certainty, Point, Quad, Reading, Symbology

_SAME_PLACE = 0.25  # of the smaller area; neighbouring symbols don't overlap at all

_NEAR = 0.15  # of the length: the ends of two readings of the same bars
_WITHIN, _SHORTER = 0.7, 0.8  # of the area, and of the length: a part of bars read for a whole

_LEAST_GAP = 0.1  # of the length; two cards with the same code, one above the other, are further apart


@dataclass(frozen=True, slots=True)
class EngineReading:
    """One engine's reading at a place; what is not ``sure`` needs another engine to agree.

    ``corners`` are of the rows that were read, ``outline`` is of all the bars.
    """

    text: str
    symbology: Symbology
    engine: str
    corners: Quad
    sure: bool = True
    outline: Quad | None = None


@dataclass(frozen=True, slots=True)
class Matched:
    """A text of a book at a place; the more margin, the surer. ``corners`` and ``outline`` as in ``EngineReading``."""

    text: str
    corners: Quad
    margin: float
    outline: Quad | None = None


@dataclass(frozen=True, slots=True)
class Unread:
    """A place that looks like a card's bars; the more likeness, the surer."""

    corners: Quad
    likeness: float


def merge(
    found: list[EngineReading], matched: Sequence[Matched] = (), unread: Sequence[Unread] = ()
) -> tuple[Reading, ...]:
    """One reading per place, top down; where two texts or symbologies claim one place, none.

    Engines earlier in ``found`` give the corners of what several read. Where anything was decoded, nothing is matched,
    and where anything is known, nothing is unread; where two matches disagree the place is unread.
    """
    readings = _decoded(found)
    taken = [one.corners for one in found]
    texts = [one.text for one in found]
    for one in sorted(matched, key=lambda one: -one.margin):
        rivals = [other for other in matched if other.text != one.text and _same_bars(one.corners, other.corners)]
        known = zip(texts, taken, strict=True)
        if any((overlap if text == one.text else _same_bars)(one.corners, quad) for text, quad in known):
            continue
        texts.append(one.text)
        taken.append(one.corners)
        readings.append(_unread(one.corners) if rivals else _match(one))
    for place in sorted(unread, key=lambda one: -one.likeness):
        if not any(overlap(place.corners, quad) for quad in taken):
            taken.append(place.corners)
            readings.append(_unread(place.corners))
    return tuple(sorted(readings, key=lambda r: min((y, x) for x, y in r.corners)))


def _match(one: Matched) -> Reading:
    return Reading(one.text, Symbology.CODE128, "match", one.outline or one.corners, Certainty.MATCHED)


def _unread(corners: Quad) -> Reading:
    return Reading(None, Symbology.CODE128, "locate", corners, Certainty.UNREAD)


def _decoded(found: list[EngineReading]) -> list[Reading]:
    places: list[list[EngineReading]] = []
    for one in found:
        agreeing = [place for place in places if _agree(place[0], one)]
        for place in agreeing:
            place.append(one)
        if not agreeing:
            places.append([one])
    undisputed = [place for place in places if not any(_dispute(place[0], other[0]) for other in places)]
    return [_reading(place) for place in undisputed if _trusted(place)]


def _reading(place: list[EngineReading]) -> Reading:
    first = place[0]
    engines = dict.fromkeys(one.engine for one in place)
    return Reading(first.text, first.symbology, "+".join(engines), first.outline or first.corners)


def _trusted(place: list[EngineReading]) -> bool:
    return any(one.sure for one in place) or len({one.engine for one in place}) > 1


def _agree(one: EngineReading, other: EngineReading) -> bool:
    return _content(one) == _content(other) and (overlap(one.corners, other.corners) or _continues(one, other))


def _continues(one: EngineReading, other: EngineReading) -> bool:
    """Whether two readings are parts of the same bars, one right below the other: noise can split them."""
    near = _LEAST_GAP * dist(one.corners[0], one.corners[1])
    return any(
        dist(upper[3], lower[0]) < near and dist(upper[2], lower[1]) < near
        for upper, lower in ((one.corners, other.corners), (other.corners, one.corners))
    )


def _dispute(one: EngineReading, other: EngineReading) -> bool:
    """Whether two readings are of the same bars and differ."""
    return _content(one) != _content(other) and _same_bars(one.corners, other.corners)


def _same_bars(one: Quad, other: Quad) -> bool:
    """Whether one is a part of the other, or they end alike; cards that stand close overlap, but end elsewhere."""
    share = _share(one, other)
    if share <= _SAME_PLACE:
        return False
    if _ends_alike(one, other):
        return True
    lengths = sorted(dist(*_ends(quad)) for quad in (one, other))
    return share > _WITHIN and lengths[0] < _SHORTER * lengths[1]


def _ends_alike(one: Quad, other: Quad) -> bool:
    first, second = _ends(one), _ends(other)
    near = _NEAR * dist(*first)
    return any(dist(first[0], a) < near and dist(first[1], b) < near for a, b in (second, second[::-1]))


def _ends(quad: Quad) -> tuple[Point, Point]:
    a, b, c, d = quad
    return ((a[0] + d[0]) / 2, (a[1] + d[1]) / 2), ((b[0] + c[0]) / 2, (b[1] + c[1]) / 2)


def _content(found: EngineReading) -> tuple[Symbology, bytes]:
    """What must be equal: zbar ignores Code 128's FNC4, which sets the eighth bit of a Latin-1 character."""
    return found.symbology, _seven_bits(found.text)


@lru_cache(maxsize=4096)
def _seven_bits(text: str) -> bytes:
    return bytes(byte & 0x7F for byte in text.encode("latin-1", "replace"))


def overlap(one: Quad, other: Quad) -> bool:
    """Whether two quadrilaterals are the same place: they share over a quarter of the smaller one."""
    return _share(one, other) > _SAME_PLACE


def _share(one: Quad, other: Quad) -> float:
    """Of the smaller one's area, drawn out to the least height of bars, that lies in the other."""
    if _apart(one, other):
        return 0.0
    first, second = at_least_high(one), at_least_high(other)
    return area(clip(first, second)) / max(min(area(first), area(second)), 1e-9)


def _apart(one: Quad, other: Quad) -> bool:
    """Whether circles about both, drawn out or not, don't meet: most don't."""
    (x, y, radius), (u, v, reach) = _circle(one), _circle(other)
    return hypot(x - u, y - v) > radius + reach


@lru_cache(maxsize=4096)
def _circle(quad: Quad) -> tuple[float, float, float]:
    a, b, c, d = quad
    radius = 0.6 * max(dist(a, c), dist(b, d)) + 1
    return (a[0] + b[0] + c[0] + d[0]) / 4, (a[1] + b[1] + c[1] + d[1]) / 4, radius
