"""How a finding was put right is taken back, as long as nothing has built on it."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import fields, replace
from datetime import datetime
from typing import Any

from scanflow.domain import events
from scanflow.domain.counts.findings import Finding
from scanflow.domain.counts.stocktake import Resolved, Stocktake
from scanflow.domain.life import CardState, DoubtEnd, Hold, LineState, StayState
from scanflow.domain.things import Doubt, Fetch, Held, Line, Out, Sighting, Slot, Station, Stay
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes
from scanflow.workflow.ports import Missing, Refused, SlotFacts, Unit, must
from scanflow.workflow.stock import doubts


def doubted(unit: Unit, facts: SlotFacts | None) -> set[str]:
    """The open doubts of a slot's thing."""
    return {each.id for each in doubts.open_doubts(unit, facts.item.id)} if facts and facts.item else set()


def doubts_told(before: set[str], after: set[str]) -> dict[str, Any]:
    """Which doubts an act added and which it ended."""
    return {"added": sorted(after - before), "ended": sorted(before - after)}


def _take_back_doubts(unit: Unit, kept: Mapping[str, Any]) -> None:
    """What an act added is corrected, and what it ended is open again."""
    for name in kept.get("added", ()):
        unit.put(replace(must(unit, Doubt, name), how=DoubtEnd.CORRECTED, note="Taken back.", ended=unit.at))
    for name in kept.get("ended", ()):
        unit.put(replace(must(unit, Doubt, name), how=None, note="", ended=None))


def _sighting(kept: Sequence[Any]) -> Sighting:
    station, place, accepted, at, parcel = kept
    return Sighting(Station(station), place, accepted, datetime.fromisoformat(at) if at else None, parcel)


# What each act may change, and how it is read back from JSON.
_REVIVE: Mapping[type, Mapping[str, Callable[[Any], Any]]] = {
    Slot: {"card": CardState, "seen": _sighting, "out": lambda kept: Out(Station(kept[0]), *kept[1:]), "twin": bool},
    Stay: {"state": StayState, "ended": datetime.fromisoformat, "reason": str},
    Line: {"state": LineState, "holds": lambda kept: tuple(Held(Hold(h), why) for h, why in kept), "scan": str},
}


def _image(thing: Any) -> dict[str, Any]:
    """All that is known of a thing, as plain JSON values: another order's line or a newer stay is not the same."""
    return {each.name: _plain(getattr(thing, each.name)) for each in fields(thing)}


def _plain(value: Any) -> Any:
    match value:
        case datetime():
            return value.isoformat()
        case Sighting() | Out() | Fetch() | Held():
            return [_plain(getattr(value, each.name)) for each in fields(value)]
        case tuple():
            return [_plain(each) for each in value]
    return value


def _parts(facts: SlotFacts | None) -> dict[str, Any]:
    return {
        type(each).__name__: each
        for each in ((facts.slot, facts.stay, facts.line) if facts else ())
        if each is not None
    }


def undo_of(before: SlotFacts | None, after: SlotFacts | None) -> dict[str, Any]:
    """What the parts of a slot were before an act and after it."""
    both = {"before": before, "after": after}
    return {when: {name: _image(part) for name, part in _parts(facts).items()} for when, facts in both.items()}


def undo(unit: Unit, count_id: str, finding_id: str) -> stocktakes.TrackedFinding:
    """Take back how a finding was resolved: all stands as before. `changed_since` once something has built on it."""
    must(unit, Stocktake, count_id)
    resolved = unit.get(Resolved, f"{count_id}.{finding_id}")
    if resolved is None:
        raise Missing(f"Nothing was resolved under {finding_id} in this count.")
    finding = Finding.from_dict(json.loads(resolved.finding))
    kept, after = json.loads(resolved.undo), unit.seq
    if kept["to"] is not None:
        _move_back(unit, finding, kept)
    elif finding.code is not None:
        _restore(unit, finding.code, kept)
    _take_back_doubts(unit, kept.get("doubts", {}))
    unit.drop(Resolved, resolved.id)
    unit.record(events.FindingReopened(stocktake=count_id, finding=finding_id, how=resolved.how, after=after))
    return stocktakes.TrackedFinding(finding)


def _restore(unit: Unit, code: str, kept: Mapping[str, Any]) -> None:
    parts = _parts(unit.facts(code))
    # a sale of what was resolved, a newer stay, any later scan of the card
    if {name: _image(part) for name, part in parts.items()} != kept["after"]:
        raise Refused("changed_since", f"{code} has changed since. What was done stands.")
    for name, part in parts.items():
        unit.put(_as_before(part, kept["before"][name], _REVIVE[type(part)]))


def _as_before(part: Any, was: Mapping[str, Any], names: Iterable[str]) -> Any:
    """A part of a slot with these of its fields as they were."""
    revive = _REVIVE[type(part)]
    return replace(part, **{each: None if was[each] is None else revive[each](was[each]) for each in names})


def _move_back(unit: Unit, finding: Finding, kept: Mapping[str, Any]) -> None:
    """The thing's next stay begins in its former slot, whose card still hangs on it or lies beside it.

    Where that was read, and where the thing lay, is known as before. As long as the line that wanted the thing before
    the move stands where it stood, nobody touched the thing.
    """
    stay, line = must(unit, Stay, kept["to"]), kept["before"].get("Line")
    facts = unit.facts(finding.subject)
    moved = unit.facts(stay.code)
    if facts is None or moved is None or facts.taken or facts.slot.card is not CardState.DUE or not stay.open:
        raise Refused("changed_since", f"{finding.subject} has changed since. Move the thing instead.")
    now = moved.live_line
    untouched = now is None or now.state is LineState.WAITING or (line is not None and line["state"] == now.state)
    if moved.slot.seen is not None or not untouched:
        raise Refused("changed_since", "The thing was touched since. Move it instead.")
    stock.move_back(unit, stay, finding.subject)
    unit.put(_as_before(must(unit, Slot, finding.subject), kept["before"]["Slot"], ("seen", "out")))
