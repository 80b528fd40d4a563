"""Rows for lists and pages: read-only, without domain objects.

A page of a list starts after a key, the sort key of the row before it, so that rows added meanwhile move nothing.
`limit + 1` rows are asked for: the one too many says that there is another page.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from typing import Any, Protocol, cast

from sqlalchemy import Connection, Row, Select, and_, exists, func, literal_column, or_, select, tuple_

from labels import slot_code
from scanflow.domain.derive import OrderState, SlotState, Standing
from scanflow.domain.life import CardState, LineState
from scanflow.storage.derived import HELD
from scanflow.storage.tables import (
    aliases,
    items,
    ledger,
    lines,
    looks,
    orders,
    photos,
    sections,
    slots,
    stays,
    stocktakes,
    stops,
)

AnyRow = Row[*tuple[Any, ...]]
Rows = Sequence[AnyRow]


class LineRow(Standing, Protocol):
    """A row of a line: it tells where the line stands, and what else its query asks for."""

    def __getattr__(self, name: str) -> Any: ...


def line_rows(connection: Connection, query: Select[Any]) -> Sequence[LineRow]:
    """What a query of lines finds."""
    return cast(Sequence[LineRow], connection.execute(query).all())


_CARDS: dict[SlotState, tuple[CardState, ...]] = {
    SlotState.FREE: (CardState.TRAY,),
    SlotState.TAKEN: (CardState.ON_ITEM, CardState.LOST),
    SlotState.DUE: (CardState.DUE, CardState.HAND),
    SlotState.RETIRED: (CardState.LOST,),
}
"""Where the card of a slot of this state can be: a lost card alone leaves open whether the slot is taken."""

_OPEN_STAY = and_(
    stays.c.code == slots.c.code, stays.c.turn == slots.c.turns, stays.c.state == literal_column("'stored'")
)


def section_page(connection: Connection, after: int, limit: int) -> Rows:
    """Sections in the order they were added; `n` is the key."""
    query = select(sections).where(sections.c.n > after).order_by(sections.c.n).limit(limit + 1)
    return connection.execute(query).all()


def slot_counts(connection: Connection, codes: Iterable[str]) -> dict[str, dict[SlotState, int]]:
    """Slots of each of these sections by state."""
    counts = {code: dict.fromkeys(SlotState, 0) for code in codes}
    by_card = (
        select(slots.c.section, slots.c.card, func.count())
        .where(slots.c.section.in_(list(counts)))
        .group_by(slots.c.section, slots.c.card)
    )
    state_of = {card: state for state, cards in _CARDS.items() for card in cards}
    for section, card, count in connection.execute(by_card):
        counts[section][state_of[card]] += count
    lost_on_item = (
        select(slots.c.section, func.count())
        .select_from(slots)
        .join(stays, _OPEN_STAY)
        .where(slots.c.section.in_(list(counts)), slots.c.card == CardState.LOST)
        .group_by(slots.c.section)
    )
    for section, count in connection.execute(lost_on_item):
        counts[section][SlotState.RETIRED] -= count
        counts[section][SlotState.TAKEN] += count
    return counts


def slot_page(
    connection: Connection, section: str | None, state: SlotState | None, after: tuple[str, int], limit: int
) -> Rows:
    """Slots by section and number, which are the key; `stay` is the open stay, None without one."""
    query = (
        select(slots.c.code, slots.c.section, slots.c.number, slots.c.bin, slots.c.card, stays.c.id.label("stay"))
        .select_from(slots)
        .outerjoin(stays, _OPEN_STAY)
        .order_by(slots.c.section, slots.c.number)
        .limit(limit + 1)
    )
    if section is None:
        query = query.where(tuple_(slots.c.section, slots.c.number) > tuple_(*after))
    else:
        query = query.where(slots.c.section == section, slots.c.number > (after[1] if after[0] == section else 0))
    if state is None:
        return connection.execute(query).all()
    found = [row for card in _CARDS[state] for row in connection.execute(_of_card(query, card, state))]
    return sorted(found, key=lambda row: (row.section, row.number))[: limit + 1]


def _of_card(query: Select[Any], card: CardState, state: SlotState) -> Select[Any]:
    query = query.where(slots.c.card == card)
    if card is CardState.LOST:
        query = query.where(stays.c.id.is_not(None) if state is SlotState.TAKEN else stays.c.id.is_(None))
    return query


def slot_state(row: AnyRow) -> SlotState:
    """The derived state of a row of `slot_page`."""
    if row.stay is not None:
        return SlotState.TAKEN
    return next(state for state in (SlotState.FREE, SlotState.DUE, SlotState.RETIRED) if row.card in _CARDS[state])


_ADVANCE: tuple[tuple[OrderState, tuple[LineState, ...]], ...] = (
    (OrderState.HELD, (LineState.UNBOUND,)),
    (OrderState.WAITING, (LineState.WAITING, LineState.SHORT)),
    (OrderState.PICKING, (LineState.PICKED,)),
    (OrderState.PACKING, (LineState.PACKED,)),
    (OrderState.RELEASED, (LineState.RELEASED,)),
    (OrderState.RETURNED, (LineState.RETURNED,)),
    (OrderState.CANCELLED, (LineState.CANCELLED,)),
)
"""`domain.derive.order_state` for rows: the first of these whose line states an order has; a hold is HELD."""


def order_page(connection: Connection, state: OrderState | None, after: int, limit: int) -> Rows:
    """Orders in the order they came in; `n` is the key."""
    query = select(orders).where(orders.c.n > after).order_by(orders.c.n).limit(limit + 1)
    if state is not None:
        query = query.where(*_stands_at(state))
    return connection.execute(query).all()


def _stands_at(state: OrderState) -> Iterable[Any]:
    """Nearly all orders end released, so those are found by walking; the others by their few lines."""
    place = [each for each, _ in _ADVANCE].index(state)
    before = [line_state for _, states in _ADVANCE[:place] for line_state in states]
    wanted = lines.c.state.in_(_ADVANCE[place][1])
    if state is OrderState.HELD:
        yield orders.c.id.in_(select(lines.c.order).where(or_(wanted, HELD)))
        return
    if state is OrderState.RELEASED:
        yield exists().where(lines.c.order == orders.c.id, wanted)
    else:
        yield orders.c.id.in_(select(lines.c.order).where(wanted))
    yield ~exists().where(lines.c.order == orders.c.id, or_(lines.c.state.in_(before), HELD)).correlate(orders)


_LINES = (
    select(lines, stays.c.code, items.c.title.label("item_title"), items.c.photo)
    .select_from(lines)
    .outerjoin(stays, stays.c.id == lines.c.stay)
    .outerjoin(items, items.c.id == stays.c.item)
)


def order_lines(connection: Connection, order_ids: Sequence[str]) -> dict[str, list[LineRow]]:
    """The lines of these orders by order, each with its stay's `code`, `item_title` and `photo`, None while unbound."""
    found: dict[str, list[LineRow]] = defaultdict(list)
    for row in line_rows(connection, _LINES.where(lines.c.order.in_(order_ids)).order_by(lines.c.n)):
        found[row.order].append(row)
    return found


