"""A slot's card again, as a file to print."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO

from labels import draw, sheet
from labels.card import CardTooSmall
from scanflow.workflow.ports import Invalid, Unit
from scanflow.workflow.stock import cards


def again(unit: Unit, code: str, said: cards.Reprint, *, paper: str = "a4", grid: str = "3x6") -> list[sheet.SheetPage]:
    """The card alone on a page; `paper` and `grid` as `labels.sheet.sheets`, which give its size.

    `cards.reprint` says when; `Invalid` at `/grid` where the card would be too small. It is drawn by `pdf` once the
    transaction is over.
    """
    slot, section = cards.reprint(unit, code, said)
    try:
        return sheet.sheets([slot.code], section_name=section.name, colour=section.colour, paper=paper, grid=grid)
    except CardTooSmall as error:
        raise Invalid("/grid", "does_not_fit", str(error)) from error


def pdf(pages: Sequence[sheet.SheetPage], code: str) -> bytes:
    """The file of these pages."""
    out = BytesIO()
    draw.pdf(pages, out, title=f"Card {code}")
    return out.getvalue()
