"""A file of orders is loaded, part by part, and no row silently lost."""

from __future__ import annotations

import hashlib
from collections import Counter, defaultdict
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence

from scanflow.domain import events
from scanflow.domain.derive import stands_still
from scanflow.domain.life import LIVE, LineState
from scanflow.domain.orders.incoming import IncomingOrder
from scanflow.domain.orders.loaded import ALREADY_SENT, Far, Loaded, RefusedRow
from scanflow.domain.things import Channel, ChannelStatus, Line, Order
from scanflow.workflow.orders import taking_back
from scanflow.workflow.orders.receiving import Arrival, hold_absent, numbered, receive, tell_change
from scanflow.workflow.ports import Invalid, Unit, must

Key = tuple[str, str]
"""Channel and number of an order."""

Rows = Mapping[Key, Sequence[int]]
"""The row numbers of an order's lines."""

Enough = Callable[[], bool]

OPEN = (*LIVE, LineState.UNBOUND)
"""Of a line that an order still asks for."""


def load(unit: Unit, orders: Sequence[IncomingOrder], rows: Rows, listed: Collection[Key] = ()) -> Loaded:
    """Receive all these orders at once, as a trial does. `listed` as of `in_parts`."""
    name = unit.new_id()
    done, _ = load_part(unit, orders, rows, 0, lambda: False, name)
    held = [line for order, lines in absent(unit, listed) for line in _hold_absent(unit, order, lines, name)]
    return _with(done, held)


def load_part(
    unit: Unit, orders: Sequence[IncomingOrder], rows: Rows, first: int, enough: Enough, name: str
) -> tuple[Loaded, int]:
    """Receive orders from `orders[first]` on until it is `enough`, one at least; and the place of the next one. `name`
    is that of the load.

    What a rule looks at never lies in two parts: no order depends on the others of its file.
    """
    outcomes: Counter[Arrival] = Counter()
    held: list[str] = []
    refused: list[RefusedRow] = []
    place = first
    while place < len(orders) and (place == first or not enough()):
        incoming = orders[place]
        place += 1
        known = numbered(unit, incoming)
        if incoming.status is ChannelStatus.SENT and not known:
            words = f"Order {incoming.number} was sent already, as its channel says. It is not taken in."
            refused += [RefusedRow(row, ALREADY_SENT, words) for row in rows[incoming.channel, incoming.number]]
            continue
        before = {order.id: taking_back.image(unit, order) for order in known}
        try:
            order, outcome = receive(unit, incoming, name)
        except Invalid as error:
            refused += [RefusedRow(row, error.code, error.detail) for row in rows[incoming.channel, incoming.number]]
            continue
        if outcome is Arrival.CHANGED:
            taking_back.keep(unit, name, order, before[order.id])
        outcomes[outcome] += 1
        held += [line.id for line in unit.find(Line, order=order.id) if stands_still(line)]
    counts = (outcomes[Arrival.NEW], outcomes[Arrival.CHANGED], outcomes[Arrival.UNCHANGED])
    if counts[0] or counts[1]:
        unit.record(events.OrdersLoaded(load=name, loaded=counts[0], changed=counts[1]))
    return Loaded(*counts, tuple(held), tuple(refused)), place


def absent(unit: Unit, listed: Collection[Key]) -> Iterator[tuple[Order, list[Line]]]:
    """The open orders that a file brought before and that this one, which names all these, does not have: of the
    channels in it whose files list all their open orders.
    """
    named = {channel for channel, _ in listed}
    complete = {channel.name for channel in unit.find(Channel, complete=True)} & named
    lines: dict[str, list[Line]] = defaultdict(list)
    for state in OPEN if complete else ():
        for line in unit.find(Line, state=state, in_file=True):
            lines[line.order].append(line)
    for order_id, each in lines.items():
        order = must(unit, Order, order_id)
        if order.load and order.channel in complete and (order.channel, order.number) not in listed:
            yield order, each


def _open_lines(unit: Unit, order: str) -> list[Line]:
    return [line for line in unit.find(Line, order=order) if line.state in OPEN]


def _hold_absent(unit: Unit, order: Order, lines: Sequence[Line], name: str) -> list[str]:
    before = taking_back.image(unit, order)
    held = hold_absent(unit, lines, f"The newest file of {order.channel} does not have order {order.number}.")
    if held:
        tell_change(unit, order, held)
        taking_back.keep(unit, name, order, before)
    return [line.id for line in held]


def in_parts(
    view: Unit,
    key: str,
    orders: Sequence[IncomingOrder],
    rows: Rows,
    enough: Callable[[], Enough],
    listed: Collection[Key] = (),
) -> Callable[[Unit], Loaded | None]:
    """What receives the next part of these orders, until `enough` of its own says so: None while there is more to do,
    at last what came of all.

    The same orders sent again (`key`) go on where they were ended. `view` is a view of the room before: a large one's
    titles take a while to read, and are kept, as are the orders that are absent. `listed`: all orders that the file
    names, where absent ones are to be held; empty for a file that is only a part.
    """
    view.stocked()
    gone = [order.id for order, _ in absent(view, listed)]
    far = 0

    def part(unit: Unit) -> Loaded | None:
        nonlocal far
        until = enough()
        before = unit.loads.far(key)
        name = _name(key, before)
        done, place = load_part(unit, orders, rows, before.done, until, name)
        if place < len(orders):
            unit.loads.keep(key, before, place, done)
            return None
        held: list[str] = []
        at = far
        while at < len(gone) and not (at > far and until()):
            held += _hold_absent(unit, must(unit, Order, gone[at]), _open_lines(unit, gone[at]), name)
            at += 1
        far = at
        if at < len(gone):
            unit.loads.keep(key, before, place, _with(done, held))
            return None
        return unit.loads.end(key, before, _with(done, held))

    return part


def _with(done: Loaded, held: Sequence[str]) -> Loaded:
    return Loaded(done.loaded, done.changed, done.unchanged, (*done.held, *held), done.refused)


def _name(key: str, far: Far) -> str:
    """Names this load: the same file that is loaded anew has another name."""
    return hashlib.sha256(f"{key} {far.at}".encode()).hexdigest()
