from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scanflow.exchange.dates import DateOrder, guess_order, read_date

DAY, MONTH = DateOrder.DAY_FIRST, DateOrder.MONTH_FIRST


@pytest.mark.parametrize(
    ("text", "order", "expected"),
    [
        ("2085-04-12T23:20:50.52Z", None, "2085-04-12T23:20:50.520000+00:00"),  # RFC 3339, 5.8, a century on
        ("2096-12-19T16:39:57-08:00", None, "2096-12-19T16:39:57-08:00"),  # RFC 3339, 5.8, a century on
        ("2037-01-01T12:00:27.87+00:20", None, "2037-01-01T12:00:27.870000+00:20"),  # RFC 3339, 5.8, a century on
        ("2000-01-01", None, "2000-01-01"),
        ("31.12.2199", None, "2199-12-31"),
        ("2026-11-03t14:05:00z", None, "2026-11-03T14:05:00+00:00"),
        ("2026-11-03", None, "2026-11-03"),
        ("2026/11/03", DAY, "2026-11-03"),
        ("2026-11-03 14:05", None, "2026-11-03T14:05:00"),
        ("2026-11-03 14:05:09 +0100", None, "2026-11-03T14:05:09+01:00"),
        ("03.11.2026", None, "2026-11-03"),
        ("3.11.2026 9:05", None, "2026-11-03T09:05:00"),
        ("03.11.2026", MONTH, "2026-03-11"),
        ("11/03/2026", None, "2026-11-03"),
        ("11/03/2026", DAY, "2026-03-11"),
        ("11-03-2026", None, "2026-11-03"),
        ("11/03/2026, 2:05 PM", None, "2026-11-03T14:05:00"),
        ("11/03/2026 12:05 a.m.", None, "2026-11-03T00:05:00"),
        (" 11/03/2026  12:05pm ", None, "2026-11-03T12:05:00"),
        ("2024-02-29", None, "2024-02-29"),
    ],
)
def test_dates_that_can_be_read(text, order, expected):
    """A date stays a date, a time gets seconds and keeps the offset it has, or none."""
    assert expected == read_date(text, order)


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("", None),
        ("soon", None),
        ("2026-13-01", None),
        ("2025-02-29", None),
        ("11/25/2026", DAY),
        ("25/11/2026", None),
        ("25/11/2026", MONTH),
        ("11.25.2026", None),
        ("2026-11-03 25:00", None),
        ("2026-11-03 14:60", None),
        ("2026-11-03 13:05 PM", None),
        ("2026-11-03 0:05 AM", None),
        ("2026-11-03T14:05+25:00", None),
        ("2026-11-03 or later", None),
        ("11/03.2026", None),
        ("11/03/26", None),
        ("0001-01-01", None),
        ("1999-12-31", None),
        ("31.12.1999", None),
        ("01/01/2200", None),
        ("20261103", None),
        ("٢٠٢٦-١١-٠٣", None),
    ],
)
def test_dates_that_cannot(text, order):
    """Anything else is an error, never another day."""
    with pytest.raises(ValueError):
        read_date(text, order)


@pytest.mark.parametrize(
    ("texts", "expected"),
    [
        (["11/03/2026", "11/25/2026"], MONTH),
        (["11/03/2026", "25/11/2026"], DAY),
        (["03.11.2026 10:00", "25.11.2026 11:00"], DAY),
        (["11/03/2026", "01/02/2026"], None),
        (["11/25/2026", "25/11/2026"], None),
        (["11/25/2026", "25/11/2026", "26/11/2026"], DAY),
        (["2026-11-25", "soon", "25/25/2026", ""], None),
        ([], None),
    ],
)
def test_the_column_decides(texts, expected):
    """Dates that can be read one way only decide for all of them."""
    assert expected == guess_order(texts)


@given(
    st.datetimes(datetime(2000, 1, 1), datetime(2199, 12, 31)),
    st.sampled_from([None, UTC, timezone(timedelta(hours=-9, minutes=-30)), timezone(timedelta(hours=14))]),
)
def test_iso_8601_comes_back(moment, zone):
    """A time that is in ISO 8601 already stays as it is."""
    text = moment.replace(tzinfo=zone).isoformat()
    assert text == read_date(text)


@given(
    st.dates(datetime(2000, 1, 1).date(), datetime(2199, 12, 31).date()),
    st.sampled_from("/.-"),
    st.sampled_from(DateOrder),
)
def test_any_day_in_either_order(day, mark, order):
    """Every day of the calendar is read back from both orders of day and month."""
    numbers = [day.day, day.month] if order is DAY else [day.month, day.day]
    assert day.isoformat() == read_date(mark.join(map(str, [*numbers, day.year])), order)
