"""What a database's tables are like, for tests that compare two of them."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, inspect, text

from scanflow.storage.engine import connect

GUARDS = {
    "sqlite": "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name",
    "postgresql": "SELECT tgname, tgtype FROM pg_trigger WHERE NOT tgisinternal ORDER BY tgname",
}


def dropped(url: str) -> str:
    """The same database with nothing in it, as when it was just made."""
    if url.startswith("sqlite"):
        Path(url.removeprefix("sqlite:///")).unlink()
        return url
    engine = connect(url)
    with engine.begin() as connection:
        connection.execute(text("DROP SCHEMA public CASCADE"))
        connection.execute(text("CREATE SCHEMA public"))
    engine.dispose()
    return url


def conditions(connection: Connection) -> dict[str, str]:
    """Name of a partial index → its condition, as the database tells it."""
    kind = connection.dialect.name
    found = {}
    for table in inspect(connection).get_table_names():
        for index in inspect(connection).get_indexes(table):
            where = index.get("dialect_options", {}).get(f"{kind}_where")
            if where is not None:
                found[index["name"]] = str(where)
    return found


def described(connection: Connection) -> dict[str, Any]:
    """All tables with their columns in any order, their links and indexes, and what guards them.

    What the database fills in where no value is given is left out: the code gives a value of every column.
    """
    seen = inspect(connection)
    tables = {
        name: {
            "columns": {each["name"]: (str(each["type"]), each["nullable"]) for each in seen.get_columns(name)},
            "key": seen.get_pk_constraint(name),
            "unique": {each["name"]: each["column_names"] for each in seen.get_unique_constraints(name)},
            "links": {each["name"]: each for each in seen.get_foreign_keys(name)},
            "indexes": {each["name"]: (each["column_names"], each["unique"]) for each in seen.get_indexes(name)},
        }
        for name in seen.get_table_names()
    }
    guards = [tuple(row) for row in connection.execute(text(GUARDS[connection.dialect.name]))]
    return {"tables": tables, "conditions": _bare(conditions(connection)), "guards": guards}


def _bare(conditions: dict[str, str]) -> dict[str, str]:
    """Without brackets and types: PostgreSQL words a condition in another way once it was dumped and loaded."""
    return {name: re.sub(r"[()]|::(text|character varying)(\[\])?", "", said) for name, said in conditions.items()}
