"""A page as SVG 1.1: user units are mm, letters are outlines, so that nothing depends on the reader's fonts."""

import math
from base64 import b64encode
from xml.sax.saxutils import escape, quoteattr

from labels import typeface
from labels.card import Card
from labels.paper import INK, PATTERN_STROKE, PATTERNS, TILE
from labels.shape import Bars, Pattern, Picture, Rect, Shape, Text
from labels.sheet import SheetPage


def document(page: SheetPage, title: str) -> str:
    """The whole document, its size in mm; every card is an image that says its code."""
    size = f'width="{page.width:g}mm" height="{page.height:g}mm" viewBox="0 0 {page.width:g} {page.height:g}"'
    patterns = {shape.name for shape in page.shapes if isinstance(shape, Pattern) and PATTERNS[shape.name]}
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" {size}>',
        f"<title>{escape(title)}</title>",
        f"<defs>{''.join(_definition(name) for name in sorted(patterns))}</defs>",
        *(_card(each) for each in page.cards),
        f'<g aria-hidden="true">{"".join(_drawn(shape) for shape in page.marks)}</g>',
        "</svg>",
    ]
    return "\n".join(part for part in parts if part)


def _definition(name: str) -> str:
    strokes = "".join(
        f'<polyline points="{" ".join(f"{_n(x)},{_n(y)}" for x, y in stroke)}"/>' for stroke in PATTERNS[name]
    )
    return (
        f'<g id="tile-{name}" fill="none" stroke="{INK}" stroke-width="{PATTERN_STROKE:g}" stroke-linecap="round">'
        f"{strokes}</g>"
    )


def _card(card: Card) -> str:
    area = card.area
    turn = (
        f' transform="rotate(180 {_n(area.x + area.width / 2)} {_n(area.y + area.height / 2)})"' if card.turned else ""
    )
    return f'<g role="img" aria-label={quoteattr(card.alt)}{turn}>{"".join(_drawn(shape) for shape in card.shapes)}</g>'


def _drawn(shape: Shape) -> str:
    match shape:
        case Rect():
            return _rect(shape)
        case Bars():
            boxes = (f"M{_n(x)} {_n(shape.y)}h{_n(w)}v{_n(shape.height)}h{_n(-w)}z" for x, w in shape.strokes())
            return f'<path fill="#000000" d="{"".join(boxes)}"/>'
        case Pattern():
            return _pattern(shape)
        case Picture():
            box = f'x="{_n(shape.x)}" y="{_n(shape.y)}" width="{_n(shape.width)}" height="{_n(shape.height)}"'
            return f'<image {box} href="data:image/jpeg;base64,{b64encode(shape.jpeg).decode()}"/>'
        case Text():
            return _text(shape)


def _rect(rect: Rect) -> str:
    inset = rect.line / 2
    box = (rect.x + inset, rect.y + inset, rect.width - rect.line, rect.height - rect.line)
    x, y, width, height = (_n(side) for side in box)
    border = f' stroke="{INK}" stroke-width="{rect.line:g}"' if rect.line else ""
    corner = f' rx="{_n(rect.radius - inset)}"' if rect.radius else ""
    return f'<rect x="{x}" y="{y}" width="{width}" height="{height}" fill="{rect.fill}"{border}{corner}/>'


def _pattern(area: Pattern) -> str:
    """Tiles in a nested picture, which clips them to the area."""
    if not PATTERNS[area.name]:
        return ""
    tiles = "".join(
        f'<use href="#tile-{area.name}" x="{column * TILE:g}" y="{row * TILE:g}"/>'
        for row in range(math.ceil(area.height / TILE))
        for column in range(math.ceil(area.width / TILE))
    )
    return f'<svg x="{_n(area.x)}" y="{_n(area.y)}" width="{_n(area.width)}" height="{_n(area.height)}">{tiles}</svg>'


def _text(text: Text) -> str:
    scale = text.size / 1000
    at = 0.0
    glyphs = []
    for char in text.text:
        if outline := typeface.outline(char, text.font):
            glyphs.append(f'<path transform="translate({at:.1f} 0)" d="{outline}"/>')
        at += typeface.width(char, 1000, text.font)
    return f'<g fill="{INK}" transform="translate({_n(text.x)} {_n(text.y)}) scale({scale:.6f})">{"".join(glyphs)}</g>'


def _n(length: float) -> str:
    return f"{length:.4f}".rstrip("0").rstrip(".")
