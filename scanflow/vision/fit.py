"""One code fitted to one strip by least squares: where its ends lie, how it is bent, and how blurred it is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from scanflow.vision.patterns import QUIET
from scanflow.vision.patterns import Values as Bits

Values = NDArray[np.float64]

_FINE = 8  # samples of a pattern a module
_REACH = QUIET + 6  # modules of white drawn on each side
_SIGMAS = (0.45, 0.6, 0.8, 1.0, 1.3, 1.7, 2.2)  # px: a sharp lens with the pixel's own width, to well out of focus
FIRST_SIGMA = 0.75  # px
_FIRST_STEPS, _LAST_STEPS = 3, 5
_BENT = 0.04  # most by which the middle is off, in symbol lengths, times four
_STIFF = 1.0  # weight of staying straight: the middle is rarely off by more than a third of a percent


@dataclass(frozen=True, slots=True)
class Profile:
    """Mean grey level in each bin of a strip, the pixels it came from, and the bin's place (all (bins,))."""

    place: Values
    level: Values
    weight: Values

    def reversed(self) -> Profile:
        """As seen by somebody who stands on the other side; places are negated."""
        return Profile(-self.place[::-1], self.level[::-1], self.weight[::-1])


@dataclass(frozen=True, slots=True)
class Fit:
    """`first` and `last` place of the bars, `bent`, `sigma` in modules, and what share of the variance is explained."""

    first: float
    last: float
    bent: float
    sigma: float
    explained: float

    def modules(self, place: Values, count: int) -> Values:
        """Places in modules from the first bar."""
        share = (place - self.first) / (self.last - self.first)
        return np.asarray(count * (share + self.bent * share * (1 - share)))


def fit(profile: Profile, bits: Bits, first: float, last: float, sigma_px: float, px: float) -> Fit:
    """Gauss–Newton from two ends on; `px` is how many pixels a module has, `sigma_px` the blur to begin with."""
    start = Fit(first, last, 0.0, sigma_px / px, 0.0)
    return _descended(profile, bits, start, _FIRST_STEPS)


def sharpened(profile: Profile, bits: Bits, found: Fit, px: float) -> Fit:
    """The fit again with the blur that explains most."""
    tried = [_descended(profile, bits, Fit(found.first, found.last, found.bent, s / px, 0.0), 0) for s in _SIGMAS]
    return _descended(profile, bits, max(tried, key=lambda one: one.explained), _LAST_STEPS)


def _descended(profile: Profile, bits: Bits, start: Fit, steps: int) -> Fit:
    count = len(bits)
    drawn, slope = _drawn(bits, start.sigma)
    best, now = start, np.array([start.first, start.last, start.bent])
    for step in range(steps + 1):
        first, last, bent = now
        length = last - first
        share = (profile.place - first) / length
        at = count * (share + bent * share * (1 - share))
        weight = np.where((at > -QUIET) & (at < count + QUIET), profile.weight, 0.0)
        x = np.clip((at + _REACH) * _FINE - 0.5, 0, len(drawn) - 2)
        index = x.astype(np.intp)
        bars = drawn[index] + (x - index) * slope[index]
        pixels = max(weight.sum(), 1.0)
        bars -= (weight @ bars) / pixels
        level = profile.level - (weight @ profile.level) / pixels
        weighted = weight * bars
        contrast = (weighted @ level) / max(weighted @ bars, 1e-9)
        left = level - contrast * bars
        lost = float(weight @ (left * left))
        explained = 1 - lost / max(float(weight @ (level * level)), 1e-9)
        if explained > best.explained:
            best = Fit(first, last, bent, start.sigma, explained)
        if step == steps:
            break
        along = contrast * slope[index] * (_FINE * count) * (1 + bent * (1 - 2 * share))
        turns = np.stack(
            [
                along * (share - 1) / length,
                -along * share / length,
                contrast * slope[index] * (_FINE * count) * share * (1 - share),
                bars,
                np.ones_like(bars),
            ]
        )
        weighted_turns = turns * weight
        normal = weighted_turns @ turns.T
        normal[2, 2] += _STIFF * count * count * lost / max(np.count_nonzero(weight), 1)
        normal[range(5), range(5)] *= 1.02
        normal[range(5), range(5)] += 1e-6
        move = np.linalg.solve(normal, weighted_turns @ left)[:3]
        most = 0.6 * length / count
        now = now + np.clip(move, [-most, -most, -0.01], [most, most, 0.01])
        now[2] = np.clip(now[2], -_BENT, _BENT)
    return best


def _drawn(bits: Bits, sigma: float) -> tuple[Values, Values]:
    """The bars blurred, at fine samples from _REACH modules before the first on, and the steps between samples."""
    fine = np.repeat(np.pad(bits, _REACH).astype(np.float64), _FINE)
    drawn = np.convolve(fine, _gaussian(sigma * _FINE), "same")
    return drawn, np.diff(drawn, append=drawn[-1])


def _gaussian(sigma: float) -> Values:
    steps = np.arange(-int(3.5 * sigma + 1), int(3.5 * sigma + 1) + 1)
    weights = np.exp(-0.5 * (steps / max(sigma, 0.2)) ** 2)
    return np.asarray(weights / weights.sum())


def indicators(at: Values, sigma: float, count: int) -> Values:
    """How much of each of `count` modules is seen at places in modules: (places, count), by a blur of sigma."""
    steps = np.arange(-8 * 32, 8 * 32 + 1) / 32
    seen = np.convolve((np.abs(steps) <= 0.5).astype(np.float64), _gaussian(sigma * 32), "same")
    index = np.rint((at[:, None] - (np.arange(count) + 0.5)) * 32).astype(np.intp) + 8 * 32
    return seen[np.clip(index, 0, len(seen) - 1)]
