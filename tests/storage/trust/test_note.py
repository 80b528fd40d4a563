"""The note beside the database: another file in its place is noticed before anything writes."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from damaged_data import DataFolder, fault_words, filled_database, write_entries
from memory import NOON
from sqlalchemy import text

from scanflow.storage.database import Database, trouble_of
from scanflow.storage.trust import note
from scanflow.storage.trust.note import Notebook, Unopened, for_url
from scanflow.storage.writing.unwritable import Unwritable


@pytest.fixture
def folder(tmp_path: Path) -> DataFolder:
    """The data folder of a shop with a few things in it, closed."""
    folder = DataFolder(tmp_path / "shop")
    filled_database(folder.open()).close()
    return folder


def codes(database: Database) -> list[str]:
    return [each.code for each in database.guard.amiss]


def test_it_follows_the_ledger(folder: DataFolder) -> None:
    """It has the ledger's end at each close, and where the service keeps it meanwhile; nothing is amiss then."""
    with closing(folder.open()) as database:
        before = folder.note.stored()
        write_entries(database, 3)
        assert before == folder.note.stored()
        database.keep_note()
        kept = folder.note.stored()
        assert before is not None and kept is not None
        assert (before.seq + 3, before.shop) == (kept.seq, kept.shop)
        write_entries(database)
    kept = folder.note.read()
    assert kept is not None and before.seq + 4 == kept.seq
    with closing(folder.open()) as database:
        assert [] == codes(database)
    checked = folder.note.read()
    assert checked is not None and checked.seq == checked.verified


@pytest.mark.parametrize("what", ["missing", "empty", "log alone"])
def test_never_an_empty_shop_where_one_was(folder: DataFolder, what: str) -> None:
    """A file that is missing or empty is told, with what to do, and nothing is made. The note moved away, it begins."""
    if what == "empty":
        folder.file.write_bytes(b"")
    else:
        folder.file.unlink()
    if what == "log alone":
        folder.note.path.unlink()
        folder.log.write_bytes(b"x" * 5000)
    before = {each.name: each.read_bytes() for each in folder.path.iterdir()}
    with pytest.raises(Unopened, match=r"A shop was here(?s:.*)scanflow restore BACKUP --data") as told:
        folder.open()
    assert before == {each.name: each.read_bytes() for each in folder.path.iterdir()}
    if what != "log alone":
        kept = folder.note.read()
        assert kept is not None and f"with {kept.seq} entries" in str(told.value)
    for each in folder.path.iterdir():
        each.unlink()
    folder.open().close()


def test_an_older_copy_put_back(folder: DataFolder, tmp_path: Path) -> None:
    """It is read and not written, also after the next start, until the newer one is back and was verified."""
    shutil.copy(folder.file, tmp_path / "older.db")
    with closing(folder.open()) as database:
        write_entries(database, 5)
    shutil.copy(folder.file, tmp_path / "newer.db")
    shutil.copy(tmp_path / "older.db", folder.file)
    for _ in range(2):
        with closing(folder.open()) as database:
            assert ["older"] == codes(database)
            with pytest.raises(Unwritable, match="older than it was: its ledger ends at entry"):
                write_entries(database)
            with database.reading(NOON) as unit:
                assert 0 < unit.seq
    assert (tmp_path / "older.db").read_bytes() == folder.file.read_bytes()
    shutil.copy(tmp_path / "newer.db", folder.file)
    with closing(folder.open()) as database:
        assert [] == fault_words(database)
        with pytest.raises(Unwritable):
            write_entries(database)
        database.clear()
        write_entries(database)
    with closing(folder.open()) as database:
        assert [] == codes(database)


def test_an_older_copy_that_went_on(folder: DataFolder, tmp_path: Path) -> None:
    """A copy that was used elsewhere has as many entries, and not the same ones."""
    other = DataFolder(tmp_path / "other")
    shutil.copy(folder.file, other.file)
    with closing(folder.open()) as database:
        write_entries(database, 2)
    with closing(other.open()) as database:
        write_entries(database, 3, at=NOON.replace(hour=18))
    shutil.copy(other.file, folder.file)
    with closing(folder.open()) as database:
        assert ["other_past"] == codes(database)


