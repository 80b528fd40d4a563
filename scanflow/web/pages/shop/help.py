"""The day's work on one screen, to read once and to print for the wall."""

from __future__ import annotations

from flask import Blueprint
from flask.typing import ResponseReturnValue

from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.rendering import render

blueprint = Blueprint("help_page", __name__)


@page(blueprint, "GET", "/help", roles=STAFF, menu=MenuEntry(Group.SHOP, 8, "Help", "e"))
def show() -> ResponseReturnValue:
    return render("shop/help.html")
