"""One label's grey levels along its bars' normal, all its rows pooled.

Pixels are sorted into bins by where they lie across the bars, never interpolated: rows of a tilted label fall between
each other's pixels, so that together they say more than one row could, below one pixel per module.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import tan

import numpy as np
from numpy.typing import NDArray

from scanflow.vision.readings import Quad
from scanflow.vision.second_look.glare import Mask
from scanflow.vision.second_look.locate import Grey, Region

Values = NDArray[np.float64]

BINS = 360  # from the first to the last bar of a region: four or more a module
MARGIN = 42  # bins kept outside these: about 9 modules

_MODULES = 84  # of a card's symbol, about: 79, or 90 with two letters

_TURNS = ((8.0, 1.0), (1.0, 0.5))  # degrees: how far the bars' direction is sought, in steps of
_FINE_TURNS = ((3.0, 0.5), (0.5, 0.25))
_STIFF = 0.0005  # share of the variance by which a square degree must pay
_TWISTS = np.arange(-6, 7) / 60  # over the whole length
_ALIKE = 0.6  # of the middle rows' contrast and correlation that a row of the same bars has
_LEAST_PIXELS = 60
_ENOUGH = 2500  # pixels that tell a direction
_GOLDEN = (5**0.5 - 1) / 2
_APART = 2.0  # px between the rows of two cards
_REACH = 50.0  # px: rows beyond add nothing


@dataclass(frozen=True, slots=True)
class Lean:
    """The tangent of the angle between a region's direction and its bars' normal, and by how much it grows a pixel
    along that normal: seen from aside, bars are not parallel.
    """

    shear: float = 0.0
    twist: float = 0.0

    def straight(self, across: Values, down: Values) -> Values:
        return across + (self.shear + self.twist * across) * down


@dataclass(frozen=True, slots=True)
class Strip:
    """A region's sums and counts of grey levels, (MARGIN + BINS + MARGIN,) each.

    `sharpness` is the share of the variance that the bins explain, less what chance would. `lean` is how the bars lie
    to the region's direction, `low` and `high` are the rows that belong to them.
    """

    region: Region
    sums: Values
    counts: Values
    sharpness: float
    lean: Lean
    low: float
    high: float

    @property
    def ends(self) -> tuple[float, float]:
        """Where the first and the last bar were located, in pixels of `drawn`."""
        return float(MARGIN), float(MARGIN + BINS)

    def rest(self) -> Iterator[Region]:
        """What lies above and below these rows and ends alike: another card, filed close behind."""
        region = self.region
        for low, high in ((region.low, self.low - _APART), (self.high + _APART, region.high)):
            if high >= low:
                yield replace(region, low=low, high=high, core=(low + high) / 2)

    def drawn(self) -> Grey:
        """The strip as a picture, (24, 2 MARGIN + BINS), stretched from black to white."""
        bins = np.arange(len(self.counts))
        seen = self.counts > 0
        level = np.interp(bins, bins[seen], self.sums[seen] / self.counts[seen])
        dark, light = np.percentile(level[MARGIN:-MARGIN], (2, 98))
        level = np.clip((level - dark) / max(light - dark, 1.0) * 215 + 20, 0, 255)
        return np.tile(level.astype(np.uint8), (24, 1))

    def corners(self, first: float, last: float) -> Quad:
        """Of the bars between two places, in pixels of `drawn`; clockwise, from `first` on.

        `first` greater than `last` is a label that stands on its head.
        """
        low, high = (self.low, self.high) if first <= last else (self.high, self.low)
        return (self._point(first, low), self._point(last, low), self._point(last, high), self._point(first, high))

    def _point(self, place: float, row: float) -> tuple[float, float]:
        region = self.region
        down = row - region.core
        across = ((place - MARGIN) / BINS - 0.5) * region.length - self.lean.shear * down
        across /= 1 + self.lean.twist * down
        cosine, sine = np.cos(region.angle), np.sin(region.angle)
        return float(region.x + across * cosine - row * sine), float(region.y + across * sine + row * cosine)


def straighten(grey: Grey, region: Region, blind: Mask | None = None) -> Strip | None:
    """The strip of a region; None where too little of it is in the picture. Pixels that are `blind` don't count."""
    px = region.length / _MODULES
    core, reach = max(3.0, 3 * px), min(max(14.0, 16 * px), _REACH)
    low = max(region.low - 3 * px - 2, region.core - reach)
    high = min(region.high + 3 * px + 2, region.core + reach)
    pixels = _pixels(grey, blind, region, (0.5 + MARGIN / BINS) * region.length, low, high)
    if pixels is None:
        return None
    across, row, level = pixels
    down = row - region.core
    inside = np.abs(across) < 0.51 * region.length
    middle = inside & (np.abs(down) < core)
    if np.count_nonzero(middle) < _LEAST_PIXELS:
        return None
    bins = _Bins(region.length, max(0.5, px / 3))
    lean, sharpness = bins.sheared(across[middle], down[middle], level[middle], Lean(-tan(region.skew)), _TURNS)
    for turns in (_FINE_TURNS, _FINE_TURNS[1:]):
        low, high = _rows(bins, across, row, level, inside, middle, lean, region.core)
        ours = (row >= low) & (row <= high)
        middle = inside & ours
        if np.count_nonzero(middle) < _LEAST_PIXELS:
            return None
        some = _some(np.nonzero(middle)[0])
        lean, sharpness = bins.sheared(across[some], down[some], level[some], lean, turns)
        lean, sharpness = bins.twisted(across[some], down[some], level[some], lean)
    place = (lean.straight(across[ours], down[ours]) / region.length + 0.5) * BINS + MARGIN
    count = MARGIN + BINS + MARGIN
    known = (place >= 0) & (place < count)
    place = place[known].astype(np.intp)
    sums = np.bincount(place, weights=level[ours][known], minlength=count).astype(np.float64)
    counts = np.bincount(place, minlength=count).astype(np.float64)
    return Strip(region, sums, counts, sharpness, lean, low, high)


