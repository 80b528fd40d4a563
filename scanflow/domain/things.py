"""The things of the room, frozen: a change is a new value (`dataclasses.replace`)."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from scanflow.domain.life import (
    CARD,
    FORWARD,
    GRAVITY,
    LINE,
    LIVE,
    PARCEL,
    RETURN,
    ROUND,
    STAY,
    CardState,
    Condition,
    DoubtEnd,
    DoubtKind,
    Hold,
    LineState,
    NotAllowed,
    ParcelState,
    ReturnState,
    RoundState,
    StayState,
    step,
)


class ChannelStatus(StrEnum):
    """What a channel says is to be done with an order. `aside`: it is not paid, or not cleared yet."""

    PACK = "pack"
    ASIDE = "aside"
    CANCELLED = "cancelled"
    SENT = "sent"


def status_key(value: str) -> str:
    """A status as it is compared: case and spaces don't matter.

    >>> status_key("  Payment   PENDING ")
    'payment pending'
    """
    return " ".join(value.split()).casefold()


class Station(StrEnum):
    """Where a card is scanned, and so what the scan is asked to do."""

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
    """Where a card was read: `place` is a bin or a table, and empty at the tray.

    `at` is when, the time that a reading waited taken off. `parcel`: the one that was open at the table. Of the tray
    not accepted: a count looked for the card there and missed it, or its thing is still in stock.
    """

    station: Station
    place: str
    accepted: bool
    at: datetime | None = None
    parcel: str | None = None


@dataclass(frozen=True, slots=True)
class Out:
    """Where an accepted scan took a thing out of its bin to: into a basket of a round, or onto a table (`place`)."""

    station: Station
    place: str
    round: str | None = None
    basket: int | None = None


@dataclass(frozen=True, slots=True)
class Fetch:
    """A number that was named to somebody who fetches its card, and for nobody else until then."""

    by: str
    until: datetime


@dataclass(frozen=True, slots=True)
class Slot:
    """A numbered place and its card. `turns` counts the stays it ever had.

    `seen` is the last reading of its card, refused ones too; `out` where its thing was taken to. `twin`: the card was
    printed again after it was lost, so another that says the same may turn up.
    """

    code: str
    section: str
    number: int
    bin: str
    turns: int = 0
    card: CardState = CardState.TRAY
    seen: Sighting | None = None
    out: Out | None = None
    fetch: Fetch | None = None
    twin: bool = False

    def after(self, event: str) -> Slot:
        return replace(self, card=step(CARD, self.card, event))

    def fetcher(self, at: datetime) -> str | None:
        """Who fetches its card at this time: nobody else is to have it."""
        return self.fetch.by if self.fetch is not None and self.fetch.until > at else None


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

    `photo` names its picture. `kept_for`: for whom it is reserved, until `kept_until`. `away`: where it is while it is
    out of its bin for a while, since `away_since`. `packing`: what to mind when it is packed. It goes on paper; `notes`
    do not.
    """

    id: str
    title: str
    notes: str = ""
    photo: str | None = None
    kept_for: str = ""
    kept_until: datetime | None = None
    away: str = ""
    away_since: datetime | None = None
    packing: str = ""

    def reserved(self, at: datetime) -> bool:
        return self.kept_until is not None and self.kept_until > at


@dataclass(frozen=True, slots=True)
class Stay:
    """One item's time in one slot: the unit of truth. `reason`: why it was taken out of stock.

    `load`: the file that told of it, `told` the SHA-256 (hex) of the words that the file had. `undated`: nobody knows
    when it came, and `began` is when it was told. `rehung_from`: the bin of its slot before the file named another.
    """

    id: str
    item: str
    code: str
    turn: int
    began: datetime
    state: StayState = StayState.STORED
    ended: datetime | None = None
    reason: str = ""
    load: str | None = None
    told: str = ""
    undated: bool = False
    rehung_from: str = ""

    @property
    def open(self) -> bool:
        return self.state is StayState.STORED

    def after(self, event: str, at: datetime | None = None, reason: str = "") -> Stay:
        state = step(STAY, self.state, event)
        return replace(self, state=state, ended=None if state is StayState.STORED else at, reason=reason)


@dataclass(frozen=True, slots=True)
class Order:
    """What a buyer bought: its number, and what picking needs, nothing of the buyer.

    `slip` numbers its slip; `parcel` is the one being packed for it, open or set aside. `sent_number`: the number that
    the channel gave it, where `number` had to differ. `note` is what a person wrote who took it down by hand;
    `collected`: the buyer comes for it, nothing is sent. `status`: what its channel said of it last, a `ChannelStatus`,
    empty where it said nothing. `load` names the file that brought it, if one did.
    """

    id: str
    number: str
    channel: str
    received: datetime
    slip: int
    ordered_at: datetime | None = None
    ship_by: datetime | None = None
    parcel: str | None = None
    sent_number: str = ""
    note: str = ""
    collected: bool = False
    status: str = ""
    load: str | None = None


@dataclass(frozen=True, slots=True)
class Channel:
    """Where orders come from and things are offered. Order numbers are unique within it.

    `statuses`: what each value of its file's status column means; values are compared by `status_key`. `complete`: its
    file lists all of its open orders.
    """

    name: str
    statuses: Mapping[str, ChannelStatus]
    complete: bool = False


@dataclass(frozen=True, slots=True)
class ChangedOrder:
    """An order that a file of orders (`load`) changed. `was`: how it stood before and after, as JSON."""

    id: str
    load: str
    order: str
    at: datetime
    was: str


