"""Sheets of cards: a grid on a page to be cut, or a page of ready labels. Lengths in mm."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from enum import Enum
from functools import partial

from labels import card, typeface
from labels.paper import COLOURS, INK, SHEETS, WHITE
from labels.shape import Rect, Shape, SheetArea, Text

MARGIN = 5.0  # what a printer may leave blank, each side
RULER = 50.0
SEALED_EDGE = 3.0  # the least that laminate needs around a card
_RULER_ROOM = 5.0
_RULER_ADVICE = "50 mm: if your ruler disagrees, print again at 100 %."
_CUT_LINE = 0.1
_CUT_GREY = "#b0b0b0"

Size = tuple[float, float]
Face = Callable[[SheetArea], card.Card]


class Duplex(Enum):
    """The edge of the paper about which a printer turns it for the backs."""

    LONG = "long"
    SHORT = "short"


@dataclass(frozen=True, slots=True)
class SheetPage:
    """One printed page: size, its cards, and what is printed beside them."""

    width: float
    height: float
    cards: tuple[card.Card, ...]
    marks: tuple[Shape, ...] = ()

    @property
    def shapes(self) -> tuple[Shape, ...]:
        return (*(shape for each in self.cards for shape in each.shapes), *self.marks)


@dataclass(frozen=True, slots=True)
class Layout:
    """Where the cards lie: size of the page, counts, first card's corner, size of a card, from one card to the next."""

    page: Size
    columns: int
    rows: int
    corner: Size
    card: Size
    pitch: Size
    ruler: Size | None
    """Left end and baseline of the scale bar, None where there is no room for it."""
    cut: bool
    """Whether the page has lines to cut along; ready labels have none."""

    def cells(self) -> list[SheetArea]:
        """The cards' places, row by row."""
        return [
            SheetArea(self.corner[0] + column * self.pitch[0], self.corner[1] + row * self.pitch[1], *self.card)
            for row in range(self.rows)
            for column in range(self.columns)
        ]

    @property
    def gutter(self) -> float:
        """The narrower of the gaps between neighbours."""
        gaps = [self.pitch[i] - self.card[i] for i, count in enumerate((self.columns, self.rows)) if count > 1]
        return min(gaps, default=0.0)


def cut_layout(page: Size, grid: str, *, margin: float = MARGIN, gutter: float = 0.0) -> Layout:
    """As large cards as the grid allows inside the margins; ValueError for a malformed grid or no room at all."""
    columns, rows = parse_grid(grid)
    gap = max(gutter, _CUT_LINE)
    room = (page[0] - 2 * margin, page[1] - 2 * margin - _RULER_ROOM)
    width, height = ((side + gap) / count - gap for side, count in zip(room, (columns, rows), strict=True))
    if min(margin, gutter) < 0 or min(width, height) <= 0:
        raise ValueError(f"a grid of {grid} with margins of {margin:g} mm and gutters of {gutter:g} mm leaves no cards")
    ruler = (margin, page[1] - margin)
    return Layout(page, columns, rows, (margin, margin), (width, height), (width + gap, height + gap), ruler, True)


def label_layout(page: Size, grid: str, label: Size, corner: Size, pitch: Size, *, margin: float = MARGIN) -> Layout:
    """A sheet of ready labels: their size, the first one's left top corner, from one left top corner to the next.

    ValueError for a malformed grid, for labels that overlap or leave the page.
    """
    columns, rows = parse_grid(grid)
    ends = [corner[i] + (count - 1) * pitch[i] + label[i] for i, count in enumerate((columns, rows))]
    if any(count > 1 and pitch[i] < label[i] - 1e-6 for i, count in enumerate((columns, rows))):
        raise ValueError("the labels overlap: from one corner to the next is less than a label")
    if min(*corner, page[0] - ends[0], page[1] - ends[1]) < -1e-6:
        raise ValueError(f"{grid} labels end {ends[0]:g} x {ends[1]:g} mm from the corner, the page is smaller")
    baselines = (page[1] - margin, margin + _RULER_ROOM)
    fits = (page[1] - margin - _RULER_ROOM >= ends[1], baselines[1] <= corner[1])
    ruler = next(((margin, line) for line, fit in zip(baselines, fits, strict=True) if fit), None)
    return Layout(page, columns, rows, corner, label, pitch, ruler, False)


def sheets(
    codes: Sequence[str],
    *,
    section_name: str,
    colour: str,
    paper: str,
    grid: str,
    style: card.Style = card.Style.FILED,
) -> list[SheetPage]:
    """Pages of slot cards in the order of `codes`, row by row.

    `colour` is a key of `labels.paper.COLOURS`, `paper` of `labels.paper.SHEETS`, `grid` is columns x rows like "3x6".
    ValueError for a malformed grid; DoesNotFit where a cell is too small; CodeError for a text that is no slot code.
    """
    design = card.CardDesign(section_name, COLOURS[colour], style)
    return pages([slot_face(code, design) for code in codes], cut_layout(SHEETS[paper], grid))


