"""The slots and what stands in them."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.domain.derive import SlotState
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import given, paging, render
from scanflow.web.api.contract import STAFF, answer_view, call
from scanflow.workflow.fields import Letters, Maybe

blueprint = Blueprint("api_slots", __name__)


class SlotQuery(paging.PageQuery):
    section: Maybe[Letters] = None
    state: Maybe[SlotState] = None


@call(blueprint, "GET", "/api/slots", STAFF, {200: given.SlotPage})
def listing(query: SlotQuery) -> Response:
    """Lists slots by section and number."""

    def work(unit: SqlUnit) -> given.SlotPage:
        start = query.after(("", 0))
        rows = lists.slot_page(unit.connection, query.section, query.state, start, query.limit)
        rows, following = query.cut(rows, lambda row: (row.section, row.number))
        return {"slots": [render.slot(row) for row in rows], "next": following}

    return answer_view(work)
