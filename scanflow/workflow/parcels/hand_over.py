"""A closed parcel leaves: its slip or its label is scanned a last time, all of a list went, or its buyer came.

A hand-over can't be undone: what left comes back by a return alone.
"""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, replace
from typing import Annotated, Any

from pydantic import Field

from labels import slot_code
from scanflow.domain import advice, events
from scanflow.domain.derive import order_state
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Item, Line, Order, Parcel, Scan, Station, Stay
from scanflow.domain.verdict import Leaving, Reason, may_leave
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of
from scanflow.workflow.fields import LONGEST_NAME, MOST_LINES, Command, Identity, Key, Maybe, words
from scanflow.workflow.parcels import shipping
from scanflow.workflow.picking import scans
from scanflow.workflow.ports import Refused, Unit, must
from scanflow.workflow.stock import photos
from scanflow.workflow.stock.sightings import gone
from scanflow.workflow.times import clock

Carrier = Annotated[str, words(LONGEST_NAME), Field(title="Carrier")]

AT_THE_DOOR = (Station.TABLE, "")
"""Where the scans of hand-overs are kept: no table has an empty name."""

_FIRST = (ParcelState.CLOSED, ParcelState.OPEN, ParcelState.ASIDE, ParcelState.HANDED_OVER, ParcelState.DROPPED)
"""Of an order's parcels its slip names the first that stands so."""


class HandOver(Command, json_schema_extra={"examples": [{"key": "phone-1-000018", "text": "ORD0000017"}]}):
    key: Key
    text: Annotated[str, words(400)] = Field(description="What the parcel's shipping label or slip says.")
    carrier: Maybe[Carrier] = Field(
        default=None, description="Who takes it along, empty if nobody says. A parcel that is collected goes with none."
    )


class AllWent(Command):
    parcels: tuple[Identity, ...] = Field(min_length=1, max_length=MOST_LINES)
    carrier: Carrier = ""


class Collect(Command):
    who: Annotated[str, words(LONGEST_NAME), Field(title="Who collected it")] = ""


@dataclass(frozen=True, slots=True)
class MustStay:
    """A parcel of a list that did not go: the numbers of its orders are in `words`."""

    parcel: str
    reason: Reason
    words: str


def hand_over(unit: Unit, said: HandOver) -> Answer:
    """Let the parcel go that bears this label or slip, if nothing keeps it here; the answer is a scan's.

    A key has one answer, as a scan's has: `key_reused`. A parcel that was handed over before is answered yes.
    """
    text = said.text
    body = _hash(text if said.carrier is None else json.dumps([text, said.carrier]))
    known = scans.earlier(unit, said.key, body)
    if known is not None:
        return known
    parcel, orders = _named(unit, text)
    before = parcel is not None and parcel.state is ParcelState.HANDED_OVER
    leaving = Leaving(bool(orders), parcel)
    if parcel is not None:
        wrong_way = said.carrier is not None and shipping.is_collected(unit, parcel)
        leaving = Leaving(True, parcel, _lines(unit, parcel, text), wrong_way)
    reason = None if before else may_leave(leaving)
    since = clock(parcel.handed, unit.at, unit.settings.zone) if before and parcel and parcel.handed else ""
    if parcel is not None and reason is None and not before:
        parcel = _leave(unit, parcel, handed_by=unit.who, carrier=said.carrier or "")
    answer = _answer(unit, parcel, orders, leaving.lines, reason, since)
    return _keep(unit, said, body, answer)


def all_went(unit: Unit, said: AllWent) -> list[MustStay]:
    """Let all of these parcels go with a carrier, but those that must stay: they are given back, and why.

    One that was handed over before is as it was.
    """
    kept = []
    for name in dict.fromkeys(said.parcels):
        parcel = must(unit, Parcel, name)
        if parcel.state is ParcelState.HANDED_OVER:
            continue
        stays = _by_hand(unit, parcel, "list", carrier=said.carrier)
        kept += [stays] if stays else []
    return kept


