"""`scanflow verify` and `scanflow health`, and what other commands say where something is amiss."""

from __future__ import annotations

import json
import shutil
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result
from damaged_data import DataFolder, damage, filled_database, write_entries

from scanflow.cli import main


@pytest.fixture
def folder(tmp_path: Path) -> DataFolder:
    folder = DataFolder(tmp_path / "shop")
    filled_database(folder.open()).close()
    return folder


def run(folder: DataFolder, *arguments: str) -> Result:
    return CliRunner().invoke(main, [*arguments, "--data", str(folder.path)])


def told(folder: DataFolder, *arguments: str) -> Any:
    return json.loads(run(folder, *arguments, "--json").stdout)


def damaged(folder: DataFolder) -> DataFolder:
    with closing(folder.open()) as database:
        damage(database, "UPDATE items SET title = 'Bell' WHERE n = 2")
    return folder


def test_a_shop_that_is_well(folder: DataFolder) -> None:
    """Status 0, whole and in brief; health says when all was verified last."""
    assert None is told(folder, "health")["verified_whole"]
    whole, brief = run(folder, "verify"), told(folder, "verify", "--brief")
    assert (0, True) == (whole.exit_code, "Nothing is amiss, up to entry" in whole.output)
    assert ([], False) == (brief["amiss"], brief["whole"])
    state = told(folder, "health")
    assert ("ok", "sqlite", brief["ledger"]) == (state["status"], state["database"], state["ledger"])
    assert state["verified"] == state["ledger"] and state["verified_whole"]
    assert (0, True) == ((plain := run(folder, "health")).exit_code, "Nothing is amiss" in plain.output)


def test_what_is_amiss_is_named_and_accepted(folder: DataFolder) -> None:
    """Status 1 with words and what to do, again at each call, until it is accepted with a reason."""
    damaged(folder)
    for _ in range(2):
        result = run(folder, "verify")
        assert (1, True) == (result.exit_code, "other words than the ledger" in result.output)
        assert "scanflow restore" in result.output and "1 thing is amiss." in result.output
    assert ["row"] == [each["code"] for each in told(folder, "verify", "--brief")["amiss"]]
    assert (1, "amiss") == (run(folder, "health").exit_code, told(folder, "health")["status"])
    refused = run(folder, "token", "printer")
    assert (1, True) == (refused.exit_code, "Error: Nothing is recorded" in refused.output)
    assert 0 == run(folder, "verify", "--accept", "I did that").exit_code
    assert 0 == run(folder, "verify").exit_code
    assert 0 == run(folder, "token", "printer").exit_code


def test_found_well_again(folder: DataFolder, tmp_path: Path) -> None:
    """The right file put back, a whole verification lets the shop go on; one in brief does not."""
    shutil.copy(folder.file, tmp_path / "older.db")
    with closing(folder.open()) as database:
        write_entries(database, 3)
    shutil.copy(folder.file, tmp_path / "newer.db")
    shutil.copy(tmp_path / "older.db", folder.file)
    assert ["older"] == [each["code"] for each in told(folder, "health")["amiss"]]
    shutil.copy(tmp_path / "newer.db", folder.file)
    assert 1 == run(folder, "verify", "--brief").exit_code
    assert 0 == run(folder, "verify").exit_code
    assert "ok" == told(folder, "health")["status"]


def test_usage(folder: DataFolder) -> None:
    """What is accepted was read as a whole."""
    assert 2 == run(folder, "verify", "--brief", "--accept", "Because").exit_code


def test_a_missing_database(folder: DataFolder) -> None:
    """Every command says it in a line, status 1, and makes nothing."""
    folder.file.unlink()
    for command in (["verify"], ["health"], ["token", "printer"], ["serve", "--port", "0"]):
        result = run(folder, *command)
        assert (1, True) == (result.exit_code, "is missing. A shop was here" in result.output), result.output
    assert not folder.file.exists()


@pytest.mark.parametrize("command", ["verify", "health"])
def test_a_folder_without_a_shop(tmp_path: Path, command: str) -> None:
    """Of a mistyped folder nothing is said to be well, and no shop is begun there."""
    folder = DataFolder(tmp_path / "shpo")
    result = run(folder, command)
    assert (1, True) == (result.exit_code, "There is no shop in" in result.output)
    assert [] == list(folder.path.iterdir())


@pytest.mark.parametrize("name", ["what?x", "100%20 #&ä"])
def test_any_name_of_a_folder(tmp_path: Path, name: str) -> None:
    """The database and its note lie within the folder that was named, whatever its name has in it."""
    folder = DataFolder(tmp_path / name)
    assert 0 == run(folder, "token", "printer").exit_code
    assert {"scanflow.db", "shop.json", "shop.last"} == {each.name for each in folder.path.iterdir()}
    assert [name] == [each.name for each in tmp_path.iterdir()]
    assert 0 == run(folder, "verify").exit_code


def test_the_newest_backup_is_named(folder: DataFolder, tmp_path: Path) -> None:
    """By all that says what to do where something is amiss, also where no database is left to ask."""
    place = tmp_path / "stick"
    made = json.loads(run(folder, "backup", str(place), "--json").stdout)["name"]
    named = f"The newest backup is {place / made}, of "
    assert str(place / made) == told(folder, "health")["backup"]
    damaged(folder)
    assert named in run(folder, "verify").output
    assert named in told(folder, "health")["detail"]
    assert named in run(folder, "token", "printer").output
    for each in folder.path.glob("scanflow.db*"):
        each.unlink()
    assert named in run(folder, "health").output
