"""What a request may take: its time, and its body, which is refused before it is read."""

from __future__ import annotations

import json
import socket
import time
from collections.abc import Iterator
from functools import partial

import pytest
from clients import SQLITE_ONLY, new_token
from flask import Flask
from listening import fronted

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.door import bodies, server
from scanflow.web.door.connections import Door

MB = 1_000_000


@pytest.fixture
def port(app: Flask) -> Iterator[int]:
    """The service, in plain."""
    with fronted(app, app.extensions["hosts"].known, partial(bodies.worth_reading, app)) as (port, _, _):
        yield port


def head(method: str, path: str, *more: str) -> bytes:
    return "\r\n".join([f"{method} {path} HTTP/1.1", "Host: localhost", *more, "", ""]).encode()


def said(port: int, *sent: bytes, pause: float = 0.0) -> bytes:
    """What comes for these pieces until the service ends the connection."""
    got = b""
    with socket.create_connection(("127.0.0.1", port), 10) as connection:
        try:
            for each in sent:
                connection.sendall(each)
                time.sleep(pause)
        except ConnectionError:
            pass  # ended before all was sent
        try:
            while data := connection.recv(65536):
                got += data
        except ConnectionError:
            pass
    return got


def status(answer: bytes) -> int:
    """That of the one answer there is."""
    assert 1 == answer.count(b"HTTP/1.1 "), answer
    return int(answer.split()[1])


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("path", "wanted"), [("/login", 413), ("/api/scans", 401), ("/api/decode", 401), ("/none", 413)]
)
def test_a_strangers_body_is_not_read(port: int, path: str, wanted: int) -> None:
    """The answer comes when the head is there; of 31 MB announced not one byte is needed for it."""
    begun = time.monotonic()
    assert wanted == status(said(port, head("POST", path, f"Content-Length: {31 * MB}")))
    assert time.monotonic() - begun < 5


@SQLITE_ONLY
@pytest.mark.parametrize("path", ["/login", "/api/decode"])
def test_the_answer_arrives_while_the_body_is_sent(port: int, path: str) -> None:
    """Who sends 8 MB that nobody reads sees why it ends, time after time."""
    for _ in range(2):
        assert status(said(port, head("POST", path, f"Content-Length: {8 * MB}"), bytes(8 * MB))) in (401, 413)


@SQLITE_ONLY
def test_chunks_are_counted(port: int) -> None:
    """A body that does not say how long it is ends where it is too long."""
    chunk = b"10000\r\n" + bytes(0x10000) + b"\r\n"
    assert 413 == status(said(port, head("POST", "/login", "Transfer-Encoding: chunked"), *[chunk] * 40))
    fits = said(port, head("POST", "/login", "Transfer-Encoding: chunked", "Connection: close"), b"1\r\na\r\n0\r\n\r\n")
    assert 401 == status(fits)


@SQLITE_ONLY
@pytest.mark.parametrize(
    "more",
    [
        ["Content-Length: 4", "Transfer-Encoding: chunked"],
        ["Content-Length: 4", "Content-Length: 5"],
        ["Content-Length: " + "9" * 5000],
    ],
)
def test_who_says_two_lengths_is_refused(port: int, caplog: pytest.LogCaptureFixture, more: list[str]) -> None:
    """Where it is unclear how long a body is (RFC 9112, 6.1 and 6.3) the connection ends, and the log stays empty."""
    assert 400 == status(said(port, head("POST", "/login", *more), b"0\r\n\r\n", head("GET", "/api/health")))
    assert [] == caplog.records


