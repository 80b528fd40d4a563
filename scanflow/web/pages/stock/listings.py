"""The offers of things: which are up or to be taken down, and what a channel offers against what stands here."""

from __future__ import annotations

import json
from datetime import datetime
from itertools import groupby
from typing import Any

from flask import Blueprint, request, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain.derive import ListingState
from scanflow.domain.offered import Difference
from scanflow.exchange import csv_table, listings_csv
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.shop import a_while
from scanflow.storage.views import channels as channel_views
from scanflow.storage.views import listings as listing_views
from scanflow.web.pages.declare import STAFF, Group, MenuEntry, page
from scanflow.web.pages.file_form import carried, file_sent
from scanflow.web.pages.forms import sent, write_in_parts
from scanflow.web.pages.rendering import PAGE, do, offset, render, typed_words
from scanflow.web.pages.room_view import ask, room
from scanflow.web.pages.stock import slots
from scanflow.workflow.fields import LONGEST_NAME
from scanflow.workflow.stock import cards, listings, offered

blueprint = Blueprint("listing_page", __name__)
ALL = "all"
SHOWN = 100
"""Differences of each kind that are listed before the rest is only counted."""


@page(blueprint, "GET", "/listings", roles=STAFF, live=True, menu=MenuEntry(Group.ROOM, 6, "Listings", "i"))
def index(said: str = "", status: int = 200, id: str = "") -> ResponseReturnValue:
    """Those to be taken down, unless another state is asked for. `id`: the one that a press was about."""
    asked = request.args.get("state", "")
    state = None if asked == ALL else ListingState(asked) if asked in list(ListingState) else ListingState.TO_TAKE_DOWN
    words, at = typed_words("words"), room().at
    rows = ask(listing_views.listing_list, state, at, words=words, skip=offset(), limit=PAGE)
    counts = ask(listing_views.listing_counts, at, words)
    shown = {"rows": rows, "counts": counts, "state": state or ALL, "states": [*ListingState], "words": words}
    return render("stock/listings.html", **shown, skip=offset(), size=PAGE, said=said), status


@page(blueprint, "POST", "/listings/<id>/ended", roles=STAFF)
def ended(id: str) -> ResponseReturnValue:
    """An offer was taken down, or has ended there; back to the page that said so."""
    stay = request.form.get("stay", "")
    if stay:
        return do(slots.story, lambda unit: listings.end(unit, id), url_for("slot_page.story", id=stay), id=stay)
    return do(index, lambda unit: listings.end(unit, id), url_for("listing_page.index"), id=id)


@page(blueprint, "POST", "/stays/<id>/listings", roles=STAFF)
def add(id: str) -> ResponseReturnValue:
    """The thing is offered under one id more."""
    to, channel = url_for("slot_page.story", id=id), _channel()
    return do(slots.story, lambda unit: listings.add(unit, id, sent(listings.AddListing, channel=channel)), to, id=id)


@page(blueprint, "GET", "/listings/check")
def choose(said: str = "", status: int = 200) -> ResponseReturnValue:
    shown = {"channels": ask(channel_views.channel_names), "channel": _channel() or request.args.get("channel", "")}
    return render("stock/listings_file.html", **shown, said=said), status


@page(blueprint, "POST", "/listings/check", takes_file=True)
def check() -> ResponseReturnValue:
    """What differs; with a press on one row, or on all of a kind, what differs still."""
    try:
        data = file_sent()
        table = csv_table.read_table(data)
    except FileError as error:
        return choose(str(error), 422)
    channel, columns = _channel(), _columns(table)
    if not channel:
        return choose("Say which channel offers this.", 422)
    since = _since() or room().at
    pressed = request.form.get("settle", "")
    if pressed and listings_csv.usable(columns) and request.form.get("shown") == _understood(columns):
        chosen = [each for each in _found(table, columns, channel, since) if pressed in (each.kind, each.name)]
        write_in_parts(offered.settling(channel, chosen, a_while))
    said = "" if listings_csv.usable(columns) else listings_csv.NO_COLUMN
    found = () if said else _found(table, columns, channel, since)
    groups = [(kind, list(each)) for kind, each in groupby(found, key=lambda each: each.kind)]
    shown: dict[str, Any] = {"table": table, "columns": columns, "fields": listings_csv.FIELDS, "channel": channel}
    shown |= {"understood": _understood(columns), "carried": carried(data), "since": since.isoformat(), "said": said}
    return render("stock/listings_check.html", **shown, groups=groups, found=len(found), shown=SHOWN), (
        422 if said else 200
    )


def _found(table: CsvTable, columns: dict[str, str], channel: str, since: datetime | None) -> tuple[Difference, ...]:
    return offered.check(room(), channel, listings_csv.rows(table, columns), since)


def _channel() -> str:
    return ask(channel_views.spelt, " ".join(request.form.get("channel", "").split())[:LONGEST_NAME])


def _since() -> datetime | None:
    """When this file was looked at first; None where that is just now."""
    try:
        since = datetime.fromisoformat(request.form.get("since", ""))
    except ValueError:
        return None
    return since if since.tzinfo is not None else None


def _columns(table: CsvTable) -> dict[str, str]:
    """What the person chose, else what the headers and cells say."""
    if "since" not in request.form:
        return listings_csv.guess(table, cards.widths(room()))
    chosen = {name: request.form.get(f"column-{name}", "") for name in listings_csv.FIELDS}
    return {name: header for name, header in chosen.items() if header in table.headers}


def _understood(columns: dict[str, str]) -> str:
    return json.dumps(columns, sort_keys=True)
