"""Scan reflectance profiles of a symbol in a picture, after ISO/IEC 15416: ten, each through an aperture.

Levels are taken as sRGB and made linear, as reflectance is. A picture knows no absolute reflectance: white is the
paper around the symbol.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor

import cv2
import numpy as np
from numpy.typing import NDArray

from labels.colour import linear_level
from scanflow.vision.readings import Quad

SCANS = 10
PER_MODULE = 16  # samples
APERTURE = 0.5  # modules; the standard's 0.25 mm and 0.5 mm are 0.4 to 0.8 of those they are meant for (from memory)
QUIET = 10 - APERTURE / 2  # modules beside the bars that the aperture's middle sees

_ACROSS = 8  # samples of the aperture along the bars
_REACH = 3.0  # modules by which a decoder's corners may be wrong
_WHITE_SHARE = 90  # percentile of the surroundings that is paper, but for a reflex

Floats = NDArray[np.float64]

_DOWN: Floats = 0.5 + 0.8 * ((np.arange(SCANS) + 0.5) / SCANS - 0.5)  # the rows, over the inner 80 % of the bars


@dataclass(frozen=True, eq=False, slots=True)
class SymbolProfiles:
    """`profiles` is (10, samples) of reflectances, white paper 1, top down, from quiet zone to quiet zone.

    `clipping` is the reflectance at which the sensor saturates; `is_whole` is false where a quiet zone leaves the
    picture.
    """

    profiles: Floats
    modules: int
    pixels_per_module: float
    clipping: float
    is_whole: bool


def sweep(grey: NDArray[np.uint8], corners: Quad, modules: int) -> SymbolProfiles | None:
    """Profiles of the symbol of so many modules at `corners` of the picture, in its direction of reading.

    None where there are no bars at that place.
    """
    place = _Place(grey, corners, modules)
    for _ in range(2):  # on a slant a row may take a neighbouring edge for the end; squared up, it no longer does
        if (ends := place.ends()) is None:
            return None
        place.square_up(*ends)
    if (ends := place.ends()) is None:
        return None
    begin, end = ends
    quiet = QUIET * (end - begin) / modules
    profiles, is_whole = place.sample(begin - quiet, end + quiet)
    pixels = float(np.median(end - begin)) * place.pixels_per_module / modules
    return SymbolProfiles(profiles / place.white, modules, pixels, float(1 / place.white), is_whole)


class _Place:
    """The surroundings of a symbol as linear light, and where its modules lie in them."""

    def __init__(self, grey: NDArray[np.uint8], corners: Quad, modules: int) -> None:
        quad = np.array(corners, dtype=np.float64)
        half = np.linalg.norm(quad[1] - quad[0]) / 2
        left, top = (max(0, floor(low - half)) for low in quad.min(axis=0))
        right, bottom = (ceil(high + half) for high in quad.max(axis=0))
        self._light = _LINEAR[grey[top:bottom, left:right]]
        self._quad = quad - (left, top)
        self._modules = modules
        self.pixels_per_module = 2 * float(half) / modules
        self.white = max(float(np.percentile(self._light, _WHITE_SHARE)), 1e-3)

    def sample(self, first: Floats, last: Floats) -> tuple[Floats, bool]:
        """(10, samples) of light, a row each from module `first` to `last`, and whether all of it is in the picture.

        The same count of samples to a row, 16 to a module on the average.
        """
        count = round(float(np.mean(last - first)) * PER_MODULE) + 1
        margin = round(APERTURE * PER_MODULE)
        steps = np.arange(-margin, count + margin) / (count - 1)
        along = first[:, None] + steps * (last - first)[:, None]
        points = self._points(along, np.linspace(-0.5, 0.5, _ACROSS) * APERTURE)
        light = cv2.remap(
            self._light, points[..., 0], points[..., 1], cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE
        )
        rows = light.reshape(SCANS, _ACROSS, -1).mean(axis=1, dtype=np.float64)
        kernel = np.ones(margin) / margin
        seen = np.array([np.convolve(row, kernel, "same")[margin:-margin] for row in rows])
        height, width = self._light.shape
        return seen, bool((points >= -1).all() and (points <= (width, height)).all())

    def ends(self) -> tuple[Floats, Floats] | None:
        """Where each row's first bar begins and its last ends, in modules; rows that don't show it take the median."""
        start = -10.0 - _REACH
        rough, _ = self.sample(np.full(SCANS, start), np.full(SCANS, self._modules - start))
        first = _edges(rough, start, 0.0, falling=True)
        last = _edges(rough, start, float(self._modules), falling=False)
        if np.isnan(first).all() or np.isnan(last).all():
            return None
        return np.where(np.isnan(first), np.nanmedian(first), first), np.where(np.isnan(last), np.nanmedian(last), last)

    def square_up(self, begin: Floats, end: Floats) -> None:
        """Lay the corners where the bars really end, and rows at right angles to them.

        Of a tilted symbol decoders report a slanted part, and along its slant a row would leave the quiet zone.
        """
        first, last = (self._points(at[:, None], np.zeros(1))[:, 0].astype(np.float64) for at in (begin, end))
        along_first, along_last = _direction(first), _direction(last)
        bar = along_first + along_last
        bar /= np.linalg.norm(bar)
        heights = self._quad @ bar
        top, bottom = max(heights[0], heights[1]), min(heights[2], heights[3])
        if bottom <= top:
            return

        def at(points: Floats, along: Floats, height: float) -> Floats:
            middle = np.median(points, axis=0)
            return np.asarray(middle + along * (height - middle @ bar) / (along @ bar))

        ends = (
            (first, along_first, top),
            (last, along_last, top),
            (last, along_last, bottom),
            (first, along_first, bottom),
        )
        self._quad = np.array([at(*corner) for corner in ends])
        self.pixels_per_module = float(np.linalg.norm(self._quad[1] - self._quad[0])) / self._modules

    def _points(self, along: Floats, spread: Floats) -> NDArray[np.float32]:
        """(10 * spread, samples, 2) pixels: so many modules along, each row spread over so many modules of height."""
        top_left, top_right, bottom_right, bottom_left = self._quad
        share = (along / self._modules)[..., None]
        upper = top_left + share * (top_right - top_left)
        lower = bottom_left + share * (bottom_right - bottom_left)
        middle = upper + _DOWN[:, None, None] * (lower - upper)
        bar = (bottom_left - top_left) + (bottom_right - top_right)
        offsets = spread[:, None] * self.pixels_per_module * bar / max(float(np.linalg.norm(bar)), 1e-6)
        points = middle[:, None] + offsets[None, :, None]
        return np.asarray(points.reshape(SCANS * spread.size, along.shape[1], 2), np.float32)


def _direction(points: Floats) -> Floats:
    """Unit vector along a row of points, from the first to the last."""
    across = np.linalg.svd(points - points.mean(axis=0))[2][0]
    return np.asarray(across if across @ (points[-1] - points[0]) >= 0 else -across)


def _edges(rough: Floats, start: float, expected: float, *, falling: bool) -> Floats:
    """Each row's crossing of its middle level nearest to where it is expected, NaN where none is near."""
    found = np.full(SCANS, np.nan)
    for number, row in enumerate(rough):
        dark = row < (np.percentile(row, 5) + np.percentile(row, 95)) / 2
        at = start + (np.flatnonzero((dark[1:] != dark[:-1]) & (dark[1:] == falling)) + 0.5) / PER_MODULE
        if at.size and abs(nearest := at[np.argmin(np.abs(at - expected))] - expected) <= _REACH:
            found[number] = nearest + expected
    return found


_LINEAR = np.array([linear_level(level) for level in range(256)], np.float32)
