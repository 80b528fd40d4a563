"""Bringing a database up to date when it is opened."""

from __future__ import annotations

import subprocess
import sys
from datetime import datetime
from pathlib import Path

import pytest
from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from memory import NOON
from schema import conditions, dropped
from sqlalchemy import inspect, text

from scanflow.domain import events
from scanflow.domain.things import Alias, Item, Listing
from scanflow.storage import access, tables
from scanflow.storage import database as module
from scanflow.storage.database import REVISION, Database, NewerData
from scanflow.storage.engine import connect
from scanflow.storage.trust.verify import revision


def test_migrations_make_the_tables_of_the_code(own_database: Database) -> None:
    """After all migrations the database has the tables, columns and indexes that the code speaks of, and no other."""
    with own_database.engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True, "compare_server_default": True})
        assert [] == compare_metadata(context, tables.metadata)


def test_partial_indexes_have_their_conditions(own_database: Database) -> None:
    """The conditions of partial indexes, which that comparison leaves out, are those of the code too."""
    with own_database.engine.begin() as connection:
        migrated = conditions(connection)
        tables.metadata.drop_all(connection)
        tables.metadata.create_all(connection)
        assert conditions(connection) == migrated
    assert {"uq_stays_open", "uq_lines_live", "uq_parcels_open", "uq_access_name"} <= migrated.keys()


def test_the_code_knows_the_last_migration() -> None:
    """The revision that the code asks for is the end of the one line of migrations."""
    folder = Path(module.__file__).parent / "migrations"
    assert [REVISION] == ScriptDirectory(str(folder)).get_heads()


def test_opening_twice_changes_nothing(own_database: Database, own_url: str) -> None:
    """A database that is up to date is left as it is, and running its migrations again does no harm."""
    with own_database.writing(NOON, "tester") as unit:
        unit.add(Item("i1", "Saddle"))
        unit.record(events.Changed())
    Database(own_url).close()
    with own_database.engine.begin() as connection:
        module.run_migrations(connection, REVISION)
    with own_database.reading(NOON) as view:
        assert (1, (Item("i1", "Saddle"),)) == (view.seq, view.find(Item))


def test_newer_data_is_told_and_left_alone(own_database: Database, own_url: str) -> None:
    """A database whose revision this code does not know is not opened, and stays as it is."""
    newer = text("UPDATE alembic_version SET version_num = '9999'")
    with own_database.engine.begin() as connection:
        connection.execute(newer)
    with pytest.raises(NewerData, match=f"revision 9999, and this one knows them up to {REVISION}"):
        Database(own_url)
    with own_database.engine.connect() as connection:
        assert "9999" == revision(connection)


def test_a_failed_migration_leaves_nothing(own_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """When opening fails after the tables were made, none of them is there, and the next opening makes them."""
    url = dropped(own_url)

    def fail(*_: object) -> None:
        raise OSError("no more room")

    with monkeypatch.context() as patch:
        patch.setattr(module, "asdict", fail)
        with pytest.raises(OSError, match="no more room"):
            Database(url)
    engine = connect(url)
    assert [] == inspect(engine).get_table_names()
    engine.dispose()
    Database(url).close()


def test_tokens_of_the_first_tables_go_on(own_url: str) -> None:
    """A database that stopped at the first migration is brought up to date with its tokens."""
    engine = connect(dropped(own_url))
    config = Config()
    config.set_main_option("script_location", "scanflow:storage/migrations")
    with engine.begin() as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, "0001")
        token = "INSERT INTO access (hash, name, role, kind, made) VALUES (:hash, 'printer', 'program', 'token', :made)"
        connection.execute(text(token), {"hash": access.hash_of("s3cret"), "made": NOON.isoformat()})
    engine.dispose()
    database = Database(own_url)
    with database.reading(NOON) as view:
        assert "printer" == getattr(access.SqlAccess(view.connection, NOON).visitor("token", "s3cret"), "name", None)
    database.close()


OLD_ALIAS = (
    "INSERT INTO sections (code, name, slots_per_bin, colour, digits, last) VALUES ('D', 'Parts', 4, 'blue', 3, 1)",
    "INSERT INTO racks (name, aisle, start) VALUES ('A', 0, 0)",
    "INSERT INTO bins (name, rack, tier, position, section) VALUES ('A-1-1', 'A', 1, 1, 'D')",
    "INSERT INTO slots (code, section, number, bin, turns, card) VALUES ('D001', 'D', 1, 'A-1-1', 0, 'tray')",
    "INSERT INTO aliases (text, code) VALUES ('AB0123', 'D001')",
)


