"""A note beside the database: whose it is and how far its ledger went, so that another file in its place is noticed.

It is a small JSON file, `shop.json`. For PostgreSQL it lies in this machine's data folder, one for each database.

Beside it, in `shop.last`, each commit leaves the ledger's end, without waiting for the disk: after a kill it is exact,
after a power cut the note has the last minute's.
"""

from __future__ import annotations

import hashlib
import json
import logging
import os
from contextlib import suppress
from dataclasses import asdict, dataclass, replace
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, inspect, select

from scanflow.storage import tables
from scanflow.storage.ledger import FIRST
from scanflow.storage.program import PROGRAM

NAME = "shop.json"
LAST = ".last"
RESTORE = f"restore the newest backup into a new folder: {PROGRAM} restore BACKUP --data NEW_FOLDER"
ADVICE = {
    "damaged": f"Copy the data folder as it is, then {RESTORE}.",
    "picture": "Take these pictures anew, then accept this.",
    "other_shop": "Put this shop's own file back, or start with another data folder.",
    "older": f"Put the newer file back. If there is none, {RESTORE}, or accept that what came after it is lost.",
    "other_past": f"Put this shop's own file back, or {RESTORE}.",
}
"""What is safe to do, by code."""

OTHERWISE = f"If you know why, accept it with the reason. If not, copy the data folder as it is, then {RESTORE}."
log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class DataFault:
    """What is amiss: `words` say it, and stay the same as long as it is."""

    code: str
    words: str

    @property
    def advice(self) -> str:
        return ADVICE.get(self.code, OTHERWISE)

    def as_dict(self) -> dict[str, str]:
        return {"code": self.code, "words": self.words, "advice": self.advice}


@dataclass(frozen=True, slots=True)
class Note:
    """The shop's name, the ledger's last entry and its hash when this was written, and what was checked.

    Up to the entry `verified` all was checked; `whole` is when all was last read and held against the ledger (ISO
    8601, empty for never). While something is `amiss` nothing is written. `backup` is the file of the newest backup
    that this machine made, as of `backup_at`: kept here, it can be named whatever became of the database.
    """

    shop: str
    seq: int
    hash: str
    verified: int = 0
    verified_hash: str = FIRST
    whole: str = ""
    amiss: tuple[DataFault, ...] = ()
    backup: str = ""
    backup_at: str = ""

    @property
    def last_good(self) -> str:
        """A sentence on the newest backup, empty where none was made."""
        if not self.backup:
            return ""
        at = datetime.fromisoformat(self.backup_at).astimezone(UTC)
        return f"The newest backup is {self.backup}, of {at:%Y-%m-%d %H:%M} UTC."


class Unopened(Exception):
    """The database can't be opened as it stands. Nothing was made or changed."""


class Notebook:
    """The file of a note; it is replaced as a whole or not at all."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._last = path.with_suffix(LAST)

    def read(self) -> Note | None:
        """The note, as far on as the last commit went; None where there is none, or none that can be read."""
        note = self.stored()
        if note is None:
            return None
        with suppress(OSError, ValueError):
            shop, seq, hash_ = self._last.read_text(encoding="ascii").split()
            if shop == note.shop and int(seq) > note.seq:
                return replace(note, seq=int(seq), hash=hash_)
        return note

    def stored(self) -> Note | None:
        """The same without what was committed since it was written."""
        try:
            kept = json.loads(self.path.read_text(encoding="utf-8"))
            return Note(**{**kept, "amiss": tuple(DataFault(**each) for each in kept["amiss"])})
        except FileNotFoundError:
            return None
        except (ValueError, TypeError, KeyError) as error:
            log.warning("The note %s can't be read and is written anew: %s", self.path, error)
            return None

    def write(self, note: Note) -> None:
        """Durable when it returns. OSError where it can't be written."""
        self.path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        fresh = self.path.with_name(f"{self.path.name}.{os.getpid()}.new")
        with open(fresh, "w", encoding="utf-8", opener=partial(os.open, mode=0o600)) as file:
            json.dump(asdict(note), file, indent=1)
            file.flush()
            os.fsync(file.fileno())
        fresh.replace(self.path)
        self.committed(note.shop, note.seq, note.hash)

    def committed(self, shop: str, seq: int, hash_: str) -> None:
        """The ledger's end is this now: it is written over in place, and no scan waits for the disk."""
        line = f"{shop} {seq:020} {hash_}\n".encode("ascii")
        with suppress(OSError), os.fdopen(os.open(self._last, os.O_WRONLY | os.O_CREAT, 0o600), "wb") as file:
            file.write(line)

    def change(self, **new: Any) -> None:
        """Write it with these fields, the rest as it stands now; nothing where there is none."""
        note = self.read()
        if note is not None:
            self.write(replace(note, **new))

    def set_aside(self) -> None:
        """For a restore: the database that comes now is not the one of the note, on purpose."""
        if self.path.exists():
            self.path.replace(self.path.with_name(f"{self.path.name}.old"))


def for_file(database: Path) -> Notebook:
    """The note of an SQLite file."""
    return Notebook(database.with_name(NAME))


def for_url(url: str, folder: Path) -> Notebook:
    """The note of a PostgreSQL database in this machine's data folder; its name tells nothing of the URL."""
    return Notebook(folder / "notes" / f"{hashlib.sha256(url.encode()).hexdigest()[:16]}.json")


def must_stand(database: Path, notebook: Notebook) -> None:
    """`Unopened` where a shop was and its SQLite file is missing or empty: never an empty new shop instead."""
    log_left = database.with_name(f"{database.name}-wal")
    was = notebook.path.exists() or (log_left.exists() and log_left.stat().st_size > 0)
    if was and not database.exists():
        raise gone(f"{database} is missing", notebook)
    if was and database.stat().st_size == 0:
        raise gone(f"{database} is empty", notebook)


def gone(what: str, notebook: Notebook) -> Unopened:
    """The error that tells of a shop that should be here."""
    note = notebook.read()
    had = f" with {note.seq} entries in its ledger" if note else ""
    last = f" {note.last_good}" if note and note.backup else ""
    return Unopened(
        f"{what}. A shop was here{had}. Nothing was made or changed. Put the database back, or {RESTORE}.{last} "
        f"To begin an empty shop here instead, move {notebook.path} and what is left of the database away first."
    )


def differences(connection: Connection, note: Note) -> list[DataFault]:
    """How the database differs from what the note knows."""
    if not _named(connection):
        return [DataFault("older", "The database is older than it was: its tables are those of before an upgrade.")]
    head = connection.execute(select(tables.head)).one_or_none()
    if head is None or head.shop != note.shop:
        return [DataFault("other_shop", f"This database is another shop's: the note knows {note.shop}.")]
    if head.seq < note.seq:
        return [
            DataFault(
                "older",
                f"The database is older than it was: its ledger ends at entry {head.seq}, and it had {note.seq}.",
            )
        ]
    query = select(tables.ledger.c.hash).where(tables.ledger.c.seq == note.seq)
    known = connection.execute(query).scalar() if note.seq else FIRST
    if known != note.hash:
        return [DataFault("other_past", f"Entry {note.seq} of the ledger is not the one that the note knows.")]
    return []


def _named(connection: Connection) -> bool:
    """Whether its tables are of a revision that names the shop. Every shop with a note has one."""
    found = inspect(connection)
    return found.has_table("head") and any(each["name"] == "shop" for each in found.get_columns("head"))
