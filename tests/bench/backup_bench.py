"""Prints what backups cost: `python tests/bench backup`, minutes and about 20 GB in the temporary folder.

A shop of 10,000 things with 8 GB of pictures is backed up whole, then again after a day's work: seconds, and seconds
of processor of all its processes. Then scans over HTTP are timed, block by block, with a backup beside them and
without. Goals: 5 s of either for the day's work; median of a scan beside a backup at most 1.2 of that without.
"""

from __future__ import annotations

import hashlib
import os
import resource
import threading
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from clients import new_token
from filled_shop import fill
from sqlalchemy import insert, update
from verdict_bench import Client, Packer, serving

from labels.slot_code import slip_text
from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.things import Item, Photo
from scanflow.shop import Shop
from scanflow.storage import backups, tables
from scanflow.storage.database import Database

THINGS, PICTURE, THUMB = 10_000, 800_000, 8_000
ORDERS = 2_400
DAY = 40
"""Things that come in on a day, each with a picture."""


def photo() -> Photo:
    picture, thumb = os.urandom(PICTURE), os.urandom(THUMB)
    return Photo(hashlib.sha256(picture).hexdigest(), picture, thumb)


def add_pictures(database: Database, count: int) -> None:
    for first in range(0, count, 100):
        with database.engine.begin() as connection:
            for number in range(first, min(first + 100, count)):
                made = photo()
                row = {"hash": made.hash, "picture": made.picture, "thumb": made.thumb}
                connection.execute(insert(tables.photos), row)
                named = update(tables.items).where(tables.items.c.n == THINGS + number + 1)
                connection.execute(named.values(photo=made.hash))


def work_a_day(database: Database, day: int) -> None:
    for number in range(DAY):
        with database.writing(datetime.now(UTC), "bench") as unit:
            made = photo()
            unit.add(made)
            unit.add(Item(f"d{day}-{number}", "Front wheel", photo=made.hash))
            unit.record(events.Changed())


def cost(work: Callable[[], object]) -> tuple[float, float]:
    """Seconds, and seconds of processor of this process and those it waited for."""
    before, begin = _processor(), perf_counter()
    work()
    return perf_counter() - begin, _processor() - before


def _processor() -> float:
    used = [resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)]
    return sum(each.ru_utime + each.ru_stime for each in used)


def scans_beside(database: Database, folder: Path, token: str, orders: list[tuple[str, list[str]]]) -> None:
    """Orders are packed for as long as a backup takes, then as many without one, until all are packed."""
    times: dict[bool, list[float]] = {True: [], False: []}
    taken = 0
    with serving(folder) as port:
        packer = Packer(Client(port, token), "main", orders)
        while packer.orders:
            work_a_day(database, taken + 10)
            backup = threading.Thread(target=lambda: backups.take(database, folder / "place", datetime.now(UTC)))
            backup.start()
            blocks = 0
            while backup.is_alive() and packer.orders:
                packer.block()
                blocks += 1
            times[True] += packer.times.pop("scan")
            backup.join()
            taken += 1
            for _ in range(blocks):
                packer.block()
            times[False] += packer.times.pop("scan", [])
    with_it, without = median(times[True]), median(times[False])
    print(f"{len(times[True])} scans beside {taken} backups {1000 * with_it:.2f} ms, ", end="")
    print(f"{len(times[False])} without {1000 * without:.2f} ms: {with_it / without:.2f}")


def main() -> None:
    with TemporaryDirectory() as name:
        folder = Path(name)
        shop = Shop(Database(f"sqlite:///{folder}/shop.db"))
        cards = fill(shop.database, THINGS, ORDERS)
        token = new_token(shop, "bench", Role.PROGRAM)
        add_pictures(shop.database, THINGS)
        place = folder / "place"
        begin = perf_counter()
        for day, what in enumerate(("first", "after a day's work", "after another")):
            wall, used = cost(lambda: backups.take(shop.database, place, datetime.now(UTC)))
            size = backups.listed(place)[0].size / 1e6
            print(f"{what}: {wall:.1f} s, processor {used:.1f} s, rows {size:.0f} MB", flush=True)
            work_a_day(shop.database, day)
        scans_beside(shop.database, folder, token, [(slip_text(n), each) for n, each in enumerate(cards, 1)])
        print(f"goals: 5 s and 5 s, 1.2; all took {perf_counter() - begin:.0f} s")
        shop.close()


if __name__ == "__main__":
    main()
