"""How many slots (and so cards and bins) a section needs, and how often none is free with those it has.

A section is a loss system (`erlang.py`): things come in, each takes a slot for as long as it stays, and one that
finds no free slot goes elsewhere.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import atan, ceil, hypot, isfinite, tau

from scanflow.planning.erlang import batch_blocking, blocking, load_for, places_for

DAYS_OF_WEEK = 7.0
WEEKS_OF_YEAR = 365.25 / DAYS_OF_WEEK
CURVE_POINTS = 60
WORST_SHOWN = 0.3  # risk where the curve begins
MOST = 10_000  # slots taken on average, and items of a buying day: beyond it a number is a slip of the hand


@dataclass(frozen=True, slots=True)
class Burst:
    """Buying days: `sizes` are the items that some of them brought, one number each."""

    sizes: tuple[int, ...]

    def __post_init__(self) -> None:
        if not self.sizes or not 1 <= min(self.sizes) <= max(self.sizes) <= MOST:
            raise ValueError(f"a buying day brings at least one item, and at most {MOST}")

    @property
    def mean(self) -> float:
        return sum(self.sizes) / len(self.sizes)

    def peakedness(self, shorter_of_two: float) -> float:
        """Variance over mean of the slots taken if none ever ran out, for buying days that come at random.

        z = 1 + (E[X²]/E[X] - 1) · E[min(S, S')]/E[S] for X items a day and stays S, S': the variance of an
        infinite-server queue with batches (D. N. Shanbhag, J. Applied Probability 3, 1966; from memory). It is at
        least 1, the value of items that come one by one.
        """
        return 1 + (sum(size**2 for size in self.sizes) / sum(self.sizes) - 1) * shorter_of_two


@dataclass(frozen=True, slots=True)
class Season:
    """Intake that swings as a sinusoid by `amplitude` (0 to 1, of its mean) over `period` days."""

    amplitude: float
    period: float = 365.0

    def __post_init__(self) -> None:
        if not (0 <= self.amplitude <= 1 and 0 < self.period < float("inf")):
            raise ValueError("a season swings by 0 to 1 of the mean, over a period above zero")

    def swing(self, stay: float) -> float:
        """Relative amplitude of the load for a mean stay in days: b/√(1 + (ωm)²), for exponential stays.

        S. G. Eick, W. A. Massey, W. Whitt, "Mt/G/∞ queues with sinusoidal arrival rates", Management Science 39
        (1993); that the peak of this load sizes the slots is the modified offered load of Massey and Whitt (1994).
        """
        return self.amplitude / hypot(1, tau * stay / self.period)

    def lag(self, stay: float) -> float:
        """Days by which the peak of the load follows the peak of the intake: atan(ωm)/ω."""
        return atan(tau * stay / self.period) * self.period / tau


@dataclass(frozen=True, slots=True)
class Demand:
    """What comes into a section: `intake` items a week, each staying `stay` days on average.

    `shorter_of_two` is the mean of the shorter of two stays over the mean stay: 1/2 when stays are exponential, 1
    when all are equal; only buying days need it. ValueError where a number makes no sense.
    """

    intake: float
    stay: float
    burst: Burst | None = None
    season: Season | None = None
    shorter_of_two: float = 0.5

    def __post_init__(self) -> None:
        if not all(isfinite(value) and value > 0 for value in (self.intake, self.stay)):
            raise ValueError("intake and stay must be above zero")
        if self.load > MOST:
            raise ValueError(f"that is more than {MOST} items at once")
        if not 0 <= self.shorter_of_two <= 1:
            raise ValueError("the shorter of two stays is no longer than one, and not below 0")

    @property
    def load(self) -> float:
        """Slots taken on average over the year if none ever ran out (Little's law)."""
        return self.intake / DAYS_OF_WEEK * self.stay

    @property
    def peak_load(self) -> float:
        """The load at the height of the season."""
        return self.load * (1 + self.season.swing(self.stay)) if self.season else self.load

    @property
    def peakedness(self) -> float:
        return self.burst.peakedness(self.shorter_of_two) if self.burst else 1.0

    def risk(self, slots: int) -> float:
        """Share of the items that find no free slot, at the height of the season.

        With buying days the larger of two: the exact share for exponential stays, and Hayward's approximation,
        which is close where what came together leaves together.
        """
        if self.burst is None:
            return blocking(self.peak_load, slots)
        return max(
            batch_blocking(self.peak_load, slots, self.burst.sizes),
            blocking(self.peak_load, slots, self.peakedness),
        )

    def slots(self, risk: float) -> int:
        """The fewest slots with which no more than `risk` (above 0, below 1) of the items find none free."""
        return places_for(risk, self.risk)

    def assumptions(self) -> tuple[str, ...]:
        """What the answer takes for granted, as sentences."""
        taken = f"{self.load:.1f}" if self.load >= 0.05 else "hardly any"
        said = [
            f"Things that come in a week: about {self.intake:g}. They stay {self.stay:.3g} days on average, so {taken} "
            "slots are taken on average.",
            "A thing that finds no free card is not put into this section later.",
        ]
        if self.burst is None:
            said.append("Things come one by one, at random. If you buy in batches, say so: it takes more cards.")
            said.append("Only the average time in stock matters, not how it varies.")
        else:
            said.append(
                f"Buying days come at random and bring {self.burst.mean:.3g} items on average; the slots taken vary "
                f"{self.peakedness:.2f} times as much as with items one by one. If they come on fixed days, the risk "
                "is lower."
            )
        if self.season is None:
            said.append("Intake is the same all year.")
        else:
            said.append(
                f"Intake swings by {self.season.amplitude:.0%} over {self.season.period:g} days; the slots taken swing "
                f"by {self.season.swing(self.stay):.1%} and peak {self.season.lag(self.stay):.1f} days later. The risk "
                "is that of the peak; over the year it is lower."
            )
        return tuple(said)


@dataclass(frozen=True, slots=True)
class Point:
    """`risk`: share of the items that find none of so many slots free."""

    slots: int
    risk: float


@dataclass(frozen=True, slots=True)
class Sizing:
    """The slots a section needs.

    `needed` is the fewest that keep the accepted risk, `chosen` fills `bins` with them, `one_more` has one bin on
    top. `curve` runs from few slots to many. `no_card_a_year`: items a year that find no card with the slots chosen.
    """

    demand: Demand
    accepted: float
    slots_per_bin: int
    needed: Point
    bins: int
    chosen: Point
    one_more: Point
    curve: tuple[Point, ...]
    assumptions: tuple[str, ...]

    @property
    def no_card_a_year(self) -> float:
        return self.demand.intake * WEEKS_OF_YEAR * self.chosen.risk

    @property
    def saved_by_one_more(self) -> float:
        """Items a year that one more bin gives a place to."""
        return self.demand.intake * WEEKS_OF_YEAR * (self.chosen.risk - self.one_more.risk)


def size_section(demand: Demand, risk: float, slots_per_bin: int) -> Sizing:
    """Slots, bins and the curve of risk for an accepted risk (above 0, below 1)."""
    if slots_per_bin < 1:
        raise ValueError("a bin holds at least one slot")
    needed = demand.slots(risk)
    return _sizing(demand, risk, slots_per_bin, needed, ceil(needed / slots_per_bin) * slots_per_bin)


def judge_section(demand: Demand, slots: int, slots_per_bin: int) -> Sizing:
    """The reverse: what so many slots are good for; the risk accepted is the one that they have."""
    if slots < 1 or slots_per_bin < 1:
        raise ValueError("a section, and a bin, has at least one slot")
    return _sizing(demand, demand.risk(slots), slots_per_bin, slots, slots)


def intake_carried(demand: Demand, slots: int, risk: float) -> float:
    """Items a week that so many slots carry at this risk, all else being as it is; 0 where batches alone exceed it.

    No more than keeps `MOST` items in store.
    """
    most = MOST * DAYS_OF_WEEK / demand.stay
    return load_for(risk, lambda intake: replace(demand, intake=intake).risk(slots) if intake < most else 1.0)


def _sizing(demand: Demand, risk: float, slots_per_bin: int, needed: int, chosen: int) -> Sizing:
    def point(slots: int) -> Point:
        return Point(slots, demand.risk(slots))

    return Sizing(
        demand,
        risk,
        slots_per_bin,
        point(needed),
        ceil(chosen / slots_per_bin),
        point(chosen),
        point(chosen + slots_per_bin),
        tuple(point(slots) for slots in _shown(demand, risk, {needed, chosen, chosen + slots_per_bin})),
        demand.assumptions(),
    )


def _shown(demand: Demand, risk: float, always: set[int]) -> list[int]:
    """Numbers of slots along the curve: about `CURVE_POINTS` of them, and those that must be there."""
    low = min(demand.slots(WORST_SHOWN), *always)
    high = max(demand.slots(max(risk, 1e-9) / 20), *always) if risk < 1 else max(always)
    return sorted({*range(low, high + 1, max(1, (high - low) // CURVE_POINTS)), *always})
