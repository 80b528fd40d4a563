"""What slips and rounds on paper are made of: rows with a thing's edge, picture, plate and words. Lengths in mm."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TypeVar

from labels import code128, slot_code, typeface
from labels.card import Card
from labels.paper import INK, WHITE, Paper
from labels.shape import Bars, Pattern, Picture, Rect, Shape, SheetArea, Text
from labels.sheet import SheetPage

MARGIN = 8.0  # what a printer may leave blank, each side
MODULE = 0.375  # of bars read at arm's length; three whole dots of a printer of 8 dots a mm
BAR_HEIGHT = 9.0
SMALL = 2.3  # cap height of what is read with the sheet in the hand
STRIP = 4.0
_GREY = "#b0b0b0"
_T = TypeVar("_T")

Size = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Thing:
    """What stands in a slot. `paper` is its section's, `picture` a JPEG; both may be missing, and so may the code.

    `says` is a sentence of what the order calls it, where that is another title. `packing`: what to mind when it is
    packed; it is never cut short.
    """

    code: str
    title: str
    bin: str
    paper: Paper | None = None
    picture: bytes = b""
    says: str = ""
    packing: str = ""


PITCH = 1.9 * SMALL
"""From one line of small type to the next."""


def text(words: str, x: float, baseline: float, cap: float, room: float, font: str = typeface.REGULAR) -> Text:
    """A line of type of this cap height, smaller where it would be longer than `room`."""
    return Text(x, baseline, typeface.fit(words, cap, room, font), words, font)


def lines(words: str, cap: float, room: float, most: int | None = None, font: str = typeface.REGULAR) -> list[str]:
    """Words broken into lines of `room` mm, at most `most` of them; what does not fit ends in an ellipsis."""
    size = cap / typeface.CAP_HEIGHT

    def fits(line: str) -> bool:
        return typeface.width(line, size, font) <= room

    made = [""]
    for word in words.split():
        longer = f"{made[-1]} {word}".strip()
        if fits(longer):
            made[-1] = longer
        elif made[-1]:
            made.append(word)
        else:
            made[-1] = word
    if most is not None and len(made) > most:
        made = [*made[: most - 1], made[most - 1] + "…"]
    return [_shortened(line, fits) for line in made]


def _shortened(line: str, fits: Callable[[str], bool]) -> str:
    """The line, or as many of its letters as fit before an ellipsis."""
    kept = line
    while kept and not fits(line):
        kept = kept[:-1]
        line = kept.rstrip("… ") + "…"
    return line


def high(lines: Sequence[str], cap: float) -> float:
    """What a paragraph of these lines needs, from its top to its last baseline."""
    return cap + 1.9 * cap * (len(lines) - 1)


def paragraph(
    words: str, area: SheetArea, cap: float, most: int | None = None, font: str = typeface.REGULAR
) -> list[Shape]:
    """Lines from the top of an area, 1.9 cap heights apart."""
    return [
        text(line, area.x, area.y + cap + 1.9 * cap * place, cap, area.width, font)
        for place, line in enumerate(lines(words, cap, area.width, most, font))
    ]


def plate(letters: str, figures: str, area: SheetArea) -> list[Shape]:
    """A white plate: letters at half height, figures at full height, in the middle."""
    per_size = (typeface.width(letters, 0.5, typeface.BOLD), typeface.width(figures, 1, typeface.BOLD))
    size = min(0.62 * area.height / typeface.CAP_HEIGHT, (area.width - 2.4) / max(sum(per_size), 1e-6))
    baseline = area.y + (area.height + size * typeface.CAP_HEIGHT) / 2
    start = area.x + (area.width - size * sum(per_size)) / 2
    return [
        Rect(area.x, area.y, area.width, area.height, WHITE, 0.5, 1.5),
        Text(start, baseline, size / 2, letters, typeface.BOLD),
        Text(start + size * per_size[0], baseline, size, figures, typeface.BOLD),
    ]


def code_plate(code: str, area: SheetArea) -> list[Shape]:
    """The plate of a slot; a text that is no slot code stands in it whole."""
    try:
        letters = slot_code.section_of(code)
    except slot_code.CodeError:
        return plate("", code or "?", area)
    return plate(letters, code[len(letters) :], area)


def edge(paper: Paper | None, area: SheetArea) -> list[Shape]:
    """The section's paper with its pattern."""
    if paper is None:
        return []
    return [
        Rect(area.x, area.y, area.width, area.height, paper.hex),
        Pattern(area.x, area.y, area.width, area.height, paper.pattern),
        Rect(area.right - 0.25, area.y, 0.25, area.height, INK),
    ]


