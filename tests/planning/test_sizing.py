"""Slots of a section: demand, season, buying days, the curve and the reverse."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from scanflow.planning.erlang import batch_blocking, blocking
from scanflow.planning.sizing import Burst, Demand, Season, intake_carried, judge_section, size_section

FIVE_A_DAY = Demand(intake=35, stay=60)


@pytest.mark.parametrize(("risk", "slots"), [(0.01, 324), (0.001, 344), (0.0001, 359)])
def test_five_a_day_for_sixty_days(risk: float, slots: int) -> None:
    """Little's law gives 300 slots taken, and the risk says how many more are needed."""
    # computed by the recursion with an independent program
    assert 300 == FIVE_A_DAY.load
    assert slots == size_section(FIVE_A_DAY, risk, 1).chosen.slots


def test_bins_are_filled_and_one_more_is_told() -> None:
    """What is chosen fills its bins, keeps the accepted risk, and one more bin lowers it by what is said."""
    sizing = size_section(FIVE_A_DAY, 0.01, 20)
    assert (324, 17, 340, 360) == (
        sizing.needed.slots,
        sizing.bins,
        sizing.chosen.slots,
        sizing.one_more.slots,
    )
    assert sizing.one_more.risk < sizing.chosen.risk < sizing.needed.risk <= 0.01
    items = 35 * 365.25 / 7
    assert pytest.approx(items * blocking(300, 340)) == sizing.no_card_a_year
    assert pytest.approx(items * (blocking(300, 340) - blocking(300, 360))) == sizing.saved_by_one_more


@pytest.mark.parametrize(
    "demand", [FIVE_A_DAY, Demand(2, 10), Demand(10, 40, Burst((4, 12))), Demand(35, 60, season=Season(0.5))]
)
def test_the_curve_falls_through_its_chosen_point(demand: Demand) -> None:
    """The curve falls from a high risk to one far below the accepted one, and every point is the demand's own risk."""
    sizing = size_section(demand, 0.01, 20)
    assert all(left.slots < right.slots and left.risk > right.risk for left, right in pairwise(sizing.curve))
    assert {sizing.needed, sizing.chosen, sizing.one_more} <= set(sizing.curve)
    assert all(point.risk == demand.risk(point.slots) for point in sizing.curve)
    assert sizing.curve[0].risk > 0.15
    assert sizing.curve[-1].risk <= max(0.01 / 15, sizing.one_more.risk)
    assert len(sizing.curve) < 130


def test_the_reverse() -> None:
    """With 120 cards the risk is the formula's, and the intake that they carry at that risk is the one they have."""
    judged = judge_section(Demand(14, 55), 120, 20)
    assert blocking(110, 120) == judged.accepted == judged.chosen.risk
    assert (120, 6) == (judged.chosen.slots, judged.bins)
    assert pytest.approx(14) == intake_carried(Demand(14, 55), 120, judged.accepted)


@pytest.mark.parametrize(
    ("stay", "swing", "lag"),  # from memory: b/√(1 + (ωm)²) and atan(ωm)/ω for b = 0.5 and 365 days
    [(30, 0.444, 27.7), (60, 0.348, 46.6), (90, 0.271, 58.0)],
)
def test_a_season_comes_later_and_flatter(stay: float, swing: float, lag: float) -> None:
    """The load of a sinusoidal intake swings less than the intake, and later."""
    season = Season(0.5, 365)
    assert (swing, lag) == (round(season.swing(stay), 3), round(season.lag(stay), 1))


def test_a_season_against_its_differential_equation() -> None:
    """The peak of the load and its day are those of dm/dt = intake(t) - m/stay, integrated by scipy."""
    demand = Demand(intake=35, stay=45, season=Season(0.6, 365))

    def change(day, taken):
        return 5 * (1 + 0.6 * np.cos(2 * np.pi * day / 365)) - taken / 45

    days = np.arange(3 * 365, 4 * 365, 0.05)
    taken = solve_ivp(change, (0, 4 * 365), [0.0], t_eval=days, rtol=1e-9, atol=1e-9).y[0]
    assert pytest.approx(taken.max(), rel=1e-5) == demand.peak_load
    assert pytest.approx(days[taken.argmax()] - 3 * 365, abs=0.3) == demand.season.lag(45)


