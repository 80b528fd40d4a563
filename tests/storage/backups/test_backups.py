"""Backups at a place, taken from both databases and put back into both, and what may go wrong with the disk."""

from __future__ import annotations

import hashlib
import io
import json
import random
import resource
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from clients import new_token
from furnished import furnish
from old_shops import FOLDER, load
from schema import dropped
from sqlalchemy import select, text

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.access import Role, Visitor
from scanflow.domain.backups import Backups
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Item, Line, Order, Photo, Slot, Stay
from scanflow.shop import Shop
from scanflow.storage import access, backups, tables
from scanflow.storage.backups import Backup, BackupError
from scanflow.storage.backups import place as places
from scanflow.storage.backups import taking as backups_taking
from scanflow.storage.backups.pictures import packed
from scanflow.storage.backups.restore import restore
from scanflow.storage.database import Database
from scanflow.storage.engine import connect, sqlite_url
from scanflow.storage.unit import SqlUnit
from scanflow.workflow import orders, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.ports import must

NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)
TITLE = "Rear derailleur with a long cage"


def photo(number: int, size: int = 60_000) -> Photo:
    """A picture's worth of bytes; what they show is nothing to a backup."""
    made = random.Random(number)
    picture, thumb = made.randbytes(size), made.randbytes(900)
    return Photo(hashlib.sha256(picture).hexdigest(), picture, thumb)


def add_pictures(database: Database, numbers: range) -> None:
    with database.writing(NOON, "owner") as unit:
        for number in numbers:
            shown = photo(number)
            unit.add(shown)
            unit.add(Item(f"item{number}", f"{TITLE} {number}", photo=shown.hash))
        unit.record(events.Changed())


def rows(url: str) -> dict[str, list[tuple[Any, ...]]]:
    """All rows of all tables but those about who may come in."""
    engine = connect(url)
    with engine.connect() as connection:
        found = {
            table.name: [tuple(row) for row in connection.execute(select(table).order_by(*table.primary_key))]
            for table in tables.metadata.sorted_tables
            if table is not tables.access
        }
    engine.dispose()
    return found


def without_restored(found: dict[str, list[tuple[Any, ...]]]) -> dict[str, list[tuple[Any, ...]]]:
    """What stood before it was restored: the head's name of the shop and settings, and earlier entries."""
    entries = [entry for entry in found["ledger"] if entry[2] != "restored"]
    ((one, _, _, settings, *rest),) = found["head"]
    kept = {name: each for name, each in json.loads(settings).items() if name not in ("restored_at", "slips_from")}
    return found | {"ledger": entries, "head": [(one, kept, *rest)]}


def take(database: Database, place: Path, at: datetime = NOON, **more: Any) -> Backup:
    """As `backups.take`, in this process, which is faster."""
    url = database.engine.url.render_as_string(hide_password=False)
    return backups_taking.take(url, place, at, **{"recipient": "", "tell": lambda *_: None, **more})


@pytest.fixture
def database(sqlite_template: Path, tmp_path: Path) -> Iterator[Database]:
    """On SQLite, with three pictures."""
    (tmp_path / "data").mkdir()
    shutil.copy(sqlite_template, tmp_path / "data" / "scanflow.db")
    database = Database(sqlite_url(tmp_path / "data"))
    add_pictures(database, range(3))
    yield database
    database.close()


@pytest.fixture
def place(tmp_path: Path) -> Path:
    return tmp_path / "place"


@contextmanager
def fails(code: str) -> Iterator[None]:
    with pytest.raises(BackupError) as caught:
        yield
    assert code == caught.value.code, str(caught.value)


