"""A finding is put right: each way one transaction, which can be taken back (`taking_back`)."""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Mapping
from dataclasses import replace
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY, Certainty, Resolved
from scanflow.domain.life import CardState, DoubtEnd, Hold, LineState, StayState, StocktakeState
from scanflow.domain.things import Order, Sighting, Slot, Station, Stay
from scanflow.domain.whereabouts import free_to_give
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes, taking_back
from scanflow.workflow.fields import CardText, Code, Command, Flag, Maybe, Note, OneOf
from scanflow.workflow.ports import Invalid, Missing, Refused, SlotFacts, Unit, must
from scanflow.workflow.stock import cards, doubts

COUNTED_MISSING = "a count did not find it"

Act = Callable[[Unit, Finding, "Resolve"], None]


def _facts(unit: Unit, finding: Finding) -> SlotFacts:
    return cards.slot_facts(unit, finding.subject, "")


def _noted(unit: Unit, finding: Finding, said: Resolve) -> None:
    """Nothing of the account changes."""


def _still_missing(unit: Unit, finding: Finding, said: Resolve) -> None:
    """Nothing of the account changes, but a thing that the count missed is known to be missing."""
    facts = _facts(unit, finding)
    if facts.taken and facts.stay is not None:
        doubts.missed(unit, facts.stay.item, COUNTED_MISSING)


