"""The unit of work on SQL: reads and writes of one transaction."""

from __future__ import annotations

import json
import secrets
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any, TypeVar

from sqlalchemy import (
    Connection,
    Executable,
    Select,
    and_,
    bindparam,
    case,
    delete,
    exists,
    func,
    insert,
    literal_column,
    null,
    or_,
    select,
    update,
)

from scanflow.domain import events
from scanflow.domain.life import LIVE, CardState, LineState, ParcelState, StayState, StocktakeState
from scanflow.domain.orders.titles import Stocked, Titled
from scanflow.domain.things import Item, Line, Order, Parcel, Scan, Slot, Station, Stay
from scanflow.storage import tables
from scanflow.storage.access import SqlAccess
from scanflow.storage.derived import OPEN_STAY
from scanflow.storage.ledger import canonical, entry_hash
from scanflow.storage.mappings import SqlMappings
from scanflow.storage.prepared import Statements, reader
from scanflow.storage.rows import COLUMNS, FIELDS, KINDS, thing, values
from scanflow.storage.stock_words import StockWords
from scanflow.storage.trust.replay import NOW, REPLAYED, row_now
from scanflow.storage.views.lists import card_texts
from scanflow.storage.writing.loads import SqlLoads
from scanflow.workflow.ports import Settings, SlotFacts

T = TypeVar("T")
RECENT = 10_000
"""Entries of the ledger that are looked through for what happened while a phone had no network."""

_READERS = {kind: reader(columns) for kind, columns in COLUMNS.items()}


