"""Where orders come from: what the words of a channel's files mean, and whether a file lists all open orders."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Annotated

from pydantic import Field

from scanflow.domain import events
from scanflow.domain.things import Channel, ChannelStatus, Listing, Order, status_key
from scanflow.workflow.fields import LONGEST_NAME, Command, Flag, Maybe, Name, words
from scanflow.workflow.ports import Unit

MOST_STATUSES = 200


class SayChannel(
    Command,
    json_schema_extra={"examples": [{"name": "fair", "statuses": {"Paid": "pack", "Not paid yet": "aside"}}]},
):
    """What is not said stays as it is."""

    name: Name
    statuses: Mapping[Annotated[str, words(LONGEST_NAME, least=1)], ChannelStatus] = Field(
        default={}, max_length=MOST_STATUSES, description="What each value of its status column means."
    )
    complete: Maybe[Flag] = Field(default=None, description="Whether its file lists all of its open orders.")


class Claim(Command):
    name: Name


def say(unit: Unit, said: SayChannel) -> tuple[Channel, bool]:
    """The channel as it is now, and whether it is new. What its statuses meant before for orders that are here stays
    done.
    """
    name = " ".join(said.name.split())
    before = unit.get(Channel, name)
    old = before or Channel(name, {})
    anew = {status_key(value) for value in said.statuses}
    kept = {value: meant for value, meant in old.statuses.items() if status_key(value) not in anew}
    statuses = {**kept, **said.statuses}
    channel = Channel(name, statuses, old.complete if said.complete is None else said.complete)
    if before is None:
        unit.add(channel)
    elif channel != before:
        unit.put(channel)
    if channel != before:
        told = {value: str(meant) for value, meant in statuses.items()}
        unit.record(events.ChannelChanged(channel=name, statuses=told, complete=channel.complete))
    return channel, before is None


def claim(unit: Unit, name: str) -> int:
    """The orders and listings that named no channel are of this one. How many orders; one whose number the channel has
    already stays as it is.
    """
    found = [order for order in unit.find(Order, channel="") if not unit.find(Order, number=order.number, channel=name)]
    for order in found:
        unit.put(replace(order, channel=name))
    offers = [each for each in unit.find(Listing, channel="") if _is_new_there(unit, each, name)]
    for offer in offers:
        unit.put(replace(offer, channel=name))
    if found or offers:
        told = tuple(order.id for order in found)
        unit.record(events.OrdersOfChannel(channel=name, orders=told, listings=len(offers)))
    return len(found)


def _is_new_there(unit: Unit, offer: Listing, channel: str) -> bool:
    return not unit.find(Listing, item=offer.item, channel=channel, listing=offer.listing)
