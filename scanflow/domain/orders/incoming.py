"""An order as it comes in, from a file or a program, before any of its lines is bound to a stay."""

from dataclasses import dataclass, fields
from typing import Any

from scanflow.domain.things import ChannelStatus


@dataclass(frozen=True, slots=True)
class IncomingLine:
    """One thing asked for: `reference` as written; `bad` says why the line could not be read, None if it could.

    `quantity`: how many are asked for, as written, where it is not one. `status`: what the channel says of this line
    alone, cancelled or sent, where it says otherwise of the rest of its order.
    """

    reference: str
    title: str = ""
    listing: str = ""
    bad: str | None = None
    quantity: str = ""
    status: ChannelStatus | None = None

    @property
    def words(self) -> dict[str, Any]:
        """All that it says of a thing: a field of `Line` each."""
        return {name: getattr(self, name) for name in WORDS}


WORDS = tuple(each.name for each in fields(IncomingLine) if each.name not in ("bad", "status"))


@dataclass(frozen=True, slots=True)
class IncomingOrder:
    """`number` is unique within its channel. Times are ISO 8601 as written: a date, or a time that may lack an offset,
    in which case it is in the shop's zone. `collected`: the buyer comes for it, nothing is sent. `status`: what its
    channel says is to be done with it, None where it says nothing.
    """

    number: str
    channel: str = ""
    ordered_at: str | None = None
    ship_by: str | None = None
    lines: tuple[IncomingLine, ...] = ()
    note: str = ""
    collected: bool = False
    status: ChannelStatus | None = None
