import warnings
from datetime import UTC, datetime, timedelta, timezone
from email.utils import parsedate_to_datetime
from zoneinfo import ZoneInfo, available_timezones

import pytest
from dateutil import parser as dateutil
from hypothesis import given
from hypothesis import strategies as st

from scanflow.exchange.dates import DateOrder, Proof, prove, read_date
from scanflow.exchange.zone_names import OFFSETS

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
        ("28-Nov-26", None, "2026-11-28"),
        ("28 Nov 2026", MONTH, "2026-11-28"),
        ("28. November 2026", None, "2026-11-28"),
        ("28Nov2026", None, "2026-11-28"),
        ("28th of November, 2026", None, "2026-11-28"),
        ("Nov. 28, 2026", DAY, "2026-11-28"),
        ("November 28th, 2026 at 2 PM", None, "2026-11-28T14:00:00"),
        ("2026-Nov-28", None, "2026-11-28"),
        ("Nov 28 '26", None, "2026-11-28"),
        ("11/28/26", None, "2026-11-28"),
        ("28.11.26", None, "2026-11-28"),
        ("28. 11. 2026", None, "2026-11-28"),
        ("28.11.2026 14.05", None, "2026-11-28T14:05:00"),
        ("20261128", None, "2026-11-28"),  # ISO 8601, basic form
        ("20261128T140509Z", None, "2026-11-28T14:05:09+00:00"),
        ("Fri, 21 Nov 2098 09:55:06 -0600", None, "2098-11-21T09:55:06-06:00"),  # RFC 5322, A.1.1, a century on
        ("Sat Nov 28 10:30:00 2026", None, "2026-11-28T10:30:00"),  # asctime of ISO C
        ("Sat Nov 28 10:30:00 PST 2026", None, "2026-11-28T10:30:00-08:00"),
        ("Sat Nov 28 2026 10:30:00 GMT-0800 (Pacific Standard Time)", None, "2026-11-28T10:30:00-08:00"),
        ("2026-11-28T10:30:00+01:00[Europe/Berlin]", None, "2026-11-28T10:30:00+01:00"),  # RFC 9557
        ("10:30:00 Nov 28, 2026 PST", None, "2026-11-28T10:30:00-08:00"),
        ("10:30 28/11/2026", DAY, "2026-11-28T10:30:00"),
        ("2026-11-28 10:30:00 PST", None, "2026-11-28T10:30:00-08:00"),
        ("2026-11-28 10:30 CET", None, "2026-11-28T10:30:00+01:00"),
        ("Nov 28, 2026, 10:30\u202fPM", None, "2026-11-28T22:30:00"),  # CLDR writes this space
        ("2026-11-28 10:30 \u22128:00", None, "2026-11-28T10:30:00-08:00"),
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
        ("0001-01-01", None),
        ("1999-12-31", None),
        ("31.12.1999", None),
        ("01/01/2200", None),
        ("٢٠٢٦-١١-٠٣", None),
        ("03112026", DAY),
        ("Sun, 28 Nov 2026", None),
        ("2026-11-28 10:30 IST", None),
        ("2026-11-28 10:30 XYZ", None),
        ("2026-11-28 10:30 +01:75", None),
        ("2026-11-28 PST", None),
        ("28.11.2026 14", None),
        ("28 Smarch 2026", None),
        ("5 rows", None),
        ("1001", None),
    ],
)
def test_dates_that_cannot(text, order):
    """Anything else is an error, never another day."""
    with pytest.raises(ValueError):
        read_date(text, order)


@pytest.mark.parametrize(
    "text",
    ["28 Nov", "Nov 28", "Nov 2026", "28/11", "28.11.", "2026", "10:30", "Saturday", "28 Nov 10:30", "28 Nov 2 PM"],
)
def test_nothing_is_filled_in(text):
    """A date without its day, month or year is an error, whatever day it is today."""
    with pytest.raises(ValueError):
        read_date(text, DAY)


def test_a_short_year_that_may_stand_first():
    """A year of two digits is read where it stands last, and not at all where that is unknown; a whole one is."""
    assert "2028-11-26" == read_date("26-11-28", DAY)
    with pytest.raises(ValueError):
        read_date("26-11-28", DAY, short=False)
    assert "2028-11-26" == read_date("26-11-2028", DAY, short=False)


def proven(*texts: str) -> Proof:
    return prove(enumerate(texts, start=2))


@pytest.mark.parametrize(
    ("texts", "expected"),
    [
        (["11/03/2026", "11/25/2026"], (MONTH, 3)),
        (["11/03/2026", "25/11/2026", "26/11/2026"], (DAY, 3)),
        (["03.11.2026 10:00", "25.11.2026 11:00"], (DAY, 3)),
        (["11/03/26", "11/25/26"], (MONTH, 3)),
        (["11/03/2026", "01/02/2026"], (None, 0)),
        (["11/25/2026", "25/11/2026"], (None, 0)),
        (["11/25/2026", "25/11/2026", "26/11/2026"], (DAY, 3)),
        (["11/11/2026", "Tue 11/03/2026"], (MONTH, 3)),  # as a day of November it is a Tuesday, of March a Wednesday
        (["2026-11-25", "25 Nov 2026", "soon", "25/25/2026", ""], (None, 0)),
        ([], (None, 0)),
    ],
)
def test_the_column_decides(texts, expected):
    """Dates that can be read one way only decide for all of them, and the first of them is named."""
    found = proven(*texts)
    assert expected == (found.order, found.row)


