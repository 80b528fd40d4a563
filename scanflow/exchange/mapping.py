"""Which column of an order file holds what: guessed, corrected by a person, remembered for the same headers."""

import hashlib
import json
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from operator import eq

from labels.slot_code import CodeError, parse_reference
from scanflow.exchange.csv_table import CsvTable
from scanflow.exchange.dates import DateOrder, Proof, prove

LABELS = {
    "number": "Order number",
    "channel": "Channel",
    "ordered_at": "Ordered at",
    "ship_by": "Ship by",
    "reference": "Reference",
    "title": "Title",
    "listing": "Listing id",
    "status": "Status",
    "quantity": "Quantity",
}
FIELDS = tuple(LABELS)
REQUIRED = ("number", "reference")
DATES = ("ordered_at", "ship_by")

# The trade's general words for each column, the surest first. (common practice, no source)
_NAMES = {
    "number": "number, order number, order no, order nr, order id, order, order reference, sales order, sale number, "
    "sale id, sale",
    "channel": "channel, sales channel, shop, shop name, store, store name, site, platform, source",
    "ordered_at": "ordered at, ordered on, ordered, order date, order time, sale date, date of sale, date sold, "
    "sold on, sold at, bought on, date bought, created at, date",
    "ship_by": "ship by, ship by date, ship before, dispatch by, dispatch by date, send by, "
    "ship no later than, last day to ship, deliver by, deliver by date, delivery date, due date, due, deadline",
    "reference": "reference, item reference, sku, item sku, stock number, stock code, slot, "
    "slot code, location, bin location, item code, ref",
    "title": "title, item title, listing title, item name, item, product title, product name, product, "
    "item description, description",
    "listing": "listing, listing id, listing number, listing no, item id, item number, item no, product id, "
    "article number",
    "status": "status, order status, sale status, payment status, state of payment, payment state, payment, state, "
    "order state",
    "quantity": "quantity, qty, quantity ordered, quantity sold, ordered quantity, item quantity, pieces, pcs, count, "
    "number of items, units",
}
_SAMPLE = 500  # rows whose cells tell a column of references


class MappingError(ValueError):
    """A mapping that can't be used; the message is a sentence for the person who chose it."""


@dataclass(frozen=True, slots=True)
class ColumnMapping:
    """`columns`: header by field, a field without a column left out. `date_order` None: by what each file proves."""

    columns: dict[str, str] = field(default_factory=dict)
    date_order: DateOrder | None = None

    def __post_init__(self) -> None:
        unknown = [name for name in self.columns if name not in FIELDS]
        if unknown:
            raise MappingError(f"There is no field {unknown[0]!r} in an order.")

    def to_json(self) -> str:
        return json.dumps({"columns": self.columns, "date_order": self.date_order}, ensure_ascii=False, sort_keys=True)

    @classmethod
    def from_json(cls, text: str) -> "ColumnMapping":
        """What `to_json` wrote; MappingError for anything else."""
        try:
            stored = json.loads(text)
            columns, order = dict(stored["columns"]), stored.get("date_order")
            if not all(isinstance(header, str) for header in columns.values()):
                raise TypeError
            order = None if order is None else DateOrder(order)
        except (ValueError, TypeError, KeyError, AttributeError):
            raise MappingError("This is not a stored mapping of columns.") from None
        return cls(columns, order)


def signature(headers: Iterable[str]) -> str:
    """Names a set of headers, in any order, by 64 hex digits: the key under which a mapping is remembered."""
    return hashlib.sha256(json.dumps(sorted(headers)).encode()).hexdigest()


def missing(mapping: ColumnMapping, headers: Iterable[str]) -> tuple[str, ...]:
    """The required fields that have no column among the headers."""
    present = set(headers)
    return tuple(name for name in REQUIRED if mapping.columns.get(name) not in present)


def guess(table: CsvTable, digits: Mapping[str, int] | None = None) -> ColumnMapping:
    """Columns by the words in their headers; the column of references also by its cells, dates by what they prove.

    `digits`: width of the number by section, as `parse_reference` takes it.
    """
    columns = by_name(table.headers, _NAMES)
    named = columns.get("reference")
    if named is None or _share_of_references(table, named, digits) < 0.5:
        taken = set(columns.values())
        free = [header for header in dict.fromkeys(table.headers) if header and header not in taken]
        shares = {header: _share_of_references(table, header, digits) for header in free}
        best = max(free, key=lambda header: shares[header], default=None)
        if best is not None and shares[best] >= 0.5:
            columns["reference"] = best
    return ColumnMapping(columns, proof_of(table, columns).order)


def proof_of(table: CsvTable, columns: Mapping[str, str], dates: Iterable[str] = DATES) -> Proof:
    """What all dates of the file prove of day and month."""
    headers = [columns[name] for name in dates if name in columns]
    return prove((row.number, table.cell(row, header)) for row in table.rows for header in headers)


def by_name(headers: tuple[str, ...], names: Mapping[str, str]) -> dict[str, str]:
    """Header by field: those that are one of its words in `names`, which commas part and of which the surest comes
    first; then, for fields without one, headers that contain words of two or more.
    """
    plain = {header: " ".join(re.findall(r"[^\W_]+", header.casefold())) for header in headers}
    columns: dict[str, str] = {}
    for fits in (eq, _has_phrase):
        for name, words in names.items():
            free = [header for header in plain if header not in columns.values()]
            fitting = (header for phrase in words.split(", ") for header in free if fits(phrase, plain[header]))
            header = None if name in columns else next(fitting, None)
            if header is not None:
                columns[name] = header
    return columns


def _has_phrase(phrase: str, header: str) -> bool:
    return " " in phrase and f" {phrase} " in f" {header} "


def _share_of_references(table: CsvTable, header: str, digits: Mapping[str, int] | None) -> float:
    """The share of a column's cells, blank ones aside, that are references, slot codes or card texts."""
    cells = [cell for row in table.rows[:_SAMPLE] if (cell := table.cell(row, header))]
    return sum(_is_reference(cell, digits) for cell in cells) / len(cells) if cells else 0.0


def _is_reference(cell: str, digits: Mapping[str, int] | None) -> bool:
    try:
        parse_reference(cell, digits)
    except CodeError:
        return False
    return True
