"""What comes of loading a file of orders, whole or as far as it is."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class RefusedRow:
    """A row of the file, 1 for its first, that became no line: why, and a sentence about it."""

    row: int
    code: str
    text: str


ALREADY_SENT = "already_sent"
"""The code of rows that are only told: of orders that nobody here knows and that were sent, as their channel says."""


@dataclass(frozen=True, slots=True)
class Loaded:
    """How many orders were new, changed and unchanged; the file's lines that are held; the rows refused."""

    loaded: int
    changed: int
    unchanged: int
    held: tuple[str, ...]
    refused: tuple[RefusedRow, ...]


@dataclass(frozen=True, slots=True)
class Far:
    """`done` orders of a load are in, in `parts`; `counts` of new, changed and unchanged ones."""

    at: str
    done: int = 0
    parts: int = 0
    counts: tuple[int, int, int] = (0, 0, 0)
