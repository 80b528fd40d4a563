"""What there is to say of the backups, on their page, on Today and at the start of the service."""

from __future__ import annotations

from datetime import datetime, timedelta

from scanflow.domain.backups import Backups, outdated
from scanflow.keeper import Keeper
from scanflow.storage.backups import Backup

HERE_ONLY = "Backups are on this disk only. Name a place on another one."
NOWHERE = "No backups are made. Name a place for them."


def age(since: timedelta) -> str:
    """How old something is, with its unit.

    >>> age(timedelta(seconds=40)), age(timedelta(minutes=1)), age(timedelta(hours=47)), age(timedelta(days=9.5))
    ('0 minutes', '1 minute', '47 hours', '9 days')
    """
    minutes = max(0, int(since.total_seconds()) // 60)
    number, unit = (minutes, "minute") if minutes < 120 else (minutes // 60, "hour")
    if number >= 48 and unit == "hour":
        number, unit = number // 24, "day"
    return f"{number} {unit}{'' if number == 1 else 's'}"


def newest(known: Backups, keeper: Keeper) -> Backup | None:
    """The newest backup at any place, as far as they were looked at."""
    found = (keeper.standing(place).newest for place in known.used(keeper.own))
    return max((each for each in found if each is not None), key=lambda each: each.at, default=None)


def sentences(known: Backups, keeper: Keeper, seq: int, now: datetime) -> list[str]:
    """What a person should know or do about them; nothing where all is well. From memory: no disk is asked."""
    used = known.used(keeper.own)
    if not used:
        return [NOWHERE]
    said = [HERE_ONLY] if any(place.path == keeper.own for place in used) else []
    said += [
        f"No backup in {place.path} counts yet. Type its recovery key." for place in known.places if not place.counts
    ]
    standings = [keeper.standing(place) for place in used]
    said += [each.problem for each in standings if each.problem]
    last = newest(known, keeper)
    if last is not None and outdated(last.at, last.seq, now, seq, known.late):
        said.append(f"The newest backup is {age(now - last.at)} old.")
    return said


def where_to(known: Backups, own: str | None) -> str:
    """Where backups go, in one line."""
    places = ", ".join(place.path for place in known.used(own))
    return f"Backups go to {places}." if places else NOWHERE
