"""Images are opened in worker processes: a decoder that crashes or hangs costs that one image an error.

A worker leads a process group of its own (POSIX) and has a folder of its own for temporary files: when it is ended,
what it may have started ends with it, and what it may have written goes with it.
"""

from __future__ import annotations

import contextlib
import json
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
from base64 import b64decode
from collections.abc import Callable, Sequence
from pathlib import Path
from queue import SimpleQueue
from typing import Any

from scanflow.vision.decoders import say_if_alone
from scanflow.vision.print_check.check import Check
from scanflow.vision.readings import ImageError, PictureReadings
from scanflow.vision.second_look.book import Book
from scanflow.vision.upright import unopened
from scanflow.vision.worker import as_here, receive, send

_COMMAND = (sys.executable, "-m", "scanflow.vision.worker")
_ONE_THREAD = dict.fromkeys(("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"), "1")
_START_SECONDS = 60.0
_APART: dict[str, Any] = {"start_new_session": True}
if sys.platform == "win32":
    _APART = {"creationflags": subprocess.CREATE_NEW_PROCESS_GROUP}
_MOST_MEGABYTES = 200  # of a file; a photo of 100 megapixels has at most about half of it


class ReadFailed(ImageError):
    """The decoder crashed or took too long over this image; other images are not affected."""


class Readers(contextlib.AbstractContextManager["Readers"]):
    """A pool of workers, for any number of threads. Each is started when first needed and replaced when it fails.

    ``seconds`` limits one image, ``megabytes`` a worker's address space (not on Windows). ``command`` is the worker's,
    to which both limits are added. Each picture is read inside ``turn()``, which may make its caller wait or refuse it.
    """

    turn: Callable[[], contextlib.AbstractContextManager[None]] = staticmethod(contextlib.nullcontext)

    def __init__(
        self,
        workers: int | None = None,
        *,
        seconds: float = 30.0,
        megabytes: int = 2048,
        command: Sequence[str] = _COMMAND,
    ) -> None:
        self._seconds = seconds
        self.count = workers or min(2, os.cpu_count() or 1)
        self._all = [_Worker([*command, str(megabytes), str(seconds)]) for _ in range(self.count)]
        self._idle: SimpleQueue[_Worker | None] = SimpleQueue()
        for worker in self._all:
            self._idle.put(worker)

    def read(self, image: bytes | Path, book: Book | None = None) -> PictureReadings:
        """What `vision.read` gives. ImageError as there; ReadFailed for a crash or a hang.

        A worker is sent a book once and keeps the last one.
        """
        question = {"do": "read", "book": None if book is None else book.digest}
        return PictureReadings.from_dict(self._ask(question, _bytes(image), book)["picture"])

    def glance(self, image: bytes) -> PictureReadings:
        """What `decode.glance` gives: fast, by one decoder, without a second look; errors as of `read`."""
        return PictureReadings.from_dict(self._ask({"do": "glance"}, image)["picture"])

    def kept(self, image: bytes) -> tuple[bytes, bytes]:
        """What `stored_pictures.kept` gives: the picture as it is kept, and a small one; errors as of `read`."""
        picture, small = self._ask({"do": "keep"}, image)["kept"]
        return b64decode(picture), b64decode(small)

    def check(self, image: bytes | Path, module_mm: float | None = None) -> tuple[PictureReadings, tuple[Check, ...]]:
        """What was read, and what `print_check.check` says of each text that was decoded; errors as of `read`."""
        answer = self._ask({"do": "check", "module": module_mm}, _bytes(image))
        return PictureReadings.from_dict(answer["picture"]), tuple(map(Check.received, answer["checks"]))

    def whole(self, image: bytes | Path) -> bytes:
        """What `stored_pictures.whole` gives: the picture upright at its full size, as JPEG; errors as of `read`."""
        (picture,) = self._ask({"do": "whole"}, _bytes(image))["kept"]
        return b64decode(picture)

    def _ask(self, question: dict[str, Any], image: bytes, book: Book | None = None) -> dict[str, Any]:
        with self.turn():
            worker = self._take()
            try:
                answer = worker.ask(question, image, book, self._seconds)
            finally:
                self._idle.put(worker)
        if "error" in answer:
            raise ImageError(answer["error"])
        return answer

    def warm(self) -> None:
        """Start every worker that is not in use now, so that the first image doesn't wait for it."""
        for worker in [self._take() for _ in range(self._idle.qsize())]:
            try:
                worker.start()
            finally:
                self._idle.put(worker)

    def close(self) -> None:
        """End the workers once they have answered; ``read`` is refused from then on."""
        for _ in self._all:
            if (worker := self._idle.get()) is None:
                break
            worker.stop()
        self._idle.put(None)

    def __exit__(self, *_: object) -> None:
        self.close()

    def _take(self) -> _Worker:
        worker = self._idle.get()
        if worker is None:
            self._idle.put(None)
            raise RuntimeError("these readers are closed")
        return worker


