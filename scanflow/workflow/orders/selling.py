"""Sales that no file brings: at the door, by phone, by mail."""

from __future__ import annotations

from dataclasses import replace
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import LineState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Item, Line, Order, Parcel, Stay
from scanflow.workflow import orders
from scanflow.workflow.fields import LONGEST_NAME, MOST_LINES, Command, Flag, Identity, Maybe, Name, Note, Time, words
from scanflow.workflow.orders import receiving
from scanflow.workflow.ports import Refused, Unit, must
from scanflow.workflow.stock.sightings import gone


class Sell(Command, json_schema_extra={"examples": [{"note": "Comes on Friday", "collected": True}]}):
    number: Maybe[Name] = Field(default=None, description="Without one the order is named for its thing.")
    note: Note = ""
    collected: Annotated[Flag, Field(description="The buyer comes for it: nothing is sent.")] = False


class TakeDown(Sell):
    """An order for several things, as a person takes it down."""

    channel: Annotated[str, words(LONGEST_NAME)] = ""
    ship_by: Maybe[Time] = None
    stays: tuple[Identity, ...] = Field(min_length=1, max_length=MOST_LINES)


def sell(unit: Unit, stay_id: str, said: Sell) -> Order:
    """The order of one thing that was sold here and now."""
    return take_down(unit, TakeDown(stays=(stay_id,), **said.sent()))


def take_down(unit: Unit, said: TakeDown) -> Order:
    """A new order for things in stock that no other order wants; `taken` where its number is another order's."""
    stays = [must(unit, Stay, each) for each in dict.fromkeys(said.stays)]
    for stay in stays:
        orders.check_wanted(unit, stay.id)
    lines = tuple(_asked(unit, stay) for stay in stays)
    number = said.number or f"Sale {lines[0].reference}"
    sold = IncomingOrder(number, said.channel, unit.at.isoformat(), said.ship_by, lines, said.note, said.collected)
    if receiving.numbered(unit, sold):
        if said.number:
            raise Refused("taken", f"There is an order {number} already. Give this one another number.")
        sold = replace(sold, number=receiving.free_number(unit, sold))
    return receiving.receive(unit, sold)[0]


def _asked(unit: Unit, stay: Stay) -> IncomingLine:
    return IncomingLine(slot_code.reference(stay.code, stay.turn), must(unit, Item, stay.item).title)


class SentOrCollected(Command):
    collected: Flag = False


def change_way(unit: Unit, order_id: str, said: SentOrCollected) -> Order:
    """The buyer comes for it after all, or it is sent after all. Refused: `handed_over` once a part of it has left."""
    order = must(unit, Order, order_id)
    boxes = {
        line.parcel for line in unit.find(Line, order=order_id) if line.parcel and line.state is LineState.RELEASED
    }
    if any(gone(unit, must(unit, Parcel, name)) for name in boxes):
        raise Refused("handed_over", "A parcel of this order has left.")
    if order.collected is said.collected:
        return order
    order = replace(order, collected=said.collected)
    unit.put(order)
    unit.record(events.WayChanged(order=order.id, number=order.number, collected=order.collected))
    return order
