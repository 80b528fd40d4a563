"""Where backups go, how often one is made and how many are kept."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any


@dataclass(frozen=True, slots=True)
class BackupPlace:
    """A folder for backups. `recipient` is the public half of its recovery key, empty where backups are plain.

    `tried`: a backup made for this recipient was read back with the recovery key. `begun`: it holds a backup; where it
    shows none any more its disk is away, for the system shows an empty folder where a stick was.
    """

    path: str
    recipient: str = ""
    tried: bool = False
    begun: bool = False

    @property
    def counts(self) -> bool:
        """Whether backups there are known to be of use: plain, or the recovery key was tried."""
        return self.tried or not self.recipient


@dataclass(frozen=True, slots=True)
class Backups:
    """`every_hours`: so long after the newest backup of a place the next is made, if something changed since.

    Of the last `days`, `weeks` and `months` the newest backup of each is kept.
    """

    places: tuple[BackupPlace, ...] = ()
    every_hours: int = 4
    days: int = 7
    weeks: int = 5
    months: int = 12

    @classmethod
    def from_dict(cls, kept: Mapping[str, Any]) -> Backups:
        """What `asdict` made; what was not there yet has its usual value."""
        return cls(**{**kept, "places": tuple(BackupPlace(**each) for each in kept.get("places", ()))})

    def place(self, path: str) -> BackupPlace | None:
        """The place of this path, if it is named."""
        return next((each for each in self.places if each.path == path), None)

    def used(self, own: str | None) -> tuple[BackupPlace, ...]:
        """The places that backups go to by themselves: those that count, else `own`, the folder in the shop's data."""
        named = tuple(each for each in self.places if each.counts)
        return named or ((BackupPlace(own),) if own else ())

    @property
    def every(self) -> timedelta:
        return timedelta(hours=self.every_hours)

    @property
    def late(self) -> timedelta:
        """From this age on the newest backup is too old, if something changed since: two turns, a day at least."""
        return max(2 * self.every, timedelta(days=1))


def outdated(at: datetime, seq: int, now: datetime, now_seq: int, age: timedelta) -> bool:
    """Whether a backup made at `at`, of entry `seq`, is that old and something changed since.

    A time that is still to come was told by a wrong clock: it counts as old.
    """
    return seq != now_seq and (now - at >= age or at > now)
