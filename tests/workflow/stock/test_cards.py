"""Cards of another system are adopted and believed after two looks; a card is printed again."""

import random

import pytest
from memory import Memory
from room_in_memory import RoomInMemory

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.life import CardState
from scanflow.domain.things import Alias, Line, Parcel, Scan, Slot, Stay
from scanflow.workflow import stock
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.ports import Invalid, Missing, Refused, Settings
from scanflow.workflow.stock import cards


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def adopting(*codes, **settings):
    """A room that takes cards without a check."""
    room = RoomInMemory(*codes, **settings)
    room.unit.settings = Settings(check="none", **settings)
    return room


def things(room):
    """All that a refusal may not change."""
    return [dict(room.unit.all(kind)) for kind in (Line, Stay, Slot, Parcel)]


def on_a_round(*codes, **settings):
    room = adopting(*codes, **settings)
    room.order("1", *codes)
    return room, {"round": room.round().id}


def verdict(answer):
    return answer["verdict"], answer["reason"], answer["code"]


@pytest.mark.parametrize("via", ["wedge", "typed", "camera"])
def test_a_card_without_check_is_judged_at_its_second_look(via):
    """The first reading is refused with what to do, and changes nothing but ledger and scans; the second picks."""
    room, spot = on_a_round("D001")
    before = things(room)
    first = room.read("bin", "D001", via=via, **spot)
    assert (("refused", "bad_check", "D001"), ONCE_MORE) == (verdict(first), first["advice"])
    assert (before, events.Scanned) == (things(room), type(room.unit.ledger[-1]))
    second = room.read("bin", "D001", via=via, **spot)
    assert (("accepted", None, "D001"), True) == (verdict(second), second["changed"])


def test_two_engines_are_two_looks():
    """A photograph that both decoders read is judged at once, one that a single decoder read is not."""
    room, spot = on_a_round("D001", "D002")
    one = room.read("bin", "D001", image=True, **spot)
    two = room.read("bin", "D002", image=True, agreed=("D002",), **spot)
    assert ["bad_check", None] == [one["reason"], two["reason"]]


def test_a_checked_card_needs_no_second_look():
    """Cards with our check digit go on as ever beside adopted ones."""
    room, spot = on_a_round("D001")
    assert "accepted" == room.scan("bin", "D001", **spot)["verdict"]


def test_another_card_between_two_looks_starts_again():
    """Looks agree only when nothing else was scanned at that spot meanwhile; other stations don't count."""
    room, spot = on_a_round("D001", "D002")
    room.read("bin", "D001", **spot)
    room.read("bin", "D002", **spot)
    room.read("tray", "D001")
    assert "bad_check" == room.read("bin", "D001", **spot)["reason"]
    room.read("tray", "D002")
    assert "accepted" == room.read("bin", "D001", **spot)["verdict"]


def test_a_double_beep_after_acceptance_stays_accepted():
    """The third beep of the same adopted card is accepted and changes nothing."""
    room, spot = on_a_round("D001")
    answers = [room.read("bin", "D001", **spot) for _ in range(4)]
    assert [("bad_check", False), (None, True), (None, False), (None, False)] == [
        (answer["reason"], answer["changed"]) for answer in answers
    ]


def test_the_main_job_with_an_alias():
    """Put away, picked, packed, released and back in the tray by a text that knows nothing of slot codes."""
    room = adopting()
    assert Alias("BOX17", "D002", "BOX-17") == cards.adopt(room.unit, cards.Adopt(text="BOX-17", code="D002"))
    stock.put_away(room.unit, stock.PutAway(title="crank", text="BOX-17"))
    order = room.order("1", "D002")
    spot = {"round": room.round().id}
    picks = [room.read("bin", "BOX-17", **spot) for _ in range(2)]
    room.parcel(order)
    packs = [room.read("table", text) for text in ("]A0BOX-17", "BOX-17")]
    back = [room.read("tray", "box-17") for _ in range(2)]
    assert ["picked", ["D002"], CardState.TRAY] == [
        picks[1]["line_state"],
        packs[1]["released"],
        room.slot("D002").card,
    ]
    assert ["bad_check"] * 3 == [looks[0]["reason"] for looks in (picks, packs, back)]
    assert ("box-17",) == room.unit.ledger[-1].text


def test_two_looks_never_move_another_orders_thing():
    """Both looks at a card of another order are refused, and no line moves."""
    room, spot = on_a_round("D001")
    other = room.order("2", "D002") if room.put_away("D002") else None
    for _ in range(2):
        room.read("bin", "D001", **spot)
    room.parcel(other)
    before = [dict(room.unit.all(kind)) for kind in (Line, Stay, Parcel)]
    assert ["bad_check", "other_order"] == [room.read("table", "D001")["reason"] for _ in range(2)]
    assert before == [dict(room.unit.all(kind)) for kind in (Line, Stay, Parcel)]
    seen = room.slot("D001").seen
    assert ("table", "main", False) == (seen.station, seen.place, seen.accepted)


