"""Channels, listings, packing notes, hand-overs and returns; files of orders can be taken back."""

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
    for name in ("status", "quantity"):
        op.add_column("lines", sa.Column(name, sa.Text, nullable=False, server_default=sa.text("''")))
    some = sa.text("load IS NOT NULL")
    op.create_index("ix_orders_load", "orders", ["load"], sqlite_where=some, postgresql_where=some)
    op.create_index("ix_orders_channel", "orders", ["channel"])
    op.add_column("items", sa.Column("packing", sa.Text, nullable=False, server_default=sa.text("''")))
    _parcels()
    _listings()
    _returns()


def _parcels() -> None:
    for name in ("carrier", "handed_by", "collected_by"):
        op.add_column("parcels", sa.Column(name, sa.Text, nullable=False, server_default=sa.text("''")))
    op.add_column("parcels", sa.Column("later", sa.Boolean, nullable=False, server_default=sa.false()))
    op.create_index("ix_parcels_closed", "parcels", ["at_table", "closed"])
    op.create_index("ix_parcels_handed", "parcels", ["handed"])


def _listings() -> None:
    """Each offer of a thing on a channel is a listing, and what was learned from orders is one too."""
    op.create_table(
        "listings",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("item", sa.String(64), nullable=False),
        sa.Column("channel", sa.Text, nullable=False),
        sa.Column("listing", sa.Text, nullable=False),
        sa.Column("line", sa.String(64)),
        sa.Column("since", sa.String(32), nullable=False),
        sa.Column("ended", sa.String(32)),
        sa.ForeignKeyConstraint(["item"], ["items.id"], name="fk_listings_item"),
        sa.ForeignKeyConstraint(["line"], ["lines.id"], name="fk_listings_line"),
        sa.PrimaryKeyConstraint("n", name="pk_listings"),
        sa.UniqueConstraint("id", name="uq_listings_id"),
    )
    _move_over()
    op.drop_table("learned")
    op.drop_index("ix_items_listing", "items")
    op.drop_column("items", "listing")
    op.create_index("ix_listings_listing", "listings", ["listing"])
    op.create_index("ix_listings_item", "listings", ["item"])
    brought, up = sa.text("line IS NOT NULL"), sa.text("ended IS NULL")
    op.create_index("ix_listings_line", "listings", ["line"], sqlite_where=brought, postgresql_where=brought)
    op.create_index("ix_listings_up", "listings", ["n"], sqlite_where=up, postgresql_where=up)


def _move_over() -> None:
    """An item's own id first, since it came; then those that orders brought, each on the channel of its order. What has
    left long ago has no offer to be taken down.
    """
    op.execute(
        "INSERT INTO listings (id, item, channel, listing, since) "
        "SELECT items.id, items.id, '', items.listing, min(stays.began) "
        "FROM items JOIN stays ON stays.item = items.id WHERE items.listing <> '' "
        "GROUP BY items.n, items.id, items.listing ORDER BY items.n"
    )
    op.execute(
        "INSERT INTO listings (id, item, channel, listing, line, since) "
        "SELECT learned.id, learned.item, orders.channel, learned.listing, learned.line, orders.received "
        'FROM learned JOIN lines ON lines.id = learned.line JOIN orders ON orders.id = lines."order" '
        "ORDER BY learned.n"
    )
    op.execute(
        "UPDATE listings SET ended = (SELECT max(stays.ended) FROM stays WHERE stays.item = listings.item) "
        "WHERE NOT EXISTS (SELECT 1 FROM stays WHERE stays.item = listings.item AND stays.state = 'stored')"
    )


def _returns() -> None:
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
