"""How many pictures one visitor has in work: few, so that nobody's photos hold up the scans of others."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager

from flask import has_request_context

from scanflow.web.door.visitors import visitor
from scanflow.web.problem import Problem

IN_WORK = 2
"""Pictures of one visitor that are read at once: a station's camera and its photo."""

WAITING = 2
"""Further ones that wait, each on a thread of the server."""


class Turns:
    """Counts the pictures of each visitor, by name, that are in work or wait."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._there: dict[str, tuple[int, threading.Semaphore]] = {}

    @contextmanager
    def turn(self) -> Iterator[None]:
        """Within it one picture of the present visitor may be read. `Problem` 429 where too many wait already.

        Without a request, as in commands, nobody waits.
        """
        if not has_request_context():
            yield
            return
        who = visitor().name
        free = self._come(who)
        try:
            with free:
                yield
        finally:
            self._go(who)

    def _come(self, who: str) -> threading.Semaphore:
        with self._lock:
            there, free = self._there.get(who) or (0, threading.Semaphore(IN_WORK))
            if there >= IN_WORK + WAITING:
                detail = "Pictures of yours are still being read. Send this one again in a moment."
                raise Problem(429, "too_many_requests", detail)
            self._there[who] = (there + 1, free)
            return free

    def _go(self, who: str) -> None:
        with self._lock:
            there, free = self._there.pop(who)
            if there > 1:
                self._there[who] = (there - 1, free)
