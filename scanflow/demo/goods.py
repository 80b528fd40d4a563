"""The example shop's goods, all invented: a home workshop that sells reclaimed bicycle parts one by one."""

from __future__ import annotations

from dataclasses import dataclass

from labels import slot_code

CARDS = 18
"""Cards of a section: one page of three by six."""

STORED = 13
"""Things of a section that are in stock when the day begins; two more are put away during it."""

ON_BOTH = "W009"
"""The thing that is offered on both channels; of the others nobody wrote down where."""

STRANGER = "Z001"
"""A card that some other room may have: no section of this one has its letter."""


@dataclass(frozen=True, slots=True)
class GoodsKind:
    """A section of the shop. Each form comes in each finish, which makes fifteen different things."""

    code: str
    name: str
    per_bin: int
    colour: str
    forms: tuple[str, str, str, str, str]
    finishes: tuple[str, str, str]

    def title(self, number: int) -> str:
        """What the thing that first stands in this slot is called; `number` from 1 to 15."""
        return f"{self.forms[(number - 1) % 5]}, {self.finishes[(number - 1) % 3]}"

    def slot(self, number: int) -> str:
        return slot_code.make(self.code, number)


KINDS = (
    GoodsKind(
        *("S", "Saddles", 6, "yellow"),
        (
            "Leather touring saddle",
            "Sprung roadster saddle",
            "Narrow racing saddle",
            "Wide cruiser saddle",
            "Child's saddle",
        ),
        ("honey brown", "black with worn edges", "dark green stitching"),
    ),
    GoodsKind(
        *("D", "Derailleurs", 9, "orange"),
        (
            "Rear derailleur, short cage",
            "Rear derailleur, long cage",
            "Front derailleur, clamp 28 mm",
            "Front derailleur, clamp 32 mm",
            "Derailleur hanger with bolts",
        ),
        ("polished", "light scratches", "new springs"),
    ),
    GoodsKind(
        *("C", "Cranks", 6, "green"),
        ("Crankset 42 teeth", "Crankset 48/36 teeth", "Left crank 170 mm", "Cottered crank pair", "Chainring 44 teeth"),
        ("silver", "black", "re-chromed"),
    ),
    GoodsKind(
        *("L", "Lamps", 9, "blue"),
        ("Bottle dynamo", "Bullet headlamp", "Square headlamp", "Round tail lamp", "Mudguard tail lamp"),
        ("working", "rewired", "glass replaced"),
    ),
    GoodsKind(
        *("W", "Wheels", 3, "pink"),
        (
            "Front wheel 26 inch",
            "Front wheel 28 inch",
            "Rear wheel 26 inch",
            "Rear wheel 28 inch",
            "Trailer wheel 16 inch",
        ),
        ("trued", "stainless spokes", "with tyre"),
    ),
    GoodsKind(
        *("BL", "Brake levers", 9, "grey"),
        (
            "Brake lever pair, drop bar",
            "Brake lever pair, flat bar",
            "Brake lever, left",
            "Brake lever, right",
            "Rod brake handle",
        ),
        ("brown hoods", "bare alloy", "new cables"),
    ),
    GoodsKind(
        *("H", "Hubs", 9, "violet"),
        ("Front hub 36 holes", "Rear hub 36 holes", "Three-speed hub", "Coaster brake hub", "Drum brake hub"),
        ("serviced", "new bearings", "original grease cap"),
    ),
    GoodsKind(
        *("P", "Pedals", 6, "white"),
        ("Platform pedals", "Rubber block pedals", "Cage pedals", "Folding pedal, left", "Toe clips with straps"),
        ("cleaned", "nearly new", "repainted"),
    ),
)


def kind_of(code: str) -> GoodsKind:
    """The section of a slot code."""
    letters = slot_code.section_of(code)
    return next(kind for kind in KINDS if kind.code == letters)


def title_of(code: str) -> str:
    """What first stands in this slot is called."""
    return kind_of(code).title(slot_code.number_of(code))


def listing_of(code: str) -> str:
    """The id of the listing of what first stands in this slot."""
    return f"{1000 * (KINDS.index(kind_of(code)) + 1) + slot_code.number_of(code)}"
