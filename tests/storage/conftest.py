"""An opened database of each kind, without anything around it."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from scanflow.storage.database import Database


@pytest.fixture
def database(database_url: str) -> Iterator[Database]:
    database = Database(database_url)
    yield database
    database.close()


@pytest.fixture(params=["sqlite", "postgresql"])
def own_url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The URL of an empty shop's database that no other test uses: it may be spoilt."""
    if request.param == "postgresql":
        return str(request.getfixturevalue("new_postgresql")())
    shutil.copy(request.getfixturevalue("sqlite_template"), tmp_path / "shop.db")
    return f"sqlite:///{tmp_path / 'shop.db'}"


@pytest.fixture
def own_database(own_url: str) -> Iterator[Database]:
    database = Database(own_url)
    yield database
    database.close()
