"""Pair a phone: who opens the link of the owner's QR code comes in as a helper, under a name of its own."""

from __future__ import annotations

import segno
from flask import Blueprint, render_template, request
from flask.typing import ResponseReturnValue
from markupsafe import Markup
from werkzeug.user_agent import UserAgent

from scanflow.domain.access import LinkSpent, agents
from scanflow.domain.access.names import LONGEST_NAME, BadName, NameTaken, fit, key
from scanflow.storage import access as access_rows
from scanflow.web.door.visitors import greet, session_secret
from scanflow.web.pages.access.login import check_origin, come_in, shop_name
from scanflow.web.pages.declare import ANYONE, page
from scanflow.web.pages.forms import write_untold
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow import access

blueprint = Blueprint("pairing", __name__)


def qr(url: str) -> Markup:
    """A QR code (ISO/IEC 18004) with its quiet zone, as SVG to stand in a page, black on white in any theme."""
    code = segno.make_qr(url, error="m")
    return Markup(code.svg_inline(border=4, dark="#000", light="#fff", omitsize=True, svgclass=None, lineclass=None))


def proposed(agent: UserAgent, taken: set[str]) -> str:
    """A name for a device that nothing has yet."""
    kind, keys = agents.device(agent.string) or "Helper", {key(each) for each in taken}
    names = (kind if number == 1 else f"{kind} {number}" for number in range(1, len(taken) + 2))
    return next(name for name in names if key(name) not in keys)


@page(blueprint, "GET", "/pair/<secret>", roles=ANYONE)
def show(secret: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    """Only looking at a link, as previews of links do, doesn't use it up."""
    good = room().access.visitor("pairing", secret) is not None
    name = request.form.get("name") or proposed(request.user_agent, ask(access_rows.taken_names))
    shown = {"good": good, "device": name, "said": said, "longest": LONGEST_NAME, "known": greet()}
    return render_template("access/pair.html", name=shop_name(), **shown), status if good else 410


@page(blueprint, "POST", "/pair/<secret>", roles=ANYONE)
def use(secret: str) -> ResponseReturnValue:
    """The link is used up, and this browser is a device from now on, in place of who it was before."""
    check_origin()
    before, agent, address = session_secret(), request.user_agent.string, request.remote_addr
    try:
        name = fit(request.form.get("name", ""))
        device = write_untold(name, lambda unit: access.pair(unit, secret, name, before, agent, address))
        return come_in(device, access_rows.DEVICE, "/")
    except BadName as error:
        return show(secret, str(error), 409 if isinstance(error, NameTaken) else 422)
    except LinkSpent:
        return show(secret, "", 410)
