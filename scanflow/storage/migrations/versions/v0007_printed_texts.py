"""What an adopted card bears to the letter, beside the compact text that it is found by."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("aliases", sa.Column("printed", sa.String(64)))
    op.execute("UPDATE aliases SET printed = text")
    with op.batch_alter_table("aliases") as aliases:
        aliases.alter_column("printed", existing_type=sa.String(64), nullable=False)
