"""What goes wrong is counted, and something is advised only where enough of a kind say so."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from scanflow.planning.trouble import ENOUGH, SHORT, TWICE, UNDONE, Change, Trouble, What, by_hour, changes, count

AT = datetime(2026, 7, 1, 12, tzinfo=UTC)


def typed(section: str = "D") -> Trouble:
    return Trouble("bad_check", AT, "bin", section=section, via="typed")


def confused(wrong: str = "D012", right: str = "D013") -> Trouble:
    return Trouble("not_ordered", AT, "bin", section="D", code=wrong, bin="A-1-1", right=right, right_bin="A-1-2")


KINDS = [
    (typed(), Change(What.MISTYPED, "D", 5)),
    (Trouble("bad_check", AT, "table", "main", "LP", via="camera"), Change(What.MISREAD, "LP", 5)),
    (confused(), Change(What.CONFUSED, "A-1-2", 5, (("D012", "D013", 5),))),
    (Trouble(TWICE, AT, "table", "two", "D", "D001"), Change(What.DOUBLED, "two", 5)),
    (Trouble(TWICE, AT, "bin", "", "D", "D001"), Change(What.DOUBLED, "bin", 5)),
    (Trouble(SHORT, AT, section="S", code="S001"), Change(What.MISSING, "S", 5)),
]


@pytest.mark.parametrize(("trouble", "change"), KINDS)
def test_five_of_a_kind(trouble: Trouble, change: Change) -> None:
    """Five troubles with one cause say what to change; four say nothing."""
    assert (5, (change,), ()) == (ENOUGH, changes([trouble] * 5), changes([trouble] * 4))


def test_causes_are_not_added_up() -> None:
    """Four of each cause, or of each place, are still too few."""
    assert () == changes([trouble for trouble, _ in KINDS for _ in range(4)])
    assert () == changes([typed(section) for section in "DSLW" for _ in range(4)])


def test_the_most_frequent_comes_first() -> None:
    """What goes wrong more often stands before what goes wrong less often."""
    found = changes([typed()] * 5 + [confused()] * 7 + [typed("S")] * 6)
    assert [("A-1-2", 7), ("S", 6), ("D", 5)] == [(change.where, change.times) for change in found]


def test_pairs_of_confused_bins() -> None:
    """The three commonest pairs of wrong and right cards are named, with how often."""
    many = [confused()] * 4 + [confused("D015")] * 3 + [confused("D016")] * 2 + [confused("D017")]
    assert (("D012", "D013", 4), ("D015", "D013", 3), ("D016", "D013", 2)) == changes(many)[0].pairs


@pytest.mark.parametrize(
    "trouble",
    [
        confused("D013", "D013"),
        Trouble("not_ordered", AT, "bin", section="D", code="D012", bin="A-1-1"),
        Trouble("already_picked", AT, "bin", code="D012", right="D013", right_bin="A-1-2"),
        Trouble("other_order", AT, "table", "main", "D", "D012"),
        Trouble(UNDONE, AT, "table", "main", "D", "D012"),
        Trouble("bad_check", AT, "bin", via="typed"),
    ],
)
def test_no_advice(trouble: Trouble) -> None:
    """The same card, no card after it, another reason, or a text of no section says nothing of a cause."""
    assert () == changes([trouble] * 50)


def test_counting() -> None:
    """The most frequent stands first; what is not known is left out."""
    found = [typed("D"), typed("S"), typed("S"), typed("")]
    assert [("S", 2), ("D", 1)] == count(found, lambda each: each.section)


def test_hours_are_the_shops() -> None:
    """Each hour is that of the shop's clock, in summer and in winter."""
    zone = ZoneInfo("America/New_York")  # 4 h behind UTC in July, 5 h in January
    hours = by_hour([AT, AT, datetime(2026, 1, 1, 12, tzinfo=UTC), AT - timedelta(hours=12)], zone)
    assert {8: 2, 7: 1, 20: 1} == {hour: times for hour, times in enumerate(hours) if times}
    assert 24 == len(hours)
