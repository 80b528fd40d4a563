"""A card is held before a station: judged, stepped, recorded, answered once; and its undo."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from labels import slot_code
from scanflow.domain import advice, events
from scanflow.domain.derive import order_state
from scanflow.domain.life import CardState, DoubtEnd, DoubtKind, Hold, RoundState
from scanflow.domain.things import Bin, Line, Out, Parcel, Round, Scan, Sighting, Slot, Station
from scanflow.domain.verdict import Reason, Scene, effects, judge
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of, recalled
from scanflow.workflow.parcels import finishing, slips
from scanflow.workflow.picking.reading import InView, StationReading, read
from scanflow.workflow.ports import Invalid, SlotFacts, Unit
from scanflow.workflow.stock import cards, doubts, photos, sightings
from scanflow.workflow.times import clock


def earlier(unit: Unit, key: str, body: str) -> Answer | None:
    """The answer this key had, as a replay; `key_reused` if it came with another body."""
    scan = unit.get(Scan, key)
    if scan is None:
        return None
    if scan.body != body:
        raise Invalid("/key", "key_reused", "This key was used for another scan.")
    return recalled(scan.answer, replayed=True)


def scan(unit: Unit, reading: StationReading) -> Answer:
    """Judge one reading and do what it entails, as one step with its ledger entry.

    Raises `Invalid` where there can be no verdict: an unknown round or bin, one that is missing, a key reused.
    """
    known = earlier(unit, reading.said.key, reading.body)
    if known is not None:
        return known
    round_ = _round(unit, reading)
    _check_bin(unit, reading)
    seen = read(unit, reading)
    if seen.slip is not None:
        answer, stood = slips.scan_slip(unit, seen.slip, reading.said.table, reading.said.key)
        return _keep(unit, reading, None, answer, "", stood)
    label = _label(unit, reading, seen)
    if label is not None:
        return _keep(unit, reading, None, label, "")
    scene = _scene(unit, reading, None if seen.unread else seen.card, seen.unread, round_)
    before = _repeated(unit, reading, scene)
    if before is not None:
        return _keep_repeat(unit, reading, before)
    reason = judge(scene)
    if reason is None and scene.slot is not None and _is_past(unit, reading, scene):
        answer = _answer(unit, scene, Reason.UNREADABLE)
        return _keep(unit, reading, scene, answer | {"advice": advice.TOO_OLD.format(code=scene.slot.code)}, "")
    if reason is not None:
        _sight(unit, scene, reading, accepted=False)
        answer = _answer(unit, replace(scene, since=_since(unit, scene, reason)), reason)
        if seen.unread and seen.card:
            answer |= {"code": seen.card.slot.code, "advice": advice.ONCE_MORE}
        return _keep(unit, reading, scene, answer, "")
    return _accept(unit, reading, scene)


def _label(unit: Unit, reading: StationReading, seen: InView) -> Answer | None:
    """The answer to a shipping label at the table; None for all else."""
    if reading.said.station is not Station.TABLE or seen.unread not in (Reason.UNKNOWN_CODE, Reason.BAD_CHECK):
        return None
    if seen.card is not None:
        return None
    read_at = unit.at - timedelta(milliseconds=reading.said.age_ms)
    return finishing.scan_label(unit, reading.said.table, reading.texts, read_at)


CLOSE = timedelta(seconds=2)
"""How much earlier than another reading one may be and still count: scans that waited are sent one after the other, and
the way takes each its own time."""


def _is_past(unit: Unit, reading: StationReading, scene: Scene) -> bool:
    """Whether a scan that waited is older than what was told of its card or its thing since.

    Then it says where the card was, not where it is, and moves nothing. A later yes at a bin says no more than that the
    thing was on its way.
    """
    slot, stay = scene.slot, scene.stay
    if not reading.said.age_ms or slot is None:
        return False
    at = unit.at - timedelta(milliseconds=reading.said.age_ms) + CLOSE
    seen = slot.seen
    told = [seen.at] if seen is not None and not (seen.accepted and seen.station is Station.BIN) else []
    if stay is not None and not stay.open:
        told.append(stay.ended)
    if scene.item is not None and scene.taken:
        told += [each.since for each in doubts.open_doubts(unit, scene.item.id) if each.kind is DoubtKind.MISSING]
    return any(each is not None and each > at for each in told)


def _round(unit: Unit, reading: StationReading) -> Round | None:
    if reading.said.station is not Station.BIN:
        return None
    if reading.said.round is None:
        raise Invalid("/round", "required", "Say which round this is.")
    round_ = unit.get(Round, reading.said.round)
    if round_ is None:
        raise Invalid("/round", "unknown_round", "There is no such round.")
    return round_


def _check_bin(unit: Unit, reading: StationReading) -> None:
    if reading.said.bin is None:
        if reading.said.station is Station.SHELF:
            raise Invalid("/bin", "required", "Say which bin this is.")
    elif unit.get(Bin, reading.said.bin) is None:
        raise Invalid("/bin", "unknown_bin", f"There is no bin {reading.said.bin}.")


def _scene(
    unit: Unit, reading: StationReading, facts: SlotFacts | None, unread: Reason | None, round_: Round | None
) -> Scene:
    at_table = reading.said.station is Station.TABLE
    return Scene(
        station=reading.said.station,
        unread=unread,
        slot=facts.slot if facts else None,
        stay=facts.stay if facts else None,
        item=facts.item if facts else None,
        line=facts.line if facts else None,
        order=facts.order if facts else None,
        where=sightings.where(unit, facts) if facts else None,
        round=round_,
        parcel=parcels.open_parcel_at(unit, reading.said.table) if at_table else None,
        bin=reading.said.bin,
        take_out=reading.said.take_out and at_table,
        late=reading.said.late,
        by_bin=unit.settings.scan_at_bin,
        by_slip=unit.settings.slip_closes,
    )


def _since(unit: Unit, scene: Scene, reason: Reason) -> str:
    """From when on a scan that waited for the network would have been refused; empty where that is not known."""
    if not scene.late:
        return ""
    line, stay, at = scene.line, scene.stay, None
    match reason:
        case Reason.CANCELLED if line:
            at = unit.told_at(events.Cancelled, line.id)
        case Reason.HELD if line:
            at = unit.told_at(events.LineHeld, line.id)
        case Reason.ALREADY_PICKED | Reason.ALREADY_PACKED if line and line.scan:
            at = unit.told_at(events.Scanned, line.scan)
        case Reason.CLOSED if scene.round:
            at = unit.told_at(events.RoundClosed, scene.round.id)
        case Reason.SLOT_FREE if stay:
            at = stay.ended
    return clock(at, unit.at, unit.settings.zone) if at else ""


DOUBLE_BEEP = timedelta(seconds=5)
"""How long after a take-out a scan without it is taken for a second beep. A scanner held too long sends two within a
second or two (common practice, no source)."""


def _repeated(unit: Unit, reading: StationReading, scene: Scene) -> Scan | None:
    """The scan just before, if this is the same card at the same spot again and all stands as that scan left it."""
    if scene.slot is None or scene.slot.seen is None or scene.slot.card is CardState.LOST:
        return None
    last = unit.last_scan(reading.said.station, reading.said.spot)
    if last is None or not last.accepted or last.code != scene.slot.code or last.stood != _stood(unit, reading, scene):
        return None
    seen = scene.slot.seen
    if (seen.station, seen.place, seen.accepted) != (
        reading.said.station,
        _place(reading, scene.slot, accepted=True),
        True,
    ):
        return None
    if last.take_out is not scene.take_out:
        beeped_twice = last.take_out and last.at is not None and unit.at - last.at <= DOUBLE_BEEP
        return last if beeped_twice else None
    if scene.round is not None and scene.round.state is not RoundState.OPEN and not scene.late:
        return None
    return last


def _stood(unit: Unit, reading: StationReading, scene: Scene) -> str:
    """All that a scan leaves behind, in a word: stay, line, card, and at a table the parcel that is open there."""
    slot, stay, line = scene.slot, scene.stay, scene.line
    parcel = parcels.open_parcel_at(unit, reading.said.table) if reading.said.station is Station.TABLE else None
    return json.dumps(
        [
            slot.card if slot else None,
            [stay.id, stay.state] if stay else None,
            [line.id, line.state, line.parcel, [each.hold for each in line.holds]] if line else None,
            [parcel.id, parcel.opened.isoformat()] if parcel else None,
        ]
    )


def _sight(unit: Unit, scene: Scene, reading: StationReading, *, accepted: bool) -> None:
    if scene.slot is None:
        return
    seen = Sighting(
        reading.said.station,
        _place(reading, scene.slot, accepted=accepted),
        accepted,
        unit.at - timedelta(milliseconds=reading.said.age_ms),
        scene.parcel.id if scene.parcel else None,
    )
    sightings.sight(unit, SlotFacts(scene.slot, scene.stay, scene.item, scene.line, scene.order), seen)


def _place(reading: StationReading, slot: Slot, *, accepted: bool) -> str:
    """Where a card is sighted by this reading. A round's stop says its bin only where the card was the right one."""
    if reading.said.station is Station.BIN:
        return reading.said.bin or (slot.bin if accepted else "")
    return reading.said.spot