def test_another_shops_file(folder: DataFolder, tmp_path: Path) -> None:
    """It is not this shop's, whatever stands in it."""
    other = DataFolder(tmp_path / "other")
    filled_database(other.open(), 9).close()
    shutil.copy(other.file, folder.file)
    with closing(folder.open()) as database:
        assert ["other_shop"] == codes(database)


def test_the_log_of_a_killed_service_beside_an_older_copy(folder: DataFolder, tmp_path: Path) -> None:
    """The two don't belong together: the start notices, and leaves both as they are for whoever looks into it."""
    shutil.copy(folder.file, tmp_path / "older.db")
    with closing(folder.open()) as database:
        write_entries(database, 60)
    with closing(folder.open()) as database:
        write_entries(database, 4)
        killed = folder.killed(tmp_path / "killed")
        assert killed.log.stat().st_size > 0
    shutil.copy(tmp_path / "older.db", killed.file)
    before = killed.bytes()
    for brief in (True, False):
        with closing(killed.open(brief=brief)) as database:
            assert codes(database)
            with pytest.raises(Unwritable):
                write_entries(database)
        assert before == killed.bytes()


def test_a_killed_service_is_well(folder: DataFolder, tmp_path: Path) -> None:
    """Its file with its own log beside it is whole, though the note is a bit older."""
    with closing(folder.open()) as database:
        write_entries(database, 4)
        with database.reading(NOON) as unit:
            seq = unit.seq
        killed = folder.killed(tmp_path / "killed")
    with closing(killed.open()) as database, database.reading(NOON) as unit:
        assert ([], seq) == (codes(database), unit.seq)


def test_the_log_of_a_killed_service_deleted(folder: DataFolder, tmp_path: Path) -> None:
    """What stood in it is missed by the note, to the last entry."""
    with closing(folder.open()) as database:
        write_entries(database, 4)
        killed = folder.killed(tmp_path / "killed")
    killed.log.unlink()
    with closing(killed.open()) as database:
        assert ["older"] == codes(database)


def test_an_older_file_put_back_within_a_minute(folder: DataFolder, tmp_path: Path) -> None:
    """It is noticed though the note was written before either: each commit leaves the ledger's end beside it."""
    with closing(folder.open()) as database:
        write_entries(database, 4)
        older = folder.killed(tmp_path / "older")
        write_entries(database, 1)
        killed = folder.killed(tmp_path / "killed")
    for name in (folder.file.name, folder.log.name):
        shutil.copy(older.path / name, killed.path / name)
    with closing(killed.open()) as database:
        assert ["older"] == codes(database)


@pytest.mark.parametrize("left", ["", "another-shop 999 ab", "{shop} many ab", "{shop}"])
def test_what_a_commit_left_that_says_nothing(folder: DataFolder, left: str) -> None:
    """Cut off, or of the shop that stood here before: the note counts as it is."""
    note = folder.note.read()
    assert note is not None
    folder.path.joinpath("shop.last").write_text(left.format(shop=note.shop))
    assert note == folder.note.read()
    with closing(folder.open()) as database:
        assert [] == codes(database)


def test_a_note_that_cannot_be_written(folder: DataFolder) -> None:
    """What is amiss holds in the service that found it, and is noted as soon as that can be."""
    with closing(folder.open()) as database:
        known = folder.note.stored()
        assert known is not None
        write_entries(database)
        with database.engine.begin() as connection:
            connection.execute(text("UPDATE items SET title = 'Bell' WHERE n = 2"))
        fresh = folder.path / f"shop.json.{os.getpid()}.new"
        fresh.mkdir()  # as little to be written as on a full disk
        assert 1 == len(fault_words(database))
        for _ in range(2):
            database.keep_note()
            with pytest.raises(Unwritable, match="other words"):
                write_entries(database)
        assert known == folder.note.stored()
        fresh.rmdir()
        database.keep_note()
        noted = folder.note.stored()
        assert noted is not None and ["row"] == [each.code for each in noted.amiss]