def test_a_shop_moves_between_databases_and_is_the_same_row_by_row(
    shop: Shop, new_postgresql: Callable[[], str], tmp_path: Path, place: Path
) -> None:
    """From either database into PostgreSQL, from there into a file: no row differs, and the next row gets its number.
    Sessions, tokens, pairings and the password end.
    """
    furnish(shop, 12)
    add_pictures(shop.database, range(2))
    with shop.database.writing(NOON, "owner") as unit:
        access.SqlAccess(unit.connection, NOON).set_password("spokes-and-nipples")
        access.SqlAccess(unit.connection, NOON).make_session(Visitor("owner", Role.OWNER))
        access.SqlAccess(unit.connection, NOON).make_pairing_link()
    new_token(shop, "label printer", Role.PROGRAM)
    before = rows(shop.database.engine.url.render_as_string(hide_password=False))

    backups.take(shop.database, place, NOON)
    server = dropped(new_postgresql())
    first = restore(place, None, server)
    moved = Database(server)
    assert [] == moved.verify(NOON, whole=True).findings
    with moved.writing(NOON, "owner") as unit:
        assert ["setup"] == list(unit.connection.execute(select(tables.access.c.kind)).scalars())
        assert access.SqlAccess(unit.connection, datetime.now(UTC)).visitor("setup", first.secret) is not None
        stock.put_away(unit, stock.PutAway(title="Saddle", section="S"))
        unit.connection.rollback()
    take(moved, place, NOON + timedelta(hours=1))
    moved.close()
    second = restore(place, tmp_path / "moved", None)
    after = rows(sqlite_url(tmp_path / "moved"))

    assert without_restored(before) == without_restored(after)
    assert (12, first.seq + 1) == (first.things, second.seq)
    told = [json.loads(entry[4]) for entry in after["ledger"] if entry[2] == "restored"]
    assert [{"from": each.name, "seq": each.seq} for each in (first, second)] == told


def test_what_was_given_out_after_the_backup_is_not_given_out_again(
    shop: Shop, place: Path, tmp_path: Path, new_postgresql: Callable[[], str]
) -> None:
    """A listing or a slip of the hours that a restore forgets means no other thing and no other order afterwards."""

    def work(unit: SqlUnit) -> tuple[Stay, Order]:
        stay = stock.put_away(unit, stock.PutAway(title="Saddle", section="S"))
        line = IncomingLine(slot_code.reference(stay.code, stay.turn), "Saddle")
        return stay, receiving.receive(unit, IncomingOrder(stay.id, "", lines=(line,)))[0]

    furnish(shop, 4)
    backups.take(shop.database, place, NOON)
    forgotten, unknown = shop.act("owner", work)
    on_sqlite = shop.database.kind == "sqlite"
    target = (tmp_path / "again", None) if on_sqlite else (None, dropped(new_postgresql()))
    restore(place, *target)
    again = Database(sqlite_url(tmp_path / "again") if on_sqlite else str(target[1]))
    with again.writing(datetime.now(UTC), "owner") as unit:
        stay, order = work(unit)
        late = IncomingLine(slot_code.reference(forgotten.code, forgotten.turn), "Saddle")
        (held,) = unit.find(Line, order=receiving.receive(unit, IncomingOrder("late", lines=(late,)))[0].id)
        orders.cancel(unit, order.id, orders.Cancel())
        stock.withdraw(unit, stay.id, stock.Withdraw(reason="Cracked"))
        unit.put(must(unit, Slot, stay.code).after("see in tray"))
        following = stock.put_away(unit, stock.PutAway(title="Another saddle", code=stay.code))
    again.close()

    assert (forgotten.code, forgotten.turn + 19) == (stay.code, stay.turn)
    assert unknown.slip + 1000 == order.slip
    assert ("unknown_code", None) == (held.holds[0].hold, held.stay)
    assert stay.turn + 1 == following.turn


def test_a_backup_waits_for_no_write_and_holds_none_up(own_database: Database, place: Path) -> None:
    """It is taken while a write is under way, as of the entry before, and the write goes on."""
    add_pictures(own_database, range(1))
    with own_database.writing(NOON, "owner") as unit:
        unit.add(Item("late", "Late"))
        unit.record(events.Changed())
        taken = backups.take(own_database, place, NOON)
    assert (1, 2) == (taken.seq, len(rows(own_database.engine.url.render_as_string(hide_password=False))["ledger"]))


