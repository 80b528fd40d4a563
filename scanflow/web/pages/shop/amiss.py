"""What is amiss with the data, what is safe to do, and the way on."""

from __future__ import annotations

from datetime import datetime

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.declare import page
from scanflow.web.pages.rendering import render

blueprint = Blueprint("amiss_page", __name__)


@page(blueprint, "GET", "/amiss")
def show() -> ResponseReturnValue:
    return _shown()


def _shown(said: str = "", status: int = 200) -> ResponseReturnValue:
    guard = shop().database.guard
    note = guard.note
    verified = datetime.fromisoformat(note.whole) if note and note.whole else None
    shown = {"verified": verified, "last_good": note.last_good if note else ""}
    return render("shop/amiss.html", findings=guard.amiss, said=said, **shown), status


@page(blueprint, "POST", "/amiss")
def accept() -> ResponseReturnValue:
    """Go on with it, for a reason that the ledger keeps."""
    reason = request.form.get("reason", "").strip()
    if not shop().database.guard.amiss:
        return redirect(url_for("amiss_page.show"), 303)
    if not reason:
        return _shown("A reason is missing. Write down why you accept it.", 422)
    shop().database.accept(shop().clock(), visitor().name, reason)
    return redirect(url_for("amiss_page.show"), 303)
