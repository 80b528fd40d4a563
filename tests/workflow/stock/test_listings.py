"""A thing's offers: told when it is put away, brought by orders, added and ended by a person."""

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.derive import ListingState
from scanflow.domain.orders.incoming import IncomingLine
from scanflow.domain.things import Listing
from scanflow.workflow import orders, stock
from scanflow.workflow.orders import selling
from scanflow.workflow.ports import Missing
from scanflow.workflow.stock import doubts, listings, reserving


def offered_room(*channels):
    """A thing in D001, offered on these channels under ids that begin with their letters, and another in D002."""
    room = RoomInMemory("D001", "D002")
    for channel in channels:
        add(room, f"{channel[0]}-1", channel)
    return room


def add(room, listing, channel=""):
    return listings.add(room.unit, room.stay("D001").id, listings.AddListing(listing=listing, channel=channel))


def states(room):
    return {each.listing: listings.state(room.unit, each).value for each in room.unit.find(Listing)}


def line(room, **more):
    return IncomingLine(slot_code.reference("D001", 1), **more)


def test_what_is_told_at_put_away_is_an_offer():
    """On the channel that was said, or on none."""
    room = RoomInMemory()
    for listing, channel in (("L-1", ""), ("L-2", "fair"), ("", "fair")):
        stock.put_away(room.unit, stock.PutAway(title="crank", section="D", listing=listing, channel=channel))
    assert [("", "L-1"), ("fair", "L-2")] == [(each.channel, each.listing) for each in room.unit.find(Listing)]


def test_sold_on_one_channel_it_is_to_be_taken_down_on_the_others():
    """The channel that sold it ends its own offer; another thing's offers stay up."""
    room = offered_room("fair", "corner", "web")
    listings.add(room.unit, room.stay("D002").id, listings.AddListing(listing="x-2", channel="corner"))
    room.order("1", "D001", channel="fair")
    assert {"f-1": "ended", "c-1": "to_take_down", "w-1": "to_take_down", "x-2": "up"} == states(room)


def test_an_order_names_its_offer_by_its_id():
    """Where nobody said on which channel it is, too."""
    room = offered_room("fair")
    add(room, "L-1")
    room.order("1", line(room, listing="L-1"), channel="web")
    assert {"f-1": "to_take_down", "L-1": "ended"} == states(room)


def test_once_the_order_is_cancelled_the_offers_are_up_again():
    """Nothing of their state is stored; what a person took down stays down."""
    room = offered_room("fair", "corner", "web")
    order = room.order("1", "D001", channel="fair")
    listings.end(room.unit, room.unit.find(Listing, channel="web")[0].id)
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert {"f-1": "up", "c-1": "up", "w-1": "ended"} == states(room)


@pytest.mark.parametrize(
    "does",
    [
        lambda room, stay: stock.withdraw(room.unit, stay.id, stock.Withdraw(reason="cracked")),
        lambda room, stay: doubts.missed(room.unit, stay.item, "not in its bin"),
        lambda room, stay: selling.sell(room.unit, stay.id, selling.Sell()),
        lambda room, stay: reserving.reserve(
            room.unit, stay.id, reserving.Reserve(**{"for": "Ann", "until": "2026-03-09"})
        ),
        lambda room, stay: room.release("1", "D001"),
    ],
    ids=["withdrawn", "missing", "sold here", "reserved", "gone"],
)
def test_what_is_not_for_sale_is_to_be_taken_down(does):
    """Wherever it is offered."""
    room = offered_room("corner")
    does(room, room.stay("D001"))
    assert {"c-1": "to_take_down"} == states(room)


def test_a_thing_that_moved_is_offered_still():
    """Its offers follow it: they are the thing's, not the slot's."""
    room = offered_room("corner")
    stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    room.put_away("D001")
    assert {"c-1": "up"} == states(room)


def test_an_offer_that_ended_is_known_still():
    """An old order with its id means the thing; the same offer said again is up again, and no second one."""
    room = offered_room("corner")
    (offer,) = room.unit.find(Listing)
    assert ListingState.ENDED is listings.state(room.unit, listings.end(room.unit, offer.id))
    assert ["D001"] == [each.code for each in listings.listed(room.unit, "c-1")]
    assert ("", ("c-1",)) == (listings.first(room.unit, offer.item), listings.known(room.unit, offer.item))
    assert (offer, offer) == (add(room, "c-1", "corner"), add(room, "c-1", "corner"))
    assert (offer,) == room.unit.find(Listing)


def test_an_offer_ends_once():
    """Said twice, the first time stands, and the ledger tells it once; what is no offer is not found."""
    room = offered_room("corner")
    (offer,) = room.unit.find(Listing)
    assert listings.end(room.unit, offer.id) == listings.end(room.unit, offer.id)
    told = [each for each in room.unit.ledger if isinstance(each, events.ListingEnded)]
    assert [("c-1", "corner", "D001")] == [(each.listing, each.channel, each.code) for each in told]
    with pytest.raises(Missing):
        listings.end(room.unit, "none")


def test_an_id_that_is_up_on_one_thing_means_that_one():
    """It was written down for another by mistake, and that was put right."""
    room = offered_room()
    for code in ("D002", "D001"):
        stock.change_item(room.unit, room.stay(code).id, stock.ChangeItem(listing="L-1"))
    stock.change_item(room.unit, room.stay("D002").id, stock.ChangeItem(listing="L-2"))
    assert ["D001"] == [each.code for each in listings.listed(room.unit, "L-1")]


def test_an_id_of_another_channel_says_nothing():
    """Two channels may use one id for two things; an order means its own channel's."""
    room = offered_room("fair")
    listings.add(room.unit, room.stay("D002").id, listings.AddListing(listing="f-1", channel="web"))
    found = {channel: [each.code for each in listings.listed(room.unit, "f-1", channel)] for channel in ("fair", "web")}
    assert {"fair": ["D001"], "web": ["D002"]} == found
    assert ["D001", "D002"] == [each.code for each in listings.listed(room.unit, "f-1")]
    room.order("1", line(room, listing="w-9"), channel="web")
    (learned,) = (each for each in room.unit.find(Listing) if each.line is not None)
    assert ("web", "w-9") == (learned.channel, learned.listing)


@pytest.mark.parametrize(
    ("said", "left"),
    [("L-2", ["f-1", "L-2"]), ("", ["f-1"]), ("L-1", ["L-1", "f-1"]), ("f-1", ["L-1", "f-1"])],
)
def test_another_id_replaces_the_one_without_a_channel(said, left):
    """Those of channels stay; an id that is up already changes nothing."""
    room = offered_room()
    add(room, "L-1")
    add(room, "f-1", "fair")
    stock.change_item(room.unit, room.stay("D001").id, stock.ChangeItem(listing=said))
    assert left == [each.listing for each in listings.up(room.unit, room.stay("D001").item)]


def test_an_id_written_again_is_up_again():
    """The one that ended is taken, and no second one is made."""
    room = offered_room()
    for said in ("L-1", "L-2", "L-1"):
        stock.change_item(room.unit, room.stay("D001").id, stock.ChangeItem(listing=said))
    assert [("L-1", True), ("L-2", False)] == [(each.listing, each.ended is None) for each in room.unit.find(Listing)]
