"""Orders from the rows of a table. Every row that isn't blank becomes a line of an order, or is listed."""

import hashlib
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field, replace
from functools import partial
from typing import Any

from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import RefusedRow
from scanflow.domain.things import ChannelStatus, status_key
from scanflow.exchange.csv_table import CsvTable
from scanflow.exchange.dates import DateOrder, read_date
from scanflow.exchange.mapping import DATES, FIELDS, ColumnMapping, MappingError, missing, proof_of
from scanflow.workflow.fields import LONGEST_NAME
from scanflow.workflow.orders.receiving import NewLine
from scanflow.workflow.ports import Invalid

LONGEST = {name: each["maxLength"] for name, each in NewLine.model_json_schema()["properties"].items()}
"""Characters of a line's fields. What is longer makes the line a bad one, of which so much is kept."""

Key = tuple[str, str]  # channel, number

ALONE = (ChannelStatus.CANCELLED, ChannelStatus.SENT)
"""What a row may say of its line alone, where other rows of its order say otherwise."""

Meaning = Callable[[str, str], ChannelStatus | None]
"""What a status of a channel means, None where nobody said it."""


@dataclass(frozen=True, slots=True)
class Parsed:
    """`orders` by the first row of each; `rows`: the row numbers of an order's lines, in the order of its lines.

    `refused`: the rows that belong to no order, `no_number`, `bad_number` or `no_order`, and those of an order with a
    status that nobody explained, `new_status`. `warnings`: what holds nothing and should be known, by row:
    `above_header`, `bad_time` of a date that the row is taken without, `same_row` of a row that an earlier one says
    already. `dates`: how the dates were read, in sentences. `listed`: all orders that the file names. `statuses`: the
    values that stand in its status column, by channel.
    """

    orders: tuple[IncomingOrder, ...]
    refused: tuple[RefusedRow, ...]
    rows: dict[Key, tuple[int, ...]]
    warnings: tuple[RefusedRow, ...] = ()
    dates: str = ""
    listed: frozenset[Key] = field(default=frozenset(), compare=False)
    statuses: dict[str, tuple[str, ...]] = field(default_factory=dict, compare=False)

    @property
    def lacks_channel(self) -> bool:
        """Whether somebody must say first which channel the file is from."""
        return any(not channel for channel, _ in self.listed)

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
    statuses: list[str] = field(default_factory=list)
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
        said: dict[str, Any] = {name: cells[name][:most] for name, most in LONGEST.items()}
        self.lines.append(IncomingLine(**said, bad=bad, quantity=_quantity(cells["quantity"])))
        self.rows.append(row)
        self.statuses.append(" ".join(cells["status"].split()))
        for name in DATES if not misfit else ():
            try:
                if cells[name]:
                    self.dates.setdefault(name, read(cells[name]))
            except ValueError:
                why = f"“{cells[name][:40]}” can't be read as a date. The row is taken without it."
                yield RefusedRow(row, "bad_time", why)


def _means_nothing(channel: str, value: str) -> None:
    """For a file whose channels have not said what their statuses mean."""


def orders(
    table: CsvTable,
    mapping: ColumnMapping,
    usual: DateOrder | None = None,
    channel: str = "",
    meaning: Meaning = _means_nothing,
) -> Parsed:
    """Rows of one channel and number are one order, wherever they stand; its dates are the first ones given.

    `usual` is how days are written here, for dates that nothing proves. `channel` is that of rows that name none.

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
        key = (" ".join(cells["channel"].split()) or channel, " ".join(cells["number"].split()))
        refusal = _refusal(row.number, key, cells)
        if refusal is not None:
            refused.append(refusal)
            continue
        warnings += drafts.setdefault(key, _Draft()).take(row.number, cells, table.misfit(row), read)
    listed = frozenset(drafts)
    statuses = _statuses(drafts)
    refused += [each for key in listed for each in _unexplained(key, drafts[key], meaning)]
    left_out = {row.row for row in refused}
    drafts = {key: draft for key, draft in drafts.items() if draft.rows[0] not in left_out}
    found = tuple(_order(key, draft, meaning) for key, draft in drafts.items())
    rows = {key: tuple(draft.rows) for key, draft in drafts.items()}
    warnings.sort(key=lambda each: each.row)
    refused.sort(key=lambda each: each.row)
    told = proof.told(mapping.date_order, usual)
    return Parsed(found, tuple(refused), rows, tuple(warnings), told, listed, statuses)


def _statuses(drafts: dict[Key, _Draft]) -> dict[str, tuple[str, ...]]:
    found: dict[str, dict[str, str]] = {}
    for (channel, _), draft in drafts.items():
        for value in filter(None, draft.statuses):
            found.setdefault(channel, {}).setdefault(status_key(value), value)
    return {channel: tuple(values.values()) for channel, values in found.items()}


def _unexplained(key: Key, draft: _Draft, meaning: Meaning) -> list[RefusedRow]:
    """All rows of an order of which one has a status that nobody explained: a part of it would go out alone."""
    new = next((value for value in draft.statuses if value and meaning(key[0], value) is None), None)
    if new is None:
        return []
    words = f"Order {key[1]}: nobody has said yet what the status “{new[:60]}” means."
    return [RefusedRow(row, "new_status", words) for row in draft.rows]


def _order(key: Key, draft: _Draft, meaning: Meaning) -> IncomingOrder:
    channel, number = key
    meant = [meaning(channel, value) if value else None for value in draft.statuses]
    said = {each for each in meant if each is not None}
    status, lines = next(iter(said), None), draft.lines
    if len(said) > 1:
        status = next((each for each in (ChannelStatus.ASIDE, ChannelStatus.PACK) if each in said), None)
        lines = [replace(line, status=each) if each in ALONE else line for line, each in zip(lines, meant, strict=True)]
    dates = draft.dates
    return IncomingOrder(number, channel, dates.get("ordered_at"), dates.get("ship_by"), tuple(lines), status=status)


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
