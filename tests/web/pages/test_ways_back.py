"""Ways back on pages: a parcel is opened again, a thing taken back and sent again, two cards exchanged; closing up."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.life import LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Stay
from scanflow.shop import Shop
from scanflow.workflow.parcels import hand_over

pytestmark = SQLITE_ONLY


def setting(shop: Shop, **new: Any) -> None:
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, **new)))


def line_of(shop: Shop, order: Any) -> Line:
    with shop.looking() as unit:
        return unit.find(Line, order=order["id"])[0]


def forms(page: str) -> list[str]:
    return re.findall(r'method="post" action="([^"]*)"', page)


@pytest.fixture
def packed(calls: Calls) -> tuple[Any, Any, Any]:
    """A thing, its order and its closed parcel."""
    calls.section()
    (stay,), order, parcel = calls.packed()
    return stay, order, parcel


def test_a_closed_parcel_is_opened_again_from_three_pages(client: FlaskClient, packed: Any, shop: Shop) -> None:
    """Its order's, the table's after the scan that closed it, and the hand-over's; from none once it has left."""
    _, order, parcel = packed
    again, pages = f"/table/{parcel['id']}/reopen", (f"/orders/{order['id']}", "/table")
    for page in (*pages, f"/hand-over?parcel={parcel['id']}"):
        assert again in forms(client.get(page).text)
    assert "/table?table=main" == client.post(again, data={"table": "main"}).headers["Location"]
    with shop.looking() as unit:
        assert True is unit.find(Parcel)[0].open
    client.post(f"/table/{parcel['id']}/close")
    shop.act("owner", lambda unit: hand_over.hand_over(unit, hand_over.HandOver(key="out", text=parcel["slip"])))
    for page in (*pages, f"/hand-over?parcel={parcel['id']}"):
        assert again not in forms(client.get(page).text)
    refused = client.post(again, data={"table": "main"})
    assert (409, True) == (refused.status_code, "This parcel has left" in refused.text)


def test_what_came_back_is_taken_back_and_sent_again(
    app: Flask, client: FlaskClient, calls: Calls, packed: Any, shop: Shop
) -> None:
    """With the card in hand, by a helper; the owner sends it again. A card that is on a thing is refused."""
    _, order, parcel = packed
    line, other = order["lines"][0]["id"], calls.put_away("Saddle")
    expect, again = f"/orders/{order['id']}/returns", f"/lines/{line}/send-again"
    assert expect not in forms(client.get(f"/orders/{order['id']}").text)
    shop.act("owner", lambda unit: hand_over.hand_over(unit, hand_over.HandOver(key="out", text=parcel["slip"])))
    helper = client_of(app, shop, Role.HELPER)
    assert expect in forms(helper.get(f"/orders/{order['id']}").text)
    path, said = helper.post("/returns", data={"text": parcel["slip"]}).headers["Location"], {"condition": "resell"}
    said |= {"line": line}
    assert 409 == helper.post(f"{path}/check", data=said | {"text": card_text(other["code"])}).status_code
    assert 422 == helper.post(f"{path}/check", data=said | {"text": "no card"}).status_code
    stored = helper.post(f"{path}/check", data=said | {"text": card_text("D005")})
    assert 303 == stored.status_code
    assert "Put card D005 on it" in re.sub("<[^>]*>", "", helper.get(stored.headers["Location"]).text)
    assert [True, False] == [again in forms(each.get(f"/orders/{order['id']}").text) for each in (client, helper)]
    assert 403 == helper.post(again).status_code
    assert f"/orders/{order['id']}" == client.post(again).headers["Location"]
    assert LineState.WAITING is line_of(shop, order).state


def test_an_unbound_line_that_was_cancelled_by_mistake_is_wanted_after_all(
    client: FlaskClient, calls: Calls, shop: Shop
) -> None:
    """It has the button, and is unbound again."""
    order = calls.post("/api/orders", 201, number="1", lines=[{"reference": "lamp"}])
    calls.post(f"/api/orders/{order['id']}/cancel")
    revive = f"/lines/{order['lines'][0]['id']}/revive"
    assert revive in forms(client.get(f"/orders/{order['id']}").text)
    assert 303 == client.post(revive).status_code
    assert LineState.UNBOUND is line_of(shop, order).state


