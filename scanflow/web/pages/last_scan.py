"""What the last scan at a station said, and whether it can be taken back."""

from __future__ import annotations

import json
from dataclasses import dataclass

from scanflow.domain.life import LineState
from scanflow.domain.things import Line, Parcel, Station
from scanflow.storage.unit import SqlUnit
from scanflow.web.visitors import shop
from scanflow.workflow.sightings import gone


@dataclass(frozen=True, slots=True)
class LastScan:
    """`words` is a sentence; `undo` says that the scan's change still stands as the latest of its line.

    `photo` is the address of the thing's picture; `line` is the line that stands still if it is not this thing, None
    where none would; `round` or `table` is where it was scanned.
    """

    key: str
    words: str
    undo: bool
    code: str
    title: str
    photo: str | None
    line: str | None
    round: str
    table: str


def last_scan(station: Station, spot: str) -> LastScan | None:
    """The last scan at this round, table or bin; None before the first."""
    with shop().looking() as unit:
        scan = unit.last_scan(station, spot)
        if scan is None:
            return None
        answer = json.loads(scan.answer)
        undo = scan.accepted and scan.changed and _latest(unit, scan.line, scan.key)
        line = _doubtable(unit, scan.line) if scan.accepted and station in (Station.BIN, Station.TABLE) else None
    begin = f"{scan.code}: " if scan.code and scan.code not in answer["advice"] else ""
    said = "Refused. " if not scan.accepted else ""
    walk, table = (spot if station is each else "" for each in (Station.BIN, Station.TABLE))
    words = f"{said}{begin}{answer['advice']}"
    return LastScan(scan.key, words, undo, scan.code or "", answer["title"] or "", answer["photo"], line, walk, table)


def _doubtable(unit: SqlUnit, line_id: str | None) -> str | None:
    """The line if its thing can be doubted: it is live, or it lies in a closed parcel that has not left."""
    line = unit.get(Line, line_id) if line_id else None
    if line is None or line.holds:
        return None
    parcel = unit.get(Parcel, line.parcel) if line.state is LineState.RELEASED and line.parcel else None
    return line.id if line.live or (parcel is not None and not gone(unit, parcel)) else None


def _latest(unit: SqlUnit, line_id: str | None, key: str) -> bool:
    line = unit.get(Line, line_id) if line_id else None
    return line is not None and line.scan == key
