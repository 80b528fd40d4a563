"""Whether the service runs."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.web.api.contract import ANYONE, call, look
from scanflow.web.visitors import shop

blueprint = Blueprint("health", __name__)


@call(blueprint, "GET", "/api/health", roles=ANYONE, answers={200: "Health"})
def show() -> Response:
    """Says that the service and its database answer."""
    return look(lambda unit: {"status": "ok", "database": shop().database.kind, "ledger": unit.seq})
