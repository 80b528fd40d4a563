"""Two plain stations: cards come back to the tray, things are seen on a shelf."""

from __future__ import annotations

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain.things import Station
from scanflow.storage import page_views
from scanflow.web.pages.last_scan import last_scan
from scanflow.web.pages.shown import look, page

tray = Blueprint("tray_page", __name__)
shelf = Blueprint("shelf_page", __name__)
SHOWN = 60


@tray.get("/tray")
def show() -> ResponseReturnValue:
    counts = look(page_views.counts)
    due = look(page_views.slot_list, state="due", limit=SHOWN + 1)
    return page("tray.html", counts=counts, due=due, shown=SHOWN, last=last_scan(Station.TRAY, ""))


@shelf.get("/shelf", endpoint="show")
def show_shelf() -> ResponseReturnValue:
    names = look(page_views.bin_names)
    wanted = request.args.get("bin", "").strip().upper()
    here = wanted if wanted in names else ""
    slots = look(page_views.slot_list, bin_=here) if here else ()
    back = look(page_views.slot_list, state="away", limit=SHOWN)
    last = last_scan(Station.SHELF, here) if here else None
    return page("shelf.html", bins=names, here=here, wanted=wanted, slots=slots, back=back, last=last)
