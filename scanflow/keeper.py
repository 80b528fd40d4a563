"""Keeps the backups of a shop while it is served: looks at the places, makes what is due, remembers how each stands.

What it found is held in memory: a page never waits for a slow disk. One thing is done at a time, in a thread of its
own; each place is visited in one more, which is left behind where the place does not answer.
"""

from __future__ import annotations

import logging
import os
import tempfile
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, select

from scanflow.domain.backups import BackupPlace, Backups, outdated
from scanflow.storage import backups as copies
from scanflow.storage.backups import Backup, BackupError
from scanflow.storage.database import Database
from scanflow.storage.tables import head
from scanflow.workflow import backups as workflow
from scanflow.workflow.ports import Invalid, Missing, Refused

PATIENCE = 300.0
"""Seconds without a sign after which a place counts as not answering, and the next one has its turn."""

PAUSE = timedelta(minutes=5)
MOST_PAUSE = timedelta(hours=4)
"""So long a place that failed is left alone, each time twice as long; one that is gone is looked for at each check."""

MOMENT = timedelta(minutes=1)
"""A backup dated so far ahead is none of the future: two within a second are told apart by their times."""

Sign = Callable[..., None]
"""Called in the course of a long work: it goes on."""

LOOKING = "Looking for backups that are due"
BACKING_UP = "Backing up"
TRYING = "Trying the recovery key"

log = logging.getLogger(__name__)


class Ended(Exception):
    """The service ends: a backup under way is given up."""


@dataclass(frozen=True, slots=True)
class BackupPlaceState:
    """How a place was found at the last check. `size`: bytes of its backups, without pictures.

    `code` and `problem` say why the last backup failed, empty where it did not. `beside`: on the disk of the shop's
    own data, as far as the system tells.
    """

    place: BackupPlace
    newest: Backup | None = None
    count: int = 0
    size: int = 0
    code: str = ""
    problem: str = ""
    beside: bool = False
    looked: bool = False
    failures: int = 0
    again: float = 0.0


@dataclass(frozen=True, slots=True)
class Doing:
    """What is being done now: words that begin a sentence, and the place."""

    words: str
    path: str = ""


