"""What must hold of every step of every room, told independently of how the workflow comes to it."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from memory import KINDS, Memory

from labels import slot_code
from scanflow.domain.counts.stocktake import Resolved
from scanflow.domain.life import CardState, DoubtKind, Hold, LineState, ParcelState, StayState
from scanflow.domain.things import Doubt, Line, Order, Parcel, Scan, Slot, Station, Stay
from scanflow.domain.whereabouts import contradicts_closing, contradicts_parcel, free_to_give
from scanflow.workflow.counts import taking_back
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.stock import sightings

LIVE = {LineState.WAITING, LineState.PICKED, LineState.PACKED, LineState.SHORT}
BOXED = {LineState.PACKED, LineState.RELEASED}
RANK = {LineState.PICKED: 1, LineState.PACKED: 2, LineState.RELEASED: 3}
UNDER_WAY = {ParcelState.OPEN, ParcelState.ASIDE}


@dataclass(frozen=True)
class Change:
    """One step: the room before and after an event, the answer if it was a scan, and what was said.

    `proved` holds (line, stay) for each thing in a box whose card was scanned there and accepted: noted by the
    explorer from what it did itself, cleared when the thing leaves the box.
    """

    before: Memory
    after: Memory
    event: Any
    answer: dict[str, Any] | None
    said: str
    proved: frozenset[tuple[str, str]]

    @property
    def accepted(self) -> bool:
        return self.answer is not None and self.answer["verdict"] == "accepted"

    @property
    def refused(self) -> bool:
        return self.answer is not None and self.answer["verdict"] == "refused"

    @cached_property
    def stay(self) -> Stay | None:
        """The stay of the card that was scanned: the open one of its slot, before the scan."""
        stays = self.before.all(Stay).values()
        return next((stay for stay in stays if stay.code == self.event.code and stay.open), None)

    @cached_property
    def line(self) -> Line | None:
        """The live line that wanted the scanned thing before the scan."""
        lines = self.before.all(Line).values()
        return next((line for line in lines if self.stay and line.stay == self.stay.id and line.state in LIVE), None)

    @cached_property
    def own_parcel(self) -> bool:
        """Whether a parcel of the order of the scanned thing was open at that table."""
        parcel = open_at(self.before, self.event.table)
        return self.line is not None and parcel is not None and self.line.order in parcel.orders

    @cached_property
    def moved(self) -> list[tuple[Line, Line]]:
        """The lines whose state changed, before and after."""
        if self.before.all(Line) is self.after.all(Line):
            return []
        old = self.before.all(Line)
        return [(old[x.id], x) for x in self.after.all(Line).values() if x.id in old and old[x.id].state != x.state]

    @cached_property
    def proved_after(self) -> frozenset[tuple[str, str]]:
        proved = set(self.proved)
        at_table = self.event.station is Station.TABLE and not self.event.take_out
        if at_table and self.accepted and self.own_parcel and self.line and self.stay:
            proved.add((self.line.id, self.stay.id))
        return boxed(self.after) & proved


def boxed(unit: Memory) -> frozenset[tuple[str, str]]:
    """(line, stay) of everything in a box, on its way or gone."""
    return frozenset((line.id, line.stay or "") for line in unit.all(Line).values() if line.state in BOXED)


def open_at(unit: Memory, table: str) -> Parcel | None:
    parcels = unit.all(Parcel).values()
    return next((each for each in parcels if each.table == table and each.state is ParcelState.OPEN), None)


def _same(one: Memory, other: Memory, but: tuple[type, ...] = ()) -> bool:
    """Whether two rooms hold the same, some kinds aside."""
    kinds = (kind for kind in KINDS if kind not in but)
    return all(one.all(kind) is other.all(kind) or one.all(kind) == other.all(kind) for kind in kinds)


def one_open_stay_in_a_slot(change: Change) -> bool:
    """Never two open stays in a slot, and the open one is its slot's latest."""
    stays = [stay for stay in change.after.all(Stay).values() if stay.open]
    return len({stay.code for stay in stays}) == len(stays) and all(
        stay.turn == change.after.all(Slot)[stay.code].turns for stay in stays
    )


def one_live_line_for_a_stay(change: Change) -> bool:
    """Never a stay live on two lines, and never a live line whose stay has ended."""
    wanted = Counter(line.stay for line in change.after.all(Line).values() if line.state in LIVE)
    stays = change.after.all(Stay)
    return all(count == 1 and stay in stays and stays[stay].open for stay, count in wanted.items())


