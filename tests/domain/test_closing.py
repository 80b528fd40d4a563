"""Closing days, held against numpy's calendar of business days."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.domain.closing import WEEKDAYS, ClosingDays, read_dates, written

DAYS = st.dates(date(2024, 1, 1), date(2029, 12, 31))
RANGES = st.lists(st.tuples(DAYS, st.integers(0, 40)), max_size=12)
CLOSED_ON = st.sets(st.sampled_from(WEEKDAYS), max_size=6)
ZONES = st.sampled_from(["UTC", "Europe/Berlin", "America/New_York", "Pacific/Auckland", "Asia/Amman"])


def closing(weekdays: set[str], ranges: list[tuple[date, int]]) -> ClosingDays:
    said = "\n".join(f"{first} to {first + timedelta(days)}" if days else f"{first}" for first, days in ranges)
    return ClosingDays(tuple(each for each in WEEKDAYS if each in weekdays), read_dates(said))


def calendar(weekdays: set[str], ranges: list[tuple[date, int]]) -> np.busdaycalendar:
    off = [first + timedelta(n) for first, days in ranges for n in range(days + 1)]
    return np.busdaycalendar([each not in weekdays for each in WEEKDAYS], [np.datetime64(day) for day in off])


@given(day=DAYS, weekdays=CLOSED_ON, ranges=RANGES)
def test_the_last_open_day_is_numpy_s(day: date, weekdays: set[str], ranges: list[tuple[date, int]]) -> None:
    """`numpy.busday_offset` rolls back to the same day."""
    expected = np.busday_offset(day, 0, roll="backward", busdaycal=calendar(weekdays, ranges)).astype(date)
    assert expected == closing(weekdays, ranges).last_open(day)


@given(day=DAYS, ahead=st.integers(0, 60), weekdays=CLOSED_ON, ranges=RANGES)
def test_open_days_are_as_many_as_numpy_counts(
    day: date, ahead: int, weekdays: set[str], ranges: list[tuple[date, int]]
) -> None:
    """`numpy.busday_count` counts from its first day to before its last one."""
    first, after = day + timedelta(1), day + timedelta(ahead + 1)
    expected = np.busday_count(first, after, busdaycal=calendar(weekdays, ranges))
    assert expected == closing(weekdays, ranges).open_days(day, day + timedelta(ahead))


@given(
    times=st.lists(st.datetimes(datetime(2024, 1, 1), datetime(2029, 12, 31), timezones=st.just(UTC)), max_size=20),
    zone=ZONES,
    weekdays=CLOSED_ON,
    ranges=RANGES,
)
def test_closing_days_leave_the_order_of_urgency(
    times: list[datetime], zone: str, weekdays: set[str], ranges: list[tuple[date, int]]
) -> None:
    """So a list in the order of `ship_by`, which the database makes, is in the order of `leave_by` too."""
    off, here = closing(weekdays, ranges), ZoneInfo(zone)
    found = [off.leave_by(each, here) for each in sorted(times)]
    assert sorted(found) == found


@given(
    at=st.datetimes(datetime(2024, 1, 1), datetime(2029, 12, 31), timezones=st.just(UTC)),
    zone=ZONES,
    weekdays=CLOSED_ON,
    ranges=RANGES,
)
def test_an_order_leaves_on_numpy_s_day(
    at: datetime, zone: str, weekdays: set[str], ranges: list[tuple[date, int]]
) -> None:
    """In the shop's zone; what is due on an open day keeps its hour, and nothing is ever due later than it was."""
    here = ZoneInfo(zone)
    leave, day = closing(weekdays, ranges).leave_by(at, here), at.astimezone(here).date()
    expected = np.busday_offset(day, 0, roll="backward", busdaycal=calendar(weekdays, ranges)).astype(date)
    assert (expected, True) == (leave.astimezone(here).date(), leave <= at)
    assert (leave == at) == (expected == day)


def test_the_day_before_a_closed_one_ends_at_midnight() -> None:
    """A Sunday's order is due by the end of Saturday in the shop's zone. 15 March 2026 is one (from a calendar)."""
    sunday = datetime(2026, 3, 15, 18, tzinfo=UTC)
    leave = ClosingDays(("sunday",)).leave_by(sunday, ZoneInfo("America/New_York"))
    assert datetime.combine(date(2026, 3, 14), time.max, ZoneInfo("America/New_York")) == leave


@pytest.mark.parametrize(
    ("typed", "dates"),
    [
        ("", ()),
        ("2026-12-24", ("2026-12-24",)),
        (" 2027-04-02 \r\n\n2026-12-24  to  2027-01-02\n", ("2026-12-24/2027-01-02", "2027-04-02")),
        ("2026-12-24 to 2026-12-24", ("2026-12-24",)),
        ("2026-12-24 – 2026-12-26, 2026-12-24/2026-12-26", ("2026-12-24/2026-12-26",)),
    ],
)
def test_days_off_are_read_as_they_are_typed(typed: str, dates: tuple[str, ...]) -> None:
    """One or a range on each line, in their order in time, each once; written out they are read the same."""
    assert dates == read_dates(typed) == read_dates(written(dates))


@pytest.mark.parametrize(
    "typed",
    ["tomorrow", "24.12.2026", "2026-02-30", "2026-12-26 to 2026-12-24", "2026-01-01 to 2027-01-02", "2026-12-24 x"],
)
def test_what_is_no_day_off_is_refused(typed: str) -> None:
    """Other writings, days that don't exist, ranges backwards or of more than 366 days."""
    with pytest.raises(ValueError, match=typed[:8]):
        read_dates(typed)


def test_a_shop_is_open_on_one_day_at_least() -> None:
    """Else no day before a closed one would ever be open."""
    with pytest.raises(ValueError, match="never ships"):
        ClosingDays(WEEKDAYS)
