"""Who may say that a thing of a return is scrapped, and put that right, by calls and on pages alike."""

from __future__ import annotations

from scanflow.domain.access import MANAGERS
from scanflow.domain.life import Condition
from scanflow.domain.things import Return
from scanflow.web.door.visitors import need, visitor
from scanflow.workflow.orders.returns import CheckReturn
from scanflow.workflow.ports import Unit


def may_scrap() -> bool:
    """Helpers scrap nothing, and take no scrapping back."""
    return visitor().role in MANAGERS


def admit(unit: Unit, return_id: str, said: CheckReturn) -> None:
    """`Problem` 403 unless the visitor may say this of a return."""
    back = unit.get(Return, return_id)
    before = back.check(said.line) if back is not None else None
    if Condition.SCRAP in (said.condition, before.condition if before else None):
        need(*MANAGERS)
