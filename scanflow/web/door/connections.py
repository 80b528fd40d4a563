"""What stands between the network and the service, in the same process: connections come in here, and go on in plain to
the service's inner doors.

One port takes both kinds: a TLS client begins with byte 22 (RFC 8446, 5.1), an HTTP client with a letter. The service
itself speaks no TLS; it learns from the door by which a call came in how it was made, and from `Callers` by whom.

Here it is bounded how many connections there are, of each address and in all, and how long they may take to begin; what
a request may take is bounded in `server.py`, where it is parsed.
"""

from __future__ import annotations

import asyncio
import contextlib
import logging
import socket
import ssl
import threading
from collections import defaultdict
from collections.abc import AsyncIterator, Callable, Mapping
from dataclasses import dataclass
from enum import Enum, auto

from scanflow.web.door.addresses import is_loopback, network

TLS_HANDSHAKE = 22
SILENCE = 10.0
"""Seconds that a client may take to begin, and then for its handshake."""

STALL = 60.0
"""Seconds that a client may leave what it is sent untaken."""

MOST = 200
"""Connections at once."""

EACH = 32
"""Connections at once of one address. A browser opens six, and a stream for each page that is open."""

FILES = 3, 100
"""Open files that a connection takes, and those that all else takes."""

RENEWAL = 3600.0
"""Seconds from one check of the certificate to the next."""

FAREWELL = 2.0
"""Seconds for what is on its way when a connection ends."""

PAUSE = 0.2
"""Seconds of silence after which a client whose connection ends is taken to send no more."""

Stream = tuple[asyncio.StreamReader, asyncio.StreamWriter]
try:
    import resource
except ImportError:  # Windows, which has no such limit
    resource = None  # type: ignore[assignment]

log = logging.getLogger(__name__)


class Door(Enum):
    """By which way a connection came."""

    TLS = auto()
    HERE = auto()
    """In plain, from this machine, where nobody can listen between; or from anywhere, if the service has no TLS."""
    OPEN = auto()
    """In plain, from the network, while there is TLS."""


@dataclass(frozen=True, slots=True)
class Caller:
    """Whose connection it is: the address of the other side (`peer`), and that of this machine that it came to."""

    peer: str
    here: str


Callers = dict[int, Caller]
"""Who is meant by a connection to an inner door, by its own port. No header could say it without being forged."""


def inner_doors() -> dict[Door, socket.socket]:
    """A listening socket for each door, that this machine alone can reach."""
    return {door: socket.create_server(("127.0.0.1", 0)) for door in Door}


class Front:
    """Takes connections at `listener` and carries them to `doors`, by a thread of its own, until it is closed.

    `context` gives the TLS context of the moment, None for no TLS; it is asked again each `renewal` seconds. A client
    that dawdles in its handshake keeps nobody waiting: servers that shake hands in the thread that accepts fail there.
    `callers` holds who is meant by each connection to a door, for as long as it lasts.
    """

    def __init__(
        self,
        listener: socket.socket,
        doors: Mapping[Door, tuple[str, int]],
        context: Callable[[], ssl.SSLContext] | None,
        callers: Callers,
        renewal: float = RENEWAL,
    ) -> None:
        self._listener, self._doors, self._callers, self._renewal = listener, doors, callers, renewal
        self._make_context, self._context = context, context() if context else None
        self._crowd = Crowd(min(MOST, room_for()))
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
        while self._make_context is not None:
            await asyncio.sleep(self._renewal)
            try:
                self._context = await asyncio.to_thread(self._make_context)  # it asks for names, which may take long
            except Exception:
                log.warning("The certificate can't be renewed; the one before stays.", exc_info=True)

    async def _accept(self) -> None:
        while True:
            try:
                client, address = await self._loop.sock_accept(self._listener)
                client.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)  # asyncio leaves it out for such sockets
                caller = Caller(str(address[0]), str(client.getsockname()[0]))
            except OSError:  # too many open files, for one
                await asyncio.sleep(0.1)
                continue
            if self._crowd.room(caller.peer):
                self._crowd.add(caller.peer, asyncio.create_task(self._carry(client, caller)))
            else:
                client.close()

    async def _carry(self, client: socket.socket, caller: Caller) -> None:
        """One connection, from its first byte to its last."""
        with contextlib.suppress(OSError, TimeoutError):
            door = self._door(await self._first(client), caller)
            outer = await self._stream(client, self._context if door is Door.TLS else None)
            try:
                async with self._inner(door, caller) as inner:
                    await _join(outer, inner)
                await _linger(outer)
            finally:
                await _end(outer[1])

    def _door(self, first: int, caller: Caller) -> Door:
        if self._context is None:
            return Door.HERE
        return Door.TLS if first == TLS_HANDSHAKE else Door.HERE if is_loopback(f"[{caller.peer}]") else Door.OPEN

    @contextlib.asynccontextmanager
    async def _inner(self, door: Door, caller: Caller) -> AsyncIterator[Stream]:
        """A connection to a door, which knows before it begins who is meant."""
        inner = socket.socket()
        inner.setblocking(False)
        inner.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        inner.bind(("127.0.0.1", 0))
        port = inner.getsockname()[1]
        self._callers[port] = caller
        try:
            await self._loop.sock_connect(inner, self._doors[door])
            stream = await asyncio.open_connection(sock=inner)
            try:
                yield stream
            finally:
                await _end(stream[1])
        finally:
            inner.close()
            del self._callers[port]

    async def _first(self, client: socket.socket) -> int:
        """The first byte of a connection, which stays where it is. Without one the connection is closed."""
        client.setblocking(False)
        ready = self._loop.create_future()

        def came() -> None:
            if not ready.done():
                ready.set_result(None)

        self._loop.add_reader(client, came)
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


