"""Where things go wrong, and what to change: by kind, station, section and hour, by person only if the shop says so."""

from __future__ import annotations

from collections import Counter
from datetime import timedelta
from zoneinfo import ZoneInfo

from flask import Blueprint, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.things import Station
from scanflow.domain.words import FINDINGS, REFUSALS, units
from scanflow.planning.trouble import (
    COUNT,
    ENOUGH,
    SHORT,
    TWICE,
    UNDONE,
    Change,
    Trouble,
    What,
    by_hour,
    changes,
    count,
)
from scanflow.storage.views import trouble as trouble_views
from scanflow.web.pages.declare import Group, MenuEntry, page
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, room

blueprint = Blueprint("trouble_page", __name__)
DAYS = 90
"""How far back the page looks."""

KINDS: dict[str, str] = {
    **{kind: said.trouble for kind, said in FINDINGS.items()},
    **{reason: said.trouble for reason, said in REFUSALS.items()},
    UNDONE: "scan taken back",
    SHORT: "thing missing",
    TWICE: "scanned twice in a row",
}

PLACES = {
    Station.BIN: "at bins",
    Station.TABLE: "at the table",
    Station.TRAY: "at the tray",
    Station.SHELF: "at shelves",
    COUNT: "in counts",
    "": "reported by hand",
}
"""Where it went wrong: at a station, in a count, or where a person said so."""


@page(blueprint, "GET", "/trouble", menu=MenuEntry(Group.SHOP, 5, "Where things go wrong"))
def show() -> ResponseReturnValue:
    unit = room()
    past = ask(trouble_views.past, unit.at - timedelta(days=DAYS))
    zone = ZoneInfo(unit.settings.zone)
    people = ask(trouble_views.people, past.since) if unit.settings.by_person else None
    found = past.troubles
    wrong, all_ = by_hour([each.at for each in found if each.station != COUNT], zone), by_hour(past.scans, zone)
    return render(
        "shop/trouble.html",
        since=past.since,
        found=len(found),
        told=_told(found, len(past.scans)),
        often=_often,
        enough=ENOUGH,
        changes=[_said(change) for change in changes(found)],
        kinds=_by_station(found),
        sections=count(found, lambda each: each.section),
        people=people,
        hours=[(hour, wrong[hour], all_[hour]) for hour in range(24) if wrong[hour] or all_[hour]],
    )


def _told(found: list[Trouble], scans: int) -> str:
    """How often something went wrong in so many scans, in counts and without either, in words; empty without any."""
    counted, unscanned = (sum(each.station == station for each in found) for station in (COUNT, ""))
    scanned = len(found) - counted - unscanned
    told = [f"{_often(scanned) if scanned else 'never'} in {units(scans, 'scan')}"] if scans else []
    told += [f"{_often(counted)} in counts"] if counted else []
    told += [f"{_often(unscanned)} reported by hand"] if unscanned else []
    words = ", ".join(told)
    return words[:1].upper() + words[1:]


def _often(times: int) -> str:
    return {1: "once", 2: "twice"}.get(times) or f"{times:,} times"


def _by_station(found: list[Trouble]) -> list[tuple[str, int, str]]:
    """Words, times, and where that was, of each kind, the most frequent first."""
    return [
        (KINDS.get(kind, kind), times, _where(Counter(each.station for each in found if each.kind == kind)))
        for kind, times in count(found, lambda each: each.kind)
    ]


def _where(stations: Counter[str]) -> str:
    """The place; of several how often at each, the most frequent first."""
    if len(stations) == 1:
        return PLACES[next(iter(stations))]
    return ", ".join(f"{_often(times)} {PLACES[station]}" for station, times in stations.most_common())


def _said(change: Change) -> dict[str, object]:
    """A change in words: what stands on its plate, what was found, what to do, and where that is done."""
    where, times = change.where, change.times
    match change.what:
        case What.MISTYPED:
            found = f"Codes of section {where} are mistyped: {times} times"
            todo, do, to = (
                "Scan the card instead. One that no longer scans is printed again from its slot's page.",
                f"Show the slots of {where}",
                url_for("slot_page.index", section=where),
            )
        case What.MISREAD:
            found = f"Cards of section {where} are misread: {times} times"
            todo, do, to = "Look at how they are printed and lit.", "Check a printed card", url_for("check_page.show")
        case What.CONFUSED:
            found = f"In bin {where} another card was scanned first: {times} times"
            pairs = ", ".join(f"{wrong} before {right} ({each}×)" for wrong, right, each in change.pairs)
            todo, do, to = f"{pairs}. Move such things apart.", f"Show bin {where}", _bin(where)
        case What.DOUBLED:
            at = "the bins" if where == Station.BIN else f"table {where}"
            found = f"At {at} cards are scanned twice in a row: {times} times"
            todo, do, to = (
                "If nobody means to, see whether the scanner sends each card twice.",
                "Try and set up the scanner",
                url_for("scanner_page.show"),
            )
        case What.MISSING:
            found = f"Things of section {where} are missing: {times} times"
            todo, do, to = (
                "Count its bins.",
                f"Show what {where} holds",
                url_for("slot_page.index", section=where, state="taken"),
            )
    return {"plate": where, "change": change, "found": found, "todo": todo, "do": do, "to": to}


def _bin(name: str) -> str:
    return url_for("station_page.shelf", bin=name)
