"""What a verification finds: rows, entries, pictures and bytes that are not what they were; and nothing else."""

from __future__ import annotations

import random
import shutil
import threading
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import pytest
from damaged_data import DataFolder, damage, data_faults, fault_words, fill_small_shop, filled_database, write_entries
from memory import NOON
from old_shops import KINDS, OldShop, load
from schema import dropped
from sqlalchemy import text

from scanflow.domain import events
from scanflow.domain.things import Item
from scanflow.shop import Shop
from scanflow.storage.database import REVISION, Database
from scanflow.storage.trust import verify as module
from scanflow.storage.trust.note import Note, Unopened
from scanflow.storage.writing.unwritable import Unwritable


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("revision", ["0008", REVISION])
def test_a_busy_shop_is_well(revision: str, kind: str, new_postgresql: Callable[[], str], tmp_path: Path) -> None:
    """After everything that can happen to its things, each row is as the ledger says; after an upgrade replay begins
    at what that told of all rows. What changes then without a word is found.
    """
    url = f"sqlite:///{tmp_path}/old.db" if kind == "sqlite" else dropped(new_postgresql())
    load(OldShop(revision, "", kind).path, url)
    with closing(Database(url)) as database:
        assert [] == fault_words(database)
        assert [] == fault_words(database, whole=False)
        damage(database, "UPDATE items SET title = 'Another' WHERE n = 1")
        assert 1 == len(fault_words(database))


CHANGES = {
    "state": (
        "UPDATE lines SET state = 'short' WHERE state = 'picked'",
        "the ledger says picked, the database says short",
    ),
    "words": ("UPDATE items SET title = 'Bell' WHERE n = 2", "the database has other words than the ledger"),
    "gone": ("DELETE FROM scans WHERE n = 1", "the ledger has it, the database lacks it"),
    "more": (
        "INSERT INTO items (id, title, notes) VALUES ('i9', 'Bell', '')",
        "Item i9: the database has it, the ledger does not",
    ),
}


@pytest.mark.parametrize("change", CHANGES)
def test_a_row_that_the_ledger_does_not_tell_of(database: Database, change: str) -> None:
    """A row changed, added or deleted behind the shop's back is named, with what account and table say."""
    statement, words = CHANGES[change]
    filled_database(database)
    damage(database, statement)
    said = fault_words(database)
    assert said and all(words in each for each in said), said


ENTRIES = {
    "forged": ("UPDATE ledger SET actor = 'somebody' WHERE seq = 4", ["chain"]),
    "not JSON": ("UPDATE ledger SET data = 'n' WHERE seq = 4", ["damaged"]),
    "taken out": ("DELETE FROM ledger WHERE seq = 4", ["gap", "chain"]),
    "cut off": ("DELETE FROM ledger WHERE seq > 4", ["head"]),
    "head set back": ("UPDATE head SET seq = 4", ["head"]),
    "head of another": ("UPDATE head SET hash = 'ab'", ["head"]),
}


@pytest.mark.parametrize("change", ENTRIES)
def test_an_entry_that_is_not_what_it_was(own_database: Database, change: str) -> None:
    """A ledger that was forged, cut or emptied past its guards is found."""
    statement, codes = ENTRIES[change]
    write_entries(own_database, 8)
    assert [] == fault_words(own_database)
    damage(own_database, statement)
    said = [each.code for each in data_faults(own_database)]
    assert codes == said[: len(codes)]


def test_in_brief_what_came_since_the_note(own_database: Database) -> None:
    """The chain and the rows told of since then are held; what is older waits for the night."""
    filled_database(own_database)
    with own_database.engine.connect() as connection:
        seq, entry = connection.execute(text("SELECT seq, hash FROM head")).one()
    note = Note("", seq, entry, seq, entry)
    brief = lambda: [each.code for each in module.verify(own_database.engine, whole=False, note=note).findings]  # noqa: E731
    damage(own_database, "UPDATE items SET title = 'Older' WHERE n = 2")
    assert [] == brief()
    write_entries(own_database, 2)
    damage(own_database, f"UPDATE ledger SET actor = 'somebody' WHERE seq = {seq + 1}")
    assert ["chain"] == brief()
    damage(own_database, f"UPDATE ledger SET hash = 'ab' WHERE seq = {seq}")
    assert "chain" in brief()