def _some(pixels: NDArray[np.intp]) -> NDArray[np.intp]:
    """At most about _ENOUGH of them, spread evenly and in step with neither rows nor columns."""
    share = _ENOUGH / max(len(pixels), 1)
    return pixels if share >= 1 else pixels[np.arange(len(pixels)) * _GOLDEN % 1 < share]


def _pixels(
    grey: Grey, blind: Mask | None, region: Region, half: float, low: float, high: float
) -> tuple[Values, Values, Values] | None:
    """Across the bars and along them, both from the region's middle, and grey levels of the pixels of a turned box."""
    cosine, sine = np.cos(region.angle), np.sin(region.angle)
    ends = np.array([(u * cosine - v * sine, u * sine + v * cosine) for u in (-half, half) for v in (low, high)])
    ends += np.array([region.x, region.y])
    left, top = np.maximum(np.floor(ends.min(0)).astype(int), 0)
    right, bottom = np.minimum(np.ceil(ends.max(0)).astype(int) + 1, grey.shape[::-1])
    if left >= right or top >= bottom:
        return None
    x, y = np.arange(left, right) - region.x, np.arange(top, bottom)[:, None] - region.y
    across, along = x * cosine + y * sine, y * cosine - x * sine
    box = (np.abs(across) < half) & (along >= low) & (along <= high)
    if blind is not None:
        box &= ~blind[top:bottom, left:right]
        if not box.any():
            return None
    return across[box], along[box], grey[top:bottom, left:right][box].astype(np.float64)


