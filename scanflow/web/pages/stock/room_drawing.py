"""The fronts of racks as pages show them: bins in their section's paper, large enough for a finger."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable
from dataclasses import replace

from markupsafe import Markup

from labels.paper import COLOURS, INK, PATTERN_STROKE, PATTERNS, TILE
from scanflow.domain.things import Bin, Rack, Section
from scanflow.planning import drawing
from scanflow.planning.room import Shape

FRONT_SCALE = 0.28
"""CSS pixels a millimetre of the room, at least: so that a bin can be pressed with a finger."""

FINGER = 48.0
"""CSS pixels of what is pressed."""

PHONE = 296.0
"""CSS pixels across that the narrowest phone has for a rack."""

TILE_MM = 60.0
"""Side of a pattern's tile in the drawing, in mm of the room."""

_BLANK = "#ffffff"


def front(
    racks: Iterable[Rack],
    bins: Iterable[Bin],
    shape: Shape,
    sections: Iterable[Section],
    *,
    chosen: str = "",
    here: str = "",
    link: Callable[[str], str] | None = None,
    looked: Collection[str] | None = None,
) -> Markup:
    """The fronts up to the highest tier that has a bin, a drawing for each rack, each bin in its section's paper.

    Only those of the `chosen` section where one is; the others stay blank. The bin `here` is outlined; where some were
    `looked` at, each bin has a square, which is full in those. `link` gives the address that a bin leads to.
    """
    racks, bins = list(racks), list(bins)
    papers = {each.code: each.colour if each.colour in COLOURS else "white" for each in sections}
    fills = {code: _BLANK if chosen and code != chosen else f"url(#paper-{colour})" for code, colour in papers.items()}
    used = max((each.tier for each in bins), default=shape.tiers)
    low = replace(shape, tiers=min(shape.tiers, used))
    finger = FINGER / (1000 * shape.bin_width)
    fronts = Markup()
    for rack in racks:
        standing = [each for each in bins if each.rack == rack.name]
        last = rack is racks[-1]
        svg = drawing.front_view([rack], standing, low, fills=fills, link=link, here=here, looked=looked, metre=last)
        name = "front fits" if sides(svg)[0] * finger <= PHONE else "front"
        fronts += sized(svg, name, max(FRONT_SCALE, finger))
    return _patterns(sorted(set(papers.values()))) + Markup('<div class="fronts">{}</div>').format(fronts)


def sides(svg: str) -> tuple[float, float]:
    """Width and height of what a drawing of ours covers, in mm of the room."""
    box = re.search(r'viewBox="\S+ \S+ (\S+) (\S+)"', svg)
    assert box is not None  # every drawing says what it covers
    return float(box[1]), float(box[2])


def sized(svg: str, name: str, scale: float) -> Markup:
    """A drawing of ours with a class, at so many pixels a millimetre."""
    width, height = (round(side * scale) for side in sides(svg))
    return Markup(svg.replace("<svg ", f'<svg class="drawn {name}" width="{width}" height="{height}" ', 1))


def _patterns(colours: Iterable[str]) -> Markup:
    """The papers as patterns to fill with, named `paper-COLOUR`."""
    patterns = []
    for name in colours:
        paper = COLOURS[name]
        strokes = "".join(
            f'<polyline points="{" ".join(f"{x:g},{y:g}" for x, y in stroke)}"/>' for stroke in PATTERNS[paper.pattern]
        )
        patterns.append(
            f'<pattern id="paper-{name}" width="{TILE:g}" height="{TILE:g}" patternUnits="userSpaceOnUse" '
            f'patternTransform="scale({TILE_MM / TILE:g})">'
            f'<rect width="{TILE:g}" height="{TILE:g}" fill="{paper.hex}"/>'
            f'<g fill="none" stroke="{INK}" stroke-width="{PATTERN_STROKE:g}">{strokes}</g></pattern>'
        )
    return Markup(f'<svg width="0" height="0" aria-hidden="true"><defs>{"".join(patterns)}</defs></svg>')
