"""Whether the files that are open still stand at their places: what is written into a deleted one is lost."""

from __future__ import annotations

import os
from pathlib import Path

from scanflow.storage.engine import file_of
from scanflow.storage.writing.failing import GONE
from scanflow.storage.writing.unwritable import Unwritable


class OpenFiles:
    """An SQLite database's file and its write-ahead log, as they were when it was opened; none of PostgreSQL."""

    def __init__(self, url: str) -> None:
        file = file_of(url)
        self._paths = (os.fspath(file), f"{os.fspath(file)}-wal") if file is not None else ()
        self._known: tuple[tuple[str, tuple[int, int]], ...] = ()

    def remember(self) -> None:
        """Both are open now: these are the ones."""
        self._known = tuple((path, _identity(path)) for path in self._paths if Path(path).exists())

    def gone(self) -> Unwritable | None:
        """Why nothing can be kept; None while all stand. It asks the system once for each file, about 1 µs."""
        for path, known in self._known:
            try:
                same = _identity(path) == known
            except OSError:
                same = False
            if not same:
                return Unwritable(
                    GONE,
                    f"The database's file {path} was deleted or moved away. Nothing was recorded. Put it back where "
                    "it was; after a copy, start the service again. If there is none, end the service, restore the "
                    "newest backup into a new folder, and start there.",
                )
        return None

    def refuse(self) -> None:
        """`Unwritable` where a commit would be lost."""
        if (why := self.gone()) is not None:
            raise why


def _identity(path: str) -> tuple[int, int]:
    found = os.stat(path)  # noqa: PTH116 (a Path would double what a write pays for this)
    return found.st_dev, found.st_ino
