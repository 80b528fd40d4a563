"""Rows for lists and pages: read-only, without domain objects.

A page of a list starts after a key, the sort key of the row before it, so that rows added meanwhile move nothing.
`limit + 1` rows are asked for: the one too many says that there is another page.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import takewhile
from typing import Any, Protocol, cast

from sqlalchemy import Connection, Row, Select, exists, func, or_, select, tuple_

from labels import slot_code
from scanflow.domain.derive import OrderState, SlotState, Standing
from scanflow.storage.derived import LINE_AT, OPEN_STAY, SLOT_STATE
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
)

AnyRow = Row[*tuple[Any, ...]]
Rows = Sequence[AnyRow]


class LineRow(Standing, Protocol):
    """A row of a line: it tells where the line stands, and what else its query asks for."""

    def __getattr__(self, name: str) -> Any: ...


def line_rows(connection: Connection, query: Select[Any]) -> Sequence[LineRow]:
    """What a query of lines finds."""
    return cast(Sequence[LineRow], connection.execute(query).all())


def section_page(connection: Connection, after: int, limit: int) -> Rows:
    """Sections in the order they were added; `n` is the key."""
    query = select(sections).where(sections.c.n > after).order_by(sections.c.n).limit(limit + 1)
    return connection.execute(query).all()


def slot_counts(connection: Connection, codes: Iterable[str]) -> dict[str, dict[SlotState, int]]:
    """Slots of each of these sections by state."""
    counts = {code: dict.fromkeys(SlotState, 0) for code in codes}
    each = select(slots.c.section, SLOT_STATE.label("state")).select_from(slots).outerjoin(stays, OPEN_STAY)
    found = each.where(slots.c.section.in_(list(counts))).subquery()
    query = select(found.c.section, found.c.state, func.count()).group_by(found.c.section, found.c.state)
    for section, state, count in connection.execute(query):
        counts[section][SlotState(state)] = count
    return counts


def slot_page(
    connection: Connection, section: str | None, state: SlotState | None, after: tuple[str, int], limit: int
) -> Rows:
    """Slots by section and number, which are the key; `stay` is the open stay, None without one."""
    query = (
        select(
            slots.c.code,
            slots.c.section,
            slots.c.number,
            slots.c.bin,
            slots.c.card,
            stays.c.id.label("stay"),
            SLOT_STATE.label("state"),
        )
        .select_from(slots)
        .outerjoin(stays, OPEN_STAY)
    )
    if section is None:
        query = query.where(tuple_(slots.c.section, slots.c.number) > tuple_(*after))
    else:
        query = query.where(slots.c.section == section, slots.c.number > (after[1] if after[0] == section else 0))
    if state is not None:
        query = query.where(SLOT_STATE == state.value)
    return connection.execute(query.order_by(slots.c.section, slots.c.number).limit(limit + 1)).all()


def order_page(connection: Connection, state: OrderState | None, after: int, limit: int) -> Rows:
    """Orders in the order they came in; `n` is the key."""
    query = select(orders).where(orders.c.n > after).order_by(orders.c.n).limit(limit + 1)
    if state is not None:
        query = query.where(*_stands_at(state))
    return connection.execute(query).all()


def _stands_at(state: OrderState) -> Iterable[Any]:
    """Nearly all orders end released, so those are found by walking; the others by their few lines."""
    fits, of_order = LINE_AT[state], lines.c.order == orders.c.id
    if state is OrderState.RELEASED:
        yield exists().where(of_order, fits)
    else:
        yield orders.c.id.in_(select(lines.c.order).where(fits))
    before = [LINE_AT[each] for each in takewhile(lambda each: each is not state, LINE_AT)]
    if before:
        yield ~exists().where(of_order, or_(*before)).correlate(orders)


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
