"""By which names the service is called: its own, and no other's that was made to point here."""

from __future__ import annotations

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient

from scanflow.shop import Shop
from scanflow.web import create_app
from scanflow.web.door.addresses import Listening
from scanflow.web.door.hosts import AGAIN, Hosts


@pytest.mark.parametrize(
    ("netloc", "wanted"),
    [
        *[
            (each, True)
            for each in ("bench", "BENCH:8765", "bench.local.", "192.168.1.7:80", "[fd00::7]:80", "a.shop.example")
        ],
        *[(each, True) for each in ("a.shop.example", "localhost", "127.0.0.1:8765", "[::1]", "10.0.0.9")],
        *[(each, False) for each in ("evil.example", "bench.evil.example", "192.168.1.8", "0.0.0.0", "")],
        *[(each, False) for each in ("a.b.shop.example", "shop.example")],
    ],
)
def test_names(netloc: str, wanted: bool) -> None:
    """The names and addresses that were given, this machine's own loopback, and the address that the call came to."""
    hosts = Hosts(lambda: ["bench", "bench.local", "192.168.1.7", "fd00::7", "*.shop.example"])
    assert wanted is hosts.known(netloc, "10.0.0.9")


def test_a_new_address_is_found() -> None:
    """When a machine gets another address, it is looked for at the next call by it, and not at each."""
    now, asked, names = [0.0], [0], ["192.168.1.7"]

    def ask() -> list[str]:
        asked[0] += 1
        return names

    hosts = Hosts(ask, lambda: now[0])
    names.append("192.168.1.8")
    assert [False] * 3 == [hosts.known("192.168.1.8") for _ in range(3)]
    now[0] += AGAIN
    assert (True, False, 2) == (hosts.known("192.168.1.8"), hosts.known("evil.example"), asked[0])


@SQLITE_ONLY
def test_another_name_gets_nothing(anonymous: FlaskClient) -> None:
    """A page whose name was made to point here is told so, whatever it asks for."""
    for path in ("/", "/login", "/api/health", "/api/slots", "/static/style.css", "/trust", "/none"):
        answer = anonymous.get(path, base_url="http://evil.example:8765")
        assert (421, True) == (answer.status_code, "evil.example" in answer.text), path


@SQLITE_ONLY
@pytest.mark.parametrize("path", ["/api/health", "/login"])
def test_no_host(anonymous: FlaskClient, path: str) -> None:
    """A Host that is none is the caller's mistake."""
    hosts = ("[", "a b", "a@b", "http://x", "localhost:80:80", "")
    assert [400] * 6 == [anonymous.get(path, headers={"Host": host}).status_code for host in hosts]


@SQLITE_ONLY
def test_no_origin(anonymous: FlaskClient) -> None:
    """An Origin that is none is the caller's mistake."""
    for path in ("/api/scans", "/login", "/orders/load"):
        assert 400 == anonymous.post(path, headers={"Origin": "http://["}).status_code, path


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("listening", "called", "wanted"),
    [
        (Listening(), "shop.example", 200),
        (Listening(), "192.168.1.7", 421),
        (Listening("192.168.1.7", https=True), "192.168.1.7", 200),
    ],
)
def test_names_of_a_service(shop: Shop, listening: Listening, called: str, wanted: int) -> None:
    """It is called by the names that it is given and, unless it listens at home, by where it listens."""
    client = create_app(shop, listening, names=["shop.example"]).test_client()
    assert wanted == client.get("/api/health", base_url=f"http://{called}").status_code
