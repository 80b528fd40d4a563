"""The composition root: the shop as web and commands are handed it."""

from __future__ import annotations

import hashlib
import json
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from io import BytesIO
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import insert, select, update

from labels import card, draw, sheet
from scanflow.domain import events
from scanflow.domain.counts.stocktake import Certainty, How
from scanflow.domain.things import Photo, Section
from scanflow.exchange import csv_table, orders_csv
from scanflow.exchange import mapping as columns
from scanflow.keeper import Keeper
from scanflow.storage import mappings, tables
from scanflow.storage.access import Role, has_password, make_setup_link, make_token
from scanflow.storage.access.names import fit
from scanflow.storage.database import Database
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.storage.writing import loads
from scanflow.storage.writing.trial import TrialUnit
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.vision import Book, ImageError
from scanflow.vision.readings import Reading
from scanflow.vision.workers import Readers
from scanflow.workflow.counts.looks import Shown, Text
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders.file import Loaded
from scanflow.workflow.ports import Invalid
from scanflow.workflow.stock import cards

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Reply:
    """What a call answers: status, JSON body (None for none), and the address of what it made."""

    status: int
    body: Any
    location: str = ""
    replayed: bool = False


@dataclass(frozen=True, slots=True)
class Once:
    """An Idempotency-Key with the fingerprint of the call it came with."""

    key: str
    body: str

    @classmethod
    def of(cls, key: str, who: str, method: str, path: str, body: bytes) -> Once:
        head = json.dumps([who, method, path]).encode()
        return cls(key, hashlib.sha256(head + body).hexdigest())


def _row(reply: Reply) -> dict[str, Any]:
    return {"status": reply.status, "location": reply.location, "answer": json.dumps(reply.body)}


def _reply(row: Any) -> Reply:
    return Reply(row.status, json.loads(row.answer), row.location, replayed=True)


def card_again(
    unit: SqlUnit, code: str, *, text: str | None = None, lost: str = "", paper: str = "a4", grid: str = "3x6"
) -> list[sheet.Page]:
    """A slot's card again, alone on a page; `paper` and `grid` as `labels.sheet.sheets`, which give its size.

    `workflow.cards.reprint` says when; `Invalid` at `/grid` where the card would be too small. It is drawn by
    `card_file` once the transaction is over.
    """
    slot, section = cards.reprint(unit, code, text=text, lost=lost)
    try:
        look = {"section_name": section.name, "colour": section.colour}
        return sheet.sheets([slot.code], **look, paper=paper, grid=grid)
    except card.DoesNotFit as error:
        raise Invalid("/grid", "does_not_fit", str(error)) from error


def card_file(pages: Sequence[sheet.Page], code: str) -> bytes:
    """The PDF of `card_again`."""
    out = BytesIO()
    draw.pdf(pages, out, title=f"Card {code}")
    return out.getvalue()


def _text(one: Reading) -> Text:
    corners = tuple(round(each, 1) for corner in one.corners for each in corner)
    return Text(one.text, Certainty(one.certainty), corners, one.engines)


SLICE = 0.1
"""Seconds that a part of a load takes, about; scans wait for no more."""

GAP = 0.02
"""Seconds between two parts: a service in another process that asks for its turn on SQLite gets it."""


BEGUN = "A part of the file is loaded. Send the same file again; it goes on with the rest."


def key_of(parsed: orders_csv.Parsed) -> str:
    """SHA-256 (hex) of the orders that were read from a file, and of their rows."""
    said = repr((parsed.orders, sorted(parsed.rows.items())))
    return hashlib.sha256(said.encode(errors="backslashreplace")).hexdigest()


def _now() -> datetime:
    return datetime.now(UTC)


