"""The stock as a file."""

from __future__ import annotations

from flask import Blueprint, Response
from pydantic import Field

from scanflow.exchange import csv_out, stock_csv
from scanflow.storage.views import stock as slot_views
from scanflow.web.api.contract import MANAGERS, call
from scanflow.web.door.visitors import shop
from scanflow.workflow.fields import Command, Maybe, Time
from scanflow.workflow.times import instant

blueprint = Blueprint("api_stock_file", __name__)


class StockQuery(Command):
    on: Maybe[Time] = Field(default=None, description="What stood here then; of a day, at its end. Without it, now.")


@call(blueprint, "GET", "/api/stock.csv", MANAGERS, {200: csv_out.TYPE})
def save(query: StockQuery) -> Response:
    """Gives what stands here as CSV: number, title, listing, notes, since, bin."""
    with shop().looking() as unit:
        zone = unit.settings.zone
        rows = slot_views.standing(unit.connection, instant(query.on, zone) or unit.at)
    response = Response(stock_csv.text(rows, zone), mimetype=csv_out.TYPE)
    response.headers["Content-Disposition"] = "attachment; filename=stock.csv"
    return response
