"""Cards on their grid."""

import doctest

import pytest

from labels import sheet
from labels.card import DoesNotFit, Rect, Text
from labels.paper import SHEETS


def make(count, **changes):
    wanted = {"section_name": "Saddles", "colour": "blue", "paper": "a4", "grid": "3x6"} | changes
    return sheet.sheets([f"S{number:03}" for number in range(1, count + 1)], **wanted)


def numbers(page):
    return [shape.text for shape in page.shapes if isinstance(shape, Text) and shape.text.isdigit()]


def test_doctests():
    """The examples in the module's docstrings hold."""
    assert doctest.testmod(sheet).failed == 0


def test_pages_fill_row_by_row():
    """Cards keep their order, and a page begins when the one before is full."""
    pages = make(20)
    assert [[f"{number:03}" for number in range(1, 19)], ["019", "020"]] == [numbers(page) for page in pages]


def test_no_cards_no_pages():
    """Without codes there is nothing to print."""
    assert make(0) == []


@pytest.mark.parametrize("paper", SHEETS)
def test_nothing_lies_where_a_printer_cannot_print(paper):
    """All shapes keep 5 mm from the edges of the sheet, but for half a cut line."""
    (page,) = make(18, paper=paper)
    assert (page.width, page.height) == SHEETS[paper]
    boxes = [shape for shape in page.shapes if not isinstance(shape, Text)]
    assert min(min(box.x, box.y) for box in boxes) >= 4.95
    assert max(box.x + box.width for box in boxes) <= page.width - 4.95
    assert max(box.y + box.height for box in boxes) <= page.height - 4.95


def test_cut_lines():
    """A grid of 3 x 6 has four upright and seven level lines, thin and light."""
    (page,) = make(1)
    lines = [shape for shape in page.shapes if isinstance(shape, Rect) and min(shape.width, shape.height) == 0.1]
    assert (sum(line.width == 0.1 for line in lines), sum(line.height == 0.1 for line in lines)) == (4, 7)


@pytest.mark.parametrize("grid", ["3", "0x6", "3x", "3x6x1", "-1x2", "3X6", "100x1"])
def test_malformed_grids(grid):
    """A grid is two counts from 1 to 99 and an x."""
    with pytest.raises(ValueError, match="columns x rows"):
        make(1, grid=grid)


def test_cells_too_small():
    """A grid whose cards can't hold bars or number is refused."""
    with pytest.raises(DoesNotFit):
        make(1, grid="7x6")
    with pytest.raises(DoesNotFit):
        make(1, grid="3x12")
