"""The offers of things: which ids are known of which thing and on which channel, which are up, and how one ends."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Annotated, Any

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.derive import HAVING, ForSale, ListingState, listing_state
from scanflow.domain.life import DoubtKind
from scanflow.domain.orders.titles import Titled
from scanflow.domain.things import Doubt, Item, Line, Listing, Order, Stay
from scanflow.workflow.fields import LONGEST_LISTING, LONGEST_NAME, Command, words
from scanflow.workflow.ports import Unit, must

Channel = Annotated[
    str, words(LONGEST_NAME), Field(title="Channel", description="Where it is offered. Empty: not said.")
]


def known(unit: Unit, item: str, channel: str = "") -> tuple[str, ...]:
    """All listing ids by which a thing is known, those first that have not ended. With a `channel` those of others are
    left out: an order of this one can't mean them.
    """
    found = sorted(unit.find(Listing, item=item), key=lambda each: each.ended is not None)
    return tuple(dict.fromkeys(each.listing for each in found if _may_be_on(channel, each)))


def up(unit: Unit, item: str) -> tuple[Listing, ...]:
    """The offers of a thing that have not ended, the oldest first."""
    return unit.find(Listing, item=item, ended=None)


def first(unit: Unit, item: str) -> str:
    """The id of the first offer that has not ended, empty without one."""
    return next((each.listing for each in up(unit, item)), "")


def listed(unit: Unit, listing: str, channel: str = "") -> tuple[Titled, ...]:
    """The things, in stock or not, of which this listing id is known on this channel; where it has ended on some, the
    others.
    """
    found = [each for each in unit.find(Listing, listing=listing) if _may_be_on(channel, each)] if listing else []
    best = [each for each in found if each.ended is None] or found
    return tuple(_titled(unit, item) for item in dict.fromkeys(each.item for each in best))


def _may_be_on(channel: str, listing: Listing) -> bool:
    return not channel or listing.channel in ("", channel)


def _titled(unit: Unit, item: str) -> Titled:
    latest = _latest(unit, item)
    return Titled(item, latest.id, latest.code, must(unit, Item, item).title)


def _latest(unit: Unit, item: str) -> Stay:
    return unit.find(Stay, item=item)[-1]


def for_sale(unit: Unit, item: str) -> ForSale:
    """Whether a thing is for sale now, and which lines have it."""
    stays = unit.find(Stay, item=item)
    lines = [line for stay in stays for line in unit.find(Line, stay=stay.id) if line.state in HAVING]
    doubts = unit.find(Doubt, item=item, how=None)
    return ForSale(
        stays[-1].open,
        must(unit, Item, item).reserved(unit.at),
        any(each.kind is DoubtKind.MISSING for each in doubts),
        tuple((must(unit, Order, line.order).channel, line.listing) for line in lines),
    )


def state(unit: Unit, listing: Listing) -> ListingState:
    """What becomes of an offer: see `derive.listing_state`."""
    return listing_state(listing, for_sale(unit, listing.item))


def learn(unit: Unit, listing: str, item: str, line: str, channel: str) -> None:
    """Keep that this listing id means this thing, as a line taught it whose order came from this channel."""
    unit.add(Listing(unit.new_id(), item, channel, listing, line, unit.at))
    unit.record(events.ListingLearned(listing=listing, item=item, line=line, channel=channel or None))


def forget(unit: Unit, **of: str) -> None:
    """What this line brought, or what was learned of this item, is no evidence after all."""
    for each in unit.find(Listing, **of):
        if each.line is not None:
            unit.drop(Listing, each.id)
            unit.record(events.ListingForgotten(listing=each.listing, item=each.item, line=each.line))


class AddListing(Command, json_schema_extra={"examples": [{"listing": "L-2041", "channel": "corner"}]}):
    listing: Annotated[str, words(LONGEST_LISTING, least=1), Field(title="Listing id")]
    channel: Channel = ""


ASKED: Mapping[str, Mapping[str, Any]] = AddListing.model_json_schema()["properties"]
"""Its fields' labels and limits."""


def add(unit: Unit, stay_id: str, said: AddListing) -> Listing:
    """The thing of a stay is offered under this id too. The same offer said again is up again, and no second one."""
    stay = must(unit, Stay, stay_id)
    before = unit.find(Listing, item=stay.item, channel=said.channel, listing=said.listing)
    if before and before[0].ended is None:
        return before[0]
    if before:
        new = replace(before[0], ended=None)
        unit.put(new)
    else:
        new = offer(unit, stay.item, said.listing, said.channel)
    unit.record(_told(unit, events.ListingAdded, new))
    return new


def offer(unit: Unit, item: str, listing: str, channel: str = "") -> Listing:
    """Keep an offer; whoever calls it tells the ledger."""
    new = Listing(unit.new_id(), item, channel, listing, None, unit.at)
    unit.add(new)
    return new


def end(unit: Unit, listing_id: str) -> Listing:
    """The offer was taken down, or has ended there; one that ended before stays as it is."""
    before = must(unit, Listing, listing_id)
    if before.ended is not None:
        return before
    (ended,) = close(unit, [before])
    unit.record(_told(unit, events.ListingEnded, ended))
    return ended


def close(unit: Unit, offers: Iterable[Listing]) -> list[Listing]:
    """These offers with their end; whoever calls it tells the ledger."""
    ended = [replace(each, ended=unit.at) for each in offers]
    for each in ended:
        unit.put(each)
    return ended


def rename(unit: Unit, item: str, listing: str) -> None:
    """The offer of which nobody said the channel has this id now: another one ends. An id that is up stays."""
    here = up(unit, item)
    if listing in [each.listing for each in here]:
        return
    close(unit, [each for each in here if not each.channel])
    if listing:
        again = unit.find(Listing, item=item, channel="", listing=listing)
        if again:
            unit.put(replace(again[0], ended=None))
        else:
            offer(unit, item, listing)


def _told(unit: Unit, event: type[events.ListingAdded | events.ListingEnded], of: Listing) -> events.Event:
    stay = _latest(unit, of.item)
    return event(stay=stay.id, code=stay.code, listing=of.listing, channel=of.channel)
