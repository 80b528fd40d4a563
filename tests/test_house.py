"""The house rules that tools hold: style, types, and which way imports run."""

from __future__ import annotations

import shutil
import subprocess
import sys
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
