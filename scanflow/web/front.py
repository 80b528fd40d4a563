"""HTTPS before the service, in the same process: connections come in here, and go on in plain to its inner doors.

One port takes both kinds: a TLS client begins with byte 22 (RFC 8446, 5.1), an HTTP client with a letter. The service
itself speaks no TLS; it learns from the door by which a call came in how it was made.
"""

from __future__ import annotations

import asyncio
import contextlib
import logging
import socket
import ssl
import threading
from collections.abc import Callable, Iterable, Mapping
from enum import Enum, auto
from typing import Any

from werkzeug.wrappers import Request, Response

from scanflow.web.addresses import is_loopback

TLS_HANDSHAKE = 22
SILENCE = 30.0
"""Seconds that a client may take to begin, and then for its handshake."""

MOST = 200
"""Connections at once; later ones wait."""

RENEWAL = 3600.0
"""Seconds from one look at the certificate to the next."""

PUBLIC = frozenset({"/trust", "/trust/authority.crt", "/static/look.css", "/static/icon.svg"})
"""What the network gets without TLS: how to come to trust it. Nothing of it is secret."""

FAREWELL = 2.0
"""Seconds for what is on its way when a connection ends."""

Stream = tuple[asyncio.StreamReader, asyncio.StreamWriter]
log = logging.getLogger(__name__)


class Door(Enum):
    TLS = auto()
    HERE = auto()
    """In plain, from this machine: nobody can listen between."""
    OPEN = auto()
    """In plain, from the network."""


def inner_doors() -> dict[Door, socket.socket]:
    """A listening socket for each door, that this machine alone can reach."""
    return {door: socket.create_server(("127.0.0.1", 0)) for door in Door}


class Doors:
    """The service, told of each call by which door (`ports`: the inner port of each) it came in.

    Without TLS the network is only told how to get it: a page leads on, a program's call is refused, so that a token
    that went over the network in plain is noticed. There is no HSTS: it would lock out who does not trust the
    authority yet, for good.
    """

    def __init__(self, app: Callable[..., Any], ports: Mapping[Door, int]) -> None:
        self._app = app
        self._doors = {str(port): door for door, port in ports.items()}

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        door = self._doors[environ["SERVER_PORT"]]
        if door is Door.TLS:
            environ["wsgi.url_scheme"] = "https"
        if door is Door.OPEN and environ["PATH_INFO"] not in PUBLIC:
            return _to_https(Request(environ))(environ, start_response)
        return self._app(environ, start_response)


def _to_https(request: Request) -> Response:
    if request.method not in ("GET", "HEAD") or request.path.startswith("/api"):
        return Response("Call this service by https://.\n", 403, mimetype="text/plain")
    response = Response("Go on by https://.\n", 307, mimetype="text/plain")
    response.headers["Location"] = request.url.replace("http://", "https://", 1)
    response.headers["Cache-Control"] = "no-store"
    return response


