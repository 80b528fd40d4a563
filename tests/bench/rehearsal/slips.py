"""Kinds of slips, how likely each is at its moment, and what became of those that were made."""

from __future__ import annotations

from dataclasses import dataclass, field

from rehearsal.world import Sale, Thing

KINDS: dict[str, float] = {
    # storing
    "another card hung than the one read": 0.3,
    "card hung without a scan": 0.7,
    "laid into a wrong bin": 0.3,
    "two cards swapped": 0.5,
    # listings and files
    "reference of a former thing": 0.25,
    "mistyped reference": 0.25,
    "reference of another thing in stock": 0.25,
    "bare slot code in the listing": 0.3,
    "sold twice": 0.25,
    "cancelled by the buyer": 0.15,
    "cancelled by the buyer after the pick": 0.2,
    "believed that it has left": 1.0,
    "line changed and sent again": 0.3,
    "line gone from the order sent again": 0.3,
    "file loaded under the wrong channel": 0.4,
    "status explained wrongly": 0.3,
    "part file loaded as whole": 1.0,
    # rounds
    "neighbour pulled": 0.25,
    "neighbour taken after the right scan": 0.25,
    "picked without a scan": 0.25,
    "wrong basket": 0.25,
    "refusal ignored at the bin": 0.9,
    "right thing not seen": 0.25,
    "whole round without scans": 0.5,
    "phone without network": 0.5,
    # the table
    "another thing under the right card": 0.25,
    "wrong box": 0.35,
    "refusal ignored at the table": 0.9,
    "wrong order's box opened": 0.3,
    "scanned before the box was opened": 0.3,
    "closed early": 0.5,
    "taken out without a scan": 0.5,
    "said to be taken out and left in": 0.5,
    "right scan undone": 0.2,
    "right thing doubted": 0.2,
    "right thing doubted in its basket": 0.2,
    "held line settled without a look": 0.5,
    "closed box opened again": 0.4,
    "slips of two boxes swapped": 0.5,
    "left the house without a scan": 0.3,
    "open box carried to the door": 0.5,
    # cards
    "card left in the box": 0.25,
    "card thrown away": 0.25,
    "card laid into the tray without a scan": 0.25,
    "card fallen off": 0.4,
    "lost card printed again and found": 0.4,
    # the floor
    "moved without a scan": 0.5,
    "put back without a scan": 0.7,
    "put back into a wrong bin": 0.7,
    "two bins swapped": 0.4,
    "borrowed and brought back": 0.5,
    "read at a wrong shelf": 0.5,
    "packed thing read elsewhere": 0.5,
    "reported missing and there": 0.3,
    # labels, and rounds on paper
    "labels of two boxes swapped": 0.5,
    "label scanned for the wrong parcel": 0.3,
    "paper entered late": 0.5,
    "another figure written down": 0.3,
    "adopted card typed wrongly twice": 0.2,
    # counts
    "count's photos come late": 1.0,
    "passed over in a count": 0.2,
    "finding resolved without a look": 0.6,
    # the account
    "yesterday's backup restored": 0.15,
    # the wire
    "card text mistyped": 0.2,
    "everything sent twice": 1.0,
    "scanner beeps twice": 1.0,
}
"""The kind, and the chance at each moment at which it can be made when it is the only kind."""

WAYS = {
    "labels of two boxes swapped": "bind_labels",
    "label scanned for the wrong parcel": "bind_labels",
    "paper entered late": "paper",
    "another figure written down": "paper",
    "adopted card typed wrongly twice": "check",
}
"""What a shop must do for a kind to be possible."""

MANY = 10
"""From so many kinds on they are mixed, and shops do as their seeds say."""

SHOWS = {
    "every station: bad_check": "card text mistyped",
    "every station: unknown_code": "card text mistyped",
    "every station: retired": "card thrown away",
    "bin: closed": "phone without network",
    "bin: held": "reported missing and there",
    "bin: not_ordered": "neighbour pulled",
    "bin: cancelled": "phone without network",
    "bin: not_on_round": "neighbour pulled",
    "bin: slot_free": "card hung without a scan",
    "table: no_parcel": "scanned before the box was opened",
    "table: slot_free": "card hung without a scan",
    "table: not_ordered": "neighbour taken after the right scan",
    "table: cancelled": "cancelled by the buyer after the pick",
    "table: other_order": "wrong order's box opened",
    "table: held": "right thing doubted in its basket",
    "table: not_picked": "picked without a scan",
    "tray: not_released": "card fallen off",
    "shelf: slot_free": "taken out without a scan",
    "shelf: wrong_bin": "laid into a wrong bin",
    "hand-over: not_closed": "open box carried to the door",
    "hand-over: cancelled": "believed that it has left",
    "hand-over: held": "packed thing read elsewhere",
}
"""Guard of the service → the kind of slip that shows it missing soonest."""

