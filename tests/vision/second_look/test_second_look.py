"""Labels that no decoder reads: located, and matched with a book; pictures drawn apart from the reader."""

from __future__ import annotations

import random

import numpy as np
import pytest
import zxingcpp
from flat_scene import Flat, flat
from scenes import Scene, book_of, strangers_to

from scanflow.vision import Book, Certainty, PictureReadings, decoders, read

TEXTS = book_of(500)
BOOK = Book(TEXTS)


@pytest.fixture(scope="module")
def small_bars() -> Scene:
    """Twelve cards of 0.8 pixels per module at any angle, amid clutter and foreign codes."""
    return flat(3, Flat(px=0.8, labels=12, foreign=4, size=(1200, 900)), TEXTS)


@pytest.fixture(scope="module")
def picture(small_bars: Scene) -> PictureReadings:
    return read(small_bars.jpeg, BOOK)


def texts(picture: PictureReadings) -> list[str]:
    return sorted(one.text for one in picture.readings if one.text)


def test_bars_below_one_pixel_are_matched(small_bars: Scene, picture: PictureReadings) -> None:
    """All are read, below the 1.05 pixels per module of Gallo and Manduchi (IEEE TPAMI 2011), and nothing else."""
    assert sorted(card.text for card in small_bars.of("card")) == texts(picture)
    assert {Certainty.MATCHED} == {one.certainty for one in picture.readings if one.text}


def test_where_a_match_lies(small_bars: Scene, picture: PictureReadings) -> None:
    """Each corner of a reading is that of the drawn bars, within 3 pixels."""
    true = {card.text: np.array(card.corners) for card in small_bars.of("card")}
    seen = {one.text: np.array(one.corners) for one in picture.readings if one.text}
    assert 3 > max(np.linalg.norm(seen[text] - corners, axis=1).max() for text, corners in true.items())


def test_the_order_of_the_book_changes_nothing(small_bars: Scene, picture: PictureReadings) -> None:
    """A book's texts in another order are the same book."""
    shuffled = random.Random(1).sample(TEXTS, len(TEXTS))
    assert texts(picture) == texts(read(small_bars.jpeg, shuffled))


def test_turning_the_picture_changes_no_text(small_bars: Scene, picture: PictureReadings) -> None:
    """A picture on its side says the same."""
    assert texts(picture) == texts(read(np.rot90(small_bars.pixels), BOOK))


def test_cards_that_are_not_in_the_book_stay_unread() -> None:
    """Cards of the same grammar that the book lacks are reported without a text."""
    scene = flat(4, Flat(px=0.8, labels=12, foreign=4, size=(1200, 900)), TEXTS, strangers_to(500), 1.0)
    readings = read(scene.jpeg, BOOK).readings
    assert {None} == {one.text for one in readings}
    assert len(scene.of("stranger")) <= len(readings)


def test_without_a_book_a_label_is_unread(small_bars: Scene) -> None:
    """Where bars can't be decoded and there is no book, a person is told where to look."""
    unread = [one for one in read(small_bars.jpeg).readings if one.certainty is Certainty.UNREAD]
    assert {(None, "locate")} == {(one.text, one.engine) for one in unread}
    assert len(small_bars.of("card")) <= len(unread)


def test_what_one_engine_misreads_is_not_believed() -> None:
    """A small and blurred H8166 that zxing-cpp alone takes for H8131, both checks right, stays unread."""
    crowded = Flat(px=1.5, labels=300, tilt=15.0, blur=0.6, warp=0.006)
    scene = flat(3, crowded, book_of(20_000), strangers_to(20_000), 1.0)
    part = np.ascontiguousarray(scene.pixels[2850:3024, 1230:1530])

    assert "H8131" in {one.text for one in decoders.zxing(part)}
    assert "H8131" not in {one.text for one in read(part).readings}


def test_bars_beyond_ascii_keep_no_picture_from_being_read() -> None:
    """A foreign label that says more than ASCII, by FNC4, is read like any other."""
    drawn = np.asarray(zxingcpp.create_barcode("Prüfling 7", zxingcpp.BarcodeFormat.Code128).to_image(scale=2))
    assert "Prüfling 7" in texts(read(drawn, BOOK))
