"""What the service does by itself: jobs come again, and one that fails stops no other."""

from __future__ import annotations

import threading
from contextlib import closing
from datetime import timedelta

import pytest

from scanflow.house import House, Job
from scanflow.shop import Shop


def test_a_job_that_fails_stops_no_other(shop: Shop, caplog: pytest.LogCaptureFixture) -> None:
    """It is logged by its name and tried again in its time, and the others are done meanwhile."""
    failed, done = [], threading.Event()

    def fail(_: Shop) -> None:
        failed.append(len(failed))
        raise OSError("no such place")

    def work(_: Shop) -> None:
        if len(failed) >= 2:
            done.set()

    soon = timedelta(milliseconds=10)
    with closing(House(shop, (Job("dust the shelves", soon, fail), Job("sweep", soon, work)))) as house:
        house.start()
        assert done.wait(10)
    assert "This could not be done: dust the shelves." in caplog.text


def test_each_in_its_own_time(shop: Shop) -> None:
    """All are done at the start; one that comes again in a day is not done twice while another is."""
    rare, often, enough = [], [], threading.Event()

    def work(_: Shop) -> None:
        often.append(1)
        if len(often) == 5:
            enough.set()

    jobs = (Job("rare", timedelta(days=1), rare.append), Job("often", timedelta(milliseconds=5), work))
    with closing(House(shop, jobs)) as house:
        house.start()
        assert enough.wait(10)
    assert [shop] == rare
