"""One code fitted to one strip by least squares: where its ends lie, how it is bent, and how blurred it is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from scanflow.vision.second_look.patterns import QUIET
from scanflow.vision.second_look.patterns import Values as Bits

Values = NDArray[np.float64]

_FINE = 8  # samples of a pattern a module
_REACH = QUIET + 6  # modules of white drawn on each side
_SIGMAS = (0.45, 0.6, 0.8, 1.0, 1.3, 1.7, 2.2)  # px: a sharp lens with the pixel's own width, to well out of focus
FIRST_SIGMA = 0.75  # px
_FIRST_STEPS, _LAST_STEPS = 3, 5
_BENT = 0.04  # most by which the middle is off, in symbol lengths, times four
_NEAR = 0.01  # modules: a step that changes nothing
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
    sigmas = [sigma / px for sigma in _SIGMAS]
    seen = _LaidProfile(profile, len(bits), found.first, found.last, found.bent)
    explained = [seen.explained(*_drawn(bits, sigmas[0]))]
    while len(explained) < len(sigmas) and explained[-1] == max(explained):  # with more blur it only gets worse
        explained.append(seen.explained(*_drawn(bits, sigmas[len(explained)])))
    best = int(np.argmax(explained))
    start = Fit(found.first, found.last, found.bent, sigmas[best], explained[best])
    return _descended(profile, bits, start, _LAST_STEPS)


class _LaidProfile:
    """A profile laid over `count` modules between two ends: where its bins fall in drawn bars, and those that count."""

    def __init__(self, profile: Profile, count: int, first: float, last: float, bent: float) -> None:
        self.share = (profile.place - first) / (last - first)
        at = count * (self.share + bent * self.share * (1 - self.share))
        self.weight = np.where((at > -QUIET) & (at < count + QUIET), profile.weight, 0.0)
        self.pixels = max(float(self.weight.sum()), 1.0)
        x = np.clip((at + _REACH) * _FINE - 0.5, 0, (count + 2 * _REACH) * _FINE - 2)
        self.index = x.astype(np.intp)
        self.beyond = x - self.index
        self.level = profile.level - float(self.weight @ profile.level) / self.pixels
        self.varies = max(float(self.weight @ (self.level * self.level)), 1e-9)

    def bars(self, drawn: Values, slope: Values) -> Values:
        """Drawn bars at the bins, less their mean."""
        bars = drawn[self.index] + self.beyond * slope[self.index]
        bars -= float(self.weight @ bars) / self.pixels
        return bars

    def explained(self, drawn: Values, slope: Values) -> float:
        """The share of the variance that bars explain with the contrast that suits best."""
        bars = self.bars(drawn, slope)
        weighted = self.weight * bars
        return float(weighted @ self.level) ** 2 / max(float(weighted @ bars), 1e-9) / self.varies


def _descended(profile: Profile, bits: Bits, start: Fit, steps: int) -> Fit:
    count = len(bits)
    drawn, slope = _drawn(bits, start.sigma)
    best, now = start, np.array([start.first, start.last, start.bent])
    for step in range(steps + 1):
        first, last, bent = now
        seen = _LaidProfile(profile, count, first, last, bent)
        explained = seen.explained(drawn, slope)
        if explained > best.explained:
            best = Fit(first, last, bent, start.sigma, explained)
        if step == steps:
            break
        move = _move(seen, drawn, slope, last - first, bent)
        most = 0.6 * (last - first) / count
        now = now + np.clip(move, [-most, -most, -0.01], [most, most, 0.01])
        now[2] = np.clip(now[2], -_BENT, _BENT)
        if np.abs(move[:2]).max() < _NEAR * (last - first) / count:
            break
    return best


def _move(seen: _LaidProfile, drawn: Values, slope: Values, length: float, bent: float) -> Values:
    """The step of Gauss and Newton: by how much first, last and bent are off."""
    bars, share, weight = seen.bars(drawn, slope), seen.share, seen.weight
    weighted = weight * bars
    contrast = (weighted @ seen.level) / max(float(weighted @ bars), 1e-9)
    left = seen.level - contrast * bars
    count = len(drawn) / _FINE - 2 * _REACH
    along = contrast * slope[seen.index] * (_FINE * count)
    lies = along * (1 + bent * (1 - 2 * share)) / length
    turns = np.stack([lies * (share - 1), -lies * share, along * share * (1 - share), bars, np.ones_like(bars)])
    weighted_turns = turns * weight
    normal = weighted_turns @ turns.T
    normal[2, 2] += _STIFF * count * count * float(weight @ (left * left)) / max(int(np.count_nonzero(weight)), 1)
    normal[range(5), range(5)] *= 1.02
    normal[range(5), range(5)] += 1e-6
    return np.asarray(np.linalg.solve(normal, weighted_turns @ left)[:3])


def _drawn(bits: Bits, sigma: float) -> tuple[Values, Values]:
    """The bars blurred, at fine samples from _REACH modules before the first on, and the steps between samples."""
    fine = np.zeros((len(bits) + 2 * _REACH, _FINE))
    fine[_REACH:-_REACH] = bits[:, None]
    drawn = np.convolve(fine.ravel(), _gaussian(sigma * _FINE), "same")
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
    return np.asarray(seen[np.clip(index, 0, len(seen) - 1)])