class Crowd:
    """The connections of each address, in IPv6 of each network (`addresses.network`). Where all places are taken, the
    address that has most makes room for one that has fewer: its oldest connection ends.
    """

    def __init__(self, most: int = MOST, each: int = EACH) -> None:
        self.most, self.each = most, each
        self._of: defaultdict[str, dict[asyncio.Task[None], None]] = defaultdict(dict)

    def room(self, address: str) -> bool:
        """Whether one more may come from this address."""
        own = len(self._of.get(network(address), ()))
        if own >= self.each:
            return False
        if sum(map(len, self._of.values())) < self.most:
            return True
        most = max(self._of, key=lambda each: len(self._of[each]))
        if len(self._of[most]) <= own:
            return False
        oldest = next(iter(self._of[most]))
        self._leave(most, oldest)
        return oldest.cancel()

    def add(self, address: str, task: asyncio.Task[None]) -> None:
        who = network(address)
        self._of[who][task] = None
        task.add_done_callback(lambda done: self._leave(who, done))

    def _leave(self, address: str, task: asyncio.Task[None]) -> None:
        self._of[address].pop(task, None)
        if not self._of[address]:
            del self._of[address]


def room_for() -> int:
    """Connections for which this process may open files, eight at least."""
    if resource is None:
        return MOST
    per, rest = FILES
    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    wanted = per * MOST + rest
    if soft < wanted:
        with contextlib.suppress(ValueError, OSError):
            resource.setrlimit(resource.RLIMIT_NOFILE, (min(wanted, hard), hard))
        soft = resource.getrlimit(resource.RLIMIT_NOFILE)[0]
    return max(8, (soft - rest) // per)


async def _join(outer: Stream, inner: Stream) -> None:
    """Carry bytes both ways until either side ends; what the service had said arrives."""
    ways = [asyncio.create_task(_pump(outer[0], inner[1])), asyncio.create_task(_pump(inner[0], outer[1], STALL))]
    try:
        await asyncio.wait(ways, return_when=asyncio.FIRST_COMPLETED)
    finally:
        for way in ways:
            way.cancel()
        await asyncio.gather(*ways, return_exceptions=True)


async def _pump(reader: asyncio.StreamReader, writer: asyncio.StreamWriter, patience: float | None = None) -> None:
    while data := await reader.read(65536):
        writer.write(data)
        async with asyncio.timeout(patience):
            await writer.drain()


async def _linger(outer: Stream) -> None:
    """Let a client that still sends see its answer: closing while there is something unread would take it away."""
    reader, writer = outer
    if writer.can_write_eof():
        writer.write_eof()
    async with asyncio.timeout(FAREWELL):
        while await asyncio.wait_for(reader.read(65536), PAUSE):
            await asyncio.sleep(PAUSE)  # it has nothing to gain by hurry


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
