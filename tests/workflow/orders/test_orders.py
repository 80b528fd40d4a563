"""Orders come in once, and again; lines are cancelled, settled, short, found, held and revived."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain.derive import OrderState, order_state
from scanflow.domain.life import DoubtEnd, Hold, LineState, NotAllowed
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Doubt, Line, Listing, Order
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import binding, receiving
from scanflow.workflow.orders.receiving import Arrival
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.ports import Invalid, Missing, Refused
from scanflow.workflow.stock import doubts


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def told(room, order):
    """(state, hold) of each of an order's lines."""
    return [(str(line.state), line.hold and str(line.hold)) for line in room.lines(order)]


def test_an_order_is_bound_when_it_arrives():
    """Each line waits for the stay it names; the order gets the next slip."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    assert [room.stay("D001").id, room.stay("D002").id] == [line.stay for line in room.lines(order)]
    assert ([("waiting", None)] * 2, 1) == (told(room, order), order.slip)


HELD = {
    "not a code": "unknown_code",
    "D999": "unknown_code",
    "D001-09": "unknown_code",
    "D003": "slot_free",
}


@pytest.mark.parametrize("reference", HELD)
def test_what_names_no_thing_is_held_and_not_lost(reference):
    """A line that can't be bound stays in its order, unbound, with the reason."""
    room = RoomInMemory("D001")
    assert [("unbound", HELD[reference])] == told(room, room.order("1", IncomingLine(reference)))


def test_a_bad_row_is_held_whatever_it_names():
    """A row that could not be read keeps its words for a person."""
    room = RoomInMemory("D001")
    order = room.order("1", IncomingLine("D001", bad="No title."), IncomingLine("?", bad="No code."))
    assert [("unbound", "bad_row")] * 2 == told(room, order)


def test_who_asks_for_more_gets_the_one_once_a_person_has_looked():
    """A line for two of a thing is bound and held; the same again changes nothing, before and after it is settled."""
    room = RoomInMemory("D001")
    asked = IncomingOrder("1", "fair", lines=(replace(exact("D001"), quantity="2"),))
    order, _ = receiving.receive(room.unit, asked)
    line = room.lines(order)[0]
    assert (room.stay("D001").id, "The order asks for 2 of it; there is one.") == (line.stay, line.why)
    assert ([("waiting", "doubtful")], Arrival.UNCHANGED) == (told(room, order), receiving.receive(room.unit, asked)[1])
    orders.settle(room.unit, line.id, orders.Settle())
    assert (Arrival.UNCHANGED, [("waiting", None)]) == (receiving.receive(room.unit, asked)[1], told(room, order))


def test_two_lines_for_one_thing_say_so():
    """The second line of an order for one thing doesn't name its own order as another that has it."""
    room = RoomInMemory("D001")
    lines = room.lines(room.order("1", exact("D001"), exact("D001", title="thing of D001")))
    assert [None, "Another line of this order has it."] == [line.why or None for line in lines]


def test_a_turn_that_the_slot_never_had_is_unknown():
    """A reference of a turn to come binds nothing."""
    room = RoomInMemory("D001")
    line = room.lines(room.order("1", IncomingLine(slot_code.reference("D001", 2))))[0]
    assert None is line.stay


def test_a_bare_code_from_before_the_thing_was_put_away_is_stale():
    """Dates tell that a bare code means an earlier thing of its slot."""
    room = RoomInMemory("D001")
    order = room.order("1", IncomingLine("D001"), ordered_at="2026-03-01")
    assert [("unbound", "stale_code")] == told(room, order)


def exact(code, turn=1, **more):
    return IncomingLine(slot_code.reference(code, turn), **more)


def test_an_order_from_before_the_thing_came_is_doubted():
    """An exact reference is held when the order is older than its stay, by days where it gives only a day."""
    room = RoomInMemory("D001", "D002")
    before = room.order("1", exact("D001"), ordered_at="2026-03-01")
    on_the_day = room.order("2", exact("D002"), ordered_at="2026-03-02")
    assert ([("waiting", "doubtful")], [("waiting", None)]) == (told(room, before), told(room, on_the_day))


