"""Sections and slots; a thing is put away, moved, withdrawn; a card is lost."""

from dataclasses import asdict, fields, replace

import pytest
from memory import Memory
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.derive import SlotState, slot_state
from scanflow.domain.life import CardState, NotAllowed, StayState
from scanflow.domain.things import Bin, Item, Rack, Slot
from scanflow.planning.racking import Measured
from scanflow.workflow import stock
from scanflow.workflow.ports import Invalid, Missing, Refused
from scanflow.workflow.stock import listings


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def test_a_section_is_made_once():
    """Letters in use are refused."""
    assert "section_exists" == refused(
        stock.add_section, RoomInMemory().unit, stock.AddSection(code="D", name="Other", slots_per_bin=3, colour="pink")
    )


def test_slots_fill_bins_in_order_and_number_on():
    """More slots go on with the next numbers, first into the room left in the section's last bin."""
    unit = Memory()
    stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=2, colour="pink"))
    stock.add_slots(unit, "L", stock.AddSlots(count=3))
    stock.add_slots(unit, "L", stock.AddSlots(count=2))
    assert [("L001", "A-1-1"), ("L002", "A-1-1"), ("L003", "A-1-2"), ("L004", "A-1-2"), ("L005", "A-1-3")] == [
        (slot.code, slot.bin) for slot in unit.find(Slot)
    ]


def test_sections_share_no_bin_and_get_racks_of_their_own():
    """A second section starts on an empty rack; a named rack is used, and made when it is new."""
    unit = RoomInMemory().unit
    stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=2, colour="pink"))
    stock.add_slots(unit, "L", stock.AddSlots(count=1))
    stock.add_slots(unit, "L", stock.AddSlots(count=2, rack="Q"))
    assert ["B-1-1", "B-1-1", "Q-1-1"] == [slot.bin for slot in unit.find(Slot, section="L")]
    assert ["A", "B", "Q"] == [rack.name for rack in unit.find(Rack)]


def test_a_full_rack_goes_on_on_the_next():
    """Six tiers of five bins, then another rack."""
    unit = Memory()
    stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=1, colour="pink"))
    stock.add_slots(unit, "L", stock.AddSlots(count=31))
    assert ["A-6-5", "B-1-1"] == [each.name for each in unit.find(Bin)][29:]


def test_numbers_end_where_their_width_ends():
    """A section has no numbers beyond its digits."""
    assert "too_many" == refused(stock.add_slots, RoomInMemory().unit, "D", stock.AddSlots(count=994))


def test_a_rack_is_placed():
    """Where a rack stands is said once it is known; an unknown rack is missing."""
    unit = RoomInMemory().unit
    assert Rack("A", 2, 1.5) == stock.place_rack(unit, "A", stock.PlaceRack(aisle=2, start=1.5)) == unit.get(Rack, "A")
    with pytest.raises(Missing):
        stock.place_rack(unit, "Z", stock.PlaceRack(aisle=0, start=0.0))


WIDE = Measured("600x1475x1000", "580x350x180", table="2")
"""Racks with four bins across and three up."""


def measure(unit, measured):
    stock.measure_racks(unit, stock.MeasureRacks.of(asdict(measured)))


def test_racks_are_measured():
    """New bins hang as many as fit, racks that stood in a row still do, and one that stood by itself stays there."""
    unit = Memory()
    stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=1, colour="pink"))
    stock.add_slots(unit, "L", stock.AddSlots(count=13))
    for name in "BCD":
        stock.add_section(unit, stock.AddSection(code=name, name=name, slots_per_bin=1, colour="pink"))
        stock.add_slots(unit, name, stock.AddSlots(count=1, rack=name))
    stock.place_rack(unit, "D", stock.PlaceRack(aisle=0, start=4.0))
    assert [0.0, 0.0, 1.1, 4.0] == [rack.start for rack in unit.find(Rack)]
    assert "bins_beyond" == refused(measure, unit, WIDE)  # A-1-5
    four = replace(WIDE, bin="580x250x100")
    measure(unit, four)
    assert [0.0, 0.0, 1.475, 4.0] == [rack.start for rack in unit.find(Rack)]
    assert four == unit.settings.racks


def test_measured_racks_hold_what_fits():
    """Four across and three up, then another rack."""
    unit = Memory()
    measure(unit, WIDE)
    stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=1, colour="pink"))
    stock.add_slots(unit, "L", stock.AddSlots(count=13))
    assert ["A-1-4", "A-2-1", "A-3-4", "B-1-1"] == [unit.find(Bin)[at].name for at in (3, 4, 11, 12)]
    assert "bad_size" == refused(measure, unit, replace(WIDE, rack="tall"))


def test_put_away_by_section_takes_the_lowest_free_number():
    """The tool picks the lowest slot whose card is in the tray."""
    room = RoomInMemory("D001", "D003")
    assert "D002" == stock.put_away(room.unit, stock.PutAway(title="crank", section="D")).code


