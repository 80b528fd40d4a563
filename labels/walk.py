"""A round on paper: its stops in order, and where to write what happened. Lengths in mm.

A stop's bars say its own number, `STP…`, so that the sheet is entered quickly afterwards; they are no card's, and no
card's text stands on the sheet. That a card was in hand is proved by its check digit, which is printed on the card and
shown nowhere else: whoever picks writes it into the stop's box.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from labels import row, slot_code, typeface
from labels.card import Card
from labels.paper import SHEETS
from labels.row import MARGIN, SMALL, STRIP, Thing
from labels.shape import Shape, SheetArea
from labels.sheet import SheetPage

PAPERS = ("letter", "a4", "legal")
"""Those wide enough, keys of `labels.paper.SHEETS`."""

_ROW = 25.0
_ADVICE = (
    "At each stop: take the thing, look whether it is the one in the picture, and write the last digit of its card "
    "into the box. Not there: tick “missing”. Afterwards scan the bars, or open the round, and enter what is written."
)


@dataclass(frozen=True, slots=True)
class PrintedStop:
    """Place on the walk, the stop's own number, where its thing goes, and the thing. `done`: nothing to do any more.

    `note`: where the thing is, if not in its own bin.
    """

    position: int
    number: int
    basket: str
    order: str
    thing: Thing
    done: str = ""
    note: str = ""


def walk(stops: Sequence[PrintedStop], title: str, paper: str) -> list[SheetPage]:
    """The pages of a round; `paper` is one of PAPERS."""
    page = SHEETS[paper]
    return row.paged(stops, page, lambda stop: _height(stop, page), lambda told: _head(title, page, told), _stop)


def _height(stop: PrintedStop, page: row.Size) -> float:
    return _ROW + row.PITCH * len(_packing(stop.thing, page[0] - 2 * MARGIN))


def _packing(thing: Thing, width: float) -> list[str]:
    """What to mind when a thing is packed, in lines below its row."""
    return row.lines(thing.packing, SMALL, width - STRIP - 3) if thing.packing else []


def _head(title: str, page: row.Size, told: str) -> tuple[Card, float]:
    inside = page[0] - 2 * MARGIN
    words = f"{title}, {told}".strip(", ")
    shapes: list[Shape] = [row.text(words, MARGIN, MARGIN + 5, 5, inside, typeface.BOLD)]
    shapes += row.paragraph(_ADVICE, SheetArea(MARGIN, MARGIN + 8, inside, 12), SMALL, 2)
    return row.row(f"{words}. {_ADVICE}", SheetArea(MARGIN, MARGIN, inside, 18), shapes), MARGIN + 18.5


def _stop(stop: PrintedStop, area: SheetArea) -> Card:
    """Edge, bin, picture, plate, title; then the box for the digit, the tick for what is missing, and the bars."""
    thing = stop.thing
    words = slot_code.stop_text(stop.number)
    side = _ROW - 3
    place = SheetArea(area.x + STRIP + 1.5, area.y + 2, 22, area.height)
    picture = SheetArea(place.right + 1.5, area.y + 1.5, side, side)
    said = SheetArea(
        picture.right + 2.5, area.y + 2, area.right - picture.right - row.bars_width(words) - 24, area.height
    )
    entry = said.right + 2
    shapes = [
        *row.edge(thing.paper, SheetArea(area.x, area.y, STRIP, area.height)),
        row.text(f"{stop.position}.", place.x, place.y + SMALL, SMALL, place.width),
        row.text(thing.bin, place.x, place.y + 10, 5, place.width, typeface.BOLD),
        row.text(f"basket {stop.basket}", place.x, place.y + 16, SMALL + 0.5, place.width, typeface.BOLD),
        row.text(f"order {stop.order}", place.x, place.y + 20.5, SMALL, place.width),
        *row.picture(thing, picture),
        *row.code_plate(thing.code, SheetArea(said.x, area.y + 1.5, min(26, said.width), 11)),
        *row.paragraph(thing.title, SheetArea(said.x, area.y + 14.5, said.width, 10), SMALL, 2),
    ]
    below = enumerate(_packing(thing, area.width), 1)
    shapes += [
        row.text(line, place.x, area.y + _ROW - 2 + row.PITCH * n, SMALL, area.right - place.x) for n, line in below
    ]
    if stop.note:
        shapes += row.paragraph(stop.note, SheetArea(said.x + 28, area.y + 1.5, said.width - 28, 11), SMALL, 3)
    if stop.done:
        shapes.append(row.text(stop.done, entry, area.y + 10, SMALL + 0.5, area.right - entry, typeface.BOLD))
        return row.row(f"Stop {stop.position}, {thing.code}: {stop.done}.", area, shapes)
    drawn, bars = row.bars(words, area.right - row.bars_width(words), area.y + 4)
    shapes += [
        row.square(entry, area.y + 2, 11),
        row.text("last digit", entry, area.y + 16, 1.7, 18),
        row.square(entry, area.y + 18, 4.5),
        row.text("missing", entry + 6, area.y + 21.5, 1.7, 14),
        *drawn,
    ]
    note = "".join(f" {each}" for each in (stop.note, thing.packing) if each)
    alt = f"Stop {stop.position}, bin {thing.bin}: {thing.code}, {thing.title}, into basket {stop.basket}.{note}"
    return row.row(f"{alt} Its bars say {words}.", area, shapes, bars)
