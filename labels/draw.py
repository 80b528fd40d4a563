"""The only file writer: pages to PDF, in vectors at their exact size."""

import math
from collections.abc import Sequence
from os import PathLike, fspath
from typing import IO, Any

from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from labels.card import Pattern, Rect, Shape, Text
from labels.paper import INK, PATTERNS, TILE
from labels.sheet import Page

_STROKE = 0.3  # mm, of a pattern


def pdf(pages: Sequence[Page], out: str | PathLike[str] | IO[bytes], *, title: str) -> None:
    """Write the pages to a path or a binary file. Same pages, same bytes. OSError if it can't be written."""
    canvas = Canvas(out if hasattr(out, "write") else fspath(out), invariant=1)
    canvas.setTitle(title)
    canvas.setViewerPreference("PrintScaling", "None")  # ISO 32000-1 12.2: print dialogs start at actual size
    for page in pages:
        canvas.setPageSize((page.width * mm, page.height * mm))
        for shape in page.shapes:
            _draw(canvas, shape, page.height)
        canvas.showPage()
    canvas.save()


def _draw(canvas: Any, shape: Shape, height: float) -> None:
    match shape:
        case Rect():
            _rect(canvas, shape, height)
        case Pattern():
            _pattern(canvas, shape, height)
        case Text():
            canvas.setFillColor(INK)
            canvas.setFont(shape.font, shape.size * mm)
            canvas.drawString(shape.x * mm, (height - shape.y) * mm, shape.text)


def _rect(canvas: Any, rect: Rect, height: float) -> None:
    inset = rect.line / 2
    x, y = rect.x + inset, height - rect.y - rect.height + inset
    size = ((rect.width - rect.line) * mm, (rect.height - rect.line) * mm)
    canvas.setFillColor(rect.fill)
    canvas.setStrokeColor(INK)
    canvas.setLineWidth(rect.line * mm)
    if rect.radius:
        canvas.roundRect(x * mm, y * mm, *size, rect.radius * mm, stroke=int(rect.line > 0), fill=1)
    else:
        canvas.rect(x * mm, y * mm, *size, stroke=int(rect.line > 0), fill=1)


def _pattern(canvas: Any, area: Pattern, height: float) -> None:
    """Tiles from the area's top left corner, clipped to it."""
    canvas.saveState()
    clip = canvas.beginPath()
    clip.rect(area.x * mm, (height - area.y - area.height) * mm, area.width * mm, area.height * mm)
    canvas.clipPath(clip, stroke=0, fill=0)
    canvas.setStrokeColor(INK)
    canvas.setLineWidth(_STROKE * mm)
    canvas.setLineCap(1)
    path = canvas.beginPath()
    for row in range(math.ceil(area.height / TILE)):
        for column in range(math.ceil(area.width / TILE)):
            _tile(path, area.name, area.x + column * TILE, height - area.y - row * TILE)
    canvas.drawPath(path, stroke=1, fill=0)
    canvas.restoreState()


def _tile(path: Any, name: str, x: float, y: float) -> None:
    for (first_x, first_y), *rest in PATTERNS[name]:
        path.moveTo((x + first_x) * mm, (y - first_y) * mm)
        for next_x, next_y in rest:
            path.lineTo((x + next_x) * mm, (y - next_y) * mm)
