"""A camera that is never given up, or a film in its place: frames as they come, and what is in their way.

The camera is held by a process of its own (`capture`). One whose driver is frozen is ended, with whatever it held; one
that was unplugged ends by itself. Both times another is started, until the camera is there again.
"""

from __future__ import annotations

import json
import subprocess
import sys
import threading
import time
from collections.abc import Iterator, Sequence
from contextlib import AbstractContextManager, suppress
from dataclasses import dataclass
from pathlib import Path
from queue import Empty, Full, Queue

from scanflow.vision.camera.capture import ABSENT, EVERY, LIVE, PLAYED
from scanflow.vision.worker import as_here, receive

_COMMAND = (sys.executable, "-m", "scanflow.vision.camera.capture")

_FIRST_PAUSE, _LAST_PAUSE = 1.0, 10.0
"""Seconds until a camera that went is tried again; doubled each time."""
_KILLED = -9
_LAST_SECONDS = 5.0
"""For a process to end in."""


class NoFilm(Exception):
    """The film can't be opened, or stands still; the message says which."""


@dataclass(frozen=True, slots=True)
class CameraFrame:
    """A picture as JPEG, when it was taken in milliseconds, and whether there was no light to take it by."""

    jpeg: bytes
    at: float
    dark: bool


@dataclass(frozen=True, slots=True)
class CameraTrouble:
    """Why there are no frames for now: what happened, and what to do."""

    words: str


class Camera(AbstractContextManager["Camera"]):
    """The camera of this number, or a film from this file; close it when done.

    ``every``: each frame of a film is given, as fast as it is taken; without it the newest, at the film's own pace.
    ``starting`` limits the seconds until the first picture, ``silent`` those without a new one: a camera that gives the
    same picture over and over, to the bit, is as frozen as one that gives none. ``command`` is the process's, to which
    source and pace are added.
    """

    def __init__(
        self,
        source: int | Path,
        *,
        every: bool = False,
        starting: float = 20.0,
        silent: float = 5.0,
        pause: float = _FIRST_PAUSE,
        command: Sequence[str] = _COMMAND,
    ) -> None:
        self._source, self._starting, self._silent, self._pause = source, starting, silent, pause
        self._name = f"Camera {source}" if isinstance(source, int) else str(source)
        self.every = every
        self._pace = LIVE if isinstance(source, int) else EVERY if every else PLAYED
        self._command = [*command, str(source), self._pace]
        self._held: _Held | None = None

    def frames(self) -> Iterator[CameraFrame | CameraTrouble]:
        """Frames until a film is over, for a camera without end. NoFilm."""
        pause = self._pause
        while True:
            self._held = _Held(self._command, newest=self._pace != EVERY)
            frozen = False
            try:
                for frame in self._held.frames(self._starting, self._silent, live=self._pace == LIVE):
                    pause = self._pause
                    yield frame
            except Empty:
                frozen = True
            status = self.close()
            if self._pace != LIVE:
                if frozen or status:
                    raise NoFilm(f"{self._name} {'stands still' if frozen else 'can not be opened as a film'}.")
                return
            yield CameraTrouble(self._trouble(frozen, status))
            time.sleep(pause)
            pause = min(2 * pause, _LAST_PAUSE)

    def _trouble(self, frozen: bool, status: int) -> str:
        if frozen:
            return f"{self._name} gives no new picture. It is closed and opened again."
        if status == ABSENT:
            return f"{self._name} does not open. Connect it, or close what uses it. It is tried again and again."
        return f"{self._name} has gone. Connect it: it is tried again and again."

    def close(self) -> int:
        """End the process that holds it; its exit status."""
        held, self._held = self._held, None
        return held.end() if held else 0

    def __exit__(self, *_: object) -> None:
        self.close()


class _Held:
    """One process that holds the camera, and the thread that takes its frames so that it need never wait."""

    def __init__(self, command: list[str], *, newest: bool) -> None:
        self._process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, env=as_here())
        self._frames: Queue[CameraFrame | None] = Queue(1)
        self._newest, self._over = newest, False
        self._thread = threading.Thread(target=self._take, daemon=True)
        self._thread.start()

    def frames(self, starting: float, silent: float, *, live: bool) -> Iterator[CameraFrame]:
        """Until the process gives no more; Empty where it stands still."""
        last, patience = CameraFrame(b"", 0.0, True), starting
        while (frame := self._frames.get(timeout=patience)) is not None:
            patience = silent
            if frame.jpeg != last.jpeg or frame.dark or not live:
                last = frame
            elif frame.at - last.at > 1000 * silent:
                raise Empty
            yield frame

    def _take(self) -> None:
        stream = self._process.stdout
        assert stream is not None
        while (head := receive(stream)) is not None and (jpeg := receive(stream)) is not None:
            self._put(CameraFrame(jpeg, **json.loads(head)))
        self._over = True
        self._frames.put(None)

    def _put(self, frame: CameraFrame) -> None:
        while self._newest:
            try:
                self._frames.put_nowait(frame)
                return
            except Full:
                with suppress(Empty):
                    self._frames.get_nowait()
        self._frames.put(frame)

    def end(self) -> int:
        """End it, unless it ended by itself; its exit status."""
        assert self._process.stdin is not None and self._process.stdout is not None
        with suppress(subprocess.TimeoutExpired):
            if self._over:
                self._process.wait(_LAST_SECONDS)
        self._process.kill()
        try:
            status = self._process.wait(_LAST_SECONDS)
        except subprocess.TimeoutExpired:  # held by its driver, it ends when that lets go
            return _KILLED
        while self._thread.is_alive():  # it may wait for room
            with suppress(Empty):
                self._frames.get(timeout=0.05)
        self._process.stdin.close()
        self._process.stdout.close()
        return status
