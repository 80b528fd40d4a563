"""What a line of the ledger says under its kind, of whatever event."""

from __future__ import annotations

import json
from typing import Any, NamedTuple

from scanflow.domain import events


class Part(NamedTuple):
    """Words, and the name of what they say; either may be empty."""

    name: str
    words: str


def said(event: events.Told) -> list[Part]:
    """A scan as a sentence, of all else what it tells, name by name."""
    if isinstance(event, events.Scanned):
        return [Part("", _scan(event)), Part(f"by {event.via}, key {event.key}", "")]
    told = ((name, value) for name, value in event.data().items() if value not in (None, "", [], False))
    return [Part(name.replace("_", " "), _words(value)) for name, value in told]


def _scan(scan: events.Scanned) -> str:
    why = f", {scan.reason.replace('_', ' ')}" if scan.reason else ""
    order = f" of order {scan.order_number}, {scan.line_state}" if scan.order_number else ""
    released = f"; released {', '.join(scan.released)}" if scan.released else ""
    return f"{scan.verdict} at the {scan.station}{why}: {scan.code or ', '.join(scan.text)}{order}{released}"


def _words(value: Any) -> str:
    match value:
        case True:
            return "yes"
        case dict():
            return json.dumps(value, ensure_ascii=False)
        case list():
            return ", ".join(str(each.get("reference", each) if isinstance(each, dict) else each) for each in value)
    return str(value)