def test_pictures_are_written_once(database: Database, place: Path) -> None:
    """A second backup writes the new picture alone; both are whole, and only their owner may read them."""
    first = take(database, place, NOON)
    written = {path: path.stat().st_mtime_ns for path in place.glob("pictures/*/*")}
    add_pictures(database, range(3, 4))
    told: list[tuple[int, int]] = []
    second = backups.take(database, place, NOON + timedelta(hours=1), progress=lambda *done: told.append(done))
    assert [(1, 1)] == told
    assert written == {path: path.stat().st_mtime_ns for path in written}
    assert [second, first] == backups.listed(place)
    for each in (first, second):
        backups.check(place, each)
    modes = {oct(path.stat().st_mode & 0o777) for path in place.rglob("*") if path.is_file()}
    assert ({"0o600"}, "0o700") == (modes, oct(place.stat().st_mode & 0o777))


def test_the_same_second_twice(database: Database, place: Path) -> None:
    """No backup takes the place of another."""
    assert 2 == len({take(database, place, NOON).name for _ in range(2)})


def test_an_encrypted_place_tells_nothing(database: Database, place: Path, tmp_path: Path) -> None:
    """Neither titles nor the pictures' hashes nor the recipient can be read there; the key opens it, another doesn't,
    and nothing is left of a try.
    """
    recipient, key = backups.new_key()
    taken = take(database, place, NOON, recipient=recipient)
    everything = b"".join(path.read_bytes() + str(path).encode() for path in place.rglob("*") if path.is_file())
    for told in (TITLE, photo(0).hash, recipient):
        assert told.encode() not in everything
    assert photo(0).picture not in everything
    assert ["scanflow.db", "scanflow.db-shm", "scanflow.db-wal"] == sorted(
        each.name for each in (tmp_path / "data").iterdir()
    )

    backups.check(place, taken, key.lower())
    for wrong in ("", "bananas", backups.new_key()[1]):
        with fails("wrong_key"):
            restore(place, tmp_path / "new", None, key=wrong)
    assert not (tmp_path / "new").exists()
    restore(place, tmp_path / "new", None, key=key)
    url = database.engine.url.render_as_string()
    assert without_restored(rows(url)) == without_restored(rows(sqlite_url(tmp_path / "new")))


def test_a_recipient_that_is_none(database: Database, place: Path) -> None:
    """It is refused before anything is written."""
    with fails("wrong_key"):
        take(database, place, NOON, recipient="age1bananas")
    assert not place.exists()


def test_a_packed_backup_is_restored(database: Database, place: Path, tmp_path: Path) -> None:
    """One file holds all of a backup, written to where nothing can be sought; a cut one is damaged or no backup."""

    class Stream(io.RawIOBase):
        data = b""

        def writable(self) -> bool:
            return True

        def write(self, data: Any) -> int:
            self.data += bytes(data)
            return len(data)

    taken, out = take(database, place, NOON), Stream()
    backups.pack(place, taken, out)  # type: ignore[arg-type]
    file = tmp_path / "backup.zip"
    file.write_bytes(out.data)
    assert [taken] == backups.listed(file)
    restore(file, tmp_path / "new", None)
    url = database.engine.url.render_as_string()
    assert without_restored(rows(url)) == without_restored(rows(sqlite_url(tmp_path / "new")))
    file.write_bytes(out.data[:-1000])
    with fails("not_a_place"):
        restore(file, tmp_path / "other", None)


def flip(path: Path, offset: int) -> None:
    content = bytearray(path.read_bytes())
    content[offset] ^= 1
    path.write_bytes(content)


