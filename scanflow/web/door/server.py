"""The server behind the front: waitress, which waits for nobody for long and reads no body that is refused anyhow.

Heads and bodies are parsed here alone, so that there are no two opinions where a request ends.
"""

from __future__ import annotations

import contextlib
import select
import socket
import time
from collections.abc import Callable, Iterable, Mapping
from typing import Any

import waitress
from waitress.channel import HTTPChannel
from waitress.parser import ParsingError
from waitress.server import TcpWSGIServer
from werkzeug.wrappers import Request, Response

from scanflow.web.door import bodies
from scanflow.web.door.connections import MOST, Caller, Door
from scanflow.web.door.hosts import HERE, well_formed
from scanflow.web.door.spool import Spooled

HEAD = 10.0
"""Seconds for a request's head, from its first byte, and for the first of a connection from the connection's start."""

RATE = 8192
"""Bytes a second that a body comes at least, on the whole, after as long as a head may take."""

IDLE = 120
"""Seconds that a connection is kept without a request, or with an answer that nobody takes."""


PUBLIC = frozenset({"/trust", "/trust/authority.crt", "/static/style.css", "/static/icon.svg"})
"""What the network gets in plain while there is TLS: how to come to trust it. Nothing of it is secret."""


class Doors:
    """The service, told of each call by which door (`ports`: the inner port of each) it came in, and from whom.

    Without TLS the network is only told how to get it: a page leads on, a program's call is refused, so that a token
    that went over the network in plain is noticed. There is no HSTS: it would lock out who does not trust the
    authority yet, for good.

    `known` says whether the service has this name, `worth_reading` how many bytes of a request's body are read.
    """

    def __init__(
        self,
        app: Callable[..., Iterable[bytes]],
        ports: Mapping[Door, int],
        callers: Mapping[int, Caller],
        known: Callable[[str, str | None], bool],
        worth_reading: Callable[[dict[str, Any]], int],
    ) -> None:
        self._app, self.callers, self._known, self._worth_reading = app, callers, known, worth_reading
        self._doors = {str(port): door for door, port in ports.items()}

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        if self._enter(environ) is not Door.OPEN or environ["PATH_INFO"] in PUBLIC:
            return self._app(environ, start_response)
        called = environ.get("HTTP_HOST", "")
        if not (well_formed(called) and self._known(called, environ[HERE])):
            return Response("This service has another name.\n", 421, mimetype="text/plain")(environ, start_response)
        return _to_https(Request(environ))(environ, start_response)

    def worth_reading(self, environ: dict[str, Any]) -> int:
        """Bytes of its body that are read of a request of which the head is here."""
        return bodies.OPEN if self._enter(environ) is Door.OPEN else self._worth_reading(environ)

    def _enter(self, environ: dict[str, Any]) -> Door:
        door, caller = self._doors[environ["SERVER_PORT"]], self.callers.get(int(environ["REMOTE_PORT"]))
        environ[HERE] = caller.here if caller else None
        if door is Door.TLS:
            environ["wsgi.url_scheme"] = "https"
        return door


def _to_https(request: Request) -> Response:
    if request.method not in ("GET", "HEAD") or request.path.startswith("/api"):
        return Response("Call this service by https://.\n", 403, mimetype="text/plain")
    response = Response("Go on by https://.\n", 307, mimetype="text/plain")
    response.headers["Location"] = request.url.replace("http://", "https://", 1)
    response.headers["Cache-Control"] = "no-store"
    return response


def create_server(doors: Doors, listeners: list[socket.socket], threads: int) -> Any:
    """The server of an application at its inner doors. A connection that the front did not make is ended."""
    channels: dict[int, Any] = {}
    server = waitress.create_server(
        doors,
        map=channels,
        sockets=listeners,
        threads=threads,
        ident=None,
        connection_limit=2 * MOST,
        channel_timeout=IDLE,
        cleanup_interval=5,
        recv_bytes=65536,
        max_request_header_size=16384,
        max_request_body_size=bodies.FILE + 1,
        asyncore_use_poll=hasattr(select, "poll"),
        log_socket_errors=False,
    )
    for each in channels.values():
        if isinstance(each, TcpWSGIServer):
            each.channel_class, each.doors = ServedChannel, doors
    return server


