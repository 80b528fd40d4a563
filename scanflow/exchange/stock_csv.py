"""What stands in the room, as a file."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any
from zoneinfo import ZoneInfo

from scanflow.exchange import csv_out

COLUMNS = ("number", "title", "listing", "notes", "since", "bin")
"""The number as it stands on the card, also one that was adopted; `since` in the shop's zone."""


def text(rows: Iterable[Any], zone: str) -> str:
    """The file of these rows of `storage.views.stock.standing`."""
    here = ZoneInfo(zone)
    return csv_out.text(COLUMNS, (_cells(row, here) for row in rows))


def _cells(row: Any, zone: ZoneInfo) -> dict[str, str]:
    since = row.since.astimezone(zone).isoformat(" ", "seconds")
    return {name: since if name == "since" else getattr(row, name) for name in COLUMNS}
