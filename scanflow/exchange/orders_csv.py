"""Orders from the rows of a table. Every row that isn't blank becomes a line of an order, or is listed."""

import hashlib
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from functools import partial

from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import RefusedRow
from scanflow.exchange.csv_table import CsvTable
from scanflow.exchange.dates import DateOrder, read_date
from scanflow.exchange.mapping import DATES, FIELDS, ColumnMapping, MappingError, missing, proof_of
from scanflow.workflow.fields import LONGEST_NAME
from scanflow.workflow.orders.receiving import NewLine
from scanflow.workflow.ports import Invalid

LONGEST = {name: each["maxLength"] for name, each in NewLine.model_json_schema()["properties"].items()}
"""Characters of a line's fields. What is longer makes the line a bad one, of which so much is kept."""

Key = tuple[str, str]  # channel, number


@dataclass(frozen=True, slots=True)
class Parsed:
    """`orders` by the first row of each; `rows`: the row numbers of an order's lines, in the order of its lines.

    `refused`: the rows that belong to no order, `no_number`, `bad_number` or `no_order`. `warnings`: what holds
    nothing and should be known, by row: `above_header`, `bad_time` of a date that the row is taken without, `same_row`
    of a row that an earlier one says already. `dates`: how the dates were read, in sentences.
    """

    orders: tuple[IncomingOrder, ...]
    refused: tuple[RefusedRow, ...]
    rows: dict[Key, tuple[int, ...]]
    warnings: tuple[RefusedRow, ...] = ()
    dates: str = ""

    @property
    def key(self) -> str:
        """SHA-256 (hex) of the orders and of their rows: the same file sent again has it."""
        said = repr((self.orders, sorted(self.rows.items())))
        return hashlib.sha256(said.encode(errors="backslashreplace")).hexdigest()


@dataclass(slots=True)
class _Draft:
    dates: dict[str, str] = field(default_factory=dict)
    lines: list[IncomingLine] = field(default_factory=list)
    rows: list[int] = field(default_factory=list)
    seen: dict[tuple[str, ...], int] = field(default_factory=dict)

    def take(self, row: int, cells: dict[str, str], misfit: str, read: Callable[[str], str]) -> Iterator[RefusedRow]:
        """Add the line of a row, unless one says the same, and its dates; cells out of place date nothing. Give what
        is to be known of it.
        """
        bad = misfit or _bad(cells)
        before = row if bad else self.seen.setdefault(tuple(cells.values()), row)
        if before != row:
            yield RefusedRow(row, "same_row", f"This row says the same as row {before}. It counts once.")
            return
        line = {name: each[: LONGEST[name]] for name, each in cells.items() if name in LONGEST}
        self.lines.append(IncomingLine(**line, bad=bad, quantity=_quantity(cells["quantity"])))
        self.rows.append(row)
        for name in DATES if not misfit else ():
            try:
                if cells[name]:
                    self.dates.setdefault(name, read(cells[name]))
            except ValueError:
                why = f"“{cells[name][:40]}” can't be read as a date. The row is taken without it."
                yield RefusedRow(row, "bad_time", why)


def orders(table: CsvTable, mapping: ColumnMapping, usual: DateOrder | None = None) -> Parsed:
    """Rows of one channel and number are one order, wherever they stand; its dates are the first ones given.

    `usual` is how days are written here, for dates that nothing proves.

    A row with a number that can't be read otherwise becomes a line with `bad` set. MappingError where the mapping
    names a column that the table lacks, or none for a required field.
    """
    _check(table, mapping)
    proof = proof_of(table, mapping.columns)
    read = partial(read_date, order=mapping.date_order or proof.order or usual, short=proof.short)
    drafts: dict[Key, _Draft] = {}
    refused: list[RefusedRow] = []
    warnings = [
        RefusedRow(row.number, "above_header", f"This line stands above the header: {_listed(row.cells)}")
        for row in table.above
    ]
    for row in table.rows:
        cells = {name: table.cell(row, mapping.columns[name]) if name in mapping.columns else "" for name in FIELDS}
        key = (" ".join(cells["channel"].split()), " ".join(cells["number"].split()))
        refusal = _refusal(row.number, key, cells)
        if refusal is not None:
            refused.append(refusal)
            continue
        warnings += drafts.setdefault(key, _Draft()).take(row.number, cells, table.misfit(row), read)
    found = tuple(
        IncomingOrder(number, channel, draft.dates.get("ordered_at"), draft.dates.get("ship_by"), tuple(draft.lines))
        for (channel, number), draft in drafts.items()
    )
    rows = {key: tuple(draft.rows) for key, draft in drafts.items()}
    warnings.sort(key=lambda each: each.row)
    return Parsed(found, tuple(refused), rows, tuple(warnings), proof.told(mapping.date_order, usual))


def _beyond(line: dict[str, str]) -> str | None:
    """Why it is no line that a program could send."""
    try:
        NewLine.of(line)
    except Invalid as error:
        return error.detail
    return None


def _check(table: CsvTable, mapping: ColumnMapping) -> None:
    for name, header in mapping.columns.items():
        if header not in table.headers:
            raise MappingError(f"This file has no column {header!r}, which should hold the {name}.")
    for name in missing(mapping, table.headers):
        raise MappingError(f"No column holds the {name}; choose one.")


def _listed(cells: Iterable[str]) -> str:
    return ", ".join(cell for cell in cells if cell)[:200]


_SAYING = tuple(name for name in FIELDS if name not in ("number", "channel", "quantity"))
"""The fields of which a row has one at least, if it asks for a thing and is no count or sum below the rows."""


def _refusal(row: int, key: Key, cells: dict[str, str]) -> RefusedRow | None:
    said = _listed(cells.values())  # mapped columns only: the rest may be a buyer's
    if not key[1]:
        return RefusedRow(row, "no_number", f"This row has no order number: {said}")
    if not any(cells[name] for name in _SAYING):
        return RefusedRow(row, "no_order", f"This row asks for nothing: {said}")
    if any(len(part) > LONGEST_NAME or not part.isprintable() for part in key):
        return RefusedRow(row, "bad_number", f"This row's order number or channel can't be one: {said}")
    return None


def _bad(cells: dict[str, str]) -> str | None:
    """Why a row whose cells are in place can't be read as a line, None if it can."""
    if not cells["reference"]:
        return "This row has no reference."
    return _beyond({name: cells[name] for name in LONGEST})


def _quantity(cell: str) -> str:
    """How many, empty for one; what is no number stays as it is."""
    match = re.fullmatch("0*([0-9]+)(?:[.,]0{1,2})?", cell)
    many = (match[1] if match else cell)[:20]
    return "" if many == "1" else many
