"""Cards on their sheets."""

import doctest
from itertools import pairwise

import pytest

from labels import sheet
from labels.card import CardDesign, CardTooSmall
from labels.paper import COLOURS, SHEETS
from labels.shape import Rect, SheetArea, Text
from labels.sheet import Duplex


def make(count, **changes):
    wanted = {"section_name": "Saddles", "colour": "blue", "paper": "a4", "grid": "3x6"} | changes
    return sheet.sheets([f"S{number:03}" for number in range(1, count + 1)], **wanted)


def faces(count):
    return [sheet.slot_face(f"S{number:03}", CardDesign("Saddles", COLOURS["blue"])) for number in range(1, count + 1)]


def numbers(page):
    return [shape.text for shape in page.shapes if isinstance(shape, Text) and shape.text.isdigit()]


def lines(page):
    """(upright, level) cut lines of a page."""
    thin = [shape for shape in page.marks if isinstance(shape, Rect) and min(shape.width, shape.height) == 0.1]
    return [line for line in thin if line.width == 0.1], [line for line in thin if line.height == 0.1]


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


@pytest.mark.parametrize(("paper", "grid"), [("a4", "3x6"), ("letter", "3x6"), ("legal", "3x8"), ("4x6", "1x3")])
@pytest.mark.parametrize("gutter", [0, 6])
def test_nothing_but_cut_lines_lies_where_a_printer_cannot_print(paper, grid, gutter):
    """Cards and scale bar keep 5 mm from the edges of the sheet."""
    layout = sheet.cut_layout(SHEETS[paper], grid, gutter=gutter)
    (page,) = sheet.pages(faces(layout.columns * layout.rows), layout)
    assert (page.width, page.height) == SHEETS[paper]
    drawn = [*page.cards[0].shapes, *page.cards[-1].shapes]
    drawn += [mark for mark in page.marks if mark not in [line for kind in lines(page) for line in kind]]
    boxes = [shape for shape in drawn if not isinstance(shape, Text)]
    assert min(min(box.x, box.y) for box in boxes) >= 5
    assert max(box.x + box.width for box in boxes) <= page.width - 5 + 1e-9
    assert max(box.y + box.height for box in boxes) <= page.height - 4.5 + 1e-9


@pytest.mark.parametrize(("gutter", "count"), [(0, (4, 7)), (6, (6, 12))])
def test_cut_lines(gutter, count):
    """Lines run from edge to edge of the paper along every side of every card, and over none.

    Without a gutter neighbours share a line; with one each has its own.
    """
    layout = sheet.cut_layout(SHEETS["a4"], "3x6", gutter=gutter)
    (page,) = sheet.pages(faces(18), layout)
    upright, level = lines(page)
    assert count == (len(upright), len(level))
    assert {(0, 297)} == {(line.y, line.height) for line in upright}
    assert {(0, 210)} == {(line.x, line.width) for line in level}
    for cell in layout.cells():
        sides = {round(line.x + line.width, 4) for line in upright}, {round(line.y + line.height, 4) for line in level}
        assert (True, True) == (round(cell.x, 4) in sides[0], round(cell.y, 4) in sides[1])
        crossing = [line for line in upright if cell.x + 1e-4 < line.x + 0.1 and line.x < cell.right - 1e-4]
        crossing += [line for line in level if cell.y + 1e-4 < line.y + 0.1 and line.y < cell.bottom - 1e-4]
        assert [] == crossing


def test_gutter():
    """Cards stand at least the gutter apart, so that laminate has its sealed edge."""
    layout = sheet.cut_layout(SHEETS["letter"], "3x6", gutter=2 * sheet.SEALED_EDGE)
    row = layout.cells()[:3]
    assert pytest.approx([6, 6]) == [right.x - left.right for left, right in pairwise(row)]
    assert pytest.approx(6) == layout.cells()[3].y - row[0].bottom
    assert pytest.approx(6) == layout.gutter


def test_scale_bar():
    """It is 50 mm from the outer edge of the first tick to that of the last, in a corner clear of all cards."""
    layout = sheet.cut_layout(SHEETS["letter"], "3x6")
    (page,) = sheet.pages(faces(18), layout)
    ticks = [mark for mark in page.marks if isinstance(mark, Rect) and mark.width == 0.25]
    assert (6, pytest.approx(50)) == (len(ticks), ticks[-1].x + 0.25 - ticks[0].x)
    assert min(tick.y for tick in ticks) > layout.cells()[-1].bottom
    assert ["50 mm: if your ruler disagrees, print again at 100 %."] == [m.text for m in page.marks if type(m) is Text]