class _Bins:
    """Bins across the bars for finding their direction."""

    def __init__(self, length: float, width: float) -> None:
        self._half, self._width = length / 2, width
        self._count = int(length / width) + 40

    def of(self, across: Values) -> NDArray[np.intp]:
        return np.clip((across + self._half) / self._width + 20, 0, self._count - 1).astype(np.intp)

    def means(self, across: Values, level: Values) -> Values:
        place = self.of(across)
        counts = np.bincount(place, minlength=self._count)
        sums = np.bincount(place, weights=level, minlength=self._count)
        return np.where(counts > 0, sums / np.maximum(counts, 1), level.mean())

    def sheared(
        self, across: Values, down: Values, level: Values, lean: Lean, turns: tuple[tuple[float, float], ...]
    ) -> tuple[Lean, float]:
        """The shear at which bins explain most of the variance, and that share beyond chance."""
        degrees, share = np.degrees(np.arctan(lean.shear)), 0.0
        expected = degrees
        for span, step in turns:
            tried = degrees + np.arange(-span, span + step / 2, step)
            shear = np.tan(np.radians(tried))[:, None]
            shares = self._explained(across + (shear + lean.twist * across) * down, level)
            best = int((shares - _STIFF * (tried - expected) ** 2).argmax())
            degrees, share = float(tried[best]), float(shares[best])
        return Lean(float(np.tan(np.radians(degrees))), lean.twist), share

    def twisted(self, across: Values, down: Values, level: Values, lean: Lean) -> tuple[Lean, float]:
        tried = lean.twist + _TWISTS / (2 * self._half)
        shares = self._explained(across + (lean.shear + tried[:, None] * across) * down, level)
        return Lean(lean.shear, float(tried[shares.argmax()])), float(shares.max())

    def _explained(self, straight: Values, level: Values) -> Values:
        """Of several ways to straighten, (ways, pixels): the share of the variance that bins explain beyond chance."""
        level = level - level.mean()
        ways = len(straight)
        place = self.of(straight) + np.arange(ways)[:, None] * self._count
        size = self._count * ways
        counts = np.bincount(place.ravel(), minlength=size)
        sums = np.bincount(place.ravel(), weights=np.tile(level, ways), minlength=size)
        explained = (sums * sums / np.maximum(counts, 1)).reshape(ways, self._count).sum(1)
        chance = min(0.95, 2 * self._half / self._width / len(level))
        return np.asarray((explained / max(float(level @ level), 1e-9) - chance) / (1 - chance))


def _rows(
    bins: _Bins,
    across: Values,
    row: Values,
    level: Values,
    inside: NDArray[np.bool_],
    middle: NDArray[np.bool_],
    lean: Lean,
    core: float,
) -> tuple[float, float]:
    """From where to where rows say the same as the middle ones: with the same contrast, and correlated alike."""
    straight = lean.straight(across, row - core)
    said = bins.means(straight[middle], level[middle])[bins.of(straight[inside])]
    level, first = level[inside], float(row.min())
    place = (row[inside] - first).astype(np.intp)
    count = int(place.max()) + 1

    def total(values: Values | None = None) -> Values:
        return np.bincount(place, weights=values, minlength=count).astype(np.float64)

    n = np.maximum(total(), 1)
    sums, said_sums = total(level), total(said)
    said_varies = total(said * said) - said_sums**2 / n
    varies = total(level * level) - sums**2 / n
    together = total(said * level) - said_sums * sums / n
    slope = _smooth(together / np.maximum(said_varies, 1e-6))
    correlation = _smooth(together / np.sqrt(np.maximum(said_varies * varies, 1e-9)))
    at = int(np.clip(core - first, 0, count - 1))
    around = slice(max(at - 2, 0), at + 3)
    alike = (slope > _ALIKE * _middle(slope[around])) & (correlation > _ALIKE * _middle(correlation[around]))
    others = np.nonzero(~alike)[0]
    above, below = others[others < at], others[others > at]
    low = (above[-1] + 1 if len(above) else 0) + first
    high = (below[0] if len(below) else count) + first
    if high - low > 6:  # rows at the edge are half something else
        low, high = low + 1, high - 1
    return float(min(low, core - 1.5)), float(max(high, core + 1.5))


def _middle(values: Values) -> float:
    """The median, of few values quicker so."""
    return float(np.sort(values)[len(values) // 2])


def _smooth(values: Values) -> Values:
    return np.convolve(values, np.full(3, 1 / 3), "same")
