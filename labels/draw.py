"""Pages to PDF and SVG in vectors at their exact size, to PNG in whole pixels."""

import io
import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cache, partial
from os import PathLike, fspath
from pathlib import Path
from typing import IO, Any

from reportlab.lib.units import mm
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from labels import draw_svg
from labels.card import Card
from labels.draw_tags import Tags
from labels.paper import INK, PATTERN_STROKE, PATTERNS, TILE
from labels.shape import Bars, Pattern, Picture, Rect, Shape, Text
from labels.sheet import SheetPage
from labels.whole import write_whole

PNG_DPI = 300
MOST_PNG_DPI = 600
"""Finer than cards need; a page of 2400 dots per inch takes gigabytes while it is drawn."""


def write(pages: Sequence[SheetPage], out: str | PathLike[str], *, title: str, dpi: float = PNG_DPI) -> list[Path]:
    """Write the pages in the format that the file's ending names, and say which files were made.

    A PDF holds all pages; SVG and PNG have a file for each, numbered when there are several. `dpi` is for PNG: the
    pages' bars must have been made for its dots (`CardDesign.dot`). ValueError for another ending. OSError if a file
    can't be written; what was there is then as it was.
    """
    path = Path(out)
    if path.suffix.lower() == ".pdf":
        whole = io.BytesIO()
        pdf(pages, whole, title=title)
        write_whole(path, whole.getvalue())
        return [path]
    if path.suffix.lower() not in (".svg", ".png"):
        raise ValueError(f"cards are written as .pdf, .svg or .png, not {path.suffix or path.name!r}")
    single = partial(png, dpi=dpi) if path.suffix.lower() == ".png" else svg
    return _each(pages, path, partial(single, title=title))


def _each(pages: Sequence[SheetPage], path: Path, single: Callable[[SheetPage], bytes]) -> list[Path]:
    width = len(str(len(pages)))
    files = []
    for number, page in enumerate(pages, start=1):
        file = path if len(pages) == 1 else path.with_stem(f"{path.stem}-{number:0{width}}")
        write_whole(file, single(page))
        files.append(file)
    return files


def svg(page: SheetPage, *, title: str) -> bytes:
    """One page as SVG in mm, its letters as outlines."""
    return draw_svg.document(page, title).encode()


def png(page: SheetPage, *, title: str, dpi: float = PNG_DPI) -> bytes:
    """One page as PNG: a pixel is exactly 1/dpi inch, so what lies on whole pixels stays sharp."""
    import pypdfium2

    pixel = 25.4 / dpi
    width, height = (math.ceil(side / pixel - 1e-6) for side in (page.width, page.height))
    whole, image = io.BytesIO(), io.BytesIO()
    pdf([replace(page, width=width * pixel, height=height * pixel)], whole, title=title)
    with pypdfium2.PdfDocument(whole.getvalue()) as document:
        # the size of the PDF is rounded to a few decimals: just under the pixels, for pypdfium2 rounds up
        rendered = document[0].render(scale=(1 - 1e-5) * dpi / 72)
        rendered.to_pil().convert("RGB").save(image, "png", dpi=(dpi, dpi))
    return image.getvalue()


def pdf(
    pages: Sequence[SheetPage],
    out: str | PathLike[str] | IO[bytes],
    *,
    title: str,
    language: str = "en",
    stacked: int = 1,
) -> None:
    """Write the pages to a path or a binary file, tagged: every card is a figure that says its code.

    So many pages are `stacked` on each sheet of paper, which is as much higher, with a line between two to cut along.
    Same pages, same bytes. OSError if it can't be written.
    """
    canvas = Canvas(out if hasattr(out, "write") else fspath(out), invariant=1, lang=language)
    canvas.setTitle(title)
    canvas.setViewerPreference("PrintScaling", "None")  # ISO 32000-1 12.2: print dialogs start at actual size
    canvas.setViewerPreference("DisplayDocTitle", "true")
    tags = Tags(canvas)
    for first in range(0, len(pages), stacked):
        high = pages[first].height * stacked
        canvas.setPageSize((pages[first].width * mm, high * mm))
        for place, page in enumerate(pages[first : first + stacked]):
            top = high - place * page.height
            for card in page.cards:
                with tags.figure(card.alt):
                    _card(canvas, card, top)
            cut = [Rect(0, -0.1, page.width, 0.2, INK)] if place else []
            with tags.artifact():
                for shape in (*page.marks, *cut):
                    _draw(canvas, shape, top)
        tags.show_page()
    tags.finish()
    canvas.save()


