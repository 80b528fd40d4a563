"""What a table does with the box that it closed last: its shipping label goes on, or its buyer takes it along."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from scanflow.domain import events
from scanflow.domain.derive import order_state
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Item, Label, Line, Order, Parcel, Stay
from scanflow.domain.verdict import Reason
from scanflow.workflow import parcels
from scanflow.workflow.answers import Answer, answer_of
from scanflow.workflow.parcels import shipping
from scanflow.workflow.parcels.shipping import is_collected
from scanflow.workflow.ports import Invalid, Refused, Unit, must
from scanflow.workflow.stock import photos
from scanflow.workflow.stock.sightings import gone

MANY = "More than one code is in view. Show the label's own code alone."


def unfinished(unit: Unit, table: str) -> Parcel | None:
    """The parcel that this table closed last, while it is here and waits for its label or its buyer.

    None as soon as another is open at the table, or somebody said that it is done later.
    """
    parcel = unit.last_closed(table)
    if parcel is None or parcel.later or parcels.open_parcel_at(unit, table) is not None:
        return None
    here = parcel.state is ParcelState.CLOSED and not gone(unit, parcel)
    if not here or not unit.find(Line, parcel=parcel.id, state=LineState.RELEASED):
        return None
    return parcel if is_collected(unit, parcel) or _wants_label(unit, parcel) else None


def _wants_label(unit: Unit, parcel: Parcel) -> bool:
    return unit.settings.bind_labels and not unit.find(Label, parcel=parcel.id)


def go_on(unit: Unit, parcel_id: str) -> Parcel:
    """Let its table go on: the label is bound, or the parcel collected, later on the hand-over's page."""
    parcel = must(unit, Parcel, parcel_id)
    if parcel.later or parcel.state is not ParcelState.CLOSED:
        return parcel
    parcel = replace(parcel, later=True)
    unit.put(parcel)
    unit.record(events.LeftForLater(parcel=parcel.id))
    return parcel


def scan_label(unit: Unit, table: str, texts: Sequence[str], read: datetime) -> Answer | None:
    """The answer to what was read at a table and is neither a card nor a slip: its parcel gets it as its label.

    None where no parcel of the table waits for one, where that closed after this was `read`, or where this can be no
    label. Scanned again, it changes nothing.
    """
    codes = [text for text in dict.fromkeys(texts) if shipping.may_be_label(unit, text)]
    if not unit.settings.bind_labels or not codes:
        return None
    parcel = unfinished(unit, table)
    if parcel is None or is_collected(unit, parcel):
        return _again(unit, table, codes)
    if parcel.closed is not None and parcel.closed > read:
        return None
    if len(codes) > 1:
        return _answer(unit, parcel, Reason.MANY_CODES, MANY)
    try:
        label = shipping.bind(unit, parcel.id, shipping.Bind(text=codes[0]))
    except Invalid:
        return None
    except Refused as refused:
        return _answer(unit, parcel, Reason.OTHER_ORDER, refused.detail)
    return _answer(unit, parcel, None, f"Label …{label.ends} is on the parcel of {_numbers(unit, parcel)}.", True)


def _again(unit: Unit, table: str, codes: Sequence[str]) -> Answer | None:
    """A second beep of the label of the parcel that the table closed last."""
    parcel = unit.last_closed(table)
    if parcel is None or len(codes) > 1 or parcels.open_parcel_at(unit, table) is not None:
        return None
    label = shipping.label_of(unit, codes[0])
    if label is None or label.parcel != parcel.id:
        return None
    return _answer(unit, parcel, None, f"This label is on the parcel of {_numbers(unit, parcel)}.")


def _numbers(unit: Unit, parcel: Parcel) -> str:
    return shipping.numbers(unit, parcel.id)


def _answer(unit: Unit, parcel: Parcel, reason: Reason | None, words: str, changed: bool = False) -> Answer:
    """With the first thing in it, for the eye to compare."""
    order = must(unit, Order, parcel.orders[0])
    inside = unit.find(Line, parcel=parcel.id, state=LineState.RELEASED)
    stay = must(unit, Stay, inside[0].stay or "") if inside else None
    item = must(unit, Item, stay.item) if stay else None
    return answer_of(
        reason,
        words,
        changed=changed,
        title=item.title if item else None,
        photo=photos.address(stay, item),
        order=order,
        order_state=order_state(unit.find(Line, order=order.id)),
        parcel=parcel,
    )