@pytest.mark.parametrize("paper", ["a4", "4x6"])
def test_backs_of_a_long_edge_turn_lie_on_their_fronts(paper):
    """Turned like a page of a book, every back covers the front of the same card, with its top at the same edge."""
    layout = sheet.cut_layout(SHEETS[paper], "1x3" if paper == "4x6" else "3x6", gutter=3)
    front, back = sheet.pages(faces(3), layout, Duplex.LONG)
    assert numbers(front) == numbers(back)
    for one, other in zip(front.cards, back.cards, strict=True):
        assert (one.alt, False) == (other.alt, other.turned)
        mirrored = SheetArea(front.width - other.area.right, other.area.y, other.area.width, other.area.height)
        assert pytest.approx((one.area.x, one.area.y)) == (mirrored.x, mirrored.y)


def test_backs_of_a_short_edge_turn_lie_on_their_fronts():
    """Turned over its top, a sheet has each back on its front, drawn upside down to have its top at the same edge."""
    front, back = sheet.pages(faces(18), sheet.cut_layout(SHEETS["a4"], "3x6"), Duplex.SHORT)
    for one, other in zip(front.cards, back.cards, strict=True):
        assert (one.alt, True) == (other.alt, other.turned)
        assert pytest.approx((one.area.x, one.area.y)) == (other.area.x, front.height - other.area.bottom)


def test_on_a_landscape_sheet_the_long_edge_is_the_top():
    """What turns about the long edge of a landscape sheet turns over its top."""
    _, back = sheet.pages(faces(1), sheet.cut_layout((297, 210), "4x4"), Duplex.LONG)
    assert back.cards[0].turned


def test_every_front_is_followed_by_its_back():
    """With backs, pages come in pairs, and only fronts have lines and scale bar."""
    pages = sheet.pages(faces(20), sheet.cut_layout(SHEETS["a4"], "3x6"), Duplex.LONG)
    assert [18, 18, 2, 2] == [len(page.cards) for page in pages]
    assert [True, False, True, False] == [bool(page.marks) for page in pages]


def test_ready_labels():
    """Cards stand exactly where the measures of the labels put them, and nothing is to be cut."""
    layout = sheet.label_layout((210, 297), "3x7", (63.5, 38.1), (7.2, 15.1), (66, 38.1))
    (page,) = sheet.pages(faces(21), layout)
    last = page.cards[-1].area
    assert pytest.approx((7.2 + 132, 15.1 + 6 * 38.1, 63.5, 38.1)) == (last.x, last.y, last.width, last.height)
    assert ([], []) == lines(page)
    assert layout.ruler is not None


def test_scale_bar_only_where_labels_leave_room():
    """A page full of labels has no scale bar; one with room above them has it there."""
    full = sheet.label_layout((101.6, 152.4), "1x3", (95, 47), (3, 5), (95, 47.5))
    above = sheet.label_layout((101.6, 152.4), "1x2", (95, 60), (3, 25), (95, 62))
    assert (None, True) == (full.ruler, above.ruler is not None and above.ruler[1] < 25)


@pytest.mark.parametrize(
    ("label", "corner", "pitch", "reason"),
    [
        ((63.5, 38.1), (7.2, 15.1), (60, 38.1), "overlap"),
        ((63.5, 38.1), (7.2, 35), (66, 38.1), "smaller"),
        ((63.5, 38.1), (-1, 15.1), (66, 38.1), "smaller"),
    ],
)
def test_impossible_labels(label, corner, pitch, reason):
    """Labels that overlap or leave the page are refused."""
    with pytest.raises(ValueError, match=reason):
        sheet.label_layout((210, 297), "3x7", label, corner, pitch)


@pytest.mark.parametrize("grid", ["3", "0x6", "3x", "3x6x1", "-1x2", "3X6", "100x1"])
def test_malformed_grids(grid):
    """A grid is two counts from 1 to 99 and an x."""
    with pytest.raises(ValueError, match="columns x rows"):
        make(1, grid=grid)


def test_cells_too_small():
    """A grid whose cards can't hold bars or number is refused, and so are margins that leave nothing."""
    with pytest.raises(CardTooSmall):
        make(1, grid="7x6")
    with pytest.raises(CardTooSmall):
        make(1, grid="3x14")
    with pytest.raises(ValueError, match="leaves no cards"):
        sheet.cut_layout((101.6, 152.4), "1x3", margin=50.9)
