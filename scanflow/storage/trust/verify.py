"""Whether the data are what they were: the database's own checks, the ledger's chain, rows against it, pictures.

Everything is read in short transactions, so that nothing waits for it.
"""

from __future__ import annotations

import hashlib
import json
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import islice

from sqlalchemy import Connection, Engine, and_, func, inspect, select, text
from sqlalchemy.exc import DBAPIError

from scanflow.domain import events
from scanflow.domain.things import Photo
from scanflow.storage import tables
from scanflow.storage.ledger import FIRST, Entry, entry_of, first_break
from scanflow.storage.rows import COLUMNS, KINDS
from scanflow.storage.trust.note import DataFault, Note
from scanflow.storage.trust.replay import NOW, REPLAYED, digest, row_as_read, row_now

MOST = 20
"""Findings of one kind that are named; where the file is spoilt there could be thousands."""

PIECE = 500
"""Rows of one reading."""

NAMES = 400
"""Rows asked for by name at once."""

_ROWS = tuple(kind for kind in REPLAYED if kind is not Photo)
_KINDS = {KINDS[kind].name: kind for kind in _ROWS}
UNREADABLE = (DBAPIError, ValueError, TypeError, KeyError, AttributeError)
"""What reading a row may raise whose bytes are not what they were."""

Say = Callable[[str], object]


@dataclass(slots=True)
class Verified:
    """What was found, and the ledger's last entry that was read, with its hash."""

    seq: int
    hash: str
    findings: list[DataFault] = field(default_factory=list)


def verify(
    reader: Engine, *, whole: bool, note: Note | None = None, pace: float = 0.0, say: Say = lambda what: None
) -> Verified:
    """Read the database and hold it against itself: all of it, or in brief what changed since the `note` was verified
    and all that is quick. What a person accepted is left out.

    `pace` is how long it rests after each piece, as a multiple of the time that the piece took.
    """
    since = (note.verified, note.verified_hash) if note and not whole else (0, FIRST)
    checker = _Checker(reader, pace, since)
    steps: list[tuple[str, Callable[[], None]]] = [
        ("the database's own checks", lambda: checker.structure(whole)),
        ("the ledger", checker.ledger),
        ("rows against the ledger", checker.told_rows if since[0] else checker.all_rows),
    ]
    if whole:
        steps += [("what refers to nothing", checker.links), ("pictures", checker.pictures)]
    for what, step in steps:
        say(what)
        checker.attempt(what, step)
    return Verified(checker.seq, checker.hash, checker.outcome())


