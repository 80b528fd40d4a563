"""Sheets of 10,000 cards, against the same rectangles drawn with bare reportlab."""

import io
import time
from collections.abc import Callable

from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from labels import draw, sheet
from labels.card import CardDesign
from labels.paper import COLOURS, SHEETS
from labels.shape import Bars, Rect

CARDS = 10_000
RUNS = 3
CEILING = 1.5


def ours() -> list[sheet.SheetPage]:
    look = CardDesign("Derailleurs", COLOURS["green"])
    layout = sheet.cut_layout(SHEETS["letter"], "3x6")
    pages = sheet.pages([sheet.slot_face(f"D{number:04}", look) for number in range(CARDS)], layout)
    draw.pdf(pages, io.BytesIO(), title="Cards")
    return pages


def bare(pages: list[sheet.SheetPage]) -> None:
    """Every rectangle and every bar by a call of its own; no text, pattern, tag or geometry."""
    canvas = Canvas(io.BytesIO(), invariant=1)
    for page in pages:
        canvas.setPageSize((page.width * mm, page.height * mm))
        for shape in page.shapes:
            if isinstance(shape, Rect):
                boxes, fill = [(shape.x, shape.width)], shape.fill
            elif isinstance(shape, Bars):
                boxes, fill = shape.strokes(), "#000000"
            else:
                continue
            canvas.setFillColor(fill)
            y = (page.height - shape.y - shape.height) * mm
            for x, width in boxes:
                canvas.rect(x * mm, y, width * mm, shape.height * mm, stroke=0, fill=1)
        canvas.showPage()
    canvas.save()


def seconds(work: Callable[[], object]) -> float:
    start = time.process_time()
    work()
    return time.process_time() - start


def main() -> None:
    pages = ours()
    made = min(seconds(ours) for _ in range(RUNS))
    drawn = min(seconds(lambda: bare(pages)) for _ in range(RUNS))
    print(f"{CARDS} cards on {len(pages)} pages, best of {RUNS}, CPU time")
    print(f"cards {made:.1f} s, the same rectangles with bare reportlab {drawn:.1f} s")
    print(f"{made / drawn:.2f} times, at most {CEILING}")
