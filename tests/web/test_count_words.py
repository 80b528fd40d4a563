"""A count in words: each finding and each way to resolve it has some, and no more is offered than can be done."""

from __future__ import annotations

from dataclasses import replace

import pytest

from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY, Certainty, Chosen
from scanflow.domain.life import LineState
from scanflow.domain.words import said
from scanflow.web.count_words import RESOLVED, agree, area, between, percent, ranges, rest, suspected, walk, ways
from scanflow.workflow.counts.report import Whole
from scanflow.workflow.counts.resolving import ACTS, NEED_REASON, WAYS


def finding(kind: FindingKind, *places: str, **more: object) -> Finding:
    return Finding(kind, "D014", "A-1-1", places, **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "words"),
    [("room", "the room"), ("tray", "the tray"), ("shelf:A-2", "shelf A-2"), ("section:D", "section D")],
)
def test_areas(text: str, words: str) -> None:
    """An area reads as people say it."""
    assert words == area(text)


@pytest.mark.parametrize(
    ("looked", "counted", "agreed", "unclear", "words"),
    [
        (9, 4, 4, 0, "All 4 cards agree."),
        (9, 1, 1, 0, "The only card agrees."),
        (9, 4, 3, 0, "3 of all 4 cards agree."),
        (9, 4, 2, 1, "2 of all 4 cards agree, 1 is unclear."),
        (8, 4, 3, 0, "With 95 % certainty, 60 % to 100 % of all cards are where the records say."),
        (8, 4, 2, 2, "With 95 % certainty, 60 % to 100 % of all cards are where the records say, 2 are unclear."),
        (0, 0, 0, 0, "No place was looked at."),
        (8, 0, 0, 0, "No card belongs in what was looked at."),
    ],
)
def test_what_agrees(looked: int, counted: int, agreed: int, unclear: int, words: str) -> None:
    """An interval is for a part; where all was looked at it is known. What nobody can say is told beside it."""
    told = replace(whole(9, 9, 0, None), looked=looked, counted=counted, agreed=agreed, unclear=unclear)
    assert words == agree(told)


def test_places_side_by_side_are_a_range() -> None:
    """On one shelf, without a gap, and more than two; none is left out."""
    names = ["A-1-9", "A-1-10", "A-1-11", "A-2-12", "A-2-13", "B-1-1", "B-1-3", "B-1-4", "B-1-5", TRAY]
    assert "A-1-9 to A-1-11, A-2-12, A-2-13, B-1-1, B-1-3 to B-1-5, the tray" == ranges(names)


@pytest.mark.parametrize("kind", FindingKind)
def test_every_kind_has_words_and_ways(kind: FindingKind) -> None:
    """What is amiss, why and what to do are whole sentences without a gap; each act of the kind is offered once."""
    shown = finding(kind, "A-1-2", read=3, unread=1, expected=4)
    told = said(shown)
    assert all(each and "{" not in each and "  " not in each for each in (told.amiss, told.why, told.todo))
    assert told.why.endswith(".") and told.todo.endswith(".")
    offered = [way.how for way in ways(shown, ACTS[shown.kind])]
    assert [how for how in ACTS[kind] if (kind, how) != (FindingKind.CARD_DUE, "found_later")] == offered
    assert len(offered) == len({way.words for way in ways(shown, ACTS[shown.kind])})
    assert {how for how in offered if how in NEED_REASON} == {
        way.how for way in ways(shown, ACTS[shown.kind]) if way.reason
    }


def test_a_bin_where_a_card_may_hang_or_beside() -> None:
    """Look again is said with its own reason."""
    shown = replace(finding(FindingKind.UNREADABLE, "A-1-2", read=3, unread=0, expected=3), doubtful=True)
    assert "to the next one" in said(shown).why


def test_every_way_has_a_word_for_what_was_done() -> None:
    """What was done is told of each way."""
    assert set(WAYS) == RESOLVED.keys()


@pytest.mark.parametrize(
    ("shown", "words"),
    [
        (finding(FindingKind.TWIN, "A-1-1", "A-1-2"), "Seen twice: A-1-1 and A-1-2"),
        (finding(FindingKind.TWIN, "A-1-1"), "Twice in A-1-1"),
        (finding(FindingKind.CARD_DUE), "Not back in the tray"),
        (finding(FindingKind.CARD_DUE, TRAY), "In the tray, but never scanned in"),
        (finding(FindingKind.UNKNOWN, TRAY), "A foreign card in the tray"),
    ],
)
def test_where_it_was_seen_tells(shown: Finding, words: str) -> None:
    """Of one kind, what is amiss differs with the places."""
    assert words == said(shown).amiss


