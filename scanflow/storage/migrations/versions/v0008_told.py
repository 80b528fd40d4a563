"""What was told stays told: holds are a set, doubts belong to items, and a card's readings stand beside its account."""

from __future__ import annotations

import json
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

_COUNT = sa.BigInteger().with_variant(sa.Integer, "sqlite")
_PACKED_AND_SEEN = "Its card was seen in "
"""How the words of a line begin that was held since its card was read away from its parcel."""


def upgrade() -> None:
    """Columns are added with a default and dropped in place: a table that others refer to is never made anew."""
    _create_doubts()
    _create_learned()
    _add_columns()
    connection = op.get_bind()
    _keep_holds(connection)
    _keep_doubts(connection)
    _keep_outs(connection)
    _keep_parcels_of_readings(connection)
    _keep_closings(connection)
    op.drop_index("ix_lines_held", "lines")
    op.drop_column("lines", "hold")
    op.drop_column("lines", "why")
    held = sa.text("holds <> '[]'")
    op.create_index("ix_items_listing", "items", ["listing"])
    op.create_index("ix_lines_held", "lines", ["order"], sqlite_where=held, postgresql_where=held)


def _create_doubts() -> None:
    op.create_table(
        "doubts",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("item", sa.String(64), nullable=False),
        sa.Column("kind", sa.String(24), nullable=False),
        sa.Column("words", sa.Text, nullable=False),
        sa.Column("since", sa.String(32), nullable=False),
        sa.Column("by", sa.Text, nullable=False),
        sa.Column("photo", sa.String(64)),
        sa.Column("how", sa.String(24)),
        sa.Column("note", sa.Text, nullable=False),
        sa.Column("ended", sa.String(32)),
        sa.ForeignKeyConstraint(["item"], ["items.id"], name="fk_doubts_item"),
        sa.PrimaryKeyConstraint("n", name="pk_doubts"),
        sa.UniqueConstraint("id", name="uq_doubts_id"),
    )
    op.create_index("ix_doubts_item", "doubts", ["item", "how"])


def _create_learned() -> None:
    op.create_table(
        "learned",
        sa.Column("n", _COUNT, primary_key=True, autoincrement=True),
        sa.Column("id", sa.String(64), nullable=False),
        sa.Column("listing", sa.Text, nullable=False),
        sa.Column("item", sa.String(64), nullable=False),
        sa.Column("line", sa.String(64), nullable=False),
        sa.ForeignKeyConstraint(["item"], ["items.id"], name="fk_learned_item"),
        sa.ForeignKeyConstraint(["line"], ["lines.id"], name="fk_learned_line"),
        sa.PrimaryKeyConstraint("n", name="pk_learned"),
        sa.UniqueConstraint("id", name="uq_learned_id"),
    )
    op.create_index("ix_learned_listing", "learned", ["listing"])
    op.create_index("ix_learned_item", "learned", ["item"])


def _add_columns() -> None:
    for table, *columns in (
        (
            "slots",
            sa.Column("seen_at", sa.String(32)),
            sa.Column("seen_parcel", sa.String(64)),
            sa.Column("out_station", sa.String(24)),
            sa.Column("out_place", sa.String(64)),
            sa.Column("out_round", sa.String(64)),
            sa.Column("out_basket", sa.Integer),
            sa.Column("fetch_by", sa.Text),
            sa.Column("fetch_until", sa.String(32)),
            sa.Column("twin", sa.Boolean, nullable=False, server_default=sa.false()),
        ),
        ("parcels", sa.Column("closed", sa.String(32)), sa.Column("handed", sa.String(32))),
        ("orders", sa.Column("sent_number", sa.Text, nullable=False, server_default=sa.text("''"))),
        ("lines", sa.Column("holds", sa.Text, nullable=False, server_default=sa.text("'[]'"))),
        (
            "scans",
            sa.Column("at", sa.String(32)),
            sa.Column("stood", sa.Text, nullable=False, server_default=sa.text("''")),
        ),
    ):
        for column in columns:
            op.add_column(table, column)


def _rows(connection: sa.Connection, query: str, **given: Any) -> list[Any]:
    return list(connection.execute(sa.text(query), given))


def _run(connection: sa.Connection, statement: str, **given: Any) -> None:
    connection.execute(sa.text(statement), given)