def _card(canvas: Any, card: Card, height: float) -> None:
    if card.turned:
        canvas.saveState()
        canvas.translate((2 * card.area.x + card.area.width) * mm, (2 * (height - card.area.y) - card.area.height) * mm)
        canvas.rotate(180)
    for shape in card.shapes:
        _draw(canvas, shape, height)
    if card.turned:
        canvas.restoreState()


def _draw(canvas: Any, shape: Shape, height: float) -> None:
    match shape:
        case Rect():
            _rect(canvas, shape, height)
        case Bars():
            _bars(canvas, shape, height)
        case Pattern():
            _pattern(canvas, shape, height)
        case Picture():
            box = (shape.x * mm, (height - shape.y - shape.height) * mm, shape.width * mm, shape.height * mm)
            canvas.drawImage(ImageReader(io.BytesIO(shape.jpeg)), *box, preserveAspectRatio=True)
        case Text():
            canvas.addLiteral(_colour(INK))
            canvas.setFont(shape.font, shape.size * mm)
            canvas.drawString(shape.x * mm, (height - shape.y) * mm, shape.text)


@cache
def _colour(fill: str) -> str:
    """The operator that fills with a colour. Written straight into the page: reportlab parses a colour every time."""
    return " ".join(f"{int(fill[at : at + 2], 16) / 255:.6g}" for at in (1, 3, 5)) + " rg"


def _rect(canvas: Any, rect: Rect, height: float) -> None:
    inset = rect.line / 2
    x, y = (rect.x + inset) * mm, (height - rect.y - rect.height + inset) * mm
    wide, tall = (rect.width - rect.line) * mm, (rect.height - rect.line) * mm
    canvas.addLiteral(_colour(rect.fill))
    if not (rect.line or rect.radius):
        canvas.addLiteral(f"{x:.4f} {y:.4f} {wide:.4f} {tall:.4f} re f")
        return
    canvas.setStrokeColor(INK)
    canvas.setLineWidth(rect.line * mm)
    radius = min((rect.radius - inset) * mm, wide / 2)
    canvas.roundRect(x, y, wide, tall, radius, stroke=int(rect.line > 0), fill=1)


def _bars(canvas: Any, bars: Bars, height: float) -> None:
    """One path for all bars, written to 0.0001 points: far below what any printer places."""
    y, tall = (height - bars.y - bars.height) * mm, bars.height * mm
    boxes = " ".join(f"{x * mm:.4f} {y:.4f} {width * mm:.4f} {tall:.4f} re" for x, width in bars.strokes())
    canvas.addLiteral(f"0 0 0 rg {boxes} f")


def _pattern(canvas: Any, area: Pattern, height: float) -> None:
    """Tiles from the area's top left corner, clipped to it; drawn once for each size."""
    if not PATTERNS[area.name]:
        return
    form = f"{area.name}-{area.width:.3f}-{area.height:.3f}".replace(".", "_")
    if not canvas.hasForm(form):
        _pattern_form(canvas, form, area)
    canvas.saveState()
    canvas.translate(area.x * mm, (height - area.y - area.height) * mm)
    canvas.doForm(form)
    canvas.restoreState()


def _pattern_form(canvas: Any, form: str, area: Pattern) -> None:
    canvas.beginForm(form, 0, 0, area.width * mm, area.height * mm)
    canvas.setStrokeColor(INK)
    canvas.setLineWidth(PATTERN_STROKE * mm)
    canvas.setLineCap(1)
    path = canvas.beginPath()
    for row in range(math.ceil(area.height / TILE)):
        for column in range(math.ceil(area.width / TILE)):
            _tile(path, area.name, column * TILE, area.height - row * TILE)
    canvas.drawPath(path, stroke=1, fill=0)
    canvas.endForm()


def _tile(path: Any, name: str, x: float, y: float) -> None:
    for (first_x, first_y), *rest in PATTERNS[name]:
        path.moveTo((x + first_x) * mm, (y - first_y) * mm)
        for next_x, next_y in rest:
            path.lineTo((x + next_x) * mm, (y - next_y) * mm)
