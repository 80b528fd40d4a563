"""A stop on the round's page and on paper is where the thing is."""

from __future__ import annotations

import html
import json
import re
from typing import Any

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish, reference, scan
from paperwork import words
from pypdfium2 import PdfDocument

from scanflow.domain.life import RoundState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Order, Round, Station, Stay, Stop
from scanflow.shop import Shop
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds
from scanflow.workflow.ports import Unit, must

pytestmark = SQLITE_ONLY


@pytest.fixture
def stay(shop: Shop) -> Stay:
    """A thing that was picked for an order, cancelled since, and sold again."""
    room = furnish(shop, 2)
    shop.act("owner", lambda unit: orders.cancel(unit, room.orders[0].id, orders.Cancel()))
    assert room.round is not None
    shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id if room.round else ""))
    lines = (IncomingLine(reference(room.stays[0])),)
    shop.act("owner", lambda unit: receiving.receive(unit, IncomingOrder("C-1", lines=lines)))
    return room.stays[0]


def walk(shop: Shop) -> str:
    return shop.act("owner", lambda unit: rounds.open_round(unit, rounds.OpenRound())[0].id)


def stops(page: str) -> list[dict[str, Any]]:
    """What the page keeps of its stops for while there is no network."""
    found = re.search(r'data-stops="([^"]*)"', page)
    assert found is not None
    told: list[dict[str, Any]] = json.loads(html.unescape(found[1]))
    return told


def test_a_thing_in_an_earlier_basket_is_fetched_there(shop: Shop, client: FlaskClient, stay: Stay) -> None:
    """The page of the stop, its list for when the network is gone and the sheet of paper say so."""
    round_ = walk(shop)
    page = client.get(f"/rounds/{round_}").text
    said = "In basket 1 of an earlier round: scan it there, then put it into basket 1."
    assert (True, True) == (f"<small>Not in bin A-1-1</small>{said}" in page, f'data-say="{said}' in page)
    assert [("A-1-1", said)] == [(stop["bin"], stop["where"]) for stop in stops(page)]
    sheet = PdfDocument(client.get(f"/rounds/{round_}/sheet.pdf").data)[0]
    assert "In basket 1 of an earlier round: put it into basket 1." in " ".join(words(sheet).split())


def test_how_to_pack_a_thing_is_said_all_along_its_way(shop: Shop, client: FlaskClient) -> None:
    """At its stop, in the stop's list for when the network is gone, on the sheet and the slip, on the order's page, at
    the table before its card is scanned, and in the yes at bin and table.
    """
    room = furnish(shop, 2)
    stay, order = room.stays[0], room.orders[0].id
    shop.act("owner", lambda unit: stock.change_item(unit, stay.id, stock.ChangeItem(packing="Two screws in the bag")))
    shop.act("owner", lambda unit: orders.cancel(unit, order, orders.Cancel()))
    one = IncomingOrder("C-1", lines=(IncomingLine(reference(stay)),))
    order = shop.act("owner", lambda unit: receiving.receive(unit, one))[0].id
    round_ = walk(shop)
    said = "Packing: Two screws in the bag."
    page = client.get(f"/rounds/{round_}").text
    assert (True, [said]) == (f'<p class="mind">{said}</p>' in page, [stop["packing"] for stop in stops(page)])
    for paper in (f"/rounds/{round_}/sheet.pdf", f"/orders/{order}/slip.pdf"):
        assert said in words(PdfDocument(client.get(paper).data)[0])
    assert said in client.get(f"/orders/{order}").text
    picked = scan(shop, Station.BIN, stay.code, key="pick", round=round_)
    shop.act("owner", lambda unit: parcels.open_parcel(unit, parcels.OpenParcel(orders=[order])))
    assert f'<p class="mind">{said}</p>' in client.get("/table").text
    packed = scan(shop, Station.TABLE, stay.code, key="pack")
    assert ["accepted", "accepted"] == [picked["verdict"], packed["verdict"]]
    assert [True, True] == [answer["advice"].endswith(said) for answer in (picked, packed)]
    assert stay.id in client.get("/search?q=screws").text


