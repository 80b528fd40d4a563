"""What a count comes to: for each error that is planted its finding and no other, and none in a right room."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.domain.counts.findings import Finding, FindingKind, findings, places
from scanflow.domain.counts.seen import SlotAccount
from scanflow.domain.counts.stocktake import TRAY, Certainty, How, Look, Read
from scanflow.domain.life import CardState, LineState

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
DECODED, MATCHED, UNREAD = Certainty
NAMES = ("A", "B", "C", TRAY)


def taken(code: str, bin_: str, **more: object) -> SlotAccount:
    return SlotAccount(code, bin_, True, CardState.ON_ITEM, **({"where": bin_} | more))


def free(code: str, bin_: str, card: CardState = CardState.TRAY) -> SlotAccount:
    return SlotAccount(code, bin_, False, card, bin_)


ROOM = {
    each.code: each
    for each in (
        *(taken("D001", "A"), taken("D002", "A"), taken("D003", "B"), taken("D004", "B"), taken("D005", "C")),
        *(free("D006", "C"), free("D007", "A"), free("D008", "B", CardState.DUE)),
    )
}
RIGHT = {"A": ["D001", "D002"], "B": ["D003", "D004"], "C": ["D005"], TRAY: ["D006", "D007"]}


def read(text: str, certainty: Certainty = DECODED) -> Read:
    return Read(text, text if text in ROOM or text == "D001" else None, certainty)


def look(place: str, *reads: str | Read, key: str = "", unread: int = 0, **more: object) -> Look:
    cards = tuple(read(each) if isinstance(each, str) else each for each in reads)
    nothing = (Read("", None, UNREAD),) * unread
    return Look(key or f"look-{place}", "", "count", place, NOON, How.PHOTO, cards + nothing, **more)


def looks(**changed: list[str]) -> list[Look]:
    """Every place photographed and gone through by hand, as it should be but for those that are given."""
    return [
        replace(look(place, *codes, key=f"{place}-{how}"), how=how)
        for place, codes in (RIGHT | changed).items()
        for how in (How.PHOTO, How.WEDGE)
    ]


def ids(seen: list[Look], **more: object) -> list[str]:
    return [each.id for each in findings(NAMES, {**ROOM, **more.pop("room", {})}, seen, **more)]


BACK = {"D008": replace(ROOM["D008"], card=CardState.ON_ITEM, taken=True)}
"""So that its card is not due."""


@pytest.mark.parametrize("places", [NAMES, NAMES[:3], NAMES[3:]])
def test_a_right_room_has_no_findings(places):
    """Nor has a part of it; the one card that is due is, where the tray was looked at."""
    found = findings(places, ROOM, [each for each in looks() if each.place in places])
    assert ["card_due-D008"] * (TRAY in places) == [each.id for each in found]


def planted(what: dict[str, list[str]]) -> list[str]:
    """The findings of a room that is right but for this, the due card apart."""
    return [each for each in ids(looks(**what)) if each != "card_due-D008"]


@pytest.mark.parametrize(
    ("what", "expected"),
    [
        ({"A": ["D001"]}, "missing-D002"),
        ({TRAY: ["D006"]}, "missing-D007"),
        ({"A": ["D001"], "B": ["D002", "D003", "D004"]}, "elsewhere-D002"),
        ({"B": ["D002", "D003", "D004"]}, "twin-D002"),
        ({"A": ["D001", "D002", "D002"]}, "twin-D002"),
        ({"A": ["D001", "D002", "D007"], TRAY: ["D006"]}, "slot_free-D007"),
        ({"A": ["D001"], TRAY: ["D002", "D006", "D007"]}, "in_tray-D002"),
        ({"A": ["D001", "D002", "Q0771"]}, "unknown-Q0771"),
    ],
)
def test_an_error_that_is_planted_is_found_and_nothing_else(what, expected):
    """One of each kind."""
    assert [expected] == planted(what)


def test_a_card_that_is_due_may_lie_in_the_tray_or_on_a_shelf():
    """Nobody said that it is back; on a shelf it is one whose slot is free."""
    in_tray, on_shelf = looks(tray=["D006", "D007", "D008"]), looks(B=["D003", "D004", "D008"])
    assert (["card_due-D008"], ["slot_free-D008"]) == (ids(in_tray), ids(on_shelf))
    assert [(TRAY,)] == [each.places for each in findings(NAMES, ROOM, in_tray)]


@pytest.mark.parametrize("line", [LineState.PICKED, LineState.PACKED])
def test_a_thing_under_way_is_suspect_on_its_shelf_and_not_missing_elsewhere(line):
    """Its card on the shelf says that something else was taken; off the shelf is where it should be."""
    away = {"D001": replace(ROOM["D001"], line=line, away=True)}
    assert ["card_due-D008", "suspect-D001"] == ids(looks(), room=away)
    assert ["card_due-D008"] == ids(looks(A=["D002"]), room=away)


def test_a_thing_that_a_person_doubts_is_suspect():
    """Its card is where it belongs, and hangs on another thing."""
    assert ["suspect-D001"] == ids([look("A", replace(read("D001"), doubted=True), "D002")])


def test_what_was_seen_in_another_bin_last_is_missing_only_when_that_was_looked_at():
    """A shelf scan saw it in C: until somebody looked there too, it may be there."""
    room = {"D001": replace(ROOM["D001"], where="C")}
    seen = looks(A=["D002"])
    assert ["missing-D001", "card_due-D008"] == ids(seen, room=room)
    assert ["card_due-D008"] == ids([each for each in seen if each.place != "C"], room=room)


def test_nothing_is_missing_where_a_card_can_not_be_read():
    """Somebody has to look; the finding says how many cards are read, unread and expected."""
    seen = [look("A", "D001", unread=1)]
    assert [Finding(FindingKind.UNREADABLE, "A", "A", ("A",), UNREAD, ("look-A",), 1, 1, 2)] == list(
        findings(NAMES, ROOM, seen)
    )


def test_what_could_not_be_read_and_is_no_card_leaves_the_rest_missing_by_hand_alone():
    """A person says so: what was held up is all there is then, but what a photo lacks may be hidden still."""
    photo = look("A", "D001", unread=1)
    by_hand = replace(photo, how=How.WEDGE)
    assert (["unreadable-A"], ["missing-D002"]) == (ids([by_hand]), ids([by_hand], settled={"A"}))
    assert ["unreadable-A"] == ids([photo], settled={"A"})


@pytest.mark.parametrize(
    ("seen", "expected"),
    [
        ([look("B", "D003")], "unreadable-B"),
        ([look("B", "D003", key=str(each)) for each in range(9)], "unreadable-B"),
        ([replace(look("B", "D003"), how=How.WEDGE)], "missing-D004"),
        ([look("B", "D003", key="1", unread=3), replace(look("B", "D003", key="2"), how=How.WEDGE)], "missing-D004"),
        ([replace(look("B", "D003", unread=1), how=How.WEDGE)], "unreadable-B"),
        ([replace(look("B", "D003"), how=How.TYPED, whole=False)], ""),
    ],
    ids=["one photo", "nine photos", "by hand", "by hand after a photo", "by hand but for one", "a card by hand"],
)
def test_what_photos_do_not_show_may_be_hidden(seen, expected):
    """Only going through the bin by hand calls a thing missing, whatever a photo could not read; else look again."""
    assert [expected] * bool(expected) == [each for each in ids(seen) if "Q" not in each]


def test_an_unread_label_where_nothing_is_missed_is_no_finding():
    """All cards that should be there were read: it may be any label."""
    assert [] == ids([look("A", "D001", "D002", unread=2)])


def test_a_closer_look_reads_what_another_could_not():
    """It shows a part again: what it reads beyond the first the first could not read; nothing is missing by it."""
    first = look("A", "D001", key="1", unread=1)
    assert [] == ids([first, look("A", "D002", key="2", closer="1")])
    assert ["unreadable-A"] == ids([first, look("A", "D001", key="2", closer="1")])
    assert [] == ids([look("A", "D001", key="2", closer="1")])


def test_a_look_that_reads_all_and_as_many_more_stands_for_the_other():
    """Another that only reads other cards may show another part, so its unread card stays."""
    first = look("B", "D003", key="1", unread=1)
    assert [] == ids([first, look("B", "D003", "D004", key="2")])
    assert ["unreadable-B"] == ids([first, look("B", "D003", key="2")])


def test_a_look_at_a_part_makes_nothing_missing():
    """Only cards that were held up."""
    assert [] == ids([look("A", "D001", whole=False)])


def test_what_rests_on_a_matched_card_says_so():
    """One decoded look at the same place is enough; of twins both must be decoded."""
    stray = read("D003", MATCHED)
    seen = [look("A", "D001", "D002", stray)]
    assert [MATCHED] == [each.certainty for each in findings(NAMES, ROOM, seen)]
    closer = look("A", "D003", key="2", whole=False)
    assert [DECODED] == [each.certainty for each in findings(NAMES, ROOM, [*seen, closer])]
    twin = findings(NAMES, ROOM, [*seen, look("B", "D003", "D004")])
    assert [(FindingKind.TWIN, MATCHED)] == [(each.kind, each.certainty) for each in twin]


def test_a_matched_card_in_its_own_bin_is_there():
    """It is not missing, and no finding."""
    assert [] == ids([look("A", "D001", read("D002", MATCHED))])


def test_a_slot_that_changed_since_is_left_out():
    """Whether it was missed, or seen where it no longer should be."""
    assert [] == ids([look("A", "D001", "D003")], changed={"D002", "D003"})


def test_a_place_counts_what_is_expected_and_read():
    """For the progress of a count and for its report."""
    known = places(NAMES, ROOM, [look("A", "D001", "Q0771", unread=1)])
    here = known["A"]
    assert (2, 2, 1, {"D002"}, True, False) == (
        len(here.expected),
        len(here.read),
        here.unread,
        here.unseen,
        here.looked,
        here.well,
    )
    assert not known["B"].looked


PLACES = st.sampled_from(NAMES)
READS = st.builds(read, st.sampled_from([*ROOM, "Q0771"]), st.sampled_from([DECODED, MATCHED]))
LOOKS = st.lists(
    st.builds(
        lambda how, place, reads, unread, whole: replace(look(place, *reads, unread=unread, whole=whole), how=how),
        st.sampled_from([How.PHOTO, How.WEDGE]),
        PLACES,
        st.lists(READS, max_size=6),
        st.integers(0, 2),
        st.booleans(),
    ),
    max_size=6,
).map(lambda seen: [replace(each, key=f"look-{number}") for number, each in enumerate(seen)])


@given(LOOKS, st.randoms(use_true_random=False))
def test_the_order_of_looks_does_not_matter(seen, random):
    """The same looks in any order come to the same findings."""
    mixed = random.sample(seen, len(seen))
    assert findings(NAMES, ROOM, seen) == findings(NAMES, ROOM, mixed)


@given(LOOKS)
def test_what_was_not_looked_at_is_never_missing(seen):
    """Nor what nobody went through by hand; and of each slot there is one finding at most."""
    found = findings(NAMES, ROOM, seen)
    by_hand = {each.place for each in seen if each.whole and each.how is How.WEDGE}
    assert {each.bin for each in found if each.kind is FindingKind.MISSING} <= by_hand
    subjects = [each.subject for each in found]
    assert len(subjects) == len(set(subjects))
    everything = {each.code or each.text for one in seen for each in one.reads}
    assert everything.isdisjoint(each.subject for each in found if each.kind is FindingKind.MISSING)


@given(st.data())
def test_a_right_room_has_no_findings_however_it_is_looked_at(data):
    """Any split of what stands there over any number of looks, decoded or matched, some places not looked at."""
    seen = []
    for place in data.draw(st.lists(PLACES, unique=True)):
        cards = [read(code, data.draw(st.sampled_from([DECODED, MATCHED]))) for code in RIGHT[place]]
        cut = data.draw(st.integers(0, len(cards)))
        seen += [look(place, *cards[:cut], key=f"{place}1"), look(place, *cards[cut:], key=f"{place}2")]
    assert [] == ids(seen, room=BACK | {"D008": replace(BACK["D008"], away=True)})


@given(LOOKS, st.sets(st.sampled_from([*ROOM])))
def test_a_finding_is_kept_as_it_is(seen, changed):
    """As JSON and back; and none is about a slot that changed."""
    found = findings(NAMES, ROOM, seen, changed)
    assert found == tuple(Finding.from_dict(each.as_dict()) for each in found)
    assert changed.isdisjoint(each.code for each in found)


SHELF = {each.code: each for each in (taken("D001", "A-1-1"), taken("D002", "A-1-2"), taken("D003", "A-1-5"))}
SHELF_NAMES = ("A-1-1", "A-1-2", "A-1-3", "A-1-5")


def shelf(*seen: Look) -> list[tuple[str, tuple[str, ...]]]:
    """What is amiss on a shelf of bins, with where it was seen, what one photo does not show apart."""
    found = findings(SHELF_NAMES, SHELF, seen)
    return [(each.id, each.places) for each in found if each.kind is not FindingKind.UNREADABLE]


def on(code: str, *bins: str) -> Read:
    return Read(code, code, DECODED, bins=bins)


def test_a_card_counts_where_labels_have_it_whosever_photo_shows_it():
    """The neighbour's card in a bin's photo is in its own bin; one of that bin is elsewhere in its own bin's photo."""
    assert [] == shelf(look("A-1-1", on("D001", "A-1-1"), on("D002", "A-1-2")), look("A-1-2", on("D002", "A-1-2")))
    assert [("elsewhere-D002", ("A-1-1",))] == shelf(look("A-1-2", on("D002", "A-1-1")))
    twin = shelf(look("A-1-1", on("D001", "A-1-1"), on("D001", "A-1-2")))
    assert [("twin-D001", ("A-1-1", "A-1-2"))] == twin


