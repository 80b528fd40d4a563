"""The box that a table closed last waits for its shipping label, or for its buyer."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Label, Order, Parcel, Scan
from scanflow.workflow import parcels
from scanflow.workflow.parcels import finishing, hand_over, shipping
from scanflow.workflow.ports import Refused

LABEL, OTHER = "RR123456785DE", "00340434161094042557"


def closed(*numbers: str, collected: bool = False, binds: bool = True) -> tuple[RoomInMemory, list[Parcel]]:
    """Parcels that closed one after another at a table, each of one thing; the last of them is the one before us."""
    room = RoomInMemory(*(f"D{place:03}" for place in range(1, len(numbers) + 1)))
    room.unit.set_settings(replace(room.unit.settings, bind_labels=binds))
    made = []
    for place, number in enumerate(numbers, 1):
        order = room.order(number, f"D{place:03}", collected=collected)
        room.pick(f"D{place:03}")
        made.append(room.parcel(order))
        room.pack(f"D{place:03}")
    return room, made


def told(answer: dict[str, Any]) -> tuple[Any, ...]:
    return answer["verdict"], answer["reason"], answer["changed"]


def waits(room: RoomInMemory) -> str | None:
    parcel = finishing.unfinished(room.unit, "main")
    return parcel.id if parcel else None


def test_the_label_s_scan_at_the_table_binds_it() -> None:
    """A yes that says whose it is and shows the thing; a second beep changes nothing, and nothing waits any more."""
    room, (parcel,) = closed("1")
    assert parcel.id == waits(room)
    first, beep = (room.read("table", LABEL, body=f"print {n}") for n in range(2))
    assert [("accepted", None, True), ("accepted", None, False)] == [told(first), told(beep)]
    assert ("1", "thing of D001", parcel.id, "closed") == tuple(
        first[name] for name in ("order_number", "title", "parcel", "parcel_state")
    )
    assert ([parcel.id], None) == ([each.parcel for each in room.unit.find(Label)], waits(room))
    assert LABEL not in repr((room.unit.ledger, room.unit.all(Scan)))


def test_a_card_is_a_card_and_a_slip_is_a_slip() -> None:
    """While a label is waited for: neither is taken for it, nor a misread card, nor what is too short for a label."""
    room, (parcel,) = closed("1")
    room.put_away("D002")
    slip = slot_code.slip_text(room.order("2", "D002").slip)
    wrong = slot_code.card_text("D002")[:-1] + str((int(slot_code.card_text("D002")[-1]) + 1) % 10)
    texts = (slot_code.card_text("D002"), wrong, slip[:-1] + str((int(slip[-1]) + 1) % 10), "", "ABC", "STP000127")
    reasons = [room.read("table", text)["reason"] for text in texts]
    assert ["no_parcel", "bad_check", "bad_check", "unreadable", "unknown_code", "unknown_code"] == reasons
    assert ((), parcel.id) == (room.unit.find(Label), waits(room))
    assert "open" == room.read("table", slip)["parcel_state"]


def test_another_parcel_s_label_is_another_order_s() -> None:
    """Refused, with whose it is; nothing is bound, and the right one is taken after it."""
    room, (one, two) = closed("1", "2")
    shipping.bind(room.unit, one.id, shipping.Bind(text=LABEL))
    wrong = room.read("table", LABEL)
    assert ("refused", "other_order", False) == told(wrong)
    assert ("parcel of 1" in wrong["advice"], "2") == (True, wrong["order_number"])
    assert ("accepted", None, True) == told(room.read("table", OTHER))
    assert {LABEL[-4:]: one.id, OTHER[-4:]: two.id} == {each.ends: each.parcel for each in room.unit.find(Label)}


def test_the_next_order_s_slip_ends_the_waiting() -> None:
    """What is read then is no label of the parcel before; that one gets its label at the hand-over."""
    room, _ = closed("1")
    room.put_away("D002")
    room.read("table", slot_code.slip_text(room.order("2", "D002").slip))
    assert (("refused", "unknown_code", False), None) == (told(room.read("table", LABEL)), waits(room))
    assert () == room.unit.find(Label)


def test_without_a_label_the_table_goes_on() -> None:
    """Once that was said no code is taken for its label; it is bound later, and a parcel opened again is asked anew."""
    room, (parcel,) = closed("1")
    for _ in range(2):
        finishing.go_on(room.unit, parcel.id)
    assert (None, ("refused", "unknown_code", False)) == (waits(room), told(room.read("table", LABEL)))
    shipping.bind(room.unit, parcel.id, shipping.Bind(text=LABEL))
    shipping.take_off(room.unit, parcel.id)
    parcels.reopen(room.unit, parcel.id)
    parcels.close_parcel(room.unit, parcel.id)
    assert parcel.id == waits(room)


def test_a_label_that_was_wrong_is_taken_off() -> None:
    """Then it is free for the parcel it belongs to, and the table waits for the right one; not once it has left."""
    room, (one, two) = closed("1", "2")
    room.read("table", LABEL)
    shipping.take_off(room.unit, two.id)
    assert two.id == waits(room)
    shipping.bind(room.unit, one.id, shipping.Bind(text=LABEL))
    hand_over.hand_over(room.unit, hand_over.HandOver(key="out", text=LABEL))
    with pytest.raises(Refused) as caught:
        shipping.take_off(room.unit, one.id)
    assert ("handed_over", 1) == (caught.value.code, len(room.unit.find(Label)))


def test_one_code_at_a_time() -> None:
    """A photo of a label that bears two codes binds neither."""
    room, (parcel,) = closed("1")
    answer = room.read("table", LABEL, OTHER, image=True)
    assert (("refused", "many_codes", False), parcel.id) == (told(answer), waits(room))


@pytest.mark.parametrize("how", ["off", "other table", "handed over", "came back"])
def test_nothing_waits(how: str) -> None:
    """Where labels are not bound, at another table, and once the parcel or its things are elsewhere."""
    room, (parcel,) = closed("1", binds=how != "off")
    if how == "handed over":
        room.unit.put(replace(room.parcel_now(parcel).after("hand over"), handed=room.unit.at))
    if how == "came back":
        (line,) = room.lines(room.unit.all(Order)[parcel.orders[0]])
        room.unit.put(line.after("return"))
    table = "two" if how == "other table" else "main"
    assert ("unknown_code", None) == (
        room.read("table", LABEL, table=table)["reason"],
        finishing.unfinished(room.unit, table),
    )


def test_what_is_collected_gets_no_label() -> None:
    """It waits for its buyer: a label is refused there and at the hand-over, and the table goes on when told to."""
    room, (parcel,) = closed("1", collected=True)
    assert parcel.id == waits(room)
    assert ("refused", "unknown_code", False) == told(room.read("table", LABEL))
    with pytest.raises(Refused) as caught:
        shipping.bind(room.unit, parcel.id, shipping.Bind(text=LABEL))
    finishing.go_on(room.unit, parcel.id)
    assert ("collected", None, ParcelState.CLOSED) == (caught.value.code, waits(room), room.parcel_now(parcel).state)


def test_a_label_that_waited_is_none_of_a_parcel_that_closed_since() -> None:
    """It was read before that one closed, so it is another's; one that was read after it is taken."""
    room, (parcel,) = closed("1")
    room.unit.at += timedelta(seconds=10)
    late = room.read("table", LABEL, age_ms=11_000)
    assert (("refused", "unknown_code", False), parcel.id) == (told(late), waits(room))
    assert ("accepted", None, True) == told(room.read("table", LABEL, age_ms=9_000))