def test_an_open_round_goes_where_the_card_was_read(shop: Shop, client: FlaskClient, stay: Stay) -> None:
    """Read in another bin, or moved to another slot, after the walk was planned."""
    scan(shop, Station.SHELF, stay.code, bin="A-1-1")
    round_ = walk(shop)
    scan(shop, Station.SHELF, stay.code, key="astray", bin="B-1-1")
    page = client.get(f"/rounds/{round_}").text
    said = "Its card was seen in bin B-1-1. Look there first. Its own bin is A-1-1."
    assert (True, True) == ("<small>Bin</small>B-1-1" in page, f'<p class="say">{said}</p>' in page)
    assert "bin B-1-1, basket 1" in client.get(f"/rounds/{round_}/paper").text
    sheet = words(PdfDocument(client.get(f"/rounds/{round_}/sheet.pdf").data)[0])
    assert said in " ".join(sheet.split())

    scan(shop, Station.SHELF, stay.code, key="home", bin="A-1-1")
    shop.act("owner", lambda unit: stock.move(unit, stay.id, stock.Move(to="S004")))
    with shop.looking() as unit:
        facts = unit.facts("S004")
    assert facts is not None
    (stop,) = stops(client.get(f"/rounds/{round_}").text)
    assert ("S004", facts.slot.bin, "") == (stop["code"], stop["bin"], stop["where"])


def test_what_was_said_to_be_missing_is_found_again_on_the_round(shop: Shop, client: FlaskClient) -> None:
    """A slip of the thumb, or a thing that stood beside: one press, and its stop is walked to again."""
    room = furnish(shop, 2)
    assert room.round is not None
    first = client.get(f"/api/orders/{room.orders[0].id}").json["lines"][0]["id"]
    page = client.post(f"/lines/{first}/short", data={"round": room.round.id}, follow_redirects=True).text
    assert (True, [False]) == ("Said to be missing" in page, [each["waits"] for each in stops(page)])
    page = client.post(f"/lines/{first}/found", data={"round": room.round.id}, follow_redirects=True).text
    assert (False, [True]) == ("Said to be missing" in page, [each["waits"] for each in stops(page)])


@pytest.fixture
def waiting(shop: Shop) -> list[Order]:
    """Orders of one thing each that wait, the most urgent first, beside what is left of an earlier round."""
    room = furnish(shop, 8)
    assert room.round is not None
    walk = room.round.id

    def receive(unit: Unit) -> list[Order]:
        rounds.close_round(unit, walk)
        told = ((f"W-{n}", f"2020-12-{n:02}", reference(stay)) for n, stay in enumerate(room.stays[1::2], 1))
        return [
            receiving.receive(unit, IncomingOrder(number, "", None, by, (IncomingLine(each),)))[0]
            for number, by, each in told
        ]

    return shop.act("owner", receive)


def walked(shop: Shop, address: str) -> set[str]:
    """The orders of the round whose page this is."""
    with shop.looking() as unit:
        stops = unit.find(Stop, round=address.rpartition("/")[2])
        return {must(unit, Line, stop.line).order for stop in stops}


def test_a_round_takes_no_more_orders_than_there_are_baskets(
    shop: Shop, client: FlaskClient, waiting: list[Order]
) -> None:
    """Those that must go first; the button says so before."""
    fields = {"name": "Reclaimed parts", "zone": "UTC", "scan_at_bin": "yes", "baskets": "2"}
    assert 303 == client.post("/settings", data=fields).status_code
    assert "Start a round of up to 2 orders" in client.get("/rounds").text
    made = client.post("/rounds").headers["Location"]
    assert {order.id for order in waiting[:2]} == walked(shop, made)


def test_the_orders_of_a_round_can_be_chosen(shop: Shop, client: FlaskClient, waiting: list[Order]) -> None:
    """Nothing chosen is no round of everything, and an order that is walked for already is not offered."""
    chosen = [waiting[1].id, waiting[3].id]
    nothing = client.post("/rounds", data={"choose": "yes"})
    assert (422, True) == (nothing.status_code, "Choose an order first." in nothing.text)
    made = client.post("/rounds", data={"choose": "yes", "order": chosen}).headers["Location"]
    assert set(chosen) == walked(shop, made)
    page = client.get("/rounds").text
    assert [False, False] == [f'value="{name}"' in page for name in chosen] and f'value="{waiting[0].id}"' in page


def test_a_finished_round_is_closed_by_the_next(shop: Shop, client: FlaskClient, waiting: list[Order]) -> None:
    """One on which a stop still waits stays open."""
    first, second = (client.post("/rounds", data={"order": order.id}).headers["Location"] for order in waiting[:2])
    with shop.looking() as unit:
        (line,) = unit.find(Line, order=waiting[0].id)
        code = must(unit, Stay, line.stay or "").code
    scan(shop, Station.BIN, code, key="in-time", round=first.rpartition("/")[2])
    client.post("/rounds", data={"order": waiting[2].id})
    with shop.looking() as unit:
        states = [must(unit, Round, each.rpartition("/")[2]).state for each in (first, second)]
    assert [RoundState.CLOSED, RoundState.OPEN] == states