def test_the_season_sizes_for_its_peak() -> None:
    """With a season the risk is the one of the peak load."""
    demand = Demand(35, 60, season=Season(0.5))
    assert pytest.approx(300 * 1.348, rel=1e-3) == demand.peak_load
    assert blocking(demand.peak_load, 420) == demand.risk(420)


@pytest.mark.parametrize("sizes", [(5,), (2, 8), (1, 1, 30)])
@pytest.mark.parametrize(("stays", "shorter"), [("exponential", 0.5), ("equal", 1.0)])
def test_peakedness_of_a_crowd_without_limit(sizes: tuple[int, ...], stays: str, shorter: float) -> None:
    """Variance over mean of the items present, drawn with numpy for batches at random, is the peakedness."""
    random = np.random.default_rng(7)
    present = []
    for _ in range(4000):
        days = random.uniform(0, 12, random.poisson(12))  # a batch a mean stay, over twelve of them
        items = np.repeat(days, random.choice(sizes, len(days)))
        stayed = random.exponential(1, len(items)) if stays == "exponential" else np.ones(len(items))
        present.append(int((stayed > items).sum()))
    expected = Burst(sizes).peakedness(shorter)
    assert pytest.approx(expected, rel=0.12) == np.var(present) / np.mean(present)


def test_buying_days_take_the_larger_risk() -> None:
    """The risk of buying days is never below that of either way to compute it."""
    for shorter in (0.5, 0.8, 1.0):
        demand = Demand(10, 42, Burst((3, 9)), shorter_of_two=shorter)
        ways = batch_blocking(60, 80, (3, 9)), blocking(60, 80, demand.peakedness)
        assert max(ways) == demand.risk(80)
    assert Demand(10, 42).slots(0.01) < Demand(10, 42, Burst((3, 9))).slots(0.01)


def test_the_assumptions_are_said() -> None:
    """The answer says what it takes for granted: buying days and season, or that there are none."""
    plain = " ".join(size_section(FIVE_A_DAY, 0.01, 20).assumptions)
    full = " ".join(size_section(Demand(35, 60, Burst((4, 12)), Season(0.5)), 0.01, 20).assumptions)
    assert "one by one, at random" in plain and "same all year" in plain and "300.0 slots" in plain
    assert "bring 8 items" in full and "5.50 times" in full and "peak 46.6 days later" in full


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Demand(0, 60),
        lambda: Demand(5, float("nan")),
        lambda: Demand(1e6, 60),
        lambda: Burst((3, 10**9)),
        lambda: Demand(5, 60, shorter_of_two=1.2),
        lambda: Burst(()),
        lambda: Burst((3, 0)),
        lambda: Season(1.1),
        lambda: Season(0.5, 0),
        lambda: size_section(FIVE_A_DAY, 0.01, 0),
        lambda: judge_section(FIVE_A_DAY, 0, 20),
    ],
)
def test_numbers_without_sense(wrong) -> None:
    """An intake, stay, batch, season or bin that can't be is an error."""
    with pytest.raises(ValueError):
        wrong()


def test_batches_larger_than_all_slots_carry_nothing() -> None:
    """However seldom they come, buying days of twenty things don't fit into nine slots at one in a hundred."""
    demand = Demand(10, 60, Burst((4, 12, 20)))

    assert 0.0 == intake_carried(demand, 9, 0.01)
    assert 0 < intake_carried(Demand(10, 60), 9, 0.01)


def test_so_many_slots_that_any_intake_would_do() -> None:
    """Where as many slots stand as can be reckoned with, the intake is that which keeps so many items."""
    assert pytest.approx(7 * 10_000 / 9) == intake_carried(Demand(9, 9), 12_000, 0.01)
