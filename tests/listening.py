"""A server in a thread of this process, which is ended from outside."""

from __future__ import annotations

import socket
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import waitress
from waitress import wasyncore
from waitress.trigger import trigger

from scanflow.shop import Shop
from scanflow.web.api.changes import MOST
from scanflow.web.inner import Doors, create_server


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
def behind(doors: Doors, sockets: list[socket.socket], threads: int = 4) -> Iterator[Any]:
    """The server of an application behind the front, at its inner doors."""
    server = create_server(doors, sockets, threads)
    with _running(server, server.map, None):
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