def boxed_only_by_its_own_card(change: Change) -> bool:
    """Nothing is in a box or gone with it whose very card was not accepted at the table, its order's parcel open."""
    stays = change.after.all(Stay).values()
    latest = {stay.item: stay.id for stay in stays}  # what came back has a later stay
    shipped = {stay.id for stay in stays if stay.state == "shipped" and latest[stay.item] == stay.id}
    gone = {line.stay for line in change.after.all(Line).values() if line.state is LineState.RELEASED}
    return boxed(change.after) == change.proved_after and shipped == gone


def released_only_from_a_closing_parcel(change: Change) -> bool:
    """A line is released when its parcel closes and only then, and neither cancelled nor held things go along."""
    for before, after in change.moved:
        if after.state is LineState.RELEASED:
            parcel = change.after.all(Parcel).get(after.parcel or "")
            own = parcel is not None and after.order in parcel.orders and parcel.state is ParcelState.CLOSED
            packed_now = before.state is LineState.PACKED or change.event.code is not None
            if not own or _holds_left(change, before) or not packed_now:
                return False
    return True


def _holds_left(change: Change, line: Line) -> set[Hold]:
    """The holds that a line had before the step, without what the very scan of its card at its own parcel ends."""
    told = change.event.station is Station.TABLE and change.own_parcel and change.line and change.line.id == line.id
    return {each.hold for each in line.holds} - ({Hold.MISPLACED} if told and change.accepted else set())


def no_parcel_closes_over_what_must_come_out(change: Change) -> bool:
    """A parcel that closes holds no packed line any more: all of its things went, or it would not have closed."""
    if change.before.all(Parcel) is change.after.all(Parcel):
        return True
    closed = [
        each
        for each in change.after.all(Parcel).values()
        if each.state is ParcelState.CLOSED and change.before.all(Parcel)[each.id].state is not ParcelState.CLOSED
    ]
    inside = {line.parcel: line for line in change.after.all(Line).values() if line.state is LineState.PACKED}
    gone = {line.parcel for line in change.after.all(Line).values() if line.state is LineState.RELEASED}
    return all(each.id not in inside and each.id in gone for each in closed)


def packed_things_lie_in_their_orders_parcel(change: Change) -> bool:
    """A packed line names its order's one parcel, open or aside; each table has one open parcel at most."""
    parcels, orders = change.after.all(Parcel), change.after.all(Order)
    for line in change.after.all(Line).values():
        if line.state is LineState.PACKED:
            parcel = parcels.get(line.parcel or "")
            if parcel is None or parcel.state not in UNDER_WAY or orders[line.order].parcel != parcel.id:
                return False
    under_way = [each for each in parcels.values() if each.state in UNDER_WAY]
    tables = [each.table for each in under_way if each.state is ParcelState.OPEN]
    named = {(name, each.id) for each in under_way for name in each.orders}
    bound = {(order.id, order.parcel) for order in orders.values() if order.parcel is not None}
    return len(set(tables)) == len(tables) and named == bound


def no_number_is_handed_out_whose_card_is_away(change: Change) -> bool:
    """What the tool hands out, by section, by code or for a move, has its card in the tray; a card in hand may go."""
    if change.event.kind not in ("put away", "move") or change.after is change.before:
        return True
    new = list(change.after.all(Stay).values())[-1]
    return "by card" in change.event.text or free_to_give(change.before.all(Slot)[new.code], taken=False)


def free_cards_are_told_true(change: Change) -> bool:
    """A card in the tray has no open stay, and a card due neither; a free slot's card is never on an item."""
    opened = {stay.code for stay in change.after.all(Stay).values() if stay.open}
    for slot in change.after.all(Slot).values():
        allowed = {CardState.ON_ITEM, CardState.LOST} if slot.code in opened else set(CardState) - {CardState.ON_ITEM}
        if slot.card not in allowed:
            return False
    return True


def a_refusal_changes_only_sightings(change: Change) -> bool:
    """A refused scan leaves all but scan records, the ledger, sightings and the holds that follow from them."""
    if not change.refused:
        return True
    same = _same(change.before, change.after, but=(Scan, Slot, Line))
    old, new = change.before.all(Slot), change.after.all(Slot)
    seen = all(old[x] is new[x] or replace(old[x], seen=None) == replace(new[x], seen=None) for x in new)
    was, now = change.before.all(Line), change.after.all(Line)
    return same and seen and all(was[x] is now[x] or _only_misplaced(was[x], now[x]) for x in now)


