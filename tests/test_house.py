"""The house rules that tools hold: style, types, and which way imports run."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[1]


@pytest.mark.parametrize(
    "command",
    [
        pytest.param(("ruff", "check"), id="style"),
        pytest.param(("ruff", "format", "--check"), id="format"),
        pytest.param(("mypy",), id="types"),
        pytest.param(("lint-imports",), id="imports"),
    ],
)
def test_a_tool_finds_nothing_amiss(command: tuple[str, ...]) -> None:
    """Each tool, with its settings in pyproject.toml, passes the whole tree."""
    program = shutil.which(command[0], path=str(Path(sys.executable).parent))
    assert program is not None, f"{command[0]} is not installed beside {sys.executable}"
    done = subprocess.run([program, *command[1:]], cwd=HOUSE, capture_output=True, text=True, timeout=300)
    assert 0 == done.returncode, done.stdout + done.stderr


def test_every_package_is_built() -> None:
    """setuptools finds none by itself: pyproject.toml names all, or an installed service would lack what runs here."""
    settings = tomllib.loads((HOUSE / "pyproject.toml").read_text(encoding="utf-8"))

    inside = [
        each.parent.relative_to(HOUSE)
        for room in ("labels", "scanflow")
        for each in (HOUSE / room).rglob("__init__.py")
    ]
    assert sorted(".".join(each.parts) for each in inside) == sorted(settings["tool"]["setuptools"]["packages"])
