"""The order of stops of a round in a room of parallel aisles: the shortest walk, exactly.

The dynamic programme of H. D. Ratliff and A. S. Rosenthal, "Order-picking in a rectangular warehouse: a solvable
case of the traveling salesman problem", Operations Research 31 (1983) 507-521. The room is swept aisle by aisle;
of all partial tours only the cheapest of each equivalence class is kept.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import isfinite
from typing import NamedTuple

Stop = tuple[int, float]  # aisle (from 0), metres from the front cross-aisle
_Node = tuple[float, float]  # metres along the cross-aisles, metres from the front cross-aisle
_Edge = tuple[_Node, _Node]


@dataclass(frozen=True, slots=True)
class Tour:
    """A closed walk from the table past every stop: indices of the stops as given in its order, and its metres."""

    order: tuple[int, ...]
    length: float


@dataclass(frozen=True, slots=True)
class Ladder:
    """Aisles at x = 0, pitch, 2·pitch …, each from the front (y = 0) to the back cross-aisle (y = length), in metres.

    The table stands on the front cross-aisle at x = table, which may lie beside, between or beyond the aisles.
    """

    aisles: int
    pitch: float
    length: float
    table: float = 0.0

    def __post_init__(self) -> None:
        sizes = (self.pitch, self.length)
        if self.aisles < 1 or not all(isfinite(size) and size > 0 for size in sizes) or not isfinite(self.table):
            raise ValueError("a ladder needs at least one aisle, and a pitch and a length above zero")

    def node(self, stop: Stop) -> _Node:
        """Coordinates (x, y) of a stop; ValueError where the room has no such place."""
        aisle, y = stop
        if not (0 <= aisle < self.aisles and 0 <= y <= self.length):
            raise ValueError(f"no such place in the room: aisle {aisle}, {y} m")
        return aisle * self.pitch, float(y)

    def distance(self, a: _Node, b: _Node) -> float:
        """Shortest walk between two places (x, y), through the nearer cross-aisle."""
        if a[0] == b[0]:
            return abs(a[1] - b[1])
        ys = a[1] + b[1]
        return abs(a[0] - b[0]) + min(ys, 2 * self.length - ys)


def ladder_tour(ladder: Ladder, stops: Sequence[Stop]) -> Tour:
    """The shortest tour of a ladder-shaped room, exact for any number of stops, in time linear in aisles and stops.

    Stops at the same place follow each other in the order given.
    """
    table = (float(ladder.table), 0.0)
    here: dict[_Node, list[int]] = defaultdict(list)
    for index, stop in enumerate(stops):
        here[ladder.node(stop)].append(index)
    walk = list(dict.fromkeys(_euler_circuit(_shortest_edges(ladder, [table, *here]), table)))
    legs = [node for node in walk if node in here]
    length = sum(ladder.distance(a, b) for a, b in pairwise([table, *legs, table]))
    return Tour(tuple(index for node in legs for index in here[node]), length)


# The equivalence classes of partial tours (Ratliff & Rosenthal, Theorem 1 and what follows it): degree of the front
# corner and of the back corner of the last aisle (0 none, E even, U odd), then the number of connected components.
_CLASSES = ("UU1C", "E01C", "0E1C", "EE1C", "EE2C", "000C", "001C")

# Table I: the class after the edges of an aisle are added; None where that can't become a tour. The aisle is walked
# through once, entered and left from the front, from the back, from both (leaving out its largest gap), walked
# through twice, or (without stops) not entered.
_AFTER_AISLE: dict[str, tuple[str | None, ...]] = {
    "UU1C": ("EE1C", "UU1C", "UU1C", "UU1C", "UU1C", "UU1C"),
    "E01C": ("UU1C", "E01C", "EE2C", "EE2C", "EE1C", "E01C"),
    "0E1C": ("UU1C", "EE2C", "0E1C", "EE2C", "EE1C", "0E1C"),
    "EE1C": ("UU1C", "EE1C", "EE1C", "EE1C", "EE1C", "EE1C"),
    "EE2C": ("UU1C", "EE2C", "EE2C", "EE2C", "EE1C", "EE2C"),
    "000C": ("UU1C", "E01C", "0E1C", "EE2C", "EE1C", "000C"),
    "001C": (None, None, None, None, None, "001C"),
}

# Table II: the class after the edges along the front and back cross-aisles to the next aisle are added.
_CROSS_WAYS = ((1, 1), (2, 0), (0, 2), (2, 2), (0, 0))
_AFTER_CROSS: dict[str, tuple[str | None, ...]] = {
    "UU1C": ("UU1C", None, None, None, None),
    "E01C": (None, "E01C", None, "EE2C", "001C"),
    "0E1C": (None, None, "0E1C", "EE2C", "001C"),
    "EE1C": (None, "E01C", "0E1C", "EE1C", "001C"),
    "EE2C": (None, None, None, "EE2C", None),
    "000C": (None, None, None, None, "000C"),
    "001C": (None, None, None, None, "001C"),
}

_FINAL = ("E01C", "0E1C", "EE1C", "001C")  # one component, no odd corner


class _Partial(NamedTuple):
    """The cheapest partial tour of a class: its cost, its latest edges, and what it was before them."""

    cost: float
    edges: tuple[_Edge, ...]
    before: "_Partial | None"


def _shortest_edges(ladder: Ladder, nodes: Iterable[_Node]) -> list[_Edge]:
    """Edges, doubled ones twice, of a shortest tour subgraph that touches every node."""
    aisles = [aisle * ladder.pitch for aisle in range(ladder.aisles)]
    columns: dict[float, list[float]] = {x: [] for x in aisles}
    for x, y in nodes:
        columns.setdefault(x, []).append(y)
    xs = sorted(columns)
    best = {"000C": _Partial(0.0, (), None)}
    for x, following in zip(xs, [*xs[1:], None], strict=True):
        ways = _aisle_ways(x, columns[x], ladder.length, is_aisle=x in aisles)
        best = _extend(best, ways, _AFTER_AISLE)
        if following is not None:
            best = _extend(best, _cross_ways(x, following, ladder.length), _AFTER_CROSS)
    last: _Partial | None = min((best[name] for name in _FINAL if name in best), key=lambda partial: partial.cost)
    edges: list[_Edge] = []
    while last is not None:
        edges.extend(last.edges)
        last = last.before
    return edges


def _extend(
    best: dict[str, _Partial], ways: Sequence[tuple[_Edge, ...] | None], after: dict[str, tuple[str | None, ...]]
) -> dict[str, _Partial]:
    """The cheapest partial tour of each class after one of the ways is added; of equals the first stays."""
    costs = [None if edges is None else sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in edges) for edges in ways]
    extended: dict[str, _Partial] = {}
    for name in _CLASSES:
        if name not in best:
            continue
        for edges, cost, target in zip(ways, costs, after[name], strict=True):
            if edges is None or cost is None or target is None:
                continue
            total = best[name].cost + cost
            if target not in extended or total < extended[target].cost:
                extended[target] = _Partial(total, edges, best[name])
    return extended


def _aisle_ways(x: float, ys: list[float], length: float, *, is_aisle: bool) -> list[tuple[_Edge, ...] | None]:
    """Edges of each way of Table I, None where it isn't open; a table between aisles can only be met in front."""
    if not is_aisle:
        return [None, (), None, None, None, None]
    points = [(x, y) for y in sorted({0.0, length, *ys})]
    through = tuple(pairwise(points))
    if not ys:
        return [through, None, None, None, 2 * through, ()]
    lowest, highest = (x, min(ys)), (x, max(ys))
    front = tuple(edge for edge in through if edge[1] <= highest)
    back = tuple(edge for edge in through if edge[0] >= lowest)
    gaps = [edge for edge in through if lowest <= edge[0] and edge[1] <= highest]
    gap = None
    if gaps:
        largest = max(gaps, key=lambda edge: edge[1][1] - edge[0][1])
        gap = 2 * tuple(edge for edge in through if edge != largest)
    return [through, 2 * front, 2 * back, gap, 2 * through, None]


def _cross_ways(x: float, following: float, length: float) -> list[tuple[_Edge, ...]]:
    """Edges of each of `_CROSS_WAYS` between two neighbouring columns."""
    front, back = ((x, 0.0), (following, 0.0)), ((x, length), (following, length))
    return [fronts * (front,) + backs * (back,) for fronts, backs in _CROSS_WAYS]


def _euler_circuit(edges: Iterable[_Edge], start: _Node) -> list[_Node]:
    """A closed walk over every edge once (Hierholzer 1873), from start to start."""
    ways: dict[_Node, list[_Node]] = defaultdict(list)
    for a, b in edges:
        ways[a].append(b)
        ways[b].append(a)
    path, circuit = [start], []
    while path:
        node = path[-1]
        if ways[node]:
            following = ways[node].pop()
            ways[following].remove(node)
            path.append(following)
        else:
            circuit.append(path.pop())
    return circuit
