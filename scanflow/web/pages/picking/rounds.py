"""A round: started from what waits, walked one stop at a time, finished."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.advice import at_stop, order_says, packing_says
from scanflow.domain.counts.stocktake import Stocktake
from scanflow.domain.derive import to_walk
from scanflow.domain.life import LineState
from scanflow.domain.things import Round, Station
from scanflow.domain.whereabouts import Whereabouts, bin_of_stop
from scanflow.domain.words import units
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import picking as round_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views.lists import LineRow
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.picking.last_scan import last_scan
from scanflow.web.pages.rendering import PAGE, Refusal, act, asked, do, offset, render, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow.counts import cycle
from scanflow.workflow.picking import rounds
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import cards

blueprint = Blueprint("round_page", __name__)
MOST = 100
"""Things of a round that is started here for all that waits: the most urgent orders; the rest is another walk."""


@page(blueprint, "GET", "/rounds", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 4, "Rounds", "r", top=True))
def index(said: str = "", status: int = 200) -> ResponseReturnValue:
    counts = ask(room_views.counts)
    walks = ask(round_views.open_rounds)
    under_way = {walk.id for walk in walks}
    orders = ask(order_views.order_list, ["waiting"], 0, MOST)
    lines = ask(order_views.lines_by_order, [order.id for order in orders])
    orders = [order for order in orders if not any(line.round in under_way for line in lines[order.id])]
    shown = {"rounds": walks, "counts": counts, "things": round_of(counts["waiting"]), "orders": orders, "lines": lines}
    return render("picking/rounds.html", **shown, most=MOST, said=said), status


def round_of(waiting: int) -> str:
    """How much the next round takes of the things that wait."""
    if 0 < (baskets := room().settings.baskets) < waiting:
        return f"up to {units(baskets, 'order')}"
    return units(waiting, "thing") if waiting <= MOST else f"up to {units(MOST, 'thing')}"


@page(blueprint, "POST", "/rounds", roles=STAFF)
def start() -> ResponseReturnValue:
    """A round of what waits, or of the orders asked for. Rounds that are finished need nobody to close them."""
    chosen = request.form.getlist("order")
    if request.form.get("choose") and not chosen:
        return index("Choose an order first.", 422)
    most = None if chosen else MOST

    def work(unit: Unit) -> Round:
        rounds.close_finished(unit)
        return rounds.open_round(unit, sent(rounds.OpenRound, orders=chosen), most=most)[0]

    made = act(work)
    return index(*made) if isinstance(made, Refusal) else redirect(url_for("round_page.show", id=made.id), 303)


@page(blueprint, "GET", "/rounds/<id>", roles=STAFF, live=True)
def show(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    walk = ask(round_views.round_, id)
    if walk is None:
        raise Problem(404, "not_found", "There is no such round.")
    stops = ask(round_views.round_stops, id)
    waiting = [stop for stop in stops if to_walk(stop, id)]
    left = [stop for stop in stops if _left(stop, id)]
    wanted = asked("stop")
    stop = next((each for each in waiting if each.position >= wanted), waiting[0] if waiting else None)
    spots = spots_of(stops, id)
    texts = cards.texts_of(room(), [each.code for each in stops])
    turned = "from" in request.args
    skip = offset() if turned else (stop.position - 1) // PAGE * PAGE if stop else 0
    address: dict[str, Any] = {"id": id, "stop": wanted or None} | ({"from": skip} if turned else {})
    shown = {
        "round": walk,
        "stops": stops,
        "stop": stop,
        "waiting": waiting,
        "left": left,
        "done": len(stops) - len(waiting) - len(left),
        "spots": spots,
        "photograph": look_at(spots[stop.position].bin) if stop else None,
        "listed": [_listed(each, spots[each.position], id, texts[each.code]) for each in stops],
        "rows": stops[skip : skip + PAGE],
        "skip": skip,
        "size": PAGE,
        "turned": turned,
        "here": url_for("round_page.show", **address),
        "last": last_scan(Station.BIN, id),
    }
    return render("picking/round.html", **shown, said=said), status


@dataclass(frozen=True, slots=True)
class StopPlace:
    """Where a stop's thing is now: the bin to walk to, and what to know where it is not in its own, else empty."""

    bin: str
    words: str
    out: bool


def spots_of(stops: Sequence[LineRow], round_id: str, *, scan: bool = True) -> dict[int, StopPlace]:
    """Those of the stops of a round, by position; `scan` as of `advice.at_stop`."""
    where = where_are(stops)
    return {stop.position: _spot(stop, where.get(stop.code), round_id, scan) for stop in stops}


def _spot(stop: LineRow, where: Whereabouts | None, round_id: str, scan: bool) -> StopPlace:
    name = bin_of_stop(stop.here, stop.state, where)
    if where is None or not to_walk(stop, round_id):
        return StopPlace(name, "", out=False)
    return StopPlace(name, at_stop(where, stop.basket, round_id, scan=scan), where.out and not where.misplaced)


def look_at(bin_name: str) -> Stocktake | None:
    """The count for which this bin is photographed, as somebody stands before it."""
    return cycle.to_photograph(room(), bin_name)


def _left(stop: LineRow, round_id: str) -> bool:
    """A stop of this round that is neither done nor to be walked to: it is held or missing."""
    undone = stop.round == round_id and stop.state in (LineState.WAITING, LineState.SHORT)
    return undone and not to_walk(stop, round_id)


def _listed(stop: LineRow, spot: StopPlace, round_id: str, texts: tuple[str, ...]) -> dict[str, Any]:
    """A stop as the page keeps it for while there is no network, with the texts that its card may have."""
    told = {name: getattr(stop, name) for name in ("position", "code", "title", "notes", "number", "basket", "state")}
    waits, where = to_walk(stop, round_id), {"bin": spot.bin, "where": spot.words}
    done, says = not waits and not _left(stop, round_id), order_says(stop.said, stop.title)
    packing = packing_says(stop.packing or "")
    return {
        **told,
        **where,
        "says": says,
        "packing": packing,
        "section": stop.section,
        "waits": waits,
        "done": done,
        "texts": texts,
    }


@page(blueprint, "POST", "/rounds/<id>/close", roles=STAFF)
def close(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: rounds.close_round(unit, id), url_for("table_page.show"), id=id)
