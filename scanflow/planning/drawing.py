"""A room drawn to scale as SVG: one unit is one millimetre, thin ink lines, in the colour of the text around it.

Bins carry `class="bin"`, `data-bin` and `data-section`; what a section is filled with, and where a bin leads, the
caller says.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Mapping
from html import escape

from scanflow.domain.things import Bin, Rack
from scanflow.planning.room import DEFAULT, Shape

LINE = 6.0  # mm of the room, so that it is thin on any screen
GAP = 400.0  # mm between racks in the front view
MARGIN = 200.0  # mm around a drawing
LETTER = 110.0  # mm, the largest height of the names of bins
NAME = 180.0  # mm, height of the names of racks
TIER = 90.0  # mm, height of the numbers of tiers
BESIDE = 140.0  # mm to the left of a rack, for the numbers of its tiers
WIDE = 0.6  # of its height, of a letter


def plan_view(racks: Iterable[Rack], shape: Shape = DEFAULT, *, link: Callable[[Rack], str] | None = None) -> str:
    """The room from above: racks on both sides of their aisles, the table in front, a scale of one metre.

    `link` gives the address that a rack leads to.
    """
    racks = tuple(racks)
    depth, width = shape.rack_depth * 1000, shape.rack_width * 1000
    walkway = shape.aisle_pitch * 1000 - 2 * depth
    beside: dict[tuple[int, float], int] = defaultdict(int)
    body = []
    for rack in racks:
        side = -1 if beside[rack.aisle, rack.start] % 2 == 0 else 1
        beside[rack.aisle, rack.start] += 1
        middle = rack.aisle * shape.aisle_pitch * 1000
        left = middle + side * walkway / 2 - (depth if side < 0 else 0)
        top = -(rack.start * 1000 + width)
        drawn = (
            f'<g class="rack" data-rack="{escape(rack.name)}"><title>Rack {escape(rack.name)}</title>'
            f"{_rect(left, top, depth, width)}{_text(left + depth / 2, top + width / 2, NAME, rack.name)}</g>"
        )
        body.append(drawn if link is None else _linked(link(rack), drawn))
    aisles = max((rack.aisle for rack in racks), default=0)
    far = max((rack.start * 1000 for rack in racks), default=0.0) + width
    for aisle in range(aisles + 1):
        x = aisle * shape.aisle_pitch * 1000
        body.append(f'<path class="aisle" stroke-dasharray="60 60" d="M{x:g} 0V{-far:g}"/>')
    table = shape.table * 1000
    body.append(f'<g class="table">{_rect(table - 600, 300, 1200, 600)}{_text(table, 600, NAME, "Table")}</g>')
    left = min(-(walkway / 2 + depth), table - 600)
    right = max(aisles * shape.aisle_pitch * 1000 + walkway / 2 + depth, table + 600)
    body.append(_scale(left, 1100))
    return _svg("Plan of the room", left, -far, right - left, far + 1300, body, link is not None)


def front_view(
    racks: Iterable[Rack],
    bins: Iterable[Bin],
    shape: Shape = DEFAULT,
    *,
    fills: Mapping[str, str] | None = None,
    link: Callable[[str], str] | None = None,
    here: str = "",
    looked: Collection[str] | None = None,
    metre: bool = True,
) -> str:
    """The fronts of the racks, in a row for each aisle, with their bins as plates: tier and position, and section.

    `fills` maps a section, or one bin by its name, to an SVG paint; `link` gives the address that a bin's plate leads
    to. The bin `here` is outlined. Where some were `looked` at, each bin has a square, which is full in those. The
    scale of one `metre` stands below.
    """
    standing: dict[int, list[Rack]] = defaultdict(list)
    for rack in racks:
        standing[rack.aisle].append(rack)
    hanging: dict[str, list[Bin]] = defaultdict(list)
    for each in bins:
        hanging[each.rack].append(each)
    width, height = shape.rack_width * 1000, shape.tiers * shape.tier_height * 1000
    body, paints = [], fills or {}
    for row, aisle in enumerate(sorted(standing)):
        for column, rack in enumerate(standing[aisle]):
            x, y = column * (width + GAP), row * (height + GAP + NAME)
            body.append(f'<g class="rack" data-rack="{escape(rack.name)}" transform="translate({x:g} {y:g})">')
            body += [
                _rect(0, 0, width, height),
                _text(width / 2, height + 0.75 * NAME, NAME, rack.name),
                *_tiers(shape),
            ]
            for each in sorted(hanging[rack.name], key=lambda each: each.name == here):  # over its neighbours
                fill = paints.get(each.name, paints.get(each.section, "none"))
                seen = None if looked is None else each.name in looked
                body.append(_plate(each, shape, fill, link, here=each.name == here, looked=seen))
            body.append("</g>")
    most, rows = max((len(row) for row in standing.values()), default=1), max(1, len(standing))
    full = rows * (height + GAP + NAME) - GAP + NAME / 2
    if metre:
        body.append(_scale(0, full + 200))
        full += 200
    names = [rack.name for row in standing.values() for rack in row]
    title = f"Front of rack {escape(names[0])}" if len(names) == 1 else "Fronts of the racks"
    wide = BESIDE + most * (width + GAP) - GAP
    return _svg(title, -BESIDE, 0, wide, full, body, link is not None, margin=3 * LINE)


def _tiers(shape: Shape) -> list[str]:
    tier = shape.tier_height * 1000
    size = min(TIER, tier / 2)
    return [
        _text(-BESIDE / 2, (shape.tiers - number + 0.7) * tier, size, str(number))
        for number in range(1, shape.tiers + 1)
    ]


def _plate(
    each: Bin, shape: Shape, fill: str, link: Callable[[str], str] | None, *, here: bool, looked: bool | None
) -> str:
    width, tier = shape.bin_width * 1000, shape.tier_height * 1000
    margin = (shape.rack_width * 1000 - shape.positions * width) / 2
    x, floor = margin + (each.position - 1) * width, (shape.tiers - each.tier + 1) * tier
    high = 0.6 * tier  # the rest is for the shelf and a hand
    middle, top = x + width / 2, floor - high
    place, small = f"{each.tier}-{each.position}", min(high / 3, width / 4)
    size = min(LETTER, high / 2, 0.9 * width / WIDE / len(place))
    words = [_text(middle if looked is None else x + 0.32 * width, floor - 0.22 * high, small, each.section)]
    if looked is not None:
        words.append(_square(x + 0.68 * width, floor - 0.22 * high, small, full=looked))
    if here:
        words.append(_text(middle, top - tier / 5, min(tier / 4, width / WIDE / len("here")), "here"))
    said = f"{each.name}, section {each.section}{', looked at' if looked else ''}"
    drawn = (
        f'<g class="bin{" here" if here else ""}" data-bin="{escape(each.name)}" data-section="{escape(each.section)}">'
        f"<title>{escape(said)}</title>{_rect(x, top, width, high, fill, 5 * LINE if here else 0)}"
        f"{_text(middle, floor - 0.66 * high, size, place)}{''.join(words)}</g>"
    )
    if link is None:
        return drawn
    pressed = f'<rect x="{x:g}" y="{floor - tier:g}" width="{width:g}" height="{tier:g}" stroke="none"/>'
    current = ' aria-current="true"' if here else ""
    return f'<a href="{escape(link(each.name))}" aria-label="{escape(said)}"{current}>{pressed}{drawn}</a>'


def _square(x: float, y: float, side: float, *, full: bool) -> str:
    """The mark of what only a count fills: bars in a square, in ink on paper."""
    left, top = x - side / 2, y - side / 2
    bars = "".join(f"M{left + side * at:g} {top + side / 5:g}v{side * 3 / 5:g}" for at in (0.25, 0.5, 0.75))
    bars = f'<path stroke-width="{side / 9:g}" d="{bars}"/>' if full else ""
    return (
        f'<g class="mark" stroke="#000"><rect x="{left:g}" y="{top:g}" width="{side:g}" height="{side:g}" fill="#fff"/>'
        f"{bars}</g>"
    )


def _linked(address: str, drawn: str) -> str:
    return f'<a href="{escape(address)}">{drawn}</a>'


def _rect(x: float, y: float, width: float, height: float, fill: str = "none", line: float = 0.0) -> str:
    """A rectangle, its line as wide as all others unless told."""
    wide = f' stroke-width="{line:g}"' if line else ""
    return f'<rect x="{x:g}" y="{y:g}" width="{width:g}" height="{height:g}" fill="{escape(fill)}"{wide}/>'


def _text(x: float, y: float, size: float, text: str) -> str:
    return (
        f'<text x="{x:g}" y="{y:g}" font-size="{size:g}" text-anchor="middle" dominant-baseline="central" '
        f'fill="currentColor" stroke="none">{escape(text)}</text>'
    )


def _scale(x: float, y: float) -> str:
    return f'<g class="scale"><path d="M{x:g} {y - 50:g}v50h1000v-50"/>{_text(x + 500, y - 110, LETTER, "1 m")}</g>'


def _svg(
    title: str,
    x: float,
    y: float,
    width: float,
    height: float,
    body: Iterable[str],
    has_links: bool = False,
    margin: float = MARGIN,
) -> str:
    box = f"{x - margin:g} {y - margin:g} {width + 2 * margin:g} {height + 2 * margin:g}"
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="{"group" if has_links else "img"}" viewBox="{box}" fill="none" '
        f'stroke="currentColor" '
        f'stroke-width="{LINE:g}" font-family="sans-serif"><title>{title}</title>{"".join(body)}</svg>'
    )
