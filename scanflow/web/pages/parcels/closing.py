"""The end of the day: what a basket, a table or a shelf still holds, each with the station whose scan ends it."""

from __future__ import annotations

from itertools import groupby

from flask import Blueprint
from flask.typing import ResponseReturnValue

from scanflow.storage.views import orders as order_views
from scanflow.storage.views import parcels as parcel_views
from scanflow.storage.views import where as where_views
from scanflow.web.pages.declare import STAFF, page
from scanflow.web.pages.rendering import render
from scanflow.web.pages.room_view import ask, room
from scanflow.workflow.stock import sightings

blueprint = Blueprint("closing_page", __name__)


@page(blueprint, "GET", "/closing-up", roles=STAFF, live=True)
def show() -> ResponseReturnValue:
    unit = room()
    picked = ask(order_views.picked_lines)
    boxes = ask(parcel_views.open_parcels)
    numbers = ask(order_views.numbers, [name for box in boxes for name in box.orders.split()])
    leaving = ask(parcel_views.waiting_count, sightings.gone_before(unit)) if unit.settings.hand_overs else 0
    back = ask(where_views.duties)
    baskets = [(*key, list(lines)) for key, lines in groupby(picked, lambda line: (line.basket, line.number))]
    return render(
        "parcels/closing.html",
        baskets=baskets,
        boxes=boxes,
        numbers={row.id: row.number for row in numbers},
        leaving=leaving,
        back=back,
    )