def line(connection: Connection, line_id: str) -> AnyRow:
    """One line as in `order_lines`."""
    return connection.execute(_LINES.where(lines.c.id == line_id)).one()


def round_stops(connection: Connection, round_id: str) -> Sequence[LineRow]:
    """The stops of a round in the order to walk, each with its line as in `order_lines`."""
    query = _LINES.add_columns(stops.c.bin).join(stops, stops.c.line == lines.c.id)
    return line_rows(connection, query.where(stops.c.round == round_id).order_by(stops.c.position))


def photo(connection: Connection, stay_id: str, *, small: bool = False) -> AnyRow | None:
    """`hash` and `data` of the picture of a stay's item, or of its small one; None without one."""
    query = (
        select(photos.c.hash, (photos.c.thumb if small else photos.c.picture).label("data"))
        .join(items, items.c.photo == photos.c.hash)
        .join(stays, stays.c.item == items.c.id)
    )
    return connection.execute(query.where(stays.c.id == stay_id)).one_or_none()


def picture(connection: Connection, hash_: str, *, small: bool = False) -> bytes | None:
    """The picture of this hash, or its small one."""
    column = photos.c.thumb if small else photos.c.picture
    return connection.execute(select(column).where(photos.c.hash == hash_)).scalar()


def stocktake_page(connection: Connection, after: int, limit: int) -> Rows:
    """Stocktakes in the order they were opened; `n` is the key."""
    query = select(stocktakes.c.n, stocktakes.c.id).where(stocktakes.c.n > after).order_by(stocktakes.c.n)
    return connection.execute(query.limit(limit + 1)).all()


def look_photo(connection: Connection, stocktake_id: str, key: str, *, small: bool = False) -> AnyRow | None:
    """`hash` and `data` of the photo of a look, or of its small one; None without one."""
    query = select(photos.c.hash, (photos.c.thumb if small else photos.c.picture).label("data"))
    query = query.join(looks, looks.c.photo == photos.c.hash)
    return connection.execute(query.where(looks.c.stocktake == stocktake_id, looks.c.key == key)).one_or_none()


def thumbs(connection: Connection, hashes: Iterable[str]) -> dict[str, bytes]:
    """The small pictures of these hashes."""
    query = select(photos.c.hash, photos.c.thumb).where(photos.c.hash.in_(set(hashes)))
    return {row.hash: row.thumb for row in connection.execute(query)}


def ledger_page(connection: Connection, after: int, limit: int) -> Rows:
    """Entries of the ledger after this `seq`."""
    query = select(ledger).where(ledger.c.seq > after).order_by(ledger.c.seq).limit(limit + 1)
    return connection.execute(query).all()


def card_texts(connection: Connection, check: str) -> list[str]:
    """What every card bears that exists, lost and retired ones too: slots keep theirs for ever, adopted ones besides.

    In a room whose `check` is `none` a slot's card may bear the bare code. The bars of an adopted card may lack the
    hyphens that stand below them, and capitals may have been typed small: such a card is given in each of these ways.
    """
    codes = connection.scalars(select(slots.c.code)).all()
    adopted = connection.execute(select(aliases.c.text, aliases.c.printed)).all()
    bare = codes if check == "none" else []
    borne = {text for row in adopted for text in (row.text, row.printed, row.printed.upper()) if text.isascii()}
    return [*map(slot_code.card_text, codes), *bare, *sorted(borne)]


def colours_used(connection: Connection) -> dict[str, int]:
    """How many sections have each colour."""
    query = select(sections.c.colour, func.count()).group_by(sections.c.colour)
    return {row[0]: row[1] for row in connection.execute(query)}
