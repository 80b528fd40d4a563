"""Where backups go is said once, in the ledger too."""

from __future__ import annotations

from typing import Any

import pytest
from clients import SQLITE_ONLY

from scanflow.domain import events
from scanflow.domain.backups import BackupPlace, Backups
from scanflow.shop import Shop
from scanflow.storage.views import ledger as ledger_views
from scanflow.workflow import backups
from scanflow.workflow.ports import Invalid, Missing, Refused

pytestmark = SQLITE_ONLY
NUMBERS = {"every_hours": 12, "days": 3, "weeks": 0, "months": 24}


def known(shop: Shop) -> Backups:
    with shop.looking() as unit:
        return unit.settings.backups


def test_a_place_from_its_naming_to_its_end(shop: Shop) -> None:
    """Named, begun, encrypted, tried, with another key, plain, removed: each is kept and told."""
    path = "/media/stick"
    steps: list[Any] = []
    for work in (
        lambda unit: backups.add(unit, backups.NamePlace.of({"path": f" {path}/ "})),
        lambda unit: backups.begin(unit, path),
        lambda unit: backups.encrypt(unit, path, "age1a"),
        lambda unit: backups.tried(unit, path, "age1a"),
        lambda unit: backups.encrypt(unit, path, "age1b"),
        lambda unit: backups.encrypt(unit, path, ""),
        lambda unit: backups.remove(unit, path),
    ):
        shop.act("owner", work)
        steps += known(shop).places or [None]
    assert [
        BackupPlace(path),
        BackupPlace(path, begun=True),
        BackupPlace(path, "age1a", begun=True),
        BackupPlace(path, "age1a", tried=True, begun=True),
        BackupPlace(path, "age1b", begun=True),
        BackupPlace(path, begun=True),
        None,
    ] == steps
    with shop.looking() as unit:
        told = ledger_views.newest(unit.connection)
    assert [events.BackupsSet] * 7 == [type(entry.event) for entry in told]
    assert path == told[1].event.places[0]["path"]


@pytest.mark.parametrize(
    ("path", "code"),
    [
        ("", "bad_path"),
        ("/x" * 201, "bad_path"),
        ("/a\nb", "bad_path"),
        ("sticks/one", "not_absolute"),
        ("/data/shop", "own_folder"),
        ("/data/shop/more/../backups", "own_folder"),
    ],
)
def test_what_can_be_no_place(shop: Shop, path: str, code: str) -> None:
    """It is refused, and nothing changes."""
    with pytest.raises(Invalid) as refused:
        shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace.of({"path": path}), "/data/shop"))
    assert (code, Backups()) == (refused.value.code, known(shop))


def test_places_are_few_and_each_is_named_once(shop: Shop) -> None:
    """The same folder in other words is the same."""
    for number in range(backups.MOST_PLACES - 1):
        shop.act(
            "owner", lambda unit, number=number: backups.add(unit, backups.NamePlace.of({"path": f"/disk/{number}"}))
        )
    codes = []
    for path in ("/disk//0/.", "/disk/last", "/disk/more"):
        try:
            shop.act("owner", lambda unit, path=path: backups.add(unit, backups.NamePlace.of({"path": path})))
        except Refused as error:
            codes.append(error.code)
    assert (["taken", "too_many"], backups.MOST_PLACES) == (codes, len(known(shop).places))


def test_how_often_and_how_many(shop: Shop) -> None:
    """Four whole numbers within their limits, all or none."""
    shop.act("owner", lambda unit: backups.plan(unit, backups.Plan(**NUMBERS)))
    assert Backups((), 12, 3, 0, 24) == known(shop)
    for wrong in ({"every_hours": 0}, {"days": 0}, {"weeks": None}, {"months": 241}):
        with pytest.raises(Invalid):
            shop.act("owner", lambda unit, wrong=wrong: backups.plan(unit, backups.Plan.of({**NUMBERS, **wrong})))
    assert Backups((), 12, 3, 0, 24) == known(shop)


def test_a_trial_of_an_older_key_proves_nothing(shop: Shop) -> None:
    """A place that has got another key, or was removed, is not tried by it."""
    shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace.of({"path": "/disk"})))
    shop.act("owner", lambda unit: backups.encrypt(unit, "/disk", "age1new"))
    with pytest.raises(Refused):
        shop.act("owner", lambda unit: backups.tried(unit, "/disk", "age1old"))
    with pytest.raises(Missing):
        shop.act("owner", lambda unit: backups.tried(unit, "/gone", "age1new"))
    assert (BackupPlace("/disk", "age1new"),) == known(shop).places
