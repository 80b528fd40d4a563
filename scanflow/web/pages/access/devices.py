"""The phones and programs that may come in: paired, renamed, revoked; and how phones reach the service."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from urllib.parse import urlsplit

from flask import Blueprint, current_app, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain import events
from scanflow.storage import access
from scanflow.storage.access import PAIRING_LINK
from scanflow.storage.access.names import LONGEST_NAME, BadName, NameTaken, fit
from scanflow.storage.unit import SqlUnit
from scanflow.web.door.addresses import Listening, is_loopback
from scanflow.web.door.certificates import fingerprint
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.access.pairing import qr
from scanflow.web.pages.access.trust import authority
from scanflow.web.pages.declare import page
from scanflow.web.pages.shown import act, render
from scanflow.workflow.ports import Invalid, Missing, Refused

blueprint = Blueprint("device_page", __name__)


def reached_at() -> list[str]:
    """Addresses of the service for a phone: the one that this browser uses if it isn't this machine's to itself."""
    listening: Listening = current_app.extensions["listening"]
    if is_loopback(request.host):
        return listening.urls()
    scheme = "https" if listening.https else request.scheme
    return list(dict.fromkeys([f"{scheme}://{request.host}", *listening.urls()]))


@page(blueprint, "GET", "/devices", live=True)
def show() -> ResponseReturnValue:
    return _show("", 200)


def _show(said: str, status: int) -> ResponseReturnValue:
    with shop().looking() as unit:
        rows = access.named(unit.connection, unit.at)
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
        return _show("No phone can reach this service yet.", 409)
    wanted = request.form.get("address")
    at = wanted if wanted in reached else reached[0]

    def work(unit: SqlUnit) -> str:
        unit.record(events.PairingLinkMade())
        return access.make_pairing_link(unit.connection, unit.at)

    link = at + url_for("pairing.show", secret=shop().act(visitor().name, work))
    plain = f"http://{urlsplit(at).netloc}" if authority() else ""
    trust = plain + url_for("trust.show") if plain else ""
    until = shop().clock() + PAIRING_LINK - timedelta(seconds=1)
    shown = {"link": link, "code": qr(link), "trust": trust, "trust_code": qr(trust) if trust else "", "until": until}
    return render("access/pair_phone.html", **shown, at=at, others=[each for each in reached if each != at])


@page(blueprint, "POST", "/devices/rename")
def rename() -> ResponseReturnValue:
    name, to = request.form.get("name", ""), request.form.get("to", "")

    def work(unit: SqlUnit) -> None:
        try:
            if not access.rename(unit.connection, name, to, unit.at):
                raise Missing(f"There is no {name} any more.")
        except NameTaken as error:
            raise Refused("taken", str(error)) from error
        except BadName as error:
            raise Invalid("/to", "bad_name", str(error)) from error
        unit.record(events.DeviceRenamed(name=name, to=fit(to)))

    return _done(work)


@page(blueprint, "POST", "/devices/revoke")
def revoke() -> ResponseReturnValue:
    """It is out with its very next call."""
    name = request.form.get("name", "")

    def work(unit: SqlUnit) -> None:
        if not access.revoke(unit.connection, name):
            raise Missing(f"There is no {name} any more.")
        unit.record(events.DeviceRevoked(name=name))

    return _done(work)


def _done(work: Callable[[SqlUnit], None]) -> ResponseReturnValue:
    said, status = act(work)
    return _show(said, status) if said else redirect(url_for("device_page.show"), 303)
