"""A closed parcel leaves by the scan of its slip or its label, and only if nothing keeps it here."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from floor import Floor

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import Hold, ParcelState
from scanflow.domain.things import Order, Parcel, Scan
from scanflow.workflow import parcels
from scanflow.workflow.parcels import hand_over, shipping
from scanflow.workflow.ports import Invalid, Refused

LABEL = "RR123456785DE"


def released(*numbers: str) -> tuple[Floor, list[Order]]:
    """A closed parcel of one thing for each of these orders, in a shop that binds labels."""
    floor = Floor(*(f"D{place:03}" for place in range(1, len(numbers) + 1)))
    floor.unit.set_settings(replace(floor.unit.settings, bind_labels=True))
    return floor, [floor.release(number, f"D{place:03}") for place, number in enumerate(numbers, 1)]


def slip(order: Order) -> str:
    return slot_code.slip_text(order.slip)


def parcel_of(floor: Floor, order: Order) -> Parcel:
    return floor.unit.all(Parcel)[floor.lines(order)[0].parcel]


def part(floor: Floor, order: Order, code: str) -> str:
    """A part of an order, in a parcel of its own that is closed."""
    parcel = floor.parcel(order)
    floor.pack(code)
    if floor.parcel_now(parcel).open:
        parcels.close_parcel(floor.unit, parcel.id, partial=True)
    return parcel.id


@pytest.mark.parametrize("by", ["slip", "label"])
def test_a_closed_parcel_leaves_by_its_slip_or_its_label(by: str) -> None:
    """It is handed over then; the ledger tells by what, and nothing of what a label says."""
    floor, (order,) = released("1")
    parcel = parcel_of(floor, order)
    shipping.bind(floor.unit, parcel.id, shipping.Bind(text=LABEL))
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order) if by == "slip" else LABEL))
    assert ("accepted", None, True, "handed_over", "1") == (
        *(answer["verdict"], answer["reason"], answer["changed"]),
        *(answer["parcel_state"], answer["order_number"]),
    )
    assert (ParcelState.HANDED_OVER, floor.unit.at) == (floor.parcel_now(parcel).state, floor.parcel_now(parcel).handed)
    told = floor.unit.ledger[-1]
    assert (events.HandedOver, by, "key", parcel.id) == (type(told), told.by, told.key, told.parcel)
    assert LABEL not in repr((floor.unit.ledger, floor.unit.all(Scan)))


def test_a_second_scan_of_what_left_is_a_yes_before_all_guards() -> None:
    """Nothing changes, though a line of it is held by now."""
    floor, (order,) = released("1")
    hand_over.hand_over(floor.unit, hand_over.HandOver(key="first", text=slip(order)))
    (line,) = floor.lines(order)
    floor.unit.put(line.held(Hold.MISPLACED, "hm"))
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="second", text=slip(order)))
    assert ("accepted", False, "handed_over") == (answer["verdict"], answer["changed"], answer["parcel_state"])


def test_a_key_has_one_answer() -> None:
    """The same again is a replay; another text under it is an error, and so is a scan's key."""
    floor, (order, other) = released("1", "2")
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order)))
    told = len(floor.unit.ledger)
    assert {**answer, "replayed": True} == hand_over.hand_over(
        floor.unit, hand_over.HandOver(key="key", text=slip(order))
    )
    assert told == len(floor.unit.ledger)
    for key in ("key", "key-1"):
        with pytest.raises(Invalid) as caught:
            hand_over.hand_over(floor.unit, hand_over.HandOver(key=key, text=slip(other)))
        assert "key_reused" == caught.value.code


@pytest.mark.parametrize(
    "text", ["", slot_code.card_text("D001"), slot_code.slip_text(99), "ORD000019", "RR999999999DE"]
)
def test_what_is_on_no_parcel_is_unknown(text: str) -> None:
    """Nothing, a card, a slip that nobody has, one misread, and a label that is bound to nothing."""
    floor, _ = released("1")
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=text))
    assert ("refused", "unknown_code", None) == (answer["verdict"], answer["reason"], answer["parcel"])


@pytest.mark.parametrize("how", ["no parcel", "open", "aside", "reopened"])
def test_only_a_closed_parcel_leaves(how: str) -> None:
    """An order that is not packed, an open parcel, one set aside and one that was opened again stay here."""
    floor = Floor("D001", "D002")
    order = floor.order("1", "D001", "D002")
    floor.pick("D001", "D002")
    if how != "no parcel":
        parcel = floor.parcel(order)
        floor.pack("D001")
    if how == "aside":
        parcels.set_aside(floor.unit, parcel.id)
    if how == "reopened":
        floor.pack("D002")
        parcels.reopen(floor.unit, parcel.id)
    before = dict(floor.unit.all(Parcel))
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order)))
    assert ("refused", "not_closed", False) == (answer["verdict"], answer["reason"], answer["changed"])
    assert before == dict(floor.unit.all(Parcel))


