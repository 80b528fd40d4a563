"""The unit of work on SQL: reads and writes of one transaction."""

from __future__ import annotations

import json
import secrets
from collections.abc import Mapping
from dataclasses import asdict
from datetime import datetime
from typing import Any, TypeVar

from sqlalchemy import Connection, and_, bindparam, case, exists, func, insert, literal_column, select, update

from scanflow.domain.life import CardState, LineState, StayState
from scanflow.domain.things import Item, Line, Order, Scan, Slot, Station, Stay
from scanflow.storage import tables
from scanflow.storage.ledger import entry_hash
from scanflow.storage.rows import COLUMNS, FIELDS, KINDS, thing, values
from scanflow.workflow.ports import Facts, Settings

T = TypeVar("T")
_LIVE = (LineState.WAITING, LineState.PICKED, LineState.PACKED, LineState.SHORT)

_FACTS_KINDS = (Slot, Stay, Item, Line, Order)
_FACTS = (
    select(*(column.label(f"{kind.__name__}_{column.name}") for kind in _FACTS_KINDS for column in COLUMNS[kind]))
    .select_from(tables.slots)
    .outerjoin(
        tables.stays, and_(tables.stays.c.code == tables.slots.c.code, tables.stays.c.turn == tables.slots.c.turns)
    )
    .outerjoin(tables.items, tables.items.c.id == tables.stays.c.item)
    .outerjoin(tables.lines, tables.lines.c.stay == tables.stays.c.id)
    .outerjoin(tables.orders, tables.orders.c.id == tables.lines.c.order)
    .order_by(
        case((tables.lines.c.state.in_(_LIVE), 0), (tables.lines.c.state == LineState.RELEASED, 1), else_=2),
        tables.lines.c.n.desc(),
    )
    .limit(1)
)


class SqlUnit:
    """A `workflow.ports.Unit` on one connection. Things once read are kept: the ledger's head is locked meanwhile."""

    def __init__(
        self, connection: Connection, at: datetime, who: str, seq: int, hash_: str, settings: Settings
    ) -> None:
        self.connection = connection
        self.at, self.who, self.settings = at, who, settings
        self.seq, self.hash = seq, hash_
        self._known: dict[tuple[type, str], Any] = {}

    def new_id(self) -> str:
        return secrets.token_hex(8)

    def get(self, kind: type[T], name: str) -> T | None:
        known = self._known.get((kind, name))
        if known is None:
            row = self.connection.execute(_by_name(kind), {"wanted": name}).one_or_none()
            known = self._keep(kind, row) if row is not None else None
        return known

    def find(self, kind: type[T], **equal: Any) -> tuple[T, ...]:
        table = KINDS[kind]
        query = select(*COLUMNS[kind]).order_by(table.c.n)
        for name, value in values(equal).items():
            query = query.where(table.c[name] == value)
        return tuple(self._keep(kind, row) for row in self.connection.execute(query))

    def _keep(self, kind: type[T], row: Any) -> T:
        found = thing(kind, row)
        self._known[kind, row[0]] = found
        return found  # type: ignore[no-any-return]

    def add(self, new: object) -> None:
        kind = type(new)
        given = {name: getattr(new, name) for name in FIELDS[kind]}
        self.connection.execute(insert(KINDS[kind]), values(given))
        self._known[kind, given[FIELDS[kind][0]]] = new

    def put(self, new: object) -> None:
        kind = type(new)
        name = getattr(new, FIELDS[kind][0])
        old = self.get(kind, name)
        changed = {field: getattr(new, field) for field in FIELDS[kind] if getattr(new, field) != getattr(old, field)}
        if changed:
            table = KINDS[kind]
            self.connection.execute(update(table).where(_name_column(kind) == name).values(values(changed)))
            self._known[kind, name] = new

    def record(self, kind: str, data: Mapping[str, Any]) -> None:
        self.seq += 1
        entry = {
            "seq": self.seq,
            "at": self.at.isoformat(timespec="microseconds"),
            "kind": kind,
            "actor": self.who,
            "data": dict(data),
        }
        self.hash = entry_hash(self.hash, entry)
        row = {**entry, "data": json.dumps(data, ensure_ascii=False), "hash": self.hash}
        self.connection.execute(insert(tables.ledger), row)

    def set_settings(self, settings: Settings) -> None:
        self.settings = settings
        self.connection.execute(update(tables.head).values(settings=json.dumps(asdict(settings))))

    def facts(self, code: str) -> Facts | None:
        row = self.connection.execute(_FACTS.where(tables.slots.c.code == code)).one_or_none()
        if row is None:
            return None
        parts, start = [], 0
        for kind in _FACTS_KINDS:
            own = row[start : start + len(COLUMNS[kind])]
            start += len(own)
            parts.append(self._keep(kind, own) if own[0] is not None else None)
        return Facts(*parts)  # type: ignore[arg-type]

    def lowest_free(self, section: str) -> Slot | None:
        query = select(*COLUMNS[Slot]).where(_free(), tables.slots.c.section == section)
        row = self.connection.execute(query.order_by(tables.slots.c.number).limit(1)).one_or_none()
        return None if row is None else self._keep(Slot, row)

    def free_slots(self, most_per_bin: int) -> dict[str, int]:
        slots, sections = tables.slots, tables.sections
        query = (
            select(slots.c.section, func.count())
            .join(sections, sections.c.code == slots.c.section)
            .where(_free(), sections.c.slots_per_bin <= most_per_bin)
            .group_by(slots.c.section)
            .order_by(slots.c.section)
        )
        return {row[0]: row[1] for row in self.connection.execute(query)}

    def last_scan(self, station: Station, spot: str) -> Scan | None:
        scans = tables.scans
        query = select(*COLUMNS[Scan]).where(scans.c.station == station, scans.c.spot == spot)
        row = self.connection.execute(query.order_by(scans.c.n.desc()).limit(1)).one_or_none()
        return None if row is None else self._keep(Scan, row)

    def next_slip(self) -> int:
        return (self.connection.execute(select(func.max(tables.orders.c.slip))).scalar() or 0) + 1


def _name_column(kind: type) -> Any:
    return COLUMNS[kind][0]


_QUERIES: dict[type, Any] = {}


def _by_name(kind: type) -> Any:
    if kind not in _QUERIES:
        _QUERIES[kind] = select(*COLUMNS[kind]).where(_name_column(kind) == bindparam("wanted"))
    return _QUERIES[kind]


def _free() -> Any:
    """The card is in the tray. Then no stay is open: putting away takes the card out of it."""
    open_stay = exists(literal_column("1")).where(
        tables.stays.c.code == tables.slots.c.code, tables.stays.c.state == StayState.STORED
    )
    return and_(tables.slots.c.card == CardState.TRAY, ~open_stay)
