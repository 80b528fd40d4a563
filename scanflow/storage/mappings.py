"""Which column of an order file holds what, remembered by name. What a mapping says is the caller's own text."""

from __future__ import annotations

from sqlalchemy import Connection, delete, insert, select

from scanflow.storage.tables import mappings


class SqlMappings:
    """A `workflow.ports.Mappings` on one connection."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def save(self, name: str, signature: str, columns: str) -> None:
        self._connection.execute(delete(mappings).where(mappings.c.name == name))
        self._connection.execute(insert(mappings), {"name": name, "signature": signature, "columns": columns})

    def load(self, name: str) -> str | None:
        return self._connection.execute(select(mappings.c.columns).where(mappings.c.name == name)).scalar()

    def named(self, signature: str) -> list[str]:
        query = select(mappings.c.name).where(mappings.c.signature == signature)
        return list(self._connection.execute(query.order_by(mappings.c.n)).scalars())

    def by_signature(self, signature: str) -> str | None:
        query = select(mappings.c.columns).where(mappings.c.signature == signature)
        return self._connection.execute(query.order_by(mappings.c.n.desc()).limit(1)).scalar()
