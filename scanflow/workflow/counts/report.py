"""What a count came to: written once, when it is closed, and never changed."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass, replace
from math import ceil, floor
from typing import Any

from labels import slot_code
from scanflow.domain import events
from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.stocktake import TRAY, Area, Chosen, Stocktake
from scanflow.domain.things import Bin
from scanflow.planning.sampling import rate_between, wrong_between
from scanflow.workflow.counts.stocktakes import CountState, TrackedFinding, state
from scanflow.workflow.ports import Unit
from scanflow.workflow.stock import doubts

COUNTS = ("expected", "counted", "agreed", "unclear", "record_not_found", "found_not_recorded")
RECORD_NOT_FOUND = (FindingKind.MISSING, FindingKind.ELSEWHERE, FindingKind.IN_TRAY)
"""The account has a thing in a place, and there it is not."""
FOUND_NOT_RECORDED = (FindingKind.SLOT_FREE, FindingKind.UNKNOWN, FindingKind.TWIN)
"""There is a card on a shelf, and the account has nothing of it there."""


def close(unit: Unit, count_id: str) -> Stocktake:
    """End a count: its findings are written down with the report. They can be resolved later too."""
    now = state(unit, count_id)
    for each in now.found:
        if each.resolved is None:
            _keep_missing(unit, now.count, each.finding)
    closed = now.count.after("close", unit.at)
    closed = replace(closed, report=json.dumps(report(unit, now)))
    unit.put(closed)
    kinds = [each.finding.kind for each in now.found]
    told = {kind.value: kinds.count(kind) for kind in FindingKind if kind in kinds}
    unit.record(events.StocktakeClosed(stocktake=count_id, looked=now.looked, findings=told))
    return closed


def _keep_missing(unit: Unit, count: Stocktake, finding: Finding) -> None:
    """A thing that the count missed, and nobody spoke of, is known to be missing."""
    facts = unit.facts(finding.subject) if finding.kind is FindingKind.MISSING and finding.bin != TRAY else None
    if facts is not None and facts.taken and facts.item is not None:
        doubts.missed(unit, facts.item.id, f"a count of {count.area} did not find it")


def report(unit: Unit, now: CountState) -> dict[str, Any]:
    """The report of a count as it stands, as plain JSON values.

    Of each section: `expected` cards by the account, `counted` of them in places that were looked at, `agreed` that
    were found there, `unclear` of which nobody can say, for they may be hidden; `agreement` is where the share that
    agrees lies with 95 % certainty (Clopper and Pearson), whatever became of those that are unclear, None where nothing
    was counted; `record_not_found` and `found_not_recorded` count findings. All by the account as it was before
    anything was put right. `differing` are the places looked at where there is one of either. `unfinished`: of what was
    drawn blind, how many others were drawn of that area since one was closed, and not gone through to the end.
    """
    count = now.count
    return {
        "stocktake": count.id,
        "area": count.area,
        "note": count.note,
        "opened": count.opened.isoformat(),
        "closed": unit.at.isoformat(),
        "sample": asdict(count.sample) if count.sample else None,
        "unfinished": _unfinished(unit, count),
        "places": len(now.places),
        "looked": now.looked,
        "not_looked": [name for name, place in now.places.items() if not place.looked],
        "unclear": [name for name, place in now.places.items() if place.looked and not place.well],
        "differing": _differing(now),
        "looks": len(now.looks),
        "sections": _sections(unit, now),
        "findings": [each.finding.as_dict() for each in now.found],
        "resolved": {
            each.finding.id: {
                "how": each.resolved.how,
                "reason": each.resolved.reason,
                "who": each.resolved.who,
                "at": each.resolved.at.isoformat(),
            }
            for each in now.found
            if each.resolved is not None
        },
        "titles": {each.finding.id: title for each in now.found if (title := title_of(unit, each.finding)) is not None},
    }


def _unfinished(unit: Unit, count: Stocktake) -> int:
    if not _blind(count):
        return 0
    before = [each for each in unit.find(Stocktake, area=count.area) if _blind(each) and each.seq < count.seq]
    last = max((each.seq for each in before if each.report), default=-1)
    return sum(each.seq > last for each in before)


def _blind(count: Stocktake) -> bool:
    return count.sample is not None and count.sample.chosen is Chosen.BLIND


def _differing(now: CountState) -> list[str]:
    at = _wrong_at(now.found)
    return [name for name, place in now.places.items() if place.looked and name in at]


def _wrong_at(found: Iterable[TrackedFinding]) -> set[str | None]:
    """Where account and shelf differ, also beyond the area."""
    at: set[str | None] = set()
    for each in found:
        finding = each.finding
        if _not_found(each):
            at |= {finding.bin, *finding.places}
        elif finding.kind is FindingKind.TWIN and len(finding.places) > 1:
            at |= {*finding.places} - {finding.bin}
        elif finding.kind in FOUND_NOT_RECORDED:
            at |= set(finding.places)
    return at


def _not_found(each: TrackedFinding) -> bool:
    """Whether the account was wrong to have a thing in its place; what turned up there was only not seen."""
    turned_up = each.resolved is not None and each.resolved.how == "found_later"
    return each.finding.kind in RECORD_NOT_FOUND and not turned_up


def title_of(unit: Unit, finding: Finding) -> str | None:
    """What stands in the finding's slot, or stood there last."""
    facts = unit.facts(finding.code) if finding.code is not None else None
    return facts.item.title if facts is not None and facts.item is not None else None


