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
    "believed that it has left": 1.0,
    "line changed and sent again": 0.3,
    "line gone from the order sent again": 0.3,
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
    "closed early": 0.5,
    "taken out without a scan": 0.5,
    "said to be taken out and left in": 0.5,
    "right scan undone": 0.2,
    "right thing doubted": 0.2,
    "held line settled without a look": 0.5,
    "closed box opened again": 0.4,
    "slips of two boxes swapped": 0.5,
    "left the house without a scan": 0.3,
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
    # counts
    "passed over in a count": 0.2,
    "finding resolved without a look": 0.6,
    # the wire
    "card text mistyped": 0.2,
    "everything sent twice": 1.0,
    "scanner beeps twice": 1.0,
}
"""The kind, and the chance at each moment at which it can be made when it is the only kind."""

SHOWS = {
    "table: not_ordered": "neighbour taken after the right scan",
    "table: cancelled": "cancelled by the buyer",
    "table: other_order": "wrong order's box opened",
    "table: held": "two cards swapped",
    "hand-over: held": "packed thing read elsewhere",
}
"""Guard of the service → the kind of slip that shows it missing soonest."""

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
