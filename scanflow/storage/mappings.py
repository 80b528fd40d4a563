"""Which column of an order file holds what, remembered by name. What a mapping says is the caller's own text."""

from __future__ import annotations

from sqlalchemy import Connection, delete, insert, select

from scanflow.storage.tables import mappings


def save(connection: Connection, name: str, signature: str, columns: str) -> None:
    """Remember `columns` under a name, in place of what was there. `signature` names the file's headers."""
    connection.execute(delete(mappings).where(mappings.c.name == name))
    connection.execute(insert(mappings), {"name": name, "signature": signature, "columns": columns})


def load(connection: Connection, name: str) -> str | None:
    return connection.execute(select(mappings.c.columns).where(mappings.c.name == name)).scalar()


def by_signature(connection: Connection, signature: str) -> str | None:
    """The mapping remembered last for a file of these headers."""
    query = select(mappings.c.columns).where(mappings.c.signature == signature)
    return connection.execute(query.order_by(mappings.c.n.desc()).limit(1)).scalar()
