"""Readings drawn over their picture: told apart by line and word, legible on any ground, in scale."""

from itertools import groupby

import numpy as np
import pytest
from pictures import TRUTH, as_file, card
from PIL import Image, ImageColor

from scanflow.vision import Certainty, PictureReadings, Reading, Symbology, read
from scanflow.vision.drawn import LINES, draw, words
from scanflow.vision.upright import to_look_at

CORNERS = ((100.0, 100.0), (500.0, 100.0), (500.0, 200.0), (100.0, 200.0))
READINGS = {
    Certainty.DECODED: Reading("D0145", Symbology.CODE128, "zbar", CORNERS),
    Certainty.MATCHED: Reading("D0145", Symbology.CODE128, "match", CORNERS, Certainty.MATCHED),
    Certainty.UNREAD: Reading(None, Symbology.CODE128, "locate", CORNERS, Certainty.UNREAD),
}


def runs(colours: list[tuple[int, ...]], colour: str) -> int:
    """How often this colour begins along a row of pixels."""
    wanted = ImageColor.getrgb(colour)
    return [found for found, _ in groupby(each == wanted for each in colours)].count(True)


@pytest.mark.parametrize("ground", ["#000000", "#ffffff", "#7f7f7f"])
def test_certainties_differ_without_colour(ground: str) -> None:
    """What was decoded has one unbroken line, what was matched dashes, what is unread many more dots."""
    counts = {}
    for certainty, reading in READINGS.items():
        drawn = draw(Image.new("RGB", (800, 400), ground), PictureReadings(800, 400, 1.0, (reading,)))
        upper = [drawn.getpixel((x, 100)) for x in range(104, 497)]
        counts[certainty] = runs(upper, LINES[certainty].colour)  # type: ignore[arg-type]

    assert 1 == counts[Certainty.DECODED]
    assert 3 * counts[Certainty.MATCHED] > counts[Certainty.UNREAD] > 2 * counts[Certainty.MATCHED] > 10


def test_words_say_how_it_is_known() -> None:
    """A decoded text stands alone; a matched one is called so; what is unread has no text."""
    assert ["D0145", "D0145 matched", "unread"] == [words(READINGS[each]) for each in Certainty]


def test_outline_lies_on_the_bars_at_any_scale() -> None:
    """Drawn into the picture at half its size, the outline runs where the bars end."""
    picture = read(as_file(card()))
    small = to_look_at(as_file(card()), picture.width // 2)
    drawn = np.asarray(draw(small, picture)).astype(int)
    line = np.argwhere((drawn == ImageColor.getrgb(LINES[Certainty.DECODED].colour)).all(axis=2))[:, ::-1]
    corners = np.array(TRUTH) / 2
    points = np.concatenate([corners, (corners + np.roll(corners, 1, axis=0)) / 2])

    assert (240, 150) == small.size
    assert [] == [point for point in points if np.abs(line - point).max(axis=1).min() > 2]


def test_labels_do_not_cover_each_other() -> None:
    """Of two codes one below the other, neither's word lies over the other's word or bars."""
    below = tuple((x, y + 110) for x, y in CORNERS)
    readings = (READINGS[Certainty.DECODED], Reading("D0153", Symbology.CODE128, "zbar", below))  # type: ignore[arg-type]
    ground = Image.new("RGB", (800, 400), "#7f7f7f")
    both = draw(ground, PictureReadings(800, 400, 1.0, readings))
    alone = [draw(ground, PictureReadings(800, 400, 1.0, (one,))) for one in readings]
    ink = [(np.asarray(each) == 0).all(axis=2) for each in (both, *alone)]

    assert ink[1].any() and ink[2].any()
    assert ink[1].sum() + ink[2].sum() == ink[0].sum()


def inked(image: Image.Image) -> np.ndarray:
    """The rows that hold the black of letters."""
    return np.flatnonzero((np.asarray(image) == 0).all(axis=2).any(axis=1))


def test_few_words() -> None:
    """Of thirty cards that are right none has a word; one that is not has, as high on a phone as its text is read."""
    right = [
        Reading(f"D{number:03}", Symbology.CODE128, "zbar", tuple((x / 4, y / 4 + 40 * number) for x, y in CORNERS))  # type: ignore[arg-type]
        for number in range(30)
    ]
    ground = Image.new("RGB", (1200, 1600), "#7f7f7f")
    picture = PictureReadings(1200, 1600, 1.0, tuple(right))
    assert 0 == len(inked(draw(ground, picture, few=True)))
    rows = inked(draw(ground, picture, {"D007"}, few=True))
    assert 14 * 1200 / 320 * 0.6 < rows[-1] - rows[0] < 14 * 1200 / 320 * 1.2
    unread = PictureReadings(1200, 1600, 1.0, (READINGS[Certainty.MATCHED],))
    assert 0 < len(inked(draw(ground, unread, few=True)))


def test_the_picture_itself_stays() -> None:
    """Drawing makes a copy; a picture without readings comes back as it was."""
    ground = Image.new("RGB", (800, 400), "#7f7f7f")
    draw(ground, PictureReadings(800, 400, 1.0, tuple(READINGS.values())))

    assert [(320_000, (127, 127, 127))] == ground.getcolors()
    assert ground.tobytes() == draw(ground, PictureReadings(800, 400, 1.0, ())).tobytes()