class _Worker:
    """One process, used by one thread at a time."""

    def __init__(self, command: list[str]) -> None:
        self._command = command
        self._process: subprocess.Popen[bytes] | None = None
        self._kept: str | None = None  # digest of the book that the process has
        self._folder: str | None = None  # for its temporary files

    def ask(self, question: dict[str, Any], image: bytes, book: Book | None, seconds: float) -> dict[str, Any]:
        """Its answer to a question as `worker` has it; the texts of a book that it doesn't have go with that."""
        process = self.start()
        if book is not None and book.digest != self._kept:
            question = question | {"texts": book.texts}
        answer, late = _exchange(process, (json.dumps(question).encode(), image), seconds)
        if answer is not None:
            self._kept = book.digest if book is not None else self._kept
            return dict(json.loads(answer))
        self.stop()
        if late:
            raise ReadFailed(f"Reading this picture took more than {seconds:g} s. Send it smaller, or type the code.")
        raise ReadFailed("The decoder crashed over this picture. Take it again, or type the code.")

    def start(self) -> subprocess.Popen[bytes]:
        """The running process, ready to be asked. ReadFailed where none can be started."""
        if self._process is not None and self._process.poll() is None:
            return self._process
        self.stop()
        environment = {**as_here(), **_ONE_THREAD}
        with contextlib.suppress(OSError):  # where there is no room for it, a worker does without: it needs no files
            self._folder = tempfile.mkdtemp(prefix="scanflow-")
            environment |= dict.fromkeys(("TMPDIR", "TEMP", "TMP"), self._folder)
        try:
            self._process = subprocess.Popen(
                self._command, env=environment, stdin=subprocess.PIPE, stdout=subprocess.PIPE, **_APART
            )
        except OSError as error:
            self.stop()
            raise ReadFailed(f"The decoder does not start ({error.strerror}). Type the code.") from error
        engines, _ = _exchange(self._process, (), _START_SECONDS)
        if engines is None:
            self.stop()
            raise ReadFailed("The decoder does not start; the service's own messages say why. Type the code.")
        say_if_alone(tuple(json.loads(engines)))
        return self._process

    def stop(self) -> None:
        if self._process is not None:
            _kill(self._process)
            self._process.wait()
            for stream in (self._process.stdin, self._process.stdout):
                if stream is not None:
                    with contextlib.suppress(OSError):  # what was not sent can't be any more
                        stream.close()
        if self._folder is not None:
            shutil.rmtree(self._folder, ignore_errors=True)
        self._process = self._kept = self._folder = None


def _kill(process: subprocess.Popen[bytes]) -> None:
    """End a worker and all that it started. One that was waited for is let be: its number may be another's by now."""
    if process.returncode is not None:
        return
    if sys.platform == "win32":
        process.kill()
    else:
        with contextlib.suppress(ProcessLookupError, PermissionError):  # macOS: nobody of the group lives any more
            os.killpg(process.pid, signal.SIGKILL)


def _exchange(process: subprocess.Popen[bytes], messages: Sequence[bytes], seconds: float) -> tuple[bytes | None, bool]:
    """The worker's next message, after sending it some; None where it ended, and whether that was for being late."""
    late = threading.Event()

    def end() -> None:
        late.set()
        _kill(process)

    assert process.stdin is not None and process.stdout is not None
    timer = threading.Timer(seconds, end)
    timer.daemon = True
    timer.start()
    try:
        for message in messages:
            send(process.stdin, message)
        return receive(process.stdout), late.is_set()
    except OSError:  # it ended before it had taken the whole image
        return None, late.is_set()
    finally:
        timer.cancel()


def _bytes(image: bytes | Path) -> bytes:
    return read_file(image) if isinstance(image, Path) else image


def read_file(path: Path) -> bytes:
    """A file's bytes; ImageError where it can't be opened, or is larger than any photo."""
    try:
        if path.stat().st_size > _MOST_MEGABYTES << 20:
            raise ImageError(f"This file is larger than {_MOST_MEGABYTES} MB. Send the photo as JPEG, or smaller.")
        return path.read_bytes()
    except OSError as error:
        raise unopened(error) from None
