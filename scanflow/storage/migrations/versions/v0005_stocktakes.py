"""Stocktakes, their looks, and how findings were resolved."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

_COUNT = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    _create_stocktakes()
    _create_looks()
    _create_resolutions()


def _create_stocktakes() -> None:
    op.create_table(
        "stocktakes",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("area", sa.String(64), nullable=False),
        sa.Column("note", sa.Text, nullable=False),
        sa.Column("opened", sa.String(32), nullable=False),
        sa.Column("seq", _COUNT, nullable=False),
        sa.Column("state", sa.String(24), nullable=False),
        sa.Column("closed", sa.String(32)),
        sa.Column("report", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_stocktakes"),
        sa.UniqueConstraint("id", name="uq_stocktakes_id"),
    )
    op.create_index("ix_stocktakes_state", "stocktakes", ["state"])


def _create_looks() -> None:
    op.create_table(
        "looks",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("key", sa.String(64), nullable=False),
        sa.Column("body", sa.String(64), nullable=False),
        sa.Column("stocktake", sa.String(64), nullable=False),
        sa.Column("place", sa.String(64), nullable=False),
        sa.Column("at", sa.String(32), nullable=False),
        sa.Column("how", sa.String(24), nullable=False),
        sa.Column("reads", sa.Text, nullable=False),
        sa.Column("whole", sa.Boolean, nullable=False),
        sa.Column("closer", sa.String(64)),
        sa.Column("size", sa.Text, nullable=False),
        sa.Column("photo", sa.String(64)),
        sa.PrimaryKeyConstraint("n", name="pk_looks"),
        sa.UniqueConstraint("key", name="uq_looks_key"),
        sa.ForeignKeyConstraint(["stocktake"], ["stocktakes.id"], name="fk_looks_stocktake"),
        sa.ForeignKeyConstraint(["closer"], ["looks.key"], name="fk_looks_closer"),
        sa.ForeignKeyConstraint(["photo"], ["photos.hash"], name="fk_looks_photo"),
    )
    op.create_index("ix_looks_stocktake", "looks", ["stocktake"])
    op.create_index("ix_looks_photo", "looks", ["photo"])


def _create_resolutions() -> None:
    op.create_table(
        "resolutions",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("stocktake", sa.String(64), nullable=False),
        sa.Column("finding", sa.Text, nullable=False),
        sa.Column("how", sa.String(24), nullable=False),
        sa.Column("reason", sa.Text, nullable=False),
        sa.Column("who", sa.Text, nullable=False),
        sa.Column("at", sa.String(32), nullable=False),
        sa.Column("undo", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_resolutions"),
        sa.UniqueConstraint("id", name="uq_resolutions_id"),
        sa.ForeignKeyConstraint(["stocktake"], ["stocktakes.id"], name="fk_resolutions_stocktake"),
    )
    op.create_index("ix_resolutions_stocktake", "resolutions", ["stocktake"])
