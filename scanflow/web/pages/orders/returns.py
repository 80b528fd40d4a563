"""Returns: which there are, one of them, and how each thing of it is found."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import suppress
from typing import Any

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.advice import ONCE_MORE
from scanflow.domain.life import Condition, ReturnState
from scanflow.domain.things import Order, Return, Stay
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import returns as return_views
from scanflow.storage.views import stock as slot_views
from scanflow.web import return_rights
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.orders import show as show_order
from scanflow.web.pages.rendering import PAGE, Refusal, act, do, offset, render, typed_words
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow.orders import returns
from scanflow.workflow.ports import Invalid, Unit
from scanflow.workflow.stock import cards, doubts

blueprint = Blueprint("return_page", __name__)
FOUND = 20
"""Things shown that a parcel may hold which nobody expects."""


@page(blueprint, "GET", "/returns", roles=STAFF, live=True)
def index(said: str = "", status: int = 200) -> ResponseReturnValue:
    asked = request.args.get("state", "")
    state = ReturnState(asked) if asked in list(ReturnState) else None
    rows = ask(return_views.return_list, state, offset(), PAGE)
    counts = ask(return_views.return_counts)
    shown = {"returns": rows, "counts": counts, "state": state, "states": ReturnState, "skip": offset(), "size": PAGE}
    return render("orders/returns.html", **shown, said=said), status


@page(blueprint, "POST", "/returns", roles=STAFF)
def take_in() -> ResponseReturnValue:
    """What is here: by its slip, its label or its order's number; or by none of them, if nobody expects it."""
    nobody_expects = request.form.get("unknown") == "yes"

    def work(unit: Unit) -> Return:
        if nobody_expects:
            return returns.arrive(unit, returns.expect(unit, returns.Expect()).id)
        return returns.take_in(unit, sent(returns.TakeIn))

    back = act(work)
    return index(*back) if isinstance(back, Refusal) else _to(back.id)


@page(blueprint, "POST", "/orders/<id>/returns", roles=STAFF)
def expect(id: str) -> ResponseReturnValue:
    """From the order's page: these lines of it."""
    lines = request.form.getlist("lines")
    back = act(lambda unit: returns.expect(unit, sent(returns.Expect, keep=("lines",), order=id, lines=lines)))
    return show_order(id, *back) if isinstance(back, Refusal) else _to(back.id)


def _to(id: str, stored: str | None = None) -> ResponseReturnValue:
    return redirect(url_for("return_page.show", id=id, stored=stored), 303)


@page(blueprint, "GET", "/returns/<id>", roles=STAFF)
def show(id: str, said: str = "", status: int = 200, looked: str = "") -> ResponseReturnValue:
    """`looked`: the text of a card without a check, that is asked for once more. In the address `line` is the thing to
    check now, `stored` the one that was just put into a slot, `q` what may be in a parcel that nobody expects.
    """
    unit = room()
    back = unit.get(Return, id)
    if back is None:
        raise Problem(404, "not_found", "There is no such return.")
    rows = {row.id: row for row in ask(order_views.lines_by_id, back.lines)}
    words = typed_words("q")
    thing = _thing(back, rows)
    checks = {each.line: each for each in back.checks}
    shown = {
        "back": back,
        "order": unit.get(Order, back.order) if back.order else None,
        "lines": [(rows[name], checks.get(name)) for name in back.lines],
        "standing": (standing := _standing(unit, back)),
        "stored": _stored(standing.get(request.args.get("stored", ""))),
        "thing": thing,
        "doubted": _doubted(unit, thing),
        "choices": _choices(back, thing.id) if thing is not None else [],
        "chosen": request.form.get("condition", ""),
        "may_put_right": {name: _choices(back, name) for name in back.lines},
        "may_scrap": return_rights.may_scrap(),
        "found": _found(unit, words) if words and not back.order else [],
        "words": words,
    }
    return render("orders/return.html", **shown, said=said, looked=looked), status


def _thing(back: Return, rows: Mapping[str, Any]) -> Any:
    """The thing to check now: the one that is asked for, or the first that is left."""
    if back.state not in (ReturnState.ARRIVED, ReturnState.CHECKED):
        return None
    asked = request.values.get("line", "")
    if asked and not back.order:
        return ask(order_views.line, asked)
    first = back.left[0] if back.left else ""
    return rows.get(asked) or rows.get(first)


def _found(unit: Unit, words: str) -> list[Any]:
    """What is with its buyer and may be the thing in hand: by its order's slip, label or number, or its words."""
    orders: tuple[str, ...] = ()
    with suppress(Invalid):
        orders = (returns.order_of(unit, words).id,)
    return list(ask(return_views.lines_with_buyers, words, orders, FOUND))


def _standing(unit: Unit, back: Return) -> dict[str, Stay]:
    """The stays that its checks began and that are open still, by line."""
    stays = {each.line: unit.get(Stay, each.stay) for each in back.checks if each.line and each.stay}
    return {line: stay for line, stay in stays.items() if line and stay is not None and stay.open}


def _stored(stay: Stay | None) -> Any:
    """The slot in which a thing was just stored, with its bin."""
    return ask(slot_views.slot, stay.code) if stay is not None else None


def _doubted(unit: Unit, line: Any) -> list[str]:
    stay = unit.get(Stay, line.stay) if line is not None and line.stay else None
    return [each.words for each in doubts.open_doubts(unit, stay.item)] if stay else []


def _choices(back: Return, line: str) -> list[Condition]:
    """How the visitor may say that this thing is."""
    before = back.check(line)
    fit = returns.OTHERWISE[before.condition] if before else tuple(Condition)
    scrapped = before is not None and before.condition is Condition.SCRAP
    may = return_rights.may_scrap()
    return [each for each in fit if may or (each is not Condition.SCRAP and not scrapped)]


@page(blueprint, "POST", "/returns/<id>/arrived", roles=STAFF)
def arrived(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: returns.arrive(unit, id), id=id)


@page(blueprint, "POST", "/returns/<id>/not-arrived", roles=STAFF)
def not_arrived(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: returns.not_arrived(unit, id), id=id)


@page(blueprint, "POST", "/returns/<id>/give-up")
def give_up(id: str) -> ResponseReturnValue:
    return do(show, lambda unit: returns.give_up(unit, id), id=id)


@page(blueprint, "POST", "/returns/<id>/check", roles=STAFF)
def check(id: str) -> ResponseReturnValue:
    """One thing, and then the next while one is left."""
    text = slot_code.compact(request.form.get("text", ""))

    def work(unit: Unit) -> Return:
        said = sent(returns.CheckReturn)
        return_rights.admit(unit, id, said)
        if said.text is not None:
            cards.believe(unit, said.text, request.form.get("looked", ""))
        return returns.check(unit, id, said)

    back = act(work)
    if isinstance(back, Refusal):
        return show(id, *back, text if back.said == ONCE_MORE else "")
    return _to(id, stored=request.form.get("line") if text else None)
