"""Times as orders write them."""

from datetime import UTC, datetime

import pytest

from scanflow.workflow.times import instant


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