def _only_misplaced(before: Line, after: Line) -> bool:
    """Whether a line differs by nothing but that its card was read where it is not."""
    free = replace(after.freed((Hold.MISPLACED,)), scan=before.scan)
    return before.state in BOXED and free == before.freed((Hold.MISPLACED,))


def every_card_gets_a_verdict(change: Change) -> bool:
    """A scan that can be judged is answered, never thrown out; an accepted one names its card or its order."""
    if change.event.station is None:
        return True
    answer = change.answer
    return answer is not None and (change.refused or bool(answer["code"] or answer["order"]))


def no_mismatch_moves_a_line(change: Change) -> bool:
    """At the table only a card of the open parcel's orders moves a line; no line moves without a parcel."""
    return change.event.station is not Station.TABLE or change.own_parcel or not change.moved


def a_scan_moves_only_its_own_line(change: Change) -> bool:
    """A scan moves the line of that very stay, and by closing the parcel those packed with it."""
    if change.event.station is None:
        return True
    others = [pair for pair in change.moved if change.line is None or pair[0].id != change.line.id]
    box = open_at(change.before, change.event.table)
    return all(
        (before.state, after.state) == (LineState.PACKED, LineState.RELEASED) and box and after.parcel == box.id
        for before, after in others
    )


def only_the_right_station_moves_on(change: Change) -> bool:
    """Picked at the bin on the line's own round; packed and released at the table; back to the bin at the shelf."""
    event = change.event
    for before, after in change.moved:
        up = RANK.get(after.state, 0) - RANK.get(before.state, 0)
        if event.station is Station.TRAY or (event.station is Station.SHELF and up > 0):
            return False
        if event.station is Station.BIN and (after.state is not LineState.PICKED or not _on_round(change, before)):
            return False
        by_hand = FORWARD_BY_HAND.get((before.state, after.state))
        if event.station is None and up > 0 and (by_hand is None or event.kind not in by_hand):
            return False
        skips = event.station is Station.TABLE and after.state in BOXED and before.state is LineState.WAITING
        if skips and change.before.settings.scan_at_bin and not _known_out(change):
            return False
    return True


def _known_out(change: Change) -> bool:
    """Whether a scan had taken the thing out of its bin before: it lies in a basket or on a table."""
    return change.before.all(Slot)[change.event.code].out is not None


FORWARD_BY_HAND = {
    (LineState.PACKED, LineState.RELEASED): ("close parcel", "close part"),
    (LineState.WAITING, LineState.PICKED): ("reopen finding",),
}
"""Closing a parcel, and what a finding had put back and is taken back; all else that goes forward needs a scan.

(Waiting and short are of one rank.)
"""


def _on_round(change: Change, line: Line) -> bool:
    return line.round is not None and f"round={line.round}" in change.event.text


def a_held_line_moves_only_backwards(change: Change) -> bool:
    """What a person must settle first goes no step nearer to the buyer."""
    if change.event.kind == "reopen finding":
        return True  # how it was resolved had put it back
    return all(
        not _holds_left(change, before) or RANK.get(after.state, 0) <= RANK.get(before.state, 0)
        for before, after in change.moved
    )


def out_of_the_box_only_by_its_card(change: Change) -> bool:
    """What was packed leaves the box by a scan of its own card, by undoing that scan, or with the closed parcel."""
    for before, after in change.moved:
        if before.state is LineState.PACKED and after.state is not LineState.RELEASED and change.event.kind != "undo":
            by_card = change.line is not None and change.line.id == before.id
            if not by_card or change.event.station not in (Station.TABLE, Station.SHELF):
                return False
    return True


def what_was_cancelled_in_the_box_ends_cancelled(change: Change) -> bool:
    """A line cancelled in the box is cancelled by the scan that takes it out, and stays held until then. One in a
    closed parcel is in the box again, still held, when that is opened; or it came back.
    """
    for before, after in change.moved:
        in_box = before.state is LineState.PACKED and before.has(Hold.CANCELLED_IN_BOX)
        here = before.state is LineState.RELEASED and before.has(Hold.CANCELLED_IN_BOX)
        if here and after.state is not LineState.RETURNED and not after.has(Hold.CANCELLED_IN_BOX):
            return False
        if in_box and (after.state is not LineState.CANCELLED or after.has(Hold.CANCELLED_IN_BOX)):
            return False
    return True