def _sections(unit: Unit, now: CountState) -> list[dict[str, Any]]:
    bins = {each.name: each.section for each in unit.find(Bin)}
    rows: dict[str, dict[str, Any]] = {}

    def row_of(section: str) -> dict[str, Any]:
        return rows.setdefault(section, {"section": section, **dict.fromkeys(COUNTS, 0)})

    said = {each.finding.code: each for each in now.found if each.finding.kind in RECORD_NOT_FOUND}
    homes = {code: name for name, place in now.places.items() for code in place.expected}
    homes |= {code: each.finding.bin or "" for code, each in said.items() if code is not None}  # before it was resolved
    for code, name in homes.items():
        row, place, found = row_of(slot_code.section_of(code)), now.places.get(name), said.get(code)
        row["expected"] += place is not None
        if place is None or not place.looked:
            continue
        row["counted"] += 1
        if found is not None:
            row["agreed"] += not _not_found(found)
        else:
            row["agreed" if code in place.read else "unclear"] += 1
    for each in now.found:
        row = row_of(_section_of(each.finding, bins))
        row["record_not_found"] += _not_found(each)
        row["found_not_recorded"] += each.finding.kind in FOUND_NOT_RECORDED
    return [rows[section] | {"agreement": _agreement(rows[section])} for section in sorted(rows)]


def _agreement(row: Mapping[str, Any]) -> list[float] | None:
    """As if all that is unclear was wrong, to as if all of it was right."""
    counted = row["counted"]
    if not counted:
        return None
    wrong = counted - row["agreed"]
    low, high = rate_between(wrong - row["unclear"], counted)[0], rate_between(wrong, counted)[1]
    return [floor(10_000 * (1 - high)) / 10_000, ceil(10_000 * (1 - low)) / 10_000]


def _section_of(finding: Finding, bins: Mapping[str, str]) -> str:
    """The slot's, or of what has none the section of the bin where it was seen; empty for the tray."""
    if finding.code is not None:
        return slot_code.section_of(finding.code)
    return bins.get(finding.places[0], "")


def written(count: Stocktake) -> dict[str, Any]:
    """The report of a closed count as `report` makes it today, whatever its form was when it was written."""
    kept: dict[str, Any] = json.loads(count.report)
    sections = [{"unclear": 0, **row} for row in kept["sections"]]
    told = {"sample": None, "unfinished": 0, **_places_amiss(kept), **kept}
    return told | {"sections": [{"agreement": _agreement(row), **row} for row in sections]}


def _places_amiss(kept: Mapping[str, Any]) -> dict[str, list[str]]:
    """What the first reports did not say, by their findings: which places are unclear, and which differ.

    Cards were seen in the area only, but the own bin of one, which is of its slot's section, may lie beyond.
    """
    area = Area.parse(kept["area"])
    found = [Finding.from_dict(each) for each in kept["findings"]]
    turned_up = {name for name, done in kept["resolved"].items() if done["how"] == "found_later"}
    beyond = {each.bin for each in found if each.kind is not FindingKind.MISSING and not _covers(area, each)}
    differing = _wrong_at(TrackedFinding(each) for each in found if each.id not in turned_up) - beyond
    return {
        "unclear": [each.subject for each in found if each.kind is FindingKind.UNREADABLE],
        "differing": sorted(name for name in differing if name and name not in kept["not_looked"]),
    }


def _covers(area: Area, finding: Finding) -> bool:
    if finding.bin is None or finding.code is None:
        return True
    rack, tier, position = finding.bin.split("-")
    return area.covers(Bin(finding.bin, rack, int(tier), int(position), slot_code.section_of(finding.code)))


@dataclass(frozen=True, slots=True)
class Whole:
    """What a report comes to over all sections, of cards and of places.

    `agreement`: where the share of cards that agree lies with 95 % certainty, None where none was counted. `looked`: of
    the `places`, those looked at; `wrong`: of these, where account and shelf differ; `hidden`: where that is not clear.
    `all_`: the places with those that were not chosen, `chosen` how the others were, None without a sample. `rest`: how
    many of the places of which it is not known are wrong at least and at most, with 95 % certainty, if those looked at
    were drawn blind; None where nothing was looked at, or nothing is unknown, or what had its turn. `unfinished`:
    samples drawn before this one and given up.
    """

    expected: int
    counted: int
    agreed: int
    unclear: int
    record_not_found: int
    found_not_recorded: int
    agreement: tuple[float, float] | None
    places: int
    looked: int
    wrong: int
    hidden: int
    all_: int
    chosen: Chosen | None
    rest: tuple[int, int] | None
    unfinished: int = 0

    @property
    def well(self) -> int:
        """Of the places looked at, those of which it is clear whether account and shelf differ."""
        return self.looked - self.hidden


def whole(report: Mapping[str, Any]) -> Whole:
    """The report of a closed count, as `written` gives it, summed up."""
    sums = {name: sum(row[name] for row in report["sections"]) for name in COUNTS}
    low_high = _agreement(sums)
    places, looked, differing = report["places"], report["looked"], set(report["differing"])
    wrong, hidden = len(differing), len(set(report["unclear"]) - differing)
    sample, rest = report["sample"], None
    all_, chosen = (sample["of"], Chosen(sample["chosen"])) if sample else (places, None)
    if looked and looked - hidden < all_ and chosen is not Chosen.TURN:
        least = wrong_between(wrong, looked, all_)[0]
        rest = least - wrong, wrong_between(wrong + hidden, looked, all_)[1] - wrong
    return Whole(
        **sums,
        agreement=(low_high[0], low_high[1]) if low_high else None,
        places=places,
        looked=looked,
        wrong=wrong,
        hidden=hidden,
        all_=all_,
        chosen=chosen,
        rest=rest,
        unfinished=report["unfinished"],
    )
