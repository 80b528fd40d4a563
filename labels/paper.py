"""Sheets of paper, and the section papers: a pale colour that always comes with a pattern of its own."""

import math
from dataclasses import dataclass

SHEETS = {"a4": (210.0, 297.0), "letter": (215.9, 279.4), "legal": (215.9, 355.6), "4x6": (101.6, 152.4)}
"""Width and height in mm: ISO 216, ANSI Y14.1, 8.5 x 14 in, a label of 4 x 6 in from a roll."""

HALVES = {"half-a4": (210.0, 148.5), "half-letter": (215.9, 139.7)}
"""Of two that lie one above the other on a sheet."""

INK = "#1f1b16"
WHITE = "#ffffff"
TILE = 4.0
"""Side in mm of the square that a pattern repeats."""

PATTERN_STROKE = 0.3
"""Width in mm of its strokes."""

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
    "yellow": Paper("#fbe785", "plain"),
    "orange": Paper("#ff9241", "dots"),
    "pink": Paper("#e6a2c9", "dashes"),
    "green": Paper("#d7f3c6", "zigzag"),
    "blue": Paper("#b3ebff", "waves"),
    "grey": Paper("#b7b7ae", "checks"),
    "violet": Paper("#c99efa", "slants"),
    "white": Paper(WHITE, "crosses"),
}
"""Chosen so that any two are at least 10 apart by CIEDE2000 for every sight, and black bars stand out on each."""
