"""How many to count, and what a count says of the rest: exact, without a normal approximation.

Of an endless lot what is found wrong is binomial, of a room of so many bins hypergeometric. Chances are summed from
the ratios of neighbouring terms, all terms of the distribution together making 1.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

MOST = 100_000
"""Bins of a room."""

_TIE = 1e-9  # a chance so near to what is wanted is it: the last bin of twenty is missed by 5 %, not a hair more
_STEPS = 50  # to 1e-15, and never to 1 itself


def rate_between(wrong: int, counted: int, certainty: float = 0.95) -> tuple[float, float]:
    """Lowest and highest share (0 to 1) of an endless lot that `wrong` of `counted` speaks for.

    C. J. Clopper and E. S. Pearson, Biometrika 26 (1934). ValueError unless 0 <= wrong <= counted and counted > 0.
    """
    doubt = _doubt(certainty) / 2
    if not 0 <= wrong <= counted or not counted:
        raise ValueError("what is wrong is part of what was counted, and something was counted")
    n = np.arange(counted)
    steps = np.log((counted - n) / (n + 1))

    def up_to(k: int, rate: float) -> float:
        return _up_to(k, steps + np.log(rate / (1 - rate)))

    low = 0.0 if not wrong else _root(lambda rate: 1 - up_to(wrong - 1, rate) > doubt)
    return low, 1.0 if wrong == counted else _root(lambda rate: up_to(wrong, rate) <= doubt)


def wrong_between(wrong: int, counted: int, lot: int, certainty: float = 0.95) -> tuple[int, int]:
    """Fewest and most wrong in the whole `lot` that `wrong` of `counted` of it speaks for, those found among them.

    The numbers that a test of either side does not reject (hypergeometric). ValueError unless
    0 <= wrong <= counted <= lot and counted > 0.
    """
    doubt = _doubt(certainty) / 2
    if not 0 <= wrong <= counted <= lot <= MOST or not counted:
        raise ValueError(f"what is wrong is part of what was counted, and that of at most {MOST:,} bins")
    least, most = wrong, lot - (counted - wrong)
    if wrong:
        least = _first(least, most, lambda all_: 1 - found_up_to(wrong - 1, all_, counted, lot) > doubt + _TIE)
    return least, _first(least, most + 1, lambda all_: found_up_to(wrong, all_, counted, lot) <= doubt + _TIE) - 1


def too_many(lot: int, most: float) -> int:
    """The fewest wrong ones of the lot that are more than this share of it (0 to 1)."""
    return int(lot * most + _TIE) + 1  # 0.29 of 100 are 29, whatever binary fractions say


def to_count(lot: int, wrong: int, certainty: float = 0.95, allowed: int = 0) -> int:
    """The fewest of `lot` to draw so that, if `wrong` or more of it are wrong, more than `allowed` of those are drawn.

    With that certainty at least (hypergeometric); `allowed` 0 is the zero-error plan. ValueError unless
    0 <= allowed < wrong <= lot.
    """
    doubt = _doubt(certainty)
    if not 0 <= allowed < wrong <= lot <= MOST:
        raise ValueError(f"more are wrong than are allowed, and no more than the lot has, at most {MOST:,}")
    return _first(allowed + 1, lot, lambda count: found_up_to(allowed, wrong, count, lot) <= doubt + _TIE)


def found_up_to(k: int, wrong: int, counted: int, lot: int) -> float:
    """The chance that at most `k` wrong ones are among those counted, if `wrong` of the lot are (hypergeometric)."""
    fewest, most = max(0, counted + wrong - lot), min(counted, wrong)
    if not fewest <= k < most:
        return float(k >= most)
    n = np.arange(fewest, most, dtype=float)
    steps = np.log((wrong - n) * (counted - n)) - np.log((n + 1) * (lot - wrong - counted + n + 1))
    return _up_to(k - fewest, steps)


def _up_to(k: int, steps: NDArray[np.float64]) -> float:
    """The share of the first k + 1 terms, of which `steps` are the logarithms of each next one's ratio to the last."""
    terms = np.concatenate(([0.0], np.cumsum(steps)))
    weights = np.exp(terms - terms.max())
    return float(weights[: k + 1].sum() / weights.sum())


def _root(beyond: Callable[[float], bool]) -> float:
    """Where a share between 0 and 1 comes to be beyond, by halving."""
    low, high = 0.0, 1.0
    for _ in range(_STEPS):
        middle = (low + high) / 2
        low, high = (low, middle) if beyond(middle) else (middle, high)
    return high


def _first(low: int, high: int, fits: Callable[[int], bool]) -> int:
    """The first number from `low` on that fits, and so do all after it; `high` if none below it does."""
    while low < high:
        middle = (low + high) // 2
        low, high = (low, middle) if fits(middle) else (middle + 1, high)
    return high


def _doubt(certainty: float) -> float:
    if not 0 < certainty < 1:
        raise ValueError("a certainty is above 0 and below 1")
    return 1 - certainty
