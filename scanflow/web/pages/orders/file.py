"""A file of orders: how its columns are understood, what loading it would do, and loading it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain.orders.loaded import Loaded, RefusedRow
from scanflow.domain.things import Item, Line, Order, Slot, Stay
from scanflow.exchange import csv_table, mapping, order_files, orders_csv
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import ColumnMapping, MappingError
from scanflow.exchange.orders_csv import Parsed
from scanflow.shop import a_while
from scanflow.storage.views import orders as order_views
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.declare import page
from scanflow.web.pages.file_form import carried, file_sent
from scanflow.web.pages.forms import write_in_parts
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.ports import Unit, must

blueprint = Blueprint("order_file_page", __name__)
SAMPLE = 4
SHOWN = 100
"""Held lines and refused rows that are listed before the rest is only counted."""


@dataclass(frozen=True, slots=True)
class LoadOutcome:
    """What loading did or would do: the counts, the lines that are held, and all rows that became no line.

    `warnings` and `dates` as `Parsed` has them.
    """

    loaded: Loaded
    held: Sequence[Any]
    refused: tuple[RefusedRow, ...]
    warnings: tuple[RefusedRow, ...]
    dates: str


@page(blueprint, "GET", "/orders/load")
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    return render("orders/file_choose.html", said=said), status


@page(blueprint, "POST", "/orders/load", takes_file=True)
def load() -> ResponseReturnValue:
    try:
        data = file_sent()
        table = csv_table.read_table(data)
    except FileError as error:
        return show(str(error), 422)
    columns = _columns(table)
    name = request.form.get("name", "").strip()[:64]
    said = ""
    outcome = None
    begun = 0
    apply = request.form.get("step") == "apply" and request.form.get("shown") == columns.to_json()
    try:
        parsed = orders_csv.orders(table, columns, order_files.usual_dates(room()))
        outcome = _apply(parsed, columns, table, name) if apply else _try(parsed)
        begun = 0 if apply else room().loads.far(parsed.key).done
    except MappingError as error:
        said = str(error)
    if apply and outcome is not None:
        return render("orders/file_done.html", outcome=outcome, shown=SHOWN)
    shown = {"table": table, "columns": columns, "outcome": outcome, "name": name, "carried": carried(data)}
    shown["begun"] = begun
    status = 422 if said else 200
    return render(
        "orders/file_check.html", **shown, fields=mapping.LABELS, sample=SAMPLE, shown=SHOWN, said=said
    ), status


def _columns(table: CsvTable) -> ColumnMapping:
    """What the person chose, else what the room says of such a file."""
    if not request.form.get("step"):
        return order_files.columns(room(), table)
    chosen = {name: request.form.get(f"column-{name}", "") for name in mapping.FIELDS}
    columns = {name: header for name, header in chosen.items() if header in table.headers}
    order = request.form.get("dates", "")
    return ColumnMapping(columns, DateOrder(order) if order in list(DateOrder) else None)


def _outcome(parsed: Parsed, loaded: Loaded, held: Sequence[Any]) -> LoadOutcome:
    refused = tuple(sorted((*parsed.refused, *loaded.refused), key=lambda row: row.row))
    return LoadOutcome(loaded, held, refused, parsed.warnings, parsed.dates)


def _try(parsed: Parsed) -> LoadOutcome:
    """What loading would do."""
    with shop().trying(visitor().name) as unit:
        loaded = order_file.load(unit, parsed.orders, parsed.rows)
        return _outcome(parsed, loaded, [_held(unit, line) for line in loaded.held[:SHOWN]])


def _held(unit: Unit, line_id: str) -> Mapping[str, Any]:
    """A line that would be held, as `order_views` shows one."""
    line = must(unit, Line, line_id)
    stay = must(unit, Stay, line.stay) if line.stay else None
    shown = {"reference": line.reference, "said": line.title, "holds": line.holds, "code": None, "section": None}
    if stay is not None:
        slot, item = must(unit, Slot, stay.code), must(unit, Item, stay.item)
        shown |= {"code": slot.code, "section": slot.section, "title": item.title}
    return {"id": line.id, "number": must(unit, Order, line.order).number, "title": "", **shown}


def _apply(parsed: Parsed, columns: ColumnMapping, table: CsvTable, name: str) -> LoadOutcome:
    """Load it, and remember its columns: under a name if one was given, and for files of the same headers."""
    signature = mapping.signature(table.headers)
    load = order_file.in_parts(room(), parsed.key, parsed.orders, parsed.rows, a_while)

    def work(unit: Unit) -> Loaded | None:
        loaded = load(unit)
        if loaded is not None:
            unit.mappings.save(name or signature, signature, columns.to_json())
        return loaded

    loaded = write_in_parts(work)
    return _outcome(parsed, loaded, ask(order_views.lines_by_id, loaded.held[:SHOWN]))
