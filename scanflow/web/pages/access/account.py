"""The owner's password and sign-ins: the password changed, sessions listed and ended."""

from __future__ import annotations

import re
from datetime import timedelta

from flask import Blueprint, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.storage import access as access_rows
from scanflow.storage.access.passwords import SHORTEST_PASSWORD, WeakPassword
from scanflow.web.door.visitors import visitor
from scanflow.web.pages.access.login import go_out, is_password, new_password
from scanflow.web.pages.declare import page
from scanflow.web.pages.forms import write
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import ask, room
from scanflow.web.problem import Problem
from scanflow.workflow import access

blueprint = Blueprint("account_page", __name__)
MOST = 50
"""Sessions that are shown, those used last."""


@page(blueprint, "GET", "/account")
def show(said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    sessions = ask(access_rows.sessions, unit.at)
    here = next((each for each in sessions if each.n == visitor().n), None)
    return render(
        "access/account.html",
        sessions=sessions[:MOST],
        all=len(sessions),
        mine=here.n if here else None,
        ready=unit.access.has_password(),
        shortest=SHORTEST_PASSWORD,
        idle=access_rows.SESSION_IDLE // timedelta(hours=1),
        said=said,
    ), status


@page(blueprint, "POST", "/account/password")
def change() -> ResponseReturnValue:
    """A new password for who knows the one of now. All other sessions end."""
    before = room().access.password_hash()
    try:
        if not is_password(request.form.get("current", "")):
            return show("That is not the password you have now. Nothing was changed. Write it again.", 401)
        password = new_password()
    except Problem as problem:
        return show(problem.detail, problem.status)
    except WeakPassword as error:
        return show(str(error), 422)
    mine, address = visitor().n, request.remote_addr
    to = url_for(".show", _anchor="sessions")
    return do(show, lambda unit: access.change_password(unit, before, password, mine, address), to)


@page(blueprint, "POST", "/account/sessions/end")
def end() -> ResponseReturnValue:
    """One session; it is out with its very next call."""
    sent = request.form.get("session", "")
    n = int(sent) if re.fullmatch("[0-9]{1,9}", sent) else -1
    to = url_for(".show", _anchor="sessions")
    return do(show, lambda unit: access.end_session(unit, n, request.remote_addr), to)


@page(blueprint, "POST", "/account/sessions/end-all")
def end_all() -> ResponseReturnValue:
    """Sign out everywhere, here too."""
    write(lambda unit: access.sign_out_everywhere(unit, request.remote_addr))
    return go_out()
