"""How this shop works, as its owner says it."""

from __future__ import annotations

from dataclasses import asdict, replace
from typing import Any

from scanflow.domain import events
from scanflow.workflow.counts import cycle
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.ports import Unit


def change(unit: Unit, *, count_weeks: int, hand_overs: bool, **others: Any) -> None:
    """From now on it works so; `others` are fields of `Settings`."""
    if hand_overs and not unit.settings.hand_overs:
        hand_over.begin(unit)
    new = replace(cycle.planned(unit, count_weeks), hand_overs=hand_overs, **others)
    unit.set_settings(new)
    unit.record(events.SettingsChanged(settings=asdict(new)))
