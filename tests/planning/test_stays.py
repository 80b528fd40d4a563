"""How long things stay, against lifelines."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from random import Random

import numpy as np
import pytest
from lifelines import KaplanMeierFitter
from lifelines.utils import restricted_mean_survival_time
from scipy.integrate import quad

from scanflow.domain.life import StayState
from scanflow.domain.things import Stay
from scanflow.planning.stays import NothingEnded, Observed, estimate, kaplan_meier, observe


def drawn(seed: int, count: int = 120, whole_days: bool = False) -> list[Observed]:
    """Stays of about 60 days, watched for up to 150 days each."""
    random = Random(seed)
    pairs = [(random.expovariate(1 / 60), random.uniform(1, 150)) for _ in range(count)]
    days = [min(pair) for pair in pairs]
    return [
        Observed(float(round(day)) if whole_days else day, stay <= watched)
        for day, (stay, watched) in zip(days, pairs, strict=True)
    ]


def fitted(observed: list[Observed]) -> KaplanMeierFitter:
    return KaplanMeierFitter().fit([each.days for each in observed], [each.ended for each in observed])


@pytest.mark.parametrize("whole_days", [False, True])
@pytest.mark.parametrize("seed", range(6))
def test_the_curve_is_that_of_lifelines(seed: int, whole_days: bool) -> None:
    """Curve, median and mean up to the last day are those of lifelines, ties included."""
    observed = drawn(seed, whole_days=whole_days)
    fitter, mine = fitted(observed), estimate(observed)
    theirs = fitter.survival_function_at_times([step.day for step in mine.curve]).to_numpy()
    assert pytest.approx(theirs) == [step.surviving for step in mine.curve]
    assert fitter.median_survival_time_ == mine.median
    assert pytest.approx(restricted_mean_survival_time(fitter, t=mine.horizon)) == mine.restricted


def test_a_curve_by_hand() -> None:
    """Ended at 6, 6, 6, 7 and 10, still open at 6, 9, 10 and 11: the shares left are the products of the textbook."""
    # the first rows of the 6-MP arm of Freireich et al. (1963), from memory; products by hand
    observed = [Observed(d, True) for d in (6, 6, 6, 7, 10)] + [Observed(d, False) for d in (6, 9, 10, 11)]
    assert [6, 7, 9, 10, 11] == [step.day for step in kaplan_meier(observed)]
    shares = [6 / 9, 6 / 9 * 4 / 5, 6 / 9 * 4 / 5, 6 / 9 * 4 / 5 * 2 / 3, 6 / 9 * 4 / 5 * 2 / 3]
    assert pytest.approx(shares) == [step.surviving for step in kaplan_meier(observed)]


def test_the_tail_is_the_exponential_through_the_last_point() -> None:
    """Beyond the last observation the curve is S(t) = S(last)^(t/last), integrated by scipy."""
    observed = drawn(3)
    mine = estimate(observed)
    last = mine.curve[-1]
    assert last.surviving > 0
    tail, _ = quad(lambda day: last.surviving ** (day / last.day), last.day, np.inf)
    assert pytest.approx(tail) == mine.tail
    assert mine.restricted + mine.tail == mine.mean


def test_without_open_stays_the_mean_is_the_mean() -> None:
    """When everything ended there is no tail, and the mean and the mean of the shorter of two are the plain ones."""
    days = [3.0, 10.0, 20.0, 20.0, 47.0]
    mine = estimate([Observed(day, True) for day in days])
    shorter = np.mean([min(a, b) for a in days for b in days])
    assert (20.0, 0.0, 20.0) == (pytest.approx(mine.mean), mine.tail, mine.median)
    assert pytest.approx(shorter / 20) == mine.shorter_of_two


def test_censoring_is_not_thrown_away() -> None:
    """The estimate is near the true 60 days, where the ended stays alone would say far less."""
    observed = [each for seed in range(10) for each in drawn(seed)]
    ended = [each.days for each in observed if each.ended]
    assert pytest.approx(60, rel=0.06) == estimate(observed).mean
    assert np.mean(ended) < 45
    assert pytest.approx(0.5, abs=0.03) == estimate(observed).shorter_of_two


def test_no_median_while_most_are_there() -> None:
    """While more than half is still there, there is no median."""
    mine = estimate([Observed(5, True), Observed(9, False), Observed(9, False)])
    assert None is mine.median


@pytest.mark.parametrize("observed", [[], [Observed(5, False)], [Observed(0, True)]])
def test_nothing_ended(observed: list[Observed]) -> None:
    """Without a stay that ended after some time there is no estimate."""
    with pytest.raises(NothingEnded):
        estimate(observed)


START = datetime(2024, 3, 1, 9, tzinfo=UTC)


def stay(name: str, item: str, began: int, ended: int | None, state: StayState) -> Stay:
    end = None if ended is None else START + timedelta(days=ended)
    return Stay(name, item, "D001", 1, START + timedelta(days=began), state, end)


def test_stays_of_a_section_as_observations() -> None:
    """A move within the section goes on, a move away ends, a return begins anew, and what is here is still open."""
    stays = [
        stay("1", "lamp", 0, 10, StayState.MOVED),
        stay("2", "lamp", 10, 30, StayState.SHIPPED),
        stay("3", "saddle", 5, 12, StayState.MOVED),
        stay("4", "crank", 0, 4, StayState.SHIPPED),
        stay("5", "crank", 20, None, StayState.STORED),
    ]
    now = START + timedelta(days=40)
    assert {(30.0, True), (7.0, True), (4.0, True), (20.0, False)} == {
        (each.days, each.ended) for each in observe(stays, now)
    }
    assert 4 == len(observe(stays, now))
