"""Walks through the room."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.things import Round
from scanflow.storage.unit import SqlUnit
from scanflow.web.api import given, render
from scanflow.web.api.contract import STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow.picking import rounds
from scanflow.workflow.ports import must

blueprint = Blueprint("api_rounds", __name__)


@call(blueprint, "POST", "/api/rounds", STAFF, {201: given.Round})
def create(said: rounds.OpenRound) -> Response:
    """Plans a round for these orders, or for all that wait; stops stand in the order to walk."""

    def work(unit: SqlUnit) -> CallReply:
        opened, left_out = rounds.open_round(unit, said)
        return CallReply(201, render.round_(unit, opened, left_out), f"/api/rounds/{opened.id}")

    return do(work)


@call(blueprint, "GET", "/api/rounds/{round}", STAFF, {200: given.Round})
def show(round: str) -> Response:
    """Shows a round with the state of each line on it."""
    return answer_view(lambda unit: render.round_(unit, must(unit, Round, round)))


@call(blueprint, "POST", "/api/rounds/{round}/close", STAFF, {200: given.Round}, ("not_allowed",))
def close(round: str) -> Response:
    """Ends a round; what was not picked waits for another."""
    return do(lambda unit: CallReply(200, render.round_(unit, rounds.close_round(unit, round))))
