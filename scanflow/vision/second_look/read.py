"""What the decoders left: located, straightened and shown to them again, then compared with a book of codes."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

import cv2
import numpy as np

from scanflow.vision import decoders
from scanflow.vision.merge import EngineReading, Matched, Unread
from scanflow.vision.places import Quadrangle
from scanflow.vision.readings import Point, Quad, Symbology
from scanflow.vision.second_look.book import Book
from scanflow.vision.second_look.glare import Mask, reflexes
from scanflow.vision.second_look.locate import Common, Field, Grey, Region, Search
from scanflow.vision.second_look.match import Match, likeness, match
from scanflow.vision.second_look.outline import outlined
from scanflow.vision.second_look.patterns import Patterns, Values, grammar, pattern, patterns
from scanflow.vision.second_look.straighten import Strip, straighten

_LEAST_SIDE = 48  # pixels of the smallest copy that is looked at

# In the picture and in its reduced copies: first as if seen from in front. What is shorter in a copy was found in the
# larger one; low strips of what is longer are seen in the whole picture alone.
_SKEWED = tuple(np.radians([-13.0, 13.0]))
_IN_PICTURE = (Search((33, 146), 0.58), Search((33, 94), 0.67, _SKEWED, block=4))
_IN_COPIES = (Search((44, 104), 0.58), Search((44, 104), 0.67, _SKEWED, block=4))
_IN_REFLEXES = (Search((44, 146), 0.58), Search((44, 94), 0.62, _SKEWED, block=4))

_RESOLVED = 66.0  # px: in less, below 0.85 pixels a module, no decoder reads
_LARGE = 2.0  # px a module: from there on zxing-cpp has not been misled
_MODULES = 101  # most of a card's symbol: two letters and five figures
_SHARP = 0.3  # least share of a strip's variance that bars explain
_CARD = 0.66  # correlation with what all cards have in common from which on a strip is taken for one


@dataclass
class SecondLook:
    """What was found beside the readings that it began with; `places` of all that was read or recognised as foreign."""

    found: list[EngineReading]
    matched: list[Matched] = field(default_factory=list)
    unread: list[Unread] = field(default_factory=list)
    places: list[Quadrangle] = field(default_factory=list)

    def knows(self, point: Point) -> bool:
        """Whether what lies there was read or recognised."""
        return any(place.contains(point) for place in self.places)

    def outlined(self, grey: Grey, corners: Quad) -> Quad:
        """All of the bars that were read there, which are known from now on."""
        outline = outlined(grey, corners)
        self.places.append(Quadrangle(outline))
        return outline


@dataclass(frozen=True)
class _ReducedCopy:
    """A reduced copy of the picture, or a part of it from `left`, `top` on (pixels of the copy); what is `blind` there
    says nothing.
    """

    grey: Grey
    scale: int = 1
    left: int = 0
    top: int = 0
    blind: Mask | None = None

    def full(self, point: Point) -> Point:
        """From its pixels to those of the picture; the middle of a pixel counts."""
        return (point[0] + self.left + 0.5) * self.scale - 0.5, (point[1] + self.top + 0.5) * self.scale - 0.5

    def reduced(self, point: Point) -> Point:
        return (point[0] + 0.5) / self.scale - 0.5 - self.left, (point[1] + 0.5) / self.scale - 0.5 - self.top

    def parts(self) -> Iterator[_ReducedCopy]:
        """Those about reflexes, with the light that these add taken away."""
        for left, top, grey, blind in reflexes(self.grey):
            yield _ReducedCopy(grey, self.scale, left, top, blind)


def second_look(grey: Grey, found: list[EngineReading], book: Book | None) -> SecondLook:
    """Look at every label-like region, the largest first. `found` is what the decoders read in the whole picture."""
    seen = SecondLook([])
    for one in found:
        if (believed := _believed(one, found, seen, grey)) is not None:
            seen.found.append(believed)
    codes = patterns(book) if book else ()
    known = _Known(codes, [group.mean for group in codes] or grammar())
    copies = list(_copies(grey))
    for copy in reversed(copies):
        for regions in _located(seen, copy, known):
            if copy.scale == 1:
                _read(seen, grey, copy, regions, known)
            else:  # what is located on a small copy is seen better on the next larger one
                larger = copies[copy.scale.bit_length() - 2]
                _read(seen, grey, larger, map(_enlarged, regions), known)
    for copy in copies:
        for part in copy.parts():
            for regions in _located(seen, part, known):
                _read(seen, grey, part, regions, known)
    return seen


def _believed(
    one: EngineReading, others: Sequence[EngineReading], seen: SecondLook, grey: Grey
) -> EngineReading | None:
    """What decoders read, drawn out to all of its bars; None where it is doubtful and its bars don't bear it out."""
    if seen.knows(_middle(one.corners)):
        return one
    region = Region.of(one.corners)
    if _doubtful(one, others, region.length) and not _borne_out(straighten(grey, region), one.text):
        return None
    return replace(one, outline=seen.outlined(grey, one.corners))


