"""The box on the table: opened, set aside, taken up again, closed over what was packed, opened again."""

import pytest
from floor import Floor

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
    """A floor with two orders: 1 of D001 and D002, 2 of D003; all picked, nothing packed."""
    floor = Floor("D001", "D002", "D003", **settings)
    first, second = floor.order("1", "D001", "D002"), floor.order("2", "D003")
    floor.pick("D001", "D002", "D003")
    return floor, first, second


def test_a_table_has_one_open_parcel():
    """A second parcel at the table is refused and the first is named; another table is free."""
    floor, first, second = busy()
    parcel = floor.parcel(first)
    with pytest.raises(Refused, match="The parcel of 1 is open") as refusal:
        floor.parcel(second)
    assert ("parcel_open", {"parcel": parcel.id}) == (refusal.value.code, refusal.value.extra)
    assert "second" == floor.parcel(second, table="second").table


def test_an_order_has_one_parcel():
    """While an order's parcel is open at one table, it gets no other."""
    floor, first, second = busy()
    floor.parcel(first)
    assert "parcel_open" == refused(floor.parcel, first, table="second")
    assert "parcel_open" == refused(floor.parcel, second, first, table="second")


def test_joined_orders_share_a_box_that_closes_over_all():
    """A parcel for two orders takes things of both, and closes by itself when all are packed."""
    floor, first, second = busy()
    parcel = floor.parcel(first, second)
    floor.pack("D001", "D003")
    assert ["D001", "D002", "D003"] == sorted(floor.scan("table", "D002")["released"])
    assert ParcelState.CLOSED is floor.parcel_now(parcel).state
    assert {LineState.RELEASED} == {line.state for order in (first, second) for line in floor.lines(order)}


def test_an_empty_parcel_is_dropped_when_set_aside():
    """Nothing lies in it, so nothing is kept, and the order is free for another."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    assert ParcelState.DROPPED is parcels.set_aside(floor.unit, parcel.id).state
    assert parcel.id != floor.parcel(first).id


def test_a_parcel_set_aside_is_taken_up_again_at_any_table():
    """Opening a parcel for the same orders goes on with the one that lies aside."""
    floor, first, second = busy()
    parcel = floor.parcel(first)
    floor.pack("D001")
    assert ParcelState.ASIDE is parcels.set_aside(floor.unit, parcel.id).state
    floor.parcel(second)
    again = floor.parcel(first, table="second")
    assert (parcel.id, "second", ParcelState.OPEN) == (again.id, again.table, again.state)


def test_things_in_a_box_aside_keep_its_orders_from_another():
    """As long as something lies in it, its orders can't be packed otherwise."""
    floor, first, second = busy()
    parcel = floor.parcel(first)
    floor.pack("D001")
    parcels.set_aside(floor.unit, parcel.id)
    assert "parcel_open" == refused(floor.parcel, first, second)
    floor.parcel(first)
    floor.scan("table", "D001", take_out=True)
    parcels.set_aside(floor.unit, parcel.id)
    joined = floor.parcel(first, second)
    assert (ParcelState.DROPPED, 2) == (floor.parcel_now(parcel).state, len(joined.orders))


def test_a_joined_parcel_is_taken_up_again_though_one_order_was_cancelled():
    """What lies in the box is reached again by its slip; the cancelled order has no part in it."""
    floor, first, second = busy()
    parcel = floor.parcel(first, second)
    floor.pack("D001")
    parcels.set_aside(floor.unit, parcel.id)
    orders.cancel(floor.unit, second.id, orders.Cancel())
    answer = floor.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", parcel.id, "open") == (answer["verdict"], answer["parcel"], answer["parcel_state"])
    assert ["D001", "D002"] == sorted(floor.scan("table", "D002")["released"])


