"""The shop as a whole: its settings, its backups, its account."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Self

from scanflow.domain.events.kinds import Event, event


@event("settings changed", moves=())
class SettingsChanged(Event):
    settings: Mapping[str, Any]

    def data(self) -> dict[str, Any]:
        return dict(self.settings)

    @classmethod
    def of(cls, data: Mapping[str, Any]) -> Self:
        return cls(settings=data)


@event("backups set", moves=())
class BackupsSet(Event):
    places: tuple[Mapping[str, Any], ...]
    every_hours: int
    days: int
    weeks: int
    months: int


@event("backup downloaded", moves=())
class BackupDownloaded(Event):
    backup: str


@event("restored", moves=())
class ShopRestored(Event):
    """The shop stands again as the backup of this name has it, up to entry `seq`."""

    from_: str
    seq: int


@event("accepted amiss", moves=())
class AcceptedAmiss(Event):
    """A person says to go on with what a verification found; it is not said again."""

    reason: str
    found: tuple[str, ...]


@event("baseline", moves=())
class Baseline(Event):
    """The account tells anew of all rows: these are those from the `first` on, `of` so many."""

    first: int
    of_: int


@event("changed", moves=())
class Changed(Event):
    """Rows changed, and nothing more is said of why."""