def _accept(unit: Unit, reading: StationReading, scene: Scene) -> Answer:
    slot, line = scene.slot, scene.line if scene.live else None
    was = line.state.value if line else ""
    card_before, seen_before, out_before = (slot.card, slot.seen, slot.out) if slot else (None, None, None)
    for table, event in effects(scene):
        if table == "card" and slot is not None:
            slot = slot.after(event)
        elif line is not None:
            line = _after(line, event, scene, reading.said.key)
    if slot is not None:
        slot = replace(slot, out=_out(slot, scene, reading))
        unit.put(slot)
    if line is not None:
        line = _told(unit, line, scene, reading.said.key)
        unit.put(line)
    changed = line is not scene.line if scene.live else slot is not None and slot.card is not card_before
    scene = replace(scene, slot=slot, line=line if scene.live else scene.line)
    _sight(unit, scene, reading, accepted=True)
    if reading.said.station is Station.SHELF and not changed:
        changed = seen_before is None or seen_before.place != reading.said.bin or out_before is not None
    released = _close_if_complete(unit, scene, reading)
    return _keep(unit, reading, scene, _answer(unit, scene, None, changed=changed, released=released), was)


def _out(slot: Slot, scene: Scene, reading: StationReading) -> Out | None:
    """Where a thing is off its shelf after a yes; what is packed keeps where it came from, for the undo."""
    match scene.station:
        case Station.BIN:
            line = scene.line
            basket = line.basket if line else None
            return Out(Station.BIN, _place(reading, slot, accepted=True), reading.said.round, basket)
        case Station.TABLE if scene.take_out:
            return Out(Station.TABLE, reading.said.table)
        case Station.SHELF if not scene.counts_as_packed:
            return None
    return slot.out


