"""What a section's past says, for its plans."""

from __future__ import annotations

from scanflow.domain.things import Section, Slot, Stay
from scanflow.workflow.ports import Unit, must


def stays_in(unit: Unit, section: str) -> tuple[Stay, ...]:
    """Every stay that a slot of this section ever had; `Missing` when there is no such section."""
    must(unit, Section, section)
    codes = {slot.code for slot in unit.find(Slot, section=section)}
    return tuple(stay for stay in unit.find(Stay) if stay.code in codes)