class _Checker:
    def __init__(self, reader: Engine, pace: float, since: tuple[int, str]) -> None:
        self._reader, self._pace = reader, pace
        self.seq, self.hash = since
        self._told: dict[str, str] = {}
        """`TABLE NAME` → `STATE DIGEST` by the ledger, of what was not held against its row yet."""
        self._small: dict[str, str] = {}
        """The same of pictures, which are held apart: `- DIGEST` of the small copy by the picture's hash."""
        self._found: dict[str, list[DataFault]] = {}

    def attempt(self, what: str, step: Callable[[], None]) -> None:
        try:
            step()
        except UNREADABLE as error:
            cause = str(getattr(error, "orig", None) or error).splitlines()[0]
            self._note("damaged", f"This can't be read: {what} ({cause}).")

    def outcome(self) -> list[DataFault]:
        found = [finding for named in self._found.values() for finding in named]
        if not found:
            return found
        try:
            with self._view() as connection:
                known = set(accepted(connection))
        except UNREADABLE:
            known = set()
        return [finding for finding in found if finding.words not in known]

    def _note(self, code: str, words: str) -> None:
        named = self._found.setdefault(code, [])
        if len(named) < MOST and words not in (each.words for each in named):
            named.append(DataFault(code, words))

    @contextmanager
    def _view(self) -> Iterator[Connection]:
        begun = time.monotonic()
        with self._reader.connect() as connection, connection.begin():
            yield connection
        if self._pace:
            time.sleep(self._pace * (time.monotonic() - begun))

    # The database's own checks

    def structure(self, whole: bool) -> None:
        if self._reader.dialect.name == "postgresql":
            self._sums()
        elif whole:
            self._sqlite_check("PRAGMA integrity_check(20)")
        else:
            for table in (*tables.metadata.sorted_tables, "alembic_version"):
                if table is not tables.photos:  # which may be most of the file
                    self._sqlite_check(f'PRAGMA integrity_check("{table}")')

    def _sqlite_check(self, pragma: str) -> None:
        with self._view() as connection:
            for (said,) in connection.exec_driver_sql(pragma):
                if said != "ok":
                    self._note("damaged", f"The database's own check says: {said}.")

    def _sums(self) -> None:
        """What PostgreSQL counted of pages whose sums were wrong; None where it keeps no sums."""
        query = "SELECT checksum_failures FROM pg_stat_database WHERE datname = current_database()"
        with self._view() as connection:
            if connection.execute(text(query)).scalar():
                self._note("damaged", "PostgreSQL has found pages whose checksum is wrong: its log names them.")

    def links(self) -> None:
        """Rows that refer to one that does not exist."""
        for table in tables.metadata.sorted_tables:
            for key in table.foreign_keys:
                other = key.column.table.alias()
                query = (
                    select(key.parent)
                    .select_from(table.outerjoin(other, key.parent == other.c[key.column.name]))
                    .where(and_(key.parent.is_not(None), other.c[key.column.name].is_(None)))
                    .distinct()
                    .limit(MOST)
                )
                with self._view() as connection:
                    for (name,) in connection.execute(query):
                        self._note("link", f"{table.name} refer to {key.column.table.name} {name}, which is not there.")

    # The ledger

    def ledger(self) -> None:
        """Its numbers without a gap, its chain from where this began, its head at its last entry."""
        with self._view() as connection:
            self._gaps(connection)
            if self.seq and self._hash_at(connection, self.seq) != self.hash:
                self._note("chain", f"Entry {self.seq} of the ledger is another one than it was.")
                self.seq, self.hash = 0, FIRST
        while self._read_piece():
            pass
        with self._view() as connection:
            self._catch_up(connection)
            head = connection.execute(select(tables.head)).one_or_none()
            if head is None or (head.seq, head.hash) != (self.seq, self.hash):
                ends = f"its head says {head.seq}" if head is not None else "its head is missing"
                same = head is not None and head.seq == self.seq
                self._note(
                    "head",
                    f"The ledger ends at entry {self.seq}, and {'its head has another hash' if same else ends}.",
                )

    def _hash_at(self, connection: Connection, seq: int) -> str | None:
        return connection.execute(select(tables.ledger.c.hash).where(tables.ledger.c.seq == seq)).scalar()

    def _gaps(self, connection: Connection) -> None:
        seq = tables.ledger.c.seq
        count, last = connection.execute(select(func.count(), func.max(seq)).select_from(tables.ledger)).one()
        if count == (last or 0):
            return
        before = 0
        for (each,) in connection.execute(select(seq).order_by(seq)):
            if each != before + 1:
                missing = f"entry {before + 1}" if each == before + 2 else f"entries {before + 1} to {each - 1}"
                self._note("gap", f"The ledger lacks {missing}.")
            before = each

    def _read_piece(self) -> bool:
        with self._view() as connection:
            return self._read_on(connection)

    def _catch_up(self, connection: Connection) -> None:
        """What was written since the last check: rows are held against the ledger of the same moment."""
        while self._read_on(connection):
            pass

    def _read_on(self, connection: Connection) -> bool:
        """Read the next entries; whether there were any."""
        query = select(tables.ledger).where(tables.ledger.c.seq > self.seq).order_by(tables.ledger.c.seq).limit(PIECE)
        entries = [entry_of(row) for row in connection.execute(query)]
        self._chain(entries)
        for entry in entries:
            told = entry["data"].get(NOW, ())
            if entry["kind"] == events.Baseline.kind and entry["data"].get("first") == 0:
                self._told.clear()
            for name, said in map(_split, told):
                table, _, hash_ = name.partition(" ")
                if table == tables.photos.name:
                    self._small[hash_] = said
                else:
                    self._told[name] = said
        if entries:
            self.seq, self.hash = entries[-1]["seq"], entries[-1]["hash"]
        return bool(entries)

    def _chain(self, entries: list[Entry]) -> None:
        previous, first, rest = self.hash, self.seq + 1, entries
        while (broken := first_break(rest, previous, first)) is not None:
            place = min(broken - first, len(rest) - 1)
            entry, rest = rest[place], rest[place + 1 :]
            self._note(
                "chain", f"Entry {entry['seq']} of the ledger is not what it was, or does not follow the one before."
            )
            previous, first = entry["hash"], entry["seq"] + 1

    # Rows against the ledger

    def all_rows(self) -> None:
        """Each row that stands in the tables, then what was told of and not met."""
        for kind in _ROWS:
            self.attempt(f"the table {KINDS[kind].name}", lambda kind=kind: self._rows_of(kind))  # type: ignore[misc]
        self.told_rows()

    def _rows_of(self, kind: type) -> None:
        table, last = KINDS[kind], 0
        while True:
            query = select(table.c.n, *COLUMNS[kind]).where(table.c.n > last).order_by(table.c.n).limit(PIECE)
            with self._view() as connection:
                self._catch_up(connection)
                rows = connection.execute(query).all()
                for row in rows:
                    self._hold(row_as_read(kind, row[1:]))
            if not rows:
                return
            last = rows[-1].n

    def told_rows(self) -> None:
        """The rows that the ledger told of and that were not held against it yet."""
        while self._told:
            with self._view() as connection:
                self._catch_up(connection)
                for table, names in _by_table(islice(self._told, NAMES)):
                    self._hold_named(connection, _KINDS[table], names)

    def _hold_named(self, connection: Connection, kind: type, names: set[str]) -> None:
        for row in connection.execute(select(*COLUMNS[kind]).where(COLUMNS[kind][0].in_(names))):
            self._hold(row_as_read(kind, row))
            names.discard(row[0])
        for name in names:
            self._hold(row_now(kind, name, None))

    def _hold(self, now: str) -> None:
        name, is_now = _split(now)
        told = self._told.pop(name, None)
        if told != is_now:
            self._note("row", f"{_spoken(name)}: {_differ(told, is_now)}.")

    # Pictures

    def pictures(self) -> None:
        """Each picture's SHA-256 is its name, and the ledger has a digest of its small copy."""
        with self._view() as connection:
            numbers = list(connection.execute(select(tables.photos.c.n).order_by(tables.photos.c.n)).scalars())
        photos = tables.photos.c
        for n in numbers:
            with self._view() as connection:
                row = connection.execute(select(*COLUMNS[Photo]).where(photos.n == n)).one_or_none()
            if row is not None and not self._as_it_was(Photo(*row)):
                self._note("picture", f"The picture {row.hash[:12]} is not what it was.{self._shown_by(row.hash)}")

    def _as_it_was(self, photo: Photo) -> bool:
        told = self._small.get(photo.hash)
        return hashlib.sha256(photo.picture).hexdigest() == photo.hash and told in (None, f"- {digest(photo)}")

    def _shown_by(self, photo: str) -> str:
        items, stays = tables.items.c, tables.stays.c
        query = (
            select(stays.code, items.title).join_from(tables.stays, tables.items).where(items.photo == photo).limit(1)
        )
        with self._view() as connection:
            row = connection.execute(query).one_or_none()
        return f" It shows {row.title} ({row.code})." if row is not None else ""


