"""Loss systems: how often all of n places are taken when one more is wanted.

A. K. Erlang's loss formula (1917) for places that are taken for a time of any distribution by things that come at
random. Load is in erlang: places that would be taken on average if there were always one free (J. D. C. Little's
law, Operations Research 9, 1961: arrivals per day times days of stay).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import exp, gamma, inf, pow

import numpy as np

_TINY = 1e-14
_LARGE = 1e200

_LEAST = 1e-6  # a load of practically nothing: what is blocked then are batches larger than all places


def blocking(load: float, places: float, peakedness: float = 1.0) -> float:
    """Share (0 to 1) of arrivals that find no place free.

    Above a peakedness of 1 (variance over mean of the places taken if there were always one free) this is W. S.
    Hayward's approximation, B(n/z, A/z): A. A. Fredericks, "Congestion in blocking systems: a simple approximation
    technique", Bell System Technical Journal 59 (1980). ValueError unless load > 0, places >= 0, peakedness > 0.
    """
    if not (0 < load < inf and 0 <= places < inf and 0 < peakedness < inf):
        raise ValueError("the load and the peakedness must be above zero, and the places not below")
    a, x = load / peakedness, places / peakedness
    start = x - int(x)
    inverse = 1.0 if start == 0 else _inverse_below_one(a, start)
    for step in range(1, int(x) + 1):
        inverse = 1 + (start + step) / a * inverse
    return 1 / inverse


def _inverse_below_one(a: float, x: float) -> float:
    """1 / B(x, a) for 0 < x < 1, as e^a · a^-x · Γ(x + 1, a): D. L. Jagerman, Bell System Technical Journal 53, 1974.

    The incomplete gamma function by its series below a = 1, by its continued fraction (Lentz) from there on.
    """
    s = x + 1
    if a < 1:
        term = total = 1 / s
        k = 1
        while term > _TINY * total:
            term *= a / (s + k)
            total += term
            k += 1
        return exp(a) * pow(a, -x) * gamma(s) - a * total
    b = a + 1 - s
    c, d = 1 / _TINY, 1 / b
    fraction = d
    k = 1
    while True:
        factor = -k * (k - s)
        b += 2
        d = 1 / (b + factor * d)
        c = b + factor / c
        fraction *= c * d
        if abs(c * d - 1) < _TINY:
            return a * fraction
        k += 1


def batch_blocking(load: float, places: int, sizes: Sequence[int]) -> float:
    """Share of the items that find no place free when they come in batches of these sizes, each as likely.

    Batches come at random, their items leave one by one after exponential times; as many as fit are taken in. The
    balance of a cut between k and k + 1 places taken, (k + 1) p[k + 1] = λ Σ p[i] P(X > k - i), in mean stays.
    """
    if not (0 < load < inf and places >= 0 and len(sizes) and min(sizes) >= 1):
        raise ValueError("the load must be above zero, the places not below, and a batch has at least one item")
    size = np.asarray(sizes, dtype=float)[:, None]
    over = np.arange(size.max())
    longer = (size > over).mean(axis=0)  # P(X > j)
    excess = np.maximum(size - over, 0).mean(axis=0)  # E[(X - j)+]
    rate = load / excess[0]
    taken = np.zeros(places + 1)
    taken[0] = 1.0
    for k in range(places):
        recent = taken[max(0, k + 1 - len(longer)) : k + 1][::-1]
        taken[k + 1] = rate / (k + 1) * (recent @ longer[: len(recent)])
        if taken[k + 1] > _LARGE:
            taken[: k + 2] /= _LARGE
    last = taken[max(0, places + 1 - len(excess)) :][::-1]
    return float(last @ excess[: len(last)] / excess[0] / taken.sum())


def places_for(risk: float, blocked: Callable[[int], float]) -> int:
    """The fewest places, at least 1, of which `blocked`, falling with their number, is at most `risk` (0 to 1)."""
    _check(risk)
    low, high = 0, 1
    while blocked(high) > risk:
        low, high = high, 2 * high
    while high - low > 1:
        middle = (low + high) // 2
        if blocked(middle) > risk:
            low = middle
        else:
            high = middle
    return high


def load_for(risk: float, blocked: Callable[[float], float]) -> float:
    """The load at which `blocked`, rising with it, is just `risk` (0 to 1); 0 where the least load exceeds it."""
    _check(risk)
    if blocked(_LEAST) >= risk:
        return 0.0
    low, high = 0.0, 1.0
    while blocked(high) < risk:
        low, high = high, 2 * high
    while high - low > 1e-12 * high:
        middle = (low + high) / 2
        if blocked(middle) < risk:
            low = middle
        else:
            high = middle
    return high


def _check(risk: float) -> None:
    if not 0 < risk < 1:
        raise ValueError("the risk must lie between 0 and 1")
