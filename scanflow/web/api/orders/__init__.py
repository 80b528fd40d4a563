"""Orders come in, one by one or as a file; they are shown and cancelled."""

from __future__ import annotations

from typing import Annotated

from flask import Blueprint, Response
from pydantic import Field

from scanflow.domain.derive import OrderState
from scanflow.domain.things import Order
from scanflow.exchange import order_files
from scanflow.shop import a_while
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import MANAGERS, STAFF, answer_view, call, digest, do
from scanflow.web.collecting import uncollected
from scanflow.web.door.visitors import shop
from scanflow.web.once import CallReply
from scanflow.workflow import orders
from scanflow.workflow.fields import LONGEST_NAME, Command, Flag, Maybe, words
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders import receiving
from scanflow.workflow.ports import must

blueprint = Blueprint("api_orders", __name__)


@call(blueprint, "POST", "/api/orders", MANAGERS, {200: given.Order, 201: given.Order})
def create(said: receiving.NewOrder) -> Response:
    """Takes an order in and binds its lines: 201 for a new one, 200 for one sent again."""

    def work(unit: SqlUnit) -> CallReply:
        order, outcome = receiving.receive(unit, said.incoming)
        status = 201 if outcome is receiving.Arrival.NEW else 200
        return CallReply(status, render.order(unit, order), f"/api/orders/{order.id}" if status == 201 else "")

    return do(work)


class OrderFile(Command):
    file: Annotated[bytes, Field(strict=True, description="CSV (RFC 4180), with a header.")]
    mapping: Maybe[Annotated[str, words(100, least=1)]] = Field(
        default=None, description="The name of a remembered mapping of columns."
    )
    channel: Annotated[str, words(LONGEST_NAME), Field(description="Of rows that name none.")] = ""
    part: Annotated[Flag, Field(description="The file is a part: orders that it does not have are not held.")] = False


@call(blueprint, "POST", "/api/orders/import", MANAGERS, {200: given.Loaded})
@uncollected
def load(said: OrderFile) -> Response:
    """Loads a file of orders, all of it or, where it can't be read, nothing. One that was cut off goes on."""
    parsed = order_files.read(shop().looking, said.file, said.mapping, said.channel)
    listed = () if said.part else parsed.listed
    with shop().looking() as unit:
        load_part = order_file.in_parts(unit, parsed.key, parsed.orders, parsed.rows, a_while, listed)

    def work(unit: SqlUnit) -> CallReply | None:
        done = load_part(unit)
        if done is None:
            return None
        refused = sorted([*parsed.refused, *done.refused], key=lambda row: row.row)
        body: given.Loaded = {
            "loaded": done.loaded,
            "changed": done.changed,
            "unchanged": done.unchanged,
            "held": list(done.held),
            "refused": [render.refused_row(row) for row in refused],
        }
        return CallReply(200, body)

    return do(work, digest(said.sent("file"), said.file).encode())


class OrderQuery(paging.PageQuery):
    state: Maybe[OrderState] = None


@call(blueprint, "GET", "/api/orders", STAFF, {200: given.OrderPage})
def listing(query: OrderQuery) -> Response:
    """Lists orders as they came in."""

    def work(unit: SqlUnit) -> given.OrderPage:
        (start,) = query.after((0,))
        rows = lists.order_page(unit.connection, query.state, start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        return {"orders": render.orders(unit, rows), "next": following}

    return answer_view(work)


@call(blueprint, "GET", "/api/orders/{order}", STAFF, {200: given.Order})
def show(order: str) -> Response:
    """Shows one order."""
    return answer_view(lambda unit: render.order(unit, must(unit, Order, order)))


@call(blueprint, "POST", "/api/orders/{order}/cancel", MANAGERS, {200: given.Order}, ("already_released",))
def cancel(order: str, said: orders.Cancel) -> Response:
    """Cancels a line or the whole order; what lies in a parcel must come out by a scan first."""
    return do(lambda unit: CallReply(200, render.order(unit, orders.cancel(unit, order, said))))
