"""A server in a thread of this process, which is ended from outside."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import waitress
from waitress import wasyncore
from waitress.trigger import trigger

from scanflow.shop import Shop
from scanflow.web.api.changes import MOST


@contextmanager
def listening(app: Callable[..., Any], shop: Shop | None = None, **given: Any) -> Iterator[Any]:
    """The server of an application; `given` goes to waitress in place of a free port and threads for all streams.

    It ends in an order: the streams of the shop, the calls under way, then the sockets, which the thread that waits at
    them closes itself.
    """
    channels: dict[int, Any] = {}
    options = {"threads": 4 + MOST, **(given if "sockets" in given else {"host": "127.0.0.1", "port": 0, **given})}
    server = waitress.create_server(app, map=channels, **options)
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
