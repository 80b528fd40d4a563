"""`scanflow serve` as a process of its own, at whatever port is free."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def serving(*arguments: object) -> Iterator[tuple[str, subprocess.Popen[str]]]:
    """The first address that the service prints, and its process."""
    command = [sys.executable, "-m", "scanflow", "serve", "--port", "0", *map(str, arguments)]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    try:
        found = re.search(r"Serving at (\S+),", process.stdout.readline())
        assert found is not None
        yield found[1], process
    finally:
        process.terminate()
        process.communicate(timeout=30)
