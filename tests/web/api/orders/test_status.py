"""A channel says of an order: pack it, set it aside, or it is cancelled."""

from __future__ import annotations

from typing import Any

import pytest
from calls import Calls


def send(calls: Calls, *stays: Any, said: str = "", number: str = "7", status: int = 200) -> Any:
    """The order with these things, and what its channel says of it."""
    lines = [{"reference": stay["reference"], "title": stay["title"]} for stay in stays]
    body = {"number": number, "lines": lines} | ({"status": said} if said else {})
    answer = calls.client.post("/api/orders", json=body)
    assert status == answer.status_code, answer.text
    return answer.get_json()


def holds(order: Any) -> list[list[str]]:
    return [[each["hold"] for each in line["holds"]] for line in order["lines"]]


def states(order: Any) -> list[str]:
    return [line["state"] for line in order["lines"]]


def two(calls: Calls) -> tuple[Any, Any]:
    calls.section()
    return calls.put_away("Crank"), calls.put_away("Saddle")


def test_what_is_aside_is_held_until_it_is_to_be_packed(calls: Calls) -> None:
    """No other hold goes with it, and a version that says nothing of it changes nothing."""
    one, other = two(calls)
    order = send(calls, one, other, status=201, said="aside")
    assert ("held", [["not_cleared"], ["not_cleared"]]) == (order["state"], holds(order))
    calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", why="Is it this one?")
    assert [["suspect", "not_cleared"], ["not_cleared"]] == holds(send(calls, one, other))
    assert [["suspect"], []] == holds(send(calls, one, other, said="pack"))


def test_what_is_new_in_an_order_that_is_aside_is_held_too(calls: Calls) -> None:
    """What a person settled stays settled, though the channel says the same again."""
    one, other = two(calls)
    order = send(calls, one, status=201, said="aside")
    calls.post(f"/api/lines/{order['lines'][0]['id']}/settle", hold="not_cleared")
    assert [[]] == holds(send(calls, one, said="aside"))
    assert [[], ["not_cleared"]] == holds(send(calls, one, other, said="aside"))
    assert [[], ["not_cleared"]] == holds(send(calls, one, other))


def test_what_is_cancelled_is_cancelled_and_in_its_box_held(calls: Calls) -> None:
    """What a person wants after all stays wanted, though the channel says the same again."""
    calls.section()
    (one, other), order = calls.picked(things=2)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    assert "accepted" == calls.scan("table", one["code"])["verdict"]
    gone = send(calls, one, other, number=order["number"], said="cancelled")
    assert (["packed", "cancelled"], [["cancelled_in_box"], []]) == (states(gone), holds(gone))
    calls.post(f"/api/lines/{gone['lines'][1]['id']}/revive")
    assert ["packed", "waiting"] == states(send(calls, one, other, number=order["number"], said="cancelled"))


def test_a_new_order_that_is_cancelled_already(calls: Calls) -> None:
    """It is kept as what it is, and its thing is free for another order."""
    one, _ = two(calls)
    assert "cancelled" == send(calls, one, status=201, said="cancelled")["state"]
    assert "waiting" == calls.order("8", one)["state"]


@pytest.mark.parametrize("step", ["picked", "closed"])
def test_what_is_under_way_stops(calls: Calls, step: str) -> None:
    """At the table, and at the door: a closed parcel of it does not leave."""
    calls.section()
    [stay], order = calls.picked()
    if step == "closed":
        calls.post("/api/parcels", 201, orders=[order["id"]])
        assert "accepted" == calls.scan("table", stay["code"])["verdict"]
    aside = send(calls, stay, number=order["number"], said="aside")
    assert [["not_cleared"]] == holds(aside)
    if step == "picked":
        calls.post("/api/parcels", 201, orders=[order["id"]])
        assert "held" == calls.scan("table", stay["code"])["reason"]
    else:
        assert "held" == calls.post("/api/hand-over", key="k", text=order["slip"])["reason"]


def test_another_word_is_refused(calls: Calls) -> None:
    """The three are all there are."""
    one, _ = two(calls)
    assert [{"pointer": "/status", "code": "not_allowed_value"}] == send(calls, one, status=422, said="paid")["errors"]