def slot_face(code: str, design: card.CardDesign) -> Face:
    """The card of a slot, to be drawn wherever it comes to lie."""
    return partial(card.slot_card, code, design)


def bin_face(first: str, last: str, name: str, design: card.CardDesign) -> Face:
    """The front of a bin, to be drawn wherever it comes to lie."""
    return partial(card.bin_front, first, last, name, design)


def pages(faces: Sequence[Face], layout: Layout, duplex: Duplex | None = None) -> list[SheetPage]:
    """Pages of these cards row by row; with `duplex` every page is followed by its backs.

    A back shows the same as its front and has its top at the same edge of the card. DoesNotFit as the cards have it.
    """
    cells = layout.cells()
    marks = (*_cut_lines(layout), *_ruler(layout))
    made = []
    for first in range(0, len(faces), len(cells)):
        here = list(zip(faces[first : first + len(cells)], cells, strict=False))
        made.append(SheetPage(*layout.page, tuple(face(cell) for face, cell in here), marks))
        if duplex is not None:
            made.append(SheetPage(*layout.page, tuple(_back(face, cell, layout.page, duplex) for face, cell in here)))
    return made


def _back(face: Face, cell: SheetArea, page: Size, duplex: Duplex) -> card.Card:
    width, height = page
    if (duplex is Duplex.LONG) == (height >= width):
        return face(replace(cell, x=width - cell.right))
    return replace(face(replace(cell, y=height - cell.bottom)), turned=True)


def parse_grid(grid: str) -> tuple[int, int]:
    """Columns and rows of a grid.

    >>> parse_grid("3x6")
    (3, 6)
    >>> parse_grid("3x0")
    Traceback (most recent call last):
    ValueError: a grid is columns x rows like 3x6, not '3x0'
    """
    match = re.fullmatch("([1-9][0-9]?)x([1-9][0-9]?)", grid)
    if match is None:
        raise ValueError(f"a grid is columns x rows like 3x6, not {grid!r}")
    return int(match[1]), int(match[2])


def parse_numbers(text: str, most: int = 100_000) -> list[int]:
    """Numbers of slots and ranges of them, in their order; ValueError for more than `most`, or one that stands twice.

    >>> parse_numbers("7, 1-3")
    [7, 1, 2, 3]
    """
    numbers: list[int] = []
    for part in re.split(r"[,;\s]+", text.strip()):
        match = re.fullmatch(r"([0-9]{1,6})(?:[-–]([0-9]{1,6}))?", part)
        first, last = (int(match[1]), int(match[2] or match[1])) if match else (1, 0)
        if last < first:
            raise ValueError(f"{part!r} is no number or range like 1-18")
        if len(numbers) + last - first >= most:
            raise ValueError(f"these are more than {most:,} numbers")
        numbers += range(first, last + 1)
    if len(set(numbers)) < len(numbers):
        raise ValueError("a number stands twice, and a slot has one card")
    return numbers


def _cut_lines(layout: Layout) -> list[Shape]:
    """Lines from edge to edge of the paper, just outside the cards; neighbours without a gutter share one."""
    if not layout.cut:
        return []
    width, height = layout.page
    upright = _line_starts(layout.corner[0], layout.card[0], layout.pitch[0], layout.columns)
    level = _line_starts(layout.corner[1], layout.card[1], layout.pitch[1], layout.rows)
    return [
        *(Rect(x, 0, _CUT_LINE, height, _CUT_GREY) for x in upright),
        *(Rect(0, y, width, _CUT_LINE, _CUT_GREY) for y in level),
    ]


def _line_starts(corner: float, size: float, pitch: float, count: int) -> list[float]:
    starts = {round(corner + i * pitch - _CUT_LINE, 6) for i in range(count)}
    return sorted(starts | {round(corner + i * pitch + size, 6) for i in range(count)})


def _ruler(layout: Layout) -> list[Shape]:
    """A scale bar from the outer edge of its first tick to that of its last, and what to do when it is off."""
    if layout.ruler is None:
        return []
    x, y = layout.ruler
    x += 2  # clear of the cut line
    line = 0.25
    ticks = [
        Rect(x + (RULER - line) * i / 5, y - (2.6 if i % 5 == 0 else 1.6), line, 2.6 if i % 5 == 0 else 1.6, INK)
        for i in range(6)
    ]
    room = layout.page[0] - x - RULER - 3 - layout.ruler[0]
    size = typeface.fit(_RULER_ADVICE, 1.8, room)
    return [
        Rect(x - 1, y - 3, RULER + 3 + typeface.width(_RULER_ADVICE, size), 3.5, WHITE),
        Rect(x, y - line, RULER, line, INK),
        *ticks,
        Text(x + RULER + 2, y - 0.4, size, _RULER_ADVICE, typeface.REGULAR),
    ]
