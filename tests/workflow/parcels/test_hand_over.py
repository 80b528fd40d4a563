"""A closed parcel leaves by the scan of its slip or its label, and only if nothing keeps it here."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import Hold, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Scan
from scanflow.workflow import parcels
from scanflow.workflow.parcels import hand_over, shipping
from scanflow.workflow.ports import Invalid, Refused

LABEL = "RR123456785DE"


def released(*numbers: str) -> tuple[RoomInMemory, list[Order]]:
    """A closed parcel of one thing for each of these orders, in a shop that binds labels."""
    room = RoomInMemory(*(f"D{place:03}" for place in range(1, len(numbers) + 1)))
    room.unit.set_settings(replace(room.unit.settings, bind_labels=True))
    return room, [room.release(number, f"D{place:03}") for place, number in enumerate(numbers, 1)]


def slip(order: Order) -> str:
    return slot_code.slip_text(order.slip)


def parcel_of(room: RoomInMemory, order: Order) -> Parcel:
    return room.unit.all(Parcel)[room.lines(order)[0].parcel]


def part(room: RoomInMemory, order: Order, code: str) -> str:
    """A part of an order, in a parcel of its own that is closed."""
    parcel = room.parcel(order)
    room.pack(code)
    if room.parcel_now(parcel).open:
        parcels.close_parcel(room.unit, parcel.id, partial=True)
    return parcel.id


@pytest.mark.parametrize("by", ["slip", "label"])
def test_a_closed_parcel_leaves_by_its_slip_or_its_label(by: str) -> None:
    """It is handed over then; the ledger tells by what, and nothing of what a label says."""
    room, (order,) = released("1")
    parcel = parcel_of(room, order)
    shipping.bind(room.unit, parcel.id, shipping.Bind(text=LABEL))
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order) if by == "slip" else LABEL))
    assert ("accepted", None, True, "handed_over", "1") == (
        *(answer["verdict"], answer["reason"], answer["changed"]),
        *(answer["parcel_state"], answer["order_number"]),
    )
    assert (ParcelState.HANDED_OVER, room.unit.at) == (room.parcel_now(parcel).state, room.parcel_now(parcel).handed)
    told = room.unit.ledger[-1]
    assert (events.HandedOver, by, "key", parcel.id) == (type(told), told.by, told.key, told.parcel)
    assert LABEL not in repr((room.unit.ledger, room.unit.all(Scan)))


def test_a_second_scan_of_what_left_is_a_yes_before_all_guards() -> None:
    """Nothing changes, though a line of it is held by now."""
    room, (order,) = released("1")
    hand_over.hand_over(room.unit, hand_over.HandOver(key="first", text=slip(order)))
    (line,) = room.lines(order)
    room.unit.put(line.held(Hold.MISPLACED, "hm"))
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="second", text=slip(order)))
    assert ("accepted", False, "handed_over") == (answer["verdict"], answer["changed"], answer["parcel_state"])


def test_a_key_has_one_answer() -> None:
    """The same again is a replay; another text under it is an error, and so is a scan's key."""
    room, (order, other) = released("1", "2")
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order)))
    told = len(room.unit.ledger)
    assert {**answer, "replayed": True} == hand_over.hand_over(
        room.unit, hand_over.HandOver(key="key", text=slip(order))
    )
    assert told == len(room.unit.ledger)
    for key in ("key", "key-1"):
        with pytest.raises(Invalid) as caught:
            hand_over.hand_over(room.unit, hand_over.HandOver(key=key, text=slip(other)))
        assert "key_reused" == caught.value.code


@pytest.mark.parametrize(
    "text", ["", slot_code.card_text("D001"), slot_code.slip_text(99), "ORD000019", "RR999999999DE"]
)
def test_what_is_on_no_parcel_is_unknown(text: str) -> None:
    """Nothing, a card, a slip that nobody has, one misread, and a label that is bound to nothing."""
    room, _ = released("1")
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=text))
    assert ("refused", "unknown_code", None) == (answer["verdict"], answer["reason"], answer["parcel"])


