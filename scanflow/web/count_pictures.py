"""A photo of a count with what was read in it drawn over it, whole or near one card."""

from __future__ import annotations

from collections.abc import Collection

from PIL import Image

from scanflow.domain.counts.stocktake import Look, Read
from scanflow.vision.drawn import draw
from scanflow.vision.readings import PictureReadings, Reading, Symbology

_AROUND = 0.6
"""So many lengths of a card's bars are shown on each side of it."""
_LEAST = 420
"""Pixels of the photo that are shown at least, each way."""


def drawn(image: Image.Image, look: Look, unexpected: Collection[str] = ()) -> Image.Image:
    """A copy of the look's upright photo, at any scale, with an outline for each of its cards.

    Those of which a person should know are named: the unexpected, and what no decoder read. A card of the shop is
    named by its slot, its check digit stands nowhere but on it. `unexpected` are such names.
    """
    return draw(image, _picture(look, look.reads), unexpected, few=True)


def near(image: Image.Image, look: Look, subject: str) -> Image.Image:
    """The part of the photo around one card, which alone is outlined; `subject` is its slot code, or its text.

    The whole of it where the card is not in the photo.
    """
    shown = [read for read in look.reads if read.corners and (read.code or read.text) == subject]
    if not shown:
        return image
    scale = image.width / look.size[0]
    xs, ys = ([scale * each for read in shown for each in read.corners[axis::2]] for axis in (0, 1))
    length = max(max(xs) - min(xs), max(ys) - min(ys))
    wide, high = (max((_LEAST - (max(at) - min(at))) / 2, _AROUND * length) for at in (xs, ys))
    box = (
        int(max(0, min(xs) - wide)),
        int(max(0, min(ys) - high)),
        int(min(image.width, max(xs) + wide)),
        int(min(image.height, max(ys) + high)),
    )
    return draw(image, _picture(look, shown)).crop(box)


def _picture(look: Look, reads: Collection[Read]) -> PictureReadings:
    width, height = look.size
    return PictureReadings(width, height, 0.0, tuple(map(_reading, reads)))


def _reading(read: Read) -> Reading:
    a, b, c, d = ((read.corners[at], read.corners[at + 1]) for at in range(0, 8, 2))
    return Reading(read.code or read.text or None, Symbology.CODE128, "", (a, b, c, d), read.certainty)
