"""A count in words: its area, what a finding says is amiss, and what each way to resolve it is called."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY, Area, AreaKind, Certainty, Chosen, Stocktake
from scanflow.domain.life import LineState
from scanflow.domain.words import FindingWords, place, units
from scanflow.workflow.counts.report import Whole


@dataclass(frozen=True, slots=True)
class Way:
    """One way to resolve a finding: its words, and what it asks for. `sure`: that somebody looked at the card itself.

    `reason`: how it asks for one, empty where it needs none. `text`: the text of the damaged card, or, where the card
    may be lost, a reason. `scan`: the text of the card, read as it is laid into the tray.
    """

    how: str
    words: str
    reason: str = ""
    text: bool = False
    scan: bool = False
    to: bool = False
    sure: bool = False

    @property
    def asks(self) -> bool:
        return bool(self.reason) or self.text or self.scan or self.to or self.sure


def area(text: str) -> str:
    """“shelf A-2”, “the room” …"""
    wanted = Area.parse(text)
    if wanted.kind in (AreaKind.ROOM, AreaKind.TRAY):
        return f"the {wanted.kind}"
    return f"{wanted.kind} {wanted.name}"


def subject(count: Stocktake) -> str:
    """What a count is about: its area, or the bins chosen of it: “59 bins drawn from the room”, “7 bins due”."""
    if count.sample is None:
        return area(count.area)
    bins = units(len(count.sample.bins), "bin", "bins")
    return f"{bins} due" if count.sample.chosen is Chosen.TURN else f"{bins} drawn from {area(count.area)}"


def ranges(names: Sequence[str]) -> str:
    """Places in words, those side by side on one shelf as a range.

    >>> ranges(["A-1-1", "A-1-2", "A-1-3", "A-2-1", "A-2-2", "tray"])
    'A-1-1 to A-1-3, A-2-1, A-2-2, the tray'
    """
    runs: list[list[str]] = []
    for name in names:
        if runs and _after(runs[-1][-1], name):
            runs[-1].append(name)
        else:
            runs.append([name])
    return ", ".join(f"{run[0]} to {run[-1]}" if len(run) > 2 else ", ".join(map(place, run)) for run in runs)


def _after(one: str, other: str) -> bool:
    """Whether this bin stands right after that one on its shelf."""
    (shelf, _, at), (beside, _, behind) = one.rpartition("-"), other.rpartition("-")
    return shelf == beside and at.isdecimal() and behind.isdecimal() and int(behind) == int(at) + 1


def walk(found: Finding) -> tuple[object, ...]:
    """Where it comes in the order of who puts findings right: bin by bin, where to look again first, the tray last."""
    due = found.kind is FindingKind.CARD_DUE and not found.places
    at = TRAY if due else found.places[0] if found.places else found.bin or ""
    parts = [(0, int(part), "") if part.isdecimal() else (1, 0, part) for part in at.split("-")]
    return (
        at == TRAY,
        parts,
        found.kind is not FindingKind.UNREADABLE,
        list(FindingKind).index(found.kind),
        found.subject,
    )


def suspected(found: FindingWords, line: LineState | None, order: str, doubted: bool) -> FindingWords:
    """What makes a card on its shelf suspect, where that is known: the order that has its thing, a person's word."""
    why = []
    if line in (LineState.PICKED, LineState.PACKED):
        why.append(f"Its thing counts as {line} for order {order}.")
    if doubted:
        why.append("A person said that its thing is another one.")
    return replace(found, why=" ".join(why)) if why else found


def percent(share: float) -> str:
    """A share of 0 to 1, with as many places as it deserves.

    >>> percent(0.98765), percent(1.0)
    ('98.8 %', '100 %')
    """
    return f"{100 * share:.1f} %".replace(".0 %", " %")


def between(low_high: Sequence[float] | None) -> str:
    """Two shares with 95 % certainty, or that nothing was counted."""
    return f"{percent(low_high[0])} to {percent(low_high[1])}" if low_high else "nothing counted"


def agree(told: Whole) -> str:
    """What share of the cards agrees. Where all of them were looked for that is known, and no interval is given."""
    if not told.counted:
        return "No card belongs in what was looked at." if told.looked else "No place was looked at."
    hidden = f", {told.unclear:,} {'is' if told.unclear == 1 else 'are'} unclear" if told.unclear else ""
    if not whole_counted(told):
        return f"With 95 % certainty, {between(told.agreement)} of all cards are where the records say{hidden}."
    if told.agreed < told.counted:
        return f"{told.agreed:,} of all {units(told.counted, 'card', 'cards')} agree{hidden}."
    return f"All {told.counted:,} cards agree." if told.counted > 1 else "The only card agrees."


