"""Orders: which there are, one of them, and what a person settles of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import suppress
from typing import Any

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.derive import OrderState, stands_still
from scanflow.domain.life import LIVE, OF_BINDING, Hold, LineState
from scanflow.domain.things import Line, Order, Parcel, Return, Stay
from scanflow.domain.words import units
from scanflow.shop import a_while
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import returns as return_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views import search as search_views
from scanflow.storage.views.lists import Rows
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.forms import sent, write_in_parts
from scanflow.web.pages.rendering import PAGE, Refusal, act, do, offset, render, settle_doubt, typed_words, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow import orders, parcels
from scanflow.workflow.orders import binding, many, selling
from scanflow.workflow.orders.many import TO_CANCEL, TO_KEEP, SettleMany
from scanflow.workflow.orders.returns import can_come_back
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import cards, doubts
from scanflow.workflow.stock.sightings import gone

blueprint = Blueprint("order_page", __name__)
STATES = tuple(state.value for state in OrderState)


@page(blueprint, "GET", "/orders", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 3, "Orders", "o", top=True))
def index(said: str = "", status: int = 200, done: str = "") -> ResponseReturnValue:
    state = request.args.get("state", "")
    state = state if state in STATES else ""
    words = typed_words("words")
    rows = ask(order_views.order_list, [state] if state else [], offset(), PAGE, words)
    counts = ask(order_views.order_counts, words)
    lines = ask(order_views.lines_by_order, [row.id for row in rows])
    shown = {"orders": rows, "lines": lines, "counts": counts, "state": state, "states": STATES, "words": words}
    held = ask(order_views.held_by_reason) if state == OrderState.HELD else {}
    shown["many"] = [(hold, ids, hold in TO_KEEP) for hold, ids in held.items() if hold in TO_CANCEL and len(ids) > 1]
    back = sum(ask(return_views.return_counts).values())
    return render("orders/orders.html", **shown, returns=back, said=said, done=done, skip=offset(), size=PAGE), status


@page(blueprint, "POST", "/orders/many")
def settle_many() -> ResponseReturnValue:
    """All lines that were held for one reason when the page was made."""
    asked = sent(SettleMany, lines=request.form.get("lines", "").split())
    number = write_in_parts(many.in_parts(asked, a_while))
    what = "kept" if asked.how is many.BulkAnswer.KEEP else "cancelled"
    return index(done=f"{units(number, 'line')} {what}.")


@page(blueprint, "GET", "/orders/<id>", roles=STAFF, live=True)
def show(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    order = unit.get(Order, id)
    rows = ask(order_views.order_lines, id)
    state = ask(order_views.order_state, id)
    boxes = [unit.get(Parcel, name) for name in dict.fromkeys(row.parcel for row in rows if row.parcel)]
    again = {each.id for each in boxes if each is not None and parcels.can_reopen(unit, each)}
    here = {each.id for each in boxes if each is not None and not gone(unit, each)}
    if order is None:
        raise Problem(404, "not_found", "There is no such order.")
    slip = slot_code.slip_text(order.slip)
    where = where_are(rows)
    coming = {line.id for line in unit.find(Line, order=id) if can_come_back(unit, line)}
    found = unit.find(Return, order=id)
    shown = {"order": order, "lines": rows, "state": state, "slip": slip, "boxes": boxes}
    shown |= {"coming": coming, "returns": found, "scrapped": {line for each in found for line in each.scrapped}}
    return render("orders/order.html", where=where, **shown, again=again, here=here, said=said), status


@page(blueprint, "POST", "/orders/<id>/way")
def change_way(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: selling.change_way(unit, id, sent(selling.SentOrCollected)), id=id)


@page(blueprint, "POST", "/orders/<id>/cancel")
def cancel(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: orders.cancel(unit, id, sent(orders.Cancel)), id=id)


@page(blueprint, "POST", "/orders/<id>/pack", roles=STAFF)
def pack(id: str) -> ResponseReturnValue:
    """Choose this order at the table: its parcel is opened there."""
    opened = act(lambda unit: parcels.open_parcel(unit, sent(parcels.OpenParcel, orders=[id])))
    if isinstance(opened, Refusal):
        return show(id, *opened)
    return redirect(url_for("table_page.show", table=opened.table), 303)


def _line(id: str) -> Any:
    row = ask(order_views.line, id)
    if row is None:
        raise Problem(404, "not_found", "There is no such line.")
    return row


@page(blueprint, "GET", "/lines/<id>")
def settle_page(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    """Each hold of a line with its own way on; the thing is chosen anew where it may be another one."""
    line = _line(id)
    words = request.args.get("q", "").strip()
    choosing = _may_be_another(line)
    unit = room()
    stay = unit.get(Stay, line.stay) if line.stay else None
    doubted = doubts.open_doubts(unit, stay.item) if stay else ()
    parcel = unit.get(Parcel, line.parcel) if line.parcel else None
    again = parcel is not None and parcels.can_reopen(unit, parcel)
    named = () if words else [each.stay for each in binding.others(unit, id)]
    candidates = _candidates(line.reference, words or line.said, named) if choosing else ()
    shown = {"line": line, "doubted": doubted, "parcel": parcel, "choosing": choosing, "candidates": candidates}
    where = where_are([line, *candidates])
    before = ask(order_views.line, request.args["after"]) if "after" in request.args else None
    shown |= {"before": before, "left": ask(room_views.counts)["held"] if before else 0}
    return render("orders/settle.html", where=where, **shown, again=again, words=words, said=said), status


OUT_OF_THE_BOX = frozenset({LineState.UNBOUND, LineState.WAITING, LineState.PICKED, LineState.SHORT})


def _may_be_another(line: Any) -> bool:
    """Whether a person may say that the line means another thing: what lies in a box comes out by a scan first."""
    asked = {each.hold for each in line.holds} & (OF_BINDING | {Hold.CHANGED_AFTER_PICK})
    return line.state is LineState.UNBOUND or (line.state in OUT_OF_THE_BOX and bool(asked))


def _candidates(reference: str, words: str, first: Sequence[str]) -> Rows:
    """What the line may mean: `first` these stays, the slot it names, however badly written, or the card that was
    scanned instead of words, and similar titles.
    """
    for text in (words, reference):
        with suppress(slot_code.CodeError):
            return ask(search_views.settle_candidates, cards.referred(room(), text).code, words, first)
    return ask(search_views.settle_candidates, slot_code.compact(reference)[:4], words, first)


@page(blueprint, "POST", "/lines/<id>/settle")
def settle(id: str) -> ResponseReturnValue:
    """One hold of the line, and then the next while one is left."""
    _line(id)
    return _settled(id, lambda unit: orders.settle(unit, id, sent(orders.Settle)))


def _settled(id: str, work: Callable[[Unit], object]) -> ResponseReturnValue:
    done = act(work)
    if isinstance(done, Refusal):
        return settle_page(id, *done)
    line = _line(id)
    if stands_still(line) and line.state in LIVE | {LineState.UNBOUND, LineState.RELEASED}:
        return redirect(url_for("order_page.settle_page", id=id), 303)
    left = ask(order_views.held_lines, 1, line.order)
    if left:
        return redirect(url_for("order_page.settle_page", id=left[0].id, after=id), 303)
    return redirect(url_for("order_page.show", id=line.order), 303)


@page(blueprint, "POST", "/lines/<id>/doubts/<doubt>")
def doubt(id: str, doubt: str) -> ResponseReturnValue:
    """Settle what is doubted of the thing of this line."""
    _line(id)
    return _settled(id, lambda unit: settle_doubt(unit, doubt))


@page(blueprint, "POST", "/lines/<id>/cancel")
def cancel_line(id: str) -> ResponseReturnValue:
    line = _line(id)
    return _settled(id, lambda unit: orders.cancel(unit, line.order, orders.Cancel(line=id)))


STEPS: dict[str, Callable[[Unit, str, str], object]] = {
    "short": lambda unit, id, words: orders.short(unit, id, sent(orders.Short, note=words)),
    "found": lambda unit, id, words: orders.found(unit, id),
    "hold": lambda unit, id, words: orders.hold(unit, id, sent(orders.NotThis, why=words or "Not this thing.")),
}


@page(blueprint, "POST", "/lines/<id>/<any(short, found, hold):step>", roles=STAFF)
def change(id: str, step: str) -> ResponseReturnValue:
    """One step of a line, back to the order, or to the round or table that it was asked from."""
    words = request.form.get("words", "").strip()
    return _changed(id, lambda unit: STEPS[step](unit, id, words))


@page(blueprint, "POST", "/lines/<id>/send-again")
def send_again(id: str) -> ResponseReturnValue:
    return _changed(id, lambda unit: orders.send_again(unit, id))


@page(blueprint, "POST", "/lines/<id>/revive")
def revive(id: str) -> ResponseReturnValue:
    return _changed(id, lambda unit: orders.revive(unit, id))


def _changed(id: str, work: Callable[[Unit], object]) -> ResponseReturnValue:
    line = _line(id)
    walk, table = request.form.get("round"), request.form.get("table")
    to = url_for("table_page.show", table=table) if table else None
    return do(show, work, url_for("round_page.show", id=walk) if walk else to, id=str(line.order))
