"""The slots and what stands in them."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response

from scanflow.domain.derive import SlotState
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import paging, render
from scanflow.web.api.contract import STAFF, call, look

blueprint = Blueprint("api_slots", __name__)


@call(blueprint, "GET", "/api/slots", roles=STAFF, query="SlotQuery", answers={200: "Slots"})
def listing(query: dict[str, Any]) -> Response:
    """Lists slots by section and number."""

    def work(unit: SqlUnit) -> dict[str, Any]:
        start = paging.after(query.get("cursor"), ("", 0))
        state = SlotState(query["state"]) if "state" in query else None
        rows = lists.slot_page(unit.connection, query.get("section"), state, start, query["limit"])
        rows, following = paging.cut(rows, query["limit"], lambda row: (row.section, row.number))
        return {"slots": [render.slot(row) for row in rows], "next": following}

    return look(work)
