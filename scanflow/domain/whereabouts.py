"""Where a card and its thing are: one answer, for everything that speaks of a place or hands out a number.

The account says where a thing is by its last step. A reading of its card that contradicts that step makes it
misplaced, until a scan says where it is.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Sighting, Slot, Station


class PlaceKind(StrEnum):
    """`due`: the thing has left its slot, and its card is under way to the tray."""

    TRAY = "tray"
    HAND = "hand"
    BIN = "bin"
    BASKET = "basket"
    TABLE = "table"
    PARCEL = "parcel"
    DUE = "due"
    LOST = "lost"


@dataclass(frozen=True, slots=True)
class Account:
    """What the account has of a slot.

    `line` is the state of the live line that wants its thing, `order` the number of that line's order. Of a packed
    line: `parcel`, and the `table` where that is open, None while it is set aside. `round` and `basket` are those of
    the line. `missed`: since when the thing is known to be missing.
    """

    slot: Slot
    taken: bool
    line: LineState | None = None
    order: str | None = None
    parcel: str | None = None
    table: str | None = None
    round: str | None = None
    basket: int | None = None
    missed: datetime | None = None


@dataclass(frozen=True, slots=True)
class Whereabouts:
    """`home` is the slot's own bin; `name` the table where it lies or is packed. `read` is the reading that
    contradicts the account, None unless it is misplaced. `missing`: it was looked for and not found. `picked`: it is
    under way to the table, for the order that wants it.
    """

    place: PlaceKind
    home: str
    name: str | None = None
    round: str | None = None
    basket: int | None = None
    order: str | None = None
    read: Sighting | None = None
    missing: bool = False
    picked: bool = False

    @property
    def misplaced(self) -> bool:
        return self.read is not None

    @property
    def out(self) -> bool:
        """Whether an accepted scan took the thing out of its bin, and no parcel has it."""
        return self.place in (PlaceKind.BASKET, PlaceKind.TABLE)

    @property
    def bin(self) -> str | None:
        """The bin to walk to: where the card was read last, else its own; None while it is out or in a parcel."""
        if self.read is not None:
            return (self.read.place or self.home) if self.read.station in (Station.SHELF, Station.BIN) else None
        return self.home if self.place is PlaceKind.BIN else None

    @property
    def walk_to(self) -> str:
        """The bin of a stop on a round, also of a thing that is out of it."""
        return self.bin or self.home

    @property
    def to_put_back(self) -> bool:
        """A duty: a thing in stock that is out of its bin, or whose card was read away from it, and not packed."""
        return (
            self.place in (PlaceKind.BIN, PlaceKind.BASKET, PlaceKind.TABLE)
            and (self.out or self.misplaced)
            and not self.picked
        )


def whereabouts(account: Account) -> Whereabouts:
    """Where the card of a slot and its thing are."""
    slot, home = account.slot, account.slot.bin
    if not account.taken:
        return Whereabouts(_OF_CARD[slot.card], home, read=slot.seen if _card_strays(slot) else None)
    if account.line is LineState.PACKED:
        read = slot.seen if contradicts_parcel(slot.seen, account.parcel) else None
        return Whereabouts(PlaceKind.PARCEL, home, account.table, order=account.order, read=read)
    missing = account.missed is not None
    read = slot.seen if _strays(account) else None
    place, name, round_, basket = PlaceKind.BIN, None, None, None
    if slot.out is not None and slot.out.station is Station.TABLE:
        place, name = PlaceKind.TABLE, slot.out.place
    elif slot.out is not None or account.line is LineState.PICKED:
        out = slot.out
        place, round_, basket = (
            PlaceKind.BASKET,
            out.round if out else account.round,
            out.basket if out else account.basket,
        )
    picked = account.line is LineState.PICKED and read is None
    return Whereabouts(place, home, name, round_, basket, account.order, read, missing, picked)


_OF_CARD = {
    CardState.TRAY: PlaceKind.TRAY,
    CardState.HAND: PlaceKind.HAND,
    CardState.ON_ITEM: PlaceKind.BIN,
    CardState.DUE: PlaceKind.DUE,
    CardState.LOST: PlaceKind.LOST,
}


def contradicts_parcel(seen: Sighting | None, parcel: str | None) -> bool:
    """Whether a thing that counts as packed in this parcel may not lie in it, by the last reading of its card.

    The card may be taken off before the parcel is closed, so the tray says nothing of the thing.
    """
    if seen is None:
        return False
    match seen.station:
        case Station.BIN | Station.SHELF:
            return True
        case Station.TABLE:
            return seen.parcel != parcel
        case Station.TRAY:
            return False


def contradicts_closing(seen: Sighting) -> bool:
    """Whether a card that has not come back since its parcel closed was read where only a thing in stock would be."""
    return seen.station in (Station.BIN, Station.SHELF)


def _strays(account: Account) -> bool:
    """Whether the card of a thing in stock, that is not packed, was read where the account does not have it."""
    seen, slot = account.slot.seen, account.slot
    if seen is None:
        return False
    if account.missed is not None and seen.at is not None and seen.at > account.missed:
        return True
    match seen.station:
        case Station.TRAY:
            return True
        case Station.SHELF:
            out = slot.out is not None or account.line is LineState.PICKED
            return not seen.accepted and (out or seen.place != slot.bin)
        case Station.TABLE:
            return not seen.accepted and slot.out is None and account.line is not LineState.PICKED
        case Station.BIN:
            return not seen.accepted and slot.out is None and seen.place not in ("", slot.bin)


def _card_strays(slot: Slot) -> bool:
    """Whether a card without a thing was read anywhere but in the tray, or looked for there and missed."""
    if slot.seen is None or (slot.seen.station is Station.TRAY and slot.seen.accepted):
        return False
    return slot.card in (CardState.TRAY, CardState.LOST) or not slot.seen.accepted


def free_to_give(slot: Slot, *, taken: bool) -> bool:
    """Whether the tool may hand out this number: its card was seen in the tray last, or never left it."""
    return not taken and slot.card is CardState.TRAY and not _card_strays(slot)


def bin_of_stop(planned: str, line: LineState, where: Whereabouts | None) -> str:
    """The bin of a stop: where its thing is now while its line waits, afterwards where it was walked to."""
    return where.walk_to if line is LineState.WAITING and where is not None else planned


def words(where: Whereabouts) -> str:
    """Where it is, for a sentence: “in bin A-1-2”."""
    said = f"missing from bin {where.home}" if where.missing else _words(where)
    if where.read is None:
        return said
    return f"{said}{'' if where.missing else ' by the records'}, but {read_words(where)}"


def _words(where: Whereabouts) -> str:
    match where.place:
        case PlaceKind.BIN:
            return f"in bin {where.home}"
        case PlaceKind.BASKET:
            return f"in basket {where.basket}" if where.basket else "off its shelf"
        case PlaceKind.TABLE:
            return f"on table {where.name}"
        case PlaceKind.PARCEL:
            return f"in the parcel of {where.order}{f' at table {where.name}' if where.name else ', set aside'}"
        case PlaceKind.TRAY | PlaceKind.HAND | PlaceKind.DUE | PlaceKind.LOST:
            return _OF_CARDS[where.place]


_OF_CARDS = {
    PlaceKind.TRAY: "in the tray",
    PlaceKind.HAND: "in hand",
    PlaceKind.DUE: "on its way back to the tray",
    PlaceKind.LOST: "lost",
}


def read_words(where: Whereabouts) -> str:
    """Where the card of what is misplaced was read: “its card was read in bin A-1-2”."""
    seen = where.read
    assert seen is not None
    if seen.station is Station.TRAY and not seen.accepted:
        there = where.place is PlaceKind.TRAY
        return "its card was not found there" if there else "its card is not on it: look in the tray"
    return f"its card was seen {place_words(seen)}"


def place_words(seen: Sighting) -> str:
    """The place of a reading: “in bin A-1-2”, “at table main”."""
    match seen.station:
        case Station.TRAY:
            return "in the tray"
        case Station.TABLE:
            return f"at table {seen.place}"
        case Station.SHELF | Station.BIN:
            return f"in bin {seen.place}" if seen.place else "on a round"
