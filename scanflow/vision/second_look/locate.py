"""Where labels are: places with bars between two quiet zones, at any angle, decoded or not.

The picture is looked at in cells of 4 pixels. A cell's tensor of diagonal differences, each divided by its own
strength, tells the bars' direction and how much of the cell they fill, down to below one pixel per module; one strong
edge counts little. From filled cells a line is followed along the bars' normal, both ways, to the first stretch that is
white, and even for longer than any space between bars. Of these lines those count that look, as a whole, like what all
codes have in common: their start, their stop and the symbols between. Lines that end alike are one label.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import product
from math import cos, sin

import cv2
import numpy as np
from numpy.typing import NDArray

from scanflow.vision.readings import Point, Quad
from scanflow.vision.second_look.patterns import QUIET, blurred, kernel

Grey = NDArray[np.uint8]
Floats = NDArray[np.float32]
Sums = NDArray[np.int16]

CELL = 4  # px
_FLAT = 12.0**2  # squared difference of grey levels at which a cell counts as half filled
_FILLED = 0.2  # least share of a cell's neighbours, and of a line, that bars fill
_SEED = 0.35  # and of the line about a seed
_TURNS = np.deg2rad([-9, -6, -3, 0, 3, 6, 9])  # tried about the direction of a seed's own cells
_SHORT = 5  # cells each way over which a direction is tried
_APART = (-1.3, 0.0, 1.3)  # px between the parallel lines that are averaged

# Length between quiet zones (least, most) and the quiet zone's least length, px: between 4 modules, the widest space
# of a symbol, and the 10 of a quiet zone, for symbols of 68 to 101 modules. What is longer is found in a reduced copy.
_LADDER = ((33, 44, 2), (40, 52, 3), (48, 58, 4), (54, 74, 5), (68, 94, 7), (86, 116, 9), (108, 146, 11))
_NEAR = 0.55  # of the length each way: a line's surroundings
_WHITE = 1.4  # standard deviations above the mean of the surroundings
_LIGHT = 0.6  # or of the way from there to the lightest pixel, if that is less
_EVEN = 0.8  # standard deviations between the lightest and the darkest pixel of a quiet zone

_OFF = (-2, -1, 0, 1, 2)  # modules by which an end may lie elsewhere than at the quiet zone
_BLUR = 1.0  # modules
_SAMPLES = 180  # over a length: two or more a module

_ENDS, _LENGTH, _TURN, _GAP = (
    0.05,
    0.08,
    0.2,
    20.0,
)  # shares of the length, radians, px: what lines of a label differ by
_TOGETHER = 512  # lines at once: so many stay in the processor's cache
MOST = 400  # regions of a picture, those that are most like a code first


@dataclass(frozen=True, slots=True)
class Search:
    """What regions are sought: `lengths` (least, most) in pixels of 33 to 146, those `like` a code (least correlation).

    `skews` (radians): labels that are seen from aside have rows that are not at right angles to their bars. `block`:
    one seed is tried in so many by so many cells.
    """

    lengths: tuple[int, int]
    like: float
    skews: tuple[float, ...] = (0.0,)
    block: int = 3


@dataclass(frozen=True, slots=True)
class Region:
    """A place like a label's bars, in pixels of the picture it was found in.

    `x`, `y` is the middle between the quiet zones, `angle` the direction of the rows in radians, clockwise since y
    points down, `skew` by how much it is turned from the bars' normal, `length` that from first to last bar. `low` and
    `high` are how far lines were found up and down the bars from the middle, `core` where most were,
    `likeness` the best of their correlations.
    """

    x: float
    y: float
    angle: float
    skew: float
    length: float
    low: float
    high: float
    core: float
    likeness: float

    @property
    def middle(self) -> tuple[float, float]:
        """Of the rows where most lines were."""
        return self.x - self.core * sin(self.angle), self.y + self.core * cos(self.angle)

    @classmethod
    def of(cls, corners: Quad) -> Region:
        """The region of bars that were read."""
        a, b, c, d = np.array(corners)
        x, y = (a + b + c + d) / 4
        across, down = (b + c - a - d) / 2, (c + d - a - b) / 2
        angle, half = float(np.arctan2(across[1], across[0])), float(np.hypot(*down)) / 2
        skew = angle - float(np.arctan2(-down[0], down[1])) if half > 2 * CELL else 0.0
        return cls(float(x), float(y), angle, skew, float(np.hypot(*across)), -half, half, 0.0, 1.0)


class Field:
    """A picture to locate labels in, again and again."""

    def __init__(self, grey: Grey) -> None:
        self._grey = grey
        self._fill = _fill(grey) if min(grey.shape) >= 2 * CELL else np.zeros((2, 1, 1), np.float32)

    def forget(self, corners: Sequence[Point]) -> None:
        """Find nothing more within a convex place."""
        cells = np.array(corners) / CELL - 0.5
        for part in self._fill:
            cv2.fillConvexPoly(part, np.rint(cells).astype(np.int32), 0.0)

    def locate(self, common: Common, search: Search) -> list[Region]:
        """Those most like a code first. `common` is what codes have in common."""
        seeds = _lines(self._fill, *_seeds(self._fill, search.block))
        if not len(seeds.x):
            return []
        regions: list[Region] = []
        for skew in search.skews:
            parts = (seeds.part(first, first + _TOGETHER) for first in range(0, len(seeds.x), _TOGETHER))
            found = np.concatenate([self._alike(part, skew, search.lengths, common) for part in parts])
            regions.extend(_labels(found[found[:, 6] > search.like], skew))
        return sorted(regions, key=lambda region: -region.likeness)[:MOST]

    def _alike(self, seeds: _BarPoints, skew: float, lengths: tuple[int, int], common: Common) -> Floats:
        """Lines between two quiet zones, as `_ends` has them, the likeness to what is common in the last column."""
        lines = _BarPoints(seeds.x, seeds.y, seeds.angle + np.float32(skew))
        found = _ends(self._grey, self._fill, lines, skew, lengths)
        found[:, 6] = _likeness(self._grey, found, common)
        return found


def _fill(grey: Grey) -> Floats:
    """(2, cells down, cells across): sine and cosine parts of twice the direction, each times the filled share."""
    rows, across = (grey.shape[0] - 1) // CELL, (grey.shape[1] - 1) // CELL
    fill = np.empty((2, rows, across), np.float32)
    for top in range(0, rows, 16):  # so many rows of cells stay in the processor's cache
        high = min(16, rows - top)
        part = grey[top * CELL : (top + high) * CELL + 1, : across * CELL + 1].astype(np.float32)
        down, up = part[1:, 1:] - part[:-1, :-1], part[:-1, 1:] - part[1:, :-1]
        mixed = down * up
        down *= down
        up *= up
        strength = down + up
        strength += _FLAT
        mixed *= 2
        mixed /= strength
        down -= up
        down /= strength
        for part, into in ((mixed, fill[0]), (down, fill[1])):
            into[top : top + high] = cv2.resize(part, (across, high), interpolation=cv2.INTER_AREA)
    return fill


def _seeds(fill: Floats, block: int) -> tuple[NDArray[np.intp], NDArray[np.intp], Floats]:
    """x and y in cells of the most filled cell of each block, and the direction there in radians."""
    smooth = np.stack([cv2.blur(part, (3, 3)) for part in fill])
    share = smooth[0] ** 2 + smooth[1] ** 2
    down, across = share.shape[0] // block, share.shape[1] // block
    blocks = share[: down * block, : across * block].reshape(down, block, across, block).transpose(0, 2, 1, 3)
    blocks = blocks.reshape(down, across, block * block)
    best = blocks.argmax(2)
    by, bx = np.nonzero(np.take_along_axis(blocks, best[:, :, None], 2)[:, :, 0] > _FILLED**2)
    y, x = by * block + best[by, bx] // block, bx * block + best[by, bx] % block
    return x, y, 0.5 * np.arctan2(smooth[1, y, x], smooth[0, y, x])


@dataclass(frozen=True, slots=True)
class _BarPoints:
    """Points that bars were seen at, px, and the direction of their normal."""

    x: Floats
    y: Floats
    angle: Floats

    def part(self, first: int, last: int) -> _BarPoints:
        return _BarPoints(self.x[first:last], self.y[first:last], self.angle[first:last])


def _lines(fill: Floats, x: NDArray[np.intp], y: NDArray[np.intp], angle: Floats) -> _BarPoints:
    """The seeds whose surroundings are filled along a straight line, each with the direction that is filled most."""
    angles = angle[:, None] + _TURNS.astype(np.float32)
    steps = np.arange(-_SHORT, _SHORT + 1)
    filled = _along(
        fill,
        x[:, None, None] + np.cos(angles)[:, :, None] * steps,
        y[:, None, None] + np.sin(angles)[:, :, None] * steps,
        angles[:, :, None],
    ).mean(2)
    best = filled.argmax(1)
    each = np.arange(len(best))
    kept = filled[each, best] > _SEED
    middle = CELL / 2
    return _BarPoints(
        (x[kept] * CELL + middle).astype(np.float32),
        (y[kept] * CELL + middle).astype(np.float32),
        angles[each, best][kept],
    )


def _along(fill: Floats, x: NDArray[np.floating], y: NDArray[np.floating], angle: Floats) -> Floats:
    """How much of the cells at x and y (in cells) is filled by bars of that direction."""
    down, across = fill.shape[1:]
    at = np.clip(np.rint(y).astype(np.int32), 0, down - 1) * across
    at += np.clip(np.rint(x).astype(np.int32), 0, across - 1)
    sine, cosine = fill.reshape(2, -1)
    return np.asarray(sine[at] * np.cos(2 * angle) + cosine[at] * np.sin(2 * angle), np.float32)


def _ends(grey: Grey, fill: Floats, lines: _BarPoints, skew: float, lengths: tuple[int, int]) -> Floats:
    """Lines between two quiet zones, (n, 7): middle x, y, length, angle, seed's x, y, and the filled share between."""
    x, y, angle = lines.x[:, None], lines.y[:, None], lines.angle[:, None]
    cosine: Floats = np.cos(angle)
    sine: Floats = np.sin(angle)
    ladder = [step for step in _LADDER if step[0] < lengths[1] and step[1] > lengths[0]]
    reach = ladder[-1][1] + ladder[-1][2]  # px each way along a line
    steps: Floats = np.arange(-reach, reach + 1, dtype=np.float32)
    profiles = _averaged(grey, x + cosine * steps, y + sine * steps, cosine, sine)
    profiles[:, 1:-1] = profiles[:, :-2] + profiles[:, 1:-1] + profiles[:, 2:]
    profiles[:, 0], profiles[:, -1] = profiles[:, 1], profiles[:, -2]
    cells = steps[::CELL]
    filled = _along(fill, (x + cosine * cells) / CELL - 0.5, (y + sine * cells) / CELL - 0.5, angle - np.float32(skew))
    sums = np.concatenate([np.zeros((len(x), 1), np.float32), np.cumsum(filled, 1)], 1)
    found = []
    for least, most, left, right, kept in _quiet_zones(profiles, ladder):
        length = right - left
        kept &= (length >= max(least, lengths[0])) & (length <= most)
        left, right, sums_kept = left[kept], right[kept], sums[kept]
        first = ((left + reach) / CELL).astype(int)
        last = np.maximum(((right + reach) / CELL).astype(int), first + 1)
        each = np.arange(len(first))
        share = (sums_kept[each, last] - sums_kept[each, first]) / (last - first)
        middle = (left + right) / 2
        x0, y0, turn = lines.x[kept], lines.y[kept], lines.angle[kept]
        rows = (x0 + np.cos(turn) * middle, y0 + np.sin(turn) * middle, right - left, turn, x0, y0, share)
        found.append(np.stack(rows, 1)[share > _FILLED])
    return np.concatenate(found).astype(np.float32) if found else np.empty((0, 7), np.float32)