@pytest.mark.parametrize("change", ["picture = thumb", "thumb = picture"])
def test_a_picture_that_is_not_what_it_was(database: Database, change: str) -> None:
    """Its hash tells, or the ledger's digest of its small copy, and the finding says what it shows."""
    filled_database(database)
    damage(database, f"UPDATE photos SET {change}")
    (said,) = fault_words(database)
    assert "is not what it was. It shows Rear derailleur 1 (D001)" in said
    assert [] == fault_words(database, whole=False)


def test_what_refers_to_nothing(own_database: Database) -> None:
    """A row that refers to one that was deleted is named, also where nobody asked the database to look."""
    filled_database(own_database)
    damage(own_database, "DELETE FROM orders WHERE n = 1")
    assert any("lines refer to orders" in each for each in fault_words(own_database))


def test_while_others_write(database: Database, monkeypatch: pytest.MonkeyPatch) -> None:
    """A whole verification beside scans takes nothing for amiss, and no write waits for all of it."""
    monkeypatch.setattr(module, "PIECE", 7)
    shop, ended = Shop(database, clock=lambda: NOON), threading.Event()
    fill_small_shop(shop)

    def work() -> None:
        number = 0
        while not ended.is_set():
            number += 1
            with database.writing(NOON, "tester") as unit:
                for item in unit.find(Item)[:3]:
                    unit.put(replace(item, notes=f"Looked at {number} times"))
                unit.record(events.Changed())

    writer = threading.Thread(target=work)
    writer.start()
    try:
        said = [fault_words(database) for _ in range(3)]
    finally:
        ended.set()
        writer.join()
    assert [[], [], []] == said


def test_what_is_amiss_stops_writes_until_it_is_accepted(own_database: Database) -> None:
    """Reads go on. Accepted, it is in the ledger with its reason, is not said again, and rows are told of anew."""
    filled_database(own_database)
    damage(own_database, "UPDATE items SET title = 'Bell' WHERE n = 2")
    (words,) = fault_words(own_database)
    with pytest.raises(Unwritable, match="other words") as refused, own_database.writing(NOON, "tester"):
        pass
    assert "amiss" == refused.value.code
    with own_database.reading(NOON) as unit:
        seq = unit.seq
    own_database.accept(NOON, "owner", "I mended it by hand")
    with own_database.reading(NOON) as unit:
        _, event = next(iter(unit.told_since(seq)))
    assert events.AcceptedAmiss(reason="I mended it by hand", found=(words,)) == event
    assert [] == fault_words(own_database)
    write_entries(own_database)


def test_an_accepted_break_of_the_chain(own_database: Database) -> None:
    """It stays in the ledger for ever, and is not said again; another one is."""
    write_entries(own_database, 8)
    damage(own_database, "UPDATE ledger SET actor = 'somebody' WHERE seq = 4")
    assert 1 == len(fault_words(own_database))
    own_database.accept(NOON, "owner", "A test of the guard")
    assert [] == fault_words(own_database)
    damage(own_database, "UPDATE ledger SET actor = 'somebody' WHERE seq = 6")
    assert ["Entry 6 of"] == [each[:10] for each in fault_words(own_database)]


@pytest.fixture(scope="module")
def busy_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A furnished shop's folder, upgraded and closed."""
    folder = DataFolder(tmp_path_factory.mktemp("busy"))
    load(OldShop("0008", "", "sqlite").path, f"sqlite:///{folder.file}")
    folder.open().close()
    return folder.path


def contents(database: Database) -> str:
    """All rows of all tables, and the schema."""
    connection = database.engine.raw_connection()
    return "\n".join(connection.driver_connection.iterdump())  # type: ignore[union-attr]


@pytest.mark.parametrize("seed", range(10))
def test_noise_in_the_file(busy_file: Path, tmp_path: Path, seed: int) -> None:
    """Random bytes at a place of the file are noticed, or changed nothing that the file says."""
    folder = DataFolder(tmp_path / "noisy")
    shutil.copytree(busy_file, folder.path, dirs_exist_ok=True)
    with closing(folder.open()) as database:
        before = contents(database)
    chance, data = random.Random(seed), bytearray(folder.file.read_bytes())
    place = chance.randrange(len(data) - 16)
    data[place : place + 16] = chance.randbytes(16)
    folder.file.write_bytes(data)
    try:
        with closing(folder.open()) as database:
            noticed = bool(fault_words(database))
            if not noticed:
                assert before == contents(database)
    except Unopened:
        noticed = True
    print(f"seed {seed}: {'noticed' if noticed else 'nothing was hit'}")
