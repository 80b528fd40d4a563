"""What comes back: expected, arrived, and each thing of it checked."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import Condition, DoubtKind, Hold, LineState, NotAllowed, ReturnState, StayState
from scanflow.domain.things import Doubt, Label, Line, Order, Parcel, Return, Stay
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import returns
from scanflow.workflow.parcels import hand_over, shipping
from scanflow.workflow.ports import Invalid, Refused
from scanflow.workflow.stock import doubts


def refused(call: Any, *args: Any, **more: Any) -> str:
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid, NotAllowed)) as caught:
        call(*args, **more)
    return getattr(caught.value, "code", "not_allowed")


def left(room: RoomInMemory, number: str, *codes: str) -> Order:
    """An order of these, handed over."""
    order = room.release(number, *codes)
    said = hand_over.HandOver(key=f"out-{number}", text=slot_code.slip_text(order.slip))
    assert "accepted" == hand_over.hand_over(room.unit, said)["verdict"]
    return order


@pytest.fixture
def room() -> RoomInMemory:
    return RoomInMemory("D001", "D002", "D003")


@pytest.fixture
def order(room: RoomInMemory) -> Order:
    """Of two things, handed over."""
    return left(room, "1", "D001", "D002")


def expected(room: RoomInMemory, order: Order, *lines: Line, **more: Any) -> Return:
    names = tuple(line.id for line in lines) or None
    return returns.expect(room.unit, returns.Expect(order=order.id, lines=names, **more))


def arrived(room: RoomInMemory, order: Order, *lines: Line, **more: Any) -> Return:
    return returns.arrive(room.unit, expected(room, order, *lines, **more).id)


def unknown(room: RoomInMemory) -> Return:
    """A parcel that nobody expects, here."""
    return returns.arrive(room.unit, returns.expect(room.unit, returns.Expect()).id)


def check(room: RoomInMemory, back: Return, line: Line | None, condition: str, code: str = "") -> Return:
    text = slot_code.card_text(code) if code else None
    said = returns.CheckReturn(line=line.id if line else None, condition=Condition(condition), text=text)
    return returns.check(room.unit, back.id, said)


def now(room: RoomInMemory, line: Line) -> Line:
    return room.unit.all(Line)[line.id]


def test_all_that_left_is_expected_unless_lines_are_named(room: RoomInMemory, order: Order) -> None:
    """With why and until when; the ledger tells it, and no line moves."""
    one, two = room.lines(order)
    back = expected(room, order, why="Too small", until="2026-03-20")
    assert (order.id, (one.id, two.id), "Too small", ReturnState.EXPECTED) == (
        back.order,
        back.lines,
        back.why,
        back.state,
    )
    assert back.until is not None
    assert "2026-03-20T23:59:59+00:00" == back.until.isoformat()
    told = events.ReturnExpected(
        return_=back.id, order=order.id, lines=back.lines, why="Too small", until=back.until.isoformat()
    )
    assert told == room.unit.ledger[-1]
    assert [LineState.RELEASED] * 2 == [line.state for line in room.lines(order)]


def test_parts_of_an_order_come_back_apart(room: RoomInMemory, order: Order) -> None:
    """Each line is in one open return at most; what is left of the order makes the next one."""
    one, two = room.lines(order)
    assert (one.id,) == expected(room, order, one).lines
    assert "already_expected" == refused(expected, room, order, one)
    assert (two.id,) == expected(room, order).lines
    assert "already_expected" == refused(expected, room, order)


def test_what_is_still_here_is_no_return(room: RoomInMemory) -> None:
    """Not before its parcel has left: until then that is opened again. Nor what waits, or what there is not."""
    order = room.order("1", "D001")
    assert "not_left" == refused(expected, room, order)
    assert "not_allowed" == refused(expected, room, order, *room.lines(order))
    room.pick("D001")
    room.parcel(order)
    room.pack("D001")
    assert ["not_left"] * 2 == [refused(expected, room, order, *lines) for lines in ((), room.lines(order))]
    room.unit.at += timedelta(days=4)
    assert room.lines(order)[0].id == expected(room, order).lines[0]


def test_a_box_that_can_t_be_opened_again_is_taken_back_as_a_return(room: RoomInMemory) -> None:
    """Its slot has a newer thing, so there is no other way out of the box."""
    order = room.release("1", "D001")
    room.put_away("D001")
    back = arrived(room, order)
    assert ReturnState.CHECKED is check(room, back, room.lines(order)[0], "resell", "D004").state


@pytest.mark.parametrize(
    ("said", "code"),
    [
        ({"order": "none"}, "unknown_order"),
        ({"lines": ("none",)}, "required"),
    ],
)
def test_only_what_there_is_can_be_expected(room: RoomInMemory, said: dict[str, Any], code: str) -> None:
    """An order that there is, and lines of it."""
    assert code == refused(returns.expect, room.unit, returns.Expect(**said))


def test_lines_of_another_order_are_not_expected(room: RoomInMemory, order: Order) -> None:
    """The fault points at the line."""
    other = left(room, "2", "D003")
    assert "unknown_line" == refused(expected, room, order, *room.lines(other))


def test_it_arrives_once_and_that_can_be_undone(room: RoomInMemory, order: Order) -> None:
    """As long as nothing of it was checked."""
    back = arrived(room, order)
    assert (ReturnState.ARRIVED, room.unit.at) == (back.state, back.arrived)
    assert "not_allowed" == refused(returns.arrive, room.unit, back.id)
    assert (ReturnState.EXPECTED, None) == (
        (undone := returns.not_arrived(room.unit, back.id)).state,
        undone.arrived,
    )
    returns.arrive(room.unit, back.id)
    check(room, back, room.lines(order)[0], "stays")
    assert "checked" == refused(returns.not_arrived, room.unit, back.id)


def test_nothing_is_checked_before_it_is_here(room: RoomInMemory, order: Order) -> None:
    """Nor after it was given up."""
    back, line = expected(room, order), room.lines(order)[0]
    assert "not_allowed" == refused(check, room, back, line, "resell", "D004")
    returns.give_up(room.unit, back.id)
    assert "not_allowed" == refused(check, room, back, line, "resell", "D004")


def test_resell_begins_the_items_next_stay(room: RoomInMemory, order: Order) -> None:
    """The same item with its picture, notes and doubts, by the card in hand; the line is returned."""
    one, _ = room.lines(order)
    item = room.item("D001")
    room.unit.put(noted := replace(item, notes="Scratched"))
    doubts.doubt(room.unit, item.id, DoubtKind.NOT_THIS, "Not this saddle.")
    back = check(room, arrived(room, order), one, "resell", "D004")
    stay = room.stay("D004")
    assert (item.id, StayState.STORED, noted) == (stay.item, stay.state, room.item("D004"))
    assert LineState.RETURNED is now(room, one).state
    assert ["Not this saddle."] == [each.words for each in doubts.open_doubts(room.unit, item.id)]
    assert (ReturnState.ARRIVED, stay.id) == (back.state, back.checks[0].stay)


def test_it_is_checked_once_each_thing_is(room: RoomInMemory, order: Order) -> None:
    """Two conditions, and the return is over."""
    one, two = room.lines(order)
    back = arrived(room, order)
    assert (ReturnState.ARRIVED, (two.id,)) == (
        (half := check(room, back, one, "resell", "D004")).state,
        half.left,
    )
    done = check(room, back, two, "stays")
    assert (ReturnState.CHECKED, room.unit.at, ()) == (done.state, done.checked, done.left)


def test_to_check_stands_in_a_slot_in_doubt(room: RoomInMemory) -> None:
    """An order that names it, by its old reference too, is held until the doubt is settled."""
    order = left(room, "1", "D001")
    (line,) = room.lines(order)
    check(room, arrived(room, order, why="A tooth is bent"), line, "check", "D004")
    (doubt,) = room.unit.find(Doubt)
    assert (room.item("D004").id, DoubtKind.NOT_THIS, "Came back: to be checked: A tooth is bent.") == (
        doubt.item,
        doubt.kind,
        doubt.words,
    )
    assert LineState.RETURNED is now(room, line).state
    (next_,) = room.lines(room.order("2", "D001"))
    assert (room.stay("D004").id, Hold.SUSPECT) == (next_.stay, next_.hold)


def test_without_a_reason_the_doubt_says_so_in_short(room: RoomInMemory) -> None:
    """There is nothing to add."""
    order = left(room, "1", "D001")
    check(room, arrived(room, order), room.lines(order)[0], "check", "D004")
    assert ["Came back: to be checked."] == [each.words for each in room.unit.find(Doubt)]


def test_scrap_has_no_stay(room: RoomInMemory, order: Order) -> None:
    """The line is returned, nothing stands anywhere, and it can't be sent again."""
    one, _ = room.lines(order)
    stays = len(room.unit.all(Stay))
    back = check(room, arrived(room, order), one, "scrap")
    assert (LineState.RETURNED, stays, (one.id,)) == (now(room, one).state, len(room.unit.all(Stay)), back.scrapped)
    assert "not_in_stock" == refused(orders.send_again, room.unit, one.id)


