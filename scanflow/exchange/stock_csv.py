"""What stands in the room, as a file: out, and in again."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from contextlib import suppress
from typing import Any
from zoneinfo import ZoneInfo

from scanflow.exchange import csv_out, csv_table
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder, read_date
from scanflow.exchange.mapping import by_name, proof_of
from scanflow.workflow.ports import Invalid
from scanflow.workflow.stock.loading import FIELDS, Row, cell_of

COLUMNS = ("number", "title", "listing", "notes", "packing", "since", "bin")
"""The number as it stands on the card, also one that was adopted; as listing all ids that are up, spaces between them;
`since` in the shop's zone, empty where nobody knows.
"""

# The trade's general words for each column, the surest first. (common practice, no source)
_NAMES = {
    "number": "number, card number, card, slot, slot code, code, stock number, stock no, stock code, sku, item sku, "
    "location, place, reference, ref",
    "title": "title, item title, listing title, item name, item, product title, product name, product, name, "
    "item description, description",
    "listing": "listing, listing id, listing number, listing no, listing ids, item id, item number, item no, "
    "product id, article number",
    "notes": "notes, note, remarks, remark, comments, comment",
    "packing": "packing, packing note, packing notes, pack note, packing instructions, packing advice, pack with care",
    "since": "since, here since, in stock since, stored on, stored at, stored, put away on, put away, date added, "
    "added on, added at, added, date",
    "bin": "bin, bin name, bin number, box, box number",
}
NEEDED = ("number", "title")


def text(rows: Iterable[Any], zone: str) -> str:
    """The file of these things, as `storage.views.stock.standing` has them."""
    here = ZoneInfo(zone)
    return csv_out.text(COLUMNS, (_cells(row, here) for row in rows))


def _cells(row: Any, zone: ZoneInfo) -> dict[str, str]:
    since = "" if row.undated else row.since.astimezone(zone).isoformat(" ", "seconds")
    told = {"since": since, "listing": cell_of(row.listings)}
    return {name: told[name] if name in told else getattr(row, name) for name in COLUMNS}


def guess(table: CsvTable) -> dict[str, str]:
    """Header by field, by the words in the headers."""
    return by_name(table.headers, _NAMES)


def read(data: bytes, usual: DateOrder | None = None) -> tuple[Row, ...]:
    """The rows of a file whose columns are guessed; `Invalid` at `/file` where it has none or can't be read."""
    try:
        table = csv_table.read_table(data)
    except FileError as error:
        raise Invalid("/file", "bad_file", str(error)) from error
    columns = guess(table)
    for name in lacking(columns):
        raise Invalid("/file", "bad_columns", f"No column holds the {FIELDS[name].lower()}. Call it “{name}”.")
    return rows(table, columns, usual)


def lacking(columns: Mapping[str, str]) -> tuple[str, ...]:
    """The fields that have no column and need one."""
    return tuple(name for name in NEEDED if name not in columns)


def rows(
    table: CsvTable, columns: Mapping[str, str], usual: DateOrder | None = None, chosen: DateOrder | None = None
) -> tuple[Row, ...]:
    """What each row says. Days are written as was `chosen`, else as they prove, else as is `usual` here; a text that is
    no date stays as it is, and is refused as such.
    """
    proof = proof_of(table, columns, ("since",))
    order = chosen or proof.order or usual
    found = []
    for row in table.rows:
        cells = {name: _active(table.cell(row, header)) for name, header in columns.items()}
        with suppress(ValueError):
            cells["since"] = read_date(cells.get("since", ""), order, proof.short)
        found.append(Row(row.number, {name: cell for name, cell in cells.items() if cell}, table.misfit(row)))
    return tuple(found)


def _active(cell: str) -> str:
    """A cell without the mark that `csv_out` sets before what a spreadsheet would take for a formula."""
    return cell[1:] if cell.startswith("'") and csv_out.is_formula(cell[1:]) else cell
