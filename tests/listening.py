"""A server in a thread of this process, which is ended from outside."""

from __future__ import annotations

import socket
import ssl
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import waitress
from waitress import wasyncore
from waitress.trigger import trigger

from scanflow.shop import Shop
from scanflow.web.api.changes import MOST
from scanflow.web.door import bodies
from scanflow.web.door.connections import Callers, Door, Front, inner_doors
from scanflow.web.door.server import Doors, create_server


@contextmanager
def listening(app: Callable[..., Any], shop: Shop | None = None, **given: Any) -> Iterator[Any]:
    """The server of an application; `given` goes to waitress in place of a free port and threads for all streams.

    It ends in an order: the streams of the shop, the calls under way, then the sockets, which the thread that waits at
    them closes itself.
    """
    options = {"threads": 4 + MOST, **(given if "sockets" in given else {"host": "127.0.0.1", "port": 0, **given})}
    channels: dict[int, Any] = {}
    with _running(waitress.create_server(app, map=channels, **options), channels, shop) as server:
        yield server


@contextmanager
def _running(server: Any, channels: dict[int, Any], shop: Shop | None) -> Iterator[Any]:
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    try:
        yield server
    finally:
        if shop is not None:
            shop.database.changes.close()
        server.task_dispatcher.shutdown()
        bell = next(each for each in channels.values() if isinstance(each, trigger))
        bell.pull_trigger(lambda: wasyncore.close_all(channels))
        thread.join(timeout=5)


@contextmanager
def fronted(
    app: Callable[..., Any],
    known: Callable[[str, str | None], bool] = lambda name, here: True,
    worth_reading: Callable[[dict[str, Any]], int] = lambda environ: bodies.FILE,
    context: Callable[[], ssl.SSLContext] | None = None,
    renewal: float = 3600.0,
) -> Iterator[tuple[int, Front, dict[Door, int]]]:
    """An application behind the front, as `scanflow serve` has it: its port, the front, and its inner doors' ports."""
    sockets, callers = inner_doors(), Callers()
    inner = {door: each.getsockname() for door, each in sockets.items()}
    ports = {door: port for door, (_, port) in inner.items()}
    server = create_server(Doors(app, ports, callers, known, worth_reading), list(sockets.values()), 4)
    with _running(server, server.map, None):
        listener = socket.create_server(("127.0.0.1", 0), backlog=1024)
        port = listener.getsockname()[1]
        front = Front(listener, inner, context, callers, renewal)
        yield port, front, ports
        front.close()
