"""Parcels that are handed over: their labels are bound to them, and a last scan lets them go."""

from __future__ import annotations

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.things import Order, Parcel
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import parcels as parcel_views
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.picking.last_scan import last_scan
from scanflow.web.pages.rendering import Refusal, act, render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import parcels
from scanflow.workflow.parcels import hand_over, shipping
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import sightings

blueprint = Blueprint("hand_over_page", __name__)
SHOWN = 50
"""Closed parcels listed; any other is chosen by its slip."""


@page(blueprint, "GET", "/hand-over", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 7, "Hand-over"))
def show() -> ResponseReturnValue:
    return _show(request.args.get("parcel", ""), request.args.get("told", ""), "", 200)


def _show(parcel: str, told: str, said: str, status: int) -> ResponseReturnValue:
    """`parcel` is the one before us; `told` says why: `bound` just now, or `known` by its label. `said` is why not."""
    unit = room()
    here = unit.get(Parcel, parcel)
    before = sightings.gone_before(unit)
    closed = ask(parcel_views.parcels_to_hand_over, before, SHOWN)
    count = ask(parcel_views.waiting_count, before)
    bare = ask(parcel_views.slips_without_label, before)
    ids = [name for each in closed for name in each.orders.split()]
    numbers = {row.id: row for row in ask(order_views.numbers, ids)}
    title = shipping.numbers(unit, here.id) if here else ""
    lines = ask(order_views.order_lines, *here.orders) if here else ()
    kept = ask(parcel_views.held_in, [each.id for each in closed])
    again = here is not None and parcels.can_reopen(unit, here)
    things = [line for line in lines if here and line.parcel == here.id]
    shown = {"parcel": here, "title": title, "things": things, "closed": closed, "numbers": numbers, "kept": kept}
    slips = {slot_code.slip_text(slip): name for name, slip in bare}
    return render(
        "parcels/hand_over.html",
        **shown,
        count=count,
        bare=len(set(slips.values())),
        slips=slips,
        again=again,
        most=SHOWN,
        told=told,
        said=said,
        last=last_scan(*hand_over.AT_THE_DOOR),
        here=url_for("hand_over_page.show"),
    ), status


@page(blueprint, "POST", "/hand-over", roles=STAFF)
def scan() -> ResponseReturnValue:
    """A slip chooses its parcel; a label tells its parcel, or is bound to the one that is chosen."""
    text, chosen = request.form.get("text", "").strip()[:400], request.form.get("parcel", "")
    if slot_code.is_slip_like(text):
        found = _of_slip(room(), text)
        if found is None:
            return _show("", "", "No closed parcel has this slip. Close its parcel at the table first.", 409)
        return redirect(url_for("hand_over_page.show", parcel=found), 303)
    known = shipping.parcel_of(room(), text)
    if known is not None and not chosen:
        return redirect(url_for("hand_over_page.show", parcel=known, told="known"), 303)
    if not chosen:
        return _show("", "", "This label is on no parcel yet. Scan the parcel's slip, then its label.", 409)
    done = act(lambda unit: shipping.bind(unit, chosen, sent(shipping.Bind)))
    if isinstance(done, Refusal):
        return _show(chosen, "", *done)
    return redirect(url_for("hand_over_page.show", parcel=chosen, told="bound"), 303)


def _of_slip(unit: Unit, text: str) -> str | None:
    """The latest closed parcel of the order of this slip that has not left."""
    try:
        orders = unit.find(Order, slip=slot_code.parse_slip(text))
    except slot_code.CodeError:
        return None
    closed = ask(parcel_views.parcels_to_hand_over, sightings.gone_before(unit), 10 * SHOWN)
    return next((each.id for each in closed for order in orders if order.id in each.orders.split()), None)
