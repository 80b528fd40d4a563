"""What a scan did is taken back, as long as nothing has changed its line since."""

from __future__ import annotations

import json
from dataclasses import replace

from scanflow.domain import events
from scanflow.domain.life import DoubtKind, LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Scan, Slot, Stay
from scanflow.workflow import parcels
from scanflow.workflow.ports import Refused, Unit, must
from scanflow.workflow.stock import doubts

BACK: dict[tuple[str, str], tuple[str, ...]] = {
    (LineState.WAITING, LineState.PICKED): ("put back",),
    (LineState.SHORT, LineState.PICKED): ("put back", "miss"),
    (LineState.PICKED, LineState.PACKED): ("take out",),
    (LineState.WAITING, LineState.PACKED): ("take out", "put back"),
    (LineState.SHORT, LineState.PACKED): ("take out", "put back", "miss"),
}
"""(state before the scan, state now) → the events that undo it. Undo only steps back: forward needs a scan."""


def undo(unit: Unit, key: str) -> Line:
    """Take back what a scan did to its line, if nothing has changed the line since.

    A parcel that the scan closed is reopened in the same step: `slot_reused` once a slot has a newer stay.
    """
    scan = must(unit, Scan, key)
    if not scan.accepted or not scan.changed or scan.line is None:
        raise Refused("nothing_to_undo", "This scan changed nothing that can be taken back.")
    line = must(unit, Line, scan.line)
    if line.scan != key:
        raise Refused("changed_since", "The line was changed since. Scan again instead.")
    if json.loads(scan.answer)["parcel_state"] == ParcelState.CLOSED:
        parcels.reopen(unit, scan.parcel or "")
        line = must(unit, Line, line.id)
    elif line.state is LineState.PACKED and not must(unit, Parcel, line.parcel or "").open:
        raise Refused("changed_since", "Its parcel was set aside since. Open it, and take the thing out with a scan.")
    steps = BACK.get((scan.was, line.state))
    if steps is None:
        raise Refused("nothing_to_undo", "This can't be taken back. Scan the card again instead.")
    for event in steps:
        line = line.after(event)
    line = replace(line, parcel=line.parcel if line.state is LineState.PACKED else None)
    unit.put(line)
    stay = must(unit, Stay, line.stay or "")
    if "put back" in steps:
        unit.put(replace(must(unit, Slot, stay.code), out=None))
    if "miss" in steps:
        doubts.doubt(unit, stay.item, DoubtKind.MISSING, "")
    unit.record(events.Undone(key=key, line=line.id, line_state=line.state))
    return line