def picture(thing: Thing, area: SheetArea) -> list[Shape]:
    """The thing's picture; the section's pattern where there is none."""
    if thing.picture:
        return [Picture(area.x, area.y, area.width, area.height, thing.picture)]
    return edge(thing.paper, area)


def square(x: float, y: float, side: float) -> Rect:
    """A box for a tick or a figure."""
    return Rect(x, y, side, side, WHITE, 0.5, 0.8)


def bars(words: str, x: float, y: float, height: float = BAR_HEIGHT) -> tuple[list[Shape], Bars]:
    """Code 128 with its text beneath; `x` is the left end of its quiet zone."""
    drawn = Bars(x + code128.QUIET * MODULE, y, height, MODULE, code128.widths(words))
    return [drawn, text(words, drawn.x, y + height + 1 + SMALL, SMALL, drawn.width, typeface.BOLD)], drawn


def bars_width(words: str) -> float:
    """Its length with both quiet zones."""
    return (code128.modules(words) + 2 * code128.QUIET) * MODULE


def rule(y: float, page: Size) -> Rect:
    """A thin line under a row."""
    return Rect(MARGIN, y, page[0] - 2 * MARGIN, 0.15, _GREY)


def fact(name: str, words: str, area: SheetArea, room: float) -> Card:
    """A name in bold, `room` wide, and what is said of it beside it."""
    beside = SheetArea(area.x + room, area.y + 2, area.width - room, area.height)
    shapes = [
        text(name, area.x, area.y + 2 + SMALL, SMALL, room - 2, typeface.BOLD),
        *paragraph(words, beside, SMALL),
    ]
    return row(f"{name}: {words}", area, shapes)


def titled(title: str, told: str, page: Size) -> tuple[Card, float]:
    """The head of a sheet and where its rows begin: the title, and over it in small type what is `told`."""
    inside = page[0] - 2 * MARGIN
    shapes: list[Shape] = [
        text(told, MARGIN, MARGIN + SMALL, SMALL, inside),
        text(title, MARGIN, MARGIN + 9, 4, inside, typeface.BOLD),
    ]
    return row(f"{title}, {told}".strip(", "), SheetArea(MARGIN, MARGIN, inside, 12), shapes), MARGIN + 13


def row(alt: str, area: SheetArea, shapes: Sequence[Shape], bars_: Bars | None = None) -> Card:
    """A drawn row that says `alt`."""
    return Card(alt, area, tuple(shapes), SMALL, bars_)


def paged(
    things: Sequence[_T],
    page: Size,
    height: float | Callable[[_T], float],
    head: Callable[[str], tuple[Card, float]],
    drawn: Callable[[_T, SheetArea], Card],
) -> list[SheetPage]:
    """Pages with a head and rows, all of this height or each of its own; `head` is given "page 1 of 2", empty for a
    single page.

    It gives itself and where the rows begin. `drawn` draws one thing into its row.
    """
    top = head("")[1]
    sheets: list[list[tuple[_T, SheetArea]]] = [[]]
    for thing in things:
        high = height(thing) if callable(height) else height
        y = sheets[-1][-1][1].bottom if sheets[-1] else top
        if sheets[-1] and y + high > page[1] - MARGIN:
            sheets.append([])
            y = top
        sheets[-1].append((thing, SheetArea(MARGIN, y, page[0] - 2 * MARGIN, high)))
    pages = []
    for number, sheet in enumerate(sheets, 1):
        first, _ = head(f"page {number} of {len(sheets)}" if len(sheets) > 1 else "")
        rows = [drawn(*pair) for pair in sheet]
        marks = tuple(rule(each.area.bottom, page) for each in rows)
        pages.append(SheetPage(*page, (first, *rows), (rule(top, page), *marks)))
    return pages