def test_a_moved_thing_keeps_the_day_it_came():
    """An order between a thing's arrival and its move is not older than the stay that its reference names."""
    room = RoomInMemory("D001")
    room.unit.at += timedelta(days=3)
    stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    assert [("waiting", None)] == told(room, room.order("1", exact("D001"), ordered_at="2026-03-03"))


def taught(room):
    """The offers that order lines brought."""
    return tuple(each for each in room.unit.find(Listing) if each.line is not None)


def titled_room():
    """Two things that differ in a word, in D001 and D002, of which listing ids are known."""
    room = RoomInMemory()
    for code, title in (("D001", "Rear wheel, 26 inch"), ("D002", "Rear wheel, 28 inch")):
        stock.put_away(room.unit, stock.PutAway(title=title, listing=f"L-{code}", text=slot_code.card_text(code)))
    return room


@pytest.mark.parametrize(
    "more", [{"title": "Rear wheel 28 inch"}, {"listing": "L-D002"}, {"title": "Rear wheel", "listing": "L-D002"}]
)
def test_what_names_another_thing_is_held_with_its_name(more):
    """Words and listing id of another thing doubt an exact reference; that thing is named and offered first."""
    room = titled_room()
    line = room.lines(room.order("1", exact("D001", **more)))[0]
    assert (room.stay("D001").id, Hold.DOUBTFUL) == (line.stay, line.hold)
    assert (True, True) == ("D002" in line.why, "Rear wheel, 28 inch" in line.why)
    assert [room.stay("D002").id] == [each.stay for each in binding.others(room.unit, line.id)]


def test_a_thing_that_has_left_has_its_listing_id_still():
    """An order with the listing id of a thing that is gone is held, whatever its reference."""
    room = titled_room()
    room.release("0", "D002")
    assert [("waiting", "doubtful")] == told(room, room.order("1", exact("D001", listing="L-D002")))


def test_an_unknown_listing_id_is_learned():
    """What an exact reference brought is this thing's: the next order with it and another reference is held."""
    room = titled_room()
    order = room.order("1", exact("D001", listing="fair-7"))
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert [("waiting", "doubtful")] == told(room, room.order("2", exact("D002", listing="fair-7")))
    late = exact("D001", title="Brass bell", listing="fair-7")
    assert [("waiting", None)] == told(room, room.order("3", late, ordered_at="2026-03-01"))


@pytest.mark.parametrize("line", [exact("D001", title="Rear wheel 28 inch", listing="fair-7"), IncomingLine("D001")])
def test_what_is_doubted_or_bare_teaches_nothing(line):
    """A listing id that came with a doubt, or without an exact reference, is not learned."""
    room = titled_room()
    room.order("1", replace(line, listing="fair-7"))
    assert () == taught(room)


def test_settled_on_another_thing_a_listing_id_is_forgotten():
    """A person says that the line meant another thing: what it taught was wrong."""
    room = titled_room()
    line = room.lines(room.order("1", exact("D001", listing="fair-7")))[0]
    orders.settle(room.unit, line.id, orders.Settle(stay=room.stay("D002").id))
    assert () == taught(room)


@pytest.mark.parametrize(("how", "kept"), [("seen", ["fair-7"]), ("corrected", [])])
def test_a_doubt_of_the_thing_may_end_what_was_learned(how, kept):
    """Where the thing was not what its card says, the listing ids learned of it tell nothing."""
    room = titled_room()
    line = room.lines(room.order("1", exact("D001", listing="fair-7")))[0]
    orders.hold(room.unit, line.id, orders.NotThis(why="Not this thing."))
    (doubt,) = room.unit.find(Doubt)
    doubts.settle(room.unit, doubt.id, doubts.SettleDoubt(how=DoubtEnd(how), text=slot_code.card_text("D001")))
    assert kept == [each.listing for each in taught(room)]


