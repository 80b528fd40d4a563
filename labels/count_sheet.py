"""The report of a count on paper: what was counted, what agrees by section, what was amiss. Lengths in mm."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import singledispatch

from labels import row, typeface
from labels.card import Card
from labels.paper import SHEETS, Paper
from labels.row import MARGIN, SMALL, STRIP
from labels.shape import SheetArea
from labels.sheet import SheetPage

PAPERS = ("letter", "a4", "legal")
"""Those wide enough, keys of `labels.paper.SHEETS`."""

_ROW = 15.0
_MOST = 40
"""Lines of one row; what is longer goes on in another."""
_LABEL = 34.0
_PLATE = 26.0
_DONE = 44.0


@dataclass(frozen=True, slots=True)
class Fact:
    """Something said of the whole count."""

    name: str
    words: str


@dataclass(frozen=True, slots=True)
class SectionResult:
    """What agrees in one section: its letters, how much, and what that may be wrong by."""

    letters: str
    paper: Paper | None
    amount: str
    words: str


@dataclass(frozen=True, slots=True)
class Amiss:
    """Something found: what it is about (slot, place or text), what is amiss, of which thing, what became of it."""

    subject: str
    paper: Paper | None
    words: str
    title: str
    done: str


@dataclass(frozen=True, slots=True)
class Heading:
    """What the rows beneath are, and what stands at their right."""

    words: str
    right: str = ""


Row = Fact | SectionResult | Amiss | Heading


def report(rows: Sequence[Row], title: str, paper: str, shop: str = "") -> list[SheetPage]:
    """The pages of a report; `paper` is one of PAPERS, `shop` its name."""
    page = SHEETS[paper]
    inside = page[0] - 2 * MARGIN
    parts = [part for each in rows for part in (_parts(each, inside) if isinstance(each, Fact) else (each,))]

    def head(told: str) -> tuple[Card, float]:
        return row.titled(title, f"{shop}, {told}".strip(", "), page)

    return row.paged(parts, page, lambda each: _height(each, inside), head, _row)


def _parts(told: Fact, inside: float) -> list[Fact]:
    """A fact too long for one row in as many as it takes, the name over the first."""
    lines = row.lines(told.words, SMALL, inside - _LABEL)
    starts = range(0, max(1, len(lines)), _MOST)
    return [Fact("" if at else told.name, " ".join(lines[at : at + _MOST])) for at in starts]


def _height(told: Row, inside: float) -> float:
    """What a row needs for all of its words."""
    match told:
        case Fact():
            return max(8.0, row.high(row.lines(told.words, SMALL, inside - _LABEL), SMALL) + 4)
        case Amiss():
            return max(_ROW, row.high(row.lines(told.done, SMALL, _DONE, _MOST), SMALL) + 4)
        case Heading():
            return 10.0
    return _ROW


@singledispatch
def _row(told: Row, area: SheetArea) -> Card:
    raise TypeError(told)


@_row.register
def _(told: Fact, area: SheetArea) -> Card:
    return row.fact(told.name, told.words, area, _LABEL)


@_row.register
def _(told: Heading, area: SheetArea) -> Card:
    baseline, right = area.bottom - 2, area.right - _DONE
    shapes = [
        row.text(told.words, area.x, baseline, 3, right - area.x - 2, typeface.BOLD),
        row.text(told.right, right, baseline, SMALL, _DONE, typeface.BOLD),
    ]
    return row.row(f"{told.words}. {told.right}".strip(), area, shapes)


@_row.register
def _(told: SectionResult, area: SheetArea) -> Card:
    words = SheetArea(area.x + _LABEL, area.y + 2, area.width - _LABEL, area.height)
    shapes = [
        *row.edge(told.paper, SheetArea(area.x, area.y, STRIP, area.height)),
        *row.plate("", told.letters or "tray", SheetArea(area.x + STRIP + 2, area.y + 1.5, _PLATE, 12)),
        row.text(told.amount, words.x, words.y + 3, 3, words.width, typeface.BOLD),
        *row.paragraph(told.words, SheetArea(words.x, area.y + 7, words.width, 6), SMALL, 1),
    ]
    return row.row(f"{told.letters or 'Tray'}: {told.amount} {told.words}", area, shapes)


@_row.register
def _(told: Amiss, area: SheetArea) -> Card:
    words = SheetArea(area.x + _LABEL, area.y + 2, area.width - _LABEL - _DONE - 2, area.height)
    done = SheetArea(words.right + 2, area.y + 2, _DONE, area.height)
    shapes = [
        *row.edge(told.paper, SheetArea(area.x, area.y, STRIP, area.height)),
        *row.code_plate(told.subject, SheetArea(area.x + STRIP + 2, area.y + 1.5, _PLATE, 12)),
        row.text(told.words, words.x, words.y + SMALL, SMALL, words.width, typeface.BOLD),
        *row.paragraph(told.title, SheetArea(words.x, area.y + 6, words.width, 8), SMALL, 2),
        *row.paragraph(told.done, done, SMALL, _MOST),
    ]
    return row.row(f"{told.subject}: {told.words}. {told.title} {told.done}".strip(), area, shapes)