def test_a_card_that_hangs_in_one_of_two_bins_is_no_finding_where_one_is_right():
    """Its own bin, or where another look surely has it; else it is elsewhere, in the likelier of the two."""
    assert [] == shelf(look("A-1-2", on("D001", "A-1-2", "A-1-1")))
    sure = look("A-1-1", on("D001", "A-1-2"), key="1")
    assert [("elsewhere-D001", ("A-1-2",))] == shelf(sure, look("A-1-2", on("D001", "A-1-1", "A-1-2"), key="2"))
    assert [("elsewhere-D003", ("A-1-2",))] == shelf(look("A-1-2", on("D003", "A-1-2", "A-1-1")))
    both = [look("A-1-1", on("D003", "A-1-1", "A-1-2"), key="1"), look("A-1-2", on("D003", "A-1-2", "A-1-1"), key="2")]
    assert [("elsewhere-D003", ("A-1-1",))] == shelf(*both)


def test_a_card_that_three_photos_show_is_where_most_may_have_it():
    """It hangs in the middle one of the bins, and the outer two show it from their sides."""
    sides = [("A-1-1", "A-1-2"), ("A-1-3", "A-1-2")]
    seen = [look(where[0], on("D003", *where), key=where[0]) for where in sides]
    assert [("elsewhere-D003", ("A-1-2",))] == shelf(*seen)


