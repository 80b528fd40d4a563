"""The list of parcels to be signed, judged by what another library finds in its PDF."""

from __future__ import annotations

import pytest
from paperwork import document, words

from labels import leaving
from labels.leaving import PrintedParcel
from labels.paper import SHEETS

MM = 72 / 25.4


def parcels(count: int) -> list[PrintedParcel]:
    return [
        PrintedParcel(n, f"B-{n}", "85DE" if n % 2 else "", f"2 March 2026 12:{n % 60:02}") for n in range(1, count + 1)
    ]


@pytest.mark.parametrize("paper", leaving.PAPERS)
def test_each_parcel_and_room_to_sign(paper: str) -> None:
    """Order, end of label, time; who took them, how many, and a line to sign at the end, over as many pages."""
    pages = document(leaving.sheet(parcels(60), "60 parcels", "The red van", paper, "The shop"))
    assert SHEETS[paper] == pytest.approx((pages[0].get_width() / MM, pages[0].get_height() / MM), abs=0.05)
    text = [words(page) for page in pages]
    for told in ("B-1", "B-60", "label ends 85DE", "no label scanned", "2 March 2026 12:07"):
        assert told in "\n".join(text)
    assert [True] * len(pages) == ["Carrier: The red van" in each for each in text]
    assert [True] * len(pages) == [f"The shop, page {n} of {len(pages)}" in each for n, each in enumerate(text, 1)]
    assert [len(pages) - 1] == [n for n, each in enumerate(text) if "Signature" in each and "60 parcels." in each]


def test_all_numbers_of_a_joined_parcel_stand_there() -> None:
    """However many orders are in one box, and however long their numbers."""
    numbers = [f"A-LONG-NUMBER-{n:04}" for n in range(30)]
    pages = document(leaving.sheet([PrintedParcel(1, ", ".join(numbers), "", "12:00")], "One parcel", "", "a4"))
    text = " ".join(words(pages[0]).split())
    assert [] == [each for each in numbers if each not in text]
    assert "Taken along: 1 parcel." in text
