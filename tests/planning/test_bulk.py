"""Slots per bin, waste and the split in two."""

from __future__ import annotations

from itertools import product
from random import Random

import pytest

from scanflow.planning.bulk import SURE, NothingFits, best_split, bulk, equal_count, fitting
from scanflow.planning.measures import Size, size

BIN = size("23x8x6in")


@pytest.mark.parametrize(
    ("thing", "count"),
    [
        ("1.15x6x7.8in", 20),  # a bin holds about 20 light items (common practice, no source)
        ("2.2x5x8in", 10),  # or 10 bulky ones (common practice, no source)
        ("23x8x6in", 1),
        ("6x8x23in", 1),  # turned
        ("24x8x6in", 0),  # too long whichever way
        ("5x4x3in", 14),  # on its end: seven along, two across
    ],
)
def test_things_of_one_size(thing: str, count: int) -> None:
    """So many things of one size stand in a 23 x 8 x 6 in bin, turned the best way, in one layer."""
    assert count == fitting(size(thing), BIN)


@pytest.mark.parametrize("seed", range(20))
def test_the_best_of_all_ways(seed: int) -> None:
    """No way to turn the things lets more stand than told, counted place by place."""
    random = Random(seed)
    box = Size(*(random.randint(10, 60) for _ in range(3)))
    sides = [random.randint(3, 30) for _ in range(3)]
    most = 0
    for deep, wide, high in product(range(3), repeat=3):
        if {deep, wide, high} == {0, 1, 2} and sides[high] <= box.height:
            places = [
                (x, y)
                for x in range(0, int(box.depth) - sides[deep] + 1, sides[deep])
                for y in range(0, int(box.width) - sides[wide] + 1, sides[wide])
            ]
            most = max(most, len(places))
    assert most == fitting(Size(*sides), box)


@pytest.mark.parametrize("fit", [1, 2, 3, 7, 11, 13, 20, 48, 100])
def test_equal_things_fill_the_bin(fit: int) -> None:
    """When every thing takes 1/k of a bin, k go into it."""
    assert fit == equal_count([1 / fit] * 5)


@pytest.mark.parametrize("seed", range(5))
def test_the_chance_that_they_fit(seed: int) -> None:
    """Drawn at random, the number told fits at least as often as promised, and one more does not."""
    random = Random(seed)
    shares = [1 / random.randint(3, 25) for _ in range(30)]
    number = equal_count(shares)

    def fits(count: int) -> float:
        return sum(sum(random.choices(shares, k=count)) <= 1 + 1e-9 for _ in range(4000)) / 4000

    assert fits(number) > SURE - 0.015
    assert fits(number + 1) < SURE + 0.015


def test_all_alike_waste_little() -> None:
    """Things that fill the bin need no split and no warning."""
    answer = bulk([size("1.15x6x8in")] * 3, BIN)
    assert (20, None, ()) == (answer.count.slots_per_bin, answer.split, answer.warnings)
    assert answer.count.wasted < 0.01


LAMPS, WHEELS = size("2x7.5x6in"), size("11x8x6in")


def test_two_bulks_are_split() -> None:
    """Where lamps and wheels share a section, more than a fifth of a bin is wasted, and a split by bulk is proposed."""
    answer = bulk([LAMPS] * 20 + [WHEELS] * 10, BIN)
    assert answer.count.wasted > 0.2
    assert answer.split is not None
    assert (12, 12, 2) == (answer.split.limit, answer.split.small.slots_per_bin, answer.split.large.slots_per_bin)
    bins = 20 / 12 + 10 / 2, 30 / answer.count.slots_per_bin
    assert pytest.approx(1 - bins[0] / bins[1]) == answer.split.saved
    assert "2 in a bin" in answer.warnings[0] and f"{answer.split.saved:.0%}" in answer.warnings[0]


@pytest.mark.parametrize("seed", range(5))
def test_no_split_is_better(seed: int) -> None:
    """Of all limits the one told needs the fewest bins."""
    random = Random(seed)
    held = sorted(((fit, 0.9 / fit) for fit in (random.choice((2, 3, 8, 12, 20)) for _ in range(25))), reverse=True)

    def bins(group: list[tuple[int, float]]) -> float:
        return len(group) / equal_count([1 / fit for fit, _ in group])

    saved = [
        1 - (bins([p for p in held if p[0] >= limit]) + bins([p for p in held if p[0] < limit])) / bins(held)
        for limit in sorted({fit for fit, _ in held})[1:]
    ]
    best = best_split(held)
    assert pytest.approx(max(saved)) == (best.saved if best else 0.0)


def test_awkward_things_waste_what_no_split_saves() -> None:
    """Things that leave much of the floor free however they stand are told, and no split is proposed."""
    answer = bulk([size("12x7x5in")] * 4, BIN)
    assert (1, None) == (answer.count.slots_per_bin, answer.split)
    assert "saves no bins" in answer.warnings[0]


def test_things_too_big_are_told() -> None:
    """Things that go into no such bin are counted, and left out."""
    answer = bulk([LAMPS, LAMPS, size("30x9x9in")], BIN)
    assert (12, 1) == (answer.count.slots_per_bin, answer.too_big)
    assert "1 of 3 things" in answer.warnings[0]


def test_nothing_fits() -> None:
    """Where nothing goes into the bin there is no number."""
    with pytest.raises(NothingFits):
        bulk([size("30x9x9in")], BIN)


@pytest.mark.parametrize("shares", [[0.0], [1.2], [0.5, -0.1]])
def test_no_shares(shares: list[float]) -> None:
    """A share of nothing, or of more than a bin, is an error."""
    with pytest.raises(ValueError, match="share"):
        equal_count(shares)
