"""Counts: opened, looked into, closed; what they found, and how that is put right."""

from __future__ import annotations

from typing import Annotated
from zoneinfo import ZoneInfo

from flask import Blueprint, Response, request
from pydantic import Field

from labels.count_sheet import PAPERS
from scanflow.domain.counts.stocktake import Look, Stocktake
from scanflow.domain.things import Section
from scanflow.exchange import csv_out
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.vision import photographs
from scanflow.vision.readings import ImageError
from scanflow.web import count_rights, count_sheet
from scanflow.web.api import paging
from scanflow.web.api.contract import MANAGERS, STAFF, answer, answer_view, call, digest, do
from scanflow.web.api.counts import given
from scanflow.web.api.counts import render as render_stocktake
from scanflow.web.api.given import JPEG
from scanflow.web.api.photo import PhotoQuery
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.once import CallReply
from scanflow.workflow.counts import looks, resolving, stocktakes, taking_back
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.fields import Command, OneOf
from scanflow.workflow.ports import Invalid, Missing, Refused, must

blueprint = Blueprint("api_stocktakes", __name__)

CSV, PDF = csv_out.TYPE, "application/pdf"
_FORMATS = {"application/json": "json", CSV: "csv", PDF: "pdf"}


@call(blueprint, "POST", "/api/stocktakes", STAFF, {201: given.Stocktake})
def create(said: stocktakes.OpenCount) -> Response:
    """Begins a count of an area; it may rest for days, and several may count at once."""

    def work(unit: SqlUnit) -> CallReply:
        count = stocktakes.open_count(unit, said)
        return CallReply(201, render_stocktake.count(unit, count), f"/api/stocktakes/{count.id}")

    return do(work)


