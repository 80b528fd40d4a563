"""What is derived by SQL, held to the domain."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta

from furnished import furnish, scan

from labels.slot_code import card_text
from scanflow.domain.derive import ListingState, OrderState, SlotState, order_state, slot_state
from scanflow.domain.life import CardState
from scanflow.domain.things import Item, Line, Listing, Section, Slot, Station
from scanflow.domain.whereabouts import PlaceKind, free_to_give
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import listings as listing_views
from scanflow.storage.views import lists
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import stock as slot_views
from scanflow.storage.views import where as where_views
from scanflow.workflow import stock
from scanflow.workflow.orders import selling
from scanflow.workflow.ports import must
from scanflow.workflow.stock import doubts, listings, reserving, sightings


def test_states_are_those_of_the_domain(shop: Shop) -> None:
    """What pages count and list by SQL is what the rules derive from the things themselves."""
    room = furnish(shop, 40)
    for code in ("S015", room.stays[1].code):
        shop.act("owner", lambda unit, code=code: stock.lose_card(unit, code))
    with shop.looking() as unit:
        states = {order.id: order_state(unit.find(Line, order=order.id)).value for order in room.orders}
        listed = {row.id: row.state for row in order_views.order_list(unit.connection, [], 0, 1000)}
        facts = [unit.facts(slot.code) for slot in unit.find(Slot)]
        derived = {each.slot.code: slot_state(each.slot, each.stay) for each in facts if each}
        shown = {row.code: row.state for row in slot_views.slot_list(unit.connection, limit=1000)}
        counts = order_views.order_counts(unit.connection)

        ids = {state: {row.id for row in lists.order_page(unit.connection, state, 0, 500)} for state in OrderState}
        codes = {
            state: {row.code: row.state for row in lists.slot_page(unit.connection, None, state, ("", 0), 500)}
            for state in SlotState
        }
        slots = lists.slot_counts(unit.connection, [each.code for each in unit.find(Section)])

    assert {state: {name for name, at in states.items() if at == state} for state in OrderState} == ids
    assert {state: {code: at for code, at in derived.items() if at is state} for state in SlotState} == codes
    assert Counter(derived.values()) == sum(map(Counter, slots.values()), Counter())
    assert all(codes.values())
    assert states == listed
    assert derived == shown
    assert {state: list(states.values()).count(state) for state in set(states.values())} == counts
    assert {"held", "waiting", "picking", "released", "cancelled"} <= set(counts)


def offered(shop: Shop) -> None:
    """The furnished room, whose things are offered on two channels and in every way not for sale."""
    room = furnish(shop, 40)

    def work(unit: SqlUnit) -> None:
        for number, stay in enumerate(room.stays):
            for channel in ("fair", "corner")[: number % 3]:
                listings.add(unit, stay.id, listings.AddListing(listing=f"{channel}-{number}", channel=channel))
        unwanted = list(room.stays[1::2])
        reserving.reserve(unit, unwanted[0].id, reserving.Reserve(**{"for": "Ann", "until": "2199-01-01"}))
        stock.withdraw(unit, unwanted[1].id, stock.Withdraw(reason="cracked"))
        doubts.missed(unit, unwanted[2].item, "not in its bin")
        stock.move(unit, unwanted[3].id, stock.Move(to="D025"))
        past = must(unit, Item, unwanted[4].item)
        unit.put(replace(past, kept_for="Bob", kept_until=unit.at - timedelta(days=1)))
        doubts.not_this(unit, unwanted[5].item, "another saddle")
        listings.end(unit, unit.find(Listing)[-1].id)
        selling.sell(unit, unwanted[6].id, selling.Sell())

    shop.act("owner", work)


def test_states_of_offers_are_those_of_the_domain(shop: Shop) -> None:
    """Each offer is listed, counted and shown alone in the state that the rules derive from the things themselves."""
    offered(shop)
    with shop.looking() as unit:
        at, connection = unit.at, unit.connection
        derived = {each.id: listings.state(unit, each) for each in unit.find(Listing)}
        listed = {row.id: row.state for row in listing_views.listing_page(connection, None, 0, at, 500)}
        paged = {
            state: {row.id for row in listing_views.listing_page(connection, state, 0, at, 500)}
            for state in ListingState
        }
        counted = listing_views.listing_counts(connection, at)
        duties = listing_views.to_take_down(connection, at)
        shown = {name: listing_views.one(connection, name, at).state for name in derived}
        of_things = {
            row.id: row.state for item in unit.find(Item) for row in listing_views.of_item(connection, item.id, at)
        }
    assert derived == listed == shown == of_things
    assert {state: {name for name, at in derived.items() if at is state} for state in ListingState} == paged
    assert Counter(derived.values()) == counted
    assert counted["to_take_down"] == duties > 10
    assert all(paged.values())


def strewn(shop: Shop) -> None:
    """The furnished room, with cards read where they don't belong."""
    room = furnish(shop, 40)
    stored = [stay.code for stay in room.stays[1::2]]
    for place, code in enumerate(stored[:4]):
        scan(shop, Station.SHELF, code, bin=("A-1-1", "A-1-2")[place % 2])
    scan(shop, Station.TABLE, stored[4])
    scan(shop, Station.TRAY, stored[5])
    for code, station in (("D014", Station.TRAY), ("S014", Station.TABLE), ("L014", Station.TABLE)):
        scan(shop, station, code)
    scan(shop, Station.SHELF, "W014", bin="A-1-1")
    shop.act("owner", lambda unit: stock.lose_card(unit, "S015"))
    shop.act("owner", lambda unit: stock.put_away(unit, stock.PutAway(title="Bell", text=card_text("D015"))))


def test_whereabouts_are_those_of_the_domain(shop: Shop) -> None:
    """Of every slot pages say what is worked out from its facts, and the duties are those that this makes."""
    strewn(shop)
    with shop.looking() as unit:
        facts = [each for slot in unit.find(Slot) if (each := unit.facts(slot.code))]
        worked_out = {each.slot.code: sightings.where(unit, each) for each in facts}
        loose = {
            each.slot.code
            for each in facts
            if not each.taken
            and worked_out[each.slot.code].misplaced
            and each.slot.card in (CardState.TRAY, CardState.LOST)
        }
        back = {code for code, where in worked_out.items() if where.to_put_back}
        duties = where_views.duties(unit.connection)
        assert worked_out == where_views.whereabouts_of(unit.connection, worked_out)
    assert loose | back == {duty.code for duty in duties}
    assert worked_out.items() >= {(duty.code, duty.where) for duty in duties}
    assert ({"S014", "L014", "W014"}, True) == (loose, len(back) > 5)
    places = {where.place for where in worked_out.values()}
    assert {PlaceKind.TRAY, PlaceKind.BIN, PlaceKind.BASKET, PlaceKind.DUE, PlaceKind.LOST} <= places


def test_free_slots_are_those_that_the_domain_gives(shop: Shop) -> None:
    """The lowest free number of each section and how many are free, as `free_to_give` has it of each slot."""
    strewn(shop)
    with shop.looking() as unit:
        free = [
            facts.slot.code
            for slot in unit.find(Slot)
            if (facts := unit.facts(slot.code)) and free_to_give(facts.slot, taken=facts.taken)
        ]
        sections = [each.code for each in unit.find(Section)]
        lowest = {code: slot.code for code in sections if (slot := unit.lowest_free(code))}
        counted = unit.free_slots(10)
    assert {code: min(each for each in free if each.startswith(code)) for code in sections} == lowest
    assert {code: sum(each.startswith(code) for each in free) for code in sections} == counted
