"""Rows for pages, read-only: what a person wants to see at once. No domain objects, no decisions."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, Row, and_, case, exists, func, literal_column, or_, select

from scanflow.domain.derive import OrderState, SlotState
from scanflow.domain.life import LIVE, CardState, LineState, ParcelState, RoundState, StayState
from scanflow.domain.things import Station
from scanflow.storage.tables import (
    bins,
    items,
    labels,
    lines,
    orders,
    parcels,
    racks,
    rounds,
    sections,
    slots,
    stays,
    stops,
)

Rows = Sequence[Row[Any]]

_LIVE = sorted(LIVE)
_OPEN_STAY = and_(stays.c.code == slots.c.code, stays.c.state == StayState.STORED)
_STANDS_IN = case((slots.c.seen_station == Station.SHELF, slots.c.seen_place), else_=slots.c.bin).label("bin")
"""As `derive.stands_in`."""

_SLOT_STATE = case(
    (stays.c.id.is_not(None), SlotState.TAKEN.value),
    (slots.c.card == CardState.LOST, SlotState.RETIRED.value),
    (slots.c.card == CardState.TRAY, SlotState.FREE.value),
    else_=SlotState.DUE.value,
)
"""As `derive.slot_state`, over slots outer joined to their open stay."""

_AWAY = and_(
    stays.c.id.is_not(None),
    or_(
        and_(slots.c.seen_station == Station.BIN, slots.c.seen_accepted.is_(True)),
        slots.c.seen_station == Station.TABLE,
        and_(slots.c.seen_station == Station.SHELF, slots.c.seen_place != slots.c.bin),
    ),
    ~exists(literal_column("1")).where(lines.c.stay == stays.c.id, lines.c.state.in_(_LIVE)),
)
"""As `derive.must_go_back`: a put-back duty."""


def _some(condition: Any) -> Any:
    return func.sum(case((condition, 1), else_=0)) > 0


_ORDER_STATE = case(
    (_some(or_(lines.c.state == LineState.UNBOUND, lines.c.hold.is_not(None))), OrderState.HELD.value),
    (_some(lines.c.state.in_([LineState.WAITING, LineState.SHORT])), OrderState.WAITING.value),
    (_some(lines.c.state == LineState.PICKED), OrderState.PICKING.value),
    (_some(lines.c.state == LineState.PACKED), OrderState.PACKING.value),
    (_some(lines.c.state == LineState.RELEASED), OrderState.RELEASED.value),
    (_some(lines.c.state == LineState.RETURNED), OrderState.RETURNED.value),
    else_=OrderState.CANCELLED.value,
)
"""As `derive.order_state`, over an order's lines."""

