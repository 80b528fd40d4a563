"""A thing is out of its bin for a while: for new pictures, for a repair, or lent."""

from __future__ import annotations

from dataclasses import replace
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.things import Item, Stay
from scanflow.workflow.fields import LONGEST_NAME, Command, words
from scanflow.workflow.ports import Unit, must
from scanflow.workflow.stock import cards


class TakeOut(Command, json_schema_extra={"examples": [{"where": "On the bench, new cable"}]}):
    where: Annotated[str, words(LONGEST_NAME, least=1)] = Field(title="Where it is")


def take_out(unit: Unit, stay_id: str, said: TakeOut) -> Stay:
    """Say where a thing is while it is not in its bin; said again, it is there since the first time. The next accepted
    scan of its card ends it. Refused: `not_in_stock`.
    """
    stay = cards.in_stock(unit, stay_id)
    item = must(unit, Item, stay.item)
    unit.put(replace(item, away=said.where, away_since=item.away_since or unit.at))
    if item.away_since is None:
        unit.record(events.OutOfBin(stay=stay.id, code=stay.code))
    return stay


def bring_back(unit: Unit, stay_id: str) -> Stay:
    """It is where its card says again."""
    stay = must(unit, Stay, stay_id)
    item = must(unit, Item, stay.item)
    if item.away_since is not None:
        unit.put(replace(item, away="", away_since=None))
        unit.record(events.BackInBin(stay=stay.id, code=stay.code))
    return stay
