"""Pages of returns: from the order's page to the slot, parcels that nobody expects, and what Today says of them."""

from __future__ import annotations

import io
import re
from typing import Any

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.life import Condition, LineState, ReturnState
from scanflow.domain.things import Item, Line, Return, Stay
from scanflow.shop import Shop


def forms(page: str) -> list[str]:
    return re.findall(r'method="post" action="([^"]*)"', page)


def choices(page: str) -> list[str]:
    return re.findall(r'name="condition" value="([a-z]+)" required', page)


@pytest.fixture
def gone(calls: Calls) -> tuple[Any, Any]:
    """An order of two things, handed over, and its parcel."""
    calls.section("D", 8)
    _, order, parcel = calls.packed("1001", 2)
    calls.post("/api/hand-over", key="out", text=parcel["slip"])
    return order, parcel


def only(shop: Shop) -> Return:
    with shop.looking() as unit:
        (back,) = unit.find(Return)
    return back


def lines(shop: Shop) -> list[LineState]:
    with shop.looking() as unit:
        return [line.state for line in unit.find(Line)]


def test_from_the_orders_page_to_the_slot(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """Which lines, why and until when; then it arrives, and each thing gets its condition, one after the other."""
    order, _ = gone
    one, two = (line["id"] for line in order["lines"])
    page = client.get(f"/orders/{order['id']}").text
    assert f"/orders/{order['id']}/returns" in forms(page)
    fields = {"lines": [one, two], "why": "Too small", "until": "2026-12-24"}
    made = client.post(f"/orders/{order['id']}/returns", data=fields)
    path = f"/returns/{only(shop).id}"
    assert (303, path) == (made.status_code, made.headers["Location"])
    assert f"{path}/arrived" in forms(client.get(path).text)
    assert path == client.post(f"{path}/arrived").headers["Location"]
    page = client.get(path).text
    assert ([*Condition], True) == (choices(page), f'name="line" value="{one}"' in page)
    stored = client.post(f"{path}/check", data={"line": one, "condition": "resell", "text": card_text("D005")})
    page = client.get(stored.headers["Location"]).text
    assert ("Put card D005 on it", True) == (
        re.findall("Put card D005 on it", page)[0],
        f'name="line" value="{two}"' in page,
    )
    assert path == client.post(f"{path}/check", data={"line": two, "condition": "stays"}).headers["Location"]
    assert "All is checked." in client.get(path).text
    assert (ReturnState.CHECKED, [LineState.RETURNED, LineState.RELEASED]) == (only(shop).state, lines(shop))
    assert path in client.get(f"/orders/{order['id']}").text


@SQLITE_ONLY
def test_no_line_chosen_is_no_return(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """All boxes empty is refused: it never means all."""
    order, _ = gone
    assert 422 == client.post(f"/orders/{order['id']}/returns", data={"why": "Too small"}).status_code
    with shop.looking() as unit:
        assert () == unit.find(Return)


@SQLITE_ONLY
@pytest.mark.parametrize("by", ["slip", "number"])
def test_a_parcel_is_taken_in_by_what_is_on_it(client: FlaskClient, shop: Shop, gone: Any, by: str) -> None:
    """Its slip or its order's number lead to its return, expected or not; what names no order is refused."""
    order, parcel = gone
    text = {"slip": parcel["slip"], "number": "1001"}[by]
    assert 422 == client.post("/returns", data={"text": "no such"}).status_code
    taken = client.post("/returns", data={"text": text})
    back = only(shop)
    assert (f"/returns/{back.id}", ReturnState.ARRIVED) == (taken.headers["Location"], back.state)
    assert f"/returns/{back.id}" == client.post("/returns", data={"text": text}).headers["Location"]
    assert [line["id"] for line in order["lines"]] == [*back.lines]


@SQLITE_ONLY
@pytest.mark.parametrize("by", ["slip", "number", "title"])
def test_a_parcel_that_says_nothing_is_searched_for(client: FlaskClient, shop: Shop, gone: Any, by: str) -> None:
    """What is with a buyer is found by slip, number or words, and checked."""
    order, parcel = gone
    one, two = (line["id"] for line in order["lines"])
    path = client.post("/returns", data={"unknown": "yes"}).headers["Location"]
    words = {"slip": parcel["slip"], "number": "1001", "title": "thing 1"}[by]
    found = client.get(path, query_string={"q": words}).text
    assert [True, True] == [f"line={each}" in found for each in (one, two)]
    page = client.get(path, query_string={"line": two, "q": words}).text
    assert f'name="line" value="{two}"' in page
    client.post(f"{path}/check", data={"line": two, "condition": "check", "text": card_text("D005")})
    assert ([LineState.RELEASED, LineState.RETURNED], ReturnState.CHECKED) == (lines(shop), only(shop).state)
    assert "More was in it" in client.get(path).text
    assert "words. Try others" in client.get(path, query_string={"q": "no such thing"}).text


@SQLITE_ONLY
def test_what_was_never_ours_has_its_way(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """It goes back, and no line moves."""
    path = client.post("/returns", data={"unknown": "yes"}).headers["Location"]
    assert 2 == forms(client.get(path).text).count(f"{path}/check")
    client.post(f"{path}/check", data={"condition": "stays"})
    assert "It was never ours, and goes back." in client.get(path).text
    assert (ReturnState.GIVEN_UP, [LineState.RELEASED] * 2) == (only(shop).state, lines(shop))


@SQLITE_ONLY
def test_a_helper_takes_in_what_the_owner_alone_scraps(app: Flask, client: FlaskClient, shop: Shop, gone: Any) -> None:
    """No condition, no button and no way back of scrapping on a helper's page, and no giving up."""
    order, _ = gone
    one, two = (line["id"] for line in order["lines"])
    helper = client_of(app, shop, Role.HELPER)
    path = helper.post(f"/orders/{order['id']}/returns", data={"lines": [one, two]}).headers["Location"]
    assert [True, False] == [f"{path}/give-up" in forms(each.get(path).text) for each in (client, helper)]
    assert 403 == helper.post(f"{path}/give-up").status_code
    helper.post(f"{path}/arrived")
    assert ["resell", "check", "stays"] == choices(helper.get(path).text)
    assert 403 == helper.post(f"{path}/check", data={"line": one, "condition": "scrap"}).status_code
    client.post(f"{path}/check", data={"line": one, "condition": "scrap"})
    again = f"line={one}"
    assert [True, False] == [again in each.get(path).text for each in (client, helper)]
    assert [["resell", "check"], []] == [choices(each.get(f"{path}?{again}").text) for each in (client, helper)]
    unknown = helper.post("/returns", data={"unknown": "yes"}).headers["Location"]
    assert [2, 1] == [forms(each.get(unknown).text).count(f"{unknown}/check") for each in (client, helper)]


@SQLITE_ONLY
def test_what_was_scrapped_is_not_sent_again(client: FlaskClient, calls: Calls, gone: Any) -> None:
    """The order's page offers that for what stands in a slot alone."""
    order, _ = gone
    one, two = (line["id"] for line in order["lines"])
    path = client.post("/returns", data={"text": "1001"}).headers["Location"]
    client.post(f"{path}/check", data={"line": one, "condition": "scrap"})
    client.post(f"{path}/check", data={"line": two, "condition": "resell", "text": card_text("D005")})
    for page in (f"/orders/{order['id']}", path):
        again = [f"/lines/{each}/send-again" in forms(client.get(page).text) for each in (one, two)]
        assert [False, True] == again


@SQLITE_ONLY
def test_a_picture_is_taken_of_what_came_back(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """By the form of every thing, and back to the return."""
    path = client.post("/returns", data={"text": "1001"}).headers["Location"]
    page = client.get(path).text
    photo = next(each for each in forms(page.replace(' enctype="multipart/form-data"', "")) if each.endswith("/photo"))
    out = io.BytesIO()
    Image.new("RGB", (32, 24), "peru").save(out, "JPEG")
    out.seek(0)
    fields = {"back": f"return {only(shop).id}", "photo": (out, "thing.jpg")}
    assert f'value="return {only(shop).id}"' in page
    assert path == client.post(photo, data=fields).headers["Location"]
    with shop.looking() as unit:
        stay = unit.get(Stay, photo.split("/")[2])
        item = unit.get(Item, stay.item) if stay else None
        assert (True, True) == (item is not None, bool(item and item.photo))
    assert "Compare it with its picture" in client.get(path).text


@SQLITE_ONLY
def test_a_card_without_a_check_is_scanned_twice(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """In a room of adopted cards: the first scan stores nothing, and the choice stands."""
    client.post("/settings", data={"name": "Shop", "zone": "UTC", "check": "none", "scan_at_bin": "yes"})
    path = client.post("/returns", data={"text": "1001"}).headers["Location"]
    fields = {"line": only(shop).lines[0], "condition": "resell", "text": "D005"}
    once = client.post(f"{path}/check", data=fields)
    assert (422, True) == (once.status_code, 'value="resell" required checked' in once.text)
    assert 303 == client.post(f"{path}/check", data=fields | {"looked": "D005"}).status_code


@SQLITE_ONLY
def test_today_names_what_is_overdue_and_what_is_not_checked(client: FlaskClient, gone: Any) -> None:
    """Not what is expected in time, and no more once it is checked."""
    order, _ = gone
    one, two = (line["id"] for line in order["lines"])
    late = client.post(f"/orders/{order['id']}/returns", data={"lines": [one], "until": "2001-01-01"})
    in_time = client.post(f"/orders/{order['id']}/returns", data={"lines": [two], "until": "2199-01-01"})
    page = client.get("/").text
    assert [True, False] == [each.headers["Location"] in page for each in (late, in_time)]
    assert "overdue" in page
    client.post(f"{in_time.headers['Location']}/arrived")
    assert in_time.headers["Location"] in client.get("/").text
    client.post(f"{in_time.headers['Location']}/check", data={"line": two, "condition": "stays"})
    assert in_time.headers["Location"] not in client.get("/").text


@SQLITE_ONLY
def test_the_orders_page_leads_to_the_returns(client: FlaskClient, gone: Any) -> None:
    """With how many there are; they are listed by state."""
    order, _ = gone
    path = client.post(f"/orders/{order['id']}/returns", data={"lines": [order["lines"][0]["id"]]}).headers["Location"]
    assert 'href="/returns">returns <b>1</b>' in client.get("/orders").text
    for state, there in (("", True), ("expected", True), ("arrived", False), ("no such", True)):
        assert there is (path in client.get("/returns", query_string={"state": state}).text)


@SQLITE_ONLY
def test_arriving_is_undone(client: FlaskClient, shop: Shop, gone: Any) -> None:
    """The wrong slip was scanned: the return is expected still; then it is given up."""
    path = client.post("/returns", data={"text": "1001"}).headers["Location"]
    assert f"{path}/not-arrived" in forms(client.get(path).text)
    client.post(f"{path}/not-arrived")
    assert ReturnState.EXPECTED is only(shop).state
    client.post(f"{path}/give-up")
    assert (ReturnState.GIVEN_UP, True) == (only(shop).state, "not expected any more" in client.get(path).text)
