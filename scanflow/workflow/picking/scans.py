"""A card is held before a station: judged, stepped, recorded, answered once; and its undo."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from labels import slot_code
from scanflow.domain import advice, events
from scanflow.domain.derive import order_state
from scanflow.domain.life import CardState, DoubtKind, Hold, LineState, ParcelState, RoundState, Settled
from scanflow.domain.things import Bin, Line, Out, Parcel, Round, Scan, Sighting, Slot, Station, Stay
from scanflow.domain.verdict import Look, Reason, effects, judge
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of, recalled
from scanflow.workflow.parcels import slips
from scanflow.workflow.picking.reading import Reading, read
from scanflow.workflow.ports import Facts, Invalid, Refused, Unit, must
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


def scan(unit: Unit, reading: Reading) -> Answer:
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
    look = _look(unit, reading, None if seen.unread else seen.card, seen.unread, round_)
    before = _repeated(unit, reading, look)
    if before is not None:
        return _keep_repeat(unit, reading, before)
    reason = judge(look)
    if reason is None and look.slot is not None and _is_past(unit, reading, look):
        answer = _answer(unit, look, Reason.UNREADABLE)
        return _keep(unit, reading, look, answer | {"advice": advice.TOO_OLD.format(code=look.slot.code)}, "")
    if reason is not None:
        _sight(unit, look, reading, accepted=False)
        answer = _answer(unit, replace(look, since=_since(unit, look, reason)), reason)
        if seen.unread and seen.card:
            answer |= {"code": seen.card.slot.code, "advice": advice.ONCE_MORE}
        return _keep(unit, reading, look, answer, "")
    return _accept(unit, reading, look)


CLOSE = timedelta(seconds=2)
"""How much earlier than another reading one may be and still count: scans that waited are sent one after the other, and
the way takes each its own time."""


def _is_past(unit: Unit, reading: Reading, look: Look) -> bool:
    """Whether a scan that waited is older than what was told of its card or its thing since.

    Then it says where the card was, not where it is, and moves nothing. A later yes at a bin says no more than that the
    thing was on its way.
    """
    slot, stay = look.slot, look.stay
    if not reading.said.age_ms or slot is None:
        return False
    at = unit.at - timedelta(milliseconds=reading.said.age_ms) + CLOSE
    seen = slot.seen
    told = [seen.at] if seen is not None and not (seen.accepted and seen.station is Station.BIN) else []
    if stay is not None and not stay.open:
        told.append(stay.ended)
    if look.item is not None and look.taken:
        told += [each.since for each in doubts.open_doubts(unit, look.item.id) if each.kind is DoubtKind.MISSING]
    return any(each is not None and each > at for each in told)


def _round(unit: Unit, reading: Reading) -> Round | None:
    if reading.said.station is not Station.BIN:
        return None
    if reading.said.round is None:
        raise Invalid("/round", "required", "Say which round this is.")
    round_ = unit.get(Round, reading.said.round)
    if round_ is None:
        raise Invalid("/round", "unknown_round", "There is no such round.")
    return round_


def _check_bin(unit: Unit, reading: Reading) -> None:
    if reading.said.bin is None:
        if reading.said.station is Station.SHELF:
            raise Invalid("/bin", "required", "Say which bin this is.")
    elif unit.get(Bin, reading.said.bin) is None:
        raise Invalid("/bin", "unknown_bin", f"There is no bin {reading.said.bin}.")


def _look(unit: Unit, reading: Reading, facts: Facts | None, unread: Reason | None, round_: Round | None) -> Look:
    at_table = reading.said.station is Station.TABLE
    return Look(
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


def _since(unit: Unit, look: Look, reason: Reason) -> str:
    """From when on a scan that waited for the network would have been refused; empty where that is not known."""
    if not look.late:
        return ""
    line, stay, at = look.line, look.stay, None
    match reason:
        case Reason.CANCELLED if line:
            at = unit.told_at(events.Cancelled, line.id)
        case Reason.HELD if line:
            at = unit.told_at(events.Held, line.id)
        case Reason.ALREADY_PICKED | Reason.ALREADY_PACKED if line and line.scan:
            at = unit.told_at(events.Scanned, line.scan)
        case Reason.CLOSED if look.round:
            at = unit.told_at(events.RoundClosed, look.round.id)
        case Reason.SLOT_FREE if stay:
            at = stay.ended
    return clock(at, unit.at, unit.settings.zone) if at else ""


DOUBLE_BEEP = timedelta(seconds=5)
"""How long after a take-out a scan without it is taken for a second beep. A scanner held too long sends two within a
second or two (common practice, no source)."""


def _repeated(unit: Unit, reading: Reading, look: Look) -> Scan | None:
    """The scan just before, if this is the same card at the same spot again and all stands as that scan left it."""
    if look.slot is None or look.slot.seen is None or look.slot.card is CardState.LOST:
        return None
    last = unit.last_scan(reading.said.station, reading.said.spot)
    if last is None or not last.accepted or last.code != look.slot.code or last.stood != _stood(unit, reading, look):
        return None
    seen = look.slot.seen
    if (seen.station, seen.place, seen.accepted) != (
        reading.said.station,
        _place(reading, look.slot, accepted=True),
        True,
    ):
        return None
    if last.take_out is not look.take_out:
        beeped_twice = last.take_out and last.at is not None and unit.at - last.at <= DOUBLE_BEEP
        return last if beeped_twice else None
    if look.round is not None and look.round.state is not RoundState.OPEN and not look.late:
        return None
    return last


def _stood(unit: Unit, reading: Reading, look: Look) -> str:
    """All that a scan leaves behind, in a word: stay, line, card, and at a table the parcel that is open there."""
    slot, stay, line = look.slot, look.stay, look.line
    parcel = parcels.open_parcel_at(unit, reading.said.table) if reading.said.station is Station.TABLE else None
    return json.dumps(
        [
            slot.card if slot else None,
            [stay.id, stay.state] if stay else None,
            [line.id, line.state, line.parcel, [each.hold for each in line.holds]] if line else None,
            [parcel.id, parcel.opened.isoformat()] if parcel else None,
        ]
    )


def _sight(unit: Unit, look: Look, reading: Reading, *, accepted: bool) -> None:
    if look.slot is None:
        return
    seen = Sighting(
        reading.said.station,
        _place(reading, look.slot, accepted=accepted),
        accepted,
        unit.at - timedelta(milliseconds=reading.said.age_ms),
        look.parcel.id if look.parcel else None,
    )
    sightings.sight(unit, Facts(look.slot, look.stay, look.item, look.line, look.order), seen)


def _place(reading: Reading, slot: Slot, *, accepted: bool) -> str:
    """Where a card is sighted by this reading. A round's stop says its bin only where the card was the right one."""
    if reading.said.station is Station.BIN:
        return reading.said.bin or (slot.bin if accepted else "")
    return reading.said.spot


