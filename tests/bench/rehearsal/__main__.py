"""Rehearses a year and more: `python tests/bench/rehearsal --keep FILE`.

Each shop lives 25 days with its seed, and is kept as a line of JSON in FILE; started again with the same FILE it goes
on where it was. Tables are printed at the end, and by `--report` of what is kept so far. `--seed S --days N --kinds K`
lives one shop again and prints its steps. `--guards` takes out one guard of the service at a time. `--together` lets
two people work at the same time; give it a FILE of its own.
"""

from __future__ import annotations

import argparse
import itertools
import json
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE.parent), str(HERE.parents[1]), str(HERE.parents[2])]

from rehearsal import life, report, slips  # noqa: E402
from rehearsal.server import guards  # noqa: E402
from rehearsal.service import Broken, Empty, empty_shop  # noqa: E402

Found = dict[str, Any]


def asked() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="rehearsal", description=__doc__)
    parser.add_argument("--keep", type=Path, help="a file outside the tree, to go on from and to add to")
    parser.add_argument("--report", action="store_true", help="only print the tables of what is kept")
    parser.add_argument("--slips", type=int, default=200, help="how many of each kind, a quarter alone (default 200)")
    parser.add_argument("--mixed", type=int, default=2000, help="days on which all kinds come (default 2000)")
    parser.add_argument("--honest", type=int, default=2000, help="days on which nobody slips (default 2000)")
    parser.add_argument("--seed", type=int, help="live this one shop again")
    parser.add_argument("--days", type=int, default=life.DAYS)
    parser.add_argument("--kinds", default="", help="of --seed: kinds with commas between them, `mixed`, or nothing")
    parser.add_argument("--without", default="", help="of --seed: a guard to take out")
    parser.add_argument("--together", action="store_true", help="two people work at the same time")
    parser.add_argument("--guards", action="store_true", help="take out each guard for some shops")
    return parser.parse_args()


def chances_of(kinds: str) -> dict[str, float]:
    if kinds == "mixed" or len(kinds.split(",")) > slips.MANY:
        return slips.mixed()
    return {name: chance for kind in filter(None, kinds.split(",")) for name, chance in slips.alone(kind).items()}


def again(empty: Empty, seed: int, kinds: str, days: int, without: str, *, two: bool = False) -> Found:
    """One shop, with the name of what it was lived for; a service that breaks is found, too."""
    try:
        found = life.rehearse(empty, seed, chances_of(kinds), days, without, two=two)
    except Broken as error:
        lived = {"seed": seed, "days": days, "kinds": sorted(chances_of(kinds)), "two": two}
        found = {"broken": str(error), **lived, **_NOTHING}
    return {"for": kinds, "without": without, **found}


_NOTHING: Found = {
    **{name: {} for name in ("scans", "refused", "held", "calls_refused", "examples")},
    **{name: [] for name in ("slips", "amiss", "escapes", "steps")},
    **dict.fromkeys(("lines", "boxes", "wrong", "left_wrong", "calls"), 0),
}


def plan(kept: list[Found], wanted: argparse.Namespace) -> Iterator[tuple[int, str, str]]:
    """Seed, kinds and guard of each shop that is still to live; the caller adds to `kept` meanwhile."""
    if wanted.guards:
        shops = _without_guards()
    elif wanted.together:
        shops = itertools.product(range(SHOPS_OF_TWO), ("", "mixed"), ("",))
    else:
        shops = ((seed, kind, "") for kind in ("", "mixed") for seed in range(-(-_days(wanted, kind) // life.DAYS)))
    lived = {(each["seed"], each["for"], each["without"]) for each in kept}
    yield from (shop for shop in dict.fromkeys(shops) if shop not in lived)
    if not (wanted.guards or wanted.together):
        yield from _alone(kept, wanted.slips)


def _days(wanted: argparse.Namespace, kind: str) -> int:
    days: int = wanted.mixed if kind else wanted.honest
    return days


def _alone(kept: list[Found], enough: int) -> Iterator[tuple[int, str, str]]:
    """Shops of one kind of slip each, until `enough` of each were made: mixed days count for three quarters of them."""
    for kind in slips.KINDS:
        for seed in range(1000):
            mine = [each for each in kept if each["for"] == kind and not each["without"]]
            alone = _made(mine)[kind]
            if alone >= enough / 4 and alone + _made(kept, "mixed")[kind] >= enough:
                break
            if kind in slips.HARMLESS and len(mine) >= 4:
                break
            if all(each["seed"] != seed for each in mine):
                yield seed, kind, ""


def _made(kept: list[Found], kinds: str = "") -> Counter[str]:
    shops = (each for each in kept if kinds in ("", each["for"]))
    return Counter(slip["kind"] for each in shops for slip in each["slips"])


SHOPS_OF_TWO = 20
SHOPS_OF_GUARDS = 4


def _without_guards() -> Iterator[tuple[int, str, str]]:
    """Each guard's shops beside the same ones with all guards: those of the slip that shows it, then mixed ones."""
    for seed in range(SHOPS_OF_GUARDS):
        for guard, kind in slips.SHOWS.items():
            yield from ((seed, kind, without) for without in ("", guard))
    for seed in range(SHOPS_OF_GUARDS):
        yield from ((seed, "mixed", without) for without in ("", *guards()))


def tables(kept: list[Found], of_guards: bool) -> None:
    if of_guards:
        report.of_guards(kept)
        return
    whole = [each for each in kept if not each["without"]]
    report.of_slips(whole)
    report.of_what_no_scan_shows(whole)
    report.of_right_acts(whole)
    report.of_escapes(whole)
    for each in whole:
        if "broken" in each:
            print(f"broken: --seed {each['seed']} --kinds {each['for']!r}: {each['broken']}")


def main() -> None:
    wanted = asked()
    if wanted.seed is not None:
        with empty_shop() as empty:
            found = again(empty, wanted.seed, wanted.kinds, wanted.days, wanted.without, two=wanted.together)
        print("\n".join(found["steps"]))
        tables([{**found, "without": ""}], of_guards=False)
        return
    kept: list[Found] = []
    if wanted.keep and wanted.keep.exists():
        kept = [json.loads(line) for line in wanted.keep.read_text(encoding="utf-8").splitlines()]
    with empty_shop() as empty:
        for seed, kinds, without in plan(kept, wanted) if not wanted.report else ():
            kept.append(again(empty, seed, kinds, wanted.days, without, two=wanted.together))
            if wanted.keep:
                with wanted.keep.open("a", encoding="utf-8") as file:
                    file.write(json.dumps(kept[-1]) + "\n")
    tables(kept, wanted.guards)


if __name__ == "__main__":
    main()
