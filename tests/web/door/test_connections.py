"""One port takes HTTPS from the network, and plain calls from this machine alone."""

from __future__ import annotations

import asyncio
import http.client
import io
import json
import os
import resource
import socket
import ssl
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Any

import pytest
from cryptography.hazmat.primitives.serialization import Encoding
from listening import fronted

from scanflow.web.door import connections
from scanflow.web.door.certificates import Home
from scanflow.web.door.connections import Crowd, Door, Front
from scanflow.web.door.server import Doors


def echo(environ: dict[str, Any], start_response: Any) -> list[bytes]:
    """An application that says how it was called, and how long the body was."""
    length = len(environ["wsgi.input"].read())
    told = {"scheme": environ["wsgi.url_scheme"], "host": environ["HTTP_HOST"], "length": length}
    told |= {"peer": environ.get("REMOTE_ADDR"), "here": environ["scanflow.here"]}
    start_response("200 OK", [("Content-Type", "application/json")])
    return [json.dumps(told).encode()]


def known(name: str, here: str | None) -> bool:
    return not name.startswith("evil")


@dataclass
class Served:
    port: int
    home: Home
    names: list[str]
    front: Front

    def client(self) -> ssl.SSLContext:
        """The trust of a phone that has the authority."""
        authority = self.home.authority(datetime.now(UTC)).certificate
        return ssl.create_default_context(cadata=authority.public_bytes(Encoding.PEM).decode())

    def https(self) -> http.client.HTTPSConnection:
        return http.client.HTTPSConnection("127.0.0.1", self.port, timeout=10, context=self.client())


@pytest.fixture
def served(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> Iterator[Served]:
    names = ["bench", "127.0.0.1"]
    home = Home(tmp_path / "https", lambda: names)
    with fronted(echo, known, context=partial(context, home), renewal=0.05) as (port, front, _):
        yield Served(port, home, names, front)
    assert [] == [record for record in caplog.records if record.name in ("asyncio", "scanflow.web.door.connections")]


def told(connection: http.client.HTTPConnection, body: bytes = b"") -> Any:
    connection.request("POST" if body else "GET", "/", body or None)
    return json.loads(connection.getresponse().read())


def test_tls_and_plain_on_one_port(served: Served) -> None:
    """A TLS client is answered by HTTPS and the application knows; a plain one of this machine is answered in plain."""
    with closing(served.https()) as connection:
        wanted = {"scheme": "https", "host": f"127.0.0.1:{served.port}", "length": 0}
        assert wanted | {"peer": "127.0.0.1", "here": "127.0.0.1"} == told(connection)
    with closing(http.client.HTTPConnection("127.0.0.1", served.port, timeout=10)) as connection:
        assert "http" == told(connection)["scheme"]


def test_many_calls_of_any_size_on_one_connection(served: Served) -> None:
    """A connection is kept, and a body of 20 MB arrives whole."""
    with closing(served.https()) as connection:
        told(connection)
        used = connection.sock
        assert [1, 20_000_000, 3] == [told(connection, b"x" * size)["length"] for size in (1, 20_000_000, 3)]
        assert used is connection.sock


def test_a_silent_client_keeps_nobody_waiting(served: Served) -> None:
    """While some say nothing, or stop in their handshake, the next is served."""
    idle = [socket.create_connection(("127.0.0.1", served.port)) for _ in range(20)]
    for each in idle[10:]:
        each.sendall(b"\x16\x03\x01")
    with closing(served.https()) as connection:
        assert "https" == told(connection)["scheme"]
    for each in idle:
        each.close()


@pytest.mark.parametrize("sent", [b"\x16\x03\x01\x00\x05hello", b"\x00\xff\xfe", b"GET / HTTP/1.1\r\nHo"])
def test_nonsense_ends_only_its_connection(served: Served, sent: bytes) -> None:
    """What is neither TLS nor HTTP is ended, and the next is served."""
    with socket.create_connection(("127.0.0.1", served.port)) as client:
        client.sendall(sent)
    with closing(served.https()) as connection:
        assert "https" == told(connection)["scheme"]


def test_many_clients_that_come_and_go(served: Served) -> None:
    """Of three hundred connections, eight at a time, some of them dropped at once, each that waits is answered."""

    def use(number: int) -> str:
        if number % 3 == 0:
            with socket.create_connection(("127.0.0.1", served.port)) as client:
                client.sendall(b"\x16\x03\x01"[: number % 4])
            return "https"
        with closing(served.https()) as connection:
            return str(told(connection)["scheme"])

    with ThreadPoolExecutor(8) as threads:
        assert {"https"} == set(threads.map(use, range(300)))


@pytest.mark.filterwarnings("ignore:ssl.TLSVersion:DeprecationWarning")
def test_old_protocols_are_refused(served: Served) -> None:
    """TLS 1.2 is spoken, 1.1 is not (RFC 8996)."""

    def spoken(version: ssl.TLSVersion) -> str | None:
        client = served.client()
        client.minimum_version, client.maximum_version = ssl.TLSVersion.MINIMUM_SUPPORTED, version
        client.set_ciphers("ALL:@SECLEVEL=0")
        with socket.create_connection(("127.0.0.1", served.port)) as connection:
            try:
                return client.wrap_socket(connection, server_hostname="bench").version()
            except (ssl.SSLError, ConnectionError):
                return None

    assert ["TLSv1.2", None] == [spoken(version) for version in (ssl.TLSVersion.TLSv1_2, ssl.TLSVersion.TLSv1_1)]


def test_renews_while_it_runs(served: Served) -> None:
    """When the machine's addresses change, the next connections get a certificate for them, without a restart."""
    served.names.append("bench.local")
    end = time.monotonic() + 10
    while True:
        with socket.create_connection(("127.0.0.1", served.port)) as client:
            try:
                served.client().wrap_socket(client, server_hostname="bench.local").close()
                break
            except ssl.SSLCertVerificationError:
                assert time.monotonic() < end, "the certificate is not renewed"


def test_a_slow_renewal_keeps_nobody_waiting(tmp_path: Path) -> None:
    """While this machine's names are asked for, which takes long where no name server answers, calls are answered."""
    home, asked, answered = Home(tmp_path / "https", lambda: ["bench"]), threading.Event(), threading.Event()

    def slow() -> ssl.SSLContext:
        if not first:
            asked.set()
            answered.wait(20)
        first.clear()
        return context(home)

    first = [True]
    with fronted(echo, known, context=slow, renewal=0.01) as (port, _, _):
        try:
            assert asked.wait(10)
            with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=5)) as connection:
                assert "http" == told(connection)["scheme"]
        finally:
            answered.set()


