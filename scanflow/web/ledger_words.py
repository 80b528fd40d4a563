"""What a line of the ledger says under its kind, of whatever event."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

from scanflow.domain import events
from scanflow.domain.life import LineState
from scanflow.domain.verdict import Reason
from scanflow.domain.words import LINES, REFUSALS

_ID = re.compile("(?=.*[a-f])[0-9a-f]{16}(?:[0-9a-f]{48})?")
"""An id of this room's, or a picture by its SHA-256. Figures alone may be an order's number or a listing's: told."""

_BY = {"wedge": "by a scanner", "camera": "by a camera", "typed": "typed"}


class Part(NamedTuple):
    """Words, and the name of what they say; either may be empty."""

    name: str
    words: str


def said(event: events.Told) -> list[Part]:
    """A scan as a sentence, of all else what it tells, name by name; the API gives the ids and keys besides."""
    if isinstance(event, events.Scanned):
        return [Part("", _scan(event)), Part(_BY.get(event.via, event.via), "")]
    return [Part(*each) for each in _told(event.data())]


def _told(data: dict[str, Any]) -> list[tuple[str, str]]:
    """What says something to a person, in words by name."""
    words = {name.replace("_", " "): _words(value) for name, value in data.items() if value not in (None, "", False)}
    return [(name, each) for name, each in words.items() if each]


def _scan(scan: events.Scanned) -> str:
    why = f", {_why(scan.reason)}" if scan.reason else ""
    state = f", {LINES[LineState(scan.line_state)]}" if scan.line_state else ""
    order = f" of order {scan.order_number}{state}" if scan.order_number else ""
    released = f"; cards to go back to the tray: {', '.join(scan.released)}" if scan.released else ""
    return f"{scan.verdict} at the {scan.station}{why}: {scan.code or ', '.join(scan.text)}{order}{released}"


def _why(reason: str) -> str:
    known = REFUSALS.get(Reason(reason)) if reason in list(Reason) else None
    return known.trouble if known else reason.replace("_", " ")


def _words(value: Any) -> str:
    """In words; empty for what is an id alone."""
    match value:
        case True:
            return "yes"
        case {"reference": reference}:
            return str(reference)
        case dict():
            return ", ".join(" ".join(each) for each in _told(value))
        case list() | tuple():
            return ", ".join(filter(None, map(_words, value)))
    return "" if _ID.fullmatch(str(value)) else str(value)