def test_an_id_of_two_things_is_no_evidence():
    """A listing id that two things have says nothing for or against either, and is not learned."""
    room = titled_room()
    stock.change_item(room.unit, room.stay("D001").id, stock.ChangeItem(listing="same"))
    stock.change_item(room.unit, room.stay("D002").id, stock.ChangeItem(listing="same"))
    order = room.order("1", exact("D001", listing="same"), exact("D002", title="Rear wheel 26 inch", listing="same"))
    assert ([("waiting", None), ("waiting", "doubtful")], ()) == (told(room, order), taught(room))


def test_one_thing_is_sold_once():
    """The second order of a thing is told which order has it, and so it is after the thing has left."""
    room = RoomInMemory("D001")
    room.order("A", "D001")
    line = room.lines(room.order("B", "D001"))[0]
    assert (Hold.ALREADY_SOLD, "Order A has it.") == (line.hold, line.why)
    room.pick("D001")
    room.parcel(room.unit.find(Order, number="A")[0])
    room.pack("D001")
    line = room.lines(room.order("C", IncomingLine(slot_code.reference("D001", 1))))[0]
    assert (Hold.ALREADY_SOLD, "It has left with order A.") == (line.hold, line.why)


def test_a_withdrawn_thing_is_held():
    """A reference to what was taken out of stock says so."""
    room = RoomInMemory("D001")
    stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))
    assert [("unbound", "withdrawn")] == told(room, room.order("1", "D001"))


def test_an_old_reference_finds_a_moved_thing():
    """The reference names the item: after a move it is bound to the item's present stay."""
    room = RoomInMemory("D001")
    new = stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    assert new.id == room.lines(room.order("1", "D001"))[0].stay


@pytest.mark.parametrize("field", ["ordered_at", "ship_by"])
@pytest.mark.parametrize("text", ["soon", "2026-13-01", "0001-01-01T00:00:00+23:59", "1999-12-31", "2200-01-01"])
def test_a_time_that_is_none_is_refused(field, text):
    """A wrong time is a wrong field."""
    with pytest.raises(Invalid) as refusal:
        RoomInMemory("D001").order("1", "D001", **{field: text})
    assert (f"/{field}", "bad_time") == (refusal.value.pointer, refusal.value.code)


def test_times_are_in_the_shops_zone_where_they_bring_none():
    """A date means the end of that day in the shop; an offset is kept to."""
    room = RoomInMemory("D001")
    room.unit.set_settings(replace(room.unit.settings, zone="Europe/Berlin"))
    order = room.order("1", "D001", ordered_at="2026-03-02T12:00:00-05:00", ship_by="2026-03-05")
    assert datetime(2026, 3, 2, 17, tzinfo=UTC) == order.ordered_at
    assert datetime(2026, 3, 5, 22, 59, 59, tzinfo=UTC) == order.ship_by


A1 = IncomingLine(slot_code.reference("D001", 1), "thing of D001")
A2 = IncomingLine("D002", "thing of D002")


def received(*lines, room=None, **more):
    """The room and the order after it arrived as A1 and A2, and then again with these lines."""
    room = room or RoomInMemory("D001", "D002", "D003")
    order, _ = receiving.receive(room.unit, IncomingOrder("1", lines=(A1, A2)))
    again, outcome = receiving.receive(room.unit, IncomingOrder("1", lines=lines, **more))
    assert order.id == again.id
    return room, order, outcome


def test_the_same_again_changes_nothing():
    """An order sent twice is one order; its lines may come in another order."""
    room, order, outcome = received(A2, A1)
    assert (Arrival.UNCHANGED, [("waiting", None)] * 2) == (outcome, told(room, order))
    assert ["order received"] == [event.kind for event in room.unit.ledger if event.kind.startswith("order")]


def test_numbers_are_unique_within_their_channel_only():
    """The same number of another channel is another order."""
    room = RoomInMemory("D001", "D002")
    assert room.order("1", "D001").id != room.order("1", "D002", channel="fair").id


