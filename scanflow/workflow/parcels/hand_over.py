"""A closed parcel leaves the house: its slip or its shipping label is scanned a last time."""

from __future__ import annotations

import hashlib
import json
from dataclasses import replace
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain import advice, events
from scanflow.domain.derive import order_state
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Item, Line, Order, Parcel, Scan, Station, Stay
from scanflow.domain.verdict import Leaving, Reason, may_leave
from scanflow.workflow.answers import Answer, answer_of
from scanflow.workflow.fields import Command, Key, words
from scanflow.workflow.parcels import shipping
from scanflow.workflow.picking import scans
from scanflow.workflow.ports import Unit, must
from scanflow.workflow.stock import photos
from scanflow.workflow.stock.sightings import gone
from scanflow.workflow.times import clock

AT_THE_DOOR = (Station.TABLE, "")
"""Where the scans of hand-overs are kept: no table has an empty name."""

_FIRST = (ParcelState.CLOSED, ParcelState.OPEN, ParcelState.ASIDE, ParcelState.HANDED_OVER, ParcelState.DROPPED)
"""Of an order's parcels its slip names the first that stands so."""


class HandOver(Command, json_schema_extra={"examples": [{"key": "phone-1-000018", "text": "ORD0000017"}]}):
    key: Key
    text: Annotated[str, words(400)] = Field(description="What the parcel's shipping label or slip says.")


def hand_over(unit: Unit, said: HandOver) -> Answer:
    """Let the parcel go that bears this label or slip, if nothing keeps it here; the answer is a scan's.

    A key has one answer, as a scan's has: `key_reused`. A parcel that was handed over before is answered yes.
    """
    key, text = said.key, said.text
    body = hashlib.sha256(text.encode()).hexdigest()
    known = scans.earlier(unit, key, body)
    if known is not None:
        return known
    parcel, orders = _named(unit, text, body)
    before = parcel is not None and parcel.state is ParcelState.HANDED_OVER
    leaving = Leaving(bool(orders), parcel, _lines(unit, parcel, text) if parcel else ())
    reason = None if before else may_leave(leaving)
    since = clock(parcel.handed, unit.at, unit.settings.zone) if before and parcel and parcel.handed else ""
    if parcel is not None and reason is None and not before:
        parcel = _leave(unit, parcel)
    answer = _answer(unit, parcel, orders, leaving.lines, reason, since)
    return _keep(unit, key, body, text, answer)


def _lines(unit: Unit, parcel: Parcel, text: str) -> tuple[Line, ...]:
    """The lines in it, and by a slip what is held in other parts of its orders: which part it is, no slip says."""
    lines = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    if not lines or parcel.state is ParcelState.HANDED_OVER or not slot_code.is_slip_like(text):
        return lines
    released = [line for name in parcel.orders for line in unit.find(Line, order=name, state=LineState.RELEASED)]
    return (*lines, *(line for line in released if line.holds and line.parcel != parcel.id))


def begin(unit: Unit) -> None:
    """From now on hand-overs are recorded: what counts as gone by its days is handed over."""
    past = [parcel for parcel in unit.find(Parcel, state=ParcelState.CLOSED) if gone(unit, parcel)]
    for parcel in past:
        _leave(unit, parcel)
    if past:
        unit.record(events.CountedAsGone(parcels=tuple(parcel.id for parcel in past)))


def _named(unit: Unit, text: str, body: str) -> tuple[Parcel | None, tuple[Order, ...]]:
    """The parcel of a label or a slip, and its orders: that of the slip alone while it has no parcel."""
    if slot_code.is_slip_like(text):
        try:
            found = unit.find(Order, slip=slot_code.parse_slip(text))
        except slot_code.CodeError:
            return None, ()
        parcel = _of_slip(unit, found[0], body) if found else None
        return parcel, shipping.orders_of(unit, parcel) if parcel else found
    label = shipping.label_of(unit, text)
    parcel = must(unit, Parcel, label.parcel) if label else None
    if parcel is None or parcel.state is ParcelState.DROPPED:
        return None, ()
    return parcel, shipping.orders_of(unit, parcel)


def _of_slip(unit: Unit, order: Order, body: str) -> Parcel | None:
    """Of several parts of an order the one that left with this slip a moment ago, else the first that is closed."""
    last = unit.last_scan(*AT_THE_DOOR)
    if last is not None and last.body == body and last.at is not None and unit.at - last.at <= scans.DOUBLE_BEEP:
        return unit.get(Parcel, last.parcel) if last.parcel else None
    names = dict.fromkeys(line.parcel for line in unit.find(Line, order=order.id) if line.parcel)
    if order.parcel:
        names[order.parcel] = None
    return min((must(unit, Parcel, name) for name in names), key=lambda each: _FIRST.index(each.state), default=None)


def _leave(unit: Unit, parcel: Parcel) -> Parcel:
    left = replace(parcel.after("hand over"), handed=unit.at)
    unit.put(left)
    return left


def _answer(
    unit: Unit,
    parcel: Parcel | None,
    orders: tuple[Order, ...],
    lines: tuple[Line, ...],
    reason: Reason | None,
    since: str,
) -> Answer:
    """With the thing that keeps the parcel here, if one does."""
    numbers = ", ".join(order.number for order in orders)
    kept = [line for line in lines if line.holds] if reason in (Reason.CANCELLED, Reason.HELD) else []
    stay = must(unit, Stay, kept[0].stay or "") if kept else None
    item = must(unit, Item, stay.item) if stay else None
    order = orders[0] if orders else None
    if reason is None:
        words = advice.handed_over(numbers, len(lines), since)
    else:
        words = advice.must_stay(reason, numbers, kept[0].why if kept else "")
    return answer_of(
        reason,
        words,
        changed=reason is None and not since,
        code=stay.code if stay else None,
        title=item.title if item else None,
        photo=photos.address(stay, item) if stay else None,
        order=order,
        order_state=order_state(unit.find(Line, order=order.id)) if order else None,
        line=kept[0] if kept else None,
        parcel=parcel,
    )


def _keep(unit: Unit, key: str, body: str, text: str, answer: Answer) -> Answer:
    """Record it under its key, and in the ledger: there without the label's text, which may lead to a buyer."""
    station, spot = AT_THE_DOOR
    unit.add(
        Scan(
            key=key,
            body=body,
            station=station,
            spot=spot,
            code=None,
            take_out=False,
            accepted=answer["verdict"] == "accepted",
            changed=answer["changed"],
            line=None,
            parcel=answer["parcel"],
            answer=json.dumps(answer),
            at=unit.at,
        )
    )
    by = "slip" if slot_code.is_slip_like(text) else "label"
    unit.record(
        events.HandedOver(
            key=key,
            by=by,
            verdict=answer["verdict"],
            reason=answer["reason"],
            changed=answer["changed"],
            order_number=answer["order_number"],
            line=answer["line"],
            parcel=answer["parcel"],
            parcel_state=answer["parcel_state"],
        )
    )
    return answer
