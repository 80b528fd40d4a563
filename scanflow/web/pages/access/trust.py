"""This phone: what works on it, how it comes to trust the service's certificate, and who it is signed in as.

The page needs nobody, and is given without TLS too: nothing of it is secret, and a phone that does not trust the
authority yet could not tell the service from another one anyway. What makes it sound is the comparison of the
fingerprint, which is therefore shown on the owner's screen and not here.
"""

from __future__ import annotations

from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding
from flask import Blueprint, Response, current_app, render_template, request
from flask.typing import ResponseReturnValue

from scanflow.web.door.certificates import Home
from scanflow.web.door.visitors import greet, shop
from scanflow.web.pages.access.login import shop_name
from scanflow.web.pages.declare import ANYONE, Group, MenuEntry, page
from scanflow.web.problem import Problem

blueprint = Blueprint("trust", __name__)


def authority() -> x509.Certificate | None:
    """The certificate of this machine's own authority, if it has one."""
    home: Home | None = current_app.extensions["home"]
    return home.authority(shop().clock()).certificate if home else None


@page(blueprint, "GET", "/trust", roles=ANYONE, menu=MenuEntry(Group.SHOP, 6, "This phone"))
def show() -> ResponseReturnValue:
    found = authority()
    named = found.subject.rfc4514_string().partition("=")[2] if found else ""
    secure = f"https://{request.host}/" if current_app.extensions["listening"].https else ""
    agent = request.user_agent.string
    phone = "apple" if "iPhone" in agent or "iPad" in agent else "android" if "Android" in agent else ""
    shown = {"authority": named, "https": secure, "here": greet(), "phone": phone}
    return render_template("access/trust.html", name=shop_name(), **shown)


@page(blueprint, "GET", "/trust/authority.crt", roles=ANYONE)
def download() -> Response:
    """The authority's certificate in DER, which phones offer to install."""
    found = authority()
    if found is None:
        raise Problem(404, "not_found", "This service has no certificate authority of its own.")
    return Response(found.public_bytes(Encoding.DER), mimetype="application/x-x509-ca-cert")