def _accept(unit: Unit, reading: Reading, look: Look) -> Answer:
    slot, line = look.slot, look.line if look.live else None
    was = line.state.value if line else ""
    card_before, seen_before, out_before = (slot.card, slot.seen, slot.out) if slot else (None, None, None)
    for table, event in effects(look):
        if table == "card" and slot is not None:
            slot = slot.after(event)
        elif line is not None:
            line = _after(line, event, look, reading.said.key)
    if slot is not None:
        slot = replace(slot, out=_out(slot, look, reading))
        unit.put(slot)
    if line is not None:
        line = _told(unit, line, look, reading.said.key)
        unit.put(line)
    changed = line is not look.line if look.live else slot is not None and slot.card is not card_before
    look = replace(look, slot=slot, line=line if look.live else look.line)
    _sight(unit, look, reading, accepted=True)
    if reading.said.station is Station.SHELF and not changed:
        changed = seen_before is None or seen_before.place != reading.said.bin or out_before is not None
    released = _close_if_complete(unit, look, reading)
    return _keep(unit, reading, look, _answer(unit, look, None, changed=changed, released=released), was)


def _out(slot: Slot, look: Look, reading: Reading) -> Out | None:
    """Where a thing is off its shelf after a yes; what is packed keeps where it came from, for the undo."""
    match look.station:
        case Station.BIN:
            line = look.line
            basket = line.basket if line else None
            return Out(Station.BIN, _place(reading, slot, accepted=True), reading.said.round, basket)
        case Station.TABLE if look.take_out:
            return Out(Station.TABLE, reading.said.table)
        case Station.SHELF if not look.counts_as_packed:
            return None
    return slot.out


