"""What went wrong, from the ledger, the scans and the reports of counts, read-only.

Who did it is not looked at but by `people`, which is for a shop that wants that.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Container, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any, NamedTuple, TypeGuard

from sqlalchemy import Connection, and_, or_, select

from scanflow.domain import events
from scanflow.domain.counts.findings import Finding, FindingKind
from scanflow.domain.life import StocktakeState
from scanflow.domain.things import Station
from scanflow.domain.verdict import Reason
from scanflow.planning.trouble import COUNT, SHORT, TWICE, UNDONE, Trouble
from scanflow.storage.tables import bins, head, ledger, lines, scans, sections, slots, stays, stocktakes

LATEST = 20_000
"""Entries of the ledger that are looked at, whatever the time."""

_LETTERS = re.compile(r"\s*([A-Za-z]{1,2})")


class Past(NamedTuple):
    """What went wrong since then, what counts found last, and when each scan of the same time was."""

    since: datetime
    troubles: list[Trouble]
    scans: list[datetime]


def past(connection: Connection, after: datetime) -> Past:
    """What went wrong after this time, as far back as `LATEST` entries reach."""
    before = connection.execute(select(head.c.seq)).scalar_one() - LATEST
    oldest = connection.execute(select(ledger.c.at).where(ledger.c.seq == before + 1)).scalar()
    since = max(after, datetime.fromisoformat(oldest)) if before > 0 and oldest else after
    recent = ledger.c.seq > before
    times = select(ledger.c.at).where(recent, ledger.c.kind == events.Scanned.kind).order_by(ledger.c.seq)
    scanned = [at for at in map(datetime.fromisoformat, connection.scalars(times)) if at >= since]
    amiss = or_(
        ledger.c.kind.in_([events.Undone.kind, events.LineShort.kind]),
        and_(ledger.c.kind == events.Scanned.kind, ledger.c.data.contains('"changed":false', autoescape=True)),
    )
    query = select(ledger.c.at, ledger.c.kind, ledger.c.data).where(recent, amiss).order_by(ledger.c.seq)
    told = [(datetime.fromisoformat(row.at), _event(row)) for row in connection.execute(query)]
    troubles = _troubles(connection, [entry for entry in told if entry[0] >= since])
    return Past(since, troubles + _placed(connection, _counted(connection, since)), scanned)


def people(connection: Connection, since: datetime) -> list[tuple[str, int, int]]:
    """Who scanned since then: the name, how many scans were refused, doubled or taken back, and how many there were."""
    before = connection.execute(select(head.c.seq)).scalar_one() - LATEST
    query = select(ledger.c.at, ledger.c.kind, ledger.c.actor, ledger.c.data)
    query = query.where(ledger.c.seq > before, ledger.c.kind.in_([events.Scanned.kind, events.Undone.kind]))
    amiss, scanned = Counter[str](), Counter[str]()
    for row in connection.execute(query):
        if datetime.fromisoformat(row.at) >= since:
            event = _event(row)
            scanned[row.actor] += isinstance(event, events.Scanned)
            amiss[row.actor] += isinstance(event, events.Undone) or _changed_nothing(event)
    return [(who, amiss[who], number) for who, number in sorted(scanned.items())]


def _event(row: Any) -> events.Told:
    return events.read(row.kind, json.loads(row.data))


def _changed_nothing(event: events.Told) -> bool:
    return isinstance(event, events.Scanned) and not event.changed and _kind(event) is not None


def _troubles(connection: Connection, told: Sequence[tuple[datetime, events.Told]]) -> list[Trouble]:
    undone = _scans(connection, [event.key for _, event in told if isinstance(event, events.Undone)])
    short = _codes(connection, [event.line for _, event in told if isinstance(event, events.LineShort)])
    right = _next_right(connection, [event.key for _, event in told if _refused_at_bin(event)])
    letters = set(connection.execute(select(sections.c.code)).scalars())
    found = []
    for at, event in told:
        match event:
            case events.Undone():
                scan = undone[event.key]
                found.append(Trouble(UNDONE, at, scan.station, _table(scan.station, scan.spot), code=scan.code or ""))
            case events.LineShort():
                found.append(Trouble(SHORT, at, code=short.get(event.line, "")))
            case events.Scanned() if (what := _kind(event)) is not None:
                section = "" if event.code else _section(event.text, letters)
                place, then = _table(event.station, event.spot), right.get(event.key, "")
                code = event.code or ""
                found.append(Trouble(what, at, event.station, place, section, code, via=event.via, right=then))
    return _placed(connection, found)


def _counted(connection: Connection, since: datetime) -> list[Trouble]:
    """What the counts that were closed since then found, each when its count was closed.

    A place to look at again is no trouble, and ignored findings are none.
    """
    closed = select(stocktakes.c.closed, stocktakes.c.report).where(stocktakes.c.closed >= since)
    closed = closed.where(stocktakes.c.state == StocktakeState.CLOSED).order_by(stocktakes.c.closed)
    here = {row.name: row.section for row in connection.execute(select(bins.c.name, bins.c.section))}
    found = []
    for row in connection.execute(closed):
        report = json.loads(row.report)
        for each in map(Finding.from_dict, report["findings"]):
            ignored = report["resolved"].get(each.id, {}).get("how") == "ignore"
            if each.kind is not FindingKind.UNREADABLE and not ignored:
                place = next(iter(each.places), "")
                found.append(Trouble(each.kind, row.closed, COUNT, "", here.get(place, ""), each.code or "", place))
    return found


def _kind(scan: events.Scanned) -> str | None:
    """The kind of trouble of a scan that changed nothing; None for what is none.

    The first scan of a card without a check is none, nor is a card that is seen where it was seen before.
    """
    if not scan.accepted:
        return None if scan.reason == Reason.BAD_CHECK and scan.code else scan.reason
    return TWICE if scan.code and scan.station in (Station.BIN, Station.TABLE) else None


def _refused_at_bin(event: events.Told) -> TypeGuard[events.Scanned]:
    if not isinstance(event, events.Scanned) or event.accepted:
        return False
    return event.station == Station.BIN and event.code is not None


def _table(station: str, spot: str) -> str:
    return spot if station == Station.TABLE else ""


def _scans(connection: Connection, keys: Sequence[str]) -> dict[str, Any]:
    query = select(scans.c.key, scans.c.station, scans.c.spot, scans.c.code).where(scans.c.key.in_(keys))
    return {row.key: row for row in connection.execute(query)}


def _codes(connection: Connection, line_ids: Sequence[str]) -> dict[str, str]:
    """The slot of each of these lines that has one."""
    query = select(lines.c.id, stays.c.code).join(stays, stays.c.id == lines.c.stay).where(lines.c.id.in_(line_ids))
    return {row.id: row.code for row in connection.execute(query)}


def _next_right(connection: Connection, keys: Sequence[str]) -> dict[str, str]:
    """The card that was accepted next on the same round, for each of these scans, oldest first, that has one."""
    at_bins = select(scans.c.n, scans.c.key, scans.c.spot, scans.c.code, scans.c.accepted)
    at_bins = at_bins.where(scans.c.station == Station.BIN)
    first = select(scans.c.n).where(scans.c.key == next(iter(keys), "")).scalar_subquery()
    asked, next_, right = set(keys), dict[str, str](), dict[str, str]()
    for row in connection.execute(at_bins.where(scans.c.n >= first).order_by(scans.c.n.desc())):
        if row.accepted:
            next_[row.spot] = row.code
        elif row.key in asked and row.spot in next_:
            right[row.key] = next_[row.spot]
    return right


def _section(texts: Sequence[str], letters: Container[str]) -> str:
    """The section that the letters of a text name which is no card's, if there is one."""
    read = _LETTERS.match(texts[0]) if texts else None
    return read[1].upper() if read and read[1].upper() in letters else ""


def _placed(connection: Connection, found: Sequence[Trouble]) -> list[Trouble]:
    """The same with the sections and bins of their cards."""
    codes = {code for each in found for code in (each.code, each.right) if code}
    query = select(slots.c.code, slots.c.section, slots.c.bin).where(slots.c.code.in_(codes))
    places = {row.code: (row.section, row.bin) for row in connection.execute(query)}
    placed = []
    for each in found:
        section, bin_ = places.get(each.code, (each.section, each.bin))
        right_bin = places.get(each.right, ("", ""))[1]
        placed.append(replace(each, section=section, bin=bin_, right_bin=right_bin))
    return placed
