"""Where racks stand and bins hang on them, in metres.

A rack is as wide as five bins of about 8 in and six tiers high (common practice, no source); four racks share an
aisle, two on each side.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import count
from string import ascii_uppercase

from scanflow.domain.things import Bin, Rack

TIERS = 6
POSITIONS = 5
BIN_WIDTH = 0.22
RACK_WIDTH = POSITIONS * BIN_WIDTH
RACKS_PER_SIDE = 2
AISLE_PITCH = 2.0


def rack_names() -> Iterator[str]:
    """A … Z, then A2 … Z2, A3 …"""
    for turn in count(1):
        yield from (letter + (str(turn) if turn > 1 else "") for letter in ascii_uppercase)


def next_rack(racks: Iterable[Rack], name: str | None = None) -> Rack:
    """A rack on the next free place: both sides of an aisle fill up before the next aisle."""
    racks = tuple(racks)
    names = {rack.name for rack in racks}
    aisle, place = divmod(len(racks), 2 * RACKS_PER_SIDE)
    return Rack(name or next(n for n in rack_names() if n not in names), aisle, place // 2 * RACK_WIDTH)


def free_places(rack: str, bins: Iterable[Bin]) -> Iterator[tuple[int, int]]:
    """The (tier, position) of a rack that no bin stands on, tier by tier from the floor."""
    used = {(each.tier, each.position) for each in bins if each.rack == rack}
    for tier in range(1, TIERS + 1):
        for position in range(1, POSITIONS + 1):
            if (tier, position) not in used:
                yield tier, position


def spot(rack: Rack, place: Bin) -> tuple[int, float]:
    """The aisle to walk and the metres along it to stand before a bin."""
    return rack.aisle, rack.start + (place.position - 0.5) * BIN_WIDTH
