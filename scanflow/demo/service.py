"""The service as a process of its own, and a client that calls it as any program would."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import threading
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType
from typing import Any

import urllib3

_PACKAGES = Path(__file__).parents[2]
_START_SECONDS = 30.0
_CALL_SECONDS = 30.0


class NoService(Exception):
    """The service did not start, or stopped answering; the message says what it said last."""


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer: its status, and its body as JSON."""

    status: int
    body: Any


class RunningService:
    """Runs `scanflow serve` on a data folder for as long as the block lasts, on a free port, for one caller."""

    def __init__(self, data: Path) -> None:
        self._data, self._log = data, data / "service.log"

    def __enter__(self) -> RunningService:
        token = self._run("token", "demo", "--role", "owner")
        head = {"Authorization": f"Bearer {token}"}
        self._calls = urllib3.PoolManager(headers=head, retries=False, timeout=_CALL_SECONDS)
        with self._log.open("wb") as log:
            self._process = subprocess.Popen(
                self._command("serve", "--port", "0"),
                env=_environment(),
                stdin=subprocess.DEVNULL,
                stdout=subprocess.PIPE,
                stderr=log,
            )
        try:
            self.address = self._find()
        except BaseException:
            self._stop()
            raise
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, traceback: TracebackType | None
    ) -> None:
        self._calls.clear()
        self._stop()

    def call(self, method: str, path: str, body: Any = None) -> Reply:
        """One call with a JSON body, or none."""
        return self._send(method, path, json=body)

    def upload(self, path: str, fields: Mapping[str, str], name: str, file: Path) -> Reply:
        """One POST of fields and a file, as multipart/form-data."""
        kind = "image/jpeg" if file.suffix == ".jpg" else "text/csv"
        return self._send("POST", path, fields={**fields, name: (file.name, file.read_bytes(), kind)})

    def _send(self, method: str, path: str, **body: Any) -> Reply:
        try:
            answer = self._calls.request(method, self.address + path, redirect=False, **body)
            return Reply(answer.status, answer.json() if answer.data else None)
        except (urllib3.exceptions.HTTPError, ValueError) as error:
            raise NoService(f"{method} {path} was not answered ({error!r}).{self._last_words()}") from error

    def _find(self) -> str:
        """The address that the service prints when it is ready."""
        assert self._process.stdout is not None
        timer = threading.Timer(_START_SECONDS, self._process.kill)
        timer.start()
        try:
            for line in self._process.stdout:
                if found := re.search(r"http://[^:/]+:[0-9]+", line.decode()):
                    return found[0]
        finally:
            timer.cancel()
        raise NoService(f"The service does not start.{self._last_words()}")

    def _stop(self) -> None:
        self._process.terminate()
        try:
            self._process.wait(10)
        except subprocess.TimeoutExpired:
            self._process.kill()
            self._process.wait()
        assert self._process.stdout is not None
        self._process.stdout.close()

    def _run(self, *arguments: str) -> str:
        done = subprocess.run(self._command(*arguments), env=_environment(), capture_output=True, text=True)
        if done.returncode != 0:
            raise NoService(f"`scanflow {arguments[0]}` failed: {done.stderr.strip()}")
        return done.stdout.strip()

    def _command(self, *arguments: str) -> list[str]:
        return [sys.executable, "-m", "scanflow", *arguments, "--data", str(self._data)]

    def _last_words(self) -> str:
        words = self._log.read_text(errors="replace").strip()
        return f" It said: {words[-2000:]}" if words else f" It said nothing; see {self._log}."


def _environment() -> dict[str, str]:
    """This process's, without another shop's database, and with these packages."""
    path = os.pathsep.join(filter(None, [str(_PACKAGES), os.environ.get("PYTHONPATH")]))
    return {name: value for name, value in os.environ.items() if name != "SCANFLOW_DATABASE_URL"} | {"PYTHONPATH": path}
