"""The report of a count as a PDF, from what was written when it was closed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime
from io import BytesIO
from typing import Any
from zoneinfo import ZoneInfo

from labels import count_sheet, draw
from labels.count_sheet import Amiss, Fact, Heading, Row, SectionResult
from labels.paper import COLOURS, Paper
from scanflow.domain.counts.findings import Finding
from scanflow.domain.counts.stocktake import Stocktake
from scanflow.domain.words import said
from scanflow.web import count_words
from scanflow.workflow.counts.report import Whole, whole


def pdf(
    shop: str, count: Stocktake, written: Mapping[str, Any], papers: Mapping[str, str], zone: ZoneInfo, paper: str
) -> bytes:
    """`shop` is its name, `written` the report as JSON has it, `papers` the colour of each section, `paper` one of
    `PAPERS`.
    """
    colours = {code: COLOURS[colour] for code, colour in papers.items() if colour in COLOURS}
    title = f"Count of {count_words.subject(count)}, {_day(count.closed or count.opened, zone)}"
    out = BytesIO()
    told = whole(written)
    rows = [*_facts(count, written, told, zone), *_sections(written, told, colours), *_amiss(written, colours, zone)]
    draw.pdf(count_sheet.report(rows, title, paper, shop), out, title=title)
    return out.getvalue()


def _day(at: datetime, zone: ZoneInfo) -> str:
    local = at.astimezone(zone)
    return f"{local.day} {local:%B %Y %H:%M}"


def _facts(count: Stocktake, written: Mapping[str, Any], told: Whole, zone: ZoneInfo) -> Iterator[Row]:
    yield Fact("Begun", _day(count.opened, zone))
    if count.note:
        yield Fact("Note", count.note)
    yield Fact("Looked at", f"{written['looked']} of {told.places} places{_chosen(told)}, {written['looks']} looks.")
    for name, key in (("Not looked at", "not_looked"), ("Not clear", "unclear")):
        if written[key]:
            yield Fact(name, count_words.ranges(written[key]))
    yield Fact("Agreement", _agreement(told))
    yield Fact("The rest", count_words.rest(told))


def _agreement(told: Whole) -> str:
    words = count_words.agree(told)
    if not told.counted or count_words.whole_counted(told):
        return words
    return f"{told.agreed:,} of {told.counted:,} cards; {words}"


def _chosen(told: Whole) -> str:
    return f" chosen of {told.all_} bins" if told.chosen else ""


def _sections(written: Mapping[str, Any], told: Whole, colours: Mapping[str, Paper]) -> Iterator[Row]:
    for each in written["sections"]:
        absent, strange = each["record_not_found"], each["found_not_recorded"]
        between = count_words.section_between(each, told)
        words = f"{between[0].upper()}{between[1:]}. {absent} recorded and not found, {strange} found and not recorded."
        yield SectionResult(
            each["section"], colours.get(each["section"]), count_words.section_agreed(each, " cards agree"), words
        )


def _amiss(written: Mapping[str, Any], colours: Mapping[str, Paper], zone: ZoneInfo) -> Iterator[Row]:
    found = sorted((Finding.from_dict(kept) for kept in written["findings"]), key=count_words.walk)
    if found:
        yield Heading(f"{len(found):,} {'finding' if len(found) == 1 else 'findings'}", "What was done")
    for each in found:
        letters = "".join(letter for letter in (each.code or "")[:2] if letter.isalpha())
        title = written["titles"].get(each.id, "")
        done = _done(written["resolved"].get(each.id), zone)
        yield Amiss(each.subject, colours.get(letters), said(each).amiss, title, done)


def _done(how: Mapping[str, str] | None, zone: ZoneInfo) -> str:
    if how is None:
        return "open"
    reason = f": {how['reason']}" if how["reason"] else ""
    return f"{count_words.RESOLVED[how['how']]}{reason}. {how['who']}, {_day(datetime.fromisoformat(how['at']), zone)}"
