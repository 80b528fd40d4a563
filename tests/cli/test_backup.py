"""A shop is backed up while it is served, and stands again on a new machine by one command."""

from __future__ import annotations

import hashlib
import json
import shutil
import urllib.error
import urllib.request
from dataclasses import replace
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
from click.testing import CliRunner, Result
from clients import new_token
from started import serving

from scanflow.cli import main
from scanflow.domain.access import Role
from scanflow.domain.things import Item, Photo
from scanflow.shop import Shop
from scanflow.storage import backups
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.workflow import stock


def run(*arguments: object, **environment: str) -> Result:
    return CliRunner().invoke(main, [str(argument) for argument in arguments], env=environment)


def told(*arguments: object, **environment: str) -> Any:
    """What a command reports as JSON."""
    result = run(*arguments, "--json", **environment)
    assert 0 == result.exit_code, result.output
    return json.loads(result.stdout)


@pytest.fixture
def folder(sqlite_template: Path, tmp_path: Path) -> Path:
    """A shop's folder: three derailleurs in stock, one with a picture."""
    (tmp_path / "shop").mkdir()
    shutil.copy(sqlite_template, tmp_path / "shop" / "scanflow.db")
    shop = Shop(Database(sqlite_url(tmp_path / "shop")))
    shown = Photo(hashlib.sha256(b"picture").hexdigest(), b"picture", b"thumb")
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=3, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=6)))
    for number in range(3):
        stay = shop.act(
            "owner",
            lambda unit, number=number: stock.put_away(unit, stock.PutAway(title=f"Derailleur {number}", section="D")),
        )
    shop.act("owner", lambda unit: unit.add(shown))
    shop.act("owner", lambda unit: unit.put(replace(unit.get(Item, stay.item), photo=shown.hash)))
    shop.close()
    return tmp_path / "shop"


def token(folder: Path, name: str) -> str:
    shop = Shop(Database(sqlite_url(folder)))
    secret = new_token(shop, name, Role.OWNER)
    shop.close()
    return secret


def slots(address: str, secret: str) -> Any:
    call = urllib.request.Request(f"{address}/api/slots", headers={"Authorization": f"Bearer {secret}"})
    with urllib.request.urlopen(call, timeout=20) as answer:
        return json.load(answer)


def test_a_new_machine_has_the_same_things(folder: Path, tmp_path: Path) -> None:
    """A drill: backed up while it is served; then one command, open the shop, and the same things stand there. Old
    tokens end, and the link that was printed sets the password, also after the service has printed one of its own.
    """
    place, new = tmp_path / "stick", tmp_path / "new machine" / "data"
    old = token(folder, "old")
    with serving("--data", folder) as (address, _):
        before = slots(address, old)
        taken = told("backup", place, "--data", folder)
        assert 200 == urllib.request.urlopen(f"{address}/api/health", timeout=20).status
    shutil.rmtree(folder)
    restored = told("restore", place, "--data", new)
    assert (3, taken["seq"], taken["name"]) == tuple(restored[name] for name in ("things", "seq", "name"))
    assert "0o700" == oct(new.stat().st_mode & 0o777)
    secret = token(new, "new")
    with serving("--data", new) as (address, _):
        assert before == slots(address, secret)
        with pytest.raises(urllib.error.HTTPError, match="401"):
            slots(address, old)
        link = address + urlsplit(restored["set_up"]).path
        assert 200 == urllib.request.urlopen(link, timeout=20).status


def test_an_encrypted_backup_by_command(folder: Path, tmp_path: Path) -> None:
    """It is restored with the key in the environment or in a file, and refused with status 1 without."""
    recipient, key = backups.new_key()
    assert told("backup", tmp_path / "place", "--data", folder, "--recipient", recipient)["encrypted"]
    refused = run("restore", tmp_path / "place", "--data", tmp_path / "new")
    assert (1, True) == (refused.exit_code, "Give its recovery key" in refused.output)
    (tmp_path / "key.txt").write_text(f"{key}\n")
    assert (
        3 == told("restore", tmp_path / "place", "--data", tmp_path / "a", "--key-file", tmp_path / "key.txt")["things"]
    )
    assert 3 == told("restore", tmp_path / "place", "--data", tmp_path / "b", SCANFLOW_RECOVERY_KEY=key)["things"]


def test_in_words(folder: Path, tmp_path: Path) -> None:
    """Both say what they did; which of several is chosen by the begin of its name; a second restore is refused."""
    first = run("backup", tmp_path / "place", "--data", folder)
    token(folder, "later")
    run("backup", tmp_path / "place", "--data", folder)
    (name,) = (each.name for each in backups.listed(tmp_path / "place")[1:])
    assert f"Backed up to {tmp_path / 'place' / name}, as of entry" in first.output
    done = run("restore", tmp_path / "place", "--data", tmp_path / "new", "--which", name[:-7])
    assert "Restored 3 things as of entry" in done.output and name in done.output
    assert f"scanflow serve --data {tmp_path / 'new'}" in done.output
    again = run("restore", tmp_path / "place", "--data", tmp_path / "new")
    assert (1, True) == (again.exit_code, "holds a shop, or what is left of one" in again.output)
    other = run("restore", tmp_path / "place", "--data", tmp_path / "other", "--which", "1999")
    assert (1, True) == (other.exit_code, name in other.output)


def test_wrong_usage(folder: Path, tmp_path: Path) -> None:
    """A folder without a shop is not made one; neither of, or both folder and database, is wrong usage."""
    nothing = run("backup", tmp_path / "place", "--data", tmp_path / "nothing")
    assert (1, True) == (nothing.exit_code, "There is no shop in" in nothing.output)
    assert not (tmp_path / "nothing").exists()
    assert 2 == run("restore", folder).exit_code
    assert 2 == run("restore", folder, "--data", tmp_path / "new", "--database", "postgresql://host/name").exit_code
    assert 1 == run("restore", folder, "--data", tmp_path / "new").exit_code
