"""A stream that says that something changed, and nothing of what: server-sent events (HTML Standard, 9.2).

Each stream holds a thread of the server while it lasts; so they are few, and end.
"""

from __future__ import annotations

import json
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field

from flask import Blueprint, Response, current_app, request

from scanflow.storage.changes import Changes
from scanflow.web.api.contract import STAFF, call
from scanflow.web.problem import Problem
from scanflow.web.visitors import lasting, shop

blueprint = Blueprint("api_changes", __name__)

MOST = 24
"""Streams at once. The server has as many threads more than it needs for everything else."""

RETRY = b"retry: 1000\n\n"
"""Milliseconds until a browser opens a stream again that ended."""

HEARTBEAT = b":\n\n"
"""A comment: what is written to a client that is gone fails, and its thread is free."""


@dataclass(slots=True)
class Streams:
    """How many streams there may be, how long each lasts and how long it may be silent, in seconds.

    After a silence it is also seen whether its visitor was revoked.
    """

    most: int = MOST
    lasts: float = 120.0
    silence: float = 2.0
    room: threading.Semaphore = field(init=False)

    def __post_init__(self) -> None:
        self.room = threading.Semaphore(self.most)


@call(blueprint, "GET", "/api/changes", roles=STAFF, answers={200: "text/event-stream"}, bounded=True)
def stream() -> Response:
    """Streams server-sent events, now and when the ledger has grown: `id` and `{"ledger": n}` are its last `seq`."""
    streams: Streams = current_app.extensions["streams"]
    if request.method == "HEAD":
        return Response(mimetype="text/event-stream")
    if not streams.room.acquire(blocking=False):
        raise Problem(503, "busy", "Too many look on already. Ask again in a while; nothing is missed.")
    response = Response(_events(streams, shop().database.changes, lasting()), mimetype="text/event-stream")
    response.call_on_close(streams.room.release)
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
