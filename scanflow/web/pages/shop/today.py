"""The day at a glance: what waits and by when, what stands still and why, what must go back."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from flask import Blueprint, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.counts.stocktake import Stocktake
from scanflow.domain.derive import ListingState
from scanflow.domain.life import StocktakeState
from scanflow.domain.words import units
from scanflow.storage.views import listings as listing_views
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import parcels as parcel_views
from scanflow.storage.views import picking as round_views
from scanflow.storage.views import returns as return_views
from scanflow.storage.views import room as room_views
from scanflow.storage.views import stock as slot_views
from scanflow.storage.views import where as where_views
from scanflow.storage.views.lists import Rows
from scanflow.storage.views.where import Duty
from scanflow.web.backup_words import sentences
from scanflow.web.count_words import subject
from scanflow.web.door.visitors import shop
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, may, page
from scanflow.web.pages.picking.rounds import round_of
from scanflow.web.pages.rendering import render, where_are
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.stock import sightings

blueprint = Blueprint("today", __name__)
SHOWN = 8
"""Lines of each kind before the rest is folded into a link."""


@dataclass(frozen=True, slots=True)
class Overview:
    """What Today shows."""

    counts: dict[str, int]
    orders: Rows
    held: Rows
    short: Rows
    back: list[Duty]
    missing: list[Duty]
    twins: list[Duty]
    due: Rows
    offers: Rows
    rounds: Rows
    parcels: Rows
    returns: Rows
    """Those that have arrived and are not checked, and those that are overdue."""
    numbers: dict[str, str]
    boxes: int
    """Parcels that are not closed and have something packed in them."""


@dataclass(frozen=True, slots=True)
class Next:
    """The one thing to do next: its words, where it leads, and whether going there changes something."""

    words: str
    to: str
    post: bool = False


def read(now: datetime) -> Overview:
    parcels = ask(parcel_views.open_parcels)
    at = room().at
    offers = ask(listing_views.listing_list, ListingState.TO_TAKE_DOWN, at, limit=SHOWN + 1)
    down = len(offers) if len(offers) <= SHOWN else ask(listing_views.to_take_down, at)
    names = [name for parcel in parcels for name in parcel.orders.split()]
    return Overview(
        counts=ask(room_views.counts) | {"to_take_down": down},
        orders=ask(order_views.order_list, ["waiting", "picking", "packing"], 0, SHOWN + 1),
        held=ask(order_views.held_lines, SHOWN + 1),
        short=ask(order_views.short_lines, SHOWN + 1),
        back=ask(where_views.duties),
        missing=ask(where_views.missing),
        twins=ask(where_views.twins),
        due=ask(slot_views.slot_list, state="due", limit=SHOWN + 1),
        offers=offers,
        rounds=ask(round_views.open_rounds),
        parcels=parcels,
        returns=ask(return_views.return_duties, now, SHOWN + 1),
        numbers={row.id: row.number for row in ask(order_views.numbers, names)},
        boxes=ask(parcel_views.parcels_with_things),
    )


def next_of(day: Overview, *, scan_at_bin: bool = True) -> Next:
    """What is under way comes first, then what waits, then what stands still. Without scans at the bin the table
    packs what waits.
    """
    counts = day.counts
    for parcel in day.parcels:
        if parcel.state == "open" and parcel.wanted:
            numbers = ", ".join(day.numbers.get(name, name) for name in parcel.orders.split())
            return Next(f"Go on packing {numbers}", url_for("table_page.show", table=parcel.at_table))
    for walk in day.rounds:
        return Next(f"Go on with the round, {units(walk.waiting, 'stop')}", url_for("round_page.show", id=walk.id))
    if counts["picked"] or (counts["waiting"] and not scan_at_bin):
        things = counts["picked"] + (0 if scan_at_bin else counts["waiting"])
        return Next(f"Pack {units(things, 'thing')}", url_for("table_page.show"))
    if counts["waiting"]:
        return Next(f"Start a round of {round_of(counts['waiting'])}", url_for("round_page.start"), post=True)
    if counts["held"]:
        first = url_for("order_page.settle_page", id=day.held[0].id)
        to = first if may("order_page.settle_page") else url_for("order_page.index", state="held")
        return Next(f"Settle {units(counts['held'], 'held line')}", to)
    return _next_when_nothing_waits(counts)


def _next_when_nothing_waits(counts: Mapping[str, int]) -> Next:
    if counts["to_take_down"]:
        return Next(f"Take down {units(counts['to_take_down'], 'offer')}", url_for("listing_page.index"))
    if counts["due"]:
        return Next(f"Scan {units(counts['due'], 'card')} into the tray", url_for("station_page.tray"))
    if counts["slots"]:
        return Next("Put something away", url_for("put_away.show"))
    return Next("Plan the first section", url_for("plan_page.show"))


def _leaving() -> dict[str, object]:
    """Closed parcels that have not left; where hand-overs are not recorded only those for which a buyer comes."""
    unit = room()
    before, only = sightings.gone_before(unit), not unit.settings.hand_overs
    rows = ask(parcel_views.parcels_to_hand_over, before, SHOWN + 1, collected=only)
    names = {
        row.id: row.number for row in ask(order_views.numbers, [name for row in rows for name in row.orders.split()])
    }
    return {"leaving": rows, "leaving_numbers": names, "kept": ask(parcel_views.held_in, [row.id for row in rows])}


@page(blueprint, "GET", "/", roles=STAFF, live=True, menu=MenuEntry(Group.DAY, 1, "Today", "t"))
def show() -> ResponseReturnValue:
    unit = room()
    day, settings = read(unit.at), unit.settings
    told = sentences(settings.backups, shop().keeper, unit.seq, unit.at)
    running = unit.find(Stocktake, state=StocktakeState.OPEN)[::-1]
    shown = {
        "where": where_are(day.short),
        "day": day,
        "lines": ask(order_views.lines_by_order, [order.id for order in day.orders]),
        "running": running,
        "subject": subject,
        "shown": SHOWN,
        "backups": told,
        "unseen": ask(slot_views.unseen),
        "out": ask(slot_views.away)[:SHOWN],
        **_leaving(),
    }
    return render("shop/today.html", next=next_of(day, scan_at_bin=settings.scan_at_bin), **shown)
