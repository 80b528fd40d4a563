from itertools import pairwise, permutations
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.planning.walking import Ladder, Stop, Tour, ladder_tour

# Ladder of pitch 2 and length 10, start and end at (0, 0): optimum by brute force, S-shape and largest gap by their
# definitions. (computed with independent programs)
CHECK_VALUES = [
    ([(0, 3), (0, 8), (1, 2), (2, 9), (3, 1), (3, 6), (4, 5), (5, 4)], 64, 80, 66),
    ([(1, 1), (1, 9), (2, 5), (4, 2), (4, 3), (5, 10)], 48, 60, 56),
]


def graph_distances(ladder: Ladder, stops: list[Stop]) -> list[list[float]]:
    """Walking distances between table and stops from an explicit graph of the room (Floyd-Warshall), table first."""
    named = {("table",): (ladder.table, 0.0)}
    named |= {("stop", index): (aisle * ladder.pitch, y) for index, (aisle, y) in enumerate(stops)}
    for aisle in range(ladder.aisles):
        named["front", aisle] = (aisle * ladder.pitch, 0.0)
        named["back", aisle] = (aisle * ladder.pitch, ladder.length)
    names = list(named)
    far = {(a, b): 0.0 if a == b else float("inf") for a in names for b in names}

    def chain(members: list[tuple], axis: int) -> None:
        for a, b in pairwise(sorted(members, key=lambda name: named[name][axis])):
            far[a, b] = far[b, a] = abs(named[a][axis] - named[b][axis])

    for aisle in range(ladder.aisles):
        inside = [name for name in names if name[0] == "stop" and stops[name[1]][0] == aisle]
        chain([("front", aisle), ("back", aisle), *inside], axis=1)
    chain([("table",), *(name for name in names if name[0] == "front")], axis=0)
    chain([name for name in names if name[0] == "back"], axis=0)
    for via in names:
        for a in names:
            for b in names:
                far[a, b] = min(far[a, b], far[a, via] + far[via, b])
    wanted = [("table",), *(("stop", index) for index in range(len(stops)))]
    return [[far[a, b] for b in wanted] for a in wanted]


def walked(distances: list[list[float]], order: tuple[int, ...]) -> float:
    """Length of the walk from the table past the stops in this order and back."""
    places = [0, *(index + 1 for index in order), 0]
    return sum(distances[a][b] for a, b in pairwise(places))


def brute_force(distances: list[list[float]]) -> float:
    """Length of the shortest of all orders."""
    return min(walked(distances, order) for order in permutations(range(len(distances) - 1)))


def s_shape(ladder: Ladder, stops: list[Stop]) -> float:
    """Length of the S-shape heuristic with the table at the first aisle: aisles with stops are walked through."""
    used = sorted({aisle for aisle, _ in stops})
    cross = 2 * used[-1] * ladder.pitch
    if len(used) % 2 == 0:
        return cross + len(used) * ladder.length
    turn = max(y for aisle, y in stops if aisle == used[-1])
    return cross + (len(used) - 1) * ladder.length + 2 * turn


def largest_gap(ladder: Ladder, stops: list[Stop]) -> float:
    """Length of the largest gap heuristic, table at the first aisle: only the first and last aisle are walked through,
    the others are entered from both sides up to their largest gap."""
    used = sorted({aisle for aisle, _ in stops})
    total = 2 * used[-1] * ladder.pitch + 2 * ladder.length
    for aisle in used[1:-1]:
        ys = sorted([0, ladder.length, *(y for other, y in stops if other == aisle)])
        total += 2 * (ladder.length - max(b - a for a, b in pairwise(ys)))
    return total


@st.composite
def rooms(draw: st.DrawFn, most: int) -> tuple[Ladder, list[Stop]]:
    aisles = draw(st.integers(1, 7))
    length = draw(st.sampled_from([1, 4.5, 10, 23.7]))
    ladder = Ladder(aisles, draw(st.sampled_from([0.9, 2, 6.25])), length, draw(st.sampled_from([0, 1.8, 5, -3.1, 40])))
    place = st.tuples(st.integers(0, aisles - 1), st.integers(0, 12).map(lambda part: length * part / 12))
    return ladder, draw(st.lists(place, max_size=most))


@pytest.mark.parametrize(("stops", "optimum", "s_length", "gap_length"), CHECK_VALUES)
def test_check_values(stops, optimum, s_length, gap_length):
    """The tour is as long as the shortest of all orders, and the customary heuristics are longer."""
    ladder = Ladder(6, 2, 10)
    assert optimum == ladder_tour(ladder, stops).length
    assert optimum == brute_force(graph_distances(ladder, stops))
    assert (s_length, gap_length) == (s_shape(ladder, stops), largest_gap(ladder, stops))


