"""Cards of another system are adopted and believed after two looks; a card is printed again."""

import random

import pytest
from floor import Floor
from memory import Memory

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
    """A floor that takes cards without a check."""
    floor = Floor(*codes, **settings)
    floor.unit.settings = Settings(check="none", **settings)
    return floor


def things(floor):
    """All that a refusal may not change."""
    return [dict(floor.unit.all(kind)) for kind in (Line, Stay, Slot, Parcel)]


def on_a_round(*codes, **settings):
    floor = adopting(*codes, **settings)
    floor.order("1", *codes)
    return floor, {"round": floor.round().id}


def verdict(answer):
    return answer["verdict"], answer["reason"], answer["code"]


@pytest.mark.parametrize("via", ["wedge", "typed", "camera"])
def test_a_card_without_check_is_judged_at_its_second_look(via):
    """The first reading is refused with what to do, and changes nothing but ledger and scans; the second picks."""
    floor, spot = on_a_round("D001")
    before = things(floor)
    first = floor.read("bin", "D001", via=via, **spot)
    assert (("refused", "bad_check", "D001"), ONCE_MORE) == (verdict(first), first["advice"])
    assert (before, events.Scanned) == (things(floor), type(floor.unit.ledger[-1]))
    second = floor.read("bin", "D001", via=via, **spot)
    assert (("accepted", None, "D001"), True) == (verdict(second), second["changed"])


def test_two_engines_are_two_looks():
    """A photograph that both decoders read is judged at once, one that a single decoder read is not."""
    floor, spot = on_a_round("D001", "D002")
    one = floor.read("bin", "D001", image=True, **spot)
    two = floor.read("bin", "D002", image=True, agreed=("D002",), **spot)
    assert ["bad_check", None] == [one["reason"], two["reason"]]


def test_a_checked_card_needs_no_second_look():
    """Cards with our check digit go on as ever beside adopted ones."""
    floor, spot = on_a_round("D001")
    assert "accepted" == floor.scan("bin", "D001", **spot)["verdict"]


def test_another_card_between_two_looks_starts_again():
    """Looks agree only when nothing else was scanned at that spot meanwhile; other stations don't count."""
    floor, spot = on_a_round("D001", "D002")
    floor.read("bin", "D001", **spot)
    floor.read("bin", "D002", **spot)
    floor.read("tray", "D001")
    assert "bad_check" == floor.read("bin", "D001", **spot)["reason"]
    floor.read("tray", "D002")
    assert "accepted" == floor.read("bin", "D001", **spot)["verdict"]


def test_a_double_beep_after_acceptance_stays_accepted():
    """The third beep of the same adopted card is accepted and changes nothing."""
    floor, spot = on_a_round("D001")
    answers = [floor.read("bin", "D001", **spot) for _ in range(4)]
    assert [("bad_check", False), (None, True), (None, False), (None, False)] == [
        (answer["reason"], answer["changed"]) for answer in answers
    ]


def test_the_main_job_with_an_alias():
    """Put away, picked, packed, released and back in the tray by a text that knows nothing of slot codes."""
    floor = adopting()
    assert Alias("BOX17", "D002", "BOX-17") == cards.adopt(floor.unit, cards.Adopt(text="BOX-17", code="D002"))
    stock.put_away(floor.unit, stock.PutAway(title="crank", text="BOX-17"))
    order = floor.order("1", "D002")
    spot = {"round": floor.round().id}
    picks = [floor.read("bin", "BOX-17", **spot) for _ in range(2)]
    floor.parcel(order)
    packs = [floor.read("table", text) for text in ("]A0BOX-17", "BOX-17")]
    back = [floor.read("tray", "box-17") for _ in range(2)]
    assert ["picked", ["D002"], CardState.TRAY] == [
        picks[1]["line_state"],
        packs[1]["released"],
        floor.slot("D002").card,
    ]
    assert ["bad_check"] * 3 == [looks[0]["reason"] for looks in (picks, packs, back)]
    assert ("box-17",) == floor.unit.ledger[-1].text


def test_two_looks_never_move_another_orders_thing():
    """Both looks at a card of another order are refused, and no line moves."""
    floor, spot = on_a_round("D001")
    other = floor.order("2", "D002") if floor.put_away("D002") else None
    for _ in range(2):
        floor.read("bin", "D001", **spot)
    floor.parcel(other)
    before = [dict(floor.unit.all(kind)) for kind in (Line, Stay, Parcel)]
    assert ["bad_check", "other_order"] == [floor.read("table", "D001")["reason"] for _ in range(2)]
    assert before == [dict(floor.unit.all(kind)) for kind in (Line, Stay, Parcel)]
    seen = floor.slot("D001").seen
    assert ("table", "main", False) == (seen.station, seen.place, seen.accepted)


