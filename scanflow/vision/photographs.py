"""What a photograph becomes: the picture of a thing, or what a count was shown. Always before the transaction."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from contextlib import AbstractContextManager
from typing import Any

from scanflow.domain.counts.stocktake import How
from scanflow.domain.things import Photo
from scanflow.vision.readings import ImageError, Reading
from scanflow.vision.second_look.book import Book
from scanflow.vision.workers import Readers
from scanflow.workflow.counts.looks import IncomingLook, LabelReading
from scanflow.workflow.ports import Invalid, Unit

Looking = Callable[[], AbstractContextManager[Unit]]


def photo(readers: Readers, data: bytes, pointer: str = "") -> Photo:
    """A picture of a thing made ready to be kept. `Invalid` where it is none."""
    try:
        picture, thumb = readers.kept(data)
    except ImageError as error:
        raise Invalid(pointer, "bad_image", str(error)) from error
    return Photo(hashlib.sha256(picture).hexdigest(), picture, thumb)


def book(unit: Unit) -> Book:
    """The texts of all cards that exist, for labels in pictures that don't decode."""
    return Book(unit.card_texts())


def shown(looking: Looking, readers: Readers, image: bytes, *, how: How = How.PHOTO, **more: Any) -> IncomingLook:
    """What a photograph shows a count; `looking` opens a view of the room, `more` as of `IncomingLook`.

    Raises ImageError.

    Labels that don't decode are matched against all codes that exist, never against what should be there.
    """
    with looking() as unit:
        known = book(unit)
    picture = readers.read(image, known)
    size = (picture.width, picture.height)
    texts = tuple(map(_text, picture.readings))
    return IncomingLook(texts=texts, how=how, image=True, size=size, photo=photo(readers, image, "/image"), **more)


def _text(one: Reading) -> LabelReading:
    corners = tuple(round(each, 1) for corner in one.corners for each in corner)
    return LabelReading(one.text, one.certainty, corners, one.engines)
