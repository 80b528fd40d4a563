"""The account of every scan, verdict and change, the latest first."""

from __future__ import annotations

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.storage.views import ledger as ledger_views
from scanflow.web.pages.declare import Group, MenuEntry, page
from scanflow.web.pages.rendering import PAGE, asked, render
from scanflow.web.pages.room_view import ask

blueprint = Blueprint("ledger_page", __name__)


@page(blueprint, "GET", "/ledger", live=True, menu=MenuEntry(Group.SHOP, 4, "Ledger", "g"))
def show() -> ResponseReturnValue:
    about = request.args.get("about", "").strip()[:100]
    before = asked("before") or None
    names = list(dict.fromkeys([about, about.upper()])) if about else []
    entries = ask(ledger_views.newest, before=before, about=names, limit=PAGE + 1)
    return render("shop/ledger.html", entries=entries[:PAGE], more=len(entries) > PAGE, about=about, before=before)
