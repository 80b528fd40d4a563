"""A file written whole or not at all: whoever looks, at any time, sees what was there before, or all of the new."""

import os
import secrets
from os import PathLike
from pathlib import Path


def write_whole(path: str | PathLike[str], content: bytes, mode: int = 0o666) -> None:
    """Put the content in place of the file, in one step once it is on the disk; OSError leaves what was there.

    It is written beside the file, under its name with a random ending, which only a kill or a power cut leaves behind.
    `mode` is what a new file may be used for, less what the process masks.
    """
    target = Path(path).resolve()  # what a link points to is written, not the link
    part = target.with_name(f"{target.name}.{secrets.token_hex(4)}")
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    try:
        with os.fdopen(os.open(part, flags, mode), "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        part.replace(target)
    finally:
        part.unlink(missing_ok=True)
