"""One rehearsed shop from its opening to its last day, and all that came of it, as plain data that can be kept."""

from __future__ import annotations

from functools import partial
from random import Random
from typing import Any

from rehearsal import compare, day, together
from rehearsal.service import Calls, Empty, serving
from rehearsal.slips import MANY, WAYS, Habit, Slip
from rehearsal.slips_rounds import Slipping
from rehearsal.tally import Tally

DAYS, LAST = 25, 6
"""Days of a shop, and those after them in which nobody slips and nothing new comes."""

EYES = 0.3
"""How often people who slip compare the thing in hand with its picture."""

Found = dict[str, Any]


def rehearse(
    empty: Empty,
    seed: int,
    chances: dict[str, float],
    days: int = DAYS,
    without: str = "",
    *,
    eyes: float = EYES,
    two: bool = False,
) -> Found:
    """`two`: two people work at the same time, and all is sent twice at once."""
    with serving(empty, without) as calls:
        return live(calls, seed, chances, days, eyes, two=two)


def live(calls: Calls, seed: int, chances: dict[str, float], days: int, eyes: float, *, two: bool) -> Found:
    tally = Tally()
    person = Slipping(calls, Random(seed), tally)
    person.habit = Habit(chances)
    if chances:
        person.eyes = eyes
    calls.twice = two or "everything sent twice" in chances
    if "part file loaded as whole" in chances:
        person.parts = 0.5
    if "scanner beeps twice" in chances:
        person.beeps_twice = 0.6
    day.furnish(person, seed, {WAYS[kind] for kind in chances if kind in WAYS} if len(chances) < MANY else set())
    beside = calls.beside()
    beside.twice = calls.twice
    work = partial(together.work, calls=beside) if two else day.work
    for number in range(days):
        day.live(person, number, work)
    person.habit.chances, person.eyes = {}, 1.0
    day.wind_down(person, LAST)
    amiss = compare.compare(person)
    return {
        "seed": seed,
        "days": days,
        "kinds": sorted(chances),
        "two": two,
        "calls": calls.count + beside.count,
        "scans": dict(tally.scans),
        "refused": dict(tally.refused),
        "rightly": dict(tally.rightly),
        "held": dict(tally.held),
        "calls_refused": dict(tally.calls_refused),
        "lines": tally.lines,
        "boxes": tally.handed_over,
        "examples": tally.examples,
        "slips": [fate(slip, tally, amiss) for slip in person.habit.made],
        "amiss": [f"{each.what}{' (listed)' if each.known else ''}" for each in amiss],
        "wrong": len(tally.wrong),
        "left_wrong": tally.left_wrong,
        "steps": calls.steps if any(each.against for each in tally.wrong) else [],
        "escapes": [
            {"order": each.order, "code": each.code, "how": each.how, "told": each.against, "day": day.of(each.at)}
            for each in tally.wrong
            if each.against
        ],
    }


def fate(slip: Slip, tally: Tally, amiss: list[compare.Amiss]) -> Found:
    """What became of a slip: where it was caught first, whether a box left wrong by it, what is amiss at the end."""
    caught = next((what for at, what, code, order in tally.noticed if at >= slip.at and slip.concerns(code, order)), "")
    wrong = [each for each in tally.wrong if each.at >= slip.at and slip.concerns(each.code, each.order, each.thing)]
    left = [each for each in amiss if slip.concerns(each.code, each.order, each.thing)]
    return {
        "kind": slip.kind,
        "day": day.of(slip.at),
        "caught": caught,
        "wrong": bool(wrong),
        "escape": any(each.against for each in wrong),
        "stranded": any(not each.order and not each.known for each in left),
        "open": any(each.order or each.known for each in left),
    }
