"""The renderers of the bench tell the truth about their pictures, and its drawings can be read."""

import re
from dataclasses import replace
from itertools import pairwise
from math import dist

import cv2
import numpy as np
import pytest
import zxingcpp
from eyes_curves import STEPS, Point, drawing
from filed_scene import Filed, filed, visible
from flat_scene import Flat, flat
from PIL import ImageFont
from room_scene import DAMAGED, TIDY, Card, photograph
from scenes import bars, book_of, foreign_code, strangers_to, universe

from labels import code128, slot_code

SMALL = Flat(px=4.0, labels=6, tilt=2, size=(1600, 1200), foreign=0, stripes=20, marks=100)
BIN = Filed(items=5, size=(2016, 1512), distance=420, aperture=1.0, glare=0.0, haze=0.0)
CORNERS = ("top_left", "top_right", "bottom_right", "bottom_left")


def _decoded(pixels):
    """Text and corners of what zxing-cpp, another library, reads."""
    return {
        one.text: [(getattr(one.position, name).x, getattr(one.position, name).y) for name in CORNERS]
        for one in zxingcpp.read_barcodes(pixels, formats=zxingcpp.BarcodeFormat.Code128)
    }


def test_a_flat_label_lies_where_the_truth_says() -> None:
    """Labels drawn large are decoded with their texts, their ends within 3 px of the true first and last bar."""
    scene = flat(3, SMALL, book_of(500))
    decoded = _decoded(scene.pixels)
    assert {one.text for one in scene.of("card")} == set(decoded)
    for one in scene.of("card"):
        assert max(_off(one.corners, decoded[one.text])) < 3


def _off(truth, seen):
    """How far each seen corner is from the true edge it must lie on: zxing-cpp gives the rows that it scanned."""
    ends = ((truth[0], truth[3]), (truth[1], truth[2]), (truth[1], truth[2]), (truth[0], truth[3]))
    for (top, foot), (x, y) in zip(ends, seen, strict=True):
        across = ((foot[0] - top[0]) * (y - top[1]) - (foot[1] - top[1]) * (x - top[0])) / dist(top, foot)
        yield abs(across)


@pytest.mark.parametrize("degrees", [0, 37, 90, 180, 233])
def test_corners_begin_where_reading_begins_at_any_angle(degrees: int) -> None:
    """The picture laid back by the true corners alone is decoded, upright, at every angle."""
    scene = flat(5, replace(SMALL, labels=2, tilt=(degrees, degrees)), book_of(500))
    for one in scene.of("card"):
        length, quiet = 4 * code128.modules(one.text), 40
        upright = np.array([(0, 0), (length, 0), (length, 104), (0, 104)], np.float32) + np.float32(quiet)
        matrix = cv2.getPerspectiveTransform(np.array(one.corners, np.float32), upright)
        laid = cv2.warpPerspective(scene.pixels, matrix, (length + 2 * quiet, 104 + quiet))
        read = zxingcpp.read_barcodes(laid[quiet : quiet + 100], try_rotate=False, try_invert=False)
        assert [(one.text, 0)] == [(each.text, each.orientation) for each in read]


def test_filed_cards_lie_where_the_truth_says() -> None:
    """What another decoder reads in a bin is in the truth, its ends within 3 px, and shows in a strip."""
    scene = filed(4, BIN, book_of(500))
    decoded, cards = _decoded(scene.pixels), {one.text: one for one in scene.of("card")}
    read = set(cards) & set(decoded)
    assert len(read) >= 3
    for text in read:
        assert max(_off(cards[text].corners, decoded[text])) < 3
        assert cards[text].visible > 0.05


def test_an_uncovered_card_is_wholly_visible() -> None:
    """One card alone in its bin shows all its bars; of several, one behind another shows less."""
    (alone,) = filed(1, replace(BIN, items=1), book_of(500)).of("card")
    assert 1.0 == alone.visible
    assert min(one.visible for one in filed(1, replace(BIN, items=12), book_of(500)).of("card")) < 0.9


def test_a_covered_strip_counts_from_edge_to_edge() -> None:
    """Half the rows covered leave half; a column covered all the way down leaves nothing."""
    owner = np.full((100, 200), 7, np.int16)
    corners = np.array([(20, 20), (179, 20), (179, 79), (20, 79)], np.float64)
    owner[50:] = 8
    assert pytest.approx(0.5, abs=0.02) == visible(owner, 7, corners)
    owner[:, 60] = 8
    assert 0.0 == visible(owner, 7, corners)


