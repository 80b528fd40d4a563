"""What left comes back, and is sent again; two cards that were swapped are put right."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import CardState, Condition, DoubtKind, Hold, LineState, StayState
from scanflow.domain.orders.incoming import IncomingLine
from scanflow.domain.things import Line, Order, Parcel, Return, Stay
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import returns
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.ports import Invalid, Refused
from scanflow.workflow.stock import doubts


def refused(call: Any, *args: Any) -> str:
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as caught:
        call(*args)
    return caught.value.code


def gone(*codes: str) -> tuple[RoomInMemory, Order]:
    """An order of these, handed over."""
    room = RoomInMemory(*codes)
    order = room.release("1", *codes)
    hand_over.hand_over(room.unit, hand_over.HandOver(key="out", text=slot_code.slip_text(order.slip)))
    return room, order


def take_back(room: RoomInMemory, line: Line, code: str) -> Stay:
    """Its return is expected, arrives and is checked: the thing is sold again."""
    back = returns.arrive(room.unit, returns.expect(room.unit, returns.Expect(order=line.order, lines=(line.id,))).id)
    returns.check(room.unit, back.id, resold(line, code))
    return room.stay(code)


def resold(line: Line, code: str) -> returns.CheckReturn:
    return returns.CheckReturn(line=line.id, condition=Condition.RESELL, text=slot_code.card_text(code))


def now(room: RoomInMemory, line: Line) -> Line:
    return room.unit.all(Line)[line.id]


def test_what_left_is_put_away_by_the_card_in_hand() -> None:
    """The line is returned, and the same item has its next stay in that card's slot; the ledger tells of it."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    item = room.item("D001")
    stay = take_back(room, line, "D004")
    assert (LineState.RETURNED, item.id, "D004", 1) == (now(room, line).state, stay.item, stay.code, stay.turn)
    assert events.Returned(line=line.id, stay=stay.id, code="D004", turn=1) == room.unit.ledger[-2]
    assert (CardState.ON_ITEM, CardState.DUE) == (room.slot("D004").card, room.slot("D001").card)


def test_its_own_card_may_be_in_hand() -> None:
    """The card that came off it before it left is still due, and serves as any other."""
    room, order = gone("D001")
    assert ("D001", 2) == ((stay := take_back(room, room.lines(order)[0], "D001")).code, stay.turn)


def test_what_is_still_here_is_opened_and_taken_out_instead() -> None:
    """A closed parcel that can be opened again gives nothing back this way."""
    room = RoomInMemory("D001")
    (line,) = room.lines(room.release("1", "D001"))
    assert "not_left" == refused(take_back, room, line, "D004")


@pytest.mark.parametrize("how", ["by its days", "its slot is used again"])
def test_what_can_t_be_opened_again_is_taken_back(how: str) -> None:
    """A parcel that counts as gone, and one of whose slots has a newer stay."""
    room = RoomInMemory("D001")
    (line,) = room.lines(room.release("1", "D001"))
    if how == "by its days":
        room.unit.at += timedelta(days=4)
    else:
        room.put_away("D001")
    assert "D004" == take_back(room, line, "D004").code


def test_only_what_left_comes_back_and_only_once() -> None:
    """Into a slot that is free; then nothing of it is with its buyer."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    room.put_away("D002")
    assert "taken" == refused(take_back, room, line, "D002")
    assert "already_expected" == refused(take_back, room, line, "D004")
    (back,) = room.unit.find(Return)
    returns.check(room.unit, back.id, resold(line, "D004"))
    with pytest.raises(Exception, match="'return' is not possible while it is returned"):
        take_back(room, line, "D005")


def test_its_doubts_come_back_with_it() -> None:
    """They belong to the item: the next order of it is held, by its old reference too."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    doubts.doubt(room.unit, room.item("D001").id, DoubtKind.NOT_THIS, "Not this saddle.")
    take_back(room, line, "D004")
    (next_,) = room.lines(room.order("2", "D001"))
    assert (room.stay("D004").id, True) == (next_.stay, next_.has(Hold.SUSPECT))


def test_a_parcel_of_which_all_came_back_is_handed_over_no_more() -> None:
    """Nothing of it is left in the box."""
    room = RoomInMemory("D001")
    order = room.release("1", "D001")
    room.put_away("D001")
    take_back(room, room.lines(order)[0], "D004")
    assert (
        "not_closed"
        == hand_over.hand_over(room.unit, hand_over.HandOver(key="k", text=slot_code.slip_text(order.slip)))["reason"]
    )


def test_what_came_back_is_sent_again_from_where_it_stands() -> None:
    """The line waits for the item's present stay, free of its former parcel, round and basket."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    take_back(room, line, "D004")
    sent = orders.send_again(room.unit, line.id)
    assert (LineState.WAITING, room.stay("D004").id, None, None, None) == (
        *(sent.state, sent.stay),
        *(sent.parcel, sent.round, sent.basket),
    )
    room.pick("D004")
    room.parcel(order)
    assert ["D004"] == room.scan("table", "D004")["released"]


def test_what_is_doubted_is_sent_again_held() -> None:
    """As a line that is wanted after all is."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    take_back(room, line, "D004")
    doubts.doubt(room.unit, room.item("D004").id, DoubtKind.NOT_THIS, "Not this saddle.")
    assert Hold.SUSPECT is orders.send_again(room.unit, line.id).hold


