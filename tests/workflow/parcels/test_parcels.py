"""The box on the table: opened, set aside, taken up again, closed over what was packed, opened again."""

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain.life import CardState, LineState, NotAllowed, ParcelState, StayState
from scanflow.domain.things import Order, Parcel
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.ports import Invalid, Missing, Refused


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def busy(**settings):
    """A room with two orders: 1 of D001 and D002, 2 of D003; all picked, nothing packed."""
    room = RoomInMemory("D001", "D002", "D003", **settings)
    first, second = room.order("1", "D001", "D002"), room.order("2", "D003")
    room.pick("D001", "D002", "D003")
    return room, first, second


def test_a_table_has_one_open_parcel():
    """A second parcel at the table is refused and the first is named; another table is free."""
    room, first, second = busy()
    parcel = room.parcel(first)
    with pytest.raises(Refused, match="The parcel of 1 is open") as refusal:
        room.parcel(second)
    assert ("parcel_open", {"parcel": parcel.id}) == (refusal.value.code, refusal.value.extra)
    assert "second" == room.parcel(second, table="second").table


def test_an_order_has_one_parcel():
    """While an order's parcel is open at one table, it gets no other."""
    room, first, second = busy()
    room.parcel(first)
    assert "parcel_open" == refused(room.parcel, first, table="second")
    assert "parcel_open" == refused(room.parcel, second, first, table="second")


def test_joined_orders_share_a_box_that_closes_over_all():
    """A parcel for two orders takes things of both, and closes by itself when all are packed."""
    room, first, second = busy()
    parcel = room.parcel(first, second)
    room.pack("D001", "D003")
    assert ["D001", "D002", "D003"] == sorted(room.scan("table", "D002")["released"])
    assert ParcelState.CLOSED is room.parcel_now(parcel).state
    assert {LineState.RELEASED} == {line.state for order in (first, second) for line in room.lines(order)}


def test_an_empty_parcel_is_dropped_when_set_aside():
    """Nothing lies in it, so nothing is kept, and the order is free for another."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    assert ParcelState.DROPPED is parcels.set_aside(room.unit, parcel.id).state
    assert parcel.id != room.parcel(first).id


def test_a_parcel_set_aside_is_taken_up_again_at_any_table():
    """Opening a parcel for the same orders goes on with the one that lies aside."""
    room, first, second = busy()
    parcel = room.parcel(first)
    room.pack("D001")
    assert ParcelState.ASIDE is parcels.set_aside(room.unit, parcel.id).state
    room.parcel(second)
    again = room.parcel(first, table="second")
    assert (parcel.id, "second", ParcelState.OPEN) == (again.id, again.table, again.state)


def test_things_in_a_box_aside_keep_its_orders_from_another():
    """As long as something lies in it, its orders can't be packed otherwise."""
    room, first, second = busy()
    parcel = room.parcel(first)
    room.pack("D001")
    parcels.set_aside(room.unit, parcel.id)
    assert "parcel_open" == refused(room.parcel, first, second)
    room.parcel(first)
    room.scan("table", "D001", take_out=True)
    parcels.set_aside(room.unit, parcel.id)
    joined = room.parcel(first, second)
    assert (ParcelState.DROPPED, 2) == (room.parcel_now(parcel).state, len(joined.orders))


def test_a_joined_parcel_is_taken_up_again_though_one_order_was_cancelled():
    """What lies in the box is reached again by its slip; the cancelled order has no part in it."""
    room, first, second = busy()
    parcel = room.parcel(first, second)
    room.pack("D001")
    parcels.set_aside(room.unit, parcel.id)
    orders.cancel(room.unit, second.id, orders.Cancel())
    answer = room.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", parcel.id, "open") == (answer["verdict"], answer["parcel"], answer["parcel_state"])
    assert ["D001", "D002"] == sorted(room.scan("table", "D002")["released"])


