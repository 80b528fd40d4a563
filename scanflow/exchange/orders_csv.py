"""Orders from the rows of a table. Every row that isn't blank becomes a line of an order or is listed as refused."""

import hashlib
from collections.abc import Callable
from dataclasses import dataclass, field, replace

from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import RefusedRow
from scanflow.domain.things import ChannelStatus, status_key
from scanflow.exchange.csv_table import CsvRow, CsvTable
from scanflow.exchange.dates import DateOrder, read_date
from scanflow.exchange.mapping import DATES, FIELDS, ColumnMapping, MappingError, date_order_of, missing
from scanflow.workflow.fields import LONGEST_NAME
from scanflow.workflow.orders.receiving import NewLine
from scanflow.workflow.ports import Invalid

LONGEST = {name: each["maxLength"] for name, each in NewLine.model_json_schema()["properties"].items()}
"""Characters of a line's fields. What is longer makes the line a bad one, of which so much is kept."""

Key = tuple[str, str]  # channel, number

Meaning = Callable[[str, str], ChannelStatus | None]
"""What a status of a channel means, None where nobody said it."""


@dataclass(frozen=True, slots=True)
class Parsed:
    """`orders` by the first row of each; `rows`: the row numbers of an order's lines, in the order of its lines.

    `refused`: the rows that belong to no order, `no_number` or `bad_number`, and those of an order with a status that
    nobody explained, `new_status`. `listed`: all orders that the file names. `statuses`: the values that stand in its
    status column, by channel.
    """

    orders: tuple[IncomingOrder, ...]
    refused: tuple[RefusedRow, ...]
    rows: dict[Key, tuple[int, ...]]
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
    date_order = mapping.date_order or date_order_of(table, mapping.columns) or usual
    drafts: dict[Key, _Draft] = {}
    refused: list[RefusedRow] = []
    for row in table.rows:
        cells = {name: table.cell(row, mapping.columns[name]) if name in mapping.columns else "" for name in FIELDS}
        key = (" ".join(cells["channel"].split()) or channel, " ".join(cells["number"].split()))
        refusal = _refusal(row.number, key, cells)
        if refusal is not None:
            refused.append(refusal)
            continue
        dates, bad = _read(table, row, cells, date_order)
        draft = drafts.setdefault(key, _Draft())
        draft.dates = dates | draft.dates
        line = {name: cells[name] for name in LONGEST}
        if bad is None:
            bad = _beyond(line)
        draft.lines.append(IncomingLine(**{name: each[: LONGEST[name]] for name, each in line.items()}, bad=bad))
        draft.rows.append(row.number)
        draft.statuses.append(" ".join(cells["status"].split()))
    listed = frozenset(drafts)
    statuses = _statuses(drafts)
    refused += [each for key in listed for each in _unexplained(key, drafts[key], meaning)]
    left_out = {row.row for row in refused}
    drafts = {key: draft for key, draft in drafts.items() if draft.rows[0] not in left_out}
    found = tuple(_order(key, draft, meaning) for key, draft in drafts.items())
    rows = {key: tuple(draft.rows) for key, draft in drafts.items()}
    return Parsed(found, tuple(sorted(refused, key=lambda row: row.row)), rows, listed, statuses)


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
        status = ChannelStatus.ASIDE if ChannelStatus.ASIDE in said else ChannelStatus.PACK
        lines = [_differing(*each) for each in zip(lines, draft.statuses, meant, strict=True)]
    dates = draft.dates
    return IncomingOrder(number, channel, dates.get("ordered_at"), dates.get("ship_by"), tuple(lines), status=status)


def _differing(line: IncomingLine, value: str, meant: ChannelStatus | None) -> IncomingLine:
    """A line that was cancelled or sent, of an order that was not: a person looks at it."""
    if meant not in (ChannelStatus.CANCELLED, ChannelStatus.SENT):
        return line
    words = f"Its row says “{value[:60]}”, and other rows of the order say otherwise."
    return replace(line, bad=line.bad or words, status=meant)


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


def _refusal(row: int, key: Key, cells: dict[str, str]) -> RefusedRow | None:
    said = ", ".join(cell for cell in cells.values() if cell)[:200]  # mapped columns only: the rest may be a buyer's
    if not key[1]:
        return RefusedRow(row, "no_number", f"This row has no order number: {said}")
    if any(len(part) > LONGEST_NAME or not part.isprintable() for part in key):
        return RefusedRow(row, "bad_number", f"This row's order number or channel can't be one: {said}")
    return None


def _read(
    table: CsvTable, row: CsvRow, cells: dict[str, str], date_order: DateOrder | None
) -> tuple[dict[str, str], str | None]:
    """The dates of a row by field, and why the row can't be read if it can't; cells out of place date nothing."""
    misfit = table.misfit(row)
    if misfit:
        return {}, misfit
    bad = None if cells["reference"] else "This row has no reference."
    dates = {}
    for name in DATES:
        if cells[name]:
            try:
                dates[name] = read_date(cells[name], date_order)
            except ValueError:
                bad = bad or f"“{cells[name][:40]}” can't be read as a date."
    return dates, bad
