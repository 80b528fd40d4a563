"""Rows as a CSV file (RFC 4180) that a spreadsheet opens."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Mapping, Sequence

TYPE = "text/csv"


def text(columns: Sequence[str], rows: Iterable[Mapping[str, object]]) -> str:
    """A header of these columns, then each row's cells under them; None is an empty cell."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(columns)
    writer.writerows([_inert(row[name]) for name in columns] for row in rows)
    return out.getvalue()


def _inert(value: object) -> object:
    """As a spreadsheet shows it: no title or reason is a formula there."""
    return "" if value is None else f"'{value}" if is_formula(str(value)) else value


def is_formula(text: str) -> bool:
    """Whether a spreadsheet takes a cell of this text for a formula."""
    return text.startswith(("=", "+", "-", "@", "\t", "\r"))
