"""What the shop does outside of its transactions."""

from __future__ import annotations

import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish

from labels import draw
from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.shop import Shop
from scanflow.storage import access
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url


@SQLITE_ONLY
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


def test_a_command_can_be_typed_as_it_is_told(tmp_path: Path) -> None:
    """It is one whole line for a shell in any folder, and works in this very shop, whatever its folder is called."""
    shop = Shop(Database(sqlite_url(tmp_path / "Ann's shop")))
    line = shop.command("token", "the till")
    done = subprocess.run(line, shell=True, cwd=tmp_path, capture_output=True, text=True, timeout=60, check=True)
    with shop.looking() as unit:
        names = [row.name for row in access.named(unit.connection, unit.at)]
    shop.close()
    assert (1, ["the till"]) == (len(done.stdout.splitlines()), names)
