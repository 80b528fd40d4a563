"""What is typed after the options of `scanflow cards`."""

import re

from labels import paper, sheet
from scanflow.cli.typed import Typed
from scanflow.planning import measures


def _numbers(text: str) -> list[int]:
    numbers: list[int] = []
    for part in text.split(","):
        match = re.fullmatch(r"\s*([0-9]{1,6})(?:-([0-9]{1,6}))?\s*", part)
        if match is None or (match[2] and int(match[2]) < int(match[1])):
            raise ValueError(f"{part!r} is no number or range like 1-18")
        numbers += range(int(match[1]), int(match[2] or match[1]) + 1)
    if len(set(numbers)) < len(numbers):
        raise ValueError("a number stands twice, and a slot has one card")
    return numbers


def _grid(text: str) -> str:
    sheet.parse_grid(text)
    return text


def _across_down(text: str) -> sheet.Size:
    parts = re.split("[x×*]", text.lower())
    if len(parts) != 2:
        raise ValueError(f"{text!r} is no pair of measures like 63.5x38.1 or 4x6in")
    unit = re.sub(r"[\d.,/\s]", "", parts[1])
    first = parts[0] if re.search('[a-z"]', parts[0]) else parts[0] + unit
    return measures.length(first), measures.length(parts[1])


def _page(text: str) -> sheet.Size:
    known = paper.SHEETS.get(text.lower())
    if known is None and not re.search(r"\d\s*(mm|cm|in)?\s*[x×*]", text.lower()):
        raise ValueError(f"{text!r} is none of {', '.join(paper.SHEETS)}, and no measures like 100x150")
    return known or _across_down(text)


def _colour(text: str) -> paper.Paper:
    if text in paper.COLOURS:
        return paper.COLOURS[text]
    if not re.fullmatch("#[0-9a-fA-F]{6}", text):
        raise ValueError(f"{text!r} is none of {', '.join(paper.COLOURS)}, and not like #ffe680")
    return paper.Paper(text.lower(), "plain")


NUMBERS = Typed("numbers", _numbers)
"""Numbers and ranges like `1-18,25`, in the order given; none twice."""
GRID = Typed("columns x rows", _grid)
ACROSS_DOWN = Typed("W x H", _across_down)
"""In mm, unless a unit follows."""
PAGE = Typed("paper", _page)
"""A paper's name, or its measures."""
COLOUR = Typed("colour", _colour)
"""A section's colour by name, or #rrggbb for other paper, which then has no pattern."""
