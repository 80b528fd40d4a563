"""Starts services quickly: a process that has all modules loaded forks a real `scanflow serve` for each line it reads.

A line is JSON: `database`, a URL, and `die`, null or a moment at which the new process kills itself with SIGKILL in
its first write: `inside` (after its first ledger entry), `before` the commit, or `after` it. The answer is a line with
the process id; what the service prints follows on the same stream.
"""

from __future__ import annotations

import json
import os
import signal
import sys
import threading
from collections.abc import Sequence
from typing import Any

import waitress  # noqa: F401  (loaded once for all)
from sqlalchemy import Engine, event

from scanflow import cli
from scanflow.domain.events import Event
from scanflow.storage import access  # noqa: F401
from scanflow.storage.unit import SqlUnit
from scanflow.web import create_app  # noqa: F401


def _die() -> None:
    os.kill(os.getpid(), signal.SIGKILL)


def arm(moment: str) -> None:
    """Die at this moment of the first transaction that writes to the ledger."""
    here = threading.local()
    record = SqlUnit.record

    def recorded(unit: SqlUnit, event: Event, now: Sequence[str] = ()) -> None:
        record(unit, event, now)
        here.wrote = True
        if moment == "inside":
            _die()

    SqlUnit.record = recorded  # type: ignore[method-assign]
    if moment == "before":
        event.listen(Engine, "commit", lambda connection: _die() if getattr(here, "wrote", False) else None)
    if moment == "after":
        event.listen(Engine, "engine_connect", lambda connection: _wrap(connection.engine.dialect, here))


def _wrap(dialect: Any, here: threading.local) -> None:
    if "do_commit" in vars(dialect):
        return
    commit = dialect.do_commit

    def committed(connection: Any) -> None:
        commit(connection)
        if getattr(here, "wrote", False):
            _die()

    dialect.do_commit = committed


def main() -> None:
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # nobody waits for the children
    for line in sys.stdin:
        wanted = json.loads(line)
        child = os.fork()
        if child == 0:
            signal.signal(signal.SIGCHLD, signal.SIG_DFL)
            os.close(0)
            if wanted["die"]:
                arm(wanted["die"])
            cli.main(["serve", "--port", "0", "--database", wanted["database"]])
        os.write(sys.stdout.fileno(), (json.dumps({"pid": child}) + "\n").encode())  # whole, beside the children's


if __name__ == "__main__":
    main()
