"""What the service answers, told from the room in memory, and the names that both give the same thing."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from memory import KINDS, Memory

from labels import slot_code
from scanflow.domain.derive import order_state, slot_state
from scanflow.domain.life import NotAllowed
from scanflow.domain.things import Doubt, Item, Line, Order, Parcel, Round, Scan, Slot, Stay, Stop
from scanflow.domain.whereabouts import bin_of_stop
from scanflow.workflow.picking.rounds import LeftOut
from scanflow.workflow.ports import Invalid, Missing, Refused
from scanflow.workflow.stock import sightings

Json = dict[str, Any]


def stay(room: Memory, told: Stay) -> Json:
    item = room.all(Item)[told.item]
    place = {"code": told.code, "turn": told.turn, "bin": room.all(Slot)[told.code].bin}
    words = {"title": item.title, "listing": item.listing, "notes": item.notes, "packing": item.packing, "photo": None}
    reference = slot_code.reference(told.code, told.turn)
    return {"id": told.id, "item": item.id, "reference": reference, "state": told.state} | place | words


def line(room: Memory, told: Line) -> Json:
    wanted = room.all(Stay)[told.stay] if told.stay else None
    title = told.title or (room.all(Item)[wanted.item].title if wanted else "")
    names = {"id": told.id, "reference": told.reference, "code": wanted.code if wanted else None, "stay": told.stay}
    return (
        names
        | {"title": title, "state": told.state, "hold": told.hold, "why": told.why}
        | {"holds": [{"hold": each.hold, "why": each.why} for each in told.holds]}
    )


def order(room: Memory, told: Order) -> Json:
    lines = room.find(Line, order=told.id)
    times = {name: when.isoformat() if (when := getattr(told, name)) else None for name in ("ordered_at", "ship_by")}
    names = {"id": told.id, "number": told.number, "channel": told.channel, "slip": slot_code.slip_text(told.slip)}
    by_hand = {"note": told.note, "collected": told.collected}
    return names | times | by_hand | {"state": order_state(lines), "lines": [line(room, each) for each in lines]}


def round_(room: Memory, told: Round, left_out: Sequence[LeftOut] = ()) -> Json:
    stops = [_stop(room, each) for each in sorted(room.find(Stop, round=told.id), key=lambda stop: stop.position)]
    left = [{"order": each.order, "why": each.why} for each in left_out]
    return {"id": told.id, "state": told.state, "stops": stops, "left_out": left}


def _stop(room: Memory, told: Stop) -> Json:
    wanted = line(room, room.all(Line)[told.line])
    item = room.all(Item)[room.all(Stay)[wanted["stay"]].item] if wanted["stay"] else None
    of_line = room.all(Line)[told.line]
    facts = room.facts(wanted["code"]) if wanted["code"] else None
    return {
        "bin": bin_of_stop(told.bin, of_line.state, sightings.where(room, facts) if facts else None),
        "code": wanted["code"],
        "title": item.title if item else wanted["title"],
        "photo": None,
        "order": of_line.order,
        "line": of_line.id,
        "basket": of_line.basket,
        "state": of_line.state,
    }


def parcel(room: Memory, told: Parcel) -> Json:
    lines = [line(room, each) | {"parcel": each.parcel} for name in told.orders for each in room.find(Line, order=name)]
    slip = slot_code.slip_text(room.all(Order)[told.orders[0]].slip)
    names = {"id": told.id, "state": told.state, "table": told.table, "slip": slip, "orders": list(told.orders)}
    return names | {"lines": lines}


def slot(room: Memory, told: Slot) -> Json:
    facts = room.facts(told.code)
    last = facts.stay if facts else None
    now = {"state": slot_state(told, last), "stay": last.id if last and last.open else None, "card": told.card}
    return {"code": told.code, "section": told.section, "bin": told.bin} | now


def everything(get: Callable[[type], Sequence[object]]) -> dict[str, list[Json]]:
    """Every thing of every kind as plain data, but for what is the service's own: a scan's fingerprint of the call, and
    the name of who doubted.
    """
    told = {kind.__name__: [asdict(each) for each in get(kind)] for kind in KINDS}
    for scan in told[Scan.__name__]:
        del scan["body"]
        scan["answer"] = json.loads(scan["answer"])
        scan["stood"] = json.loads(scan["stood"] or "null")
    for doubt in told[Doubt.__name__]:
        del doubt["by"]
    return told


def problem(error: Exception) -> tuple[int, Json]:
    """Status and problem details of what the workflow raised."""
    match error:
        case Refused():
            return 409, {"code": error.code, "errors": [], **error.extra}
        case NotAllowed():
            return 409, {"code": "not_allowed", "errors": []}
        case Invalid():
            return 422, {"code": error.code, "errors": [{"pointer": error.pointer, "code": error.code}]}
        case Missing():
            return 404, {"code": "not_found", "errors": []}
    raise error


class Names:
    """Which id of the service means which id of the model; learnt from answers, one to one."""

    def __init__(self) -> None:
        self._theirs: dict[str, str] = {}
        self._ours: dict[str, str] = {}

    def theirs(self, value: Any) -> Any:
        """The same body or path with the service's ids in place of the model's."""
        match value:
            case str():
                return self._theirs.get(value, value)
            case Mapping():
                return {name: self.theirs(each) for name, each in value.items()}
            case list() | tuple():
                return [self.theirs(each) for each in value]
        return value

    def same(self, ours: Any, theirs: Any, place: str = "") -> None:
        """Fails where the two differ by more than their ids."""
        if isinstance(ours, Mapping) and isinstance(theirs, Mapping):
            assert (place, sorted(ours)) == (place, sorted(theirs))
            for name, value in ours.items():
                self.same(value, theirs[name], f"{place}/{name}")
        elif isinstance(ours, list | tuple) and isinstance(theirs, list | tuple):
            assert (place, len(ours), ours) == (place, len(theirs), ours), theirs
            for index, (one, other) in enumerate(zip(ours, theirs, strict=True)):
                self.same(one, other, f"{place}/{index}")
        elif isinstance(ours, str) and isinstance(theirs, str) and re.fullmatch(r"id\d+", ours):
            if ours not in self._theirs:
                assert theirs not in self._ours, f"{place}: one id of the service for two things"
                self._theirs[ours], self._ours[theirs] = theirs, ours
            assert (place, self._theirs[ours]) == (place, theirs)
        else:
            assert (place, ours) == (place, theirs)
