"""Which bins are counted: every draw as likely, and no bin longer than its turn."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import chisquare

from scanflow.planning.counting import WEEK, BinToCount, cycle, draw

NOW = datetime(2026, 3, 2, 9, tzinfo=UTC)
DAY = timedelta(days=1)
NAMES = [f"A-{tier}-{place}" for tier in range(1, 6) for place in range(1, 9)]


def test_draw_is_fair() -> None:
    """Each pair of five bins is drawn as often as another, over many seeds, by scipy's chi-square test."""
    drawn = Counter(frozenset(draw(NAMES[:5], 2, f"week {seed}")) for seed in range(5000))
    pairs = [drawn[frozenset(pair)] for pair in combinations(NAMES[:5], 2)]
    assert 5000 == sum(pairs)
    assert chisquare(pairs).pvalue > 0.001


@given(st.lists(st.sampled_from(NAMES), unique=True), st.text(), st.data())
def test_draw_is_of_its_seed(names: list[str], seed: str, data: st.DataObject) -> None:
    """The same seed draws the same of the same bins, in whatever order they come; more of them holds fewer."""
    count = data.draw(st.integers(0, len(names)))
    drawn = draw(names, count, seed)
    assert drawn == draw([*reversed(names), *names], count, seed)
    assert (count, set()) == (len(set(drawn)), set(drawn) - set(names))
    assert drawn == draw(names, len(names), seed)[:count]


def test_another_week_another_draw() -> None:
    """Of forty bins no ten seeds draw the same ten."""
    assert 10 == len({draw(NAMES, 10, f"{seed}") for seed in range(10)})


def test_no_more_than_there_are() -> None:
    """More bins than there are can't be drawn, nor fewer than none."""
    for count in (3, -1):
        with pytest.raises(ValueError):
            draw(["A-1-1", "A-1-2"], count, "week 9")


visits = st.one_of(st.just(0.0), st.floats(0, 50))
counted = st.one_of(st.none(), st.integers(0, 200).map(lambda days: NOW - days * DAY))


@given(st.lists(visits, min_size=1, max_size=40), st.integers(1, 13))
def test_no_bin_waits_longer_than_its_turn(busy: list[float], weeks: int) -> None:
    """In a new plan that is kept each week every bin is counted within its turn, again and again."""
    room = {name: BinToCount(name, None, each) for name, each in zip(NAMES, busy, strict=False)}
    seen = dict.fromkeys(room, NOW)
    for week in range(3 * weeks):
        now = NOW + week * WEEK
        plan = cycle(list(room.values()), weeks, now, NOW)
        assert len(plan.due) <= plan.a_week
        for each in plan.due:
            assert now - seen[each.name] <= each.turn * WEEK <= weeks * WEEK
            assert each.left >= 0
            room[each.name] = replace(room[each.name], counted=now)
            seen[each.name] = now
        assert all(now - last < weeks * WEEK for last in seen.values())


@given(st.lists(st.tuples(counted, visits), min_size=1, max_size=40), st.integers(1, 13))
def test_what_is_due(given_: list[tuple[datetime | None, float]], weeks: int) -> None:
    """Whatever was counted when: this week's number is due, nothing seen this week, the overdue all of them, first."""
    room = [BinToCount(name, *each) for name, each in zip(NAMES, given_, strict=False)]
    plan = cycle(room, weeks, NOW, NOW - 100 * DAY)
    due = {each.name: each for each in plan.due}
    lately = {each.name for each in room if each.counted is not None and NOW - each.counted < WEEK}
    assert set() == lately & set(due)
    assert len(due) >= min(plan.a_week - len(lately), len(room) - len(lately))
    late = {each.name for each in room if NOW - (each.counted or NOW - 100 * DAY) > weeks * WEEK}
    assert late <= set(due)
    assert sorted(each.left for each in plan.due) == [each.left for each in plan.due]


def test_counted_yesterday() -> None:
    """A bin that was counted yesterday is not due, though the week would have room for it."""
    plan = cycle([BinToCount("A-1-1", NOW - DAY, 9.0)], 1, NOW, NOW - 100 * DAY)
    assert ((), 1) == (plan.due, plan.a_week)


def test_busy_bins_come_more_often() -> None:
    """With four times the visits of the mean bin or more a bin comes four times as often, from twice on twice."""
    room = [
        *(BinToCount(name, None, 1.0) for name in NAMES[:30]),
        BinToCount("B-1-1", None, 5.0),
        BinToCount("B-1-2", None, 20.0),
    ]
    turns: dict[str, int] = {}
    for week in range(8):
        plan = cycle(room, 8, NOW + week * WEEK, NOW)
        turns |= {each.name: each.turn for each in plan.due}
        room = [
            replace(each, counted=NOW + week * WEEK) if each.name in {d.name for d in plan.due} else each
            for each in room
        ]
    assert {"B-1-1": 4, "B-1-2": 2, "A-1-1": 8} == {name: turns[name] for name in ("B-1-1", "B-1-2", "A-1-1")}
    assert 30 // 8 + 1 + 1 + 1 == plan.a_week


def test_after_a_stocktake() -> None:
    """When all were counted the same evening the plan goes on at its own pace a week later, not all at once."""
    room = [BinToCount(name, NOW, 1.0) for name in NAMES]
    assert [0, 10] == [len(cycle(room, 4, NOW + days * DAY, NOW).due) for days in (6, 7)]
    assert 40 == len(cycle(room, 4, NOW + 28 * DAY, NOW).due)


def test_an_empty_room_and_no_time() -> None:
    """A room without bins has nothing due; a plan of no weeks is none."""
    assert (0, ()) == (cycle([], 4, NOW, NOW).a_week, cycle([], 4, NOW, NOW).due)
    with pytest.raises(ValueError):
        cycle([], 0, NOW, NOW)