@pytest.mark.parametrize("seed", range(400))
def test_shortest_of_all_orders(seed):
    """In random rooms no order of the stops is shorter by walking distances of an independent graph of the room."""
    random = Random(seed)
    ladder = Ladder(random.randint(1, 6), random.uniform(0.5, 6), random.uniform(1, 15), random.choice([0, 3, -2, 9.5]))
    ys = [0, ladder.length, *(random.uniform(0, ladder.length) for _ in range(6))]
    stops = [(random.randrange(ladder.aisles), random.choice(ys)) for _ in range(random.randint(0, 6))]
    distances = graph_distances(ladder, stops)
    tour = ladder_tour(ladder, stops)
    assert pytest.approx(brute_force(distances)) == tour.length
    assert pytest.approx(walked(distances, tour.order)) == tour.length


@pytest.mark.parametrize("seed", range(60))
def test_distance_is_that_of_the_graph(seed):
    """The closed form of the walking distance agrees with shortest paths in an explicit graph of the room."""
    random = Random(seed)
    ladder = Ladder(5, random.uniform(0.5, 6), random.uniform(1, 15), random.uniform(-5, 30))
    stops = [(random.randrange(5), random.uniform(0, ladder.length)) for _ in range(6)]
    nodes = [(ladder.table, 0.0), *(ladder.node(stop) for stop in stops)]
    expected = graph_distances(ladder, stops)
    assert [pytest.approx(row) for row in expected] == [[ladder.distance(a, b) for b in nodes] for a in nodes]


@given(rooms(most=40))
def test_the_order_is_a_walk_of_that_length(room):
    """Every stop is in the order once, and walking it takes the length given."""
    ladder, stops = room
    tour = ladder_tour(ladder, stops)
    assert list(range(len(stops))) == sorted(tour.order)
    table = (ladder.table, 0.0)
    nodes = [table, *(ladder.node(stops[index]) for index in tour.order), table]
    assert pytest.approx(sum(ladder.distance(a, b) for a, b in pairwise(nodes))) == tour.length


@given(rooms(most=25), st.data())
def test_one_more_stop_never_shortens(room, data):
    """The shortest tour with one stop more is never shorter."""
    ladder, stops = room
    if not stops:
        stops = [(0, 0.0)]
    dropped = data.draw(st.integers(0, len(stops) - 1))
    fewer = stops[:dropped] + stops[dropped + 1 :]
    assert ladder_tour(ladder, fewer).length <= ladder_tour(ladder, stops).length + 1e-9


@given(rooms(most=25), st.randoms(use_true_random=False))
def test_same_places_follow_each_other(room, random):
    """Stops at one place are visited together, in the order given, and the places don't depend on that order."""
    ladder, stops = room
    twice = stops + stops
    order = ladder_tour(ladder, twice).order
    places = [twice[index] for index in order]
    runs = sum(1 for index, place in enumerate(places) if index == 0 or place != places[index - 1])
    assert len(set(stops)) == runs
    assert all(a < b for a, b in pairwise(order) if twice[a] == twice[b])
    shuffled = random.sample(twice, len(twice))
    assert places == [shuffled[index] for index in ladder_tour(ladder, shuffled).order]


@given(rooms(most=25))
def test_mirrored_room(room):
    """A room seen in a mirror, its last aisle first, takes a walk of the same length."""
    ladder, stops = room
    far = (ladder.aisles - 1) * ladder.pitch
    mirror = Ladder(ladder.aisles, ladder.pitch, ladder.length, far - ladder.table)
    mirrored = [(ladder.aisles - 1 - aisle, y) for aisle, y in stops]
    assert pytest.approx(ladder_tour(mirror, mirrored).length) == ladder_tour(ladder, stops).length


def test_no_stops():
    """A round without stops is no walk at all."""
    assert Tour((), 0.0) == ladder_tour(Ladder(3, 2, 10), [])


@pytest.mark.parametrize("stop", [(-1, 1.0), (3, 1.0), (0, -0.1), (0, 10.1), (0, float("nan"))])
def test_places_outside_the_room(stop):
    """A stop that the room doesn't have is an error, not a walk through the wall."""
    with pytest.raises(ValueError, match="no such place"):
        ladder_tour(Ladder(3, 2, 10), [stop])


@pytest.mark.parametrize("sizes", [(0, 2, 10), (3, 0, 10), (3, 2, -1), (3, float("inf"), 10), (3, 2, 10, float("nan"))])
def test_impossible_rooms(sizes):
    """A room without aisles or with an extent that isn't one is refused."""
    with pytest.raises(ValueError, match="ladder"):
        Ladder(*sizes)
