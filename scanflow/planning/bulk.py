"""Slots per bin from the sizes of goods and of the bin, so that every bin of a section holds the same number.

Things stand beside and behind each other in one layer, never on top of each other, so that every card shows from
above. A thing of which k fit takes 1/k of a bin.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from scanflow.planning.measures import Size

GRAIN = 5040  # parts a bin is counted in; a multiple of most small numbers
SURE = 0.95  # chance that what is put into a bin fits
WASTE = 0.2  # share of a bin: above it a section is worth a split
_ROUNDING = 1e-6  # mm


class NothingFits(ValueError):
    """No thing of the sample goes into the bin."""


@dataclass(frozen=True, slots=True)
class Count:
    """So many of a group of things go into a bin.

    `wasted` is the share of its floor that they leave free on average; `shares` the share of a bin that each takes.
    """

    slots_per_bin: int
    wasted: float
    shares: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Split:
    """A section in two: things of which at least `limit` fit into a bin go to `small`, the others to `large`.

    `saved` is the share of the section's bins that the split makes unnecessary.
    """

    limit: int
    small: Count
    large: Count
    saved: float


@dataclass(frozen=True, slots=True)
class Bulk:
    """Slots per bin for a sample of things; `too_big` counts those that go into no such bin and are left out."""

    count: Count
    too_big: int
    split: Split | None
    warnings: tuple[str, ...]
    assumptions: tuple[str, ...]


def fitting(thing: Size, bin_: Size) -> int:
    """How many things of one size stand in a bin, turned the best of six ways; 0 if none does."""
    return max(_standing(sides, bin_) for sides in _ways(thing))


def _ways(thing: Size) -> set[tuple[float, float, float]]:
    a, b, c = thing.depth, thing.width, thing.height
    return {(a, b, c), (b, a, c), (a, c, b), (c, a, b), (b, c, a), (c, b, a)}


def _standing(sides: tuple[float, float, float], bin_: Size) -> int:
    depth, width, height = sides
    return _times(bin_.depth, depth) * _times(bin_.width, width) if height <= bin_.height + _ROUNDING else 0


def _times(room: float, side: float) -> int:
    return int((room + _ROUNDING) // side)


def _floor(thing: Size, bin_: Size) -> float:
    """Share of the bin's floor under a thing, turned as it stands when the most fit."""
    count, area = max((_standing(way, bin_), -way[0] * way[1]) for way in _ways(thing))
    return -area / (bin_.depth * bin_.width) if count else 0.0


def bulk(things: Sequence[Size], bin_: Size) -> Bulk:
    """Slots per bin for things like these, and a split by bulk if one number for all wastes too much.

    `NothingFits` when no thing goes into the bin.
    """
    counts = sorted(((fitting(thing, bin_), _floor(thing, bin_)) for thing in things), reverse=True)
    held = [pair for pair in counts if pair[0]]
    if not held:
        raise NothingFits("None of these things goes into such a bin.")
    count = _count(held)
    split = best_split(held) if count.wasted > WASTE else None
    too_big = len(counts) - len(held)
    warnings = []
    if too_big:
        warnings.append(f"{too_big} of {len(counts)} things go into no such bin; they are left out.")
    if count.wasted > WASTE:
        warnings.append(
            f"With {count.slots_per_bin} in every bin, {count.wasted:.0%} of a bin stays empty on average. "
            + _advice(split)
        )
    return Bulk(count, too_big, split, tuple(warnings), _assumptions(len(held)))


def _advice(split: Split | None) -> str:
    if split is None:
        return "Splitting the section saves no bins; a bin of another size may."
    return (
        f"Make two sections: things of which {split.limit} or more fit, {split.small.slots_per_bin} in a bin, and "
        f"bulkier ones, {split.large.slots_per_bin} in a bin. That saves {split.saved:.0%} of the bins."
    )


def _assumptions(sample: int) -> tuple[str, ...]:
    said = ["Things stand in one layer, so that every card shows from above; measure them as packed, card and all."]
    if sample > 1:
        said.append(
            f"The next things are like the {sample} measured, each as likely; what is put into a bin fits with a "
            f"chance of at least {SURE:.0%}. Measure at least 30."
        )
    else:
        said.append("All things are of this one size.")
    return tuple(said)


def best_split(held: Sequence[tuple[int, float]]) -> Split | None:
    """The split in two that needs the fewest bins, None if none saves any; `held` as (fit into a bin, floor share)."""
    whole = 1 / _count(held).slots_per_bin
    best: Split | None = None
    for lower, limit in pairwise(sorted({fit for fit, _ in held})):
        small = [pair for pair in held if pair[0] >= limit]
        large = [pair for pair in held if pair[0] <= lower]
        counts = _count(small), _count(large)
        share = len(small) / len(held)
        bins = share / counts[0].slots_per_bin + (1 - share) / counts[1].slots_per_bin
        saved = 1 - bins / whole
        if saved > (best.saved if best else 1e-9):
            best = Split(limit, *counts, saved)
    return best


def _count(held: Sequence[tuple[int, float]]) -> Count:
    shares = tuple(1 / fit for fit, _ in held)
    number = equal_count(shares)
    return Count(number, 1 - number * sum(floor for _, floor in held) / len(held), shares)


def equal_count(shares: Sequence[float]) -> int:
    """The most things, drawn at random from these shares of a bin (above 0, at most 1), that fit with chance `SURE`.

    At least 1. The distribution of their sum is computed on a grid of `GRAIN` parts of a bin, shares rounded down.
    """
    parts = np.floor(np.asarray(shares) * GRAIN + 1e-6).astype(int)
    if not 0 < min(shares) <= max(shares) <= 1:
        raise ValueError("a share of a bin is above 0 and at most 1")
    sizes, times = np.unique(np.maximum(parts, 1), return_counts=True)
    filled: NDArray[np.float64] = np.zeros(GRAIN + 1)
    filled[0] = 1.0
    number = 0
    while True:
        following = np.zeros(GRAIN + 1)
        for size, count in zip(sizes, times, strict=True):
            following[size:] += count / len(parts) * filled[: GRAIN + 1 - size]
        if number and following.sum() < SURE:
            return number
        filled, number = following, number + 1
