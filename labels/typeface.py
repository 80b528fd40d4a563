"""The typeface of printed things: Bitstream Vera Sans from reportlab, embedded, so that sizes are exact."""

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
