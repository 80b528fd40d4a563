"""The service as a page reaches it: calls on one connection that is kept, each at its own time of the rehearsed day."""

from __future__ import annotations

import json
import os
import shutil
import signal
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path
from threading import Lock, Thread
from typing import Any
from urllib.parse import urlencode

HERE = Path(__file__).parent
HOUSE = HERE.parents[2]
CLOCK = "X-Rehearsal-Time"
OPENING = 1_772_438_400.0
"""2026-03-02 08:00 UTC."""

DAY = 24 * 3600.0
Json = dict[str, Any]


class Broken(Exception):
    """The service gave an answer that no page can do anything with."""


@dataclass(slots=True)
class Watch:
    """`now`: the time of the next call, in seconds since 1970. `hands` is held by who does something in the room.

    It is let go while a call is on its way, so that the other of two people goes on meanwhile.
    """

    now: float = OPENING
    hands: Lock | None = None


Answered = tuple[int, str, bytes]
"""Status, Location and content."""


def one_line(page: bytes) -> str:
    """Of white space one space counts, as a browser shows it."""
    return " ".join(page.decode().split())


class Calls:
    """`twice`: scans and forms are sent twice, one after the other, or both at once while two people work at a time.

    `sent`: the time of the last call. `helps`: a helper makes these calls, who may not do all that an owner may.
    """

    def __init__(self, house: House, name: str = "rehearsal", watch: Watch | None = None) -> None:
        self.house, self.name, self.watch, self.helps = house, name, watch or Watch(), name != "rehearsal"
        self.count, self.keys, self.twice, self.sent = 0, 0, False, 0.0
        self.steps: list[str] = []
        """What was sent and answered, in short, so that a day can be read again."""

        self.sign_in()

    def sign_in(self) -> None:
        """With the tokens of the service that runs now."""
        self.connection = HTTPConnection("127.0.0.1", self.house.port, timeout=60)
        tokens = self.house.tokens[::-1] if self.helps else self.house.tokens
        self.head, self.other = ({"Authorization": f"Bearer {token}"} for token in tokens)

    @property
    def now(self) -> float:
        return self.watch.now

    @now.setter
    def now(self, at: float) -> None:
        self.watch.now = at

    def turn(self) -> None:
        """The other of two people makes the next calls."""
        self.head, self.other = self.other, self.head
        self.helps = not self.helps

    def beside(self) -> Calls:
        """The other of two people, with a connection of their own; the watch on the wall is the same."""
        other = Calls(self.house, "beside", self.watch)
        other.steps = self.steps
        return other

    def restore(self) -> None:
        """Yesterday's backup is put back; who works goes on with a new token."""
        self.connection.close()
        self.house.restore()
        self.sign_in()
        self.note("yesterday's backup is restored", 0, "")

    def key(self) -> str:
        self.keys += 1
        return self.last_key

    @property
    def last_key(self) -> str:
        return f"{self.name}-{self.keys}"

    def send(self, method: str, path: str, body: bytes | None = None, kind: str = "") -> Answered:
        """20 s pass before each call, none before what only looks."""
        self.count += 1
        self.now += 0 if method == "GET" else 20
        self.sent = self.now
        with self._on_its_way():
            return self._exchange(self.connection, method, path, body, self._head(kind))

    def send_both(self, path: str, body: bytes, kind: str) -> tuple[Answered, Answered]:
        """A call and its repeat: both at once while two people work at a time, else one after the other."""
        if self.watch.hands is None:
            first = self.send("POST", path, body, kind)
            return first, first if first[0] >= 400 else self.send("POST", path, body, kind)
        answers: list[Answered] = []
        head = self._head(kind)

        def repeat() -> None:
            second = HTTPConnection("127.0.0.1", self.house.port, timeout=60)
            answers.append(self._exchange(second, "POST", path, body, head))
            second.close()

        thread = Thread(target=repeat)
        thread.start()
        first = self.send("POST", path, body, kind)
        with self._on_its_way():
            thread.join()
        if not answers:
            raise Broken(f"POST {path}: its repeat had no answer")
        return first, answers[0]

    def _head(self, kind: str) -> dict[str, str]:
        return {**self.head, CLOCK: repr(self.now), **({"Content-Type": kind} if kind else {})}

    @contextmanager
    def _on_its_way(self) -> Iterator[None]:
        if self.watch.hands is None:
            yield
            return
        self.watch.hands.release()
        try:
            yield
        finally:
            self.watch.hands.acquire()

    @staticmethod
    def _exchange(
        connection: HTTPConnection, method: str, path: str, body: bytes | None, head: dict[str, str]
    ) -> Answered:
        connection.request(method, path, body, head)
        answer = connection.getresponse()
        content = answer.read()
        if answer.status >= 500:
            raise Broken(f"{method} {path}: {answer.status} {content[:200]!r}")
        return answer.status, answer.headers.get("Location", ""), content

    def get(self, path: str) -> Any:
        status, _, content = self.send("GET", path)
        if status != 200:
            raise Broken(f"GET {path}: {status} {content[:200]!r}")
        return json.loads(content)

    def page(self, path: str) -> str:
        """A page's HTML, each run of white space as one space."""
        return one_line(self.send("GET", path)[2])

    def post(self, path: str, **body: Any) -> tuple[int, Json]:
        """Status and JSON of a call that scripts of pages make."""
        sent = json.dumps(body).encode()
        if self.twice and "key" in body:
            (status, _, content), (_, _, repeated) = self.send_both(path, sent, "application/json")
            first, again = ({**json.loads(each), "replayed": False} for each in (content, repeated))
            if again != first:
                raise Broken(f"POST {path} {body}: sent again it had another answer: {first}, {again}")
        else:
            status, _, content = self.send("POST", path, sent, "application/json")
        answer = json.loads(content)
        self.note(f"{path} {_short(body)}", status, answer.get("reason") or answer.get("code") or "")
        return status, answer

    def form(self, path: str, **fields: Any) -> tuple[int, str]:
        """Status and Location of a page's form; what was refused shows the page again, with a status of 4xx."""
        sent = urlencode({"key": self.key(), **fields}, doseq=True).encode()
        kind = "application/x-www-form-urlencoded"
        if self.twice:
            (status, location, _), again = self.send_both(path, sent, kind)
            if status < 400 and (status, location) != again[:2]:
                raise Broken(f"POST {path} {fields}: sent again it had another answer: {again[:2]}")
        else:
            status, location, _ = self.send("POST", path, sent, kind)
        self.note(f"{path} {_short(fields)}", status, location)
        return status, location

    def upload(self, path: str, name: str, data: bytes, **fields: str) -> tuple[int, bytes]:
        """A form with a file."""
        edge = "rehearsal-edge"
        parts = [f'--{edge}\r\nContent-Disposition: form-data; name="{n}"\r\n\r\n{v}\r\n' for n, v in fields.items()]
        head = f'--{edge}\r\nContent-Disposition: form-data; name="file"; filename="{name}"\r\n'
        body = "".join(parts).encode() + head.encode() + b"Content-Type: text/csv\r\n\r\n" + data
        sent = body + f"\r\n--{edge}--\r\n".encode()
        status, _, content = self.send("POST", path, sent, f"multipart/form-data; boundary={edge}")
        chosen = {name: value for name, value in fields.items() if name not in ("carried", "shown")}
        self.note(f"{path} {data.decode().splitlines()[1:]} {_short(chosen)}", status, "")
        return status, content

    def send_file(self, path: str, name: str, data: bytes, **fields: str) -> tuple[int, Json]:
        """A call with a file, as a program makes it."""
        status, content = self.upload(path, name, data, **fields)
        answer: Json = json.loads(content)
        return status, answer

    def note(self, said: str, status: int, answer: str) -> None:
        self.steps.append(f"{said} -> {status} {answer}".rstrip())


