"""Dates and times as people and exports write them, to ISO 8601.

The grammar is our own, for a text must say the same on every day: nothing that it leaves out is filled in, no day is
swapped for a month, and a year of two digits is one of this century.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, timezone
from enum import StrEnum
from functools import lru_cache

from scanflow.exchange.zone_names import OFFSETS
from scanflow.workflow.times import YEARS


class DateOrder(StrEnum):
    """Which of two numbers before a year is the day."""

    DAY_FIRST = "day-first"
    MONTH_FIRST = "month-first"


_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")

_WEEKDAY = (
    "(?:(?P<weekday>mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday)?|thu(?:r(?:s(?:day)?)?)?|fri(?:day)?|sat(?:urday)?"
    r"|sun(?:day)?)\.?,? ?)?"
)
_NAME = (
    "(?P<name>jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sep(?:t(?:ember)?)?"
    r"|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?"
)
_DAY = r"(?P<day>\d{1,2})(?:st|nd|rd|th)?"
_FULL_YEAR = r"(?P<year>\d{4})"
_YEAR = r"(?P<year>\d{4}|'?\d\d)"
_GAP = "(?: ?[-/.,] ?| )"
_DATES = (
    rf"{_FULL_YEAR}(?P<gap>[-/.]|\. )(?P<month>\d{{1,2}})(?P=gap)(?P<day>\d{{1,2}})",
    rf"(?P<first>\d{{1,2}})(?P<mark>[-/.]|\. )(?P<second>\d{{1,2}})(?P=mark){_YEAR}",
    rf"{_DAY}\.?(?: of)?{_GAP}?{_NAME}{_GAP}?{_YEAR}",
    rf"{_NAME}{_GAP}{_DAY}{_GAP}{_YEAR}",
    rf"{_FULL_YEAR}{_GAP}{_NAME}{_GAP}{_DAY}",
)
_CLOCK = (
    r"(?P<hour>\d{1,2})(?:(?P<colon>[:.])(?P<minute>\d\d)(?:(?P=colon)(?P<seconds>\d\d)(?:[.,](?P<fraction>\d{1,9}))?)?)?"
    r"(?: ?(?P<half>[ap])\.?m\.?)?"
)
_OFFSET = r"(?:z|ut|utc|gmt)?(?P<sign>[+-])(?P<hours>\d\d|\d)(?::?(?P<minutes>\d\d))?"
_ZONE = rf"(?:{_OFFSET}(?: ?\([^()]*\)| ?\[[^][]*\])?|(?P<zone>[a-z]{{1,4}}))"
_THEN = "(?:t|,|,? (?:at |- )?)"
_TIMES = (
    f"{_WEEKDAY}{{date}}(?:{_THEN}{_CLOCK}(?: ?{_ZONE})?)?",
    f"{_CLOCK}(?: {_ZONE})?(?:,|,? (?:on |- )?){_WEEKDAY}{{date}}",
    f"{_CLOCK},? {_WEEKDAY}{{date}} {_ZONE}",
)
_BASIC = (  # the basic form of ISO 8601: no day and month before a year of ours have such numbers
    rf"{_FULL_YEAR}(?P<month>\d\d)(?P<day>\d\d)"
    rf"(?:[t ](?P<hour>\d\d)(?P<minute>\d\d)(?:(?P<seconds>\d\d)(?:[.,](?P<fraction>\d{{1,9}}))?)?(?: ?{_ZONE})?)?"
)
_LATE_YEAR = rf"{_WEEKDAY}{_NAME} {_DAY} {_CLOCK}(?: {_ZONE})? {_FULL_YEAR}"  # as asctime of ISO C
_FORMS = [
    re.compile(form, re.ASCII | re.IGNORECASE)
    for form in (*(form.replace("{date}", each) for each in _DATES for form in _TIMES), _BASIC, _LATE_YEAR)
]
_NOTHING = dict.fromkeys((name for form in _FORMS for name in form.groupindex), "")
_SIGNS = str.maketrans("\u2010\u2011\u2012\u2013\u2212\u2019", "-----'", "\u200e\u200f")


def read_date(text: str, order: DateOrder | None = None, short: bool = True) -> str:
    """A date as `2026-11-03`, a time as `2026-11-03T14:05:00`, with its offset if it has one; ValueError else.

    Numbers as in ISO 8601, `03.11.2026` and `11/03/26`, months by their English names, days of the week before them,
    hours up to 24 or with AM and PM, offsets and names of zones. Without `order`, two numbers before the year are day
    and month between full stops, else month and day. `short`: numbers may have a year of two digits, which stands
    last. A day of the week that is another is an error. The years are `YEARS`, as everywhere.
    """
    said = _said(text)
    if said is None or (not short and said["mark"] and len(said["year"]) < 4):
        raise ValueError(f"{text!r} is no date")
    day = _day(said, order)
    if day.year not in YEARS:
        raise ValueError(f"{text!r} is of no year from {YEARS[0]} to {YEARS[-1]}")
    if said["weekday"] and _DAYS[day.weekday()] != said["weekday"][:3].lower():
        raise ValueError(f"{text!r} is of another day of the week")
    return _at(said, day).isoformat() if said["hour"] else day.isoformat()


@dataclass(frozen=True, slots=True)
class Proof:
    """What the dates of a file say of how they are written.

    `order` None: nothing proves it, or as much speaks against it. `row` and `text`: the first date that can be read
    one way only, which is that one. `short`: a year of two digits stands last, for all that is known; it does not
    where fewer numbers stand first, for the year is what stays the same. `asked`: whether a date needs an order.
    """

    order: DateOrder | None = None
    row: int = 0
    text: str = ""
    short: bool = True
    asked: bool = False

    def told(self, chosen: DateOrder | None, usual: DateOrder | None) -> str:
        """How the dates are read, in sentences, with a way that was `chosen` or is `usual`; empty if none needs it."""
        if not self.asked:
            return ""
        order = chosen or self.order or usual
        said = [f"Dates are read {_FIRST[order]}.", self._why(chosen, usual)]
        if not self.short:
            said.append("Dates with a year of two digits are not read, for the year may stand first in them.")
        return " ".join(said)

    def _why(self, chosen: DateOrder | None, usual: DateOrder | None) -> str:
        if self.order is None:
            why = " It was chosen for these columns." if chosen else " The settings say so." if usual else ""
            return f"Nothing in this file proves it.{why}"
        proves = "proves it" if chosen in (None, self.order) else "speaks against it"
        return f"Row {self.row} {proves}: “{self.text}”."


_FIRST = {
    DateOrder.DAY_FIRST: "day first",
    DateOrder.MONTH_FIRST: "month first",
    None: "day first between full stops, month first else",
}


def prove(texts: Iterable[tuple[int, str]]) -> Proof:
    """What most of the dates prove that can be read one way only, by row and text of each."""
    numbers = [(row, text, said) for row, text in texts if (said := _said(text)) is not None and said["mark"]]
    brief = [said for _, _, said in numbers if len(said["year"]) < 4]
    short = len({int(said["first"]) for said in brief}) >= len({said["year"] for said in brief})
    proofs: dict[DateOrder, list[tuple[int, str]]] = {order: [] for order in DateOrder}
    for row, text, said in numbers:
        fits = _fitting(text) if short or len(said["year"]) == 4 else ()
        if len(fits) == 1:
            proofs[fits[0]].append((row, text))
    fewer, more = sorted(proofs, key=lambda order: len(proofs[order]))
    if len(proofs[fewer]) == len(proofs[more]):
        return Proof(short=short, asked=bool(numbers))
    return Proof(more, *proofs[more][0], short, asked=True)


@lru_cache(maxsize=20_000)
def _fitting(text: str) -> tuple[DateOrder, ...]:
    """The orders in which the text is a date."""
    return tuple(order for order in DateOrder if _fits(text, order))


def _fits(text: str, order: DateOrder) -> bool:
    try:
        read_date(text, order)
    except ValueError:
        return False
    return True


@lru_cache(maxsize=20_000)
def _said(text: str) -> Mapping[str, str] | None:
    """The parts of a text that has the form of a date; those it has not are empty."""
    plain = " ".join(text.translate(_SIGNS).split())
    match = next((found for form in _FORMS if (found := form.fullmatch(plain))), None)
    return None if match is None else _NOTHING | match.groupdict("")


def _day(said: Mapping[str, str], order: DateOrder | None) -> date:
    month, day = said["month"], said["day"]
    if said["mark"]:
        order = order or (DateOrder.DAY_FIRST if "." in said["mark"] else DateOrder.MONTH_FIRST)
        month, day = said["first"], said["second"]
        if order is DateOrder.DAY_FIRST:
            month, day = day, month
    elif said["name"]:
        month = str(_MONTHS.index(said["name"][:3].lower()) + 1)
    year = said["year"].lstrip("'")
    return date(int(year) + (YEARS[0] if len(year) == 2 else 0), int(month), int(day))


def _at(said: Mapping[str, str], day: date) -> datetime:
    if not said["minute"] and not said["half"]:
        raise ValueError(f"{said['hour']!r} is no time")
    micro = int(f"{said['fraction']:0<6}"[:6])
    clock = time(_hour(said), int(said["minute"] or 0), int(said["seconds"] or 0), micro)
    return datetime.combine(day, clock, _zone(said))


def _hour(said: Mapping[str, str]) -> int:
    hour = int(said["hour"])
    if not said["half"]:
        return hour
    if not 1 <= hour <= 12:
        raise ValueError(f"no half of a day has an hour {hour}")
    return hour % 12 + (12 if said["half"] in "pP" else 0)


def _zone(said: Mapping[str, str]) -> timezone | None:
    if said["zone"]:
        offset = OFFSETS.get(said["zone"].upper())
        if offset is None:
            raise ValueError(f"{said['zone']!r} may be several zones, or none")
        return timezone(offset)
    if not said["sign"]:
        return None
    minutes = int(said["minutes"] or 0)
    if minutes > 59:
        raise ValueError(f"no offset has {minutes} minutes")
    offset = timedelta(hours=int(said["hours"]), minutes=minutes)
    return timezone(-offset if said["sign"] == "-" else offset)