def test_an_ended_order_has_nothing_to_pack():
    """Released and cancelled orders get no parcel, and neither do orders that don't exist."""
    room = RoomInMemory("D001", "D002")
    released, cancelled = room.release("1", "D001"), room.order("2", "D002")
    orders.cancel(room.unit, cancelled.id, orders.Cancel())
    assert "nothing_to_pack" == refused(room.parcel, released)
    assert "nothing_to_pack" == refused(room.parcel, cancelled)
    assert "unknown_order" == refused(parcels.open_parcel, room.unit, parcels.OpenParcel(orders=["none"]))


def test_closing_releases_lines_stays_and_cards():
    """What was packed is gone: its stay shipped, its slot free, its card due."""
    room, first, _ = busy(auto_close=False)
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    assert ("D001", "D002") == parcels.close_parcel(room.unit, parcel.id)
    assert (LineState.RELEASED, StayState.SHIPPED, CardState.DUE) == (
        room.line("D001").state,
        room.stay("D001").state,
        room.slot("D001").card,
    )
    assert None is room.unit.get(Order, first.id).parcel


def test_a_parcel_without_auto_close_waits_for_a_person():
    """With the setting off, the last scan leaves the parcel open."""
    room, first, _ = busy(auto_close=False)
    room.parcel(first)
    room.pack("D001")
    answer = room.scan("table", "D002")
    assert ("open", [], "Packed. Close the parcel when it is ready.") == (
        answer["parcel_state"],
        answer["released"],
        answer["advice"],
    )


def test_closing_needs_something_packed_and_all_of_it():
    """An empty parcel does not close; one that lacks things closes only as a part."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    assert "nothing_packed" == refused(parcels.close_parcel, room.unit, parcel.id, partial=True)
    room.pack("D001")
    assert "lines_missing" == refused(parcels.close_parcel, room.unit, parcel.id)
    assert ("D001",) == parcels.close_parcel(room.unit, parcel.id, partial=True)
    assert [LineState.RELEASED, LineState.PICKED] == [line.state for line in room.lines(first)]


def test_the_rest_of_a_part_goes_in_a_parcel_of_its_own():
    """After a part has left, the order is packed on."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001")
    parcels.close_parcel(room.unit, parcel.id, partial=True)
    rest = room.parcel(first)
    assert ["D002"] == room.scan("table", "D002")["released"]
    assert ParcelState.CLOSED is room.parcel_now(rest).state


@pytest.mark.parametrize("how", ["cancel", "hold"])
def test_no_parcel_closes_over_what_must_come_out(how):
    """A held or cancelled thing in the box keeps it open, as a part too, until it is out or settled."""
    room, first, _ = busy(auto_close=False)
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    line = room.line("D001")
    if how == "cancel":
        orders.cancel(room.unit, first.id, orders.Cancel(line=line.id))
    else:
        orders.hold(room.unit, line.id, orders.NotThis(why="hm"))
    assert "still_in_box" == refused(parcels.close_parcel, room.unit, parcel.id, partial=True)
    room.scan("table", "D001", take_out=True)
    assert ("D002",) == parcels.close_parcel(room.unit, parcel.id, partial=True)


def test_only_an_open_parcel_closes():
    """A parcel that lies aside, is closed or unknown does not close."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001")
    parcels.set_aside(room.unit, parcel.id)
    with pytest.raises(NotAllowed):
        parcels.close_parcel(room.unit, parcel.id, partial=True)
    with pytest.raises(Missing):
        parcels.close_parcel(room.unit, "none")
    room.parcel(first)
    room.pack("D002")
    with pytest.raises(NotAllowed):
        parcels.set_aside(room.unit, parcel.id)


def test_reopening_takes_everything_back():
    """The things are in the box and stored again, their cards on them, though one was in the tray by now."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    room.scan("tray", "D001")
    parcels.reopen(room.unit, parcel.id)
    assert [LineState.PACKED] * 2 == [line.state for line in room.lines(first)]
    assert (True, CardState.ON_ITEM, CardState.ON_ITEM) == (
        room.stay("D001").open,
        room.slot("D001").card,
        room.slot("D002").card,
    )
    assert parcel.id == room.unit.get(Order, first.id).parcel


