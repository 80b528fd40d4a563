"""What was done for an order, to look at, to print, and as entries of the ledger that any program can check."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from flask import Blueprint, Response
from flask.typing import ResponseReturnValue

from labels import evidence as paper
from labels.evidence import BoughtThing, EvidenceRow, OrderFact, PrintedEntry
from scanflow.domain import events
from scanflow.domain.orders.evidence import AccountEntry, Deed, done_to, done_with, parcels_of
from scanflow.domain.things import Label, Line, Order, Parcel
from scanflow.domain.words import units
from scanflow.shop import Shop
from scanflow.storage.views import ledger as ledger_views
from scanflow.storage.views import orders as order_views
from scanflow.storage.views.lists import LineRow
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.ledger_words import said
from scanflow.web.pages.declare import page
from scanflow.web.pages.picking.paper import paper_for, pdf_of, things_of
from scanflow.web.pages.rendering import render, standing
from scanflow.web.pages.room_view import ask, let_go, room
from scanflow.workflow.ports import Missing, must

blueprint = Blueprint("evidence_page", __name__)
HOW = (
    "The hash of an entry is the SHA-256 of two texts in a row: the hash of the entry before it as hex text, and the "
    "entry without its hash as RFC 8785 JSON in UTF-8. The very first entry has an empty hash before it. The saved "
    "file has all entries from the first to the last one about this order, so any program can compute each hash "
    "again. One changed letter gives another hash."
)
"""How to check the entries, in a paragraph."""

CHUNK = 500
"""Entries that are read at once for the file."""


@dataclass(frozen=True, slots=True)
class OrderEvidence:
    """An order with its lines, what was done with the thing of each (by the line's id) and for the whole, and the
    entries about it. `before` is the hash of the entry before the first of them.
    """

    order: Order
    rows: list[LineRow]
    things: dict[str, list[Deed]]
    whole: list[Deed]
    entries: list[AccountEntry]
    before: str

    @property
    def first(self) -> int:
        return self.entries[0].seq

    @property
    def last(self) -> int:
        return self.entries[-1].seq


def _evidence(order_id: str) -> OrderEvidence:
    unit = room()
    order, lines = must(unit, Order, order_id), unit.find(Line, order=order_id)
    names = [order_id, *(line.id for line in lines)]
    parcels = sorted(parcels_of(order_id, lines, ask(ledger_views.account, names)))
    entries = ask(ledger_views.account, [*names, *parcels])
    if not entries:
        raise Missing("The ledger has no entry about this order.")
    whole = [Deed("Received", each) for each in entries if isinstance(each.event, events.OrderReceived)][:1]
    for parcel in (must(unit, Parcel, name) for name in parcels):
        ends = [label.ends for label in unit.find(Label, parcel=parcel.id)]
        whole += done_to(parcel, ends, entries)
    things = {line.id: done_with(line, entries) for line in lines}
    before = ask(ledger_views.hash_before, entries[0].seq)
    return OrderEvidence(order, list(ask(order_views.order_lines, order_id)), things, whole, entries, before)


@page(blueprint, "GET", "/orders/<id>/evidence")
def show(id: str) -> ResponseReturnValue:
    told = _evidence(id)
    return render("orders/evidence.html", told=told, how=HOW, exact=exact, words=entry_words)


@page(blueprint, "GET", "/orders/<id>/evidence.pdf")
def printed(id: str) -> ResponseReturnValue:
    told, unit = _evidence(id), room()
    title = f"Evidence of order {told.order.number}"
    under = f"{unit.settings.name}, as of {exact(unit.at)}"
    return pdf_of(paper.evidence(list(_rows(told)), title, under, paper_for(paper.PAPERS)), title, "evidence")


def _rows(told: OrderEvidence) -> Iterator[EvidenceRow]:
    order = told.order
    if order.channel:
        yield OrderFact("Channel", order.channel)
    if order.ordered_at:
        yield OrderFact("Ordered", exact(order.ordered_at))
    for deed in told.whole:
        yield OrderFact(deed.name, _by(deed))
    for row, thing in zip(told.rows, things_of(told.rows), strict=True):
        yield BoughtThing(thing, [f"{deed.name} {_by(deed)}" for deed in told.things[row.id]] or [standing(row)])
    yield OrderFact("How to check", HOW)
    count = f"{units(len(told.entries), 'entry', 'entries')} about it, from {told.first} to {told.last}."
    yield OrderFact("Ledger", f"{count} Hash before entry {told.first}: {told.before or 'none'}")
    for each in told.entries:
        yield PrintedEntry(each.seq, exact(each.at), each.actor, entry_words(each.event), each.hash)


def _by(deed: Deed) -> str:
    return f"{exact(deed.entry.at)} by {deed.entry.actor}, entry {deed.entry.seq}"


def exact(at: datetime) -> str:
    """A time to the second in the shop's zone, with its offset from UTC."""
    return at.astimezone(ZoneInfo(room().settings.zone)).isoformat(" ", "seconds")


def entry_words(event: events.Told) -> str:
    """The kind of an entry, of a scan what it says besides. What people wrote down is not told here."""
    return f"{event.kind}, {said(event)[0].words}" if isinstance(event, events.Scanned) else event.kind


@page(blueprint, "GET", "/orders/<id>/evidence.json")
def entries(id: str) -> ResponseReturnValue:
    """All entries from the first to the last one about the order, and the hash before them."""
    told = _evidence(id)
    head = {
        "order": told.order.number,
        "channel": told.order.channel,
        "how": HOW,
        "previous": told.before,
        "about": [each.seq for each in told.entries],
    }
    who = visitor().name
    let_go()
    return Response(
        _written(shop(), who, head, told.first, told.last),
        mimetype="application/json",
        headers={"Content-Disposition": f'attachment; filename="evidence-{told.first}-{told.last}.json"'},
    )


def _written(here: Shop, who: str, head: dict[str, Any], first: int, last: int) -> Iterator[str]:
    """The file piece by piece, an entry on each line: what lies between may be the account of years."""
    yield json.dumps(head, ensure_ascii=False)[:-1] + ', "entries": [\n'
    at = first
    while at <= last:
        with here.looking(who) as unit:
            part = ledger_views.segment(unit.connection, at, last, CHUNK)
        if not part:
            raise Missing(f"The ledger has no entry {at}.")
        at += len(part)
        lines = ",\n".join(json.dumps(each, ensure_ascii=False) for each in part)
        yield lines + (",\n" if at <= last else "\n")
    yield "]}\n"
