"""Photos of items, each picture once."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "photos",
        sa.Column("n", sa.BigInteger().with_variant(sa.Integer, "sqlite"), primary_key=True, autoincrement=True),
        sa.Column("hash", sa.String(64), nullable=False),
        sa.Column("picture", sa.LargeBinary, nullable=False),
        sa.Column("thumb", sa.LargeBinary, nullable=False),
        sa.PrimaryKeyConstraint("n", name="pk_photos"),
        sa.UniqueConstraint("hash", name="uq_photos_hash"),
    )
    # said in SQL, which both databases take: Alembic gives no column of SQLite a foreign key afterwards
    op.execute("ALTER TABLE items ADD COLUMN photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash)")
