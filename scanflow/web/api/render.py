"""Things and rows as the API shows them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import Any, overload

from labels import slot_code
from scanflow.domain.derive import SlotState, order_state
from scanflow.domain.offered import Difference
from scanflow.domain.orders.loaded import RefusedRow
from scanflow.domain.things import (
    CheckedThing,
    Doubt,
    Item,
    Line,
    Listing,
    Order,
    Parcel,
    Return,
    Round,
    Section,
    Slot,
    Stay,
)
from scanflow.domain.whereabouts import Whereabouts, bin_of_stop
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import listings as listing_views
from scanflow.storage.views import lists
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import picking as picking_views
from scanflow.storage.views import where as where_views
from scanflow.web.api import given
from scanflow.workflow.picking.rounds import LeftOut
from scanflow.workflow.ports import must
from scanflow.workflow.stock import WORDS, listings, photos


@overload
def time(when: datetime) -> str: ...
@overload
def time(when: datetime | None) -> str | None: ...
def time(when: datetime | None) -> str | None:
    return None if when is None else when.isoformat()


def sections(unit: SqlUnit, shown: Sequence[Section | Any]) -> list[given.Section]:
    """Sections, or rows of them, with their slots counted."""
    counts = lists.slot_counts(unit.connection, [each.code for each in shown])
    return [
        {
            "code": each.code,
            "name": each.name,
            "slots_per_bin": each.slots_per_bin,
            "colour": each.colour,
            "digits": each.digits,
            "slots": _slots(counts[each.code]),
        }
        for each in shown
    ]


def _slots(counted: Mapping[SlotState, int]) -> given.Slots:
    return {
        "free": counted[SlotState.FREE],
        "taken": counted[SlotState.TAKEN],
        "due": counted[SlotState.DUE],
        "retired": counted[SlotState.RETIRED],
    }


def slot(row: Any) -> given.Slot:
    return {
        "code": row.code,
        "section": row.section,
        "state": row.state,
        "bin": row.bin,
        "stay": row.stay,
        "card": row.card,
    }


def stay(unit: SqlUnit, stay: Stay) -> given.Stay:
    item = must(unit, Item, stay.item)
    told: Any = {name: getattr(item, name) for name in WORDS}
    return {
        "id": stay.id,
        "item": stay.item,
        "code": stay.code,
        "turn": stay.turn,
        "reference": slot_code.reference(stay.code, stay.turn),
        "bin": must(unit, Slot, stay.code).bin,
        "state": stay.state,
        **told,
        "listing": listings.first(unit, item.id),
        "photo": photos.address(stay, item),
    }


def listing(row: Any) -> given.Listing:
    """Of a row of `storage.views.listings`."""
    return {
        "id": row.id,
        "channel": row.channel,
        "listing": row.listing,
        "stay": row.stay,
        "code": row.code,
        "title": row.title,
        "state": row.state,
        "since": time(row.since),
    }


def one_listing(unit: SqlUnit, listing_: Listing) -> given.Listing:
    return listing(listing_views.one(unit.connection, listing_.id, unit.at))


def difference(shown: Difference) -> given.Difference:
    return {
        "kind": shown.kind,
        "why": shown.why,
        "row": shown.row,
        "reference": shown.reference,
        "listing": shown.listing,
        "title": shown.title,
        "stay": shown.stay,
        "code": shown.code,
        "correct": shown.correct,
    }


def line(row: Any) -> given.Line:
    """Of a row of a line, as `storage.derived.LINES` has it."""
    return {
        "id": row.id,
        "reference": row.reference,
        "code": row.code,
        "stay": row.stay,
        "title": row.said or row.title,
        "state": row.state,
        "hold": row.holds[0].hold if row.holds else None,
        "why": row.holds[0].why if row.holds else "",
        "holds": [{"hold": each.hold, "why": each.why} for each in row.holds],
    }


def one_line(unit: SqlUnit, line_: Line) -> given.Line:
    return line(order_views.line(unit.connection, line_.id))


def orders(unit: SqlUnit, shown: Sequence[Order | Any]) -> list[given.Order]:
    """Orders, or rows of them, with their lines."""
    lines = order_views.lines_by_order(unit.connection, [each.id for each in shown])
    return [
        {
            "id": each.id,
            "number": each.number,
            "channel": each.channel,
            "state": order_state(lines[each.id]),
            "ordered_at": time(each.ordered_at),
            "ship_by": time(each.ship_by),
            "slip": slot_code.slip_text(each.slip),
            "note": each.note,
            "collected": each.collected,
            "lines": [line(row) for row in lines[each.id]],
        }
        for each in shown
    ]


def order(unit: SqlUnit, order_: Order) -> given.Order:
    return orders(unit, [order_])[0]


def round_(unit: SqlUnit, shown: Round, left_out: Iterable[LeftOut] = ()) -> given.Round:
    """`left_out` is known only when the round is opened."""
    stops = picking_views.round_stops(unit.connection, shown.id)
    where = where_views.whereabouts_of(unit.connection, [row.code for row in stops])
    return {
        "id": shown.id,
        "state": shown.state,
        "stops": [_stop(row, where.get(row.code)) for row in stops],
        "left_out": [{"order": each.order, "why": each.why} for each in left_out],
    }


def _stop(row: Any, where: Whereabouts | None) -> given.Stop:
    return {
        "bin": bin_of_stop(row.here, row.state, where),
        "code": row.code,
        "title": row.title,
        "photo": photos.address_of(row.stay, row.photo),
        "order": row.order,
        "line": row.id,
        "basket": row.basket,
        "state": row.state,
    }


def doubt(shown: Doubt) -> given.Doubt:
    return {
        "id": shown.id,
        "kind": shown.kind,
        "words": shown.words,
        "since": time(shown.since),
        "by": shown.by,
    }


def settled(shown: Doubt) -> given.SettledDoubt:
    assert shown.how is not None
    assert shown.ended is not None
    return {**doubt(shown), "how": shown.how, "ended": time(shown.ended)}


def parcel(unit: SqlUnit, shown: Parcel) -> given.Parcel:
    lines = order_views.lines_by_order(unit.connection, shown.orders)
    return {
        "id": shown.id,
        "state": shown.state,
        "table": shown.table,
        "slip": slot_code.slip_text(must(unit, Order, shown.orders[0]).slip),
        "orders": list(shown.orders),
        "lines": [{**line(row), "parcel": row.parcel} for name in shown.orders for row in lines[name]],
    }


def returned(unit: SqlUnit, shown: Return) -> given.Return:
    checks = {each.line: each for each in shown.checks}
    never_ours = checks.get(None)
    rows = {row.id: row for row in order_views.lines_by_id(unit.connection, shown.lines)}
    return {
        "id": shown.id,
        "order": shown.order,
        "state": shown.state,
        "why": shown.why,
        "until": time(shown.until),
        "opened": time(shown.opened),
        "arrived": time(shown.arrived),
        "checked": time(shown.checked),
        "never_ours": never_ours.condition if never_ours else None,
        "lines": [_line_of_return(rows[name], checks.get(name)) for name in shown.lines],
    }


def _line_of_return(row: Any, check: CheckedThing | None) -> given.LineOfReturn:
    return {
        **line(row),
        "condition": check.condition if check else None,
        "standing": check.stay if check else None,
    }


def refused_row(row: RefusedRow) -> given.RefusedRow:
    return {"row": row.row, "code": row.code, "text": row.text}
