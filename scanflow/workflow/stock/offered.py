"""What a channel offers against what stands here: its file is looked at, and each difference has its way."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from functools import cached_property

from labels import slot_code
from scanflow.domain.derive import HAVING, ForSale, ListingState, listing_state
from scanflow.domain.life import LIVE, DoubtKind, StayState
from scanflow.domain.offered import Difference, Differs, OfferedRow
from scanflow.domain.orders.titles import shared_words
from scanflow.domain.things import Doubt, Item, Line, Listing, Order, Stay
from scanflow.workflow.ports import Unit, must
from scanflow.workflow.stock import cards, doubts, listings, reserving


def check(
    unit: Unit, channel: str, rows: Sequence[OfferedRow], since: datetime | None = None
) -> tuple[Difference, ...]:
    """What differs between the file of a channel and the room. Nothing is written.

    What is offered on other channels alone need not be offered here too. `since`: when a person began to look at this
    file; what was said to be down after that is told no more.
    """
    places = {kind: place for place, kind in enumerate(Differs)}
    return tuple(sorted(_Compared(unit, channel, rows, since).all(), key=lambda each: places[each.kind]))


@dataclass(frozen=True, slots=True)
class _Means:
    """The thing that a row means, with the stay that its reference names, if it names one; of a bare code the slot's
    last one.
    """

    item: str | None
    named: Stay | None = None
    bare: bool = False

    @property
    def finds(self) -> bool:
        """Whether the reference finds the thing: a whole one does so after a move too."""
        moved_from = self.bare and self.named is not None and self.named.state is StayState.MOVED
        return self.named is not None and self.named.item == self.item and not moved_from


class _Compared:
    """A file beside the room, of which all is read once."""

    def __init__(self, unit: Unit, channel: str, rows: Sequence[OfferedRow], since: datetime | None) -> None:
        self._unit, self._channel, self._rows, self._since = unit, channel, rows, since
        self._items = {item.id: item for item in unit.find(Item)}
        self._stays = {(stay.code, stay.turn): stay for stay in unit.find(Stay)}
        self._latest = {stay.item: stay for stay in self._stays.values()}
        self._last_in = {stay.code: stay for stay in sorted(self._stays.values(), key=lambda each: each.turn)}
        self._missing = {each.item for each in unit.find(Doubt, how=None) if each.kind is DoubtKind.MISSING}
        live = (line for state in sorted(LIVE) for line in unit.find(Line, state=state))
        self._wanted = {line.stay: line for line in live}
        self._by_id: dict[str, list[Listing]] = defaultdict(list)
        self._here: dict[str, list[Listing]] = defaultdict(list)
        self._up: dict[str, list[Listing]] = defaultdict(list)
        for each in unit.find(Listing):
            if each.channel in ("", channel):
                self._by_id[each.listing].append(each)
                self._here[each.item].append(each)
            if each.ended is None:
                self._up[each.item].append(each)
        self._offered: set[str] = set()
        self._offered_without_id: set[str] = set()

    def all(self) -> Iterator[Difference]:
        for row in self._rows:
            yield from self._of_row(row)
        ids = {row.listing for row in self._rows}
        for item, stay in self._latest.items():
            here = [each for each in self._up[item] if each.channel == self._channel]
            if item not in self._offered and self._for_sale(item):
                yield from self._not_offered(stay, here)
                continue
            for each in here if item not in self._offered_without_id else ():
                if each.listing not in ids and (item in self._offered or self._to_take_down(each)):
                    why = "It is not offered there any more."
                    yield self._difference(Differs.DOWN, why, stay, listing=each.listing)

    def _of_row(self, row: OfferedRow) -> Iterator[Difference]:
        if row.bad:
            yield Difference(Differs.UNKNOWN, row.bad, row.title, row.number, row.reference, row.listing)
            return
        means = self._means(row)
        if means.item is None:
            yield self._not_known(row)
            return
        self._offer(means.item, row)
        stay = self._latest[means.item]
        if not self._for_sale(means.item):
            meant = [each for each in self._here[means.item] if row.listing in ("", each.listing)]
            if not self._ended_since(meant):
                listing = row.listing or (meant[0].listing if meant else "")
                yield self._difference(Differs.GONE, self._why_gone(stay), stay, row, listing)
        elif row.reference and not means.finds:
            yield self._difference(Differs.WRONG_REFERENCE, self._why_wrong(means), stay, row)
        elif row.listing and row.listing not in [each.listing for each in self._up[means.item]]:
            yield self._difference(Differs.NEW_ID, "Its id was not known here.", stay, row)

    def _offer(self, item: str, row: OfferedRow) -> None:
        self._offered.add(item)
        if not row.listing:
            self._offered_without_id.add(item)

    def _means(self, row: OfferedRow) -> _Means:
        """The thing of its listing id comes first: a reference is typed, an id is not."""
        named, bare = self._named(row.reference)
        found = self._by_id.get(row.listing, []) if row.listing else []
        things = {each.item for each in found if each.ended is None} or {each.item for each in found}
        if len(things) == 1:
            return _Means(things.pop(), named, bare)
        return _Means(named.item if named else None, named, bare)

    def _named(self, reference: str) -> tuple[Stay | None, bool]:
        """The stay that a reference names, and whether it is a bare code, which names the slot's last one."""
        try:
            named = cards.referred(self._unit, reference)
        except slot_code.CodeError:
            return None, False
        if named.turn is None:
            return self._last_in.get(named.code), True
        return self._stays.get((named.code, named.turn)), False

    def _for_sale(self, item: str) -> bool:
        return bool(self._sale(item))

    def _sale(self, item: str) -> ForSale:
        stay = self._latest[item]
        line = self._wanted.get(stay.id)
        had = ((must(self._unit, Order, line.order).channel, line.listing),) if line else ()
        return ForSale(stay.open, self._items[item].reserved(self._unit.at), item in self._missing, had)

    def _to_take_down(self, listing: Listing) -> bool:
        if self._latest[listing.item].open:
            return listing_state(listing, self._sale(listing.item)) is ListingState.TO_TAKE_DOWN
        return listings.state(self._unit, listing) is ListingState.TO_TAKE_DOWN

    def _ended_since(self, meant: Sequence[Listing]) -> bool:
        """Whether a person has said, since this file was first looked at, that the offer is down."""
        return self._since is not None and any(each.ended is not None and each.ended >= self._since for each in meant)

    def _why_gone(self, stay: Stay) -> str:
        lines = self._unit.find(Line, stay=stay.id)
        line = next((each for each in lines if each.state in HAVING), None)
        if line is not None:
            return f"Order {must(self._unit, Order, line.order).number} has it."
        if stay.state is StayState.WITHDRAWN:
            return f"It was taken out of stock: {stay.reason}"
        if not stay.open:
            return "It has left."
        item = self._items[stay.item]
        return reserving.why(self._unit, item) or doubts.said(self._unit, doubts.open_doubts(self._unit, item.id))

    def _why_wrong(self, means: _Means) -> str:
        if means.named is None:
            return "Its id is this thing's, and its reference names nothing here."
        if means.named.item == means.item:
            return "Its reference is a slot's code alone, and the thing has moved."
        other = self._items[means.named.item]
        return f"Its id is this thing's, and its reference that of {means.named.code}, “{other.title}”."

    def _not_known(self, row: OfferedRow) -> Difference:
        near = self._nearest(row)
        if near is not None:
            self._offer(near.item, row)
            why = "No thing has this reference. The nearest that exists is wrong by one letter."
            return self._difference(Differs.WRONG_REFERENCE, why, near, row)
        why = "Neither its reference nor its id names a thing here."
        return Difference(Differs.UNKNOWN, why, row.title, row.number, row.reference, row.listing)

    def _nearest(self, row: OfferedRow) -> Stay | None:
        """The latest stay of the thing whose reference differs least: what is in stock first, then by its title."""
        wanted = slot_code.compact(row.reference)
        found = {stay.item for form in _forms(wanted) for stay in self._spelled.get(form, ())} if wanted else set()
        near = [self._latest[item] for item in found]
        return max(
            near, key=lambda stay: (stay.open, shared_words(row.title, self._items[stay.item].title)), default=None
        )

    @cached_property
    def _spelled(self) -> dict[str, list[Stay]]:
        """All stays by what is left of their references without one letter."""
        spelled: dict[str, list[Stay]] = defaultdict(list)
        for stay in self._stays.values():
            for form in _forms(slot_code.compact(slot_code.reference(stay.code, stay.turn))):
                spelled[form].append(stay)
        return spelled

    def _not_offered(self, stay: Stay, here: Sequence[Listing]) -> Iterator[Difference]:
        if not here and any(each.channel for each in self._up[stay.item]):
            return
        for listing in [each.listing for each in here] or [""]:
            why = "It stands here, and is not offered there" + (" any more." if listing else ".")
            yield self._difference(Differs.NOT_OFFERED, why, stay, listing=listing)

    def _difference(
        self, kind: Differs, why: str, stay: Stay, row: OfferedRow | None = None, listing: str = ""
    ) -> Difference:
        title, correct = self._items[stay.item].title, slot_code.reference(stay.code, stay.turn)
        found = Difference(kind, why, title, listing=listing, stay=stay.id, code=stay.code, correct=correct)
        if row is None:
            return found
        return replace(found, row=row.number, reference=row.reference, listing=listing or row.listing)


