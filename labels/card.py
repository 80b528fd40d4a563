"""One card: its number on a white plate, its bars on white, its section's paper as an edge. Lengths in mm."""

from dataclasses import dataclass
from enum import Enum

from labels import code128, colour, slot_code, typeface
from labels.paper import INK, TILE, WHITE, Paper
from labels.shape import Bars, Pattern, Rect, Shape, SheetArea, Text

X_MIN = 0.33
X_MAX = 1.016  # the widest module of general scanning, GS1 General Specifications 5.12; from memory
CAP_MIN = 4.65  # 16 minutes of arc at 1 m: 2 * 1000 * tan(16'/2), ISO 9241-3
_QUIET = code128.QUIET + 0.5  # modules left each side; half a module is for the cut that strays
_BARS_TOP = 1.5  # below the top edge of a filed card: so much of it shows when cards stand behind each other
_STRIP = 1.0  # of the section's paper above those bars
_GAP = 1.0
_SMALL = 2.2  # cap height of the card text: read in the hand
_HEADER = 10.0  # of a tag: the zone of its hole
_HOLE = 5.0
_DIVIDER = 0.25


class CardTooSmall(ValueError):
    """A card too small for its bars or its number."""


class Unreadable(ValueError):
    """A colour that leaves no contrast to the bars printed on it."""


class Style(Enum):
    """What a card is for: filed in a bin, looked at, hung on a thing, or stuck on the bin itself."""

    FILED = "filed"
    FACE = "face"
    TAG = "tag"
    BIN = "bin"


@dataclass(frozen=True, slots=True)
class CardDesign:
    """What all cards of a section share.

    Without `panel` the bars stand on the section's paper. `dot` is the printer's dot: bars become whole dots wide;
    0 for a printer whose dots are too fine to matter.
    """

    section_name: str
    paper: Paper
    style: Style = Style.FILED
    panel: bool = True
    dot: float = 0.0

    def __post_init__(self) -> None:
        if not self.panel:
            refuse_unreadable(self.paper)


@dataclass(frozen=True, slots=True)
class Card:
    """A drawn card: what it says in words, its face, its shapes in painting order, the cap height of its number.

    `bars` is None on a bin's front without them. `turned`: drawn upside down, about the middle of its area.
    """

    alt: str
    area: SheetArea
    shapes: tuple[Shape, ...]
    cap_height: float
    bars: Bars | None = None
    turned: bool = False


def refuse_unreadable(paper: Paper) -> None:
    """Unreadable unless black bars straight on the paper have contrast for a red-light scanner and for a camera."""
    seen = {
        "a red-light scanner": colour.contrast_under_red(paper.hex),
        "a camera": colour.contrast_for_camera(paper.hex),
    }
    for reader, contrast in seen.items():
        if contrast < colour.CONTRAST_LEAST:
            raise Unreadable(
                f"bars on {paper.hex} have a contrast of {100 * contrast:.0f} % for {reader}, at least "
                f"{100 * colour.CONTRAST_LEAST:.0f} % is needed. Keep the white panel, or take a paler colour"
            )


def slot_card(code: str, design: CardDesign, area: SheetArea) -> Card:
    """The card of a slot. DoesNotFit: the area is too small. CodeError: no slot code."""
    text = slot_code.card_text(code)
    zones = _zones(text, design, area)
    letters = slot_code.section_of(code)
    plate, cap_height = _plate(letters, code[len(letters) :], design.section_name, zones.plate)
    small = typeface.fit(text, _SMALL, area.width, typeface.BOLD)
    shapes = (
        Rect(area.x, area.y, area.width, area.height, WHITE if design.panel else design.paper.hex),
        *_edge(zones.edge, design.paper),
        *(_hole(area) if design.style is Style.TAG else ()),
        zones.bars,
        _centred(text, small, area.x + area.width / 2, zones.text_line, typeface.BOLD),
        *plate,
    )
    alt = f"Card {code} of section {design.section_name}; its bars say {text}."
    return Card(alt, area, shapes, cap_height, zones.bars)