def _averaged(grey: Grey, x: Floats, y: Floats, cosine: Floats, sine: Floats) -> Sums:
    """Grey levels between pixels, the sum of as many parallel lines as _APART has; x and y (n, m)."""
    total = np.zeros(x.shape, np.int16)
    if not len(x):  # which OpenCV refuses
        return total
    for apart in map(np.float32, _APART):
        beside = x - sine * apart, y + cosine * apart
        total += np.asarray(cv2.remap(grey, *beside, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE), np.uint8)
    return total


def _quiet_zones(
    profiles: Sums, ladder: Sequence[tuple[int, int, int]]
) -> Iterator[tuple[int, int, Floats, Floats, NDArray[np.bool_]]]:
    """For each length of the ladder, where the nearest quiet zone each way begins, px from the seed, and if there is
    one.
    """
    darkest = lightest = profiles  # of the stretch of `quiet` pixels that begins at each
    before, reach = 1, profiles.shape[1] // 2
    near = _surroundings(profiles, [int(_NEAR * most) for _, most, _ in ladder])
    for (least, most, quiet), (mean, deviation, top) in zip(ladder, near, strict=True):
        darkest = _widened(darkest, quiet - before, np.minimum)
        lightest = _widened(lightest, quiet - before, np.maximum)
        before = quiet
        paper = mean + np.minimum(_WHITE * deviation, _LIGHT * (top - mean))
        first, last = reach - most - quiet, reach + most + 1
        dark, light = darkest[:, first:last], lightest[:, first:last]
        white = dark > paper.astype(np.int16)[:, None]
        white &= light - dark < (_EVEN * deviation).astype(np.int16)[:, None]
        after, ahead = white[:, most + quiet :], white[:, most::-1]
        right, left = after.argmax(1).astype(np.float32), -ahead.argmax(1).astype(np.float32)
        yield least, most, left, right, after.any(1) & ahead.any(1)


