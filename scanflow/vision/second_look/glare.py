"""Bars under a reflex: the light that it adds taken away, and where it hides all they are left open."""

from __future__ import annotations

from collections.abc import Iterator

import cv2
import numpy as np
from numpy.typing import NDArray

Grey = NDArray[np.uint8]
Mask = NDArray[np.bool_]

_BLINDED = 248  # grey level from which on nothing is seen
_CELL = 4  # px: a reflex that fills less than half of it hides no bar
_MOST = 5000  # pixels of a reflex; more is paper in too much light, or a window
_WIDEST = 11  # px: more than the widest bar in a picture where labels are located
_ABOUT = 150  # px: about the longest label there
_SHARE = 8  # px: what is measured coarsely


def reflexes(grey: Grey) -> Iterator[tuple[int, int, Grey, Mask]]:
    """Left and top of each part of a picture that lies about reflexes, its pixels with their light taken away, and
    where the sensor was blinded.

    Paper is white there and bars keep their contrast; where nothing is seen, the level is halfway.
    """
    cells = (grey.shape[1] // _CELL, grey.shape[0] // _CELL)
    blind = cv2.threshold(grey[: cells[1] * _CELL, : cells[0] * _CELL], _BLINDED - 1, 255, cv2.THRESH_BINARY)[1]
    blind = cv2.resize(blind, cells, interpolation=cv2.INTER_AREA)
    boxes = cv2.connectedComponentsWithStats((blind > 127).astype(np.uint8))[2][1:]
    reflex = boxes[boxes[:, 4] <= _MOST // _CELL**2]
    near = np.zeros((grey.shape[0] // _SHARE + 1, grey.shape[1] // _SHARE + 1), np.uint8)
    about = _ABOUT // _SHARE
    for x, y, width, height in reflex[:, :4] * _CELL // _SHARE:
        near[max(y - about, 0) : y + height + about, max(x - about, 0) : x + width + about] = 1
    for left, top, width, height, _ in cv2.connectedComponentsWithStats(near)[2][1:] * _SHARE:
        yield left, top, *_cleared(grey[top : top + height, left : left + width])


def _cleared(grey: Grey) -> tuple[Grey, Mask]:
    dark = cv2.morphologyEx(grey, cv2.MORPH_BLACKHAT, np.ones((_WIDEST, _WIDEST), np.uint8))
    small = cv2.resize(dark, (grey.shape[1] // _SHARE + 1, grey.shape[0] // _SHARE + 1), interpolation=cv2.INTER_AREA)
    half = cv2.resize(cv2.dilate(small, np.ones((5, 5), np.uint8)), grey.shape[::-1], interpolation=cv2.INTER_LINEAR)
    blind = cv2.dilate((grey >= _BLINDED).astype(np.uint8), np.ones((5, 5), np.uint8)) > 0
    return np.asarray(255 - np.where(blind, half, dark), np.uint8), blind
