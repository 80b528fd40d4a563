"""How far the bars of a reading go, up and down: decoders give only the rows that they happened to read."""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from scanflow.vision.readings import Quad

Grey = NDArray[np.uint8]
Floats = NDArray[np.float32]
Vector = NDArray[np.float64]

_SHORTEST = 12.0  # px: less can't be told from its surroundings
_SAMPLES = 240  # most, along the reading
_REACH = 0.5  # of the length each way: bars are rarely higher
_SHIFTS = 4  # samples each way by which a row may lie beside the middle ones: bars lean, or are not parallel
_HALVED = 72.0  # px from which halves of a row say enough to find how the bars' ends slant
_ROUGH = 1  # rows by which halves of one straight edge may differ
_SLANT = 0.2  # most by which these differ, of the length: some 20 degrees
_LEVEL = 4.0  # px of height from which a reading's own sides tell how its bars lean
_CONTRAST, _ALIKE = 0.5, 0.7  # of the middle rows' contrast, and correlation, that a row of the same bars has


def outlined(grey: Grey, quad: Quad) -> Quad:
    """The quadrilateral of all rows that say what the middle of ``quad`` says, next to each other."""
    lines = _BarRow.of(quad)
    if lines is None:
        return quad
    lines = lines.upright(_Rows(grey, lines).sides(1).lean)
    rows = _Rows(grey, lines)
    sides = rows.sides(1)
    above, below = ([row, row] for row in sides.runs[0])
    if lines.length > _HALVED:
        halves = rows.sides(2)
        slants = list(zip(*halves.runs, strict=True))
        apart = [abs(left - right) for left, right in slants]
        if max(apart) > _ROUGH * rows.step and max(apart) < _SLANT * lines.length:
            above, below = ([1.5 * left - 0.5 * right, 1.5 * right - 0.5 * left] for left, right in slants)
            sides = halves
    corners = ((0.0, above[0]), (lines.length, above[1]), (lines.length, below[1]), (0.0, below[0]))
    a, b, c, d = (lines.point(along + sides.lean * row, row) for along, row in corners)
    return a, b, c, d


@dataclass(frozen=True, slots=True)
class _BarRow:
    """A reading's middle row from `left` on in the direction `across`, `down` the bars, and their height so far, px."""

    left: Vector
    across: Vector
    down: Vector
    length: float
    height: float

    @classmethod
    def of(cls, quad: Quad) -> _BarRow | None:
        a, b, c, d = np.array(quad)
        left, across, sides = (a + d) / 2, (b + c - a - d) / 2, (d - a + c - b) / 2
        length, height = float(np.hypot(*across)), float(np.hypot(*sides))
        if length < _SHORTEST:
            return None
        across /= length
        return cls(left, across, sides / height if height > _LEVEL else _quarter(across), length, height)

    def upright(self, lean: float) -> _BarRow:
        """The same with a row at right angles to its bars; `lean` is how far `across` these go with each step down."""
        down = self.down + self.across * lean
        down /= np.hypot(*down)
        across = -_quarter(down)
        half = float(self.length * (self.across @ across) / 2)
        middle = self.left + self.across * self.length / 2
        return _BarRow(middle - across * half, across, down, 2 * half, self.height)

    def point(self, along: float, row: float) -> tuple[float, float]:
        x, y = self.left + self.across * along + self.down * row
        return float(x), float(y)


def _quarter(direction: Vector) -> Vector:
    """Turned by a quarter, clockwise as y points down."""
    return np.array([-direction[1], direction[0]])


@dataclass(frozen=True, slots=True)
class _Sides:
    """From which row to which each part of the rows says the same, px from the middle one; and how far the bars go
    across with each step down.
    """

    runs: list[tuple[float, float]]
    lean: float


class _Rows:
    """Grey levels along a reading's middle row and above and below it, black outside the picture."""

    def __init__(self, grey: Grey, lines: _BarRow) -> None:
        self.step = max(1.0, lines.length / _SAMPLES)
        self._count, self._reach = int(lines.length / self.step), int(_REACH * lines.length / self.step)
        self._core = max(1, int(0.3 * lines.height / self.step))
        along = (np.arange(-_SHIFTS, self._count + _SHIFTS) + 0.5) * self.step
        row = np.arange(-self._reach, self._reach + 1)[:, None] * self.step
        x, y = ((lines.left[i] + lines.across[i] * along + lines.down[i] * row).astype(np.float32) for i in (0, 1))
        self._levels = cv2.remap(grey, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT).astype(np.float32)

    def sides(self, parts: int) -> _Sides:
        width = self._count // parts
        middle, core = self._reach, self._core
        runs, leans = [], []
        for part in range(parts):
            shift, alike = self._alike(self._levels[:, part * width : (part + 1) * width + 2 * _SHIFTS])
            others = np.nonzero(~alike)[0]
            above, below = others[others < middle - core], others[others > middle + core]
            first = int(above[-1]) + 1 if len(above) else 0
            last = int(below[0]) - 1 if len(below) else len(alike) - 1
            runs.append(((first - middle - 0.5) * self.step, (last - middle + 0.5) * self.step))
            row = np.arange(first, last + 1) - (first + last) / 2
            leans.append(float(row @ shift[first : last + 1] / max(float(row @ row), 1.0)))
        return _Sides(runs, sum(leans) / parts)

    def _alike(self, levels: Floats) -> tuple[Floats, NDArray[np.bool_]]:
        """By how many samples each row lies beside the middle ones, and whether it says the same."""
        width = levels.shape[1] - 2 * _SHIFTS
        middle = slice(self._reach - self._core, self._reach + self._core + 1)
        said = levels[middle, _SHIFTS:-_SHIFTS].mean(0)
        said -= said.mean()
        shifted = np.zeros((levels.shape[1], 2 * _SHIFTS + 1), np.float32)
        ones = np.zeros_like(shifted)
        for shift in range(2 * _SHIFTS + 1):
            shifted[shift : shift + width, shift], ones[shift : shift + width, shift] = said, 1 / width
        contrast, mean, square = levels @ shifted, levels @ ones, (levels * levels) @ ones
        correlation = contrast / np.sqrt(np.maximum(square - mean * mean, 1e-3) * width * (said @ said))
        best = correlation.argmax(1)
        each = np.arange(len(levels))
        correlation, contrast = (cv2.blur(of[each, best][:, None], (1, 3))[:, 0] for of in (correlation, contrast))
        alike = correlation > _ALIKE * np.median(correlation[middle])
        alike &= contrast > _CONTRAST * np.median(contrast[middle])
        return (best - _SHIFTS).astype(np.float32), alike
