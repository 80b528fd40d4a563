"""Two orders go into one box: by the other one's slip, its number or a press."""

from __future__ import annotations

import pytest
from calls import Calls
from page_text import text_of

from labels import slot_code
from scanflow.domain.things import Order
from scanflow.shop import Shop


def two_orders(calls: Calls) -> tuple[list[str], list[dict[str, str]], str]:
    """The slots and the orders of two things that are picked, and the parcel of the first, open at its table."""
    calls.section()
    (one,), first = calls.picked("1001")
    (two,), second = calls.picked("1002")
    parcel = calls.post("/api/parcels", 201, orders=[first["id"]])["id"]
    return [one["code"], two["code"]], [first, second], parcel


def slip(shop: Shop, order: dict[str, str]) -> str:
    with shop.looking() as unit:
        return slot_code.slip_text(unit.find(Order, id=order["id"])[0].slip)


@pytest.mark.parametrize("how", ["slip", "number", "press"])
def test_another_order_goes_into_the_box(shop: Shop, calls: Calls, how: str) -> None:
    """Its card is taken then, where it was refused before; the parcel closes when both are packed."""
    codes, orders, parcel = two_orders(calls)
    assert "other_order" == calls.scan("table", codes[1])["reason"]
    said = {"slip": {"text": slip(shop, orders[1])}, "number": {"text": "1002"}, "press": {"order": orders[1]["id"]}}
    page = f"/table/{parcel}/with"
    assert "Pack with 1002" in text_of(calls.client.get(page).text)
    assert 303 == calls.client.post(page, data=said[how]).status_code
    assert ["accepted", "accepted"] == [calls.scan("table", code)["verdict"] for code in codes]
    assert "closed" == calls.get(f"/api/parcels/{parcel}")["state"]
    assert ["released", "released"] == [calls.get(f"/api/orders/{each['id']}")["state"] for each in orders]


def test_it_is_taken_apart_again(calls: Calls) -> None:
    """As long as nothing of it lies in the box; the other order stays."""
    codes, orders, parcel = two_orders(calls)
    calls.client.post(f"/table/{parcel}/with", data={"text": "1002"})
    calls.scan("table", codes[0])
    assert "Pack 1002 on its own" in text_of(calls.client.get("/table").text)
    held = calls.client.post(f"/table/{parcel}/apart", data={"order": orders[0]["id"]})
    assert (409, True) == (held.status_code, "Take them out" in held.text)
    assert 303 == calls.client.post(f"/table/{parcel}/apart", data={"order": orders[1]["id"]}).status_code
    assert [orders[0]["id"]] == calls.get(f"/api/parcels/{parcel}")["orders"]
    assert "other_order" == calls.scan("table", codes[1])["reason"]
    last = calls.client.post(f"/table/{parcel}/apart", data={"order": orders[0]["id"]})
    assert 409 == last.status_code


def test_what_can_not_go_with_it(calls: Calls) -> None:
    """No order of that number, one whose things lie in another box, one that has left; the open one itself changes
    nothing.
    """
    _, orders, parcel = two_orders(calls)
    page = f"/table/{parcel}/with"
    assert 422 == calls.client.post(page, data={"text": "9999"}).status_code
    calls.post("/api/parcels", 201, orders=[orders[1]["id"]], table="two")
    assert 409 == calls.client.post(page, data={"text": "1002"}).status_code
    calls.post(f"/api/orders/{calls.ordered('1003')[1]['id']}/cancel")
    assert 409 == calls.client.post(page, data={"text": "1003"}).status_code
    assert 303 == calls.client.post(page, data={"text": "1001"}).status_code


def test_a_round_gives_them_one_basket(calls: Calls) -> None:
    """Where the box was opened for both before they were walked for; another order has its own."""
    calls.section()
    orders = [calls.ordered(number)[1]["id"] for number in ("1001", "1002", "1003")]
    calls.post("/api/parcels", 201, orders=[orders[0]])
    parcel = calls.post("/api/parcels", 409, orders=[orders[1]])["parcel"]
    calls.client.post(f"/table/{parcel}/with", data={"order": orders[1]})
    stops = calls.post("/api/rounds", 201, orders=orders)["stops"]
    baskets = {stop["order"]: stop["basket"] for stop in stops}
    assert baskets[orders[0]] == baskets[orders[1]] != baskets[orders[2]]
