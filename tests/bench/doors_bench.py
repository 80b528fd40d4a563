"""Prints how long a scan takes while others in the network misbehave: `python tests/bench doors`.

A real service is asked from one loopback address, and attacked from others (127.0.0.2 and on), in plain and by HTTPS:
connections that dawdle, bodies of 50 MB, wrong passwords, and all of it at once. Goals: the 99th percentile of a scan
at most 3 times that of the idle service, asked in turns with it, and the owner can still sign in. The attackers are of
low priority: in truth they have processors of their own. What they cost the service stands under "CPU".
"""

from __future__ import annotations

import contextlib
import json
import os
import re
import secrets
import socket
import ssl
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import partial
from itertools import cycle
from pathlib import Path
from statistics import median, quantiles
from tempfile import TemporaryDirectory
from urllib.parse import urlencode

from clients import new_token

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.workflow import stock

ROOT = Path(__file__).parents[2]
PASSWORD = secrets.token_urlsafe(12)
OWNER, SCANNER = "127.0.0.20", "127.0.0.1"
ATTACKERS = [f"127.0.0.{number}" for number in range(2, 10)]
DAWDLERS, UPLOADERS, GUESSES = 200, 8, 10
"""Connections that dawdle, bodies of 50 MB under way at once, wrong passwords a second."""

HUGE = 50_000_000
SCANS, WARM, PAUSE, ROUNDS = 200, 20, 0.01, 3
"""Scans of each turn, those before them, seconds between them, and turns. A scanner's pace, not a load test's."""

GOAL = 3.0


@dataclass(frozen=True, slots=True)
class Target:
    port: int
    secure: bool

    def connect(self, source: str, timeout: float = 30.0) -> socket.socket:
        plain = socket.create_connection(("127.0.0.1", self.port), timeout, (source, 0))
        plain.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        if not self.secure:
            return plain
        context = ssl.create_default_context()
        context.check_hostname, context.verify_mode = False, ssl.CERT_NONE
        return context.wrap_socket(plain)


def head(method: str, path: str, length: int, *more: str) -> bytes:
    lines = [f"{method} {path} HTTP/1.1", "Host: localhost", f"Content-Length: {length}", *more, "", ""]
    return "\r\n".join(lines).encode()


def answered(connection: socket.socket) -> tuple[int, bytes]:
    """Status and body of the answer that comes next, which says its length."""
    got = b""
    while b"\r\n\r\n" not in got:
        got += _more(connection)
    said, _, body = got.partition(b"\r\n\r\n")
    found = re.search(rb"(?i)content-length: (\d+)", said)
    while found and len(body) < int(found[1]):
        body += _more(connection)
    return int(said.split()[1]), body


def _more(connection: socket.socket) -> bytes:
    data = connection.recv(65536)
    if not data:
        raise ConnectionError("ended")
    return data


def scans(target: Target, token: str) -> list[float]:
    """Seconds of scans at the tray, one after the other over a kept connection."""
    connection, times = target.connect(SCANNER), []
    for number in range(WARM + SCANS):
        text = json.dumps({"station": "tray", "key": secrets.token_hex(8), "text": card_text("D001")}).encode()
        sent = head("POST", "/api/scans", len(text), f"Authorization: Bearer {token}", "Content-Type: application/json")
        begun = time.perf_counter()
        connection.sendall(sent + text)
        status, body = answered(connection)
        if status != 200:
            raise RuntimeError(f"a scan was answered {status}: {body!r}")
        if number >= WARM:
            times.append(time.perf_counter() - begun)
        time.sleep(PAUSE)
    connection.close()
    return times


def sign_in(target: Target, source: str, password: str) -> int:
    body = urlencode({"password": password, "next": "/"}).encode()
    with contextlib.closing(target.connect(source)) as connection:
        connection.sendall(head("POST", "/login", len(body), "Content-Type: application/x-www-form-urlencoded") + body)
        return answered(connection)[0]


Attack = Callable[[Target, threading.Event], None]


def dawdle(target: Target, over: threading.Event) -> None:
    """Two hundred connections that send a byte now and then, opened again when they are ended."""
    held: list[socket.socket] = []
    sources = cycle(ATTACKERS)
    while not over.is_set():
        held = [each for each in held if _drip(each)]
        while len(held) < DAWDLERS and not over.is_set():
            try:
                held.append(target.connect(next(sources), 2.0))
                held[-1].settimeout(0.0)
                held[-1].send(b"GET / HTTP/1.1\r\nX-Slow: ")
            except OSError:
                break
        over.wait(0.5)
    for each in held:
        each.close()


def _drip(connection: socket.socket) -> bool:
    try:
        connection.send(b"x")
        return connection.recv(100) != b""
    except (BlockingIOError, ssl.SSLWantReadError):
        return True
    except OSError:
        connection.close()
        return False