def test_two_cards_in_view_are_too_many():
    """An adopted card beside a checked one is refused, as any two are."""
    floor, spot = on_a_round("D001", "D002")
    assert "many_codes" == floor.read("bin", "D001", slot_code.card_text("D002"), image=True, **spot)["reason"]


@pytest.mark.parametrize(("text", "reason"), [("D0146", "bad_check"), ("D999", "unknown_code"), ("?", "unknown_code")])
def test_what_names_no_card_is_refused_as_ever(text, reason):
    """A wrong check digit, a number that is not there, another thing's code: also a second time."""
    floor, spot = on_a_round("D001")
    assert [("refused", reason, None)] * 2 == [verdict(floor.read("bin", text, **spot)) for _ in range(2)]


def test_by_default_a_card_without_check_is_never_taken():
    """Where the setting was not changed neither a bare code nor an alias is a card, however often it is shown."""
    floor = Floor("D001")
    cards.adopt(floor.unit, cards.Adopt(text="BOX-17", code="D001"))
    floor.order("1", "D001")
    spot = {"round": floor.round().id}
    texts = ("D001", "D001", "BOX-17", "BOX-17")
    said = [verdict(floor.read("bin", text, agreed=(text,), **spot)) for text in texts]
    assert [("refused", "bad_check", None)] * 2 + [("refused", "unknown_code", None)] * 2 == said
    assert "bad_check" == refused(stock.put_away, floor.unit, stock.PutAway(title="lamp", text="D002"))


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
    floor = Floor()
    said = {"text": text, "code": "D001"}
    assert code == refused(lambda: cards.adopt(floor.unit, cards.Adopt.of(said)))
    assert () == floor.unit.find(Alias)


def test_a_text_is_adopted_once_and_given_on_only_while_nothing_stands_there():
    """The same again changes nothing; another slot gets the text unless an item stands in the first."""
    floor = Floor()
    cards.adopt(floor.unit, cards.Adopt(text="17", code="D001"))
    entries = len(floor.unit.ledger)
    cards.adopt(floor.unit, cards.Adopt(text="17", code="D001"))
    assert entries == len(floor.unit.ledger)
    cards.adopt(floor.unit, cards.Adopt(text="17", code="D002"))
    floor.put_away("D002")
    assert "taken" == refused(cards.adopt, floor.unit, cards.Adopt(text="17", code="D003"))
    assert (Alias("17", "D002", "17"),) == floor.unit.find(Alias)
    with pytest.raises(Missing):
        cards.adopt(floor.unit, cards.Adopt(text="18", code="D999"))


def test_texts_that_no_scan_tells_apart_are_one_card():
    """A text that differs from another slot's only in hyphens, spaces or case is refused, and says of which card."""
    floor = Floor()
    cards.adopt(floor.unit, cards.Adopt(text="AB-0123", code="D001"))
    for text in ("AB0123", "AB 0123", "ab-0123", "A-B0123"):
        with pytest.raises(Refused, match="differs from AB-0123, the card of D001") as refusal:
            cards.adopt(floor.unit, cards.Adopt(text=text, code="D002"))
        assert "ambiguous" == refusal.value.code
    assert (Alias("AB0123", "D001", "AB-0123"),) == floor.unit.find(Alias)


def test_how_a_card_is_printed_can_be_put_right():
    """Adopted once more for its own slot, while its item stands there too, a text is kept as it is printed now."""
    floor = adopting()
    cards.adopt(floor.unit, cards.Adopt(text="AB0123", code="D001"))
    stock.put_away(floor.unit, stock.PutAway(title="crank", text="AB-0123"))
    cards.adopt(floor.unit, cards.Adopt(text="]C0AB\u20110123 ", code="D001"))
    assert (Alias("AB0123", "D001", "AB-0123"),) == floor.unit.find(Alias)
    assert events.CardAdopted(code="D001", text="AB-0123", before="D001") == floor.unit.ledger[-1]