def test_two_cards_are_exchanged_on_the_page_of_a_thing(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """The other card is scanned or its code typed; what is none is refused."""
    calls.section()
    one, other = calls.put_away("Saddle"), calls.put_away("Wheel")
    path = f"/stays/{one['id']}/exchange"
    assert path in forms(client.get(f"/stays/{one['id']}").text)
    assert 422 == client.post(path, data={"with": "no card"}).status_code
    done = client.post(path, data={"with": card_text(other["code"])})
    with shop.looking() as unit:
        new = next(stay for stay in unit.find(Stay, item=one["item"]) if stay.open)
    assert (f"/stays/{new.id}", other["code"]) == (done.headers["Location"], new.code)


def test_a_scan_at_the_hand_over_is_recorded_where_the_shop_wants_that(client: FlaskClient, packed: Any) -> None:
    """Switched on in the settings: the page is a station, and its last scan is told; a held parcel says why."""
    stay, _, parcel = packed
    assert 'data-station="hand_over"' not in client.get("/hand-over").text
    client.post("/settings", data={"name": "Shop", "zone": "UTC", "hand_overs": "yes"})
    page = client.get("/hand-over").text
    assert (True, True) == ('data-station="hand_over"' in page, "To hand over" in page)
    client.post(
        "/api/scans", json={"station": "shelf", "key": "s", "text": card_text(stay["code"]), "bin": stay["bin"]}
    )
    why = "Must stay here: It counts as in the closed parcel of 1001, but its card was read"
    assert why in client.get("/hand-over").text
    client.post("/api/hand-over", json={"key": "h", "text": parcel["slip"]})
    assert "Refused. 1001: This parcel must stay here." in client.get("/hand-over").text


def test_a_slip_asks_for_the_label_first_where_labels_are_bound(client: FlaskClient, packed: Any, shop: Shop) -> None:
    """The page tells its script the slips of parcels without one; a wrong label stands there as a no."""
    _, _, parcel = packed
    setting(shop, hand_overs=True, bind_labels=True)
    assert f"{parcel['slip']}&#34;: &#34;{parcel['id']}" in client.get("/hand-over").text.replace("&amp;", "&")
    refused = client.post("/hand-over", data={"parcel": parcel["id"], "text": "12345"})
    assert (422, True) == (refused.status_code, "data-no" in refused.text)
    client.post("/hand-over", data={"parcel": parcel["id"], "text": "RR123456785DE"})
    assert parcel["slip"] not in client.get("/hand-over").text


@pytest.mark.parametrize("wrong", ["0", "1000", "two"])
def test_days_until_a_parcel_is_gone(client: FlaskClient, shop: Shop, wrong: str) -> None:
    """A whole number of days; without one the former stays."""
    fields = {"name": "Shop", "zone": "UTC"}
    client.post("/settings", data=fields | {"gone_days": "7", "slip_closes": "yes"})
    assert 422 == client.post("/settings", data=fields | {"gone_days": wrong}).status_code
    client.post("/settings", data=fields)
    with shop.looking() as unit:
        assert (7, False, False) == (unit.settings.gone_days, unit.settings.slip_closes, unit.settings.hand_overs)


def test_two_open_boxes_suggest_that_a_box_closes_by_its_slip(
    app: Flask, client: FlaskClient, calls: Calls, shop: Shop
) -> None:
    """To the owner, as long as two hold things at once and the setting is off."""
    calls.section()
    words = "Close parcels by their slips?"
    for table in ("one", "two"):
        stays, order = calls.picked(table, 2)
        calls.post("/api/parcels", 201, orders=[order["id"]], table=table)
        assert words not in client.get("/").text
        calls.scan("table", stays[0]["code"], table=table)
    assert words in client.get("/").text
    assert words not in client_of(app, shop, Role.HELPER).get("/").text
    setting(shop, slip_closes=True)
    assert words not in client.get("/").text


def test_a_full_box_asks_for_its_slip(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """Where boxes close by their slips; without it, it is closed by a press further down."""
    setting(shop, slip_closes=True)
    calls.section()
    (stay,), order = calls.picked()
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stay["code"])
    page = client.get("/table").text
    assert [True] * 3 == [
        words in page for words in ("Scan the slip on the parcel", "the slip on the parcel.", "without its slip")
    ]


def test_closing_up_lists_what_is_not_empty(client: FlaskClient, calls: Calls) -> None:
    """Baskets, parcels that are not closed and what is to be put back; each leads to the station that ends it."""
    calls.section()
    assert "Baskets and tables are empty" in client.get("/closing-up").text
    (back,), cancelled = calls.picked("1001")
    calls.post(f"/api/orders/{cancelled['id']}/cancel")
    calls.picked("1002")
    stays, order = calls.picked("1003", 2)
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]], table="two")
    calls.scan("table", stays[0]["code"], table="two")
    page = client.get("/closing-up").text
    for words in ("1 thing to pack for 1002", "Open on table two", "/table?table=two", f"/shelf?bin={back['bin']}"):
        assert words in page
    assert "or pack it for order" not in page
    calls.post(f"/api/parcels/{parcel['id']}/set-aside")
    assert "Set aside: scan its slip" in client.get("/closing-up").text
    assert "/closing-up" in client.get("/").text


def test_what_left_is_told_on_its_order(client: FlaskClient, packed: Any, shop: Shop) -> None:
    """When its parcel was closed and handed over."""
    _, order, parcel = packed
    shop.act("owner", lambda unit: hand_over.hand_over(unit, hand_over.HandOver(key="out", text=parcel["slip"])))
    assert ", handed over today" in client.get(f"/orders/{order['id']}").text
    with shop.looking() as unit:
        assert ParcelState.HANDED_OVER is unit.find(Parcel)[0].state
