"""Counts, their looks, and what was done about their findings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from scanflow.domain.events.kinds import LEFT_OUT, CountId, Event, NamedThing, Noun, event


@event("stocktake opened", moves=())
class StocktakeOpened(Event):
    """`sample`: the bins that were chosen, where it is not about all of its area."""

    stocktake: CountId
    area: str
    note: str
    sample: Mapping[str, Any] | None = field(default=None, metadata=LEFT_OUT)


@event("stocktake cancelled", moves=())
class StocktakeCancelled(Event):
    stocktake: CountId


@event("stocktake closed", moves=())
class StocktakeClosed(Event):
    """How many places were looked at, and how many findings of each kind there were."""

    stocktake: CountId
    looked: int
    findings: Mapping[str, int]


@event("looked", moves=())
class Looked(Event):
    stocktake: CountId
    key: str
    place: str
    how: str
    decoded: tuple[str, ...]
    matched: tuple[str, ...]
    unread: int
    doubted: tuple[str, ...] = ()
    photo: str | None


@event("look dropped", moves=())
class LookDropped(Event):
    stocktake: CountId
    place: str
    keys: tuple[str, ...]


@event("photos deleted", moves=())
class PhotosDeleted(Event):
    stocktake: CountId
    photos: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class OfFinding(Event):
    """Something was done about a finding. `after` is the ledger's last entry before that."""

    stocktake: CountId
    finding: str
    how: str
    after: int

    @property
    def subject(self) -> str:
        """What the finding is about: a slot's code, unless it is of a foreign card or a place."""
        return self.finding.partition("-")[2]

    def moved(self) -> tuple[NamedThing, ...]:
        """What is ignored stays where it is."""
        return () if self.how == "ignore" else (NamedThing(Noun.SLOT, self.subject),)


@event("finding resolved", moves=("finding",))
class FindingResolved(OfFinding):
    reason: str
    sure: bool


@event("finding reopened", moves=("finding",))
class FindingReopened(OfFinding):
    """What was done is taken back."""
