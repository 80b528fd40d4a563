"""What an adopted card bears to the letter, beside the compact text that it is found by."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

REPLACE_GUARD = (  # INSERT OR REPLACE fires no trigger for the row it removes
    "CREATE TRIGGER IF NOT EXISTS ledger_kept_insert BEFORE INSERT ON ledger "
    "WHEN EXISTS (SELECT 1 FROM ledger WHERE seq = NEW.seq) "
    "BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END"
)


def upgrade() -> None:
    if not sa.inspect(op.get_bind()).has_table("aliases"):
        _complete_first_tables()
    op.add_column("aliases", sa.Column("printed", sa.String(64)))
    op.execute("UPDATE aliases SET printed = text")
    with op.batch_alter_table("aliases") as aliases:
        aliases.alter_column("printed", existing_type=sa.String(64), nullable=False)


def _complete_first_tables() -> None:
    """0001 was added to after shops had begun with it, the aliases last: what a shop lacks of that is made here."""
    seen = sa.inspect(op.get_bind())
    if all(column["name"] != "in_file" for column in seen.get_columns("lines")):
        # The default stays: SQLite drops one only by making the table anew, and stops refer to lines.
        op.add_column("lines", sa.Column("in_file", sa.Boolean, nullable=False, server_default=sa.true()))
        op.execute("UPDATE lines SET in_file = false WHERE hold = 'not_in_file'")
    for name in ("ix_slots_due", "ix_slots_in_tray", "ix_lines_order", "ix_lines_held", "ix_slots_card"):
        op.execute(f"DROP INDEX IF EXISTS {name}")
    held = sa.text("hold IS NOT NULL")
    op.create_index("ix_lines_held", "lines", ["order"], sqlite_where=held, postgresql_where=held)
    op.create_index("ix_lines_order", "lines", ["order", "state"])
    op.create_index("ix_slots_card", "slots", ["card", "section", "number"])
    if op.get_bind().dialect.name == "sqlite":
        op.execute(REPLACE_GUARD)
    op.create_table(
        "aliases",
        sa.Column("n", sa.BigInteger().with_variant(sa.Integer, "sqlite"), primary_key=True, autoincrement=True),
        sa.Column("text", sa.String(64), nullable=False),
        sa.Column("code", sa.String(64), nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_aliases"),
        sa.UniqueConstraint("text", name="uq_aliases_text"),
        sa.ForeignKeyConstraint(["code"], ["slots.code"], name="fk_aliases_code"),
    )
    op.create_index("ix_aliases_code", "aliases", ["code"])