@dataclass(slots=True)
class Shop:
    """One shop: its database, its readers of images, its clock, its folder on this machine if it has one, and who
    keeps its backups.
    """

    database: Database
    readers: Readers = field(default_factory=Readers)
    clock: Callable[[], datetime] = _now
    folder: Path | None = None
    keeper: Keeper = field(init=False)

    def __post_init__(self) -> None:
        self.keeper = Keeper(self.database, self.folder, lambda: self.clock())

    def act(self, who: str, work: Callable[[SqlUnit], T]) -> T:
        """Do one thing as one transaction: all of it is kept when `work` returns, none of it when it raises."""
        with self.database.writing(self.clock(), who) as unit:
            return work(unit)

    def act_once(self, who: str, once: Once | None, work: Callable[[SqlUnit], Reply | None]) -> Reply:
        """The same for a call that may come again: its reply is kept with what it did, and given again.

        Work that takes long does a part each time and returns None while there is more to do: each part is a
        transaction, and others have their turn between two.
        """

        def kept(unit: SqlUnit) -> Reply | None:
            if once is None:
                return work(unit)
            before = unit.connection.execute(select(tables.answers).where(tables.answers.c.key == once.key)).first()
            if before is not None:
                if before.body != once.body:
                    raise Invalid("", "key_reused", "This Idempotency-Key was used for another call.")
                return _reply(before)
            reply = work(unit)
            if reply is None:
                return None
            unit.connection.execute(insert(tables.answers), {"key": once.key, "body": once.body, **_row(reply)})
            return reply

        begun = False
        try:
            while (reply := self.act(who, kept)) is None:
                begun = True
                time.sleep(GAP)
        except Unwritable as trouble:
            if not begun:
                raise
            raise Unwritable(trouble.code, f"{trouble.detail} {BEGUN}") from trouble
        return reply

    def answered(self, once: Once) -> Reply | None:
        """The reply that this very call had; None where it was not done yet."""
        known = tables.answers.c
        with self.looking() as unit:
            query = select(tables.answers).where(known.key == once.key, known.body == once.body)
            before = unit.connection.execute(query).first()
        return _reply(before) if before is not None else None

    def answer(self, who: str, once: Once, reply: Reply) -> None:
        """Keep the reply of a call that was done while its reply was not known yet."""
        kept = update(tables.answers).where(tables.answers.c.key == once.key).values(_row(reply))
        self.act(who, lambda unit: unit.connection.execute(kept))

    def photo(self, data: bytes, pointer: str = "") -> Photo:
        """A picture of a thing made ready to be kept: call it before the transaction. `Invalid` where it is none."""
        try:
            picture, thumb = self.readers.kept(data)
        except ImageError as error:
            raise Invalid(pointer, "bad_image", str(error)) from error
        return Photo(hashlib.sha256(picture).hexdigest(), picture, thumb)

    @contextmanager
    def looking(self) -> Iterator[SqlUnit]:
        """One unchanging view of the room, to read from."""
        with self.database.reading(self.clock()) as unit:
            yield unit

    def book(self) -> Book:
        """The texts of all cards that exist, for labels in pictures that don't decode."""
        with self.looking() as unit:
            return Book(lists.card_texts(unit.connection, unit.settings.check))

    def shown(self, image: bytes, *, how: How = How.PHOTO, **more: Any) -> Shown:
        """What a photograph shows a count, read before the transaction; `more` as of `Shown`. Raises ImageError.

        Labels that don't decode are matched against all codes that exist, never against what should be there.
        """
        picture = self.readers.read(image, self.book())
        size = (picture.width, picture.height)
        texts = tuple(map(_text, picture.readings))
        return Shown(texts=texts, how=how, image=True, size=size, photo=self.photo(image, "/image"), **more)

    def read_orders(self, data: bytes, mapping: str | None = None) -> orders_csv.Parsed:
        """The orders of a file, by the mapping of that name; without one by the one remembered for its columns, or
        by a guess. `Invalid` at `/file` or `/mapping` where it can't be read.
        """
        try:
            table = csv_table.read_table(data)
        except csv_table.FileError as error:
            raise Invalid("/file", "bad_file", str(error)) from error
        with self.looking() as unit:
            if mapping is None:
                stored = mappings.by_signature(unit.connection, columns.signature(table.headers))
            else:
                stored = mappings.load(unit.connection, mapping)
                if stored is None:
                    raise Invalid("/mapping", "unknown_mapping", f"There is no mapping {mapping}.")
            digits = {section.code: section.digits for section in unit.find(Section)}
        try:
            chosen = columns.ColumnMapping.from_json(stored) if stored else columns.guess(table, digits)
            return orders_csv.orders(table, chosen)
        except columns.MappingError as error:
            raise Invalid("/file" if mapping is None else "/mapping", "bad_columns", str(error)) from error

    def trying(self, who: str) -> AbstractContextManager[SqlUnit]:
        """One unchanging view in which work can be tried: it writes nothing, and nobody waits for it."""
        return self.database.reading(self.clock(), who, TrialUnit)

    def loading(self, parsed: orders_csv.Parsed, tell: Callable[[SqlUnit, Loaded], T]) -> Callable[[SqlUnit], T | None]:
        """What loads the orders of a file part by part, as work for `act_once` and the like; at last it is told.

        The same orders sent again go on where they were ended, and the answer is that of the whole.
        """
        key = key_of(parsed)
        with self.looking() as unit:
            unit.stocked()  # which takes a while in a large room, and is kept

        def part(unit: SqlUnit) -> T | None:
            until = time.monotonic() + SLICE
            before = loads.far(unit.connection, key, unit.at)
            enough = lambda: time.monotonic() > until  # noqa: E731
            done, place = order_file.load_part(unit, parsed.orders, parsed.rows, before.done, enough)
            if place < len(parsed.orders):
                loads.keep(unit.connection, key, before, place, done)
                return None
            return tell(unit, loads.end(unit.connection, key, before, done))

        return part

    def load(self, parsed: orders_csv.Parsed, who: str) -> Loaded:
        """Load the orders of a file."""
        done: list[Loaded] = []

        def tell(_: SqlUnit, loaded: Loaded) -> Reply:
            done.append(loaded)
            return Reply(200, None)

        self.act_once(who, None, self.loading(parsed, tell))
        return done[-1]

    def loaded(self, parsed: orders_csv.Parsed) -> int:
        """How many orders of the file are in by a load that was ended."""
        with self.looking() as unit:
            return loads.far(unit.connection, key_of(parsed), unit.at).done

    def reprint(self, who: str, code: str, **more: Any) -> bytes:
        """A slot's card again as a PDF: `card_again`."""
        return card_file(self.act(who, lambda unit: card_again(unit, code, **more)), code)

    def token(self, name: str, role: Role) -> str:
        """A new access token; `BadName`, `NameTaken` if something has the name."""

        name = fit(name)

        def work(unit: SqlUnit) -> str:
            secret = make_token(unit.connection, name, role, unit.at)
            unit.record(events.TokenMade(name=name, role=role.value))
            return secret

        return self.act(name, work)

    def setup_link(self) -> str:
        """The secret of a new one-time link that sets the owner's password; the one of now holds until it is used, and
        the ledger tells that somebody may set another one.
        """

        def work(unit: SqlUnit) -> str:
            if has_password(unit.connection):
                unit.record(events.PasswordLinkMade())
            return make_setup_link(unit.connection, unit.at)

        return self.act("scanflow", work)

    def close(self) -> None:
        self.keeper.close()
        self.readers.close()
        self.database.close()
