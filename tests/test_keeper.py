"""Backups are made by themselves: at the first start, when they are due, wherever a place can take them."""

from __future__ import annotations

import logging
import os
import time
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from clients import SQLITE_ONLY
from damaged_data import DataFolder

from scanflow import keeper as keeping
from scanflow.domain.backups import BackupPlace
from scanflow.house import JOBS
from scanflow.shop import Shop
from scanflow.storage import backups as copies
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.web.backup_words import sentences
from scanflow.workflow import backups, stock

HOUR = timedelta(hours=1)


class Clock:
    """A shop's clock that a test puts forward."""

    def __init__(self) -> None:
        self.now = datetime.fromisoformat("2026-05-04T12:00:00+00:00")

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def shop(database_url: str, readers: Readers, clock: Clock, tmp_path: Path) -> Iterator[Shop]:
    """A shop with a folder of its own on this machine."""
    shop = Shop(Database(database_url), readers, clock, folder=tmp_path)
    yield shop
    shop.keeper.close()
    shop.database.close()


def look(shop: Shop) -> None:
    """The service's look for what is due, until it is done."""
    next(job for job in JOBS if "backups" in job.name).work(shop)
    assert shop.keeper.wait(30)


def named(shop: Shop, folder: Path) -> BackupPlace:
    folder.mkdir()
    return shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path=str(folder))))


def work(shop: Shop) -> None:
    """Something changes."""
    with shop.looking() as unit:
        letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[unit.seq % 26]
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code=letters, name="Levers", slots_per_bin=3, colour="yellow")
        ),
    )


def said(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return sentences(unit.settings.backups, shop.keeper, unit.seq, unit.at)


def count(folder: Path) -> int:
    return len(copies.listed(folder))


def test_the_first_start_makes_the_first_backup(shop: Shop, tmp_path: Path) -> None:
    """It lies in the shop's own folder, which is said for as long as no better place is named."""
    look(shop)
    (made,) = copies.listed(tmp_path / "backups")
    copies.check(tmp_path / "backups", made)
    assert ["Backups are on this disk only. Name a place on another one."] == said(shop)


@SQLITE_ONLY
def test_what_is_due(shop: Shop, clock: Clock, tmp_path: Path) -> None:
    """The next backup comes after its time and only if something changed; one at a press comes at once."""
    own, made = tmp_path / "backups", []
    shop.act("owner", lambda unit: backups.plan(unit, backups.Plan(every_hours=4, days=7, weeks=5, months=12)))
    for ahead, changes in ((0, False), (5, False), (3, True), (1, False)):
        clock.now += ahead * HOUR
        if changes:
            work(shop)
        look(shop)
        made.append(shop.keeper.standing(BackupPlace(str(own))).newest)
    shop.keeper.now()
    assert shop.keeper.wait(30)
    made.append(shop.keeper.standing(BackupPlace(str(own))).newest)
    seqs = [each.seq for each in made if each]
    assert [1, 1, 2, 2, 2] == seqs
    assert [0, 0, 8, 8, 9] == [(each.at - made[0].at) / HOUR for each in made if each and made[0]]


@SQLITE_ONLY
def test_older_ones_are_thinned_out(shop: Shop, clock: Clock, tmp_path: Path) -> None:
    """Of a day the newest is kept."""
    for _ in range(3):
        work(shop)
        look(shop)
        clock.now += 4 * HOUR
    (kept,) = copies.listed(tmp_path / "backups")
    assert clock.now - 4 * HOUR == kept.at


@SQLITE_ONLY
def test_a_named_place_takes_over(shop: Shop, tmp_path: Path) -> None:
    """It gets its first backup at once; then nothing more goes to the shop's own folder, and all is well."""
    look(shop)
    place = named(shop, tmp_path / "stick")
    work(shop)
    look(shop)
    assert (1, 1, []) == (count(tmp_path / "backups"), count(tmp_path / "stick"), said(shop))
    with shop.looking() as unit:
        assert replace(place, begun=True) == unit.settings.backups.place(place.path)


def test_the_data_folder_deleted_while_it_is_served(readers: Readers, clock: Clock, tmp_path: Path) -> None:
    """It is not made anew for a backup of nothing, so that the right one can be put back; the reason is told."""
    folder = DataFolder(tmp_path / "shop")
    shop = Shop(folder.open(), readers, clock, folder=folder.path)
    with closing(shop.database), closing(shop.keeper):
        place = Path(shop.keeper.own or "")
        look(shop)
        assert 1 == count(place)
        work(shop)
        clock.now += 5 * HOUR
        folder.path.rename(tmp_path / "elsewhere")
        look(shop)
        assert not folder.path.exists()
        assert "deleted or moved away" in shop.keeper.standing(BackupPlace(str(place))).problem
        (tmp_path / "elsewhere").rename(folder.path)
        shop.keeper.now()
        assert shop.keeper.wait(30)
        assert [clock.now] == [each.at for each in copies.listed(place)]


@SQLITE_ONLY
def test_a_place_that_is_gone(shop: Shop, clock: Clock, tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    """It is said, and logged once; the other place gets its backups. An empty folder in its stead stays empty; when
    it is back it gets one, and what it held is whole.
    """
    stick, disk = tmp_path / "stick", tmp_path / "disk"
    named(shop, stick)
    named(shop, disk)
    look(shop)
    stick.rename(tmp_path / "pocket")
    for empty in (False, True):
        if empty:
            stick.mkdir()
        clock.now += 5 * HOUR
        work(shop)
        look(shop)
        words = "shows no backups" if empty else "is not there"
        assert [True] == [f"{stick} {words}" in each for each in said(shop)]
    assert [] == list(stick.iterdir())
    assert 1 == len([each for each in caplog.records if each.levelno == logging.WARNING])
    assert shop.keeper.standing(BackupPlace(str(disk))).newest == copies.listed(disk)[0]
    assert clock.now == copies.listed(disk)[0].at
    stick.rmdir()
    (tmp_path / "pocket").rename(stick)
    (old,) = copies.listed(stick)
    copies.check(stick, old)
    look(shop)
    assert ([], clock.now) == (said(shop), copies.listed(stick)[0].at)


@SQLITE_ONLY
def test_a_place_that_fails_is_left_alone_for_a_while(shop: Shop, tmp_path: Path, clock: Clock) -> None:
    """It holds another shop's backups: each look does not try it again, a press does."""
    other = Shop(Database(f"sqlite:///{tmp_path / 'other.db'}"), shop.readers, clock)
    (tmp_path / "disk").mkdir()
    copies.take(other.database, tmp_path / "disk", clock())
    other.database.close()
    place = shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path=str(tmp_path / "disk"))))
    tries = []
    for again in (shop.keeper.check, shop.keeper.check, shop.keeper.now):
        again()
        assert shop.keeper.wait(30)
        tries.append(shop.keeper.standing(place).failures)
    assert ([1, 1, 2], "other_shop") == (tries, shop.keeper.standing(place).code)
    assert ["another shop" in each for each in said(shop)] == [True]


