"""Where a service can be reached, and what this machine is called."""

from __future__ import annotations

import ipaddress
import socket

import pytest

from scanflow.web.door import addresses
from scanflow.web.door.addresses import Listening


@pytest.mark.parametrize(
    ("netloc", "wanted"),
    [
        *[(each, True) for each in ("127.0.0.1", "127.1.2.3:80", "localhost:8765", "LOCALHOST", "a.localhost")],
        *[(each, True) for each in ("[::1]", "[::1]:80", "[::ffff:127.0.0.1]")],
        *[(each, False) for each in ("192.168.1.7:8765", "bench.local", "[fd00::7]:80", "localhost.example", "")],
    ],
)
def test_loopback(netloc: str, wanted: bool) -> None:
    """Loopback addresses and localhost's names (RFC 6761, 6.3), with or without a port."""
    assert wanted is addresses.is_loopback(netloc)


@pytest.mark.parametrize("host", ["127.0.0.1", "localhost", "::1"])
def test_no_phone_reaches_a_service_that_listens_at_home(host: str) -> None:
    """Nothing is told to phones then."""
    assert [] == Listening(host).urls()


@pytest.mark.parametrize(
    ("listening", "wanted"),
    [
        (Listening("192.168.1.7", 8765), "http://192.168.1.7:8765"),
        (Listening("192.168.1.7", 80), "http://192.168.1.7"),
        (Listening("192.168.1.7", 80, https=True), "https://192.168.1.7:80"),
        (Listening("bench.local", 443, https=True), "https://bench.local"),
        (Listening("fd00::7", 8765, https=True), "https://[fd00::7]:8765"),
    ],
)
def test_one_address(listening: Listening, wanted: str) -> None:
    """A service that listens at one address is there, with its port where it isn't the usual one."""
    assert [wanted] == listening.urls()


@pytest.mark.parametrize(
    ("listening", "wanted"),
    [
        (Listening(), "http://127.0.0.1:8765"),
        (Listening("0.0.0.0", 80, https=True), "http://127.0.0.1:80"),
        (Listening("::", 8765), "http://127.0.0.1:8765"),
        (Listening("192.168.1.7", 8765, https=True), "https://192.168.1.7:8765"),
        (Listening("::1", 8765), "http://[::1]:8765"),
    ],
)
def test_on_this_machine(listening: Listening, wanted: str) -> None:
    """A browser beside the service reaches it by loopback in plain, else where it listens."""
    assert (wanted, f"{wanted}/set-up/secret") == (listening.here(), listening.set_up("secret"))


def test_all_addresses() -> None:
    """A service that listens everywhere is at each of the machine's own IPv4 addresses; none is loopback."""
    own = [each for each in addresses.own_addresses() if ":" not in each]
    assert [f"http://{each}:8765" for each in own] == Listening("0.0.0.0").urls()
    assert [] == [each for each in addresses.own_addresses() if ipaddress.ip_address(each).is_loopback]


def test_own_names() -> None:
    """The machine's own name comes first, that name in the local domain, localhost and each address once."""
    names = addresses.own_names()
    name = socket.gethostname().partition(".")[0].lower()
    assert [name, f"{name}.local"] == names[:2]
    assert {"localhost", "127.0.0.1", "::1", *addresses.own_addresses()} <= set(names)
    assert len(names) == len(set(names))
