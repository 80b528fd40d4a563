"""Still images to readings, in this process; ``workers`` does the same where a decoder's crash costs nothing."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from time import perf_counter

import numpy as np
from numpy.typing import NDArray

from scanflow.vision import decoders
from scanflow.vision.book import Book
from scanflow.vision.merge import merge
from scanflow.vision.readings import Picture
from scanflow.vision.upright import upright


def read(image: bytes | Path | NDArray[np.generic], book: Book | Iterable[str] | None = None) -> Picture:
    """Read every Code 128, Code 39 and ITF symbol that the decoders read whole and agree about.

    ``image`` is a file's bytes or path, or pixels (height, width[, 3 RGB or 4 RGBA]). ``book`` holds every card text
    that exists, for labels that don't decode; make a Book once for several images. Raises ImageError for a file that
    gives no pixels, ValueError for a text that Code 128 can't carry. A missing libzbar is logged once, and zxing-cpp
    reads alone.
    """
    decoders.say_if_alone(decoders.engines())
    return picture(image, book)


def picture(image: bytes | Path | NDArray[np.generic], book: Book | Iterable[str] | None = None) -> Picture:
    """``read`` without a word about missing decoders."""
    begun = perf_counter()
    grey = upright(image)
    readings = merge(decoders.zxing(grey) + decoders.zbar(grey))
    height, width = grey.shape
    return Picture(width, height, round((perf_counter() - begun) * 1000, 1), readings)
