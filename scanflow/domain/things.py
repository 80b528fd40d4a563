"""The things of the room, frozen: a change is a new value (`dataclasses.replace`)."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from scanflow.domain.life import (
    CARD,
    FORWARD,
    LINE,
    LIVE,
    PARCEL,
    ROUND,
    STAY,
    CardState,
    Hold,
    LineState,
    NotAllowed,
    ParcelState,
    RoundState,
    StayState,
    step,
)


class Station(StrEnum):
    BIN = "bin"
    TABLE = "table"
    TRAY = "tray"
    SHELF = "shelf"


@dataclass(frozen=True, slots=True)
class Section:
    """A kind and bulk of goods. `digits` is the width of its numbers, `last` the highest number made so far."""

    code: str
    name: str
    slots_per_bin: int
    colour: str
    digits: int = 3
    last: int = 0


@dataclass(frozen=True, slots=True)
class Rack:
    """A rack beside an aisle: aisle 0 is nearest to the table; `start` metres from the front cross-aisle."""

    name: str
    aisle: int
    start: float


@dataclass(frozen=True, slots=True)
class Bin:
    """A bin, named RACK-TIER-POSITION, of one section."""

    name: str
    rack: str
    tier: int
    position: int
    section: str


@dataclass(frozen=True, slots=True)
class Sighting:
    """Where a card was last seen. `place` is a bin, a table, a round or the tray."""

    station: Station
    place: str
    accepted: bool


@dataclass(frozen=True, slots=True)
class Slot:
    """A numbered place and its one card. `turns` counts the stays it ever had."""

    code: str
    section: str
    number: int
    bin: str
    turns: int = 0
    card: CardState = CardState.TRAY
    seen: Sighting | None = None

    def after(self, event: str) -> Slot:
        return replace(self, card=step(CARD, self.card, event))


@dataclass(frozen=True, slots=True)
class Alias:
    """What an adopted card bears instead of its slot's code: `printed` as its bars say it.

    `text` is that in upper case without spaces and hyphens: what is scanned or typed is compared so.
    """

    text: str
    code: str
    printed: str


@dataclass(frozen=True, slots=True)
class Photo:
    """A picture of a thing as JPEG, upright and without metadata; `hash` is its SHA-256 (hex), `thumb` a small one."""

    hash: str
    picture: bytes
    thumb: bytes


@dataclass(frozen=True, slots=True)
class Item:
    """One thing, or one lot sold whole.

    `listing` is the listing's own id where the shop keeps one, `photo` names its picture.
    """

    id: str
    title: str
    listing: str = ""
    notes: str = ""
    photo: str | None = None


@dataclass(frozen=True, slots=True)
class Stay:
    """One item's time in one slot: the unit of truth.

    `reason`: why it was taken out of stock; of a stay that is open why a person doubts that it is this thing.
    """

    id: str
    item: str
    code: str
    turn: int
    began: datetime
    state: StayState = StayState.STORED
    ended: datetime | None = None
    reason: str = ""

    @property
    def open(self) -> bool:
        return self.state is StayState.STORED

    def after(self, event: str, at: datetime | None = None, reason: str = "") -> Stay:
        state = step(STAY, self.state, event)
        return replace(self, state=state, ended=None if state is StayState.STORED else at, reason=reason)


@dataclass(frozen=True, slots=True)
class Order:
    """What a buyer bought: its number, and what picking needs, nothing of the buyer.

    `slip` numbers its slip; `parcel` is the one being packed for it, open or set aside.
    """

    id: str
    number: str
    channel: str
    received: datetime
    slip: int
    ordered_at: datetime | None = None
    ship_by: datetime | None = None
    parcel: str | None = None


@dataclass(frozen=True, slots=True)
class Line:
    """One thing of an order.

    `why` explains the hold; `scan` is the key of the scan that changed it last; `in_file` is false once a later
    version of the order came without it.
    """

    id: str
    order: str
    position: int
    reference: str
    title: str = ""
    listing: str = ""
    stay: str | None = None
    state: LineState = LineState.UNBOUND
    hold: Hold | None = None
    why: str = ""
    parcel: str | None = None
    round: str | None = None
    basket: int | None = None
    scan: str | None = None
    in_file: bool = True

    @property
    def live(self) -> bool:
        return self.state in LIVE

    def after(self, event: str, scan: str | None = None) -> Line:
        """The line after `event`; a held line moves only backwards."""
        if self.hold is not None and event in FORWARD:
            raise NotAllowed(f"held ({self.hold})", event)
        return replace(self, state=step(LINE, self.state, event), scan=scan)

    def held(self, hold: Hold, why: str) -> Line:
        return replace(self, hold=hold, why=why, scan=None)

    def freed(self) -> Line:
        """The same line without its hold."""
        return replace(self, hold=None, why="", scan=None)


@dataclass(frozen=True, slots=True)
class Round:
    """One walk through the room."""

    id: str
    opened: datetime
    state: RoundState = RoundState.OPEN

    def after(self, event: str) -> Round:
        return replace(self, state=step(ROUND, self.state, event))


@dataclass(frozen=True, slots=True)
class Stop:
    """One line's place on a round, by the bin where its thing stands."""

    round: str
    position: int
    line: str
    bin: str


@dataclass(frozen=True, slots=True)
class Parcel:
    """One box being packed for one order, or for several joined."""

    id: str
    table: str
    orders: tuple[str, ...]
    opened: datetime
    state: ParcelState = ParcelState.OPEN

    @property
    def open(self) -> bool:
        return self.state is ParcelState.OPEN

    def after(self, event: str) -> Parcel:
        return replace(self, state=step(PARCEL, self.state, event))


@dataclass(frozen=True, slots=True)
class Label:
    """A shipping label that is bound to a parcel: the SHA-256 (hex) of what its bars say, for it may lead to a buyer,
    and its last characters, for a person to tell it by.
    """

    hash: str
    parcel: str
    ends: str


@dataclass(frozen=True, slots=True)
class Scan:
    """One reading at a station as it was answered. `spot` is the round, table or bin it happened at."""

    key: str
    body: str
    station: Station
    spot: str
    code: str | None
    take_out: bool
    accepted: bool
    changed: bool
    line: str | None
    parcel: str | None
    answer: str
    was: str = ""
