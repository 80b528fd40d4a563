"""The list of parcels that somebody took along, to be signed. Lengths in mm.

It has what tells one parcel from another, and nothing of who gets it.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from labels import row, typeface
from labels.card import Card
from labels.paper import INK, SHEETS
from labels.row import MARGIN, SMALL
from labels.shape import Rect, Shape, SheetArea
from labels.sheet import SheetPage

PAPERS = ("letter", "a4", "legal")
"""Those wide enough, keys of `labels.paper.SHEETS`."""

_ROW = 9.0
_PLACE = 12.0
_LABEL = 38.0
_TIME = 40.0
_SIGN = 34.0
_TALL = 3.0


@dataclass(frozen=True, slots=True)
class PrintedParcel:
    """Its place on the list, the numbers of its orders, the last characters of its label (empty for none), and when it
    went.
    """

    place: int
    orders: str
    label: str
    at: str


@dataclass(frozen=True, slots=True)
class SignHere:
    """The end of the list: how many parcels, who took them along, and room for name, signature and time."""

    parcels: int
    carrier: str


def sheet(parcels: Sequence[PrintedParcel], title: str, carrier: str, paper: str, shop: str = "") -> list[SheetPage]:
    """The pages of a list; `paper` is one of PAPERS, `shop` its name."""
    page = SHEETS[paper]
    inside = page[0] - 2 * MARGIN

    def head(told: str) -> tuple[Card, float]:
        return _head(title, carrier, page, f"{shop}, {told}".strip(", "))

    rows: list[PrintedParcel | SignHere] = [*parcels, SignHere(len(parcels), carrier)]
    return row.paged(rows, page, lambda each: _height(each, inside), head, _drawn)


def _numbers(told: PrintedParcel, inside: float) -> list[str]:
    room = inside - _PLACE - _LABEL - _TIME
    return row.lines(told.orders, _TALL, room, font=typeface.BOLD)


def _height(told: PrintedParcel | SignHere, inside: float) -> float:
    if isinstance(told, SignHere):
        return _SIGN
    return max(_ROW, row.high(_numbers(told, inside), _TALL) + 6)


def _head(title: str, carrier: str, page: row.Size, told: str) -> tuple[Card, float]:
    inside = page[0] - 2 * MARGIN
    to = f"Carrier: {carrier}" if carrier else "Carrier:"
    shapes: list[Shape] = [
        row.text(told, MARGIN, MARGIN + SMALL, SMALL, inside),
        row.text(title, MARGIN, MARGIN + 9, 4, inside, typeface.BOLD),
        row.text(to, MARGIN, MARGIN + 15, 3, inside),
    ]
    return row.row(f"{title}. {to}, {told}".strip(", "), SheetArea(MARGIN, MARGIN, inside, 18), shapes), MARGIN + 19


def _drawn(told: PrintedParcel | SignHere, area: SheetArea) -> Card:
    return _sign(told, area) if isinstance(told, SignHere) else _parcel(told, area)


def _parcel(told: PrintedParcel, area: SheetArea) -> Card:
    """Place, order numbers, the end of the label, the time."""
    label = f"label ends {told.label}" if told.label else "no label scanned"
    numbers = SheetArea(area.x + _PLACE, area.y + 3, area.width - _PLACE - _LABEL - _TIME, area.height)
    baseline = area.y + 3 + _TALL
    shapes = [
        row.text(f"{told.place}.", area.x, baseline, SMALL, _PLACE - 2),
        *row.paragraph(told.orders, numbers, _TALL, font=typeface.BOLD),
        row.text(label, numbers.right + 2, baseline, SMALL, _LABEL - 4),
        row.text(told.at, area.right - _TIME, baseline, SMALL, _TIME),
    ]
    return row.row(f"{told.place}. Order {told.orders}, {label}, {told.at}", area, shapes)


def _sign(told: SignHere, area: SheetArea) -> Card:
    """One line each for the name, the time and the signature of who takes them along."""
    words = f"Taken along: {told.parcels} {'parcel' if told.parcels == 1 else 'parcels'}."
    third = area.width / 3
    shapes: list[Shape] = [row.text(words, area.x, area.y + 8, 3, area.width, typeface.BOLD)]
    for place, name in enumerate(("Name", "Date and time", "Signature")):
        left = area.x + place * third
        shapes += [
            Rect(left, area.y + 24, third - 6, 0.3, INK),
            row.text(name, left, area.y + 28, SMALL, third - 6),
        ]
    return row.row(f"{words} Name, date and time, signature.", area, shapes)