@SQLITE_ONLY
def test_what_is_refused_is_no_request(port: int) -> None:
    """Bytes of a refused body are never taken for the next request, and nobody is told to go on sending."""
    smuggled = head("GET", "/api/health")
    assert 413 == status(said(port, head("POST", "/login", f"Content-Length: {MB}") + smuggled, smuggled))
    assert 413 == status(said(port, head("POST", "/login", f"Content-Length: {MB}", "Expect: 100-continue")))


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("path", "kind", "length", "wanted"),
    [
        ("/api/decode", "multipart/form-data; boundary=x", 2 * MB, 422),
        ("/api/decode", "multipart/form-data; boundary=x", 34 * MB, 413),
        ("/api/sections", "application/json", MB, 400),
        ("/api/sections", "application/json", 2 * MB, 413),
    ],
)
def test_who_is_known_may_send_more(port: int, shop: Shop, path: str, kind: str, length: int, wanted: int) -> None:
    """A file of 2 MB is read where one is expected, and 1 MB elsewhere; beyond that the head is enough."""
    more = [f"Authorization: Bearer {new_token(shop, 'phone', Role.OWNER)}", f"Content-Type: {kind}"]
    begin, end = b'--x\r\nContent-Disposition: form-data; name="image"; filename="x"\r\n\r\n', b"\r\n--x--\r\n"
    body = [] if wanted == 413 else [begin, bytes(length - len(begin) - len(end)), end]
    sent = head("POST", path, *more, f"Content-Length: {length}", "Connection: close")
    assert wanted == status(said(port, sent, *body))


@SQLITE_ONLY
def test_a_failing_database_is_told(port: int, shop: Shop) -> None:
    """Where nobody can say who calls, the answer says that something failed; the connection isn't just cut."""
    more = [f"Authorization: Bearer {new_token(shop, 'phone', Role.OWNER)}", "Content-Type: image/jpeg"]
    shop.act("owner", lambda unit: unit.connection.exec_driver_sql("ALTER TABLE access RENAME TO away"))
    assert 500 == status(said(port, head("POST", "/api/decode", *more, f"Content-Length: {MB}")))


@SQLITE_ONLY
def test_a_problem_is_told_as_such(port: int) -> None:
    """A program gets problem details also for what is refused before it is read (RFC 9457)."""
    answer = said(port, head("POST", "/api/health", f"Content-Length: {MB}"))
    assert b"application/problem+json" in answer
    assert "too_large" == json.loads(answer.partition(b"\r\n\r\n")[2])["code"]


@pytest.mark.parametrize(
    "sent",
    [
        [b"GET / HTTP/1.1\r\n", *[b"X: y\r\n"] * 200],
        [head("POST", "/", "Content-Length: 5000"), *[b"x"] * 200],
    ],
    ids=["head", "body"],
)
def test_a_request_has_its_time(monkeypatch: pytest.MonkeyPatch, sent: list[bytes]) -> None:
    """Who sends a piece now and then is ended, in the head as in the body."""
    monkeypatch.setattr(server, "HEAD", 0.3)
    begun = time.monotonic()
    with fronted(hello) as (port, _, _):
        assert b"" == said(port, *sent, pause=0.05)
    assert time.monotonic() - begun < 6


def hello(environ: dict[str, object], start_response: object) -> list[bytes]:
    start_response("200 OK", [("Content-Length", "5")])  # type: ignore[operator]
    return [b"hello"]


def test_a_kept_connection_may_rest(monkeypatch: pytest.MonkeyPatch) -> None:
    """Between two requests there is no hurry."""
    monkeypatch.setattr(server, "HEAD", 0.3)
    with fronted(hello) as (port, _, _), socket.create_connection(("127.0.0.1", port), 10) as connection:
        for _ in range(2):
            connection.sendall(head("GET", "/"))
            got = b""
            while not got.endswith(b"hello"):
                data = connection.recv(65536)
                assert data
                got += data
            time.sleep(1.5)


def test_the_inner_doors_are_the_fronts_alone() -> None:
    """Another program of this machine that finds an inner door is ended there."""
    with fronted(hello) as (_, _, ports):
        assert [b""] * 3 == [said(ports[door], head("GET", "/")) for door in Door]
