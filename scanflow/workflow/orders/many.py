"""Many held lines are settled in one act, as old rows of a file are."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

from pydantic import Field

from scanflow.domain.life import Hold
from scanflow.domain.things import Line
from scanflow.workflow import orders
from scanflow.workflow.fields import Command, Identity
from scanflow.workflow.ports import Invalid, Unit

TO_CANCEL = frozenset(
    {
        Hold.NOT_IN_FILE,
        Hold.ALREADY_SOLD,
        Hold.WITHDRAWN,
        Hold.STALE_CODE,
        Hold.SLOT_FREE,
        Hold.UNKNOWN_CODE,
        Hold.BAD_ROW,
        Hold.NOT_CLEARED,
    }
)
"""Holds of which many lines may be cancelled at once. The others ask for a look at each thing."""

TO_KEEP = frozenset({Hold.NOT_IN_FILE})
"""Holds that a person may end for many lines at once: they say nothing of the things."""


class BulkAnswer(StrEnum):
    """What becomes of all of them."""

    KEEP = "keep"
    CANCEL = "cancel"


class SettleMany(Command):
    hold: Hold
    how: BulkAnswer
    lines: tuple[Identity, ...] = Field(min_length=1, max_length=100_000)


def in_parts(said: SettleMany, enough: Callable[[], Callable[[], bool]]) -> Callable[[Unit], int | None]:
    """What settles the next part of these lines, until `enough` of its own says so: None while there is more to do, at
    last how many it was. A line that is not held so any more, or for a graver reason too, stays as it is.
    """
    if said.hold not in (TO_KEEP if said.how is BulkAnswer.KEEP else TO_CANCEL):
        raise Invalid("/hold", "not_allowed_value", "Look at each of these lines: their things may be the wrong ones.")
    left, done = list(reversed(said.lines)), 0

    def part(unit: Unit) -> int | None:
        nonlocal left, done
        now, count, until = list(left), 0, enough()
        while now and not (count and until()):
            count += _settle(unit, now.pop(), said)
        left, done = now, done + count
        return None if left else done

    return part


def _settle(unit: Unit, line_id: str, said: SettleMany) -> bool:
    line = unit.get(Line, line_id)
    if line is None or line.hold is not said.hold or not orders.can_be_cancelled(unit, line):
        return False
    if said.how is BulkAnswer.KEEP:
        orders.settle(unit, line.id, orders.Settle(hold=said.hold))
    else:
        orders.cancel(unit, line.order, orders.Cancel(line=line.id))
    return True
