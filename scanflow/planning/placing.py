"""Which free slot the next item gets.

The lowest free number keeps bins full: the highest number ever used is the most items held at once (stays are
intervals, and the lowest free number is the greedy colouring of an interval graph). Keeping the bins near the table
for what sells quickly shortens the walk and keeps more bins open; `compare` measures both in a simulation.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from heapq import heappop, heappush
from itertools import count
from random import Random

from scanflow.planning.erlang import blocking, places_for

WARM_UP = 5  # mean stays before anything is measured
RESERVED_RISK = 0.05  # quick sellers that find no slot near the table


@dataclass(frozen=True, slots=True)
class Visit:
    """A thing that comes on a day and leaves on a later one; `quick` if it was expected to sell soon."""

    came: float
    left: float
    quick: bool = False


@dataclass(frozen=True, slots=True)
class PlacingResult:
    """What a way of placing led to.

    `walk`: metres to the bin and back, mean over the things that left. `open_bins`: bins with anything in them, mean
    over time. `highest`: the highest number used; `held`: the most things held at once.
    """

    walk: float
    open_bins: float
    highest: int
    held: int


@dataclass(frozen=True, slots=True)
class Comparison:
    """Both ways with the same things; the numbers up to `reserved` are kept for quick sellers in `near`."""

    lowest: PlacingResult
    near: PlacingResult
    reserved: int
    assumptions: tuple[str, ...]

    @property
    def metres_saved(self) -> float:
        """Metres a pick that keeping near places saves; below 0 where it costs some."""
        return self.lowest.walk - self.near.walk

    @property
    def bins_more(self) -> float:
        """Bins more that stand open for it."""
        return self.near.open_bins - self.lowest.open_bins


class Numbers:
    """Free numbers from `first` on, handed out lowest first, without end."""

    def __init__(self, first: int = 1, last: int | None = None) -> None:
        self._free: list[int] = []
        self._fresh = count(first) if last is None else iter(range(first, last + 1))

    def take(self) -> int | None:
        """The lowest free number; None when all are taken."""
        return heappop(self._free) if self._free else next(self._fresh, None)

    def give_back(self, number: int) -> None:
        heappush(self._free, number)


def place(visits: Iterable[Visit], reserved: int = 0) -> tuple[int, ...]:
    """The number that each thing gets, in the order of coming; a slot freed at a moment is free for who comes then.

    Quick sellers get the lowest free number; others the lowest above `reserved`, so that those stay for the quick.
    """
    near, far = Numbers(1, reserved), Numbers(reserved + 1)
    leaving: list[tuple[float, int]] = []
    numbers = []
    for visit in sorted(visits, key=lambda each: each.came):
        while leaving and leaving[0][0] <= visit.came:
            freed = heappop(leaving)[1]
            (near if freed <= reserved else far).give_back(freed)
        number = near.take() if visit.quick else None
        number = far.take() if number is None else number
        assert number is not None  # numbers above the reserved ones never end
        heappush(leaving, (visit.left, number))
        numbers.append(number)
    return tuple(numbers)


def compare(
    intake: float,
    quick_share: float,
    quick_stay: float,
    slow_stay: float,
    slots_per_bin: int,
    walks: Sequence[float],
    *,
    days: float = 730.0,
    seed: int = 1,
) -> Comparison:
    """Lowest number against near places for quick sellers, for things that come at random (`intake` a week).

    A share of them is quick; both kinds stay exponential times of these means in days. `walks`: metres from the table
    to the bins of the section, in the order of their numbers; the last counts for all beyond. ValueError where a
    number makes no sense.
    """
    if not (intake > 0 and 0 < quick_share < 1 and min(quick_stay, slow_stay, days) > 0 and slots_per_bin >= 1):
        raise ValueError("intake, stays and days are above zero, and some things, not all, are quick")
    if not walks or min(walks) < 0:
        raise ValueError("say how far the bins are, not below zero")
    start = WARM_UP * max(quick_stay, slow_stay)
    visits = _simulated(intake / 7, quick_share, quick_stay, slow_stay, start + days, Random(seed))
    load = intake / 7 * quick_share * quick_stay
    reserved = places_for(RESERVED_RISK, lambda slots: blocking(load, slots))
    reserved = -(-reserved // slots_per_bin) * slots_per_bin
    lowest, near = (
        _outcome(visits, place(visits, kept), slots_per_bin, walks, start, start + days) for kept in (0, reserved)
    )
    return Comparison(
        lowest,
        near,
        reserved,
        (
            f"The computer played through {days:.0f} days, after {start:.0f} days to fill the room: {intake:g} things "
            f"a week come at random, {quick_share:.0%} of them quick ({quick_stay:g} days on average, the "
            f"others {slow_stay:g}).",
            "Which ones are quick is known when they come; who guesses wrong gains less.",
            "Every thing is fetched by itself; in a round of several stops the gain is smaller.",
        ),
    )


def _simulated(
    a_day: float, quick_share: float, quick_stay: float, slow_stay: float, until: float, random: Random
) -> list[Visit]:
    visits, day = [], random.expovariate(a_day)
    while day < until:
        quick = random.random() < quick_share
        visits.append(Visit(day, day + random.expovariate(1 / (quick_stay if quick else slow_stay)), quick))
        day += random.expovariate(a_day)
    return visits


def _outcome(
    visits: Sequence[Visit],
    numbers: Sequence[int],
    slots_per_bin: int,
    walks: Sequence[float],
    start: float,
    end: float,
) -> PlacingResult:
    """`visits` in the order of coming; walks and open bins between the days `start` and `end`."""
    bins = [(number - 1) // slots_per_bin for number in numbers]
    picked = [
        2 * walks[min(where, len(walks) - 1)]
        for visit, where in zip(visits, bins, strict=True)
        if start <= visit.left <= end
    ]
    changes = sorted(
        change
        for visit, where in zip(visits, bins, strict=True)
        for change in ((visit.came, 1, where), (visit.left, -1, where))
    )
    filled: dict[int, int] = {}
    held = most = 0
    open_days, since = 0.0, start
    for day, step, where in changes:
        if start < day <= end:
            open_days += (day - since) * len(filled)
            since = day
        held += step
        most = max(most, held)
        filled[where] = filled.get(where, 0) + step
        if not filled[where]:
            del filled[where]
    return PlacingResult(
        sum(picked) / len(picked) if picked else 0.0,
        open_days / (since - start) if since > start else float(len(filled)),
        max(numbers, default=0),
        most,
    )
