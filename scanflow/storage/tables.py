"""Tables, one for each kind of thing: a column for each field, in the order of the fields.

`n` counts rows in the order they were added. Rule 1 stands here as partial unique indexes.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Float,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
    TypeDecorator,
    false,
    text,
)

from scanflow.domain.counts.stocktake import How
from scanflow.domain.life import (
    CardState,
    DoubtEnd,
    DoubtKind,
    Hold,
    LineState,
    ParcelState,
    ReturnState,
    RoundState,
    StayState,
    StocktakeState,
)
from scanflow.domain.things import Held, Station


class Instant(TypeDecorator[datetime]):
    """An aware time, kept as ISO 8601 text in UTC with microseconds, so that text order is time order."""

    impl = String(32)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Any) -> str | None:
        return None if value is None else value.astimezone(UTC).isoformat(timespec="microseconds")

    def process_result_value(self, value: str | None, dialect: Any) -> datetime | None:
        return None if value is None else datetime.fromisoformat(value)


class Choice(TypeDecorator[StrEnum]):
    """One of the values of an enum, kept as its text."""

    impl = String(24)
    cache_ok = True

    def __init__(self, kind: type[StrEnum]) -> None:
        super().__init__()
        self.kind = kind

    def process_bind_param(self, value: StrEnum | None, dialect: Any) -> str | None:
        return None if value is None else str(value)

    def process_result_value(self, value: str | None, dialect: Any) -> StrEnum | None:
        return None if value is None else self.kind(value)


class Holds(TypeDecorator[tuple[Held, ...]]):
    """A line's holds, the gravest first, kept as JSON: a list of [hold, why]."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: Iterable[Held] | None, dialect: Any) -> str | None:
        return None if value is None else json.dumps([[each.hold, each.why] for each in value])

    def process_result_value(self, value: str | None, dialect: Any) -> tuple[Held, ...] | None:
        return None if value is None else tuple(Held(Hold(hold), why) for hold, why in json.loads(value))


