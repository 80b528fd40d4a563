"""A file of orders, as it is understood in this room."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager

from scanflow.exchange import csv_table, orders_csv
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import ColumnMapping, MappingError, guess, signature
from scanflow.exchange.orders_csv import Parsed
from scanflow.workflow.ports import Invalid, Unit
from scanflow.workflow.stock import cards


def columns(unit: Unit, table: CsvTable, name: str | None = None) -> ColumnMapping:
    """The mapping of that name; without one that which is remembered for a file of these headers, or a guess.

    `Invalid` at `/mapping`; MappingError where none can be guessed.
    """
    stored = unit.mappings.by_signature(signature(table.headers)) if name is None else unit.mappings.load(name)
    if stored is not None:
        return ColumnMapping.from_json(stored)
    if name is not None:
        raise Invalid("/mapping", "unknown_mapping", f"There is no mapping {name}.")
    return guess(table, cards.widths(unit))


def usual_dates(unit: Unit) -> DateOrder | None:
    """How days are written in this shop. Month first needs no word: it is read so wherever no full stops are."""
    return DateOrder.DAY_FIRST if unit.settings.dates == "day-first" else None


def read(looking: Callable[[], AbstractContextManager[Unit]], data: bytes, name: str | None = None) -> Parsed:
    """The orders of a file; `looking` opens a view of the room. `Invalid` at `/file` or `/mapping`."""
    try:
        table = csv_table.read_table(data)
    except FileError as error:
        raise Invalid("/file", "bad_file", str(error)) from error
    try:
        with looking() as unit:
            chosen, usual = columns(unit, table, name), usual_dates(unit)
        return orders_csv.orders(table, chosen, usual)
    except MappingError as error:
        raise Invalid("/file" if name is None else "/mapping", "bad_columns", str(error)) from error
