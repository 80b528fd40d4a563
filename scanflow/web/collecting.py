"""Work on a large file without long stops: a full collection of its many objects would keep all threads waiting."""

from __future__ import annotations

import gc
from collections.abc import Callable
from functools import wraps
from threading import Lock
from typing import ParamSpec, TypeVar

P = ParamSpec("P")
R = TypeVar("R")
_lock = Lock()
_at_work = 0


def uncollected(work: Callable[P, R]) -> Callable[P, R]:
    """The same work, and no collection of cycles until it is done; of several at a time, until the last one is."""

    @wraps(work)
    def around(*args: P.args, **kwargs: P.kwargs) -> R:
        _count(1)
        try:
            return work(*args, **kwargs)
        finally:
            _count(-1)

    return around


def _count(more: int) -> None:
    global _at_work
    with _lock:
        _at_work += more
        if _at_work:
            gc.disable()
        else:
            gc.enable()