class ServedChannel(HTTPChannel):  # type: ignore[misc]
    """A connection, whose other end is who called the front."""

    def __init__(self, server: Any, sock: socket.socket, addr: tuple[str, int], adj: Any, map: Any = None) -> None:
        super().__init__(server, sock, addr, adj, map=map)
        self._begun, self._used = time.monotonic(), False
        self.refused = self._told = False
        caller = server.doors.callers.get(addr[1])
        if caller is None:
            self.will_close = True
        else:
            self.addr = (caller.peer, addr[1])

    def parser_class(self, adj: Any) -> Parser:
        return Parser(adj, self)

    def received(self, data: bytes) -> bool:
        if self._told:
            return False
        if self.request is None and self._used:
            self._begun = time.monotonic()
        self._used = True
        return bool(super().received(data))

    def handle_close(self) -> None:
        """Of a request that was refused unread, the front must have its answer first: closing while something is
        unread would take that away. So this side ends, and what still comes is dropped until the front has closed.
        """
        if self.refused and not self._told:
            self._told = True
            with contextlib.suppress(OSError):
                self.socket.shutdown(socket.SHUT_WR)
                self.will_close = False
                return
        super().handle_close()

    def readable(self) -> bool:
        if not self.requests and self._late(time.monotonic() - self._begun):
            self.will_close = True
        return bool(super().readable())

    def _late(self, took: float) -> bool:
        request = self.request
        if request is None:
            return not self._used and took > HEAD
        return bool(took > HEAD + (request.body_bytes_received / RATE if request.headers_finished else 0))


class Parser(Spooled):
    """Reads a request. Of one whose body is too large it takes the head alone: the application refuses it, told by its
    Content-Length, and the connection ends.
    """

    def __init__(self, adj: Any, channel: ServedChannel) -> None:
        super().__init__(adj)
        self._channel, self._most, self._refused = channel, bodies.OPEN, False

    def received(self, data: bytes) -> int:
        taken = super().received(data)
        if self.chunked and self.body_bytes_received > self._most and not self._refused:
            self._refuse(self.body_bytes_received)
        return len(data) if self._refused else int(taken)

    def parse_header(self, head: bytes) -> None:
        try:
            super().parse_header(head)
        except ValueError as error:
            raise ParsingError("Content-Length has more digits than any number here.") from error
        if self.chunked and "CONTENT_LENGTH" in self.headers:  # RFC 9112, 6.1: it may be meant to be taken in two ways
            raise ParsingError("The head says in two ways how long the body is. Say it in one.")
        if not self.chunked and self.content_length <= bodies.OPEN:
            return
        self._most = self._channel.server.doors.worth_reading(self._environ())
        if self.content_length > self._most:
            self._refuse(self.content_length)

    def _refuse(self, length: int) -> None:
        if self.body_rcv is not None:
            self.body_rcv.getbuf().close()
            self.body_rcv = None
        self._refused = self.completed = self._channel.refused = True
        self.error, self.expect_continue, self.content_length = None, False, 0
        self.headers |= {"CONTENT_LENGTH": str(length), "CONNECTION": "close"}

    def _environ(self) -> dict[str, Any]:
        """As much of the call's environment as says what it is and who calls."""
        kept = ("AUTHORIZATION", "COOKIE", "HOST")
        return {
            "REQUEST_METHOD": self.command,
            "SCRIPT_NAME": "",
            "PATH_INFO": "/" + self.path.lstrip("/"),
            "QUERY_STRING": "",
            "SERVER_NAME": "localhost",
            "SERVER_PORT": str(self._channel.server.effective_port),
            "REMOTE_PORT": str(self._channel.addr[1]),
            "wsgi.url_scheme": "http",
            **{f"HTTP_{name}": self.headers[name] for name in kept if name in self.headers},
        }
