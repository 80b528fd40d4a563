"""Boxes from the packing table to the door."""

from __future__ import annotations

from dataclasses import field

from scanflow.domain.events.kinds import LEFT_OUT, Event, LineId, OrderId, ParcelId, SlotCode, event


@event("parcel opened", moves=())
class ParcelOpened(Event):
    parcel: ParcelId
    table: str
    orders: tuple[OrderId, ...]


@event("parcel joined", moves=())
class ParcelJoined(Event):
    """Another order goes into the open box too."""

    parcel: ParcelId
    order: OrderId


@event("parcel parted", moves=())
class ParcelParted(Event):
    """An order of which nothing lay in the box gets one of its own."""

    parcel: ParcelId
    order: OrderId


@event("parcel resumed", moves=())
class ParcelResumed(Event):
    parcel: ParcelId
    table: str


@event("parcel dropped", moves=())
class ParcelDropped(Event):
    parcel: ParcelId


@event("parcel set aside", moves=())
class ParcelSetAside(Event):
    parcel: ParcelId


@event("parcel closed", moves=("released",))
class ParcelClosed(Event):
    """`released`: the slots whose cards are due back."""

    parcel: ParcelId
    orders: tuple[OrderId, ...]
    released: tuple[SlotCode, ...]


@event("parcel reopened", moves=("orders",))
class ParcelReopened(Event):
    """Its things are stored again: which ones, only their orders say."""

    parcel: ParcelId
    orders: tuple[OrderId, ...]


@event("label bound", moves=())
class LabelBound(Event):
    parcel: ParcelId
    label: str
    ends: str


@event("label taken off", moves=())
class LabelTakenOff(Event):
    """No label is this parcel's any more."""

    parcel: ParcelId


@event("left for later", moves=())
class LeftForLater(Event):
    """The table goes on, and the parcel gets its label, or its buyer, later."""

    parcel: ParcelId


@event("counted as gone", moves=())
class CountedAsGone(Event):
    """Parcels that were closed some days ago, when the shop began to record hand-overs."""

    parcels: tuple[ParcelId, ...]


@event("hand-over", moves=())
class HandedOver(Event):
    """`by` is what was scanned: the parcel's slip or its label; or else `list`, when a person said that all of a list
    went, or `collected`, when its buyer took it along. Those two have no key.
    """

    key: str
    by: str
    verdict: str
    reason: str | None
    changed: bool
    order_number: str | None
    line: LineId | None
    parcel: ParcelId | None
    parcel_state: str | None
    carrier: str | None = field(default=None, metadata=LEFT_OUT)
