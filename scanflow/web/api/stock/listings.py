"""Offers of things: what is up, what is to be taken down, what a channel offers against what stands here."""

from __future__ import annotations

from typing import Annotated

from flask import Blueprint, Response
from pydantic import Field

from scanflow.domain.derive import ListingState
from scanflow.exchange import listings_csv
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import listings as listing_views
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import MANAGERS, STAFF, answer, answer_view, call, do
from scanflow.web.door.visitors import shop
from scanflow.web.once import CallReply
from scanflow.workflow.fields import Command, Maybe, Name
from scanflow.workflow.stock import cards, listings, offered

blueprint = Blueprint("api_listings", __name__)


class ListingQuery(paging.PageQuery):
    state: Maybe[ListingState] = None


@call(blueprint, "GET", "/api/listings", STAFF, {200: given.ListingPage})
def listing(query: ListingQuery) -> Response:
    """Lists the offers of things as they came."""

    def work(unit: SqlUnit) -> given.ListingPage:
        (start,) = query.after((0,))
        rows = listing_views.listing_page(unit.connection, query.state, start, unit.at, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        return {"listings": [render.listing(row) for row in rows], "next": following}

    return answer_view(work)


@call(blueprint, "POST", "/api/listings/{listing}/ended", STAFF, {200: given.Listing})
def ended(listing: str) -> Response:
    """Says that an offer was taken down, or has ended there. Answers the listing."""
    return do(lambda unit: CallReply(200, render.one_listing(unit, listings.end(unit, listing))))


@call(blueprint, "POST", "/api/stays/{stay}/listings", STAFF, {200: given.Listing})
def add(stay: str, said: listings.AddListing) -> Response:
    """Says that the thing of a stay is offered under this id too. Answers the listing."""
    return do(lambda unit: CallReply(200, render.one_listing(unit, listings.add(unit, stay, said))))


class ChannelFile(Command):
    file: Annotated[bytes, Field(strict=True, description="CSV (RFC 4180), with a header: what the channel offers.")]
    channel: Name


@call(blueprint, "POST", "/api/listings/check", MANAGERS, {200: given.Compared}, once=False)
def check(said: ChannelFile) -> Response:
    """Compares what a channel offers with what stands here, the gravest first. Nothing is changed."""
    with shop().looking() as unit:
        rows = listings_csv.read(said.file, cards.widths(unit))
        found = offered.check(unit, said.channel, rows)
    return answer({"channel": said.channel, "rows": len(rows), "differs": [render.difference(each) for each in found]})
