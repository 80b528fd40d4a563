"""The plain card: bars along the top, the number on a white plate, the section's paper as an edge.

All lengths in mm, x to the right and y down from the top left corner of the sheet.
"""

from dataclasses import dataclass

from labels import code128, slot_code, typeface
from labels.paper import COLOURS, INK, TILE, WHITE, Paper

X_MIN = 0.33
X_MAX = 0.72
CAP_MIN = 4.65  # 16 minutes of arc at 1 m: 2 * 1000 * tan(16'/2), ISO 9241-3
_CUT = 0.5  # how far a cut may stray into the card, each side
_STRIP = 1.5  # the section's paper above the bars: what still shows when cards stand behind each other
_GAP = 1.0
_SMALL = 2.2  # cap height of the card text: read in the hand


class DoesNotFit(ValueError):
    """A card too small for its bars or its number."""


@dataclass(frozen=True, slots=True)
class Rect:
    """A filled area, with a border of `line` mm inside it and rounded corners where given."""

    x: float
    y: float
    width: float
    height: float
    fill: str
    line: float = 0.0
    radius: float = 0.0


@dataclass(frozen=True, slots=True)
class Pattern:
    """An area covered with the strokes of a named pattern."""

    x: float
    y: float
    width: float
    height: float
    name: str


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text: left end and baseline, size of the type."""

    x: float
    y: float
    size: float
    text: str
    font: str


Shape = Rect | Pattern | Text


@dataclass(frozen=True, slots=True)
class Area:
    """Where a card lies on its sheet."""

    x: float
    y: float
    width: float
    height: float

    @property
    def bottom(self) -> float:
        return self.y + self.height


def shapes(code: str, section_name: str, colour: str, area: Area) -> list[Shape]:
    """The drawing of one card, in painting order.

    `colour` is a key of `labels.paper.COLOURS`. DoesNotFit: the area is too small. CodeError: no slot code.
    """
    text = slot_code.card_text(code)
    x_dimension = module_width(text, area.width)
    bars = _bars_area(text, x_dimension, area)
    small = typeface.fit(text, _SMALL, area.width, typeface.BOLD)
    baseline = bars.bottom + _GAP + _SMALL
    below = Area(area.x, baseline + _GAP, area.width, area.bottom - baseline - _GAP)
    centre = area.x + area.width / 2
    return [
        *_edge(COLOURS[colour], area, below),
        *_bars(text, x_dimension, bars),
        Text(centre - typeface.width(text, small, typeface.BOLD) / 2, baseline, small, text, typeface.BOLD),
        *_plate(code, section_name, below),
    ]


def module_width(text: str, width: float) -> float:
    """X in mm: as wide as a card of `width` mm allows with its quiet zones, at most 0.72; DoesNotFit below 0.33."""
    length = code128.modules(text) + 2 * code128.QUIET
    x_dimension = min(X_MAX, (width - 2 * _CUT) / length)
    if x_dimension < X_MIN:
        raise DoesNotFit(f"bars of {text} need a card at least {length * X_MIN + 2 * _CUT:.1f} mm wide")
    return x_dimension


def _bars_area(text: str, x_dimension: float, area: Area) -> Area:
    """The bars without quiet zones; never lower than ISO/IEC 15417 recommends, higher where the card has room."""
    length = code128.modules(text) * x_dimension
    height = max(5.0, 0.15 * length, min(20.0, 0.36 * area.height))
    return Area(area.x + (area.width - length) / 2, area.y + _STRIP + _GAP, length, height)


def _bars(text: str, x_dimension: float, area: Area) -> list[Shape]:
    shapes: list[Shape] = []
    at = 0
    for index, width in enumerate(code128.widths(text)):
        if index % 2 == 0:
            shapes.append(Rect(area.x + at * x_dimension, area.y, width * x_dimension, area.height, "#000000"))
        at += width
    return shapes


def _edge(paper: Paper, area: Area, below: Area) -> list[Shape]:
    """The section's paper along the top and left, on a white card: no colour comes near the bars."""
    band = _band(area.width)
    return [
        Rect(area.x, area.y, area.width, area.height, WHITE),
        Rect(area.x, area.y, area.width, _STRIP, paper.hex),
        Rect(area.x, below.y, band, below.height, paper.hex),
        Pattern(area.x, below.y, band, below.height, paper.pattern),
        Rect(area.x + band, below.y, 0.25, below.height, INK),
    ]


def _band(width: float) -> float:
    """Width of the edge on a card of `width` mm: whole tiles of its pattern."""
    return TILE * max(1, round(0.12 * width / TILE))


def _plate(code: str, section_name: str, below: Area) -> list[Shape]:
    """The white plate: section letters at half height, number at full height, section name under them."""
    left = below.x + _band(below.width) + 2 * _GAP
    plate = Rect(left, below.y, below.x + below.width - 2 * _GAP - left, below.height - 2 * _GAP, WHITE, 0.5, 1.5)
    inner = plate.width - 6 * _GAP
    middle = plate.x + plate.width / 2
    name_cap = min(5.0, max(2.0, 0.11 * plate.height))
    name_size = typeface.fit(section_name, name_cap, inner)
    name_line = plate.y + plate.height - 0.9 * _GAP - 0.45 * name_cap  # room for descenders
    return [
        plate,
        *_number(code, middle, plate.y + 1.9 * _GAP, name_line - name_cap - 1.5 * _GAP, inner),
        Text(
            middle - typeface.width(section_name, name_size) / 2, name_line, name_size, section_name, typeface.REGULAR
        ),
    ]


def _number(code: str, middle: float, top: float, baseline: float, length: float) -> list[Shape]:
    letters = slot_code.section_of(code)
    number = code[len(letters) :]
    per_size = (typeface.width(letters, 0.5, typeface.BOLD), 0.03, typeface.width(number, 1, typeface.BOLD))
    size = min((baseline - top) / typeface.CAP_HEIGHT, length / sum(per_size))
    cap_height = size * typeface.CAP_HEIGHT
    if cap_height < CAP_MIN:
        raise DoesNotFit(f"the number of {code} would be {cap_height:.1f} mm high, at least {CAP_MIN} mm can be read")
    baseline -= (baseline - top - cap_height) / 2
    start = middle - size * sum(per_size) / 2
    return [
        Text(start, baseline, size / 2, letters, typeface.BOLD),
        Text(start + size * (per_size[0] + per_size[1]), baseline, size, number, typeface.BOLD),
    ]