metadata = MetaData(
    naming_convention={
        "ix": "ix_%(column_0_N_label)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

_COUNT = BigInteger().with_variant(Integer, "sqlite")


def _table(name: str, *columns: Any) -> Table:
    return Table(name, metadata, Column("n", _COUNT, primary_key=True, autoincrement=True), *columns)


def _name(name: str = "id") -> Column[str]:
    return Column(name, String(64), nullable=False, unique=True)


def _link(name: str, target: str, *, null: bool = False) -> Column[str]:
    return Column(name, String(64), ForeignKey(target), nullable=null)


def _text(name: str) -> Column[str]:
    return Column(name, Text, nullable=False)


sections = _table(
    "sections",
    _name("code"),
    _text("name"),
    Column("slots_per_bin", Integer, nullable=False),
    _text("colour"),
    Column("digits", Integer, nullable=False),
    Column("last", Integer, nullable=False),
)
racks = _table("racks", _name("name"), Column("aisle", Integer, nullable=False), Column("start", Float, nullable=False))
bins = _table(
    "bins",
    _name("name"),
    _link("rack", "racks.name"),
    Column("tier", Integer, nullable=False),
    Column("position", Integer, nullable=False),
    _link("section", "sections.code"),
    Index("uq_bins_place", "rack", "tier", "position", unique=True),
    Index("ix_bins_section", "section"),
)
slots = _table(
    "slots",
    _name("code"),
    _link("section", "sections.code"),
    Column("number", Integer, nullable=False),
    _link("bin", "bins.name"),
    Column("turns", Integer, nullable=False),
    Column("card", Choice(CardState), nullable=False),
    Column("seen_station", Choice(Station)),
    Column("seen_place", String(64)),
    Column("seen_accepted", Boolean),
    Column("seen_at", Instant),
    Column("seen_parcel", String(64)),
    Column("out_station", Choice(Station)),
    Column("out_place", String(64)),
    Column("out_round", String(64)),
    Column("out_basket", Integer),
    Column("fetch_by", Text),
    Column("fetch_until", Instant),
    Column("twin", Boolean, nullable=False, server_default=false()),
    Index("uq_slots_number", "section", "number", unique=True),
    Index("ix_slots_card", "card", "section", "number"),
)
aliases = _table(
    "aliases",
    _name("text"),
    _link("code", "slots.code"),
    Column("printed", String(64), nullable=False),
    Index("ix_aliases_code", "code"),
)
photos = _table(
    "photos",
    _name("hash"),
    Column("picture", LargeBinary, nullable=False),
    Column("thumb", LargeBinary, nullable=False),
)
"""In the database, so that a copy of it holds them, and so do all machines that share it."""

items = _table(
    "items",
    _name(),
    _text("title"),
    _text("notes"),
    _link("photo", "photos.hash", null=True),
    Column("kept_for", Text, nullable=False, server_default=text("''")),
    Column("kept_until", Instant),
    Column("away", Text, nullable=False, server_default=text("''")),
    Column("away_since", Instant),
    Column("packing", Text, nullable=False, server_default=text("''")),
    Index(
        "ix_items_kept",
        "kept_until",
        sqlite_where=text("kept_until IS NOT NULL"),
        postgresql_where=text("kept_until IS NOT NULL"),
    ),
    Index(
        "ix_items_away",
        "away_since",
        sqlite_where=text("away_since IS NOT NULL"),
        postgresql_where=text("away_since IS NOT NULL"),
    ),
)
stays = _table(
    "stays",
    _name(),
    _link("item", "items.id"),
    _link("code", "slots.code"),
    Column("turn", Integer, nullable=False),
    Column("began", Instant, nullable=False),
    Column("state", Choice(StayState), nullable=False),
    Column("ended", Instant),
    _text("reason"),
    Column("load", String(64)),
    Column("told", String(64), nullable=False, server_default=text("''")),
    Column("undated", Boolean, nullable=False, server_default=false()),
    Column("rehung_from", Text, nullable=False, server_default=text("''")),
    Index("uq_stays_turn", "code", "turn", unique=True),
    Index("ix_stays_load", "load", sqlite_where=text("load IS NOT NULL"), postgresql_where=text("load IS NOT NULL")),
    Index(
        "uq_stays_open",
        "code",
        unique=True,
        sqlite_where=text("state = 'stored'"),
        postgresql_where=text("state = 'stored'"),
    ),
    Index("ix_stays_item", "item"),
)
doubts = _table(
    "doubts",
    _name(),
    _link("item", "items.id"),
    Column("kind", Choice(DoubtKind), nullable=False),
    _text("words"),
    Column("since", Instant, nullable=False),
    _text("by"),
    Column("photo", String(64)),
    Column("how", Choice(DoubtEnd)),
    _text("note"),
    Column("ended", Instant),
    Index("ix_doubts_item", "item", "how"),
)
rounds = _table(
    "rounds", _name(), Column("opened", Instant, nullable=False), Column("state", Choice(RoundState), nullable=False)
)
parcels = _table(
    "parcels",
    _name(),
    Column("at_table", String(64), nullable=False),
    _text("orders"),
    Column("opened", Instant, nullable=False),
    Column("state", Choice(ParcelState), nullable=False),
    Column("closed", Instant),
    Column("handed", Instant),
    Column("carrier", Text, nullable=False, server_default=text("''")),
    Column("handed_by", Text, nullable=False, server_default=text("''")),
    Column("collected_by", Text, nullable=False, server_default=text("''")),
    Column("later", Boolean, nullable=False, server_default=false()),
    Index("ix_parcels_closed", "at_table", "closed"),
    Index("ix_parcels_handed", "handed"),
    Index(
        "uq_parcels_open",
        "at_table",
        unique=True,
        sqlite_where=text("state = 'open'"),
        postgresql_where=text("state = 'open'"),
    ),
)
labels = _table(
    "labels", _name("hash"), _link("parcel", "parcels.id"), _text("ends"), Index("ix_labels_parcel", "parcel")
)
channels = _table(
    "channels",
    Column("name", String(100), nullable=False, unique=True),
    _text("statuses"),
    Column("complete", Boolean, nullable=False, server_default=false()),
)
orders = _table(
    "orders",
    _name(),
    _text("number"),
    _text("channel"),
    Column("received", Instant, nullable=False),
    Column("slip", Integer, nullable=False, unique=True),
    Column("ordered_at", Instant),
    Column("ship_by", Instant),
    _link("parcel", "parcels.id", null=True),
    Column("sent_number", Text, nullable=False, server_default=text("''")),
    Column("note", Text, nullable=False, server_default=text("''")),
    Column("collected", Boolean, nullable=False, server_default=false()),
    Column("status", Text, nullable=False, server_default=text("''")),
    Column("load", String(64)),
    Index("uq_orders_number", "number", "channel", unique=True),
    Index("ix_orders_channel", "channel"),
    Index("ix_orders_load", "load", sqlite_where=text("load IS NOT NULL"), postgresql_where=text("load IS NOT NULL")),
)
changed_orders = _table(
    "changed_orders",
    _name(),
    Column("load", String(64), nullable=False),
    _link("order", "orders.id"),
    Column("at", Instant, nullable=False),
    _text("was"),
    Index("ix_changed_orders_load", "load"),
)
lines = _table(
    "lines",
    _name(),
    _link("order", "orders.id"),
    Column("position", Integer, nullable=False),
    _text("reference"),
    _text("title"),
    _text("listing"),
    _link("stay", "stays.id", null=True),
    Column("state", Choice(LineState), nullable=False),
    Column("holds", Holds, nullable=False, server_default=text("'[]'")),
    _link("parcel", "parcels.id", null=True),
    _link("round", "rounds.id", null=True),
    Column("basket", Integer),
    Column("scan", String(64)),
    Column("in_file", Boolean, nullable=False),
    Column("status", Text, nullable=False, server_default=text("''")),
    Column("quantity", Text, nullable=False, server_default=text("''")),
    Index("ix_lines_order", "order", "state"),
    Index("ix_lines_stay", "stay"),
    Index("ix_lines_state", "state"),
    Index("ix_lines_parcel", "parcel"),
    Index("ix_lines_held", "order", sqlite_where=text("holds <> '[]'"), postgresql_where=text("holds <> '[]'")),
    Index(
        "uq_lines_live",
        "stay",
        unique=True,
        sqlite_where=text("state IN ('waiting', 'picked', 'packed', 'short')"),
        postgresql_where=text("state IN ('waiting', 'picked', 'packed', 'short')"),
    ),
)
listings = _table(
    "listings",
    _name(),
    _link("item", "items.id"),
    _text("channel"),
    _text("listing"),
    _link("line", "lines.id", null=True),
    Column("since", Instant, nullable=False),
    Column("ended", Instant),
    Index("ix_listings_listing", "listing"),
    Index("ix_listings_item", "item"),
    Index("ix_listings_line", "line", sqlite_where=text("line IS NOT NULL"), postgresql_where=text("line IS NOT NULL")),
    Index("ix_listings_up", "n", sqlite_where=text("ended IS NULL"), postgresql_where=text("ended IS NULL")),
)
returns = _table(
    "returns",
    _name(),
    _link("order", "orders.id", null=True),
    _text("lines"),
    _text("why"),
    Column("until", Instant),
    Column("state", Choice(ReturnState), nullable=False),
    Column("opened", Instant, nullable=False),
    Column("arrived", Instant),
    Column("checked", Instant),
    _text("checks"),
    Index("ix_returns_order", "order"),
    Index("ix_returns_state", "state"),
)
"""`checks` is JSON: a list of [line, condition, stay]."""

stops = _table(
    "stops",
    _link("round", "rounds.id"),
    Column("position", Integer, nullable=False),
    _link("line", "lines.id"),
    _link("bin", "bins.name"),
    Index("uq_stops_place", "round", "position", unique=True),
)
scans = _table(
    "scans",
    _name("key"),
    Column("body", String(64), nullable=False),
    Column("station", Choice(Station), nullable=False),
    Column("spot", String(64), nullable=False),
    Column("code", String(64)),
    Column("take_out", Boolean, nullable=False),
    Column("accepted", Boolean, nullable=False),
    Column("changed", Boolean, nullable=False),
    Column("line", String(64)),
    Column("parcel", String(64)),
    _text("answer"),
    _text("was"),
    Column("at", Instant),
    Column("stood", Text, nullable=False, server_default=text("''")),
    Index("ix_scans_spot", "station", "spot", "n"),
)
stocktakes = _table(
    "stocktakes",
    _name(),
    Column("area", String(64), nullable=False),
    _text("note"),
    Column("opened", Instant, nullable=False),
    Column("seq", _COUNT, nullable=False),
    Column("state", Choice(StocktakeState), nullable=False),
    Column("closed", Instant),
    _text("report"),
    Column("sample", Text),
    Index("ix_stocktakes_state", "state"),
)
looks = _table(
    "looks",
    _name("key"),
    Column("body", String(64), nullable=False),
    _link("stocktake", "stocktakes.id"),
    Column("place", String(64), nullable=False),
    Column("at", Instant, nullable=False),
    Column("how", Choice(How), nullable=False),
    _text("reads"),
    Column("whole", Boolean, nullable=False),
    _link("closer", "looks.key", null=True),
    _text("size"),
    _link("photo", "photos.hash", null=True),
    Index("ix_looks_stocktake", "stocktake"),
    Index("ix_looks_photo", "photo"),
)
resolutions = _table(
    "resolutions",
    _name(),
    _link("stocktake", "stocktakes.id"),
    _text("finding"),
    Column("how", String(24), nullable=False),
    _text("reason"),
    _text("who"),
    Column("at", Instant, nullable=False),
    _text("undo"),
    Index("ix_resolutions_stocktake", "stocktake"),
)
ledger = Table(
    "ledger",
    metadata,
    Column("seq", _COUNT, primary_key=True, autoincrement=False),
    Column("at", String(32), nullable=False),
    Column("kind", String(64), nullable=False),
    Column("actor", Text, nullable=False),
    Column("data", Text, nullable=False),
    Column("hash", String(64), nullable=False),
)
head = Table(
    "head",
    metadata,
    Column("one", Integer, primary_key=True),
    Column("seq", _COUNT, nullable=False),
    Column("hash", String(64), nullable=False),
    Column("settings", Text, nullable=False),
    Column("shop", String(32), nullable=False, server_default=text("''")),
)
"""One row: where the ledger ends, locked first by every write, the shop's settings, and a random name for it."""

answers = _table(
    "answers",
    Column("key", String(255), nullable=False, unique=True),
    Column("body", String(64), nullable=False),
    Column("status", Integer, nullable=False),
    _text("location"),
    _text("answer"),
)
"""Answers of calls that came with an Idempotency-Key."""

mappings = _table("mappings", _name("name"), _text("signature"), _text("columns"))
access = _table(
    "access",
    Column("hash", String(64), nullable=False, unique=True),
    Column("name", String(200), nullable=False),
    Column("role", String(16), nullable=False),
    Column("kind", String(16), nullable=False),
    Column("made", Instant, nullable=False),
    Column("expires", Instant),
    Column("seen", Instant),
    Column("agent", Text, nullable=False, server_default=text("''")),
    Index(
        "uq_access_name",
        "name",
        unique=True,
        sqlite_where=text("kind IN ('token', 'device')"),
        postgresql_where=text("kind IN ('token', 'device')"),
    ),
)
"""Tokens, sessions, devices and one-time links, by the SHA-256 of their secret; passwords by their Argon2id hash.

`seen` is when a session was used last, `agent` what its browser said of itself. Backups leave this table empty.
"""
