"""The worker process: ``python -m scanflow.vision.worker MEGABYTES SECONDS``, started by ``workers``.

Messages both ways are a length (4 bytes, big-endian) and so many bytes. First it sends its engines as a JSON list.
Then, until its input ends, it takes two messages at a time, a JSON value and an image file, and answers
``{"picture": {...}}`` or ``{"error": "..."}``. The value is ``null``: read without a book; a list of texts: with this
book, and keep it; ``true``: with the book that was kept; ``false``: only a glance; ``"keep"``: not read but made ready
to be kept, which is answered ``{"kept": [picture, small one]}``, both JPEG in base64; ``"whole"``: made upright,
answered ``{"kept": [picture]}``; ``{"module": mm or null}``: read and judged how well it is printed, answered with
``"checks"`` too.
"""

from __future__ import annotations

import json
import os
import signal
import struct
import sys
from base64 import b64encode
from typing import IO, Any

from scanflow.vision import decode, decoders, kept
from scanflow.vision.print_check import check as print_check
from scanflow.vision.readings import ImageError
from scanflow.vision.second_look.book import Book

_HEADER = struct.Struct(">I")
_LARGEST_FILE = 64 << 20  # bytes; our own messages may go to a file too


def send(stream: IO[bytes], body: bytes) -> None:
    """Write one message. OSError where the other side is gone."""
    stream.write(_HEADER.pack(len(body)))
    stream.write(body)
    stream.flush()


def receive(stream: IO[bytes]) -> bytes | None:
    """The next message, None where the other side is gone."""
    header = stream.read(_HEADER.size)
    if len(header) < _HEADER.size:
        return None
    (length,) = _HEADER.unpack(header)
    body = stream.read(length)
    return body if len(body) == length else None


def main(megabytes: int, seconds: float) -> None:
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # whatever a decoder prints must not mix with the answers
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl-C is for the parent, which then closes our input
    _limit(megabytes)
    send(answers, json.dumps(decoders.engines()).encode())
    known: Book | None = None
    questions = sys.stdin.buffer
    while (book := receive(questions)) is not None and (image := receive(questions)) is not None:
        _alarm(seconds)
        which = json.loads(book)
        if isinstance(which, list):
            known = Book(which)
        send(answers, json.dumps(_answer(image, which, known)).encode())
        _alarm(0)


def _answer(image: bytes, which: Any, known: Book | None) -> dict[str, Any]:
    try:
        if isinstance(which, str):
            made = kept.kept(image) if which == "keep" else (kept.whole(image),)
            return {"kept": [b64encode(each).decode() for each in made]}
        if isinstance(which, dict):
            seen = decode.picture(image)
            checks = print_check.check(image, seen.decoded, which["module"])
            return {"picture": seen.as_dict(), "checks": [each.sent() for each in checks]}
        if which is False:
            return {"picture": decode.glance(image).as_dict()}
        return {"picture": decode.picture(image, None if which is None else known).as_dict()}
    except ImageError as error:
        return {"error": str(error)}
    except MemoryError:
        return {"error": "This picture needs more memory than allowed. Send it at a lower resolution."}


def _limit(megabytes: int) -> None:
    """No more memory than this, no dump of it where a decoder crashes, and no large file: none is needed."""
    try:
        import resource
    except ImportError:  # Windows has no such limits
        return
    resource.setrlimit(resource.RLIMIT_AS, (megabytes << 20, megabytes << 20))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    hard = resource.getrlimit(resource.RLIMIT_FSIZE)[1]
    most = _LARGEST_FILE if hard == resource.RLIM_INFINITY else min(_LARGEST_FILE, hard)
    resource.setrlimit(resource.RLIMIT_FSIZE, (most, most))


def _alarm(seconds: float) -> None:
    """End a hanging decoder even when the parent, whose task it is, was killed."""
    if hasattr(signal, "setitimer"):
        signal.setitimer(signal.ITIMER_REAL, seconds * 2)


if __name__ == "__main__":
    main(int(sys.argv[1]), float(sys.argv[2]))
