"""How long things stay, from a shop's own stays: those that ended, and those still open, which are censored.

The product-limit curve of E. L. Kaplan and P. Meier, "Nonparametric estimation from incomplete observations",
J. American Statistical Association 53 (1958).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from math import log

from scanflow.domain.life import StayState
from scanflow.domain.things import Stay

SECONDS_OF_DAY = 86400.0
_ROUNDING = 1e-12


class NothingEnded(ValueError):
    """No stay has ended yet, so nothing can be said about how long they last."""


@dataclass(frozen=True, slots=True)
class Observed:
    """One stay: `days` long so far, and whether it `ended` then or was still open."""

    days: float
    ended: bool


@dataclass(frozen=True, slots=True)
class Step:
    """From day `day` on, a share `surviving` of things is still there."""

    day: float
    surviving: float


@dataclass(frozen=True, slots=True)
class StayEstimate:
    """How long things stay, in days.

    `restricted` is the mean up to the last day observed (`horizon`), `tail` what lies beyond it, `mean` their sum.
    `median` is None while more than half would still be there. `shorter_of_two`: as `sizing.Demand` wants it.
    """

    ended: int
    still_open: int
    horizon: float
    restricted: float
    tail: float
    median: float | None
    shorter_of_two: float
    curve: tuple[Step, ...]

    @property
    def mean(self) -> float:
        return self.restricted + self.tail

    def assumptions(self) -> tuple[str, ...]:
        """What the estimate takes for granted, as sentences."""
        said = [
            f"Stays that have ended: {self.ended:,}. "
            f"Things still here, counted as staying at least this long: {self.still_open:,}.",
            "Things still here will sell as fast as earlier things did after the same time, and trade stays as it was.",
        ]
        if self.tail:
            said.append(
                f"Nothing was watched beyond {self.horizon:.0f} days, where {self.curve[-1].surviving:.0%} are still "
                f"there. What happens later is estimated; it makes up {self.tail / self.mean:.0%} of the average."
            )
        return tuple(said)


def observe(stays: Iterable[Stay], now: datetime) -> tuple[Observed, ...]:
    """The stays of one section as observations; a move from one of its slots to another does not end a stay."""
    by_item: dict[str, list[Stay]] = {}
    for stay in sorted(stays, key=lambda each: each.began):
        by_item.setdefault(stay.item, []).append(stay)
    observed = []
    for chain in by_item.values():
        began = chain[0].began
        for index, stay in enumerate(chain):
            following = chain[index + 1] if index + 1 < len(chain) else None
            if following is not None and stay.state is StayState.MOVED and following.began == stay.ended:
                continue
            days = ((stay.ended or now) - began).total_seconds() / SECONDS_OF_DAY
            observed.append(Observed(days, stay.ended is not None))
            began = following.began if following is not None else began
    return tuple(observed)


def kaplan_meier(observed: Sequence[Observed]) -> tuple[Step, ...]:
    """The curve, a step for every day on which something ended or was last seen. ValueError for a time below 0."""
    if any(each.days < 0 for each in observed):
        raise ValueError("a stay can't last less than no time")
    ended = Counter(each.days for each in observed if each.ended)
    seen = Counter(each.days for each in observed)
    at_risk, surviving = len(observed), 1.0
    steps = []
    for day in sorted(seen):
        surviving *= 1 - ended[day] / at_risk
        steps.append(Step(day, surviving))
        at_risk -= seen[day]
    return tuple(steps)


def estimate(observed: Sequence[Observed]) -> StayEstimate:
    """Mean, median and curve of the stays; `NothingEnded` when none has ended.

    Beyond the last observation, if it is a stay still open, the curve goes on as the exponential that passes
    through its last point: B. W. Brown, M. Hollander, R. M. Korwar, in Reliability and Biometry (SIAM, 1974).
    """
    curve = kaplan_meier(observed)
    if not any(each.ended for each in observed) or curve[-1].day == 0:
        raise NothingEnded("No stay has ended yet. Type how long things stay instead.")
    last = curve[-1]
    tail = tail_of_two = 0.0
    if last.surviving > 0:
        rate = -log(last.surviving) / last.day
        tail, tail_of_two = last.surviving / rate, last.surviving**2 / (2 * rate)
    restricted = _area(curve, 1)
    return StayEstimate(
        ended=sum(each.ended for each in observed),
        still_open=sum(not each.ended for each in observed),
        horizon=last.day,
        restricted=restricted,
        tail=tail,
        median=next((step.day for step in curve if step.surviving <= 0.5 + _ROUNDING), None),
        shorter_of_two=(_area(curve, 2) + tail_of_two) / (restricted + tail),
        curve=curve,
    )


def _area(curve: Sequence[Step], power: int) -> float:
    """Area under the curve to that power, from day 0 to its last."""
    area, day, height = 0.0, 0.0, 1.0
    for step in curve:
        area += (step.day - day) * height**power
        day, height = step.day, step.surviving
    return area
