"""Takes a backup: `python -m scanflow.storage.backups.taking`, a process of its own, so that scans feel nothing of it.

It gets what to do as one line of JSON, and tells its progress, then the backup or the error, each as a line.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import sqlite3
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import asdict
from datetime import datetime, timedelta
from pathlib import Path

from sqlalchemy import Engine, select
from sqlalchemy.exc import SQLAlchemyError

from scanflow.storage.backups import key, rows
from scanflow.storage.backups import place as places
from scanflow.storage.backups.pictures import fits, packed
from scanflow.storage.backups.place import Backup, BackupError, Folder, Header
from scanflow.storage.engine import connect, file_of
from scanflow.storage.tables import head

Tell = Callable[[int, int], None]
"""Is told how many pictures are done, and of how many."""

_TRIES = 5
_WORK = "scanflow-backup-"


def take(url: str, place: Path, at: datetime, recipient: str, tell: Tell, *, new: bool = True) -> Backup:
    """One backup of the shop in a database, as `backups.take` has it, in this process."""
    if recipient:
        key.sealer(recipient)
    place = place.absolute()
    engine = connect(url, read_only=True)
    try:
        with places.in_words(place), _database_in_words(place):
            places.prepare(place, new=new)
            with places.held(place):
                places.sweep(place)
                with engine.connect() as connection, connection.begin():
                    _refuse_another_shop(place, connection.execute(select(head.c.shop)).scalar_one())
                return _Taking(engine, place, recipient, tell).take(at)
    finally:
        engine.dispose()


def _refuse_another_shop(place: Path, shop: str) -> None:
    if any(each.shop != shop for each in places.backups_in(Folder(place))):
        raise BackupError("other_shop", f"{place} holds backups of another shop. Choose another folder for this one.")


@contextmanager
def _database_in_words(place: Path) -> Iterator[None]:
    try:
        yield
    except sqlite3.Error as error:
        raise _said(error, place) from error
    except SQLAlchemyError as error:
        cause = getattr(error, "orig", None)
        if isinstance(cause, sqlite3.Error):
            raise _said(cause, place) from error
        raise BackupError("stopped", f"The shop's database can't be read: {cause or error}") from error


def _said(error: sqlite3.Error, place: Path) -> BackupError:
    """The file of rows may be what SQLite writes when it fails, and the shop's what it reads."""
    code = getattr(error, "sqlite_errorcode", 0) & 0xFF
    if code in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
        return BackupError("damaged", "The shop's own database is damaged. Go back to an earlier backup.")
    if code == sqlite3.SQLITE_FULL:
        return places.full(place)
    if code == sqlite3.SQLITE_READONLY:
        return places.read_only(place)
    if code == sqlite3.SQLITE_IOERR and place.is_dir():
        return BackupError("place_full", f"{place} takes no more: it is full, or fails. Choose another place.")
    if code in (sqlite3.SQLITE_IOERR, sqlite3.SQLITE_CANTOPEN):
        return places.gone(place)
    return BackupError("stopped", f"The shop's database can't be read: {error}")