def test_an_ended_order_has_nothing_to_pack():
    """Released and cancelled orders get no parcel, and neither do orders that don't exist."""
    floor = Floor("D001", "D002")
    released, cancelled = floor.release("1", "D001"), floor.order("2", "D002")
    orders.cancel(floor.unit, cancelled.id, orders.Cancel())
    assert "nothing_to_pack" == refused(floor.parcel, released)
    assert "nothing_to_pack" == refused(floor.parcel, cancelled)
    assert "unknown_order" == refused(parcels.open_parcel, floor.unit, parcels.OpenParcel(orders=["none"]))


def test_closing_releases_lines_stays_and_cards():
    """What was packed is gone: its stay shipped, its slot free, its card due."""
    floor, first, _ = busy(auto_close=False)
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    assert ("D001", "D002") == parcels.close_parcel(floor.unit, parcel.id)
    assert (LineState.RELEASED, StayState.SHIPPED, CardState.DUE) == (
        floor.line("D001").state,
        floor.stay("D001").state,
        floor.slot("D001").card,
    )
    assert None is floor.unit.get(Order, first.id).parcel


def test_a_parcel_without_auto_close_waits_for_a_person():
    """With the setting off, the last scan leaves the parcel open."""
    floor, first, _ = busy(auto_close=False)
    floor.parcel(first)
    floor.pack("D001")
    answer = floor.scan("table", "D002")
    assert ("open", [], "Packed. Close the parcel when it is ready.") == (
        answer["parcel_state"],
        answer["released"],
        answer["advice"],
    )


def test_closing_needs_something_packed_and_all_of_it():
    """An empty parcel does not close; one that lacks things closes only as a part."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    assert "nothing_packed" == refused(parcels.close_parcel, floor.unit, parcel.id, partial=True)
    floor.pack("D001")
    assert "lines_missing" == refused(parcels.close_parcel, floor.unit, parcel.id)
    assert ("D001",) == parcels.close_parcel(floor.unit, parcel.id, partial=True)
    assert [LineState.RELEASED, LineState.PICKED] == [line.state for line in floor.lines(first)]


def test_the_rest_of_a_part_goes_in_a_parcel_of_its_own():
    """After a part has left, the order is packed on."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001")
    parcels.close_parcel(floor.unit, parcel.id, partial=True)
    rest = floor.parcel(first)
    assert ["D002"] == floor.scan("table", "D002")["released"]
    assert ParcelState.CLOSED is floor.parcel_now(rest).state


@pytest.mark.parametrize("how", ["cancel", "hold"])
def test_no_parcel_closes_over_what_must_come_out(how):
    """A held or cancelled thing in the box keeps it open, as a part too, until it is out or settled."""
    floor, first, _ = busy(auto_close=False)
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    line = floor.line("D001")
    if how == "cancel":
        orders.cancel(floor.unit, first.id, orders.Cancel(line=line.id))
    else:
        orders.hold(floor.unit, line.id, orders.NotThis(why="hm"))
    assert "still_in_box" == refused(parcels.close_parcel, floor.unit, parcel.id, partial=True)
    floor.scan("table", "D001", take_out=True)
    assert ("D002",) == parcels.close_parcel(floor.unit, parcel.id, partial=True)


def test_only_an_open_parcel_closes():
    """A parcel that lies aside, is closed or unknown does not close."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001")
    parcels.set_aside(floor.unit, parcel.id)
    with pytest.raises(NotAllowed):
        parcels.close_parcel(floor.unit, parcel.id, partial=True)
    with pytest.raises(Missing):
        parcels.close_parcel(floor.unit, "none")
    floor.parcel(first)
    floor.pack("D002")
    with pytest.raises(NotAllowed):
        parcels.set_aside(floor.unit, parcel.id)


def test_reopening_takes_everything_back():
    """The things are in the box and stored again, their cards on them, though one was in the tray by now."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    floor.scan("tray", "D001")
    parcels.reopen(floor.unit, parcel.id)
    assert [LineState.PACKED] * 2 == [line.state for line in floor.lines(first)]
    assert (True, CardState.ON_ITEM, CardState.ON_ITEM) == (
        floor.stay("D001").open,
        floor.slot("D001").card,
        floor.slot("D002").card,
    )
    assert parcel.id == floor.unit.get(Order, first.id).parcel


