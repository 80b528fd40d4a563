"""What was done for an order, on paper, with the ledger's entries that say so. Lengths in mm."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import singledispatch

from labels import row, typeface
from labels.card import Card
from labels.paper import SHEETS
from labels.row import MARGIN, SMALL, STRIP, Thing
from labels.shape import SheetArea
from labels.sheet import SheetPage

PAPERS = ("letter", "a4", "legal")
"""Those wide enough, keys of `labels.paper.SHEETS`."""

_FINE = 1.8  # cap height of entries and hashes: read at a desk, not at work
_PITCH = 1.9 * _FINE
_LABEL = 34.0
_SIDE = 24.0


@dataclass(frozen=True, slots=True)
class OrderFact:
    """Something said of the whole order."""

    name: str
    words: str


@dataclass(frozen=True, slots=True)
class BoughtThing:
    """A thing of the order, and what was done with it, a sentence each."""

    thing: Thing
    done: Sequence[str]


@dataclass(frozen=True, slots=True)
class PrintedEntry:
    """An entry of the ledger: its number, when, by whom, what it says, and its hash as hex text."""

    number: int
    at: str
    who: str
    words: str
    hash: str


EvidenceRow = OrderFact | BoughtThing | PrintedEntry


def evidence(rows: Sequence[EvidenceRow], title: str, under: str, paper: str) -> list[SheetPage]:
    """The pages; `under` stands over the title in small type, `paper` is one of PAPERS."""
    page = SHEETS[paper]
    inside = page[0] - 2 * MARGIN

    def head(told: str) -> tuple[Card, float]:
        return row.titled(title, f"{under}, {told}".strip(", "), page)

    return row.paged(rows, page, lambda each: _height(each, inside), head, _drawn)


def _height(told: EvidenceRow, inside: float) -> float:
    match told:
        case OrderFact():
            return max(7.0, row.high(row.lines(told.words, SMALL, inside - _LABEL), SMALL) + 4)
        case BoughtThing():
            return max(_SIDE + 3, 18 + row.PITCH * len(told.done))
    return 3.2 + row.high([*_said(told, inside), told.hash], _FINE)


def _said(told: PrintedEntry, inside: float) -> list[str]:
    return row.lines(f"{told.at}, {told.who}: {told.words}", _FINE, inside - _LABEL)


@singledispatch
def _drawn(told: EvidenceRow, area: SheetArea) -> Card:
    raise TypeError(told)


@_drawn.register
def _(told: OrderFact, area: SheetArea) -> Card:
    return row.fact(told.name, told.words, area, _LABEL)


@_drawn.register
def _(told: BoughtThing, area: SheetArea) -> Card:
    thing = told.thing
    picture = SheetArea(area.x + STRIP + 2, area.y + 1.5, _SIDE, _SIDE)
    plate = SheetArea(picture.right + 3, area.y + 2, 24, 12)
    words = SheetArea(plate.right + 3, area.y + 2.5, area.right - plate.right - 3, 12)
    done = enumerate(told.done)
    shapes = [
        *row.edge(thing.paper, SheetArea(area.x, area.y, STRIP, area.height)),
        *row.picture(thing, picture),
        *row.code_plate(thing.code, plate),
        *row.paragraph(thing.title, words, SMALL + 0.2, 2, typeface.BOLD),
        *(row.text(each, plate.x, area.y + 19 + row.PITCH * n, SMALL, area.right - plate.x) for n, each in done),
    ]
    return row.row(" ".join((f"{thing.code}: {thing.title}.", *told.done)), area, shapes)


@_drawn.register
def _(told: PrintedEntry, area: SheetArea) -> Card:
    x, room = area.x + _LABEL, area.width - _LABEL
    said = _said(told, area.width)
    top = area.y + 1.6 + _FINE
    shapes = [
        row.text(f"Entry {told.number}", area.x, top, _FINE, _LABEL - 2, typeface.BOLD),
        *(row.text(line, x, top + _PITCH * n, _FINE, room) for n, line in enumerate(said)),
        row.text(told.hash, x, top + _PITCH * len(said), _FINE, room),
    ]
    return row.row(f"Entry {told.number}, {' '.join(said)} {told.hash}", area, shapes)