def test_what_stays_with_the_buyer_stays_released(room: RoomInMemory, order: Order) -> None:
    """And may come back later, as a return of its own."""
    one, two = room.lines(order)
    back = arrived(room, order)
    check(room, back, one, "resell", "D004")
    check(room, back, two, "stays")
    assert [LineState.RETURNED, LineState.RELEASED] == [line.state for line in room.lines(order)]
    assert (two.id,) == expected(room, order).lines


@pytest.mark.parametrize("condition", ["resell", "check"])
def test_a_slot_needs_a_free_card_in_hand(room: RoomInMemory, order: Order, condition: str) -> None:
    """No card, one on another thing, and one that is none: the line stays with its buyer."""
    one, _ = room.lines(order)
    back = arrived(room, order)
    assert "required" == refused(check, room, back, one, condition)
    assert "taken" == refused(check, room, back, one, condition, "D003")
    said = returns.CheckReturn(line=one.id, condition=Condition(condition), text="D0015")
    assert "bad_check" == refused(returns.check, room.unit, back.id, said)
    assert LineState.RELEASED is now(room, one).state


@pytest.mark.parametrize("condition", ["scrap", "stays"])
def test_a_card_that_was_scanned_is_not_passed_over(room: RoomInMemory, order: Order, condition: str) -> None:
    """Who scans a card wants a slot: a condition without one is asked for anew."""
    one, _ = room.lines(order)
    assert "no_card" == refused(check, room, arrived(room, order), one, condition, "D004")
    assert LineState.RELEASED is now(room, one).state


