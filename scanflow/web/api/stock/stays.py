"""Things are put away, described, moved, withdrawn."""

from __future__ import annotations

from flask import Blueprint, Response, request

from scanflow.domain.things import Stay
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.vision import photographs
from scanflow.web.api import given, render
from scanflow.web.api.contract import MANAGERS, STAFF, answer, answer_view, call, do
from scanflow.web.api.given import JPEG
from scanflow.web.api.photo import PhotoQuery
from scanflow.web.door.visitors import shop, visitor
from scanflow.web.once import CallReply
from scanflow.workflow import stock
from scanflow.workflow.orders import selling
from scanflow.workflow.ports import Missing, must
from scanflow.workflow.stock import photos, reserving

blueprint = Blueprint("api_stays", __name__)


@call(blueprint, "POST", "/api/stays", STAFF, {201: given.Stay}, ("taken", "card_due", "retired", "section_full"))
def create(said: stock.PutAway) -> Response:
    """Puts a thing away: by the card in hand, in a free slot, or in a section's lowest free slot."""

    def work(unit: SqlUnit) -> CallReply:
        stay = stock.put_away(unit, said)
        return CallReply(201, render.stay(unit, stay), f"/api/stays/{stay.id}")

    return do(work)


@call(blueprint, "GET", "/api/stays/{stay}", STAFF, {200: given.Stay})
def show(stay: str) -> Response:
    """Shows one item's time in one slot."""
    return answer_view(lambda unit: render.stay(unit, must(unit, Stay, stay)))


@call(blueprint, "PATCH", "/api/stays/{stay}", STAFF, {200: given.Stay})
def change(stay: str, said: stock.ChangeItem) -> Response:
    """Gives the item of a stay new words."""
    return answer(shop().act(visitor().name, lambda unit: render.stay(unit, stock.change_item(unit, stay, said))))


@call(blueprint, "PUT", "/api/stays/{stay}/photo", STAFF, {204: None})
def put_photo(stay: str, image: bytes) -> Response:
    """Lets the item of a stay have this picture, which is kept upright, at most 1600 pixels long, without metadata."""
    with shop().looking() as unit:
        must(unit, Stay, stay)
    photo = photographs.photo(shop().readers, image)
    shop().act(visitor().name, lambda unit: photos.keep(unit, stay, photo))
    return Response(status=204)


@call(blueprint, "GET", "/api/stays/{stay}/photo", STAFF, {200: JPEG, 304: None})
def show_photo(stay: str, query: PhotoQuery) -> Response:
    """Gives the picture of a stay's item."""
    with shop().looking() as unit:
        must(unit, Stay, stay)
        row = lists.photo(unit.connection, stay, small=query.size == "small")
    if row is None:
        raise Missing("It has no picture yet.")
    response = Response(row.data, mimetype=JPEG)
    response.set_etag(f"{row.hash}-{query.size}")
    expected = query.hash == row.hash
    response.headers["Cache-Control"] = f"private, {'max-age=31536000, immutable' if expected else 'no-cache'}"
    response.make_conditional(request)
    return response


@call(blueprint, "POST", "/api/stays/{stay}/withdraw", MANAGERS, {200: given.Stay}, ("has_live_line", "not_allowed"))
def withdraw(stay: str, said: stock.Withdraw) -> Response:
    """Takes a thing out of stock for good."""
    return do(lambda unit: CallReply(200, render.stay(unit, stock.withdraw(unit, stay, said))))


@call(
    blueprint,
    "POST",
    "/api/stays/{stay}/sell",
    MANAGERS,
    {201: given.Order},
    ("not_in_stock", "has_live_line", "taken"),
)
def sell(stay: str, said: selling.Sell) -> Response:
    """Makes an order for a thing that was sold here, by phone or by mail. Answers the order."""

    def work(unit: SqlUnit) -> CallReply:
        order = selling.sell(unit, stay, said)
        return CallReply(201, render.order(unit, order), f"/api/orders/{order.id}")

    return do(work)


@call(blueprint, "POST", "/api/stays/{stay}/reserve", MANAGERS, {200: given.Stay}, ("not_in_stock", "has_live_line"))
def reserve(stay: str, said: reserving.Reserve) -> Response:
    """Keeps a thing for somebody until a time; an order on it is held meanwhile."""
    return do(lambda unit: CallReply(200, render.stay(unit, reserving.reserve(unit, stay, said))))


@call(
    blueprint,
    "POST",
    "/api/stays/{stay}/move",
    STAFF,
    {200: given.Stay},
    ("taken", "card_due", "retired", "still_in_box", "not_allowed"),
)
def move(stay: str, said: stock.Move) -> Response:
    """Moves a thing to a free slot; a line that wants it follows. Answers the new stay."""
    return do(lambda unit: _new(unit, stock.move(unit, stay, said)))


@call(
    blueprint,
    "POST",
    "/api/stays/{stay}/exchange",
    STAFF,
    {200: given.Stay},
    ("still_in_box", "retired", "not_allowed"),
)
def exchange(stay: str, said: stock.Exchange) -> Response:
    """Two cards were swapped: each thing stands in the other's slot. Answers the new stay of this one."""
    return do(lambda unit: _new(unit, stock.exchange(unit, stay, said.other)))


def _new(unit: SqlUnit, stay: Stay) -> CallReply:
    return CallReply(200, render.stay(unit, stay), f"/api/stays/{stay.id}")
