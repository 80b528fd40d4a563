"""Which stay an order line asks for, decided when it arrives: bound, bound with a doubt, or unbound and why."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime

from scanflow.domain.life import Hold, StayState
from scanflow.domain.things import Held, Item, Stay


@dataclass(frozen=True, slots=True)
class Asked:
    """What a line says of the thing. `turn` is None for a bare slot code; `known` is false where no slot fits."""

    known: bool
    turn: int | None = None
    title: str = ""
    listing: str = ""
    ordered_at: datetime | None = None
    bad: str | None = None


@dataclass(frozen=True, slots=True)
class Found:
    """What the room knows of it.

    `named` is the stay that was named (for a bare code the slot's last one), `latest` the latest stay of its
    item (another one after a move), `wanted_by` the number of the order that has or had it, `turns` the stays the
    slot ever had, `doubts` what is doubted of the item, in words.
    """

    named: Stay | None = None
    latest: Stay | None = None
    item: Item | None = None
    wanted_by: str | None = None
    turns: int = 0
    doubts: str = ""


@dataclass(frozen=True, slots=True)
class Bound:
    """The outcome: `stay` is None for an unbound line, which always has a hold."""

    stay: str | None
    holds: tuple[Held, ...] = ()


def _unbound(hold: Hold, why: str) -> Bound:
    return Bound(None, (Held(hold, why),))


def bind(asked: Asked, found: Found) -> Bound:
    """The first that fits, hard reasons before doubts."""
    if asked.bad is not None:
        return _unbound(Hold.BAD_ROW, asked.bad)
    if not asked.known:
        return _unbound(Hold.UNKNOWN_CODE, "No slot of this room has this code.")
    if asked.turn is None and (found.named is None or not found.named.open):
        return _unbound(Hold.SLOT_FREE, "Nothing stands in this slot.")
    if found.named is None:
        return _unbound(Hold.UNKNOWN_CODE, "This slot has not had that turn.")
    if asked.turn is None and asked.ordered_at is not None and asked.ordered_at < found.named.began:
        return _unbound(Hold.STALE_CODE, "It was ordered before the thing now in this slot was put away.")
    latest = found.latest or found.named
    if latest.state is StayState.WITHDRAWN:
        return _unbound(Hold.WITHDRAWN, f"It was taken out of stock: {latest.reason}")
    if not latest.open:
        return _unbound(Hold.ALREADY_SOLD, f"It has left with order {found.wanted_by}.")
    if found.wanted_by is not None:
        return _unbound(Hold.ALREADY_SOLD, f"Order {found.wanted_by} has it.")
    holds = ((Hold.SUSPECT, found.doubts), (Hold.DOUBTFUL, doubt_of(asked, found)))
    return Bound(latest.id, tuple(Held(hold, why) for hold, why in holds if why))


def doubt_of(asked: Asked, found: Found) -> str:
    """Why this may be another thing than the buyer saw, empty when there is no doubt."""
    ours = found.item
    if ours is not None and asked.listing and ours.listing:
        return "" if asked.listing == ours.listing else f"The listing id differs: ours is {ours.listing}."
    if ours is not None and asked.title and ours.title and shared_words(asked.title, ours.title) < 0.5:
        return f"The title differs: ours is “{ours.title}”."
    if asked.turn is None and found.turns > 1:
        return "A bare slot code, and this slot has had other things before."
    return ""


def shared_words(one: str, other: str) -> float:
    """The share of the shorter title's words that the other has too, 0 to 1; 1 when either has none."""
    mine, theirs = (set(re.findall(r"\w+", text.casefold())) for text in (one, other))
    if not mine or not theirs:
        return 1.0
    return len(mine & theirs) / min(len(mine), len(theirs))
