"""The service and a bare durable insert behind one server: `python tests/bench/verdict_server.py FOLDER [PROFILE]`.

The folder holds `shop.db`; `bare.db` is made. Prints the port. With PROFILE, a file, the worker threads are profiled.
"""

from __future__ import annotations

import cProfile
import signal
import sqlite3
import sys
import threading
from pathlib import Path
from typing import Any

import waitress
from flask import Flask, request
from werkzeug.middleware.dispatcher import DispatcherMiddleware

from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.web import create_app
from scanflow.web.api.changes import MOST

THREADS = 8
"""As many as `scanflow serve` has."""


def bare_app(path: Path) -> Flask:
    """One row, one durable commit; writers wait at a lock as those of the service do."""
    app = Flask("bare")
    turn, own = threading.Lock(), threading.local()

    def connection() -> sqlite3.Connection:
        if not hasattr(own, "connection"):
            own.connection = sqlite3.connect(path, isolation_level=None, timeout=30)
            own.connection.execute("PRAGMA journal_mode=WAL")
            own.connection.execute("PRAGMA synchronous=FULL")
            own.connection.execute(
                "CREATE TABLE IF NOT EXISTS rows (n INTEGER PRIMARY KEY, key TEXT UNIQUE, text TEXT)"
            )
        return own.connection

    @app.post("/")
    def insert() -> dict[str, Any]:
        fields = request.get_json()
        with turn:
            connection().execute("BEGIN IMMEDIATE")
            connection().execute("INSERT INTO rows (key, text) VALUES (?, ?)", (fields["key"], fields["text"]))
            connection().execute("COMMIT")
        return {"key": fields["key"]}

    return app


def profiled(app: Any, file: str) -> Any:
    """The application with all its calls in one profile, written when the process is told to end."""
    profile, turn = cProfile.Profile(), threading.Lock()

    def call(environ: Any, start_response: Any) -> Any:
        with turn:
            return profile.runcall(app, environ, start_response)

    signal.signal(signal.SIGTERM, lambda *_: (profile.dump_stats(file), sys.exit(0)))
    return call


def main() -> None:
    folder = Path(sys.argv[1])
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    app: Any = create_app(Shop(Database(f"sqlite:///{folder}/shop.db")))
    if len(sys.argv) > 2:
        app = profiled(app, sys.argv[2])
    both = DispatcherMiddleware(app, {"/bare": bare_app(folder / "bare.db")})
    server = waitress.create_server(both, host="127.0.0.1", port=0, threads=THREADS + MOST, ident=None)
    print(server.effective_port, flush=True)
    server.run()


if __name__ == "__main__":
    main()