@pytest.mark.parametrize("condition", ["resell", "check"])
def test_what_stands_in_a_slot_is_checked_once(room: RoomInMemory, order: Order, condition: str) -> None:
    """After that it is moved, withdrawn or settled as any other thing."""
    one, _ = room.lines(order)
    back = arrived(room, order)
    check(room, back, one, condition, "D004")
    for other in Condition:
        code = "D005" if other in returns.STORED else ""
        assert "checked" == refused(check, room, back, one, other, code)


@pytest.mark.parametrize("slip", ["scrap", "stays"])
@pytest.mark.parametrize("right", ["resell", "check"])
def test_a_slip_is_put_right_with_the_thing_in_hand(room: RoomInMemory, slip: str, right: str) -> None:
    """What was said to be scrapped, or with its buyer, gets a slot after all, also when all is checked."""
    order = left(room, "1", "D001")
    (line,) = room.lines(order)
    back = arrived(room, order)
    done = check(room, back, line, slip)
    assert (ReturnState.CHECKED, "checked") == (done.state, refused(check, room, back, line, slip))
    room.wait(60)
    again = check(room, back, line, right, "D004")
    assert (ReturnState.CHECKED, done.checked) == (again.state, again.checked)
    assert [(line.id, right, room.stay("D004").id)] == [(each.line, each.condition, each.stay) for each in again.checks]
    assert (LineState.RETURNED, True) == (now(room, line).state, room.stay("D004").open)


def test_what_stays_may_be_scrapped_after_all_and_not_the_other_way(room: RoomInMemory) -> None:
    """A thing that is thrown away is with nobody."""
    order = left(room, "1", "D001")
    (line,) = room.lines(order)
    back = arrived(room, order)
    check(room, back, line, "stays")
    check(room, back, line, "scrap")
    assert (LineState.RETURNED, "checked") == (now(room, line).state, refused(check, room, back, line, "stays"))


