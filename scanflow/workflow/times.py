"""Times as orders write them, in the shop's zone where they bring no offset."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo

YEARS = range(2000, 2200)
"""Years that anything told to the shop can be of: others are slips of a hand, a file or a clock, and at either end of
what a date can say another zone would be beyond it.
"""

HOW = f"Write times like 2026-11-03T14:05:00+01:00, of the years {YEARS[0]} to {YEARS[-1]}."
"""What to say of a text that is no such time."""


def instant(text: str | None, zone: str) -> datetime | None:
    """RFC 3339, or ISO 8601 without offset (the shop's zone), or a date (the end of that day).

    ValueError for anything else, and for a year that is not one of `YEARS`.
    """
    if not text:
        return None
    text = text.upper()
    if len(text) == 10:
        when = datetime.combine(date.fromisoformat(text), time(23, 59, 59))
    else:
        when = datetime.fromisoformat(text)
    if when.year not in YEARS:
        raise ValueError(f"{text} is of no year from {YEARS[0]} to {YEARS[-1]}")
    return (when if when.tzinfo else when.replace(tzinfo=ZoneInfo(zone))).astimezone(UTC)


def clock(at: datetime, now: datetime, zone: str) -> str:
    """A time in this zone: the hour, and the day unless it is today."""
    local, today = (each.astimezone(ZoneInfo(zone)) for each in (at, now))
    return f"{local:%H:%M}" if local.date() == today.date() else f"{local.day} {local:%b %H:%M}"
