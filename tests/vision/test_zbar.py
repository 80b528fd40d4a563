"""zbar by way of pyzbar: which lines it looks at, and where its library is."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
import zxingcpp

from scanflow.vision import zbar


@pytest.mark.parametrize(
    ("across", "down", "quarters", "expected"),
    [
        (1, 1, 0, 1),
        (3, 3, 0, 1),
        (1, 0, 0, 1),
        (0, 1, 0, 0),
        (1, 0, 1, 0),
        (0, 1, 1, 1),
    ],
)
def test_only_lines_that_are_asked_for_are_looked_at(across: int, down: int, quarters: int, expected: int) -> None:
    """Bars that stand are read by lines across the picture, bars that lie by lines down it."""
    drawn = np.asarray(zxingcpp.create_barcode("D0145", zxingcpp.BarcodeFormat.Code128).to_image(scale=3))
    picture = np.ascontiguousarray(np.rot90(np.pad(drawn, 40, constant_values=255), quarters))

    assert [b"D0145"] * expected == [one.data for one in zbar.decode(picture, across, down)]


@pytest.fixture
def brew(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[str], None]:
    """Puts a ``brew`` first in the path: a shell script of the lines given."""

    def put(lines: str) -> None:
        script = tmp_path / "brew"
        script.write_text(f"#!/bin/sh\n{lines}\n")
        script.chmod(0o755)
        monkeypatch.setenv("PATH", f"{tmp_path}{os.pathsep}{os.environ['PATH']}")

    return put


def test_homebrew_library_is_where_brew_says(tmp_path: Path, brew: Callable[[str], None]) -> None:
    """The library is taken from the prefix that ``brew --prefix zbar`` prints."""
    library = tmp_path / "opt" / "zbar" / "lib" / "libzbar.dylib"
    library.parent.mkdir(parents=True)
    library.touch()
    brew(f'[ "$*" = "--prefix zbar" ] && echo {tmp_path}/opt/zbar')

    assert library == zbar.homebrew_library()


@pytest.mark.parametrize("lines", ["exit 1", "echo /nowhere"])
def test_without_homebrew_zbar_there_is_no_library(lines: str, brew: Callable[[str], None]) -> None:
    """A brew that knows no zbar, or has not installed it, counts as no library."""
    brew(lines)

    assert None is zbar.homebrew_library()