def sent(room, *codes, number="1001", **more):
    """The order as which these things are kept, and the outcome."""
    lines = tuple(exact(code) for code in codes)
    return receiving.receive(room.unit, IncomingOrder(number, lines=lines, **more))


def test_two_orders_under_one_number_stay_two():
    """Without a channel an order that shares no line with that of its number is kept apart, and both are held."""
    room = RoomInMemory("D001", "D002")
    one, _ = sent(room, "D001")
    two, outcome = sent(room, "D002")
    assert (Arrival.NEW, "1001 (2)", "1001") == (outcome, two.number, two.sent_number)
    assert [[("waiting", "doubtful")]] * 2 == [told(room, one), told(room, two)]
    assert (True, True) == ("1001 (2)" in room.line("D001").why, "1001." in room.line("D002").why)


def test_each_line_of_both_orders_is_settled_by_a_person():
    """Live lines and those bound to nothing are held until each is settled; what is over is left alone."""
    room = RoomInMemory("D001", "D002", "D003")
    one = room.order("1001", "D001", "D002", IncomingLine("?"))
    orders.cancel(room.unit, one.id, orders.Cancel(line=room.line("D002").id))
    two, _ = sent(room, "D003")
    orders.settle(room.unit, room.line("D003").id, orders.Settle())
    first, second, third = room.lines(one)
    held = [each.has(Hold.DOUBTFUL) for each in (first, second, third, *room.lines(two))]
    assert [True, False, True, False] == held


def test_sent_again_each_goes_to_the_order_that_has_its_lines():
    """The most shared lines tell which; unchanged nothing is held anew, and what shares none is yet another order."""
    room = RoomInMemory("D001", "D002", "D003", "D004", "D005")
    one, _ = sent(room, "D001", "D002")
    two, _ = sent(room, "D003", "D004")
    for code in ("D001", "D002", "D003", "D004"):
        orders.settle(room.unit, room.line(code).id, orders.Settle())
    entries = len(room.unit.ledger)
    again = [sent(room, "D001", "D002"), sent(room, "D004", "D003")]
    assert [(one.id, Arrival.UNCHANGED), (two.id, Arrival.UNCHANGED)] == [(order.id, how) for order, how in again]
    assert entries == len(room.unit.ledger)
    assert two.id == sent(room, "D003", "D004", "D001")[0].id
    assert "1001 (3)" == sent(room, "D005")[0].number


def test_a_named_channel_keeps_its_number_unique():
    """Where a channel is named, other lines under its number are a later version of the same order."""
    room = RoomInMemory("D001", "D002")
    one, _ = sent(room, "D001", channel="fair")
    two, outcome = sent(room, "D002", channel="fair")
    assert (one.id, Arrival.CHANGED, "1001") == (two.id, outcome, two.number)


def test_a_row_without_a_reference_is_known_by_its_title():
    """An order of bad rows sent again is the same, and another's bad row is not taken for it."""
    room = RoomInMemory()
    one = room.order("1001", IncomingLine("", "Bell", bad="No reference."))
    assert one.id == room.order("1001", IncomingLine("", "Bell", bad="No reference.")).id
    assert "1001 (2)" == room.order("1001", IncomingLine("", "Lamp", bad="No reference.")).number


def test_a_new_line_is_bound():
    """What a later version adds is bound after the others, and is not as old as the order: nobody says when it came."""
    room, order, outcome = received(A1, A2, IncomingLine("D003"), ordered_at="2026-03-01")
    assert (Arrival.CHANGED, [1, 2, 3]) == (outcome, [line.position for line in room.lines(order)])
    assert (room.stay("D003").id, None) == (room.line("D003").stay, room.lines(order)[2].hold)


