"""Come in with the owner's password; set it once by the link of the first start; go out."""

from __future__ import annotations

from urllib.parse import urlsplit

from flask import Blueprint, Response, current_app, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.storage import access
from scanflow.storage.access import SHORTEST_PASSWORD, Role, Visitor
from scanflow.storage.unit import SqlUnit
from scanflow.web.problem import Problem
from scanflow.web.visitors import COOKIE, Attempts, shop

blueprint = Blueprint("login", __name__)
OWNER = Visitor("owner", Role.OWNER)


def _name() -> str:
    with shop().looking() as unit:
        return unit.settings.name


def _attempts() -> Attempts:
    attempts: Attempts = current_app.extensions["attempts"]
    return attempts


def _within(target: str) -> str:
    """An address of ours to go on to; anything else leads to the day's page."""
    parts = urlsplit(target.replace("\\", "/"))
    ours = not parts.scheme and not parts.netloc and target.startswith("/") and not target.startswith("//")
    return target if ours and target.isprintable() else url_for("today.show")


def _check_origin() -> None:
    """Nobody has a session yet, so nobody has a token: the browser says whose form this is."""
    origin = request.headers.get("Origin")
    if origin is not None and urlsplit(origin).netloc != request.host:
        raise Problem(403, "csrf", "This form came from another site. Open the page here and sign in again.")


def _come_in(target: str) -> Response:
    """A new session, in place of the one that this browser may have had."""
    before = request.cookies.get(COOKIE, "")

    def work(unit: SqlUnit) -> str:
        access.end_session(unit.connection, before)
        return access.make_session(unit.connection, OWNER, unit.at)

    secret = shop().act(OWNER.name, work)
    response = redirect(_within(target), 303)
    response.set_cookie(
        COOKIE,
        secret,
        max_age=int(access.SESSION.total_seconds()),
        httponly=True,
        samesite="Lax",
        secure=request.is_secure,
    )
    return response


@blueprint.get("/login")
def show() -> ResponseReturnValue:
    return _form("", 200, request.args.get("next", ""))


def _form(said: str, status: int, target: str) -> ResponseReturnValue:
    with shop().looking() as unit:
        ready = access.has_password(unit.connection)
    return render_template("login.html", name=_name(), said=said, target=target, ready=ready), status


@blueprint.post("/login")
def enter() -> ResponseReturnValue:
    _check_origin()
    target = request.form.get("next", "")
    try:
        _attempts().check()
    except Problem as problem:
        return _form(problem.detail, problem.status, target)
    with shop().looking() as unit:
        right = access.check_password(unit.connection, request.form.get("password", ""))
    if not right:
        _attempts().failed()
        return _form("That is not the password. Try again.", 401, target)
    return _come_in(target)


@blueprint.get("/set-up/<secret>")
def set_up_page(secret: str) -> ResponseReturnValue:
    return _set_up_form(secret, "", 200)


def _set_up_form(secret: str, said: str, status: int) -> ResponseReturnValue:
    with shop().looking() as unit:
        good = access.visitor(unit.connection, "setup", secret, unit.at) is not None
    status = status if good else 410
    return render_template("set_up.html", name=_name(), said=said, good=good, shortest=SHORTEST_PASSWORD), status


@blueprint.post("/set-up/<secret>")
def set_up(secret: str) -> ResponseReturnValue:
    _check_origin()
    password = request.form.get("password", "")
    if len(password) < SHORTEST_PASSWORD:
        return _set_up_form(secret, f"A password has at least {SHORTEST_PASSWORD} characters.", 422)
    if password != request.form.get("again", ""):
        return _set_up_form(secret, "The two are not the same. Write it twice alike.", 422)

    def work(unit: SqlUnit) -> bool:
        if access.visitor(unit.connection, "setup", secret, unit.at) is None:
            return False
        access.set_password(unit.connection, password, unit.at)
        unit.record("password set", {})
        return True

    if not shop().act(OWNER.name, work):
        return _set_up_form(secret, "", 410)
    return _come_in("/")


@blueprint.post("/logout")
def leave() -> ResponseReturnValue:
    secret = request.cookies.get(COOKIE, "")
    shop().act(OWNER.name, lambda unit: access.end_session(unit.connection, secret))
    response = redirect(url_for("login.show"), 303)
    response.delete_cookie(COOKIE)
    return response
