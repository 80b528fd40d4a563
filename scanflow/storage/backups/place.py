"""A place: a folder of backups on a disk that may be full, gone or somebody else's; or the one file of a download.

    2026-11-30T063325Z-000123.sqlite   all rows of the shop as of entry 123 of its ledger, without pictures and secrets
    2026-11-30T063325Z-000123.list     its header as one line of JSON, then the pictures it names, a line each
    pictures/ab/ab….jpg                each picture once, under its hash: the picture, its thumb, the thumb's check

Where a place is encrypted, the first and the pictures are age files (`.age`, age-encryption.org/v1). Their pictures
lie in a folder for each key, under names that tell nothing: a hash keyed with the recipient, which stands nowhere at
the place. A backup is whole when its first file has its name: that is given last.
"""

from __future__ import annotations

import hashlib
import hmac
import json
import os
import re
import secrets
import sys
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from pathlib import Path, PurePosixPath
from typing import IO, Protocol

from scanflow.storage.writing.failing import FULL, NUMBERS, READONLY

CHUNK = 1 << 20
LIST = ".list"
PART = ".part"
_LOCK = "in-use.lock"
ROWS = f"rows{PART}"
"""Where the rows are written before they have a name."""

_STEM = r"\d{4}-\d\d-\d\dT\d{6}Z-\d{6,}"
_NAME = re.compile(rf"{_STEM}\.sqlite(\.age)?")
_LEFT = re.compile(rf"rows\.part(-\w+)?|{_STEM}(\.sqlite\.age|\.list\.[0-9a-f]{{8}})\.part")
_PICTURE = re.compile(r"[0-9a-f]{64}\.(jpg|age)")
_PICTURE_LEFT = re.compile(rf"{_PICTURE.pattern}\.[0-9a-f]{{8}}\.part")
_PICTURES = re.compile(r"pictures(-[0-9a-f]{16})?")


class BackupError(Exception):
    """What happened, then what to do, in words for people.

    `code` is one of place_gone, place_full, place_readonly, not_a_place, busy, damaged, wrong_key, other_shop,
    not_empty (where a shop should go to), stopped.
    """

    def __init__(self, code: str, detail: str) -> None:
        super().__init__(detail)
        self.code = code


@dataclass(frozen=True, slots=True)
class Backup:
    """A whole backup at a place: the name of its file, of `size` bytes, as of entry `seq` of a shop's ledger."""

    name: str
    at: datetime
    seq: int
    shop: str
    size: int
    encrypted: bool


@dataclass(frozen=True, slots=True)
class Header:
    """What stands beside a backup: `sha256` is of its file, `listed` of the lines of its pictures.

    `key` tells apart the keys of encrypted backups, "" where it is plain.
    """

    at: str
    seq: int
    shop: str
    size: int
    sha256: str
    key: str
    listed: str
    form: int = 1

    def line(self) -> bytes:
        return json.dumps(asdict(self)).encode() + b"\n"


def name_of(at: datetime, seq: int, encrypted: bool) -> str:
    """The file name of a backup, which sorts by time and is good on every system."""
    return f"{at.astimezone(UTC):%Y-%m-%dT%H%M%SZ}-{seq:06}.sqlite{'.age' if encrypted else ''}"


def list_of(name: str) -> str:
    """The name of what stands beside a backup's file."""
    return name.removesuffix(".age").removesuffix(".sqlite") + LIST


def fingerprint(recipient: str) -> str:
    """Tells one recipient from another without giving it away; "" for none."""
    return hmac.new(recipient.encode(), b"scanflow place", "sha256").hexdigest()[:16] if recipient else ""


def picture_path(picture: str, recipient: str) -> str:
    """Where a picture of this hash lies at a place, with slashes."""
    if not recipient:
        return f"pictures/{picture[:2]}/{picture}.jpg"
    name = hmac.new(recipient.encode(), picture.encode(), "sha256").hexdigest()
    return f"pictures-{fingerprint(recipient)}/{name[:2]}/{name}.age"


class Store(Protocol):
    """What is read of a place: a folder, or the one file of a download."""

    def names(self) -> list[str]:
        """The files at its top."""

    def size(self, path: str) -> int:
        """Bytes of a file, -1 where there is none."""

    def open(self, path: str) -> IO[bytes]: ...


@dataclass(frozen=True, slots=True)
class Folder:
    """A place that is a folder."""

    root: Path

    def names(self) -> list[str]:
        with os.scandir(self.root) as found:
            return [each.name for each in found if each.is_file()]

    def size(self, path: str) -> int:
        try:
            return (self.root / path).stat().st_size
        except FileNotFoundError:
            return -1

    def open(self, path: str) -> IO[bytes]:
        return (self.root / path).open("rb")


@dataclass(frozen=True, slots=True)
class Archive:
    """A place that is a downloaded file."""

    file: zipfile.ZipFile

    def names(self) -> list[str]:
        return [each for each in self.file.namelist() if len(PurePosixPath(each).parts) == 1]

    def size(self, path: str) -> int:
        try:
            return self.file.getinfo(path).file_size
        except KeyError:
            return -1

    def open(self, path: str) -> IO[bytes]:
        return self.file.open(path)


@contextmanager
def opened(source: Path) -> Iterator[Store]:
    """A place to read from. BackupError where it is none."""
    with in_words(source):
        if source.is_dir():
            yield Folder(source)
            return
        if not source.exists():
            raise gone(source)
        if not zipfile.is_zipfile(source):
            raise BackupError("not_a_place", f"{source} holds no backup. Choose the folder or file of a backup.")
        with zipfile.ZipFile(source) as file:
            yield Archive(file)


