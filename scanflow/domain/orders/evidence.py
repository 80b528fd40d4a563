"""What the ledger says of one order: which of its entries are about it, and what they say was done, when, by whom."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import NamedTuple

from scanflow.domain import events
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Station


class AccountEntry(NamedTuple):
    """An entry of the ledger with its hash."""

    seq: int
    at: datetime
    actor: str
    event: events.Told
    hash: str


class Deed(NamedTuple):
    """Something that was done, in a word or two, and the entry that says so."""

    name: str
    entry: AccountEntry


_PACKED = frozenset({LineState.PACKED, LineState.RELEASED, LineState.RETURNED})
_STEPS = (("Picked", Station.BIN, _PACKED | {LineState.PICKED}), ("Packed", Station.TABLE, _PACKED))
"""What is done with a thing, at which station, and in which states of its line it still counts as done."""

_SHUT = frozenset({ParcelState.CLOSED, ParcelState.HANDED_OVER})


def parcels_of(order: str, lines: Iterable[Line], entries: Iterable[AccountEntry]) -> set[str]:
    """The parcels that were the order's, by its lines and by the entries that name it."""
    found = {line.parcel for line in lines if line.parcel is not None}
    for entry in entries:
        match entry.event:
            case events.ParcelOpened(parcel=parcel, orders=orders) if order in orders:
                found.add(parcel)
            case events.ParcelJoined(parcel=parcel, order=joined) if joined == order:
                found.add(parcel)
            case events.ParcelParted(parcel=parcel, order=parted) if parted == order:
                found.discard(parcel)
    return found


def done_with(line: Line, entries: Sequence[AccountEntry]) -> list[Deed]:
    """How a line's thing came into its parcel, as far as that still stands: what was taken back was not done."""
    found = []
    for name, station, states in _STEPS:
        if line.state in states:
            found += _last(name, [each for each in entries if _stepped(each.event, line.id, station)])
    return found


def _stepped(event: events.Told, line: str, station: Station) -> bool:
    if not isinstance(event, events.Scanned) or event.take_out:
        return False
    return event.accepted and event.changed and (event.line, event.station) == (line, station)


def done_to(parcel: Parcel, labels: Iterable[str], entries: Sequence[AccountEntry]) -> list[Deed]:
    """How a parcel was closed, labelled and handed over, while it is closed. `labels`: the ends of those it bears."""
    if parcel.state not in _SHUT:
        return []
    mine = [each for each in entries if _about(each.event, parcel.id)]
    found = _last("Closed", [each for each in mine if isinstance(each.event, events.ParcelClosed)])
    for ends in labels:
        bound = [each for each in mine if isinstance(each.event, events.LabelBound) and each.event.ends == ends]
        found += _last(f"Label …{ends} bound", bound)
    if parcel.state is ParcelState.HANDED_OVER:
        found += _last("Handed over", [each for each in mine if _left(each.event)])
    return found


def _about(event: events.Told, parcel: str) -> bool:
    return any(named.name == parcel for named in event.about())


def _left(event: events.Told) -> bool:
    if isinstance(event, events.HandedOver):
        return event.verdict == "accepted" and event.changed
    return isinstance(event, events.CountedAsGone)


def _last(name: str, entries: Sequence[AccountEntry]) -> list[Deed]:
    return [Deed(name, each) for each in entries[-1:]]