@pytest.mark.parametrize("which", ["rows", "picture", "thumb", "missing"])
def test_what_is_damaged_is_never_restored(database: Database, place: Path, tmp_path: Path, which: str) -> None:
    """One bit of the rows, of a picture or of its thumb, or a picture that is gone: check and restore say so, and the
    new folder stays empty.
    """
    taken = take(database, place, NOON)
    picture = next(place.glob("pictures/*/*.jpg"))
    if which == "missing":
        picture.unlink()
    elif which == "rows":
        flip(place / taken.name, taken.size // 2)
    else:
        flip(picture, 100 if which == "picture" else -100)
    with fails("damaged"):
        backups.check(place, taken)
    with fails("damaged"):
        restore(place, tmp_path / "new", None)
    assert [] == (list((tmp_path / "new").iterdir()) if (tmp_path / "new").exists() else [])


def test_a_picture_that_was_cut_is_written_anew(database: Database, place: Path) -> None:
    """The next backup makes good what it can see is not whole."""
    take(database, place, NOON)
    picture = next(place.glob("pictures/*/*.jpg"))
    picture.write_bytes(picture.read_bytes()[:1000])
    backups.check(place, take(database, place, NOON + timedelta(hours=1)))


def test_a_broken_account_is_no_backup(database: Database, place: Path, tmp_path: Path) -> None:
    """A shop whose ledger was forged is not backed up, and what was backed up before stays."""
    first = take(database, place, NOON)
    with sqlite3.connect(tmp_path / "data" / "scanflow.db") as file:
        file.execute("DROP TRIGGER ledger_kept_update")
        file.execute("UPDATE ledger SET actor = 'nobody'")
    with fails("damaged"):
        take(database, place, NOON + timedelta(hours=1))
    assert ([first], []) == (backups.listed(place), parts(place))


def test_a_shop_that_is_amiss_is_no_backup(database: Database, place: Path) -> None:
    """Once a verification found it, nothing is taken that would push out what was backed up before."""
    with database.engine.begin() as connection:
        connection.execute(text("UPDATE items SET title = 'Another'"))
    database.verify(NOON, whole=True)
    with fails("damaged"):
        backups.take(database, place, NOON)
    assert not place.exists()


def parts(place: Path) -> list[Path]:
    return [path for path in place.rglob("*") if ".part" in path.name]


def test_killed_in_the_middle(database: Database, place: Path) -> None:
    """Earlier backups are whole, and the next one clears away what is left."""
    first = take(database, place, NOON)
    add_pictures(database, range(3, 60))
    later = NOON + timedelta(hours=1)
    given = {"url": database.engine.url.render_as_string(), "place": str(place), "at": later.isoformat()}
    command = [sys.executable, "-m", "scanflow.storage.backups.taking"]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) as process:
        assert process.stdin is not None and process.stdout is not None
        process.stdin.write(json.dumps(given | {"recipient": "", "new": False}) + "\n")
        process.stdin.flush()
        process.stdout.readline()
        process.kill()
    (place / "rows.part").write_bytes(b"cut")  # had it come so far
    (place / "pictures" / "00").mkdir(exist_ok=True)
    (place / "pictures" / "00" / f"{'0' * 64}.jpg.0a0b0c0d.part").write_bytes(b"cut")
    (place / "2026-03-02T130000Z-000002.list").write_bytes(b"cut")
    assert [first] == backups.listed(place)
    backups.check(place, first)
    second = take(database, place, later)
    backups.check(place, second)
    assert ([second, first], []) == (backups.listed(place), parts(place))
    assert 2 == len(list(place.glob("*.list")))


@contextmanager
def little_room(size: int) -> Iterator[None]:
    """No file grows beyond so many bytes, neither here nor in processes begun meanwhile: the system refuses."""
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)


@pytest.mark.parametrize("more", [0, 1], ids=["rows", "picture"])
def test_a_full_place(database: Database, place: Path, more: int) -> None:
    """It is said, whichever file does not fit; nothing is left of it, and earlier backups are whole."""
    first = take(database, place, NOON)
    add_pictures(database, range(3, 3 + more))
    with little_room(40_000), fails("place_full"):
        take(database, place, NOON + timedelta(hours=1))
    assert ([first], []) == (backups.listed(place), parts(place))
    backups.check(place, first)


def test_a_place_that_goes_away(database: Database, place: Path, tmp_path: Path) -> None:
    """Pulled out in the middle, or before: it is said, and no folder is made where the place was."""
    with fails("place_gone"):
        take(database, tmp_path / "stick" / "backups", NOON)
    assert not (tmp_path / "stick").exists()
    add_pictures(database, range(3, 60))

    def pull(_: int, of: int) -> None:
        with suppress(FileNotFoundError):
            place.rename(tmp_path / "pulled")

    with fails("place_gone"):
        take(database, place, NOON, tell=pull)
    place.mkdir()
    with fails("place_gone"):
        take(database, place, NOON, new=False)
    assert [] == list(place.iterdir())