class _Taking:
    def __init__(self, engine: Engine, place: Path, recipient: str, tell: Tell) -> None:
        self.engine, self.place, self.recipient, self.tell = engine, place, recipient, tell
        self.there = places.pictures_at(place)

    def take(self, at: datetime) -> Backup:
        """Pictures first, for the first time that is long; then the rows, and pictures that came in between."""
        self._add(rows.picture_sizes(self.engine))
        with self._work() as folder:
            file = folder / places.ROWS
            try:
                for _ in range(_TRIES):
                    rows.write_rows(self.engine, file)
                    if self._add(rows.picture_sizes(self.engine)) and self._all_there(file):
                        return self._place(file, at)
                    file.unlink()
            finally:
                file.unlink(missing_ok=True)
        raise BackupError("stopped", "Pictures are being deleted all the time. Try again later.")

    def _add(self, sizes: dict[str, int]) -> bool:
        """Pictures that the place has not got, or not whole. False where one was deleted before it could be read."""
        paths = {name: places.picture_path(name, self.recipient) for name in sizes}
        wanted = [
            name for name, path in paths.items() if not fits(self.there.get(path, -1), sizes[name], self.recipient)
        ]
        folders = set()
        for done, name in enumerate(wanted, 1):
            both = rows.picture(self.engine, name)
            if both is None:
                return False
            if hashlib.sha256(both[0]).hexdigest() != name:
                raise BackupError(
                    "damaged", f"The picture {name} is damaged in the shop. Go back to an earlier backup."
                )
            target = self.place / paths[name]
            for folder in (target.parent.parent, target.parent):
                if not folder.exists():
                    folder.mkdir(mode=0o700)
                folders.add(folder)
            data = packed(*both, self.recipient)
            with places.placed(target) as out:
                out.write(data)
            self.there[paths[name]] = len(data)
            self.tell(done, len(wanted))
        for folder in folders:
            places.sync_folder(folder)
        return True

    def _all_there(self, file: Path) -> bool:
        self._paths = sorted(places.picture_path(name, self.recipient) for _, name in rows.pictures_in(file))
        return all(path in self.there for path in self._paths)

    @contextmanager
    def _work(self) -> Iterator[Path]:
        """Where the rows are written: at the place itself if they stay as they are, else beside the shop's database,
        so that an encrypted place never sees them. Left over from a kill, it is emptied the next time.
        """
        if not self.recipient:
            yield self.place
            return
        file = file_of(str(self.engine.url))
        beside = file.absolute().parent if file else Path(tempfile.gettempdir())
        folder = beside / (_WORK + hashlib.sha256(f"{self.place}{self.engine.url}".encode()).hexdigest()[:12])
        if folder.exists():
            shutil.rmtree(folder)
        folder.mkdir(mode=0o700)
        try:
            yield folder
        finally:
            shutil.rmtree(folder, ignore_errors=True)

    def _place(self, file: Path, at: datetime) -> Backup:
        """Checked, then given its name: the list's first, that of the rows last."""
        state = rows.check_rows(file, "The shop's own database")
        file.chmod(0o600)
        at = at.replace(microsecond=0)
        while (self.place / (name := places.name_of(at, state.seq, bool(self.recipient)))).exists():
            at += timedelta(seconds=1)
        lines = "".join(f"{path} {self.there[path]}\n" for path in self._paths).encode()
        if self.recipient:
            file = self._sealed(file, self.place / f"{name}{places.PART}")
        with file.open("rb+") as written:
            os.fsync(written.fileno())
            digest = hashlib.file_digest(written, "sha256").hexdigest()
        size, sign = file.stat().st_size, places.fingerprint(self.recipient)
        header = Header(at.isoformat(), state.seq, state.shop, size, digest, sign, hashlib.sha256(lines).hexdigest())
        with places.placed(self.place / places.list_of(name)) as out:
            out.write(header.line() + lines)
        file.rename(self.place / name)
        places.sync_folder(self.place)
        return Backup(name, at, state.seq, state.shop, size, encrypted=bool(self.recipient))

    def _sealed(self, file: Path, part: Path) -> Path:
        try:
            with places.new_file(part) as out, file.open("rb") as source:
                key.seal(source, out, self.recipient)
        except BaseException:
            part.unlink(missing_ok=True)
            raise
        return part


def main() -> None:
    """Ends quietly where nobody listens any more: who began it has ended."""
    try:
        _main()
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(1)


def _main() -> None:
    given = json.loads(sys.stdin.readline())
    with suppress(AttributeError, OSError):  # Windows has no such call
        os.nice(19)

    def say(**line: object) -> None:
        print(json.dumps(line), flush=True)

    try:
        found = take(
            given["url"],
            Path(given["place"]),
            datetime.fromisoformat(given["at"]),
            given["recipient"],
            lambda done, of: say(done=done, of=of),
            new=given["new"],
        )
    except BackupError as error:
        say(code=error.code, detail=str(error))
    else:
        say(backup=asdict(found) | {"at": found.at.isoformat()})


if __name__ == "__main__":
    main()
