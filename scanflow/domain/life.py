"""What can happen to a line, a stay, a card, a parcel, a round, a stocktake and a return: one transition table each.

What is not in a table is refused. States of orders and slots are not here: they are derived (`derive`).
"""

from __future__ import annotations

from enum import StrEnum
from typing import TypeVar


class LineState(StrEnum):
    """How far a line is on its way to the buyer."""

    UNBOUND = "unbound"
    WAITING = "waiting"
    PICKED = "picked"
    PACKED = "packed"
    SHORT = "short"
    RELEASED = "released"
    CANCELLED = "cancelled"
    RETURNED = "returned"


class StayState(StrEnum):
    """Stored while the item is in the slot, else why it is not."""

    STORED = "stored"
    SHIPPED = "shipped"
    WITHDRAWN = "withdrawn"
    MOVED = "moved"


class CardState(StrEnum):
    """Where a card is by the last step of the account."""

    TRAY = "tray"
    HAND = "hand"
    ON_ITEM = "on_item"
    DUE = "due"
    LOST = "lost"


class ParcelState(StrEnum):
    """Dropped: given up while nothing lay in it."""

    OPEN = "open"
    ASIDE = "aside"
    CLOSED = "closed"
    HANDED_OVER = "handed_over"
    DROPPED = "dropped"


class RoundState(StrEnum):
    """Whether the walk is over."""

    OPEN = "open"
    CLOSED = "closed"


class StocktakeState(StrEnum):
    """Closed with a report, or cancelled without one."""

    OPEN = "open"
    CLOSED = "closed"
    CANCELLED = "cancelled"


class ReturnState(StrEnum):
    """Checked once each of its things has its condition. Given up: it did not come, or was never ours."""

    EXPECTED = "expected"
    ARRIVED = "arrived"
    CHECKED = "checked"
    GIVEN_UP = "given_up"


class Condition(StrEnum):
    """How a thing of a return is found: it is stored and sold again, stored in doubt, thrown away, or it did not come
    back and stays with the buyer.
    """

    RESELL = "resell"
    CHECK = "check"
    SCRAP = "scrap"
    STAYS = "stays"


class Hold(StrEnum):
    """Why a line stands still, the gravest first. Each ends only with its own cause; one left stops the line."""

    SUSPECT = "suspect"
    MISPLACED = "misplaced"
    CANCELLED_IN_BOX = "cancelled_in_box"
    CHANGED_AFTER_PICK = "changed_after_pick"
    NOT_IN_FILE = "not_in_file"
    ALREADY_SOLD = "already_sold"
    WITHDRAWN = "withdrawn"
    STALE_CODE = "stale_code"
    SLOT_FREE = "slot_free"
    UNKNOWN_CODE = "unknown_code"
    BAD_ROW = "bad_row"
    DOUBTFUL = "doubtful"
    RESERVED = "reserved"
    NOT_CLEARED = "not_cleared"


GRAVITY = {hold: place for place, hold in enumerate(Hold)}
"""0 is the gravest."""

OF_BINDING = frozenset(
    {
        Hold.SUSPECT,
        Hold.ALREADY_SOLD,
        Hold.WITHDRAWN,
        Hold.STALE_CODE,
        Hold.SLOT_FREE,
        Hold.UNKNOWN_CODE,
        Hold.BAD_ROW,
        Hold.DOUBTFUL,
        Hold.RESERVED,
    }
)
"""Holds that are about the thing a line is bound to: they end when a person binds it to another."""


class DoubtKind(StrEnum):
    """`not_this`: a thing may not be what its card says. `missing`: it may not be there."""

    NOT_THIS = "not_this"
    MISSING = "missing"


class DoubtEnd(StrEnum):
    """How a doubt ended: its card was read beside its picture, what was wrong is put right, or the thing is gone."""

    SEEN = "seen"
    CORRECTED = "corrected"
    WITHDRAWN = "withdrawn"


State = TypeVar("State", LineState, StayState, CardState, ParcelState, RoundState, StocktakeState, ReturnState)
Table = dict[tuple[State, str], State]

