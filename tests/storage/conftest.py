"""An opened database of each kind, without anything around it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from scanflow.storage.database import Database


@pytest.fixture
def database(database_url: str) -> Iterator[Database]:
    database = Database(database_url)
    yield database
    database.close()
