"""A count is opened, looked into, ended; what changes meanwhile is left out; its photos go when their time is up."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from count_in_memory import CountInMemory
from memory import NOON
from scipy.stats import binomtest

from labels.slot_code import bin_text, card_text
from scanflow.domain import events
from scanflow.domain.counts.stocktake import Certainty, How, Look, Stocktake
from scanflow.domain.life import NotAllowed
from scanflow.domain.things import Item, Photo
from scanflow.workflow import orders, stock
from scanflow.workflow.counts import looks, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.ports import Invalid, Missing, Refused, Settings
from scanflow.workflow.stock import cards

ALL = ("D001", "D002", "D003", "D004")


def refused(call, *args, **more):
    """The code of the refusal that the call meets."""
    with pytest.raises((Refused, Invalid)) as refusal:
        call(*args, **more)
    return refusal.value.code


def looked(room, **instead):
    """Everything is looked at, and right but for this."""
    places = {"A-1-1": ["D001", "D002"], "A-1-2": ["D003", "D004"], "A-1-3": [], "tray": ["D005", "D006"]}
    for place, codes in (places | {place.replace("_", "-"): codes for place, codes in instead.items()}).items():
        room.look(place, *codes)


def test_a_right_room_has_no_findings():
    """Each place was looked at, each card is where the account has it."""
    room = CountInMemory(*ALL)
    looked(room)
    assert ([], 4) == (room.found(), room.state().looked)


@pytest.mark.parametrize(
    "meanwhile",
    [
        lambda room: room.release("1001", "D001"),
        lambda room: stock.withdraw(room.unit, room.stay("D001").id, stock.Withdraw(reason="Broken")),
        lambda room: stock.move(room.unit, room.stay("D001").id, stock.Move(to="D005")),
        lambda room: stock.lose_card(room.unit, "D001"),
        lambda room: room.scan("shelf", "D001", bin="A-1-1"),
        lambda room: (room.order("1001", "D001"), room.pick("D001")),
    ],
    ids=["sold", "withdrawn", "moved", "card lost", "seen at the shelf", "picked"],
)
def test_what_changes_in_the_middle_of_a_count_is_no_finding(meanwhile):
    """Whether it was looked for before or afterwards: between the beginning and now its slot changed."""
    before, after = CountInMemory(*ALL), CountInMemory(*ALL)
    looked(before, A_1_1=["D002"])
    assert ["missing-D001"] == before.found()
    for room in (before, after):
        meanwhile(room)
    looked(after, A_1_1=["D002"], A_1_3=["D001"])
    assert ([], []) == tuple([each for each in room.found() if "D005" not in each] for room in (before, after))


def test_what_is_put_away_in_the_middle_of_a_count_is_no_finding():
    """Its bin was looked at while its card was still in the tray."""
    room = CountInMemory(*ALL)
    looked(room, tray=["D006"])
    assert ["missing-D005"] == room.found()
    room.put_away("D005")
    assert [] == room.found()


@pytest.mark.parametrize(
    "meanwhile",
    [
        lambda room: room.order("1001", "D001"),
        lambda room: room.scan("shelf", "D001", bin="A-1-3"),
        lambda room: room.scan("tray", "D001"),
        lambda room: stock.change_item(room.unit, room.stay("D001").id, stock.ChangeItem(title="Another title")),
    ],
    ids=["ordered", "refused at the shelf", "refused at the tray", "renamed"],
)
def test_what_moves_nothing_leaves_no_finding_out(meanwhile):
    """An order, a new name and a refused scan say nothing of where the thing is."""
    room = CountInMemory(*ALL)
    looked(room, A_1_1=["D002"])
    meanwhile(room)
    assert ["missing-D001"] == room.found()


def test_what_was_picked_before_is_not_missing():
    """It is under way, and so are things at the table that wait to be put back."""
    room = CountInMemory(*ALL)
    order = room.order("1001", "D001", "D002")
    room.pick("D001", "D002")
    orders.cancel(room.unit, order.id, orders.Cancel(line=room.line("D002").id))
    room.open()
    looked(room, A_1_1=[])
    assert [] == room.found()


def test_looks_are_counted_once():
    """The same key with the same look is one; with another it is refused, in this count and in any."""
    room = CountInMemory(*ALL)
    first = room.look("A-1-1", "D001", key="phone-1")
    assert first == room.look("A-1-1", "D001", key="phone-1")
    assert (first,) == room.unit.find(Look)
    assert "key_reused" == refused(room.look, "A-1-1", "D002", key="phone-1")
    room.open("tray")
    assert "key_reused" == refused(room.look, "A-1-1", "D001", key="phone-1")


def test_which_place_a_look_shows():
    """As it is said in any case; by the one label in view; by the area where that is one place."""
    room = CountInMemory(*ALL)
    assert "A-1-2" == room.look("a-1-2").place
    assert "A-1-1" == room.look(None, bin_text("A-1-1"), "D001").place
    assert "A-1-1" == room.look("A-1-1", bin_text("A-1-2"), bin_text("A-1-1")).place
    assert "other_bin" == refused(room.look, "A-1-1", bin_text("A-1-2"))
    assert "many_bins" == refused(room.look, None, bin_text("A-1-1"), bin_text("A-1-2"))
    assert "required" == refused(room.look, None, "D001")
    assert "not_in_area" == refused(room.look, "Z-1-1")
    room.open("bin:A-1-2")
    assert "A-1-2" == room.look(None, "D003").place
    assert "not_in_area" == refused(room.look, "tray")


def bars(x, y, length=200.0):
    """The corners of bars about this point of a picture."""
    return (x - length / 2, y, x + length / 2, y, x + length / 2, y + 60, x - length / 2, y + 60)


def pictured(room, labels, cards, **said):
    """A picture of 3000 x 2000 pixels with these bins' labels and cards at places across it."""
    texts = [looks.LabelReading(bin_text(name), corners=bars(x, 1800)) for name, x in labels.items()]
    texts += [looks.LabelReading(card_text(code), corners=bars(x, 600)) for code, x in cards.items()]
    shown = looks.IncomingLook("k", "b", tuple(texts), image=True, size=(3000, 2000), how=How.PHOTO, **said)
    return looks.look(room.unit, room.count.id, shown)


