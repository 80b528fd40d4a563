"""Try and set up a scanner that types: what arrives is shown key by key, with what to change."""

from __future__ import annotations

from flask import Blueprint
from flask.typing import ResponseReturnValue

from labels import code128
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.rendering import render

blueprint = Blueprint("scanner_page", __name__)
TEST_TEXT = "AQZWYM0123"
"""No card and no slip, so refused at every station; its letters and figures differ between keyboards."""

MODULE_PX = 2
"""Width of a module on the screen in CSS pixels; whole, or bars blur."""


def bars(text: str) -> tuple[int, str]:
    """Code 128 with its quiet zones: width in modules, and an SVG path of its bars, one unit a module, 30 high."""
    place, path = code128.QUIET, []
    for number, width in enumerate(code128.widths(text)):
        if number % 2 == 0:
            path.append(f"M{place} 0h{width}v30h-{width}z")
        place += width
    return place + code128.QUIET, "".join(path)


@page(blueprint, "GET", "/scanner", roles=STAFF, menu=MenuEntry(Group.SHOP, 7, "Scanner"))
def show() -> ResponseReturnValue:
    width, path = bars(TEST_TEXT)
    return render("picking/scanner.html", test_text=TEST_TEXT, width=width, path=path, module=MODULE_PX)