@pytest.mark.parametrize("draw, how", [(flat, SMALL), (filed, BIN)])
def test_a_seed_gives_one_picture(draw, how) -> None:
    """The same seed gives the same file and the same truth; another seed another picture."""
    one, again, other = (draw(seed, how, book_of(500)) for seed in (8, 8, 9))
    assert (one.jpeg, one.truths) == (again.jpeg, again.truths)
    assert one.jpeg != other.jpeg


def test_strangers_are_cards_that_the_book_lacks() -> None:
    """Every text has a right check digit, and book and strangers share none."""
    assert not set(book_of(20_000)) & set(strangers_to(20_000))
    assert 26_000 == len({slot_code.parse_card(text, {}) for text in universe()})


def test_bars_are_drawn_to_the_share_of_a_pixel() -> None:
    """Ink by the modules of the standard, whatever the scale: nothing is rounded to whole pixels."""
    widths = code128.widths("D0145")
    ink = sum(widths[::2])
    for scale in (0.37, 1.0, 2.9):
        line = bars(widths, 3.3, int(90 * scale) + 1, scale)
        assert pytest.approx(ink, rel=1e-4) == float(line.sum()) / scale


def test_foreign_codes_are_no_cards() -> None:
    """No code on goods has a card's form."""
    rng = np.random.default_rng(1)
    assert not any(slot_code.is_card_like(foreign_code(rng)[0], {}) for _ in range(300))


def test_strangers_take_their_share() -> None:
    """A share of 1 leaves no card of the book in the picture."""
    scene = flat(2, SMALL, book_of(500), strangers_to(500), share=1.0)
    assert [] == scene.of("card")
    assert {one.text for one in scene.of("stranger")} <= set(strangers_to(500))


def test_a_bin_of_a_room_is_seen_from_the_next_one_too() -> None:
    """Its label and cards stand there in both pictures, as another decoder reads them; a damaged card is not read."""
    texts = book_of(500)[:9]
    bins = {f"A-1-{place}": [Card(text) for text in texts[place * 3 : place * 3 + 2]] for place in (0, 1, 2)}
    bins["A-1-1"].append(Card(texts[8], DAMAGED))
    near = replace(TIDY, size=(3200, 2400), aperture=1.0, glare=0.0, haze=0.0, foreign=0.0, distance=600)
    seen = [photograph(7, bins, name, 0, near) for name in ("A-1-1", "A-1-2")]
    for scene in seen:
        decoded, there = _decoded(scene.pixels), {one.text: one for one in scene.truths}
        assert {slot_code.bin_text("A-1-1"), slot_code.bin_text("A-1-2")} <= there.keys()
        assert {text for text in decoded if text not in there} == set()
        assert DAMAGED not in {there[text].kind for text in decoded}
        assert [True] * len(decoded) == [visible_at(there[text], corners) for text, corners in decoded.items()]
        assert {"card", "bin"} == {there[text].kind for text in decoded}
    cards = {card.text for card in bins["A-1-1"]}
    assert [cards, cards] == [{one.text for one in scene.truths} & cards for scene in seen]


def visible_at(truth, corners) -> bool:
    """Whether the middle of what was read lies on the truth's bars."""
    middle = np.mean(corners, axis=0)
    return cv2.pointPolygonTest(np.array(truth.corners, np.float32), (float(middle[0]), float(middle[1])), False) >= 0


@pytest.mark.parametrize("name", STEPS)
def test_labels_below_a_curve_keep_clear_of_each_other(name: str) -> None:
    """The first point is named, every other one that has room, and between two labels a gap is left."""
    points = [Point(float(value), 40, 30, 20, 10, 0) for value in STEPS[name][3]]
    found = re.findall(r'<text x="([0-9.]+)" y="[0-9.]+" text-anchor="middle">([^<]+)<', drawing("", points, ""))
    wide = ImageFont.load_default(13).getlength
    spans = [(float(x) - wide(text) / 2, float(x) + wide(text) / 2) for x, text in found]
    assert f"{points[0].at:g}" == found[0][1]
    assert len(points) / 2 <= len(found)
    assert [] == [(one, other) for one, other in pairwise(spans) if other[0] - one[1] < 4]
