"""Photos of a count with their outlines, whole and near one card."""

from __future__ import annotations

from datetime import UTC, datetime
from io import BytesIO

import numpy as np
import pytest
import zxingcpp
from calls import photo
from PIL import Image, ImageChops
from shown_counts import corners

from labels.slot_code import card_text
from scanflow.domain.counts.stocktake import Certainty, How, Look, Read
from scanflow.web.count_pictures import drawn, near

AT = datetime(2026, 3, 1, tzinfo=UTC)
CODES = ("D001", "D002", "D003", "D004")


@pytest.fixture(scope="module")
def image() -> Image.Image:
    return Image.open(BytesIO(photo(*CODES))).convert("RGB")


def look(image: Image.Image) -> Look:
    reads = [Read(card_text(code), code, Certainty.DECODED, corners(row)) for row, code in enumerate(CODES)]
    return Look("k", "b", "c", "A-1-1", AT, How.PHOTO, tuple(reads), size=image.size)


def changed(before: Image.Image, after: Image.Image) -> tuple[int, int, int, int] | None:
    return ImageChops.difference(before, after).getbbox()


def test_every_card_is_outlined(image: Image.Image) -> None:
    """From the first to the last, at another scale too; the photo itself stays as it is."""
    before = image.copy()
    half = image.resize((image.width // 2, image.height // 2))
    for shown, scale in ((image, 1), (half, 2)):
        box = changed(shown, drawn(shown, look(image)))
        assert box is not None
        assert box[1] <= 40 // scale and box[3] >= 740 // scale
    assert None is changed(before, image)


@pytest.mark.parametrize("code", ["D001", "D003"])
def test_near_one_card(image: Image.Image, code: str) -> None:
    """The part around it shows all of its bars, with that outline alone."""
    part = near(image, look(image), code)
    assert part.height < image.height
    assert card_text(code) in [each.text for each in zxingcpp.read_barcodes(part)]
    outlines = [blue(each) for each in (part, drawn(image, look(image)))]
    assert 0 < outlines[0] < outlines[1] / 3


def blue(image: Image.Image) -> int:
    """Pixels in the colour of what was decoded."""
    return int(np.all(np.asarray(image) == (0x00, 0x72, 0xB2), axis=2).sum())


def test_a_card_that_is_not_there(image: Image.Image) -> None:
    """The whole photo, without an outline."""
    part = near(image, look(image), "D009")
    assert (image.size, None) == (part.size, changed(image, part))
