"""Slips and rounds on paper, as PDF; and what was done on paper, entered afterwards."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from io import BytesIO
from typing import Any
from zoneinfo import ZoneInfo

from flask import Blueprint, request, send_file
from flask.typing import ResponseReturnValue

from labels import draw, slip, walk
from labels.paper import COLOURS, HALVES
from labels.row import Thing
from labels.sheet import SheetPage
from scanflow.domain.advice import order_says, packing_says
from scanflow.domain.derive import OrderState, to_walk
from scanflow.domain.things import Order, Round
from scanflow.domain.words import ORDERS, units
from scanflow.storage.views import lists
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import picking as round_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views.lists import LineRow
from scanflow.web.door.visitors import shop
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.forms import KEY
from scanflow.web.pages.orders import STATES
from scanflow.web.pages.picking.rounds import StopPlace, spots_of
from scanflow.web.pages.rendering import Refusal, act, asked, render, when
from scanflow.web.pages.room_view import ask, let_go, room
from scanflow.web.problem import Problem
from scanflow.workflow import orders
from scanflow.workflow.picking import paper
from scanflow.workflow.ports import Invalid, Missing, must

blueprint = Blueprint("paper_page", __name__)
SHOWN = 100
"""Stops that are entered in one go; then come the next."""

MOST_SLIPS = 200
"""Of a list of orders, printed in one go."""

COOKIE = "scanflow_paper"
"""What this device printed on last: its printer's paper."""

DONE = {
    "picked": "picked",
    "short": "missing",
    "packed": "packed",
    "released": "gone",
    "cancelled": "cancelled, leave it",
}
"""What a stop says on paper when nothing is left to do; anything else that can't be picked is held."""


@page(blueprint, "GET", "/orders/<id>/slip.pdf", roles=STAFF)
def order_slip(id: str) -> ResponseReturnValue:
    order = must(room(), Order, id)
    return _slips_pdf([id], f"Slip of order {order.number}", "slip")


@page(blueprint, "GET", "/orders/slips.pdf", roles=STAFF)
def order_slips() -> ResponseReturnValue:
    """Of all orders in one state, the most urgent first."""
    state = request.args.get("state", "")
    if state not in STATES:
        raise Invalid("/state", "unknown_state", f"Choose one of {', '.join(STATES)}.")
    rows = ask(order_views.order_list, [state], 0, MOST_SLIPS)
    return _slips_pdf([row.id for row in rows], f"Slips of orders, {ORDERS[OrderState(state)]}", "slips")


@page(blueprint, "GET", "/rounds/<id>/slips.pdf", roles=STAFF)
def round_slips(id: str) -> ResponseReturnValue:
    """Of all orders of a round, in the order of its baskets."""
    must(room(), Round, id)
    stops = sorted(ask(round_views.round_stops, id), key=lambda stop: stop.basket or 0)
    return _slips_pdf(list(dict.fromkeys(stop.order for stop in stops)), "Slips of a round", "slips")


@page(blueprint, "GET", "/rounds/<id>/sheet.pdf", roles=STAFF)
def sheet(id: str) -> ResponseReturnValue:
    unit = room()
    zone = ZoneInfo(unit.settings.zone)
    opened = when(must(unit, Round, id).opened, zone, unit.at.astimezone(zone))
    stops = ask(round_views.round_stops, id)
    things = things_of(stops)
    title = f"Round of {opened}, {units(len(stops), 'stop')}"
    spots = spots_of(stops, id, scan=False)
    drawn = [_stop(stop, spots[stop.position], thing, id) for stop, thing in zip(stops, things, strict=True)]
    return pdf_of(walk.walk(drawn, title, paper_for(walk.PAPERS)), title, "round")


def paper_for(papers: Iterable[str]) -> str:
    """What this device prints on: as is asked, else as last time, else as the shop does."""
    chosen = request.args.get("paper") or request.cookies.get(COOKIE, "")
    return chosen if chosen in papers else room().settings.paper


def _slips_pdf(order_ids: Sequence[str], title: str, name: str) -> ResponseReturnValue:
    paper = paper_for(slip.PAPERS)
    return pdf_of(slip.slips(_slips(order_ids), paper), title, name, stacked=2 if paper in HALVES else 1)


def pdf_of(pages: Sequence[SheetPage], title: str, name: str, stacked: int = 1) -> ResponseReturnValue:
    """The answer that is these pages; the paper that was asked for is kept for the next time."""
    if not pages:
        raise Missing("There is no order to print.")
    let_go()
    out = BytesIO()
    draw.pdf(pages, out, title=title, stacked=stacked)
    response = send_file(BytesIO(out.getvalue()), "application/pdf", download_name=f"{name}.pdf")
    if request.args.get("paper") in slip.PAPERS:
        year = 365 * 24 * 3600
        response.set_cookie(
            COOKIE, request.args["paper"], max_age=year, samesite="Lax", httponly=True, secure=request.is_secure
        )
    return response


