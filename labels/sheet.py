"""Sheets of cards: a grid on a page, with light lines to cut along. Lengths in mm."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from labels import card
from labels.paper import SHEETS

MARGIN = 5.0  # what a printer may leave blank, each side
_CUT_LINE = 0.1
_CUT_GREY = "#b0b0b0"


@dataclass(frozen=True, slots=True)
class Page:
    """One printed page: size in mm and its shapes in painting order."""

    width: float
    height: float
    shapes: tuple[card.Shape, ...]


def sheets(codes: Sequence[str], *, section_name: str, colour: str, paper: str, grid: str) -> list[Page]:
    """Pages of cards in the order of `codes`, row by row.

    `colour` is a key of `labels.paper.COLOURS`, `paper` of `labels.paper.SHEETS`, `grid` is columns x rows like "3x6".
    ValueError for a malformed grid; DoesNotFit where a cell is too small; CodeError for a text that is no slot code.
    """
    columns, rows = parse_grid(grid)
    width, height = SHEETS[paper]
    cells = _cells(width, height, columns, rows)
    pages = []
    for first in range(0, len(codes), len(cells)):
        drawn = [
            shape
            for code, cell in zip(codes[first : first + len(cells)], cells, strict=False)
            for shape in card.shapes(code, section_name, colour, cell)
        ]
        pages.append(Page(width, height, (*drawn, *_cut_lines(width, height, columns, rows))))
    return pages


def parse_grid(grid: str) -> tuple[int, int]:
    """Columns and rows of a grid.

    >>> parse_grid("3x6")
    (3, 6)
    >>> parse_grid("3x0")
    Traceback (most recent call last):
    ValueError: a grid is columns x rows like 3x6, not '3x0'
    """
    match = re.fullmatch("([1-9][0-9]?)x([1-9][0-9]?)", grid)
    if match is None:
        raise ValueError(f"a grid is columns x rows like 3x6, not {grid!r}")
    return int(match[1]), int(match[2])


def _cells(width: float, height: float, columns: int, rows: int) -> list[card.Area]:
    across, down = (width - 2 * MARGIN) / columns, (height - 2 * MARGIN) / rows
    return [
        card.Area(MARGIN + column * across, MARGIN + row * down, across, down)
        for row in range(rows)
        for column in range(columns)
    ]


def _cut_lines(width: float, height: float, columns: int, rows: int) -> list[card.Shape]:
    inside_x, inside_y = width - 2 * MARGIN, height - 2 * MARGIN
    upright = [
        card.Rect(MARGIN + inside_x * i / columns - _CUT_LINE / 2, MARGIN, _CUT_LINE, inside_y, _CUT_GREY)
        for i in range(columns + 1)
    ]
    level = [
        card.Rect(MARGIN, MARGIN + inside_y * i / rows - _CUT_LINE / 2, inside_x, _CUT_LINE, _CUT_GREY)
        for i in range(rows + 1)
    ]
    return [*upright, *level]
