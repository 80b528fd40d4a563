from itertools import combinations, pairwise, permutations
from math import dist
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scanflow.planning.salesman import EXACT_UP_TO, one_tree_bound, room_tour
from scanflow.planning.walking import Ladder, ladder_tour


def scatter(random: Random, count: int) -> list[list[float]]:
    """Straight-line distances between points of a room of 20 by 12 metres."""
    points = [(random.uniform(0, 20), random.uniform(0, 12)) for _ in range(count)]
    return [[dist(a, b) for b in points] for a in points]


def ladder_room(random: Random, count: int) -> tuple[list[list[float]], float]:
    """Distances of a ladder-shaped room and the length of its shortest tour, known from its own exact method."""
    ladder = Ladder(8, 2.2, 12.5, 7.0)
    stops = [(random.randrange(8), random.uniform(0, 12.5)) for _ in range(count)]
    nodes = [(ladder.table, 0.0), *(ladder.node(stop) for stop in stops)]
    return [[ladder.distance(a, b) for b in nodes] for a in nodes], ladder_tour(ladder, stops).length


def walked(distances: list[list[float]], order: tuple[int, ...]) -> float:
    """Length of the walk from the table past the stops in this order and back."""
    return sum(distances[a][b] for a, b in pairwise([0, *(index + 1 for index in order), 0]))


matrices = st.builds(lambda seed, count: scatter(Random(seed), count), st.integers(0, 10**6), st.integers(1, 24))


@pytest.mark.parametrize("seed", range(120))
def test_few_places_are_exact(seed):
    """With few places the tour is the shortest of all orders, and says so."""
    random = Random(seed)
    distances = scatter(random, random.randint(1, 8))
    tour = room_tour(distances)
    shortest = min(walked(distances, order) for order in permutations(range(len(distances) - 1)))
    assert pytest.approx(shortest) == tour.length
    assert (tour.length, True) == (tour.lower_bound, tour.exact)


@pytest.mark.parametrize("seed", range(25))
@pytest.mark.parametrize("count", [EXACT_UP_TO, 20, 60])
def test_bound_and_tour_enclose_the_optimum(seed, count):
    """The bound is at most, the tour at least the shortest tour, known here from the exact method for ladders."""
    distances, optimum = ladder_room(Random(seed), count)
    tour = room_tour(distances)
    assert tour.lower_bound <= optimum * (1 + 1e-9)
    assert tour.length >= optimum * (1 - 1e-9)
    assert not tour.exact or pytest.approx(optimum) == tour.length


@pytest.mark.parametrize("seed", range(60))
def test_one_tree_bound_is_below_the_optimum(seed):
    """The 1-tree bound never exceeds the shortest tour, and comes within 5 % of it in scattered rooms."""
    random = Random(seed)
    distances = scatter(random, random.randint(3, 10))
    optimum = room_tour(distances).length
    bound = one_tree_bound(distances, optimum * 1.1)
    assert bound <= optimum * (1 + 1e-9)
    assert bound >= optimum * 0.95


@settings(max_examples=60)
@given(matrices)
def test_the_order_is_a_walk_of_that_length(distances):
    """Every stop is in the order once, walking it takes the length given, and the bound is not above it."""
    tour = room_tour(distances)
    assert list(range(len(distances) - 1)) == sorted(tour.order)
    assert pytest.approx(walked(distances, tour.order)) == tour.length
    assert tour.lower_bound <= tour.length


@settings(max_examples=40)
@given(matrices)
def test_no_exchange_shortens_a_tour(distances):
    """Turning round any stretch of the tour found doesn't make it shorter."""
    tour = room_tour(distances)
    for i, j in combinations(range(len(tour.order) + 1), 2):
        turned = tour.order[:i] + tour.order[i:j][::-1] + tour.order[j:]
        assert tour.length <= walked(distances, turned) + 1e-6


@settings(max_examples=40)
@given(st.integers(0, 10**6), st.integers(2, EXACT_UP_TO + 1))
def test_one_more_stop_never_shortens(seed, count):
    """Among exact tours the one with a stop more is never shorter."""
    distances = scatter(Random(seed), count)
    fewer = [row[:-1] for row in distances[:-1]]
    assert room_tour(fewer).length <= room_tour(distances).length + 1e-9


def test_the_bound_can_prove_many_places():
    """Where the bound meets the tour, a tour of many places is known to be shortest: once around a ring."""
    distances = [[float(min((a - b) % 30, (b - a) % 30)) for b in range(30)] for a in range(30)]
    tour = room_tour(distances)
    expected = (30.0, 30.0, True)
    assert expected == (tour.length, tour.lower_bound, tour.exact)


def test_same_places_follow_each_other():
    """Stops at one place are visited together and in the order given, those at the table first; of the two ways
    round it is the one that begins with what was given first."""
    points = [0, 5, 9, 5, 0, 9, 5]
    distances = [[float(abs(a - b)) for b in points] for a in points]
    expected = (3, 0, 2, 5, 1, 4)
    assert expected == room_tour(distances).order


@pytest.mark.parametrize(
    ("distances", "words"),
    [
        ([], "square"),
        ([[0, 1]], "square"),
        ([[1.0]], "distance 0 from itself"),
        ([[0, 1], [2, 0]], "one number"),
        ([[0, -1], [-1, 0]], "one number"),
        ([[0, float("nan")], [float("nan"), 0]], "one number"),
        ([[0, 1, 9], [1, 0, 1], [9, 1, 0]], "by way of 1"),
    ],
)
def test_what_is_no_table_of_walking_distances(distances, words):
    """A matrix that can't be walking distances is refused, as no bound would be proven for it."""
    with pytest.raises(ValueError, match=words):
        room_tour(distances)
