"""Starts services quickly: a process that has all modules loaded forks a real `scanflow serve` for each line it reads.

A line is JSON: `database`, a URL, `port`, 0 for any, `die`, null or a moment at which the new process kills itself with
SIGKILL in a write: `inside` (after its first ledger entry), `before` the commit, or `after` it, `spared`, the number of
writes before that one, and `data`, the folder of the user's data. The answer is a line with the process id; what the
service prints follows on the same stream.
"""

from __future__ import annotations

import gc
import json
import os
import signal
import sys
import threading
from collections.abc import Sequence
from types import SimpleNamespace
from typing import Any, cast

import built_once
import psycopg  # noqa: F401  (loaded once for all, as what follows)
import waitress  # noqa: F401
from sqlalchemy import Connection, Engine, event

from scanflow import cli
from scanflow.domain.events import Event
from scanflow.storage import access  # noqa: F401
from scanflow.storage.unit import SqlUnit
from scanflow.web import create_app


def _die() -> None:
    os.kill(os.getpid(), signal.SIGKILL)


def arm(moment: str, spared: int) -> None:
    """Die at this moment of a transaction that writes to the ledger, after so many others."""
    here, left = threading.local(), [spared]
    record = SqlUnit.record

    def due() -> bool:
        return getattr(here, "wrote", False) and not left[0]

    def recorded(unit: SqlUnit, event: Event, now: Sequence[str] = ()) -> None:
        record(unit, event, now)
        here.wrote = True
        if moment == "inside" and due():
            _die()

    def committing(connection: Connection) -> None:
        here.last = due()
        if moment == "before" and here.last:
            _die()
        left[0] -= getattr(here, "wrote", False) and not here.last
        here.wrote = False

    SqlUnit.record = recorded  # type: ignore[method-assign]
    event.listen(Engine, "commit", committing)
    if moment == "after":
        event.listen(Engine, "engine_connect", lambda connection: _wrap(connection.engine.dialect, here))


def _wrap(dialect: Any, here: threading.local) -> None:
    if "do_commit" in vars(dialect):
        return
    commit = dialect.do_commit

    def committed(connection: Any) -> None:
        commit(connection)
        if getattr(here, "last", False):
            _die()

    dialect.do_commit = committed


def main() -> None:
    built_once.install()
    create_app(cast(Any, SimpleNamespace(readers=SimpleNamespace())))  # its routes are compiled here, for all children
    gc.freeze()  # what is loaded stays shared with the children
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # nobody waits for the children
    for line in sys.stdin:
        wanted = json.loads(line)
        child = os.fork()
        if child == 0:
            signal.signal(signal.SIGCHLD, signal.SIG_DFL)
            os.close(0)
            os.environ["XDG_DATA_HOME"] = wanted["data"]
            if wanted["die"]:
                arm(wanted["die"], wanted["spared"])
            cli.main(["serve", "--port", str(wanted["port"]), "--database", wanted["database"]])
        os.write(sys.stdout.fileno(), (json.dumps({"pid": child}) + "\n").encode())  # whole, beside the children's


if __name__ == "__main__":
    main()
