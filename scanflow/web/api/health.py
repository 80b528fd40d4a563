"""Whether the service runs."""

from __future__ import annotations

from flask import Blueprint, Response

from scanflow.storage.database import trouble_of
from scanflow.storage.writing.unwritable import Unwritable
from scanflow.web.api import given
from scanflow.web.api.contract import ANYONE, answer, call
from scanflow.web.door.visitors import shop
from scanflow.web.problem import RETRY_AFTER

blueprint = Blueprint("health", __name__)


@call(blueprint, "GET", "/api/health", ANYONE, {200: given.Health, 503: given.Ill})
def show() -> Response:
    """Says that the service answers and its database takes writes; 503 with the code of what prevents them."""
    database = shop().database
    database.probe()
    trouble = trouble_of(database)
    try:
        with shop().looking() as unit:
            seq = unit.seq
    except Unwritable as error:
        seq, trouble = None, trouble or error
    told = {"database": database.kind, "ledger": seq}
    if trouble is None:
        return answer({"status": "ok", **told})
    response = answer({"status": trouble.code, **told, "detail": trouble.detail}, 503)
    response.headers["Retry-After"] = RETRY_AFTER
    return response
