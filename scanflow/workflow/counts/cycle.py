"""The plan by which every bin is counted within so many weeks: what is due, and the count of that."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta

from scanflow.domain.counts.stocktake import Chosen, Look, Sample, Stocktake
from scanflow.domain.life import StocktakeState
from scanflow.domain.things import Bin
from scanflow.planning import counting
from scanflow.workflow.counts.stocktakes import begin
from scanflow.workflow.ports import Refused, Settings, Unit

PAST = timedelta(weeks=13)
"""How far back it is looked how busy a bin is. Common practice, no source: a quarter."""


def planned(unit: Unit, weeks: int) -> Settings:
    """The shop's settings with every bin counted within so many weeks, 0 for no plan; a plan begins once."""
    began = (unit.settings.count_began if unit.settings.count_weeks else unit.at.isoformat()) if weeks else ""
    return replace(unit.settings, count_weeks=weeks, count_began=began)


def plan(unit: Unit) -> counting.Cycle | None:
    """What is due; None where the shop has no plan."""
    weeks = unit.settings.count_weeks
    if not weeks:
        return None
    looked, visits = unit.last_looks(), unit.visits_since(unit.at - PAST)
    bins = [
        counting.BinToCount(each.name, looked.get(each.name), visits.get(each.name, 0) * (counting.WEEK / PAST))
        for each in unit.find(Bin)
    ]
    return counting.cycle(bins, weeks, unit.at, datetime.fromisoformat(unit.settings.count_began))


def running(unit: Unit) -> Stocktake | None:
    """The open count of what was due in which a bin is still to be looked at."""
    open_ = unit.find(Stocktake, state=StocktakeState.OPEN)
    turns = (each for each in open_ if each.sample and each.sample.chosen is Chosen.TURN)
    return next((each for each in turns if _left(unit, each)), None)


def _left(unit: Unit, count: Stocktake) -> set[str]:
    """The bins of a count that nobody has looked at."""
    asked = count.sample.bins if count.sample else ()
    looks = unit.find(Look, stocktake=count.id)
    return set(asked) - {look.place for look in looks if look.whole and look.closer is None}


def open_due(unit: Unit) -> Stocktake:
    """Begin a count of all that is due, or go on with the one that runs. `Refused` `nothing_due`."""
    count = running(unit)
    if count is not None:
        return count
    now = plan(unit)
    if now is None or not now.due:
        raise Refused("nothing_due", "No bin is due to be counted.")
    due = {each.name for each in now.due}
    names = [each.name for each in unit.find(Bin)]
    sample = Sample(Chosen.TURN, len(names), tuple(name for name in names if name in due))
    return begin(unit, Stocktake(unit.new_id(), "room", "", unit.at, unit.seq, sample=sample))


def open_on_the_way(unit: Unit, stops: Iterable[str]) -> None:
    """Begin the count of what is due if one of these bins is due and none runs: they are visited anyway."""
    if unit.settings.count_weeks and running(unit) is None:
        now = plan(unit)
        if now is not None and {each.name for each in now.due} & set(stops):
            open_due(unit)


def to_photograph(unit: Unit, bin_name: str) -> Stocktake | None:
    """The running count of what was due for which this bin is still to be looked at."""
    if not unit.settings.count_weeks:
        return None
    count = running(unit)
    return count if count is not None and bin_name in _left(unit, count) else None
