"""A parcel's shipping label: its own bar code is bound to the parcel, and recognised when the parcel is handed over."""

from __future__ import annotations

import hashlib
from typing import Annotated

from pydantic import Field

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Label, Line, Order, Parcel
from scanflow.workflow.fields import Command, words
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock.cards import bears_name, widths

SHORTEST, LONGEST = 6, 200
"""Characters of what a label's bars say."""

_SHOWN = 4

IN_A_BOX = (LineState.PACKED, LineState.RELEASED)
"""How a line is whose thing is in its parcel."""


class Bind(Command):
    text: Annotated[str, words(LONGEST, least=1), Field(title="The shipping label")]


def bind(unit: Unit, parcel_id: str, said: Bind) -> Label:
    """Let this label be the parcel's: its first use binds it, again on the same parcel nothing changes.

    A parcel may have several, for a label is printed again at times. One whose parcel is not closed any more is free
    for another. Refused: `labels_off` (a setting), `not_closed`, `collected`, `label_taken`. Invalid for what is no
    shipping label.
    """
    if not unit.settings.bind_labels:
        raise Refused("labels_off", "This shop does not bind shipping labels. The settings can switch it on.")
    parcel = must(unit, Parcel, parcel_id)
    written = _compact(unit, said.text)
    known = unit.get(Label, _hash(written))
    if known is not None and not _is_free(unit, known):
        if known.parcel == parcel.id:
            return known
        on = f"This label is on the parcel of {numbers(unit, known.parcel)}."
        raise Refused("label_taken", f"{on} Take the right one, or take this one off that parcel first.")
    if parcel.state is not ParcelState.CLOSED:
        raise Refused("not_closed", "Close the parcel before its label goes on.")
    if is_collected(unit, parcel):
        raise Refused("collected", "The buyer comes for this parcel. It gets no label.")
    label = Label(_hash(written), parcel.id, written[-_SHOWN:])
    if known is None:
        unit.add(label)
    else:
        unit.put(label)
    unit.record(events.LabelBound(parcel=parcel.id, label=label.hash, ends=label.ends))
    return label


def take_off(unit: Unit, parcel_id: str) -> Parcel:
    """Let no label be this parcel's any more, as a wrong one was scanned. Refused: `handed_over`."""
    parcel = must(unit, Parcel, parcel_id)
    if parcel.state is ParcelState.HANDED_OVER:
        raise Refused("handed_over", "This parcel has left with its label.")
    bound = unit.find(Label, parcel=parcel.id)
    for label in bound:
        unit.drop(Label, label.hash)
    if bound:
        unit.record(events.LabelTakenOff(parcel=parcel.id))
    return parcel


def is_collected(unit: Unit, parcel: Parcel) -> bool:
    """Whether a buyer comes for it: one of the orders whose things are in it is collected."""
    inside = {line.order for line in unit.find(Line, parcel=parcel.id) if line.state in IN_A_BOX}
    return any(must(unit, Order, name).collected for name in inside)


def _is_free(unit: Unit, label: Label) -> bool:
    """Whether a bound label may go on another parcel: its own was opened again, and is not closed since."""
    return must(unit, Parcel, label.parcel).state not in (ParcelState.CLOSED, ParcelState.HANDED_OVER)


def parcel_of(unit: Unit, text: str) -> str | None:
    """The closed parcel that bears this label."""
    label = label_of(unit, text)
    return label.parcel if label is not None and not _is_free(unit, label) else None


def label_of(unit: Unit, text: str) -> Label | None:
    """The label whose bars say this, if it is bound to a parcel."""
    return unit.get(Label, _hash(slot_code.compact(text)))


def numbers(unit: Unit, parcel_id: str) -> str:
    """The numbers of the orders of a parcel."""
    return ", ".join(order.number for order in orders_of(unit, must(unit, Parcel, parcel_id)))


def orders_of(unit: Unit, parcel: Parcel) -> tuple[Order, ...]:
    """The orders that a parcel is for."""
    return tuple(must(unit, Order, name) for name in parcel.orders)


def may_be_label(unit: Unit, text: str) -> bool:
    """Whether it says something and is no card, slip, stop or bin of the shop."""
    own = slot_code.is_slip_like(text) or slot_code.is_stop_like(text) or slot_code.is_bin_like(text)
    if own or not text.strip():
        return False
    return not bears_name(unit, text) and not slot_code.is_card_like(text, widths(unit))


def _compact(unit: Unit, text: str) -> str:
    written = slot_code.compact(text)
    if not may_be_label(unit, text):
        raise Invalid("/text", "own_code", "This is a card or a slip of the shop. Scan the shipping label.")
    if len(written) < SHORTEST or not written.isprintable():
        raise Invalid("/text", "bad_text", f"A shipping label says {SHORTEST} to {LONGEST} characters.")
    return written


def _hash(written: str) -> str:
    return hashlib.sha256(written.encode()).hexdigest()
