"""Where something is amiss with the data each page says so, nothing is recorded, and the owner can say to go on."""

from __future__ import annotations

from pathlib import Path

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from damaged_data import damage
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from memory import NOON

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.trust.note import for_file
from scanflow.vision.workers import Readers
from scanflow.web import create_app


@pytest.fixture
def helper(app: Flask, shop: Shop) -> FlaskClient:
    return client_of(app, shop, Role.HELPER)


@pytest.fixture
def amiss(shop: Shop, client: FlaskClient, helper: FlaskClient) -> None:
    """A title that was changed behind the shop's back, and found."""
    furnish(shop, 4)
    damage(shop.database, "UPDATE items SET title = 'Bell' WHERE n = 2")
    shop.database.verify(NOON, whole=True)


def test_when_all_was_verified(tmp_path: Path, readers: Readers) -> None:
    """The day and the hour, as everywhere on pages."""
    file = tmp_path / "shop.db"
    shop = Shop(Database(f"sqlite:///{file}", for_file(file)), readers, lambda: NOON)
    shop.database.verify(NOON, whole=True)
    assert "All data were verified today" in client_of(create_app(shop), shop, Role.OWNER).get("/amiss").text
    shop.database.close()


@SQLITE_ONLY
def test_all_is_well(client: FlaskClient) -> None:
    """No page speaks of it, and the page itself says that scans are recorded."""
    assert "other words" not in client.get("/").text
    assert "Everything is recorded." in client.get("/amiss").text
    assert 303 == client.post("/amiss", data={"reason": "None"}).status_code


def test_pages_go_on_and_say_it(amiss: None, client: FlaskClient, helper: FlaskClient) -> None:
    """Each page has the band, short, for helpers too; who may not settle it is sent to the owner."""
    for address in ("/", "/orders", "/slots/D001", "/table"):
        for who in (client, helper):
            answer = who.get(address)
            assert (200, True) == (answer.status_code, "Nothing is recorded: something is amiss" in answer.text)
            assert (who is client) == ('href="/amiss"' in answer.text) != ("Tell the owner." in answer.text)
            assert "scanflow restore" not in answer.text
    assert (403, 403) == (helper.get("/amiss").status_code, helper.post("/amiss").status_code)


def test_nothing_is_recorded(amiss: None, client: FlaskClient, calls: Calls) -> None:
    """A scan has 503 with code and words, the health the same; the ledger can be read."""
    before = calls.get("/api/ledger?limit=500")["entries"]
    scan = client.post("/api/scans", json={"station": "tray", "key": "one", "text": "D0016"})
    assert (503, "amiss") == (scan.status_code, scan.get_json()["code"])
    assert "other words than the ledger" in scan.get_json()["detail"] and scan.headers["Retry-After"]
    health = client.get("/api/health")
    assert (503, "amiss", len(before)) == (
        health.status_code,
        *(health.get_json()[name] for name in ("status", "ledger")),
    )
    assert before == calls.get("/api/ledger?limit=500")["entries"]
    form = client.post("/put-away", data={"title": "Bell", "section": "D"})
    assert (503, True) == (form.status_code, "other words than the ledger" in form.text)


def test_the_owner_says_to_go_on(amiss: None, client: FlaskClient, calls: Calls) -> None:
    """Not without a reason; with it the ledger has an entry, pages are silent, and scans are recorded."""
    assert "other words than the ledger" in client.get("/amiss").text
    assert 422 == client.post("/amiss", data={"reason": " "}).status_code
    assert 303 == client.post("/amiss", data={"reason": "Mended by hand"}).status_code
    entries = calls.get("/api/ledger?limit=500")["entries"]
    assert ["Mended by hand"] == [each["data"]["reason"] for each in entries if each["kind"] == "accepted amiss"]
    assert "Nothing is recorded" not in client.get("/").text
    assert 200 == client.post("/api/scans", json={"station": "tray", "key": "one", "text": "D0016"}).status_code
    assert 200 == client.get("/api/health").status_code
