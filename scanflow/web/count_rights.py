"""Who may resolve a finding in which way, by calls and on pages alike: what elsewhere is no helper's is none here."""

from __future__ import annotations

from scanflow.domain.access import MANAGERS
from scanflow.domain.counts.stocktake import Resolved
from scanflow.web.door.visitors import need, visitor
from scanflow.workflow.ports import Unit

MANAGED = ("withdraw", "reprint")
"""Helpers neither do this nor take it back."""

HOLDS = ("hold", "still_here")
"""Helpers may hold a line, and not let it go."""


def may(how: str) -> bool:
    """Whether the visitor may resolve a finding so."""
    return how not in MANAGED or visitor().role in MANAGERS


def may_undo(how: str) -> bool:
    """Whether the visitor may take such a resolution back."""
    return how not in MANAGED + HOLDS or visitor().role in MANAGERS


def admit(how: str) -> None:
    """`Problem` 403 unless the visitor may resolve a finding so."""
    if how in MANAGED:
        need(*MANAGERS)


def admit_undo(unit: Unit, count_id: str, finding: str) -> None:
    """`Problem` 403 unless the visitor may take back what was done about a finding."""
    done = unit.get(Resolved, f"{count_id}.{finding}")
    if done is not None and not may_undo(done.how):
        need(*MANAGERS)
