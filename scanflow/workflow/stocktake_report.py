"""What a count came to: written once, when it is closed, and never changed."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from typing import Any

from labels import slot_code
from scanflow.domain.findings import Finding, Kind
from scanflow.domain.stocktake import Chosen, Stocktake
from scanflow.domain.things import Bin
from scanflow.planning.sampling import rate_between, wrong_between
from scanflow.workflow.ports import Unit
from scanflow.workflow.stocktakes import State, state

RECORD_NOT_FOUND = (Kind.MISSING, Kind.ELSEWHERE, Kind.IN_TRAY)
"""The account has a thing in a place, and there it is not."""
FOUND_NOT_RECORDED = (Kind.SLOT_FREE, Kind.UNKNOWN)
"""There is a card on a shelf, and the account has nothing of it."""


def close(unit: Unit, count_id: str) -> Stocktake:
    """End a count: its findings are written down with the report. They can be resolved later too."""
    now = state(unit, count_id)
    closed = now.count.after("close", unit.at)
    closed = replace(closed, report=json.dumps(report(unit, now)))
    unit.put(closed)
    kinds = [each.finding.kind for each in now.found]
    told = {kind.value: kinds.count(kind) for kind in Kind if kind in kinds}
    unit.record("stocktake closed", {"stocktake": count_id, "looked": now.looked, "findings": told})
    return closed


def report(unit: Unit, now: State) -> dict[str, Any]:
    """The report of a count as it stands, as plain JSON values.

    Of each section: `expected` cards by the account, `counted` of them in places that were looked at well enough,
    `agreed` that were found there; `agreement` is where the share of those lies with 95 % certainty (Clopper and
    Pearson), None where nothing was counted; `record_not_found` and `found_not_recorded` count findings. `differing`
    are the places, of those looked at well enough, where there is one of either. `unfinished`: of what was drawn blind,
    how many others were drawn of that area since one was closed, and not gone through to the end.
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


def _differing(now: State) -> list[str]:
    at: set[str | None] = set()
    for each in (one.finding for one in now.found):
        if each.kind in RECORD_NOT_FOUND:
            at |= {each.bin, *each.places}
        elif each.kind in FOUND_NOT_RECORDED:
            at |= set(each.places)
    return [name for name, place in now.places.items() if place.well and name in at]


def title_of(unit: Unit, finding: Finding) -> str | None:
    """What stands in the finding's slot, or stood there last."""
    facts = unit.facts(finding.code) if finding.code is not None else None
    return facts.item.title if facts is not None and facts.item is not None else None


def _sections(unit: Unit, now: State) -> list[dict[str, Any]]:
    bins = {each.name: each.section for each in unit.find(Bin)}
    rows: dict[str, dict[str, Any]] = {}
    for place in now.places.values():
        for code in place.expected:
            section = slot_code.section_of(code)
            row = rows.setdefault(section, _row(section))
            row["expected"] += 1
            row["counted"] += place.well
            row["agreed"] += place.well and code in place.read
    for finding in (each.finding for each in now.found):
        section = _section_of(finding, bins)
        row = rows.setdefault(section, _row(section))
        row["record_not_found"] += finding.kind in RECORD_NOT_FOUND
        row["found_not_recorded"] += finding.kind in FOUND_NOT_RECORDED
    return [rows[section] | {"agreement": _agreement(rows[section])} for section in sorted(rows)]


def _agreement(row: Mapping[str, Any]) -> list[float] | None:
    if not row["counted"]:
        return None
    low, high = rate_between(row["counted"] - row["agreed"], row["counted"])
    return [round(1 - high, 4), round(1 - low, 4)]


def _row(section: str) -> dict[str, Any]:
    counts = ("expected", "counted", "agreed", "record_not_found", "found_not_recorded")
    return {"section": section, **dict.fromkeys(counts, 0)}


def _section_of(finding: Finding, bins: Mapping[str, str]) -> str:
    """The slot's, or of what has none the section of the bin where it was seen; empty for the tray."""
    if finding.code is not None:
        return slot_code.section_of(finding.code)
    return bins.get(finding.places[0], "")


@dataclass(frozen=True, slots=True)
class Whole:
    """What a report comes to over all sections, of cards and of places.

    `agreement`: where the share of cards that agree lies with 95 % certainty, None where none was counted. `well`: of
    the `places`, those looked at well enough; `wrong`: of these, where account and shelf differ. `all_`: the places
    with those that were not chosen, `chosen` how the others were, None without a sample. `rest`: how many of the other
    places are wrong at least and at most, with 95 % certainty, if those looked at were drawn blind; None where nothing
    was looked at, or everything, or what had its turn. `unfinished`: samples drawn before this one and given up.
    """

    expected: int
    counted: int
    agreed: int
    record_not_found: int
    found_not_recorded: int
    agreement: tuple[float, float] | None
    places: int
    well: int
    wrong: int
    all_: int
    chosen: Chosen | None
    rest: tuple[int, int] | None
    unfinished: int = 0


def whole(written: Mapping[str, Any]) -> Whole:
    """The report of a closed count, as `report` gave it, summed up."""
    names = ("expected", "counted", "agreed", "record_not_found", "found_not_recorded")
    sums = {name: sum(row[name] for row in written["sections"]) for name in names}
    low_high = _agreement(sums)
    places, well, wrong = written["places"], written["looked"] - len(written["unclear"]), len(written["differing"])
    sample, rest = written.get("sample"), None
    all_, chosen = (sample["of"], Chosen(sample["chosen"])) if sample else (places, None)
    if 0 < well < all_ and chosen is not Chosen.TURN:
        least, most = wrong_between(wrong, well, all_)
        rest = least - wrong, most - wrong
    return Whole(
        **sums,
        agreement=(low_high[0], low_high[1]) if low_high else None,
        places=places,
        well=well,
        wrong=wrong,
        all_=all_,
        chosen=chosen,
        rest=rest,
        unfinished=written.get("unfinished", 0),
    )
