"""The first tables."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

COUNT = sa.BigInteger().with_variant(sa.Integer(), "sqlite")

SQLITE_GUARDS = (
    "CREATE TRIGGER ledger_kept_{name} BEFORE {event} ON ledger "
    "BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END"
)
SQLITE_REPLACE_GUARD = (  # INSERT OR REPLACE fires no trigger for the row it removes
    "CREATE TRIGGER ledger_kept_insert BEFORE INSERT ON ledger "
    "WHEN EXISTS (SELECT 1 FROM ledger WHERE seq = NEW.seq) "
    "BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END"
)
POSTGRESQL_GUARD = """
CREATE FUNCTION ledger_kept() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN RAISE EXCEPTION 'the ledger is append-only'; END $$;
CREATE TRIGGER ledger_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger
FOR EACH STATEMENT EXECUTE FUNCTION ledger_kept();
"""


def upgrade() -> None:
    _create_tables()
    if op.get_bind().dialect.name == "sqlite":
        for event in ("UPDATE", "DELETE"):
            op.execute(SQLITE_GUARDS.format(name=event.lower(), event=event))
        op.execute(SQLITE_REPLACE_GUARD)
    else:
        op.execute(POSTGRESQL_GUARD)


def _create_tables() -> None:
    op.create_table(
        "access",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("role", sa.String(length=16), nullable=False),
        sa.Column("kind", sa.String(length=16), nullable=False),
        sa.Column("made", sa.String(32), nullable=False),
        sa.Column("expires", sa.String(32), nullable=True),
        sa.PrimaryKeyConstraint("n", name="pk_access"),
        sa.UniqueConstraint("hash", name="uq_access_hash"),
    )
    op.create_index(
        "uq_access_token",
        "access",
        ["name"],
        unique=True,
        sqlite_where=sa.text("kind = 'token'"),
        postgresql_where=sa.text("kind = 'token'"),
    )
    op.create_table(
        "answers",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("key", sa.String(length=255), nullable=False),
        sa.Column("body", sa.String(length=64), nullable=False),
        sa.Column("status", sa.Integer(), nullable=False),
        sa.Column("location", sa.Text(), nullable=False),
        sa.Column("answer", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_answers"),
        sa.UniqueConstraint("key", name="uq_answers_key"),
    )
    op.create_table(
        "head",
        sa.Column("one", sa.Integer(), nullable=False),
        sa.Column("seq", COUNT, nullable=False),
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("settings", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("one", name="pk_head"),
    )
    op.create_table(
        "items",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("title", sa.Text(), nullable=False),
        sa.Column("listing", sa.Text(), nullable=False),
        sa.Column("notes", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_items"),
        sa.UniqueConstraint("id", name="uq_items_id"),
    )
    op.create_table(
        "ledger",
        sa.Column("seq", COUNT, autoincrement=False, nullable=False),
        sa.Column("at", sa.String(length=32), nullable=False),
        sa.Column("kind", sa.String(length=64), nullable=False),
        sa.Column("actor", sa.Text(), nullable=False),
        sa.Column("data", sa.Text(), nullable=False),
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.PrimaryKeyConstraint("seq", name="pk_ledger"),
    )
    op.create_table(
        "mappings",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("name", sa.String(length=64), nullable=False),
        sa.Column("signature", sa.Text(), nullable=False),
        sa.Column("columns", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_mappings"),
        sa.UniqueConstraint("name", name="uq_mappings_name"),
    )
    op.create_table(
        "parcels",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("at_table", sa.String(length=64), nullable=False),
        sa.Column("orders", sa.Text(), nullable=False),
        sa.Column("opened", sa.String(32), nullable=False),
        sa.Column("state", sa.String(24), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_parcels"),
        sa.UniqueConstraint("id", name="uq_parcels_id"),
    )
    op.create_index(
        "uq_parcels_open",
        "parcels",
        ["at_table"],
        unique=True,
        sqlite_where=sa.text("state = 'open'"),
        postgresql_where=sa.text("state = 'open'"),
    )
    op.create_table(
        "racks",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("name", sa.String(length=64), nullable=False),
        sa.Column("aisle", sa.Integer(), nullable=False),
        sa.Column("start", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_racks"),
        sa.UniqueConstraint("name", name="uq_racks_name"),
    )
    op.create_table(
        "rounds",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("opened", sa.String(32), nullable=False),
        sa.Column("state", sa.String(24), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_rounds"),
        sa.UniqueConstraint("id", name="uq_rounds_id"),
    )
    op.create_table(
        "scans",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("key", sa.String(length=64), nullable=False),
        sa.Column("body", sa.String(length=64), nullable=False),
        sa.Column("station", sa.String(24), nullable=False),
        sa.Column("spot", sa.String(length=64), nullable=False),
        sa.Column("code", sa.String(length=64), nullable=True),
        sa.Column("take_out", sa.Boolean(), nullable=False),
        sa.Column("accepted", sa.Boolean(), nullable=False),
        sa.Column("changed", sa.Boolean(), nullable=False),
        sa.Column("line", sa.String(length=64), nullable=True),
        sa.Column("parcel", sa.String(length=64), nullable=True),
        sa.Column("answer", sa.Text(), nullable=False),
        sa.Column("was", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_scans"),
        sa.UniqueConstraint("key", name="uq_scans_key"),
    )
    op.create_index("ix_scans_spot", "scans", ["station", "spot", "n"], unique=False)
    op.create_table(
        "sections",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("code", sa.String(length=64), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("slots_per_bin", sa.Integer(), nullable=False),
        sa.Column("colour", sa.Text(), nullable=False),
        sa.Column("digits", sa.Integer(), nullable=False),
        sa.Column("last", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_sections"),
        sa.UniqueConstraint("code", name="uq_sections_code"),
    )
    op.create_table(
        "bins",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("name", sa.String(length=64), nullable=False),
        sa.Column("rack", sa.String(length=64), nullable=False),
        sa.Column("tier", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("section", sa.String(length=64), nullable=False),
        sa.ForeignKeyConstraint(["rack"], ["racks.name"], name="fk_bins_rack"),
        sa.ForeignKeyConstraint(["section"], ["sections.code"], name="fk_bins_section"),
        sa.PrimaryKeyConstraint("n", name="pk_bins"),
        sa.UniqueConstraint("name", name="uq_bins_name"),
    )
    op.create_index("ix_bins_section", "bins", ["section"], unique=False)
    op.create_index("uq_bins_place", "bins", ["rack", "tier", "position"], unique=True)
    op.create_table(
        "orders",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("number", sa.Text(), nullable=False),
        sa.Column("channel", sa.Text(), nullable=False),
        sa.Column("received", sa.String(32), nullable=False),
        sa.Column("slip", sa.Integer(), nullable=False),
        sa.Column("ordered_at", sa.String(32), nullable=True),
        sa.Column("ship_by", sa.String(32), nullable=True),
        sa.Column("parcel", sa.String(length=64), nullable=True),
        sa.ForeignKeyConstraint(["parcel"], ["parcels.id"], name="fk_orders_parcel"),
        sa.PrimaryKeyConstraint("n", name="pk_orders"),
        sa.UniqueConstraint("id", name="uq_orders_id"),
        sa.UniqueConstraint("slip", name="uq_orders_slip"),
    )
    op.create_index("uq_orders_number", "orders", ["number", "channel"], unique=True)
    op.create_table(
        "slots",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("code", sa.String(length=64), nullable=False),
        sa.Column("section", sa.String(length=64), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("bin", sa.String(length=64), nullable=False),
        sa.Column("turns", sa.Integer(), nullable=False),
        sa.Column("card", sa.String(24), nullable=False),
        sa.Column("seen_station", sa.String(24), nullable=True),
        sa.Column("seen_place", sa.String(length=64), nullable=True),
        sa.Column("seen_accepted", sa.Boolean(), nullable=True),
        sa.ForeignKeyConstraint(["bin"], ["bins.name"], name="fk_slots_bin"),
        sa.ForeignKeyConstraint(["section"], ["sections.code"], name="fk_slots_section"),
        sa.PrimaryKeyConstraint("n", name="pk_slots"),
        sa.UniqueConstraint("code", name="uq_slots_code"),
    )
    op.create_index("ix_slots_card", "slots", ["card", "section", "number"], unique=False)
    op.create_index("uq_slots_number", "slots", ["section", "number"], unique=True)
    op.create_table(
        "aliases",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("text", sa.String(length=64), nullable=False),
        sa.Column("code", sa.String(length=64), nullable=False),
        sa.ForeignKeyConstraint(["code"], ["slots.code"], name="fk_aliases_code"),
        sa.PrimaryKeyConstraint("n", name="pk_aliases"),
        sa.UniqueConstraint("text", name="uq_aliases_text"),
    )
    op.create_index("ix_aliases_code", "aliases", ["code"], unique=False)
    op.create_table(
        "stays",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("item", sa.String(length=64), nullable=False),
        sa.Column("code", sa.String(length=64), nullable=False),
        sa.Column("turn", sa.Integer(), nullable=False),
        sa.Column("began", sa.String(32), nullable=False),
        sa.Column("state", sa.String(24), nullable=False),
        sa.Column("ended", sa.String(32), nullable=True),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["code"], ["slots.code"], name="fk_stays_code"),
        sa.ForeignKeyConstraint(["item"], ["items.id"], name="fk_stays_item"),
        sa.PrimaryKeyConstraint("n", name="pk_stays"),
        sa.UniqueConstraint("id", name="uq_stays_id"),
    )
    op.create_index("ix_stays_item", "stays", ["item"], unique=False)
    op.create_index(
        "uq_stays_open",
        "stays",
        ["code"],
        unique=True,
        sqlite_where=sa.text("state = 'stored'"),
        postgresql_where=sa.text("state = 'stored'"),
    )
    op.create_index("uq_stays_turn", "stays", ["code", "turn"], unique=True)
    op.create_table(
        "lines",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("order", sa.String(length=64), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("reference", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=False),
        sa.Column("listing", sa.Text(), nullable=False),
        sa.Column("stay", sa.String(length=64), nullable=True),
        sa.Column("state", sa.String(24), nullable=False),
        sa.Column("hold", sa.String(24), nullable=True),
        sa.Column("why", sa.Text(), nullable=False),
        sa.Column("parcel", sa.String(length=64), nullable=True),
        sa.Column("round", sa.String(length=64), nullable=True),
        sa.Column("basket", sa.Integer(), nullable=True),
        sa.Column("scan", sa.String(length=64), nullable=True),
        sa.Column("in_file", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["order"], ["orders.id"], name="fk_lines_order"),
        sa.ForeignKeyConstraint(["parcel"], ["parcels.id"], name="fk_lines_parcel"),
        sa.ForeignKeyConstraint(["round"], ["rounds.id"], name="fk_lines_round"),
        sa.ForeignKeyConstraint(["stay"], ["stays.id"], name="fk_lines_stay"),
        sa.PrimaryKeyConstraint("n", name="pk_lines"),
        sa.UniqueConstraint("id", name="uq_lines_id"),
    )
    op.create_index(
        "ix_lines_held",
        "lines",
        ["order"],
        unique=False,
        sqlite_where=sa.text("hold IS NOT NULL"),
        postgresql_where=sa.text("hold IS NOT NULL"),
    )
    op.create_index("ix_lines_order", "lines", ["order", "state"], unique=False)
    op.create_index("ix_lines_parcel", "lines", ["parcel"], unique=False)
    op.create_index("ix_lines_state", "lines", ["state"], unique=False)
    op.create_index("ix_lines_stay", "lines", ["stay"], unique=False)
    op.create_index(
        "uq_lines_live",
        "lines",
        ["stay"],
        unique=True,
        sqlite_where=sa.text("state IN ('waiting', 'picked', 'packed', 'short')"),
        postgresql_where=sa.text("state IN ('waiting', 'picked', 'packed', 'short')"),
    )
    op.create_table(
        "stops",
        sa.Column("n", COUNT, autoincrement=True, nullable=False),
        sa.Column("round", sa.String(length=64), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("line", sa.String(length=64), nullable=False),
        sa.Column("bin", sa.String(length=64), nullable=False),
        sa.ForeignKeyConstraint(["bin"], ["bins.name"], name="fk_stops_bin"),
        sa.ForeignKeyConstraint(["line"], ["lines.id"], name="fk_stops_line"),
        sa.ForeignKeyConstraint(["round"], ["rounds.id"], name="fk_stops_round"),
        sa.PrimaryKeyConstraint("n", name="pk_stops"),
    )
    op.create_index("uq_stops_place", "stops", ["round", "position"], unique=True)