def test_adopted_cards_of_earlier_tables_go_on(own_url: str) -> None:
    """Of a card that was adopted before its printed text was kept, the compact text is taken for it."""
    engine = connect(dropped(own_url))
    config = Config()
    config.set_main_option("script_location", "scanflow:storage/migrations")
    with engine.begin() as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, "0006")
        for row in OLD_ALIAS:
            connection.execute(text(row))
    engine.dispose()
    database = Database(own_url)
    with database.reading(NOON) as view:
        assert Alias("AB0123", "D001", "AB0123") == view.get(Alias, "AB0123")
    database.close()


_AT, _LATER = "2026-03-01T08:00:00.000000+00:00", "2026-03-02T08:00:00.000000+00:00"
OLD_LISTINGS = (
    *OLD_ALIAS[:-1],
    *(
        f"INSERT INTO items (id, title, listing, notes) VALUES ('{name}', 'Bell', '{listing}', '')"
        for name, listing in (("i1", "L-1"), ("i2", "L-2"), ("i3", ""))
    ),
    *(
        "INSERT INTO stays (id, item, code, turn, began, state, ended, reason) VALUES "
        f"('{name}', '{item}', 'D001', {turn}, '{_AT}', '{state}', {ended}, '')"
        for name, item, turn, state, ended in (
            ("s1", "i1", 1, "withdrawn", f"'{_LATER}'"),
            ("s2", "i2", 2, "stored", "NULL"),
            ("s3", "i3", 3, "moved", f"'{_LATER}'"),
        )
    ),
    f"INSERT INTO orders (id, number, channel, received, slip) VALUES ('o1', '7', 'fair', '{_LATER}', 1)",
    'INSERT INTO lines (id, "order", position, reference, title, listing, stay, state, in_file) '
    "VALUES ('l1', 'o1', 1, 'D001', '', 'F-2', 's2', 'waiting', true)",
    "INSERT INTO learned (id, listing, item, line) VALUES ('e1', 'F-2', 'i2', 'l1')",
)


def test_listing_ids_of_earlier_tables_become_offers(own_url: str) -> None:
    """A thing's own id has no channel, one that was learned has its order's; what has left is offered no more."""
    engine = connect(dropped(own_url))
    config = Config()
    config.set_main_option("script_location", "scanflow:storage/migrations")
    with engine.begin() as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, "0011")
        for row in OLD_LISTINGS:
            connection.execute(text(row))
    engine.dispose()
    database = Database(own_url)
    came, later = datetime.fromisoformat(_AT), datetime.fromisoformat(_LATER)
    with database.reading(NOON) as view:
        assert (
            Listing("i1", "i1", "", "L-1", None, came, later),
            Listing("i2", "i2", "", "L-2", None, came),
            Listing("e1", "i2", "fair", "F-2", "l1", later),
        ) == view.find(Listing)
    database.close()


OPEN = """
import sys
from scanflow.domain import events
from scanflow.storage.database import Database
sys.stdin.readline()
database = Database(sys.argv[1])
with database.writing(__import__("datetime").datetime.now(__import__("datetime").UTC), "tester") as unit:
    unit.record(events.Changed())
"""


def test_several_processes_open_a_new_database_at_once(own_url: str) -> None:
    """Four processes that open the same new database together all succeed, and it is made once."""
    url = dropped(own_url)
    running = [
        subprocess.Popen([sys.executable, "-c", OPEN, url], stdin=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        for _ in range(4)
    ]
    for each in running:
        each.stdin.write("go\n")
        each.stdin.flush()
    said = [(each.communicate(timeout=60)[1], each.returncode) for each in running]
    database = Database(url)
    with database.reading(NOON) as view:
        seq = view.seq
    database.close()
    assert ([("", 0)] * 4, 4) == (said, seq)


KILL = """
import os, signal, sys
from sqlalchemy import Engine, event
from scanflow.storage.database import Database
event.listen(Engine, "commit", lambda connection: os.kill(os.getpid(), signal.SIGKILL))
Database(sys.argv[1])
"""


def test_killed_while_it_is_made(own_url: str) -> None:
    """A database whose first opening was killed before its commit is made by the next one."""
    url = dropped(own_url)
    assert -9 == subprocess.run([sys.executable, "-c", KILL, url], timeout=60).returncode
    database = Database(url)
    with database.writing(NOON, "tester") as unit:
        unit.record(events.Changed())
        assert 1 == unit.seq
    database.close()
