"""Which bin of a shelf a card hangs in, by the labels in the picture: a camera of known place looks at known bins."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.domain.counts import shelf_view

SIZE = (4032, 3024)
FOCAL = 3028.0  # pixels: a phone's 26 mm equivalent lens, by the diagonal of 43.27 mm
BIN, CARD, LABEL = 258.0, 57.0, 70.0  # mm from bin to bin; bars of a card and of a label


def seen(middle, length, pitch, yaw, distance=700.0):
    """Corners in pixels of bars whose middle is at (x, y, z) mm, by a pinhole camera that looks down at a bin."""
    pitch, yaw = np.radians([pitch, yaw])
    ahead = np.array([np.sin(yaw) * np.cos(pitch), -np.sin(pitch), np.cos(yaw) * np.cos(pitch)])
    right = np.array([np.cos(yaw), 0.0, -np.sin(yaw)])
    axes = np.stack([right, np.cross(ahead, right), ahead])
    place = np.array([0.0, 170.0, 225.0]) - distance * ahead
    corners = np.array(middle) + np.array([(-1, 9, 0), (1, 9, 0), (1, -9, 0), (-1, -9, 0)]) * (length / 2, 1, 1)
    points = (corners - place) @ axes.T
    pixels = np.array(SIZE) / 2 + FOCAL * points[:, :2] / points[:, 2:]
    return tuple(pixels.ravel().tolist())


def labels(*places, **camera):
    """Of these places of shelf A-2, the one in the middle of the picture being 5."""
    return {f"A-2-{place}": seen(((place - 5) * BIN, 80.0, 0.0), LABEL, **camera) for place in places}


CAMERA = st.fixed_dictionaries({"pitch": st.floats(36, 48), "yaw": st.floats(-6, 6)})
CARDS = st.lists(st.tuples(st.sampled_from([4, 5, 6]), st.floats(-80, 80), st.floats(30, 420)), min_size=3, max_size=30)


def bins(cards, named, **camera):
    return shelf_view.bins(
        [(seen(((place - 5) * BIN + x, 190.0, z), CARD, **camera), True) for place, x, z in cards], named, SIZE
    )


@given(CARDS, CAMERA, st.sampled_from([(4, 5), (5, 6), (4, 6), (4, 5, 6)]))
def test_a_card_is_never_surely_in_another_bin(cards, camera, near):
    """However the camera is held, and whichever labels are read; the bin that it hangs in is among those it may."""
    told = bins(cards, labels(*near, **camera), **camera)
    assert [True] * len(cards) == [f"A-2-{place}" in names for (place, _, _), names in zip(cards, told, strict=True)]


@given(st.floats(-60, 60), st.floats(-3, 3))
def test_a_card_in_the_middle_of_its_bin_is_surely_there(x, yaw):
    """In the bin that the picture is taken of."""
    camera = {"pitch": 42.0, "yaw": yaw}
    cards = [(5, x, depth) for depth in (60.0, 200.0, 340.0)]
    assert [["A-2-5"]] * 3 == bins(cards, labels(4, 5, 6, **camera), **camera)


@pytest.mark.parametrize(
    "named",
    [
        {},
        labels(5, pitch=42.0, yaw=0.0),
        {"A-2-4": (), "A-2-5": ()},
        {"A-2-4": (0.0,) * 8, "A-2-5": (9.0, 0.0) * 4},
        {"A-2-4": (0.0,) * 8, "A-2-5": (900.0, 990.0) * 4},
        {**labels(5, pitch=42.0, yaw=0.0), "B-2-4": (9.0,) * 8},
    ],
    ids=["none", "one", "without places", "too near", "one above the other", "of two shelves"],
)
def test_without_two_labels_of_a_shelf_nothing_is_told(named):
    """Nor where they stand nearer to each other than a card is wide, or one above the other."""
    assert [[], []] == bins([(5, 0.0, 200.0), (4, 0.0, 200.0)], named, pitch=42.0, yaw=0.0)


def test_the_middle_of_the_picture_is_looked_at():
    """Though its own label is not among those that were read."""
    shelf, row = shelf_view.row(labels(4, 6, pitch=42.0, yaw=2.0), SIZE)
    assert ("A-2", 5) == (shelf, row.looked_at)


@pytest.mark.parametrize(
    ("one", "other", "expected"),
    [
        ("A-2-3", "A-2-4", True),
        ("A-2-3", "A-2-1", True),
        ("A-2-3", "A-3-3", False),
        ("A-2-3", "A-2-6", False),
        ("A-2-3", "A-2-3", False),
        ("A-2-3", "B-2-4", False),
        ("A-2-3", "tray", False),
        ("tray", "tray", False),
    ],
)
def test_which_bins_one_photo_may_show(one, other, expected):
    """Those one or two off on the same shelf: into those above and below it does not see."""
    assert (expected, expected) == (shelf_view.near(one, other), shelf_view.near(other, one))
