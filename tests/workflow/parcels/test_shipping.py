"""Shipping labels are bound to parcels."""

from __future__ import annotations

from dataclasses import replace

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.things import Label, Parcel
from scanflow.workflow import parcels
from scanflow.workflow.parcels import shipping
from scanflow.workflow.ports import Invalid, Missing, Refused, Unit

FIRST, SECOND = "RR 123456785 DE", "RR123456799DE"  # of the form of UPU S10, from memory


def closed(*numbers: str) -> tuple[RoomInMemory, list[str]]:
    """A closed parcel for each of these orders, in a shop that binds labels."""
    room = RoomInMemory(*(f"D{place:03}" for place in range(1, len(numbers) + 1)))
    room.unit.set_settings(replace(room.unit.settings, bind_labels=True))
    for place, number in enumerate(numbers, 1):
        room.release(number, f"D{place:03}")
    return room, [parcel.id for parcel in room.unit.find(Parcel)]


def why(unit: Unit, parcel: str, text: str) -> str:
    with pytest.raises(Refused) as caught:
        shipping.bind(unit, parcel, shipping.Bind(text=text))
    return caught.value.code


def test_first_use_binds_and_the_label_tells_its_parcel() -> None:
    """However its spaces are read; the ledger names it, and what its bars say is kept nowhere."""
    room, (parcel,) = closed("1")
    label = shipping.bind(room.unit, parcel, shipping.Bind(text=FIRST))
    assert (parcel, "85DE") == (label.parcel, label.ends)
    assert label == shipping.label_of(room.unit, FIRST.replace(" ", "").lower())
    assert events.LabelBound(parcel=parcel, label=label.hash, ends="85DE") == room.unit.ledger[-1]
    assert slot_code.compact(FIRST) not in repr((label, room.unit.ledger))


def test_the_same_label_again_changes_nothing() -> None:
    """On its own parcel it is no error, and nothing is told twice."""
    room, (parcel,) = closed("1")
    label = shipping.bind(room.unit, parcel, shipping.Bind(text=FIRST))
    told = len(room.unit.ledger)
    assert label == shipping.bind(room.unit, parcel, shipping.Bind(text=FIRST))
    assert (told, 1) == (len(room.unit.ledger), len(room.unit.find(Label)))


def test_one_label_is_never_on_two_parcels() -> None:
    """Refused, with the order that has it; a parcel may have a second label, for labels are printed again."""
    room, (one, other) = closed("1", "2")
    shipping.bind(room.unit, one, shipping.Bind(text=FIRST))
    with pytest.raises(Refused, match="the parcel of 1\\."):
        shipping.bind(room.unit, other, shipping.Bind(text=FIRST))
    shipping.bind(room.unit, one, shipping.Bind(text=SECOND))
    assert "label_taken" == why(room.unit, other, SECOND)
    assert {one} == {label.parcel for label in room.unit.find(Label)}


def test_an_open_parcel_gets_no_label() -> None:
    """It is closed first: what it holds can still change."""
    room, (parcel,) = closed("1")
    parcels.reopen(room.unit, parcel)
    assert "not_closed" == why(room.unit, parcel, FIRST)


def test_off_by_default() -> None:
    """A shop that did not ask for it keeps nothing of a label."""
    room = RoomInMemory("D001")
    room.release("1", "D001")
    (parcel,) = room.unit.find(Parcel)
    assert "labels_off" == why(room.unit, parcel.id, FIRST)


@pytest.mark.parametrize(
    "text",
    [
        slot_code.card_text("D001"),
        "d001 1",
        slot_code.slip_text(1),
        slot_code.stop_text(9),
        "12345",
        "x" * 201,
        "a\x07bcdefg",
    ],
)
def test_what_is_no_shipping_label_is_not_bound(text: str) -> None:
    """A card, a slip or a stop of the shop, one misread too, and what is too short, too long or no text."""
    room, (parcel,) = closed("1")
    with pytest.raises(Invalid):
        shipping.bind(room.unit, parcel, shipping.Bind.of({"text": text}))


def test_an_unknown_parcel() -> None:
    """There is none to bind it to."""
    room, _ = closed("1")
    with pytest.raises(Missing):
        shipping.bind(room.unit, "none", FIRST)