def _at_home(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The card was seen with its thing, which is in its own bin now.

    A line that missed it waits again, and one that had picked it is put back; of what is packed a person has to look
    into the parcel.
    """
    facts = _facts(unit, finding)
    line = facts.live_line
    if line is not None and line.state is LineState.PACKED:
        where = " and ".join(finding.places) or finding.bin
        unit.put(line.held(Hold.MISPLACED, f"It counts as packed, but its card was read in {where}. Look there."))
        return
    slot = facts.slot.after("see on item")
    unit.put(replace(slot, seen=Sighting(Station.SHELF, slot.bin, True, unit.at), out=None))
    if line is not None and line.state is LineState.PICKED:
        line = line.after("put back")
    if line is not None and line.state is LineState.SHORT:
        line = line.after("find")
    if facts.item is not None:
        doubts.found(unit, facts.item.id, DoubtEnd.CORRECTED)
    if line is not None and facts.item is not None:
        unit.put(doubts.hold(unit, line, facts.item.id))


def _back(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The card was seen in the tray."""
    slot = _facts(unit, finding).slot.after("see in tray")
    unit.put(replace(slot, seen=Sighting(Station.TRAY, "", True, unit.at)))


def asks_for_card(unit: Unit, finding: Finding) -> bool:
    """Whether it is put right only by the text of its card, read in the tray: the count did not see it there itself, or
    it was read elsewhere since.
    """
    if finding.kind is FindingKind.MISSING:
        return finding.bin == TRAY
    facts = (
        _facts(unit, finding)
        if finding.kind in (FindingKind.SLOT_FREE, FindingKind.CARD_DUE, FindingKind.TWIN)
        else None
    )
    if facts is None or facts.taken:
        return False
    seen = facts.slot.seen
    there = seen is not None and seen.station is Station.TRAY and seen.accepted
    return TRAY not in finding.places or not there


def _brought_back(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The card is in the tray now, as its text says that was read there, unless the count saw it there itself.

    A number is handed out again only once its card was seen in the tray: a person's word alone frees none.
    """
    if asks_for_card(unit, finding):
        if said.text is None:
            raise Invalid("/text", "required", f"Read the card as you lay it into the tray: scan {finding.subject}.")
        if cards.card_facts(unit, said.text).slot.code != finding.subject:
            raise Invalid("/text", "other_card", f"That is another card. Scan card {finding.subject}.")
    _back(unit, finding, said)


def _one_left(unit: Unit, finding: Finding, said: Resolve) -> None:
    """Of two cards of one code one was taken away; the other is where it belongs."""
    if _facts(unit, finding).slot.twin:
        cards.destroyed(unit, finding.subject)
    if not _facts(unit, finding).taken:
        _brought_back(unit, finding, said)
    elif finding.bin in finding.places:
        _at_home(unit, finding, said)


def _lost(unit: Unit, finding: Finding, said: Resolve) -> None:
    stock.lose_card(unit, finding.subject)
    _still_missing(unit, finding, said)


def _withdrawn(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The thing is gone; where its card lies in the tray, that is back with it."""
    stay = _facts(unit, finding).stay
    stock.withdraw(unit, stay.id if stay else "", stock.Withdraw(reason=said.reason))
    if finding.kind is FindingKind.IN_TRAY:
        _back(unit, finding, said)


def _moved(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The thing stays in the bin where it was seen: it gets a free slot there, and that slot's card."""
    stay = _facts(unit, finding).stay
    stock.move(unit, stay.id if stay else "", stock.Move(to=said.to or _free_in(unit, finding.places[0])))


def _free_in(unit: Unit, bin_: str) -> str:
    for slot in sorted(unit.find(Slot, bin=bin_, card=CardState.TRAY), key=lambda slot: slot.number):
        facts = unit.facts(slot.code)
        if facts is not None and free_to_give(slot, taken=facts.taken):
            return slot.code
    raise Refused("bin_full", f"No slot of {bin_} is free. Put the thing into another.")


def _reprinted(unit: Unit, finding: Finding, said: Resolve) -> None:
    """A card is printed again: the damaged one in hand, or one that is gone while its thing is there."""
    if finding.code is None:
        code = cards.card_facts(unit, said.text or "").slot.code
        cards.reprint(unit, code, cards.Reprint(text=said.text))
    elif said.text is not None:
        cards.reprint(unit, finding.code, cards.Reprint(text=said.text))
    else:
        if _facts(unit, finding).slot.card is not CardState.LOST:
            stock.lose_card(unit, finding.code)
        cards.reprint(unit, finding.code, cards.Reprint.of({"lost": said.reason} if said.reason.strip() else {}))


def _still_here(unit: Unit, finding: Finding, said: Resolve) -> None:
    """The card of a shipped stay hangs on a thing: what has left in its place? The order stands until that is known.

    The card's number is out of use until the card is seen in the tray.
    """
    facts = _facts(unit, finding)
    if facts.taken or facts.stay is None or facts.stay.state is not StayState.SHIPPED or facts.line is None:
        raise Refused("not_shipped", "The last thing of this slot was not shipped.")
    number = must(unit, Order, facts.line.order).number
    why = f"Card {finding.subject} was found on a thing in {finding.places[0]}. Ask what order {number} got."
    unit.put(facts.line.held(Hold.MISPLACED, why))
    unit.record(events.LineHeld(line=facts.line.id, why=why))
    if facts.slot.card is not CardState.LOST:
        stock.lose_card(unit, finding.subject)


def _held(unit: Unit, finding: Finding, said: Resolve) -> None:
    """“Not this thing”: the line that wants it, or the next one, stands still until a person settles it."""
    facts = _facts(unit, finding)
    if facts.stay is not None and facts.taken:
        doubts.not_this(unit, facts.stay.item, said.reason)
    else:
        raise Refused("changed_since", f"{finding.subject} has changed since. Count it again.")


ACTS: Mapping[FindingKind, Mapping[str, Act]] = {
    FindingKind.MISSING: {
        "found_later": _at_home,
        "lost": _lost,
        "reprint": _reprinted,
        "withdraw": _withdrawn,
        "ignore": _still_missing,
    },
    FindingKind.ELSEWHERE: {"put_right": _at_home, "moved": _moved, "withdraw": _withdrawn, "ignore": _noted},
    FindingKind.TWIN: {"put_right": _one_left, "ignore": _noted},
    FindingKind.SLOT_FREE: {"put_right": _brought_back, "still_here": _still_here, "ignore": _noted},
    FindingKind.IN_TRAY: {"put_right": _at_home, "withdraw": _withdrawn, "ignore": _noted},
    FindingKind.CARD_DUE: {"put_right": _brought_back, "found_later": _brought_back, "lost": _lost, "ignore": _noted},
    FindingKind.UNKNOWN: {"put_right": _noted, "ignore": _noted},
    FindingKind.UNREADABLE: {"put_right": _noted, "reprint": _reprinted, "ignore": _noted},
    FindingKind.SUSPECT: {"put_right": _at_home, "hold": _held, "withdraw": _withdrawn, "ignore": _noted},
}
"""What can be done about a finding of each kind, and what that does."""

WAYS = tuple(dict.fromkeys(how for acts in ACTS.values() for how in acts))


class Resolve(Command, json_schema_extra={"examples": [{"how": "ignore", "reason": "On loan"}]}):
    how: Annotated[str, OneOf(WAYS)]
    reason: Note = Field(default="", description="Required for what is withdrawn, held or ignored.")
    to: Maybe[Code] = Field(default=None, description="For what is moved: a free slot. Absent: the lowest of that bin.")
    text: Maybe[CardText] = Field(
        default=None,
        description="Read from the card as it is laid into the tray, or from the damaged one that is printed again.",
    )
    sure: Flag = Field(
        default=False, description="Somebody looked: needed for a finding that rests on a matched reading."
    )


NEED_REASON = ("withdraw", "ignore", "hold")


def ways(unit: Unit, finding: Finding) -> tuple[str, ...]:
    """Those of its kind that are possible now, by what the account has of its slot."""
    facts = unit.facts(finding.code) if finding.code is not None else None
    return tuple(how for how in ACTS[finding.kind] if _possible(finding, how, facts))


def _possible(finding: Finding, how: str, facts: SlotFacts | None) -> bool:
    match how:
        case "still_here":
            return facts is not None and facts.stay is not None and facts.stay.state is StayState.SHIPPED
        case "hold":
            return facts is not None and facts.taken
        case "lost":
            return facts is not None and facts.slot.card is not CardState.LOST
        case "withdraw":
            return facts is not None and facts.taken and facts.live_line is None
        case "reprint":
            return finding.kind is not FindingKind.MISSING or finding.bin != TRAY
    return True


def resolve(unit: Unit, count_id: str, finding_id: str, said: Resolve) -> stocktakes.TrackedFinding:
    """Do what a person decides about a finding.

    Refused: `resolved`, `not_for_this`, `look_closer` where it rests on a matched reading alone, `changed_since`
    where its slot moved after the count, and what the acts themselves refuse.
    """
    now = stocktakes.state(unit, count_id)
    if now.count.state is StocktakeState.CANCELLED:
        raise Refused("not_allowed", "This count was cancelled. Count again what is amiss.")
    finding = _open(now, finding_id, stocktakes.changed(unit, now.count))
    act = _act(finding, said)
    after = unit.seq
    before = unit.facts(finding.code) if finding.code else None
    doubted = taking_back.doubted(unit, before)
    act(unit, finding, said)
    undo = taking_back.undo_of(before, unit.facts(finding.code) if finding.code else None)
    undo["doubts"] = taking_back.doubts_told(doubted, taking_back.doubted(unit, before))
    resolved = Resolved(
        id=_name(count_id, finding),
        stocktake=count_id,
        finding=json.dumps(finding.as_dict()),
        how=said.how,
        reason=said.reason,
        who=unit.who,
        at=unit.at,
        undo=json.dumps(undo | {"to": _moved_to(unit, before) if said.how == "moved" else None}),
    )
    unit.add(resolved)
    unit.record(
        events.FindingResolved(
            stocktake=count_id, finding=finding.id, how=said.how, reason=said.reason, sure=said.sure, after=after
        )
    )
    return stocktakes.TrackedFinding(finding, resolved)


def _name(count_id: str, finding: Finding) -> str:
    return f"{count_id}.{finding.id}"


def _open(now: stocktakes.CountState, finding_id: str, changed: Collection[str]) -> Finding:
    """The finding of that id that nobody resolved, and whose slot nothing has changed since."""
    found = next((each for each in now.found if each.finding.id == finding_id), None)
    if found is not None and found.resolved is not None:
        raise Refused("resolved", f"This was resolved already: {found.resolved.how.replace('_', ' ')}.")
    subject = finding_id.partition("-")[2]
    if subject in changed:
        raise Refused("changed_since", f"{subject} has changed since. Count it again.")
    if found is None:
        raise Missing(f"There is no finding {finding_id} in this count.")
    return found.finding


def _act(finding: Finding, said: Resolve) -> Act:
    acts = ACTS[finding.kind]
    if said.how not in acts:
        raise Refused("not_for_this", f"What is {finding.kind} can be: {', '.join(acts)}.")
    if finding.kind is FindingKind.MISSING and finding.bin == TRAY and said.how in ("withdraw", "reprint"):
        raise Refused("not_for_this", "A card that is missing in the tray can be: found_later, lost, ignore.")
    if said.how in NEED_REASON and not said.reason.strip():
        raise Invalid("/reason", "required", "Say why.")
    if said.how == "reprint" and said.text is None and (finding.code is None or not said.reason.strip()):
        raise Invalid("/text", "required", "Read the text of the damaged card, or say why the card is lost.")
    acts_on_it = acts[said.how] not in (_noted, _still_missing)
    if finding.certainty is Certainty.MATCHED and acts_on_it and not said.sure:
        unread = "The bars of this card were not read."
        raise Refused("look_closer", f"{unread} Take a closer photo, or look yourself and say so.")
    if finding.kind is FindingKind.MISSING and finding.bin == TRAY and said.how == "found_later":
        return _brought_back
    return acts[said.how]


def _moved_to(unit: Unit, before: SlotFacts | None) -> str | None:
    return unit.find(Stay, item=before.item.id)[-1].id if before and before.item else None
