"""The report of a count on paper, judged by what another library finds in its PDF."""

from __future__ import annotations

import pytest
from paperwork import document, words

from labels import count_sheet, typeface
from labels.count_sheet import Amiss, Fact, Row, SectionResult
from labels.paper import COLOURS, SHEETS

MM = 72 / 25.4


def rows(findings: int, name: str = "Rear derailleur") -> list[Row]:
    return [
        Fact("Looked at", "2 of 3 places, 4 looks."),
        SectionResult("D", COLOURS["yellow"], "8 of 10 cards agree", "44.4 % to 97.5 %."),
        SectionResult("", None, "0 of 0 cards agree", "nothing counted."),
        *(
            Amiss(f"D{n:03}", COLOURS["yellow"], f"Not in A-1-{n}", f"{name} {n}", "put right")
            for n in range(1, findings + 1)
        ),
    ]


@pytest.mark.parametrize("paper", count_sheet.PAPERS)
def test_all_of_it_is_told(paper: str) -> None:
    """On the paper asked for, over as many pages as it takes, each with its number."""
    pages = document(count_sheet.report(rows(40), "Count of section D", paper))
    assert SHEETS[paper] == pytest.approx((pages[0].get_width() / MM, pages[0].get_height() / MM), abs=0.05)
    text = "\n".join(map(words, pages))
    for told in (
        "Looked at",
        "8 of 10 cards agree",
        "44.4 % to 97.5 %.",
        "Not in A-1-40",
        "derailleur 40",
        "put right",
    ):
        assert told in text
    assert [f"page {n} of {len(pages)}" in words(page) for n, page in enumerate(pages, 1)] == [True] * len(pages)


def test_nothing_of_a_count_is_left_out() -> None:
    """However many places, and however long a note or a reason: each word of it stands on paper, in order."""
    told = [f"E-{tier}-{at}" for tier in range(1, 200) for at in range(1, 9)]
    said = " ".join(f"word{n}" for n in range(90))
    rows: list[Row] = [Fact("Not looked at", ", ".join(told)), Amiss("D001", None, "Not in A-1-1", "", said)]
    pages = document(count_sheet.report(rows, "Count of the room", "a4"))
    text = " ".join(" ".join(map(words, pages)).split())
    assert len(pages) > 1 and "…" not in text
    assert [each for each in told if f"{each}," not in text] == [told[-1]]
    assert [n for n in range(90) if f"word{n}" not in text] == []


def test_a_card_in_view_names_itself() -> None:
    """Each row says in words what it shows, for who has it read out."""
    page = count_sheet.report(rows(1), "Count of section D", "a4")[0]
    assert "D001: Not in A-1-1. Rear derailleur 1 put right" == page.cards[-1].alt


def test_nothing_leaves_the_page() -> None:
    """However long a title, a note or a foreign text is."""
    long = [Fact("Note", "w" * 400), Amiss("Q" * 40, None, "w" * 200, "w" * 300, "w" * 200)]
    for page in count_sheet.report(long, "w" * 200, "letter"):
        for shape in page.shapes:
            right = shape.x + (getattr(shape, "width", 0) or typeface.width(shape.text, shape.size, shape.font))
            assert (5, page.width - 5) == (min(5, shape.x), max(page.width - 5, right))
            assert shape.y + getattr(shape, "height", 0) <= page.height - 5