@pytest.mark.parametrize("how", ["no parcel", "open", "aside", "reopened"])
def test_only_a_closed_parcel_leaves(how: str) -> None:
    """An order that is not packed, an open parcel, one set aside and one that was opened again stay here."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001", "D002")
    if how != "no parcel":
        parcel = room.parcel(order)
        room.pack("D001")
    if how == "aside":
        parcels.set_aside(room.unit, parcel.id)
    if how == "reopened":
        room.pack("D002")
        parcels.reopen(room.unit, parcel.id)
    before = dict(room.unit.all(Parcel))
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order)))
    assert ("refused", "not_closed", False) == (answer["verdict"], answer["reason"], answer["changed"])
    assert before == dict(room.unit.all(Parcel))


def test_what_must_stay_says_why() -> None:
    """A thing of it that was read on a shelf keeps it here, and is shown."""
    room, (order,) = released("1")
    room.scan("shelf", "D001", bin="A-1-1")
    answer = hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order)))
    assert ("refused", "held", "D001", "thing of D001", "closed") == (
        *(answer["verdict"], answer["reason"], answer["code"]),
        *(answer["title"], answer["parcel_state"]),
    )
    assert "A-1-1" in answer["advice"]


def test_a_cancellation_after_the_closing_comes_before_other_holds() -> None:
    """A line that its buyer cancelled meanwhile keeps the parcel here, and that is the reason that is told."""
    room, (order,) = released("1")
    (line,) = room.lines(order)
    room.unit.put(line.held(Hold.MISPLACED, "hm").held(Hold.CANCELLED_IN_BOX, "cancelled"))
    assert "cancelled" == hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order)))["reason"]


def test_parts_of_an_order_leave_one_by_one() -> None:
    """The slip lets the first part go that is here; a double beep is of the part that just left, a later one is not."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001", "D002")
    one, two = (part(room, order, code) for code in ("D001", "D002"))
    first, beep = (hand_over.hand_over(room.unit, hand_over.HandOver(key=key, text=slip(order))) for key in ("a", "b"))
    assert [(one, True), (one, False)] == [(each["parcel"], each["changed"]) for each in (first, beep)]
    room.unit.at += timedelta(minutes=1)
    second = hand_over.hand_over(room.unit, hand_over.HandOver(key="c", text=slip(order)))
    assert (two, True) == (second["parcel"], second["changed"])


