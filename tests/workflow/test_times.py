"""Times as orders write them."""

from datetime import UTC, datetime

import pytest

from scanflow.workflow.times import clock, instant


@pytest.mark.parametrize(
    ("text", "zone", "wanted"),
    [
        (None, "UTC", None),
        ("", "UTC", None),
        ("2026-03-02", "UTC", datetime(2026, 3, 2, 23, 59, 59, tzinfo=UTC)),
        ("2026-03-02", "America/New_York", datetime(2026, 3, 3, 4, 59, 59, tzinfo=UTC)),
        ("2026-07-02T12:00", "Europe/Berlin", datetime(2026, 7, 2, 10, tzinfo=UTC)),
        ("2026-07-02T12:00:00+05:30", "Europe/Berlin", datetime(2026, 7, 2, 6, 30, tzinfo=UTC)),
        ("2026-07-02T12:00:00Z", "Europe/Berlin", datetime(2026, 7, 2, 12, tzinfo=UTC)),
    ],
)
def test_instants(text, zone, wanted):
    """A date is the end of that day; without an offset the shop's zone counts."""
    assert wanted == instant(text, zone)


@pytest.mark.parametrize("text", ["soon", "2026-02-30", "12:00", "2026-03-02T25:00:00Z"])
def test_what_is_no_time_is_an_error(text):
    """Words and impossible dates are not guessed at."""
    with pytest.raises(ValueError):
        instant(text, "UTC")


@pytest.mark.parametrize(
    ("zone", "words"), [("UTC", "1 Jul 23:05"), ("Europe/Berlin", "01:05"), ("America/New_York", "19:05")]
)
def test_a_time_that_is_past(zone, words):
    """The hour in the shop's zone, with the day where it is not today's there."""
    at, now = (datetime(2026, 7, *rest, tzinfo=UTC) for rest in ((1, 23, 5), (2, 2, 0)))
    assert words == clock(at, now, zone)


@pytest.mark.parametrize("text", ["0001-01-01", "1999-12-31", "2200-01-01", "9999-12-31T23:59:59Z"])
def test_a_year_that_nothing_is_of(text):
    """A year long gone or far ahead is no time: it is a slip, and at the edge of the calendar no page could show it."""
    with pytest.raises(ValueError, match="no year from 2000 to 2199"):
        instant(text, "Pacific/Kiritimati")


@pytest.mark.parametrize("text", ["2000-01-01", "2199-12-31T23:59:59Z", "2000-01-01T00:00:00+14:00"])
def test_the_first_and_the_last_year(text):
    """All of both years is a time, in whatever zone."""
    assert all(instant(text, zone) for zone in ("UTC", "Pacific/Kiritimati", "Pacific/Pago_Pago"))