def _told(unit: Unit, line: Line, scene: Scene, key: str) -> Line:
    """The line after what an accepted scan says beside its step: the thing is here, so it is neither missing nor
    misplaced.
    """
    if scene.station is Station.TRAY or scene.item is None:
        return line
    if scene.station is Station.TABLE and line.has(Hold.MISPLACED):
        line = replace(line.freed((Hold.MISPLACED,)), scan=key)
    if any(each.kind is DoubtKind.MISSING for each in doubts.open_doubts(unit, scene.item.id)):
        doubts.found(unit, scene.item.id, DoubtEnd.SEEN)
        line = replace(doubts.hold(unit, line, scene.item.id), scan=line.scan)
    return line


def _after(line: Line, event: str, scene: Scene, key: str) -> Line:
    line = line.after(event, key)
    match event:
        case "pack":
            return replace(line, parcel=scene.parcel.id if scene.parcel else None)
        case "take out":
            return replace(line, parcel=None)
        case "cancel":
            return replace(line.freed((Hold.CANCELLED_IN_BOX, Hold.MISPLACED)), scan=key)
    return line


def _close_if_complete(unit: Unit, scene: Scene, reading: StationReading) -> tuple[str, ...]:
    """Close the parcel when the scan packed the last line its orders still want, if the shop likes that."""
    parcel = scene.parcel
    by_itself = unit.settings.auto_close and not unit.settings.slip_closes
    if parcel is None or scene.take_out or not by_itself:
        return ()
    if parcels.still_wanted(parcels.lines_of(unit, parcel.orders)):
        return ()
    return parcels.close_parcel(unit, parcel.id, scan=reading.said.key)