def _slips(order_ids: Sequence[str]) -> list[slip.Slip]:
    """In this order; what was cancelled belongs in no parcel."""
    numbers = {row.id: row for row in ask(order_views.numbers, order_ids)}
    rows = [row for row in ask(order_views.order_lines, *order_ids) if row.state != "cancelled"]
    things: dict[str, list[Thing]] = {name: [] for name in order_ids}
    baskets: dict[str, int | None] = {}
    for row, thing in zip(rows, things_of(rows), strict=True):
        things[row.order].append(thing)
        baskets[row.order] = baskets.get(row.order) or row.basket
    return [_slip(numbers[name], things[name], baskets.get(name)) for name in order_ids]


def _slip(order: Any, things: list[Thing], basket: int | None) -> slip.Slip:
    under = units(len(things), "thing") + (f", basket {basket}" if basket else "")
    return slip.Slip(order.number, order.slip, under, things)


def things_of(rows: Sequence[LineRow]) -> list[Thing]:
    """The things of these lines, as they are printed."""
    papers = ask(room_views.papers)
    pictures = ask(lists.thumbs, [row.photo for row in rows if row.photo])
    return [
        Thing(
            row.code or "",
            row.title or row.said or row.reference,
            row.bin or "",
            COLOURS.get(papers[row.section][0]) if row.section in papers else None,
            pictures.get(row.photo, b""),
            order_says(row.said, row.title or ""),
            packing_says(row.packing or ""),
        )
        for row in rows
    ]


def _stop(row: LineRow, spot: StopPlace, thing: Thing, round_id: str) -> walk.PrintedStop:
    done = "" if to_walk(row, round_id) else DONE.get(row.state, "held, leave it")
    thing = replace(thing, bin=spot.bin)
    return walk.PrintedStop(row.position, row.stop, str(row.basket or ""), row.number, thing, done, spot.words)


@page(blueprint, "GET", "/rounds/<id>/paper", roles=STAFF)
def entry(id: str) -> ResponseReturnValue:
    return _entry(id, [], 200)


def _entry(id: str, told: Sequence[tuple[str, str, str]], status: int) -> ResponseReturnValue:
    """The stops still open, with what became of those entered just now: code, verdict and advice."""
    round_ = ask(round_views.round_, id)
    if round_ is None:
        raise Problem(404, "not_found", "There is no such round.")
    stops = ask(round_views.round_stops, id)
    waiting = [stop for stop in stops if to_walk(stop, id)]
    wanted = asked("stop")
    first = next((place for place, stop in enumerate(waiting) if stop.stop == wanted), 0)
    rows = waiting[first // SHOWN * SHOWN :][:SHOWN]
    shown = {"round": round_, "stops": stops, "waiting": waiting, "rows": rows, "wanted": wanted, "told": told}
    return render("picking/paper.html", **shown, spots=spots_of(stops, id)), status


@page(blueprint, "POST", "/rounds/<id>/paper", roles=STAFF)
def enter(id: str) -> ResponseReturnValue:
    """Each stop on its own, in the order of the sheet: what one is refused for holds up no other."""
    form, at = request.form.get(KEY, "")[:64], shop().clock().isoformat()
    told = []
    for stop in ask(round_views.round_stops, id):
        written, missing = (
            request.form.get(f"digit-{stop.stop}", "").strip()[:64],
            request.form.get(f"gone-{stop.stop}"),
        )
        if written:
            told.append(_picked(id, stop, written, form, at))
        elif missing:
            told.append(_missing(stop))
    return _entry(id, told, 200)


def _missing(stop: LineRow) -> tuple[str, str, str]:
    done = act(lambda unit: orders.short(unit, stop.id, orders.Short(note="Missing, said the paper")))
    verdict, words = ("refused", done.said) if isinstance(done, Refusal) else ("missing", "Noted as missing.")
    return stop.code or stop.reference, verdict, words


def _picked(round_id: str, stop: LineRow, written: str, form: str, at: str) -> tuple[str, str, str]:
    answer = act(lambda unit: paper.enter(unit, round_id, stop.id, written, form, at))
    if isinstance(answer, Refusal):
        return stop.code or stop.reference, "refused", answer.said
    advice = answer["advice"]
    if answer["reason"] == "bad_check":
        advice = _another_digit(stop)
    return stop.code, answer["verdict"], advice


def _another_digit(stop: LineRow) -> str:
    """A card without a check digit proves nothing on paper: it is scanned in its basket."""
    with shop().looking() as unit:
        check = unit.settings.check
    if check == "none":
        return f"This is no check digit of card {stop.code}. Scan the card in basket {stop.basket}, as on a round."
    return f"This is not the last digit of card {stop.code}. Look at the card in basket {stop.basket}."
