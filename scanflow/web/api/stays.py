"""Things are put away, described, moved, withdrawn."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response

from scanflow.domain.things import Stay
from scanflow.shop import Reply
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import render
from scanflow.web.api.contract import MANAGERS, STAFF, answer, call, do, look
from scanflow.web.visitors import shop, visitor
from scanflow.workflow import stock
from scanflow.workflow.ports import must

blueprint = Blueprint("api_stays", __name__)


@call(
    blueprint,
    "POST",
    "/api/stays",
    roles=STAFF,
    body="NewStay",
    answers={201: "Stay"},
    conflicts=("taken", "card_due", "retired", "section_full"),
)
def create(body: dict[str, Any]) -> Response:
    """Puts a thing away: by the card in hand, in a free slot, or in a section's lowest free slot."""

    def work(unit: SqlUnit) -> Reply:
        stay = stock.put_away(unit, **body)
        return Reply(201, render.stay(unit, stay), f"/api/stays/{stay.id}")

    return do(work)


@call(blueprint, "GET", "/api/stays/{stay}", roles=STAFF, answers={200: "Stay"})
def show(stay: str) -> Response:
    """Shows one item's time in one slot."""
    return look(lambda unit: render.stay(unit, must(unit, Stay, stay)))


@call(blueprint, "PATCH", "/api/stays/{stay}", roles=STAFF, body="ItemChange", answers={200: "Stay"})
def change(stay: str, body: dict[str, Any]) -> Response:
    """Gives the item of a stay new words."""

    def work(unit: SqlUnit) -> dict[str, Any]:
        changed = stock.change_item(unit, stay, body.get("title"), body.get("listing"), body.get("notes"))
        return render.stay(unit, changed)

    return answer(shop().act(visitor().name, work))


@call(
    blueprint,
    "POST",
    "/api/stays/{stay}/withdraw",
    roles=MANAGERS,
    body="Withdrawal",
    answers={200: "Stay"},
    conflicts=("has_live_line", "not_allowed"),
)
def withdraw(stay: str, body: dict[str, Any]) -> Response:
    """Takes a thing out of stock for good."""
    return do(lambda unit: Reply(200, render.stay(unit, stock.withdraw(unit, stay, body["reason"]))))


@call(
    blueprint,
    "POST",
    "/api/stays/{stay}/move",
    roles=STAFF,
    body="Move",
    answers={200: "Stay"},
    conflicts=("taken", "card_due", "retired", "still_in_box", "not_allowed"),
)
def move(stay: str, body: dict[str, Any]) -> Response:
    """Moves a thing to a free slot; a line that wants it follows. Answers the new stay."""

    def work(unit: SqlUnit) -> Reply:
        new = stock.move(unit, stay, body["to"])
        return Reply(200, render.stay(unit, new), f"/api/stays/{new.id}")

    return do(work)
