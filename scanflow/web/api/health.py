"""Whether the service runs."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.storage.database import trouble_of
from scanflow.web.api.contract import ANYONE, answer, call
from scanflow.web.visitors import shop

blueprint = Blueprint("health", __name__)


@call(blueprint, "GET", "/api/health", roles=ANYONE, answers={200: "Health", 503: "Health"})
def show() -> Response:
    """Says that the service and its database answer; 503 with the code and words of why nothing can be recorded."""
    database = shop().database
    with shop().looking() as unit:
        state = {"database": database.kind, "ledger": unit.seq}
    trouble = trouble_of(database)
    if trouble is None:
        return answer({"status": "ok", **state})
    return answer({"status": trouble.code, **state, "detail": trouble.detail}, 503)
