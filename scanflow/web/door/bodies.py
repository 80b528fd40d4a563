"""How large a body may be. The server asks before it reads one, and the application again before it parses one."""

from __future__ import annotations

from typing import Any

from flask import Flask, current_app, request

from scanflow.web.door import visitors
from scanflow.web.door.visitors import View
from scanflow.web.problem import Problem

OPEN = 64 * 1024
"""Bytes that a body has at most where nobody need be known."""

USUAL = 1024 * 1024
"""Bytes of a body that is no file."""

FILE = 32 * 1024 * 1024
"""Bytes of a body that is or holds a file; a 48-megapixel photograph fits."""


def takes_file(view: View) -> View:
    """Declares that calls of this view may bring a file. It stands between the route and the view."""
    view.takes_file = True  # type: ignore[attr-defined]
    return view


def largest() -> int:
    """Bytes that the body of the present request may have."""
    if request.endpoint is None or visitors.for_anybody():
        return OPEN
    return FILE if getattr(current_app.view_functions[request.endpoint], "takes_file", False) else USUAL


def worth_reading(app: Flask, environ: dict[str, Any]) -> int:
    """Bytes of its body that are read of a request whose head is here: no more than `OPEN` of a stranger."""
    try:
        with app.request_context(environ):
            most = largest()
            return most if most == OPEN or visitors.identify() is not None else OPEN
    except Exception:  # no such address; or the database fails, as it will again where that is answered
        return OPEN


def _limit() -> None:
    most = largest()
    request.max_content_length = request.max_form_memory_size = most  # a file may travel on in a field
    if (request.content_length or 0) > most:
        raise Problem(413, "too_large", f"This is too large: at most {most // 1024} kB are taken here. Send less.")


def register(app: Flask) -> None:
    """Before who is calling is asked: the answer to that may lie in a form."""
    app.config["MAX_CONTENT_LENGTH"] = FILE
    app.before_request(_limit)