def _keep_holds(connection: sa.Connection) -> None:
    for row in _rows(connection, "SELECT id, hold, why, state FROM lines WHERE hold IS NOT NULL"):
        read_away = row.state == "packed" and row.why.startswith(_PACKED_AND_SEEN)
        hold = "misplaced" if row.hold == "still_here" or (row.hold == "suspect" and read_away) else row.hold
        _run(
            connection, "UPDATE lines SET holds = :holds WHERE id = :id", holds=json.dumps([[hold, row.why]]), id=row.id
        )


def _keep_doubts(connection: sa.Connection) -> None:
    """What a person doubted of a line or a stay is a doubt of the item, for as long as the ledger can say."""
    since = connection.execute(sa.text("SELECT max(at) FROM ledger")).scalar()
    held = "SELECT s.item, l.why AS words, l.holds FROM lines l JOIN stays s ON s.id = l.stay WHERE l.hold = 'suspect'"
    said = {(row.item, row.words) for row in _rows(connection, held) if json.loads(row.holds)[0][0] == "suspect"}
    doubted = "SELECT item, reason AS words FROM stays WHERE state = 'stored' AND reason <> ''"
    said |= {(row.item, row.words) for row in _rows(connection, doubted)}
    missed = "SELECT s.item FROM lines l JOIN stays s ON s.id = l.stay WHERE l.state = 'short'"
    told = [("not_this", item, words) for item, words in sorted(said)]
    told += [("missing", row.item, "") for row in _rows(connection, missed)]
    for number, (kind, item, words) in enumerate(told, 1):
        _run(
            connection,
            "INSERT INTO doubts (id, item, kind, words, since, by, note)"
            " VALUES (:id, :item, :kind, :words, :since, '', '')",
            **{"id": f"kept-{number}", "item": item, "kind": kind, "words": words, "since": since},
        )
    _run(connection, "UPDATE stays SET reason = '' WHERE state = 'stored'")


def _keep_outs(connection: sa.Connection) -> None:
    """A thing that was scanned out of its bin and not packed is in its basket, or on the table it was taken out at."""
    query = (
        "SELECT k.code, k.bin, k.seen_station, k.seen_place, k.seen_accepted, s.id AS stay"
        " FROM slots k JOIN stays s ON s.code = k.code AND s.state = 'stored'"
    )
    carried = {
        row.stay: row
        for row in _rows(connection, "SELECT stay, round, basket, state FROM lines WHERE basket IS NOT NULL ORDER BY n")
    }
    packed = {row.stay for row in _rows(connection, "SELECT stay FROM lines WHERE state = 'packed'")}
    for row in _rows(connection, query):
        line = carried.get(row.stay)
        at_bin = row.seen_station == "bin" and row.seen_accepted
        at_table = row.seen_station == "table" and row.seen_accepted and row.stay not in packed
        if not at_table and not at_bin and (line is None or line.state != "picked"):
            continue
        _run(
            connection,
            "UPDATE slots SET out_station = :station, out_place = :place, out_round = :round, out_basket = :basket"
            " WHERE code = :code",
            station="table" if at_table else "bin",
            place=row.seen_place if at_table or at_bin else row.bin,
            round=line.round if line is not None and not at_table else None,
            basket=line.basket if line is not None and not at_table else None,
            code=row.code,
        )


def _keep_parcels_of_readings(connection: sa.Connection) -> None:
    """A packed thing whose card was read at a table last was read at its own: no other reading left it so."""
    packed = "SELECT s.code, l.parcel FROM lines l JOIN stays s ON s.id = l.stay WHERE l.state = 'packed'"
    for row in _rows(connection, packed):
        _run(
            connection,
            "UPDATE slots SET seen_parcel = :parcel WHERE code = :code AND seen_station = 'table'",
            parcel=row.parcel,
            code=row.code,
        )


def _keep_closings(connection: sa.Connection) -> None:
    closings = {}
    for row in _rows(connection, "SELECT at, data FROM ledger WHERE kind = 'parcel closed' ORDER BY seq"):
        closings[json.loads(row.data)["parcel"]] = row.at
    for row in _rows(connection, "SELECT id, opened FROM parcels WHERE state = 'closed'"):
        _run(
            connection,
            "UPDATE parcels SET closed = :at WHERE id = :id",
            at=closings.get(row.id, row.opened),
            id=row.id,
        )
