"""A slot's card is adopted, or printed again, from its page."""

from __future__ import annotations

from io import BytesIO

import pypdfium2
import pytest
import zxingcpp
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish

from labels.slot_code import card_text
from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.things import Alias
from scanflow.shop import Shop
from scanflow.storage.views.ledger import newest
from scanflow.workflow.stock import cards

pytestmark = SQLITE_ONLY


def texts_of(pdf: bytes) -> list[str]:
    """What the bars of all pages say."""
    pages = pypdfium2.PdfDocument(BytesIO(pdf))
    images = (page.render(scale=200 / 72).to_pil().convert("L") for page in pages)
    return [found.text for image in images for found in zxingcpp.read_barcodes(image)]


def test_a_damaged_card_comes_as_a_pdf(shop: Shop, client: FlaskClient) -> None:
    """The text of the card in hand gives a page with that one card, which scans, and an entry in the ledger."""
    furnish(shop, 1)
    response = client.post("/slots/D001/reprint", data={"text": card_text("D001")})
    assert (200, "application/pdf") == (response.status_code, response.mimetype)
    assert "attachment; filename=card-D001.pdf" == response.headers["Content-Disposition"]
    assert [card_text("D001")] == texts_of(response.data)
    with shop.looking() as unit:
        (entry,) = newest(unit.connection, about=["D001"], limit=1)
    assert events.CardReprinted(code="D001", lost=None) == entry.event


@pytest.mark.parametrize(
    ("code", "fields", "status", "words"),
    [
        ("D001", {"text": card_text("D002")}, 422, "This is not the text of card D001."),
        ("D001", {}, 422, "Read the text of the damaged card, or say why the card is lost."),
        ("D001", {"lost": "Gone"}, 409, "Report card D001 lost first."),
        ("D999", {"lost": "Gone"}, 404, ""),
    ],
)
def test_no_card_without_cause(
    shop: Shop, client: FlaskClient, code: str, fields: dict[str, str], status: int, words: str
) -> None:
    """The page says why it prints nothing."""
    furnish(shop, 1)
    response = client.post(f"/slots/{code}/reprint", data=fields)
    assert (status, True) == (response.status_code, words in response.text)


def test_a_lost_card(shop: Shop, client: FlaskClient) -> None:
    """It is offered while its item stands there, and not for an empty slot."""
    furnish(shop, 1)
    for code in ("D001", "D002"):
        client.post(f"/slots/{code}/lost")
    assert [True, False] == ["Print lost card" in client.get(f"/slots/{code}").text for code in ("D001", "D002")]
    response = client.post("/slots/D001/reprint", data={"lost": "Behind the rack, burnt"})
    assert [card_text("D001")] == texts_of(response.data)
    assert 409 == client.post("/slots/D002/reprint", data={"lost": "Gone"}).status_code


def test_the_owner_adopts_a_card(shop: Shop, app: Flask, client: FlaskClient) -> None:
    """Offered only in a room that takes such cards, refused to a helper; after two looks a search finds it."""
    furnish(shop, 1)
    assert "your old system" not in client.get("/slots/D001").text
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    assert "your old system" in client.get("/slots/D001").text
    helper = client_of(app, shop, Role.HELPER)
    assert 403 == helper.post("/slots/D001/adopt", data={"text": "BOX-17"}).status_code
    first = client.post("/slots/D001/adopt", data={"text": "BOX-17"})
    assert (422, True) == (first.status_code, 'name="looked" value="BOX-17"' in first.text)
    assert 303 == client.post("/slots/D001/adopt", data={"text": "BOX-17", "looked": "BOX-17"}).status_code
    assert 409 == client.post("/slots/D001/adopt", data={"text": "S001", "looked": "S001"}).status_code
    with shop.looking() as unit:
        assert (Alias("BOX17", "D001", "BOX-17"),) == unit.find(Alias)
    assert "/slots/D001" == client.get("/search?q=box-17").headers["Location"]


@pytest.mark.parametrize(("ticked", "check"), [({"check": "none"}, "none"), ({}, "mod_11_10")])
def test_the_setting(shop: Shop, client: FlaskClient, ticked: dict[str, str], check: str) -> None:
    """Beside its warning, off unless it is ticked."""
    fields = {"name": "Reclaimed parts", "zone": "UTC"}
    client.post("/settings", data=fields | {"check": "none"})
    client.post("/settings", data=fields | ticked)
    with shop.looking() as unit:
        assert check == unit.settings.check
    html = client.get("/settings").text
    assert (check == "none", True) == ('value="none" checked' in html, "proves no card in hand" in html)
