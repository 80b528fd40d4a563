"""The slip of an order: what belongs in its parcel, and the bars that open it at the table. Lengths in mm."""

from collections.abc import Sequence
from dataclasses import dataclass

from labels import row, slot_code, typeface
from labels.card import Card
from labels.paper import HALVES, SHEETS
from labels.row import MARGIN, SMALL, STRIP, Thing
from labels.shape import SheetArea
from labels.sheet import SheetPage

PAPERS = SHEETS | HALVES
_ROW = 21.0
_SIDE = _ROW - 3
_WIDE = 150.0  # a page so wide has the bars beside the number


@dataclass(frozen=True, slots=True)
class Slip:
    """An order's number as the shop's channel gave it, the number of its slip, what is said below, and its things."""

    order: str
    number: int
    under: str
    things: Sequence[Thing]


def slips(orders: Sequence[Slip], paper: str) -> list[SheetPage]:
    """A page for each order, or several, in their order; `paper` is a key of `PAPERS`."""
    return [page for slip in orders for page in _pages(slip, PAPERS[paper])]


def _pages(slip: Slip, page: row.Size) -> list[SheetPage]:
    return row.paged(
        slip.things, page, lambda thing: _height(thing, page), lambda told: _head(slip, page, told), _thing
    )


def _says(thing: Thing, width: float) -> list[str]:
    """What the order calls a thing and what to mind when it is packed, in lines below its row."""
    room = width - STRIP - 3
    says = row.lines(thing.says, SMALL, room, 3) if thing.says else []
    return says + (row.lines(thing.packing, SMALL, room) if thing.packing else [])


def _height(thing: Thing, page: row.Size) -> float:
    return _ROW + row.PITCH * len(_says(thing, page[0] - 2 * MARGIN))


def _head(slip: Slip, page: row.Size, told: str) -> tuple[Card, float]:
    words = slot_code.slip_text(slip.number)
    wide = page[0] >= _WIDE
    inside = page[0] - 2 * MARGIN
    bars_width = row.bars_width(words)
    number = SheetArea(MARGIN, MARGIN, inside - bars_width - 4 if wide else inside, 17)
    top = MARGIN if wide else number.bottom + 9
    shapes, bars = row.bars(words, MARGIN + inside - bars_width if wide else MARGIN, top, 14)
    under = f"{slip.under}, {told}".strip(", ")
    shapes += row.plate("", slip.order, number)
    shapes.append(row.text(under, MARGIN, number.bottom + 2.5 + SMALL, SMALL + 0.4, number.width))
    bottom = max(number.bottom + 8, bars.y + bars.height + 6)
    alt = f"Slip of order {slip.order}, {under}; its bars say {words}."
    return row.row(alt, SheetArea(MARGIN, MARGIN, inside, bottom - MARGIN), shapes, bars), bottom


def _thing(thing: Thing, area: SheetArea) -> Card:
    """Edge, picture, plate, both titles and bin, and a box to tick."""
    picture = SheetArea(area.x + STRIP + 1.5, area.y + 1.5, _SIDE, _SIDE)
    plate = SheetArea(picture.right + 2, area.y + 4.5, 21, 12)
    words = SheetArea(plate.right + 2, area.y + 3.5, area.right - plate.right - 12, _ROW)
    box = row.square(area.right - 7.5, area.y + (_ROW - 7) / 2, 7)
    bottom = area.y + _ROW - 3
    said = enumerate(_says(thing, area.width), 1)
    shapes = [
        *row.edge(thing.paper, SheetArea(area.x, area.y, STRIP, area.height)),
        *row.picture(thing, picture),
        *row.code_plate(thing.code, plate),
        *row.paragraph(thing.title, words, SMALL, 3, typeface.BOLD),
        row.text(f"bin {thing.bin}" if thing.bin else "no bin", words.x, bottom, SMALL, words.width),
        *(row.text(line, picture.x, bottom + 1 + row.PITCH * n, SMALL, area.right - picture.x) for n, line in said),
        box,
    ]
    told = f"{thing.code}: {thing.title}, bin {thing.bin}. {thing.says} {thing.packing}"
    return row.row(" ".join(told.split()), area, shapes)
