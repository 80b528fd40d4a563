"""Which bins to count: drawn blind, or in turn, so that every bin is seen and busy ones more often. Pure.

What is expected in a bin is nowhere here: a list of bins can't tell it to who counts.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from hashlib import sha256

WEEK = timedelta(days=7)
BUSY: tuple[tuple[float, int], ...] = ((4.0, 4), (2.0, 2))
"""(times as many visits as a bin has on average, times as often counted), the busiest first.

Common practice, no source: stock that moves more is counted more often, in three classes.
"""


@dataclass(frozen=True, slots=True)
class BinToCount:
    """A bin, when it was last counted (None for never) and how often a week it is visited."""

    name: str
    counted: datetime | None = None
    visits: float = 0.0


@dataclass(frozen=True, slots=True)
class Due:
    """A bin to count now: how long its turn is in weeks, and how many days of it are left, below zero if overdue."""

    name: str
    turn: int
    left: float


@dataclass(frozen=True, slots=True)
class Cycle:
    """How many bins to count each week, and which are due now, the most overdue first."""

    a_week: int
    due: tuple[Due, ...]


def draw(names: Iterable[str], count: int, seed: str) -> tuple[str, ...]:
    """So many of these bins, each as likely as another; the same of the same bins and seed, in any order of theirs.

    A larger draw of the same seed holds the smaller one. ValueError if there are not so many bins.
    """
    known = sorted(set(names))
    if not 0 <= count <= len(known):
        raise ValueError(f"of {len(known)} bins between none and all can be drawn")
    lots = sorted(known, key=lambda name: sha256(f"{seed}\n{name}".encode()).digest())
    return tuple(lots[:count])


def cycle(bins: Sequence[BinToCount], weeks: int, now: datetime, began: datetime) -> Cycle:
    """The plan that shows every bin within `weeks`, busy ones in a half or a quarter of that, and what it wants now.

    A bin that was never counted waits since `began`, when the plan was made. Bins of one turn follow each other, the
    one that waits longest first, as many a week as all of them take in one turn: so if each week's are counted, none
    waits longer than its turn. Those counted in the last seven days are off this week's number, and never due.
    """
    if weeks < 1:
        raise ValueError("every bin in at least one week")
    turns = _turns(bins, weeks)
    a_week, due = 0, []
    for turn in sorted(set(turns.values())):
        alike = [each for each in bins if turns[each.name] == turn]
        share = -(-len(alike) // turn)
        a_week += share
        due += _due(alike, turn, share, now, began)
    return Cycle(a_week, tuple(sorted(due, key=lambda each: (each.left, each.name))))


def _turns(bins: Sequence[BinToCount], weeks: int) -> dict[str, int]:
    """The turn of each bin in whole weeks."""
    mean = sum(each.visits for each in bins) / len(bins) if bins else 0.0
    often = {
        each.name: next((times for busy, times in BUSY if mean and each.visits >= busy * mean), 1) for each in bins
    }
    return {name: max(1, weeks // times) for name, times in often.items()}


def _due(alike: Sequence[BinToCount], turn: int, share: int, now: datetime, began: datetime) -> list[Due]:
    """Of bins of one turn those that make up this week's share, and all that have waited for a turn or longer."""
    waiting = [
        Due(each.name, turn, (turn * WEEK - (now - (each.counted or began))) / timedelta(days=1))
        for each in alike
        if each.counted is None or now - each.counted >= WEEK
    ]
    waiting.sort(key=lambda each: (each.left, each.name))
    room = max(0, share - (len(alike) - len(waiting)))
    return waiting[:room] + [each for each in waiting[room:] if each.left <= 0]
