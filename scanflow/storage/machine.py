"""Where this machine stands, as its system says: asked once, when a shop begins. Settings show it and change it."""

import os
import re
from importlib import resources
from zoneinfo import available_timezones

import tzlocal

from scanflow.workflow.ports import Settings

UTC = "UTC"
"""Where the system names no zone."""

LETTER = {"BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"}
"""Countries that print on US Letter (Unicode CLDR, supplemental measurement data, paper sizes)."""

MONTH_FIRST = {"AS", "GU", "MH", "MP", "PH", "PR", "UM", "US", "VI"}
"""Countries whose English writes the month before the day (Unicode CLDR, short dates of `en`)."""


def begun_here() -> Settings:
    """A new shop's settings: time zone, paper and dates of this machine, or their usual ones where it says nothing."""
    zone = _zone()
    country = _country(zone)
    return Settings(
        zone=zone,
        paper="letter" if country in LETTER else "a4",
        dates="month-first" if country in MONTH_FIRST else "day-first",
    )


def _zone() -> str:
    try:
        name = tzlocal.get_localzone_name()
    except (LookupError, OSError, ValueError):  # a system that names none, or one that nobody knows
        return UTC
    return name if name in available_timezones() else UTC


def _country(zone: str) -> str:
    """Of the language that the system speaks, as in `de_AT.UTF-8`; else of its time zone; empty where neither says."""
    spoken = next((said for name in ("LC_ALL", "LC_TIME", "LANG") if (said := os.environ.get(name))), "")
    if named := re.match(r"[a-z]{2,3}_([A-Z]{2})\b", spoken):
        return named[1]
    rows = (resources.files("tzdata.zoneinfo") / "zone.tab").read_text(encoding="utf-8").splitlines()
    places = (row.split("\t") for row in rows if not row.startswith("#"))
    return next((country for country, _, name, *_ in places if name == zone), "")
