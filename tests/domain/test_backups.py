"""Where backups go by themselves, and when one is old."""

from __future__ import annotations

from dataclasses import asdict
from datetime import UTC, datetime, timedelta

import pytest

from scanflow.domain.backups import BackupPlace, Backups, outdated

NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)


def test_the_own_folder_serves_until_a_better_place_counts() -> None:
    """A place whose recovery key was not tried is none yet."""
    plain, tried, untried = BackupPlace("/a"), BackupPlace("/b", "age1", tried=True), BackupPlace("/c", "age1")
    assert (BackupPlace("/own"),) == Backups((untried,)).used("/own")
    assert (plain, tried) == Backups((plain, tried, untried)).used("/own")
    assert () == Backups().used(None)


@pytest.mark.parametrize(
    ("age", "seq", "old"),
    [(4 * HOUR, 7, True), (3.9 * HOUR, 7, False), (400 * HOUR, 8, False), (-HOUR, 7, True), (-HOUR, 8, False)],
    ids=["old", "young", "nothing changed", "made by a clock ahead", "ahead, nothing changed"],
)
def test_outdated(age: timedelta, seq: int, old: bool) -> None:
    """It is so after its time, if something changed since; a backup from the future says nothing of its age."""
    assert old is outdated(NOON - age, seq, NOON, 8, 4 * HOUR)


def test_kept_and_read_again() -> None:
    """What was kept before there were places or numbers has the usual ones."""
    known = Backups((BackupPlace("/a", "age1", tried=True, begun=True),), 12, 3, 2, 1)
    assert known == Backups.from_dict({**asdict(known), "places": [asdict(each) for each in known.places]})
    assert Backups() == Backups.from_dict({})


def test_late() -> None:
    """Two turns may pass, and a day at least: a machine that is off at night is no cause for a word."""
    assert [timedelta(days=1), timedelta(days=2)] == [Backups(every_hours=hours).late for hours in (4, 24)]