class SqlUnit:
    """A `workflow.ports.Unit` on one connection. What was read is kept: the ledger's head is locked meanwhile."""

    def __init__(
        self,
        connection: Connection,
        statements: Statements,
        at: datetime,
        who: str,
        head: tuple[int, str, str],
        words: StockWords | None = None,
    ) -> None:
        self.connection, self._statements = connection, statements
        self.at, self.who = at, who
        self.seq, self.hash = head[:2]
        self.settings = Settings.from_dict(json.loads(head[2]))
        self.dropped = False
        """Whether something was deleted for good."""
        self._entry: dict[str, Any] | None = None
        """The last entry, which waits for the rows that change with it."""
        self._rows: dict[tuple[type, str], Any] = {}
        """What was put since the entry before, None where it was dropped."""
        self._known: dict[tuple[type, str], Any] = {}
        self._found: dict[type, dict[Any, tuple[Any, ...]]] = {kind: {} for kind in KINDS}
        self._stocked: Stocked | None = None
        self._words = words or StockWords()
        self._began = self.seq
        self._own_stock = False
        """Whether this unit has changed what is in stock itself."""

    @property
    def access(self) -> SqlAccess:
        return SqlAccess(self.connection, self.at)

    @property
    def mappings(self) -> SqlMappings:
        return SqlMappings(self.connection)

    @property
    def loads(self) -> SqlLoads:
        return SqlLoads(self.connection, self.at)

    def new_id(self) -> str:
        return secrets.token_hex(8)

    def get(self, kind: type[T], name: str) -> T | None:
        known: T | None = self._known.get((kind, name))
        if known is None:
            query = self._statements.get(("get", kind), lambda: _query(kind).where(_name(kind) == bindparam("wanted")))
            row = query.run(self.connection, {"wanted": name}).fetchone()
            known = self._keep(kind, row)
        return known

    def find(self, kind: type[T], **equal: Any) -> tuple[T, ...]:
        asked = tuple(equal.items())
        found = self._found[kind].get(asked)
        if found is None:
            found = self._found[kind][asked] = self._find(kind, equal)
        return found

    def _find(self, kind: type, equal: Mapping[str, Any]) -> tuple[Any, ...]:
        wanted = values(equal)
        fixed = {name: value for name, value in wanted.items() if value is None or isinstance(value, StrEnum)}
        query = self._statements.get(
            ("find", kind, tuple(wanted), tuple(fixed.values())), lambda: _find(kind, wanted, fixed)
        )
        given = {f"wanted_{name}": value for name, value in wanted.items() if name not in fixed}
        rows = query.run(self.connection, given)
        return tuple(self._keep(kind, row) for row in rows.fetchall())

    def _keep(self, kind: type, row: Any) -> Any:
        """The thing of a row as the driver gave it, kept; None for no row."""
        if row is None:
            return None
        found = thing(kind, _READERS[kind](row))
        self._known[kind, row[0]] = found
        return found

    def add(self, new: object) -> None:
        kind = type(new)
        given = values({name: getattr(new, name) for name in FIELDS[kind]})
        names = list(given)
        self._statements.get(("add", kind), lambda: insert(KINDS[kind]), names).run(self.connection, given)
        self._changed(kind, getattr(new, FIELDS[kind][0]), new)

    def put(self, new: object) -> None:
        kind = type(new)
        name = getattr(new, FIELDS[kind][0])
        old = self.get(kind, name)
        if old is None:
            raise KeyError(f"there is no {kind.__name__} {name}")
        changed = {field: getattr(new, field) for field in FIELDS[kind] if getattr(new, field) != getattr(old, field)}
        if changed:
            row = values(changed)
            statement = self._statements.get(("put", kind, tuple(row)), lambda: _update(kind, row))
            statement.run(self.connection, {f"new_{column}": value for column, value in row.items()} | {"wanted": name})
            self._changed(kind, name, new)

    def _changed(self, kind: type, name: str, new: Any) -> None:
        self._known[kind, name] = new
        self._rows[kind, name] = new
        self._found[kind].clear()
        if kind in (Item, Stay):
            self._stocked, self._own_stock = None, True

    def drop(self, kind: type, name: str) -> None:
        if self.connection.dialect.name == "sqlite":  # which leaves what was deleted in the file, unless told
            self.connection.exec_driver_sql("PRAGMA secure_delete=ON")
        gone = delete(KINDS[kind]).where(_name(kind) == bindparam("wanted"))
        self._statements.get(("drop", kind), lambda: gone).run(self.connection, {"wanted": name})
        self.dropped = True
        self._changed(kind, name, None)

    def record(self, event: events.Event, now: Sequence[str] = ()) -> None:
        """`now`: rows that the entry tells of, beside those that change with it."""
        self._write_entry()
        self.seq += 1
        at = self.at.isoformat(timespec="microseconds")
        data = event.data() | ({NOW: now} if now else {})
        self._entry = {"seq": self.seq, "at": at, "kind": event.kind, "actor": self.who, "data": data}

    def settle(self) -> None:
        """Before the unit is committed: each row that changed stands in an entry of the ledger."""
        if self._entry is None and any(kind in REPLAYED for kind, _ in self._rows):
            self.record(events.Changed())
        self._write_entry()

    def _write_entry(self) -> None:
        if self._entry is None:
            return
        entry, self._entry = self._entry, None
        now = [row_now(kind, name, new) for (kind, name), new in self._rows.items() if kind in REPLAYED]
        self._rows.clear()
        if now:
            entry["data"] = {**entry["data"], NOW: now}
        self.hash = entry_hash(self.hash, entry)
        row = {**entry, "data": canonical(entry["data"]), "hash": self.hash}
        self._statements.get("record", lambda: insert(tables.ledger), list(row)).run(self.connection, row)

    def told_since(self, seq: int) -> Iterator[tuple[int, events.Told]]:
        self._write_entry()
        entries = tables.ledger.c
        query = select(entries.seq, entries.kind, entries.data).where(entries.seq > seq).order_by(entries.seq)
        for row in self.connection.execute(query):
            yield row.seq, events.read(row.kind, json.loads(row.data))

    def told_at(self, of: type[events.Event], name: str) -> datetime | None:
        self._write_entry()
        entries = tables.ledger.c
        named = entries.data.contains(json.dumps(name), autoescape=True)
        query = select(entries.at).where(entries.seq > self.seq - RECENT, entries.kind == of.kind, named)
        at = self.connection.execute(query.order_by(entries.seq.desc()).limit(1)).scalar()
        return datetime.fromisoformat(at) if at else None

    def told_before(self, at: datetime) -> datetime | None:
        self._write_entry()
        entries = tables.ledger.c
        before = entries.at <= at.astimezone(UTC).isoformat(timespec="microseconds")
        told = self.connection.execute(select(entries.at).where(before).order_by(entries.seq.desc()).limit(1)).scalar()
        return datetime.fromisoformat(told) if told else None

    def set_settings(self, settings: Settings) -> None:
        self.settings = settings
        self.connection.execute(update(tables.head).values(settings=json.dumps(asdict(settings))))

    def facts(self, code: str) -> SlotFacts | None:
        row = self._statements.get("facts", _facts).run(self.connection, {"wanted": code}).fetchone()
        if row is None:
            return None
        parts: list[Any] = []
        start = 0
        for kind in _FACTS_KINDS:
            own = row[start : start + len(COLUMNS[kind])]
            start += len(own)
            parts.append(self._keep(kind, own) if own[0] is not None else None)
        return SlotFacts(*parts)

    def lowest_free(self, section: str) -> Slot | None:
        def build() -> Select[Any]:
            query = _query(Slot).where(_free(), tables.slots.c.section == bindparam("wanted"))
            return query.order_by(tables.slots.c.number).limit(1)

        given = {"wanted": section, "who": self.who, "at": self.at}
        row = self._statements.get("lowest free", build).run(self.connection, given).fetchone()
        slot: Slot | None = self._keep(Slot, row)
        return slot

    def fetched(self) -> tuple[Slot, ...]:
        def build() -> Select[Any]:
            slots = tables.slots.c
            return _query(Slot).where(slots.fetch_by == bindparam("who"), slots.fetch_until > bindparam("at"))

        query = self._statements.get("fetched", build).run(self.connection, {"who": self.who, "at": self.at})
        return tuple(self._keep(Slot, row) for row in query.fetchall())

    def free_slots(self, most_per_bin: int) -> dict[str, int]:
        slots, sections = tables.slots, tables.sections
        query = (
            select(slots.c.section, func.count())
            .join(sections, sections.c.code == slots.c.section)
            .where(_free(), sections.c.slots_per_bin <= most_per_bin)
            .group_by(slots.c.section)
            .order_by(slots.c.section)
        )
        given = {"who": self.who, "at": self.at}
        return {row[0]: row[1] for row in self.connection.execute(query, given)}

    def last_scan(self, station: Station, spot: str) -> Scan | None:
        def build() -> Select[Any]:
            scans = tables.scans
            at = (scans.c.station == bindparam("station"), scans.c.spot == bindparam("spot"))
            return _query(Scan).where(*at).order_by(scans.c.n.desc()).limit(1)

        given = {"station": station, "spot": spot}
        scan: Scan | None = self._keep(
            Scan, self._statements.get("last scan", build).run(self.connection, given).fetchone()
        )
        return scan

    def last_closed(self, table: str) -> Parcel | None:
        def build() -> Select[Any]:
            parcels = tables.parcels.c
            shut = or_(parcels.state == ParcelState.CLOSED, parcels.state == ParcelState.HANDED_OVER)
            query = _query(Parcel).where(parcels.at_table == bindparam("table"), parcels.closed.is_not(None), shut)
            return query.order_by(parcels.closed.desc(), parcels.n.desc()).limit(1)

        row = self._statements.get("last closed", build).run(self.connection, {"table": table}).fetchone()
        parcel: Parcel | None = self._keep(Parcel, row)
        return parcel

    def stocked(self) -> Stocked:
        """Made once for all lines of a file: most of its time is for cutting titles into words."""
        if self._stocked is None:
            shared = not self._own_stock
            self._stocked = self._words.at(self.connection, self._began, self._cut) if shared else self._cut()
        return self._stocked

    def _cut(self) -> Stocked:
        rows = self._statements.get("stocked", _in_stock).run(self.connection, {}).fetchall()
        return Stocked(Titled(*row) for row in rows)

    def last_looks(self) -> dict[str, datetime]:
        looks, counts = tables.looks.c, tables.stocktakes
        query = (
            select(looks.place, func.max(looks.at))
            .join(counts, counts.c.id == looks.stocktake)
            .where(looks.whole, looks.closer.is_(None), counts.c.state != StocktakeState.CANCELLED)
            .group_by(looks.place)
        )
        return {row[0]: row[1] for row in self.connection.execute(query)}

    def visits_since(self, since: datetime) -> dict[str, int]:
        slots, stays = tables.slots.c, tables.stays.c
        came, left = case((stays.began >= since, 1), else_=0), case((stays.ended >= since, 1), else_=0)
        query = (
            select(slots.bin, func.sum(came + left))
            .join(tables.stays, stays.code == slots.code)
            .where(or_(stays.began >= since, stays.ended >= since))
            .group_by(slots.bin)
        )
        return {row[0]: int(row[1]) for row in self.connection.execute(query)}

    def next_slip(self) -> int:
        query = self._statements.get("last slip", lambda: select(func.max(tables.orders.c.slip)))
        return max((query.run(self.connection, {}).fetchone()[0] or 0) + 1, self.settings.slips_from)

    def card_texts(self) -> list[str]:
        return card_texts(self.connection, self.settings.check)