def test_closing_ends_connections(served: Served) -> None:
    """After closing nobody is answered, not on an open connection either."""
    with closing(served.https()) as connection:
        told(connection)
        served.front.close()
        with pytest.raises((OSError, http.client.HTTPException)):
            told(connection)
    with pytest.raises(OSError):
        socket.create_connection(("127.0.0.1", served.port), timeout=2)


def call(door: Door, method: str, path: str, host: str = "192.168.1.7:8765") -> tuple[str, dict[str, str]]:
    """Status and headers of a call that came in by a door."""
    answered: list[Any] = []
    environ = {
        **{"REQUEST_METHOD": method, "PATH_INFO": path.partition("?")[0], "QUERY_STRING": path.partition("?")[2]},
        **{
            "SERVER_PORT": str(door.value),
            "SERVER_NAME": "x",
            "HTTP_HOST": host,
            "REMOTE_PORT": "7",
            "REMOTE_ADDR": "192.168.1.9",
        },
        **{"wsgi.url_scheme": "http", "wsgi.input": io.BytesIO()},
    }
    app = Doors(echo, {each: each.value for each in Door}, {}, known, lambda environ: 0)
    list(app(environ, lambda status, headers, *_: answered.extend((status, dict(headers)))))
    return answered[0][:3], answered[1]


@pytest.mark.parametrize("path", ["/trust", "/trust/authority.crt", "/static/style.css", "/static/icon.svg"])
def test_the_network_gets_in_plain_how_to_trust(path: str) -> None:
    """What a phone needs before it can speak TLS, and nothing else."""
    assert "200" == call(Door.OPEN, "GET", path)[0]


def test_the_network_is_led_to_https() -> None:
    """A page goes on by HTTPS at the same address, for now and not for ever: no HSTS, no permanent redirect."""
    status, headers = call(Door.OPEN, "GET", "/orders?state=held")
    assert ("307", "https://192.168.1.7:8765/orders?state=held") == (status, headers["Location"])
    assert "Strict-Transport-Security" not in headers


@pytest.mark.parametrize(("method", "path"), [("GET", "/api/slots"), ("POST", "/api/scans"), ("POST", "/login")])
def test_the_network_is_refused_in_plain(method: str, path: str) -> None:
    """A call that would carry a token or a password is not led on, so that it is noticed."""
    assert "403" == call(Door.OPEN, method, path)[0]
    assert "200" == call(Door.TLS, method, path)[0] == call(Door.HERE, method, path)[0]


@pytest.mark.parametrize("host", ["evil.example", "localhost:1@evil.example", "[::1]evil.example:3"])
def test_the_network_is_led_to_no_other_name(host: str) -> None:
    """Who was led here by another name, or by what is none, is not led on by it."""
    assert "421" == call(Door.OPEN, "GET", "/orders", host)[0]


def asked(port: int, source: str) -> Any:
    """What the application says was asked in plain from this address."""
    with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=10, source_address=(source, 0))) as connection:
        connection.request("GET", "/", headers={"X-Forwarded-For": "192.0.2.9", "Forwarded": "for=192.0.2.9"})
        return json.loads(connection.getresponse().read())


