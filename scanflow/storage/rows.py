"""Things to rows and back."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import asdict, astuple, fields, replace
from typing import Any

from sqlalchemy import Table

from scanflow.domain import things
from scanflow.domain.counts import stocktake
from scanflow.domain.life import Condition
from scanflow.storage import tables

KINDS: dict[type, Table] = {
    things.Section: tables.sections,
    things.Rack: tables.racks,
    things.Bin: tables.bins,
    things.Slot: tables.slots,
    things.Alias: tables.aliases,
    things.Photo: tables.photos,
    things.Item: tables.items,
    things.Stay: tables.stays,
    things.Round: tables.rounds,
    things.Stop: tables.stops,
    things.Parcel: tables.parcels,
    things.Label: tables.labels,
    things.Channel: tables.channels,
    things.Order: tables.orders,
    things.ChangedOrder: tables.changed_orders,
    things.Line: tables.lines,
    things.Doubt: tables.doubts,
    things.Listing: tables.listings,
    things.Return: tables.returns,
    things.Scan: tables.scans,
    stocktake.Stocktake: tables.stocktakes,
    stocktake.Look: tables.looks,
    stocktake.Resolved: tables.resolutions,
}

FIELDS: dict[type, tuple[str, ...]] = {kind: tuple(field.name for field in fields(kind)) for kind in KINDS}

COLUMNS: dict[type, list[Any]] = {
    kind: [column for column in table.columns if column.name != "n"] for kind, table in KINDS.items()
}
"""A kind's columns in the order of its fields."""


def _slot(row: Any) -> things.Slot:
    (code, section, number, bin_, turns, card), seen, out, (by, until, twin) = row[:6], row[6:11], row[11:15], row[15:]
    sighting, gone = things.Sighting(*seen) if seen[0] else None, things.Out(*out) if out[0] else None
    fetch = things.Fetch(by, until) if until else None
    return things.Slot(code, section, number, bin_, turns, card, sighting, gone, fetch, twin)


def _parcel(row: Any) -> things.Parcel:
    name, table, orders, *more = row
    return things.Parcel(name, table, tuple(orders.split()), *more)


def _channel(row: Any) -> things.Channel:
    name, statuses, complete = row
    return things.Channel(
        name, {value: things.ChannelStatus(each) for value, each in json.loads(statuses).items()}, complete
    )


def _return(row: Any) -> things.Return:
    found = (things.CheckedThing(line, Condition(each), stay) for line, each, stay in json.loads(row[-1]))
    return replace(things.Return(*row[:-1]), lines=tuple(row[2].split()), checks=tuple(found))


def _stocktake(row: Any) -> stocktake.Stocktake:
    count = stocktake.Stocktake(*row[:-1])
    return replace(count, sample=_sample(**json.loads(row[-1]))) if row[-1] else count


def _sample(chosen: str, of: int, bins: list[str]) -> stocktake.Sample:
    return stocktake.Sample(stocktake.Chosen(chosen), of, tuple(bins))


def _looked(row: Any) -> stocktake.Look:
    key, body, count, place, at, how, reads, whole, closer, size, photo = row
    read = tuple(_read(*each) for each in json.loads(reads))
    return stocktake.Look(key, body, count, place, at, how, read, whole, closer, tuple(json.loads(size)), photo)


def _read(
    text: str, code: str | None, certainty: str, corners: list[float], doubted: bool = False, bins: Sequence[str] = ()
) -> stocktake.Read:
    """What the first looks did not say yet has its usual value."""
    return stocktake.Read(text, code, stocktake.Certainty(certainty), tuple(corners), doubted, tuple(bins))


_READERS: dict[type, Callable[[Any], Any]] = {
    things.Slot: _slot,
    things.Parcel: _parcel,
    things.Channel: _channel,
    things.Return: _return,
    stocktake.Stocktake: _stocktake,
    stocktake.Look: _looked,
}


def thing(kind: type, row: Any) -> Any:
    """The thing of a row of `COLUMNS[kind]`."""
    reader = _READERS.get(kind)
    return reader(row) if reader else kind(*row)


_PARTS: dict[str, Any] = {"seen": things.Sighting, "out": things.Out, "fetch": things.Fetch}
"""Fields of a slot that are a value of several columns, which begin with the field's name."""


def _tuples(values: Iterable[Any]) -> str:
    return json.dumps([astuple(each) for each in values])


_TEXTS: dict[str, Callable[[Any], str]] = {
    "orders": " ".join,
    "lines": " ".join,
    "statuses": lambda each: json.dumps(each, ensure_ascii=False, sort_keys=True),
    "checks": _tuples,
    "reads": _tuples,
    "size": json.dumps,
}
"""Fields that are kept as one text."""


def values(given: Mapping[str, Any]) -> dict[str, Any]:
    """Column values of these fields."""
    row = dict(given)
    for name, kind in _PARTS.items():
        if name in row:
            part = row.pop(name)
            row |= {f"{name}_{each.name}": getattr(part, each.name) if part else None for each in fields(kind)}
    if "holds" in row:
        row["holds"] = tables.Holds().process_bind_param(row["holds"], None)
    if "table" in row:
        row["at_table"] = row.pop("table")
    if "sample" in row:
        row["sample"] = json.dumps(asdict(row["sample"])) if row["sample"] else None
    return row | {name: text(row[name]) for name, text in _TEXTS.items() if name in row}
