"""An order that no file brings, taken down by hand: its things by scan or by words, then who and how."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.things import Stay
from scanflow.storage.views import search as search_views
from scanflow.storage.views import stock as slot_views
from scanflow.storage.views.lists import Rows
from scanflow.web.pages.declare import page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import Refusal, act, render, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import orders
from scanflow.workflow.orders import selling
from scanflow.workflow.ports import Refused, Unit
from scanflow.workflow.stock import cards

blueprint = Blueprint("by_hand_page", __name__)


@page(blueprint, "GET", "/orders/new")
def show() -> ResponseReturnValue:
    return _form(request.args.getlist("stay"))


@page(blueprint, "POST", "/orders/new")
def change() -> ResponseReturnValue:
    """One thing more or fewer, or the order is made."""
    stays = [each for each in dict.fromkeys(request.form.getlist("stay")) if each != request.form.get("drop")]
    if "make" not in request.form:
        return _added(stays, request.form.get("q", "").strip()[:200])
    order = act(lambda unit: selling.take_down(unit, sent(selling.TakeDown, stays=stays)))
    if isinstance(order, Refusal):
        return _form(stays, said=order.said, status=order.status)
    return redirect(url_for("order_page.show", id=order.id), 303)


def _added(stays: list[str], words: str) -> ResponseReturnValue:
    """With the thing that the words name; else those that have the words are shown to choose from."""
    stay = _named(room(), words) if words else None
    if stay is None:
        return _form(stays, words=words)
    try:
        orders.check_wanted(room(), stay.id)
    except Refused as no:
        return _form(stays, said=no.detail, status=409)
    return _form([*dict.fromkeys([*stays, stay.id])])


def _named(unit: Unit, words: str) -> Stay | None:
    """The latest thing of the slot whose code or card this is, or the thing of this reference."""
    with suppress(slot_code.CodeError):
        named = cards.referred(unit, words)
        if named.turn is None:
            facts = unit.facts(named.code)
            return facts.stay if facts else None
        found = ask(slot_views.stay_of, named.code, named.turn)
        return unit.get(Stay, found) if found else None
    return None


def _form(stays: Iterable[str], *, words: str = "", said: str = "", status: int = 200) -> ResponseReturnValue:
    chosen = [row for each in stays if (row := ask(slot_views.stay, each)) is not None]
    found: Rows = ask(search_views.settle_candidates, "", words) if words else ()
    ids = {row.id for row in chosen}
    shown = {"chosen": chosen, "found": [row for row in found if row.stay not in ids], "words": words, "said": said}
    return render("orders/by_hand.html", **shown, given=request.form, where=where_are([*chosen, *found])), status
