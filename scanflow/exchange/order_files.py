"""A file of orders, as it is understood in this room."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager

from scanflow.domain.things import Channel, ChannelStatus, status_key
from scanflow.exchange import csv_table, orders_csv
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import ColumnMapping, MappingError, guess, signature
from scanflow.exchange.orders_csv import Meaning, Parsed
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


def meanings(unit: Unit) -> Meaning:
    """What the statuses of each channel mean, as somebody said it here."""
    said = {
        channel.name: {status_key(value): meant for value, meant in channel.statuses.items()}
        for channel in unit.find(Channel)
    }

    def meaning(channel: str, value: str) -> ChannelStatus | None:
        return said.get(channel, {}).get(status_key(value))

    return meaning


def proposed(unit: Unit, table: CsvTable) -> str:
    """The one channel whose files had these columns before, empty where that is none or several."""
    known = [name for name in unit.mappings.named(signature(table.headers)) if name != signature(table.headers)]
    return known[0] if len(known) == 1 else ""


WHICH_CHANNEL = "Say which channel this file is from. Orders of two channels may have the same number."


def read(
    looking: Callable[[], AbstractContextManager[Unit]], data: bytes, name: str | None = None, channel: str = ""
) -> Parsed:
    """The orders of a file; `looking` opens a view of the room. `channel` is that of rows that name none. `Invalid` at
    `/file`, `/mapping` or, where a row has none at all, `/channel`.
    """
    try:
        table = csv_table.read_table(data)
    except FileError as error:
        raise Invalid("/file", "bad_file", str(error)) from error
    try:
        with looking() as unit:
            chosen, usual, meaning = columns(unit, table, name), usual_dates(unit), meanings(unit)
        parsed = orders_csv.orders(table, chosen, usual, channel, meaning)
    except MappingError as error:
        raise Invalid("/file" if name is None else "/mapping", "bad_columns", str(error)) from error
    if parsed.lacks_channel:
        raise Invalid("/channel", "required", WHICH_CHANNEL)
    return parsed
