"""What is doubted of a thing, and how that ends."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response

from scanflow.domain.life import Settled
from scanflow.domain.things import Stay
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import render
from scanflow.web.api.contract import MANAGERS, STAFF, call, do, look
from scanflow.web.once import Reply
from scanflow.workflow.ports import must
from scanflow.workflow.stock import doubts

blueprint = Blueprint("api_doubts", __name__)


@call(blueprint, "GET", "/api/stays/{stay}/doubts", roles=STAFF, answers={200: "Doubts"})
def listing(stay: str) -> Response:
    """Lists what is doubted of the thing of a stay and not settled, the oldest first."""

    def work(unit: SqlUnit) -> dict[str, Any]:
        item = must(unit, Stay, stay).item
        return {"doubts": [render.doubt(each) for each in doubts.open_doubts(unit, item)]}

    return look(work)


@call(
    blueprint,
    "POST",
    "/api/doubts/{doubt}/settle",
    roles=MANAGERS,
    body="DoubtSettlement",
    answers={200: "SettledDoubt"},
    conflicts=("settled", "not_in_stock"),
)
def settle(doubt: str, body: dict[str, Any]) -> Response:
    """Ends a doubt: its card was read beside its picture, or what was wrong is put right."""

    def work(unit: SqlUnit) -> Reply:
        how, note = Settled(body["how"]), body.get("note", "")
        return Reply(200, render.settled(doubts.settle(unit, doubt, how, text=body.get("text"), note=note)))

    return do(work)