class _Known:
    """What labels are compared with: a book's `codes`, and the `means` of codes of each length, as templates too."""

    def __init__(self, codes: Sequence[Patterns], means: Sequence[Values]) -> None:
        self.codes, self.means, self.common = codes, means, Common.of(means)


def _located(seen: SecondLook, copy: _ReducedCopy, known: _Known) -> Iterator[list[Region]]:
    """What looks like a label where nothing is known yet."""
    field = Field(copy.grey)
    for search in _IN_REFLEXES if copy.blind is not None else _IN_COPIES if copy.scale > 1 else _IN_PICTURE:
        for place in seen.places:
            field.forget([copy.reduced(corner) for corner in place.polygon])
        yield field.locate(known.common, search)


def _doubtful(one: EngineReading, others: Sequence[EngineReading], length: float) -> bool:
    """A Code 128 that is no longer than a card's, read by one engine alone: by zbar, or in small bars.

    Its check is one of 103, and half covered or blurred cards have misled both. `length`: px of the bars.
    """
    if one.symbology is not Symbology.CODE128 or not one.text.isascii():  # no card bears more than ASCII
        return False
    modules = pattern(one.text).modules
    if modules > _MODULES or (one.engine == decoders.ZXING and length > _LARGE * modules):
        return False
    return not any(other.engine != one.engine and other.text == one.text for other in others)


def _borne_out(strip: Strip | None, text: str) -> bool:
    """Whether bars look like a text, drawn with the fewest symbols, more than like all else a Code 128 could say."""
    if strip is None:
        return False
    expected = pattern(text)
    like = likeness(strip, expected.mean)
    best = match(strip, expected, like) if like.ends else None
    return best is not None and best.margin > 0


def _read(seen: SecondLook, grey: Grey, copy: _ReducedCopy, regions: Iterable[Region], known: _Known) -> None:
    waiting = deque(regions)
    while waiting:
        region = waiting.popleft()
        if seen.knows(copy.full(region.middle)):
            continue
        strip = straighten(copy.grey, region, copy.blind)
        if strip is None:
            continue
        waiting.extend(strip.rest())
        if strip.sharpness < _SHARP:
            continue
        if region.length < _RESOLVED or not _decode(seen, grey, strip, copy):
            _compare(seen, grey, strip, copy, known)


def _enlarged(region: Region) -> Region:
    x, y = 2 * region.x + 0.5, 2 * region.y + 0.5
    low, high, core = 2 * region.low, 2 * region.high, 2 * region.core
    return replace(region, x=x, y=y, length=2 * region.length, low=low, high=high, core=core)


def _copies(grey: Grey) -> Iterator[_ReducedCopy]:
    """The picture and copies of half, a quarter … of its size: labels are located at some 34 to 146 pixels."""
    scale = 1
    while min(grey.shape) >= _LEAST_SIDE:
        yield _ReducedCopy(grey, scale)
        half = (grey.shape[1] // 2, grey.shape[0] // 2)
        grey = np.asarray(cv2.resize(grey[: 2 * half[1], : 2 * half[0]], half, interpolation=cv2.INTER_AREA), np.uint8)
        scale *= 2


def _decode(seen: SecondLook, grey: Grey, strip: Strip, copy: _ReducedCopy) -> bool:
    """Show a strip to the decoders; whether it holds a code that they know."""
    drawn = strip.drawn()
    read = decoders.strip(drawn)
    found = [one for one in read if not _doubtful(one, read, strip.region.length) or _borne_out(strip, one.text)]
    for one in found:
        first, last = (corner[0] for corner in one.corners[:2])
        corners = _corners(strip, first, last, copy)
        outline = seen.outlined(grey, corners)
        seen.found.append(EngineReading(one.text, one.symbology, one.engine, corners, one.sure, outline))
    if not found and decoders.foreign(drawn):
        seen.places.append(Quadrangle(_corners(strip, *strip.ends, copy)))
        return True
    return bool(found)


def _compare(seen: SecondLook, grey: Grey, strip: Strip, copy: _ReducedCopy, known: _Known) -> None:
    """Match a strip with a book; what is like a card and no code's alone stays unread."""
    alike = [likeness(strip, mean) for mean in known.means]
    best: Match | None = None
    for group, like in zip(known.codes, alike, strict=False):
        one = match(strip, group, like) if like.ends else None
        if one and (best is None or one.margin > best.margin):
            best = one
    if best and best.sure:
        corners = _corners(strip, best.first, best.last, copy)
        seen.matched.append(Matched(best.text, corners, best.margin, seen.outlined(grey, corners)))
        return
    like = max(alike, key=lambda one: one.correlation)
    if like.correlation >= _CARD:
        seen.unread.append(Unread(_corners(strip, *like.ends[0], copy), like.correlation))


def _middle(quad: Quad) -> Point:
    return sum(x for x, _ in quad) / 4, sum(y for _, y in quad) / 4


def _corners(strip: Strip, first: float, last: float, copy: _ReducedCopy) -> Quad:
    a, b, c, d = (copy.full(corner) for corner in strip.corners(first, last))
    return a, b, c, d
