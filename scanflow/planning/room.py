"""Where racks stand and bins hang on them, in metres."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import count
from string import ascii_uppercase

from scanflow.domain.things import Bin, Rack


@dataclass(frozen=True, slots=True)
class Shape:
    """What every rack of a room is like, in metres, and how racks stand.

    By default five bins of about 8 in across and six tiers high (common practice, no source); racks stand on both
    sides of an aisle, `racks_per_side` in a row; from the middle of one aisle to the next it is `aisle_pitch`. The
    table stands in front of the aisles, `table` to the right of the middle of the first.
    """

    tiers: int = 6
    positions: int = 5
    bin_width: float = 0.22
    rack_width: float = 1.1
    rack_depth: float = 0.6
    tier_height: float = 0.3
    racks_per_side: int = 2
    aisle_pitch: float = 2.0
    table: float = 0.0

    def __post_init__(self) -> None:
        if min(self.tiers, self.positions, self.racks_per_side) < 1:
            raise ValueError("a rack has at least one tier and position, and an aisle one rack a side")
        if not 0 < self.positions * self.bin_width <= self.rack_width + 1e-9:
            raise ValueError("the bins of a tier must fit into the width of the rack")
        if min(self.rack_depth, self.tier_height) <= 0 or self.aisle_pitch <= 2 * self.rack_depth:
            raise ValueError("between the racks of an aisle there must be room to walk")


DEFAULT = Shape()


def rack_names() -> Iterator[str]:
    """A … Z, then A2 … Z2, A3 …"""
    for turn in count(1):
        yield from (letter + (str(turn) if turn > 1 else "") for letter in ascii_uppercase)


def next_rack(racks: Iterable[Rack], name: str | None = None, shape: Shape = DEFAULT) -> Rack:
    """A rack on the next free place: both sides of an aisle fill up before the next aisle."""
    racks = tuple(racks)
    names = {rack.name for rack in racks}
    aisle, place = divmod(len(racks), 2 * shape.racks_per_side)
    return Rack(name or next(n for n in rack_names() if n not in names), aisle, round(place // 2 * shape.rack_width, 4))


def free_places(rack: str, bins: Iterable[Bin], shape: Shape = DEFAULT) -> Iterator[tuple[int, int]]:
    """The (tier, position) of a rack that no bin stands on, tier by tier from the floor."""
    used = {(each.tier, each.position) for each in bins if each.rack == rack}
    for tier in range(1, shape.tiers + 1):
        for position in range(1, shape.positions + 1):
            if (tier, position) not in used:
                yield tier, position


def spot(rack: Rack, place: Bin, shape: Shape = DEFAULT) -> tuple[int, float]:
    """The aisle to walk and the metres along it to stand before a bin."""
    margin = (shape.rack_width - shape.positions * shape.bin_width) / 2
    return rack.aisle, rack.start + margin + (place.position - 0.5) * shape.bin_width
