"""What is typed about a section's goods, worked out: slots per bin from sizes, cards from intake and stays."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from scanflow.domain.things import Stay
from scanflow.planning import stays
from scanflow.planning.bulk import Bulk, NothingFits, bulk
from scanflow.planning.measures import Size, size, unit_of
from scanflow.planning.sizing import Burst, Demand, Season
from scanflow.web.pages.planning import form_values
from scanflow.workflow.ports import Invalid
from scanflow.workflow.stock import MOST_PER_BIN

RISKS = {"0.01": "1 in 100", "0.05": "1 in 20", "0.1": "1 in 10", "0.001": "1 in 1,000"}
BIN = "23 x 8 x 6 in"
LOOKED_BACK = timedelta(days=90)
MOST_AT_ONCE = 2000.0
"""Things of a section at once, where they come in batches: beyond it the answer takes too long for a page."""


@dataclass(frozen=True, slots=True)
class OwnStays:
    """What the shop's own stays say of a section: items a week over so many weeks, and how long they stay."""

    intake: float
    weeks: float
    stays: stays.StayEstimate | None


def own(past: Sequence[Stay], now: datetime) -> OwnStays | None:
    """None while nothing ever came. The intake is that of the last 90 days, or since the first thing came."""
    first: dict[str, datetime] = {}
    for stay in past:
        first[stay.item] = min(stay.began, first.get(stay.item, stay.began))
    if not first:
        return None
    since = max(min(first.values()), now - LOOKED_BACK)
    weeks = max(1.0, (now - since) / timedelta(days=7))
    try:
        estimate = stays.estimate(stays.observe(past, now))
    except stays.NothingEnded:
        estimate = None
    return OwnStays(sum(began >= since for began in first.values()) / weeks, weeks, estimate)


def demand(given: Mapping[str, str], estimate: stays.StayEstimate | None = None) -> Demand:
    """What comes in and how long it stays; an estimate stands in for a stay that was not typed."""
    intake = form_values.decimal(given, "intake", "Things that come in a week", 0.01, 10_000)
    if given.get("stay", "").strip() or estimate is None:
        days, shorter = form_values.decimal(given, "stay", "Days that a thing stays", 0.1, 10_000), 0.5
    else:
        days, shorter = estimate.mean, estimate.shorter_of_two
    batch = form_values.counts(given, "batch", "Things bought on each of some days")
    swing = (
        form_values.decimal(given, "season", "Swing of the season", 0, 100) if given.get("season", "").strip() else 0.0
    )
    try:
        wanted = Demand(intake, days, Burst(batch) if batch else None, Season(swing / 100) if swing else None, shorter)
    except ValueError as error:
        raise Invalid("/intake", "bad_number", form_values.sentence(error)) from error
    if batch and wanted.load > MOST_AT_ONCE:
        raise Invalid(
            "/batch", "bad_number", f"With buying days a section holds up to {MOST_AT_ONCE:,.0f} things here."
        )
    return wanted


def risk(given: Mapping[str, str]) -> float:
    """The share of things that may find no free card."""
    return float(form_values.choice(given, "risk", RISKS))


def measured(given: Mapping[str, str]) -> Bulk | None:
    """Slots per bin from the sizes of some things, one a line; None when no sizes were typed."""
    lines = [line for line in given.get("things", "").splitlines() if line.strip()]
    if not lines:
        return None
    if len(lines) > 300:
        raise Invalid("/things", "too_many", "Up to 300 sizes are enough.")
    inside, usual = form_values.size(given, "bin_size"), unit_of(given["bin_size"]) or "mm"
    try:
        found = bulk([_size(number, line, usual) for number, line in enumerate(lines, 1)], inside)
    except NothingFits as error:
        raise Invalid("/things", "nothing_fits", str(error)) from error
    if found.count.slots_per_bin > MOST_PER_BIN:
        fitting = f"{found.count.slots_per_bin:,} of these would lie in one bin."
        raise Invalid("/things", "too_many", f"{fitting} Check the units of the bin and of the things.")
    return found


def _size(number: int, line: str, usual: str) -> Size:
    try:
        return size(line, usual)
    except ValueError as error:
        raise Invalid("/things", "bad_size", f"Line {number}: {form_values.sentence(error)}") from error


def odds(share: float) -> str:
    """A risk as people say it.

    >>> odds(0.25), odds(0.0123), odds(0.9), odds(0.000001)
    ('1 in 4', '1 in 81', '9 in 10', 'fewer than 1 in 10,000')
    """
    if share > 0.5:
        return f"{share * 10:.0f} in 10"
    if share < 1e-4:
        return "fewer than 1 in 10,000"
    return f"1 in {1 / share:,.0f}"
