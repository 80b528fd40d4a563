"""What is said beside a verdict: a sentence that tells what to do, with the names that help."""

from dataclasses import replace
from datetime import UTC, datetime
from itertools import product

import pytest

from scanflow.domain.advice import REFUSALS, acceptance, at_stop, packing_says, put_right, refusal
from scanflow.domain.life import Hold, LineState
from scanflow.domain.things import Item, Line, Order, Parcel, Sighting, Slot, Station, Stay
from scanflow.domain.verdict import Reason, Scene
from scanflow.domain.whereabouts import PlaceKind, Whereabouts

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
STAY = Stay("s", "i", "D001", 1, NOON)
LINE = Line("l", "o", 1, "D001", stay="s", state=LineState.PICKED, basket=3)
FULL = Scene(
    Station.TABLE,
    slot=Slot("D001", "D", 1, "A-1-1", turns=1),
    stay=STAY,
    line=LINE,
    where=Whereabouts(PlaceKind.BASKET, "A-1-1", basket=3),
    order=Order("o", "B-77", "", NOON, 1),
    parcel=Parcel("p", "main", ("o",), NOON),
)
BARE = Scene(Station.TABLE)

NAMED = {
    "D001": "retired slot_free not_ordered cancelled not_on_round already_picked already_packed already_released "
    "other_order not_picked not_released wrong_bin",
    "B-77": "cancelled held already_packed already_released other_order",
    "A-1-1": "not_ordered cancelled not_on_round wrong_bin",
    "basket 3": "already_picked other_order not_released",
}
"""Slot, order, bin, basket → the reasons whose sentence names it."""


def test_every_reason_has_words():
    """No reason is without its sentence."""
    assert set(Reason) == set(REFUSALS)


@pytest.mark.parametrize("reason", Reason)
def test_sentences_are_whole_and_calm(reason):
    """Full sentences at every station, nothing left to fill in, no shouting."""
    for station, take_out, state in product(Station, (False, True), LineState):
        line = replace(LINE, state=state).held(Hold.SUSPECT, "Why.")
        scene = replace(FULL, station=station, take_out=take_out, line=line)
        words = refusal(reason, scene)
        flaws = [flaw for flaw in ("{", "}", "!", "  ", "None") if flaw in words]
        assert ([], ".", True) == (flaws, words[-1], words[0].isupper())


@pytest.mark.parametrize("reason", Reason)
def test_sentences_need_nothing_to_be_known(reason):
    """Even where nothing is known of a card there are words without gaps in braces."""
    words = refusal(reason, BARE)
    assert [] == [flaw for flaw in ("{", "}", "!", "None") if flaw in words]


@pytest.mark.parametrize("name", NAMED)
def test_sentences_name_what_helps(name):
    """The slot, the order, the bin and the basket are named where they tell what to do."""
    naming = {str(reason) for reason in Reason if name in refusal(reason, FULL)}
    assert set(NAMED[name].split()) == naming


def test_a_thing_stays_at_the_bin_and_goes_back_from_the_table():
    """What nobody wants is left in its bin, or put back into it."""
    there = replace(FULL, station=Station.BIN, where=Whereabouts(PlaceKind.BIN, "A-1-1"))
    assert "Leave it in A-1-1." in refusal(Reason.NOT_ORDERED, there)
    assert "Put it back in A-1-1." in refusal(Reason.NOT_ORDERED, FULL)


@pytest.mark.parametrize("reason", [Reason.CLOSED, Reason.NOT_ORDERED, Reason.CANCELLED, Reason.NOT_ON_ROUND])
def test_what_was_taken_along_is_put_back(reason):
    """A pick that waited for the network is refused with the thing in a basket, not in its bin."""
    late = refusal(reason, replace(FULL, station=Station.BIN, late=True))
    assert ("Put it back in A-1-1." in late, "Leave" in late) == (True, False)


SINCE = (
    Reason.CLOSED,
    Reason.SLOT_FREE,
    Reason.CANCELLED,
    Reason.HELD,
    Reason.ALREADY_PICKED,
    Reason.ALREADY_PACKED,
)


@pytest.mark.parametrize("reason", Reason)
def test_a_late_refusal_says_since_when(reason):
    """Where it is known from when on the pick would have been refused, and nowhere else."""
    late = replace(FULL, station=Station.BIN, late=True)
    assert (reason in SINCE) is (" since 10:42" in refusal(reason, replace(late, since="10:42")))
    assert " since" not in refusal(reason, late)


@pytest.mark.parametrize(
    ("scene", "words"),
    [
        (replace(FULL, take_out=True), "D001 is not in the parcel."),
        (replace(FULL, line=replace(LINE, state=LineState.WAITING)), "D001 was not picked on a round."),
    ],
)
def test_not_picked_says_why(scene, words):
    """Not in the box and not picked yet are told apart."""
    assert refusal(Reason.NOT_PICKED, scene).startswith(words)


def test_a_hold_says_its_reason_or_how_the_thing_comes_out():
    """A hold is told in its own words; what was cancelled in the box is to be taken out."""
    suspect = replace(FULL, line=LINE.held(Hold.SUSPECT, "Another colour."))
    boxed = replace(FULL, line=LINE.held(Hold.CANCELLED_IN_BOX, "Cancelled."))
    assert "Order B-77 is held: Another colour. Settle it on the orders page." == refusal(Reason.HELD, suspect)
    assert "must come out of the parcel" in refusal(Reason.HELD, boxed)