@call(blueprint, "GET", "/api/stocktakes", STAFF, {200: given.StocktakePage})
def listing(query: paging.PageQuery) -> Response:
    """Lists the counts in the order they were begun."""

    def work(unit: SqlUnit) -> given.StocktakePage:
        (start,) = query.after((0,))
        rows = lists.stocktake_page(unit.connection, start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        shown = [render_stocktake.count(unit, must(unit, Stocktake, row.id)) for row in rows]
        return {"stocktakes": shown, "next": following}

    return answer_view(work)


@call(blueprint, "GET", "/api/stocktakes/{stocktake}", STAFF, {200: given.Stocktake})
def show(stocktake: str) -> Response:
    """Shows how far a count is; what should stand where is not told."""
    return answer_view(lambda unit: render_stocktake.count(unit, must(unit, Stocktake, stocktake)))


@call(blueprint, "POST", "/api/stocktakes/{stocktake}/looks", STAFF, {200: given.Look}, ("closed",), once=False)
def add_look(stocktake: str, said: looks.LookTexts | looks.LookImage) -> Response:
    """Adds what one look into a bin or the tray saw; the same key gets the same answer, once."""
    image = said.image if isinstance(said, looks.LookImage) else None
    body = digest(said.sent("age_ms", "image"), image)  # a repeat waited longer, if the first did not come through
    with shop().looking() as unit:
        must(unit, Stocktake, stocktake)
        before = looks.earlier(unit, stocktake, said.key, body)
        if before is not None:
            return answer(render_stocktake.look(before, stocktakes.standings(unit)))
    shown = looks.typed(said, body) if isinstance(said, looks.LookTexts) else _pictured(said, body)

    def work(unit: SqlUnit) -> given.Look:
        looked = looks.look(unit, stocktake, shown)
        return render_stocktake.look(looked, stocktakes.standings(unit))

    return answer(shop().act(visitor().name, work))


def _pictured(said: looks.LookImage, body: str) -> looks.IncomingLook:
    try:
        return photographs.shown(shop().looking, shop().readers, said.image, body=body, **said.shown)
    except ImageError as error:
        raise Invalid("/image", "bad_image", str(error)) from error


@call(blueprint, "GET", "/api/stocktakes/{stocktake}/looks", STAFF, {200: given.Looks})
def all_looks(stocktake: str) -> Response:
    """Gives all looks of a count, with what was read in each."""

    def work(unit: SqlUnit) -> given.Looks:
        must(unit, Stocktake, stocktake)
        room = stocktakes.standings(unit)
        return {"looks": [render_stocktake.look(each, room) for each in unit.find(Look, stocktake=stocktake)]}

    return answer_view(work)


@call(blueprint, "GET", "/api/stocktakes/{stocktake}/looks/{key}/photo", STAFF, {200: JPEG, 304: None})
def photo(stocktake: str, key: str, query: PhotoQuery) -> Response:
    """Gives the photo of a look, as long as it is kept."""
    with shop().looking() as unit:
        row = lists.look_photo(unit.connection, stocktake, key, small=query.size == "small")
    if row is None:
        raise Missing("There is no such photo, or it is kept no longer.")
    response = Response(row.data, mimetype=JPEG)
    response.set_etag(f"{row.hash}-{query.size}")
    response.cache_control.private = True
    response.cache_control.no_cache = True
    response.make_conditional(request)
    return response


@call(blueprint, "POST", "/api/stocktakes/{stocktake}/looks/{key}/drop", STAFF, {200: given.Stocktake}, ("closed",))
def drop(stocktake: str, key: str) -> Response:
    """Takes out a look that is no good, with those from nearer that name it, and deletes its photo."""
    return do(lambda unit: CallReply(200, render_stocktake.count(unit, looks.drop(unit, stocktake, key))))


@call(blueprint, "POST", "/api/stocktakes/{stocktake}/forget", MANAGERS, {200: given.Stocktake})
def forget(stocktake: str) -> Response:
    """Deletes the photos of a count for good."""
    return do(lambda unit: CallReply(200, render_stocktake.count(unit, stocktakes.forget_photos(unit, stocktake))))


@call(blueprint, "POST", "/api/stocktakes/{stocktake}/cancel", STAFF, {200: given.Stocktake}, ("not_allowed",))
def cancel(stocktake: str) -> Response:
    """Ends a count without a report; what was resolved stays so."""
    return do(lambda unit: CallReply(200, render_stocktake.count(unit, stocktakes.cancel(unit, stocktake))))


@call(blueprint, "POST", "/api/stocktakes/{stocktake}/close", STAFF, {200: given.Report}, ("not_allowed",))
def close(stocktake: str) -> Response:
    """Ends a count and writes its report, which never changes."""

    def work(unit: SqlUnit) -> CallReply:
        return CallReply(200, render_stocktake.report(stocktake_report.close(unit, stocktake)))

    return do(work)


@call(blueprint, "GET", "/api/stocktakes/{stocktake}/findings", STAFF, {200: given.Findings})
def findings(stocktake: str) -> Response:
    """Lists what is amiss so far, and what was done about it."""

    def work(unit: SqlUnit) -> given.Findings:
        found = stocktakes.state(unit, stocktake).found
        return {"findings": [render_stocktake.finding(unit, each) for each in found]}

    return answer_view(work)


@call(
    blueprint,
    "POST",
    "/api/stocktakes/{stocktake}/findings/{finding}/resolve",
    STAFF,
    {200: given.Finding},
    (
        "resolved",
        "not_for_this",
        "look_closer",
        "changed_since",
        "not_allowed",
        "has_live_line",
        "still_in_box",
        "taken",
        "card_due",
        "retired",
        "bin_full",
        "not_lost",
        "not_shipped",
        "not_ordered",
        "held",
    ),
)
def resolve(stocktake: str, finding: str, said: resolving.Resolve) -> Response:
    """Puts a finding right in the way that is said; to withdraw a thing or to print a card again is not for helpers."""
    count_rights.admit(said.how)

    def work(unit: SqlUnit) -> CallReply:
        found = resolving.resolve(unit, stocktake, finding, said)
        return CallReply(200, render_stocktake.finding(unit, found))

    return do(work)


@call(
    blueprint,
    "POST",
    "/api/stocktakes/{stocktake}/findings/{finding}/undo",
    STAFF,
    {200: given.Finding},
    ("changed_since", "not_allowed"),
)
def undo(stocktake: str, finding: str) -> Response:
    """Takes back how a finding was resolved, as long as nothing has built on it; helpers free no line of its hold."""

    def work(unit: SqlUnit) -> CallReply:
        count_rights.admit_undo(unit, stocktake, finding)
        return CallReply(200, render_stocktake.finding(unit, taking_back.undo(unit, stocktake, finding)))

    return do(work)


class ReportQuery(Command):
    format: Annotated[str, OneOf(("json", "csv", "pdf"))] = Field(
        default="json",
        description="CSV: a row for each finding; what it is, how it was resolved, why, by whom, when.",
    )
    paper: Annotated[str, OneOf(PAPERS)] = Field(default="letter", description="Of the PDF.")


@call(
    blueprint, "GET", "/api/stocktakes/{stocktake}/report", STAFF, {200: given.Report}, ("not_closed",), also=(CSV, PDF)
)
def report(stocktake: str, query: ReportQuery) -> Response:
    """Gives the report of a count that is closed, as JSON, as a PDF, or its findings as CSV."""
    with shop().looking() as unit:
        count = must(unit, Stocktake, stocktake)
        name, zone = unit.settings.name, ZoneInfo(unit.settings.zone)
        papers = {each.code: each.colour for each in unit.find(Section)}
    if not count.report:
        raise Refused("not_closed", "The report is written when the count is closed.")
    wanted = query.format if "format" in request.args else _FORMATS[_accepted()]
    if wanted == "pdf":
        drawn = count_sheet.pdf(name, count, stocktake_report.written(count), papers, zone, query.paper)
        return Response(drawn, mimetype=PDF)
    written = render_stocktake.report(count)
    if wanted == "csv":
        return Response(render_stocktake.csv_of(written), mimetype=CSV)
    return answer(written)


def _accepted() -> str:
    """The media type that the caller asks for, JSON unless it is another of ours."""
    return request.accept_mimetypes.best_match(_FORMATS, "application/json")
