"""The shop's days off, and by when an order must leave because of them. No country's calendar is built in."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from typing import Any
from zoneinfo import ZoneInfo

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
"""In the order of `date.weekday`."""

LONGEST = 366
"""Days of one range."""

_RANGE = re.compile(r"([0-9]{4}-[0-9]{2}-[0-9]{2})(?: *(?:/|-|–|to|until) *([0-9]{4}-[0-9]{2}-[0-9]{2}))?")
_DAY = timedelta(days=1)
_END = time.max.replace(fold=1)
"""Of a day, also of one whose last hour comes twice."""


@dataclass(frozen=True, slots=True)
class ClosingDays:
    """When nothing leaves the shop. `weekdays` are names of `WEEKDAYS`, never all seven; `dates` are days and ranges of
    days with both ends, as ISO 8601 writes them: `2026-12-24`, `2026-12-24/2027-01-02`.
    """

    weekdays: tuple[str, ...] = ()
    dates: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if set(self.weekdays) >= set(WEEKDAYS):
            raise ValueError("a shop that is closed on all days never ships")

    @classmethod
    def from_dict(cls, kept: Mapping[str, Any]) -> ClosingDays:
        """What `asdict` made."""
        return cls(**{name: tuple(each) for name, each in kept.items()})

    def last_open(self, day: date) -> date:
        """This day, or the last open one before it."""
        while (first := self._closed_since(day)) is not None:
            day = first - _DAY
        return day

    def open_days(self, after: date, until: date) -> int:
        """How many open days come after the one day, up to the other and with it."""
        days = (after + n * _DAY for n in range(1, (until - after).days + 1))
        return sum(self._closed_since(day) is None for day in days)

    def leave_by(self, ship_by: datetime, zone: ZoneInfo) -> datetime:
        """By when what is to be shipped by then must leave: the end of the last open day, where that day is closed.

        Of two times the later one never becomes the earlier one, so what is ordered by `ship_by` is ordered by this.
        """
        day = ship_by.astimezone(zone).date()
        last = self.last_open(day)
        return ship_by if last == day else datetime.combine(last, _END, zone).astimezone(UTC)

    def _closed_since(self, day: date) -> date | None:
        """The first day for which the shop is closed on this day, for one reason; None where it is open."""
        if WEEKDAYS[day.weekday()] in self.weekdays:
            return day
        return next((first for first, last in _spans(self.dates) if first <= day <= last), None)


@cache
def _spans(dates: tuple[str, ...]) -> tuple[tuple[date, date], ...]:
    return tuple(_span(each) for each in dates)


def _span(words: str) -> tuple[date, date]:
    first, _, last = words.partition("/")
    return date.fromisoformat(first), date.fromisoformat(last or first)


def read_dates(words: str) -> tuple[str, ...]:
    """The `dates` that a person wrote, one or one range on each line, in their order in time.

    ValueError for what is no day, and for a range that ends before it begins or is longer than `LONGEST` days.

    >>> read_dates("2027-04-02\\n2026-12-24 to 2027-01-02")
    ('2026-12-24/2027-01-02', '2027-04-02')
    """
    lines = (" ".join(line.split()) for line in re.split(r"[\n,;]", words))
    return tuple(sorted({_read(line) for line in lines if line}))


def _read(line: str) -> str:
    found = _RANGE.fullmatch(line)
    if found is None:
        raise ValueError(f"“{line[:40]}” is no day. Write one like 2026-12-24, or 2026-12-24 to 2027-01-02.")
    try:
        first, last = (date.fromisoformat(each) for each in (found[1], found[2] or found[1]))
    except ValueError:
        raise ValueError(f"The calendar has no such day: {line}.") from None
    if not timedelta() <= last - first < LONGEST * _DAY:
        raise ValueError(f"{line}: the last day comes after the first, at most {LONGEST} days in all.")
    return f"{first}/{last}" if last > first else f"{first}"


def written(dates: tuple[str, ...]) -> str:
    """The same as a person writes them, one on each line.

    >>> written(("2026-12-24/2027-01-02", "2027-04-02"))
    '2026-12-24 to 2027-01-02\\n2027-04-02'
    """
    return "\n".join(each.replace("/", " to ") for each in dates)
