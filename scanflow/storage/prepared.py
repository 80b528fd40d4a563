"""Statements built with SQLAlchemy Core, compiled once and run on the driver's own cursor.

A scan is a dozen small statements; building and wrapping them anew would cost more than running them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any, ClassVar

from sqlalchemy import Boolean, Connection, Executable, TypeDecorator
from sqlalchemy.engine import Dialect

from scanflow.storage.tables import Instant

Converter = Callable[[Any], Any]


def _converter(column: Any) -> Converter | None:
    """How a value comes out of the driver, None for as it is."""
    if isinstance(column.type, Boolean):
        return lambda value: None if value is None else bool(value)
    if isinstance(column.type, TypeDecorator):
        read: Any = column.type.process_result_value
        return lambda value: read(value, None)
    return None


def reader(columns: list[Any]) -> Callable[[Any], list[Any]]:
    """Turns a row of the driver into values, one for each column."""
    steps = [(place, convert) for place, column in enumerate(columns) if (convert := _converter(column)) is not None]

    def read(row: Any) -> list[Any]:
        values = list(row)
        for place, convert in steps:
            values[place] = convert(values[place])
        return values

    return read


def plain(value: Any) -> Any:
    """A value as the driver takes it: times as text in UTC, enums as their text."""
    if isinstance(value, datetime):
        return Instant().process_bind_param(value, None)
    return str(value) if isinstance(value, str) else value


class Prepared:
    """One statement for one kind of database; its parameters are given by name."""

    def __init__(self, statement: Executable, dialect: Dialect, names: list[str] | None = None) -> None:
        compiled: Any = statement.compile(dialect=dialect, column_keys=names)  # type: ignore[attr-defined]
        self.sql = str(compiled)
        self.order: list[str] | None = compiled.positiontup
        self.fixed = {name: plain(value) for name, value in compiled.params.items() if value is not None}

    def run(self, connection: Connection, given: Mapping[str, Any]) -> Any:
        """The driver's cursor after running it."""
        parameters = self.fixed | {name: plain(value) for name, value in given.items()}
        cursor = connection.connection.cursor()
        cursor.execute(self.sql, [parameters[name] for name in self.order] if self.order is not None else parameters)
        return cursor


class Statements:
    """The prepared statements of one kind of database, each built when a process first needs it."""

    _of_kinds: ClassVar[dict[str, Statements]] = {}

    def __init__(self, dialect: Dialect) -> None:
        self.dialect = dialect
        self._known: dict[Any, Prepared] = {}

    @classmethod
    def of(cls, dialect: Dialect) -> Statements:
        """The same for all databases of a kind: a backup that is verified is another database of this process."""
        return cls._of_kinds.setdefault(dialect.name, cls(dialect))

    def get(self, key: Any, build: Callable[[], Executable], names: list[str] | None = None) -> Prepared:
        found = self._known.get(key)
        if found is None:
            found = self._known[key] = Prepared(build(), self.dialect, names)
        return found
