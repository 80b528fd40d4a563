"""A card was read somewhere: that is kept, and what counts as packed and was read elsewhere is held."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from scanflow.domain import events
from scanflow.domain.life import CardState, DoubtKind, Hold, LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel, Sighting, Slot, Station
from scanflow.domain.whereabouts import (
    Account,
    Whereabouts,
    contradicts_closing,
    contradicts_parcel,
    place_words,
    whereabouts,
)
from scanflow.workflow.ports import SlotFacts, Unit, must
from scanflow.workflow.stock import lending
from scanflow.workflow.stock.doubts import not_this, open_doubts
from scanflow.workflow.times import clock


def account(unit: Unit, facts: SlotFacts) -> Account:
    """What the account has of a slot."""
    line = facts.live_line
    parcel = unit.get(Parcel, line.parcel) if line is not None and line.parcel else None
    missed = None
    if facts.taken and facts.item is not None:
        missing = [each.since for each in open_doubts(unit, facts.item.id) if each.kind is DoubtKind.MISSING]
        missed = max(missing, default=None)
    return Account(
        facts.slot,
        facts.taken,
        line.state if line else None,
        facts.order.number if line and facts.order else None,
        parcel.id if parcel else None,
        parcel.table if parcel and parcel.open else None,
        line.round if line else None,
        line.basket if line else None,
        missed,
    )


def where(unit: Unit, facts: SlotFacts) -> Whereabouts:
    """Where a slot's card and its thing are."""
    return whereabouts(account(unit, facts))


def sight(unit: Unit, facts: SlotFacts, seen: Sighting) -> None:
    """Keep where a card was read, unless a later reading or the thing's arrival is known already.

    A packed line whose card is read away from its parcel is held, and so is one that was closed and has not left. Of a
    card that was printed again two may be read.
    """
    slot = must(unit, Slot, facts.slot.code)
    if not _is_news(facts, slot, seen):
        return
    unit.put(replace(slot, seen=seen))
    if seen.accepted and facts.taken and facts.stay is not None and facts.item is not None and facts.item.away_since:
        lending.bring_back(unit, facts.stay.id)
    _hold_packed(unit, facts, seen)
    if slot.twin and slot.seen is not None and _are_two(unit, facts, slot.seen, seen):
        _tell_two(unit, facts, slot.seen, seen)


def _hold_packed(unit: Unit, facts: SlotFacts, seen: Sighting) -> None:
    line = facts.line
    if line is None or facts.stay is None or line.has(Hold.MISPLACED):
        return
    parcel = unit.get(Parcel, line.parcel) if line.parcel else None
    if parcel is None:
        return
    if line.state is LineState.PACKED and contradicts_parcel(seen, parcel.id):
        _hold(unit, line, f"It counts as packed, but its card was read {place_words(seen)}. Look there.")
    elif line.state is LineState.RELEASED and _still_here(unit, facts, parcel) and contradicts_closing(seen):
        number = must(unit, Order, line.order).number
        read = place_words(seen)
        _hold(unit, line, f"It counts as in the closed parcel of {number}, but its card was read {read}. Look there.")


TWINS_APART = timedelta(minutes=10)
"""How close two readings are that are taken for those of two cards. Whoever finds the old card goes and looks for the
other one at once (common practice, no source). One card that strays is not carried much farther in that time, and costs
one look."""


def _are_two(unit: Unit, facts: SlotFacts, before: Sighting, seen: Sighting) -> bool:
    """Whether two readings at two places are hardly those of one card.

    The later one contradicts the account, or the earlier one was in the tray while the thing stood in stock. What was
    read astray and then where it belongs was carried home.
    """
    if before.at is None or seen.at is None or seen.at - before.at > TWINS_APART:
        return False
    if (before.station, before.place) == (seen.station, seen.place):
        return False
    if before.station is Station.TRAY and not before.accepted:
        return facts.taken  # else it was missed there, and not read
    return where(unit, replace(facts, slot=replace(facts.slot, seen=seen))).misplaced


def _tell_two(unit: Unit, facts: SlotFacts, before: Sighting, seen: Sighting) -> None:
    """Two cards say the same: what stands in the slot may hang on the wrong one, until a person looks."""
    begin = f"Two cards of {facts.slot.code} were read"
    places = ", ".join(
        f"{place_words(each)} {clock(each.at or unit.at, unit.at, unit.settings.zone)}" for each in (before, seen)
    )
    minutes = TWINS_APART // timedelta(minutes=1)
    words = f"{begin} within {minutes} minutes: {places}. One of them is a twin: destroy it."
    unit.record(events.TwoCardsRead(code=facts.slot.code, words=words))
    item = facts.item.id if facts.taken and facts.item is not None else None
    if item is not None and not any(each.words.startswith(begin) for each in open_doubts(unit, item)):
        not_this(unit, item, words)


def _is_news(facts: SlotFacts, slot: Slot, seen: Sighting) -> bool:
    before = slot.seen
    if seen.at is not None:
        if before is not None and before.at is not None and seen.at < before.at:
            return False
        if facts.taken and facts.stay is not None and seen.at < facts.stay.began:
            return False
    if seen.station is Station.BIN and not seen.accepted and not seen.place:
        # a round's refusal says no bin, so it takes nothing from what is known of a thing that is not packed
        packed = facts.line is not None and facts.line.state is LineState.PACKED
        return packed or not facts.taken or before is None or before.accepted
    return True


def _still_here(unit: Unit, facts: SlotFacts, parcel: Parcel) -> bool:
    """Whether the card has not come back since its parcel closed, and a parcel of its order has not left the house.

    The parts of an order have one slip: which of them counts as gone by it may be the other one.
    """
    if facts.slot.card is not CardState.DUE or facts.line is None:
        return False
    parts = {line.parcel for line in unit.find(Line, order=facts.line.order) if line.parcel} | {parcel.id}
    return any(
        each.state is ParcelState.CLOSED and not gone(unit, each)
        for each in (must(unit, Parcel, name) for name in parts)
    )


def gone(unit: Unit, parcel: Parcel) -> bool:
    """Whether a parcel has left: it was handed over, or closed some days ago where hand-overs are not recorded."""
    if parcel.state is ParcelState.HANDED_OVER:
        return True
    before = gone_before(unit)
    if parcel.state is not ParcelState.CLOSED or before is None:
        return False
    return parcel.closed is None or parcel.closed < before


def gone_before(unit: Unit) -> datetime | None:
    """What was closed before then counts as gone without a scan; None where hand-overs are recorded."""
    return None if unit.settings.hand_overs else unit.at - timedelta(days=unit.settings.gone_days)


def _hold(unit: Unit, line: Line, why: str) -> None:
    unit.put(line.held(Hold.MISPLACED, why))
    unit.record(events.LineHeld(line=line.id, why=why))
