"""Rounds on paper, judged by what other libraries find in their PDF."""

from __future__ import annotations

from dataclasses import replace

import pytest
from paperwork import document, seen, things, words

from labels import row, slot_code, walk
from labels.sheet import SheetPage


def stops(count: int, done: dict[int, str] | None = None) -> list[walk.PrintedStop]:
    return [
        walk.PrintedStop(place, 700 + place, str(place), f"B-{place}", thing, (done or {}).get(place, ""))
        for place, thing in enumerate(things(count), 1)
    ]


def made(count: int, paper: str = "letter", done: dict[int, str] | None = None) -> list[SheetPage]:
    return walk.walk(stops(count, done), f"Round, {count} stops", paper)


@pytest.mark.parametrize("paper", walk.PAPERS)
def test_every_stop_is_there_in_order_with_its_bars(paper: str) -> None:
    """Bin, basket, order, code and title of each, and bars that say the stop's own number."""
    pages = document(made(25, paper))
    text = " ".join(words(page) for page in pages)
    for place in range(1, 26):
        for told in (f"A-1-{place}", f"basket {place}", f"B-{place}", f"derailleur {place}"):
            assert told in text
    read = [each for page in pages for each in sorted(seen(page))]
    assert [slot_code.stop_text(700 + place) for place in range(1, 26)] == read


def test_no_text_of_a_card_is_on_the_sheet() -> None:
    """Neither in bars nor in words: whoever knows a card's check digit had the card in hand."""
    pages = document(made(25))
    text = "".join(words(page) for page in pages)
    for place in range(1, 26):
        assert slot_code.card_text(f"D{place:03}") not in text
    assert [] == [each for page in pages for each in seen(page) if slot_code.is_card_like(each)]


def test_a_stop_that_is_done_has_nothing_to_enter() -> None:
    """It says so, and has neither bars nor boxes."""
    (page,) = made(2, done={1: "picked"})
    assert ("picked", [slot_code.stop_text(702)]) == (
        next(word for word in ("picked", "missing") if word in words(document([page])[0])),
        seen(document([page])[0]),
    )


@pytest.mark.parametrize("paper", walk.PAPERS)
def test_nothing_leaves_the_page(paper: str) -> None:
    """Every shape lies inside the printer's margin."""
    for page in made(30, paper):
        for shape in page.shapes:
            right = shape.x + (getattr(shape, "width", 0) or row.typeface.width(shape.text, shape.size, shape.font))
            assert (5, page.width - 5) == (min(5, shape.x), max(page.width - 5, right))
            assert shape.y + getattr(shape, "height", 0) <= page.height - 5


def test_a_stop_is_heard() -> None:
    """Each row is a figure that says where to go, what to take and where to put it."""
    (page,) = made(1)
    assert "Stop 1, bin A-1-1: D001, Rear derailleur 1, into basket 1. Its bars say STP007019." == page.cards[1].alt


@pytest.mark.parametrize("paper", walk.PAPERS)
def test_a_stop_says_how_to_pack_its_thing(paper: str) -> None:
    """The whole note stands below the stop, and every stop's bars are read still."""
    note = "Packing: " + "fragile glass, wrap it twice; " * 6 + "two screws in the bag."
    noted = [replace(stop, thing=replace(stop.thing, packing=note)) for stop in stops(9)]
    pages = document(walk.walk(noted, "Round", paper))
    assert 9 == sum(words(page).count(note) for page in pages)
    read = [each for page in pages for each in sorted(seen(page))]
    assert [slot_code.stop_text(700 + place) for place in range(1, 10)] == read
