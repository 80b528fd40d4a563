"""Which free slot the next item gets."""

from __future__ import annotations

from random import Random

import pytest

from scanflow.planning.placing import Visit, compare, place


def history(seed: int) -> list[Visit]:
    """Up to 200 things that come and leave on whole days or at any moment."""
    random = Random(seed)
    whole = seed % 2
    visits = []
    for _ in range(random.randint(1, 200)):
        came, stay = random.uniform(0, 300), random.expovariate(1 / random.choice((3, 20, 90)))
        came, stay = (round(came), max(1, round(stay))) if whole else (came, stay)
        visits.append(Visit(came, came + stay, random.random() < 0.4))
    return sorted(visits, key=lambda visit: visit.came)


def most_held(visits: list[Visit]) -> int:
    """The most things held at once, counted anew at every coming; who leaves at that moment has left."""
    return max(sum(other.came <= visit.came < other.left for other in visits) for visit in visits)


@pytest.mark.parametrize("block", range(10))
def test_the_highest_slot_is_the_peak(block: int) -> None:
    """With the lowest free number the highest one ever used is the most things held at once: 500 random histories."""
    for seed in range(60 * block, 60 * block + 60):
        visits = history(seed)
        assert most_held(visits) == max(place(visits)), seed


@pytest.mark.parametrize("seed", range(40))
@pytest.mark.parametrize("reserved", [0, 7])
def test_the_lowest_number_that_is_free(seed: int, reserved: int) -> None:
    """Everyone gets the lowest number free for them, and no number is held by two things at once."""
    visits = history(seed)
    numbers = place(visits, reserved)
    for at, (visit, number) in enumerate(zip(visits, numbers, strict=True)):
        taken = {numbers[before] for before in range(at) if visits[before].left > visit.came}
        first = 1 if visit.quick else reserved + 1
        assert number == next(n for n in range(first, len(visits) + reserved + 2) if n not in taken)


WALKS = [1.0, 1.0, 2.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0, 13.0, 14.0]


def test_near_places_for_quick_sellers() -> None:
    """Near places for quick sellers shorten the walk and keep more bins open, and both are measured."""
    answer = compare(35, 0.5, 10, 90, 20, WALKS)
    assert answer.metres_saved > 0.5
    assert answer.bins_more > 0
    assert answer.lowest.highest == answer.lowest.held
    assert answer.near.highest > answer.near.held
    assert answer.near.held == answer.lowest.held
    assert 0 == answer.reserved % 20
    assert answer == compare(35, 0.5, 10, 90, 20, WALKS)


def test_nothing_to_gain() -> None:
    """Where all bins are as far, or both kinds stay as long, there is next to nothing to gain."""
    assert 0 == compare(35, 0.5, 10, 90, 20, [4.0]).metres_saved
    assert compare(35, 0.5, 45, 45, 20, WALKS).metres_saved < 0.3


def test_the_walk_and_the_open_bins() -> None:
    """With one place for each thing and one bin all is known: the walk is there and back, and one bin is open."""
    answer = compare(700, 0.5, 10, 10, 100_000, [3.0], days=100)
    assert (6.0, 6.0) == (answer.lowest.walk, answer.near.walk)
    assert (1.0, pytest.approx(2.0)) == (answer.lowest.open_bins, answer.near.open_bins)


@pytest.mark.parametrize(
    "arguments", [(0, 0.5, 1, 1, 1, [1]), (1, 0, 1, 1, 1, [1]), (1, 0.5, 1, -1, 1, [1]), (1, 0.5, 1, 1, 1, [])]
)
def test_numbers_without_sense(arguments) -> None:
    """No intake, nobody quick, a stay below zero or no bins is an error."""
    with pytest.raises(ValueError):
        compare(*arguments)
