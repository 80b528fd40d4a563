"""The evidence of an order on paper, judged by what another library finds in its PDF."""

from __future__ import annotations

import pytest
from paperwork import document, things, words

from labels import evidence, typeface
from labels.evidence import BoughtThing, EvidenceRow, OrderFact, PrintedEntry

HASHES = [f"{n:064x}" for n in range(40)]


def rows(entries: int, long: str = "") -> list[EvidenceRow]:
    told: list[EvidenceRow] = [OrderFact("Ordered", f"2026-03-02 12:00:00+01:00 {long}")]
    told += [BoughtThing(thing, [f"Picked by anna {long}", "Packed by ben"]) for thing in things(2)]
    return told + [PrintedEntry(n, "2026-03-02", "anna", f"scan {long}", HASHES[n]) for n in range(entries)]


@pytest.mark.parametrize("paper", evidence.PAPERS)
def test_all_is_on_one_page_for_a_small_order(paper: str) -> None:
    """Title, facts, each thing with its picture and deeds, and every entry with number and hash."""
    pages = document(evidence.evidence(rows(12), "Evidence of order B-1", "The shop", paper))
    assert 1 == len(pages)
    text = words(pages[0])
    wanted = ("Evidence of order B-1", "The shop", "Ordered 2026-03-02", "Rear derailleur 2", "Picked by anna")
    for told in (*wanted, "Packed by ben", "Entry 11", *HASHES[:12]):
        assert told in text
    assert 2 == sum(each.type == 3 for each in pages[0].get_objects())


@pytest.mark.parametrize("paper", evidence.PAPERS)
def test_long_words_and_many_entries_go_on_within_the_margins(paper: str) -> None:
    """No line leaves the page, none lies on another, and no hash is cut."""
    sheets = evidence.evidence(rows(40, "v" * 90 + " w" * 200), "9" * 100, "The shop", paper)
    assert len(sheets) > 1
    for sheet in sheets:
        for card in sheet.cards:
            lines = [shape for shape in card.shapes if hasattr(shape, "text")]
            for line in lines:
                assert line.x + typeface.width(line.text, line.size, line.font) <= sheet.width - 5
                assert card.area.y <= line.y <= card.area.bottom + 0.01
    text = " ".join(words(page) for page in document(sheets))
    assert [True] * 40 == [each in text for each in HASHES]