_LINES = (
    select(
        lines.c.id,
        lines.c.order,
        lines.c.reference,
        lines.c.state,
        lines.c.hold,
        lines.c.why,
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
        items.c.photo,
        _STANDS_IN,
        slots.c.section,
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

_SLOTS = (
    select(
        slots.c.code,
        slots.c.section,
        slots.c.bin,
        slots.c.turns,
        slots.c.card,
        slots.c.seen_station,
        slots.c.seen_place,
        slots.c.seen_accepted,
        stays.c.id.label("stay"),
        stays.c.turn,
        stays.c.began,
        items.c.title,
        items.c.listing,
        items.c.notes,
        items.c.photo,
        _SLOT_STATE.label("state"),
        _AWAY.label("away"),
    )
    .select_from(slots)
    .outerjoin(stays, _OPEN_STAY)
    .outerjoin(items, items.c.id == stays.c.item)
)
_BY_URGENCY = (case((orders.c.ship_by.is_(None), 1), else_=0), orders.c.ship_by, orders.c.n)


def papers(connection: Connection) -> dict[str, tuple[str, str]]:
    """Colour and name of each section, by its letters."""
    rows = connection.execute(select(sections.c.code, sections.c.colour, sections.c.name).order_by(sections.c.n))
    return {row.code: (row.colour, row.name) for row in rows}


def counts(connection: Connection) -> dict[str, int]:
    """How much of each duty there is: lines that wait, walk, are picked, short or held; cards; things to put back."""
    on_round = exists(literal_column("1")).where(rounds.c.id == lines.c.round, rounds.c.state == RoundState.OPEN)
    free = lines.c.hold.is_(None)
    kinds = {
        "waiting": and_(lines.c.state == LineState.WAITING, free, ~on_round),
        "walking": and_(lines.c.state == LineState.WAITING, free, on_round),
        "picked": and_(lines.c.state == LineState.PICKED, free),
        "short": lines.c.state == LineState.SHORT,
        "held": held(),
    }
    found = {name: _count(connection, lines, condition) for name, condition in kinds.items()}
    found["due"] = _count(connection, slots, slots.c.card == CardState.DUE)
    found["away"] = connection.execute(_counting(_SLOTS.where(_AWAY))).scalar_one()
    found["stored"] = _count(connection, stays, stays.c.state == StayState.STORED)
    found["slots"] = _count(connection, slots, literal_column("1") == 1)
    return found


def held() -> Any:
    """The condition of lines that wait for a person: on hold, or bound to nothing."""
    return or_(lines.c.hold.is_not(None), lines.c.state == LineState.UNBOUND)


def _count(connection: Connection, table: Any, condition: Any) -> int:
    return connection.execute(select(func.count()).select_from(table).where(condition)).scalar_one()


def _counting(query: Any) -> Any:
    return select(func.count()).select_from(query.subquery())


def held_lines(connection: Connection, limit: int) -> Rows:
    return connection.execute(_LINES.where(held()).order_by(*_BY_URGENCY, lines.c.position).limit(limit)).all()


def short_lines(connection: Connection, limit: int) -> Rows:
    query = _LINES.where(lines.c.state == LineState.SHORT, lines.c.hold.is_(None))
    return connection.execute(query.order_by(*_BY_URGENCY, lines.c.position).limit(limit)).all()


def order_list(connection: Connection, states: Sequence[str], skip: int, limit: int) -> Rows:
    """Orders in these states (all where there are none), the most urgent first; of all orders the newest first."""
    query = (
        select(
            orders.c.id,
            orders.c.number,
            orders.c.channel,
            orders.c.received,
            orders.c.ship_by,
            func.count(lines.c.id).label("things"),
            _ORDER_STATE.label("state"),
        )
        .join(lines, lines.c.order == orders.c.id, isouter=True)
        .group_by(orders.c.id, orders.c.n, orders.c.number, orders.c.channel, orders.c.received, orders.c.ship_by)
    )
    if states:
        query = query.having(_ORDER_STATE.in_(states)).order_by(*_BY_URGENCY)
    else:
        query = query.order_by(orders.c.n.desc())
    return connection.execute(query.offset(skip).limit(limit)).all()


def order_counts(connection: Connection) -> dict[str, int]:
    """How many orders stand in each state."""
    each = select(_ORDER_STATE.label("state")).group_by(lines.c.order).subquery()
    return {row[0]: row[1] for row in connection.execute(select(each.c.state, func.count()).group_by(each.c.state))}


def order_state(connection: Connection, order_id: str) -> str:
    return connection.execute(select(_ORDER_STATE).where(lines.c.order == order_id)).scalar_one()


def order_lines(connection: Connection, *order_ids: str) -> Rows:
    query = _LINES.where(lines.c.order.in_(order_ids)).order_by(orders.c.n, lines.c.position)
    return connection.execute(query).all()


def line(connection: Connection, line_id: str) -> Row[Any] | None:
    return connection.execute(_LINES.where(lines.c.id == line_id)).one_or_none()


def lines_by_id(connection: Connection, line_ids: Sequence[str]) -> Rows:
    return connection.execute(_LINES.where(lines.c.id.in_(line_ids)).order_by(*_BY_URGENCY, lines.c.position)).all()


def numbers(connection: Connection, order_ids: Sequence[str]) -> Rows:
    """Id, number and slip of these orders."""
    query = select(orders.c.id, orders.c.number, orders.c.slip, orders.c.ship_by)
    return connection.execute(query.where(orders.c.id.in_(order_ids)).order_by(orders.c.n)).all()


def slot_list(
    connection: Connection, *, section: str = "", state: str = "", skip: int = 0, limit: int = 100, bin_: str = ""
) -> Rows:
    """Slots in the order of their codes; `state` is a `SlotState` or `away` for things that must go back."""
    query = _slots_like(section, state).order_by(slots.c.section, slots.c.number)
    if bin_:
        query = query.where(slots.c.bin == bin_)
    return connection.execute(query.offset(skip).limit(limit)).all()


def slot_count(connection: Connection, section: str, state: str) -> int:
    """How many slots `slot_list` has in all."""
    return connection.execute(_counting(_slots_like(section, state))).scalar_one()


def _slots_like(section: str, state: str) -> Any:
    query = _SLOTS
    if section:
        query = query.where(slots.c.section == section)
    if state:
        query = query.where(_AWAY if state == "away" else _SLOT_STATE == state)
    return query


def slot(connection: Connection, code: str) -> Row[Any] | None:
    return connection.execute(_SLOTS.where(slots.c.code == code)).one_or_none()


def slots_of(connection: Connection, codes: Sequence[str]) -> Rows:
    """The slots of these codes, in no order."""
    return connection.execute(_SLOTS.where(slots.c.code.in_(codes))).all()


def settle_candidates(connection: Connection, code: str, words: str, limit: int = 10) -> Rows:
    """Things in stock that no live line wants: the one in the slot `code`, then those whose titles hold `words`."""
    unwanted = ~exists(literal_column("1")).where(lines.c.stay == stays.c.id, lines.c.state.in_(_LIVE))
    query = _SLOTS.where(stays.c.id.is_not(None), unwanted)
    named = slots.c.code == code
    alike = [_holds(items.c.title, word) for word in words.split()[:8]]
    rank = [case((named, 0), else_=1)]
    if alike:
        rank.append(-sum(case((each, 1), else_=0) for each in alike))
    return connection.execute(query.where(or_(named, *alike)).order_by(*rank, slots.c.n).limit(limit)).all()


def _holds(column: Any, words: str) -> Any:
    return func.lower(column).contains(words.lower(), autoescape=True)


def search_items(connection: Connection, words: str, limit: int) -> Rows:
    """Stays whose item's title holds all of these words, or whose listing id is this; those in stock first."""
    query = (
        select(stays.c.id, stays.c.code, stays.c.turn, stays.c.state, items.c.title, slots.c.bin, slots.c.section)
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
        .where(stays.c.state != StayState.MOVED)
    )
    titled = and_(*(_holds(items.c.title, word) for word in words.split()[:12]))
    in_stock = case((stays.c.state == StayState.STORED, 0), else_=1)
    found = query.where(or_(titled, items.c.listing == words)).order_by(in_stock, stays.c.n.desc()).limit(limit)
    return connection.execute(found).all()


def search_orders(connection: Connection, words: str, limit: int) -> Rows:
    """Orders whose number holds these words, the one that is it first."""
    query = select(orders.c.id, orders.c.number, orders.c.channel, orders.c.ship_by).where(
        _holds(orders.c.number, words)
    )
    first = case((func.lower(orders.c.number) == words.lower(), 0), else_=1)
    return connection.execute(query.order_by(first, orders.c.n.desc()).limit(limit)).all()


def stay(connection: Connection, stay_id: str) -> Row[Any] | None:
    """A stay with its item and where its slot is."""
    query = (
        select(
            *(stays, items.c.title, items.c.listing, items.c.notes, items.c.photo),
            *(slots.c.bin, slots.c.section, slots.c.card),
        )
        .join(items, items.c.id == stays.c.item)
        .join(slots, slots.c.code == stays.c.code)
    )
    return connection.execute(query.where(stays.c.id == stay_id)).one_or_none()


def stay_of(connection: Connection, code: str, turn: int) -> str | None:
    return connection.execute(select(stays.c.id).where(stays.c.code == code, stays.c.turn == turn)).scalar()


def stays_where(connection: Connection, **equal: str) -> Rows:
    """Stays of a slot (`code`) or of an item (`item`), the latest first."""
    query = select(stays, items.c.title).join(items, items.c.id == stays.c.item)
    for name, value in equal.items():
        query = query.where(stays.c[name] == value)
    return connection.execute(query.order_by(stays.c.n.desc()).limit(100)).all()


def lines_of_stays(connection: Connection, stay_ids: Sequence[str]) -> Rows:
    return connection.execute(_LINES.where(lines.c.stay.in_(stay_ids)).order_by(lines.c.n)).all()


def open_rounds(connection: Connection) -> Rows:
    """Open rounds with how many of their stops wait and how many there are."""
    to_do = and_(lines.c.state == LineState.WAITING, lines.c.round == rounds.c.id, lines.c.hold.is_(None))
    query = (
        select(
            rounds.c.id,
            rounds.c.opened,
            func.count().label("stops"),
            func.sum(case((to_do, 1), else_=0)).label("waiting"),
        )
        .join(stops, stops.c.round == rounds.c.id)
        .join(lines, lines.c.id == stops.c.line)
        .where(rounds.c.state == RoundState.OPEN)
        .group_by(rounds.c.id, rounds.c.n, rounds.c.opened)
    )
    return connection.execute(query.order_by(rounds.c.n)).all()


def round_(connection: Connection, round_id: str) -> Row[Any] | None:
    return connection.execute(select(rounds).where(rounds.c.id == round_id)).one_or_none()


def round_stops(connection: Connection, round_id: str) -> Rows:
    """The stops of a round in the order to walk, each with its line as it stands now.

    `here` is the stop's bin, `stop` its own number.
    """
    own = (stops.c.position, stops.c.bin.label("here"), stops.c.n.label("stop"))
    query = _LINES.add_columns(*own).join(stops, stops.c.line == lines.c.id)
    return connection.execute(query.where(stops.c.round == round_id).order_by(stops.c.position)).all()


def round_of_stop(connection: Connection, number: int) -> str | None:
    """The round on which the stop of this number is."""
    return connection.execute(select(stops.c.round).where(stops.c.n == number)).scalar()


def open_parcels(connection: Connection) -> Rows:
    """Parcels on a table or set aside, with the ids of their orders in `orders`."""
    query = select(parcels).where(parcels.c.state.in_([ParcelState.OPEN, ParcelState.ASIDE]))
    return connection.execute(query.order_by(parcels.c.n)).all()


def parcels_to_hand_over(connection: Connection, limit: int) -> Rows:
    """Closed parcels, the latest first, with `ends` of their last label, None without one."""
    last = select(func.max(labels.c.n)).where(labels.c.parcel == parcels.c.id).correlate(parcels).scalar_subquery()
    query = select(parcels, labels.c.ends).outerjoin(labels, labels.c.n == last)
    return connection.execute(
        query.where(parcels.c.state == ParcelState.CLOSED).order_by(parcels.c.n.desc()).limit(limit)
    ).all()


def orders_to_pack(connection: Connection, states: Sequence[LineState], limit: int) -> Rows:
    """Orders without a parcel that have a line in one of these states, the most urgent first."""
    query = _to_pack(states).order_by(*_BY_URGENCY).limit(limit)
    return connection.execute(query).all()


def orders_to_pack_count(connection: Connection, states: Sequence[LineState]) -> int:
    return connection.execute(_counting(_to_pack(states))).scalar_one()


def parcels_without_label(connection: Connection) -> int:
    """How many closed parcels have no label yet."""
    labelled = exists(literal_column("1")).where(labels.c.parcel == parcels.c.id)
    return _count(connection, parcels, and_(parcels.c.state == ParcelState.CLOSED, ~labelled))


def _to_pack(states: Sequence[LineState]) -> Any:
    ready, basket = func.count(lines.c.id).label("ready"), func.min(lines.c.basket)
    return (
        select(orders.c.id, orders.c.number, orders.c.ship_by, ready, basket)
        .join(lines, lines.c.order == orders.c.id)
        .where(lines.c.state.in_(states), orders.c.parcel.is_(None))
        .group_by(orders.c.id, orders.c.n, orders.c.number, orders.c.ship_by)
    )


def section_list(connection: Connection) -> Rows:
    """Sections with how many of their slots are free, taken, due and retired."""
    stands = slots.c.code.is_not(None)
    states = {each.value: func.sum(case((and_(stands, _SLOT_STATE == each.value), 1), else_=0)) for each in SlotState}
    query = (
        select(sections, func.count(slots.c.code).label("slots"), *(each.label(name) for name, each in states.items()))
        .outerjoin(slots, slots.c.section == sections.c.code)
        .outerjoin(stays, _OPEN_STAY)
        .group_by(*sections.c)
    )
    return connection.execute(query.order_by(sections.c.n)).all()


def section_bins(connection: Connection, code: str) -> Rows:
    """Name of each bin of a section that has slots, how many it has and how many of those are taken, in their order."""
    taken = func.sum(case((stays.c.id.is_not(None), 1), else_=0)).label("taken")
    query = select(slots.c.bin, func.count(slots.c.code).label("slots"), taken).outerjoin(stays, _OPEN_STAY)
    query = query.where(slots.c.section == code).group_by(slots.c.bin)
    return connection.execute(query.order_by(func.min(slots.c.number))).all()


def rack_list(connection: Connection) -> Rows:
    query = select(racks, func.count(bins.c.name).label("bins")).outerjoin(bins, bins.c.rack == racks.c.name)
    return connection.execute(query.group_by(*racks.c).order_by(racks.c.n)).all()


def bin_names(connection: Connection) -> list[str]:
    return list(connection.execute(select(bins.c.name).order_by(bins.c.n)).scalars())
