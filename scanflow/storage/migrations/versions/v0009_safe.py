"""Each shop has a name, by which an older or another file in its place is noticed; sessions can be listed."""

from __future__ import annotations

import secrets

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("head", sa.Column("shop", sa.String(32), nullable=False, server_default=sa.text("''")))
    op.add_column("access", sa.Column("seen", sa.String(32)))
    op.add_column("access", sa.Column("agent", sa.Text, nullable=False, server_default=sa.text("''")))
    op.get_bind().execute(sa.text("UPDATE head SET shop = :shop"), {"shop": secrets.token_hex(8)})
