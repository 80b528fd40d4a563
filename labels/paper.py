"""Sheets of paper, and the section papers: a pale colour that always comes with a pattern of its own."""

import math
from dataclasses import dataclass

SHEETS = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height in mm, ISO 216 and ANSI Y14.1."""

INK = "#1f1b16"
WHITE = "#ffffff"
TILE = 4.0
"""Side in mm of the square that a pattern repeats."""

Polyline = tuple[tuple[float, float], ...]


def _dot(x: float, y: float) -> Polyline:
    return tuple((x + 0.35 * math.cos(math.tau * i / 8), y + 0.35 * math.sin(math.tau * i / 8)) for i in range(9))


_WAVE: Polyline = tuple((x / 4, 2 - 0.9 * math.sin(math.tau * x / 16)) for x in range(17))

PATTERNS: dict[str, tuple[Polyline, ...]] = {
    "plain": (),
    "dots": (_dot(1, 1), _dot(3, 3)),
    "dashes": (((0.2, 1), (1.8, 1)), ((2.2, 3), (3.8, 3))),
    "zigzag": (((0, 3), (2, 1), (4, 3)),),
    "waves": (_WAVE,),
    "checks": (((0, 2), (4, 2)), ((2, 0), (2, 4))),
    "slants": (((0, 4), (4, 0)),),
    "crosses": (((1.2, 2), (2.8, 2)), ((2, 1.2), (2, 2.8))),
}
"""Strokes of a tile in mm, x to the right and y down, by name."""


@dataclass(frozen=True, slots=True)
class Paper:
    """A section's paper: its colour as #rrggbb and the name of its pattern."""

    hex: str
    pattern: str


COLOURS = {
    "yellow": Paper("#ffe680", "plain"),
    "orange": Paper("#ffc890", "dots"),
    "pink": Paper("#ffc4d3", "dashes"),
    "green": Paper("#c2e5b5", "zigzag"),
    "blue": Paper("#bcdcf5", "waves"),
    "grey": Paper("#d6d3ce", "checks"),
    "violet": Paper("#d9cbf0", "slants"),
    "white": Paper(WHITE, "crosses"),
}