def test_an_absent_line_is_held_once():
    """What a later version lacks is held; when a person has settled it, the same version holds it no more."""
    room, order, outcome = received(A1)
    assert (Arrival.CHANGED, [("waiting", None), ("waiting", "not_in_file")]) == (outcome, told(room, order))
    orders.settle(room.unit, room.line("D002").id, orders.Settle())
    assert Arrival.UNCHANGED is receiving.receive(room.unit, IncomingOrder("1", lines=(A1,)))[1]


def test_an_absent_line_that_comes_back_and_goes_again_is_held_again():
    """Each time a line falls out of the order a person is asked."""
    room, order, _ = received(A1)
    orders.settle(room.unit, room.line("D002").id, orders.Settle())
    receiving.receive(room.unit, IncomingOrder("1", lines=(A1, A2)))
    receiving.receive(room.unit, IncomingOrder("1", lines=(A1,)))
    assert ("waiting", "not_in_file") == told(room, order)[1]


@pytest.mark.parametrize(("picked", "hold"), [(False, "doubtful"), (True, "changed_after_pick")])
def test_a_changed_line_is_held(picked, hold):
    """Other words for a line hold it, with another name once its thing was picked."""
    room = RoomInMemory("D001")
    order = room.order("1", A1)
    if picked:
        room.pick("D001")
    receiving.receive(room.unit, IncomingOrder("1", lines=(replace(A1, title="brass bell"),)))
    line = room.lines(order)[0]
    assert (hold, "brass bell") == (line.hold, line.title)


def test_a_cancelled_line_keeps_what_a_later_version_says_until_it_is_wanted_after_all():
    """What is over stays over and asks nobody; wanted again, its other words are looked at first."""
    room = RoomInMemory("D001")
    order = room.order("1", A1)
    orders.cancel(room.unit, order.id, orders.Cancel())
    receiving.receive(room.unit, IncomingOrder("1", lines=(replace(A1, title="brass bell"),)))
    assert (LineState.CANCELLED, OrderState.CANCELLED) == (room.lines(order)[0].state, order_state(room.lines(order)))
    assert Hold.DOUBTFUL is orders.revive(room.unit, room.lines(order)[0].id).hold


def test_new_times_are_taken_over_and_missing_ones_kept():
    """A later version may bring times; it takes none away."""
    room, order, outcome = received(A1, A2, ship_by="2026-03-05")
    assert Arrival.CHANGED is outcome
    assert Arrival.UNCHANGED is receiving.receive(room.unit, IncomingOrder("1", lines=(A1, A2)))[1]
    assert datetime(2026, 3, 5, 23, 59, 59, tzinfo=UTC) == room.unit.get(Order, order.id).ship_by


def test_cancelling_ends_what_waits_and_holds_what_is_packed():
    """A packed thing must come out by a scan before its line is cancelled."""
    room = RoomInMemory("D001", "D002", scan_at_bin=False)
    order = room.order("1", "D001", "D002")
    room.parcel(order)
    room.pack("D001")
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert [("packed", "cancelled_in_box"), ("cancelled", None)] == told(room, order)
    room.scan("table", "D001", take_out=True)
    assert [("cancelled", None)] * 2 == told(room, order)


def test_one_line_is_cancelled_alone():
    """With a line named, the others go on."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    orders.cancel(room.unit, order.id, orders.Cancel(line=room.line("D002").id))
    assert [("waiting", None), ("cancelled", None)] == told(room, order)


def test_an_unbound_line_is_cancelled_and_keeps_its_hold():
    """What was held is held again if it is wanted after all."""
    room = RoomInMemory()
    order = room.order("1", IncomingLine("D001"))
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert [("cancelled", "slot_free")] == told(room, order)
    orders.revive(room.unit, room.lines(order)[0].id)
    assert [("unbound", "slot_free")] == told(room, order)


def test_what_has_left_is_not_cancelled():
    """An order that was handed over can't be cancelled, nor can a line that it does not have."""
    room = RoomInMemory("D001")
    order = room.release("1", "D001")
    hand_over.hand_over(room.unit, hand_over.HandOver(key="out", text=slot_code.slip_text(order.slip)))
    assert "already_released" == refused(orders.cancel, room.unit, order.id, orders.Cancel())
    assert "unknown_line" == refused(orders.cancel, room.unit, order.id, orders.Cancel(line="none"))


