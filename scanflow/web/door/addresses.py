"""Where this machine can be reached, and who is near: its names and addresses in the home network."""

from __future__ import annotations

import socket
from dataclasses import dataclass
from ipaddress import ip_address, ip_network

PROBES = ("192.0.2.1", "10.255.255.254", "172.31.255.254", "192.168.255.254", "2001:db8::1", "fdff::1")
"""One address in each kind of network: documentation's (RFC 5737, RFC 3849) by way of the default route, private ones
by way of a route of their own. Nothing is sent there.
"""

EXPOSED = (
    "This connection is not encrypted: everybody in this network can read the password. "
    "Start the service with --https instead."
)


def is_loopback(host: str) -> bool:
    """Whether a host, as in an address's `host[:port]`, is this machine to itself alone."""
    host = host_of(host)
    if host == "localhost" or host.endswith(".localhost"):
        return True
    try:
        address = ip_address(host)
    except ValueError:
        return False
    return (getattr(address, "ipv4_mapped", None) or address).is_loopback


def host_of(netloc: str) -> str:
    """`host[:port]` or `[address][:port]` without its port."""
    return netloc[1:].partition("]")[0] if netloc.startswith("[") else netloc.partition(":")[0].lower()


def network(address: str) -> str:
    """What counts as one caller: an IPv4 address, or the /64 network of an IPv6 one (RFC 4291, 2.5.4), where a device
    takes as many addresses as it likes.
    """
    try:
        found = ip_address(address.partition("%")[0])
    except ValueError:
        return address
    found = getattr(found, "ipv4_mapped", None) or found
    return str(found) if found.version == 4 or found.is_loopback else str(ip_network((found, 64), strict=False))


def own_addresses() -> list[str]:
    """This machine's addresses that others can reach, the default route's first."""
    found = dict.fromkeys(each for probe in PROBES if (each := _towards(probe)))
    try:
        named = socket.getaddrinfo(socket.gethostname(), None, type=socket.SOCK_STREAM)
    except OSError:
        named = []
    found |= dict.fromkeys(str(each[4][0]) for each in named)
    return [each for each in found if "%" not in each and not is_loopback(f"[{each}]")]


def _towards(probe: str) -> str | None:
    family = socket.AF_INET6 if ":" in probe else socket.AF_INET
    try:
        with socket.socket(family, socket.SOCK_DGRAM) as probing:
            probing.connect((probe, 9))
            return str(probing.getsockname()[0])
    except OSError:
        return None


def own_names() -> list[str]:
    """What this machine may be called: its own name first, then that name in the local domain, and its addresses."""
    name = socket.gethostname().partition(".")[0].lower() or "localhost"
    names = [name, f"{name}.local", socket.getfqdn().lower(), "localhost", *own_addresses(), "127.0.0.1", "::1"]
    return list(dict.fromkeys(names))


def _bracketed(host: str) -> str:
    return f"[{host}]" if ":" in host else host


@dataclass(frozen=True, slots=True)
class Listening:
    """Where the service listens: the `host` and `port` it was told, and whether it speaks HTTPS there."""

    host: str = "127.0.0.1"
    port: int = 8765
    https: bool = False

    def here(self) -> str:
        """The service's address for a browser on this machine; by itself HTTPS answers that in plain, too."""
        host = "127.0.0.1" if self.host in ("0.0.0.0", "::", "") else self.host
        at_home = is_loopback(f"[{host}]")
        return self.url(host) if self.https and not at_home else f"http://{_bracketed(host)}:{self.port}"

    def set_up(self, secret: str) -> str:
        """The link that sets the owner's password, for a browser on this machine."""
        return f"{self.here()}/set-up/{secret}"

    def urls(self) -> list[str]:
        """Addresses at which other devices reach the service, the likeliest first; none when it listens at home."""
        if is_loopback(f"[{self.host}]"):
            return []
        everywhere = self.host in ("0.0.0.0", "::", "")
        hosts = own_addresses() if everywhere else [self.host]
        if self.host == "0.0.0.0":
            hosts = [each for each in hosts if ":" not in each]
        return [self.url(each) for each in hosts]

    @property
    def exposed(self) -> bool:
        """Whether what is sent to it can be read by others in the network."""
        return not self.https and not is_loopback(f"[{self.host}]")

    def names(self) -> list[str]:
        """What it may be called from elsewhere: nothing when it listens at home."""
        return [] if is_loopback(f"[{self.host}]") else [self.host, *own_names()]

    def url(self, host: str) -> str:
        """The service's address by way of this host."""
        scheme, usual = ("https", 443) if self.https else ("http", 80)
        return f"{scheme}://{_bracketed(host)}" + (f":{self.port}" if self.port != usual else "")
