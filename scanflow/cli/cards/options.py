"""What is typed after the options of `scanflow cards`."""

import re

from labels import paper, sheet
from scanflow.cli.plan.option_types import Typed
from scanflow.planning import measures


def _grid(text: str) -> str:
    sheet.parse_grid(text)
    return text


def _page(text: str) -> sheet.Size:
    known = paper.SHEETS.get(text.lower())
    if known is None and not re.search(r"\d\s*(?:(?:mm|cm|in)\s*)?[x×*]", text.lower()):
        raise ValueError(f"{text!r} is none of {', '.join(paper.SHEETS)}, and no measures like 100x150")
    return known or measures.across_down(text)


def _colour(text: str) -> paper.Paper:
    if text in paper.COLOURS:
        return paper.COLOURS[text]
    if not re.fullmatch("#[0-9a-fA-F]{6}", text):
        raise ValueError(f"{text!r} is none of {', '.join(paper.COLOURS)}, and not like #ffe680")
    return paper.Paper(text.lower(), "plain")


NUMBERS = Typed("numbers", sheet.parse_numbers)
"""Numbers and ranges like `1-18,25`, in the order given; none twice."""
GRID = Typed("columns x rows", _grid)
ACROSS_DOWN = Typed("W x H", measures.across_down)
"""In mm, unless a unit follows."""
PAGE = Typed("paper", _page)
"""A paper's name, or its measures."""
COLOUR = Typed("colour", _colour)
"""A section's colour by name, or #rrggbb for other paper, which then has no pattern."""
