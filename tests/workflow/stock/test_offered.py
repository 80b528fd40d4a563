"""What a channel offers is held against the room; looking changes nothing, and a press settles what it says."""

from datetime import timedelta

import pytest
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain.offered import OfferedRow
from scanflow.domain.things import Listing
from scanflow.workflow import orders, stock
from scanflow.workflow.ports import must
from scanflow.workflow.stock import listings, offered, reserving


def room_of(*codes):
    """Things in these slots, each offered on `fair` under the id F-CODE."""
    room = RoomInMemory(*codes)
    for code in codes:
        add(room, code, f"F-{code}", "fair")
    return room


def add(room, code, listing, channel):
    return listings.add(room.unit, room.stay(code).id, listings.AddListing(listing=listing, channel=channel))


def row(number, code, listing=None, reference=None):
    reference = slot_code.reference(code, 1) if reference is None else reference
    return OfferedRow(number, reference, f"F-{code}" if listing is None else listing, f"thing of {code}")


def found(room, *rows, since=None):
    checked = offered.check(room.unit, "fair", rows, since)
    return [(each.kind.value, each.code, each.listing) for each in checked]


def test_what_agrees_is_no_difference():
    """By id and reference, by either alone, and under an id of which nobody said the channel."""
    room = room_of("D001", "D002", "D003")
    stock.put_away(room.unit, stock.PutAway(title="thing of D004", listing="L-4", code="D004"))
    rows = (row(2, "D001"), row(3, "D002", reference=""), row(4, "D003", listing=""), row(5, "D004", "L-4"))
    assert [] == found(room, *rows)


def test_what_is_about_to_be_sold_twice_comes_first():
    """Then what is not offered, wrong references, unknown ones, new ids, and what is down already."""
    room = room_of("D001", "D002", "D003", "D004", "D005")
    room.put_away("D006")
    room.order("7", "D002", channel="web")
    room.order("8", "D005", channel="web")
    wrong = slot_code.reference("D003", 1)[:-1] + "?"
    rows = (
        row(2, "D001", listing="F-new"),
        row(3, "D003", listing="F-x", reference=wrong),
        OfferedRow(4, "Q-1", "F-y", "Foreign"),
        row(5, "D002"),
    )
    assert [
        ("gone", "D002", "F-D002"),
        ("not_offered", "D004", "F-D004"),
        ("not_offered", "D006", ""),
        ("wrong_reference", "D003", "F-x"),
        ("unknown", None, "F-y"),
        ("new_id", "D001", "F-new"),
        ("down", "D001", "F-D001"),
        ("down", "D003", "F-D003"),
        ("down", "D005", "F-D005"),
    ] == found(room, *rows)


@pytest.mark.parametrize(
    ("does", "why"),
    [
        (lambda room, stay: room.order("7", "D001", channel="fair"), "Order 7 has it."),
        (lambda room, stay: room.release("7", "D001"), "Order 7 has it."),
        (
            lambda room, stay: stock.withdraw(room.unit, stay.id, stock.Withdraw(reason="Cracked")),
            "It was taken out of stock: Cracked",
        ),
        (
            lambda room, stay: reserving.reserve(
                room.unit, stay.id, reserving.Reserve(**{"for": "Ann", "until": "2026-03-09"})
            ),
            "It is kept for Ann until",
        ),
        (
            lambda room, stay: orders.short(
                room.unit, room.lines(room.order("7", "D001"))[0].id, orders.Short(note="Not there")
            ),
            "Order 7 has it.",
        ),
    ],
    ids=["ordered there", "gone", "withdrawn", "reserved", "missing"],
)
def test_what_is_offered_and_not_for_sale_says_why(does, why):
    """Also on the channel that sold it: its file lists it still."""
    room = room_of("D001")
    does(room, room.stay("D001") or None)
    (only,) = offered.check(room.unit, "fair", [row(2, "D001")])
    assert ("gone", True) == (only.kind, only.why.startswith(why))


def test_what_another_channel_offers_need_not_be_offered_here():
    """But what was offered here and is not any more is told."""
    room = RoomInMemory("D001", "D002", "D003")
    add(room, "D001", "w-1", "web")
    add(room, "D002", "w-2", "web")
    add(room, "D002", "F-D002", "fair")
    assert [("not_offered", "D002", "F-D002"), ("not_offered", "D003", "")] == found(room)


@pytest.mark.parametrize(
    "typed",
    ["D001-0?9", "D001-01", "D01-019", "D0001-019", "D010-019", "D001-0199", "d001 091", "C001-019"],
)
def test_a_reference_that_is_wrong_by_a_letter_has_the_nearest(typed):
    """One letter more, less or another, or two that changed places."""
    room = RoomInMemory("D001")
    (only,) = offered.check(room.unit, "fair", [OfferedRow(2, typed)])
    assert ("wrong_reference", "D001-019", slot_code.reference("D001", 1)) == (only.kind, only.correct, only.correct)


