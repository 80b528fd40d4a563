"""A stream that says that something changed, and nothing of what: server-sent events (HTML Standard, 9.2).

Each stream holds a thread of the server while it lasts; so they are few, and end.
"""

from __future__ import annotations

import json
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import partial

from flask import Blueprint, Response, current_app, request

from scanflow.storage.writing.changes import Changes
from scanflow.web.api.contract import STAFF, call
from scanflow.web.door.addresses import network
from scanflow.web.door.visitors import lasting, shop, visitor
from scanflow.web.problem import Problem

blueprint = Blueprint("api_changes", __name__)

MOST = 24
"""Streams at once. The server has as many threads more than it needs for everything else."""

EACH = 12
"""Streams at once of one visitor, and of one address: nobody alone takes all."""

RETRY = b"retry: 1000\n\n"
"""Milliseconds until a browser opens a stream again that ended."""

HEARTBEAT = b":\n\n"
"""A comment: what is written to a client that is gone fails, and its thread is free."""


Holder = tuple[str, str]
ALL: Holder = ("all", "")


@dataclass(slots=True)
class Streams:
    """How many streams there may be, how long each lasts and how long it may be silent, in seconds.

    After a silence it is also seen whether its visitor was revoked.
    """

    most: int = MOST
    lasts: float = 120.0
    silence: float = 2.0
    each: int = EACH
    _held: Counter[Holder] = field(default_factory=Counter, init=False)
    _lock: threading.Lock = field(default_factory=threading.Lock, init=False)

    def take(self, *holders: Holder) -> Callable[[], None] | None:
        """Room for one more of these, or None; what is given ends it."""
        with self._lock:
            held = [self._held[each] for each in holders]
            if self._held[ALL] >= self.most or max(held) >= self.each:
                return None
            self._held.update((ALL, *holders))
        return partial(self._leave, holders)

    def _leave(self, holders: tuple[Holder, ...]) -> None:
        with self._lock:
            self._held -= Counter((ALL, *holders))


@call(blueprint, "GET", "/api/changes", STAFF, {200: "text/event-stream"}, bounded=True)
def stream() -> Response:
    """Streams server-sent events, now and when the ledger has grown: `id` and `{"ledger": n}` are its last `seq`."""
    streams: Streams = current_app.extensions["streams"]
    if request.method == "HEAD":
        return Response(mimetype="text/event-stream")
    leave = streams.take(("visitor", visitor().name), ("address", network(request.remote_addr or "")))
    if leave is None:
        raise Problem(503, "busy", "Too many pages are watching for changes. Try again shortly; nothing is lost.")
    response = Response(_events(streams, shop().database.changes, lasting()), mimetype="text/event-stream")
    response.call_on_close(leave)
    return response


def _events(streams: Streams, changes: Changes, welcome: Callable[[], bool]) -> Iterator[bytes]:
    yield RETRY
    told, ends = None, time.monotonic() + streams.lasts
    with changes.listening():
        while not changes.closed and time.monotonic() < ends and welcome():
            seq = changes.after(told, streams.silence)
            yield HEARTBEAT if seq in (None, told) else event(seq)
            told = seq


def event(seq: int | None) -> bytes:
    return f"id: {seq}\ndata: {json.dumps({'ledger': seq})}\n\n".encode()
