"""Doubts of an item: said, kept through all that happens to it, and settled on purpose."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.life import DoubtEnd, DoubtKind, Hold, LineState
from scanflow.domain.things import Doubt, Item, Line, Stay
from scanflow.workflow.fields import Command, Maybe, Note, OneOf, words
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import listings
from scanflow.workflow.stock.cards import card_facts
from scanflow.workflow.times import clock


def open_doubts(unit: Unit, item: str) -> tuple[Doubt, ...]:
    """Those that nobody settled, the oldest first."""
    return unit.find(Doubt, item=item, how=None)


def said(unit: Unit, doubts: Iterable[Doubt]) -> str:
    """The words of doubts, for a hold."""
    told = [_words(unit, each) for each in doubts]
    return " ".join([*map(sentence, told[:-1]), *told[-1:]])


def sentence(words: str) -> str:
    """The same with a full stop, unless it ends with one."""
    return words if words.endswith((".", "!", "?")) else f"{words}."


def _words(unit: Unit, doubt: Doubt) -> str:
    if doubt.kind is DoubtKind.NOT_THIS:
        return doubt.words
    since = clock(doubt.since, unit.at, unit.settings.zone)
    return f"It has been missing since {since}{f': {doubt.words}' if doubt.words else ''}."


def doubt(unit: Unit, item: str, kind: DoubtKind, words: str) -> Doubt:
    """Keep a doubt, with the picture of the thing as it is now; the same said again is no second one."""
    for each in open_doubts(unit, item):
        if (each.kind, each.words) == (kind, words):
            return each
    new = Doubt(unit.new_id(), item, kind, words, unit.at, unit.who, must(unit, Item, item).photo)
    unit.add(new)
    unit.record(events.Doubted(doubt=new.id, item=item, doubt_kind=kind, words=words))
    return new


def hold(unit: Unit, line: Line, item: str) -> Line:
    """The line as the doubts of its item have it: held by them, or free of that hold once none is left."""
    short = line.state is LineState.SHORT  # which says that it is missing
    left = [each for each in open_doubts(unit, item) if not (short and each.kind is DoubtKind.MISSING)]
    line = line.freed((Hold.SUSPECT,))
    return line.held(Hold.SUSPECT, said(unit, left)) if left else line


def refuse_wanted(line: Line | None) -> None:
    """`Refused` where there is a live line that wants the thing."""
    if line is not None:
        raise Refused("has_live_line", "An order wants it. Cancel that line first.")


def live_line(unit: Unit, item: str) -> Line | None:
    """The live line that wants the item."""
    for stay in unit.find(Stay, item=item):
        for line in unit.find(Line, stay=stay.id) if stay.open else ():
            if line.live:
                return line
    return None


def _closed_over(unit: Unit, item: str) -> Line | None:
    """The line in whose closed parcel the item lies, doubted since."""
    lines = (line for stay in unit.find(Stay, item=item) for line in unit.find(Line, stay=stay.id))
    return next((line for line in lines if line.state is LineState.RELEASED and line.has(Hold.SUSPECT)), None)


def missed(unit: Unit, item: str, words: str) -> None:
    """The thing is known to be missing until somebody sees it; a line that waits for it is held."""
    doubt(unit, item, DoubtKind.MISSING, words)
    line = live_line(unit, item)
    if line is not None and line.state is LineState.WAITING:
        unit.put(hold(unit, line, item))


def not_this(unit: Unit, item: str, words: str) -> None:
    """A person says that a thing is not what its card says; the line that wants it is held."""
    doubt(unit, item, DoubtKind.NOT_THIS, words)
    line = live_line(unit, item)
    if line is not None:
        unit.put(hold(unit, line, item))


def found(unit: Unit, item: str, how: DoubtEnd) -> None:
    """The thing is there: what was missing of it is no more."""
    for each in open_doubts(unit, item):
        if each.kind is DoubtKind.MISSING:
            _end(unit, each, how, "")


def gone(unit: Unit, item: str) -> None:
    """The thing was taken out of stock: nothing of it is in doubt any more."""
    for each in open_doubts(unit, item):
        _end(unit, each, DoubtEnd.WITHDRAWN, "")


class SettleDoubt(
    Command,
    json_schema_extra={
        "examples": [
            {"how": "seen", "text": "D0145"},
            {"how": "corrected", "note": "The listing had another picture"},
        ]
    },
):
    how: Annotated[DoubtEnd, OneOf((DoubtEnd.SEEN, DoubtEnd.CORRECTED))] = Field(
        description="`seen`: the card was read, and its thing is the one in the picture. `corrected`: what was wrong "
        "is put right."
    )
    text: Maybe[Annotated[str, words(200)]] = Field(default=None, description="Of its card; needed for what was seen.")
    note: Note = ""


def settle(unit: Unit, doubt_id: str, said: SettleDoubt) -> Doubt:
    """End a doubt on purpose; the last one ended frees the line that wants the thing.

    *Seen* says that this is the thing, beside its picture: it wants the text of its card. Refused: `settled`,
    `not_in_stock`. Invalid: no text, or another card's.
    """
    before = must(unit, Doubt, doubt_id)
    if not before.open:
        raise Refused("settled", "This doubt was settled before.")
    if said.how is DoubtEnd.SEEN:
        _check_card(unit, before.item, said.text)
    ended = _end(unit, before, said.how, said.note)
    line = live_line(unit, before.item) or _closed_over(unit, before.item)
    if line is not None:
        found_now = line.state is LineState.SHORT and before.kind is DoubtKind.MISSING
        unit.put(hold(unit, line.after("find") if found_now else line, before.item))
    return ended


def _check_card(unit: Unit, item: str, text: str | None) -> None:
    closed_over = _closed_over(unit, item)
    open_ = next((each for each in unit.find(Stay, item=item) if each.open), None)
    stay = must(unit, Stay, closed_over.stay or "") if open_ is None and closed_over is not None else open_
    if stay is None:
        raise Refused("not_in_stock", "That thing has left its slot.")
    if not text:
        raise Invalid("/text", "required", f"Scan card {stay.code} and check that its thing is the one in the picture.")
    if card_facts(unit, text).slot.code != stay.code:
        raise Invalid("/text", "other_card", f"That is another card. Scan card {stay.code}.")


def _end(unit: Unit, doubt_: Doubt, how: DoubtEnd, note: str) -> Doubt:
    ended = replace(doubt_, how=how, note=note, ended=unit.at)
    unit.put(ended)
    if doubt_.kind is DoubtKind.NOT_THIS and how is not DoubtEnd.SEEN:
        listings.forget(unit, item=doubt_.item)
    unit.record(events.DoubtSettled(doubt=ended.id, item=ended.item, how=how, note=note))
    return ended
