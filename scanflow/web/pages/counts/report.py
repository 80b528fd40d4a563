"""The report of a count, as it was written when the count was closed."""

from __future__ import annotations

from flask import Blueprint, redirect, url_for
from flask.typing import ResponseReturnValue

from scanflow.domain import words
from scanflow.domain.counts.findings import Finding
from scanflow.domain.counts.stocktake import Look, Resolved, Stocktake
from scanflow.web import count_words
from scanflow.web.count_words import walk
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.rendering import do, render
from scanflow.web.pages.room_view import room
from scanflow.workflow.counts import stocktakes
from scanflow.workflow.counts.report import whole, written
from scanflow.workflow.ports import must

blueprint = Blueprint("count_report", __name__)


@page(blueprint, "GET", "/counts/<id>/report", roles=STAFF)
def show(id: str, said: str = "", status: int = 200) -> ResponseReturnValue:
    unit = room()
    count = must(unit, Stocktake, id)
    since = len(unit.find(Resolved, stocktake=id))
    photos = len({each.photo for each in unit.find(Look, stocktake=id) if each.photo})
    if not count.report:
        return redirect(url_for("count_page.show", id=id), 303)
    report = written(count)
    found = [Finding.from_dict(each) for each in report["findings"]]
    told = whole(report)
    return render(
        "counts/report.html",
        count=count,
        words=count_words.subject(count),
        report=report,
        whole=told,
        agree=count_words.agree(told),
        agreed=count_words.section_agreed,
        between={each["section"]: count_words.section_between(each, told) for each in report["sections"]},
        rest=count_words.rest(told),
        ranges=count_words.ranges,
        found=[(each, words.said(each), report["resolved"].get(each.id)) for each in sorted(found, key=walk)],
        resolved=count_words.RESOLVED,
        left=len(found) - since,
        photos=photos,
        said=said,
    ), status


@page(blueprint, "POST", "/counts/<id>/forget")
def forget(id: str) -> ResponseReturnValue:
    """Delete the photos of a count for good."""
    return do(show, lambda unit: stocktakes.forget_photos(unit, id), id=id)
