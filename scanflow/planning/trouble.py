"""Where things go wrong: what was refused, undone or missing, counted by kind, place and hour.

And what to change, where at least `ENOUGH` of a kind say so.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo
from enum import StrEnum

from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason

ENOUGH = 5
"""Fewer of a kind may be chance: nothing is advised."""

UNDONE, SHORT, TWICE = "undone", "short", "twice"
"""Kinds beside the reasons of refusals: a scan taken back, a thing missing, a card scanned again after its own yes."""

COUNT = "count"
"""The station of what a count found."""

_WRONG_CARD = (Reason.NOT_ORDERED, Reason.NOT_ON_ROUND, Reason.SLOT_FREE)


@dataclass(frozen=True, slots=True)
class Trouble:
    """One thing that went wrong; what is not known of it is empty.

    `kind` is a `Reason`, `UNDONE`, `SHORT` or `TWICE`, of a count the kind of its finding; `station` is empty for what
    no scan told; `code` the card's slot in the bin `bin`. `right` is the card that the same round took next, in
    `right_bin`.
    """

    kind: str
    at: datetime
    station: str = ""
    table: str = ""
    section: str = ""
    code: str = ""
    bin: str = ""
    via: str = ""
    right: str = ""
    right_bin: str = ""


class What(StrEnum):
    """What there is to change."""

    MISTYPED = "mistyped"
    MISREAD = "misread"
    CONFUSED = "confused"
    DOUBLED = "doubled"
    MISSING = "missing"


@dataclass(frozen=True, slots=True)
class Change:
    """What to change and where (a section, a bin, a table or station), how many speak for it, and the commonest pairs.

    A pair is the wrong card, the right one and how often: of confused bins alone.
    """

    what: What
    where: str
    times: int
    pairs: tuple[tuple[str, str, int], ...] = ()


def changes(troubles: Sequence[Trouble]) -> tuple[Change, ...]:
    """What these say is to be changed, the most frequent first."""
    kinds: tuple[tuple[What, Callable[[Trouble], str]], ...] = (
        (What.MISTYPED, lambda each: each.section if _bad(each) and each.via == "typed" else ""),
        (What.MISREAD, lambda each: each.section if _bad(each) and each.via != "typed" else ""),
        (What.CONFUSED, _confused_in),
        (What.DOUBLED, lambda each: (each.table or each.station) if each.kind == TWICE else ""),
        (What.MISSING, lambda each: each.section if each.kind == SHORT else ""),
    )
    found = [
        Change(what, where, times, _pairs(troubles, where) if what is What.CONFUSED else ())
        for what, place in kinds
        for where, times in count(troubles, place)
        if times >= ENOUGH
    ]
    return tuple(sorted(found, key=lambda change: -change.times))


def _bad(trouble: Trouble) -> bool:
    return trouble.kind == Reason.BAD_CHECK


def _confused_in(trouble: Trouble) -> str:
    """The bin at which another card was scanned before the right one."""
    wrong = trouble.station == Station.BIN and trouble.kind in _WRONG_CARD and trouble.code != trouble.right
    return trouble.right_bin if wrong else ""


def _pairs(troubles: Iterable[Trouble], bin_: str) -> tuple[tuple[str, str, int], ...]:
    pairs = Counter((each.code, each.right) for each in troubles if _confused_in(each) == bin_)
    return tuple((*pair, times) for pair, times in pairs.most_common(3))


def count(troubles: Iterable[Trouble], of: Callable[[Trouble], str]) -> list[tuple[str, int]]:
    """How many there are of each, the most first; those of which it is not known are left out."""
    return Counter(filter(None, map(of, troubles))).most_common()


def by_hour(times: Iterable[datetime], zone: tzinfo) -> list[int]:
    """How many of these fall into each of the 24 hours of the day in this zone."""
    hours = Counter(at.astimezone(zone).hour for at in times)
    return [hours[hour] for hour in range(24)]