def a_taken_back_closing_gives_everything_back(change: Change) -> bool:
    """A line that was released is in its box again together with its stay and its card, or nothing is."""
    for before, after in change.moved:
        if before.state is LineState.RELEASED and after.state is not LineState.RETURNED:
            stay = change.after.all(Stay)[after.stay or ""]
            card = change.after.all(Slot)[stay.code].card
            if not stay.open or card not in (CardState.ON_ITEM, CardState.LOST):
                return False
            if after.state is not LineState.PACKED and change.event.kind != "undo":
                return False
    return True


def undo_goes_back_to_before_the_scan(change: Change) -> bool:
    """Undo leaves the line of the scan in the state it had before it."""
    if change.event.kind != "undo" or change.after is change.before:
        return True
    line = next(line for line in change.before.all(Line).values() if change.event.text.endswith(line.reference))
    scan = change.before.all(Scan)[line.scan or ""]
    now = change.after.all(Line)[line.id]
    return now.state == scan.was and (now.parcel is None) is (now.state is not LineState.PACKED)


def an_accepted_card_is_seen_there(change: Change) -> bool:
    """After a yes the card was last seen at that station, and counts as what the station says of it."""
    event = change.event
    if not change.accepted or event.code is None:
        return True
    slot = change.after.all(Slot)[event.code]
    seen = slot.seen
    if seen is None or (seen.station, seen.accepted) != (event.station, True):
        return False
    gone = slot.code not in {stay.code for stay in change.after.all(Stay).values() if stay.open}
    if event.station is Station.TRAY:
        noted = change.line is not None and change.line.state is LineState.PACKED
        return noted or (gone and slot.card is CardState.TRAY)
    if event.station is Station.SHELF:
        facts = change.after.facts(slot.code)
        put_back = facts is None or not sightings.where(change.after, facts).to_put_back
        return seen.place == slot.bin and put_back and slot.card is CardState.ON_ITEM
    return slot.card is (CardState.DUE if gone else CardState.ON_ITEM) or (gone and slot.card is CardState.LOST)


def a_second_beep_changes_nothing(change: Change) -> bool:
    """The same card again right after its own acceptance is accepted, says `changed: false` and changes nothing."""
    if not change.accepted or not change.answer or not change.answer["changed"] or change.event.code is None:
        return True
    after = change.after.fork()
    answer = change.event.call(after)
    return _same(change.after, after, but=(Scan,)) and answer == {**change.answer, "changed": False}


def a_replay_gets_the_same_answer(change: Change) -> bool:
    """The same key and body again is answered alike, marked as replayed, and changes nothing at all."""
    if not change.accepted or not change.answer or not change.answer["changed"]:
        return True
    after = change.after.fork()
    key, kept = list(after.all(Scan).items())[-1]
    reading = StationReading(ScanBase(station=kept.station, key=key), ("",), kept.body)
    same_answer = scans.scan(after, reading) == {**json.loads(kept.answer), "replayed": True}
    return same_answer and _same(change.after, after)


def the_answer_tells_the_truth(change: Change) -> bool:
    """The states in the answer are those the room has now."""
    answer = change.answer
    if answer is None:
        return True
    line, parcel = change.after.all(Line).get(answer["line"]), change.after.all(Parcel).get(answer["parcel"])
    slots = {stay.code for stay in change.before.all(Stay).values() if stay.open}
    freed = slots - {stay.code for stay in change.after.all(Stay).values() if stay.open}
    return (
        answer["line_state"] == (line.state if line else None)
        and answer["parcel_state"] == (parcel.state if parcel else None)
        and (not answer["changed"] or set(answer["released"]) == _due_of(change, freed))
        and (change.event.code is None or answer["code"] == change.event.code)
        and all(slot_code.section_of(code) for code in answer["released"])
    )


def _due_of(change: Change, freed: set[str]) -> set[str]:
    """Of the slots freed by a step those whose cards were not read in the tray before it."""
    return {code for code in freed if change.after.all(Slot)[code].card is not CardState.TRAY}


def _opened(unit: Memory) -> dict[str, Stay]:
    return {stay.id: stay for stay in unit.all(Stay).values() if stay.open}


