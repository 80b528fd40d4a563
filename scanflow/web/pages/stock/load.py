"""A file of things that stand here: how its columns are understood, what would come of it, and taking it back."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain.orders.loaded import Loaded
from scanflow.domain.words import units
from scanflow.exchange import csv_table, order_files, stock_csv
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder
from scanflow.shop import a_while
from scanflow.storage.views import stock as slot_views
from scanflow.web.pages.declare import page
from scanflow.web.pages.file_form import carried, file_sent
from scanflow.web.pages.forms import write_in_parts
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.ports import Refused
from scanflow.workflow.stock import loading
from scanflow.workflow.stock.loading import Fate, StockFile

blueprint = Blueprint("stock_file_page", __name__)
SAMPLE = 4
SHOWN = 100
"""Rows that are listed before the rest is only counted."""


@page(blueprint, "GET", "/stock/load")
def show(said: str = "", status: int = 200, done: str = "") -> ResponseReturnValue:
    return render("stock/load.html", said=said, done=done, loads=ask(slot_views.loads)), status


@page(blueprint, "POST", "/stock/load", takes_file=True)
def load() -> ResponseReturnValue:
    """First look, then, once these columns were shown, store."""
    try:
        data = file_sent()
        table = csv_table.read_table(data)
    except FileError as error:
        return show(str(error), 422)
    columns, dates = _columns(table)
    understood = json.dumps([columns, dates], sort_keys=True)
    lacking = stock_csv.lacking(columns)
    said = f"No column holds the {loading.FIELDS[lacking[0]].lower()}; choose one." if lacking else ""
    if not said and request.form.get("step") == "apply" and request.form.get("shown") == understood:
        return render("stock/load_done.html", done=_apply(_file(table, columns, dates)), shown=SHOWN)
    file = None if said else _file(table, columns, dates)
    each: list[Fate] = loading.fates(room(), file) if file else []
    shown: dict[str, Any] = {
        "would": loading.would_be(each) if file else None,
        "stored": [fate for fate in each if fate.code],
        "begun": room().loads.far(file.key).done if file else 0,
        "fields": loading.FIELDS,
        "needed": stock_csv.NEEDED,
        "carried": carried(data),
    }
    shown |= {"table": table, "columns": columns, "dates": dates, "understood": understood, "sample": SAMPLE}
    return render("stock/load_check.html", **shown, shown=SHOWN, said=said), 422 if said else 200


@page(blueprint, "POST", "/stock/loads/<id>/back")
def take_back(id: str) -> ResponseReturnValue:
    """All that a file brought is out of stock again."""
    try:
        out, kept = write_in_parts(loading.taking_back(room(), id, a_while))
    except Refused as error:
        return show(error.detail, 409)
    done = f"{units(out, 'thing')} of that file {'is' if out == 1 else 'are'} out of stock again."
    if kept:
        stay, them = ("stays", "it") if kept == 1 else ("stay", "them")
        done += f" {units(kept, 'thing')} {stay}: somebody scanned, sold or changed {them} meanwhile."
    return show(done=done)


def _columns(table: CsvTable) -> tuple[dict[str, str], DateOrder | None]:
    """What the person chose, else what the headers say."""
    if not request.form.get("step"):
        return stock_csv.guess(table), None
    chosen = {name: request.form.get(f"column-{name}", "") for name in loading.FIELDS}
    order = request.form.get("dates", "")
    columns = {name: header for name, header in chosen.items() if header in table.headers}
    return columns, DateOrder(order) if order in list(DateOrder) else None


def _file(table: CsvTable, columns: Mapping[str, str], dates: DateOrder | None) -> StockFile:
    rows = stock_csv.rows(table, columns, order_files.usual_dates(room()), dates)
    return StockFile.of(room(), rows)


def _apply(file: StockFile) -> Loaded:
    return write_in_parts(loading.in_parts(file, a_while))
