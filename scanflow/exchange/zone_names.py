"""Names of time zones as people and programs write them behind a time, each with its offset from UTC.

IST is not among them, for it is India's, Ireland's and Israel's.
"""

from datetime import timedelta

_HOURS = {"UT": 0, "GMT": 0, "EST": -5, "EDT": -4, "CST": -6, "CDT": -5, "MST": -7, "MDT": -6, "PST": -8, "PDT": -7}
"""As RFC 5322, 4.3, has them."""

_OTHERS = """
    Z 0, UTC 0, WET 0, WEST 1, BST 1, CET 1, CEST 2, EET 2, EEST 3, MSK 3, SAST 2,
    NST -3.5, NDT -2.5, AST -4, ADT -3, AKST -9, AKDT -8, HST -10, HDT -9,
    HKT 8, JST 9, AWST 8, ACST 9.5, ACDT 10.5, AEST 10, AEDT 11, NZST 12, NZDT 13
"""
"""Those that have one offset only in the tz database."""

OFFSETS = {
    **{name: timedelta(hours=hours) for name, hours in _HOURS.items()},
    **{name: timedelta(hours=float(hours)) for name, hours in map(str.split, _OTHERS.split(","))},
}
"""By the name in upper case."""
