"""The typeface of printed things: Bitstream Vera Sans from reportlab, embedded, so that sizes are exact."""

import ctypes
import math
from functools import cache
from pathlib import Path
from typing import Any

import reportlab
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

REGULAR = "Vera"
BOLD = "VeraBd"
CAP_HEIGHT = 0.729  # of the size; a digit is as high

pdfmetrics.registerFont(TTFont(REGULAR, "Vera.ttf"))
pdfmetrics.registerFont(TTFont(BOLD, "VeraBd.ttf"))


def width(text: str, size: float, font: str = REGULAR) -> float:
    """Length of a line of text, in the unit of `size`."""
    return float(pdfmetrics.stringWidth(text, font, size))


def fit(text: str, cap_height: float, length: float, font: str = REGULAR) -> float:
    """The size that gives the cap height, or less where the text would be longer than `length`; in their unit."""
    size = cap_height / CAP_HEIGHT
    return min(size, size * length / max(width(text, size, font), length))


def reading_distance(cap_height: float, minutes: float = 20.0) -> float:
    """Metres from which type of this cap height (mm) is seen under so many minutes of arc.

    ISO 9241-3 asks for 16 at least and prefers 20 to 22.

    >>> round(reading_distance(5.82), 2), round(reading_distance(9.31, minutes=16), 2)
    (1.0, 2.0)
    """
    return cap_height / 1000 / (2 * math.tan(math.radians(minutes / 60) / 2))


@cache
def outline(char: str, font: str) -> str:
    """The glyph as SVG path data, in thousandths of the size, y down from the baseline."""
    import pypdfium2.raw as pdfium

    path = pdfium.FPDFFont_GetGlyphPath(_pdfium_font(font), ord(char), 1.0)
    x, y = ctypes.c_float(), ctypes.c_float()
    written = []
    curve = 0
    for index in range(pdfium.FPDFGlyphPath_CountGlyphSegments(path)):
        segment = pdfium.FPDFGlyphPath_GetGlyphPathSegment(path, index)
        pdfium.FPDFPathSegment_GetPoint(segment, x, y)
        kind = pdfium.FPDFPathSegment_GetType(segment)
        command = "M" if kind == pdfium.FPDF_SEGMENT_MOVETO else "L"
        if kind == pdfium.FPDF_SEGMENT_BEZIERTO:  # three points make a curve
            command = " " if curve % 3 else "C"
            curve += 1
        end = "Z" if pdfium.FPDFPathSegment_GetClose(segment) else ""
        written.append(f"{command}{1000 * x.value:.0f} {-1000 * y.value:.0f}{end}")
    return "".join(written)


@cache
def _pdfium_font(font: str) -> Any:
    """The font as pdfium holds it, with its document, for as long as the program runs."""
    import pypdfium2.raw as pdfium

    data = (Path(reportlab.__file__).parent / "fonts" / f"{font}.ttf").read_bytes()
    buffer = (ctypes.c_uint8 * len(data)).from_buffer_copy(data)
    return pdfium.FPDFText_LoadFont(pdfium.FPDF_CreateNewDocument(), buffer, len(data), pdfium.FPDF_FONT_TRUETYPE, True)