def test_places_that_will_not_do(database: Database, place: Path, tmp_path: Path, sqlite_template: Path) -> None:
    """A file, a folder in use, and one with another shop's backups; a folder without any holds nothing to restore."""
    (tmp_path / "file").write_text("a shopping list")
    for work in (lambda: take(database, tmp_path / "file", NOON), lambda: backups.listed(tmp_path / "file")):
        with fails("not_a_place"):
            work()
    take(database, place, NOON)
    with places.held(place), fails("busy"):
        take(database, place, NOON)
    with places.held(place), fails("busy"):
        backups.thin(place, Backups(), NOON)
    with database.engine.begin() as connection:
        connection.execute(text("UPDATE head SET shop = 'another'"))
    with fails("other_shop"):
        take(database, place, NOON)
    with fails("not_a_place"):
        restore(tmp_path / "data", tmp_path / "new", None)


def test_a_restore_overwrites_nothing(database: Database, place: Path, tmp_path: Path, own_database: Database) -> None:
    """A folder with a shop, with the rest of one, and a database with tables are refused and stay as they are."""
    take(database, place, NOON)
    for name in ("scanflow.db-wal", "shop.json"):
        (tmp_path / name).mkdir()
        (tmp_path / name / name).write_bytes(b"rest")
    for folder in (tmp_path / each for each in ("data", "scanflow.db-wal", "shop.json")):
        before = {path.name for path in folder.iterdir()}
        with fails("not_empty"):
            restore(place, folder, None)
        assert before == {path.name for path in folder.iterdir()}
    url = own_database.engine.url.render_as_string(hide_password=False)
    before_rows = rows(url)
    with fails("not_empty"):
        restore(place, None, url)
    assert before_rows == rows(url)


def write_backup(place: Path, at: datetime, pictures: dict[str, int], content: bytes = b"rows") -> Backup:
    """A backup's two files with this content, as they lie at a place."""
    place.mkdir(exist_ok=True)
    name = places.name_of(at, 7, encrypted=False)
    lines = "".join(f"{path} {size}\n" for path, size in pictures.items()).encode()
    sums = hashlib.sha256(content).hexdigest(), hashlib.sha256(lines).hexdigest()
    header = places.Header(at.isoformat(), 7, "shop", len(content), sums[0], "", sums[1])
    (place / places.list_of(name)).write_bytes(header.line() + lines)
    (place / name).write_bytes(content)
    return Backup(name, at, 7, "shop", len(content), encrypted=False)


def test_thinning(place: Path) -> None:
    """Of the latest days, weeks and months with a backup the newest stays, and pictures that one of them names; the
    very newest and what a wrong clock dated ahead always stay.
    """
    old, new = places.picture_path("0" * 64, ""), places.picture_path("1" * 64, "")
    for path in (old, new):
        (place / path).parent.mkdir(parents=True)
        (place / path).write_bytes(b"picture")
    days = [0, 0.1, 1, 2, 9, 40, 70, 400]
    made = [write_backup(place, NOON - timedelta(days=each), {old if each > 300 else new: 7}) for each in days]
    ahead = write_backup(place, NOON + timedelta(days=900), {})
    gone = backups.thin(place, Backups(days=2, weeks=2, months=4), NOON)
    # March 2, 2026 is a Monday, and March 1 the newest of the week before; February 28 is the newest of its month
    assert [0.1, 9, 400] == [days[made.index(each)] for each in gone]
    assert [ahead, *(each for each in made if each not in gone)] == backups.listed(place)
    assert [place / new] == list(place.glob("pictures/*/*"))
    backups.thin(place, Backups(days=0, weeks=0, months=0), NOON)
    assert [ahead, made[0]] == backups.listed(place)


