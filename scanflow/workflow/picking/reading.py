"""What is in view of a station: the one card or slip that a reading shows, or why there is none."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain.things import Order, Station
from scanflow.domain.verdict import Reason
from scanflow.workflow.fields import Age, Command, Flag, Identity, Image, Key, Maybe, OneOf, Place, Time, words
from scanflow.workflow.ports import SlotFacts, Unit
from scanflow.workflow.stock import cards

VIA = ("wedge", "camera", "typed")


class ScanBase(Command):
    """A scan, but for what was seen."""

    station: Station
    key: Key
    via: Annotated[str, OneOf(VIA)] = "wedge"
    round: Maybe[Identity] = Field(default=None, description="Required at a bin.")
    table: Place = "main"
    bin: Maybe[Place] = Field(default=None, description="Required at a shelf.")
    take_out: Flag = False
    at: Maybe[Time] = Field(
        default=None, description="The client's clock, for a scan that waited for the network; only recorded."
    )
    age_ms: Age = 0

    @property
    def late(self) -> bool:
        """Whether it waited for the network."""
        return self.at is not None or self.age_ms > 0

    @property
    def spot(self) -> str:
        """What the station is at: the round, the table, the bin."""
        spots = {Station.BIN: self.round, Station.TABLE: self.table, Station.SHELF: self.bin}
        return spots.get(self.station) or ""


class ScanText(
    ScanBase, json_schema_extra={"examples": [{"station": "table", "key": "phone-1-000017", "text": "D0145"}]}
):
    text: Annotated[str, words(4096)] = Field(description="As the reader gave it; empty where it read nothing.")


class ScanImage(ScanBase):
    via: Annotated[str, OneOf(VIA)] = "camera"
    image: Image = Field(description="A photograph of the card.")


@dataclass(frozen=True, slots=True)
class StationReading:
    """A scan with what was seen.

    `texts` are all texts in view, one for a wedge or a keyboard; `agreed` are those that two engines read. `image`
    says that they were decoded from a picture, where codes that are not the shop's don't count. `body` is the
    fingerprint of the whole call.
    """

    said: ScanBase
    texts: tuple[str, ...]
    body: str
    image: bool = False
    agreed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class InView:
    """The slip or the card in view, or why there is none; with both, that card has to be looked at once more."""

    slip: Order | None = None
    card: SlotFacts | None = None
    unread: Reason | None = None


def read(unit: Unit, reading: StationReading) -> InView:
    """What the texts of a reading mean in this shop."""
    orders: dict[str, Order] = {}
    found: dict[str, SlotFacts] = {}
    sure: set[str] = set()
    problems: list[Reason] = []
    for text in reading.texts:
        try:
            if slot_code.is_slip_like(text):
                number = slot_code.parse_slip(text)
                orders |= {order.id: order for order in unit.find(Order, slip=number)}
            else:
                name = cards.named(unit, text, _widths(unit, text))
                facts = unit.facts(name.code)
                found |= {name.code: facts} if facts else {}
                sure |= {name.code} if name.checked or text in reading.agreed else set()
        except slot_code.BadCheck:
            problems.append(Reason.BAD_CHECK)
        except slot_code.BadFormat:
            problems.append(Reason.UNKNOWN_CODE)
    if len(orders) + len(found) > 1:
        return InView(unread=Reason.MANY_CODES)
    for code, facts in found.items():
        believed = code in sure or _read_before(unit, reading, code)
        return InView(card=facts, unread=None if believed else Reason.BAD_CHECK)
    if orders and reading.said.station is Station.TABLE:
        return InView(slip=next(iter(orders.values())))
    if not any(text.strip() for text in reading.texts):
        return InView(unread=Reason.UNREADABLE)
    return InView(unread=Reason.BAD_CHECK if Reason.BAD_CHECK in problems else Reason.UNKNOWN_CODE)


def _widths(unit: Unit, text: str) -> dict[str, int] | None:
    """The sections' number widths, asked for only where O or I makes a text ambiguous."""
    return cards.widths(unit) if slot_code.compact(text)[1:2] in ("O", "I") else None


def _read_before(unit: Unit, reading: StationReading, code: str) -> bool:
    """Whether the scan just before at this spot named the same card: two scans that agree."""
    last = unit.last_scan(reading.said.station, reading.said.spot)
    return last is not None and last.code == code
