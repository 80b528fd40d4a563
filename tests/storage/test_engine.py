"""Opening a database so that what is committed stays committed."""

from __future__ import annotations

import os
import sys
import threading
from contextlib import ExitStack, closing
from pathlib import Path

import pytest
from sqlalchemy import event, text

from scanflow.storage import engine
from scanflow.storage.database import Database
from scanflow.storage.engine import UnfitFolder, connect, sqlite_url

MOUNTS = """\
/dev/sda1 / ext4 rw,relatime 0 0
proc /proc proc rw 0 0
nas:/export /srv/nas nfs4 rw,vers=4.2 0 0
//nas/share /srv/my\\040share cifs rw 0 0
tmpfs /srv/nas/local tmpfs rw 0 0
host /srv/wall 9p rw 0 0
me@nas: /srv/tunnel fuse.sshfs rw 0 0
/dev/sdb1 /srv/nasty ext4 rw 0 0
"""


@pytest.mark.parametrize(
    ("folder", "refused"),
    [
        ("/home/shop", False),
        ("/srv", False),
        ("/srv/nas", True),
        ("/srv/nas/shop/data", True),
        ("/srv/nas/local/shop", False),
        ("/srv/nasty/shop", False),
        ("/srv/my share/shop", True),
        ("/srv/wall", True),
        ("/srv/tunnel/x", True),
    ],
)
def test_network_share(folder: str, refused: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A folder is judged by the file system mounted deepest above it, blanks in its name included."""
    mounts = tmp_path / "mounts"
    mounts.write_text(MOUNTS)
    monkeypatch.setattr(engine, "MOUNTS", mounts)
    assert refused == engine._on_network(Path(folder))


def test_data_folder_on_a_network_share(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A data folder on a network share is refused in words that say what to do."""
    mounts = tmp_path / "mounts"
    mounts.write_text(f"/dev/sda1 / ext4 rw 0 0\nnas:/export {tmp_path} nfs rw 0 0\n")
    monkeypatch.setattr(engine, "MOUNTS", mounts)
    with pytest.raises(UnfitFolder, match="network share"):
        sqlite_url(tmp_path / "shop")


def test_data_folder(tmp_path: Path) -> None:
    """A folder on this machine is made and holds the database."""
    folder = tmp_path / "deep" / "my shop"
    assert f"sqlite:///{folder.as_posix()}/scanflow.db" == sqlite_url(folder)
    assert folder.is_dir()


def modes(folder: Path) -> dict[str, str]:
    """The mode of a data folder and of all that it holds."""
    return {each.name: f"{each.stat().st_mode & 0o7777:o}" for each in (folder, *folder.iterdir())}


POSIX_ONLY = pytest.mark.skipif(sys.platform == "win32", reason="a user's data folder is private there")


@POSIX_ONLY
def test_a_data_folder_is_for_its_own_account(tmp_path: Path) -> None:
    """A new one, the database and what SQLite puts beside it can be read by nobody else, whatever the umask."""
    folder, before = tmp_path / "shop", os.umask(0o022)
    try:
        shop = Database(sqlite_url(folder))
        assert {"shop": "700", "scanflow.db": "600", "scanflow.db-wal": "600", "scanflow.db-shm": "600"} == modes(
            folder
        )
        shop.close()
    finally:
        os.umask(before)


@POSIX_ONLY
def test_an_open_data_folder_is_tightened(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    """A shop that others could read is theirs no more once it is opened; that is said once, and other files stay."""
    folder = tmp_path / "shop"
    folder.mkdir()
    folder.chmod(0o755)
    for name in ("scanflow.db", "scanflow.db-wal", "cards.pdf"):
        (folder / name).touch()
        (folder / name).chmod(0o644)
    sqlite_url(folder)
    sqlite_url(folder)
    assert {"shop": "700", "scanflow.db": "600", "scanflow.db-wal": "600", "cards.pdf": "644"} == modes(folder)
    assert 1 == caplog.text.count("Other accounts of this machine could read the data")


@POSIX_ONLY
def test_a_folder_for_all_stays_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In a folder like /tmp, or in the home, the database alone is private."""
    folder = tmp_path / "all"
    folder.mkdir()
    folder.chmod(0o1777)
    connect(sqlite_url(folder))
    assert {"all": "1777", "scanflow.db": "600"} == modes(folder)
    folder.chmod(0o755)
    monkeypatch.setenv("HOME", str(folder))
    sqlite_url(folder)
    assert "755" == modes(folder)["all"]


@pytest.mark.parametrize(("read_only", "wait"), [(False, 20), (True, 5_000)])
def test_pragmas_on_every_connection(tmp_path: Path, read_only: bool, wait: int) -> None:
    """Each connection of the pool, not only the first, is durable, checks foreign keys and waits for others."""
    (tmp_path / "x.db").touch()
    opened = connect(f"sqlite:///{tmp_path / 'x.db'}", read_only=read_only)
    names = ("journal_mode", "synchronous", "foreign_keys", "fullfsync", "checkpoint_fullfsync", "busy_timeout")
    with ExitStack() as stack:
        driven = [stack.enter_context(closing(opened.raw_connection())) for _ in range(20)]
        told = [tuple(each.cursor().execute(f"PRAGMA {name}").fetchone()[0] for name in names) for each in driven]
    opened.dispose()
    assert 20 * [("wal", 2, 1, 1, 1, wait)] == told  # synchronous 2 is FULL, SQLite's documentation of the pragma


def test_writes_begin_immediate(tmp_path: Path) -> None:
    """A write holds the lock from its first word on, so it never fails for having begun as a read."""
    opened = connect(f"sqlite:///{tmp_path / 'x.db'}")
    said: list[str] = []
    event.listen(opened, "connect", lambda driven, _: driven.set_trace_callback(said.append))
    with opened.begin() as connection:
        connection.execute(text("CREATE TABLE t (a)"))
        blocked = threading.Event()

        def other() -> None:
            with opened.begin() as second:
                second.execute(text("INSERT INTO t VALUES (1)"))
            blocked.set()

        thread = threading.Thread(target=other)
        thread.start()
        waits = not blocked.wait(0.2)
    thread.join()
    opened.dispose()
    begun = {each for each in said if each.startswith("BEGIN")}
    assert (True, True, {"BEGIN IMMEDIATE"}) == (waits, blocked.is_set(), begun)


def test_foreign_keys_hold(tmp_path: Path) -> None:
    """A row that points to nothing is refused."""
    opened = connect(f"sqlite:///{tmp_path / 'x.db'}")
    with opened.begin() as connection:
        connection.execute(text("CREATE TABLE a (id INTEGER PRIMARY KEY)"))
        connection.execute(text("CREATE TABLE b (a INTEGER REFERENCES a (id))"))
    with pytest.raises(Exception, match="FOREIGN KEY"), opened.begin() as connection:
        connection.execute(text("INSERT INTO b VALUES (1)"))
    opened.dispose()


@pytest.mark.parametrize("url", ["postgresql://u@h/d", "postgresql+psycopg://u@h/d"])
def test_postgresql_goes_through_psycopg(url: str) -> None:
    """Plain PostgreSQL URLs are taken by psycopg 3."""
    opened = connect(url)
    assert ("postgresql", "psycopg") == (opened.dialect.name, opened.dialect.driver)
