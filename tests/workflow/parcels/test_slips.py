"""Where parcels close by their slips: the slip on the parcel is scanned when all is packed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Order
from scanflow.workflow import orders, parcels


def by_slip(scan_at_bin: bool = False) -> tuple[RoomInMemory, Order, Order]:
    """A room with two orders: 1 of D001 and D002, 2 of D003; nothing is packed."""
    room = RoomInMemory("D001", "D002", "D003", scan_at_bin=scan_at_bin)
    room.unit.set_settings(replace(room.unit.settings, slip_closes=True))
    return room, room.order("1", "D001", "D002"), room.order("2", "D003")


def slip(room: RoomInMemory, order: Order, **more: Any) -> Any:
    return room.read("table", slot_code.slip_text(order.slip), **more)


def told(answer: Any) -> tuple[Any, ...]:
    return answer["verdict"], answer["changed"], answer["parcel_state"], answer["released"]


def test_the_last_card_leaves_the_parcel_open() -> None:
    """It asks for the slip, though parcels close by themselves elsewhere."""
    room, _, order = by_slip()
    slip(room, order)
    answer = room.scan("table", "D003")
    assert ("accepted", True, "open", []) == told(answer)
    assert "Packed. Scan the slip on the parcel." == answer["advice"]


def test_the_slip_closes_what_is_complete() -> None:
    """All is released then; the second beep has the same answer and changes nothing."""
    room, _, order = by_slip()
    slip(room, order)
    room.pack("D003")
    assert ("accepted", True, "closed", ["D003"]) == told(slip(room, order))
    assert ("accepted", False, "closed", ["D003"]) == told(slip(room, order))


def test_the_scan_that_opened_a_parcel_closes_it_by_no_second_beep() -> None:
    """A full box that was set aside is taken up by its slip; only after another scan does the slip close it."""
    room, _, order = by_slip()
    parcel = room.parcel(order)
    room.pack("D003")
    parcels.set_aside(room.unit, parcel.id)
    assert ("accepted", True, "open", []) == told(slip(room, order))
    for _ in range(2):
        assert ("accepted", False, "open", []) == told(slip(room, order))
    assert "already_packed" == room.scan("table", "D003")["reason"]
    assert ("accepted", True, "closed", ["D003"]) == told(slip(room, order))


def test_a_slip_says_what_is_missing_and_closes_nothing() -> None:
    """Again as soon as the rest is settled, though nothing was packed meanwhile."""
    room, order, _ = by_slip()
    slip(room, order)
    room.pack("D001")
    answer = slip(room, order)
    assert (("accepted", False, "open", []), "Still to pack: D002.") == (told(answer), answer["advice"])
    orders.cancel(room.unit, order.id, orders.Cancel(line=room.line("D002").id))
    assert ("accepted", True, "closed", ["D001"]) == told(slip(room, order))


def test_a_slip_says_what_is_held() -> None:
    """What is packed and held keeps the box open, in the words of its hold."""
    room, _, order = by_slip()
    slip(room, order)
    room.pack("D003")
    orders.hold(room.unit, room.line("D003").id, orders.NotThis(why="It has a scratch."))
    answer = slip(room, order)
    assert (("accepted", False, "open", []), "D003 is held: It has a scratch.") == (told(answer), answer["advice"])


def test_an_empty_box_is_not_closed() -> None:
    """All of it was cancelled before anything was packed."""
    room, _, order = by_slip()
    room.parcel(order)
    orders.cancel(room.unit, order.id, orders.Cancel())
    assert ("accepted", False, "open", []) == told(slip(room, order))


@pytest.mark.parametrize("first", [0, 1])
def test_joined_orders_close_by_the_slips_of_both(first: int) -> None:
    """One after another, in any order; the same slip twice is one."""
    room, *joined = by_slip()
    parcel = room.parcel(*joined)
    room.pack("D001", "D002", "D003")
    one, other = joined[first], joined[1 - first]
    for _ in range(2):
        answer = slip(room, one)
        assert ("accepted", False, "open", []) == told(answer)
        assert f"Everything is packed. Scan the slip of {other.number} too." == answer["advice"]
    assert ["D001", "D002", "D003"] == sorted(slip(room, other)["released"])
    assert ParcelState.CLOSED is room.parcel_now(parcel).state


def test_a_card_between_the_slips_of_joined_orders_begins_anew() -> None:
    """What was taken out and packed again is looked at again by both."""
    room, *joined = by_slip()
    room.parcel(*joined)
    room.pack("D001", "D002", "D003")
    slip(room, joined[0])
    room.scan("table", "D001", take_out=True)
    room.unit.at += timedelta(minutes=1)
    room.pack("D001")
    assert "open" == slip(room, joined[1])["parcel_state"]
    assert "closed" == slip(room, joined[0])["parcel_state"]


def test_another_order_s_slip_is_refused() -> None:
    """It lies on the wrong box."""
    room, one, other = by_slip()
    room.parcel(one)
    room.pack("D001", "D002")
    assert "other_order" == slip(room, other)["reason"]


def test_a_parcel_that_was_opened_again_closes_by_its_slip_again() -> None:
    """The closing scan was just before, but the parcel is another since."""
    room, _, order = by_slip()
    parcel = room.parcel(order)
    room.pack("D003")
    slip(room, order)
    parcels.reopen(room.unit, parcel.id)
    assert ("accepted", True, "closed", ["D003"]) == told(slip(room, order))
