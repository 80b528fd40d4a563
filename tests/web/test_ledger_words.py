"""What a line of the ledger says."""

from __future__ import annotations

from typing import Any

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from sqlalchemy import insert

from scanflow.domain import events
from scanflow.shop import Shop
from scanflow.storage import tables
from scanflow.web.ledger_words import said

SCAN: dict[str, Any] = {
    **{"station": "bin", "spot": "r1", "key": "k1", "text": ["D0145"], "via": "wedge", "client_at": None},
    **{"take_out": False, "verdict": "refused", "reason": "not_ordered", "changed": False, "code": None},
    **{"order_number": None, "line": None, "line_state": None, "parcel": None, "parcel_state": None, "released": []},
}


def words(event: events.Told) -> str:
    return "; ".join(" ".join(filter(None, part)) for part in said(event))


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({}, "refused at the bin, nobody ordered it: D0145; by a scanner"),
        (
            {"verdict": "accepted", "reason": None, "code": "D014", "order_number": "7", "line_state": "picked"},
            "accepted at the bin: D014 of order 7, picked; by a scanner",
        ),
        (
            {"verdict": "accepted", "reason": None, "code": "D014", "released": ["D014", "D020"]},
            "accepted at the bin: D014; cards to go back to the tray: D014, D020; by a scanner",
        ),
    ],
)
def test_a_scan_is_a_sentence(changed: dict[str, Any], sentence: str) -> None:
    """Its verdict, where it was, the card or what was read, the order, and what its closing released."""
    assert sentence == words(events.read(events.Scanned.kind, SCAN | changed))


@pytest.mark.parametrize(
    ("event", "sentence"),
    [
        (events.CardReprinted(code="D014", lost=None), "code D014"),
        (
            events.FindingResolved(stocktake="c1", finding="twin-D014", how="put_right", reason="", sure=True, after=9),
            "stocktake c1; finding twin-D014; how put_right; after 9; sure yes",
        ),
        (
            events.OrderChanged(
                order="o1", number="7", lines=({"line": "l1", "reference": "D014-07T", "stay": None, "hold": None},)
            ),
            "order o1; number 7; lines D014-07T",
        ),
        (
            events.StocktakeClosed(stocktake="c1", looked=2, findings={"missing": 1}),
            "stocktake c1; looked 2; findings missing 1",
        ),
        (events.CardReprinted(code="D014", lost="Under the rack"), "code D014; lost Under the rack"),
        (
            events.OrderChanged(order="0123456789abcdef", number="4000123412341234", lines=()),
            "number 4000123412341234",
        ),
        (events.PhotoKept(code="D014", stay="0123456789abcdef", photo="7a" * 32), "code D014"),
        (events.LineShort(line="0123456789abcdef", note="Not beside it either"), "note Not beside it either"),
        (events.Unknown("sold by lot", {"code": "D014", "lots": [1, 2]}), "code D014; lots 1, 2"),
    ],
)
def test_anything_else_is_told_name_by_name(event: events.Told, sentence: str) -> None:
    """All that says something, with the names of the lines' references, of a kind that nobody knows too."""
    assert sentence == words(event)


@SQLITE_ONLY
def test_pages_show_what_a_later_version_told(client: FlaskClient, shop: Shop) -> None:
    """An entry of a kind that this version does not know stands on the ledger's page, by its kind and its words."""
    with shop.looking() as unit:
        later = {"seq": unit.seq + 1, "at": unit.at.isoformat(), "kind": "sold by lot", "actor": "owner", "hash": "0"}
    with shop.database.engine.begin() as connection:
        connection.execute(insert(tables.ledger), later | {"data": '{"code":"D014","lots":[1,2]}'})
    page = client.get("/ledger")
    assert 200 == page.status_code
    assert "<strong>sold by lot</strong>" in page.text
    assert "1, 2" in page.text