def test_a_lost_card_stays_lost_when_its_parcel_is_reopened():
    """Reopening finds no card."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    stock.lose_card(room.unit, "D001")
    parcels.reopen(room.unit, parcel.id)
    assert (True, CardState.LOST) == (room.stay("D001").open, room.slot("D001").card)


def test_a_reused_slot_keeps_its_parcel_closed():
    """Once another thing stands in a slot, what left it can't come back there."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    room.put_away("D001")
    assert "slot_reused" == refused(parcels.reopen, room.unit.fork(), parcel.id)


def test_reopening_needs_the_table_and_the_orders_free():
    """Another open parcel at the table or of the order comes first; an open parcel can't be reopened."""
    room, first, second = busy()
    part = room.parcel(first)
    room.pack("D001")
    parcels.close_parcel(room.unit, part.id, partial=True)
    other = room.parcel(second)
    assert "parcel_open" == refused(parcels.reopen, room.unit, part.id)
    parcels.set_aside(room.unit, other.id)
    rest = room.parcel(first, table="second")
    assert "parcel_open" == refused(parcels.reopen, room.unit, part.id)
    with pytest.raises(NotAllowed):
        parcels.reopen(room.unit, rest.id)


def test_what_has_come_back_is_not_reopened():
    """When nothing of a parcel is with its buyer any more, there is nothing to take back."""
    room, first, _ = busy()
    parcel = room.parcel(first)
    room.pack("D001", "D002")
    for line in room.lines(first):
        room.unit.put(line.after("return"))
    assert "not_allowed" == refused(parcels.reopen, room.unit, parcel.id)


SLIP_WORDS = {
    "released": ("refused", "already_released"),
    "cancelled": ("refused", "cancelled"),
    "open": ("accepted", None),
    "other": ("refused", "other_order"),
    "elsewhere": ("refused", "other_order"),
}


@pytest.mark.parametrize("case", SLIP_WORDS)
def test_a_slip_opens_its_orders_parcel_or_says_why_not(case):
    """A slip of an ended order, beside another's parcel, or of a parcel open elsewhere is refused."""
    room, first, second = busy()
    if case == "released":
        room.parcel(first)
        room.pack("D001", "D002")
    if case == "cancelled":
        orders.cancel(room.unit, first.id, orders.Cancel())
    if case in ("open", "elsewhere"):
        room.parcel(first, table="main" if case == "open" else "second")
    if case == "other":
        room.parcel(second)
    before = dict(room.unit.all(Parcel))
    answer = room.read("table", slot_code.slip_text(first.slip))
    assert (*SLIP_WORDS[case], False) == (answer["verdict"], answer["reason"], answer["changed"])
    assert (before, "1") == (dict(room.unit.all(Parcel)), answer["order_number"])


def test_a_slip_opens_a_parcel():
    """At a free table the slip is all that is needed."""
    room, first, _ = busy()
    answer = room.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", True, "open") == (answer["verdict"], answer["changed"], answer["parcel_state"])
    assert [first.id] == list(room.unit.all(Parcel)[answer["parcel"]].orders)


def test_a_slip_after_a_part_opens_the_rest():
    """An order of which a part has left is packed on by its slip."""
    room, first, _ = busy()
    part = room.parcel(first)
    room.pack("D001")
    parcels.close_parcel(room.unit, part.id, partial=True)
    answer = room.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", True) == (answer["verdict"], answer["parcel"] != part.id)


@pytest.mark.parametrize("station", ["bin", "tray", "shelf"])
def test_a_slip_is_no_card(station):
    """Slips count at the table only; an unknown slip is no slip of the shop."""
    room, first, second = busy()
    slip = slot_code.slip_text(first.slip)
    spot = {"bin": {"round": room.line("D001").round}, "shelf": {"bin": "A-1-1"}}.get(station, {})
    assert "unknown_code" == room.read(station, slip, **spot)["reason"]
    assert "unknown_code" == room.read("table", slot_code.slip_text(99))["reason"]
    assert "many_codes" == room.read("table", slip, slot_code.slip_text(second.slip))["reason"]
    assert "many_codes" == room.read("table", slip, slot_code.card_text("D001"))["reason"]
