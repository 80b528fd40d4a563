"""How this shop works, its sections and slots, and where its racks stand."""

from __future__ import annotations

import re
from collections.abc import Callable
from zoneinfo import available_timezones

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from labels.paper import COLOURS
from scanflow.storage.views import room as room_views
from scanflow.web.pages.declare import Entry, page
from scanflow.web.pages.seen import look
from scanflow.web.pages.shown import act, render
from scanflow.workflow import settings, stock
from scanflow.workflow.ports import Invalid, Unit

blueprint = Blueprint("settings_page", __name__)


@page(blueprint, "GET", "/settings", menu=Entry(14, "Settings", "s"))
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    sections = look(room_views.section_list)
    racks = look(room_views.rack_list)
    used = {section.colour for section in sections}
    colours = sorted(COLOURS, key=lambda name: name in used)
    zones = sorted(available_timezones())
    shown = {"sections": sections, "racks": racks, "colours": colours, "zones": zones, "given": request.form}
    return render("shop/settings.html", **shown, said=said), status


def _done(part: str, work: Callable[[Unit], object]) -> ResponseReturnValue:
    said, status = act(work)
    return show(said, status) if said else redirect(url_for("settings_page.show", _anchor=part), 303)


@page(blueprint, "POST", "/settings")
def save() -> ResponseReturnValue:
    def work(unit: Unit) -> None:
        name, zone = request.form.get("name", "").strip(), request.form.get("zone", "").strip()
        if not name or len(name) > 60:
            raise Invalid("/name", "required", "The shop needs a name of at most 60 characters.")
        if zone not in available_timezones():
            raise Invalid("/zone", "unknown_zone", "Choose a time zone from the list.")
        days = request.form.get("photo_days") or str(unit.settings.photo_days)
        if not re.fullmatch("[0-9]{1,4}", days) or not int(days):
            raise Invalid("/photo_days", "bad_days", "Photos of a count are kept 1 to 9999 days.")
        weeks = request.form.get("count_weeks") or str(unit.settings.count_weeks)
        if not re.fullmatch("[0-9]{1,2}", weeks):
            raise Invalid("/count_weeks", "bad_weeks", "Every bin is counted within 1 to 99 weeks; 0 for no such plan.")
        gone = request.form.get("gone_days") or str(unit.settings.gone_days)
        if not re.fullmatch("[0-9]{1,3}", gone) or not int(gone):
            raise Invalid("/gone_days", "bad_days", "A closed parcel counts as gone after 1 to 999 days.")
        settings.change(
            unit,
            count_weeks=int(weeks),
            photo_days=int(days),
            auto_close=request.form.get("auto_close") == "yes",
            by_person=request.form.get("by_person") == "yes",
            scan_at_bin=request.form.get("scan_at_bin") == "yes",
            zone=zone,
            name=name,
            bind_labels=request.form.get("bind_labels") == "yes",
            hand_overs=request.form.get("hand_overs") == "yes",
            gone_days=int(gone),
            slip_closes=request.form.get("slip_closes") == "yes",
            check="none" if request.form.get("check") == "none" else "mod_11_10",
        )

    return _done("shop", work)


def _number(name: str, least: int, most: int) -> int:
    value = request.form.get(name, type=int)
    if value is None or not least <= value <= most:
        raise Invalid(f"/{name}", "bad_number", f"Write a whole number from {least} to {most}.")
    return value


@page(blueprint, "POST", "/settings/sections")
def add_section() -> ResponseReturnValue:
    def work(unit: Unit) -> None:
        code, name = request.form.get("code", "").strip().upper(), request.form.get("section", "").strip()
        digits, colour = _number("digits", 2, 6), request.form.get("colour", "")
        if re.fullmatch("[A-Z]{1,2}", code) is None:
            raise Invalid("/code", "bad_code", "A section has one or two letters from A to Z.")
        if not name or len(name) > 60 or colour not in COLOURS:
            raise Invalid("/section", "required", "A section needs a name of at most 60 characters and a paper.")
        per_bin, count = _number("slots_per_bin", 1, 1000), _number("count", 1, 5000)
        stock.begin_section(unit, code, name, per_bin, colour, digits, count=count)

    return _done("sections", work)


@page(blueprint, "POST", "/settings/racks/<name>")
def place_rack(name: str) -> ResponseReturnValue:
    def work(unit: Unit) -> None:
        start = request.form.get("start", type=float)
        if start is None or not 0 <= start <= 1000:
            raise Invalid("/start", "bad_number", "Write metres from 0 to 1000.")
        stock.place_rack(unit, name, _number("aisle", 0, 500), start)

    return _done("racks", work)
