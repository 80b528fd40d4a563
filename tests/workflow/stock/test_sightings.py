"""Of a card that was printed again after it was lost two may turn up."""

from datetime import timedelta

import pytest
from count_in_memory import CountInMemory
from room_in_memory import RoomInMemory

from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.domain.life import Hold, LineState
from scanflow.domain.things import Doubt
from scanflow.workflow import stock
from scanflow.workflow.ports import Refused
from scanflow.workflow.stock import cards, doubts
from scanflow.workflow.stock.sightings import TWINS_APART


def reprinted(*codes, kind=RoomInMemory):
    """A room where the card of D001 was lost and printed again."""
    room = kind("D001", *codes)
    stock.lose_card(room.unit, "D001")
    cards.reprint(room.unit, "D001", cards.Reprint(lost="Gone for good"))
    return room


def read(room, *readings, apart=timedelta(minutes=1)):
    """The card of D001 at one place after another."""
    for station, spot in readings:
        room.unit.at += apart
        room.scan(station, "D001", **spot)


def doubted(room):
    return [each.words for each in room.unit.find(Doubt, how=None)]


def told(room):
    return [event.kind for event in room.unit.ledger if isinstance(event, events.TwoCardsRead)]


HOME, ASTRAY = ("shelf", {"bin": "A-1-1"}), ("shelf", {"bin": "A-1-2"})
TABLE, TRAY = ("table", {}), ("tray", {})


@pytest.mark.parametrize("kept", [True, False])
def test_a_lost_card_that_is_printed_again_has_a_twin(kept):
    """It may turn up; a damaged one in hand can't."""
    room = RoomInMemory("D001")
    assert not room.slot("D001").twin
    if kept:
        cards.reprint(room.unit, "D001", cards.Reprint(text=card_text("D001")))
    else:
        room = reprinted()
    assert (not kept) is room.slot("D001").twin


@pytest.mark.parametrize(
    "readings",
    [(HOME, ASTRAY), (HOME, TABLE), (HOME, TRAY), (TRAY, HOME), (ASTRAY, TABLE), (TRAY, ASTRAY)],
)
def test_two_cards_of_one_number_make_a_doubt(readings):
    """Read at two places within minutes, one of them where the account has no card: somebody looks at the thing."""
    room = reprinted()
    read(room, *readings)
    (words,) = doubted(room)
    assert words.startswith("Two cards of D001 were read within 10 minutes: ")
    assert words.endswith(". One of them is a twin: destroy it.")
    assert ["two cards read"] == told(room)


def test_the_words_say_where_and_when():
    """Both places, the earlier first."""
    room = reprinted()
    read(room, TABLE, ASTRAY)
    assert [
        "Two cards of D001 were read within 10 minutes: at table main 12:01, in bin A-1-2 12:02. "
        "One of them is a twin: destroy it."
    ] == doubted(room)


@pytest.mark.parametrize("readings", [(ASTRAY, HOME), (TABLE, HOME), (HOME, HOME), (TABLE, TABLE)])
def test_one_card_that_is_carried_home_is_no_twin(readings):
    """Nor is one that is read twice at the same place."""
    room = reprinted()
    read(room, *readings)
    assert ([], []) == (doubted(room), told(room))


def test_readings_far_apart_are_of_one_card():
    """It was carried there meanwhile, as far as anybody knows."""
    room = reprinted()
    read(room, HOME, ASTRAY, apart=TWINS_APART + timedelta(seconds=1))
    assert [] == doubted(room)


def test_a_card_that_was_printed_once_has_no_twin():
    """The same readings of any other card are one card's."""
    room = RoomInMemory("D001")
    read(room, HOME, ASTRAY)
    assert [] == doubted(room)


def test_the_way_to_the_buyer_is_no_sign_of_a_twin():
    """Put away, picked, packed, its card back in the tray, all within minutes: that is one card."""
    room = reprinted()
    read(room, HOME)
    room.release("1", "D001")
    room.scan("tray", "D001")
    assert ([], []) == (doubted(room), told(room))


def test_what_is_packed_and_read_elsewhere_has_two_holds():
    """It is neither sure to be in the box nor to be the thing; the parcel stays open."""
    room = reprinted("D002")
    order = room.order("1", "D001", "D002")
    room.pick("D001", "D002")
    room.parcel(order)
    room.pack("D001")
    read(room, ASTRAY)
    line = room.line("D001")
    assert (LineState.PACKED, [Hold.SUSPECT, Hold.MISPLACED]) == (line.state, [each.hold for each in line.holds])


def test_one_doubt_is_enough():
    """While nobody has looked, more readings add none."""
    room = reprinted()
    read(room, HOME, ASTRAY, TABLE)
    assert 1 == len(doubted(room))


def test_without_a_thing_it_is_told_alone():
    """The number is free, and one card lies in the tray: the other has nothing to be doubted."""
    room = reprinted()
    room.release("1", "D001")
    read(room, TRAY, TABLE)
    assert ([], ["two cards read"]) == (doubted(room), told(room))


def test_a_card_that_a_count_missed_in_the_tray_was_not_read_there():
    """So what is read elsewhere soon after is no second card."""
    room = reprinted(kind=CountInMemory)
    room.release("1", "D001")
    room.scan("tray", "D001")
    room.unit.at += timedelta(hours=1)
    room.look("tray", "D003", "D004", "D005", "D006")
    read(room, TABLE)
    assert [] == told(room)


def test_a_count_finds_both():
    """A look into another bin is a reading as any."""
    room = reprinted(kind=CountInMemory)
    read(room, HOME)
    room.unit.at += timedelta(minutes=1)
    room.look("A-1-2", "D001")
    assert 1 == len(doubted(room))


def test_one_is_destroyed():
    """A person says so; then there is one card, and the doubt of the thing waits for its own look."""
    room = reprinted()
    read(room, HOME, ASTRAY)
    cards.destroyed(room.unit, "D001")
    assert (False, events.TwinDestroyed(code="D001")) == (room.slot("D001").twin, room.unit.ledger[-1])
    assert 1 == len(doubts.open_doubts(room.unit, room.item("D001").id))
    with pytest.raises(Refused, match="only one card"):
        cards.destroyed(room.unit, "D001")


def test_a_count_that_leaves_one_of_two_destroys_the_other():
    """“One is left” says it of a twin too; taken back, there may be two again."""
    room = reprinted(kind=CountInMemory)
    room.open()
    for place in ("A-1-1", "A-1-2"):
        room.look(place, "D001")
    room.resolve("twin-D001", "put_right")
    seen = [room.slot("D001").twin]
    room.undo("twin-D001")
    assert [False, True] == [*seen, room.slot("D001").twin]
