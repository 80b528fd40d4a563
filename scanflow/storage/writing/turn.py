"""The turn to write, within this process: given in the order in which it was asked for."""

from __future__ import annotations

import threading
from collections import deque


class Turn:
    """A lock that is handed on to whoever waits longest; `threading.Lock` often goes to who had it last."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._taken = False
        self._waiting: deque[threading.Event] = deque()

    def take(self, seconds: float) -> bool:
        """Whether it came within these seconds."""
        with self._lock:
            if not self._taken:
                self._taken = True
                return True
            mine = threading.Event()
            self._waiting.append(mine)
        if mine.wait(seconds):
            return True
        with self._lock:
            if mine.is_set():
                return True
            self._waiting.remove(mine)
            return False

    def give(self) -> None:
        with self._lock:
            if self._waiting:
                self._waiting.popleft().set()
            else:
                self._taken = False
