"""A file of what stands here is looked at, loaded, and taken back."""

from __future__ import annotations

import io
import re

from calls import Calls
from flask.testing import FlaskClient
from form_fields import fields_of
from page_text import figures, text_of
from werkzeug.test import TestResponse

from labels.slot_code import card_text
from scanflow.domain.things import Slot, Stay
from scanflow.exchange import stock_csv
from scanflow.shop import Shop
from scanflow.workflow import stock
from scanflow.workflow.stock import loading

FILE = "number,title,since\r\nD001,Crank,\r\nD002,Saddle,2026-02-03\r\nD099,Bell,\r\n"


def look(client: FlaskClient, text: str = FILE) -> TestResponse:
    return client.post("/stock/load", data={"file": (io.BytesIO(text.encode()), "stock.csv")})


def load(client: FlaskClient, text: str = FILE) -> TestResponse:
    """Look at the file, then press the button."""
    return client.post("/stock/load", data=fields_of(look(client, text).text) | {"step": "apply"})


def take_back(client: FlaskClient) -> TestResponse:
    """Press the first button that takes a file back."""
    [path, *_] = re.findall(r'action="(/stock/loads/[^"]*)"', client.get("/stock/load").text)
    return client.post(path)


def stands(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return sorted(stay.code for stay in unit.find(Stay) if stay.open)


def states(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return [str(slot.card) for slot in unit.find(Slot)]


def test_a_file_is_looked_at_then_loaded(calls: Calls, shop: Shop) -> None:
    """What each row would do is shown first, and nothing is stored by that."""
    calls.section()
    seen = text_of(look(calls.client).text)
    assert re.search(figures(2, "things to store"), seen)
    assert "No card here has the number D099" in seen
    assert [] == stands(shop)
    done = text_of(load(calls.client).text)
    assert ["D001", "D002"] == stands(shop)
    assert "2 things stored" in done
    assert "not yet seen" in text_of(calls.client.get("/slots").text)
    assert 2 == calls.client.get("/slots?state=unseen").text.count("/slots/D00")


def test_columns_are_corrected(calls: Calls, shop: Shop) -> None:
    """What is loaded is what was looked at last; a number and a title are needed."""
    calls.section()
    page = look(calls.client, "Alpha,Beta\r\nD003,Crank\r\n")
    assert 422 == page.status_code
    fields = fields_of(page.text) | {"column-number": "Alpha", "column-title": "Beta"}
    seen = calls.client.post("/stock/load", data=fields | {"step": "apply"})
    assert [] == stands(shop)
    calls.client.post("/stock/load", data=fields_of(seen.text) | {"step": "apply"})
    assert ["D003"] == stands(shop)


def test_a_file_is_taken_back_whole(calls: Calls, shop: Shop) -> None:
    """Its cards are where they were, an order for its numbers finds nothing, and the right file can be loaded."""
    calls.section()
    before = states(shop)
    load(calls.client)
    assert 200 == take_back(calls.client).status_code
    assert ([], before) == (stands(shop), states(shop))
    assert "/stock/loads/" not in calls.client.get("/stock/load").text
    load(calls.client, FILE.replace("Crank", "Lamp"))
    assert ["D001", "D002"] == stands(shop)
    line = {"reference": "D001", "title": "Lamp"}
    assert "waiting" == calls.post("/api/orders", 201, number="7", lines=[line])["state"]


def test_a_file_is_not_taken_back_once_something_is_built_on_it(calls: Calls, shop: Shop) -> None:
    """A scan, new words or an order of one of its things keep all of them."""
    calls.section()
    load(calls.client)
    calls.post("/api/scans", station="shelf", key="k", bin="A-1-1", text=card_text("D001"))
    refused = take_back(calls.client)
    assert (409, True) == (refused.status_code, "D001 was scanned" in refused.text)
    load(calls.client, "number,title\r\nD003,Rim\r\n")
    with shop.looking() as unit:
        [rim] = unit.find(Stay, code="D003")
    calls.client.patch(f"/api/stays/{rim.id}", json={"notes": "dented"})
    assert "D003 was described" in take_back(calls.client).text
    calls.client.patch(f"/api/stays/{rim.id}", json={"notes": ""})
    calls.post("/api/orders", 201, number="7", lines=[{"reference": "D003", "title": "Rim"}])
    assert "D003 was ordered" in take_back(calls.client).text
    assert ["D001", "D002", "D003"] == stands(shop)


def test_a_load_that_was_cut_off_and_taken_back_begins_anew(calls: Calls, shop: Shop) -> None:
    """Nothing of the file is taken for loaded that is out of stock again; a bin that the file named is as before."""
    calls.section()
    text = "number,title,bin\r\nD001,Crank,A-1-2\r\nD002,Saddle,\r\nD003,Rim,\r\n"
    with shop.looking() as unit:
        file = loading.StockFile.of(unit, stock_csv.read(text.encode()))
    assert None is shop.act("owner", loading.in_parts(file, lambda: lambda: True))
    assert ["D001"] == stands(shop)
    assert 200 == take_back(calls.client).status_code
    assert "A-1-1" == calls.get("/api/slots")["slots"][0]["bin"]
    load(calls.client, text)
    assert ["D001", "D002", "D003"] == stands(shop)
    assert "A-1-2" == calls.get("/api/slots")["slots"][0]["bin"]


def test_a_lost_card_keeps_a_file_from_being_taken_back(calls: Calls, shop: Shop) -> None:
    """Somebody looked for it, and said so."""
    calls.section()
    load(calls.client)
    shop.act("owner", lambda unit: stock.lose_card(unit, "D001"))
    assert "D001 lost its card" in take_back(calls.client).text
    assert ["D001", "D002"] == stands(shop)


def test_what_is_not_yet_seen_is_said_at_its_stop(calls: Calls) -> None:
    """And no more once its card was read there."""
    client = calls.client
    calls.section()
    load(client, "number,title\r\nD001,Crank\r\n")
    order = calls.post("/api/orders", 201, number="7", lines=[{"reference": "D001", "title": "Crank"}])
    walk = calls.post("/api/rounds", 201, orders=[order["id"]])
    assert "not yet seen" in client.get(f"/rounds/{walk['id']}").text
    assert "1 thing came by file" in text_of(client.get("/").text)
    assert "accepted" == calls.scan("bin", "D001", round=walk["id"])["verdict"]
    assert "not yet seen" not in client.get(f"/rounds/{walk['id']}").text
    assert "came by file" not in text_of(client.get("/").text)
