"""What `domain.derive` derives from things, as SQL, and the joins of lines and of slots that show it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import and_, case, exists, func, literal_column, or_, select

from scanflow.domain.derive import HAVING, ListingState, OrderState, SlotState
from scanflow.domain.life import LIVE, CardState, DoubtKind, LineState, StayState
from scanflow.storage.tables import doubts, items, lines, listings, orders, rounds, slots, stays

OPEN_STAY = and_(stays.c.code == slots.c.code, stays.c.state == literal_column(f"'{StayState.STORED}'"))
"""The stay that is open in a slot. Its state stands in the statement itself: so SQLite can take the partial index."""

SLOT_STATE = case(
    (stays.c.id.is_not(None), SlotState.TAKEN.value),
    (slots.c.card == CardState.LOST, SlotState.RETIRED.value),
    (slots.c.card == CardState.TRAY, SlotState.FREE.value),
    else_=SlotState.DUE.value,
)
"""As `derive.slot_state`, over slots outer joined to their open stay."""

UNSEEN = and_(stays.c.load.is_not(None), slots.c.seen_station.is_(None), stays.c.state == StayState.STORED)
"""As `derive.unseen`, over slots beside their stays."""

UNWANTED = ~exists(literal_column("1")).where(lines.c.stay == stays.c.id, lines.c.state.in_(sorted(LIVE)))
"""No live line wants the stay."""

HELD = and_(
    literal_column("lines.holds") != literal_column("'[]'"),
    lines.c.state.not_in([LineState.CANCELLED, LineState.RETURNED]),
)
"""As `derive.stands_still`."""

TO_SETTLE = or_(HELD, lines.c.state == LineState.UNBOUND)
"""A line that waits for a person: on hold, or bound to nothing."""

TO_FETCH = and_(lines.c.state == LineState.WAITING, ~HELD)
"""As `derive.to_fetch`."""

TO_WALK = and_(TO_FETCH, lines.c.round == rounds.c.id)
"""As `derive.to_walk`, over lines beside rounds."""


def _some(condition: Any) -> Any:
    return func.sum(case((condition, 1), else_=0)) > 0


LINE_AT = {
    OrderState.HELD: TO_SETTLE,
    OrderState.WAITING: lines.c.state.in_([LineState.WAITING, LineState.SHORT]),
    OrderState.PICKING: lines.c.state == LineState.PICKED,
    OrderState.PACKING: lines.c.state == LineState.PACKED,
    OrderState.RELEASED: lines.c.state == LineState.RELEASED,
    OrderState.RETURNED: lines.c.state == LineState.RETURNED,
    OrderState.CANCELLED: lines.c.state == LineState.CANCELLED,
}
"""By which line an order stands there: as `derive.order_state`, the first of these that fits one of its lines."""

ORDER_STATE = case(*((_some(fits), state.value) for state, fits in LINE_AT.items()), else_=OrderState.CANCELLED.value)
"""The state of an order, over its lines."""

LINES = (
    select(
        lines.c.id,
        lines.c.order,
        lines.c.reference,
        lines.c.state,
        lines.c.holds,
        lines.c.basket,
        lines.c.parcel,
        lines.c.stay,
        lines.c.title.label("said"),
        orders.c.number,
        orders.c.ship_by,
        stays.c.code,
        stays.c.turn,
        func.coalesce(items.c.title, lines.c.title).label("title"),
        items.c.notes,
        items.c.packing,
        items.c.photo,
        items.c.away,
        items.c.away_since,
        slots.c.bin,
        slots.c.section,
        UNSEEN.label("unseen"),
        rounds.c.state.label("round_state"),
        lines.c.round,
    )
    .select_from(lines)
    .join(orders, orders.c.id == lines.c.order)
    .outerjoin(stays, stays.c.id == lines.c.stay)
    .outerjoin(items, items.c.id == stays.c.item)
    .outerjoin(slots, slots.c.code == stays.c.code)
    .outerjoin(rounds, rounds.c.id == lines.c.round)
)

OFFERED_AS = (
    select(listings.c.listing)
    .where(listings.c.item == items.c.id, listings.c.ended.is_(None))
    .order_by(listings.c.n)
    .limit(1)
    .scalar_subquery()
    .label("listing")
)
"""As `listings.first`, over items: the id of the first offer that has not ended; None without one."""

OF_ITEM = (*(column for column in items.columns if column.name not in ("n", "id")), OFFERED_AS)
"""All that is told of an item."""

SLOTS = (
    select(
        slots.c.code,
        slots.c.section,
        slots.c.bin,
        slots.c.turns,
        slots.c.card,
        slots.c.seen_station,
        slots.c.seen_place,
        slots.c.seen_accepted,
        slots.c.twin,
        stays.c.id.label("stay"),
        stays.c.turn,
        stays.c.began,
        stays.c.undated,
        UNSEEN.label("unseen"),
        *OF_ITEM,
        SLOT_STATE.label("state"),
    )
    .select_from(slots)
    .outerjoin(stays, OPEN_STAY)
    .outerjoin(items, items.c.id == stays.c.item)
)

BY_URGENCY = (case((orders.c.ship_by.is_(None), 1), else_=0), orders.c.ship_by, orders.c.n)
"""Those to be shipped first come first, those without a date last. Closing days leave this order as it is: what is due
before a closed day is to be shipped before what is due on it (`domain.closing.leave_by`).
"""


def _of_item(table: Any, *conditions: Any) -> Any:
    """Whether there is a row of this table about the thing of a listing."""
    return exists(literal_column("1")).select_from(table).where(table.c.item == listings.c.item, *conditions)


def _had(*conditions: Any) -> Any:
    """Whether a line has the thing of a listing. By its stays, each with its few lines: SQLite would rather walk all
    lines that were ever released.
    """
    line = exists(literal_column("1")).select_from(lines.join(orders, orders.c.id == lines.c.order))
    has_it = line.where(lines.c.stay == stays.c.id, lines.c.state.in_(sorted(HAVING)), *conditions)
    return _of_item(stays, has_it.correlate(stays, listings))


_STORED = _of_item(stays, stays.c.state == literal_column(f"'{StayState.STORED}'")).correlate(listings)
_MISSING = _of_item(doubts, doubts.c.how.is_(None), doubts.c.kind == DoubtKind.MISSING).correlate(listings)
_HAD = _had().correlate(listings)
_SOLD = _had(
    or_(
        and_(orders.c.channel != "", orders.c.channel == listings.c.channel),
        and_(lines.c.listing != "", lines.c.listing == listings.c.listing),
    )
).correlate(listings)


def listing_state(at: datetime) -> Any:
    """As `derive.listing_state` has it at this time, over listings joined to their items."""
    for_sale = and_(_STORED, ~_HAD, or_(items.c.kept_until.is_(None), items.c.kept_until <= at), ~_MISSING)
    return case(
        (or_(listings.c.ended.is_not(None), _SOLD), ListingState.ENDED.value),
        (for_sale, ListingState.UP.value),
        else_=ListingState.TO_TAKE_DOWN.value,
    )