def _told(unit: Unit, line: Line, look: Look, key: str) -> Line:
    """The line after what an accepted scan says beside its step: the thing is here, so it is neither missing nor
    misplaced.
    """
    if look.station is Station.TRAY or look.item is None:
        return line
    if look.station is Station.TABLE and line.has(Hold.MISPLACED):
        line = replace(line.freed((Hold.MISPLACED,)), scan=key)
    if any(each.kind is DoubtKind.MISSING for each in doubts.open_doubts(unit, look.item.id)):
        doubts.found(unit, look.item.id, Settled.SEEN)
        line = replace(doubts.hold(unit, line, look.item.id), scan=line.scan)
    return line


def _after(line: Line, event: str, look: Look, key: str) -> Line:
    line = line.after(event, key)
    match event:
        case "pack":
            return replace(line, parcel=look.parcel.id if look.parcel else None)
        case "take out":
            return replace(line, parcel=None)
        case "cancel":
            return replace(line.freed((Hold.CANCELLED_IN_BOX, Hold.MISPLACED)), scan=key)
    return line


def _close_if_complete(unit: Unit, look: Look, reading: Reading) -> tuple[str, ...]:
    """Close the parcel when the scan packed the last line its orders still want, if the shop likes that."""
    parcel = look.parcel
    by_itself = unit.settings.auto_close and not unit.settings.slip_closes
    if parcel is None or look.take_out or not by_itself:
        return ()
    if parcels.still_wanted(parcels.lines_of(unit, parcel.orders)):
        return ()
    return parcels.close_parcel(unit, parcel.id, scan=reading.said.key)


def _answer(
    unit: Unit, look: Look, reason: Reason | None, *, changed: bool = False, released: Sequence[str] = ()
) -> Answer:
    line = unit.get(Line, look.line.id) if look.line else None
    order = look.order if line else None
    lines = unit.find(Line, order=order.id) if order else ()
    parcel = unit.get(Parcel, look.parcel.id) if look.parcel else None
    if reason is None:
        words = advice.acceptance(look, _missing(unit, parcel, released), released)
    else:
        words = advice.refusal(
            reason, replace(look, line=line) if reason in (Reason.SLOT_FREE, Reason.ALREADY_RELEASED) else look
        )
    return answer_of(
        reason,
        words,
        changed=changed,
        code=look.slot.code if look.slot else None,
        title=look.item.title if look.item and look.taken else None,
        photo=photos.address(look.stay, look.item) if look.taken else None,
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


def _keep_repeat(unit: Unit, reading: Reading, before: Scan) -> Answer:
    """A second beep has the answer of the first, and stands for it when a third comes."""
    answer = recalled(before.answer, changed=False)
    return _record(
        unit,
        reading,
        replace(before, key=reading.said.key, body=reading.body, changed=False, was="", answer=json.dumps(answer)),
        answer,
    )


def _keep(unit: Unit, reading: Reading, look: Look | None, answer: Answer, was: str, stood: str = "") -> Answer:
    """Record the scan with its answer, under its key, and in the ledger."""
    after = _look_again(unit, look) if look is not None else None
    kept = Scan(
        key=reading.said.key,
        body=reading.body,
        station=reading.said.station,
        spot=reading.said.spot,
        code=answer["code"],
        take_out=look.take_out if look else False,
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


def _look_again(unit: Unit, look: Look) -> Look:
    """The same look with its things as they are now."""
    facts = unit.facts(look.slot.code) if look.slot else None
    if facts is None:
        return look
    return replace(look, slot=facts.slot, stay=facts.stay, line=facts.line)


def _record(unit: Unit, reading: Reading, kept: Scan, answer: Answer) -> Answer:
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
    scan_ = must(unit, Scan, key)
    if not scan_.accepted or not scan_.changed or scan_.line is None:
        raise Refused("nothing_to_undo", "This scan changed nothing that can be taken back.")
    line = must(unit, Line, scan_.line)
    if line.scan != key:
        raise Refused("changed_since", "The line was changed since. Scan again instead.")
    if json.loads(scan_.answer)["parcel_state"] == ParcelState.CLOSED:
        parcels.reopen(unit, scan_.parcel or "")
        line = must(unit, Line, line.id)
    elif line.state is LineState.PACKED and not must(unit, Parcel, line.parcel or "").open:
        raise Refused("changed_since", "Its parcel was set aside since. Open it, and take the thing out with a scan.")
    steps = BACK.get((scan_.was, line.state))
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