def test_two_cards_in_view_are_too_many():
    """An adopted card beside a checked one is refused, as any two are."""
    room, spot = on_a_round("D001", "D002")
    assert "many_codes" == room.read("bin", "D001", slot_code.card_text("D002"), image=True, **spot)["reason"]


@pytest.mark.parametrize(("text", "reason"), [("D0146", "bad_check"), ("D999", "unknown_code"), ("?", "unknown_code")])
def test_what_names_no_card_is_refused_as_ever(text, reason):
    """A wrong check digit, a number that is not there, another thing's code: also a second time."""
    room, spot = on_a_round("D001")
    assert [("refused", reason, None)] * 2 == [verdict(room.read("bin", text, **spot)) for _ in range(2)]


def test_by_default_a_card_without_check_is_never_taken():
    """Where the setting was not changed neither a bare code nor an alias is a card, however often it is shown."""
    room = RoomInMemory("D001")
    cards.adopt(room.unit, cards.Adopt(text="BOX-17", code="D001"))
    room.order("1", "D001")
    spot = {"round": room.round().id}
    texts = ("D001", "D001", "BOX-17", "BOX-17")
    said = [verdict(room.read("bin", text, agreed=(text,), **spot)) for text in texts]
    assert [("refused", "bad_check", None)] * 2 + [("refused", "unknown_code", None)] * 2 == said
    assert "bad_check" == refused(stock.put_away, room.unit, stock.PutAway(title="lamp", text="D002"))


def test_a_text_that_means_two_slots_means_none():
    """Where section DO stands beside D, DO145 is D014 with its check or slot DO145: it is refused."""
    unit = Memory(Settings(check="none"))
    for code in ("D", "DO"):
        stock.add_section(unit, stock.AddSection(code=code, name="Derailleurs", slots_per_bin=50, colour="blue"))
        stock.add_slots(unit, code, stock.AddSlots(count=145))
    reading = [StationReading(ScanBase(station="tray", key=f"k{n}"), ("DO145",), f"b{n}") for n in range(2)]
    assert ["bad_check"] * 2 == [scans.scan(unit, each)["reason"] for each in reading]
    with pytest.raises(slot_code.BadCheck, match="several slots"):
        cards.named(unit, "DO145", None)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("D002", "ambiguous"),
        ("DO02", "ambiguous"),
        (slot_code.card_text("D002"), "ambiguous"),
        (slot_code.slip_text(7), "ambiguous"),
        (slot_code.reference("D001", 2), "ambiguous"),
        (" - ", "bad_text"),
        ("A\x00B", "bad_text"),
        ("A" * 33, "bad_text"),
    ],
)
def test_texts_that_no_card_can_have(text, code):
    """What means another slot, a slip, a reference or nothing at all is not adopted."""
    room = RoomInMemory()
    said = {"text": text, "code": "D001"}
    assert code == refused(lambda: cards.adopt(room.unit, cards.Adopt.of(said)))
    assert () == room.unit.find(Alias)


def test_a_text_is_adopted_once_and_given_on_only_while_nothing_stands_there():
    """The same again changes nothing; another slot gets the text unless an item stands in the first."""
    room = RoomInMemory()
    cards.adopt(room.unit, cards.Adopt(text="17", code="D001"))
    entries = len(room.unit.ledger)
    cards.adopt(room.unit, cards.Adopt(text="17", code="D001"))
    assert entries == len(room.unit.ledger)
    cards.adopt(room.unit, cards.Adopt(text="17", code="D002"))
    room.put_away("D002")
    assert "taken" == refused(cards.adopt, room.unit, cards.Adopt(text="17", code="D003"))
    assert (Alias("17", "D002", "17"),) == room.unit.find(Alias)
    with pytest.raises(Missing):
        cards.adopt(room.unit, cards.Adopt(text="18", code="D999"))


def test_texts_that_no_scan_tells_apart_are_one_card():
    """A text that differs from another slot's only in hyphens, spaces or case is refused, and says of which card."""
    room = RoomInMemory()
    cards.adopt(room.unit, cards.Adopt(text="AB-0123", code="D001"))
    for text in ("AB0123", "AB 0123", "ab-0123", "A-B0123"):
        with pytest.raises(Refused, match="differs from AB-0123, the card of D001") as refusal:
            cards.adopt(room.unit, cards.Adopt(text=text, code="D002"))
        assert "ambiguous" == refusal.value.code
    assert (Alias("AB0123", "D001", "AB-0123"),) == room.unit.find(Alias)


def test_how_a_card_is_printed_can_be_put_right():
    """Adopted once more for its own slot, while its item stands there too, a text is kept as it is printed now."""
    room = adopting()
    cards.adopt(room.unit, cards.Adopt(text="AB0123", code="D001"))
    stock.put_away(room.unit, stock.PutAway(title="crank", text="AB-0123"))
    cards.adopt(room.unit, cards.Adopt(text="]C0AB\u20110123 ", code="D001"))
    assert (Alias("AB0123", "D001", "AB-0123"),) == room.unit.find(Alias)
    assert events.CardAdopted(code="D001", text="AB-0123", before="D001") == room.unit.ledger[-1]