class Front:
    """Takes connections at `listener` and carries them to `doors`, by a thread of its own, until it is closed.

    `context` gives the TLS context of the moment; it is asked again each `renewal` seconds. A client that dawdles in
    its handshake keeps nobody waiting: servers that shake hands in the thread that accepts fail there.
    """

    def __init__(
        self,
        listener: socket.socket,
        doors: Mapping[Door, tuple[str, int]],
        context: Callable[[], ssl.SSLContext],
        renewal: float = RENEWAL,
    ) -> None:
        self._listener, self._doors, self._renewal = listener, doors, renewal
        self._make_context, self._context = context, context()
        listener.setblocking(False)
        self._loop = asyncio.SelectorEventLoop()  # Windows' other kind can't wait for a socket without reading it
        self._stopped = asyncio.Event()
        self._thread = threading.Thread(target=self._run, name="front", daemon=True)
        self._thread.start()

    def close(self) -> None:
        """End all connections."""
        with contextlib.suppress(RuntimeError):  # closed already
            self._loop.call_soon_threadsafe(self._stopped.set)
        self._thread.join(10)

    def _run(self) -> None:
        asyncio.set_event_loop(self._loop)
        with contextlib.closing(self._listener), asyncio.Runner(loop_factory=lambda: self._loop) as runner:
            runner.run(self._until_stopped())

    async def _until_stopped(self) -> None:
        work = [asyncio.create_task(each) for each in (self._accept(), self._renew())]
        await self._stopped.wait()
        for task in work:
            task.cancel()

    async def _renew(self) -> None:
        while True:
            await asyncio.sleep(self._renewal)
            try:
                self._context = self._make_context()
            except Exception:
                log.warning("The certificate can't be renewed; the one before stays.", exc_info=True)

    async def _accept(self) -> None:
        room, carried = asyncio.Semaphore(MOST), set()
        while True:
            await room.acquire()
            try:
                client, peer = await self._loop.sock_accept(self._listener)
            except OSError:  # too many open files, for one
                room.release()
                await asyncio.sleep(0.1)
                continue
            task = asyncio.create_task(self._carry(client, str(peer[0])))
            carried.add(task)
            task.add_done_callback(lambda done: (carried.discard(done), room.release()))

    async def _carry(self, client: socket.socket, peer: str) -> None:
        """One connection, from its first byte to its last."""
        with contextlib.suppress(OSError, TimeoutError):
            first = await self._first(client)
            door = Door.TLS if first == TLS_HANDSHAKE else Door.HERE if is_loopback(f"[{peer}]") else Door.OPEN
            outer = await self._stream(client, self._context if door is Door.TLS else None)
            try:
                await _join(outer, await asyncio.open_connection(*self._doors[door]))
            finally:
                await _end(outer[1])

    async def _first(self, client: socket.socket) -> int:
        """The first byte of a connection, which stays where it is. Without one the connection is closed."""
        client.setblocking(False)
        ready = self._loop.create_future()
        self._loop.add_reader(client, lambda: ready.done() or ready.set_result(None))
        try:
            async with asyncio.timeout(SILENCE):
                await ready
            first = client.recv(1, socket.MSG_PEEK)
            if not first:
                raise ConnectionError
        except BaseException:
            self._loop.remove_reader(client)
            client.close()
            raise
        self._loop.remove_reader(client)
        return first[0]

    async def _stream(self, client: socket.socket, context: ssl.SSLContext | None) -> Stream:
        """From here on the socket is the stream's, which closes it."""
        reader = asyncio.StreamReader()
        protocol = asyncio.StreamReaderProtocol(reader)
        times = {"ssl_handshake_timeout": SILENCE, "ssl_shutdown_timeout": FAREWELL} if context else {}
        transport, _ = await self._loop.connect_accepted_socket(lambda: protocol, client, ssl=context, **times)
        return reader, asyncio.StreamWriter(transport, protocol, reader, self._loop)


async def _join(one: Stream, other: Stream) -> None:
    """Carry bytes both ways until either side ends; what it had sent arrives."""
    ways = [asyncio.create_task(_pump(one[0], other[1])), asyncio.create_task(_pump(other[0], one[1]))]
    try:
        await asyncio.wait(ways, return_when=asyncio.FIRST_COMPLETED)
    finally:
        for way in ways:
            way.cancel()
        await asyncio.gather(*ways, return_exceptions=True)
        await _end(other[1])


async def _pump(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
    while data := await reader.read(65536):
        writer.write(data)
        await writer.drain()


async def _end(writer: asyncio.StreamWriter) -> None:
    """Close a stream once all of it is on its way, or soon anyhow."""
    writer.close()
    try:
        async with asyncio.timeout(FAREWELL):
            await writer.wait_closed()
    except (OSError, TimeoutError):
        with contextlib.suppress(
            AttributeError
        ):  # a TLS transport of Python 3.11 whose peer is gone has forgotten its own
            writer.transport.abort()