def bin_front(first: str, last: str, name: str, design: CardDesign, area: SheetArea) -> Card:
    """The front of a bin: the slot codes from first to last that it holds, and the bin's name, which may be empty.

    Bars say the name, so that a photo tells which bin it shows; where they or the numbers would be too small, there
    are none. A name that is not rack-tier-position has none either.
    """
    band = SheetArea(area.x, area.y, _band(area.width), area.height)
    try:
        bars = _front_bars(name, design, SheetArea(band.right, area.y, area.right - band.right, area.height))
        return _front(first, last, name, design, area, band, bars)
    except (CardTooSmall, slot_code.BadFormat):
        return _front(first, last, name, design, area, band, None)


def _front_bars(name: str, design: CardDesign, area: SheetArea) -> Bars:
    text = slot_code.bin_text(name)
    height = _bars(text, design, area, 0, 0.24 * area.height).height
    return _bars(text, design, area, area.bottom - 1.5 * _GAP - height, height)


def _front(
    first: str, last: str, name: str, design: CardDesign, area: SheetArea, band: SheetArea, bars: Bars | None
) -> Card:
    letters = slot_code.section_of(first)
    numbers = [code[len(letters) :] for code in ((first,) if first == last else (first, last))]
    bottom = bars.y if bars else area.bottom
    inside = SheetArea(band.right + _GAP, area.y + _GAP, area.right - band.right - 2 * _GAP, bottom - area.y - 2 * _GAP)
    plate, cap_height = _plate(letters, "–".join(numbers), design.section_name, inside, name)
    ground = Rect(area.x, area.y, area.width, area.height, WHITE)
    alt = f"Front of bin {name}".rstrip() + f": {' to '.join((first, last))} of section {design.section_name}"
    said = f"; its bars say {slot_code.bin_text(name)}." if bars else "."
    shapes = (ground, *_edge([band], design.paper), *((bars,) if bars else ()), *plate)
    return Card(alt + said, area, shapes, cap_height, bars)


def module_width(text: str, width: float, dot: float = 0.0) -> float:
    """X: as wide as a card of `width` mm allows with its quiet zones, in whole dots if given; DoesNotFit below 0.33."""
    length = code128.modules(text) + 2 * _QUIET
    module = min(X_MAX, width / length)
    module = dot * int(module / dot + 1e-9) if dot else module
    if module < X_MIN - 1e-9:
        raise CardTooSmall(f"bars of {text} need a card at least {length * max(X_MIN, dot):.1f} mm wide")
    return module


@dataclass(frozen=True, slots=True)
class _Zones:
    """A card's parts: its bars, the baseline of the card text, where the plate stands, the areas of the edge."""

    bars: Bars
    text_line: float
    plate: SheetArea
    edge: list[SheetArea]


def _zones(text: str, design: CardDesign, area: SheetArea) -> _Zones:
    if design.style is Style.FILED:
        bars = _bars(text, design, area, area.y + _BARS_TOP, 0.5 * area.height - 3.5)
        text_line = bars.y + bars.height + _GAP + _SMALL
        below = SheetArea(area.x, text_line + _GAP, area.width, area.bottom - text_line - _GAP)
        band = SheetArea(area.x, below.y, _band(area.width), below.height)
        plate = SheetArea(band.right + _GAP, below.y, area.right - band.right - 2 * _GAP, below.height - _GAP)
        return _Zones(bars, text_line, plate, [SheetArea(area.x, area.y, area.width, _STRIP), band])
    share = 0.28 if design.style is Style.FACE else 0.24
    height = _bars(text, design, area, 0, share * area.height).height
    text_line = area.bottom - 1.5 * _GAP
    bars = _bars(text, design, area, text_line - _SMALL - _GAP - height, height)
    if design.style is Style.FACE:
        band = SheetArea(area.x, area.y, _band(area.width), bars.y - _GAP - area.y)
        plate = SheetArea(band.right + _GAP, area.y + _GAP, area.right - band.right - 2 * _GAP, band.height - _GAP)
    else:
        band = SheetArea(area.x, area.y, area.width, _HEADER)
        plate = SheetArea(area.x + _GAP, band.bottom + _GAP, area.width - 2 * _GAP, bars.y - band.bottom - 2 * _GAP)
    return _Zones(bars, text_line, plate, [band])