def _surroundings(profiles: Sums, reaches: Sequence[int]) -> Iterator[tuple[Floats, Floats, Floats]]:
    """Mean, standard deviation and greatest of profiles within each of growing reaches about the middle, (n,) each."""
    middle = profiles.shape[1] // 2
    begins = [*(middle - reach for reach in reversed(reaches)), *(middle + 1 + reach for reach in reaches)]
    levels = profiles[:, begins[0] : begins[-1]].astype(np.float32)
    at = np.array(begins[:-1]) - begins[0]
    sums, squares = np.add.reduceat(levels, at, 1), np.add.reduceat(levels * levels, at, 1)
    tops = np.maximum.reduceat(levels, at, 1)
    for number, reach in enumerate(reaches):
        within = slice(len(reaches) - 1 - number, len(reaches) + number)
        mean = sums[:, within].sum(1) / np.float32(2 * reach + 1)
        varies = squares[:, within].sum(1) / np.float32(2 * reach + 1) - mean * mean
        yield mean, np.sqrt(np.maximum(varies, 0.0)), tops[:, within].max(1)


def _widened(values: Sums, by: int, both: Callable[..., Sums]) -> Sums:
    """Of stretches longer `by` so many pixels; the last ones are not known."""
    wider = values.copy()
    both(values[:, :-by], values[:, by:], out=wider[:, :-by])
    return wider


