"""Dates and times as shops write them, to ISO 8601."""

import re
from collections.abc import Iterable
from datetime import date, datetime
from enum import StrEnum

from scanflow.workflow.times import YEARS


class DateOrder(StrEnum):
    """Which of two numbers before a year is the day."""

    DAY_FIRST = "day-first"
    MONTH_FIRST = "month-first"


_YEAR = r"(?P<year>\d{4})"
_DATE = rf"(?:{_YEAR}(?P<dash>[-/.])(?P<month>\d{{1,2}})(?P=dash)(?P<day>\d{{1,2}}))"
_NUMBERS = rf"(?:(?P<first>\d{{1,2}})(?P<mark>[-/.])(?P<second>\d{{1,2}})(?P=mark){_YEAR.replace('year', 'last')})"
_CLOCK = r"(?P<hour>\d{1,2}):(?P<minute>\d\d)(?P<rest>:\d\d(?:\.\d{1,9})?)?(?: ?(?P<half>[ap])\.?m\.?)?"
_OFFSET = r" ?(?P<offset>z|[+-]\d\d:?\d\d)"
_WHEN = re.compile(rf"(?:{_DATE}|{_NUMBERS})(?:(?:t|,? ){_CLOCK}(?:{_OFFSET})?)?", re.ASCII | re.IGNORECASE)


def read_date(text: str, order: DateOrder | None = None) -> str:
    """A date as `2026-11-03`, a time as `2026-11-03T14:05:00`, with its offset if it has one; ValueError else.

    RFC 3339, `2026-11-03 14:05`, `03.11.2026`, `11/03/2026 2:05 PM`. Without `order`, two numbers before the year are
    day and month between full stops, else month and day. The years are `YEARS`, as everywhere.
    """
    match = _WHEN.fullmatch(" ".join(text.split()))
    if match is None:
        raise ValueError(f"{text!r} is no date")
    day = _day(match, order)
    if day.year not in YEARS:
        raise ValueError(f"{text!r} is of no year from {YEARS[0]} to {YEARS[-1]}")
    if match["hour"] is None:
        return day.isoformat()
    offset = (match["offset"] or "").upper().replace("Z", "+00:00")
    return datetime.fromisoformat(f"{day}T{_hour(match):02}:{match['minute']}{match['rest'] or ''}{offset}").isoformat()


def guess_order(texts: Iterable[str]) -> DateOrder | None:
    """What most of the dates prove that can be read one way only; None where none does or they are even."""
    day_first = month_first = 0
    for text in texts:
        match = _WHEN.fullmatch(" ".join(text.split()))
        if match is not None and match["mark"]:
            day_first += int(match["first"]) > 12 >= int(match["second"])
            month_first += int(match["second"]) > 12 >= int(match["first"])
    if day_first == month_first:
        return None
    return DateOrder.DAY_FIRST if day_first > month_first else DateOrder.MONTH_FIRST


def _day(match: re.Match[str], order: DateOrder | None) -> date:
    if match["year"]:
        return date(int(match["year"]), int(match["month"]), int(match["day"]))
    order = order or (DateOrder.DAY_FIRST if match["mark"] == "." else DateOrder.MONTH_FIRST)
    day, month = (
        (match["first"], match["second"]) if order is DateOrder.DAY_FIRST else (match["second"], match["first"])
    )
    return date(int(match["last"]), int(month), int(day))


def _hour(match: re.Match[str]) -> int:
    hour = int(match["hour"])
    if not match["half"]:
        return hour
    if not 1 <= hour <= 12:
        raise ValueError(f"{match[0]!r} has no such hour")
    return hour % 12 + (12 if match["half"] in "pP" else 0)
