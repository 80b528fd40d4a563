"""Which code of a book a strip shows, where no decoder reads it; none unless every other code fits far worse.

Rivals are not only the other codes of the book but whatever Code 128 could say there instead: the symbols that fit
best at each position, in every combination whose check is right. So a label of the same grammar that is missing from
the book is beaten by what it truly says.

The bound. Let e be the residuals of the codes in units of the noise of a bin. If the strip shows code c, then for any
other code w the likelihood ratio of w to c exceeds exp(m/2) with a probability of at most exp(-m/2) (Markov's
inequality), whatever their distance; m is the margin, the difference of their squared residuals. A book of N codes
thus gives a wrong one with at most N exp(-m/2). Neighbouring bins share pixels' noise and the lens's, so half of m
counts: with LEAST_MARGIN = 120 and N = 100,000 that is 9e-9 for a region that shows any Code 128 symbol of the book's
length, evenly lit but for light that changes slowly along it. Where another card covers a part of its rows that is not
so; there 102 was the most that a wrong code has had. Of anything else a code must besides explain LEAST_EXPLAINED of
the variance of some 87 modules.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from scanflow.vision.second_look.fit import FIRST_SIGMA, Fit, Profile, fit, indicators, sharpened
from scanflow.vision.second_look.patterns import (
    CHARACTERS,
    QUIET,
    STARTS,
    STOP,
    SYMBOL,
    SYMBOLS,
    Patterns,
    Values,
    blurred,
    kernel,
    standardised,
    with_check,
    with_stop,
)
from scanflow.vision.second_look.straighten import BINS, MARGIN, Strip

LEAST_MARGIN = 120.0
LEAST_EXPLAINED = 0.65

_KERNEL = 0.8  # modules: blur of the first look
_LIKELY = 0.52  # correlation with what all codes have in common
_CODE = 0.6  # correlation of the best code at the first look
_OFF = np.arange(-3.0, 3.5)  # modules by which an end may lie elsewhere than it was located
_HALF = np.array([-0.5, 0.0, 0.5])
_GOOD = 0.85  # share explained from which on no other start is tried
_HOPEFUL = 0.5  # share explained after the first steps
_NEAR = 0.75  # of the best code's correlation: what is less leaves a margin that is far above the least
_SHADES = 4  # terms of a polynomial by which light on the paper changes along a strip: a cubic
_LEAST_SEEN = 0.5  # share of a symbol character's modules
_ENDS_KEPT, _STARTS_KEPT, _CODES_KEPT, _SYMBOLS_KEPT = 4, 2, 48, 4


@dataclass(frozen=True, slots=True)
class Likeness:
    """How a strip resembles what all codes of a length have in common: correlation, and ends in bins of the strip.

    `first` greater than `last` is a label on its head.
    """

    correlation: float
    ends: tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True)
class Match:
    """The best code, its ends in bins of the strip, its margin to the best rival, and the share that it explains."""

    text: str
    first: float
    last: float
    margin: float
    explained: float

    @property
    def sure(self) -> bool:
        return self.margin >= LEAST_MARGIN and self.explained >= LEAST_EXPLAINED


def likeness(strip: Strip, mean: Values) -> Likeness:
    """Of a strip to a mean pattern (modules,), with the ends at which it is most alike."""
    count = len(mean)
    first, last = _tried(count)
    pattern = _alone(mean.tobytes())
    seen = standardised(_modules(strip, first, last, count))
    scores = np.concatenate([-(seen @ pattern), -(seen @ pattern[::-1])])
    best = np.argsort(-scores)[:4]
    if scores[best[0]] < _LIKELY - 0.1:
        return Likeness(0.0, ())
    ends = [(first[i], last[i]) if i < len(first) else (last[i - len(first)], first[i - len(first)]) for i in best]
    return _nearer(strip, ends, pattern, count)


@lru_cache(maxsize=8)
def _tried(count: int) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Pairs of ends, bins of a strip, for a label of so many modules."""
    module = BINS / count
    first, last = (grid.ravel() for grid in np.meshgrid(MARGIN + _OFF * module, MARGIN + BINS + _OFF * module))
    return first, last