def test_a_thing_under_way_that_may_hang_in_its_own_bin_is_suspect_there():
    """Not elsewhere: it is its own bin that it may hang in."""
    away = {"D001": replace(SHELF["D001"], line=LineState.PICKED, away=True)}
    seen = look("A-1-2", on("D001", "A-1-2", "A-1-1"))
    found = findings(SHELF_NAMES, SHELF | away, [seen])
    assert [("suspect-D001", ("A-1-1",))] == [(each.id, each.places) for each in found if each.code]


def test_photos_of_neighbours_that_show_a_same_card_overlap():
    """Without labels nothing of what both may show is twice there or elsewhere; of bins far apart it is."""
    first = look("A-1-1", on("D001"), on("D002"))
    assert [] == shelf(first, look("A-1-2", on("D002")))
    assert [] == shelf(first, look("A-1-2", on("D001")))
    assert [] == shelf(first, look("A-1-2", on("D002", "A-1-2")))
    assert [("twin-D001", ("A-1-1", "A-1-5"))] == shelf(look("A-1-1", on("D001")), look("A-1-5", on("D001")))


def test_a_neighbours_card_without_labels_is_elsewhere_once_its_own_bin_was_looked_into():
    """Before, it may hang there and only show in the photo; what a hand held, labels tell, or is far off is told."""
    assert [] == shelf(look("A-1-1", on("D001"), on("D002")))
    elsewhere = [("elsewhere-D002", ("A-1-1",))]
    assert elsewhere == shelf(look("A-1-1", on("D001"), on("D002")), look("A-1-2"))
    assert elsewhere == shelf(look("A-1-1", on("D002", "A-1-1")))
    assert elsewhere == shelf(replace(look("A-1-1", on("D001"), on("D002")), how=How.WEDGE))
    assert [("elsewhere-D001", ("A-1-5",))] == shelf(look("A-1-5", on("D001")))