def a_slot_is_freed_only_on_purpose(change: Change) -> bool:
    """A stay ends by its parcel's closing, a withdrawal, a move, or a finding resolved as one of these or reopened."""
    if change.before.all(Stay) is change.after.all(Stay):
        return True
    event, ended = change.event, _opened(change.before).keys() - _opened(change.after).keys()
    purpose = {
        StayState.SHIPPED: event.station is Station.TABLE or event.kind in ("close parcel", "close part"),
        StayState.WITHDRAWN: event.kind == "withdraw" or event.text.endswith(": withdraw"),
        StayState.MOVED: event.kind in ("move", "exchange", "reopen finding") or event.text.endswith(": moved"),
    }
    return all(purpose[change.after.all(Stay)[each].state] for each in ended)


def _is_of(code: str, unit: Memory) -> tuple[Any, ...]:
    """All there is of a slot, but for the turns that it has had."""
    slot = replace(unit.all(Slot)[code], turns=0)
    stays = {stay.id: stay for stay in unit.all(Stay).values() if stay.code == code and stay.open}
    lines = [(line.id, line.state, line.holds) for line in unit.all(Line).values() if line.stay in stays]
    return slot, [stay.item for stay in stays.values()], lines


def a_finding_is_resolved_in_its_own_slot(change: Change) -> bool:
    """No other slot's card, stay or line changes, save where its thing moves to or from."""
    if change.event.kind not in ("resolve", "reopen finding") or change.after is change.before:
        return True
    others = {code for code in change.before.all(Slot) if f"-{code}" not in change.event.text}
    taken = [{stay.code for stay in _opened(unit).values()} for unit in (change.before, change.after)]
    other = {code for code in others if _is_of(code, change.before) != _is_of(code, change.after)}
    return other <= taken[0] ^ taken[1] and len(other) <= 1


def what_is_resolved_can_be_taken_back_at_once(change: Change) -> bool:
    """Then every slot is as before: its card, the thing in it and the line that wants it.

    But for the slot that a thing had moved to: its card was on the thing, so it is due until it is seen in the tray.
    """
    if change.event.kind != "resolve" or change.after is change.before:
        return True
    back = change.after.fork()
    resolved = list(back.all(Resolved).values())[-1]
    taking_back.undo(back, resolved.stocktake, resolved.id.partition(".")[2])
    other = [code for code in back.all(Slot) if _is_of(code, change.before) != _is_of(code, back)]
    left = [back.all(Slot)[code].card for code in other]
    return left == [CardState.DUE] * len(other) and len(other) <= change.event.text.endswith(": moved")


def a_thing_moves_only_to_a_card_in_the_tray(change: Change) -> bool:
    """What a finding's thing moves to is a slot whose card was seen in the tray; back it goes to where it was."""
    if not change.event.text.endswith(": moved") or change.after is change.before:
        return True
    new = list(change.after.all(Stay).values())[-1]
    return free_to_give(change.before.all(Slot)[new.code], taken=False)


def what_is_packed_and_read_elsewhere_is_held(change: Change) -> bool:
    """A packed line stands still as long as the last reading of its card contradicts its parcel.

    So does a released one whose card has not come back, while its parcel has not left.
    """
    slots, stays = change.after.all(Slot), change.after.all(Stay)
    for line in change.after.all(Line).values():
        if line.state not in BOXED or line.has(Hold.MISPLACED):
            continue
        slot = slots[stays[line.stay or ""].code]
        if line.state is LineState.PACKED and contradicts_parcel(slot.seen, line.parcel):
            return False
        due = slot.card is CardState.DUE and slot.turns == stays[line.stay or ""].turn
        parcel = change.after.all(Parcel).get(line.parcel or "")
        here = parcel is not None and parcel.state is ParcelState.CLOSED
        told = here and change.event.station is not None and change.event.code == slot.code
        if line.state is LineState.RELEASED and due and told and slot.seen and contradicts_closing(slot.seen):
            return False
    return True


def misplaced_ends_by_a_scan_or_a_look(change: Change) -> bool:
    """That hold goes by a scan at its own parcel, by the take-out, or by a person who looked into a closed parcel."""
    after = change.after.all(Line)
    for line in change.before.all(Line).values():
        if not line.has(Hold.MISPLACED) or after[line.id].has(Hold.MISPLACED):
            continue
        scanned = change.accepted and change.line is not None and change.line.id == line.id
        looked = change.event.kind == "settle" and line.state is LineState.RELEASED
        if not (looked or (scanned and change.event.station is Station.TABLE) or change.event.kind in OTHERWISE):
            return False
    return True


