"""The packing table: an order is chosen or its slip scanned, then its cards, until nothing is missing."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from flask import Blueprint, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.derive import stands_still
from scanflow.domain.life import Hold, LineState
from scanflow.domain.things import Order, Parcel
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import parcels as parcel_views
from scanflow.storage.views.lists import LineRow, Rows
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.picking.last_scan import last_scan_at
from scanflow.web.pages.rendering import do, render, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import parcels
from scanflow.workflow.parcels import finishing, shipping, slips
from scanflow.workflow.ports import Unit, must

blueprint = Blueprint("table_page", __name__)
SHOWN = 30
"""Orders to choose from; any other is opened by its slip or from its own page."""

DUTIES = ("waiting", "picked", "short", "unbound")
"""States of lines that the parcel still misses."""


@dataclass(frozen=True, slots=True)
class PackingTable:
    """The open parcel with its orders and lines, or what could be packed next: the first of `to_pack` orders."""

    parcel: Any | None
    aside: Rows
    numbers: dict[str, Any]
    lines: Sequence[LineRow]
    ready: Rows
    to_pack: int
    collected: bool = False
    """Whether the buyer comes for what is in the open parcel."""

    @property
    def packed(self) -> list[Any]:
        return [line for line in self.lines if self.parcel is not None and line.parcel == self.parcel.id]

    @property
    def missing(self) -> list[Any]:
        """Duties: what is not packed yet and not cancelled."""
        return [line for line in self.lines if line.state in DUTIES]

    @property
    def held(self) -> list[Any]:
        """What is packed and keeps the parcel from closing."""
        return [line for line in self.packed if stands_still(line)]

    @property
    def to_take_out(self) -> list[Any]:
        """What was cancelled in the box."""
        return [line for line in self.held if any(each.hold is Hold.CANCELLED_IN_BOX for each in line.holds)]


def read(name: str, *, scan_at_bin: bool) -> PackingTable:
    parcels_ = ask(parcel_views.open_parcels)
    parcel = next((each for each in parcels_ if each.state == "open" and each.at_table == name), None)
    ids = [order for each in parcels_ for order in each.orders.split()]
    states = [LineState.PICKED] if scan_at_bin else [LineState.PICKED, LineState.WAITING]
    return PackingTable(
        parcel=parcel,
        aside=[each for each in parcels_ if each.state == "aside"],
        numbers={row.id: row for row in ask(order_views.numbers, ids)},
        lines=ask(order_views.order_lines, *parcel.orders.split()) if parcel is not None else (),
        ready=ask(parcel_views.orders_to_pack, states, SHOWN) if parcel is None else (),
        to_pack=ask(parcel_views.orders_to_pack_count, states) if parcel is None else 0,
        collected=parcel is not None and shipping.is_collected(room(), must(room(), Parcel, parcel.id)),
    )


@page(blueprint, "GET", "/table", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 5, "Table", "b", top=True))
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    name = _name()
    closed = finishing.unfinished(room(), name)
    if closed is not None:
        return _finish(closed, said), status
    table = read(name, scan_at_bin=room().settings.scan_at_bin)
    here = url_for("table_page.show", table=name)
    where = where_are(table.lines)
    return render(
        "parcels/table.html",
        where=where,
        table=table,
        name=name,
        last=last_scan_at(name, table.parcel.id if table.parcel is not None else None),
        said=said,
        here=here,
    ), status


def _finish(closed: Parcel, said: str) -> str:
    """The box that was closed last waits for its label, or for its buyer."""
    lines = ask(order_views.order_lines, *closed.orders)
    return render(
        "parcels/finish.html",
        parcel=closed,
        title=shipping.numbers(room(), closed.id),
        things=[line for line in lines if line.parcel == closed.id],
        collected=shipping.is_collected(room(), closed),
        again=parcels.can_reopen(room(), closed),
        last=last_scan_at(closed.table, closed.id),
        said=said,
        here=url_for("table_page.show", table=closed.table),
    )


def _name() -> str:
    return (request.values.get("table") or "main")[:64]


def _done(work: Callable[[Unit], object]) -> ResponseReturnValue:
    return do(show, work, url_for(".show", table=_name()))


@page(blueprint, "POST", "/table/open", roles=STAFF)
def open_parcel() -> ResponseReturnValue:
    chosen = request.form.getlist("order")
    return _done(lambda unit: parcels.open_parcel(unit, sent(parcels.OpenParcel, orders=chosen, table=_name())))


@page(blueprint, "GET", "/table/<id>/with", roles=STAFF)
def other_order(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    """Which other order goes into this box."""
    parcel = must(room(), Parcel, id)
    numbers = [must(room(), Order, name).number for name in parcel.orders]
    states = (LineState.PICKED, LineState.WAITING)
    ready = ask(parcel_views.orders_to_pack, states, SHOWN)
    return render("parcels/with.html", parcel=parcel, numbers=numbers, ready=ready, said=said), status


@page(blueprint, "POST", "/table/<id>/with", roles=STAFF)
def pack_with(id: str) -> ResponseReturnValue:
    text, chosen = request.form.get("text", "").strip(), request.form.get("order", "")

    def work(unit: Unit) -> object:
        return parcels.pack_with(unit, id, chosen or slips.order_named(unit, text).id)

    parcel = must(room(), Parcel, id)
    return do(other_order, work, url_for(".show", table=parcel.table), id=id)


@page(blueprint, "POST", "/table/<id>/apart", roles=STAFF)
def pack_apart(id: str) -> ResponseReturnValue:
    return _done(lambda unit: parcels.pack_apart(unit, id, request.form.get("order", "")))


@page(blueprint, "POST", "/table/<id>/close", roles=STAFF)
def close(id: str) -> ResponseReturnValue:
    partial = request.form.get("partial") == "yes"
    return _done(lambda unit: parcels.close_parcel(unit, id, partial=partial))


@page(blueprint, "POST", "/table/<id>/reopen", roles=STAFF)
def reopen(id: str) -> ResponseReturnValue:
    return _done(lambda unit: parcels.reopen(unit, id))


@page(blueprint, "POST", "/table/<id>/later", roles=STAFF)
def later(id: str) -> ResponseReturnValue:
    return _done(lambda unit: finishing.go_on(unit, id))


@page(blueprint, "POST", "/table/<id>/set-aside", roles=STAFF)
def set_aside(id: str) -> ResponseReturnValue:
    return _done(lambda unit: parcels.set_aside(unit, id))
