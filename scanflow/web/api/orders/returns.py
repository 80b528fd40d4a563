"""What comes back: expected, arrived, checked."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.life import ReturnState
from scanflow.domain.things import Return
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import returns as return_views
from scanflow.web import return_rights
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import STAFF, answer_view, call, do
from scanflow.web.once import CallReply
from scanflow.workflow.fields import Maybe
from scanflow.workflow.orders import returns
from scanflow.workflow.ports import must

blueprint = Blueprint("api_returns", __name__)


@call(blueprint, "POST", "/api/returns", STAFF, {201: given.Return}, ("not_left", "already_expected", "not_allowed"))
def create(said: returns.Expect) -> Response:
    """Expects things of an order to come back; without an order it is a parcel that nobody expects."""

    def work(unit: SqlUnit) -> CallReply:
        back = returns.expect(unit, said)
        return CallReply(201, render.returned(unit, back), f"/api/returns/{back.id}")

    return do(work)


class ReturnQuery(paging.PageQuery):
    state: Maybe[ReturnState] = None


@call(blueprint, "GET", "/api/returns", STAFF, {200: given.ReturnPage})
def listing(query: ReturnQuery) -> Response:
    """Lists returns in the order in which they were opened."""

    def work(unit: SqlUnit) -> given.ReturnPage:
        (start,) = query.after((0,))
        rows = return_views.return_page(unit.connection, query.state, start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.n,))
        return {"returns": [render.returned(unit, must(unit, Return, row.id)) for row in rows], "next": following}

    return answer_view(work)


@call(blueprint, "GET", "/api/returns/{id}", STAFF, {200: given.Return})
def show(id: str) -> Response:
    """Shows one return."""
    return answer_view(lambda unit: render.returned(unit, must(unit, Return, id)))


@call(blueprint, "POST", "/api/returns/{id}/arrived", STAFF, {200: given.Return}, ("not_allowed",))
def arrived(id: str) -> Response:
    """Says that a return is here."""
    return do(lambda unit: CallReply(200, render.returned(unit, returns.arrive(unit, id))))


@call(
    blueprint,
    "POST",
    "/api/returns/{id}/check",
    STAFF,
    {200: given.Return},
    ("checked", "not_left", "already_expected", "taken", "not_allowed"),
)
def check(id: str, said: returns.CheckReturn) -> Response:
    """Says how one thing of a return is; only owners and programs scrap one."""

    def work(unit: SqlUnit) -> CallReply:
        return_rights.admit(unit, id, said)
        return CallReply(200, render.returned(unit, returns.check(unit, id, said)))

    return do(work)
