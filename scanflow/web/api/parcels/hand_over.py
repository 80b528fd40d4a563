"""Closed parcels leave the house."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Parcel
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import parcels as parcel_views
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import STAFF, answer, answer_view, call
from scanflow.web.door.visitors import shop, visitor
from scanflow.workflow.answers import Answer
from scanflow.workflow.parcels import hand_over
from scanflow.workflow.ports import must
from scanflow.workflow.stock import sightings

blueprint = Blueprint("api_hand_over", __name__)


@call(blueprint, "GET", "/api/hand-over", STAFF, {200: given.ParcelPage})
def listing(query: paging.PageQuery) -> Response:
    """Lists closed parcels that have not left, those that were opened first at the top."""

    def work(unit: SqlUnit) -> given.ParcelPage:
        (start,) = query.after((0,))
        rows = parcel_views.waiting_page(unit.connection, sightings.gone_before(unit), start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        return {"parcels": [render.parcel(unit, must(unit, Parcel, row.id)) for row in rows], "next": following}

    return answer_view(work)


@call(blueprint, "POST", "/api/hand-over", STAFF, {200: Answer}, once=False)
def create(said: hand_over.HandOver) -> Response:
    """Lets the parcel go that bears this label or slip; the same key gets the same answer, once."""
    return answer(shop().act(visitor().name, lambda unit: hand_over.hand_over(unit, said)))
