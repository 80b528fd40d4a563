"""What was done on paper is entered afterwards, stop by stop, through the guards of the bin.

A sheet says no card's text, so nothing on it can pass for a card: its bars say a stop's own number, which only finds
the stop. The proof is what the picker wrote: the check digit that is printed on the card in hand and shown nowhere
else. With the stop's slot code it makes the card's text, typed. A neighbour's card, wrong in one figure, always has
another digit (ISO/IEC 7064 MOD 11,10).
"""

from __future__ import annotations

import hashlib
import json

from labels import slot_code
from scanflow.domain.things import Line, Station, Stay, Stop
from scanflow.workflow.answers import Answer
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.picking.scans import scan
from scanflow.workflow.ports import Invalid, Unit, must


def enter(unit: Unit, round_id: str, line_id: str, written: str, form: str, at: str) -> Answer:
    """The answer to a stop's pick by the last figure of its card, or by all of its text where that is what was written.

    `form` is one filling of the page: sent twice it counts once. `at`: the time of entry, and the sign that the scan
    comes late. `Invalid` where the round has no such stop, or its thing is bound to nothing any more.
    """
    line = must(unit, Line, line_id)
    if not any(stop.line == line.id for stop in unit.find(Stop, round=round_id)):
        raise Invalid("/line", "unknown_line", "This round has no such stop.")
    if line.stay is None:
        raise Invalid("/line", "unbound", "This line waits for a person to settle it.")
    figures = slot_code.compact(written)
    text = must(unit, Stay, line.stay).code + figures if len(figures) == 1 else written
    said = hashlib.sha256(json.dumps([form, round_id, line_id, text]).encode()).hexdigest()
    scanned = ScanBase(station=Station.BIN, key=f"paper-{said[:40]}", via="typed", round=round_id, at=at)
    return scan(unit, StationReading(scanned, (text,), said))
