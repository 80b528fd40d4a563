"""Sales that no file brings: one thing, or several, taken down by a person."""

import pytest
from room_in_memory import RoomInMemory

from scanflow.domain import events
from scanflow.domain.life import Hold, LineState
from scanflow.domain.things import Line
from scanflow.workflow import orders, stock
from scanflow.workflow.orders.selling import Sell, TakeDown, sell, take_down
from scanflow.workflow.ports import Missing, Refused


def test_a_thing_that_is_sold_waits_in_an_order_of_its_own():
    """Its order is named for it, says what was noted, and its line waits for a round."""
    room = RoomInMemory("D001")
    order = sell(room.unit, room.stay("D001").id, Sell(note="Comes on Friday", collected=True))
    assert ("Sale D001-019", "Comes on Friday", True) == (order.number, order.note, order.collected)
    [line] = room.lines(order)
    assert (room.stay("D001").id, LineState.WAITING, ()) == (line.stay, line.state, line.holds)
    told = room.unit.ledger[-1]
    assert isinstance(told, events.OrderReceived)
    assert ("Comes on Friday", True) == (told.note, told.collected)


def test_a_sale_that_was_cancelled_may_be_made_again():
    """Under the next free name; what was noted of the first stands there."""
    room = RoomInMemory("D001")
    first = sell(room.unit, room.stay("D001").id, Sell())
    orders.cancel(room.unit, first.id, orders.Cancel())
    again = sell(room.unit, room.stay("D001").id, Sell())
    assert ("Sale D001-019", "Sale D001-019 (2)") == (first.number, again.number)


def test_what_another_order_wants_is_not_sold():
    """Nor what has left its slot, nor what there is not, nor under a number that is taken; nothing changes then."""
    room = RoomInMemory("D001", "D002", "D003")
    room.order("1", "D001")
    gone = room.stay("D002")
    stock.withdraw(room.unit, gone.id, stock.Withdraw(reason="cracked"))
    before = room.unit.seq
    for stay, number, code in (
        (room.stay("D001").id, None, "has_live_line"),
        (gone.id, None, "not_in_stock"),
        (room.stay("D003").id, "1", "taken"),
    ):
        with pytest.raises(Refused) as no:
            sell(room.unit, stay, Sell(**{"number": number} if number else {}))
        assert code == no.value.code
    with pytest.raises(Missing):
        sell(room.unit, "nowhere", Sell())
    assert before == room.unit.seq


def test_a_doubted_thing_is_sold_and_held():
    """What was said of it is not forgotten because a person sells it."""
    room = RoomInMemory("D001")
    line = room.lines(room.order("1", "D001"))[0]
    orders.hold(room.unit, line.id, orders.NotThis(why="Another colour"))
    orders.cancel(room.unit, line.order, orders.Cancel())
    sold = sell(room.unit, room.stay("D001").id, Sell())
    assert [Hold.SUSPECT] == [line.hold for line in room.lines(sold)]


def test_an_order_is_taken_down_for_several_things():
    """Each thing once, in the order in which they were named, with the day by which it has to leave."""
    room = RoomInMemory("D001", "D002")
    ids = [room.stay(code).id for code in ("D002", "D001", "D002")]
    said = TakeDown.of({"channel": "phone", "ship_by": "2026-03-05", "stays": ids})
    order = take_down(room.unit, said)
    assert ["D002-011", "D001-019"] == [line.reference for line in room.lines(order)]
    assert ("Sale D002-011", "phone", "2026-03-05") == (order.number, order.channel, str(order.ship_by)[:10])
    room.pick("D001", "D002")
    room.parcel(order)
    room.pack("D001", "D002")
    assert {LineState.RELEASED} == {line.state for line in room.unit.all(Line).values()}