def flood(target: Target, over: threading.Event) -> None:
    """Bodies of 50 MB, at addresses open to all and at others."""
    paths = cycle(["/login", "/api/scans", "/api/decode", "/pair/x"])
    chunk = b"a&" * 32768

    def send(source: str) -> None:
        while not over.is_set():
            with contextlib.suppress(OSError), contextlib.closing(target.connect(source, 5.0)) as connection:
                kind = "Content-Type: application/x-www-form-urlencoded"
                connection.sendall(head("POST", next(paths), HUGE, kind))
                for _ in range(HUGE // len(chunk)):
                    connection.sendall(chunk)
                answered(connection)

    _together([threading.Thread(target=send, args=(source,)) for source, _ in zip(cycle(ATTACKERS), range(UPLOADERS))])


def guess(target: Target, over: threading.Event) -> None:
    """Wrong passwords, ten a second."""
    sources = cycle(ATTACKERS)
    while not over.wait(1 / GUESSES):
        with contextlib.suppress(OSError):
            sign_in(target, next(sources), "wrong-" + secrets.token_hex(4))


def all_at_once(target: Target, over: threading.Event) -> None:
    _together([threading.Thread(target=each, args=(target, over)) for each in (dawdle, flood, guess)])


def _together(threads: list[threading.Thread]) -> None:
    for each in threads:
        each.start()
    for each in threads:
        each.join()


ATTACKS: dict[str, Attack] = {
    "200 that dawdle": dawdle,
    "bodies of 50 MB": flood,
    "10 guesses a second": guess,
    "all at once": all_at_once,
}


def furnish(folder: Path) -> str:
    """A shop with a password and a slot, and the token of a station."""
    shop = Shop(Database(sqlite_url(folder)))
    shop.act("owner", lambda unit: unit.access.set_password(PASSWORD))
    section = stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue")
    shop.act("owner", lambda unit: stock.add_section(unit, section))
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=4)))
    token = new_token(shop, "station", Role.PROGRAM)
    shop.close()
    return token


@contextmanager
def serving(folder: Path, *options: str) -> Iterator[tuple[int, int]]:
    """Port and process id of a service."""
    command = [sys.executable, "-m", "scanflow", "serve", "--port", "0", "--data", str(folder), *options]
    environment = os.environ | {"PYTHONPATH": str(ROOT)}
    process = subprocess.Popen(command, cwd=ROOT, env=environment, stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    try:
        found = re.search(r":(\d+),", process.stdout.readline())
        assert found is not None, "the service does not start"
        yield int(found[1]), process.pid
    finally:
        process.terminate()
        process.wait()


def attacked(attack: str, port: int, secure: bool, work: Callable[[], None]) -> None:
    """Do it while a process of its own attacks."""
    command = [sys.executable, __file__, attack, str(port), str(int(secure))]
    environment = os.environ | {"PYTHONPATH": str(ROOT)}
    process = subprocess.Popen(command, env=environment, stdin=subprocess.PIPE)
    time.sleep(3)
    work()
    process.communicate()


def memory(pid: int) -> float:
    """MB that the process has had at most."""
    found = re.search(r"VmHWM:\s+(\d+)", Path(f"/proc/{pid}/status").read_text())
    return int(found[1]) / 1024 if found else 0.0


def worked(pid: int) -> float:
    """Seconds of processor time that the process has had, proc(5)."""
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


@dataclass(slots=True)
class Turns:
    """What was measured in turns of one kind."""

    times: list[float] = field(default_factory=list)
    worked: float = 0.0
    lasted: float = 0.0
    sign_ins: set[int] = field(default_factory=set)

    def take(self, target: Target, token: str, pid: int) -> None:
        self.sign_ins.add(sign_in(target, OWNER, PASSWORD))
        begun, before = time.perf_counter(), worked(pid)
        self.times += scans(target, token)
        self.lasted += time.perf_counter() - begun
        self.worked += worked(pid) - before

    @property
    def p99(self) -> float:
        return quantiles(self.times, n=100)[98]

    def row(self, name: str, idle: Turns, peak: float) -> str:
        signed = "yes" if self.sign_ins == {303} else f"NO {self.sign_ins}"
        ratio = self.p99 / idle.p99
        return (
            f"{name:22} {1000 * median(self.times):7.1f} {1000 * self.p99:7.1f} {ratio:10.2f} {signed:>8} "
            f"{100 * self.worked / self.lasted:5.0f} % {peak:8.0f}{'  above the goal' if ratio > GOAL else ''}"
        )


def measure(secure: bool) -> None:
    kind = "HTTPS" if secure else "plain"
    print(f"{kind:22} {'p50 ms':>7} {'p99 ms':>7} {'p99 / idle':>10} {'sign-in':>8} {'CPU':>7} {'peak MB':>8}")
    with TemporaryDirectory() as folder:
        token = furnish(Path(folder))
        with serving(Path(folder), *(["--https"] if secure else [])) as (port, pid):
            target = Target(port, secure)
            for name in ATTACKS:
                idle, hit = Turns(), Turns()
                for _ in range(ROUNDS):
                    idle.take(target, token, pid)
                    attacked(name, port, secure, partial(hit.take, target, token, pid))
                print(idle.row("idle", idle, memory(pid)))
                print(hit.row(name, idle, memory(pid)), flush=True)


def main() -> None:
    for secure in (False, True):
        measure(secure)
    print(f"Goals: p99 at most {GOAL:g} times the idle one; the owner's sign-in is answered yes.")


if __name__ == "__main__":
    if len(sys.argv) == 4:
        os.nice(19)
        stop = threading.Event()
        work = threading.Thread(target=ATTACKS[sys.argv[1]], args=(Target(int(sys.argv[2]), sys.argv[3] == "1"), stop))
        work.start()
        sys.stdin.read()
        stop.set()
        work.join()
    else:
        main()
