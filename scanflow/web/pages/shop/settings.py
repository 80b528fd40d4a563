"""How this shop works, its sections and slots, and where its racks stand."""

from __future__ import annotations

from collections.abc import Callable
from zoneinfo import available_timezones

from flask import Blueprint, request, url_for
from flask.typing import ResponseReturnValue

from labels.paper import COLOURS
from scanflow.domain.closing import WEEKDAYS, written
from scanflow.storage.views import room as room_views
from scanflow.web.pages.declare import Group, MenuEntry, page
from scanflow.web.pages.forms import sent
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import settings, stock
from scanflow.workflow.ports import Unit

blueprint = Blueprint("settings_page", __name__)


@page(blueprint, "GET", "/settings", menu=MenuEntry(Group.SHOP, 1, "Settings", "s"))
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    sections = ask(room_views.section_list)
    racks = ask(room_views.rack_list)
    used = {section.colour for section in sections}
    colours = sorted(COLOURS, key=lambda name: name in used)
    zones = sorted(available_timezones())
    given, closing = request.form, room().settings.closing
    closed = (given.getlist("closed_on"), given["closed_dates"]) if "closed_dates" in given else None
    shown = {"sections": sections, "racks": racks, "colours": colours, "zones": zones, "given": given}
    shown |= {"weekdays": WEEKDAYS, "closed": closed or (closing.weekdays, written(closing.dates))}
    return render("shop/settings.html", **shown, said=said), status


def _done(part: str, work: Callable[[Unit], object]) -> ResponseReturnValue:
    return do(show, work, url_for(".show", _anchor=part))


@page(blueprint, "POST", "/settings")
def save() -> ResponseReturnValue:
    def work(unit: Unit) -> None:
        closed = request.form.getlist("closed_on")
        settings.change(unit, sent(settings.ChangeSettings, keep=("closed_dates",), closed_on=closed))

    return _done("shop", work)


@page(blueprint, "POST", "/settings/sections")
def add_section() -> ResponseReturnValue:
    def work(unit: Unit) -> None:
        code, name = request.form.get("code", "").upper(), request.form.get("section", "")
        section = stock.add_section(unit, sent(stock.AddSection, code=code, name=name))
        stock.add_slots(unit, section.code, sent(stock.AddSlots))

    return _done("sections", work)


@page(blueprint, "POST", "/settings/racks/<name>")
def place_rack(name: str) -> ResponseReturnValue:
    return _done("racks", lambda unit: stock.place_rack(unit, name, sent(stock.PlaceRack)))
