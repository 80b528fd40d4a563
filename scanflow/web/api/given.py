"""What the API gives: the shape of each answer, from which its schema in the OpenAPI document comes."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import ConfigDict, Field, with_config
from typing_extensions import TypedDict

from labels.paper import COLOURS
from scanflow.domain.derive import ListingState, OrderState, SlotState
from scanflow.domain.life import (
    CardState,
    Condition,
    DoubtEnd,
    DoubtKind,
    Hold,
    LineState,
    ParcelState,
    ReturnState,
    RoundState,
    StayState,
)
from scanflow.domain.offered import Differs
from scanflow.domain.things import ChannelStatus
from scanflow.storage.writing.failing import CODES
from scanflow.workflow.answers import Count, Photo
from scanflow.workflow.fields import Code, Identity, OneOf
from scanflow.workflow.stock import WORDS

Instant = Annotated[str, Field(json_schema_extra={"format": "date-time"})]
Hash = Annotated[str, Field(pattern="^[0-9a-f]{64}$")]
Letters = Annotated[str, Field(pattern="^[A-Z]{1,2}$")]
JPEG = "image/jpeg"

OPEN = ConfigDict(extra="allow")
"""Of what has other fields too. All other answers have those that are said here, always, and no more."""


class Health(TypedDict):
    status: Literal["ok"]
    database: Literal["sqlite", "postgresql"]
    ledger: Count


class Ill(TypedDict):
    status: Annotated[str, OneOf(CODES)]
    database: Literal["sqlite", "postgresql"]
    ledger: int | None
    detail: str


class Slots(TypedDict):
    free: Count
    taken: Count
    due: Count
    retired: Count


class Section(TypedDict):
    code: Letters
    name: str
    slots_per_bin: Count
    colour: Annotated[str, OneOf(COLOURS)]
    digits: Count
    slots: Slots


class SectionPage(TypedDict):
    sections: list[Section]
    next: str | None


class Codes(TypedDict):
    codes: list[Code]


class Slot(TypedDict):
    code: Code
    section: Letters
    state: SlotState
    bin: str
    stay: Identity | None
    card: CardState


class SlotPage(TypedDict):
    slots: list[Slot]
    next: str | None


Words = TypedDict("Words", dict.fromkeys(WORDS, str))  # type: ignore[misc]  # its fields are those of a thing
"""What is told of a thing."""


class Placed(TypedDict):
    id: Identity
    item: Identity
    code: Code
    turn: Annotated[int, Field(ge=1)]
    reference: str
    bin: str
    state: StayState


class Stay(Placed, Words):
    listing: Annotated[str, Field(description="The id of its first offer that has not ended; empty without one.")]
    photo: Photo | None


class Listing(TypedDict):
    id: Identity
    channel: Annotated[str, Field(description="Empty where nobody said it.")]
    listing: Annotated[str, Field(description="Its id on that channel.")]
    stay: Annotated[Identity, Field(description="The latest stay of its thing.")]
    code: Code
    title: str
    state: Annotated[
        ListingState,
        Field(description="`to_take_down`: its thing is not for sale. What its own channel sold counts as ended."),
    ]
    since: Instant


class ListingPage(TypedDict):
    listings: list[Listing]
    next: str | None


class Difference(TypedDict):
    """`gone`: offered, and not for sale. `wrong_reference`: `correct` is the right one. `new_id`: an id that nobody
    knew. `down`: no longer offered there. `row` is null for what the file lacks.
    """

    kind: Differs
    why: str
    row: Count | None
    reference: str
    listing: str
    title: str
    stay: Identity | None
    code: Code | None
    correct: Annotated[str, Field(description="The thing's own reference; empty where it is not known.")]


class Compared(TypedDict):
    channel: str
    rows: Annotated[Count, Field(description="How many the file has.")]
    differs: list[Difference]


class Doubt(TypedDict):
    """`not_this`: it may not be what its card says. `missing`: it may not be there."""

    id: Identity
    kind: DoubtKind
    words: str
    since: Instant
    by: str


class SettledDoubt(Doubt):
    how: DoubtEnd
    ended: Instant


class Doubts(TypedDict):
    doubts: Annotated[list[Doubt], Field(description="The oldest first.")]


class Held(TypedDict):
    hold: Hold
    why: str


class Line(TypedDict):
    id: Identity
    reference: str
    code: Code | None
    stay: Identity | None
    title: str
    state: LineState
    hold: Hold | None
    why: Annotated[str, Field(description="Of the gravest hold.")]
    holds: Annotated[list[Held], Field(description="The gravest first.")]


class LineInParcels(Line):
    parcel: Annotated[Identity | None, Field(description="In which it is packed or left; null while it is in none.")]


class Order(TypedDict):
    id: Identity
    number: str
    channel: str
    state: OrderState
    ordered_at: Instant | None
    ship_by: Instant | None
    slip: Annotated[str, Field(description="What the bars of its slip say.")]
    note: Annotated[str, Field(description="What a person wrote who took it down by hand.")]
    collected: Annotated[bool, Field(description="The buyer comes for it: nothing is sent.")]
    lines: list[Line]


class ChannelSaid(TypedDict):
    name: str
    statuses: Annotated[dict[str, ChannelStatus], Field(description="What each value of its status column means.")]
    complete: Annotated[bool, Field(description="Its file lists all of its open orders.")]


class ChannelPage(TypedDict):
    channels: list[ChannelSaid]
    next: str | None


class OrderPage(TypedDict):
    orders: list[Order]
    next: str | None


class RefusedRow(TypedDict):
    row: Count
    code: str
    text: str


class Loaded(TypedDict):
    loaded: Count
    changed: Count
    unchanged: Count
    held: list[Identity]
    refused: list[RefusedRow]


class StockLoaded(TypedDict):
    stored: Count
    unchanged: Count
    refused: list[RefusedRow]


class Stop(TypedDict):
    bin: Annotated[str, Field(description="Where to walk to: while it waits, where the thing is now.")]
    code: Code | None
    title: str
    photo: Photo | None
    order: Identity
    line: Identity
    basket: Count | None
    state: LineState


class LeftOut(TypedDict):
    order: Identity
    why: Annotated[str, OneOf(("held", "on_round", "not_waiting"))]


class Round(TypedDict):
    id: Identity
    state: RoundState
    stops: list[Stop]
    left_out: Annotated[list[LeftOut], Field(description="Said when the round is opened; empty afterwards.")]


class Parcel(TypedDict):
    id: Identity
    state: ParcelState
    table: str
    slip: str
    orders: list[Identity]
    lines: Annotated[
        list[LineInParcels], Field(description="All of its orders, also what is in another parcel or none.")
    ]


class LineOfReturn(Line):
    """A line as its order has it; `standing` is the stay that its check began."""

    condition: Annotated[Condition | None, Field(description="Null until it is checked.")]
    standing: Identity | None


class Return(TypedDict):
    id: Identity
    order: Annotated[Identity | None, Field(description="Null of a parcel that nobody expects.")]
    state: ReturnState
    why: str
    until: Annotated[Instant | None, Field(description="It is overdue from then on.")]
    opened: Instant
    arrived: Instant | None
    checked: Instant | None
    never_ours: Annotated[Condition | None, Field(description="What became of a thing that was not this shop's.")]
    lines: list[LineOfReturn]


class ReturnPage(TypedDict):
    returns: list[Return]
    next: str | None


class ParcelPage(TypedDict):
    parcels: list[Parcel]
    next: str | None


class Decoded(TypedDict):
    texts: Annotated[list[str], Field(description="What was decoded whole, top down; none is matched.")]


class Entry(TypedDict):
    """`hash` is SHA-256, as lower-case hex text, of the previous entry's `hash` (that hex text; empty before the first
    entry) followed by this entry without `hash` as RFC 8785 JSON in UTF-8.
    """

    seq: Annotated[int, Field(ge=1)]
    at: Instant
    kind: str
    actor: str
    data: dict[str, Any]
    hash: Hash


class Ledger(TypedDict):
    entries: list[Entry]
    next: Annotated[int | None, Field(description="The last `seq`; null at the end.")]


class Fault(TypedDict):
    pointer: str
    code: str


@with_config(OPEN)
class Problem(TypedDict):
    """RFC 9457. `pointer` is a JSON pointer into the body, or `/name` of a parameter or form field."""

    type: Annotated[str, Field(json_schema_extra={"format": "uri"})]
    title: str
    status: int
    detail: str
    code: str
    errors: list[Fault]


@with_config(OPEN)
class Document(TypedDict):
    """An OpenAPI 3.1 document: this one."""
