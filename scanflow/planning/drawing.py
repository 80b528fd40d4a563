"""A room drawn to scale as SVG: one unit is one millimetre, thin ink lines, in the colour of the text around it.

Bins carry `class="bin"`, `data-bin` and `data-section`; what a section is filled with, and where a bin leads, the
caller says.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from html import escape

from scanflow.domain.things import Bin, Rack
from scanflow.planning.room import DEFAULT, Shape

LINE = 6.0  # mm of the room, so that it is thin on any screen
GAP = 400.0  # mm between racks in the front view
MARGIN = 200.0  # mm around a drawing
LETTER = 110.0  # mm, height of the names of bins
NAME = 180.0  # mm, height of the names of racks


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
) -> str:
    """The fronts of the racks, in a row for each aisle, with their bins as plates.

    `fills` maps a section, or one bin by its name, to an SVG paint; `link` gives the address that a bin's plate leads
    to.
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
            body += [_rect(0, 0, width, height), _text(width / 2, height + NAME, NAME, rack.name)]
            for each in hanging[rack.name]:
                fill = paints.get(each.name, paints.get(each.section, "none"))
                body.append(_plate(each, shape, fill, link))
            body.append("</g>")
    most = max((len(row) for row in standing.values()), default=1)
    full = len(standing) * (height + GAP + NAME)
    body.append(_scale(0, full + 100))
    return _svg("Fronts of the racks", 0, 0, most * (width + GAP) - GAP, full + 300, body, link is not None)


def _plate(each: Bin, shape: Shape, fill: str, link: Callable[[str], str] | None) -> str:
    width, tier = shape.bin_width * 1000, shape.tier_height * 1000
    margin = (shape.rack_width * 1000 - shape.positions * width) / 2
    x, floor = margin + (each.position - 1) * width, (shape.tiers - each.tier + 1) * tier
    high = 0.6 * tier  # the rest is for the shelf and a hand
    drawn = (
        f'<g class="bin" data-bin="{escape(each.name)}" data-section="{escape(each.section)}">'
        f"<title>{escape(each.name)}, section {escape(each.section)}</title>"
        f"{_rect(x, floor - high, width, high, fill)}{_text(x + width / 2, floor - high / 2, LETTER, each.section)}</g>"
    )
    return drawn if link is None else _linked(link(each.name), drawn)


def _linked(address: str, drawn: str) -> str:
    return f'<a href="{escape(address)}">{drawn}</a>'


def _rect(x: float, y: float, width: float, height: float, fill: str = "none") -> str:
    return f'<rect x="{x:g}" y="{y:g}" width="{width:g}" height="{height:g}" fill="{escape(fill)}"/>'


def _text(x: float, y: float, size: float, text: str) -> str:
    return (
        f'<text x="{x:g}" y="{y:g}" font-size="{size:g}" text-anchor="middle" dominant-baseline="central" '
        f'fill="currentColor" stroke="none">{escape(text)}</text>'
    )


def _scale(x: float, y: float) -> str:
    return f'<g class="scale"><path d="M{x:g} {y - 50:g}v50h1000v-50"/>{_text(x + 500, y - 110, LETTER, "1 m")}</g>'


def _svg(
    title: str, x: float, y: float, width: float, height: float, body: Iterable[str], has_links: bool = False
) -> str:
    box = f"{x - MARGIN:g} {y - MARGIN:g} {width + 2 * MARGIN:g} {height + 2 * MARGIN:g}"
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="{"group" if has_links else "img"}" viewBox="{box}" fill="none" '
        f'stroke="currentColor" '
        f'stroke-width="{LINE:g}" font-family="sans-serif"><title>{title}</title>{"".join(body)}</svg>'
    )