def test_a_new_slot_never_takes_an_adopted_text():
    """Slots whose code or card text is the alias of another slot are not made."""
    for text in ("D008", slot_code.card_text("D008")):
        room = RoomInMemory()
        cards.adopt(room.unit, cards.Adopt(text=text, code="D001"))
        assert "ambiguous" == refused(stock.add_slots, room.unit, "D", stock.AddSlots(count=2))
        assert (6, ["D007"]) == (
            len(room.unit.find(Slot)),
            [s.code for s in stock.add_slots(room.unit, "D", stock.AddSlots(count=1))],
        )


@pytest.mark.parametrize("seed", range(20))
def test_no_single_unchecked_reading_ever_moves_a_thing(seed):
    """In random days of adopted and checked cards every change stands on a check, two engines or two looks."""
    chance = random.Random(seed)
    codes = ("D001", "D002", "D003")
    room = adopting(*codes, scan_at_bin=seed % 2 == 0)
    first, second = room.order("1", "D001", "D002"), room.order("2", "D003")
    walk = room.round()
    room.parcel(first if seed % 3 else second)
    changes = 0
    for _ in range(60):
        code, station = chance.choice(codes), chance.choice(("bin", "table", "tray", "shelf"))
        checked, both = chance.random() < 0.1, chance.random() < 0.1
        text = slot_code.card_text(code) if checked else code
        spot = {"bin": {"round": walk.id}, "shelf": {"bin": "A-1-1"}}.get(station, {})
        place = {"bin": walk.id, "table": "main"}.get(station, spot.get("bin", ""))
        before, last = things(room), room.unit.last_scan(station, place)
        answer = room.read(station, text, agreed=(text,) if both else (), **spot)
        if things(room) != before:
            changes += 1
            assert checked or both or (last is not None and last.code == code), answer
    assert changes > 3
    assert 60 == len(room.unit.find(Scan))


# A card is printed again


def test_a_damaged_card_in_hand_is_printed_again():
    """Its text, read from it, is proof that it is in hand; the ledger keeps that a second one was printed."""
    room = RoomInMemory("D001")
    slot, section = cards.reprint(room.unit, "D001", cards.Reprint(text=slot_code.card_text("D001")))
    assert ("D001", "Derailleurs") == (slot.code, section.name)
    assert events.CardReprinted(code="D001", lost=None) == room.unit.ledger[-1]


def test_an_adopted_card_is_printed_again_by_its_own_text():
    """The text on the worn card of another system counts; the new card has our check."""
    room = adopting("D001")
    cards.adopt(room.unit, cards.Adopt(text="BOX-17", code="D001"))
    assert "D001" == cards.reprint(room.unit, "D001", cards.Reprint(text="box-17"))[0].code


def test_a_lost_card_is_printed_again_only_while_its_item_stands_there():
    """Declared lost first, and never for an empty slot: there its number rests until the card is seen."""
    room = RoomInMemory("D001")
    looked = {"lost": "Not in the bin, not in the tray"}
    assert "not_lost" == refused(cards.reprint, room.unit, "D001", cards.Reprint(**looked))
    stock.lose_card(room.unit, "D001")
    stock.lose_card(room.unit, "D002")
    assert "retired" == refused(cards.reprint, room.unit, "D002", cards.Reprint(**looked))
    cards.reprint(room.unit, "D001", cards.Reprint(**looked))
    assert events.CardReprinted(code="D001", **looked) == room.unit.ledger[-1]


def test_the_new_card_of_a_lost_one_takes_its_place():
    """Its item is picked, packed and released by it, and the slot is used again once it is back in the tray."""
    room = RoomInMemory("D001")
    stock.lose_card(room.unit, "D001")
    cards.reprint(room.unit, "D001", cards.Reprint(lost="Gone"))
    room.release("1", "D001")
    assert CardState.DUE is room.slot("D001").card
    assert "accepted" == room.scan("tray", "D001")["verdict"]
    assert "D001" == stock.put_away(room.unit, stock.PutAway(title="lamp", section="D")).code


@pytest.mark.parametrize(
    ("how", "code"),
    [
        ({}, "required"),
        ({"text": slot_code.card_text("D001"), "lost": "Gone"}, "required"),
        ({"lost": "  "}, "pattern"),
        ({"text": slot_code.card_text("D002")}, "other_card"),
        ({"text": "D001"}, "bad_check"),
    ],
)
def test_a_card_is_not_printed_without_cause(how, code):
    """Neither text nor reason, both, or the text of another card: nothing is printed or recorded."""
    room = RoomInMemory("D001")
    entries = len(room.unit.ledger)
    assert code == refused(lambda: cards.reprint(room.unit, "D001", cards.Reprint.of(how)))
    assert entries == len(room.unit.ledger)


def test_there_must_be_such_a_slot():
    """A card of no slot is not printed."""
    with pytest.raises(Missing):
        cards.reprint(RoomInMemory().unit, "D999", cards.Reprint(lost="Gone"))
