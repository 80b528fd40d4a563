"""What is known of cards before they are printed. Lengths in mm, distances in m."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from labels import colour, typeface
from labels.card import Card, CardDesign, CardTooSmall, Style, bin_front, slot_card
from labels.paper import WHITE
from labels.shape import SheetArea
from labels.sheet import MARGIN, SEALED_EDGE, Layout, Size

_CUT = 0.1 + 1e-6  # a gutter of no more is the cut line alone


@dataclass(frozen=True, slots=True)
class CardFacts:
    """Of cards that are alike; `module` and `bar_height` are None where a bin's front has no bars.

    `laminated`: what to cut laminate to, None without a gutter.

    `red_light` and `camera` are the contrast of the bars for either; `by_style` how far the number is read with ease in
    each style that the card has room for.
    """

    alt: str
    card: Size
    laminated: Size | None
    module: float | None
    bar_height: float | None
    cap_height: float
    reads_at: float
    reads_at_most: float
    red_light: float
    camera: float
    by_style: dict[Style, float]


def facts(cards: Sequence[Card], layout: Layout, design: CardDesign, first: str, last: str) -> CardFacts:
    """The least of all cards; slot codes from first to last."""
    bars = [each.bars for each in cards if each.bars]
    cap = min(each.cap_height for each in cards)
    ground = WHITE if design.panel else design.paper.hex
    width, height = layout.card
    return CardFacts(
        alt=cards[0].alt,
        card=layout.card,
        laminated=(width + layout.gutter, height + layout.gutter) if layout.gutter > _CUT else None,
        module=min((each.module for each in bars), default=None),
        bar_height=min((each.height for each in bars), default=None),
        cap_height=cap,
        reads_at=typeface.reading_distance(cap),
        reads_at_most=typeface.reading_distance(cap, minutes=16),
        red_light=colour.contrast_under_red(ground),
        camera=colour.contrast_for_camera(ground),
        by_style=_by_style(first, last, design, SheetArea(0, 0, width, height))
        | {design.style: typeface.reading_distance(cap)},
    )


def _by_style(first: str, last: str, design: CardDesign, area: SheetArea) -> dict[Style, float]:
    found = {}
    for style in Style:
        styled = replace(design, style=style)
        try:
            drawn = bin_front(first, last, "", styled, area) if style is Style.BIN else slot_card(first, styled, area)
        except CardTooSmall:
            continue
        found[style] = typeface.reading_distance(drawn.cap_height)
    return found


def warnings(layout: Layout, margin: float) -> list[str]:
    """What to mind of a sheet with such a margin, as sentences."""
    said = []
    if _CUT < layout.gutter < 2 * SEALED_EDGE:
        said.append(
            f"A gutter of {layout.gutter:g} mm leaves {layout.gutter / 2:g} mm of laminate around a card; a sealed "
            f"edge is at least {SEALED_EDGE:g} mm, so make the gutter {2 * SEALED_EDGE:g} mm."
        )
    if layout.ruler is None:
        said.append("There is no room for the scale bar: measure one printed label before you print them all.")
    if min(*layout.corner, margin) < MARGIN:
        said.append(f"Many printers leave {MARGIN:g} mm at the paper's edges blank: try one sheet.")
    return said