def test_of_several_labels_the_middle_one_says_the_bin_and_each_card_hangs_in_the_nearest():
    """Whether its own label was read or its neighbours' alone; a card half way between two may hang in either."""
    labels, cards = {"A-1-1": 500.0, "A-1-2": 1500.0, "A-1-3": 2500.0}, {"D001": 480.0, "D003": 1480.0, "D004": 2020.0}
    for named in (labels, {name: labels[name] for name in ("A-1-1", "A-1-3")}):
        room = CountInMemory(*ALL)
        seen = pictured(room, named, cards)
        assert "A-1-2" == seen.place
        assert [("A-1-1",), ("A-1-2",), ("A-1-3", "A-1-2")] == [read.bins for read in seen.reads]
        assert [] == [each for each in room.found() if "unreadable" not in each]
    assert "A-1-2" == pictured(CountInMemory(*ALL), {"A-1-1": 500.0, "A-1-3": 2500.0}, cards, place="A-1-2").place


def test_one_label_at_the_side_of_a_picture_is_a_neighbours():
    """It says nothing, and contradicts nobody; in the middle it does both."""
    side, middle = {"A-1-1": 500.0}, {"A-1-1": 1200.0}
    assert "required" == refused(pictured, CountInMemory(*ALL), side, {})
    assert "A-1-2" == pictured(CountInMemory(*ALL), side, {}, place="A-1-2").place
    assert "A-1-1" == pictured(CountInMemory(*ALL), middle, {}).place
    assert "other_bin" == refused(pictured, CountInMemory(*ALL), middle, {}, place="A-1-2")


def test_a_bin_that_the_middle_of_the_picture_can_not_show_is_refused():
    """Labels to the left of a gap in the row: nothing hangs there."""
    room = CountInMemory(*ALL)
    assert "not_in_area" == refused(pictured, room, {"A-1-2": 100.0, "A-1-3": 700.0}, {"D001": 1500.0})


def test_only_codes_of_the_shop_count_in_a_picture():
    """A slip, a wrong check and any other code are left out there; a whole card that the shop lacks is unknown."""
    room = CountInMemory(*ALL)
    seen = room.look("A-1-1", "D001", "D0019", "ORD000123", "2012345678903", "HELLO", "Q0771", image=True)
    assert [("D0016", "D001"), ("Q0771", None)] == [(read.text, read.code) for read in seen.reads]
    for text, code in (("D0019", "bad_check"), ("ORD000123", "unknown_code"), ("HELLO", "unknown_code")):
        assert code == refused(room.look, "A-1-1", text)


def test_a_double_beep_is_one_card():
    """A scanner that says it twice saw one."""
    room = CountInMemory(*ALL)
    assert 2 == len(room.look("A-1-1", "D001", "D001", "D002").reads)
    assert [] == room.found()


@pytest.mark.parametrize(("down", "found"), [(300.0, ["twin-D001"]), (60.0, []), (10.0, [])])
def test_one_code_at_two_places_of_a_picture_is_a_twin(down, found):
    """Two readings of one card are not: they overlap, or are two of its rows."""
    room = CountInMemory(*ALL)
    square = (0.0, 0.0, 200.0, 0.0, 200.0, 20.0, 0.0, 20.0)
    lower = tuple(each + down * (place % 2) for place, each in enumerate(square))
    shown = [looks.LabelReading("D0016", corners=corners) for corners in (square, lower)]
    shown.append(looks.LabelReading("D0024", corners=tuple(each + 1000 for each in square)))
    looks.look(
        room.unit,
        room.count.id,
        looks.IncomingLook("k", "b", tuple(shown), place="A-1-1", image=True, size=(2000, 2000)),
    )
    assert found == room.found()


