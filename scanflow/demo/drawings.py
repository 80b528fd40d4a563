"""Pictures of the example shop's goods, drawn from plain shapes: a stand-in for photos, no two sections alike."""

from __future__ import annotations

from io import BytesIO
from math import cos, pi, sin

from PIL import Image, ImageDraw

from labels import slot_code
from scanflow.demo.goods import kind_of

SIZE = 320
"""Pixels of a side."""

_DRAWN = 1280
"""What the forms are drawn on, and made smaller, so that edges are smooth."""

_METALS = ("#8d9499", "#55595c", "#b08a3c")
_SKINS = ("#9a5b2c", "#2b2724", "#2f5138")
_BENCH = "#e9e0cf"

Pen = ImageDraw.ImageDraw


def drawing(code: str) -> bytes:
    """A JPEG of what first stands in this slot: the section gives the form, the number its finish."""
    number = slot_code.number_of(code)
    image = Image.new("RGB", (_DRAWN, _DRAWN), _BENCH)
    pen = ImageDraw.Draw(image)
    for y in range(0, _DRAWN, 320):
        pen.line((0, y, _DRAWN, y), "#d4c7ae", 6)
    finish, form = (number - 1) % 3, (number - 1) % 5
    FORMS[kind_of(code).code](pen, _METALS[finish], _SKINS[finish], 1 - 0.09 * form)
    out = BytesIO()
    image.reduce(_DRAWN // SIZE).save(out, "JPEG", quality=85)
    return out.getvalue()


def _disc(
    pen: Pen, x: float, y: float, radius: float, fill: str | None, outline: str = "#1f1b16", width: int = 8
) -> None:
    pen.ellipse((x - radius, y - radius, x + radius, y + radius), fill, outline, width)


def _ring(x: float, y: float, radius: float, count: int, turn: float = 0.0) -> list[tuple[float, float]]:
    angles = [turn + 2 * pi * step / count for step in range(count)]
    return [(x + radius * cos(angle), y + radius * sin(angle)) for angle in angles]


def _saddle(pen: Pen, metal: str, skin: str, size: float) -> None:
    half = 300 * size
    pen.polygon(
        [
            (250, 640 - half),
            (420, 640 - half - 40),
            (1100, 590),
            (1100, 690),
            (420, 640 + half + 40),
            (250, 640 + half),
        ],
        skin,
    )
    _disc(pen, 300, 640 - half * 0.6, 110 * size, skin, skin)
    _disc(pen, 300, 640 + half * 0.6, 110 * size, skin, skin)
    for y in (600, 680):
        pen.line((330, y, 1040, y), metal, 18)


def _derailleur(pen: Pen, metal: str, skin: str, size: float) -> None:
    pen.line((420, 300, 760, 560), metal, 120)
    pen.line((760, 560, 560, 560 + 480 * size), "#3a3a3a", 70)
    for x, y in ((760, 560), (560, 560 + 480 * size)):
        _cog(pen, x, y, 120, 11, metal)
    _disc(pen, 420, 300, 80, metal)


def _cog(pen: Pen, x: float, y: float, radius: float, teeth: int, fill: str) -> None:
    for spot in _ring(x, y, radius, teeth):
        _disc(pen, *spot, radius * 0.16, fill, fill)
    _disc(pen, x, y, radius, fill)
    _disc(pen, x, y, radius * 0.25, _BENCH)


def _crank(pen: Pen, metal: str, skin: str, size: float) -> None:
    _cog(pen, 560, 640, 380 * size, 42, metal)
    for x, y in _ring(560, 640, 200 * size, 5):
        _disc(pen, x, y, 60 * size, _BENCH)
    pen.line((560, 640, 1100, 800), metal, 90)
    _disc(pen, 1100, 800, 60, metal)
    _disc(pen, 560, 640, 50, "#3a3a3a")


def _lamp(pen: Pen, metal: str, skin: str, size: float) -> None:
    half = 280 * size
    pen.polygon([(260, 600), (700, 640 - half), (700, 640 + half), (260, 680)], metal)
    pen.ellipse((620, 640 - half, 820, 640 + half), "#f7e7a0", "#1f1b16", 10)
    pen.line((420, 680, 420, 1000), skin, 60)


def _wheel(pen: Pen, metal: str, skin: str, size: float) -> None:
    radius = 520 * size
    for spot in _ring(640, 640, radius, 28):
        pen.line((640, 640, *spot), metal, 6)
    _disc(pen, 640, 640, radius, None, "#2b2724", 46)
    _disc(pen, 640, 640, radius - 50, None, metal, 26)
    _disc(pen, 640, 640, 60, metal)


def _lever(pen: Pen, metal: str, skin: str, size: float) -> None:
    pen.arc((200, 260, 1000, 260 + 1200 * size), 200, 320, metal, 80)
    pen.rounded_rectangle((300, 260, 560, 520), 60, skin)
    _disc(pen, 430, 390, 46, metal)


def _hub(pen: Pen, metal: str, skin: str, size: float) -> None:
    half = 240 * size
    pen.rectangle((360, 560, 920, 720), metal)
    for x in (360, 920):
        pen.rounded_rectangle((x - 36, 640 - half, x + 36, 640 + half), 20, metal, "#1f1b16", 6)
        for step in range(-3, 4):
            _disc(pen, x, 640 + step * half / 4, 14, _BENCH)
    pen.rectangle((180, 622, 1100, 658), "#55595c")


def _pedal(pen: Pen, metal: str, skin: str, size: float) -> None:
    half = 220 * size
    pen.rounded_rectangle((420, 640 - half, 1040, 640 + half), 40, skin, "#1f1b16", 8)
    for x in range(500, 1000, 90):
        pen.line((x, 660 - half, x, 620 + half), metal, 24)
    pen.rectangle((200, 610, 420, 670), metal)


FORMS = {
    "S": _saddle,
    "D": _derailleur,
    "C": _crank,
    "L": _lamp,
    "W": _wheel,
    "BL": _lever,
    "H": _hub,
    "P": _pedal,
}
"""How the goods of a section are drawn, by its letters."""