@pytest.mark.parametrize(
    ("texts", "short"),
    [
        (["26-11-03", "26-11-05", "26-12-13"], False),
        (["28-11-26", "28-11-27"], False),
        (["03-11-26", "05-11-26", "13-12-26"], True),
        (["11/03/26", "11/03/26"], True),
        (["28-11-2026", "28-11-2027"], True),
        ([], True),
    ],
)
def test_what_stays_the_same_is_the_year(texts, short):
    """Where the first number varies less than the last, a year of two digits may stand first, and proves nothing."""
    found = proven(*texts)
    assert (short, None if not short else found.order) == (found.short, found.order)


@pytest.mark.parametrize(
    ("texts", "chosen", "usual", "words"),
    [
        (["25/11/2026"], None, None, "Dates are read day first. Row 2 proves it: “25/11/2026”."),
        (["25/11/2026"], DAY, None, "Dates are read day first. Row 2 proves it: “25/11/2026”."),
        (["25/11/2026"], MONTH, None, "Dates are read month first. Row 2 speaks against it: “25/11/2026”."),
        (
            ["01/02/2026"],
            DAY,
            None,
            "Dates are read day first. Nothing in this file proves it. It was chosen for these",
        ),
        (["01/02/2026"], None, DAY, "Dates are read day first. Nothing in this file proves it. The settings say so."),
        (["01/02/2026"], None, None, "day first between full stops, month first else. Nothing in this file proves it."),
        (["26-11-03", "26-11-05"], None, None, "the year may stand first"),
        (["2026-11-25", "25 Nov 2026"], None, DAY, ""),
    ],
)
def test_how_dates_are_read_is_said(texts, chosen, usual, words):
    """One sentence says which number is the day, another why; nothing is said where no date leaves it open."""
    said = proven(*texts).told(chosen, usual)
    assert (True, bool(words)) == (words in said, bool(said))


MONTHS_AND_DAYS = ("%d %b %Y", "%d-%b-%y", "%B %d, %Y", "%b %d, %Y", "%d. %B %Y", "%Y-%b-%d", "%d%b%Y")
NUMBERS = ("%d/%m/%Y", "%d.%m.%y", "%d-%m-%Y", "%m/%d/%Y", "%m/%d/%y", "%m-%d-%Y")
CLOCKS = ("", " %H:%M", " %H:%M:%S", " %I:%M %p", ", %I:%M:%S %p", " %H:%M:%S.%f")
ZONES = ("", " +0100", " -08:00", " UTC", " PST", " CET")


@given(
    st.datetimes(datetime(2020, 1, 1), datetime(2059, 12, 31)),  # short years are near to today there
    st.sampled_from([*MONTHS_AND_DAYS, *NUMBERS, "%Y-%m-%d", "%Y/%m/%d"]),
    st.sampled_from(["", "%a ", "%A, ", "%a, "]),
    st.sampled_from(CLOCKS),
    st.sampled_from(ZONES),
)
def test_another_library_reads_the_same(moment, form, weekday, clock, zone):
    """What python-dateutil reads of a day in any form, day or month first as told, is what is read here."""
    text = moment.strftime(weekday + form + clock) + (zone if clock else "")
    order = DAY if form.startswith("%d") else MONTH
    info = dateutil.parserinfo(dayfirst=order is DAY and form in NUMBERS)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        told = dateutil.parse(text, info, default=datetime(2000, 1, 1), tzinfos={"PST": -8 * 3600, "CET": 3600})
    expected = told.isoformat() if clock else told.date().isoformat()
    assert expected == read_date(text, order)


@given(
    st.datetimes(datetime(2000, 1, 1), datetime(2199, 12, 31)), st.sampled_from(["+0100", "-0800", "GMT", "EST", "PDT"])
)
def test_dates_of_mails(moment, zone):
    """What the standard library reads of a date as RFC 5322, 3.3 and 4.3, has it is what is read here."""
    text = moment.strftime(f"%a, %d %b %Y %H:%M:%S {zone}")
    assert parsedate_to_datetime(text).isoformat() == read_date(text)


def test_names_of_zones():
    """A name has one offset: the one of RFC 5322, 4.3, or the only one that the tz database has had of late."""
    rfc_5322 = {
        "UT": 0,
        "GMT": 0,
        "EST": -5,
        "EDT": -4,
        "CST": -6,
        "CDT": -5,
        "MST": -7,
        "MDT": -6,
        "PST": -8,
        "PDT": -7,
    }
    found: dict[str, set[timedelta | None]] = {name: {timedelta(hours=hours)} for name, hours in rfc_5322.items()}
    days = [datetime(2020, 1, 15, tzinfo=UTC) + timedelta(days=30 * month) for month in range(72)]
    for zone in sorted(available_timezones()):
        for day in days if "/" in zone and not zone.startswith("Etc/") else ():
            local = day.astimezone(ZoneInfo(zone))
            if local.tzname() not in rfc_5322:
                found.setdefault(local.tzname() or "", set()).add(local.utcoffset())
    expected = {name: {offset} for name, offset in OFFSETS.items() if name not in ("Z", "UTC")}
    assert expected == {name: found.get(name) for name in expected}
    assert len(found["IST"]) > 1


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
    st.sampled_from(["/", ".", "-", ". "]),
    st.sampled_from(DateOrder),
)
def test_any_day_in_either_order(day, mark, order):
    """Every day of the calendar is read back from both orders of day and month."""
    numbers = [day.day, day.month] if order is DAY else [day.month, day.day]
    assert day.isoformat() == read_date(mark.join(map(str, [*numbers, day.year])), order)
