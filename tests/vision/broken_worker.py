"""The real worker, with a decoder that breaks when the image says so: ABORT, EXIT, CRASH, HANG or EAT.

CHILD starts a process that goes on for ten minutes, writes a temporary file, tells the number and the file's name in
the file that TELL names, and hangs.
FILE writes a file of more bytes than a worker may write.

BOOK reads as the digest of the book it comes with, and as engine how many books this process was sent.
"""

import ctypes
import ctypes.util
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

if "--without-zbar" in sys.argv:
    sys.argv.remove("--without-zbar")
    ctypes.util.find_library = lambda name: None

from scanflow.vision import Book, PictureReadings, Reading, Symbology, decode, stored_pictures, worker

_whole, _ready = decode.picture, stored_pictures.kept
sent: list[Book] = []


def _picture(image: bytes, book: Book | None = None) -> object:
    match image:
        case b"ABORT":
            os.abort()
        case b"EXIT":
            os._exit(0)
        case b"CRASH":
            ctypes.string_at(0)
        case b"HANG":
            time.sleep(600)
        case b"CHILD":
            child = subprocess.Popen([sys.executable, "-c", "import time; time.sleep(600)"])
            with tempfile.NamedTemporaryFile(delete=False) as file:
                file.write(bytes(1 << 20))
            Path(os.environ["TELL"]).write_text(f"{child.pid} {file.name}")
            time.sleep(600)
        case b"FILE":
            with tempfile.TemporaryFile() as file:
                file.truncate(worker._LARGEST_FILE + 1)
        case b"EAT":
            return bytearray(8 << 30)
        case b"BOOK":
            return _telling(book)
    return _whole(image, book)


def _telling(book: Book | None) -> PictureReadings:
    if book is not None and not any(book is one for one in sent):
        sent.append(book)
    digest = None if book is None else book.digest
    return PictureReadings(1, 1, 0.0, (Reading(digest, Symbology.CODE128, f"{len(sent)} sent", ((0.0, 0.0),) * 4),))


def _kept(image: bytes) -> tuple[bytes, bytes]:
    _picture(image)
    return _ready(image)


decode.picture, stored_pictures.kept = _picture, _kept
worker.main(int(sys.argv[1]), float(sys.argv[2]))
