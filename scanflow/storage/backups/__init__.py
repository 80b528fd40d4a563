"""Backups of a shop at a place, and what becomes of them: taken, listed, checked, thinned, packed into one file.

What a place looks like is in `place.py`; how one is put back, in `restore.py`.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import IO

from scanflow.domain.backups import Backups
from scanflow.storage.backups import place as places
from scanflow.storage.backups.key import new_key, recipient_of, unseal
from scanflow.storage.backups.pictures import taken_out
from scanflow.storage.backups.place import Backup, BackupError, Folder, Store, damaged
from scanflow.storage.backups.rows import BackupState, check_rows, pictures_in
from scanflow.storage.database import Database

__all__ = ("Backup", "BackupError", "check", "listed", "new_key", "pack", "recipient_of", "take", "thin")

Progress = Callable[[int, int], None]
"""Is told how many pictures are done, and of how many."""

_COMMAND = (sys.executable, "-m", "scanflow.storage.backups.taking")
_PACKAGES = Path(__file__).parents[3]


def take(
    database: Database,
    place: Path,
    at: datetime,
    *,
    recipient: str = "",
    new: bool = True,
    progress: Progress | None = None,
) -> Backup:
    """A new whole backup at a place: encrypted if there is a recipient, `age1…`. BackupError.

    The folder is made if need be, in one that stands; where it is not `new`, it must hold a backup already. It is
    done by a process of its own, for scans would wait for its computing. Each process that does so ends when it is
    done, whether or not this one lives.
    """
    if database.guard.amiss:  # further backups would take the places of good ones
        raise BackupError(
            "damaged", "Something is amiss with the shop's data, so they are not backed up: settle it first."
        )
    url = database.engine.url.render_as_string(hide_password=False)
    given = {"url": url, "place": str(place), "at": at.isoformat(), "recipient": recipient, "new": new}
    path = os.pathsep.join(filter(None, [str(_PACKAGES), os.environ.get("PYTHONPATH")]))
    environment = {**os.environ, "PYTHONPATH": path}
    with subprocess.Popen(
        _COMMAND,
        env=environment,
        encoding="utf-8",
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        start_new_session=True,  # Ctrl+C at the service is none of its own
    ) as process:
        assert process.stdin is not None and process.stdout is not None
        process.stdin.write(json.dumps(given) + "\n")
        process.stdin.flush()
        for line in process.stdout:
            said = json.loads(line)
            if "backup" in said:
                return Backup(**said["backup"] | {"at": datetime.fromisoformat(said["backup"]["at"])})
            if "code" in said:
                raise BackupError(said["code"], said["detail"])
            if progress is not None:
                progress(said["done"], said["of"])
    raise BackupError("stopped", "The backup ended before it was whole. Take it again; earlier ones are as they were.")


def listed(place: Path) -> list[Backup]:
    """The whole backups at a place, or in a packed file, the newest first; none where the place is not there.

    Cheap: only the head of the list beside each is read. BackupError where the disk fails.
    """
    if not place.exists():
        return []
    with places.opened(place) as store:
        return places.backups_in(store)


def read_through(store: Store, backup: Backup, key: str) -> None:
    """The file of a backup is what its header says, and this key opens it, "" a plain one. BackupError."""
    header = places.header_of(store, backup.name)
    if header is None:
        raise damaged(backup.name)
    if backup.encrypted and not key:
        raise BackupError("wrong_key", "This backup is encrypted. Give its recovery key, AGE-SECRET-KEY-1….")
    if backup.encrypted and places.fingerprint(recipient_of(key)) != header.key:
        raise BackupError("wrong_key", "This backup opens with another recovery key. Look for the sheet of its place.")
    digest = hashlib.sha256()
    with store.open(backup.name) as source:
        while chunk := source.read(places.CHUNK):
            digest.update(chunk)
    if digest.hexdigest() != header.sha256:
        raise damaged(backup.name)


def write_out(store: Store, backup: Backup, key: str, out: Path) -> BackupState:
    """The rows of a backup as a new file, and what it says of itself; it is whole. BackupError."""
    with store.open(backup.name) as source, places.new_file(out) as file:
        if backup.encrypted:
            unseal(source, file, key, backup.name)
        else:
            shutil.copyfileobj(source, file, places.CHUNK)
    state = check_rows(out, backup.name)
    if (state.seq, state.shop) != (backup.seq, backup.shop):
        raise damaged(backup.name)
    return state


def check(place: Path, backup: Backup, key: str = "", progress: Progress | None = None) -> None:
    """Read all of a backup back: its rows, the account in them, and each picture. BackupError.

    Nothing is left of it on this disk. An encrypted one needs its key.
    """
    with places.opened(place) as store, tempfile.TemporaryDirectory(prefix="scanflow-check-") as work:
        rows = Path(work) / "rows"
        read_through(store, backup, key)
        write_out(store, backup, key, rows)
        recipient = recipient_of(key) if backup.encrypted else ""
        wanted = pictures_in(rows)
        for done, (_, name) in enumerate(wanted, 1):
            taken_out(store, name, recipient, key)
            if progress is not None:
                progress(done, len(wanted))


def thin(place: Path, keep: Backups, now: datetime) -> list[Backup]:
    """Delete what is not to be kept, then pictures that no backup names; the backups that went. BackupError.

    The newest stays, whatever `keep` says, and so does what a clock that was wrong has dated after `now`.
    """
    with places.in_words(place), places.held(place):
        store = Folder(place)
        found = places.backups_in(store)
        kept = _kept(found, keep, now)
        gone = [each for each in found if each not in kept]
        for backup in gone:
            (place / backup.name).unlink()
            (place / places.list_of(backup.name)).unlink()
        if gone:
            _drop_pictures(place, store)
        return gone


def _kept(found: list[Backup], keep: Backups, now: datetime) -> set[Backup]:
    """Of each period the newest, in as many of the latest periods that have any."""
    past = [each for each in found if each.at <= now]
    kept = {*past[:1], *(each for each in found if each.at > now)}
    periods: tuple[tuple[int, Callable[[datetime], object]], ...] = (
        (keep.days, lambda at: at.date()),
        (keep.weeks, lambda at: at.isocalendar()[:2]),
        (keep.months, lambda at: (at.year, at.month)),
    )
    for count, period in periods:
        newest: dict[object, Backup] = {}
        for each in past:
            newest.setdefault(period(each.at), each)
        kept |= set(list(newest.values())[:count])
    return kept


def _drop_pictures(place: Path, store: Folder) -> None:
    """Those that no list names; none at all while a list can't be relied on."""
    named: set[str] = set()
    for name in store.names():
        if name.endswith(places.LIST):
            pictures = places.pictures_of(store, name.removesuffix(places.LIST))
            if pictures is None:
                return
            named |= pictures.keys()
    for path in places.pictures_at(place).keys() - named:
        (place / path).unlink()


def pack(place: Path, backup: Backup, out: IO[bytes]) -> None:
    """One backup as one file, which `restore` takes as it takes a place: a ZIP archive, stored, written as it goes."""
    with places.opened(place) as store, zipfile.ZipFile(out, "w") as archive:
        pictures = places.pictures_of(store, backup.name)
        if pictures is None:
            raise damaged(backup.name)
        for path in (places.list_of(backup.name), backup.name, *pictures):
            entry = zipfile.ZipInfo(path, backup.at.timetuple()[:6])
            entry.external_attr = 0o600 << 16
            with store.open(path) as source, archive.open(entry, "w", force_zip64=True) as packed:
                shutil.copyfileobj(source, packed, places.CHUNK)
