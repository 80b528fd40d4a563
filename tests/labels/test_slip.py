"""Slips of orders, judged by what other libraries find in their PDF."""

from __future__ import annotations

import pypdfium2
import pytest
from paperwork import document, jpeg, seen, things, words

from labels import draw, row, slip, slot_code
from labels.paper import COLOURS, SHEETS
from labels.row import Thing

MM = 72 / 25.4
SIZES = ["letter", "a4", "4x6"]


def order(number: str = "B-1001", slip_number: int = 12, count: int = 3) -> slip.Slip:
    return slip.Slip(number, slip_number, f"{count} things, basket 2", things(count))


@pytest.mark.parametrize("paper", SIZES)
def test_a_slip_has_the_paper_s_size_and_says_its_order(paper: str) -> None:
    """Order number, what belongs in the parcel, where it stood, and no more; the bars say the slip."""
    page = document(slip.slips([order()], paper))[0]
    assert SHEETS[paper] == pytest.approx((page.get_width() / MM, page.get_height() / MM), abs=0.05)
    text = words(page)
    for told in ("B-1001", "3 things, basket 2", "derailleur 2", "bin A-1-3", slot_code.slip_text(12)):
        assert told in text
    assert [slot_code.slip_text(12)] == seen(page)


@pytest.mark.parametrize("paper", SIZES)
def test_a_slip_has_what_the_order_calls_a_thing(paper: str) -> None:
    """Where the buyer's title is another than ours, both stand there, in as many lines as it needs."""
    said = "The order says “Rear mech with a long cage, five speeds”."
    both = slip.Slip("B-1", 1, "", [Thing("D004", "Rear derailleur", "A-1-1", COLOURS["green"], says=said), *things(1)])
    text = " ".join(words(document(slip.slips([both], paper))[0]).split())
    assert (True, True) == ("Rear derailleur" in text, said in text)


@pytest.mark.parametrize("paper", SIZES)
def test_nothing_leaves_the_page(paper: str) -> None:
    """Also with 40 things, long words and a number of 100 characters: every shape lies inside the printer's margin."""
    thing = Thing("BL012345", "w" * 200, "A-1-1", COLOURS["pink"], says="v" * 90 + " w" * 200)
    long = slip.Slip("9" * 100, 10**6, "40 things", [thing] * 40)
    for page in slip.slips([long], paper):
        for shape in page.shapes:
            right = shape.x + (getattr(shape, "width", 0) or row.typeface.width(shape.text, shape.size, shape.font))
            assert (5, page.width - 5) == (min(5, shape.x), max(page.width - 5, right))
            assert shape.y + getattr(shape, "height", 0) <= page.height - 5


def test_more_things_than_a_page_holds_go_on() -> None:
    """Each page has the order's number and bars, and says which page it is."""
    pages = document(slip.slips([order(count=12)], "4x6"))
    assert len(pages) > 1
    for number, page in enumerate(pages, 1):
        assert f"page {number} of {len(pages)}" in words(page)
        assert [slot_code.slip_text(12)] == seen(page)
    assert 12 == sum(words(page).count("derailleur") for page in pages)


def test_slips_come_in_the_order_given() -> None:
    """One after another, each on pages of its own."""
    pages = document(slip.slips([order("B-2", 2), order("B-1", 1)], "a4"))
    assert [[slot_code.slip_text(2)], [slot_code.slip_text(1)]] == [seen(page) for page in pages]


def test_pictures_are_in_the_file_as_they_came() -> None:
    """Each thing's JPEG is on the page, not written anew; a thing without one shows its section's pattern."""
    bare = Thing("D004", "Crank", "A-1-1", COLOURS["green"])
    page = document(slip.slips([slip.Slip("B-1", 1, "", [*things(2), bare])], "a4"))[0]
    pictures = list(page.get_objects(filter=[pypdfium2.raw.FPDF_PAGEOBJ_IMAGE]))
    assert [jpeg()] * 2 == [bytes(each.get_data(decode_simple=True)) for each in pictures]


def test_a_picture_is_in_the_svg_too() -> None:
    """As a data URI."""
    drawn = draw.svg(slip.slips([order(count=1)], "a4")[0], title="Slip").decode()
    assert 1 == drawn.count("data:image/jpeg;base64,")


@pytest.mark.parametrize(
    ("text", "expected"),
    [("", [""]), ("one", ["one"]), ("one two three four", ["one two", "three…"]), ("w" * 40, ["www…"])],
)
def test_words_are_broken_into_lines(text: str, expected: list[str]) -> None:
    """Between words where there is room, and cut with an ellipsis where there is none."""
    made = row.lines(text, 2.3, 14.5, 2)
    assert len(expected) == len(made)
    for want, line in zip(expected, made, strict=True):
        assert row.typeface.width(line, 2.3 / row.typeface.CAP_HEIGHT) <= 14.5
        assert want.endswith("…") == line.endswith("…")
        assert line.rstrip("…") in text


@pytest.mark.parametrize("paper", SIZES)
def test_a_slip_says_how_to_pack_a_thing(paper: str) -> None:
    """The whole note, in as many lines as it needs, behind what the order calls the thing."""
    note = "Packing: " + "fragile glass, wrap it twice; " * 6 + "two screws in the bag."
    thing = Thing("D004", "Rear lamp", "A-1-1", COLOURS["green"], says="The order says “Lamp”.", packing=note)
    text = words(document(slip.slips([slip.Slip("B-1", 1, "", [thing, *things(1)])], paper))[0])
    assert (True, True) == (f"The order says “Lamp”. {note}" in text, "Rear derailleur 1" in text)
