"""What the shop does outside of its transactions."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish

from labels import draw
from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.shop import Shop

pytestmark = SQLITE_ONLY


def test_a_card_is_drawn_when_its_transaction_is_over(
    client: FlaskClient, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    """While a card is drawn again others write: the ledger grows from elsewhere before the file is there."""
    code = furnish(shop, 1).stays[0].code
    whole, wrote = draw.pdf, []

    def meanwhile(*pages: Any, **more: Any) -> None:
        with ThreadPoolExecutor(1) as elsewhere:
            written = elsewhere.submit(shop.act, "helper", lambda unit: unit.record(events.Changed()))
            wrote.append(written.result(timeout=5))
        whole(*pages, **more)

    monkeypatch.setattr(draw, "pdf", meanwhile)
    assert client.post(f"/slots/{code}/reprint", data={"text": card_text(code)}).data.startswith(b"%PDF")
    assert 1 == len(wrote)