@pytest.mark.parametrize(
    ("line", "doubted", "words"),
    [
        (LineState.PICKED, False, "Its thing counts as picked for order 7."),
        (
            LineState.PACKED,
            True,
            "Its thing counts as packed for order 7. A person said that its thing is another one.",
        ),
        (LineState.WAITING, True, "A person said that its thing is another one."),
        (None, False, said(finding(FindingKind.SUSPECT, "A-1-1")).why),
    ],
)
def test_what_makes_a_card_suspect(line: LineState | None, doubted: bool, words: str) -> None:
    """The order that has its thing, a person's word, or both; the general words where it is not known any more."""
    assert words == suspected(said(finding(FindingKind.SUSPECT, "A-1-1")), line, "7", doubted).why


def test_findings_stand_in_the_order_to_walk() -> None:
    """Bin by bin as the room has them, what to look into again first; the tray and what should lie there last."""
    due, missing = finding(FindingKind.CARD_DUE), Finding(FindingKind.MISSING, "D014", "A-1-10")
    twin, again = (
        finding(FindingKind.TWIN, "A-1-2", "B-1-1"),
        Finding(FindingKind.UNREADABLE, "A-1-2", "A-1-2", ("A-1-2",)),
    )
    assert [again, twin, missing, due] == sorted([due, missing, twin, again], key=walk)


def test_a_card_is_read_where_nothing_else_says_that_it_is_back() -> None:
    """Only to be put right: nothing else says that it lies in the tray."""
    assert {"put_right"} == {
        way.how for way in ways(finding(FindingKind.CARD_DUE), ACTS[FindingKind.CARD_DUE], True) if way.scan
    }


@pytest.mark.parametrize("certainty", [Certainty.MATCHED, Certainty.DECODED])
def test_what_rests_on_looks_alone_asks_for_a_look(certainty: Certainty) -> None:
    """Each way that changes something asks whether somebody looked at the card, if no decoder read it."""
    shown = finding(FindingKind.ELSEWHERE, "A-1-2", certainty=certainty)
    asked = {way.how for way in ways(shown, ACTS[shown.kind]) if way.sure}
    assert ({"put_right", "moved", "withdraw"} if certainty is Certainty.MATCHED else set()) == asked


def test_shares() -> None:
    """Per cent with one place, none where that says nothing."""
    assert ["98.8 %", "100 %", "0 %"] == [percent(0.98765), percent(1.0), percent(0.0)]
    assert ("44.4 % to 97.5 %", "nothing counted") == (between([0.4439, 0.9748]), between(None))


def whole(
    places: int, well: int, wrong: int, more: tuple[int, int] | None, of: int = 9, chosen: Chosen | None = None
) -> Whole:
    return Whole(9, 9, 9, 0, 0, 0, (0.6, 1.0), places, well, wrong, 0, of, chosen, more)


@pytest.mark.parametrize(
    ("told", "words"),
    [
        (whole(9, 9, 1, None), "All places were looked at."),
        (whole(9, 0, 0, None), "No place was looked at well enough to say anything."),
        (
            whole(9, 4, 1, (0, 3)),
            "Of the other 5, 0 to 3 don't match either, with 95 % certainty, if the places you looked at were picked "
            "by chance.",
        ),
        (
            whole(4, 4, 1, (0, 3), 9, Chosen.BLIND),
            "Of the other 5, 0 to 3 don't match either, with 95 % certainty: all were",
        ),
        (whole(5, 4, 1, (0, 3), 9, Chosen.BLIND), "if it is chance alone that 1 of those picked was not seen"),
        (
            replace(whole(5, 4, 1, (0, 3), 9, Chosen.BLIND), unfinished=2),
            "of those picked was not seen well enough and that 2 samples drawn before were not finished.",
        ),
        (whole(4, 4, 1, None, 9, Chosen.TURN), "so nothing certain follows for the other 5."),
        (whole(9, 9, 1, None, 9, Chosen.TURN), "All places were looked at."),
    ],
)
def test_what_is_said_of_the_rest(told: Whole, words: str) -> None:
    """Nothing where all was looked at, or nothing was, or what had its turn; what was drawn blind is said to be."""
    assert words in rest(told)
