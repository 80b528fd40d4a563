"""What the last scan at a station said, and whether it can be taken back."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

from scanflow.domain import events
from scanflow.domain.derive import stands_still
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Label, Line, Parcel, Scan, Station
from scanflow.domain.whereabouts import words
from scanflow.web.pages.room_view import room
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer
from scanflow.workflow.picking import undoing
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import sightings


@dataclass(frozen=True, slots=True)
class LastScan:
    """`words` is a sentence; `undo` is the key of the scan that is still the latest of its line, None where none is.

    `photo` is the address of the thing's picture; `line` is the line that stands still if it is not this thing, None
    where none would; `round` is where it was scanned, if on a round, `table` if at one. `reopen` is the parcel that it
    closed, while that can be opened again; `label` is the one whose label it was, while that can be taken off.
    """

    words: str
    undo: str | None
    code: str
    title: str
    photo: str | None
    line: str | None
    round: str
    reopen: str | None
    table: str
    label: str | None = None


def last_scan_at(table: str, parcel: str | None) -> LastScan | None:
    """The same at a table with this parcel before it: a refusal of another one's is over."""
    scan = room().last_scan(Station.TABLE, table)
    if scan is None or (not scan.accepted and scan.parcel != parcel):
        return None
    return last_scan(Station.TABLE, table)


def last_scan(station: Station, spot: str) -> LastScan | None:
    """The last scan at this round, table or bin; None before the first."""
    unit = room()
    scan = unit.last_scan(station, spot)
    if scan is None:
        return None
    answer = json.loads(scan.answer)
    line = unit.get(Line, scan.line) if scan.line else None
    undo = _standing(unit, scan, line)
    over = scan.accepted and line is not None and (line.state != answer["line_state"] or bool(line.holds))
    said = _now(unit, scan, line) if over and line is not None else _said(scan, answer)
    reopen = answer["parcel"] if scan.accepted and _shut(unit, answer) else None
    asks = scan.accepted and station in (Station.BIN, Station.TABLE)
    doubtable = _doubtable(unit, line) if asks else None
    walk, table = spot if station is Station.BIN else "", spot if station is Station.TABLE else ""
    title, photo = answer["title"] or "", answer["photo"]
    label = answer["parcel"] if scan.accepted and scan.code is None and _labelled(unit, answer["parcel"]) else None
    return LastScan(said, undo, scan.code or "", title, photo, doubtable, walk, reopen, table, label)


def _labelled(unit: Unit, parcel_id: str | None) -> bool:
    """Whether a closed parcel has a label."""
    parcel = unit.get(Parcel, parcel_id) if parcel_id else None
    return parcel is not None and parcel.state is ParcelState.CLOSED and bool(unit.find(Label, parcel=parcel.id))


def _shut(unit: Unit, answer: Answer) -> bool:
    """Whether a scan closed a parcel that can be opened again."""
    if answer["parcel"] is None or answer["parcel_state"] != ParcelState.CLOSED:
        return False
    parcel = unit.get(Parcel, answer["parcel"])
    return parcel is not None and parcels.can_reopen(unit, parcel)


def _said(scan: Scan, answer: dict[str, Any]) -> str:
    begin = f"{scan.code}: " if scan.code and scan.code not in answer["advice"] else ""
    said = "Refused. " if not scan.accepted else ""
    return f"{said}{begin}{answer['advice']}"


def _standing(unit: Unit, scan: Scan, line: Line | None) -> str | None:
    """The key of the scan that changed the line last, if that can be taken back: this one, or the one of which it is a
    second beep.
    """
    if line is None or line.scan is None or not scan.accepted:
        return None
    first = unit.get(Scan, line.scan)
    if first is None or not first.changed:
        return None
    if line.state is not LineState.RELEASED and (first.was, line.state) not in undoing.BACK:
        return None
    return first.key if (first.station, first.spot, first.code) == (scan.station, scan.spot, scan.code) else None


def _doubtable(unit: Unit, line: Line | None) -> str | None:
    """The line if its thing can be doubted: it is live, or it lies in a closed parcel that has not left."""
    if line is None or line.holds:
        return None
    parcel = unit.get(Parcel, line.parcel) if line.state is LineState.RELEASED and line.parcel else None
    return line.id if line.live or (parcel is not None and not sightings.gone(unit, parcel)) else None


def _now(unit: Unit, scan: Scan, line: Line) -> str:
    """Where the thing is, once what the scan said of it is over."""
    facts = unit.facts(scan.code or "")
    if facts is None or facts.line is None or facts.line.id != line.id:
        return f"{scan.code} is another thing's now."
    undone = unit.told_at(events.Undone, line.id)
    taken_back = undone is not None and scan.at is not None and undone >= scan.at
    where = words(sightings.where(unit, facts))
    held = f" Held: {line.why}" if stands_still(line) else ""
    return (f"{scan.code}: undone. It is {where}." if taken_back else f"{scan.code} is {where}.") + held
