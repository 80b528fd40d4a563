"""The worker process: ``python -m scanflow.vision.worker MEGABYTES SECONDS``, started by ``workers``.

Messages both ways are a length (4 bytes, big-endian) and so many bytes. First it sends its engines as a JSON list.
Then, until its input ends, it takes two messages at a time, a question in JSON and an image file. It answers with
``{"error": "..."}``, or with what the question's ``do`` says:

- ``read``: ``{"picture": {...}}``, read without a book, or with the one whose digest is ``book``; its ``texts`` come
  with the question if this process was not sent them last.
- ``glance``: the same by a glance alone.
- ``check``: the same, and ``"checks"``: how well it is printed with a ``module`` of so many mm, or of unknown width.
- ``keep``: ``{"kept": [picture, small one]}``, both made ready to be kept, as JPEG in base64.
- ``whole``: ``{"kept": [picture]}``, made upright.
"""

from __future__ import annotations

import json
import os
import signal
import struct
import sys
from base64 import b64encode
from pathlib import Path
from typing import IO, Any

from scanflow.vision import decode, decoders, stored_pictures
from scanflow.vision.print_check import check as print_check
from scanflow.vision.readings import ImageError
from scanflow.vision.second_look.book import Book

_HEADER = struct.Struct(">I")
_LARGEST_FILE = 64 << 20  # bytes; our own messages may go to a file too


def as_here() -> dict[str, str]:
    """The environment in which a process of ours finds the packages that this one has."""
    path = os.pathsep.join(filter(None, [str(Path(__file__).parents[2]), os.environ.get("PYTHONPATH")]))
    return {**os.environ, "PYTHONPATH": path}


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
    """Answer questions until the input ends."""
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # whatever a decoder prints must not mix with the answers
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl-C is for the parent, which then closes our input
    _limit(megabytes)
    send(answers, json.dumps(decoders.engines()).encode())
    known: Book | None = None
    questions = sys.stdin.buffer
    while (asked := receive(questions)) is not None and (image := receive(questions)) is not None:
        _alarm(seconds)
        question = json.loads(asked)
        if "texts" in question:
            known = Book(question["texts"])
        send(answers, json.dumps(_answer(image, question, known)).encode())
        _alarm(0)


def _answer(image: bytes, question: dict[str, Any], known: Book | None) -> dict[str, Any]:
    try:
        match question["do"]:
            case "read":
                return {"picture": decode.picture(image, None if question["book"] is None else known).as_dict()}
            case "glance":
                return {"picture": decode.glance(image).as_dict()}
            case "check":
                seen = decode.picture(image)
                checks = print_check.check(image, seen.decoded, question["module"])
                return {"picture": seen.as_dict(), "checks": [each.sent() for each in checks]}
            case "keep":
                return {"kept": _as_text(*stored_pictures.kept(image))}
            case "whole":
                return {"kept": _as_text(stored_pictures.whole(image))}
            case other:
                raise ValueError(f"this worker does not {other}")
    except ImageError as error:
        return {"error": str(error)}
    except MemoryError:
        return {"error": "This picture needs more memory than allowed. Send it at a lower resolution."}


def _as_text(*pictures: bytes) -> list[str]:
    return [b64encode(each).decode() for each in pictures]


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
