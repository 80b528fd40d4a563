"""Things come by file, which may not know since when they are here; they are reserved, or out of their bins.

And what its channel said of an order last.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("stays", sa.Column("load", sa.String(64)))
    op.add_column("stays", sa.Column("told", sa.String(64), nullable=False, server_default=sa.text("''")))
    op.add_column("stays", sa.Column("undated", sa.Boolean, nullable=False, server_default=sa.false()))
    op.add_column("stays", sa.Column("rehung_from", sa.Text, nullable=False, server_default=sa.text("''")))
    some = sa.text("load IS NOT NULL")
    op.create_index("ix_stays_load", "stays", ["load"], sqlite_where=some, postgresql_where=some)
    op.add_column("items", sa.Column("kept_for", sa.Text, nullable=False, server_default=sa.text("''")))
    op.add_column("items", sa.Column("kept_until", sa.String(32)))
    kept = sa.text("kept_until IS NOT NULL")
    op.create_index("ix_items_kept", "items", ["kept_until"], sqlite_where=kept, postgresql_where=kept)
    op.add_column("items", sa.Column("away", sa.Text, nullable=False, server_default=sa.text("''")))
    op.add_column("items", sa.Column("away_since", sa.String(32)))
    out = sa.text("away_since IS NOT NULL")
    op.create_index("ix_items_away", "items", ["away_since"], sqlite_where=out, postgresql_where=out)
    op.add_column("orders", sa.Column("status", sa.Text, nullable=False, server_default=sa.text("''")))
