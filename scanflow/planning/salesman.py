"""The order of stops of a round in a room of any shape: a good walk, and a proven bound on how good it can get.

Few places are solved exactly by the dynamic programme of M. Held and R. M. Karp (SIAM J. 10, 1962). More of them
are ordered by nearest neighbour, 2-opt and Or-opt, beside the 1-tree bound of Held and Karp (Operations Research
18, 1970; Mathematical Programming 1, 1971). A place here is an index into the distances; 0 is the table.
"""

from collections.abc import Sequence
from itertools import combinations, pairwise

from scanflow.planning.walking import Tour

Distances = Sequence[Sequence[float]]

EXACT_UP_TO = 10  # places besides the table
_EPSILON = 1e-9  # relative: below it two lengths count as equal


def room_tour(distances: Distances) -> Tour:
    """A short tour by a matrix of walking distances in metres; row and column 0 are the table, stop i is at i + 1.

    ValueError unless the matrix is square, symmetric, zero on the diagonal, nowhere negative, and nowhere longer
    than a walk by way of a third place. Stops at the same place follow each other in the order given.
    """
    _check(distances)
    groups: dict[tuple[float, ...], list[int]] = {}
    for index, row in enumerate(distances):
        groups.setdefault(tuple(row), []).append(index)
    places = list(groups.values())
    between = [[float(distances[a[0]][b[0]]) for b in places] for a in places]
    few = len(places) - 1 <= EXACT_UP_TO
    order = _optimal_order(between) if few else _good_order(between)
    if order and order[-1] < order[0]:
        order.reverse()
    length = _length(between, [0, *order])
    bound = length if few else min(length, one_tree_bound(between, length))
    stops = tuple(index - 1 for place in [0, *order] for index in places[place] if index)
    return Tour(stops, length, bound, exact=length - bound <= _EPSILON * length)


def one_tree_bound(distances: Distances, upper: float) -> float:
    """No tour of these places (at least 3) is shorter: the best 1-tree found by subgradient ascent.

    `upper` is the length of a known tour; it only sets the size of the steps, and the ascent ends where it is met.
    """
    size = len(distances)
    weights, momentum = [0.0] * size, [0] * size
    best, step, stale = 0.0, 2.0, 0
    while step > 1e-3 and upper - best > _EPSILON * upper:
        cost, degrees = _one_tree(distances, weights)
        bound = cost - 2 * sum(weights)
        stale = 0 if bound > best else stale + 1
        best = max(best, bound)
        if stale > 8:
            step, stale = step / 2, 0
        excess = [degree - 2 for degree in degrees]
        norm = sum(value * value for value in excess)
        if norm == 0:  # the 1-tree is a tour, and so a shortest one
            break
        scale = step * (upper - bound) / norm
        weights = [
            weight + scale * (0.7 * now + 0.3 * old) for weight, now, old in zip(weights, excess, momentum, strict=True)
        ]
        momentum = excess
    return best


def _check(distances: Distances) -> None:
    size = len(distances)
    if size == 0 or any(len(row) != size for row in distances):
        raise ValueError("the distances must be a square matrix with the table first")
    if any(distances[i][i] != 0 for i in range(size)):
        raise ValueError("a place must lie at distance 0 from itself")
    for i, j in combinations(range(size), 2):
        if not 0 <= distances[i][j] < float("inf") or distances[i][j] != distances[j][i]:
            raise ValueError(f"the distance between {i} and {j} must be one number, not below 0")
    for k, via in enumerate(distances):
        for i, row in enumerate(distances):
            reach = row[k]
            if any(direct > (reach + onward) * (1 + _EPSILON) for direct, onward in zip(row, via, strict=True)):
                raise ValueError(f"some walk from {i} is longer than by way of {k}")


def _length(distances: Distances, tour: Sequence[int]) -> float:
    return sum(distances[a][b] for a, b in pairwise([*tour, tour[0]]))


