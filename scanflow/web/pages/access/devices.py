"""The phones and programs that may come in: paired, renamed, revoked; and how phones reach the service."""

from __future__ import annotations

from datetime import timedelta
from urllib.parse import urlsplit

from flask import Blueprint, current_app, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.access.names import LONGEST_NAME
from scanflow.storage import access as access_rows
from scanflow.web.door.addresses import Listening, is_loopback
from scanflow.web.door.certificates import fingerprint
from scanflow.web.door.visitors import visitor
from scanflow.web.pages.access.pairing import qr
from scanflow.web.pages.access.trust import authority
from scanflow.web.pages.declare import page
from scanflow.web.pages.forms import write_untold
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import access

blueprint = Blueprint("device_page", __name__)


def reached_at() -> list[str]:
    """Addresses of the service for a phone: the one that this browser uses if it isn't this machine's to itself."""
    listening: Listening = current_app.extensions["listening"]
    if is_loopback(request.host):
        return listening.urls()
    scheme = "https" if listening.https else request.scheme
    return list(dict.fromkeys([f"{scheme}://{request.host}", *listening.urls()]))


@page(blueprint, "GET", "/devices", live=True)
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    rows = ask(access_rows.named, room().at)
    found = authority()
    shown = {
        "devices": [row for row in rows if row.kind == "device"],
        "tokens": [row for row in rows if row.kind == "token"],
        "reached": reached_at(),
        "https": current_app.extensions["listening"].https or request.is_secure,
        "fingerprint": fingerprint(found) if found else "",
        "longest": LONGEST_NAME,
    }
    return render("access/devices.html", **shown, said=said), status


@page(blueprint, "POST", "/devices/pair")
def pair() -> ResponseReturnValue:
    """A new link; the one before stops working. Only its hash is kept, so it can be shown here and never again."""
    reached = reached_at()
    if not reached:
        return show("No phone can reach this service yet.", 409)
    wanted = request.form.get("address")
    at = wanted if wanted in reached else reached[0]
    link = at + url_for("pairing.show", secret=write_untold(visitor().name, access.pairing_link))
    plain = f"http://{urlsplit(at).netloc}" if authority() else ""
    trust = plain + url_for("trust.show") if plain else ""
    until = room().at + access_rows.PAIRING_LINK - timedelta(seconds=1)
    shown = {"link": link, "code": qr(link), "trust": trust, "trust_code": qr(trust) if trust else "", "until": until}
    return render("access/pair_phone.html", **shown, at=at, others=[each for each in reached if each != at])


@page(blueprint, "POST", "/devices/rename")
def rename() -> ResponseReturnValue:
    name, to = request.form.get("name", ""), request.form.get("to", "")
    return do(show, lambda unit: access.rename(unit, name, to))


@page(blueprint, "POST", "/devices/revoke")
def revoke() -> ResponseReturnValue:
    """It is out with its very next call."""
    name = request.form.get("name", "")
    return do(show, lambda unit: access.revoke(unit, name))