def test_thinning_with_a_list_that_is_damaged(place: Path) -> None:
    """No picture is deleted while it is unknown what a backup names."""
    kept, old = (write_backup(place, NOON - timedelta(days=each), {}) for each in (0, 1))
    picture = place / places.picture_path("a" * 64, "")
    picture.parent.mkdir(parents=True)
    picture.write_bytes(b"picture")
    with (place / places.list_of(kept.name)).open("ab") as file:
        file.write(b"pictures/cd/cd.jpg 7\n")
    assert [old] == backups.thin(place, Backups(days=1, weeks=0, months=0), NOON)
    assert picture.exists()


def test_what_others_keep_there_stays(database: Database, place: Path) -> None:
    """A home folder as a place: its own pictures, downloads and databases outlive taking and thinning."""
    own = ["film.mkv.part", "rows.sqlite", "pictures/sea.jpg", "pictures/2026/sea.jpg", "pictures/ab/abc.jpg.part"]
    for path in own:
        (place / path).parent.mkdir(parents=True, exist_ok=True)
        (place / path).write_bytes(b"sea")
    (place / "pictures-2026").write_bytes(b"a file of that name")
    for days in (9, 8, 0):
        taken = take(database, place, NOON - timedelta(days=days))
    assert 2 == len(backups.thin(place, Backups(days=1, weeks=0, months=0), NOON))
    assert {b"sea"} == {(place / path).read_bytes() for path in own}
    backups.check(place, taken)


def test_a_strangers_files_are_passed_over(place: Path) -> None:
    """What is no backup, or not whole, is not listed, and fails nothing."""
    assert [] == backups.listed(place)
    whole = write_backup(place, NOON, {})
    cut = write_backup(place, NOON + timedelta(days=1), {})
    (place / cut.name).write_bytes(b"ro")
    for name, content in (("2026-03-02T120000Z-000009", b"[1]"), ("2026-03-02T120000Z-000010", b"\xff{")):
        (place / f"{name}.sqlite").write_bytes(b"rows")
        (place / f"{name}.list").write_bytes(content)
    (place / "2026-03-02T120000Z-000011.sqlite").mkdir()
    (place / "holiday.jpg").write_bytes(b"sea")
    assert [whole] == backups.listed(place)


def test_a_backup_of_an_older_revision(place: Path, tmp_path: Path) -> None:
    """It is restored with the tables of its time and brought up to date: each stay, line and earlier entry is there."""
    old = tmp_path / "old.db"
    load(FOLDER / "0008.sqlite.sql", f"sqlite:///{old}")
    names = []
    with sqlite3.connect(old) as file:
        for name, picture, thumb in file.execute("SELECT hash, picture, thumb FROM photos").fetchall():
            path = place / places.picture_path(name, "")
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(packed(picture, thumb, ""))
            names.append(str(path.relative_to(place)))
        wanted = {each: file.execute(f"SELECT id FROM {each} ORDER BY n").fetchall() for each in ("stays", "lines")}
        entries = file.execute("SELECT seq, hash FROM ledger ORDER BY seq").fetchall()
        file.execute("DELETE FROM access")
        file.execute("UPDATE photos SET picture = x'', thumb = x''")
    made = write_backup(place, NOON, dict.fromkeys(names, 0), old.read_bytes())
    (head, rest) = (place / places.list_of(made.name)).read_bytes().split(b"\n", 1)
    own = places.Header(**json.loads(head) | {"seq": len(entries), "shop": ""})
    (place / places.list_of(made.name)).write_bytes(own.line() + rest)
    restore(place, tmp_path / "new", None)
    with sqlite3.connect(tmp_path / "new" / "scanflow.db") as file:
        for each, rows_of in wanted.items():
            assert rows_of == file.execute(f"SELECT id FROM {each} ORDER BY n").fetchall()
        assert entries == file.execute("SELECT seq, hash FROM ledger ORDER BY seq").fetchall()[: len(entries)]
        assert (
            names and len(names) == file.execute("SELECT count(*) FROM photos WHERE length(picture) > 0").fetchone()[0]
        )


def test_a_backup_of_a_newer_revision(database: Database, place: Path, tmp_path: Path) -> None:
    """It is refused in words, and nothing is made."""
    with database.engine.begin() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
    take(database, place, NOON)
    with fails("newer"):
        restore(place, tmp_path / "new", None)
    assert [] == list((tmp_path / "new").iterdir())