def _answer(
    unit: Unit, scene: Scene, reason: Reason | None, *, changed: bool = False, released: Sequence[str] = ()
) -> Answer:
    line = unit.get(Line, scene.line.id) if scene.line else None
    order = scene.order if line else None
    lines = unit.find(Line, order=order.id) if order else ()
    parcel = unit.get(Parcel, scene.parcel.id) if scene.parcel else None
    if reason is None:
        words = advice.acceptance(scene, _missing(unit, parcel, released), released)
    else:
        words = advice.refusal(
            reason, replace(scene, line=line) if reason in (Reason.SLOT_FREE, Reason.ALREADY_RELEASED) else scene
        )
    return answer_of(
        reason,
        words,
        changed=changed,
        code=scene.slot.code if scene.slot else None,
        title=scene.item.title if scene.item and scene.taken else None,
        photo=photos.address(scene.stay, scene.item) if scene.taken else None,
        order=order,
        order_state=order_state(lines) if order else None,
        line=line,
        parcel=parcel,
        released=released,
    )


def _missing(unit: Unit, parcel: Parcel | None, released: Sequence[str]) -> list[str]:
    if parcel is None or released:
        return []
    return parcels.codes_of(unit, parcels.still_wanted(parcels.lines_of(unit, parcel.orders)))


def _keep_repeat(unit: Unit, reading: StationReading, before: Scan) -> Answer:
    """A second beep has the answer of the first, and stands for it when a third comes."""
    answer = recalled(before.answer, changed=False)
    return _record(
        unit,
        reading,
        replace(before, key=reading.said.key, body=reading.body, changed=False, was="", answer=json.dumps(answer)),
        answer,
    )


def _keep(
    unit: Unit, reading: StationReading, scene: Scene | None, answer: Answer, was: str, stood: str = ""
) -> Answer:
    """Record the scan with its answer, under its key, and in the ledger."""
    after = _scene_now(unit, scene) if scene is not None else None
    kept = Scan(
        key=reading.said.key,
        body=reading.body,
        station=reading.said.station,
        spot=reading.said.spot,
        code=answer["code"],
        take_out=scene.take_out if scene else False,
        accepted=answer["verdict"] == "accepted",
        changed=answer["changed"],
        line=answer["line"],
        parcel=answer["parcel"],
        answer=json.dumps(answer),
        was=was,
        at=unit.at,
        stood=_stood(unit, reading, after) if after is not None and answer["verdict"] == "accepted" else stood,
    )
    return _record(unit, reading, kept, answer)


def _scene_now(unit: Unit, scene: Scene) -> Scene:
    """The same scene with its things as they are now."""
    facts = unit.facts(scene.slot.code) if scene.slot else None
    if facts is None:
        return scene
    return replace(scene, slot=facts.slot, stay=facts.stay, line=facts.line)


def _record(unit: Unit, reading: StationReading, kept: Scan, answer: Answer) -> Answer:
    unit.add(kept)
    unit.record(
        events.Scanned(
            station=reading.said.station,
            spot=reading.said.spot,
            key=reading.said.key,
            text=tuple(text for text in reading.texts if _is_ours(unit, text)),
            via=reading.said.via,
            client_at=reading.said.at,
            age_ms=reading.said.age_ms,
            take_out=kept.take_out,
            verdict=answer["verdict"],
            reason=answer["reason"],
            changed=answer["changed"],
            code=answer["code"],
            order_number=answer["order_number"],
            line=answer["line"],
            line_state=answer["line_state"],
            parcel=answer["parcel"],
            parcel_state=answer["parcel_state"],
            released=tuple(answer["released"]),
        )
    )
    return answer


def _is_ours(unit: Unit, text: str) -> bool:
    """Whether the text goes into the ledger; codes of other kinds that were in view do not."""
    return slot_code.is_card_like(text) or slot_code.is_slip_like(text) or cards.bears_name(unit, text)