@pytest.mark.parametrize("what", ["folder", "log", "moved"])
def test_deleted_while_it_is_served(folder: DataFolder, tmp_path: Path, what: str) -> None:
    """Nothing is answered that would be lost: the write says that the file is gone, and so does the health."""
    with closing(folder.open()) as database:
        write_entries(database)
        assert trouble_of(database) is None
        if what == "folder":
            shutil.rmtree(folder.path)
        elif what == "log":
            folder.log.unlink()
        else:
            folder.path.rename(tmp_path / "elsewhere")
        with pytest.raises(Unwritable, match="deleted or moved away") as refused:
            write_entries(database)
        assert "storage_gone" == refused.value.code == trouble_of(database).code  # type: ignore[union-attr]
        database.keep_note()
        assert (what == "log") == folder.path.exists()
        if what == "moved":
            (tmp_path / "elsewhere").rename(folder.path)
            write_entries(database)
    assert (what != "folder") == folder.path.exists()


def test_accepted_by_a_command_the_service_goes_on(folder: DataFolder, tmp_path: Path) -> None:
    """The service that could only read since its start follows the note, and writes again."""
    shutil.copy(folder.file, tmp_path / "older.db")
    with closing(folder.open()) as database:
        write_entries(database, 5)
    shutil.copy(tmp_path / "older.db", folder.file)
    with closing(folder.open()) as service:
        with closing(folder.open(brief=False)) as command:
            command.accept(NOON, "owner", "The newer one is lost")
        service.keep_note()
        write_entries(service)
        assert [] == fault_words(service)


def test_found_by_one_it_stops_the_other(folder: DataFolder) -> None:
    """What a command finds amiss stops the service too."""
    with closing(folder.open()) as service, closing(folder.open()) as command:
        with service.engine.begin() as connection:
            connection.execute(text("UPDATE items SET title = 'Bell' WHERE n = 2"))
        assert 1 == len(fault_words(command))
        service.keep_note()
        with pytest.raises(Unwritable, match="other words"):
            write_entries(service)


def test_a_note_that_cannot_be_read(folder: DataFolder, caplog: pytest.LogCaptureFixture) -> None:
    """It is written anew, with a word; so is one that is missing."""
    folder.note.path.write_text("{")
    folder.open().close()
    assert "can't be read" in caplog.text
    folder.note.path.unlink()
    folder.open().close()
    assert "There was no note beside the database" in caplog.text
    assert folder.note.read() is not None


def test_a_file_that_is_no_database(folder: DataFolder) -> None:
    """It is told in words, and left alone."""
    folder.file.write_bytes(b"The quick brown fox\n" * 400)
    before = folder.bytes()
    with pytest.raises(Unopened, match=r"The database is damaged(?s:.*)Nothing was changed"):
        folder.open()
    assert before == folder.bytes()


def test_a_restore_sets_the_note_aside(folder: DataFolder, tmp_path: Path) -> None:
    """What comes in its place on purpose is not held against it."""
    older = tmp_path / "older.db"
    shutil.copy(folder.file, older)
    with closing(folder.open()) as database:
        write_entries(database, 5)
    folder.note.set_aside()
    shutil.copy(older, folder.file)
    with closing(folder.open()) as database:
        assert [] == codes(database)


def test_an_emptied_postgresql(new_postgresql: Callable[[], str], tmp_path: Path) -> None:
    """Its note lies on this machine, named after the URL without telling it; a database made anew is no shop."""
    url = new_postgresql()
    notebook = for_url(url, tmp_path)
    with closing(Database(url, notebook, brief=True)) as database:
        write_entries(database, 3)
    with closing(Database(url, notebook, brief=True)) as database:
        assert [] == codes(database)
        with database.engine.begin() as connection:
            connection.execute(text("DROP SCHEMA public CASCADE"))
            connection.execute(text("CREATE SCHEMA public"))
    with pytest.raises(Unopened, match=r"The database has no tables\. A shop was here with 3 entries"):
        Database(url, notebook, brief=True)
    assert url not in notebook.path.name


def test_the_note_is_replaced_as_a_whole(tmp_path: Path) -> None:
    """What is written comes back, and nothing else lies beside it."""
    notebook = Notebook(tmp_path / "notes" / "shop.json")
    written = note.Note("ab", 7, "cd", 5, "ef", "", (note.DataFault("older", "It is older."),))
    notebook.write(written)
    assert written == notebook.read()
    assert ["shop.json", "shop.last"] == sorted(each.name for each in notebook.path.parent.iterdir())
