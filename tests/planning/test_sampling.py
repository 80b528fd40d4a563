"""How many to count, against published values, scipy, statsmodels and every way to draw from a small room."""

from __future__ import annotations

from itertools import combinations
from math import comb

import pytest
from scipy.stats import binomtest, hypergeom
from statsmodels.stats.proportion import proportion_confint

from scanflow.planning.sampling import MOST, found_up_to, rate_between, to_count, wrong_between


@pytest.mark.parametrize(
    ("wrong", "counted", "certainty", "low", "high"),
    [  # computed with scipy and statsmodels, which agree
        (4, 20, 0.90, 0.071354, 0.401028),
        (0, 100, 0.95, 0, 0.036217),
        (1, 100, 0.95, 0.000253, 0.054459),
        (5, 100, 0.95, 0.016432, 0.112835),
    ],
)
def test_clopper_pearson(wrong: int, counted: int, certainty: float, low: float, high: float) -> None:
    """The interval of an endless lot has the known values."""
    assert pytest.approx((low, high), abs=5e-7) == rate_between(wrong, counted, certainty)


@pytest.mark.parametrize("certainty", [0.5, 0.9, 0.95, 0.999])
@pytest.mark.parametrize("counted", [1, 2, 7, 60, 10_000])
def test_clopper_pearson_elsewhere(counted: int, certainty: float) -> None:
    """It is scipy's exact interval and statsmodels' (`beta`), of few and of many."""
    for wrong in {0, 1, counted // 3, counted - 1, counted}:
        ours = rate_between(wrong, counted, certainty)
        assert pytest.approx(tuple(binomtest(wrong, counted).proportion_ci(certainty)), rel=1e-7, abs=1e-12) == ours
        assert pytest.approx(proportion_confint(wrong, counted, 1 - certainty, "beta"), rel=1e-7, abs=1e-12) == ours


@pytest.mark.parametrize(
    ("lot", "share", "count"),
    # computed with scipy's hypergeometric distribution: D = floor(share · N) + 1 wrong at 95 %
    [(100, 2, 63), (300, 2, 104), (500, 2, 119), (1000, 2, 132), (3000, 2, 143), (500, 1, 196), (1000, 1, 238)],
)
def test_zero_error_plans(lot: int, share: int, count: int) -> None:
    """So many bins show at 95 % that no more than this per cent of a room are wrong, if none of them is."""
    assert count == to_count(lot, lot * share // 100 + 1)


@pytest.mark.parametrize(("share", "count"), [(0.05, 59), (0.02, 149), (0.01, 299), (0.005, 598)])
def test_zero_error_plans_of_a_large_room(share: float, count: int) -> None:
    """In the largest room they come near those of an endless lot, ln 0.05 / ln (1 - share), and never above."""
    # computed: the smallest n with (1 - share)^n <= 0.05
    assert count - 2 <= to_count(MOST, round(MOST * share)) <= count


@pytest.mark.parametrize(
    ("lot", "count"), [(50, 8), (90, 13), (150, 20), (280, 32), (500, 50), (1200, 80), (3200, 125)]
)
def test_beside_a_standard_for_lots(lot: int, count: int) -> None:
    """The sample of MIL-STD-105E, level II, for each size of lot finds with 95 % what a plan of ours says it finds."""
    # MIL-STD-105E, table I, general inspection level II: the upper end of each range of lot sizes
    found = next(wrong for wrong in range(1, lot) if to_count(lot, wrong) <= count)
    assert hypergeom(lot, found, count).pmf(0) <= 0.05 < hypergeom(lot, found - 1, count).pmf(0)
    assert 2 < count * found / lot < 3  # the rule of three of an endless lot, 3 / n, and less of a small one


def test_every_small_plan() -> None:
    """In every room of up to 14 bins a plan is the fewest for which counting all draws gives that certainty."""
    for lot in range(1, 15):
        for wrong in range(1, lot + 1):
            for allowed in range(wrong):
                for certainty, hundredths in ((0.5, 50), (0.95, 95)):
                    plan = to_count(lot, wrong, certainty, allowed)
                    enough = [
                        _found_more(allowed, wrong, n, lot) * 100 >= hundredths * comb(lot, n) for n in range(lot + 1)
                    ]
                    assert enough.index(True) == plan


def _found_more(allowed: int, wrong: int, count: int, lot: int) -> int:
    """In how many of all draws more than `allowed` are wrong, in whole numbers."""
    return sum(comb(wrong, k) * comb(lot - wrong, count - k) for k in range(allowed + 1, min(wrong, count) + 1))


def test_a_plan_by_drawing() -> None:
    """Of ten bins, three wrong, all draws listed one by one: six bins are the fewest that find one with 95 %."""
    missed = {n: sum(min(draw) >= 3 for draw in combinations(range(10), n)) / comb(10, n) for n in (5, 6)}
    assert missed[6] <= 0.05 < missed[5]
    assert 6 == to_count(10, 3)


@pytest.mark.parametrize("lot", [1, 2, 9, 40])
@pytest.mark.parametrize("certainty", [0.8, 0.95])
def test_what_a_count_says_of_the_rest(lot: int, certainty: float) -> None:
    """Whatever is wrong in a room, the interval of what is found holds it with the certainty, by scipy's chances."""
    for counted in {1, lot // 2, lot - 1, lot} - {0}:
        intervals = [wrong_between(found, counted, lot, certainty) for found in range(counted + 1)]
        for wrong in range(lot + 1):
            chances = hypergeom(lot, wrong, counted).pmf(range(counted + 1))
            held = sum(chance for chance, (low, high) in zip(chances, intervals, strict=True) if low <= wrong <= high)
            assert held >= certainty - 1e-9


@pytest.mark.parametrize(("wrong", "counted", "lot"), [(0, 104, 300), (2, 50, 300), (5, 20, 40), (3, 1000, 100_000)])
def test_bounds_of_the_rest(wrong: int, counted: int, lot: int) -> None:
    """A bound is the last number that scipy's chances do not reject, on either side."""
    low, high = wrong_between(wrong, counted, lot)
    assert hypergeom(lot, high + 1, counted).cdf(wrong) <= 0.025 < hypergeom(lot, high, counted).cdf(wrong)
    if wrong:
        assert hypergeom(lot, low - 1, counted).sf(wrong - 1) <= 0.025 < hypergeom(lot, low, counted).sf(wrong - 1)


def test_a_plan_and_what_it_says_agree() -> None:
    """If nothing is wrong in a plan's sample, fewer are wrong than the plan was for; with less they may be as many."""
    for lot, wrong in ((100, 3), (300, 7), (5000, 51)):
        plan = to_count(lot, wrong)
        most, more = (wrong_between(0, drawn, lot, 0.9)[1] for drawn in (plan, plan - 1))  # 5 % on either side
        assert most < wrong <= more


def test_all_counted() -> None:
    """When every bin was counted nothing is left open, and of a few bins nothing better than all is known."""
    assert [(0, 0), (3, 3), (20, 20)] == [wrong_between(wrong, 20, 20) for wrong in (0, 3, 20)]
    assert (20, 19) == (to_count(20, 1, 0.96), to_count(20, 1, 0.95))


def test_monotone() -> None:
    """More is counted for more certainty, for fewer wrong, for more allowed and in a larger room."""
    rows = (
        [to_count(1000, 10, certainty) for certainty in (0.5, 0.8, 0.9, 0.95, 0.99)],
        [to_count(1000, wrong) for wrong in (200, 50, 20, 10, 5, 2, 1)],
        [to_count(1000, 10, allowed=allowed) for allowed in range(10)],
        [to_count(lot, lot // 50) for lot in (50, 100, 300, 1000, 10_000, MOST)],
    )
    assert [sorted(set(row)) for row in rows] == list(rows)


@pytest.mark.parametrize(
    ("k", "wrong", "counted"), [(0, 1, 1), (0, 500, 700), (20, 1000, 3000), (4000, 40_000, 10_000)]
)
def test_chances_in_the_largest_room(k: int, wrong: int, counted: int) -> None:
    """Chances are the exact quotient of whole numbers, also where those have hundreds of thousands of figures."""
    exact = sum(comb(wrong, j) * comb(MOST - wrong, counted - j) for j in range(k + 1) if k < 100)
    whole = comb(MOST, counted)
    expected = (exact * 10**18 // whole) / 10**18 if k < 100 else hypergeom(MOST, wrong, counted).cdf(k)
    assert pytest.approx(expected, rel=1e-8, abs=1e-15) == found_up_to(k, wrong, counted, MOST)


def test_a_large_room() -> None:
    """Of 100,000 bins, half of them wrong, five are enough; two wrong ones are missed together by the square root."""
    assert 5 == to_count(MOST, 50_001)
    left = MOST - to_count(MOST, 2)
    assert left * (left - 1) * 20 <= MOST * (MOST - 1) < (left + 1) * left * 20
    low, high = wrong_between(25_000, 50_000, MOST)
    assert pytest.approx(100_000, abs=1) == low + high and low < 50_000 < high


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: rate_between(3, 2),
        lambda: rate_between(0, 0),
        lambda: rate_between(0, 5, 1.0),
        lambda: wrong_between(0, 6, 5),
        lambda: wrong_between(0, 0, 5),
        lambda: to_count(5, 0),
        lambda: to_count(5, 6),
        lambda: to_count(5, 2, allowed=2),
        lambda: to_count(MOST + 1, 2),
    ],
)
def test_nonsense_is_refused(wrong) -> None:
    """What can't be is an error, never a number."""
    with pytest.raises(ValueError):
        wrong()
