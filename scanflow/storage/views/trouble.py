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
from typing import Any, NamedTuple

from sqlalchemy import Connection, and_, or_, select

from scanflow.domain.counts.findings import Finding, Kind
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
    times = connection.execute(select(ledger.c.at).where(recent, ledger.c.kind == "scan")).scalars()
    scanned = [at for at in map(datetime.fromisoformat, times) if at >= since]
    amiss = or_(
        ledger.c.kind.in_(["undone", "short"]),
        and_(ledger.c.kind == "scan", ledger.c.data.contains('"changed":false', autoescape=True)),
    )
    query = select(ledger.c.at, ledger.c.kind, ledger.c.data).where(recent, amiss).order_by(ledger.c.seq)
    told = [(datetime.fromisoformat(row.at), row.kind, json.loads(row.data)) for row in connection.execute(query)]
    troubles = _troubles(connection, [entry for entry in told if entry[0] >= since])
    return Past(since, troubles + _placed(connection, _counted(connection, since)), scanned)


def people(connection: Connection, since: datetime) -> list[tuple[str, int, int]]:
    """Who scanned since then: the name, how many scans were refused, doubled or taken back, and how many there were."""
    before = connection.execute(select(head.c.seq)).scalar_one() - LATEST
    query = select(ledger.c.at, ledger.c.kind, ledger.c.actor, ledger.c.data)
    query = query.where(ledger.c.seq > before, ledger.c.kind.in_(["scan", "undone"]))
    amiss, scanned = Counter[str](), Counter[str]()
    for row in connection.execute(query):
        if datetime.fromisoformat(row.at) >= since:
            scanned[row.actor] += row.kind == "scan"
            amiss[row.actor] += row.kind == "undone" or _changed_nothing(json.loads(row.data))
    return [(who, amiss[who], number) for who, number in sorted(scanned.items())]


def _changed_nothing(scan: dict[str, Any]) -> bool:
    return not scan["changed"] and _kind(scan) is not None


Told = Sequence[tuple[datetime, str, dict[str, Any]]]


def _troubles(connection: Connection, told: Told) -> list[Trouble]:
    undone = _scans(connection, [data["key"] for _, kind, data in told if kind == "undone"])
    short = _codes(connection, [data["line"] for _, kind, data in told if kind == "short"])
    right = _next_right(connection, [data["key"] for _, kind, data in told if kind == "scan" and _at_bin(data)])
    letters = set(connection.execute(select(sections.c.code)).scalars())
    found = []
    for at, kind, data in told:
        if kind == "undone":
            scan = undone[data["key"]]
            found.append(Trouble(UNDONE, at, scan.station, _table(scan.station, scan.spot), code=scan.code or ""))
        elif kind == "short":
            found.append(Trouble(SHORT, at, code=short.get(data["line"], "")))
        elif (what := _kind(data)) is not None:
            station, code = data["station"], data["code"] or ""
            section = "" if code else _section(data["text"], letters)
            place, then = _table(station, data["spot"]), right.get(data["key"], "")
            found.append(Trouble(what, at, station, place, section, code, via=data["via"], right=then))
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
            if each.kind is not Kind.UNREADABLE and not ignored:
                place = next(iter(each.places), "")
                found.append(Trouble(each.kind, row.closed, COUNT, "", here.get(place, ""), each.code or "", place))
    return found


def _kind(data: dict[str, Any]) -> str | None:
    """The kind of trouble of a scan that changed nothing; None for what is none.

    The first look at a card without a check is none, nor is a card that is seen where it was seen before.
    """
    if data["verdict"] == "refused":
        return None if data["reason"] == Reason.BAD_CHECK and data["code"] else str(data["reason"])
    return TWICE if data["code"] and data["station"] in (Station.BIN, Station.TABLE) else None


def _at_bin(data: dict[str, Any]) -> bool:
    return data["verdict"] == "refused" and data["station"] == Station.BIN and bool(data["code"])


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
