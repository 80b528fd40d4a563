"""By which names the service may be called. A page of elsewhere whose name was made to point here (DNS rebinding) would
otherwise count as one of ours.
"""

from __future__ import annotations

import re
import threading
import time
from collections.abc import Callable, Iterable
from urllib.parse import urlsplit

from flask import Flask, current_app, request

from scanflow.web.door.addresses import host_of, is_loopback
from scanflow.web.problem import Problem

AGAIN = 5.0
"""Seconds from one check for new names and addresses of this machine to the next."""

HERE = "scanflow.here"
"""In a call's environment: the address of this machine that it came to, where that is known."""

NETLOC = re.compile(r"([A-Za-z0-9_.-]+|\[[0-9A-Fa-f:.]+\])(:[0-9]{0,5})?")
"""A host with or without a port (RFC 3986, 3.2), of the characters that names in use have."""


class Hosts:
    """The `names` and addresses of this machine, asked for again when none fits: they change while the service runs."""

    def __init__(self, names: Callable[[], Iterable[str]], clock: Callable[[], float] = time.monotonic) -> None:
        self._ask, self._clock, self._lock = names, clock, threading.Lock()
        self._look()

    def _look(self) -> None:
        self._asked = self._clock()
        self._names = {_bare(each) for each in self._ask()}

    def known(self, netloc: str, here: str | None = None) -> bool:
        """Whether a call for this `host[:port]` is meant for this service; `here` is the address that it came to."""
        host = _bare(host_of(netloc))
        if is_loopback(netloc) or host == here or self._named(host):
            return True
        if self._clock() - self._asked < AGAIN or not self._lock.acquire(blocking=False):
            return False
        try:
            self._look()
        finally:
            self._lock.release()
        return self._named(host)

    def _named(self, host: str) -> bool:
        """A certificate's name may begin with a star in place of one word (RFC 6125, 6.4.3)."""
        return host in self._names or f"*.{host.partition('.')[2]}" in self._names


def _bare(name: str) -> str:
    return name.lower().rstrip(".")


def well_formed(netloc: str) -> bool:
    """Whether this is a host with or without a port."""
    return NETLOC.fullmatch(netloc) is not None


def _check() -> None:
    """`Problem` 400 for a Host or Origin that is none, 421 (RFC 9110, 15.5.20) for another's name."""
    host = request.headers.get("Host", "")
    if not well_formed(host):
        raise Problem(400, "malformed", "The header Host names no host. Call this service by its name or address.")
    try:
        urlsplit(request.headers.get("Origin", ""))
    except ValueError:
        raise Problem(
            400, "malformed", "The header Origin is no origin. Leave it out, or send scheme and host."
        ) from None
    hosts: Hosts = current_app.extensions["hosts"]
    if not hosts.known(host, request.environ.get(HERE)):
        name = host_of(host)
        raise Problem(
            421,
            "misdirected",
            f"This service does not know the name {name}. Call it by this machine's own name or address, "
            f"or start it with --name {name}.",
        )


def register(app: Flask) -> None:
    """Ask every request for a name that is ours."""
    app.before_request(_check)
