"""A program's calls of a running service; and its scans, each sent until it is answered."""

from __future__ import annotations

import json
import ssl
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import urllib3

_DEAD = 12.0
"""Seconds after which a silent connection is given up, and pauses between tries: as `scanning/queue.js` has them."""
_FIRST_PAUSE, _LAST_PAUSE = 1.0, 10.0

NO_NETWORK = "Waiting for the network."
ILL = "The service is in trouble; trying again."


class NoAnswer(Exception):
    """No answer came, or none that can be read."""


@dataclass(frozen=True, slots=True)
class ServiceAnswer:
    """An answer: its status, and its body as JSON."""

    status: int
    body: Any

    @property
    def detail(self) -> str:
        """What a problem says for a person."""
        told = self.body.get("detail") if isinstance(self.body, dict) else None
        return str(told or f"The service answered with status {self.status}.")


class ServiceClient:
    """The service at an address like `http://127.0.0.1:8765`, called with a token, which goes nowhere else."""

    def __init__(self, url: str, token: str) -> None:
        self.url = url.rstrip("/")
        head = {"Authorization": f"Bearer {token}", "Content-Type": "application/json"}
        trust = ssl.create_default_context()
        self._pool = urllib3.PoolManager(headers=head, retries=False, timeout=_DEAD, ssl_context=trust)

    def call(self, method: str, path: str, body: Any = None) -> ServiceAnswer:
        """One call with a JSON body, or none. NoAnswer."""
        status, data = self._open(method, path, None if body is None else json.dumps(body).encode())
        try:
            return ServiceAnswer(status, json.loads(data) if data else None)
        except ValueError as error:
            raise NoAnswer("The answer is no JSON.") from error

    def picture(self, path: str) -> bytes:
        """A picture, empty where there is none. NoAnswer."""
        status, data = self._open("GET", path, None)
        return data if status == 200 else b""

    def _open(self, method: str, path: str, body: bytes | None) -> tuple[int, bytes]:
        try:
            answer = self._pool.request(method, self.url + path, body=body, redirect=False)
        except urllib3.exceptions.HTTPError as error:
            raise NoAnswer(str(error)) from error
        return answer.status, answer.data


def ask(
    service: ServiceClient, scan: dict[str, Any], waits: Callable[[str], None], stop: threading.Event
) -> ServiceAnswer | None:
    """The answer to a scan, which is sent with the same key until one comes; None where `stop` came first.

    `waits` is told why there is none yet, and "" when there is.
    """
    pause = _FIRST_PAUSE
    while not stop.is_set():
        try:
            reply = service.call("POST", "/api/scans", scan)
        except NoAnswer:
            why = NO_NETWORK
        else:
            if reply.status < 500 and reply.status != 429 and reply.body is not None:
                waits("")
                return reply
            why = reply.detail if reply.status == 503 else ILL
        waits(f"Not recorded yet: {scan['text']}. {why}")
        stop.wait(pause)
        pause = min(2 * pause, _LAST_PAUSE)
    return None
