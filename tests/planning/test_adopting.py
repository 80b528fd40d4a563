"""What a test scan of cards of another system tells."""

import pytest

from labels import slot_code
from scanflow.planning.adopting import Ambiguity, Form, Meaning, Room, TrialScan, meanings, trial

DIGITS = {"D": 3, "LP": 2}
SLOTS = frozenset(["D001", "D002", "D003", "D004", "LP01", "LP02"])


def told(texts, digits=DIGITS, slots=SLOTS, aliases=(), section="D"):
    """The trial of typed texts."""
    samples = [TrialScan(f"line {number}", text) for number, text in enumerate(texts, 1)]
    return trial(samples, Room(digits, slots, dict(aliases)), section)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("D001", [Meaning("D001", Form.BARE)]),
        ("d-00 1", [Meaning("D001", Form.BARE)]),
        (slot_code.card_text("D001"), [Meaning("D001", Form.CARD)]),
        ("BOX-17", [Meaning("D002", Form.ALIAS)]),
        ("LP01", [Meaning("LP01", Form.BARE)]),
        ("L001", []),
        ("D01", []),
    ],
)
def test_what_a_text_means(text, expected):
    """By the section's number width, by its check, or by an alias."""
    assert tuple(expected) == meanings(text, DIGITS, {"BOX17": "D002"})


def test_a_good_trial():
    """Ten cards that each name one slot: nothing to report but the slots that had no card."""
    trial_ = told(["D001", "D002", "LP01"])
    assert (True, 3, 3, ("D003", "D004")) == (trial_.good, trial_.shown, trial_.read, trial_.without_card)
    assert {Form.BARE} == {meaning.form for meaning in trial_.known.values()}


def test_engines_and_symbologies_are_counted():
    """How many each engine read, and which texts one alone read; a picture of nothing counts as unread."""
    samples = [
        TrialScan("1.jpg", "D001", "code39", "zxing-cpp+zbar"),
        TrialScan("2.jpg", "D002", "code39", "zbar"),
        TrialScan("2.jpg", "D003", "code128", "zbar"),
        TrialScan("3.jpg", None),
    ]
    trial_ = trial(samples, Room(DIGITS, SLOTS, {}), "D")
    assert (3, 2, ("3.jpg",)) == (trial_.shown, trial_.read, trial_.unread)
    assert ({"zxing-cpp+zbar": 1, "zbar": 2}, {"code39": 2, "code128": 1}) == (trial_.engines, trial_.symbologies)
    assert (("D002", "D003"), False) == (trial_.single, trial_.good)


def test_texts_of_no_slot():
    """What the room's grammar does not know, or knows but has no slot for."""
    assert ("BOX-17", "D099") == told(["D001", "BOX-17", "D099"]).unknown


@pytest.mark.parametrize(
    ("texts", "more", "expected"),
    [
        (["BOX-17", "D001"], {"aliases": {"BOX17": "D001"}}, Ambiguity("several_texts", ("BOX17", "D001"), ("D001",))),
        (["D001"], {"aliases": {"BOX17": "D001"}}, Ambiguity("several_texts", ("BOX17", "D001"), ("D001",))),
        (
            ["DO145"],
            {"digits": {"D": 3, "DO": 3}, "slots": {"D014", "DO145"}},
            Ambiguity("several_slots", ("DO145",), ("D014", "DO145")),
        ),
        (["D002"], {"aliases": {"D002": "D001"}}, Ambiguity("several_slots", ("D002",), ("D001", "D002"))),
        (
            ["D014"],
            {"digits": {"D": 3, "DO": 2}, "slots": {"D014", "DO14"}},
            Ambiguity("lookalike", ("D014", "DO14"), ("D014", "DO14")),
        ),
        (
            ["BIN1"],
            {"aliases": {"BIN1": "D001", "B1N1": "D002"}},
            Ambiguity("lookalike", ("BIN1", "B1N1"), ("D001", "D002")),
        ),
        ([slot_code.slip_text(3)], {}, Ambiguity("foreign_form", (slot_code.slip_text(3),), ())),
        ([slot_code.reference("D001", 1)], {}, Ambiguity("foreign_form", (slot_code.reference("D001", 1),), ())),
    ],
)
def test_what_is_ambiguous(texts, more, expected):
    """Two cards of a slot, two slots of a text, texts that look alike, and forms that belong to slips and listings."""
    trial_ = told(texts, **more)
    assert [expected] == [each for each in trial_.ambiguous if each.kind == expected.kind]
    assert not trial_.good


def test_the_same_card_twice_is_no_ambiguity():
    """A card that is shown twice, or written in two ways that scan alike, stays one card."""
    assert () == told(["D001", "D001", "d-001"]).ambiguous


def test_nothing_shown_is_no_success():
    """A trial without cards proves nothing."""
    assert not told([]).good
