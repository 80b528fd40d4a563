"""A new shop begins with the time zone, paper and dates of the machine that it is made on.

Which countries print on US Letter and write the month first: Unicode CLDR (supplemental measurement data; short dates).
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest
import tzlocal

from scanflow.cli.opening import open_shop
from scanflow.storage import machine
from scanflow.workflow.ports import Settings


class Machine:
    """What the system of this machine says, for one test."""

    def __init__(self, patch: pytest.MonkeyPatch) -> None:
        self._patch = patch

    def stands(self, zone: str, language: str = "C") -> None:
        self._patch.setenv("TZ", zone)
        self._patch.setenv("LC_ALL", language)
        with suppress(LookupError, ValueError):
            tzlocal.reload_localzone()


@pytest.fixture
def system() -> Iterator[Machine]:
    with pytest.MonkeyPatch.context() as patch:
        yield Machine(patch)
    tzlocal.reload_localzone()


@pytest.mark.parametrize(
    ("zone", "language", "paper", "dates"),
    [
        ("Europe/Berlin", "", "a4", "day-first"),
        ("Europe/London", "en_GB.UTF-8", "a4", "day-first"),
        ("America/New_York", "", "letter", "month-first"),
        ("America/Toronto", "C.UTF-8", "letter", "day-first"),
        ("Asia/Manila", "POSIX", "letter", "month-first"),
        ("Europe/Berlin", "en_US.UTF-8", "letter", "month-first"),
        ("America/New_York", "de_AT@euro", "a4", "day-first"),
    ],
)
def test_what_the_machine_says(system: Machine, zone: str, language: str, paper: str, dates: str) -> None:
    """The language that the system speaks names the country; where it names none, its time zone does."""
    system.stands(zone, language)
    begun = machine.begun_here()
    assert (zone, paper, dates) == (begun.zone, begun.paper, begun.dates)


@pytest.mark.parametrize("zone", ["Nowhere/Else", ""])
def test_a_machine_that_names_no_place(system: Machine, zone: str) -> None:
    """It has the usual settings, and the shop opens."""
    system.stands(zone)
    assert Settings().paper == machine.begun_here().paper


def test_a_shop_keeps_what_it_began_with(tmp_path: Path, system: Machine) -> None:
    """The machine is asked once: a shop that moves to another keeps its own."""
    for zone in ("America/New_York", "Europe/Berlin"):
        system.stands(zone)
        shop = open_shop(tmp_path, None)
        with shop.looking() as unit:
            kept = unit.settings
        shop.close()
        assert ("America/New_York", "letter", "month-first") == (kept.zone, kept.paper, kept.dates)
