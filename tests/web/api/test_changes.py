"""The stream that says that something changed: its form, who gets it, how many, and how it ends."""

from __future__ import annotations

import json
import socket
import time
from collections.abc import Callable, Iterator

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of, new_token
from flask import Flask, Response
from flask.testing import FlaskClient
from listening import listening

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.web.api.changes import RETRY, Streams
from scanflow.web.door.visitors import COOKIE

PATIENCE = 20.0
"""Seconds that a test waits on a busy machine."""


def limit(app: Flask, **limits: float) -> None:
    app.extensions["streams"] = Streams(**limits)  # type: ignore[arg-type]


def ledger(client: FlaskClient) -> int:
    return int(client.get("/api/health").get_json()["ledger"])


def event(seq: int) -> bytes:
    """As a browser reads it (HTML Standard, 9.2.6): an id, data, and the empty line that sends it off."""
    return b"id: %d\ndata: %s\n\n" % (seq, json.dumps({"ledger": seq}).encode())


def spoken(events: Iterator[bytes]) -> bytes:
    """The next that is no comment."""
    return next(each for each in events if not each.startswith(b":"))


def test_the_stream_says_how_far_the_ledger_is(app: Flask, client: FlaskClient, calls: Calls) -> None:
    """At once and at each change; nothing else is said, and nothing of it is kept on the way."""
    response = client.get("/api/changes")
    events = response.iter_encoded()
    assert ("text/event-stream", "no-store") == (response.mimetype, response.headers["Cache-Control"])
    assert RETRY == next(events)
    other = client_of(app, app.extensions["scanflow"], Role.PROGRAM)
    assert event(ledger(other)) == spoken(events)
    Calls(other).section("D", 3)
    assert event(ledger(other)) == spoken(events)
    response.close()


@SQLITE_ONLY
def test_silence_is_filled(app: Flask, client: FlaskClient) -> None:
    """Where nothing happens there are comments, which a browser leaves out (HTML Standard, 9.2.5)."""
    limit(app, silence=0.01)
    response = client.get("/api/changes")
    events = response.iter_encoded()
    said = [next(events) for _ in range(20)]
    assert {RETRY, event(ledger(app.test_client())), b":\n\n"} == set(said)
    assert b":\n\n" == said[-1]
    response.close()


@SQLITE_ONLY
def test_there_are_only_so_many(app: Flask, client: FlaskClient) -> None:
    """One too many is told when to ask again; one that ends makes room, and who asks for the head takes none."""
    limit(app, most=2)
    first, second = (client.get("/api/changes") for _ in range(2))
    third = client.get("/api/changes")
    assert (503, "busy", "10") == (third.status_code, third.get_json()["code"], third.headers["Retry-After"])
    first.close()
    assert [200] * 5 == [client.head("/api/changes").status_code for _ in range(5)]
    again = client.get("/api/changes")
    assert [200, 503] == [each.status_code for each in (again, client.get("/api/changes"))]
    second.close()
    again.close()


@SQLITE_ONLY
def test_nobody_takes_all(app: Flask, shop: Shop) -> None:
    """A visitor has its share wherever it calls from, an address has its share whoever calls from there."""
    limit(app, most=6, each=2)
    helper, owner = client_of(app, shop, Role.HELPER), client_of(app, shop, Role.OWNER)

    def asked(client: FlaskClient, address: str) -> Response:
        return client.get("/api/changes", environ_overrides={"REMOTE_ADDR": address})

    held = [asked(helper, "192.0.2.1"), asked(helper, "192.0.2.2")]
    assert [200, 200, 503] == [each.status_code for each in (*held, asked(helper, "192.0.2.3"))]
    held += [asked(owner, "192.0.2.1")]
    assert [200, 503] == [each.status_code for each in (held[-1], asked(owner, "192.0.2.1"))]
    assert 503 == asked(owner, "::ffff:192.0.2.1").status_code
    held[0].close()
    held += [asked(owner, "192.0.2.1")]
    assert 200 == held[-1].status_code
    for each in held:
        each.close()


@SQLITE_ONLY
def test_it_lasts_a_while(app: Flask, client: FlaskClient) -> None:
    """A stream ends by itself; browsers open it again."""
    limit(app, lasts=0.2, silence=0.05)
    begun = time.monotonic()
    assert client.get("/api/changes").data.startswith(RETRY + b"id: ")
    assert 0.2 <= time.monotonic() - begun < PATIENCE


def phone(app: Flask, shop: Shop) -> FlaskClient:
    def pair(secret: str) -> str:
        return shop.act("owner", lambda unit: unit.access.pair(secret, "helper"))

    client = app.test_client()
    secret = pair(shop.act("owner", lambda unit: unit.access.make_pairing_link()))
    client.set_cookie(COOKIE, secret)
    return client


@SQLITE_ONLY
@pytest.mark.parametrize("paired", [phone, lambda app, shop: client_of(app, shop, Role.HELPER)], ids=["phone", "token"])
def test_who_is_revoked_hears_no_more(app: Flask, shop: Shop, paired: Callable[[Flask, Shop], FlaskClient]) -> None:
    """Its open stream ends within seconds, and there is no other for it."""
    visitor = paired(app, shop)
    events = visitor.get("/api/changes").iter_encoded()
    assert RETRY == next(events)
    assert spoken(events).startswith(b"id: ")
    shop.act("owner", lambda unit: unit.access.revoke("helper"))
    begun = time.monotonic()
    list(events)
    assert time.monotonic() - begun < PATIENCE
    assert 401 == visitor.get("/api/changes").status_code


@pytest.fixture
def port(app: Flask, shop: Shop) -> Iterator[int]:
    """A server of two threads."""
    with listening(app, shop, threads=2) as server:
        yield server.effective_port


@SQLITE_ONLY
def test_a_client_that_is_gone_frees_its_thread(app: Flask, shop: Shop, port: int) -> None:
    """Its place is free again as soon as two comments did not arrive."""
    limit(app, most=1, silence=0.05)
    token = new_token(shop, "gone", Role.PROGRAM)
    call = f"GET /api/changes HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer {token}\r\n\r\n".encode()

    def status() -> bytes:
        with socket.create_connection(("127.0.0.1", port), timeout=PATIENCE) as client:
            client.sendall(call)
            return client.recv(4096).split(b" ")[1]

    with socket.create_connection(("127.0.0.1", port), timeout=PATIENCE) as client:
        client.sendall(call)
        assert client.recv(4096).startswith(b"HTTP/1.1 200")
        assert b"503" == status()
    end = time.monotonic() + PATIENCE
    while status() != b"200":
        assert time.monotonic() < end
        time.sleep(0.05)
