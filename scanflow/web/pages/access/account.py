"""The owner's password and sign-ins: the password changed, sessions listed and ended."""

from __future__ import annotations

import re
from datetime import timedelta

from flask import Blueprint, redirect, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain import events
from scanflow.storage import access
from scanflow.storage.access.passwords import SHORTEST_PASSWORD, WeakPassword
from scanflow.storage.unit import SqlUnit
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.access import agents
from scanflow.web.pages.access.login import go_out, is_password, new_password
from scanflow.web.pages.declare import page
from scanflow.web.pages.forms import write
from scanflow.web.pages.shown import act, render
from scanflow.web.problem import Problem
from scanflow.workflow.ports import Missing, Refused

blueprint = Blueprint("account_page", __name__)
blueprint.add_app_template_filter(agents.words, "browser")
MOST = 50
"""Sessions that are shown, those used last."""


@page(blueprint, "GET", "/account")
def show() -> ResponseReturnValue:
    return _show("", 200)


def _show(said: str, status: int) -> ResponseReturnValue:
    with shop().looking() as unit:
        sessions = access.sessions(unit.connection, unit.at)
        ready = access.has_password(unit.connection)
    here = next((each for each in sessions if each.n == visitor().n), None)
    return render(
        "access/account.html",
        sessions=sessions[:MOST],
        all=len(sessions),
        mine=here.n if here else None,
        ready=ready,
        shortest=SHORTEST_PASSWORD,
        idle=access.SESSION_IDLE // timedelta(hours=1),
        said=said,
    ), status


@page(blueprint, "POST", "/account/password")
def change() -> ResponseReturnValue:
    """A new password for who knows the one of now. All other sessions end."""
    with shop().looking() as unit:
        before = access.password_hash(unit.connection)
    try:
        if not is_password(request.form.get("current", "")):
            return _show("That is not the password you have now. Nothing was changed. Write it again.", 401)
        password = new_password()
    except Problem as problem:
        return _show(problem.detail, problem.status)
    except WeakPassword as error:
        return _show(str(error), 422)

    def work(unit: SqlUnit) -> None:
        if access.password_hash(unit.connection) != before:
            raise Refused("changed_since", "The password was changed elsewhere just now. Sign in with the new one.")
        access.set_password(unit.connection, password, unit.at, keep=visitor().n)
        unit.record(events.PasswordChanged(address=request.remote_addr))

    said, status = act(work)
    return _show(said, status) if said else redirect(url_for("account_page.show", _anchor="sessions"), 303)


@page(blueprint, "POST", "/account/sessions/end")
def end() -> ResponseReturnValue:
    """One session; it is out with its very next call."""
    sent = request.form.get("session", "")
    n = int(sent) if re.fullmatch("[0-9]{1,9}", sent) else -1

    def work(unit: SqlUnit) -> None:
        ended = access.end_sessions(unit.connection, n=n)
        if not ended:
            raise Missing("That browser is signed out already.")
        unit.record(events.SessionEnded(address=request.remote_addr, browser=agents.words(ended[0])))

    said, status = act(work)
    return _show(said, status) if said else redirect(url_for("account_page.show", _anchor="sessions"), 303)


@page(blueprint, "POST", "/account/sessions/end-all")
def end_all() -> ResponseReturnValue:
    """Sign out everywhere, here too. Helpers' phones and tokens go on: they are revoked one by one."""

    def work(unit: SqlUnit) -> None:
        ended = access.end_sessions(unit.connection)
        unit.record(events.SignedOutEverywhere(address=request.remote_addr, sessions=len(ended)))

    write(work)
    return go_out()
