"""Channels have what their statuses mean, a file of orders can be taken back, and returns are expected."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None

_COUNT = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    op.create_table(
        "channels",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("name", sa.String(100), nullable=False),
        sa.Column("statuses", sa.Text, nullable=False),
        sa.Column("complete", sa.Boolean, nullable=False, server_default=sa.false()),
        sa.PrimaryKeyConstraint("n", name="pk_channels"),
        sa.UniqueConstraint("name", name="uq_channels_name"),
    )
    op.create_table(
        "changed_orders",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("load", sa.String(64), nullable=False),
        sa.Column("order", sa.String(64), nullable=False),
        sa.Column("at", sa.String(32), nullable=False),
        sa.Column("was", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["order"], ["orders.id"], name="fk_changed_orders_order"),
        sa.PrimaryKeyConstraint("n", name="pk_changed_orders"),
        sa.UniqueConstraint("id", name="uq_changed_orders_id"),
    )
    op.create_index("ix_changed_orders_load", "changed_orders", ["load"])
    op.add_column("orders", sa.Column("load", sa.String(64)))
    some = sa.text("load IS NOT NULL")
    op.create_index("ix_orders_load", "orders", ["load"], sqlite_where=some, postgresql_where=some)
    op.create_index("ix_orders_channel", "orders", ["channel"])
    op.create_table(
        "returns",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("order", sa.String(64)),
        sa.Column("lines", sa.Text, nullable=False),
        sa.Column("why", sa.Text, nullable=False),
        sa.Column("until", sa.String(32)),
        sa.Column("state", sa.String(24), nullable=False),
        sa.Column("opened", sa.String(32), nullable=False),
        sa.Column("arrived", sa.String(32)),
        sa.Column("checked", sa.String(32)),
        sa.Column("checks", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["order"], ["orders.id"], name="fk_returns_order"),
        sa.PrimaryKeyConstraint("n", name="pk_returns"),
        sa.UniqueConstraint("id", name="uq_returns_id"),
    )
    op.create_index("ix_returns_order", "returns", ["order"])
    op.create_index("ix_returns_state", "returns", ["state"])