def test_a_card_in_the_hand_tells_that_a_photo_shows_its_bin_too():
    """Held up in its own bin, it is no twin for being in the photo of the bin beside; far off it is."""
    held = replace(look("A-1-2", on("D002")), how=How.WEDGE)
    assert [] == shelf(look("A-1-1", on("D001"), on("D002")), held)
    assert [("twin-D002", ("A-1-2", "A-1-5"))] == shelf(look("A-1-5", on("D002")), held)


def test_what_is_held_in_the_hand_is_where_it_was_held():
    """Scans of two neighbours overlap in nothing: a card in both is a twin."""
    scanned = [replace(look(place, on("D001")), how=How.WEDGE) for place in ("A-1-1", "A-1-2")]
    assert [("twin-D001", ("A-1-1", "A-1-2"))] == [each for each in shelf(*scanned) if "missing" not in each[0]]


def test_a_neighbours_cards_are_not_this_bins():
    """Neither read nor unread ones of the bins beside it count in a place; what is seen there is not missed there."""
    beside = Read("", None, UNREAD, bins=("A-1-2",))
    known = places(SHELF_NAMES, SHELF, [look("A-1-1", on("D001", "A-1-1"), on("D002", "A-1-2"), beside)])
    assert (frozenset({"D001"}), 0) == (known["A-1-1"].read, known["A-1-1"].unread)
    assert (frozenset({"D002"}), False, frozenset()) == (
        known["A-1-2"].read,
        known["A-1-2"].looked,
        known["A-1-2"].unseen,
    )


