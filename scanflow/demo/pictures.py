"""The cards of the example shop: printed to PDF, rendered, cut out, photographed."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pypdfium2
from numpy.typing import NDArray

from labels import card, draw, paper, sheet, slot_code
from scanflow.demo.goods import CARDS, KINDS, STRANGER
from scanflow.demo.snapshot import photograph

PAPER, GRID = "a4", "3x6"
MODULE = 5
"""Pixels of a rendered card's narrowest bar: whole, so that no bar is uneven."""

Pixels = NDArray[np.uint8]

_MM = 72 / 25.4  # points
_SIZE = 440  # pixels, the longer side of a photograph
_TABLE = (148, 128, 106)


def print_cards(folder: Path) -> dict[str, Path]:
    """A sheet of cards for each section, and one with a card of another room; the PDF by the section's letters."""
    sheets = {}
    for kind in KINDS:
        codes = [kind.slot(number) for number in range(1, CARDS + 1)]
        sheets[kind.code] = _print(folder / f"{kind.code}.pdf", codes, kind.name, kind.colour)
    stranger = slot_code.section_of(STRANGER)
    sheets[stranger] = _print(folder / f"{stranger}-of-another-room.pdf", [STRANGER], "Not ours", "white")
    return sheets


def _print(out: Path, codes: list[str], name: str, colour: str) -> Path:
    pages = sheet.sheets(codes, section_name=name, colour=colour, paper=PAPER, grid=GRID)
    draw.pdf(pages, out, title=f"Cards of section {name}")
    return out


def cut_out(sheet_file: Path, code: str) -> Pixels:
    """The card of this slot as a printed sheet shows it, (height, width, 3 RGB); numbers stand row by row from 1."""
    width, height = paper.SHEETS[PAPER]
    cell = sheet.cut_layout((width, height), GRID).cells()[slot_code.number_of(code) - 1]
    scale = MODULE / card.module_width(slot_code.card_text(code), cell.width)  # pixels per mm
    crop = tuple(each * _MM for each in (cell.x, height - cell.bottom, width - cell.right, cell.y))
    with pypdfium2.PdfDocument(sheet_file) as document:
        return np.array(document[0].render(scale=scale / _MM, crop=crop).to_pil().convert("RGB"))


class Photographer:
    """Photographs cards; each picture is a file, named by its number, its place and the card texts in it."""

    def __init__(self, sheets: dict[str, Path], folder: Path) -> None:
        self._sheets, self._folder = sheets, folder
        self.taken = 0

    def take(self, place: str, *codes: str, steady: bool = True) -> Path:
        """A photograph of these slots' cards side by side. Not `steady`: too blurred to be read by anyone."""
        texts = [slot_code.card_text(code) for code in codes] if steady else ["nothing"]
        self.taken += 1
        cards = [cut_out(self._sheets[slot_code.section_of(code)], code) for code in codes]
        random = np.random.default_rng(self.taken)
        out = self._folder / f"{self.taken:03}-{place}-{'+'.join(texts)}.jpg"
        out.write_bytes(
            photograph(
                _side_by_side(cards),
                seed=self.taken,
                size=_SIZE * len(cards),
                tilt=random.uniform(-5, 5),
                perspective=random.uniform(0.02, 0.12),
                blur=random.uniform(0.6, 1.2) if steady else 12,
                noise=random.uniform(2, 7),
                quality=80,
            )
        )
        return out


def _side_by_side(cards: list[Pixels]) -> Pixels:
    height = max(each.shape[0] for each in cards)
    gap = np.full((height, 60, 3), _TABLE, np.uint8)
    parts = []
    for each in cards:
        below = np.full((height - each.shape[0], each.shape[1], 3), _TABLE, np.uint8)
        parts += [np.vstack([each, below]), gap]
    return np.hstack(parts[:-1])