def test_it_is_sent_again_where_the_buyer_is_owed_it(room: RoomInMemory) -> None:
    """From the slot where it stands now; then it may come back once more."""
    order = left(room, "1", "D001")
    (line,) = room.lines(order)
    check(room, arrived(room, order), line, "resell", "D004")
    orders.send_again(room.unit, line.id)
    room.pick("D004")
    room.parcel(order)
    room.pack("D004")
    room.unit.at += timedelta(days=4)
    check(room, arrived(room, order), line, "resell", "D005")
    assert (LineState.RETURNED, room.item("D001").id) == (now(room, line).state, room.stay("D005").item)


def test_a_line_that_is_in_its_box_again_does_not_come_back(room: RoomInMemory) -> None:
    """Its parcel counts as here since the shop waits longer for parcels to leave."""
    order = room.release("1", "D001")
    room.unit.at += timedelta(days=4)
    back = arrived(room, order)
    room.unit.settings = type(room.unit.settings)(gone_days=9)
    (line,) = room.lines(order)
    assert "not_left" == refused(check, room, back, line, "resell", "D004")
    parcels.reopen(room.unit, line.parcel or "")
    assert "not_allowed" == refused(check, room, back, line, "resell", "D004")


def test_a_parcel_nobody_expects_says_whose_it_is_when_checked(room: RoomInMemory, order: Order) -> None:
    """Any line that has left fits; more things of the same parcel follow."""
    one, two = room.lines(order)
    back = unknown(room)
    assert (None, ()) == (back.order, back.lines)
    first = check(room, back, one, "resell", "D004")
    assert (ReturnState.CHECKED, (one.id,)) == (first.state, first.lines)
    both = check(room, back, two, "check", "D005")
    assert (ReturnState.CHECKED, (one.id, two.id)) == (both.state, both.lines)
    assert [LineState.RETURNED] * 2 == [line.state for line in room.lines(order)]


def test_what_another_return_waits_for_is_taken_in_there(room: RoomInMemory, order: Order) -> None:
    """Else that would wait for ever."""
    one, _ = room.lines(order)
    expected(room, order, one)
    assert "already_expected" == refused(check, room, unknown(room), one, "resell", "D004")


@pytest.mark.parametrize("name", ["none", "waiting"])
def test_what_has_not_left_is_in_no_parcel(room: RoomInMemory, name: str) -> None:
    """A line that there is not, and one that still waits."""
    line = room.lines(room.order("2", "D003"))[0].id if name == "waiting" else name
    said = returns.CheckReturn(line=line, condition=Condition.STAYS)
    code = {"none": "unknown_line", "waiting": "not_allowed"}[name]
    assert code == refused(returns.check, room.unit, unknown(room).id, said)


@pytest.mark.parametrize("condition", ["stays", "scrap"])
def test_what_was_never_ours_is_given_up(room: RoomInMemory, condition: str) -> None:
    """It goes back or is thrown away, and touches no line and no slot; the ledger tells which."""
    back = check(room, unknown(room), None, condition)
    assert (ReturnState.GIVEN_UP, (None, condition)) == (back.state, (back.checks[0].line, back.checks[0].condition))
    assert events.ReturnGivenUp(return_=back.id, never_ours=condition) == room.unit.ledger[-1]


def test_a_thing_is_named_wherever_it_is_one_of_ours(room: RoomInMemory, order: Order) -> None:
    """No slot without a line, nothing nameless of an order's return, nor beside a thing that was ours."""
    back = unknown(room)
    assert ["required"] * 2 == [refused(check, room, back, None, each, "D004") for each in ("resell", "check")]
    check(room, back, room.lines(order)[0], "resell", "D004")
    assert "required" == refused(check, room, back, None, "stays")
    assert "required" == refused(check, room, arrived(room, order), None, "stays")


def test_an_orders_return_has_its_own_lines_alone(room: RoomInMemory, order: Order) -> None:
    """Another order's thing is taken in by its own return."""
    other = left(room, "2", "D003")
    assert "unknown_line" == refused(check, room, arrived(room, order), room.lines(other)[0], "resell", "D004")


