"""Prints how often honest days are answered with a refusal or a hold: `python tests/bench false_alarms`.

Goals: right cards refused at most 0.1 % of scans, honest lines held at most 0.3 % of lines; no line bound to another
thing. Orders come over three channels: one says which are not paid yet, one's file has all that is open. Some days are
lived over SQLite too, answer by answer the same.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from math import exp, lgamma, log, log1p
from tempfile import TemporaryDirectory
from time import perf_counter

from honest_days import Shop, settings_of
from honest_stock import OPENING, Habits, Tally
from rooms import DatabaseRoom, MemoryRoom

from scanflow.storage.database import Database

SHOPS, DAYS = 400, 25
DATABASE_SHOPS = 12
HABITS = {
    "bare codes go on in used slots": Habits(bare_in_used_slots=1.0),
    "bare codes stay after a move": Habits(bare_after_move=1.0),
    "bare codes stay when the listing is renewed": Habits(bare_relisted=1.0),
    "packed before late picks came": Habits(packed_before_picks_arrived=1.0),
}


def interval(hits: int, of: int) -> tuple[float, float]:
    """Clopper and Pearson's 95 % interval of a share (Biometrika 26, 1934)."""

    def at_most(k: int, p: float) -> float:
        """The chance of at most k hits."""
        logs = (
            lgamma(of + 1) - lgamma(i + 1) - lgamma(of - i + 1) + i * log(p) + (of - i) * log1p(-p)
            for i in range(k + 1)
        )
        return sum(exp(each) for each in logs)

    low = 0.0 if hits == 0 else _cross(lambda p: 1 - at_most(hits - 1, p) < 0.025)
    high = 1.0 if hits == of else _cross(lambda p: at_most(hits, p) > 0.025)
    return low, high


def _cross(below: Callable[[float], bool]) -> float:
    """Where `below` turns false, by halving."""
    low, high = 0.0, 1.0
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if below(middle) else (low, middle)
    return (low + high) / 2


def live(seeds: range, habits: Habits | None = None) -> Tally:
    tally = Tally()
    for seed in seeds:
        shop = Shop(MemoryRoom(settings_of(seed)), seed, habits)
        for _ in range(DAYS):
            shop.day()
        tally.add(shop.tally)
    return tally


def compare(seeds: range) -> tuple[int, int]:
    """How many answers of these shops' days over SQLite, and how many of them differ from those in memory."""
    count = differ = 0
    for seed in seeds:
        with TemporaryDirectory() as folder:
            database = Database(f"sqlite:///{folder}/shop.db")
            rooms = (MemoryRoom(settings_of(seed)), DatabaseRoom(database, settings_of(seed), OPENING))
            shops = [Shop(room, seed) for room in rooms]
            for shop in shops:
                for _ in range(DAYS):
                    shop.day()
            database.close()
        one, other = (shop.tally.answers for shop in shops)
        count += len(other)
        differ += sum(a != b for a, b in zip(one, other, strict=False)) + abs(len(one) - len(other))
    return count, differ


def _row(name: str, hits: int, of: int, goal: str = "") -> None:
    low, high = interval(hits, of)
    print(f"{name:38} {hits:7} of {of:8} {hits / of:9.4%}  {low:8.4%} – {high:8.4%}  {goal}")


def _table(tally: Tally) -> None:
    scans = sum(tally.scans.values())
    _row("right cards refused", sum(tally.refused.values()), scans, "goal ≤ 0.1 %")
    for station, count in sorted(tally.scans.items()):
        here = Counter({kind: hits for kind, hits in tally.refused.items() if kind.startswith(station)})
        _row(f"  at the {station}", sum(here.values()), count)
        for kind, hits in here.most_common():
            _row(f"    {kind}", hits, count)
    _row("honest lines held", sum(tally.held.values()), tally.lines, "goal ≤ 0.3 %")
    for hold, hits in tally.held.most_common():
        _row(f"    {hold}", hits, tally.lines)
    _row("lines bound to another thing", tally.misbound, tally.lines, "goal 0")
    _row("other calls refused", sum(tally.calls_refused.values()), tally.calls)
    for kind, hits in tally.calls_refused.most_common():
        _row(f"    {kind}", hits, tally.calls)
    for kind, said in tally.examples.items():
        print(f"  {kind}: {said}")


def main() -> None:
    begin = perf_counter()
    tally = live(range(SHOPS))
    print(f"{SHOPS * DAYS:,} honest days of {SHOPS} shops, {perf_counter() - begin:.0f} s; 95 % intervals")
    _table(tally)
    count, differ = compare(range(DATABASE_SHOPS))
    print(f"{DATABASE_SHOPS * DAYS} of the days over SQLite: {count} answers, {differ} differ from those in memory")
    print(f"habits that ask for trouble, {SHOPS // 10 * DAYS} days each: scans refused, lines held")
    for name, habits in HABITS.items():
        tally = live(range(SHOPS // 10), habits)
        _row(name, sum(tally.refused.values()), sum(tally.scans.values()))
        _row("", sum(tally.held.values()), tally.lines)


if __name__ == "__main__":
    main()
