"""From a film of shelves, the frames that show all there is, and show it sharply."""

from __future__ import annotations

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray

from scanflow.vision.camera.live import CameraFrame
from scanflow.vision.camera.sweep import worth_reading

WIDE, HIGH = 640, 360
STEP = 16  # px that the view goes on from frame to frame


@pytest.fixture(scope="module")
def shelf() -> NDArray[np.uint8]:
    """A long picture with detail of all sizes, as goods have; made, not photographed."""
    random = np.random.default_rng(11)
    levels = [cv2.resize(random.normal(128, 60, (HIGH // s, 4 * WIDE // s)), (4 * WIDE, HIGH)) for s in (2, 8, 24)]
    return np.clip(np.mean(levels, axis=0), 0, 255).astype(np.uint8)


def frame(view: NDArray[np.uint8], number: int, blur: float = 0.0, dark: bool = False) -> CameraFrame:
    seen = cv2.GaussianBlur(view, (0, 0), blur) if blur else view
    return CameraFrame(cv2.imencode(".jpg", seen)[1].tobytes(), float(number), dark)


def walked(shelf: NDArray[np.uint8], blurred: set[int] = frozenset()) -> list[CameraFrame]:
    """A walk from one end to the other; frames of these numbers are smeared."""
    places = range(0, shelf.shape[1] - WIDE + 1, STEP)
    return [frame(shelf[:, x : x + WIDE], n, 6.0 * (n in blurred)) for n, x in enumerate(places)]


def test_all_that_passes_is_in_a_frame_that_is_chosen(shelf: NDArray[np.uint8]) -> None:
    """The views of chosen frames overlap from end to end, and there are few of them."""
    frames = walked(shelf)
    begins = [STEP * int(one.at) for one in worth_reading(frames)]

    assert [] == [after for before, after in zip([0, *begins], begins, strict=False) if after - before >= WIDE]
    assert shelf.shape[1] - WIDE - begins[-1] < WIDE
    assert len(begins) < len(frames) / 5


def test_smeared_frames_are_passed_over(shelf: NDArray[np.uint8]) -> None:
    """With two of three frames smeared by the hand, all that are chosen are sharp."""
    blurred = {n for n in range(200) if n % 3}

    assert set() == {int(one.at) for one in worth_reading(walked(shelf, blurred))} & blurred


def test_a_view_that_stands_still_is_taken_once(shelf: NDArray[np.uint8]) -> None:
    """However long it is filmed."""
    assert 1 == len(list(worth_reading(frame(shelf[:, :WIDE], n) for n in range(60))))


def test_another_view_is_taken_too(shelf: NDArray[np.uint8]) -> None:
    """A film that is cut has a frame of each part, and dark ones count for nothing."""
    views = [shelf[:, :WIDE], shelf[:, 2 * WIDE : 3 * WIDE]]
    frames = [frame(views[n > 9], n, dark=n in (5, 15)) for n in range(20)]
    chosen = [one.at for one in worth_reading(frames)]

    assert [True, False] == [at < 10 for at in chosen]


def test_without_light_there_is_nothing_to_read(shelf: NDArray[np.uint8]) -> None:
    """A film of a dark room gives no frame."""
    assert [] == list(worth_reading([frame(shelf[:, :WIDE], n, dark=True) for n in range(5)]))
