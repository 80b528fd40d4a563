"""What the last scan at a station said, and whether it can be taken back."""

from __future__ import annotations

import json
from dataclasses import dataclass

from scanflow.domain.life import ParcelState
from scanflow.domain.things import Line, Parcel, Station
from scanflow.storage.unit import SqlUnit
from scanflow.web.visitors import shop
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer


@dataclass(frozen=True, slots=True)
class LastScan:
    """`words` is a sentence; `undo` says that the scan's change still stands as the latest of its line.

    `photo` is the address of the thing's picture; `line` is the line that stands still if it is not this thing, None
    where none would; `round` is where it was scanned, if on a round, `table` if at one. `reopen` is the parcel that it
    closed, while that can be opened again.
    """

    key: str
    words: str
    undo: bool
    code: str
    title: str
    photo: str | None
    line: str | None
    round: str
    reopen: str | None
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
        reopen = answer["parcel"] if scan.accepted and _shut(unit, answer) else None
    begin = f"{scan.code}: " if scan.code and scan.code not in answer["advice"] else ""
    said = "Refused. " if not scan.accepted else ""
    walk = spot if station is Station.BIN else ""
    words = f"{said}{begin}{answer['advice']}"
    table = spot if station is Station.TABLE else ""
    title, photo = answer["title"] or "", answer["photo"]
    return LastScan(scan.key, words, undo, scan.code or "", title, photo, line, walk, reopen, table)


def _shut(unit: SqlUnit, answer: Answer) -> bool:
    """Whether a scan closed a parcel that can be opened again."""
    if answer["parcel_state"] != ParcelState.CLOSED:
        return False
    parcel = unit.get(Parcel, answer["parcel"])
    return parcel is not None and parcels.can_reopen(unit, parcel)


def _doubtable(unit: SqlUnit, line_id: str | None) -> str | None:
    line = unit.get(Line, line_id) if line_id else None
    return line.id if line is not None and line.live and not line.holds else None


def _latest(unit: SqlUnit, line_id: str | None, key: str) -> bool:
    line = unit.get(Line, line_id) if line_id else None
    return line is not None and line.scan == key