@lru_cache(maxsize=8)
def _alone(mean: bytes) -> Values:
    """A mean pattern blurred, of mean 0 and length 1, with its quiet zones."""
    return np.asarray(standardised(blurred(np.frombuffer(mean, np.float32)[None], kernel(_KERNEL)))[0])


def _nearer(strip: Strip, ends: list[tuple[float, float]], pattern: Values, count: int) -> Likeness:
    """The same with ends half a module apart."""
    by = _HALF * BINS / count
    first = (np.array([end[0] for end in ends])[:, None, None] + by[:, None] + 0 * by).ravel()
    last = (np.array([end[1] for end in ends])[:, None, None] + 0 * by[:, None] + by).ravel()
    scores = -(standardised(_seen(strip, first, last, count)) @ pattern)
    best = np.argsort(-scores)[:_ENDS_KEPT]
    if scores[best[0]] < _LIKELY:
        return Likeness(0.0, ())
    return Likeness(float(scores[best[0]]), tuple((float(first[i]), float(last[i])) for i in best))


def _seen(strip: Strip, first: NDArray[np.float64], last: NDArray[np.float64], count: int) -> Values:
    """Modules at ends that may be reversed: (ends, modules with quiet zones)."""
    seen = _modules(strip, np.minimum(first, last), np.maximum(first, last), count)
    return np.where((first > last)[:, None], seen[:, ::-1], seen)


def _modules(strip: Strip, first: NDArray[np.float64], last: NDArray[np.float64], count: int) -> Values:
    """Mean level of each module for each pair of ends, with quiet zones: (ends, modules)."""
    share = np.arange(-QUIET, count + QUIET + 1) / count
    edges = np.rint(first[:, None] + (last - first)[:, None] * share).astype(np.intp)
    edges = np.clip(edges, 0, BINS + 2 * MARGIN)
    sums, counts = (np.diff(np.concatenate([[0.0], np.cumsum(of)])[edges]) for of in (strip.sums, strip.counts))
    mean = sums.sum(1) / np.maximum(counts.sum(1), 1)
    return np.where(counts > 0, sums / np.maximum(counts, 1), mean[:, None]).astype(np.float32)


def match(strip: Strip, codes: Patterns, alike: Likeness) -> Match | None:
    """The code of a book that fits a strip best, and by how much; None where none comes near."""
    count = codes.modules
    px = strip.region.length / count
    weights = kernel(_KERNEL)
    first, last = (np.array([end[side] for end in alike.ends]) for side in (0, 1))
    seen = standardised(_seen(strip, first, last, count))
    spread = _spread(seen, weights, count)
    scores = codes.products(-spread)
    scores /= codes.length(weights)
    best = scores.argmax(1)
    top = scores[np.arange(len(best)), best]
    if top.max() < _CODE:
        return None
    profile = _profile(strip)
    fits = []
    for i in np.argsort(-top)[:_STARTS_KEPT]:
        upright = bool(first[i] < last[i])
        looked, ends = (profile, (first[i], last[i])) if upright else (profile.reversed(), (-first[i], -last[i]))
        bits = codes.bits(best[i : i + 1])[0]
        fits.append((fit(looked, bits, *ends, FIRST_SIGMA, px), looked, bits, upright))
        if fits[-1][0].explained > _GOOD:
            break
    found, looked, bits, upright = max(fits, key=lambda one: one[0].explained)
    if found.explained < _HOPEFUL:
        return None
    found = sharpened(looked, bits, found, px)
    return _decided(looked, found, codes, upright, weights)


def _profile(strip: Strip) -> Profile:
    place = np.arange(0.5, len(strip.sums))
    return Profile(place, strip.sums / np.maximum(strip.counts, 1), strip.counts)


def _spread(seen: Values, weights: Values, count: int) -> Values:
    """Seen modules weighted as blurred bars would be: their product with bits is that of levels with blurred bits."""
    reach = len(weights) // 2
    wide = np.zeros((len(seen), seen.shape[1] + 2 * reach), seen.dtype)
    wide[:, reach:-reach] = seen
    full = sum(w * wide[:, k : k + seen.shape[1]] for k, w in enumerate(weights))
    return np.asarray(full[:, QUIET : QUIET + count], np.float32)