def test_what_another_order_has_is_not_sent_again() -> None:
    """The thing that came back was sold meanwhile."""
    room, order = gone("D001")
    (line,) = room.lines(order)
    take_back(room, line, "D004")
    room.order("2", "D004")
    assert "has_live_line" == refused(orders.send_again, room.unit, line.id)


def swapped(*ordered: str) -> RoomInMemory:
    """D001 and D002 with a thing in each; an order of each of these."""
    room = RoomInMemory("D001", "D002")
    for number, code in enumerate(ordered, 1):
        room.order(str(number), code)
    return room


def test_two_things_change_places() -> None:
    """Both stays end as moved, and each item's next one begins in the other's slot; both cards stay on things."""
    room = swapped()
    one, two = room.stay("D001"), room.stay("D002")
    new = stock.exchange(room.unit, one.id, two.id)
    assert (one.item, "D002", 2) == (new.item, new.code, new.turn)
    assert (two.item, "D001", 2) == (room.stay("D001").item, room.stay("D001").code, room.stay("D001").turn)
    assert [StayState.MOVED] * 2 == [room.unit.all(Stay)[each.id].state for each in (one, two)]
    assert [CardState.ON_ITEM] * 2 == [room.slot(code).card for code in ("D001", "D002")]


def test_the_other_may_be_named_by_its_slot() -> None:
    """A code says the thing that stands there; an empty slot, the thing itself and what is no stay are none."""
    room = swapped()
    one = room.stay("D001")
    for wrong in ("D003", "D001", one.id, "none"):
        assert "unknown_stay" == refused(stock.exchange, room.unit, one.id, wrong)
    assert "D002" == stock.exchange(room.unit, one.id, "D002").code


def test_lines_and_references_follow_their_things() -> None:
    """What is ordered by the old reference is still the same item."""
    room = swapped("D001")
    line, item, reference = room.line("D001"), room.item("D002"), slot_code.reference("D002", 1)
    stock.exchange(room.unit, room.stay("D001").id, "D002")
    assert room.stay("D002").id == now(room, line).stay
    (bound,) = room.lines(room.order("2", IncomingLine(reference)))
    assert item.id == room.unit.all(Stay)[bound.stay].item


def test_once_more_is_as_before() -> None:
    """Exchanging again undoes it."""
    room = swapped("D001", "D002")
    items = [room.item(code) for code in ("D001", "D002")]
    for _ in range(2):
        stock.exchange(room.unit, room.stay("D001").id, "D002")
    assert items == [room.item(code) for code in ("D001", "D002")]
    assert ["1", "2"] == [room.unit.all(Order)[room.line(code).order].number for code in ("D001", "D002")]


def test_what_had_picked_the_wrong_thing_waits_again() -> None:
    """Card D001 hung on the other thing: that is in the basket and must go back, and the right one is fetched."""
    room = swapped("D001")
    room.pick("D001")
    line = room.line("D001")
    stock.exchange(room.unit, room.stay("D001").id, "D002")
    assert LineState.WAITING is now(room, line).state
    assert (True, None) == (room.slot("D001").out is not None, room.slot("D002").out)
    assert (
        "not_ordered" == room.scan("table", "D001", table=room.parcel(room.unit.all(Order)[line.order]).table)["reason"]
    )
    room.pick("D002")
    assert ["D002"] == room.scan("table", "D002")["released"]


@pytest.mark.parametrize("packed", ["D001", "D002"])
def test_nothing_is_exchanged_while_either_lies_in_a_parcel(packed: str) -> None:
    """It comes out by a scan first."""
    room = RoomInMemory("D001", "D002", "D003")
    order = room.order("1", packed, "D003")
    room.pick(packed)
    room.parcel(order)
    room.pack(packed)
    assert "still_in_box" == refused(stock.exchange, room.unit, room.stay("D001").id, "D002")


def test_a_lost_card_was_swapped_with_none() -> None:
    """It is seen first."""
    room = swapped()
    stock.lose_card(room.unit, "D002")
    assert "retired" == refused(stock.exchange, room.unit, room.stay("D001").id, "D002")


def test_what_was_read_of_a_card_stays_true_of_it() -> None:
    """A card that was read on a wrong shelf is misplaced still."""
    room = swapped()
    room.scan("shelf", "D001", bin="A-1-3")
    seen = room.slot("D001").seen
    stock.exchange(room.unit, room.stay("D001").id, "D002")
    assert (seen, None) == (room.slot("D001").seen, room.slot("D002").seen)


def test_a_joined_parcel_is_named_by_what_is_in_it() -> None:
    """A parcel can be opened again until it left, and while none of its slots has a newer stay."""
    room = RoomInMemory("D001", "D002")
    order = room.release("1", "D001", "D002")
    parcel = room.unit.all(Parcel)[room.lines(order)[0].parcel]
    assert True is parcels.can_reopen(room.unit, parcel)
    room.put_away("D002")
    assert False is parcels.can_reopen(room.unit, parcel)