def asks(room, who, section="D"):
    """The number that is named to somebody."""
    room.unit.who = who
    return stock.fetch(room.unit, section).code


def test_two_people_fetch_two_cards():
    """A number that was named is kept for whoever asked, who gets it again, and for nobody else."""
    room = RoomInMemory("D001")
    assert ["D002", "D003", "D002"] == [asks(room, who) for who in ("ann", "ben", "ann")]


def test_a_kept_number_is_given_to_nobody_else():
    """By its section the next one is taken; by its code it is refused in words; the card in hand always works."""
    room = RoomInMemory("D001")
    asks(room, "ann")
    room.unit.who = "ben"
    assert "D003" == stock.put_away(room.unit, stock.PutAway(title="crank", section="D")).code
    with pytest.raises(Refused) as refusal:
        stock.put_away(room.unit, stock.PutAway(title="crank", code="D002"))
    assert ("card_due", "Card D002 is being fetched by ann until 12:10. Take another one.") == (
        refusal.value.code,
        refusal.value.detail,
    )
    assert "D002" == room.put_away("D002").code


def test_who_fetches_a_card_puts_away_in_it():
    """By its section, or by the number itself."""
    by = [{"section": "D"}, {"code": "D001"}, {"text": slot_code.card_text("D001")}]
    for given in by:
        room = RoomInMemory()
        asks(room, "ann")
        assert ("D001", None) == (
            stock.put_away(room.unit, stock.PutAway(title="crank", **given)).code,
            room.slot("D001").fetch,
        )


def test_another_card_gives_the_fetched_one_up():
    """Its number is for anybody again once its fetcher put something away elsewhere."""
    room = RoomInMemory()
    asks(room, "ann")
    room.put_away("D003")
    assert "D001" == asks(room, "ben")


def test_a_number_is_kept_for_ten_minutes():
    """After that it is named to the next who asks."""
    room = RoomInMemory()
    asks(room, "ann")
    room.unit.at += stock.FETCHING
    assert "D001" == asks(room, "ben")


def test_a_fetched_card_that_somebody_else_had_in_hand():
    """Who asks again gets another number."""
    room = RoomInMemory()
    asks(room, "ann")
    room.unit.who = "ben"
    room.put_away("D001")
    assert "D002" == asks(room, "ann")


def test_put_away_takes_the_card_onto_the_item():
    """The stay is the slot's next turn, its card is on the item, and where it was seen before is forgotten."""
    room = RoomInMemory()
    room.scan("tray", "D002")
    stay = stock.put_away(room.unit, stock.PutAway(title="crank", listing="L-1", notes="left side", code="D002"))
    assert (1, True, CardState.ON_ITEM, None) == (
        stay.turn,
        stay.open,
        room.slot("D002").card,
        room.slot("D002").seen,
    )
    assert ("crank", "L-1", "left side") == (
        room.item("D002").title,
        listings.first(room.unit, stay.item),
        room.item("D002").notes,
    )


@pytest.mark.parametrize("by", ["text", "code"])
def test_a_taken_slot_is_refused(by):
    """Neither the card nor the code of a taken slot stores a second thing, and the refusal names the first."""
    room = RoomInMemory("D001")
    name = slot_code.card_text("D001") if by == "text" else "D001"
    with pytest.raises(Refused, match="thing of D001") as refusal:
        stock.put_away(room.unit, stock.PutAway(title="crank", **{by: name}))
    assert "taken" == refusal.value.code


def test_only_the_card_in_hand_hands_out_a_number_whose_card_is_due():
    """A due card's number is refused by code and passed over by section, and accepted by its card."""
    room = RoomInMemory("D001")
    stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))
    assert "card_due" == refused(stock.put_away, room.unit, stock.PutAway(title="crank", code="D001"))
    assert "D002" == stock.put_away(room.unit, stock.PutAway(title="crank", section="D")).code
    assert 2 == stock.put_away(room.unit, stock.PutAway(title="crank", text="D0016")).turn


def test_a_lost_cards_number_is_retired_until_it_is_seen():
    """A lost card's number is refused until the card was scanned at the tray."""
    room = RoomInMemory()
    stock.lose_card(room.unit, "D001")
    assert "retired" == refused(stock.put_away, room.unit, stock.PutAway(title="crank", code="D001"))
    room.scan("tray", "D001")
    assert "D001" == stock.put_away(room.unit, stock.PutAway(title="crank", code="D001")).code