def test_the_peer_is_told(served: Served) -> None:
    """The application knows who calls in plain and by TLS, and no header says otherwise."""
    assert ("127.0.0.9", "http") == (asked(served.port, "127.0.0.9")["peer"], asked(served.port, "127.0.0.9")["scheme"])
    with closing(socket.create_connection(("127.0.0.1", served.port), 10, ("127.0.0.8", 0))) as plain:
        secure = served.client().wrap_socket(plain, server_hostname="bench")
        secure.sendall(b"GET / HTTP/1.1\r\nHost: bench\r\nConnection: close\r\n\r\n")
        assert "127.0.0.8" == json.loads(all_of(secure).partition(b"\r\n\r\n")[2])["peer"]


def all_of(connection: socket.socket) -> bytes:
    """What comes until the other side ends."""
    got = b""
    with suppress(ConnectionError):
        while data := connection.recv(65536):
            got += data
    return got


def test_one_address_cannot_take_all() -> None:
    """Of forty connections of one address those beyond its share are ended at once, and another address is served."""
    with fronted(echo) as (port, _, _):
        held = [socket.create_connection(("127.0.0.1", port), 10, ("127.0.0.2", 0)) for _ in range(40)]
        assert [b""] * 8 == [all_of(each) for each in held[32:]]
        assert "127.0.0.3" == asked(port, "127.0.0.3")["peer"]
        for each in held:
            each.close()


def test_one_network_cannot_take_all() -> None:
    """All addresses of one IPv6 network have one share: whoever is in it takes as many of them as it likes."""

    async def rooms() -> list[bool]:
        crowd, found = Crowd(most=10, each=2), []
        for address in ("fd00::1", "fd00::2", "fd00::3", "fd00:0:0:1::1", "192.168.1.7"):
            found.append(crowd.room(address))
            crowd.add(address, asyncio.create_task(asyncio.sleep(0)))
        return found

    with ThreadPoolExecutor(1) as alone:  # a browser's test of the same worker may leave a loop in this thread
        assert [True, True, False, True, True] == alone.submit(lambda: asyncio.run(rooms())).result()


def test_the_full_house_has_room_for_one_more(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where many addresses hold all places, one that holds none is served; who holds most gives one up."""
    monkeypatch.setattr(connections, "MOST", 8)
    with fronted(echo) as (port, _, _):
        sources = [f"127.0.0.{number}" for number in (2, 2, 2, 2, 3, 3, 4, 4)]
        held = [socket.create_connection(("127.0.0.1", port), 10, (each, 0)) for each in sources]
        assert "127.0.0.5" == asked(port, "127.0.0.5")["peer"]
        assert b"" == all_of(held[0])
        for each in held:
            each.close()


def context(home: Home) -> ssl.SSLContext:
    return home.context(datetime.now(UTC))


@pytest.mark.parametrize("begun", [b"", b"\x16\x03\x01"], ids=["nothing", "half a handshake"])
def test_who_does_not_begin_is_ended(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, begun: bytes) -> None:
    """A connection has its time for the first byte, and for the handshake."""
    monkeypatch.setattr(connections, "SILENCE", 0.3)
    home = Home(tmp_path / "https", lambda: ["bench"])
    with (
        fronted(echo, context=partial(context, home)) as (port, _, _),
        socket.create_connection(("127.0.0.1", port), 10) as idle,
    ):
        idle.sendall(begun)
        assert b"" == all_of(idle)


def test_who_takes_no_answer_is_ended(monkeypatch: pytest.MonkeyPatch) -> None:
    """Who asks for much and reads nothing holds a place for a while only, and gets what was on its way by then."""
    monkeypatch.setattr(connections, "STALL", 0.3)
    monkeypatch.setattr(connections, "FAREWELL", 0.3)
    much = 40_000_000

    def generous(environ: dict[str, Any], start_response: Any) -> list[bytes]:
        start_response("200 OK", [("Content-Length", str(much))])
        return [bytes(much)]

    with fronted(generous) as (port, at_front, _), socket.create_connection(("127.0.0.1", port), 10) as client:
        client.sendall(b"GET / HTTP/1.1\r\nHost: localhost\r\n\r\n")
        end = time.monotonic() + 10
        while not at_front._callers:
            assert time.monotonic() < end
            time.sleep(0.05)
        while at_front._callers:
            assert time.monotonic() < end, "it is not ended"
            time.sleep(0.05)
        assert 0 < len(all_of(client)) < much


def test_few_open_files() -> None:
    """Where the system allows few open files, the service takes fewer connections than those are enough for."""
    if (child := os.fork()) == 0:
        resource.setrlimit(resource.RLIMIT_NOFILE, (160, 160))
        os._exit(connections.room_for())
    assert 20 == os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def test_an_answer_does_not_wait(served: Served) -> None:
    """Sixty answers over a kept connection: none waits for an acknowledgement that the other side delays (40 ms). It
    delays none of the first; a busy machine is late with some, but not with all of the last.
    """
    with closing(http.client.HTTPConnection("127.0.0.1", served.port, timeout=10)) as connection:
        took = []
        for _ in range(60):
            begun = time.monotonic()
            told(connection)
            took.append(time.monotonic() - begun)
    assert 0.035 > sorted(took[20:])[4]
