"""Two plain stations: cards come back to the tray, things are seen on a shelf."""

from __future__ import annotations

from contextlib import suppress

from flask import Blueprint, request, url_for
from flask.typing import ResponseReturnValue

from labels import slot_code
from scanflow.domain.things import Station
from scanflow.storage.views import room as room_views
from scanflow.storage.views import stock as slot_views
from scanflow.storage.views import where as where_views
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.picking.last_scan import last_scan
from scanflow.web.pages.rendering import render, where_are
from scanflow.web.pages.room_view import ask

blueprint = Blueprint("station_page", __name__)
SHOWN = 60


@page(blueprint, "GET", "/tray", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 6, "Tray", "y", top=True))
def tray() -> ResponseReturnValue:
    counts = ask(room_views.counts)
    due = ask(slot_views.slot_list, state="due", limit=SHOWN + 1)
    return render(
        "picking/tray.html",
        counts=counts,
        due=due,
        shown=SHOWN,
        last=last_scan(Station.TRAY, ""),
        here=url_for("station_page.tray"),
    )


@page(blueprint, "GET", "/shelf", roles=STAFF, live=True, menu=MenuEntry(Group.ROOM, 3, "Shelf", "h"))
def shelf() -> ResponseReturnValue:
    names = ask(room_views.bin_names)
    wanted = _bin_of(request.args.get("bin", "").strip().upper())
    bin_ = wanted if wanted in names else ""
    slots = ask(slot_views.slot_list, bin_=bin_) if bin_ else ()
    back = ask(where_views.duties)
    last = last_scan(Station.SHELF, bin_) if bin_ else None
    shown = {
        "bins": names,
        "bin": bin_,
        "wanted": wanted,
        "is_card": slot_code.is_card_like(wanted),
        "slots": slots,
        "back": back,
        "where": where_are(slots),
    }
    return render("picking/shelf.html", **shown, last=last, here=url_for("station_page.shelf", bin=bin_ or None))


def _bin_of(text: str) -> str:
    """The bin whose name or label this is."""
    with suppress(slot_code.CodeError):
        return slot_code.parse_bin(text)
    return text