def collect(unit: Unit, parcel_id: str, said: Collect) -> Parcel:
    """The buyer takes it along: it is closed, where it is open still, and handed over, as one step.

    `who` stands beside the parcel alone: the ledger does not tell it. Refused: `not_collected`, what `close_parcel`
    refuses, and what must not leave, by its reason.
    """
    parcel = must(unit, Parcel, parcel_id)
    if parcel.state is ParcelState.HANDED_OVER:
        return parcel
    if not shipping.is_collected(unit, parcel):
        raise Refused("not_collected", "Nobody comes for this parcel: it is sent.")
    if parcel.open:
        parcels.close_parcel(unit, parcel_id)
        parcel = must(unit, Parcel, parcel_id)
    stays = _by_hand(unit, parcel, "collected", collected_by=said.who)
    if stays is not None:
        raise Refused(stays.reason, stays.words)
    return must(unit, Parcel, parcel_id)


def _by_hand(unit: Unit, parcel: Parcel, by: str, *, carrier: str = "", collected_by: str = "") -> MustStay | None:
    """Let a parcel go without a scan, or say why it must stay; either is told in the ledger."""
    lines = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    reason = may_leave(Leaving(True, parcel, lines, by == "list" and shipping.is_collected(unit, parcel)))
    if reason is None:
        parcel = _leave(unit, parcel, handed_by=unit.who, carrier=carrier, collected_by=collected_by)
    answer = _answer(unit, parcel, shipping.orders_of(unit, parcel), lines, reason, "")
    _tell(unit, "", by, answer, carrier)
    return MustStay(parcel.id, reason, answer["advice"]) if reason else None


def _hash(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()


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


def _named(unit: Unit, text: str) -> tuple[Parcel | None, tuple[Order, ...]]:
    """The parcel of a label or a slip, and its orders: that of the slip alone while it has no parcel."""
    if slot_code.is_slip_like(text):
        try:
            found = unit.find(Order, slip=slot_code.parse_slip(text))
        except slot_code.CodeError:
            return None, ()
        parcel = _of_slip(unit, found[0], _hash(text)) if found else None
        return parcel, shipping.orders_of(unit, parcel) if parcel else found
    label = shipping.label_of(unit, text)
    parcel = must(unit, Parcel, label.parcel) if label else None
    if parcel is None or parcel.state is ParcelState.DROPPED:
        return None, ()
    return parcel, shipping.orders_of(unit, parcel)


def _of_slip(unit: Unit, order: Order, scanned: str) -> Parcel | None:
    """Of several parts of an order the one that left with this slip a moment ago, else the first that is closed."""
    last = unit.last_scan(*AT_THE_DOOR)
    if (
        last is not None
        and last.stood == json.dumps(scanned)
        and last.at is not None
        and unit.at - last.at <= scans.DOUBLE_BEEP
    ):
        return unit.get(Parcel, last.parcel) if last.parcel else None
    names = dict.fromkeys(line.parcel for line in unit.find(Line, order=order.id) if line.parcel)
    if order.parcel:
        names[order.parcel] = None
    return min((must(unit, Parcel, name) for name in names), key=lambda each: _FIRST.index(each.state), default=None)


def _leave(unit: Unit, parcel: Parcel, **said: Any) -> Parcel:
    left = replace(parcel.after("hand over"), handed=unit.at, **said)
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
        words = advice.must_stay(reason, numbers, kept[0].why if kept else advice.BUYER_COMES)
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


def _keep(unit: Unit, said: HandOver, body: str, answer: Answer) -> Answer:
    """Record it under its key, and in the ledger: there without the label's text, which may lead to a buyer."""
    station, spot = AT_THE_DOOR
    unit.add(
        Scan(
            key=said.key,
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
            stood=json.dumps(_hash(said.text)),
        )
    )
    by = "slip" if slot_code.is_slip_like(said.text) else "label"
    _tell(unit, said.key, by, answer, said.carrier or "")
    return answer


def _tell(unit: Unit, key: str, by: str, answer: Answer, carrier: str) -> None:
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
            carrier=carrier or None,
        )
    )
