"""Boxes on the packing table."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Parcel
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import given, render
from scanflow.web.api.contract import STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow import parcels
from scanflow.workflow.ports import must

blueprint = Blueprint("api_parcels", __name__)


@call(blueprint, "POST", "/api/parcels", STAFF, {201: given.Parcel}, ("parcel_open", "nothing_to_pack"))
def create(said: parcels.OpenParcel) -> Response:
    """Opens the box of an order, or of several joined, at a table; one that was set aside is taken up again."""

    def work(unit: SqlUnit) -> CallReply:
        parcel = parcels.open_parcel(unit, said)
        return CallReply(201, render.parcel(unit, parcel), f"/api/parcels/{parcel.id}")

    return do(work)


@call(blueprint, "GET", "/api/parcels/{parcel}", STAFF, {200: given.Parcel})
def show(parcel: str) -> Response:
    """Shows a parcel with all lines of its orders."""
    return answer_view(lambda unit: render.parcel(unit, must(unit, Parcel, parcel)))


@call(
    blueprint,
    "POST",
    "/api/parcels/{parcel}/close",
    STAFF,
    {200: given.Parcel},
    ("still_in_box", "nothing_packed", "lines_missing", "not_allowed"),
)
def close(parcel: str, said: parcels.Close) -> Response:
    """Releases what was packed; with `partial` although more is wanted."""

    def work(unit: SqlUnit) -> CallReply:
        parcels.close_parcel(unit, parcel, partial=said.partial)
        return CallReply(200, render.parcel(unit, must(unit, Parcel, parcel)))

    return do(work)


@call(blueprint, "POST", "/api/parcels/{parcel}/set-aside", STAFF, {200: given.Parcel}, ("not_allowed",))
def set_aside(parcel: str) -> Response:
    """Takes an open parcel off its table; an empty one is dropped."""
    return do(lambda unit: CallReply(200, render.parcel(unit, parcels.set_aside(unit, parcel))))


@call(
    blueprint,
    "POST",
    "/api/parcels/{parcel}/reopen",
    STAFF,
    {200: given.Parcel},
    ("handed_over", "parcel_open", "slot_reused", "not_allowed"),
)
def reopen(parcel: str) -> Response:
    """Takes back a closing, until the parcel has left and while no slot of it has a newer stay."""
    return do(lambda unit: CallReply(200, render.parcel(unit, parcels.reopen(unit, parcel))))