def backups_in(store: Store) -> list[Backup]:
    """The whole ones, the newest first. What else lies there is passed over."""
    found = []
    for name in store.names():
        if _NAME.fullmatch(name):
            header = header_of(store, name)
            if header is not None and header.size == store.size(name):
                at = datetime.fromisoformat(header.at)
                found.append(Backup(name, at, header.seq, header.shop, header.size, encrypted=bool(header.key)))
    return sorted(found, key=lambda each: (each.at, each.seq, each.name), reverse=True)


def header_of(store: Store, name: str) -> Header | None:
    """What stands beside a backup; None where nothing readable does."""
    try:
        with store.open(list_of(name)) as file:
            header = Header(**json.loads(file.readline()))
        datetime.fromisoformat(header.at)
        return header
    except (OSError, KeyError, ValueError, TypeError):
        return None


def pictures_of(store: Store, name: str) -> dict[str, int] | None:
    """Path and bytes of each picture that a backup names; None where its list can't be relied on."""
    header = header_of(store, name)
    if header is None:
        return None
    with store.open(list_of(name)) as file:
        file.readline()
        lines = file.read()
    if hashlib.sha256(lines).hexdigest() != header.listed:
        return None
    pairs = (line.split(" ") for line in lines.decode().splitlines())
    return {path: int(size) for path, size in pairs}


def prepare(place: Path, *, new: bool) -> None:
    """The folder stands when this returns. One that must not be `new` holds a backup already: a place that was
    unplugged often leaves an empty folder behind, on the very disk that is to be backed up.
    """
    if place.exists() and not place.is_dir():
        raise BackupError("not_a_place", f"{place} is a file. Choose a folder for backups.")
    if not new and not (place.is_dir() and any(map(_NAME.fullmatch, Folder(place).names()))):
        raise gone(place)
    if not place.exists():
        if not place.parent.is_dir():
            raise gone(place.parent)
        place.mkdir(mode=0o700)


@contextmanager
def held(place: Path) -> Iterator[None]:
    """Alone at the place. The system lets go of it with the process; where it can't lock, names keep two apart."""
    with os.fdopen(os.open(place / _LOCK, os.O_WRONLY | os.O_CREAT, 0o600), "wb") as file:
        if not _locked(file):
            raise BackupError("busy", f"Another backup is being made in {place}. Wait until it has ended.")
        yield


def _locked(file: IO[bytes]) -> bool:
    if sys.platform == "win32":
        import msvcrt

        try:
            msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True
    import fcntl

    try:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    except OSError:  # a network share without locks
        return True
    return True


def new_file(path: Path) -> IO[bytes]:
    """To be written, for its owner alone."""
    return os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o600), "wb")


@contextmanager
def placed(path: Path) -> Iterator[IO[bytes]]:
    """A file to be written, which gets its name when all of it is on the disk; nothing is left of it else."""
    part = path.with_name(f"{path.name}.{secrets.token_hex(4)}{PART}")
    try:
        with new_file(part) as out:
            yield out
            out.flush()
            os.fsync(out.fileno())
        part.replace(path)
    except BaseException:
        part.unlink(missing_ok=True)
        raise


def sync_folder(folder: Path) -> None:
    """The names in a folder are on the disk when this returns. Windows has no such call."""
    if os.name != "nt":
        descriptor = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)


def sweep(place: Path) -> None:
    """Remove what interrupted backups left: parts of files, and lists without a backup. No file of another origin."""
    names = set(Folder(place).names())
    whole = {list_of(name) for name in names if _NAME.fullmatch(name)}
    lists = {name for name in names if re.fullmatch(_STEM + re.escape(LIST), name)}
    for name in (*filter(_LEFT.fullmatch, names), *lists - whole):
        (place / name).unlink()
    for path, _ in _in_folders(place, _PICTURE_LEFT):
        (place / path).unlink()


def pictures_at(place: Path) -> dict[str, int]:
    """Path and bytes of each picture of backups that lies there: none that somebody else keeps in such a folder."""
    return {path: entry.stat().st_size for path, entry in _in_folders(place, _PICTURE)}


def _in_folders(place: Path, wanted: re.Pattern[str]) -> Iterator[tuple[str, os.DirEntry[str]]]:
    for top in place.iterdir():
        if _PICTURES.fullmatch(top.name) and top.is_dir():
            for folder in filter(Path.is_dir, top.iterdir()):
                with os.scandir(folder) as files:
                    for each in files:
                        if wanted.fullmatch(each.name) and each.name.startswith(folder.name):
                            yield f"{top.name}/{folder.name}/{each.name}", each


@contextmanager
def in_words(place: Path) -> Iterator[None]:
    """What goes wrong with the disk of a place, said as BackupError."""
    try:
        yield
    except OSError as error:
        raise said(error, place) from error
    except zipfile.BadZipFile as error:
        raise damaged(str(place)) from error


def said(error: OSError, place: Path) -> BackupError:
    """The same of one error."""
    return {FULL: full, READONLY: read_only}.get(NUMBERS.get(error.errno or 0, ""), gone)(place)


def full(place: Path) -> BackupError:
    """The place has no room left."""
    return BackupError("place_full", f"{place} is full. Make room there, or choose another place.")


def read_only(place: Path) -> BackupError:
    """The place takes no files."""
    return BackupError("place_readonly", f"{place} can't be written. Change its rights, or choose another place.")


def gone(place: Path) -> BackupError:
    """The place is not there."""
    return BackupError("place_gone", f"{place} is not there. Plug it in, or choose another place.")


def damaged(what: str) -> BackupError:
    """A file is not what was written."""
    return BackupError("damaged", f"{what} is damaged. Use another backup; this place may need a new disk.")