@dataclass(frozen=True, eq=False)
class Common:
    """What codes have in common, as samples of lines to compare: `patterns` and `inside` (samples, ways).

    Each way is a mean pattern, read forwards or backwards, with its ends some modules off. Samples are evenly spaced
    over a length and `beyond` of it on both sides. A pattern has mean 0 and length 1 over its `inside`.
    """

    patterns: Floats
    inside: Floats
    beyond: float

    @classmethod
    def of(cls, means: Sequence[Floats]) -> Common:
        beyond = (QUIET - min(_OFF)) / min(len(mean) for mean in means)
        share = cls.shares(beyond)
        patterns, inside = [], []
        for mean, first, last in product(means, _OFF, _OFF):
            count = len(mean)
            module = np.floor((share * count - first) * count / (count + last - first)).astype(int) + QUIET
            known = (module >= 0) & (module < count + 2 * QUIET)
            pattern = blurred(mean[None], kernel(_BLUR))[0][np.where(known, module, 0)]
            pattern = np.where(known, pattern - pattern[known].mean(), 0.0)
            pattern /= np.sqrt(pattern @ pattern)
            patterns += [pattern, pattern[::-1]]
            inside += [known, known[::-1]]
        return cls(np.array(patterns, np.float32).T, np.array(inside, np.float32).T, beyond)

    @staticmethod
    def shares(beyond: float) -> Floats:
        """Of the length, from the first bar on: where the samples are."""
        count = int(_SAMPLES * (1 + 2 * beyond))
        return np.asarray((np.arange(count, dtype=np.float32) + 0.5) / count * (1 + 2 * beyond) - beyond)


