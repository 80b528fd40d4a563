"""What the service does by itself while it runs: jobs that come again, each in its own time, in a thread beside it."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import timedelta

from scanflow.shop import Shop
from scanflow.workflow.stocktakes import forget_old_photos

HOUR = timedelta(hours=1)
DAY = timedelta(days=1)
log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Job:
    """`work` is done at the start and then each time this long after its end; one that fails is tried again then."""

    name: str
    every: timedelta
    work: Callable[[Shop], object]


def _forget_old_photos(shop: Shop) -> None:
    """The photos of counts that ended long enough ago are deleted."""
    shop.act("scanflow", forget_old_photos)


JOBS = (Job("delete old photos of counts", DAY, _forget_old_photos),)


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
        except Exception:  # the thread must live on: the other jobs, and this one's next time, depend on it
            log.exception("This could not be done: %s. It is tried again in %s.", job.name, job.every)
