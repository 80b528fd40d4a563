"""One box for a code, a card, a slip, a reference, an order number or a title."""

from __future__ import annotations

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.things import Bin, Order, Section
from scanflow.storage.views import picking as round_views
from scanflow.storage.views import search as search_views
from scanflow.storage.views import stock as slot_views
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.rendering import PAGE, render, typed_words, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.parcels import shipping
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import cards

blueprint = Blueprint("search_page", __name__)


@page(blueprint, "GET", "/search", roles=STAFF)
def show() -> ResponseReturnValue:
    """Where these words lead; a list of all that has them where they lead to no one thing, or where one still types."""
    words = typed_words("q")
    if words and not request.args.get("list"):
        exact = _exact(room(), words)
        if exact is not None:
            return redirect(exact, 303)
    orders = ask(search_views.search_orders, words, PAGE) if words else ()
    things = ask(search_views.search_items, words, PAGE) if words else ()
    return render("stock/search.html", where=where_are(things), words=words, orders=orders, things=things, size=PAGE)


def _exact(unit: Unit, words: str) -> str | None:
    """The page of the one thing that these words name, if they name one."""
    if slot_code.is_stop_like(words):
        return _stop_on_paper(unit, words)
    if slot_code.is_slip_like(words):
        return _order_of_slip(unit, words)
    numbered = (*unit.find(Order, number=words), *unit.find(Order, sent_number=words))
    if len(numbered) == 1:
        return url_for("order_page.show", id=numbered[0].id)
    try:
        named = cards.referred(unit, words)
    except slot_code.CodeError:
        parcel = shipping.parcel_of(unit, words)
        labelled = url_for("hand_over_page.show", parcel=parcel, told="known") if parcel else None
        return labelled or _part_of_the_room(unit, words)
    stay = ask(slot_views.stay_of, named.code, named.turn) if named.turn is not None else None
    if stay is not None:
        return url_for("slot_page.story", id=stay)
    if unit.facts(named.code) is not None:
        return url_for("slot_page.show", code=named.code)
    return _part_of_the_room(unit, words)


def _part_of_the_room(unit: Unit, words: str) -> str | None:
    """The bin of this name, the section of these letters or this name, or the slot whose number is written short."""
    said = words.upper()
    if unit.get(Bin, said) is not None:
        return url_for("station_page.shelf", bin=said)
    for section in unit.find(Section):
        if said in (section.code, section.name.upper()):
            return url_for("slot_page.index", section=section.code)
    try:
        code = slot_code.parse_short(words, cards.widths(unit))
    except slot_code.CodeError:
        return None
    return url_for("slot_page.show", code=code) if unit.facts(code) is not None else None


def _stop_on_paper(unit: Unit, words: str) -> str | None:
    try:
        number = slot_code.parse_stop(words)
    except slot_code.BadCheck:
        return None
    walk = ask(round_views.round_of_stop, number)
    return url_for("paper_page.entry", id=walk, stop=number) if walk else None


def _order_of_slip(unit: Unit, words: str) -> str | None:
    try:
        found = unit.find(Order, slip=slot_code.parse_slip(words))
    except slot_code.CodeError:
        return None
    return url_for("order_page.show", id=found[0].id) if found else None
