"""Doubts belong to the item: they are said once, last through all that happens to it, and end on purpose."""

import pytest
from room_in_memory import RoomInMemory

from labels.slot_code import card_text
from scanflow.domain.life import DoubtEnd, DoubtKind, Hold, LineState
from scanflow.domain.things import Doubt, Photo
from scanflow.workflow import orders, stock
from scanflow.workflow.ports import Invalid, Refused
from scanflow.workflow.stock import doubts, photos


def doubted(*words: str) -> tuple[RoomInMemory, list[Doubt]]:
    """D001 is wanted by an order, and somebody said these words of it."""
    room = RoomInMemory("D001", "D002")
    room.order("1", "D001")
    for each in words:
        orders.hold(room.unit, room.line("D001").id, orders.NotThis(why=each))
    return room, list(doubts.open_doubts(room.unit, room.item("D001").id))


def refused(call, *args, **more) -> str:
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def test_the_same_words_are_one_doubt():
    """Said twice they are kept once; other words are another doubt, and the hold has both."""
    room, open_ = doubted("It is a left crank", "It is a left crank", "It is bent")
    assert ["It is a left crank", "It is bent"] == [each.words for each in open_]
    assert "It is a left crank. It is bent" == room.line("D001").why


def test_the_last_doubt_settled_frees_the_line():
    """One left holds it still, by its own words."""
    room, (first, second) = doubted("It is a left crank", "It is bent")
    doubts.settle(room.unit, first.id, doubts.SettleDoubt(how=DoubtEnd.CORRECTED, note="The picture was wrong"))
    assert (Hold.SUSPECT, "It is bent") == (room.line("D001").hold, room.line("D001").why)
    doubts.settle(room.unit, second.id, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=card_text("D001")))
    assert None is room.line("D001").hold
    assert "settled" == refused(doubts.settle, room.unit, second.id, doubts.SettleDoubt(how=DoubtEnd.CORRECTED))


@pytest.mark.parametrize(
    ("text", "code"), [(None, "required"), ("", "required"), (card_text("D002"), "other_card"), ("D0015", "bad_check")]
)
def test_seen_wants_the_card_of_the_thing(text, code):
    """No word and no other card says that this is the thing."""
    room, (doubt,) = doubted("It is a left crank")
    assert code == refused(doubts.settle, room.unit, doubt.id, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=text))
    assert Hold.SUSPECT is room.line("D001").hold


def test_a_missing_thing_that_is_seen_waits_again():
    """The short line of the thing goes on as soon as somebody read its card."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    orders.short(room.unit, room.line("D001").id, orders.Short(note="Not in its bin"))
    (doubt,) = doubts.open_doubts(room.unit, room.item("D001").id)
    assert (DoubtKind.MISSING, "Not in its bin") == (doubt.kind, doubt.words)
    doubts.settle(room.unit, doubt.id, doubts.SettleDoubt(how=DoubtEnd.SEEN, text=card_text("D001")))
    assert (LineState.WAITING, None) == (room.line("D001").state, room.line("D001").hold)


def test_what_is_taken_out_of_stock_is_in_doubt_no_more():
    """Its doubts end with it, and say so."""
    room, (doubt,) = doubted("It is bent")
    orders.cancel(room.unit, room.line("D001").order, orders.Cancel())
    stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="Bent"))
    assert DoubtEnd.WITHDRAWN is room.unit.get(Doubt, doubt.id).how


def test_a_doubt_keeps_the_picture_that_it_was_said_of():
    """The thing gets another picture later, and the doubt shows the one of then."""
    room = RoomInMemory("D001")
    stay = room.stay("D001")
    photos.keep(room.unit, stay.id, Photo("a" * 64, b"then", b"then"))
    doubts.not_this(room.unit, stay.item, "It is bent")
    photos.keep(room.unit, stay.id, Photo("b" * 64, b"now", b"now"))
    (doubt,) = doubts.open_doubts(room.unit, stay.item)
    assert ("a" * 64, "b" * 64) == (doubt.photo, room.item("D001").photo)