def test_a_lost_card_stays_lost_when_its_parcel_is_reopened():
    """Reopening finds no card."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    stock.lose_card(floor.unit, "D001")
    parcels.reopen(floor.unit, parcel.id)
    assert (True, CardState.LOST) == (floor.stay("D001").open, floor.slot("D001").card)


def test_a_reused_slot_keeps_its_parcel_closed():
    """Once another thing stands in a slot, what left it can't come back there."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    floor.put_away("D001")
    assert "slot_reused" == refused(parcels.reopen, floor.unit.fork(), parcel.id)


def test_reopening_needs_the_table_and_the_orders_free():
    """Another open parcel at the table or of the order comes first; an open parcel can't be reopened."""
    floor, first, second = busy()
    part = floor.parcel(first)
    floor.pack("D001")
    parcels.close_parcel(floor.unit, part.id, partial=True)
    other = floor.parcel(second)
    assert "parcel_open" == refused(parcels.reopen, floor.unit, part.id)
    parcels.set_aside(floor.unit, other.id)
    rest = floor.parcel(first, table="second")
    assert "parcel_open" == refused(parcels.reopen, floor.unit, part.id)
    with pytest.raises(NotAllowed):
        parcels.reopen(floor.unit, rest.id)


def test_what_has_come_back_is_not_reopened():
    """When nothing of a parcel is with its buyer any more, there is nothing to take back."""
    floor, first, _ = busy()
    parcel = floor.parcel(first)
    floor.pack("D001", "D002")
    for line in floor.lines(first):
        floor.unit.put(line.after("return"))
    assert "not_allowed" == refused(parcels.reopen, floor.unit, parcel.id)


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
    floor, first, second = busy()
    if case == "released":
        floor.parcel(first)
        floor.pack("D001", "D002")
    if case == "cancelled":
        orders.cancel(floor.unit, first.id, orders.Cancel())
    if case in ("open", "elsewhere"):
        floor.parcel(first, table="main" if case == "open" else "second")
    if case == "other":
        floor.parcel(second)
    before = dict(floor.unit.all(Parcel))
    answer = floor.read("table", slot_code.slip_text(first.slip))
    assert (*SLIP_WORDS[case], False) == (answer["verdict"], answer["reason"], answer["changed"])
    assert (before, "1") == (dict(floor.unit.all(Parcel)), answer["order_number"])


def test_a_slip_opens_a_parcel():
    """At a free table the slip is all that is needed."""
    floor, first, _ = busy()
    answer = floor.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", True, "open") == (answer["verdict"], answer["changed"], answer["parcel_state"])
    assert [first.id] == list(floor.unit.all(Parcel)[answer["parcel"]].orders)


def test_a_slip_after_a_part_opens_the_rest():
    """An order of which a part has left is packed on by its slip."""
    floor, first, _ = busy()
    part = floor.parcel(first)
    floor.pack("D001")
    parcels.close_parcel(floor.unit, part.id, partial=True)
    answer = floor.read("table", slot_code.slip_text(first.slip))
    assert ("accepted", True) == (answer["verdict"], answer["parcel"] != part.id)


@pytest.mark.parametrize("station", ["bin", "tray", "shelf"])
def test_a_slip_is_no_card(station):
    """Slips count at the table only; an unknown slip is no slip of the shop."""
    floor, first, second = busy()
    slip = slot_code.slip_text(first.slip)
    spot = {"bin": {"round": floor.line("D001").round}, "shelf": {"bin": "A-1-1"}}.get(station, {})
    assert "unknown_code" == floor.read(station, slip, **spot)["reason"]
    assert "unknown_code" == floor.read("table", slot_code.slip_text(99))["reason"]
    assert "many_codes" == floor.read("table", slip, slot_code.slip_text(second.slip))["reason"]
    assert "many_codes" == floor.read("table", slip, slot_code.card_text("D001"))["reason"]
