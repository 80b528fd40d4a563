"""What the rehearsal came to, as tables: each kind of slip, what was refused or held of right acts, and the goals."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from typing import Any

from scipy.stats import binomtest

from rehearsal.slips import BEHIND, HARMLESS, KINDS, PROOFS

Found = dict[str, Any]


def share(hits: int, of: int) -> str:
    """Hits with their share and its exact 95 % interval (Clopper and Pearson, Biometrika 26, 1934, by scipy)."""
    if not of:
        return "none made"
    low, high = binomtest(hits, of).proportion_ci(0.95, method="exact")
    return f"{hits:6} of {of:7} {hits / of:8.3%} [{low:8.3%}, {high:8.3%}]"


def of_slips(lives: Iterable[Found]) -> None:
    """Per kind alone: made, caught and where, left wrong, stranded, still open. Mixed, nobody can say which did it."""
    slips: dict[str, list[Found]] = defaultdict(list)
    for life in lives:
        for slip in life["slips"]:
            if life["for"] == slip["kind"]:
                slips[slip["kind"]].append(slip)
    head = f"{'slip':40} {'made':>6} {'caught':>7} {'wrong':>6} {'stranded':>8} {'open':>5} {'escapes':>7}"
    print(f"{head}  share of boxes left wrong, 95 %; where caught")
    for kind in KINDS:
        made = slips[kind]
        caught, wrong, stranded, still, escaped = (
            sum(bool(each[name]) for each in made) for name in ("caught", "wrong", "stranded", "open", "escape")
        )
        where = Counter(each["caught"] for each in made if each["caught"]).most_common(3)
        told = ", ".join(f"{name} {times}" for name, times in where)
        figures = f"{len(made):6} {caught:7} {wrong:6} {stranded:8} {still:5} {escaped:7}"
        print(f"{kind:40} {figures}  {share(wrong, len(made))[18:] if made else ''}  {told}")


def of_what_no_scan_shows(lives: Iterable[Found]) -> None:
    """Kinds by which boxes left wrong, though nothing was told against them, and the cheapest proof of each."""
    slips = [slip for life in lives for slip in life["slips"] if life["for"] == slip["kind"]]
    made, wrong = Counter(each["kind"] for each in slips), Counter(each["kind"] for each in slips if each["wrong"])
    print(f"\n{'what no scan shows':40} {'made':>6} {'wrong':>6}  the cheapest proof")
    for kind, count in wrong.most_common():
        print(f"{kind:40} {made[kind]:6} {count:6}  {PROOFS.get(kind, 'none known')}")


def of_right_acts(lives: Iterable[Found]) -> None:
    """Days in which nobody slips: what was refused or held all the same, and what is open or amiss at the end."""
    honest = [life for life in lives if set(life["kinds"]) <= HARMLESS]
    if not honest:
        return
    scans, refused, held, amiss = Counter[str](), Counter[str](), Counter[str](), Counter[str]()
    for life in honest:
        scans.update(life["scans"])
        refused.update(life["refused"])
        held.update(life["held"])
        amiss.update(life["amiss"])
    print(f"\n{sum(life['days'] for life in honest):,} days without a slip")
    print(f"right acts refused  {share(sum(refused.values()), sum(scans.values()))}  goal ≤ 0.1 %")
    for station, count in sorted(scans.items()):
        here = {kind: hits for kind, hits in refused.items() if kind.startswith(station) and hits}
        print(f"  at the {station:10}  {share(sum(here.values()), count)}  {here or ''}")
    lines = sum(life["lines"] for life in honest)
    print(f"right lines held    {share(sum(held.values()), lines)}  goal ≤ 1 %  {dict(held)}")
    print(f"amiss or open at the end: {dict(amiss) or 'nothing'}")


def of_escapes(lives: Iterable[Found]) -> None:
    lives = list(lives)
    boxes, wrong = sum(life["boxes"] for life in lives), sum(life["wrong"] for life in lives)
    escapes = [(life, each) for life in lives for each in life["escapes"]]
    days = sum(life["days"] for life in lives)
    print(f"\n{days:,} days, {boxes:,} boxes left, {wrong} things wrong in them or missing")
    print(f"boxes left wrong    {share(sum(life['left_wrong'] for life in lives), boxes)}")
    print(f"told and let go     {share(len(escapes), boxes)}  goal 0")
    for life, each in escapes:
        two = " --together" if life.get("two") else ""
        print(f"  --seed {life['seed']} --days {life['days']} --kinds {life['for']!r}{two}: {told(each)}")


def told(escape: Found) -> str:
    return f"day {escape['day']}, order {escape['order']}, {escape['code']} {escape['how']}: {escape['told']}"


def of_guards(lives: Iterable[Found]) -> None:
    """With a guard taken out: what escapes, or goes wrong beyond the same shops with all guards."""
    by_guard: dict[str, dict[tuple[int, str], Found]] = defaultdict(dict)
    for life in lives:
        by_guard[life["without"]][life["seed"], life["for"]] = life
    whole = by_guard.pop("", {})
    head = " ".join(f"{name:>9}" for name in _sums(()))
    print(f"\n{'without':30} {'shops':>5} {head}  in brackets: with all guards; shows")
    for guard, found in by_guard.items():
        shops = [shop for shop in found if shop in whole]
        without, with_all = (_sums(lives[shop] for shop in shops) for lives in (found, whole))
        figures = " ".join(f"{f'{without[name]} ({with_all[name]})':>9}" for name in without)
        shows = [name for name in ("escapes", "broken") if without[name] > with_all[name]]
        shows += [f"more {name}" for name in ("wrong", "amiss") if _more(without[name], with_all[name])]
        says = ", ".join(shows) or f"nothing: {BEHIND.get(guard, 'and nothing known stands behind it')}"
        later = _caught([found[shop] for shop in shops]) - _caught([whole[shop] for shop in shops])
        where = ", ".join(f"{name} {count}" for name, count in later.most_common(2))
        print(f"{guard:30} {len(shops):5} {figures}  {says}{f'; caught instead: {where}' if where else ''}")


def _caught(lives: Iterable[Found]) -> Counter[str]:
    """Where the slips of shops of one kind were caught first."""
    slips = [slip for life in lives for slip in life["slips"] if slip["kind"] == life["for"]]
    return Counter(slip["caught"] or "nowhere" for slip in slips)


def _more(one: int, other: int) -> bool:
    """By more than two standard deviations of a difference of counts: without a guard a shop's days go otherwise."""
    return one - other > 2 * (one + other) ** 0.5


def _sums(lives: Iterable[Found]) -> dict[str, int]:
    """`amiss`: what does not stand at the end as the account has it; `broken`: shops whose service did."""
    lives = list(lives)
    return {
        "escapes": sum(len(life["escapes"]) for life in lives),
        "wrong": sum(life["wrong"] for life in lives),
        "amiss": sum(len(life["amiss"]) for life in lives),
        "broken": sum(bool(life.get("broken")) for life in lives),
    }