def _bars(text: str, design: CardDesign, area: SheetArea, top: float, wanted: float) -> Bars:
    """The bars in the middle of the card, on whole dots, never lower than ISO/IEC 15417 recommends."""
    module = module_width(text, area.width, design.dot)
    length = code128.modules(text) * module
    left = area.x + (area.width - length) / 2
    left = round(left / design.dot) * design.dot if design.dot else left
    return Bars(left, top, max(5.0, 0.15 * length, min(20.0, wanted)), module, code128.widths(text))


def _edge(parts: list[SheetArea], paper: Paper) -> list[Shape]:
    """The section's paper with its pattern, and a line of ink where it ends."""
    shapes: list[Shape] = []
    for part in parts:
        shapes.append(Rect(part.x, part.y, part.width, part.height, paper.hex))
        if part.height <= _STRIP:
            continue
        shapes.append(Pattern(part.x, part.y, part.width, part.height, paper.pattern))
        if part.width > part.height and part.height <= _HEADER:
            shapes.append(Rect(part.x, part.bottom - _DIVIDER, part.width, _DIVIDER, INK))
        else:
            shapes.append(Rect(part.right - _DIVIDER, part.y, _DIVIDER, part.height, INK))
    return shapes


def _hole(area: SheetArea) -> list[Shape]:
    """Where to punch a tag: a white ring that stays, and the hole."""
    x, y = area.x + area.width / 2, area.y + _HEADER / 2
    return [
        Rect(x - size / 2, y - size / 2, size, size, WHITE, line, size / 2)
        for size, line in ((_HOLE + 3, 0.3), (_HOLE, 0.2))
    ]


def _band(width: float) -> float:
    """Width of the edge on a card of `width` mm: whole tiles of its pattern."""
    return TILE * max(1, round(0.12 * width / TILE))


def _plate(
    letters: str, number: str, section_name: str, area: SheetArea, bin_name: str = ""
) -> tuple[list[Shape], float]:
    """The white plate, and the cap height of its number.

    Section letters stand at half height, the number at full height, a bin's name above and the section's name below.
    """
    plate = Rect(area.x, area.y, area.width, area.height, WHITE, 0.5, 1.5)
    inner = area.width - 4 * _GAP
    middle = area.x + area.width / 2
    name_cap = min(6.0, max(2.0, 0.11 * area.height))
    name_size = typeface.fit(section_name, name_cap, inner)
    name_line = area.bottom - 0.9 * _GAP - 0.45 * name_cap  # room for descenders
    top = area.y + 1.9 * _GAP
    shapes: list[Shape] = [plate, _centred(section_name, name_size, middle, name_line, typeface.REGULAR)]
    if bin_name:
        bin_cap = 0.2 * area.height
        shapes.append(_centred(bin_name, typeface.fit(bin_name, bin_cap, inner), middle, top + bin_cap))
        top += bin_cap + 1.5 * _GAP
    drawn, cap_height = _number(letters, number, middle, top, name_line - name_cap - 1.5 * _GAP, inner)
    return [*shapes, *drawn], cap_height


def _centred(text: str, size: float, middle: float, baseline: float, font: str = typeface.REGULAR) -> Text:
    return Text(middle - typeface.width(text, size, font) / 2, baseline, size, text, font)


def _number(
    letters: str, number: str, middle: float, top: float, baseline: float, length: float
) -> tuple[list[Shape], float]:
    """Letters and number between two heights, at most `length` long, and their cap height."""
    per_size = (typeface.width(letters, 0.5, typeface.BOLD), 0.03, typeface.width(number, 1, typeface.BOLD))
    size = min((baseline - top) / typeface.CAP_HEIGHT, length / sum(per_size))
    cap_height = size * typeface.CAP_HEIGHT
    if cap_height < CAP_MIN:
        high = f"would be {cap_height:.1f} mm high, and can be read from {CAP_MIN} mm on"
        left = high if cap_height > 0 else "has no room left"
        raise CardTooSmall(f"{letters}{number} {left}: make the card larger, or the margins smaller")
    baseline -= (baseline - top - cap_height) / 2
    start = middle - size * sum(per_size) / 2
    return [
        Text(start, baseline, size / 2, letters, typeface.BOLD),
        Text(start + size * (per_size[0] + per_size[1]), baseline, size, number, typeface.BOLD),
    ], cap_height