def test_a_part_that_left_does_not_speak_for_the_box_that_is_open() -> None:
    """While the rest is packed, the slip is that of the open box."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001", "D002")
    part(room, order, "D001")
    hand_over.hand_over(room.unit, hand_over.HandOver(key="a", text=slip(order)))
    room.unit.at += timedelta(minutes=1)
    assert "accepted" == hand_over.hand_over(room.unit, hand_over.HandOver(key="b", text=slip(order)))["verdict"]
    room.unit.at += timedelta(minutes=1)
    room.parcel(order)
    assert "not_closed" == hand_over.hand_over(room.unit, hand_over.HandOver(key="c", text=slip(order)))["reason"]


def test_a_label_of_a_dropped_parcel_is_nobody_s_and_free_for_another() -> None:
    """Bound, opened again, emptied and dropped: the label names nothing, and goes on the next box of the order."""
    room, (order,) = released("1")
    first = parcel_of(room, order)
    shipping.bind(room.unit, first.id, shipping.Bind(text=LABEL))
    parcels.reopen(room.unit, first.id)
    assert "not_closed" == hand_over.hand_over(room.unit, hand_over.HandOver(key="a", text=LABEL))["reason"]
    room.scan("table", "D001", take_out=True)
    parcels.set_aside(room.unit, first.id)
    assert ("unknown_code", None) == (
        hand_over.hand_over(room.unit, hand_over.HandOver(key="b", text=LABEL))["reason"],
        shipping.parcel_of(room.unit, LABEL),
    )
    second = room.parcel(order)
    room.pack("D001")
    shipping.bind(room.unit, second.id, shipping.Bind(text=LABEL))
    assert second.id == hand_over.hand_over(room.unit, hand_over.HandOver(key="c", text=LABEL))["parcel"]


def test_what_left_is_not_opened_again() -> None:
    """Nor is what counts as gone by its days."""
    room, (order, other) = released("1", "2")
    hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order)))
    room.unit.at += timedelta(days=4)
    for each in (order, other):
        with pytest.raises(Refused) as caught:
            parcels.reopen(room.unit, parcel_of(room, each).id)
        assert "handed_over" == caught.value.code


def test_where_hand_overs_begin_to_be_recorded_old_parcels_are_gone() -> None:
    """What was closed long before is handed over at once; what was closed lately waits for its scan."""
    room, (old,) = released("1")
    room.unit.at += timedelta(days=4)
    room.put_away("D002")
    new = room.release("2", "D002")
    hand_over.begin(room.unit)
    assert (ParcelState.HANDED_OVER, ParcelState.CLOSED) == (parcel_of(room, old).state, parcel_of(room, new).state)


def test_who_took_it_and_who_said_so_are_kept() -> None:
    """The carrier stands beside the parcel and in the ledger; the same key with another carrier is an error."""
    room, (order,) = released("1")
    said = hand_over.HandOver(key="key", text=slip(order), carrier="The red van")
    hand_over.hand_over(room.unit, said)
    parcel = parcel_of(room, order)
    assert ("The red van", room.unit.who, "The red van") == (
        *(parcel.carrier, parcel.handed_by),
        room.unit.ledger[-1].carrier,
    )
    with pytest.raises(Invalid) as caught:
        hand_over.hand_over(room.unit, hand_over.HandOver(key="key", text=slip(order), carrier="The blue van"))
    assert "key_reused" == caught.value.code


def test_a_double_beep_of_parts_is_one_whatever_the_carrier_is() -> None:
    """Two boxes of an order have one slip: a carrier typed between two beeps lets no second box go."""
    room = RoomInMemory("D001", "D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001", "D002")
    one, two = (part(room, order, code) for code in ("D001", "D002"))
    answers = [
        hand_over.hand_over(room.unit, hand_over.HandOver(key=key, text=slip(order), carrier=carrier))
        for key, carrier in (("a", ""), ("b", "The red van"))
    ]
    assert [(one, True), (one, False)] == [(each["parcel"], each["changed"]) for each in answers]
    assert ParcelState.CLOSED is room.unit.all(Parcel)[two].state


def test_all_of_a_list_went_but_what_must_stay() -> None:
    """Each is judged on its own: what is held, cancelled, open again or collected stays and is named, the others go."""
    room, orders = released("1", "2", "3", "4", "5")
    room.unit.put(replace(orders[4], collected=True))
    sent, held, cancelled, reopened, collected = (parcel_of(room, each) for each in orders)
    for parcel, hold in ((held, Hold.MISPLACED), (cancelled, Hold.CANCELLED_IN_BOX)):
        (line,) = room.unit.find(Line, parcel=parcel.id)
        room.unit.put(line.held(hold, "hm"))
    parcels.reopen(room.unit, reopened.id)
    names = tuple(each.id for each in (sent, held, cancelled, reopened, collected))
    kept = hand_over.all_went(room.unit, hand_over.AllWent(parcels=names, carrier="The red van"))
    assert [(held.id, "held"), (cancelled.id, "cancelled"), (reopened.id, "not_closed"), (collected.id, "held")] == [
        (each.parcel, each.reason) for each in kept
    ]
    assert ["2:", "3:", "4:", "5:"] == [each.words.split()[0] for each in kept]
    assert [ParcelState.HANDED_OVER, "closed", "closed", "open", "closed"] == [
        room.unit.all(Parcel)[name].state for name in names
    ]
    assert ("The red van", room.unit.who) == (room.parcel_now(sent).carrier, room.parcel_now(sent).handed_by)
    told = [each for each in room.unit.ledger if isinstance(each, events.HandedOver)]
    assert [("list", "accepted")] + [("list", "refused")] * 4 == [(each.by, each.verdict) for each in told]


def test_a_list_that_comes_again_changes_nothing() -> None:
    """What went with it before is not told again, and its time and carrier stay."""
    room, (order,) = released("1")
    parcel = parcel_of(room, order)
    hand_over.all_went(room.unit, hand_over.AllWent(parcels=(parcel.id,), carrier="The red van"))
    before, length = room.parcel_now(parcel), len(room.unit.ledger)
    room.unit.at += timedelta(hours=1)
    assert [] == hand_over.all_went(room.unit, hand_over.AllWent(parcels=(parcel.id, parcel.id)))
    assert (before, length) == (room.parcel_now(parcel), len(room.unit.ledger))


@pytest.mark.parametrize("state", ["open", "closed"])
def test_the_buyer_takes_it_along_in_one_act(state: str) -> None:
    """It is closed and handed over; the name stands beside the parcel, and the ledger tells nothing of it."""
    room = RoomInMemory("D001", auto_close=state == "closed")
    order = room.order("1", "D001", collected=True)
    room.pick("D001")
    parcel = room.parcel(order)
    room.pack("D001")
    for _ in range(2):
        hand_over.collect(room.unit, parcel.id, hand_over.Collect(who="Ann with the dog"))
    now = room.parcel_now(parcel)
    assert (ParcelState.HANDED_OVER, "Ann with the dog", "", room.unit.at) == (
        *(now.state, now.collected_by, now.carrier),
        now.handed,
    )
    told = [each for each in room.unit.ledger if isinstance(each, events.HandedOver)]
    assert [("collected", "accepted")] == [(each.by, each.verdict) for each in told]
    assert "Ann" not in repr(room.unit.ledger)


def test_only_what_may_leave_is_collected() -> None:
    """Not what is sent, what misses a thing, or what was cancelled since."""
    room = RoomInMemory("D001", "D002", "D003", auto_close=False)
    sent, part_of = room.release("1", "D001"), room.order("2", "D002", "D003", collected=True)
    parcels.close_parcel(room.unit, parcel_of(room, sent).id)
    room.pick("D002", "D003")
    box = room.parcel(part_of)
    room.pack("D002")

    def refused(parcel: Parcel) -> str:
        room.unit, before = room.unit.fork(), room.unit
        with pytest.raises(Refused) as caught:
            hand_over.collect(room.unit, parcel.id, hand_over.Collect())
        room.unit = before
        return caught.value.code

    assert ["not_collected", "lines_missing"] == [refused(parcel_of(room, sent)), refused(box)]
    room.pack("D003")
    parcels.close_parcel(room.unit, box.id)
    (line, _) = room.lines(part_of)
    room.unit.put(line.held(Hold.CANCELLED_IN_BOX, "hm"))
    assert "cancelled" == refused(box)


def test_no_carrier_takes_what_is_collected() -> None:
    """A scan at the carrier's hand-over is refused as held; the buyer's is none of a carrier, and is taken."""
    room, (order,) = released("1")
    room.unit.put(replace(order, collected=True))
    wrong = hand_over.hand_over(room.unit, hand_over.HandOver(key="a", text=slip(order), carrier=""))
    right = hand_over.hand_over(room.unit, hand_over.HandOver(key="b", text=slip(order)))
    assert [("refused", "held"), ("accepted", None)] == [(each["verdict"], each["reason"]) for each in (wrong, right)]
    assert "buyer comes" in wrong["advice"]
