"""A file of orders: how it is understood, what loading it would do, loading it, and taking it back."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from flask import Blueprint, request
from flask.typing import ResponseReturnValue

from scanflow.domain import words
from scanflow.domain.orders.loaded import Loaded, RefusedRow
from scanflow.domain.things import Channel, ChannelStatus, Item, Line, Order, Slot, Stay, status_key
from scanflow.domain.words import units
from scanflow.exchange import csv_table, mapping, order_files, orders_csv, statuses
from scanflow.exchange.csv_table import CsvTable, FileError
from scanflow.exchange.dates import DateOrder
from scanflow.exchange.mapping import ColumnMapping, MappingError
from scanflow.exchange.orders_csv import Key, Parsed
from scanflow.shop import a_while
from scanflow.storage.views import channels as channel_views
from scanflow.storage.views import orders as order_views
from scanflow.web.collecting import uncollected
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.pages.declare import page
from scanflow.web.pages.file_form import carried, file_sent
from scanflow.web.pages.forms import write_in_parts
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.fields import LONGEST_NAME
from scanflow.workflow.orders import channels, taking_back
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.orders.channels import SayChannel
from scanflow.workflow.ports import Refused, Unit, must

blueprint = Blueprint("order_file_page", __name__)
SAMPLE = 4
SHOWN = 100
"""Held lines and refused rows that are listed before the rest is only counted."""

LATEST = 10
"""Files that can be taken back from the page; older ones are built on as a rule."""


@dataclass(frozen=True, slots=True)
class Understood:
    """How a person has the file understood. `asks`: some rows name no channel; `channel` is theirs. `meant` is what
    statuses mean by (channel, status as `status_key` has it), None for one that is left out. `part`: orders that are
    absent are not held. `claimed`: orders that name no channel are of this one too.
    """

    columns: ColumnMapping
    asks: bool
    channel: str
    meant: Mapping[tuple[str, str], ChannelStatus | None]
    part: bool
    claimed: bool

    def meaning(self, channel: str, value: str) -> ChannelStatus | None:
        return self.meant.get((channel, status_key(value)))

    @property
    def text(self) -> str:
        """The same has the same text."""
        meant = sorted((*key, each or "") for key, each in self.meant.items())
        return json.dumps([self.columns.to_json(), self.channel, meant, self.part, self.claimed])


@dataclass(frozen=True, slots=True)
class LoadOutcome:
    """What loading did or would do: the counts, the lines that are held, and all rows that became no line.

    `warnings` and `dates` as `Parsed` has them.
    """

    loaded: Loaded
    held: Sequence[Any]
    refused: tuple[RefusedRow, ...]
    warnings: tuple[RefusedRow, ...]
    dates: str
    absent: Sequence[str] = ()
    """Numbers of open orders that the file does not have."""


@page(blueprint, "GET", "/orders/load")
def show(said: str = "", status: int = 200, done: str = "") -> ResponseReturnValue:
    loads = ask(order_views.loads, LATEST)
    return render("orders/file_choose.html", said=said, done=done, loads=loads), status


@page(blueprint, "POST", "/orders/load", takes_file=True)
@uncollected
def load() -> ResponseReturnValue:
    """First look, then, once what is understood was shown, load."""
    try:
        data = file_sent()
        table = csv_table.read_table(data)
    except FileError as error:
        return show(str(error), 422)
    first = not request.form.get("step")
    understood = _understood(table, first)
    apply = request.form.get("step") == "apply" and request.form.get("shown") == understood.text
    said, parsed, outcome = "", None, None
    try:
        parsed = _parsed(table, understood)
    except MappingError as error:
        said = str(error)
    if parsed is not None and parsed.lacks_channel:
        said = "" if first else order_files.WHICH_CHANNEL
    elif parsed is not None:
        outcome = _apply(parsed, understood, table) if apply else _try(parsed, understood)
    if apply and outcome is not None:
        return render("orders/file_done.html", outcome=outcome, shown=SHOWN)
    shown: dict[str, Any] = {"table": table, "outcome": outcome, "carried": carried(data), "understood": understood}
    shown |= {"statuses": _shown_statuses(parsed, understood), "fields": mapping.LABELS, "sample": SAMPLE}
    shown["meanings"] = words.STATUSES
    shown |= {"which": parsed is not None and parsed.lacks_channel, "said": said, "shown": SHOWN}
    shown["begun"] = room().loads.far(_key(parsed, understood)).done if outcome is not None and parsed else 0
    shown["channels"] = ask(channel_views.channel_names)
    shown["unclaimed"] = _unclaimed(understood.channel)
    return render("orders/file_check.html", **shown), 422 if said else 200


@page(blueprint, "POST", "/orders/loads/<id>/back")
def take_back(id: str) -> ResponseReturnValue:
    """What a file brought is cancelled, and what it changed is as before."""
    try:
        orders = write_in_parts(taking_back.in_parts(room(), id, a_while))
    except Refused as error:
        return show(error.detail, 409)
    return show(done=f"That file is taken back: {units(orders, 'order')}.")


def _understood(table: CsvTable, first: bool) -> Understood:
    """What the person chose, else what the room says of such a file."""
    channel = ask(channel_views.spelt, " ".join(request.form.get("channel", "").split())[:LONGEST_NAME])
    columns = order_files.columns(room(), table) if first else _chosen_columns(table)
    channel = order_files.proposed(room(), table) if first else channel
    try:
        bare = _parsed(table, Understood(columns, True, "", {}, False, False))
        asks, values = bare.lacks_channel, bare.statuses
    except MappingError:
        asks, values = "channel" not in columns.columns, {}
    channel = channel if asks else ""
    known = order_files.meanings(room())
    meant = {}
    for said, each in values.items():
        name = said or channel
        for value in each:
            chosen = request.form.get(f"status {name} {status_key(value)}")
            usual = known(name, value) or statuses.guess(value)
            meant[name, status_key(value)] = usual if chosen is None else _meaning(chosen)
    part, claimed = request.form.get("absent") == "part", bool(request.form.get("claimed"))
    return Understood(columns, asks, channel, meant, part, claimed and any(_unclaimed(channel)))


def _meaning(chosen: str) -> ChannelStatus | None:
    return ChannelStatus(chosen) if chosen in list(ChannelStatus) else None


def _chosen_columns(table: CsvTable) -> ColumnMapping:
    chosen = {name: request.form.get(f"column-{name}", "") for name in mapping.FIELDS}
    columns = {name: header for name, header in chosen.items() if header in table.headers}
    order = request.form.get("dates", "")
    return ColumnMapping(columns, DateOrder(order) if order in list(DateOrder) else None)


def _unclaimed(channel: str) -> tuple[int, int]:
    """How many orders and listings name no channel, where this channel has no order yet and may be theirs."""
    if not channel or room().get(Channel, channel) is not None or room().find(Order, channel=channel):
        return 0, 0
    return ask(channel_views.without_channel)


def _parsed(table: CsvTable, understood: Understood) -> Parsed:
    usual = order_files.usual_dates(room())
    return orders_csv.orders(table, understood.columns, usual, understood.channel, understood.meaning)


def _shown_statuses(parsed: Parsed | None, understood: Understood) -> list[tuple[str, str, ChannelStatus | None]]:
    """Each status of the file as (field of the form, words, meaning)."""
    found = parsed.statuses if parsed is not None else {}
    several = len(found) > 1
    return [
        (
            f"status {name} {status_key(value)}",
            f"{name}: {value}" if several else value,
            understood.meaning(name, value),
        )
        for name, values in found.items()
        for value in values
    ]


def _listed(parsed: Parsed, understood: Understood) -> frozenset[Key]:
    return frozenset() if understood.part else parsed.listed


def _key(parsed: Parsed, understood: Understood) -> str:
    return f"{parsed.key}{' part' if understood.part else ''}"


def _outcome(parsed: Parsed, loaded: Loaded, held: Sequence[Any], absent: Sequence[str] = ()) -> LoadOutcome:
    refused = tuple(sorted((*parsed.refused, *loaded.refused), key=lambda row: row.row))
    return LoadOutcome(loaded, held, refused, parsed.warnings, parsed.dates, absent)


def _try(parsed: Parsed, understood: Understood) -> LoadOutcome:
    """What loading would do."""
    absent = [order.number for order, _ in order_file.absent(room(), parsed.listed)]
    with shop().trying(visitor().name) as unit:
        if understood.claimed:
            channels.claim(unit, understood.channel)
        loaded = order_file.load(unit, parsed.orders, parsed.rows, _listed(parsed, understood))
        return _outcome(parsed, loaded, [_held(unit, line) for line in loaded.held[:SHOWN]], absent)


def _held(unit: Unit, line_id: str) -> Mapping[str, Any]:
    """A line that would be held, as `order_views` shows one."""
    line = must(unit, Line, line_id)
    stay = must(unit, Stay, line.stay) if line.stay else None
    shown = {"reference": line.reference, "said": line.title, "holds": line.holds, "code": None, "section": None}
    if stay is not None:
        slot, item = must(unit, Slot, stay.code), must(unit, Item, stay.item)
        shown |= {"code": slot.code, "section": slot.section, "title": item.title}
    return {"id": line.id, "number": must(unit, Order, line.order).number, "title": "", **shown}


def _apply(parsed: Parsed, understood: Understood, table: CsvTable) -> LoadOutcome:
    """Load it, and remember its columns for its channel and for files of the same headers, and its statuses."""
    signature = mapping.signature(table.headers)
    listed = _listed(parsed, understood)
    load = order_file.in_parts(room(), _key(parsed, understood), parsed.orders, parsed.rows, a_while, listed)

    def work(unit: Unit) -> Loaded | None:
        if understood.claimed:
            channels.claim(unit, understood.channel)
        loaded = load(unit)
        if loaded is not None:
            unit.mappings.save(understood.channel or signature, signature, understood.columns.to_json())
            _say_statuses(unit, parsed, understood)
        return loaded

    loaded = write_in_parts(work)
    return _outcome(parsed, loaded, ask(order_views.lines_by_id, loaded.held[:SHOWN]))


def _say_statuses(unit: Unit, parsed: Parsed, understood: Understood) -> None:
    for name, values in parsed.statuses.items():
        meant = {value: meaning for value in values if (meaning := understood.meaning(name, value)) is not None}
        channels.say(unit, SayChannel(name=name, statuses=meant))