def _name(kind: type) -> Any:
    return COLUMNS[kind][0]


def _query(kind: type) -> Select[Any]:
    return select(*COLUMNS[kind])


def _find(kind: type, wanted: Mapping[str, Any], fixed: Mapping[str, StrEnum | None]) -> Select[Any]:
    """States stand in the statement itself: only so can SQLite choose a partial index once, and not at every run."""
    columns = KINDS[kind].c

    def equal(name: str) -> Any:
        if name not in fixed:
            return columns[name] == bindparam(f"wanted_{name}")
        value = fixed[name]
        return columns[name].is_(null()) if value is None else columns[name] == literal_column(f"'{value}'")

    return _query(kind).where(*(equal(name) for name in wanted)).order_by(KINDS[kind].c.n)


def _update(kind: type, row: Mapping[str, Any]) -> Executable:
    new: dict[str, Any] = {column: bindparam(f"new_{column}") for column in row}
    return update(KINDS[kind]).where(_name(kind) == bindparam("wanted")).values(new)


_FACTS_KINDS = (Slot, Stay, Item, Line, Order)


def _facts() -> Select[Any]:
    """A slot with its latest stay, that stay's item, its live line or else its released or last one, and its order."""
    slots, stays, items, lines, orders = (KINDS[kind] for kind in _FACTS_KINDS)
    columns = (column.label(f"{kind.__name__}_{column.name}") for kind in _FACTS_KINDS for column in COLUMNS[kind])
    first = case(
        (or_(*(lines.c.state == state for state in LIVE)), 0), (lines.c.state == LineState.RELEASED, 1), else_=2
    )
    return (
        select(*columns)
        .select_from(slots)
        .outerjoin(stays, and_(stays.c.code == slots.c.code, stays.c.turn == slots.c.turns))
        .outerjoin(items, items.c.id == stays.c.item)
        .outerjoin(lines, lines.c.stay == stays.c.id)
        .outerjoin(orders, orders.c.id == lines.c.order)
        .where(slots.c.code == bindparam("wanted"))
        .order_by(first, lines.c.n.desc())
        .limit(1)
    )


def _in_stock() -> Select[Any]:
    items, stays = tables.items.c, tables.stays.c
    query = select(items.id, stays.id.label("stay"), stays.code, items.title).join(tables.stays, stays.item == items.id)
    return query.where(stays.state == literal_column(f"'{StayState.STORED}'")).order_by(stays.n)


def _free() -> Any:
    """As `whereabouts.free_to_give`: no stay is open, the card is in the tray, and was not read elsewhere since. And
    as `Slot.fetcher`: nobody but `who` fetches it at the time `at`.
    """
    slots = tables.slots.c
    read_there = or_(
        slots.seen_station.is_(None), and_(slots.seen_station == literal_column("'tray'"), slots.seen_accepted)
    )
    to_have = or_(slots.fetch_until.is_(None), slots.fetch_until <= bindparam("at"), slots.fetch_by == bindparam("who"))
    return and_(slots.card == CardState.TRAY, read_there, to_have, ~exists(literal_column("1")).where(OPEN_STAY))
