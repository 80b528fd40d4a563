"""A device and a token can't have the same name."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

NAMED = sa.text("kind IN ('token', 'device')")


def upgrade() -> None:
    op.drop_index("uq_access_token", "access")
    op.create_index("uq_access_name", "access", ["name"], unique=True, sqlite_where=NAMED, postgresql_where=NAMED)
