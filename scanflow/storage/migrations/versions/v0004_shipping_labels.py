"""Shipping labels, each bound to one parcel."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "labels",
        sa.Column("n", sa.BigInteger().with_variant(sa.Integer, "sqlite"), primary_key=True, autoincrement=True),
        sa.Column("hash", sa.String(64), nullable=False),
        sa.Column("parcel", sa.String(64), nullable=False),
        sa.Column("ends", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_labels"),
        sa.UniqueConstraint("hash", name="uq_labels_hash"),
        sa.ForeignKeyConstraint(["parcel"], ["parcels.id"], name="fk_labels_parcel"),
    )
    op.create_index("ix_labels_parcel", "labels", ["parcel"])