def test_a_new_slot_never_takes_an_adopted_text():
    """Slots whose code or card text is the alias of another slot are not made."""
    for text in ("D008", slot_code.card_text("D008")):
        floor = Floor()
        cards.adopt(floor.unit, cards.Adopt(text=text, code="D001"))
        assert "ambiguous" == refused(stock.add_slots, floor.unit, "D", stock.AddSlots(count=2))
        assert (6, ["D007"]) == (
            len(floor.unit.find(Slot)),
            [s.code for s in stock.add_slots(floor.unit, "D", stock.AddSlots(count=1))],
        )


@pytest.mark.parametrize("seed", range(20))
def test_no_single_unchecked_reading_ever_moves_a_thing(seed):
    """In random days of adopted and checked cards every change stands on a check, two engines or two looks."""
    chance = random.Random(seed)
    codes = ("D001", "D002", "D003")
    floor = adopting(*codes, scan_at_bin=seed % 2 == 0)
    first, second = floor.order("1", "D001", "D002"), floor.order("2", "D003")
    walk = floor.round()
    floor.parcel(first if seed % 3 else second)
    changes = 0
    for _ in range(60):
        code, station = chance.choice(codes), chance.choice(("bin", "table", "tray", "shelf"))
        checked, both = chance.random() < 0.1, chance.random() < 0.1
        text = slot_code.card_text(code) if checked else code
        spot = {"bin": {"round": walk.id}, "shelf": {"bin": "A-1-1"}}.get(station, {})
        place = {"bin": walk.id, "table": "main"}.get(station, spot.get("bin", ""))
        before, last = things(floor), floor.unit.last_scan(station, place)
        answer = floor.read(station, text, agreed=(text,) if both else (), **spot)
        if things(floor) != before:
            changes += 1
            assert checked or both or (last is not None and last.code == code), answer
    assert changes > 3
    assert 60 == len(floor.unit.find(Scan))


# A card is printed again


def test_a_damaged_card_in_hand_is_printed_again():
    """Its text, read from it, is proof that it is in hand; the ledger keeps that a second one was printed."""
    floor = Floor("D001")
    slot, section = cards.reprint(floor.unit, "D001", cards.Reprint(text=slot_code.card_text("D001")))
    assert ("D001", "Derailleurs") == (slot.code, section.name)
    assert events.CardReprinted(code="D001", lost=None) == floor.unit.ledger[-1]


def test_an_adopted_card_is_printed_again_by_its_own_text():
    """The text on the worn card of another system counts; the new card has our check."""
    floor = adopting("D001")
    cards.adopt(floor.unit, cards.Adopt(text="BOX-17", code="D001"))
    assert "D001" == cards.reprint(floor.unit, "D001", cards.Reprint(text="box-17"))[0].code


def test_a_lost_card_is_printed_again_only_while_its_item_stands_there():
    """Declared lost first, and never for an empty slot: there its number rests until the card is seen."""
    floor = Floor("D001")
    looked = {"lost": "Not in the bin, not in the tray"}
    assert "not_lost" == refused(cards.reprint, floor.unit, "D001", cards.Reprint(**looked))
    stock.lose_card(floor.unit, "D001")
    stock.lose_card(floor.unit, "D002")
    assert "retired" == refused(cards.reprint, floor.unit, "D002", cards.Reprint(**looked))
    cards.reprint(floor.unit, "D001", cards.Reprint(**looked))
    assert events.CardReprinted(code="D001", **looked) == floor.unit.ledger[-1]


def test_the_new_card_of_a_lost_one_takes_its_place():
    """Its item is picked, packed and released by it, and the slot is used again once it is back in the tray."""
    floor = Floor("D001")
    stock.lose_card(floor.unit, "D001")
    cards.reprint(floor.unit, "D001", cards.Reprint(lost="Gone"))
    floor.release("1", "D001")
    assert CardState.DUE is floor.slot("D001").card
    assert "accepted" == floor.scan("tray", "D001")["verdict"]
    assert "D001" == stock.put_away(floor.unit, stock.PutAway(title="lamp", section="D")).code


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
    floor = Floor("D001")
    entries = len(floor.unit.ledger)
    assert code == refused(lambda: cards.reprint(floor.unit, "D001", cards.Reprint.of(how)))
    assert entries == len(floor.unit.ledger)


def test_there_must_be_such_a_slot():
    """A card of no slot is not printed."""
    with pytest.raises(Missing):
        cards.reprint(Floor().unit, "D999", cards.Reprint(lost="Gone"))
