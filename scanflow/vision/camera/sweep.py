"""A film of a walk along shelves: the few frames that are worth reading, sharp ones with something new in them.

The view's movement is told by phase correlation (Kuglin and Hines, 1975). A stretch ends when it has gone a third of
its width or height; of each stretch the sharpest frame is taken. So two that follow each other share a third of what
they show or more, and whatever passes through the view is in one of them. `static/js/counts/sweep.js` says the same
with the same figures, of a phone's live camera.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import cv2
import numpy as np
from numpy.typing import NDArray

from scanflow.vision.camera.live import CameraFrame

Grey = NDArray[np.uint8]

FINE = 640
"""Pixels across of the copy that is looked at; sharpness is told by it."""
_BLOCK = 5  # px of it, each way, are one of the copy that movement is told by
_GONE = 0.3  # of the view's width or height
_FAR = 4  # px of the small copy: from there on the view is held against a newer one
_SURE = 0.08  # of the correlation's peak; below, the view is another


class Sweep:
    """Knows no camera: it is shown one copy after another, FINE pixels across and all as high."""

    def __init__(self) -> None:
        self._before: NDArray[np.complex128] | None = None
        self._gone = np.zeros(2)
        self._sharp = 0.0

    def see(self, fine: Grey) -> tuple[bool, bool]:
        """Whether a stretch has ended before this view, and whether this is the sharpest of its stretch so far."""
        size = np.array(fine.shape) // _BLOCK
        now = _spectrum(fine, *size)
        ended = self._before is not None and self._ends(now, size)
        if self._before is None or ended:
            self._before, self._gone, self._sharp = now, np.zeros(2), -1.0
        sharp = float(cv2.Laplacian(fine, cv2.CV_16S)[1:-1, 1:-1].var())
        best = sharp > self._sharp
        self._sharp = max(sharp, self._sharp)
        return ended, best

    def _ends(self, now: NDArray[np.complex128], size: NDArray[np.int64]) -> bool:
        assert self._before is not None
        moved, sure = _moved(self._before, now)
        gone = self._gone + moved / size
        if np.abs(moved).max() >= _FAR:
            self._before, self._gone = now, gone
        return bool(sure < _SURE or np.abs(gone).max() > _GONE)


def worth_reading(frames: Iterable[CameraFrame]) -> Iterator[CameraFrame]:
    """The sharpest frame of each stretch, in their order; dark ones are left out."""
    sweep, best = Sweep(), None
    for frame in frames:
        if frame.dark:
            continue
        ended, sharpest = sweep.see(_fine(frame.jpeg))
        if ended and best:
            yield best
        if sharpest:
            best = frame
    if best:
        yield best


def _fine(jpeg: bytes) -> Grey:
    grey = cv2.imdecode(np.frombuffer(jpeg, np.uint8), cv2.IMREAD_GRAYSCALE)
    assert grey is not None  # the camera has written it
    high = max(_BLOCK, round(grey.shape[0] * FINE / grey.shape[1]))
    return np.asarray(cv2.resize(grey, (FINE, high), interpolation=cv2.INTER_AREA), np.uint8)


def _spectrum(fine: Grey, high: int, wide: int) -> NDArray[np.complex128]:
    """Of the small copy, which fades towards its edges; in a frame whose sides are powers of two."""
    blocks = fine[: high * _BLOCK, : wide * _BLOCK].reshape(high, _BLOCK, wide, _BLOCK)
    small = blocks.sum(axis=(1, 3), dtype=np.float64)
    small = (small - small.mean()) * np.hanning(high)[:, None] * np.hanning(wide)
    return np.fft.fft2(small, [1 << (side - 1).bit_length() for side in map(int, small.shape)])


def _moved(before: NDArray[np.complex128], now: NDArray[np.complex128]) -> tuple[NDArray[np.int64], float]:
    """How far the view has gone, down and across in pixels of the small copy, and how sure that is, from 0 to 1."""
    cross = before * now.conj()
    peaks = np.fft.ifft2(cross / np.maximum(np.abs(cross), 1e-9)).real
    top, sides = np.array(np.unravel_index(peaks.argmax(), peaks.shape)), np.array(peaks.shape)
    return (top + sides // 2) % sides - sides // 2, float(peaks.max())
