"""What comes back of an order. `Returned` of `stock` tells where a thing is put away again."""

from __future__ import annotations

from scanflow.domain.events.kinds import Event, LineId, OrderId, ReturnId, event


@event("return expected", moves=())
class ReturnExpected(Event):
    """`order` is None of a parcel that nobody expects; what of it is ours its check says."""

    return_: ReturnId
    order: OrderId | None
    lines: tuple[LineId, ...]
    why: str
    until: str | None


@event("return arrived", moves=())
class ReturnArrived(Event):
    return_: ReturnId


@event("return not arrived", moves=())
class ReturnNotArrived(Event):
    """Somebody had said so by mistake: it is expected still."""

    return_: ReturnId


@event("return checked", moves=())
class ReturnChecked(Event):
    """How one thing of it was found."""

    return_: ReturnId
    line: LineId
    condition: str


@event("return given up", moves=())
class ReturnGivenUp(Event):
    """`never_ours`: what became of a thing that was not this shop's; None where nothing came."""

    return_: ReturnId
    never_ours: str | None
