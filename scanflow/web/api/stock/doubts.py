"""What is doubted of a thing, and how that ends."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Stay
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import given, render
from scanflow.web.api.contract import MANAGERS, STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow.ports import must
from scanflow.workflow.stock import doubts

blueprint = Blueprint("api_doubts", __name__)


@call(blueprint, "GET", "/api/stays/{stay}/doubts", STAFF, {200: given.Doubts})
def listing(stay: str) -> Response:
    """Lists what is doubted of the thing of a stay and not settled, the oldest first."""

    def work(unit: SqlUnit) -> given.Doubts:
        item = must(unit, Stay, stay).item
        return {"doubts": [render.doubt(each) for each in doubts.open_doubts(unit, item)]}

    return answer_view(work)


@call(blueprint, "POST", "/api/doubts/{doubt}/settle", MANAGERS, {200: given.SettledDoubt}, ("settled", "not_in_stock"))
def settle(doubt: str, said: doubts.SettleDoubt) -> Response:
    """Ends a doubt: its card was read beside its picture, or what was wrong is put right."""
    return do(lambda unit: CallReply(200, render.settled(doubts.settle(unit, doubt, said))))
