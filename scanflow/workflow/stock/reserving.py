"""A thing is kept for somebody until a day; an order on it waits for a person's word meanwhile."""

from __future__ import annotations

from dataclasses import replace
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.life import Hold
from scanflow.domain.things import Item, Line, Stay
from scanflow.workflow.fields import LONGEST_NAME, Command, Time, words
from scanflow.workflow.ports import Invalid, Unit, must
from scanflow.workflow.stock import cards, doubts
from scanflow.workflow.times import clock, instant


class Reserve(Command, json_schema_extra={"examples": [{"for": "Ann, who rings on Friday", "until": "2026-12-05"}]}):
    whom: Annotated[str, words(LONGEST_NAME, least=1)] = Field(alias="for", title="For whom")
    until: Annotated[Time, Field(title="Until", description="A day counts to its end.")]


def reserve(unit: Unit, stay_id: str, said: Reserve) -> Stay:
    """Keep a thing for somebody; a later word takes the place of an earlier one.

    Refused: `not_in_stock`, `has_live_line` where an order wants it already. Invalid: a time that is past.
    """
    stay = cards.in_stock(unit, stay_id)
    doubts.refuse_wanted(doubts.live_line(unit, stay.item))
    until = instant(said.until, unit.settings.zone)
    if until is None or until <= unit.at:
        raise Invalid("/until", "past", "Choose a time that is still to come.")
    unit.put(replace(must(unit, Item, stay.item), kept_for=said.whom, kept_until=until))
    unit.record(events.Reserved(stay=stay.id, code=stay.code, until=until.isoformat()))
    return stay


def why(unit: Unit, item: Item) -> str:
    """For whom it is kept, and until when; empty where it is not."""
    if item.kept_until is None or not item.reserved(unit.at):
        return ""
    return f"It is kept for {item.kept_for} until {clock(item.kept_until, unit.at, unit.settings.zone)}."


def hold(unit: Unit, line: Line, item_id: str) -> Line:
    """The line, held where its thing is kept for somebody."""
    words_ = why(unit, must(unit, Item, item_id))
    return line.held(Hold.RESERVED, words_) if words_ else line


def end(unit: Unit, stay_id: str) -> Stay:
    """Keep it for nobody, and let the line go on that waited for that."""
    stay = must(unit, Stay, stay_id)
    item = must(unit, Item, stay.item)
    if item.kept_until is not None:
        unit.put(replace(item, kept_for="", kept_until=None))
        unit.record(events.ReservationEnded(stay=stay.id, code=stay.code))
    line = doubts.live_line(unit, stay.item)
    if line is not None and line.has(Hold.RESERVED):
        unit.put(line.freed((Hold.RESERVED,)))
    return stay


def end_of_time(unit: Unit, stays: tuple[str, ...]) -> None:
    """The same for all of these whose time is up."""
    for stay_id in stays:
        item = must(unit, Item, must(unit, Stay, stay_id).item)
        if not item.reserved(unit.at):
            end(unit, stay_id)