def accepted(connection: Connection) -> Iterable[str]:
    """The words of all findings that a person accepted."""
    query = select(tables.ledger.c.data).where(tables.ledger.c.kind == events.AcceptedAmiss.kind)
    for data in connection.execute(query).scalars():
        yield from json.loads(data)["found"]


def revision(connection: Connection) -> str | None:
    """Of which revision the tables are; None where no shop was ever begun."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    return connection.execute(text("SELECT version_num FROM alembic_version")).scalar()


def _split(now: str) -> tuple[str, str]:
    """`TABLE NAME` and `STATE DIGEST`: a name may have spaces."""
    name, state, digest = now.rsplit(" ", 2)
    return name, f"{state} {digest}"


def _by_table(names: Iterable[str]) -> Iterable[tuple[str, set[str]]]:
    grouped: dict[str, set[str]] = {}
    for each in names:
        table, _, name = each.partition(" ")
        grouped.setdefault(table, set()).add(name)
    return grouped.items()


def _spoken(name: str) -> str:
    table, _, name = name.partition(" ")
    return f"{_KINDS[table].__name__} {name}"


def _differ(told: str | None, is_now: str) -> str:
    if told is None:
        return "the database has it, the ledger does not"
    (said, _), (stands, digest) = told.split(" "), is_now.split(" ")
    if digest == "-":
        return (
            f"the ledger says {said}, the database lacks it"
            if said != "-"
            else "the ledger has it, the database lacks it"
        )
    if told == "- -":
        return "the ledger says it is gone, the database has it"
    if said != stands:
        return f"the ledger says {said}, the database says {stands}"
    return "the database has other words than the ledger"