def test_what_does_not_come_is_given_up(room: RoomInMemory, order: Order) -> None:
    """Its things stay with the buyer, and can be expected anew."""
    back = expected(room, order)
    assert ReturnState.GIVEN_UP is returns.give_up(room.unit, back.id).state
    assert events.ReturnGivenUp(return_=back.id, never_ours=None) == room.unit.ledger[-1]
    assert back.lines == expected(room, order).lines


def taken_in(room: RoomInMemory, text: str) -> Return:
    return returns.take_in(room.unit, returns.TakeIn(text=text))


@pytest.mark.parametrize("how", ["slip", "number", "label"])
def test_its_slip_label_or_number_says_that_it_is_here(room: RoomInMemory, order: Order, how: str) -> None:
    """The expected return has arrived; said once more, nothing changes."""
    back = expected(room, order, why="Too small")
    room.unit.add(Label(shipping._hash("RR123456785DE"), room.lines(order)[0].parcel or "", "85DE"))
    text = {"slip": slot_code.slip_text(order.slip), "number": "1", "label": "RR123456785DE"}[how]
    assert (back.id, ReturnState.ARRIVED) == ((here := taken_in(room, text)).id, here.state)
    told = len(room.unit.ledger)
    assert (here, told) == (taken_in(room, text), len(room.unit.ledger))


def test_what_nobody_expected_is_a_return_of_all_that_can_come_back(room: RoomInMemory, order: Order) -> None:
    """It has arrived as it is made."""
    back = taken_in(room, "1")
    assert (ReturnState.ARRIVED, tuple(line.id for line in room.lines(order))) == (back.state, back.lines)


def test_of_several_returns_a_person_chooses(room: RoomInMemory, order: Order) -> None:
    """Which of two parcels of an order this is, its slip does not say."""
    one, two = room.lines(order)
    back = expected(room, order, one)
    expected(room, order, two)
    assert "which_return" == refused(taken_in, room, "1")
    returns.arrive(room.unit, back.id)
    assert "which_return" == refused(taken_in, room, "1")
    check(room, back, one, "resell", "D004")
    assert (two.id,) == taken_in(room, "1").lines


def test_a_label_of_two_orders_asks_which_one(room: RoomInMemory) -> None:
    """They were packed in one box; either may come back."""
    one, two = room.order("1", "D001"), room.order("2", "D002")
    room.pick("D001", "D002")
    box = room.parcel(one, two)
    room.pack("D001", "D002")
    room.unit.at += timedelta(days=4)
    room.unit.add(Label(shipping._hash("RR123456785DE"), box.id, "85DE"))
    assert "unknown_order" == refused(taken_in, room, "RR123456785DE")
    assert two.id == taken_in(room, "2").order


@pytest.mark.parametrize(("text", "code"), [("no such", "unknown_order"), ("1", "not_left")])
def test_what_is_no_return_is_not_taken_in(room: RoomInMemory, text: str, code: str) -> None:
    """No order of this name, and one whose parcel is still here; nothing is made of it."""
    room.release("1", "D001")
    assert (code, 0) == (refused(taken_in, room, text), len(room.unit.all(Return)))


def test_the_next_buyer_gets_it(room: RoomInMemory, order: Order) -> None:
    """Sold again it is picked and packed by its new card, and by no other."""
    check(room, arrived(room, order), room.lines(order)[0], "resell", "D004")
    second = room.order("2", "D004")
    room.pick("D004")
    room.parcel(second)
    assert "refused" == room.scan("table", "D001")["verdict"]
    assert ["D004"] == room.scan("table", "D004")["released"]
    assert room.unit.all(Parcel)[room.lines(second)[0].parcel or ""].orders == (second.id,)


def test_a_thing_that_stands_somewhere_is_not_stored_twice(room: RoomInMemory) -> None:
    """A scrapped thing whose item has a stay since, however it came by that, gets no second one."""
    order = left(room, "1", "D001")
    (line,) = room.lines(order)
    back = arrived(room, order)
    check(room, back, line, "scrap")
    stock.begin(room.unit, room.slot("D005"), room.item("D001").id)
    assert "checked" == refused(check, room, back, line, "resell", "D004")