@dataclass(frozen=True, slots=True)
class Doubt:
    """Why an item may not be what its card says, or not be there: it lasts until it is settled on purpose.

    `photo` is the hash of the item's picture at the time, `by` who said it; `how`, `note` and `ended` say how it was
    settled, None while it is open.
    """

    id: str
    item: str
    kind: DoubtKind
    words: str
    since: datetime
    by: str
    photo: str | None = None
    how: DoubtEnd | None = None
    note: str = ""
    ended: datetime | None = None

    @property
    def open(self) -> bool:
        return self.how is None


@dataclass(frozen=True, slots=True)
class Listing:
    """One offer of an item: `listing` is its id on its `channel`, which is empty where nobody said it.

    `line`: the order line that brought the id, None where a person or a file said it. `ended`: when it was taken down.
    An id that has ended still tells which item an old order means. Its state is derived: `derive.listing_state`.
    """

    id: str
    item: str
    channel: str
    listing: str
    line: str | None
    since: datetime
    ended: datetime | None = None


@dataclass(frozen=True, slots=True)
class Held:
    """One reason for which a line stands still, in words."""

    hold: Hold
    why: str


@dataclass(frozen=True, slots=True)
class Line:
    """One thing of an order.

    `holds` are why it stands still, the gravest first; `scan` is the key of the scan that changed it last; `in_file`
    is false once a later version of the order came without it. `status`: what its channel said last of this line alone,
    cancelled or sent, empty where it said nothing. `quantity`: how many of the thing are asked for, as written, where
    that is not one.
    """

    id: str
    order: str
    position: int
    reference: str
    title: str = ""
    listing: str = ""
    stay: str | None = None
    state: LineState = LineState.UNBOUND
    holds: tuple[Held, ...] = ()
    parcel: str | None = None
    round: str | None = None
    basket: int | None = None
    scan: str | None = None
    in_file: bool = True
    status: str = ""
    quantity: str = ""

    @property
    def live(self) -> bool:
        return self.state in LIVE

    @property
    def hold(self) -> Hold | None:
        """The gravest."""
        return self.holds[0].hold if self.holds else None

    @property
    def why(self) -> str:
        """The words of the gravest hold."""
        return self.holds[0].why if self.holds else ""

    def has(self, hold: Hold) -> bool:
        return any(each.hold is hold for each in self.holds)

    def after(self, event: str, scan: str | None = None) -> Line:
        """The line after `event`; a held line moves only backwards."""
        if self.hold is not None and event in FORWARD:
            raise NotAllowed(f"held ({self.hold})", event)
        return replace(self, state=step(LINE, self.state, event), scan=scan)

    def held(self, hold: Hold, why: str) -> Line:
        """With one hold more; a second reason of the same kind stands behind the first."""
        before = next((each.why for each in self.holds if each.hold is hold), "")
        words = why if not before or before in why else before if why in before else f"{before} {why}"
        others = (each for each in self.holds if each.hold is not hold)
        holds = sorted((*others, Held(hold, words)), key=lambda each: GRAVITY[each.hold])
        return replace(self, holds=tuple(holds), scan=None)

    def freed(self, holds: Iterable[Hold]) -> Line:
        """The same line without these of its holds."""
        left = tuple(each for each in self.holds if each.hold not in set(holds))
        return self if left == self.holds else replace(self, holds=left, scan=None)


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
    """One box being packed for one order, or for several joined.

    `opened` is when it came to its table last, `closed` when it was closed, `handed` when it left the house.
    `carrier` took it along, `handed_by` said so; `collected_by` is who came for it: each as far as it was said.
    `later`: its table goes on without its label, or without its buyer.
    """

    id: str
    table: str
    orders: tuple[str, ...]
    opened: datetime
    state: ParcelState = ParcelState.OPEN
    closed: datetime | None = None
    handed: datetime | None = None
    carrier: str = ""
    handed_by: str = ""
    collected_by: str = ""
    later: bool = False

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
class CheckedThing:
    """How one thing of a return was found. `line` is None of what was never ours; `stay` is the one that this began."""

    line: str | None
    condition: Condition
    stay: str | None = None


@dataclass(frozen=True, slots=True)
class Return:
    """Things of an order that come back; `order` is None of a parcel that nobody expects.

    `lines` are those things, `checks` the ones that were checked, each once. It is expected until `until`.
    """

    id: str
    order: str | None
    lines: tuple[str, ...]
    why: str
    until: datetime | None
    state: ReturnState
    opened: datetime
    arrived: datetime | None = None
    checked: datetime | None = None
    checks: tuple[CheckedThing, ...] = ()

    @property
    def open(self) -> bool:
        return self.state in (ReturnState.EXPECTED, ReturnState.ARRIVED)

    def after(self, event: str) -> Return:
        return replace(self, state=step(RETURN, self.state, event))

    def check(self, line: str | None) -> CheckedThing | None:
        """How this thing of it was found."""
        return next((each for each in self.checks if each.line == line), None)

    @property
    def left(self) -> tuple[str, ...]:
        """The lines that are not checked yet."""
        return tuple(line for line in self.lines if self.check(line) is None)

    @property
    def scrapped(self) -> tuple[str, ...]:
        """The lines whose things were thrown away."""
        return tuple(each.line for each in self.checks if each.line and each.condition is Condition.SCRAP)


@dataclass(frozen=True, slots=True)
class Scan:
    """One reading at a station as it was answered. `spot` is the round, table or bin it happened at.

    `was` is the state of its line before; `stood` tells all that it left as it was: see `workflow.picking.scans`.
    """

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
    at: datetime | None = None
    stood: str = ""
