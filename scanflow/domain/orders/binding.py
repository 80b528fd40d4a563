"""Which stay an order line asks for, decided when it arrives: bound, bound with a doubt, or unbound and why."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime

from scanflow.domain.life import Hold, StayState
from scanflow.domain.orders.titles import Titled, shared_words
from scanflow.domain.things import Held, Item, Stay


@dataclass(frozen=True, slots=True)
class Asked:
    """What a line says of the thing. `turn` is None for a bare slot code; `known` is false where no slot fits.

    `wrong` is what is wrong with the reference and which ones are near, in words; `quantity` how many are asked for
    where it is not one.
    """

    known: bool
    turn: int | None = None
    title: str = ""
    listing: str = ""
    ordered_at: datetime | None = None
    bad: str | None = None
    wrong: str = ""
    quantity: str = ""


@dataclass(frozen=True, slots=True)
class ReferenceFacts:
    """What the room knows of it.

    `named` is the stay that was named (for a bare code the slot's last one), `latest` the latest stay of its
    item (another one after a move), `wanted_by` the number of the order that has or had it, empty for this one, `turns`
    the stays the slot ever had but for those of a file that was taken back, `doubts` what is doubted of the item, in
    words. `listings` are the listing ids known of the item, `listed` the things of which the line's listing id is
    known, `closer` another thing in stock that the line's title fits better. `kept`: for whom it is reserved, in words.
    """

    named: Stay | None = None
    latest: Stay | None = None
    item: Item | None = None
    wanted_by: str | None = None
    turns: int = 0
    doubts: str = ""
    listings: tuple[str, ...] = ()
    listed: tuple[Titled, ...] = ()
    closer: Titled | None = None
    kept: str = ""

    @property
    def listed_here(self) -> bool:
        """Whether the line's listing id is this thing's and no other's: an id seen on two things tells nothing."""
        return self.item is not None and [each.item for each in self.listed] == [self.item.id]

    @property
    def listed_elsewhere(self) -> Titled | None:
        """The one other thing that has the line's listing id."""
        other = self.listed[0] if len(self.listed) == 1 else None
        return other if other is not None and not self.listed_here else None


@dataclass(frozen=True, slots=True)
class Bound:
    """The outcome: `stay` is None for an unbound line, which always has a hold."""

    stay: str | None
    holds: tuple[Held, ...] = ()


def _unbound(hold: Hold, why: str) -> Bound:
    return Bound(None, (Held(hold, why),))


def bind(asked: Asked, found: ReferenceFacts) -> Bound:
    """The first that fits, hard reasons before doubts. However many are asked for, there is one."""
    bound = _bind(asked, found)
    if bound.stay is None and asked.quantity:
        return Bound(
            None, tuple(replace(each, why=f"{each.why} {more_than_one(asked.quantity)}") for each in bound.holds)
        )
    return bound


def more_than_one(quantity: str) -> str:
    """That so many are asked for, empty where it is one."""
    return f"The order asks for {quantity} of it; there is one." if quantity else ""


def _bind(asked: Asked, found: ReferenceFacts) -> Bound:
    if asked.bad is not None:
        return _unbound(Hold.BAD_ROW, asked.bad)
    if not asked.known:
        return _unbound(Hold.UNKNOWN_CODE, asked.wrong or "No slot of this room has this code.")
    if asked.turn is None and (found.named is None or not found.named.open):
        return _unbound(Hold.SLOT_FREE, "Nothing stands in this slot.")
    if found.named is None:
        return _unbound(Hold.UNKNOWN_CODE, asked.wrong or "This slot has not had that turn.")
    if asked.turn is None and _older(asked, found) and not found.listed_here:
        return _unbound(Hold.STALE_CODE, "It was ordered before the thing now in this slot was put away.")
    latest = found.latest or found.named
    if latest.state is StayState.WITHDRAWN:
        return _unbound(Hold.WITHDRAWN, f"It was taken out of stock: {latest.reason}")
    if not latest.open:
        order = f"order {found.wanted_by}" if found.wanted_by else "this order"
        return _unbound(Hold.ALREADY_SOLD, f"It has left with {order}.")
    if found.wanted_by is not None:
        order = f"Order {found.wanted_by}" if found.wanted_by else "Another line of this order"
        return _unbound(Hold.ALREADY_SOLD, f"{order} has it.")
    doubt = " ".join(filter(None, (doubt_of(asked, found), more_than_one(asked.quantity))))
    holds = ((Hold.SUSPECT, found.doubts), (Hold.DOUBTFUL, doubt), (Hold.RESERVED, found.kept))
    return Bound(latest.id, tuple(Held(hold, why) for hold, why in holds if why))


def doubt_of(asked: Asked, found: ReferenceFacts) -> str:
    """Why this may be another thing than the buyer saw, empty when there is no doubt."""
    return "" if found.listed_here else " ".join(_doubts(asked, found))


def _doubts(asked: Asked, found: ReferenceFacts) -> Iterator[str]:
    other, ours = found.listed_elsewhere, found.item
    if other is not None:
        yield f"Listing {asked.listing} belongs to {other.code}, “{other.title}”."
    elif asked.turn is None and asked.listing and found.listings and asked.listing not in found.listings:
        yield f"The listing id differs: ours is {found.listings[0]}."
    if _older(asked, found):
        yield "It was ordered before this thing was put away."
    if found.closer is not None:
        yield f"The order says “{asked.title}”, which fits {found.closer.code}, “{found.closer.title}”, better."
    elif ours is not None and shared_words(asked.title, ours.title) < 0.5:
        yield f"The title differs: ours is “{ours.title}”."
    if asked.turn is None and found.turns > 1:
        yield "The order gives only the slot code, and this slot has held other things before."


def _older(asked: Asked, found: ReferenceFacts) -> bool:
    """Whether it was ordered before the stay began that was named, by the minute: files have no seconds. If nobody
    knows when the thing came, no order counts as older.
    """
    if asked.ordered_at is None or found.named is None or found.named.undated:
        return False
    return asked.ordered_at < found.named.began.replace(second=0, microsecond=0)


def learns(asked: Asked, found: ReferenceFacts, bound: Bound) -> bool:
    """Whether the line teaches its listing id: an exact reference, nothing in doubt, and an id that no thing has."""
    exact = bound.stay is not None and asked.turn is not None and not bound.holds
    return exact and bool(asked.listing) and not found.listed