def test_a_full_section_names_the_free_slots_of_its_bulk_or_more():
    """When no card is free, those of sections with as few or fewer slots a bin are told."""
    room = RoomInMemory("D001", "D002", "D003", "D004", "D005", "D006")
    for code, per_bin in (("W", 1), ("L", 2), ("S", 9)):
        stock.add_section(room.unit, stock.AddSection(code=code, name=code, slots_per_bin=per_bin, colour="pink"))
        stock.add_slots(room.unit, code, stock.AddSlots(count=per_bin))
    with pytest.raises(Refused, match="1 in W, 2 in L") as refusal:
        stock.put_away(room.unit, stock.PutAway(title="crank", section="D"))
    assert ("section_full", {"free": {"W": 1, "L": 2}}) == (refusal.value.code, refusal.value.extra)


@pytest.mark.parametrize(
    ("given", "code"),
    [
        ({"text": "D0015"}, "bad_check"),
        ({"text": "duck"}, "unknown_code"),
        ({"text": slot_code.card_text("D999")}, "unknown_code"),
        ({"code": "D999"}, "unknown_code"),
        ({"section": "Q"}, "unknown_section"),
    ],
)
def test_what_is_no_place_is_refused(given, code):
    """Wrong checks, unknown codes and unknown sections are told apart."""
    assert code == refused(stock.put_away, RoomInMemory().unit, stock.PutAway(title="crank", **given))


def test_words_of_an_item_change_one_by_one():
    """Only what is given is changed."""
    room = RoomInMemory("D001")
    stock.change_item(room.unit, room.stay("D001").id, stock.ChangeItem(notes="worn"))
    assert replace(room.item("D001"), title="thing of D001", notes="worn") == room.item("D001")


def test_withdrawing_frees_the_slot_and_leaves_the_card_due():
    """The stay ends with its reason; the number waits for its card."""
    room = RoomInMemory("D001")
    stay = stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))
    assert (StayState.WITHDRAWN, "bent", room.unit.at) == (stay.state, stay.reason, stay.ended)
    assert SlotState.DUE == slot_state(room.slot("D001"), stay)


def test_what_an_order_wants_is_not_withdrawn():
    """While a live line wants it a thing stays in stock."""
    room = RoomInMemory("D001")
    room.order("1", "D001")
    assert "has_live_line" == refused(stock.withdraw, room.unit, room.stay("D001").id, stock.Withdraw(reason="bent"))


def test_a_thing_is_withdrawn_once():
    """What has left its slot can't leave it again."""
    room = RoomInMemory("D001")
    stay = room.stay("D001").id
    stock.withdraw(room.unit, stay, stock.Withdraw(reason="bent"))
    with pytest.raises(NotAllowed):
        stock.withdraw(room.unit, stay, stock.Withdraw(reason="bent"))


def test_a_moved_thing_takes_its_line_along():
    """A move ends one stay and begins the next of the same item; the line asks for the new one."""
    room = RoomInMemory("D001")
    order = room.order("1", "D001")
    new = stock.move(room.unit, room.stay("D001").id, stock.Move(to="D004"))
    assert (StayState.MOVED, room.stay("D001").item) == (room.stay("D001").state, new.item)
    assert (new.id, CardState.DUE) == (room.lines(order)[0].stay, room.slot("D001").card)


@pytest.mark.parametrize(
    ("to", "code"),
    [("D001", "taken"), ("D002", "taken"), ("D003", "card_due"), ("D004", "retired"), ("X001", "unknown_code")],
)
def test_a_move_goes_only_to_a_free_slot(to, code):
    """Taken, due, retired and unknown slots are refused."""
    room = RoomInMemory("D001", "D002", "D003")
    stock.withdraw(room.unit, room.stay("D003").id, stock.Withdraw(reason="bent"))
    stock.lose_card(room.unit, "D004")
    assert code == refused(stock.move, room.unit, room.stay("D001").id, stock.Move(to=to))


def test_what_lies_in_a_parcel_does_not_move():
    """A packed thing must come out by a scan first."""
    room = RoomInMemory("D001", "D002", scan_at_bin=False)
    room.parcel(room.order("1", "D001", "D002"))
    room.pack("D001")
    assert "still_in_box" == refused(stock.move, room.unit, room.stay("D001").id, stock.Move(to="D004"))


def test_losing_a_card_needs_a_card_that_was_not_lost():
    """An unknown slot is missing; a lost card can't be lost again."""
    room = RoomInMemory()
    stock.lose_card(room.unit, "D001")
    with pytest.raises(NotAllowed):
        stock.lose_card(room.unit, "D001")
    with pytest.raises(Missing):
        stock.lose_card(room.unit, "D999")


def test_what_is_told_of_a_thing_is_said_once():
    """Every word of a thing is a field of it, is asked for when it is put away, and its change is told."""
    assert {field.name for field in fields(Item)} - {
        "id",
        "photo",
        "kept_for",
        "kept_until",
        "away",
        "away_since",
    } == set(stock.WORDS)
    assert {*stock.WORDS, "listing"} == set(stock.ChangeItem.model_fields)
    assert {*stock.WORDS, "listing"} == {field.name for field in fields(events.ItemChanged)} - {"stay", "code"}
