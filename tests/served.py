"""Real service processes for tests that race them and kill them, and what must hold in the room afterwards."""

from __future__ import annotations

import json
import os
import re
import signal
import subprocess
import sys
import time
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

from clients import new_token
from racer import Caller, Sent

from scanflow.domain.access import Role
from scanflow.domain.life import LIVE, CardState, ParcelState
from scanflow.domain.things import Line, Parcel, Scan, Slot, Stay
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.ledger import first_break
from scanflow.workflow import stock

HERE = Path(__file__).parent


@dataclass
class Server:
    pid: int
    port: int

    def kill(self) -> None:
        os.kill(self.pid, signal.SIGKILL)
        self.wait()

    def wait(self) -> None:
        """Until the process is gone."""
        end = time.monotonic() + 30
        while self.runs():
            assert time.monotonic() < end, "the service does not end"
            time.sleep(0.001)

    def runs(self) -> bool:
        return Path(f"/proc/{self.pid}").exists()

    def stop(self) -> None:
        if self.runs():
            os.kill(self.pid, signal.SIGTERM)
            self.wait()


@dataclass
class ServiceForks:
    process: subprocess.Popen[str]
    started: list[Server] = field(default_factory=list)

    def start(self, url: str, die: str | None = None, spared: int = 0, port: int = 0) -> Server:
        assert self.process.stdin is not None and self.process.stdout is not None
        wanted = {"database": url, "die": die, "spared": spared, "port": port, "data": os.environ["XDG_DATA_HOME"]}
        self.process.stdin.write(json.dumps(wanted) + "\n")
        self.process.stdin.flush()
        pid = at = 0
        while not (pid and at):
            line = self.process.stdout.readline()
            assert line, "the service does not start"
            if line.startswith("{"):
                pid = json.loads(line)["pid"]
            elif found := re.search(r"Serving at http://127\.0\.0\.1:(\d+)", line):
                at = int(found[1])
        self.started.append(Server(pid, at))
        return self.started[-1]


@cache
def _forks() -> subprocess.Popen[str]:
    """The program that starts services, one for all tests of this process: loading its modules takes seconds. It ends
    with its standard input.
    """
    command = [sys.executable, str(HERE / "fork_services.py")]
    return subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, start_new_session=True)


@contextmanager
def forked_services() -> Iterator[ServiceForks]:
    """Starts services on demand, and ends those that still run."""
    services = ServiceForks(_forks())
    try:
        yield services
    except BaseException:
        _forks.cache_clear()
        os.killpg(services.process.pid, signal.SIGKILL)
        services.process.communicate(timeout=30)
        raise
    for server in services.started:
        server.stop()


def furnish(url: str) -> str:
    """Six slots in two bins, and the token of an owner."""
    shop = Shop(Database(url))
    section = stock.AddSection(code="D", name="Derailleurs", slots_per_bin=3, colour="yellow")
    shop.act("owner", lambda unit: stock.add_section(unit, section))
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=6)))
    token = new_token(shop, "racers", Role.OWNER)
    shop.close()
    return token


def ledger(caller: Caller) -> list[dict[str, Any]]:
    """The whole account, page by page."""
    entries: list[dict[str, Any]] = []
    after: int | None = 0
    while after is not None:
        _, page, _ = caller("GET", f"/api/ledger?after={after}&limit=500")
        entries += page["entries"]
        after = page["next"]
    return entries


def answers_hold(url: str, sent: Iterable[Sent], entries: list[dict[str, Any]]) -> None:
    """Each key had one answer, once; it is kept with that answer, and in the account once."""
    by_key: dict[str, list[Sent]] = defaultdict(list)
    for each in sent:
        if each.status is not None:
            assert each.status < 500, each
            by_key[each.key].append(each)
    for key, told in by_key.items():
        good = [each for each in told if each.status is not None and each.status < 400]
        assert 1 >= len({json.dumps([each.status, each.answer], sort_keys=True) for each in good}), key
        assert 1 >= sum(not each.replayed for each in good), key
    scans = {key: told[0] for key, told in by_key.items() if told[0].path == "/api/scans" and told[0].status == 200}
    database = Database(url)
    with database.reading(Shop(database).clock()) as view:
        kept = {key: scan.answer for key in scans if (scan := view.get(Scan, key))}
        stays = {stay.id: (stay.code, stay.turn) for stay in view.find(Stay)}
    database.close()
    assert scans.keys() == kept.keys()
    for key, told in scans.items():
        answer = json.loads(kept[key])
        answer.pop("replayed")
        assert told.answer == answer, key
    recorded = Counter(entry["data"]["key"] for entry in entries if entry["kind"] == "scan")
    assert {} == {key: recorded[key] for key in scans if recorded[key] != 1}
    put_away = [told[0].answer for told in by_key.values() if told[0].path == "/api/stays" and told[0].status == 201]
    assert len(put_away) == len({(stay["code"], stay["turn"]) for stay in put_away})
    assert {} == {stay["id"]: stay for stay in put_away if stays.get(stay["id"]) != (stay["code"], stay["turn"])}


def nothing_doubled(url: str, entries: list[dict[str, Any]]) -> None:
    """One open stay in a slot, one live line of a stay, each turn given once, one open parcel at a table."""
    assert None is first_break(entries)
    database = Database(url)
    with database.reading(Shop(database).clock()) as view:
        slots, stays, lines, parcels = (view.find(kind) for kind in (Slot, Stay, Line, Parcel))
        seq = view.seq
    database.close()
    assert seq == len(entries)
    opened = Counter(stay.code for stay in stays if stay.open)
    wanted = Counter(line.stay for line in lines if line.state in LIVE)
    tables = Counter(parcel.table for parcel in parcels if parcel.state is ParcelState.OPEN)
    assert set() == {name for counter in (opened, wanted, tables) for name, count in counter.items() if count > 1}
    assert set() == wanted.keys() - {stay.id for stay in stays if stay.open}
    for slot in slots:
        turns = sorted(stay.turn for stay in stays if stay.code == slot.code)
        assert list(range(1, slot.turns + 1)) == turns
        assert (slot.code in opened) is (slot.card is CardState.ON_ITEM)
    began = [(entry["data"]["code"], entry["data"]["turn"]) for entry in entries if entry["kind"] == "put away"]
    assert len(began) == len(set(began))
