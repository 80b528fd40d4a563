"""Prints the time of a verdict over HTTP as a ratio to a bare durable insert: `python tests/bench verdict`.

Both stand behind the same server in its own process and are asked in turns, block by block, over kept connections.
Goals: ratio of medians at most 1.5, of 99th percentiles at most 2; medians at 10^5 slots at most 1.2 of those at 10^3.
`python tests/bench/verdict_bench.py FILE` writes a profile of the server's side instead.
"""

from __future__ import annotations

import json
import secrets
import socket
import subprocess
import sys
from collections import defaultdict
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median, quantiles
from tempfile import TemporaryDirectory
from time import perf_counter

from clients import new_token
from filled_shop import fill

from labels.slot_code import slip_text
from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage.database import Database

SERVER = Path(__file__).with_name("verdict_server.py")
SIZES = (1_000, 100_000)
ROUNDS = 4
ORDERS = {1: 100, 4: 25}
"""Clients: orders that each packs in a round."""
BLOCK = 5
"""Orders whose scans are sent before as many bare inserts are."""

Times = dict[str, list[float]]


class Client:
    """One kept connection; requests as bytes, so that the client's own work is next to none."""

    def __init__(self, port: int, token: str) -> None:
        self.socket = socket.create_connection(("127.0.0.1", port))
        self.socket.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        self.token = token

    def post(self, path: str, body: dict[str, object]) -> tuple[float, dict[str, object]]:
        """Seconds until the whole answer was here, and the answer."""
        sent = json.dumps(body).encode()
        head = f"POST {path} HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer {self.token}\r\n"
        head += f"Content-Type: application/json\r\nContent-Length: {len(sent)}\r\n\r\n"
        request = head.encode() + sent
        begin = perf_counter()
        self.socket.sendall(request)
        answer = b""
        while not _whole(answer):
            answer += self.socket.recv(65536)
        seconds = perf_counter() - begin
        status, content = answer[9:12], answer.partition(b"\r\n\r\n")[2]
        if status != b"200":
            raise RuntimeError(f"{path} answered {answer.decode()}")
        return seconds, json.loads(content)


def _whole(answer: bytes) -> bool:
    head, end, content = answer.partition(b"\r\n\r\n")
    if not end:
        return False
    length = head.lower().partition(b"content-length:")[2].partition(b"\r\n")[0]
    return len(content) >= int(length)


@dataclass(slots=True)
class Packer:
    """Packs orders at a table of its own: slip, cards, one of them twice, and another order's card in between."""

    client: Client
    table: str
    orders: list[tuple[str, list[str]]]
    times: Times = field(default_factory=lambda: defaultdict(list))

    def scans(self) -> Iterator[tuple[str, str]]:
        """Texts of the next block of orders, each with the verdict it must get."""
        for _ in range(min(BLOCK, len(self.orders))):
            slip, cards = self.orders.pop()
            foreign = self.orders[0][1][0] if self.orders else None
            yield from ((slip, "accepted"), (cards[0], "accepted"), (cards[0], "accepted"))
            if foreign:
                yield foreign, "refused"
            yield from ((card, "accepted") for card in cards[1:])

    def block(self) -> int:
        sent = 0
        for text, verdict in self.scans():
            body = {"station": "table", "table": self.table, "key": secrets.token_hex(8), "text": text}
            seconds, answer = self.client.post("/api/scans", body)
            if answer["verdict"] != verdict:
                raise RuntimeError(f"{text} was {answer['verdict']}: {answer['advice']}")
            self.times["scan"].append(seconds)
            sent += 1
        return sent

    def bare(self, count: int) -> None:
        for _ in range(count):
            seconds, _ = self.client.post("/bare/", {"key": secrets.token_hex(8), "text": "D0145", "station": "table"})
            self.times["bare"].append(seconds)


def prepare(folder: Path, slots: int, orders: int) -> tuple[str, list[tuple[str, list[str]]]]:
    """A filled database in the folder; a token, and the slip and cards of each waiting order."""
    shop = Shop(Database(f"sqlite:///{folder}/shop.db"))
    cards = fill(shop.database, slots, orders)
    token = new_token(shop, "bench", Role.PROGRAM)
    shop.close()
    return token, [(slip_text(n), order) for n, order in enumerate(cards, 1)]


@contextmanager
def serving(folder: Path, *more: str) -> Iterator[int]:
    command = [sys.executable, str(SERVER), str(folder), *more]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        yield int(process.stdout.readline())
    finally:
        process.terminate()
        process.wait(20)


def pack(port: int, token: str, orders: list[tuple[str, list[str]]], clients: int, tables: str) -> Times:
    """All clients pack a block at once, then all insert as many rows, until the orders are packed."""
    packers = [Packer(Client(port, token), f"{tables}{n}", orders[n::clients]) for n in range(clients)]
    with ThreadPoolExecutor(clients) as threads:
        while packers[0].orders:
            counts = list(threads.map(Packer.block, packers))
            list(threads.map(Packer.bare, packers, counts))
    times: Times = defaultdict(list)
    for packer in packers:
        packer.client.socket.close()
        for kind, seconds in packer.times.items():
            times[kind] += seconds
    return times


def measure(size: int, times: dict[tuple[int, int], Times]) -> None:
    """One round at one size, by one client and by several, into `times`."""
    with TemporaryDirectory() as folder:
        token, orders = prepare(Path(folder), size, sum(clients * each for clients, each in ORDERS.items()) + BLOCK)
        with serving(Path(folder)) as port:
            pack(port, token, orders[-BLOCK:], 1, "warm")
            del orders[-BLOCK:]
            for clients, each in ORDERS.items():
                share, orders = orders[: clients * each], orders[clients * each :]
                for kind, seconds in pack(port, token, share, clients, f"c{clients}-").items():
                    times[clients, size][kind] += seconds


def main() -> None:
    times: dict[tuple[int, int], Times] = defaultdict(lambda: defaultdict(list))
    for _ in range(ROUNDS):
        for size in SIZES:
            measure(size, times)
    print("clients    slots  scans   median ms  bare ms  ratio   p99 ms  bare ms  ratio")
    ratios = {}
    for (clients, size), both in sorted(times.items()):
        scan, bare = both["scan"], both["bare"]
        ratios[clients, size] = median(scan) / median(bare)
        late, bare_late = quantiles(scan, n=100)[98], quantiles(bare, n=100)[98]
        print(
            f"{clients:7} {size:8,} {len(scan):6} {1000 * median(scan):11.2f} {1000 * median(bare):8.2f}"
            f" {ratios[clients, size]:6.2f} {1000 * late:8.2f} {1000 * bare_late:8.2f} {late / bare_late:6.2f}"
        )
    for clients in ORDERS:
        grown = ratios[clients, SIZES[1]] / ratios[clients, SIZES[0]]
        print(f"by {clients}: ratio of medians at {SIZES[1]:,} slots is {grown:.2f} of that at {SIZES[0]:,}")
    print("goals: ratio of medians 1.5, of p99 2, between the sizes 1.2")


def profile(file: str) -> None:
    with TemporaryDirectory() as folder:
        token, orders = prepare(Path(folder), 1000, 200)
        with serving(Path(folder), file) as port:
            pack(port, token, orders, 1, "profile")


if __name__ == "__main__":
    profile(sys.argv[1])
