"""Disks that really fill up, and folders that really can't be written: mounted where that is allowed."""

from __future__ import annotations

import os
import resource
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

SIZE = "3m"


@contextmanager
def mounted(folder: Path) -> Iterator[Path]:
    """A small disk of its own at the folder; the test is left out where mounting needs another user."""
    folder.mkdir()
    if os.geteuid() != 0 or subprocess.run(_mount("size=" + SIZE, folder), capture_output=True).returncode:
        pytest.skip("only root can mount a small disk, where it may; `full` with a limit is tested anywhere")
    try:
        yield folder
    finally:
        subprocess.run(["umount", "--lazy", str(folder)], check=True)


def _mount(options: str, folder: Path) -> list[str]:
    return ["mount", "-t", "tmpfs", "-o", options, "tmpfs", str(folder)]


def make_read_only(folder: Path) -> None:
    """A mounted disk in which no file is open."""
    subprocess.run(["mount", "-o", "remount,ro", str(folder)], check=True)


@contextmanager
def full(folder: Path | None) -> Iterator[None]:
    """Not a byte more fits: a mounted disk is filled up; without a folder no file of this process may grow."""
    if folder is None:
        before = resource.getrlimit(resource.RLIMIT_FSIZE)
        resource.setrlimit(resource.RLIMIT_FSIZE, (0, before[1]))  # writes fail with EFBIG, setrlimit(2)
        try:
            yield
        finally:
            resource.setrlimit(resource.RLIMIT_FSIZE, before)
        return
    filler = folder / "filler"
    with filler.open("wb", buffering=0) as file:
        try:
            while file.write(bytes(4096)):
                pass
        except OSError:
            pass
    try:
        yield
    finally:
        filler.unlink()
