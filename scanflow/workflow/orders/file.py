"""A file of orders is loaded, part by part, and no row silently lost."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence

from scanflow.domain.derive import stands_still
from scanflow.domain.orders.incoming import IncomingOrder
from scanflow.domain.orders.loaded import Loaded, RefusedRow
from scanflow.domain.things import Line
from scanflow.workflow.orders.receiving import Arrival, receive
from scanflow.workflow.ports import Invalid, Unit

Rows = Mapping[tuple[str, str], Sequence[int]]
"""The row numbers of an order's lines by (channel, number)."""


def load(unit: Unit, orders: Sequence[IncomingOrder], rows: Rows) -> Loaded:
    """Receive all these orders."""
    return load_part(unit, orders, rows, 0, lambda: False)[0]


def load_part(
    unit: Unit, orders: Sequence[IncomingOrder], rows: Rows, first: int, enough: Callable[[], bool]
) -> tuple[Loaded, int]:
    """Receive orders from `orders[first]` on until it is `enough`, one at least; and the place of the next one.

    What a rule looks at never lies in two parts: no order depends on the others of its file.
    """
    outcomes: Counter[Arrival] = Counter()
    held: list[str] = []
    refused: list[RefusedRow] = []
    place = first
    while place < len(orders) and (place == first or not enough()):
        incoming = orders[place]
        place += 1
        try:
            order, outcome = receive(unit, incoming)
        except Invalid as error:
            refused += [RefusedRow(row, error.code, error.detail) for row in rows[incoming.channel, incoming.number]]
            continue
        outcomes[outcome] += 1
        held += [line.id for line in unit.find(Line, order=order.id) if stands_still(line)]
    counts = (outcomes[Arrival.NEW], outcomes[Arrival.CHANGED], outcomes[Arrival.UNCHANGED])
    return Loaded(*counts, tuple(held), tuple(refused)), place


def in_parts(
    view: Unit, key: str, orders: Sequence[IncomingOrder], rows: Rows, enough: Callable[[], Callable[[], bool]]
) -> Callable[[Unit], Loaded | None]:
    """What receives the next part of these orders, until `enough` of its own says so: None while there is more to do,
    at last what came of all.

    The same orders sent again (`key`) go on where they were ended. `view` is a view of the room before: a large one's
    titles take a while to read, and are kept.
    """
    view.stocked()

    def part(unit: Unit) -> Loaded | None:
        before = unit.loads.far(key)
        done, place = load_part(unit, orders, rows, before.done, enough())
        if place < len(orders):
            unit.loads.keep(key, before, place, done)
            return None
        return unit.loads.end(key, before, done)

    return part
