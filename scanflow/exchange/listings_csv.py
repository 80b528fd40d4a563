"""What a channel offers, as a file: reference, listing id and title of each offer."""

from __future__ import annotations

from collections.abc import Mapping

from scanflow.domain.offered import OfferedRow
from scanflow.exchange import csv_table, mapping
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.workflow.fields import LONGEST_LISTING
from scanflow.workflow.ports import Invalid

FIELDS = {name: mapping.LABELS[name] for name in ("reference", "listing", "title")}
"""Their labels."""

NO_COLUMN = "No column holds the reference or the listing id. Call one “reference” or “listing id”."


def guess(table: CsvTable, digits: Mapping[str, int] | None = None) -> dict[str, str]:
    """Header by field, as those of a file of orders are guessed."""
    found = mapping.guess(table, digits).columns
    return {name: found[name] for name in FIELDS if name in found}


def usable(columns: Mapping[str, str]) -> bool:
    """Whether the columns tell which thing a row means."""
    return "reference" in columns or "listing" in columns


def read(data: bytes, digits: Mapping[str, int] | None = None) -> tuple[OfferedRow, ...]:
    """The rows of a file whose columns are guessed; `Invalid` at `/file` where it has none or can't be read."""
    try:
        table = csv_table.read_table(data)
    except FileError as error:
        raise Invalid("/file", "bad_file", str(error)) from error
    columns = guess(table, digits)
    if not usable(columns):
        raise Invalid("/file", "bad_columns", NO_COLUMN)
    return rows(table, columns)


def rows(table: CsvTable, columns: Mapping[str, str]) -> tuple[OfferedRow, ...]:
    """What each row says."""
    found = []
    for row in table.rows:
        cells = {name: table.cell(row, header) for name, header in columns.items()}
        bad = table.misfit(row)
        if len(cells.get("listing", "")) > LONGEST_LISTING:
            bad = f"{FIELDS['listing']} has at most {LONGEST_LISTING} characters."
        found.append(OfferedRow(row.number, **cells, bad=bad))
    return tuple(found)
