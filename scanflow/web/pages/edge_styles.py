"""The papers of the sections as a stylesheet, from the same strokes that cards are printed with."""

from __future__ import annotations

from urllib.parse import quote

from flask import Blueprint, Response

from labels.paper import COLOURS, INK, PATTERNS, TILE
from scanflow.web.pages.declare import STAFF, page

blueprint = Blueprint("edges", __name__)
TILE_PX = 16
"""Side of a pattern's tile on the screen, in CSS pixels."""


def tile(pattern: str) -> str:
    """One tile of a pattern as an SVG document."""
    strokes = "".join(
        f'<polyline points="{" ".join(f"{x:g},{y:g}" for x, y in stroke)}"/>' for stroke in PATTERNS[pattern]
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{TILE_PX}" height="{TILE_PX}" viewBox="0 0 {TILE:g} {TILE:g}">'
        f'<g fill="none" stroke="{INK}" stroke-width=".3" stroke-linecap="round">{strokes}</g></svg>'
    )


def stylesheet() -> str:
    """A class `edge-COLOUR` for each paper."""
    rules = []
    for name, paper in COLOURS.items():
        image = f'url("data:image/svg+xml,{quote(tile(paper.pattern))}")' if PATTERNS[paper.pattern] else "none"
        rules.append(f".edge-{name}{{background:{paper.hex} {image} 0 0/{TILE_PX}px {TILE_PX}px;color:{INK}}}")
    return "\n".join(rules) + "\n"


@page(blueprint, "GET", "/edges.css", roles=STAFF)
def show() -> Response:
    headers = {"Cache-Control": "private, max-age=3600"}
    return Response(stylesheet(), mimetype="text/css", headers=headers)
