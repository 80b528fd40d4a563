"""How many bins really fit on a rack, and what to mind before it is loaded."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import inf

from scanflow.planning import measures
from scanflow.planning.measures import Size
from scanflow.planning.room import DEFAULT, Shape

REACH = 1500.0  # mm from the floor: nobody sees into a bin above it without a step (common practice, no source)
LOW = 1000.0  # mm: heavy bins stand on shelves below it (common practice, no source)
SLENDER = 4.0  # times as high as deep: from there on a rack tips easily (common practice, no source)
WALKWAY = 0.8  # m between the racks of an aisle


class NoBinFits(ValueError):
    """Not one bin goes onto the rack."""


@dataclass(frozen=True, slots=True)
class BinShape:
    """A bin measured outside, in mm: `rim` at its top; `base_width` at its floor where its walls slope."""

    rim: Size
    base_width: float | None = None

    @property
    def widest(self) -> float:
        """What it takes side by side with others, rim to rim."""
        return max(self.rim.width, self.base_width or 0.0)


@dataclass(frozen=True, slots=True)
class RackShape:
    """A rack measured outside, in mm: posts of width `post` at both ends, shelves of thickness `shelf`.

    `hand` is left free above every bin to reach in. (All three: common practice, no source.)
    """

    size: Size
    post: float = 25.0
    shelf: float = 40.0
    hand: float = 100.0

    def __post_init__(self) -> None:
        if min(self.post, self.shelf, self.hand) < 0:
            raise ValueError("posts, shelves and the room for a hand can't be below zero")


@dataclass(frozen=True, slots=True)
class Racking:
    """So many bins of a kind on a rack. `pitch`: mm from shelf to shelf; `spare`: mm left free across."""

    bin: BinShape
    rack: RackShape
    tiers: int
    positions: int
    pitch: float
    spare: float

    def top(self, tier: int) -> float:
        """Height of the rims of a tier's bins above the floor, in mm; tiers count from 1 at the floor."""
        return (tier - 1) * self.pitch + self.rack.shelf + self.bin.rim.height

    @property
    def low_tiers(self) -> int:
        """How many tiers have their shelf low enough for heavy bins; the lowest always."""
        return max(1, sum((tier - 1) * self.pitch + self.rack.shelf <= LOW for tier in range(1, self.tiers + 1)))

    @property
    def easy_tiers(self) -> int:
        """How many tiers have bins that one sees into without a step; the lowest always."""
        return max(1, sum(self.top(tier) <= REACH for tier in range(1, self.tiers + 1)))

    def shape(self, racks_per_side: int = 2, table_aisle: float = 0.0) -> Shape:
        """A room of such racks, in metres, with a walkway of `WALKWAY` between them; 0.5 is between two aisles."""
        width, depth = (
            round(side / 1000, 4) for side in (self.rack.size.width, max(self.rack.size.depth, self.bin.rim.depth))
        )
        pitch = 2 * depth + WALKWAY
        return Shape(
            self.tiers,
            self.positions,
            self.bin.widest / 1000,
            width,
            depth,
            self.pitch / 1000,
            racks_per_side,
            pitch,
            table_aisle * pitch,
        )

    def cautions(self, bin_kg: float | None = None, rated_kg: float | None = None) -> tuple[str, ...]:
        """What to mind, as sentences; `bin_kg` is a full bin's weight, `rated_kg` the maker's rating of a shelf."""
        said = []
        high = [tier for tier in range(1, self.tiers + 1) if self.top(tier) > REACH]
        if high:
            tiers = f"Tier {high[0]} is" if len(high) == 1 else f"Tiers {high[0]} to {high[-1]} are"
            said.append(
                f"{tiers} above easy reach ({REACH / 1000:.1f} m): use a step or ladder made for it, and keep light "
                "things there."
            )
        over = self.bin.rim.depth - self.rack.size.depth
        if over > 0:
            said.append(f"The bins stand out {over:.0f} mm in front of the rack. Take a deeper rack or shorter bins.")
        said.append(self._weight(bin_kg, rated_kg))
        ratio = self.rack.size.height / self.rack.size.depth
        how = "It tips easily" if ratio >= SLENDER else "It can tip"
        said.append(
            f"The rack is {ratio:.1f} times as high as deep. {how}: fix it to the wall or to its neighbour as its "
            "maker says, and load it from the floor up. Where local rules ask for more, they come first."
        )
        return tuple(said)

    def _weight(self, bin_kg: float | None, rated_kg: float | None) -> str:
        rating = "the maker's rating for an evenly loaded shelf"
        if bin_kg is None:
            return f"Weigh a full bin. Compare the weight of a full shelf of bins with {rating}."
        load = self.positions * bin_kg
        carried = f"A shelf of {self.positions} full bins carries {load:g} kg"
        if rated_kg is None:
            return f"{carried}. Compare that with {rating}."
        if load > rated_kg:
            return f"{carried}, more than its maker's rating of {rated_kg:g} kg. Put fewer or lighter bins on it."
        return f"{carried}, within its maker's rating of {rated_kg:g} kg when it is evenly loaded."


@dataclass(frozen=True, slots=True)
class Measured:
    """A room's racks and bins as its owner typed them; empty where nothing was. `table` is the aisle before the table.

    ValueError, in words, where they make no sense.
    """

    rack: str = ""
    bin: str = ""
    base_width: str = ""
    kg: str = ""
    rated: str = ""
    table: str = ""

    def fit(self) -> Racking:
        """Bins on racks; `NoBinFits` where none goes onto one."""
        base = measures.length(self.base_width) if self.base_width else None
        return racking(BinShape(measures.size(self.bin), base), RackShape(measures.size(self.rack)))

    def shape(self) -> Shape:
        """The room of such racks; the usual one as long as they were not measured."""
        if self.rack and self.bin:
            return self.fit().shape(table_aisle=self.table_aisle())
        return replace(DEFAULT, table=self.table_aisle() * DEFAULT.aisle_pitch)

    def table_aisle(self) -> float:
        return _number(self.table, "The table's aisle", -100, 600) or 0.0

    def cautions(self) -> tuple[str, ...]:
        """What to mind, as `Racking.cautions` has it."""
        return self.fit().cautions(
            _number(self.kg, "Weight of a full bin", 0, 100_000), _number(self.rated, "Rating of a shelf", 0, 100_000)
        )


def _number(text: str, what: str, least: float, most: float) -> float | None:
    """None where nothing was typed."""
    if not text:
        return None
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = inf
    if not least <= value <= most:
        raise ValueError(f"{what}: write a number from {least:g} to {most:,g}.")
    return value


def racking(bin_: BinShape, rack: RackShape) -> Racking:
    """Bins across, rim to rim between the posts, and tiers up, each with room for a hand. `NoBinFits` if none."""
    clear = rack.size.width - 2 * rack.post
    positions = int((clear + 1e-6) // bin_.widest)
    pitch = rack.shelf + bin_.rim.height + rack.hand
    tiers = int((rack.size.height + 1e-6) // pitch)
    if positions < 1 or tiers < 1:
        raise NoBinFits("Not one such bin goes onto such a rack.")
    return Racking(bin_, rack, tiers, positions, pitch, clear - positions * bin_.widest)