def _decided(profile: Profile, found: Fit, codes: Patterns, upright: bool, weights: Values) -> Match | None:
    """The whole book and all rivals at the geometry and blur found, by the bins themselves."""
    count = codes.modules
    at = found.modules(profile.place, count)
    used = (at > -QUIET) & (at < count + QUIET) & _shown(at, profile.weight > 0, count)
    if not used.any():
        return None
    at, root = at[used], np.sqrt(profile.weight[used])
    paper = np.linalg.qr(np.vander(2 * at / count - 1, _SHADES) * root[:, None])[0]
    level = _beside(paper, profile.level[used] * root)
    total = float(level @ level)
    seen = _beside(paper, indicators(at, found.sigma, count) * root[:, None])
    normal = (seen.T @ seen).astype(np.float32)
    product = (seen.T @ level).astype(np.float32)
    lines = codes.products(-product[None])[0]
    near = np.maximum(lines, 0) / codes.length(weights)
    nearest = np.flatnonzero(near >= _NEAR * near.max())
    if len(nearest) > _CODES_KEPT:
        nearest = nearest[np.argpartition(-near[nearest], _CODES_KEPT)[:_CODES_KEPT]]
    drawn = codes.bits(nearest)
    explained = _explained(drawn, product, normal)
    order = np.argsort(-explained)
    code, best = nearest[order[0]], float(explained[order[0]])
    second = float(explained[order[1]]) if len(order) > 1 else 0.0
    bits = drawn[order[0]]
    others = _rivals(bits, product, normal)
    others = others[(others != bits).any(1)]
    if len(others):
        second = max(second, float(_explained(others, product, normal).max()))
    freedom = max(min(len(at) - 5 - _SHADES, 6 * count), 10)
    noise = max(total - best, 1e-6) / freedom
    ends = (found.first, found.last) if upright else (-found.first, -found.last)
    return Match(codes.texts[code], *ends, (best - second) / noise, best / max(total, 1e-9))


def _shown(at: NDArray[np.float64], seen: NDArray[np.bool_], count: int) -> NDArray[np.bool_]:
    """Which bins count: those that are seen, but of a symbol character that is mostly hidden none.

    Beside a reflex bars have another contrast, and the little that is left of a character could fit any.
    """
    module = np.clip(at, 0, count - 1).astype(np.intp)
    there = np.bincount(module, seen, count) > 0
    place = np.arange(count) // SYMBOL
    share = np.bincount(place, there) / np.bincount(place)
    return np.asarray(seen & (share[place[module]] >= _LEAST_SEEN))


def _beside(paper: NDArray[np.float64], rows: NDArray[np.float64]) -> NDArray[np.float64]:
    """What of rows (bins[, columns]) the level of the paper does not explain, which an orthonormal base spans."""
    return np.asarray(rows - paper @ (paper.T @ rows))


def _explained(bits: Values, product: Values, normal: Values) -> Values:
    """How much of the squared level each code explains with a contrast of its own; nothing with light bars."""
    lines = -(bits @ product)
    power = ((bits @ normal) * bits).sum(1)
    return np.where(lines > 0, lines * lines / np.maximum(power, 1e-9), 0.0)


@lru_cache(maxsize=8)
def _combined(count: int) -> NDArray[np.intp]:
    """Every start with every choice of symbols for so many positions: (1 + count, combinations)."""
    shape = (len(STARTS), *[_SYMBOLS_KEPT] * count)
    return np.indices(shape).reshape(len(shape), -1)


def _rivals(bits: Values, product: Values, normal: Values) -> Values:
    """What else could stand there: the symbols that fit best at each position, combined, their checks right."""
    count = (len(bits) - len(STOP)) // SYMBOL
    choices = []
    for position in range(1, count - 1):
        tried = np.repeat(bits[None], CHARACTERS, 0)
        tried[:, SYMBOL * position : SYMBOL * (position + 1)] = SYMBOLS[:CHARACTERS]
        choices.append(np.argsort(-_explained(tried, product, normal))[:_SYMBOLS_KEPT])
    starts, *places = _combined(len(choices))
    symbols = with_check(np.stack([np.array(STARTS)[starts], *(c[i] for c, i in zip(choices, places, strict=True))], 1))
    return with_stop(SYMBOLS[symbols].reshape(len(symbols), -1))
