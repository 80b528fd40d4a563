"""Things to print on slips and rounds, and what other libraries find on the pages."""

from __future__ import annotations

import io

import pypdfium2
import zxingcpp
from PIL import Image

from labels import draw
from labels.paper import COLOURS
from labels.row import Thing
from labels.sheet import SheetPage


def jpeg(colour: str = "#306090") -> bytes:
    out = io.BytesIO()
    Image.new("RGB", (320, 240), colour).save(out, "JPEG")
    return out.getvalue()


def things(count: int) -> list[Thing]:
    return [
        Thing(f"D{n:03}", f"Rear derailleur {n}", f"A-1-{n}", COLOURS["green"], jpeg()) for n in range(1, count + 1)
    ]


def document(pages: list[SheetPage]) -> pypdfium2.PdfDocument:
    out = io.BytesIO()
    draw.pdf(pages, out, title="Slips")
    return pypdfium2.PdfDocument(out.getvalue())


def words(page: pypdfium2.PdfPage) -> str:
    return " ".join(page.get_textpage().get_text_range().split())


def seen(page: pypdfium2.PdfPage, dpi: float = 203.2) -> list[str]:
    """What zxing-cpp reads on the page as a label printer of 8 dots a mm has it."""
    picture = page.render(scale=dpi / 72).to_pil().convert("1", dither=Image.Dither.NONE).convert("L")
    return [each.text for each in zxingcpp.read_barcodes(picture)]