def test_a_card_without_a_check_is_as_good_as_matched_until_two_engines_agree():
    """In a room of adopted cards; a bare text that no slot has is not called unknown, for nothing proves it."""
    room = CountInMemory(*ALL)
    cards.choose_check(room.unit, "none")
    cards.adopt(room.unit, cards.Adopt(text="BIKE-7", code="D001"))
    shown = (looks.LabelReading("BIKE-7"), looks.LabelReading("D002", engines=2), looks.LabelReading("D099"))
    seen = looks.look(room.unit, room.count.id, looks.IncomingLook("k", "b", shown, place="A-1-1", image=True))
    assert [("D001", Certainty.MATCHED), ("D002", Certainty.DECODED)] == [
        (read.code, read.certainty) for read in seen.reads
    ]


def test_a_closer_look_names_one_of_the_same_place():
    """Through it those of another are taken for what they show again; of another place or count it is refused."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", unread=1, key="first")
    assert ["unreadable-A-1-1"] == room.found()
    room.look("A-1-1", unread=1, closer="first", key="second")
    room.look("A-1-1", "D002", closer="second")
    assert [] == room.found()
    assert "unknown_look" == refused(room.look, "A-1-2", closer="first")
    assert "unknown_look" == refused(room.look, "A-1-1", closer="nothing")


def test_a_count_that_is_over_takes_no_look():
    """Cancelled or closed; and it is over once."""
    room = CountInMemory(*ALL)
    stocktakes.cancel(room.unit, room.count.id)
    assert "closed" == refused(room.look, "A-1-1")
    with pytest.raises(NotAllowed):
        stocktake_report.close(room.unit, room.count.id)
    with pytest.raises(Missing):
        stocktakes.state(room.unit, "nothing")


def test_a_count_itself_changes_nothing():
    """Looks are in the ledger, cards were seen where it read them, what it missed is missing, and nothing moves."""
    room = CountInMemory(*ALL)
    before = {kind: room.unit.fork().all(kind) for kind in (Item,)}
    slots = {code: replace(room.slot(code), seen=None) for code in ALL}
    looked(room, A_1_1=["D003"])
    stocktake_report.close(room.unit, room.count.id)
    assert before == {Item: room.unit.all(Item)}
    assert slots == {code: replace(room.slot(code), seen=None) for code in ALL}
    told = ["stocktake opened", *["looked"] * 4, *["doubted"] * 2, "stocktake closed"]
    assert told == [event.kind for event in room.unit.ledger[-8:]]


def picture(name):
    return Photo(name * 64, b"jpeg", b"thumb")


def test_photos_go_when_their_time_is_up():
    """A count that ended longer ago than the shop keeps photos loses them with the next; its findings stay."""
    room = CountInMemory(*ALL)
    room.unit.set_settings(Settings(photo_days=30))
    room.look("A-1-1", "D001", photo=picture("a"))
    stocktake_report.close(room.unit, room.count.id)
    first = room.count
    room.unit.at = NOON + timedelta(days=30)
    room.open("tray")
    assert 1 == len(room.unit.find(Photo))
    room.unit.at = NOON + timedelta(days=31)
    room.open("tray")
    assert ((), [None]) == (room.unit.find(Photo), [look.photo for look in room.unit.find(Look)])
    assert ["missing-D002"] == [each.finding.id for each in stocktakes.state(room.unit, first.id).found]
    assert events.PhotosDeleted(stocktake=first.id, photos=("a" * 64,)) in room.unit.ledger


def test_a_picture_that_is_used_elsewhere_stays():
    """By a thing, or by a look of another count."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", photo=picture("a"))
    room.look("A-1-1", "D001", photo=picture("b"))
    room.look("A-1-1", "D001", photo=picture("c"))
    first = room.count.id
    room.unit.put(replace(room.item("D001"), photo="a" * 64))
    room.open("tray")
    room.look("tray", photo=picture("b"))
    stocktakes.forget_photos(room.unit, first)
    assert ["a" * 64, "b" * 64] == [photo.hash for photo in room.unit.find(Photo)]


def test_a_report_is_written_once_and_says_what_was_counted():
    """By section, what agrees apart from what is missed and what nobody knew of."""
    room = CountInMemory(*ALL)
    room.look("A-1-1", "D001", "D003", "Q0771")
    room.look("A-1-2", unread=1)
    closed = stocktake_report.close(room.unit, room.count.id)
    report = stocktake_report.report(room.unit, room.state())
    # Clopper and Pearson (scipy): one of four agrees, or two if the one that is unclear is there
    low, high = binomtest(1, 4).proportion_ci().low, binomtest(2, 4).proportion_ci().high
    assert [
        {
            "section": "D",
            "expected": 6,
            "counted": 4,
            "agreed": 1,
            "unclear": 1,
            "agreement": [pytest.approx(low, abs=1e-4), pytest.approx(high, abs=1e-4)],
            "record_not_found": 2,
            "found_not_recorded": 1,
        }
    ] == report["sections"]
    assert (["A-1-3", "tray"], ["A-1-2"]) == (report["not_looked"], report["unclear"])
    assert (2, 4) == (report["looked"], report["places"])
    assert closed == room.unit.get(Stocktake, room.count.id)