def test_what_must_stay_says_why() -> None:
    """A thing of it that was read on a shelf keeps it here, and is shown."""
    floor, (order,) = released("1")
    floor.scan("shelf", "D001", bin="A-1-1")
    answer = hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order)))
    assert ("refused", "held", "D001", "thing of D001", "closed") == (
        *(answer["verdict"], answer["reason"], answer["code"]),
        *(answer["title"], answer["parcel_state"]),
    )
    assert "A-1-1" in answer["advice"]


def test_a_cancellation_after_the_closing_comes_before_other_holds() -> None:
    """A line that its buyer cancelled meanwhile keeps the parcel here, and that is the reason that is told."""
    floor, (order,) = released("1")
    (line,) = floor.lines(order)
    floor.unit.put(line.held(Hold.MISPLACED, "hm").held(Hold.CANCELLED_IN_BOX, "cancelled"))
    assert "cancelled" == hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order)))["reason"]


def test_parts_of_an_order_leave_one_by_one() -> None:
    """The slip lets the first part go that is here; a double beep is of the part that just left, a later one is not."""
    floor = Floor("D001", "D002")
    order = floor.order("1", "D001", "D002")
    floor.pick("D001", "D002")
    one, two = (part(floor, order, code) for code in ("D001", "D002"))
    first, beep = (hand_over.hand_over(floor.unit, hand_over.HandOver(key=key, text=slip(order))) for key in ("a", "b"))
    assert [(one, True), (one, False)] == [(each["parcel"], each["changed"]) for each in (first, beep)]
    floor.unit.at += timedelta(minutes=1)
    second = hand_over.hand_over(floor.unit, hand_over.HandOver(key="c", text=slip(order)))
    assert (two, True) == (second["parcel"], second["changed"])


def test_a_part_that_left_does_not_speak_for_the_box_that_is_open() -> None:
    """While the rest is packed, the slip is that of the open box."""
    floor = Floor("D001", "D002")
    order = floor.order("1", "D001", "D002")
    floor.pick("D001", "D002")
    part(floor, order, "D001")
    hand_over.hand_over(floor.unit, hand_over.HandOver(key="a", text=slip(order)))
    floor.unit.at += timedelta(minutes=1)
    assert "accepted" == hand_over.hand_over(floor.unit, hand_over.HandOver(key="b", text=slip(order)))["verdict"]
    floor.unit.at += timedelta(minutes=1)
    floor.parcel(order)
    assert "not_closed" == hand_over.hand_over(floor.unit, hand_over.HandOver(key="c", text=slip(order)))["reason"]


def test_a_label_of_a_dropped_parcel_is_nobody_s_and_free_for_another() -> None:
    """Bound, opened again, emptied and dropped: the label names nothing, and goes on the next box of the order."""
    floor, (order,) = released("1")
    first = parcel_of(floor, order)
    shipping.bind(floor.unit, first.id, shipping.Bind(text=LABEL))
    parcels.reopen(floor.unit, first.id)
    assert "not_closed" == hand_over.hand_over(floor.unit, hand_over.HandOver(key="a", text=LABEL))["reason"]
    floor.scan("table", "D001", take_out=True)
    parcels.set_aside(floor.unit, first.id)
    assert ("unknown_code", None) == (
        hand_over.hand_over(floor.unit, hand_over.HandOver(key="b", text=LABEL))["reason"],
        shipping.parcel_of(floor.unit, LABEL),
    )
    second = floor.parcel(order)
    floor.pack("D001")
    shipping.bind(floor.unit, second.id, shipping.Bind(text=LABEL))
    assert second.id == hand_over.hand_over(floor.unit, hand_over.HandOver(key="c", text=LABEL))["parcel"]


def test_what_left_is_not_opened_again() -> None:
    """Nor is what counts as gone by its days."""
    floor, (order, other) = released("1", "2")
    hand_over.hand_over(floor.unit, hand_over.HandOver(key="key", text=slip(order)))
    floor.unit.at += timedelta(days=4)
    for each in (order, other):
        with pytest.raises(Refused) as caught:
            parcels.reopen(floor.unit, parcel_of(floor, each).id)
        assert "handed_over" == caught.value.code


def test_where_hand_overs_begin_to_be_recorded_old_parcels_are_gone() -> None:
    """What was closed long before is handed over at once; what was closed lately waits for its scan."""
    floor, (old,) = released("1")
    floor.unit.at += timedelta(days=4)
    floor.put_away("D002")
    new = floor.release("2", "D002")
    hand_over.begin(floor.unit)
    assert (ParcelState.HANDED_OVER, ParcelState.CLOSED) == (parcel_of(floor, old).state, parcel_of(floor, new).state)
