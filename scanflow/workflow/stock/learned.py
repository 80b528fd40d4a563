"""Which listing ids are known of which thing: its own, and those that orders with an exact reference brought."""

from __future__ import annotations

from scanflow.domain import events
from scanflow.domain.orders.titles import Titled
from scanflow.domain.things import Item, Learned, Stay
from scanflow.workflow.ports import Unit, must


def listings_of(unit: Unit, item: Item) -> tuple[str, ...]:
    """All listing ids by which a thing is known, its own first."""
    own = (item.listing,) if item.listing else ()
    return (*own, *(each.listing for each in unit.find(Learned, item=item.id)))


def listed(unit: Unit, listing: str) -> tuple[Titled, ...]:
    """The things, in stock or not, of which this listing id is known."""
    if not listing:
        return ()
    own = [item.id for item in unit.find(Item, listing=listing)]
    brought = [each.item for each in unit.find(Learned, listing=listing)]
    return tuple(_titled(unit, item) for item in dict.fromkeys((*own, *brought)))


def _titled(unit: Unit, item: str) -> Titled:
    latest = unit.find(Stay, item=item)[-1]
    return Titled(item, latest.id, latest.code, must(unit, Item, item).title)


def learn(unit: Unit, listing: str, item: str, line: str) -> None:
    """Keep that this listing id means this thing, as a line taught it."""
    unit.add(Learned(unit.new_id(), listing, item, line))
    unit.record(events.ListingLearned(listing=listing, item=item, line=line))


def forget(unit: Unit, **of: str) -> None:
    """What this line brought, or what was learned of this item, is no evidence after all."""
    for each in unit.find(Learned, **of):
        unit.drop(Learned, each.id)
        unit.record(events.ListingForgotten(listing=each.listing, item=each.item, line=each.line))
