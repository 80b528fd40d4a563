"""The append-only account, for whoever checks it."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response

from scanflow.storage import ledger
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api.contract import MANAGERS, call, look

blueprint = Blueprint("api_ledger", __name__)


@call(blueprint, "GET", "/api/ledger", roles=MANAGERS, query="LedgerQuery", answers={200: "Ledger"})
def listing(query: dict[str, Any]) -> Response:
    """Lists entries after a `seq`, each with the hash that chains it to the one before."""

    def work(unit: SqlUnit) -> dict[str, Any]:
        rows = lists.ledger_page(unit.connection, query["after"], query["limit"])
        entries = [ledger.entry_of(row) for row in rows[: query["limit"]]]
        return {"entries": entries, "next": entries[-1]["seq"] if len(rows) > query["limit"] else None}

    return look(work)
