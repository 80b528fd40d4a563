"""The picture of a thing."""

from __future__ import annotations

import pytest
from memory import Memory

from scanflow.domain import events
from scanflow.domain.things import Item, Photo
from scanflow.workflow import stock
from scanflow.workflow.ports import Missing
from scanflow.workflow.stock import photos

FRONT, BACK = Photo("f" * 64, b"front", b"f"), Photo("b" * 64, b"back", b"b")


def room() -> Memory:
    unit = Memory()
    stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="yellow"))
    stock.add_slots(unit, "D", stock.AddSlots(count=4))
    return unit


def test_a_picture_is_stored_once_and_told_in_the_ledger() -> None:
    """Two things with one picture share it; each is told, and the same picture again changes nothing."""
    unit = room()
    first, second = (
        stock.put_away(unit, stock.PutAway(title=title, section="D")) for title in ("Derailleur", "Another")
    )
    unit.ledger.clear()
    for stay in (first, second, second):
        photos.keep(unit, stay.id, FRONT)
    assert [FRONT] == list(unit.all(Photo).values())
    told = [events.PhotoKept(stay=each.id, code=each.code, photo=FRONT.hash) for each in (first, second)]
    assert told == unit.ledger


def test_a_new_picture_takes_its_place_and_moves_with_the_thing() -> None:
    """The item shows the latest, also in its next slot, at another address; the former one is still there."""
    unit = room()
    stay = stock.put_away(unit, stock.PutAway(title="Derailleur", section="D"))
    photos.keep(unit, stay.id, FRONT)
    before = photos.address(stay, unit.get(Item, stay.item))
    photos.keep(unit, stay.id, BACK)
    moved = stock.move(unit, stay.id, stock.Move(to="D004"))
    assert BACK.hash == unit.get(Item, moved.item).photo
    assert f"/api/stays/{moved.id}/photo?hash={BACK.hash}" == photos.address(moved, unit.get(Item, moved.item))
    assert before not in (None, photos.address(moved, unit.get(Item, moved.item)))
    assert [FRONT, BACK] == list(unit.all(Photo).values())


def test_without_a_picture_there_is_no_address() -> None:
    """None, and a picture of an unknown stay is refused."""
    unit = room()
    stay = stock.put_away(unit, stock.PutAway(title="Derailleur", section="D"))
    assert None is photos.address(stay, unit.get(Item, stay.item)) is photos.address(None, None)
    with pytest.raises(Missing):
        photos.keep(unit, "none", FRONT)