@pytest.mark.parametrize("typed", ["D001-0", "D010-091", "", "Q999-99Q"])
def test_what_is_wrong_by_more_is_not_guessed(typed):
    """It is told as unknown, and the thing as not offered."""
    room = RoomInMemory("D001")
    assert ["not_offered", "unknown"] == [
        each.kind for each in offered.check(room.unit, "fair", [OfferedRow(2, typed, "F-1")])
    ]


def test_of_two_that_are_as_near_what_stands_here_is_meant():
    """One letter is missing of the reference of a thing that has left, or of the one that stands there now."""
    room = RoomInMemory()
    for title in ("Bell", "Lamp"):
        stock.withdraw(room.unit, room.put_away("D006", title).id, stock.Withdraw(reason="Cracked"))
        room.scan("tray", "D006")
    room.put_away("D006", "Crank")
    assert ["D006-024", "D006-032"] == [slot_code.reference("D006", turn) for turn in (2, 3)]
    (only,) = offered.check(room.unit, "fair", [OfferedRow(2, "D006-02", "", "Lamp")])
    assert ("wrong_reference", "D006-032") == (only.kind, only.correct)


def test_an_id_outweighs_a_reference():
    """The offer is the thing's whose id it has, and its reference is wrong."""
    room = room_of("D001", "D002")
    rows = (row(2, "D001", reference=slot_code.reference("D002", 1)), row(3, "D002"))
    (only,) = offered.check(room.unit, "fair", rows)
    told = ("wrong_reference", "D001", slot_code.reference("D001", 1))
    assert told == (only.kind, only.code, only.correct)
    assert "D002" in only.why


def test_a_thing_that_moved_is_found_by_its_old_reference():
    """A bare code is another thing's by now, or nobody's."""
    room = room_of("D001")
    stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    assert [] == found(room, row(2, "D001"))
    assert [("wrong_reference", "D004", "F-D001")] == found(room, row(2, "D001", reference="D001"))


def test_a_row_that_cannot_be_read_is_told():
    """With its reason, and the thing it may mean counts as not offered."""
    room = RoomInMemory("D001")
    found_ = offered.check(room.unit, "fair", [OfferedRow(2, slot_code.reference("D001", 1), bad="Broken.")])
    assert [("not_offered", None), ("unknown", 2)] == [(each.kind, each.row) for each in found_]


def settle(room, *rows, since=None):
    """Press all that a press settles."""
    each = [one for one in offered.check(room.unit, "fair", rows, since) if one.settled]
    part = offered.settling("fair", each, lambda: lambda: True)  # one at a time
    done = [part(room.unit) for _ in each]
    assert [None] * (len(each) - 1) + [len(each)] == done


def test_looking_changes_nothing():
    """Neither things nor the ledger."""
    room = room_of("D001", "D002")
    room.order("7", "D002")
    before = (len(room.unit.ledger), room.unit.find(Listing))
    assert found(room, row(2, "D002"), row(3, "D001", "F-new"))
    assert before == (len(room.unit.ledger), room.unit.find(Listing))


def test_a_press_settles_what_it_says():
    """An id is learned; what is down, or not offered any more, has ended; nothing of that differs then."""
    room = room_of("D001", "D002", "D003")
    room.order("7", "D003", channel="web")
    rows = (row(2, "D001", "F-new"),)
    settle(room, *rows)
    ended = {each.listing for each in room.unit.find(Listing) if each.ended is not None}
    assert {"F-D001", "F-D002", "F-D003"} == ended
    assert [("not_offered", "D002", "")] == found(room, *rows)
    assert ("fair", "F-new") == next((each.channel, each.listing) for each in room.unit.find(Listing, ended=None))


@pytest.mark.parametrize("listing", ["F-D001", "F-unknown", ""])
def test_what_was_taken_down_is_told_again_by_the_next_file(listing):
    """While one looks at a file it is settled; a later file that has it still says so. An unknown id is kept too."""
    room = room_of("D001")
    room.order("7", "D001", channel="web")
    since, rows = room.unit.at, (row(2, "D001", listing),)
    assert ["gone"] == [kind for kind, _, _ in found(room, *rows)[:1]]
    settle(room, *rows)
    assert [] == found(room, *rows, since=since)
    room.unit.at += timedelta(days=1)
    assert ["gone"] == [kind for kind, _, _ in found(room, *rows, since=room.unit.at)]
    assert {"ended"} == {listings.state(room.unit, each).value for each in room.unit.find(Listing)}
    assert must(room.unit, Listing, room.unit.find(Listing)[0].id).ended is not None