def test_another_orders_thing_without_a_basket_is_laid_aside():
    """Where no basket waits for it, it is laid aside."""
    scene = replace(FULL, where=Whereabouts(PlaceKind.BIN, "A-1-1"))
    assert refusal(Reason.OTHER_ORDER, scene).endswith("Lay it aside for that order.")


@pytest.mark.parametrize(
    ("changes", "missing", "released", "words"),
    [
        ({"station": Station.BIN}, (), (), "Put it in basket 3."),
        ({"station": Station.BIN, "line": replace(LINE, basket=None)}, (), (), "Take it to the table."),
        ({"station": Station.TRAY}, (), (), "Card D001 is back in the tray. Its slot can be used again."),
        ({"station": Station.SHELF}, (), (), "D001 stands where it belongs."),
        ({"take_out": True}, (), (), "D001 is out of the parcel. Put it back in A-1-1 if it is not wanted."),
        ({}, (), ("D001", "D002"), "Parcel closed. Put back in the tray: D001, D002."),
        ({}, ("D002",), (), "Packed. Still to pack: D002."),
        ({}, (), (), "Packed. Close the parcel when it is ready."),
    ],
)
def test_a_yes_says_what_comes_next(changes, missing, released, words):
    """Each station's yes tells the next step."""
    assert words == acceptance(replace(FULL, **changes), missing, released)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"station": Station.BIN}, "Put it in basket 3. Packing: Fragile; two screws in the bag."),
        ({}, "Packed. Close the parcel when it is ready. Packing: Fragile; two screws in the bag."),
        ({"take_out": True}, "D001 is out of the parcel. Put it back in A-1-1 if it is not wanted."),
        ({"station": Station.TRAY}, "Card D001 is back in the tray. Its slot can be used again."),
    ],
)
def test_a_yes_at_bin_and_table_says_how_to_pack_the_thing(changes, said):
    """Its packing note stands behind what comes next, where the thing is on its way into a box."""
    item = Item("i", "Bell", packing="Fragile; two\nscrews in the bag")
    assert said == acceptance(replace(FULL, item=item, **changes), (), ())


@pytest.mark.parametrize(("note", "said"), [("", ""), ("Upright!", "Packing: Upright!"), (" \n", "")])
def test_a_packing_note_is_a_sentence(note, said):
    """A note that ends as a sentence gets no second full stop; none is no words."""
    assert said == packing_says(note)


IN_ITS_BIN = Whereabouts(PlaceKind.BIN, "A-1-1", order="B-77")
ELSEWHERE = Sighting(Station.SHELF, "A-1-2", False)


@pytest.mark.parametrize(
    ("where", "said"),
    [
        (IN_ITS_BIN, ""),
        (
            Whereabouts(PlaceKind.BASKET, "A-1-1", round="former", basket=3),
            "In basket 3 of an earlier round: scan it there, then put it into basket 5.",
        ),
        (
            Whereabouts(PlaceKind.BASKET, "A-1-1", round="r", basket=3),
            "In basket 3: scan it there, then put it into basket 5.",
        ),
        (
            Whereabouts(PlaceKind.TABLE, "A-1-1", name="two"),
            "On table two: scan it there, then put it into basket 5.",
        ),
        (
            replace(IN_ITS_BIN, read=ELSEWHERE),
            "Its card was seen in bin A-1-2. Look there first. Its own bin is A-1-1.",
        ),
        (
            replace(IN_ITS_BIN, read=Sighting(Station.TABLE, "two", False)),
            "Its card was seen at table two. Look there first.",
        ),
    ],
)
def test_a_stop_is_where_the_thing_is(where, said):
    """Of what is not in its own bin a stop says where it is, and what to do there."""
    assert said == at_stop(where, 5, "r")
    assert said.replace("scan it there, then ", "") == at_stop(where, 5, "r", scan=False)


@pytest.mark.parametrize(
    ("where", "thing", "said"),
    [
        (Whereabouts(PlaceKind.TABLE, "A-1-1", name="main"), True, "Put it back in A-1-1."),
        (
            replace(IN_ITS_BIN, read=ELSEWHERE),
            True,
            "Order B-77 wants it: bring it to the table, or pick it on a round.",
        ),
        (replace(IN_ITS_BIN, missing=True, read=ELSEWHERE), True, "Order B-77 still needs it: bring it to the table."),
        (replace(IN_ITS_BIN, order=None, missing=True, read=ELSEWHERE), True, "Put it back in A-1-1."),
        (replace(IN_ITS_BIN, read=Sighting(Station.TRAY, "", False)), True, "Put the card back on it."),
        (Whereabouts(PlaceKind.TRAY, "A-1-1", read=ELSEWHERE), False, "Bring it to the tray, and scan it there."),
        (
            Whereabouts(PlaceKind.TRAY, "A-1-1", read=Sighting(Station.TRAY, "", False)),
            False,
            "Look for it, and scan it into the tray.",
        ),
    ],
)
def test_what_is_out_of_place_has_a_way_back(where, thing, said):
    """A thing goes to its bin or to the order that wants it, a card to the tray."""
    assert said == put_right(where, thing=thing)
