"""A file of orders is loaded: all of it in one transaction, and no row silently lost."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from scanflow.domain.derive import stands_still
from scanflow.domain.incoming import IncomingOrder
from scanflow.domain.things import Line
from scanflow.workflow.orders import Outcome, receive
from scanflow.workflow.ports import Invalid, Unit


@dataclass(frozen=True, slots=True)
class RefusedRow:
    """A row of the file, 1 for its first, that became no line: why, and a sentence about it."""

    row: int
    code: str
    text: str


@dataclass(frozen=True, slots=True)
class Loaded:
    """How many orders were new, changed and unchanged; the file's lines that are held; the rows refused."""

    loaded: int
    changed: int
    unchanged: int
    held: tuple[str, ...]
    refused: tuple[RefusedRow, ...]


def load(unit: Unit, orders: Iterable[IncomingOrder], rows: Mapping[tuple[str, str], Sequence[int]]) -> Loaded:
    """Receive each order. `rows` gives the row numbers of an order's lines by (channel, number)."""
    outcomes: Counter[Outcome] = Counter()
    held: list[str] = []
    refused: list[RefusedRow] = []
    for incoming in orders:
        try:
            order, outcome = receive(unit, incoming)
        except Invalid as error:
            refused += [RefusedRow(row, error.code, error.detail) for row in rows[incoming.channel, incoming.number]]
            continue
        outcomes[outcome] += 1
        held += [line.id for line in unit.find(Line, order=order.id) if stands_still(line)]
    return Loaded(
        outcomes[Outcome.NEW], outcomes[Outcome.CHANGED], outcomes[Outcome.UNCHANGED], tuple(held), tuple(refused)
    )
