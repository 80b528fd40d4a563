"""Times as orders write them, in the shop's zone where they bring no offset."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo


def instant(text: str | None, zone: str) -> datetime | None:
    """RFC 3339, or ISO 8601 without offset (the shop's zone), or a date (the end of that day); ValueError else."""
    if not text:
        return None
    text = text.upper()
    if len(text) == 10:
        when = datetime.combine(date.fromisoformat(text), time(23, 59, 59))
    else:
        when = datetime.fromisoformat(text)
    return (when if when.tzinfo else when.replace(tzinfo=ZoneInfo(zone))).astimezone(UTC)