OTHERWISE = ("reopen finding", "revive", "undo", "take back")
"""What takes a hold back together with what had brought it, and what lies in a hand again."""


def doubted_things_hold_their_lines(change: Change) -> bool:
    """A live line is suspect exactly while its item is in doubt; that a thing is missing a short line says itself."""
    open_doubts: dict[str, set[DoubtKind]] = {}
    for doubt in change.after.all(Doubt).values():
        if doubt.open:
            open_doubts.setdefault(doubt.item, set()).add(doubt.kind)
    stays = change.after.all(Stay)
    for line in change.after.all(Line).values():
        if line.state not in LIVE:
            continue
        kinds = open_doubts.get(stays[line.stay or ""].item, set())
        if line.state is LineState.SHORT:
            kinds = kinds - {DoubtKind.MISSING}
        if line.has(Hold.SUSPECT) is not bool(kinds):
            return False
    return True


def doubts_end_on_purpose(change: Change) -> bool:
    """A doubt ends when it is settled or its thing withdrawn; a missing thing is found by its accepted scan too."""
    after = change.after.all(Doubt)
    for doubt in change.before.all(Doubt).values():
        if not doubt.open or after[doubt.id].open:
            continue
        event = change.event
        purpose = event.kind in ("settle doubt", "withdraw", "reopen finding") or event.text.endswith(": withdraw")
        seen = doubt.kind is DoubtKind.MISSING and (change.accepted or event.kind in ("found", "resolve"))
        if not (purpose or seen):
            return False
    return True


def what_is_short_is_missing(change: Change) -> bool:
    """As long as a line is short its item is known to be missing, for whoever orders it next."""
    missing = {each.item for each in change.after.all(Doubt).values() if each.open and each.kind is DoubtKind.MISSING}
    stays = change.after.all(Stay)
    short = [line for line in change.after.all(Line).values() if line.state is LineState.SHORT]
    return all(stays[line.stay or ""].item in missing for line in short)


OF_A_REFUSAL: tuple[Callable[[Change], bool], ...] = (
    a_refusal_changes_only_sightings,
    every_card_gets_a_verdict,
    the_answer_tells_the_truth,
    what_is_packed_and_read_elsewhere_is_held,
)
"""What to ask of a refused scan; when the first holds, the rest can't have been broken by it."""

OF_A_STEP: tuple[Callable[[Change], bool], ...] = (
    one_open_stay_in_a_slot,
    one_live_line_for_a_stay,
    boxed_only_by_its_own_card,
    released_only_from_a_closing_parcel,
    no_parcel_closes_over_what_must_come_out,
    packed_things_lie_in_their_orders_parcel,
    no_number_is_handed_out_whose_card_is_away,
    free_cards_are_told_true,
    every_card_gets_a_verdict,
    no_mismatch_moves_a_line,
    a_scan_moves_only_its_own_line,
    only_the_right_station_moves_on,
    a_held_line_moves_only_backwards,
    out_of_the_box_only_by_its_card,
    what_was_cancelled_in_the_box_ends_cancelled,
    a_taken_back_closing_gives_everything_back,
    undo_goes_back_to_before_the_scan,
    an_accepted_card_is_seen_there,
    a_second_beep_changes_nothing,
    a_replay_gets_the_same_answer,
    the_answer_tells_the_truth,
    a_slot_is_freed_only_on_purpose,
    a_finding_is_resolved_in_its_own_slot,
    what_is_resolved_can_be_taken_back_at_once,
    a_thing_moves_only_to_a_card_in_the_tray,
    what_is_packed_and_read_elsewhere_is_held,
    misplaced_ends_by_a_scan_or_a_look,
    doubted_things_hold_their_lines,
    doubts_end_on_purpose,
    what_is_short_is_missing,
)


def broken_by(change: Change) -> str | None:
    """The name of the first property that a step breaks."""
    if change.answer is None and change.after is change.before:
        return None if every_card_gets_a_verdict(change) else "every_card_gets_a_verdict"
    properties = OF_A_REFUSAL if change.refused else OF_A_STEP
    return next((each.__name__ for each in properties if not each(change)), None)
