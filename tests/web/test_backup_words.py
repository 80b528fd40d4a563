"""What is said of backups."""

from __future__ import annotations

import doctest

from scanflow.domain.backups import BackupPlace, Backups
from scanflow.web import backup_words


def test_doctests() -> None:
    """Ages have one whole number and its unit."""
    assert 0 == doctest.testmod(backup_words).failed


def test_where_they_go() -> None:
    """The places that count, the shop's own folder without one, or that there is none."""
    untried, plain = BackupPlace("/a", "age1"), BackupPlace("/b")
    assert "Backups go to /own." == backup_words.where_to(Backups((untried,)), "/own")
    assert "Backups go to /b, /c." == backup_words.where_to(Backups((untried, plain, BackupPlace("/c"))), "/own")
    assert backup_words.NOWHERE == backup_words.where_to(Backups(), None)