def _short(body: Json) -> str:
    return " ".join(f"{name}={value}" for name, value in body.items() if name not in ("key", "csrf") and value != "")


def _folder() -> str | None:
    """Where files live in memory, if there is such a place: a rehearsal outlives no power cut."""
    return "/dev/shm" if os.access("/dev/shm", os.W_OK) else None


@dataclass(slots=True)
class Empty:
    """A file with all tables and nothing in them, from which each shop begins, and the process that starts services."""

    path: Path
    starter: subprocess.Popen[str]


@contextmanager
def empty_shop() -> Iterator[Empty]:
    house = {**os.environ, "PYTHONPATH": str(HOUSE)}  # the code of this very tree is what runs
    with tempfile.TemporaryDirectory(prefix="rehearsal-", dir=_folder()) as folder:
        path = Path(folder) / "empty.db"
        code = "import sys; from scanflow.storage.database import Database; Database(sys.argv[1]).close()"
        subprocess.run([sys.executable, "-c", code, f"sqlite:///{path}"], check=True, env=house)
        pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "text": True, "env": house}
        process = subprocess.Popen([sys.executable, str(HERE / "server.py")], **pipes)
        try:
            yield Empty(path, process)
        finally:
            process.terminate()
            process.communicate(timeout=30)


class House:
    """One shop's service in a process of its own, on a folder of its own; what is done to it by commands."""

    def __init__(self, empty: Empty, folder: Path, without: str) -> None:
        self.starter, self.folder, self.without = empty.starter, folder, without
        self.database = folder / "shop.db"
        shutil.copy(empty.path, self.database)
        self.process, self.port, self.tokens = self._start()
        self.restored = 0

    def _start(self) -> tuple[int, int, list[str]]:
        assert self.starter.stdin is not None and self.starter.stdout is not None
        self.starter.stdin.write(f"sqlite:///{self.database} {self.without}\n")
        self.starter.stdin.flush()
        process, port, *tokens = self.starter.stdout.readline().split()
        return int(process), int(port), tokens

    def stop(self) -> None:
        os.kill(self.process, signal.SIGTERM)

    def back_up(self) -> None:
        self._command("backup", str(self.folder / "backups"), "--database", f"sqlite:///{self.database}")

    def restore(self) -> None:
        """The service stops, and another begins with what the newest backup holds; its people have new tokens."""
        self.stop()
        self.restored += 1
        data = self.folder / f"restored-{self.restored}"
        self._command("restore", str(self.folder / "backups"), "--data", str(data))
        self.database = data / "scanflow.db"
        self.process, self.port, self.tokens = self._start()

    @staticmethod
    def _command(*given: str) -> None:
        house = {**os.environ, "PYTHONPATH": str(HOUSE)}
        code = "from scanflow.cli import main; main()"
        done = subprocess.run([sys.executable, "-c", code, *given], env=house, capture_output=True, text=True)
        if done.returncode != 0:
            raise Broken(f"scanflow {' '.join(given)}: {done.stdout} {done.stderr}")


@contextmanager
def serving(empty: Empty, without: str = "") -> Iterator[Calls]:
    """A new shop and its service."""
    with tempfile.TemporaryDirectory(prefix="rehearsal-", dir=_folder()) as folder:
        house = House(empty, Path(folder), without)
        calls = Calls(house)
        try:
            yield calls
        finally:
            calls.connection.close()
            house.stop()
