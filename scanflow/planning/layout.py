"""Which bins of a room belong to which section, so that rounds are short and heavy bins stand low.

The figure of merit is the expected walk of a round: exact tours (`walking.py`) over all rounds where they are few,
else over a sample of them.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import product
from math import prod, sqrt
from random import Random
from statistics import fmean, stdev

from scanflow.domain.things import Bin, Rack
from scanflow.planning import room
from scanflow.planning.room import Shape
from scanflow.planning.walking import Ladder, ladder_tour

ENUMERATED = 3000  # so many rounds are walked one by one
ROUNDS = 300  # sampled, where there are more
TRIED = 60  # sampled rounds while orders of sections are tried
SHUFFLES = 5  # random rooms that are averaged


@dataclass(frozen=True, slots=True)
class SectionToPlace:
    """A section to place: its bins, and how often it is visited (a week, or any unit).

    `low`: it is heavy or bulky, so its bins stand low.
    """

    code: str
    bins: int
    visits: float
    low: bool = False

    def __post_init__(self) -> None:
        if self.bins < 1 or self.visits < 0:
            raise ValueError("a section has at least one bin, and visits are not below zero")


@dataclass(frozen=True, slots=True)
class Walk:
    """Metres of an expected round; `error` is the standard error of the sample, 0 where all rounds were walked."""

    metres: float
    error: float
    rounds: int


@dataclass(frozen=True, slots=True)
class RoomPlan:
    """Racks and the bins on them, and how far a round of `stops` stops walks there and in two other rooms."""

    shape: Shape
    racks: tuple[Rack, ...]
    bins: tuple[Bin, ...]
    stops: int
    walk: Walk
    random: Walk
    alphabetical: Walk
    assumptions: tuple[str, ...]


def plan_room(
    kinds: Sequence[SectionToPlace],
    shape: Shape = room.DEFAULT,
    *,
    stops: int = 8,
    low_tiers: int = 3,
    easy_tiers: int = 5,
    seed: int = 1,
) -> RoomPlan:
    """As many racks as the bins need, and the sections on them: often visited near the table, heavy ones low.

    Sections are first taken by visits per bin, along the places nearest to the table or aisle by aisle; then
    neighbours in that order change places while that shortens the walk. Bins above each other are walked to alike, so
    they stand from the floor up, and tiers above `easy_tiers`, which need a step, take only what the others can't
    hold. ValueError for a section named twice.
    """
    if len({kind.code for kind in kinds}) < len(kinds) or not any(kind.visits for kind in kinds) or stops < 1:
        raise ValueError("name every section once, one with visits, and at least one stop a round")
    low_tiers = min(low_tiers, shape.tiers)
    easy_tiers = min(max(easy_tiers, low_tiers), shape.tiers)
    racks = racks_for(kinds, shape, low_tiers)
    rounds = _rounds(kinds, stops, Random(seed), TRIED)

    def metres(bins: Sequence[Bin]) -> float:
        return _walked(racks, bins, rounds, shape).metres

    bins = from_the_floor(_best(kinds, racks, shape, (low_tiers, easy_tiers), metres), kinds)
    final = _rounds(kinds, stops, Random(seed + 1), ROUNDS)
    shuffled = [_walked(racks, random_room(kinds, racks, shape, seed=seed + n), final, shape) for n in range(SHUFFLES)]
    return RoomPlan(
        shape,
        racks,
        bins,
        stops,
        _walked(racks, bins, final, shape),
        Walk(fmean(walk.metres for walk in shuffled), max(walk.error for walk in shuffled), shuffled[0].rounds),
        _walked(racks, alphabetical_room(kinds, racks, shape), final, shape),
        _assumptions(kinds, stops, low_tiers, easy_tiers),
    )


def _assumptions(kinds: Sequence[SectionToPlace], stops: int, low_tiers: int, easy_tiers: int) -> tuple[str, ...]:
    said = [
        f"A round has {stops} stops, each in a section as often as it is visited, in any of its bins alike.",
        "The walk is the shortest from the table and back to it; climbing is not counted.",
        f"Bins stand from the floor up; above tier {easy_tiers} only where there is no other place.",
    ]
    low = [kind.code for kind in kinds if kind.low]
    if low:
        said.append(f"Heavy or bulky, so on tiers 1 to {low_tiers}: {', '.join(low)}.")
    return tuple(said)


def ladder(racks: Iterable[Rack], shape: Shape = room.DEFAULT) -> Ladder:
    """The aisles of a room, and the table in front of them."""
    racks = tuple(racks)
    aisles = max((rack.aisle for rack in racks), default=0) + 1
    length = max((rack.start for rack in racks), default=0.0) + shape.rack_width
    return Ladder(aisles, shape.aisle_pitch, length, shape.table)


def expected_walk(
    racks: Sequence[Rack],
    bins: Sequence[Bin],
    kinds: Sequence[SectionToPlace],
    shape: Shape = room.DEFAULT,
    *,
    stops: int = 8,
    seed: int = 1,
    sampled: int = ROUNDS,
) -> Walk:
    """How far a round of so many stops walks in a room; every section of `kinds` has its number of bins there."""
    return _walked(racks, bins, _rounds(kinds, stops, Random(seed), sampled), shape)


_Stop = tuple[str, int]  # section, which of its bins


@dataclass(frozen=True, slots=True)
class _Rounds:
    """Rounds as sets of stops with their chances: all there are, or a sample."""

    chances: tuple[tuple[frozenset[_Stop], float], ...]
    complete: bool


def _rounds(kinds: Sequence[SectionToPlace], stops: int, random: Random, sampled: int) -> _Rounds:
    places = [(kind.code, index) for kind in kinds for index in range(kind.bins)]
    total = sum(kind.visits for kind in kinds)
    chances = [kind.visits / total / kind.bins for kind in kinds for _ in range(kind.bins)]
    if len(places) ** stops > ENUMERATED:
        drawn = (random.choices(places, chances, k=stops) for _ in range(sampled))
        return _Rounds(tuple((frozenset(each), 1 / sampled) for each in drawn), complete=False)
    rounds: dict[frozenset[_Stop], float] = defaultdict(float)
    for choice in product(zip(chances, places, strict=True), repeat=stops):
        rounds[frozenset(place for _, place in choice)] += prod(chance for chance, _ in choice)
    return _Rounds(tuple(rounds.items()), complete=True)


def _walked(racks: Sequence[Rack], bins: Iterable[Bin], rounds: _Rounds, shape: Shape) -> Walk:
    aisles = ladder(racks, shape)
    standing = {rack.name: rack for rack in racks}
    spots: dict[str, list[tuple[int, float]]] = defaultdict(list)
    for each in bins:
        spots[each.section].append(room.spot(standing[each.rack], each, shape))
    lengths = [
        ladder_tour(aisles, sorted({spots[code][index] for code, index in stops})).length for stops, _ in rounds.chances
    ]
    metres = sum(length * chance for length, (_, chance) in zip(lengths, rounds.chances, strict=True))
    error = 0.0 if rounds.complete else stdev(lengths) / sqrt(len(lengths))
    return Walk(metres, error, len(lengths))


def racks_for(kinds: Sequence[SectionToPlace], shape: Shape = room.DEFAULT, low_tiers: int = 3) -> tuple[Rack, ...]:
    """Enough racks for all bins, and low places enough for the heavy ones."""
    all_bins = sum(kind.bins for kind in kinds)
    low_bins = sum(kind.bins for kind in kinds if kind.low)
    racks: list[Rack] = []
    while len(racks) * shape.positions * shape.tiers < all_bins or len(racks) * shape.positions * low_tiers < low_bins:
        racks.append(room.next_rack(racks, shape=shape))
    return tuple(racks)


def _best(
    kinds: Sequence[SectionToPlace],
    racks: Sequence[Rack],
    shape: Shape,
    tiers: tuple[int, int],
    metres: Callable[[Sequence[Bin]], float],
) -> tuple[Bin, ...]:
    """The best room found: two paths, then swaps of neighbouring sections until none shortens the walk."""
    order = sorted(kinds, key=lambda kind: (-kind.visits / kind.bins, kind.code))
    rooms = {path: fill(order, path, *tiers) for path in _paths(racks, shape)}
    path = min(rooms, key=lambda each: metres(rooms[each]))
    best, shortest, improved = rooms[path], metres(rooms[path]), True
    while improved:
        improved = False
        for at in range(len(order) - 1):
            other = [*order[:at], order[at + 1], order[at], *order[at + 2 :]]
            bins = fill(other, path, *tiers)
            walk = metres(bins)
            if walk < shortest - 1e-9:
                shortest, best, order, improved = walk, bins, other, True
    return best


_Column = tuple[str, int]  # rack, position: the bins above each other


def _paths(racks: Sequence[Rack], shape: Shape) -> tuple[tuple[_Column, ...], ...]:
    """The columns of a room by their walk from the table, and aisle by aisle."""
    aisles = ladder(racks, shape)
    spots: dict[_Column, tuple[int, float]] = {
        (rack.name, position): room.spot(rack, Bin("", rack.name, 1, position, ""), shape)
        for rack in racks
        for position in range(1, shape.positions + 1)
    }
    table = (aisles.table, 0.0)
    nearest = sorted(spots, key=lambda column: (aisles.distance(table, aisles.node(spots[column])), column[0]))
    return tuple(nearest), tuple(sorted(spots, key=lambda column: (spots[column], column[0])))


def fill(order: Sequence[SectionToPlace], path: Sequence[_Column], low_tiers: int, easy_tiers: int) -> tuple[Bin, ...]:
    """Sections one after the other along the columns of a path, each bin in the first column that may take it.

    Low sections take tiers from the floor up to `low_tiers`, others from the top down: no other bin ever stands
    below a low one, and as many low places are left free as are still wanted.
    """
    heights = _heights(path, sum(kind.bins for kind in order), easy_tiers)
    low = _Places((column, tier) for column in path for tier in range(1, low_tiers + 1))
    other = _Places((column, tier) for column, top in heights for tier in range(top, 0, -1))
    wanted = sum(kind.bins for kind in order if kind.low)
    bins = []
    for kind in order:
        for _ in range(kind.bins):
            if kind.low:
                wanted -= 1
                (rack, position), tier = low.take()
                other.drop(((rack, position), tier))
            else:
                spared = low_tiers if len(low) <= wanted else 0
                (rack, position), tier = other.take(above=spared)
                low.drop(((rack, position), tier))
            bins.append(_bin(rack, tier, position, kind.code))
    return tuple(bins)


def _heights(path: Sequence[_Column], bins: int, easy_tiers: int) -> Iterator[tuple[_Column, int]]:
    """How many tiers of each column are used: the easy ones, and above them only what is left, the farthest first."""
    more, rest = divmod(max(0, bins - easy_tiers * len(path)), len(path))
    for index, column in enumerate(path):
        yield column, easy_tiers + more + (index >= len(path) - rest)


def from_the_floor(bins: Iterable[Bin], kinds: Iterable[SectionToPlace]) -> tuple[Bin, ...]:
    """The bins of each column on its lowest tiers: heavy ones first, then those that are visited often."""
    rank = {kind.code: (not kind.low, -kind.visits / kind.bins, kind.code) for kind in kinds}
    columns: dict[_Column, list[str]] = defaultdict(list)
    for each in bins:
        columns[each.rack, each.position].append(each.section)
    placed = (
        _bin(rack, tier, position, section)
        for (rack, position), sections in columns.items()
        for tier, section in enumerate(sorted(sections, key=rank.__getitem__), 1)
    )
    return tuple(sorted(placed, key=lambda each: (each.rack, each.tier, each.position)))


class _Places:
    """Free places, handed out in their order."""

    def __init__(self, places: Iterable[tuple[_Column, int]]) -> None:
        self._free = dict.fromkeys(places)

    def __len__(self) -> int:
        return len(self._free)

    def take(self, above: int = 0) -> tuple[_Column, int]:
        """The first one, on a tier above the one given."""
        place = next(place for place in self._free if place[1] > above)
        self.drop(place)
        return place

    def drop(self, place: tuple[_Column, int]) -> None:
        self._free.pop(place, None)


def alphabetical_room(
    kinds: Iterable[SectionToPlace], racks: Iterable[Rack], shape: Shape = room.DEFAULT
) -> tuple[Bin, ...]:
    """Section after section by their letters, rack after rack, tier by tier from the floor."""
    wanted = (kind.code for kind in sorted(kinds, key=lambda kind: kind.code) for _ in range(kind.bins))
    return _hung(wanted, _all_places(racks, shape))


def random_room(
    kinds: Iterable[SectionToPlace], racks: Iterable[Rack], shape: Shape = room.DEFAULT, *, seed: int = 1
) -> tuple[Bin, ...]:
    """Every bin anywhere on the racks."""
    places = _all_places(racks, shape)
    Random(seed).shuffle(places)
    return _hung((kind.code for kind in kinds for _ in range(kind.bins)), places)


def _all_places(racks: Iterable[Rack], shape: Shape) -> list[tuple[str, int, int]]:
    return [(rack.name, *place) for rack in racks for place in room.free_places(rack.name, (), shape)]


def _bin(rack: str, tier: int, position: int, section: str) -> Bin:
    return Bin(f"{rack}-{tier}-{position}", rack, tier, position, section)


def _hung(sections: Iterable[str], places: Iterable[tuple[str, int, int]]) -> tuple[Bin, ...]:
    return tuple(
        _bin(rack, tier, position, section) for section, (rack, tier, position) in zip(sections, places, strict=False)
    )


def walks_to(bins: Iterable[Bin], racks: Iterable[Rack], shape: Shape = room.DEFAULT) -> tuple[float, ...]:
    """Metres from the table to each bin, one way."""
    standing = {rack.name: rack for rack in racks}
    aisles = ladder(standing.values(), shape)
    spots = (room.spot(standing[each.rack], each, shape) for each in bins)
    return tuple(aisles.distance((aisles.table, 0.0), aisles.node(spot)) for spot in spots)
