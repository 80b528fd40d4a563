"""The append-only account, for whoever checks it."""

from __future__ import annotations

from typing import Annotated

from flask import Blueprint, Response

from scanflow.storage import ledger
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.web.api import given, paging
from scanflow.web.api.contract import MANAGERS, answer_view, call
from scanflow.workflow.fields import integer

blueprint = Blueprint("api_ledger", __name__)


class LedgerQuery(paging.Limit):
    after: Annotated[int, integer(0, 2**53 - 1)] = 0


@call(blueprint, "GET", "/api/ledger", MANAGERS, {200: given.Ledger})
def listing(query: LedgerQuery) -> Response:
    """Lists entries after a `seq`, each with the hash that chains it to the one before."""

    def work(unit: SqlUnit) -> given.Ledger:
        rows = lists.ledger_page(unit.connection, query.after, query.limit)
        entries = [ledger.entry_of(row) for row in rows[: query.limit]]
        return {"entries": entries, "next": entries[-1]["seq"] if len(rows) > query.limit else None}

    return answer_view(work)