@SQLITE_ONLY
def test_a_place_that_does_not_answer(shop: Shop, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Its visit is left behind, and the next place has its turn. A pipe that nobody writes to never answers."""
    monkeypatch.setattr(keeping, "PATIENCE", 1.0)
    stuck, disk = named(shop, tmp_path / "stuck"), named(shop, tmp_path / "disk")
    (tmp_path / "stuck" / "2026-05-04T000000Z-000001.sqlite").touch()
    pipe = tmp_path / "stuck" / "2026-05-04T000000Z-000001.list"
    os.mkfifo(pipe)
    look(shop)
    assert f"{stuck.path} does not answer. Check it." in said(shop)
    end = time.monotonic() + 20  # on a busy machine its visit may seem long too
    while count(Path(disk.path)) == 0:
        assert time.monotonic() < end
        time.sleep(0.05)
    look(shop)
    assert (None, True) == (shop.keeper.doing, f"{stuck.path} does not answer. Check it." in said(shop))
    with pipe.open("w"):
        pipe.unlink()  # it answers at last: its thread ends, and nobody else waits there


@SQLITE_ONLY
def test_old_backups_are_told_of(shop: Shop, clock: Clock, tmp_path: Path) -> None:
    """Once something changed since, and a day at least has passed without a new one."""
    named(shop, tmp_path / "disk")
    look(shop)
    clock.now += timedelta(days=9)
    with shop.looking() as unit:
        made = shop.keeper.standing(unit.settings.backups.places[0]).newest
    assert made is not None and made.seq < 3
    assert ["The newest backup is 9 days old."] == said(shop)
    look(shop)
    assert [] == said(shop)
    clock.now += timedelta(days=9)
    assert [] == said(shop), "nothing changed since"


@SQLITE_ONLY
def test_an_encrypted_place_counts_once_its_key_was_tried(shop: Shop, tmp_path: Path, clock: Clock) -> None:
    """Until then backups go to the shop's own folder; the trial's backup is the first, and opens with the key."""
    place = named(shop, tmp_path / "stick")
    recipient, key = copies.new_key()
    place = shop.act("owner", lambda unit: backups.encrypt(unit, place.path, recipient))
    look(shop)
    assert (1, 0) == (count(tmp_path / "backups"), count(tmp_path / "stick"))
    untried = [
        "Backups are on this disk only. Name a place on another one.",
        f"No backup in {place.path} counts yet. Type its recovery key.",
    ]
    assert untried == said(shop)
    shop.keeper.try_key(place, copies.new_key()[1], "owner")
    assert shop.keeper.wait(30)
    assert "another recovery key" in shop.keeper.standing(place).problem
    assert untried == said(shop)
    clock.now += HOUR
    shop.keeper.try_key(place, key.lower(), "owner")
    assert shop.keeper.wait(30)
    assert [] == said(shop)
    made = copies.listed(tmp_path / "stick")[0]
    copies.check(tmp_path / "stick", made, key)
    with shop.looking() as unit:
        assert (BackupPlace(place.path, recipient, tried=True, begun=True),) == unit.settings.backups.places


@SQLITE_ONLY
def test_it_ends_with_the_service(shop: Shop, tmp_path: Path) -> None:
    """What comes after that is not begun; nothing is left half made under a name of a backup."""
    shop.keeper.now()
    shop.keeper.close()
    shop.keeper.now()
    assert shop.keeper.wait(1)
    for made in copies.listed(tmp_path / "backups") if (tmp_path / "backups").exists() else []:
        copies.check(tmp_path / "backups", made)


@SQLITE_ONLY
def test_one_thing_at_a_time(shop: Shop, tmp_path: Path) -> None:
    """A second press while one waits adds nothing; a look waits behind what is done, once; each trial is done."""
    places = [named(shop, tmp_path / name) for name in ("stick", "disk")]
    keys = [copies.new_key() for _ in places]
    shop.keeper.now()
    assert shop.keeper.doing is not None and "Backing up" == shop.keeper.doing.words
    for again in (shop.keeper.now, shop.keeper.check, shop.keeper.check):
        again()
    for place, (recipient, key) in zip(places, keys, strict=True):
        found = shop.act("owner", lambda unit, at=place.path, to=recipient: backups.encrypt(unit, at, to))
        shop.keeper.try_key(found, key, "owner")
    assert shop.keeper.wait(30)
    with shop.looking() as unit:
        assert [True, True] == [each.tried for each in unit.settings.backups.places]
    assert shop.keeper.doing is None
