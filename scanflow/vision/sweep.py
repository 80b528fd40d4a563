"""A film of a walk along shelves: the few frames that are worth reading, sharp ones with something new in them.

The view's movement from frame to frame is told by phase correlation (Kuglin and Hines, 1975). A stretch ends when it
has gone a third of its width or height; of each stretch the sharpest frame is taken. So two that follow each other
share a third of what they show or more, and whatever passes through the view is in one of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import cv2
import numpy as np
from numpy.typing import NDArray

from scanflow.vision.camera import Frame

Grey = NDArray[np.uint8]

_WIDE = 160  # px of the copy that movement is told by
_FINE = 640  # px of the copy that sharpness is told by
_GONE = 0.3  # of the view's width or height
_SURE = 0.06  # of the correlation's peak; below, the view is another


def worth_reading(frames: Iterable[Frame]) -> Iterator[Frame]:
    """The sharpest frame of each stretch, in their order; dark ones are left out."""
    before: NDArray[np.float32] | None = None
    best: tuple[float, Frame] | None = None
    gone = np.zeros(2)
    for frame in frames:
        if frame.dark:
            continue
        fine = _fine(frame.jpeg)
        now = _small(fine)
        if before is not None:
            moved, sure = cv2.phaseCorrelate(before, now, _window(now.shape))
            gone += np.array(moved) / now.shape[::-1]
            if sure < _SURE or np.abs(gone).max() > _GONE:
                if best:
                    yield best[1]
                best, gone = None, np.zeros(2)
        before = now
        sharp = float(cv2.Laplacian(fine, cv2.CV_32F).var())
        if best is None or sharp > best[0]:
            best = sharp, frame
    if best:
        yield best[1]


def _fine(jpeg: bytes) -> Grey:
    grey = cv2.imdecode(np.frombuffer(jpeg, np.uint8), cv2.IMREAD_GRAYSCALE)
    high = max(1, round(grey.shape[0] * _FINE / grey.shape[1]))
    return np.asarray(cv2.resize(grey, (_FINE, high), interpolation=cv2.INTER_AREA), np.uint8)


def _small(fine: Grey) -> NDArray[np.float32]:
    """Without what is slow to change, such as light that falls off towards the corners."""
    high = max(1, round(fine.shape[0] * _WIDE / fine.shape[1]))
    small = cv2.resize(fine, (_WIDE, high), interpolation=cv2.INTER_AREA).astype(np.float32)
    return np.asarray(small - cv2.GaussianBlur(small, (0, 0), 8), np.float32)


def _window(shape: tuple[int, ...]) -> NDArray[np.float32]:
    return np.asarray(cv2.createHanningWindow((shape[1], shape[0]), cv2.CV_32F), np.float32)