def whole_counted(told: Whole) -> bool:
    """Whether no share has to be guessed: every place of the area was looked at."""
    return told.looked == told.all_


def section_between(row: Mapping[str, Any], told: Whole) -> str:
    """Where the share of one section's cards that agree lies, as the report has its row."""
    return "all counted" if row["counted"] and whole_counted(told) else between(row["agreement"])


def section_agreed(row: Mapping[str, Any], what: str = "") -> str:
    """How many of one section's cards agree: “8 of 10, 1 unclear”; `what` follows the first of it."""
    hidden = row.get("unclear", 0)
    return f"{row['agreed']:,} of {row['counted']:,}{what}" + (f", {hidden:,} unclear" if hidden else "")


def rest(told: Whole) -> str:
    """What the places that were looked at say of the others."""
    if not told.well:
        return "No place was looked at well enough to say anything."
    others = told.all_ - told.well
    if not others:
        return "All places were looked at."
    sure = units(told.well, "place", "places")
    differ = f"In {told.wrong} of the {sure} that could be checked fully, the records don't match the shelf."
    if told.rest is None:
        due = "These were chosen because they were due, not at random"
        return f"{differ} {due}, so nothing certain follows for the other {others}."
    least, most = told.rest
    between = f"{differ} Of the other {others}, {least} to {most} don't match either, with 95 % certainty"
    if told.chosen is None:
        return f"{between}, if the places you looked at were picked by chance."
    left, others = told.places - told.well, told.unfinished
    doubts = []
    if left > 0:
        doubts.append(f"{left} of those picked {_were(left)} not seen well enough")
    if others > 0:
        doubts.append(f"{units(others, 'sample', 'samples')} drawn before {_were(others)} not finished")
    if not doubts:
        return f"{between}: all were picked by chance."
    return f"{between}, if it is chance alone that {' and that '.join(doubts)}."


def _were(number: int) -> str:
    return "was" if number == 1 else "were"


_WORDS = {
    "found_later": "It is in {home}",
    "put_right": "Done",
    "moved": "It stays in {where}",
    "lost": "Its card is lost",
    "reprint": "Print its card again",
    "withdraw": "The thing is gone",
    "ignore": "Change nothing",
    "still_here": "Its order got another thing",
    "hold": "Hold the order that wants it, now or later",
}
_WHY = {"withdraw": "Why it is gone", "ignore": "Why you change nothing", "hold": "Why you hold it"}
_DONE = {
    FindingKind.ELSEWHERE: "It is in {home}",
    FindingKind.TWIN: "One card is left",
    FindingKind.SLOT_FREE: "It is in the tray",
    FindingKind.IN_TRAY: "It is with its thing",
    FindingKind.CARD_DUE: "It is in the tray",
    FindingKind.UNKNOWN: "It is out of the room",
    FindingKind.UNREADABLE: "All is there, I looked",
    FindingKind.SUSPECT: "The thing is in its bin",
}
RESOLVED = {
    "found_later": "found after all",
    "put_right": "put right",
    "moved": "moved for good",
    "lost": "card given up as lost",
    "reprint": "card printed again",
    "withdraw": "thing withdrawn",
    "ignore": "left so",
    "still_here": "order held: it got another thing",
    "hold": "order held",
}


def ways(found: Finding, possible: Iterable[str], read: bool = False) -> list[Way]:
    """Each way to resolve it that is possible, the usual one first.

    `read`: it is put right only by its card's text. What has two names is there once.
    """
    twice = "found_later" if found.kind is FindingKind.CARD_DUE else ""
    return [_way(found, how, read) for how in possible if how != twice]


def _way(found: Finding, how: str, read: bool) -> Way:
    words = _DONE[found.kind] if how == "put_right" else _WORDS[how]
    names = {"home": place(found.bin or ""), "where": place(found.places[0]) if found.places else ""}
    return Way(
        how,
        words.format(**names),
        reason=_WHY.get(how, ""),
        text=how == "reprint",
        scan=read and how == "put_right",
        to=how == "moved",
        sure=found.certainty is Certainty.MATCHED and how != "ignore" and found.kind is not FindingKind.UNKNOWN,
    )
