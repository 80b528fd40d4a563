"""Sections, slots, things, cards and doubts."""

from __future__ import annotations

from dataclasses import field

from scanflow.domain.events.kinds import LEFT_OUT, DoubtId, Event, ItemId, LineId, SlotCode, StayId, event


@event("section added", moves=())
class SectionAdded(Event):
    section: str
    name: str
    slots_per_bin: int
    colour: str


@event("slots added", moves=())
class SlotsAdded(Event):
    section: str
    first: SlotCode
    last: SlotCode


@event("rack placed", moves=())
class RackPlaced(Event):
    rack: str
    aisle: int
    start_mm: int


@event("racks measured", moves=())
class RacksMeasured(Event):
    """As the owner typed it."""

    rack: str
    bin: str
    base_width: str
    kg: str
    rated: str
    table: str


@event("put away", moves=("code",))
class ItemPutAway(Event):
    stay: StayId
    code: SlotCode
    turn: int
    title: str
    listing: str
    load: str | None = field(default=None, metadata=LEFT_OUT)
    channel: str | None = field(default=None, metadata=LEFT_OUT)


@event("stock loaded", moves=())
class StockLoaded(Event):
    """A part of a file of things that stand here is in; each of them has an entry of its own before it."""

    load: str
    stored: int


@event("load taken back", moves=())
class LoadTakenBack(Event):
    """A part of what a file brought is out of stock again; each thing has an entry of its own before it."""

    load: str
    stays: int


@event("slot in another bin", moves=("code",))
class SlotRehung(Event):
    """A slot is in another bin than it was made for, as a file of the stock says. `before`: the bin until then."""

    code: SlotCode
    bin: str
    before: str


@event("out of its bin", moves=("code",))
class OutOfBin(Event):
    """For a while, to be photographed or mended, or lent. `where` may be a person's name, and is not told here."""

    stay: StayId
    code: SlotCode


@event("back in its bin", moves=("code",))
class BackInBin(Event):
    """As a person says, or a scan."""

    stay: StayId
    code: SlotCode


@event("reserved", moves=())
class Reserved(Event):
    """For whom is not told here: that is a person's name, and the ledger stays."""

    stay: StayId
    code: SlotCode
    until: str


@event("reservation ended", moves=())
class ReservationEnded(Event):
    """Because its time was up, a person said so, or it was sold to whom it was kept for."""

    stay: StayId
    code: SlotCode


@event("card to fetch", moves=())
class CardToFetch(Event):
    """A person is named the number whose card lies in the tray until they take it."""

    code: SlotCode


@event("item changed", moves=())
class ItemChanged(Event):
    """New words; those that stay as they were are not told."""

    stay: StayId
    code: SlotCode
    title: str | None = field(default=None, metadata=LEFT_OUT)
    listing: str | None = field(default=None, metadata=LEFT_OUT)
    notes: str | None = field(default=None, metadata=LEFT_OUT)
    packing: str | None = field(default=None, metadata=LEFT_OUT)


@event("listing added", moves=())
class ListingAdded(Event):
    """A thing is offered under one id more. `channel` is empty where nobody said it."""

    stay: StayId
    code: SlotCode
    listing: str
    channel: str


@event("listing ended", moves=())
class ListingEnded(Event):
    """An offer was taken down, or has ended there."""

    stay: StayId
    code: SlotCode
    listing: str
    channel: str


@event("photo kept", moves=())
class PhotoKept(Event):
    stay: StayId
    code: SlotCode
    photo: str


@event("withdrawn", moves=("code",))
class Withdrawn(Event):
    stay: StayId
    code: SlotCode
    reason: str


@event("moved", moves=("code", "to"))
class Moved(Event):
    stay: StayId
    code: SlotCode
    to: SlotCode
    new_stay: StayId


@event("returned", moves=("code",))
class Returned(Event):
    """What came back of a line is put away; the slot and the stay are the new ones."""

    line: LineId
    stay: StayId
    code: SlotCode
    turn: int


@event("card lost", moves=("code",))
class CardLost(Event):
    code: SlotCode


@event("card adopted", moves=())
class CardAdopted(Event):
    """`before`: the slot that the text stood for until now."""

    code: SlotCode
    text: str
    before: SlotCode | None


@event("card reprinted", moves=())
class CardReprinted(Event):
    """`lost`: where one looked for the card that is gone; None where the damaged one was in hand."""

    code: SlotCode
    lost: str | None


@event("two cards read", moves=())
class TwoCardsRead(Event):
    code: SlotCode
    words: str


@event("twin destroyed", moves=())
class TwinDestroyed(Event):
    code: SlotCode


@event("doubted", moves=())
class Doubted(Event):
    doubt: DoubtId
    item: ItemId
    doubt_kind: str
    words: str


@event("doubt settled", moves=())
class DoubtSettled(Event):
    doubt: DoubtId
    item: ItemId
    how: str
    note: str
