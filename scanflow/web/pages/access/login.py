"""Come in with the owner's password; set it by a link that works once; go out."""

from __future__ import annotations

from datetime import timedelta
from urllib.parse import urlsplit

from flask import Blueprint, current_app, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from werkzeug.wrappers import Response

from scanflow.domain.access import LinkSpent
from scanflow.domain.access.names import SINGLE
from scanflow.storage.access import SESSION, passwords
from scanflow.storage.access.passwords import SHORTEST_PASSWORD, WeakPassword, check_new
from scanflow.web.door.addresses import EXPOSED, is_loopback
from scanflow.web.door.refused_sign_ins import RefusedSignIns
from scanflow.web.door.visitors import Attempts, cookie, session_secret, shop, visitor
from scanflow.web.pages.declare import ANYONE, STAFF, page
from scanflow.web.pages.forms import write_untold
from scanflow.web.pages.room_view import room
from scanflow.web.problem import Problem
from scanflow.workflow import access

blueprint = Blueprint("login", __name__)


def shop_name() -> str:
    return room().settings.name


def exposed() -> str:
    """What to say where a password would go over the network in clear; empty elsewhere."""
    exposed = current_app.extensions["listening"].exposed and not is_loopback(f"[{request.remote_addr}]")
    return EXPOSED if exposed else ""


def _attempts() -> Attempts:
    attempts: Attempts = current_app.extensions["attempts"]
    return attempts


def _refused() -> RefusedSignIns:
    refused: RefusedSignIns = current_app.extensions["refused"]
    return refused


def is_password(sent: str) -> bool:
    """Whether this is the owner's password. It counts as a try from this address; `Problem` 429 where none is left."""
    try:
        _attempts().take(request.remote_addr)
        kept = room().access.password_hash()
        right = kept is not None and passwords.matches(kept, sent)
    except Problem:
        _refused().note(request.remote_addr, shop().clock())
        raise
    if right:
        _attempts().good(request.remote_addr)
    else:
        _refused().note(request.remote_addr, shop().clock())
    return right


def new_password() -> str:
    """The password that the form brings, twice alike. `WeakPassword` where it is refused."""
    password = request.form.get("password", "")
    check_new(password, shop_name())
    if password != request.form.get("again", ""):
        raise WeakPassword("The two passwords differ. Type the same one twice.")
    return password


def _within(target: str) -> str:
    """An address of ours to go on to; anything else leads to the day's page."""
    try:
        parts = urlsplit(target.replace("\\", "/"))
    except ValueError:  # a bracket without its other half
        return url_for("today.show")
    ours = not parts.scheme and not parts.netloc and target.startswith("/") and not target.startswith("//")
    return target if ours and target.isprintable() else url_for("today.show")


def check_origin() -> None:
    """Nobody has a session yet, so nobody has a token: the browser says whose form this is."""
    origin = request.headers.get("Origin")
    if origin is not None and urlsplit(origin).netloc != request.host:
        raise Problem(403, "csrf", "This form came from another site. Open the page here and sign in again.")


def _owner(target: str) -> Response:
    """A new session of the owner, in place of the one that this browser may have had."""
    before, agent, address = session_secret(), request.user_agent.string, request.remote_addr
    _refused().tell(shop())
    secret = write_untold(SINGLE, lambda unit: access.sign_in(unit, before, agent, address))
    return come_in(secret, SESSION, target)


def come_in(secret: str, lasts: timedelta, target: str) -> Response:
    """Lead on to an address of ours, with a session or device of this secret."""
    response = redirect(_within(target), 303)
    secure = request.is_secure
    response.set_cookie(
        cookie(), secret, max_age=int(lasts.total_seconds()), httponly=True, samesite="Lax", secure=secure
    )
    return response


@page(blueprint, "GET", "/login", roles=ANYONE)
def show() -> ResponseReturnValue:
    return _form("", 200, request.args.get("next", ""))


def _form(said: str, status: int, target: str) -> ResponseReturnValue:
    shown = {"said": said, "target": target, "ready": room().access.has_password(), "exposed": exposed()}
    return render_template("access/login.html", name=shop_name(), **shown), status


@page(blueprint, "POST", "/login", roles=ANYONE)
def enter() -> ResponseReturnValue:
    check_origin()
    target = request.form.get("next", "")
    try:
        right = is_password(request.form.get("password", ""))
    except Problem as problem:
        return _form(problem.detail, problem.status, target)
    return _owner(target) if right else _form("That is not the password. Try again.", 401, target)


@page(blueprint, "GET", "/set-up/<secret>", roles=ANYONE)
def set_up_page(secret: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    good = room().access.visitor("setup", secret) is not None
    status = status if good else 410
    shown = {"said": said, "good": good, "shortest": SHORTEST_PASSWORD, "exposed": exposed()}
    return render_template("access/set_up.html", name=shop_name(), **shown), status


@page(blueprint, "POST", "/set-up/<secret>", roles=ANYONE)
def set_up(secret: str) -> ResponseReturnValue:
    check_origin()
    try:
        password = new_password()
        write_untold(SINGLE, lambda unit: access.set_up(unit, secret, password, request.remote_addr))
    except WeakPassword as error:
        return set_up_page(secret, str(error), 422)
    except LinkSpent:
        return set_up_page(secret, "", 410)
    return _owner("/")


@page(blueprint, "POST", "/logout", roles=STAFF)
def leave() -> ResponseReturnValue:
    secret = session_secret()
    write_untold(visitor().name, lambda unit: access.sign_out(unit, secret, request.remote_addr))
    return go_out()


def go_out() -> Response:
    """To the page that asks for the password, without a session."""
    response = redirect(url_for("login.show"), 303)
    response.delete_cookie(cookie(), secure=request.is_secure, httponly=True, samesite="Lax")
    return response
