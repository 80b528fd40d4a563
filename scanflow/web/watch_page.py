"""The page of a camera at a station: what it sees, what of that is read, and the last verdict. It keeps nothing.

An application of its own, for the program that holds the camera: it listens on this machine, and answers nobody who
came by another name.
"""

from __future__ import annotations

import base64
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any

from flask import Flask, Response, abort, render_template
from flask.typing import ResponseReturnValue
from werkzeug.serving import WSGIRequestHandler, make_server

from scanflow.web.door.visitors import POLICY
from scanflow.web.pages.rendering import headings

NAMES = ["127.0.0.1", "localhost"]
"""What this machine is called by itself: a page of elsewhere that has its name point here gets nothing."""


@dataclass(slots=True)
class Watched:
    """What the page shows now.

    ``hint`` is what to do, ``waits`` says why a scan has no answer yet. ``outlines`` hold a ``text``, four ``corners``
    in pixels and a ``kind``: ``scanned``, ``seen``, or ``other`` for what is not the shop's. ``answers`` counts
    verdicts; ``answer`` is the last, ``thing`` its picture.
    """

    station: str
    hint: str = ""
    waits: str = ""
    jpeg: bytes = b""
    size: tuple[int, int] = (0, 0)
    outlines: list[dict[str, Any]] = field(default_factory=list)
    answers: int = 0
    answer: dict[str, Any] | None = None
    thing: bytes = b""


def create_page(watched: Watched) -> Flask:
    """The page, as a WSGI application."""
    app = Flask(__name__)
    app.config["TRUSTED_HOSTS"] = NAMES

    @app.get("/")
    def show() -> ResponseReturnValue:
        return render_template("watch.html", station=watched.station, headings=headings())

    @app.get("/now")
    def now() -> ResponseReturnValue:
        """The picture travels with what is read in it, so that both are of one moment."""
        width, height = watched.size
        return {
            "picture": base64.b64encode(watched.jpeg).decode(),
            "width": width,
            "height": height,
            "outlines": watched.outlines,
            "hint": watched.hint,
            "waits": watched.waits,
            "answers": watched.answers,
            "answer": watched.answer,
        }

    @app.get("/thing")
    def thing() -> ResponseReturnValue:
        return Response(watched.thing, mimetype="image/jpeg") if watched.thing else abort(404)

    @app.after_request
    def protect(response: Response) -> Response:
        response.headers["Content-Security-Policy"] = POLICY
        response.headers["X-Content-Type-Options"] = "nosniff"
        response.headers["Cross-Origin-Resource-Policy"] = "same-origin"
        response.headers["Cache-Control"] = "no-store"
        return response

    return app


class _Quiet(WSGIRequestHandler):
    """Writes no line for each picture that is asked for."""

    def log_request(self, code: int | str = "-", size: int | str = "-") -> None:
        pass


@contextmanager
def serving(watched: Watched, listener: socket.socket) -> Iterator[str]:
    """The address of the page, which is served at this socket for as long as the block lasts."""
    host, port = listener.getsockname()
    server = make_server(host, port, create_page(watched), threaded=True, request_handler=_Quiet, fd=listener.fileno())
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    try:
        yield f"http://{host}:{port}/"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
