"""Services of rehearsed shops: for each line `DATABASE` or `DATABASE WITHOUT` that it reads, a process of its own.

Of each it prints process, port and the tokens of two people, an owner and a helper. The time is what the header of a
call says, so that days pass in seconds. WITHOUT names a guard that is taken out of the list of its station:
`table: other_order`, `hand-over: held`, `every station: bad_check`.
"""

from __future__ import annotations

import os
import signal
import sys
import threading
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from functools import partial
from typing import Any

import waitress

from scanflow.domain import verdict
from scanflow.domain.access import Role
from scanflow.domain.things import Station
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.web import create_app
from scanflow.workflow import access
from scanflow.workflow.picking import scans

CLOCK = "X-Rehearsal-Time"
"""The header that carries the time of a call, in seconds since 1970."""

Guards = tuple[tuple[Any, Callable[[Any], bool]], ...]


class Clock:
    """Each thread's time is that of the call it answers."""

    def __init__(self, app: Any) -> None:
        self.app, self.own = app, threading.local()

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        self.own.at = float(environ[f"HTTP_{CLOCK.upper().replace('-', '_')}"])
        answer: Iterable[bytes] = self.app(environ, start_response)
        return answer

    def now(self) -> datetime:
        return datetime.fromtimestamp(getattr(self.own, "at", 0.0), UTC)


def guards() -> list[str]:
    """The names of all guards that can be taken out."""
    lists = {"every station": verdict.ALL, **verdict.GUARDS, "hand-over": verdict.HAND_OVER}
    return [f"{station}: {reason}" for station, guards in lists.items() for reason, _ in guards]


def take_out(name: str) -> None:
    """Let the service run without one guard; LookupError where there is none of that name."""
    if name not in guards():
        raise LookupError(f"There is no guard {name}. There are: {', '.join(guards())}.")
    station, reason = name.split(": ")

    def without(before: Guards) -> Guards:
        return tuple(each for each in before if each[0] != reason)

    if station == "every station":
        verdict.ALL = without(verdict.ALL)
    elif station == "hand-over":
        verdict.HAND_OVER = without(verdict.HAND_OVER)
    else:
        verdict.GUARDS[Station(station)] = without(verdict.GUARDS[Station(station)])
    assert scans.judge is verdict.judge  # which asks for the lists as they are now


def serve(url: str, without: str) -> None:
    if without:
        take_out(without)
    clock = Clock(None)
    shop = Shop(Database(url), clock=clock.now)
    clock.app = create_app(shop)
    server = waitress.create_server(clock, host="127.0.0.1", port=0, threads=4, ident=None)
    people = {"rehearsal": Role.OWNER, "a second person": Role.HELPER}
    tokens = (shop.act(name, partial(access.make_token, name=name, role=role)) for name, role in people.items())
    print(os.getpid(), server.effective_port, *tokens, flush=True)
    server.run()


def main() -> None:
    """What all services need is loaded once; none was started yet where a process splits."""
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    for line in sys.stdin:
        url, _, without = line.strip().partition(" ")
        if os.fork() == 0:
            serve(url, without)


if __name__ == "__main__":
    main()
