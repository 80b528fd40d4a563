"""Still images to readings, in this process; ``workers`` does the same where a decoder's crash costs nothing.

First both decoders look at the whole picture, along its rows and columns, zbar along every other one, which takes half
as long. What they leave is located, at any angle and size, straightened, and shown to them again. What they can't read
is compared with a book of all codes.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from pathlib import Path
from time import perf_counter

import numpy as np
from numpy.typing import NDArray
from threadpoolctl import ThreadpoolController

from scanflow.vision import decoders
from scanflow.vision.merge import merge
from scanflow.vision.readings import PictureReadings, Reading
from scanflow.vision.second_look.book import Book
from scanflow.vision.second_look.read import second_look
from scanflow.vision.upright import upright


def read(image: bytes | Path | NDArray[np.generic], book: Book | Iterable[str] | None = None) -> PictureReadings:
    """Read every Code 128, Code 39 and ITF symbol that the decoders read whole and agree about.

    ``image`` is a file's bytes or path, or pixels (height, width[, 3 RGB or 4 RGBA]). ``book`` holds every card text
    that exists: a label that doesn't decode is ``matched`` with it; make a Book once for several images. What looks
    like a card and can't be read is there too, ``unread``. Raises ImageError for a file that gives no pixels,
    ValueError for a text that Code 128 can't carry. A missing libzbar is logged once, and zxing-cpp reads alone.
    """
    decoders.say_if_alone(decoders.engines())
    return picture(image, book)


def glance(image: bytes | Path | NDArray[np.generic]) -> PictureReadings:
    """What zxing-cpp reads along rows and columns, and nothing of the rest: fast, for the frames of a camera.

    zbar took 9 to 20 times as long on filmed frames, and of 160 read none that zxing-cpp had not read.
    """
    begun = perf_counter()
    grey = upright(image)
    return _told(grey, merge(decoders.zxing(grey)), begun)


def picture(image: bytes | Path | NDArray[np.generic], book: Book | Iterable[str] | None = None) -> PictureReadings:
    """``read`` without a word about missing decoders."""
    begun = perf_counter()
    grey = upright(image)
    found = decoders.zxing(grey) + decoders.zbar(grey, 2, 2)
    with _threads().limit(limits=1, user_api="blas"):  # numpy's matrices are small here: threads would only wait
        seen = second_look(grey, found, book if book is None or isinstance(book, Book) else Book(book))
    return _told(grey, merge(seen.found, seen.matched, seen.unread), begun)


def _told(grey: NDArray[np.uint8], readings: tuple[Reading, ...], begun: float) -> PictureReadings:
    height, width = grey.shape
    return PictureReadings(width, height, round((perf_counter() - begun) * 1000, 1), readings)


@cache
def _threads() -> ThreadpoolController:
    return ThreadpoolController()
