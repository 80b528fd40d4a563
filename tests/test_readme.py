"""The README's commands: what a newcomer copies is what runs."""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[1]
README = (HOUSE / "README.md").read_text(encoding="utf-8")
BLOCK = re.compile(r"^```sh\n(.*?)^```$", re.MULTILINE | re.DOTALL)


def blocks() -> list[str]:
    return BLOCK.findall(README)


def test_set_up_has_the_only_two_sh_blocks() -> None:
    """Under Set up stand two sh blocks, and elsewhere none."""
    set_up = README.split("\n## Set up\n")[1].split("\n## ")[0]
    assert 2 == len(BLOCK.findall(set_up))
    assert 2 == len(blocks())


def test_the_blocks_end_with_the_demo_and_with_the_tests() -> None:
    """The first block's last command is the demo, the second's the tests."""
    assert [".venv/bin/scanflow demo", ".venv/bin/python -m pytest -q -n 2"] == [
        block.splitlines()[-1] for block in blocks()
    ]


@pytest.mark.parametrize("name", ["README.md", "pyproject.toml", ".ci/run"])
def test_no_registry_is_named(name: str) -> None:
    """Where packages come from is the machine's own setting: no address of a registry, and no option that sets one."""
    text = (HOUSE / name).read_text(encoding="utf-8")
    assert [] == re.findall(r"https?://\S*|\w+\.debian\.org|pypi\.org|--(?:extra-)?index-url|--find-links", text)


@pytest.mark.parametrize("status", [0, 7])
def test_ci_runs_the_second_block_of_the_readme_as_it_stands(tmp_path: Path, status: int) -> None:
    """In a README whose blocks only leave traces, .ci/run runs the second, at the top level, and has its status."""
    (tmp_path / ".ci").mkdir()
    shutil.copy(HOUSE / ".ci/run", tmp_path / ".ci/run")
    first, second = blocks()
    trace = f"echo second > ran\nfor i in 1 2; do\n    echo \"'$i'\" >> ran\ndone\n[ {status} = 0 ] || exit {status}\n"
    changed = README.replace(first, "echo first > ran\n").replace(second, trace)
    (tmp_path / "README.md").write_text(changed, encoding="utf-8")
    done = subprocess.run([tmp_path / ".ci/run"], cwd="/", capture_output=True, text=True)
    assert status == done.returncode, done.stderr
    assert "second\n'1'\n'2'\n" == (tmp_path / "ran").read_text()


def test_ci_fails_without_a_second_block(tmp_path: Path) -> None:
    """A README that lost its second block is an error, not a run of nothing."""
    (tmp_path / ".ci").mkdir()
    shutil.copy(HOUSE / ".ci/run", tmp_path / ".ci/run")
    (tmp_path / "README.md").write_text(README.replace(f"```sh\n{blocks()[1]}```", ""), encoding="utf-8")
    assert 2 == subprocess.run([tmp_path / ".ci/run"], capture_output=True).returncode


TEXTS = ("README.md", "DEVELOPERS.md", "scanflow/GUIDE.md")


@pytest.mark.parametrize("name", TEXTS)
def test_no_link_is_dead(name: str) -> None:
    """What a text links to is in the clone."""
    text = (HOUSE / name).read_text(encoding="utf-8")
    linked = re.findall(r"\]\(([^)#]+)\)", text)
    assert [] == [path for path in linked if not (HOUSE / name).parent.joinpath(path).exists()]


def test_pictures_are_there_and_small() -> None:
    """Every picture that README and guide show is in the clone, and all of them stay below 1 MB."""
    pictures = {
        (HOUSE / name).parent.joinpath(path).resolve()
        for name in TEXTS
        for path in re.findall(r'<img src="([^"]+)"', (HOUSE / name).read_text(encoding="utf-8"))
    }
    assert pictures
    assert [] == [picture for picture in pictures if not picture.is_file()]
    assert sum(picture.stat().st_size for picture in pictures) < 1_000_000
