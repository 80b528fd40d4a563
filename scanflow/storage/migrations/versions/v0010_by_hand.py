"""Orders that a person takes down by hand have a note, and may be collected."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("orders", sa.Column("note", sa.Text, nullable=False, server_default=sa.text("''")))
    op.add_column("orders", sa.Column("collected", sa.Boolean, nullable=False, server_default=sa.false()))