LINE: Table[LineState] = {
    (LineState.UNBOUND, "settle"): LineState.WAITING,
    (LineState.UNBOUND, "cancel"): LineState.CANCELLED,
    (LineState.WAITING, "pick"): LineState.PICKED,
    (LineState.WAITING, "miss"): LineState.SHORT,
    (LineState.WAITING, "cancel"): LineState.CANCELLED,
    (LineState.WAITING, "unbind"): LineState.UNBOUND,
    (LineState.PICKED, "pack"): LineState.PACKED,
    (LineState.PICKED, "put back"): LineState.WAITING,
    (LineState.PICKED, "miss"): LineState.SHORT,
    (LineState.PICKED, "cancel"): LineState.CANCELLED,
    (LineState.PACKED, "take out"): LineState.PICKED,
    (LineState.PACKED, "close"): LineState.RELEASED,
    (LineState.SHORT, "find"): LineState.WAITING,
    (LineState.SHORT, "cancel"): LineState.CANCELLED,
    (LineState.RELEASED, "reopen"): LineState.PACKED,
    (LineState.RELEASED, "return"): LineState.RETURNED,
    (LineState.CANCELLED, "revive"): LineState.WAITING,
    (LineState.CANCELLED, "revive unbound"): LineState.UNBOUND,
    (LineState.RETURNED, "send again"): LineState.WAITING,
}

STAY: Table[StayState] = {
    (StayState.STORED, "release"): StayState.SHIPPED,
    (StayState.STORED, "withdraw"): StayState.WITHDRAWN,
    (StayState.STORED, "move"): StayState.MOVED,
    (StayState.SHIPPED, "reopen"): StayState.STORED,
}

CARD: Table[CardState] = {
    (CardState.TRAY, "take"): CardState.HAND,
    (CardState.TRAY, "see in tray"): CardState.TRAY,
    (CardState.TRAY, "reopen"): CardState.ON_ITEM,
    (CardState.TRAY, "lose"): CardState.LOST,
    (CardState.HAND, "attach"): CardState.ON_ITEM,
    (CardState.ON_ITEM, "release"): CardState.DUE,
    (CardState.ON_ITEM, "see on item"): CardState.ON_ITEM,
    (CardState.ON_ITEM, "lose"): CardState.LOST,
    (CardState.DUE, "take"): CardState.HAND,
    (CardState.DUE, "see in tray"): CardState.TRAY,
    (CardState.DUE, "reopen"): CardState.ON_ITEM,
    (CardState.DUE, "lose"): CardState.LOST,
    (CardState.LOST, "take"): CardState.HAND,
    (CardState.LOST, "see in tray"): CardState.TRAY,
    (CardState.LOST, "see on item"): CardState.ON_ITEM,
    (CardState.LOST, "release"): CardState.LOST,
    (CardState.LOST, "reopen"): CardState.LOST,
}

PARCEL: Table[ParcelState] = {
    (ParcelState.OPEN, "close"): ParcelState.CLOSED,
    (ParcelState.OPEN, "set aside"): ParcelState.ASIDE,
    (ParcelState.OPEN, "drop"): ParcelState.DROPPED,
    (ParcelState.ASIDE, "resume"): ParcelState.OPEN,
    (ParcelState.CLOSED, "reopen"): ParcelState.OPEN,
    (ParcelState.CLOSED, "hand over"): ParcelState.HANDED_OVER,
}

ROUND: Table[RoundState] = {
    (RoundState.OPEN, "close"): RoundState.CLOSED,
}

STOCKTAKE: Table[StocktakeState] = {
    (StocktakeState.OPEN, "close"): StocktakeState.CLOSED,
    (StocktakeState.OPEN, "cancel"): StocktakeState.CANCELLED,
}

RETURN: Table[ReturnState] = {
    (ReturnState.EXPECTED, "arrive"): ReturnState.ARRIVED,
    (ReturnState.EXPECTED, "give up"): ReturnState.GIVEN_UP,
    (ReturnState.ARRIVED, "check"): ReturnState.CHECKED,
    (ReturnState.ARRIVED, "not arrived"): ReturnState.EXPECTED,
    (ReturnState.ARRIVED, "give up"): ReturnState.GIVEN_UP,
    (ReturnState.CHECKED, "check"): ReturnState.CHECKED,
}

LIVE = frozenset({LineState.WAITING, LineState.PICKED, LineState.PACKED, LineState.SHORT})

FORWARD = frozenset({"pick", "pack", "close"})
"""Events of a line that bring its thing nearer to the buyer; a held line refuses them."""

CLOSING = (("line", "close"), ("stay", "release"), ("card", "release"))
"""What closing a parcel does to each thing in it, as one step with the parcel's own `close`."""

REOPENING = (("line", "reopen"), ("stay", "reopen"), ("card", "reopen"))
"""The same, backwards."""


class NotAllowed(Exception):
    """An event that the table of this thing does not have in its present state."""

    def __init__(self, state: str, event: str) -> None:
        super().__init__(f"'{event}' is not possible while it is {state}")
        self.state, self.event = state, event


def step(table: Table[State], state: State, event: str) -> State:
    """The state after `event`, or `NotAllowed`; the caller's state is untouched either way."""
    try:
        return table[state, event]
    except KeyError:
        raise NotAllowed(state, event) from None
