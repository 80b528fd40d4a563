"""A picture with its readings drawn over it: an outline each, told apart by line, word and colour."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from math import ceil, dist
from statistics import median
from typing import NamedTuple

from PIL import Image, ImageDraw, ImageFont

from scanflow.vision.readings import Certainty, PictureReadings, Point, Quad, Reading

Box = tuple[float, float, float, float]


class OutlineStyle(NamedTuple):
    """A colour, and the lengths of dash and gap in line widths; without a gap the line is solid."""

    colour: str
    dash: float = 1.0
    gap: float = 0.0


# Colours after Okabe and Ito's palette for every kind of colour vision (2008).
LINES = {
    Certainty.DECODED: OutlineStyle("#0072b2"),
    Certainty.MATCHED: OutlineStyle("#d55e00", 5.0, 3.0),
    Certainty.UNREAD: OutlineStyle("#000000", 1.0, 2.5),
}
UNEXPECTED = OutlineStyle("#cc79a7", 7.0, 1.5)
"""Of a card that does not belong where the picture was taken, however it was read."""
_PAPER = "#ffffff"
# Size of lines and letters: at most a share of the picture's longer side, and of the usual code's length; in pixels.
_WIDTH, _WIDTH_OF_CODE, _LEAST_WIDTH = 0.002, 0.02, 2
_TYPE, _TYPE_OF_CODE, _LEAST_TYPE = 0.022, 0.22, 14
# Where few words stand: shares of the picture's width, so that on a phone, 320 CSS pixels across, letters are 14 high.
_FEW_TYPE, _FEW_WIDTH, _FEW = 0.045, 0.006, 8


def draw(
    image: Image.Image, picture: PictureReadings, unexpected: Collection[str] = (), *, few: bool = False
) -> Image.Image:
    """A copy of an upright RGB image of the picture, at any scale, with an outline and a word for each reading.

    `unexpected` are the texts of cards that do not belong there. With `few` words those alone are named, and what no
    decoder read, in letters for a phone; the outlines of all others are thin.
    """
    drawn = image.copy()
    if not picture.readings:
        return drawn
    outlines = [(one, _scaled(one.corners, image.width / picture.width)) for one in picture.readings]
    told = [
        one for one in picture.readings if not few or one.text in unexpected or one.certainty is not Certainty.DECODED
    ]
    sheet = _Sheet(drawn, [corners for _, corners in outlines], len(told) if few else 0)
    lines = [UNEXPECTED if one.text in unexpected else LINES[one.certainty] for one, _ in outlines]
    for (one, corners), line in sorted(zip(outlines, lines, strict=True), key=lambda each: each[0][0] in told):
        sheet.outline(corners, line, thin=few and one not in told)
    for (one, corners), line in zip(outlines, lines, strict=True):
        if one in told:
            sheet.label(words(one, unexpected=one.text in unexpected), corners, line.colour)
    return drawn


def words(reading: Reading, *, unexpected: bool = False) -> str:
    """The text, how it is known unless a decoder read it, and that it does not belong there."""
    known = None if reading.certainty is Certainty.DECODED else reading.certainty.value
    return " ".join(filter(None, (reading.text, known, "unexpected" if unexpected else None)))


class _Sheet:
    """What is drawn on an image, and the boxes where something stands already."""

    def __init__(self, image: Image.Image, outlines: list[Quad], few: int = 0) -> None:
        """Letters and lines by the length of the codes; where `few` words come, by the picture's width."""
        side, code = max(image.size), median(dist(corners[0], corners[1]) for corners in outlines)
        self._pen = ImageDraw.Draw(image)
        self._size = image.size
        self._thin = self._width = max(_LEAST_WIDTH, round(min(_WIDTH * side, _WIDTH_OF_CODE * code)))
        size = max(_LEAST_TYPE, min(_TYPE * side, _TYPE_OF_CODE * code))
        if few:
            self._width = max(self._width, round(_FEW_WIDTH * image.width))
            size = max(size, _FEW_TYPE * image.width * min(1.0, (_FEW / few) ** 0.5))
        self._font = ImageFont.load_default(size)
        self._taken = [_around(corners) for corners in outlines]

    def outline(self, corners: Quad, line: OutlineStyle, *, thin: bool = False) -> None:
        """The outline over a wider, unbroken one in white, so that it shows on any ground."""
        width = self._thin if thin else self._width
        self._pen.line([*corners, *corners[:2]], fill=_PAPER, width=2 * width, joint="curve")
        for begin, end in zip(corners, (*corners[1:], corners[0]), strict=True):
            for piece in _pieces(begin, end, line.dash * width, line.gap * width):
                self._pen.line(piece, fill=line.colour, width=width)

    def label(self, text: str, corners: Quad, colour: str) -> None:
        """The text on paper beside the outline, where it covers least of what stands there already."""
        left, top, right, bottom = self._pen.textbbox((0, 0), text, font=self._font)
        rim = 2 * self._width
        places = list(_places(_around(corners), right - left + 2 * rim, bottom - top + 2 * rim, rim))
        inside = [box for box in places if self._holds(box)] or places
        lefts, tops, rights, bottoms = zip(*inside, strict=True)
        reach = (min(lefts), min(tops), max(rights), max(bottoms))
        near = [other for other in self._taken if _shared(reach, other)]
        box = min(inside, key=lambda box: sum(_shared(box, other) for other in near))
        self._pen.rectangle(box, fill=_PAPER, outline=colour, width=self._width)
        self._pen.text((box[0] + rim - left, box[1] + rim - top), text, fill="#000000", font=self._font)
        self._taken.append(box)

    def _holds(self, box: Box) -> bool:
        return box[0] >= 0 and box[1] >= 0 and box[2] < self._size[0] and box[3] < self._size[1]


def _scaled(corners: Quad, scale: float) -> Quad:
    a, b, c, d = ((x * scale, y * scale) for x, y in corners)
    return a, b, c, d


def _pieces(begin: Point, end: Point, dash: float, gap: float) -> Iterator[tuple[Point, Point]]:
    """The dashes from one point to another, the first and the last of them at the ends."""
    length = dist(begin, end)
    if not gap or length <= dash:
        yield begin, end
        return
    count = ceil((length - dash) / (dash + gap))
    for number in range(count + 1):
        start = (length - dash) * number / count
        yield _between(begin, end, start / length), _between(begin, end, (start + dash) / length)


def _between(begin: Point, end: Point, share: float) -> Point:
    return begin[0] + (end[0] - begin[0]) * share, begin[1] + (end[1] - begin[1]) * share


def _around(corners: Quad) -> Box:
    xs, ys = zip(*corners, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _places(around: Box, wide: float, high: float, away: float) -> Iterator[Box]:
    """Beside an outline, right and left, then above and below it; the nearest first."""
    left, top, right, bottom = around
    middle = (top + bottom - high) / 2
    for y in (middle, middle - high / 2, middle + high / 2, top - high, bottom):
        for x in (right + away, left - away - wide):
            yield x, y, x + wide, y + high
    for y in (top - away - high, bottom + away):
        for x in (left, right - wide):
            yield x, y, x + wide, y + high


def _shared(one: Box, other: Box) -> float:
    """The area that two boxes have in common."""
    wide, high = (min(one[end], other[end]) - max(one[end - 2], other[end - 2]) for end in (2, 3))
    return max(0.0, wide) * max(0.0, high)
