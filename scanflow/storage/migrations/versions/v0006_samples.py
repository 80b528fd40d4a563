"""Counts of some bins alone, and how these were chosen."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("stocktakes", sa.Column("sample", sa.Text))