class Keeper:
    """`folder` is where the shop's own data lie on this machine, None where backups need a named place."""

    def __init__(self, database: Database, folder: Path | None, clock: Callable[[], datetime]) -> None:
        self._database, self._clock = database, clock
        self.folder = folder
        self._room = threading.Condition()
        self._tasks: list[tuple[str, Callable[[], None]]] = []
        self._worker: threading.Thread | None = None
        self._hanging: dict[str, threading.Thread] = {}
        self._standing: dict[str, BackupPlaceState] = {}
        self._ended = False
        self._at = ""

    @property
    def doing(self) -> Doing | None:
        """What is being done, or will be in a moment."""
        with self._room:
            return Doing(self._words()[0], self._at) if self._tasks else None

    @property
    def own(self) -> str | None:
        """The place in the shop's data, for as long as none is named."""
        return str(self.folder / "backups") if self.folder else None

    def standing(self, place: BackupPlace) -> BackupPlaceState:
        """How a place stands; without anything where it was not looked at yet, or has got another key since."""
        found = self._standing.get(place.path)
        if found is None or found.place.recipient != place.recipient:
            return BackupPlaceState(place)
        return replace(found, place=place)

    def check(self) -> None:
        """Begin to look at all places and make what is due. Returns at once."""
        with self._room:
            if LOOKING not in self._words()[1:]:
                self._add(LOOKING, self._visit_all)

    def now(self) -> None:
        """Begin a backup to every place, due or not. Returns at once."""
        with self._room:
            if BACKING_UP not in self._words():
                self._add(BACKING_UP, partial(self._visit_all, at_once=True))

    def try_key(self, place: BackupPlace, key: str, who: str) -> None:
        """Begin a backup there and read it back with the recovery key; only then the place counts. Returns at once."""
        self._add(TRYING, lambda: self._visit(place, partial(self._try, place, key, who)))

    def wait(self, seconds: float) -> bool:
        """Whether all that was begun is done within this time."""
        with self._room:
            return self._room.wait_for(lambda: not self._tasks, seconds)

    def close(self) -> None:
        """Give up what is under way; backups made before stay whole."""
        with self._room:
            self._ended = True
            self._tasks.clear()
            self._room.notify_all()
            worker = self._worker
        if worker is not None:
            worker.join(1.0)

    def _words(self) -> list[str]:
        """What is being done, then what waits."""
        return [words for words, _ in self._tasks]

    def _add(self, words: str, work: Callable[[], None]) -> None:
        """Do this after all that was begun."""
        with self._room:
            if self._ended:
                return
            self._tasks.append((words, work))
            self._room.notify_all()
            if self._worker is None:
                self._worker = threading.Thread(target=self._run, name="backups", daemon=True)
                self._worker.start()

    def _run(self) -> None:
        while (task := self._next()) is not None:
            try:
                task()
            except Exception:
                if not self._ended:
                    log.exception("Backups could not be made. It is tried again.")
            with self._room:
                self._at = ""
                self._tasks = self._tasks[1:]
                self._room.notify_all()

    def _next(self) -> Callable[[], None] | None:
        with self._room:
            self._room.wait_for(lambda: self._tasks or self._ended)
            return None if self._ended else self._tasks[0][1]

    def _now(self) -> tuple[Backups, int, str]:
        with self._database.reading(self._clock()) as unit:
            return unit.settings.backups, unit.seq, shop_name(unit.connection)

    def _visit_all(self, at_once: bool = False) -> None:
        known, _, _ = self._now()
        used = known.used(self.own)
        for place in used:
            if self._ended:
                return
            if at_once or time.monotonic() >= self.standing(place).again:
                self._visit(place, partial(self._keep, place, known, at_once))
        with self._room:
            for path in self._standing.keys() - {place.path for place in (*used, *known.places)}:
                del self._standing[path]

    def _visit(self, place: BackupPlace, work: Callable[[Sign], None]) -> None:
        """Do this at a place, in a thread of its own, until it is done or gives no sign any more."""
        self._at = place.path
        hanging = self._hanging.get(place.path)
        if hanging is not None and hanging.is_alive():
            return
        heard = [time.monotonic()]

        def sign(*_: Any) -> None:
            if self._ended:
                raise Ended
            heard[0] = time.monotonic()

        visit = threading.Thread(target=self._guarded, args=(place, partial(work, sign)), name="backup", daemon=True)
        visit.start()
        while visit.is_alive() and not self._ended:
            visit.join(0.1)
            if time.monotonic() - heard[0] > PATIENCE:
                self._hanging[place.path] = visit
                self._failed(place, BackupError("place_gone", f"{place.path} does not answer. Check it."))
                return

    def _guarded(self, place: BackupPlace, work: Callable[[], None]) -> None:
        try:
            work()
        except Ended:
            pass
        except (BackupError, Missing, Refused) as error:
            self._failed(place, error)
        except Exception as error:
            if not self._ended:
                self._failed(place, BackupError("failed", f"The backup to {place.path} failed: {error}."), error)

    def _keep(self, place: BackupPlace, known: Backups, at_once: bool, sign: Sign) -> None:
        """Look at a place, make a backup if one is due, and thin out the older ones."""
        path = self._there(place)
        _, seq, shop = self._now()
        newest = self._found(place, path, shop).newest
        now = self._clock()
        if at_once or newest is None or outdated(newest.at, newest.seq, now, seq, known.every):
            place = self._renew(place, path, known, now, sign)
            self._found(place, path, shop)
        self._well(place)

    def _there(self, place: BackupPlace) -> Path:
        """The folder of a place. Only the one in the shop's data is made: where a stick is missing none must be."""
        path = Path(place.path)
        if (gone := self._database.gone()) is not None:
            raise BackupError("stopped", gone.detail)
        if place.path == self.own:
            path.mkdir(mode=0o700, parents=True, exist_ok=True)
        if not path.is_dir():
            raise BackupError("place_gone", f"{path} is not there. Plug in its disk, or remove the place.")
        if place.begun and not copies.listed(path):
            raise BackupError("place_gone", f"{path} shows no backups. Plug in its disk, or name the place anew.")
        return path

    def _renew(self, place: BackupPlace, path: Path, known: Backups, now: datetime, sign: Sign) -> BackupPlace:
        """Make a backup there and thin out the older ones, unless another service of this shop is at it."""
        try:
            self._take(place, path, now, sign)
            place = self._begun(place)
            copies.thin(path, known, now)
        except BackupError as error:
            if error.code != "busy":
                raise
        return place

    def _begun(self, place: BackupPlace) -> BackupPlace:
        """The place, known to hold a backup now."""
        if place.begun or place.path == self.own:
            return place
        with self._database.writing(self._clock(), "scanflow") as unit:
            return workflow.begin(unit, place.path)

    def _take(self, place: BackupPlace, path: Path, now: datetime, sign: Sign) -> Backup:
        made = copies.take(self._database, path, now, recipient=place.recipient, new=not place.begun, progress=sign)
        if place.counts:
            self._database.guard.backed_up(path / made.name, made.at)
        return made

    def _found(self, place: BackupPlace, path: Path, shop: str) -> BackupPlaceState:
        made = [each for each in copies.listed(path) if each.shop == shop and each.encrypted is bool(place.recipient)]
        now = self._clock()
        newest = max((each for each in made if each.at <= now + MOMENT), key=lambda each: each.at, default=None)
        sizes = sum(each.size for each in made)
        return self._note(place, newest=newest, count=len(made), size=sizes, beside=self._beside(path))

    def _beside(self, path: Path) -> bool:
        on_file = self._database.kind == "sqlite" and self.folder is not None and self.folder.exists()
        return on_file and self.folder is not None and path.stat().st_dev == self.folder.stat().st_dev

    def _try(self, place: BackupPlace, key: str, who: str, sign: Sign) -> None:
        path = self._there(place)
        made = self._take(place, path, self._clock(), sign)
        copies.check(path, made, key, progress=sign)
        with self._database.writing(self._clock(), who) as unit:
            place = workflow.tried(unit, place.path, place.recipient)
        self._database.guard.backed_up(path / made.name, made.at)
        self._found(place, path, made.shop)
        self._well(place)

    def _well(self, place: BackupPlace) -> None:
        if self.standing(place).failures:
            log.warning("Backups to %s are made again.", place.path)
        self._note(place, code="", problem="", failures=0, again=0.0)

    def _failed(
        self, place: BackupPlace, error: BackupError | Missing | Refused, cause: Exception | None = None
    ) -> None:
        """Said once for each reason, and on the pages; tried again after a while."""
        code, before = getattr(error, "code", "gone"), self.standing(place)
        if code != before.code:
            log.warning("No backup to %s: %s", place.path, error, exc_info=cause)
        pause = timedelta() if code == "place_gone" else min(PAUSE * 2 ** min(before.failures, 10), MOST_PAUSE)
        again = time.monotonic() + pause.total_seconds()
        self._note(place, code=code, problem=str(error), failures=before.failures + 1, again=again)

    def _note(self, place: BackupPlace, **found: Any) -> BackupPlaceState:
        with self._room:
            self._standing[place.path] = replace(self.standing(place), looked=True, **found)
            return self._standing[place.path]

    def packing(self) -> tuple[BackupPlace, Backup] | None:
        """The newest backup for a download, a plain one if there is any; None where none was found yet."""
        known, _, _ = self._now()
        found = [(place, self.standing(place).newest) for place in known.used(self.own)]
        made = [(place, backup) for place, backup in found if backup is not None]
        return max(made, key=lambda each: (not each[1].encrypted, each[1].at), default=None)


def make_folder(path: str, own: str | None = None) -> None:
    """The folder of a new place, inside one that is there. `Invalid` at `/path` where that can't be, where it can't be
    written, and where links lead into the shop's `own` folder.
    """
    folder = Path(path)
    if own is not None:
        workflow.not_own(os.path.realpath(folder), os.path.realpath(own))
    try:
        if not folder.parent.is_dir():
            raise Invalid("/path", "no_folder", f"There is no folder {folder.parent} on this machine. Check the path.")
        folder.mkdir(mode=0o700, exist_ok=True)
    except OSError as error:
        raise Invalid("/path", "no_folder", f"{path} can't be a folder: {error.strerror}. Choose another.") from error
    try:
        tempfile.TemporaryFile(dir=folder).close()
    except OSError as error:
        words = f"Nothing can be written into {path}: {error.strerror}. Change that, or choose another folder."
        raise Invalid("/path", "not_writable", words) from error


def shop_name(connection: Connection) -> str:
    """The random name by which the shop's backups are told from another's."""
    return str(connection.execute(select(head.c.shop)).scalar_one())
