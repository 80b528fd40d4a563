"""Parcels that are handed over: their labels are bound to them, and a last scan or one press for all lets them go."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import leaving, slot_code
from scanflow.domain.things import Order, Parcel
from scanflow.domain.words import AT_THE_DOOR, units
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import parcels as parcel_views
from scanflow.storage.views.lists import Rows
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.picking.last_scan import last_scan
from scanflow.web.pages.picking.paper import paper_for, pdf_of
from scanflow.web.pages.rendering import Refusal, act, render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import parcels
from scanflow.workflow.parcels import hand_over, shipping
from scanflow.workflow.parcels.hand_over import MustStay
from scanflow.workflow.ports import Missing, Unit, must
from scanflow.workflow.stock import sightings

blueprint = Blueprint("hand_over_page", __name__)
SHOWN = 50
"""Closed parcels listed, and handed over in one go; any other is chosen by its slip."""

GONE = 500
"""Parcels that are gone, listed and printed at most."""

PAUSE = timedelta(minutes=30)
"""How long after a hand-over the next one is of another list: nobody signs for what somebody else took."""


@page(blueprint, "GET", "/hand-over", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 7, "Hand-over"))
def show() -> ResponseReturnValue:
    return _show(request.args.get("parcel", ""), request.args.get("told", ""), "", 200)


def _show(parcel: str, told: str, said: str, status: int, heading: str = "Wrong label") -> ResponseReturnValue:
    """`parcel` is the one before us; `told` says why: `bound` just now, or `known` by its label. `said` is why not,
    under this heading.
    """
    unit = room()
    here = unit.get(Parcel, parcel)
    shown = _one(unit, here) if here is not None else _all(unit)
    return render(
        "parcels/hand_over.html",
        parcel=here,
        **shown,
        told=told,
        said=said,
        heading=heading,
        carrier=ask(parcel_views.last_carrier),
        last=last_scan(*hand_over.AT_THE_DOOR),
        here=url_for("hand_over_page.show", parcel=parcel if shown.get("collected") else None),
    ), status


def _one(unit: Unit, here: Parcel) -> dict[str, Any]:
    """The parcel before us: what is in it, and what can be done with it."""
    things = [line for line in ask(order_views.order_lines, *here.orders) if line.parcel == here.id]
    return {
        "title": shipping.numbers(unit, here.id),
        "things": things,
        "label": ask(parcel_views.label_of, here.id),
        "collected": shipping.is_collected(unit, here),
        "again": parcels.can_reopen(unit, here),
        "orders": [must(unit, Order, name) for name in here.orders],
    }


def _all(unit: Unit) -> dict[str, Any]:
    """The closed parcels that are here, and those that went lately."""
    before = sightings.gone_before(unit)
    closed = ask(parcel_views.parcels_to_hand_over, before, SHOWN)
    zone = ZoneInfo(unit.settings.zone)
    midnight = unit.at.astimezone(zone).replace(hour=0, minute=0, second=0, microsecond=0)
    gone = ask(parcel_views.parcels_handed_over, midnight - timedelta(days=1), unit.at, GONE)
    slips = {slot_code.slip_text(slip): name for name, slip in ask(parcel_views.slips_without_label, before)}
    return {
        "closed": closed,
        "sent": [each.id for each in closed if not each.collected],
        "numbers": _numbers([*closed, *gone]),
        "kept": ask(parcel_views.held_in, [each.id for each in closed]),
        "count": ask(parcel_views.waiting_count, before),
        "slips": slips,
        "bare": len(set(slips.values())),
        "most": SHOWN,
        "gone": _batches([each for each in gone if not each.collected])[::-1],
        "taken": [each for each in gone if each.collected][::-1],
    }


def _numbers(rows: Sequence[Any]) -> dict[str, str]:
    """The numbers of these parcels' orders, by the parcel."""
    found = {
        row.id: row.number for row in ask(order_views.numbers, [name for each in rows for name in each.orders.split()])
    }
    return {each.id: ", ".join(found[name] for name in each.orders.split() if name in found) for each in rows}


def _batches(rows: Rows) -> list[list[Any]]:
    """What went with one carrier without a long pause."""
    made: list[list[Any]] = []
    for row in rows:
        last = made[-1][-1] if made else None
        if last is not None and last.carrier == row.carrier and row.handed - last.handed <= PAUSE:
            made[-1].append(row)
        else:
            made.append([row])
    return made


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


@page(blueprint, "POST", "/hand-over/all", roles=STAFF)
def all_went() -> ResponseReturnValue:
    """Exactly the parcels that the page showed; what must stay of them is named."""
    named = request.form.getlist("parcel")
    done = act(lambda unit: hand_over.all_went(unit, sent(hand_over.AllWent, parcels=named)))
    if isinstance(done, Refusal):
        return _show("", "", *done)
    if not done:
        return redirect(url_for("hand_over_page.show"), 303)
    return _show("", "", _stayed(done), 200, _heading(done))


def _heading(kept: Sequence[MustStay]) -> str:
    return AT_THE_DOOR[kept[0].reason].heading if len(kept) == 1 else f"{units(len(kept), 'parcel')} must stay here"


def _stayed(kept: Sequence[MustStay]) -> str:
    return " ".join(each.words for each in kept) + " All others are handed over."


@page(blueprint, "POST", "/hand-over/<id>/collected", roles=STAFF)
def collected(id: str) -> ResponseReturnValue:
    return _done(id, lambda unit: hand_over.collect(unit, id, sent(hand_over.Collect)), "It must stay here")


@page(blueprint, "POST", "/hand-over/<id>/label-off", roles=STAFF)
def take_off(id: str) -> ResponseReturnValue:
    return _done(id, lambda unit: shipping.take_off(unit, id), "It has left")


def _done(id: str, work: Callable[[Unit], object], heading: str) -> ResponseReturnValue:
    """Back to the table where it was pressed, else to the list; refused, the parcel's page says why."""
    done = act(work)
    if isinstance(done, Refusal):
        return _show(id, "", *done, heading)
    table = request.form.get("table", "")[:64]
    to = url_for("table_page.show", table=table) if table else url_for("hand_over_page.show")
    return redirect(to, 303)


@page(blueprint, "GET", "/hand-over/<id>/<last_id>/list.pdf", roles=STAFF)
def signed_list(id: str, last_id: str) -> ResponseReturnValue:
    """What went with one carrier, from this parcel to the last of them, to be signed."""
    unit = room()
    first, last = must(unit, Parcel, id), must(unit, Parcel, last_id)
    if first.handed is None or last.handed is None:
        raise Missing("This parcel has not left.")
    rows = ask(parcel_views.parcels_handed_over, first.handed, last.handed, GONE)
    rows = [row for row in rows if row.carrier == first.carrier and not row.collected]
    numbers, paper = _numbers(rows), paper_for(leaving.PAPERS)
    zone = ZoneInfo(unit.settings.zone)
    title = f"{units(len(rows), 'parcel')} handed over, {_time(first.handed, zone)}"
    drawn = [
        leaving.PrintedParcel(place, numbers[row.id], row.ends or "", _time(row.handed, zone))
        for place, row in enumerate(rows, 1)
    ]
    return pdf_of(leaving.sheet(drawn, title, first.carrier, paper, unit.settings.name), title, "parcels")


def _time(at: datetime, zone: ZoneInfo) -> str:
    local = at.astimezone(zone)
    return f"{local.day} {local:%B %Y %H:%M}"