def _likeness(grey: Grey, found: Floats, common: Common) -> Floats:
    """The best correlation of each line with what is common."""
    x, y, length, angle = found.T[:4, :, None]
    across = (common.shares(common.beyond) - np.float32(0.5)) * length
    cosine: Floats = np.cos(angle)
    sine: Floats = np.sin(angle)
    seen = _averaged(grey, x + cosine * across, y + sine * across, cosine, sine).astype(np.float32)
    seen -= seen.mean(1, keepdims=True)
    sums = seen @ common.inside
    squares = (seen * seen) @ common.inside
    varies = squares - sums * sums / common.inside.sum(0)
    return np.asarray((-(seen @ common.patterns) / np.sqrt(np.maximum(varies, 1.0))).max(1), np.float32)


def _labels(found: Floats, skew: float) -> Iterator[Region]:
    """Lines that end alike, one upon the other along the bars, are one label."""
    x, y, length, angle, seed_x, seed_y, share = found.T
    alive = np.ones(len(found), np.bool_)
    for i in np.argsort(-share):
        if not alive[i]:
            continue
        cosine, sine = np.cos(angle[i]), np.sin(angle[i])
        dx, dy = x - x[i], y - y[i]
        turn = _half_turn(angle - angle[i])
        down = dy * cosine - dx * sine
        alike = np.abs(dx * cosine + dy * sine) < _ENDS * length[i]
        alike &= np.abs(length - length[i]) < _LENGTH * length[i]
        alike &= (np.abs(down) < 0.5 * length[i]) & (np.abs(turn) < _TURN) & alive
        members = np.nonzero(alike)[0]
        alive[members] = False
        members = members[np.argsort(down[members])]
        for group in np.split(members, np.nonzero(np.diff(down[members]) > _GAP)[0] + 1):
            weights = share[group]
            mx, my = float(np.average(x[group], weights=weights)), float(np.average(y[group], weights=weights))
            rows = (seed_y[group] - my) * cosine - (seed_x[group] - mx) * sine
            yield Region(
                mx,
                my,
                float(angle[i] + np.average(turn[group], weights=weights)),
                skew,
                float(np.median(length[group])),
                float(rows.min()),
                float(rows.max()),
                _weighted_median(rows, weights**3),
                float(weights.max()),
            )


def _half_turn(angle: Floats) -> Floats:
    """The same direction within ± 90 degrees: bars look alike after half a turn."""
    return np.asarray((angle + np.pi / 2) % np.pi - np.pi / 2, np.float32)


def _weighted_median(values: Floats, weights: Floats) -> float:
    order = np.argsort(values)
    sums = np.cumsum(weights[order])
    return float(values[order][np.searchsorted(sums, sums[-1] / 2)])
