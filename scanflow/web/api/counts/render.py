"""Counts, looks and findings as the API shows them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import cast

from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.counts.seen import SlotAccount
from scanflow.domain.counts.stocktake import Look, Resolved, Stocktake
from scanflow.domain.things import Bin
from scanflow.domain.words import said
from scanflow.exchange import csv_out
from scanflow.storage.unit import SqlUnit
from scanflow.web import count_words
from scanflow.web.api.counts import given
from scanflow.web.api.render import time
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts import resolving
from scanflow.workflow.counts.resolving import ACTS
from scanflow.workflow.counts.stocktakes import TrackedFinding, unexpected

COLUMNS = (
    *("kind", "code", "text", "title", "bin", "places", "certainty", "read", "unread", "expected", "resolved"),
    *("reason", "who", "at", "amiss", "done"),
)
"""`resolved` is how it was, `reason`, `who` and `at` tell of that; `amiss` and `done` are in words."""

UNRESOLVED = given.Resolved(how="", reason="", who="", at="")


def count(unit: SqlUnit, shown: Stocktake) -> given.Stocktake:
    """What is looked at stands by itself: nothing is told of what should be there."""
    seen = {each.place for each in unit.find(Look, stocktake=shown.id) if each.whole and each.closer is None}
    names = shown.places(unit.find(Bin))
    return {
        "id": shown.id,
        "area": shown.area,
        "note": shown.note,
        "sample": sample(shown),
        "state": shown.state,
        "opened": time(shown.opened),
        "closed": time(shown.closed),
        "looked": len(seen),
        "to_look": [name for name in names if name not in seen],
    }


def sample(shown: Stocktake) -> given.Sample | None:
    """Which bins it is about, None where it is the whole area."""
    kept = shown.sample
    return {"chosen": kept.chosen, "of": kept.of, "bins": list(kept.bins)} if kept else None


def look(shown: Look, room: Mapping[str, SlotAccount]) -> given.Look:
    width, height = shown.size or (None, None)
    return {
        "key": shown.key,
        "place": shown.place,
        "at": time(shown.at),
        "via": shown.how,
        "whole": shown.whole,
        "closer": shown.closer,
        "reads": [
            {
                "text": read.text or None,
                "code": read.code,
                "certainty": read.certainty,
                "bins": list(read.bins),
                "unexpected": unexpected(read, shown.place, room),
                "doubted": read.doubted,
                "corners": [list(read.corners[at : at + 2]) for at in range(0, len(read.corners), 2)],
            }
            for read in shown.reads
        ],
        "unread": shown.unread,
        "width": width,
        "height": height,
        "photo": photo(shown),
    }


def photo(shown: Look) -> str | None:
    """Where a look's photo is given, None without one."""
    return f"/api/stocktakes/{shown.stocktake}/looks/{shown.key}/photo" if shown.photo else None


def finding(unit: SqlUnit, found: TrackedFinding) -> given.Finding:
    ways = () if found.resolved else resolving.ways(unit, found.finding)
    return _finding(found.finding, stocktake_report.title_of(unit, found.finding), _resolved(found.resolved), ways)


def _finding(shown: Finding, title: str | None, resolved: given.Resolved | None, ways: Sequence[str]) -> given.Finding:
    return {
        "id": shown.id,
        "kind": shown.kind,
        "code": shown.code,
        "text": shown.subject if shown.kind is FindingKind.UNKNOWN else None,
        "title": title,
        "bin": shown.bin,
        "places": list(shown.places),
        "certainty": shown.certainty,
        "looks": list(shown.looks),
        "read": shown.read,
        "unread": shown.unread,
        "expected": shown.expected,
        "ways": list(ways),
        "resolved": resolved,
    }


def _resolved(shown: Resolved | None) -> given.Resolved | None:
    if shown is None:
        return None
    return {"how": shown.how, "reason": shown.reason, "who": shown.who, "at": time(shown.at)}


def report(shown: Stocktake) -> given.Report:
    """As it was written when the count was closed."""
    written = stocktake_report.written(shown)
    resolved, titles = written.pop("resolved"), written.pop("titles")
    found = [Finding.from_dict(each) for each in written["findings"]]
    shown_found = [_finding(each, titles.get(each.id), resolved.get(each.id), tuple(ACTS[each.kind])) for each in found]
    return cast(given.Report, written | {"findings": shown_found})  # the rest is JSON as it was kept


def csv_of(written: given.Report) -> str:
    """The findings of a report as CSV, under `COLUMNS`."""
    return csv_out.text(COLUMNS, _rows(written))


def _rows(written: given.Report) -> Iterator[Mapping[str, object]]:
    for each in written["findings"]:
        told = each["resolved"] or UNRESOLVED
        how = told["how"]
        yield {
            **each,
            "places": " ".join(each["places"]),
            "resolved": how,
            "reason": told["reason"],
            "who": told["who"],
            "at": told["at"],
            "amiss": said(_told(each)).amiss,
            "done": count_words.RESOLVED[how] if how else "open",
        }


def _told(shown: given.Finding) -> Finding:
    """A finding from what is shown of it, as far as its words need it."""
    return Finding(
        FindingKind(shown["kind"]),
        shown["id"].removeprefix(f"{shown['kind']}-"),
        shown["bin"],
        tuple(shown["places"]),
        read=shown["read"],
        unread=shown["unread"],
        expected=shown["expected"],
    )