def test_a_closed_parcel_of_a_cancelled_order_stays_here():
    """Its line is held, and the parcel is not handed over: it is opened again and the thing taken out, or a person says
    that it left before.
    """
    for settled in (False, True):
        room = RoomInMemory("D001")
        order = room.release("1", "D001")
        slip = slot_code.slip_text(order.slip)
        orders.cancel(room.unit, order.id, orders.Cancel())
        line = room.lines(order)[0]
        assert ("released", "cancelled_in_box") == (line.state, line.hold)
        assert "cancelled" == hand_over.hand_over(room.unit, hand_over.HandOver(key="out-1", text=slip))["reason"]
        if settled:
            orders.settle(room.unit, line.id, orders.Settle())
            assert "accepted" == hand_over.hand_over(room.unit, hand_over.HandOver(key="out-2", text=slip))["verdict"]
            continue
        parcels.reopen(room.unit, line.parcel)
        assert "still_in_box" == refused(parcels.close_parcel, room.unit, line.parcel)
        assert "still_in_box" == refused(orders.settle, room.unit, line.id, orders.Settle())
        assert "accepted" == room.scan("table", "D001", take_out=True)["verdict"]
        assert "cancelled" == room.lines(order)[0].state


def test_a_card_read_away_from_its_closed_parcel_names_the_parcel():
    """Its thing may lie there too; nobody is told to take the card away and leave it."""
    room = RoomInMemory("D001")
    order = room.release("1", "D001")
    told = room.scan("shelf", "D001", bin="A-1-1")
    assert ("slot_free", "misplaced") == (told["reason"], room.lines(order)[0].hold)
    assert "not in the closed parcel of 1: open that parcel again" in told["advice"]


def test_cancelling_twice_changes_nothing():
    """A cancelled order is answered as it stands."""
    room = RoomInMemory("D001")
    order = room.order("1", "D001")
    orders.cancel(room.unit, order.id, orders.Cancel())
    entries = len(room.unit.ledger)
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert entries == len(room.unit.ledger)


def test_settling_takes_the_hold_away():
    """A person decides that it is this thing."""
    room = RoomInMemory("D001")
    order = room.order("1", IncomingLine("D001", "brass bell"))
    orders.settle(room.unit, room.lines(order)[0].id, orders.Settle())
    assert [("waiting", None)] == told(room, order)


@pytest.mark.parametrize("state", ["unbound", "waiting", "picked", "short"])
def test_settling_on_another_thing_binds_the_line_to_it(state):
    """From wherever the line stands it waits for the other thing, on no round."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", IncomingLine("?") if state == "unbound" else "D001")
    line = room.lines(order)[0]
    if state == "picked":
        room.pick("D001")
    if state == "short":
        orders.short(room.unit, line.id, orders.Short())
    line = orders.settle(room.unit, line.id, orders.Settle(stay=room.stay("D002").id))
    assert ("waiting", room.stay("D002").id, None, None) == (str(line.state), line.stay, line.round, line.hold)


def test_settling_needs_a_thing_that_is_there_and_free():
    """Nothing named, an unknown stay, one that left, and one that another order wants are refused."""
    room = RoomInMemory("D001", "D002")
    line = room.lines(room.order("1", IncomingLine("?")))[0].id
    room.order("2", "D002")
    stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))
    assert "required" == refused(orders.settle, room.unit, line, orders.Settle())
    assert "unknown_stay" == refused(orders.settle, room.unit, line, orders.Settle(stay="none"))
    assert "not_in_stock" == refused(orders.settle, room.unit, line, orders.Settle(stay=room.stay("D001").id))
    assert "has_live_line" == refused(orders.settle, room.unit, line, orders.Settle(stay=room.stay("D002").id))


def test_what_is_in_the_box_is_not_settled_away():
    """A packed thing comes out by a scan before its line means another; a cancelled one whatever else is said."""
    room = RoomInMemory("D001", "D002", "D003", scan_at_bin=False)
    order = room.order("1", "D001", "D002")
    room.parcel(order)
    room.pack("D001")
    line = room.line("D001").id
    assert "still_in_box" == refused(orders.settle, room.unit, line, orders.Settle(stay=room.stay("D003").id))
    orders.cancel(room.unit, order.id, orders.Cancel(line=line))
    assert "still_in_box" == refused(orders.settle, room.unit, line, orders.Settle())
    orders.hold(room.unit, line, orders.NotThis(why="not this"))
    assert "still_in_box" == refused(orders.settle, room.unit, line, orders.Settle(hold=Hold.CANCELLED_IN_BOX))


def test_short_and_found():
    """A missing thing waits again once it turns up; what is not missing can't turn up."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    line = room.line("D001").id
    assert LineState.SHORT is orders.short(room.unit, line, orders.Short(note="not there")).state
    assert LineState.WAITING is orders.found(room.unit, line).state
    with pytest.raises(NotAllowed):
        orders.found(room.unit, line)


