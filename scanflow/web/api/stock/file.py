"""The stock as a file: out, and in."""

from __future__ import annotations

from typing import Annotated

from flask import Blueprint, Response
from pydantic import Field

from scanflow.domain.orders.loaded import Loaded
from scanflow.exchange import csv_out, order_files, stock_csv
from scanflow.shop import a_while
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import stock as slot_views
from scanflow.web.api import given, render
from scanflow.web.api.contract import MANAGERS, answer, call, digest, do
from scanflow.web.door.visitors import shop
from scanflow.web.once import CallReply
from scanflow.workflow.fields import Command, Maybe, Time
from scanflow.workflow.stock import loading
from scanflow.workflow.times import instant

blueprint = Blueprint("api_stock_file", __name__)


class StockQuery(Command):
    on: Maybe[Time] = Field(default=None, description="What stood here then; of a day, at its end. Without it, now.")


@call(blueprint, "GET", "/api/stock.csv", MANAGERS, {200: csv_out.TYPE})
def save(query: StockQuery) -> Response:
    """Gives what stands here as CSV: number, title, listing, notes, packing, since, bin."""
    with shop().looking() as unit:
        zone = unit.settings.zone
        rows = slot_views.standing(unit.connection, instant(query.on, zone) or unit.at)
    response = Response(stock_csv.text(rows, zone), mimetype=csv_out.TYPE)
    response.headers["Content-Disposition"] = "attachment; filename=stock.csv"
    return response


class StockSent(Command):
    file: Annotated[bytes, Field(strict=True, description="CSV (RFC 4180), with a header.")]
    dry_run: bool = Field(default=False, strict=True, description="Only say what loading would do.")


@call(blueprint, "POST", "/api/stock/load", MANAGERS, {200: given.StockLoaded})
def load(said: StockSent) -> Response:
    """Stores the things of a file under the numbers on their cards; what can't be stored is listed, the rest is. A file
    that was cut off goes on.
    """
    with shop().looking() as unit:
        file = loading.StockFile.of(unit, stock_csv.read(said.file, order_files.usual_dates(unit)))
        if said.dry_run:
            return answer(_given(loading.would_be(loading.fates(unit, file))))
    load_part = loading.in_parts(file, a_while)

    def work(unit: SqlUnit) -> CallReply | None:
        done = load_part(unit)
        return None if done is None else CallReply(200, _given(done))

    return do(work, digest(said.sent("file"), said.file).encode())


def _given(done: Loaded) -> given.StockLoaded:
    refused = [render.refused_row(row) for row in done.refused]
    return {"stored": done.loaded, "unchanged": done.unchanged, "refused": refused}
