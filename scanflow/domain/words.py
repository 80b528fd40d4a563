"""What each refusal, hold and finding is called, in words of the trade: a row for each, for all pages and commands."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY
from scanflow.domain.derive import ListingState, OrderState, SlotState
from scanflow.domain.life import Condition, Hold, LineState, ParcelState, ReturnState, StayState
from scanflow.domain.offered import Differs
from scanflow.domain.things import ChannelStatus
from scanflow.domain.verdict import Reason


@dataclass(frozen=True, slots=True)
class RefusalWords:
    """`heading` stands in large type above `sentence`, whose names `advice` fills in. `trouble` tells it among others.

    `late`: the sentence to a pick that waited for the network, when the thing was taken along.
    """

    heading: str
    sentence: str
    trouble: str = ""
    late: str = ""


MISREAD = (
    "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than "
    "the big number."
)

REFUSALS: Mapping[Reason, RefusalWords] = {
    Reason.UNREADABLE: RefusalWords(
        "Nothing was read", "No card was read. Hold it flat and in the light, or type its text.", "no card read"
    ),
    Reason.MANY_CODES: RefusalWords(
        "More than one card", "More than one card is in view. Show one at a time.", "more than one card in view"
    ),
    Reason.BAD_CHECK: RefusalWords(
        "Wrong check digit",
        MISREAD,
        "wrong check digit",
    ),
    Reason.UNKNOWN_CODE: RefusalWords("No card of this room", "This is no card of the room.", "no card of the room"),
    Reason.RETIRED: RefusalWords(
        "A lost card",
        "Card {code} was given up as lost. Bring it to the tray and scan it there.",
        "a card given up as lost",
    ),
    Reason.CLOSED: RefusalWords(
        "The round is over",
        "This round is over. Leave the thing in its bin.",
        "the round was over",
        late="This round is over{since}. {back}",
    ),
    Reason.SLOT_FREE: RefusalWords(
        "Nothing is stored there",
        "Nothing is stored in {code}{since}. {card_alone}",
        "nothing is stored in its slot",
    ),
    Reason.NOT_ORDERED: RefusalWords("Nobody ordered it", "Nobody ordered {code}. {back}", "nobody ordered it"),
    Reason.CANCELLED: RefusalWords(
        "Cancelled", "Order {order} no longer wants {code}{since}. {back}", "its order was cancelled"
    ),
    Reason.HELD: RefusalWords("Held", "{held}", "its order is held"),
    Reason.NOT_ON_ROUND: RefusalWords("Not on this round", "{not_on_round}", "not on this round"),
    Reason.ALREADY_PICKED: RefusalWords("Picked already", "{code} is picked already{basket}{since}.", "picked already"),
    Reason.ALREADY_PACKED: RefusalWords(
        "Packed already",
        "{code} is packed already{since}, in the parcel of {order}.{packed_elsewhere}",
        "packed already",
    ),
    Reason.NO_PARCEL: RefusalWords(
        "No parcel is open",
        "No parcel is open at this table. Choose an order or scan its slip first.",
        "no parcel open",
    ),
    Reason.ALREADY_RELEASED: RefusalWords(
        "It has left", "The thing of {code} left with order {order}. {card_alone}", "left already"
    ),
    Reason.OTHER_ORDER: RefusalWords(
        "Another order’s",
        "Another order's. This is {code}, wanted by {order}. {other_basket}",
        "another order's",
    ),
    Reason.NOT_PICKED: RefusalWords("Not picked", "{not_picked}", "not picked before"),
    Reason.NOT_RELEASED: RefusalWords(
        "Still in stock",
        "{code} is still in stock, {where}. Put the card back on it.",
        "its thing is still in stock",
    ),
    Reason.WRONG_BIN: RefusalWords("Wrong bin", "{code} does not belong here. {belongs}", "belongs in another bin"),
    Reason.NOT_CLOSED: RefusalWords(
        "Not closed",
        "This parcel is not closed. Keep it here, and close it at the table first.",
        "its parcel is not closed",
    ),
}

AT_THE_DOOR: Mapping[Reason, RefusalWords] = {
    **REFUSALS,
    Reason.UNKNOWN_CODE: RefusalWords(
        "No parcel of this room", "No parcel has this slip or label. Check whose parcel this is."
    ),
    Reason.CANCELLED: RefusalWords(
        "Cancelled since",
        "It was cancelled after the parcel was closed. Keep the parcel here, and open it again.",
    ),
    Reason.HELD: RefusalWords("It must stay here", "This parcel must stay here. {why}"),
}
"""Where a parcel is handed over: some reasons mean something else there than at a station."""

HOLDS: Mapping[Hold, str] = {
    Hold.SUSPECT: "Check the thing",
    Hold.MISPLACED: "Its card was seen elsewhere",
    Hold.CANCELLED_IN_BOX: "Cancelled, and in the box",
    Hold.CHANGED_AFTER_PICK: "The order was changed",
    Hold.NOT_IN_FILE: "The order came without it",
    Hold.ALREADY_SOLD: "Already sold",
    Hold.WITHDRAWN: "Withdrawn",
    Hold.STALE_CODE: "An old code",
    Hold.SLOT_FREE: "Its slot is free",
    Hold.UNKNOWN_CODE: "No such code",
    Hold.BAD_ROW: "Its row can’t be read",
    Hold.DOUBTFUL: "Check the match",
    Hold.RESERVED: "Kept for somebody",
    Hold.NOT_CLEARED: "Not paid yet",
}
"""Above the reason why a line stands still, and beside its state."""

LINES: Mapping[LineState, str] = {
    LineState.UNBOUND: "to settle",
    LineState.WAITING: "waiting",
    LineState.PICKED: "picked",
    LineState.PACKED: "packed",
    LineState.SHORT: "missing",
    LineState.RELEASED: "closed",
    LineState.CANCELLED: "cancelled",
    LineState.RETURNED: "came back",
}
"""How far a line is."""

ORDERS: Mapping[OrderState, str] = {
    OrderState.HELD: "held",
    OrderState.WAITING: "waiting",
    OrderState.PICKING: "picking",
    OrderState.PACKING: "packing",
    OrderState.RELEASED: "closed",
    OrderState.CANCELLED: "cancelled",
    OrderState.RETURNED: "came back",
}
"""How far an order is."""

STATUSES: Mapping[ChannelStatus, str] = {
    ChannelStatus.PACK: "to be packed",
    ChannelStatus.ASIDE: "set aside",
    ChannelStatus.CANCELLED: "cancelled",
    ChannelStatus.SENT: "sent already",
}
"""What each thing means that a channel says of an order."""

SLOTS: Mapping[SlotState, str] = {
    SlotState.FREE: "free",
    SlotState.TAKEN: "taken",
    SlotState.DUE: "card not back",
    SlotState.RETIRED: "card is lost",
}
"""How a slot is."""

STAYS: Mapping[StayState, str] = {
    StayState.STORED: "in stock",
    StayState.SHIPPED: "in a closed parcel",
    StayState.WITHDRAWN: "withdrawn",
    StayState.MOVED: "moved",
}
"""What became of a thing in its slot."""

LISTINGS: Mapping[ListingState, str] = {
    ListingState.UP: "up",
    ListingState.TO_TAKE_DOWN: "to take down",
    ListingState.ENDED: "ended",
}
"""How an offer is."""

DIFFERS: Mapping[Differs, str] = {
    Differs.GONE: "Offered, but not for sale",
    Differs.NOT_OFFERED: "Here, but not offered",
    Differs.WRONG_REFERENCE: "Wrong references",
    Differs.UNKNOWN: "Known to nobody here",
    Differs.NEW_ID: "New listing ids",
    Differs.DOWN: "No longer offered there",
}
"""Above what differs between a channel and the room."""

PARCELS: Mapping[ParcelState, str] = {
    ParcelState.OPEN: "open",
    ParcelState.ASIDE: "set aside",
    ParcelState.CLOSED: "closed",
    ParcelState.HANDED_OVER: "handed over",
    ParcelState.DROPPED: "given up",
}
"""How far a parcel is."""

RETURNS: Mapping[ReturnState, str] = {
    ReturnState.EXPECTED: "expected",
    ReturnState.ARRIVED: "arrived",
    ReturnState.CHECKED: "checked",
    ReturnState.GIVEN_UP: "given up",
}
"""How far a return is."""

CONDITIONS: Mapping[Condition, str] = {
    Condition.RESELL: "in stock again",
    Condition.CHECK: "in stock, to be checked",
    Condition.SCRAP: "scrapped",
    Condition.STAYS: "stays with the buyer",
}
"""How a thing of a return was found."""


@dataclass(frozen=True, slots=True)
class FindingWords:
    """What is amiss in a few words, how that is known or what it means, and what a person does first.

    `trouble` tells the kind of finding among all that goes wrong, empty for what is no trouble.
    """

    amiss: str
    why: str
    todo: str
    trouble: str = ""


FINDINGS: Mapping[FindingKind, FindingWords] = {
    FindingKind.MISSING: FindingWords(
        "Not in {home}",
        "{home} was gone through: {read} read there, {expected} should be. It was seen nowhere else.",
        "Look for it in {home} and beside.",
        "counted and not there",
    ),
    FindingKind.ELSEWHERE: FindingWords(
        "In {where}, not in {home}",
        "It was seen there, and nowhere else.",
        "Take it to {home}.",
        "counted in another bin",
    ),
    FindingKind.TWIN: FindingWords(
        "Seen twice: {where}",
        "Two cards bear it, or it was moved in the middle of the count.",
        "Take away the card that hangs on the wrong thing.",
        "counted in two places",
    ),
    FindingKind.SLOT_FREE: FindingWords(
        "A free card in {where}",
        "By the records its slot is empty.",
        "Is the card on a thing? Then that thing was never sent, or never put away: find out which first. If the card "
        "is alone, take it to the tray.",
        "nothing is stored in its slot",
    ),
    FindingKind.IN_TRAY: FindingWords(
        "In the tray, its thing in stock",
        "The thing should stand in {home} with this card.",
        "Take the card to its thing in {home}.",
        "counted in the tray, its thing in stock",
    ),
    FindingKind.CARD_DUE: FindingWords(
        "Not back in the tray",
        "Its thing has left; the card should be back by now.",
        "Look for the card, at the table first.",
        "not back in the tray, or back unsaid",
    ),
    FindingKind.UNKNOWN: FindingWords(
        "A foreign card in {where}",
        "No slot of this room has this number.",
        "Take it out of the room.",
        "a foreign card counted",
    ),
    FindingKind.UNREADABLE: FindingWords(
        "Look at {where} again",
        "Some that belong there were not seen. Other things may hide them.",
        "Photograph what was hidden, or go through it by hand.",
    ),
    FindingKind.SUSPECT: FindingWords(
        "On its shelf in {where}",
        "Its thing counts as picked or packed, or a person said it is another thing.",
        "Look whether the thing there is the one that was picked.",
        "on its shelf though picked or packed",
    ),
}
_TWICE = FindingWords(
    "Twice in {where}", "One photo shows two cards with this number.", FINDINGS[FindingKind.TWIN].todo
)
_BACK = FindingWords(
    "In the tray, but never scanned in", "It was due, and nobody scanned it there.", "Leave it in the tray."
)
_BESIDE = FindingWords(
    FINDINGS[FindingKind.UNREADABLE].amiss,
    "A card in this photo may belong to this bin or to the next one. A photo that shows both bins' labels would settle "
    "it.",
    "Go through it by hand, or photograph it with the labels beside it.",
)
_UNREAD = FindingWords(
    FINDINGS[FindingKind.UNREADABLE].amiss,
    "{unread} could not be read, and some that belong there were not seen.",
    FINDINGS[FindingKind.UNREADABLE].todo,
)


def said(found: Finding) -> FindingWords:
    """A finding in words, with its places and numbers."""
    words = FINDINGS[found.kind]
    if found.kind is FindingKind.TWIN and len(found.places) == 1:
        words = _TWICE
    elif found.kind is FindingKind.CARD_DUE and found.places:
        words = _BACK
    elif found.kind is FindingKind.UNREADABLE and found.doubtful:
        words = _BESIDE
    elif found.kind is FindingKind.UNREADABLE and found.unread:
        words = _UNREAD
    names = {
        "home": place(found.bin or ""),
        "where": " and ".join(map(place, found.places)),
        "read": units(found.read, "card was", "cards were"),
        "unread": units(found.unread, "card", "cards"),
        "expected": found.expected,
    }
    return FindingWords(*(_sentence(each.format(**names)) for each in (words.amiss, words.why, words.todo)))


def place(name: str) -> str:
    """A bin by its name, the tray as such."""
    return "the tray" if name == TRAY else name


def units(number: int | None, one: str, many: str = "") -> str:
    """A number with its unit.

    >>> units(1, "rack"), units(2000, "rack")
    ('1 rack', '2,000 racks')
    """
    return f"{number or 0:,} {one if number == 1 else many or one + 's'}"


def _sentence(words: str) -> str:
    return words[:1].upper() + words[1:]
