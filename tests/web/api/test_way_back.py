"""Ways back over HTTP: two cards that were swapped, and what the contract has no call for."""

from __future__ import annotations

from calls import Calls

from labels.slot_code import card_text


def test_two_cards_that_were_swapped_are_exchanged(calls: Calls) -> None:
    """Answers the new stay of the one asked for; its line follows it, and the same once more is as before."""
    calls.section()
    (one,), order = calls.ordered()
    other = calls.put_away("Saddle")

    response = calls.client.post(f"/api/stays/{one['id']}/exchange", json={"with": other["id"]})
    new = response.get_json()
    assert (200, f"/api/stays/{new['id']}") == (response.status_code, response.headers["Location"])
    assert (one["item"], other["code"], other["bin"], "stored") == (new["item"], new["code"], new["bin"], new["state"])
    assert ["moved", "moved"] == [calls.get(f"/api/stays/{each['id']}")["state"] for each in (one, other)]
    (line,) = calls.get(f"/api/orders/{order['id']}")["lines"]
    assert (new["id"], other["code"], "waiting") == (line["stay"], line["code"], line["state"])
    back = calls.post(f"/api/stays/{new['id']}/exchange", **{"with": one["code"]})
    assert (one["item"], one["code"]) == (back["item"], back["code"])


def test_what_can_t_be_exchanged_is_refused(calls: Calls) -> None:
    """409 while either is packed or has left, 404 and 422 for what there is not, and for the thing itself."""
    calls.section()
    stays, order = calls.picked("1001", 2)
    other = calls.put_away("Saddle")
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stays[0]["code"])

    path = f"/api/stays/{other['id']}/exchange"
    assert "still_in_box" == calls.post(path, 409, **{"with": stays[0]["id"]})["code"]
    assert "still_in_box" == calls.post(f"/api/stays/{stays[0]['id']}/exchange", 409, **{"with": other["id"]})["code"]
    for wrong in ("none", other["id"], "D006"):
        fault = calls.post(path, 422, **{"with": wrong})
        assert [{"pointer": "/with", "code": "unknown_stay"}] == fault["errors"]
    assert "required" == calls.post(path, 422)["code"]
    calls.post("/api/stays/none/exchange", 404, **{"with": other["id"]})
    calls.scan("table", stays[1]["code"])
    assert "not_allowed" == calls.post(path, 409, **{"with": stays[0]["id"]})["code"]


def test_what_came_back_is_shown_where_it_stands(calls: Calls) -> None:
    """Its line and order are returned, its new stay has a turn and a reference of its own."""
    calls.section()
    _, order, parcel = calls.packed()
    calls.post("/api/hand-over", key="out", text=parcel["slip"])
    line = order["lines"][0]["id"]

    path = f"/api/returns/{calls.post('/api/returns', 201, order=order['id'])['id']}"
    calls.post(f"{path}/arrived")
    back = calls.post(f"{path}/check", line=line, condition="resell", text=card_text("D005"))
    shown, now = calls.get(f"/api/stays/{back['lines'][0]['standing']}"), calls.get(f"/api/orders/{order['id']}")
    assert ("D005", "stored", 1) == (shown["code"], shown["state"], shown["turn"])
    assert ("returned", "returned") == (now["state"], now["lines"][0]["state"])


def test_no_call_takes_a_line_back(calls: Calls) -> None:
    """That is done with the card in hand, by the check of its return."""
    calls.section()
    _, order, _ = calls.packed()

    calls.post(f"/api/lines/{order['lines'][0]['id']}/return", 404)


def test_baskets_in_use_have_different_numbers(calls: Calls) -> None:
    """Those of an open round and those that still hold picked things; packed and over, a number is free again."""
    calls.section()
    (one,), order = calls.picked("1001")
    calls.ordered("1002")
    second = calls.post("/api/rounds", 201)
    assert [2] == [stop["basket"] for stop in second["stops"]]
    calls.post(f"/api/rounds/{second['id']}/close")
    open_ = next(
        entry["data"]["round"] for entry in calls.get("/api/ledger")["entries"] if entry["kind"] == "round opened"
    )
    calls.post(f"/api/rounds/{open_}/close")
    third = calls.post("/api/rounds", 201)
    assert [2] == [stop["basket"] for stop in third["stops"]]
    calls.post(f"/api/rounds/{third['id']}/close")
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", one["code"])
    assert [1] == [stop["basket"] for stop in calls.post("/api/rounds", 201)["stops"]]