def test_not_this_thing_holds_the_line():
    """A doubt at the bin holds the line with its words; what is over can't be held."""
    room = RoomInMemory("D001")
    order = room.order("1", "D001")
    line = orders.hold(room.unit, room.line("D001").id, orders.NotThis(why="Other colour."))
    assert (Hold.SUSPECT, "Other colour.") == (line.hold, line.why)
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert "not_allowed" == refused(orders.hold, room.unit, line.id, orders.NotThis(why="again"))


def test_a_cancelled_line_is_revived_where_its_thing_is_now():
    """The line waits again for its item, which may have moved meanwhile."""
    room = RoomInMemory("D001")
    order = room.order("1", "D001")
    orders.cancel(room.unit, order.id, orders.Cancel())
    new = stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    line = orders.revive(room.unit, room.lines(order)[0].id)
    assert (LineState.WAITING, new.id) == (line.state, line.stay)


def test_reviving_needs_the_thing():
    """What another order took and what left stays cancelled; a live line is revived already."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    orders.cancel(room.unit, order.id, orders.Cancel())
    room.order("2", "D001")
    stock.withdraw(room.unit, room.stay("D002").id, stock.Withdraw(reason="bent"))
    one, two = room.lines(order)
    assert "has_live_line" == refused(orders.revive, room.unit, one.id)
    assert "not_in_stock" == refused(orders.revive, room.unit, two.id)
    with pytest.raises(NotAllowed):
        orders.revive(room.unit, room.line("D001").id)


@pytest.mark.parametrize(
    ("call", "said"),
    [
        (orders.short, (orders.Short(),)),
        (orders.found, ()),
        (orders.revive, ()),
        (orders.settle, (orders.Settle(),)),
        (orders.cancel, (orders.Cancel(),)),
    ],
)
def test_what_does_not_exist_is_missing(call, said):
    """A call about an unknown line or order says that there is none."""
    with pytest.raises(Missing):
        call(RoomInMemory().unit, "none", *said)


def test_every_change_is_in_the_ledger():
    """What a person decides is recorded with the line it is about."""
    room = RoomInMemory("D001")
    order = room.order("1", "D001")
    line = room.line("D001").id
    orders.short(room.unit, line, orders.Short(note="gone"))
    orders.found(room.unit, line)
    orders.settle(room.unit, line, orders.Settle())
    orders.cancel(room.unit, order.id, orders.Cancel())
    orders.revive(room.unit, line)
    orders.hold(room.unit, line, orders.NotThis(why="hm"))
    told = ["short", "doubted", "found", "doubt settled", "settled", "cancelled", "revived", "doubted", "held"]
    assert told == [event.kind for event in room.unit.ledger[-len(told) :]]
    assert line == room.unit.get(Line, line).id