BEHIND = {
    "every station: unreadable": "no card is named, so that no station finds a thing to step",
    "every station: many_codes": "a scanner reads one text at a time; of several in a picture none is named",
    "every station: bad_check": "no card is named, so that no station finds a thing to step",
    "every station: unknown_code": "no card is named, so that no station finds a thing to step",
    "every station: retired": "nothing stands in its slot: slot_free is next",
    "bin: closed": "a late pick is no proof: the table asks for the card again",
    "bin: slot_free": "no line wants it: not_ordered is next",
    "bin: not_ordered": "it is on no round: not_on_round is next",
    "bin: cancelled": "it is on no round any more: not_on_round is next",
    "bin: held": "the table refuses what is held",
    "bin: not_on_round": "the table refuses what is another order's",
    "bin: already_picked": "picked once more it is picked; the guard spares a walk",
    "bin: already_packed": "it stays packed; its reading holds its line all the same",
    "table: already_released": "nothing stands in its slot: slot_free is next",
    "table: slot_free": "no line wants it: not_ordered is next",
    "table: not_ordered": "where things are scanned at their bins, not_picked is next",
    "table: cancelled": "what lies in no basket is refused by not_picked",
    "table: held": "no parcel closes over a held line, and the door asks again",
    "table: already_packed": "packed once more it is packed; the guard says so",
    "table: not_picked": "the right card at the right parcel is the right thing; the guard keeps rounds true",
    "tray: not_released": "the number of a thing that stands is given to nothing else; a count finds it without a card",
    "shelf: slot_free": "what was read on a shelf keeps its parcel here; a count finds what has no account",
    "shelf: wrong_bin": "the reading is kept all the same, and the next round goes where it was",
    "hand-over: unknown_code": "it names no parcel: not_closed is next",
    "hand-over: not_closed": "its table of lives has no such step",
    "hand-over: cancelled": "it is a hold of its line: held is next",
}
"""What stands behind a guard whose loss shows nothing."""

PICTURE = "look at the picture before the yes; a photo of each thing as it is packed settles a dispute"
LID = "scan the cards once more as the lid closes, off the things in the box"
WEIGH = "weigh the box: things weighed as they are stored say what it should be"
SLIP = "scan the slip and a card of the box together as it is closed"
PROOFS = {
    "another card hung than the one read": "scan the card on the thing in its bin after storing it",
    "card hung without a scan": "scan each thing in its bin after storing it",
    "two cards swapped": PICTURE,
    "neighbour taken after the right scan": PICTURE,
    "another thing under the right card": PICTURE,
    "reference of another thing in stock": "the buyer's title beside the thing's own, at the table",
    "reference of a former thing": "end a listing when its thing leaves",
    "bare slot code in the listing": "write the whole reference into the listing",
    "mistyped reference": "copy the reference into the listing by a scan",
    "wrong box": LID,
    "refusal ignored at the table": WEIGH,
    "refusal ignored at the bin": PICTURE,
    "taken out without a scan": WEIGH,
    "said to be taken out and left in": WEIGH,
    "closed early": "count the things in the box against the slip",
    "slips of two boxes swapped": SLIP,
    "labels of two boxes swapped": "scan slip and label one after the other at the door",
    "label scanned for the wrong parcel": "print a label from the slip's scan, one at a time",
    "left the house without a scan": "no way to the door but past the scanner",
    "held line settled without a look": PICTURE,
    "finding resolved without a look": "scan the card where the finding says it is",
    "wrong order's box opened": SLIP,
    "put back without a scan": PICTURE,
    "believed that it has left": "look at the shelf of closed boxes before believing",
    "packed thing read elsewhere": WEIGH,
    "lost card printed again and found": "give the new card a text of its own",
    "right scan undone": WEIGH,
    "file loaded under the wrong channel": "a channel column in the file",
    "status explained wrongly": "read once more what each status means before a file is loaded",
    "picked without a scan": PICTURE,
    "wrong basket": PICTURE,
}
"""Kind → the cheapest proof that would show it where no scan does."""

HARMLESS = frozenset({"everything sent twice", "scanner beeps twice"})
"""What is no mistake of a person: nothing may come of it at all."""


@dataclass(eq=False, slots=True)
class Slip:
    kind: str
    at: float
    things: tuple[Thing, ...]
    orders: tuple[Sale, ...]
    codes: frozenset[str] = frozenset()

    def concerns(self, code: str, order: str, thing: str = "") -> bool:
        named = thing in {str(each.n) for each in self.things}
        return named or code in self.codes or order in {each.number for each in self.orders}


@dataclass(slots=True)
class Habit:
    """`chances` are those of the kinds that these people are given to."""

    chances: dict[str, float]
    made: list[Slip] = field(default_factory=list)

    def note(self, kind: str, at: float, things: tuple[Thing, ...], orders: tuple[Sale, ...]) -> None:
        codes = frozenset(each.code for each in things if each.code)
        codes |= frozenset(each.card.code for each in things if each.card)
        sales = (*orders, *(each.sale for each in things if each.sale is not None))
        self.made.append(Slip(kind, at, things, sales, codes))


WITH = {
    "believed that it has left": {"cancelled by the buyer": 0.15},
    "finding resolved without a look": {"moved without a scan": 0.5, "two cards swapped": 0.3},
    "refusal ignored at the bin": {"neighbour pulled": 0.3},
    "refusal ignored at the table": {"neighbour taken after the right scan": 0.2, "wrong basket": 0.2},
    "closed early": {"right thing not seen": 0.3},
    "open box carried to the door": {"right thing not seen": 0.3},
    "held line settled without a look": {"reference of another thing in stock": 0.3},
    "put back without a scan": {"cancelled by the buyer": 0.15, "neighbour taken after the right scan": 0.2},
    "put back into a wrong bin": {"cancelled by the buyer": 0.15, "neighbour taken after the right scan": 0.2},
}
"""Kinds that need another before them."""


def alone(kind: str) -> dict[str, float]:
    """One kind, with what has to happen before it can be made."""
    return {**WITH.get(kind, {}), kind: KINDS[kind]}


def mixed(share: float = 0.12) -> dict[str, float]:
    """All kinds that are mistakes, each so much rarer."""
    return {kind: chance * share for kind, chance in KINDS.items() if kind not in HARMLESS}