def _forms(text: str) -> set[str]:
    """A text, and what is left of it without any one letter: two that are wrong by one letter share one of these."""
    return {text, *(text[:place] + text[place + 1 :] for place in range(len(text)))}


def settling(
    channel: str, each: Sequence[Difference], enough: Callable[[], Callable[[], bool]]
) -> Callable[[Unit], int | None]:
    """What does, for these differences, what a press says: an id is learned, an offer has ended. It does the next part
    until `enough` of its own says so: None while there is more to do, at last how many they were.
    """
    left = list(each)

    def part(unit: Unit) -> int | None:
        until, done = enough(), 0
        while done < len(left) and not (done and until()):
            _settle(unit, channel, left[done])
            done += 1
        del left[:done]
        return None if left else len(each)

    return part


def _settle(unit: Unit, channel: str, each: Difference) -> None:
    if each.stay is None or not each.settled:
        return
    if each.kind is Differs.NEW_ID:
        listings.add(unit, each.stay, listings.AddListing(listing=each.listing, channel=channel))
    else:
        _take_down(unit, must(unit, Stay, each.stay), channel, each.listing)


def _take_down(unit: Unit, stay: Stay, channel: str, listing: str) -> None:
    """The thing's offers under this id on this channel have ended; one that nobody knew is kept with its end."""
    known = [each for each in unit.find(Listing, item=stay.item) if each.channel in ("", channel)]
    meant = [each for each in known if listing in ("", each.listing)]
    if not meant and listing:
        meant = [listings.offer(unit, stay.item, listing, channel)]
    for each in meant:
        listings.end(unit, each.id)