def test_what_a_photo_shows_beside_the_area_is_not_counted():
    """A card that neither belongs in the area nor hangs in it says nothing of it; one that belongs there does."""
    beside = look("A-1-1", on("D003", "A-1-2"), on("D001", "A-1-2"))
    assert ["elsewhere-D001"] == [each.id for each in findings(("A-1-1",), SHELF, [beside])]


def test_a_due_card_may_lie_where_a_photo_of_the_tray_does_not_show_it():
    """Only a tray whose other cards are all seen, or that was gone through by hand, lacks it."""
    part = look(TRAY, "D006")
    assert [] == [each for each in ids([part]) if "card_due" in each]
    assert ["card_due-D008"] == ids([look(TRAY, "D006", "D007")])
    assert ["missing-D007", "card_due-D008"] == ids([replace(part, how=How.WEDGE)])


def again(*seen: Look) -> list[str]:
    """The bins of a shelf to look at again because one card may hang there or beside."""
    return [each.subject for each in findings(SHELF_NAMES, SHELF, seen) if each.doubtful]


def test_a_single_card_in_two_photos_does_not_say_that_it_is_one():
    """Without labels somebody looks where it does not belong: two cards there would be a twin, by hand found or not."""
    both = look("A-1-1", on("D001")), look("A-1-2", on("D001"), on("D002"))
    assert (["A-1-2"], []) == (again(*both), shelf(*both))
    held = replace(look("A-1-2", on("D002"), key="hand"), how=How.WEDGE)
    assert ([], []) == (again(*both, held), shelf(*both, held))
    held = replace(look("A-1-2", on("D001"), on("D002"), key="hand"), how=How.WEDGE)
    assert ([], [("elsewhere-D001", ("A-1-2",))]) == (again(*both, held), shelf(*both, held))


def test_photos_with_more_in_common_or_with_labels_overlap_for_sure():
    """Two cards that both show are the photos' edge; where labels tell there is nothing to ask."""
    assert [] == again(look("A-1-1", on("D001"), on("D002")), look("A-1-2", on("D001"), on("D002")))
    assert [] == again(look("A-1-1", on("D001", "A-1-1")), look("A-1-2", on("D001", "A-1-1"), on("D002", "A-1-2")))