def _optimal_order(distances: Distances) -> list[int]:
    """Held & Karp 1962: the cheapest way from the table through each set of places to each of its members."""
    size = len(distances)
    if size == 1:
        return []
    cheapest = {(1 << place, place): (distances[0][place], 0) for place in range(1, size)}
    for visited in range(2, 1 << size, 2):
        members = [place for place in range(1, size) if visited >> place & 1]
        if len(members) < 2:
            continue
        for last in members:
            rest = visited ^ (1 << last)
            cheapest[visited, last] = min(
                (cheapest[rest, other][0] + distances[other][last], other) for other in members if other != last
            )
    visited = (1 << size) - 2
    last = min(range(1, size), key=lambda place: cheapest[visited, place][0] + distances[place][0])
    order: list[int] = []
    while last:
        order.append(last)
        visited, last = visited ^ (1 << last), cheapest[visited, last][1]
    return order[::-1]


def _good_order(distances: Distances) -> list[int]:
    """Nearest neighbour from the table, then 2-opt and Or-opt until neither shortens the tour."""
    tour, left = [0], set(range(1, len(distances)))
    while left:
        row = distances[tour[-1]]
        nearest = min(left, key=lambda place: (row[place], place))
        tour.append(nearest)
        left.remove(nearest)
    while _two_opt(distances, tour) or _or_opt(distances, tour):
        pass
    return tour[1:]


def _two_opt(distances: Distances, tour: list[int]) -> bool:
    """Turn stretches of the tour round where that shortens it; whether any was."""
    improved = False
    size = len(tour)
    for i in range(1, size - 1):
        for j in range(i + 1, size):
            a, b, c, d = tour[i - 1], tour[i], tour[j], tour[(j + 1) % size]
            if distances[a][c] + distances[b][d] < distances[a][b] + distances[c][d] - _EPSILON:
                tour[i : j + 1] = tour[i : j + 1][::-1]
                improved = True
    return improved


def _or_opt(distances: Distances, tour: list[int]) -> bool:
    """Move one stretch of up to three places elsewhere, either way round, where that shortens the tour (Or 1976)."""
    size = len(tour)
    for count in (1, 2, 3):
        for start in range(1, size - count + 1):
            first, last = tour[start], tour[start + count - 1]
            before, after = tour[start - 1], tour[(start + count) % size]
            gain = distances[before][first] + distances[last][after] - distances[before][after]
            rest = tour[:start] + tour[start + count :]
            for at, (a, b) in enumerate(pairwise([*rest, 0]), start=1):
                for head, tail in ((first, last), (last, first)):
                    if distances[a][head] + distances[tail][b] - distances[a][b] < gain - _EPSILON:
                        stretch = tour[start : start + count]
                        tour[:] = rest[:at] + (stretch if head == first else stretch[::-1]) + rest[at:]
                        return True
    return False


def _one_tree(distances: Distances, weights: list[float]) -> tuple[float, list[int]]:
    """Cost and degrees of the cheapest 1-tree: a spanning tree (Prim) of all but the table, and two edges to it."""
    size = len(distances)
    degrees = [0] * size
    two = sorted((distances[0][place] + weights[0] + weights[place], place) for place in range(1, size))[:2]
    cost = two[0][0] + two[1][0]
    degrees[0] = 2
    for _, place in two:
        degrees[place] += 1
    current, outside = 1, list(range(2, size))
    reach = {place: (float("inf"), 0) for place in outside}
    while outside:
        row, offset = distances[current], weights[current]
        for place in outside:
            edge = row[place] + offset + weights[place]
            if edge < reach[place][0]:
                reach[place] = (edge, current)
        nearest = min(outside, key=lambda place: reach[place][0])
        edge, parent = reach[nearest]
        cost += edge
        degrees[nearest] += 1
        degrees[parent] += 1
        outside.remove(nearest)
        current = nearest
    return cost, degrees
