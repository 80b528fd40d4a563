"""What the service does by itself: jobs come again, and one that fails stops no other."""

from __future__ import annotations

import threading
import time
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from damaged_data import DataFolder, damage, filled_database, write_entries
from memory import NOON
from shown_counts import opened, shown

from scanflow.domain.things import Photo
from scanflow.house import House, Job, _forget_old_photos, verify_due
from scanflow.shop import Shop
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes


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


@pytest.mark.parametrize(
    ("last", "now", "due"),
    [
        ("", "2026-03-02T12:00:00+01:00", True),
        ("2026-03-02T02:10:00+00:00", "2026-03-02T12:00:00+01:00", False),
        ("2026-03-02T02:10:00+00:00", "2026-03-03T03:05:00+01:00", True),
        ("2026-03-03T02:01:00+00:00", "2026-03-03T03:30:00+01:00", False),
        ("2026-03-01T02:10:00+00:00", "2026-03-02T14:00:00+01:00", False),
        ("2026-03-01T02:10:00+00:00", "2026-03-02T15:11:00+01:00", True),
        ("2099-03-01T02:10:00+00:00", "2026-03-02T15:11:00+01:00", True),
    ],
)
def test_when_all_is_verified(last: str, now: str, due: bool) -> None:
    """At three in the night by the shop's clock, once; in the day if missed, or dated ahead by a wrong clock."""
    assert due == verify_due(last, datetime.fromisoformat(now))


def test_all_is_verified_by_itself(tmp_path: Path) -> None:
    """A shop that never was is verified at the start; what is amiss then stops its writes."""
    folder = DataFolder(tmp_path)
    with closing(filled_database(folder.open(brief=False))) as database:
        damage(database, "UPDATE items SET title = 'Bell' WHERE n = 2")
        with closing(House(Shop(database))) as house:
            house.start()
            end = time.monotonic() + 20
            while not database.guard.amiss and time.monotonic() < end:
                time.sleep(0.01)
        with pytest.raises(Unwritable, match="other words"):
            write_entries(database)


def test_old_photos_wait_while_the_clock_is_ahead(shop: Shop, caplog: pytest.LogCaptureFixture) -> None:
    """400 days past the last entry nothing is deleted, nor when a count begins then, nor on the next day by that
    clock; with the clock right again they stay until they are old, and a week of entries makes a long pause good.
    """
    now = [NOON]
    shop.clock = lambda: now[0]
    shop.act(
        "owner",
        lambda unit: stock.add_section(
            unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue")
        ),
    )
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=4)))
    count = opened(shop)
    shown(shop, count, "A-1-1", "D001", key="first")
    shop.act("owner", lambda unit: stocktakes.cancel(unit, count.id))

    def kept() -> int:
        _forget_old_photos(shop)
        with shop.looking() as unit:
            return len(unit.find(Photo))

    now[0] = NOON + timedelta(days=400)
    assert 1 == kept()
    assert "Check the clock." in caplog.text
    opened(shop)
    now[0] += timedelta(days=1)
    assert 1 == kept()
    now[0] = NOON + timedelta(days=2)
    assert 1 == kept()
    now[0] = NOON + timedelta(days=409)
    assert 0 == kept()
