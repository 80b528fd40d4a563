"""What the service does by itself while it runs: jobs that come again, each in its own time, in a thread beside it."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from scanflow.shop import Shop
from scanflow.storage.database import trouble_of
from scanflow.storage.views.stock import kept_until
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.workflow.counts.stocktakes import forget_old_photos
from scanflow.workflow.stock import reserving

MINUTE = timedelta(minutes=1)
HOUR = timedelta(hours=1)
DAY = timedelta(days=1)
NIGHT = 3
"""The hour in which nobody scans."""

MISSED = timedelta(hours=36)
log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Job:
    """`work` is done at the start and then each time this long after its end; one that fails is tried again then."""

    name: str
    every: timedelta
    work: Callable[[Shop], object]


def _forget_old_photos(shop: Shop) -> None:
    """The photos of counts that ended long enough ago are deleted."""
    if trouble_of(shop.database) is None and not shop.act("scanflow", forget_old_photos):
        log.warning(
            "The clock is far ahead of the ledger, so old photos of counts are kept for a week. Check the clock."
        )


def _verify(shop: Shop) -> None:
    """All data are verified each night."""
    note = shop.database.guard.note
    with shop.looking() as unit:
        now = unit.at.astimezone(ZoneInfo(unit.settings.zone))
    if note is not None and not note.amiss and verify_due(note.whole, now):
        shop.database.verify(shop.clock(), whole=True, pace=3.0)


def _end_reservations(shop: Shop) -> None:
    """Reservations end when their time is up."""
    with shop.looking() as unit:
        over = kept_until(unit.connection, unit.at)
    if over:
        shop.act("scanflow", lambda unit: reserving.end_of_time(unit, over))


def verify_due(last: str, now: datetime) -> bool:
    """Whether it is time to verify all, `last` done then (ISO 8601, empty for never): at night by the shop's clock,
    and at once where a night was missed, or where a clock that was wrong has dated it ahead.
    """
    if not last:
        return True
    past = now - datetime.fromisoformat(last)
    return past > MISSED or past < -HOUR or (now.hour == NIGHT and past > HOUR)


JOBS = (
    Job("keep the note beside the database", MINUTE, lambda shop: shop.database.keep_note()),
    Job("verify all data", HOUR / 4, _verify),
    Job("end reservations", MINUTE, _end_reservations),
    Job("delete old photos of counts", DAY, _forget_old_photos),
    Job("see which backups are due", 5 * MINUTE, lambda shop: shop.keeper.check()),
)


class House:
    """Does the jobs of a shop, one after another, from `start` until it is closed."""

    def __init__(self, shop: Shop, jobs: tuple[Job, ...] = JOBS) -> None:
        self._shop, self._due = shop, dict.fromkeys(jobs, 0.0)
        self._ended = threading.Event()
        self._thread = threading.Thread(target=self._run, name="house", daemon=True)

    def start(self) -> None:
        self._thread.start()

    def close(self) -> None:
        """No job begins from here on."""
        self._ended.set()

    def _run(self) -> None:
        while not self._ended.is_set():
            for job, due in self._due.items():
                if due <= time.monotonic() and not self._ended.is_set():
                    self._do(job)
                    self._due[job] = time.monotonic() + job.every.total_seconds()
            self._ended.wait(max(0.0, min(self._due.values()) - time.monotonic()))

    def _do(self, job: Job) -> None:
        try:
            job.work(self._shop)
        except Unwritable as trouble:
            log.error("This could not be done: %s. %s It is tried again in %s.", job.name, trouble, job.every)
        except Exception:  # the thread must live on: the other jobs, and this one's next time, depend on it
            log.exception("This could not be done: %s. It is tried again in %s.", job.name, job.every)
