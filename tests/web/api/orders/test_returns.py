"""Returns over HTTP: expected, arrived, checked, listed."""

from __future__ import annotations

from typing import Any

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.shop import Shop


@pytest.fixture
def gone(calls: Calls) -> Any:
    """An order of two things, handed over."""
    calls.section("D", 8)
    return left(calls, "1001", 2)


def left(calls: Calls, number: str, things: int = 1) -> Any:
    _, order, parcel = calls.packed(number, things)
    calls.post("/api/hand-over", key=f"out-{number}", text=parcel["slip"])
    return order


def states(calls: Calls, order: Any) -> list[str]:
    return [line["state"] for line in calls.get(f"/api/orders/{order['id']}")["lines"]]


def test_a_return_from_expected_to_checked(calls: Calls, gone: Any) -> None:
    """Each call answers the return as it stands; what came back is in stock, and its order has come back in parts."""
    one, two = (line["id"] for line in gone["lines"])
    made = calls.client.post(
        "/api/returns", json={"order": gone["id"], "lines": [one, two], "why": "Too small", "until": "2026-12-24"}
    )
    back = made.get_json()
    assert (201, f"/api/returns/{back['id']}") == (made.status_code, made.headers["Location"])
    assert ("expected", gone["id"], "Too small", "2026-12-24T23:59:59+00:00") == (
        *(back["state"], back["order"]),
        *(back["why"], back["until"]),
    )
    assert [(one, None, None), (two, None, None)] == [
        (line["id"], line["condition"], line["standing"]) for line in back["lines"]
    ]
    path = f"/api/returns/{back['id']}"
    assert "arrived" == calls.post(f"{path}/arrived")["state"]
    half = calls.post(f"{path}/check", line=one, condition="resell", text=card_text("D005"))
    assert ("arrived", "resell", None) == (half["state"], *(line["condition"] for line in half["lines"]))
    stay = calls.get(f"/api/stays/{half['lines'][0]['standing']}")
    assert ("D005", "stored", "Thing 0 of 1001") == (stay["code"], stay["state"], stay["title"])
    done = calls.post(f"{path}/check", line=two, condition="stays")
    assert ("checked", True) == (done["state"], done["checked"] is not None)
    assert ["returned", "released"] == states(calls, gone)
    assert done == calls.get(path)


def test_what_is_to_be_checked_is_held_for_the_next_buyer(calls: Calls, gone: Any) -> None:
    """It stands in a slot, doubted: no order gets it silently."""
    line = gone["lines"][0]["id"]
    path = f"/api/returns/{calls.post('/api/returns', 201, order=gone['id'], lines=[line])['id']}"
    calls.post(f"{path}/arrived")
    checked = calls.post(f"{path}/check", line=line, condition="check", text=card_text("D005"))
    stay = calls.get(f"/api/stays/{checked['lines'][0]['standing']}")
    (doubt,) = calls.get(f"/api/stays/{stay['id']}/doubts")["doubts"]
    assert ("not_this", "Came back: to be checked.") == (doubt["kind"], doubt["words"])
    assert "suspect" == calls.order("1002", stay)["lines"][0]["hold"]


def test_a_parcel_nobody_expects(calls: Calls, gone: Any) -> None:
    """Its check names the line; what was never ours has none, and the return is given up."""
    made = calls.post("/api/returns", 201)
    assert (None, [], "expected") == (made["order"], made["lines"], made["state"])
    path, line = f"/api/returns/{made['id']}", gone["lines"][0]["id"]
    calls.post(f"{path}/arrived")
    done = calls.post(f"{path}/check", line=line, condition="scrap")
    assert ("checked", [(line, "scrap", "returned")]) == (
        done["state"],
        [(each["id"], each["condition"], each["state"]) for each in done["lines"]],
    )
    other = f"/api/returns/{calls.post('/api/returns', 201)['id']}"
    calls.post(f"{other}/arrived")
    ended = calls.post(f"{other}/check", condition="stays")
    assert ("given_up", "stays", []) == (ended["state"], ended["never_ours"], ended["lines"])


def test_what_is_refused(calls: Calls, gone: Any) -> None:
    """404 for no return, 409 as the room stands, 422 at the field."""
    calls.post("/api/returns/none/arrived", 404)
    calls.post("/api/returns/none/check", 404, condition="stays")
    _, here, _ = calls.packed("1002")
    assert "not_left" == calls.post("/api/returns", 409, order=here["id"])["code"]
    assert "unknown_order" == calls.post("/api/returns", 422, order="none")["code"]
    line = gone["lines"][0]["id"]
    first = calls.post("/api/returns", 201, order=gone["id"], lines=[line])
    again = calls.post("/api/returns", 409, order=gone["id"], lines=[line])
    assert ("already_expected", first["id"]) == (again["code"], again["return"])
    path = f"/api/returns/{first['id']}"
    assert "not_allowed" == calls.post(f"{path}/check", 409, line=line, condition="stays")["code"]
    calls.post(f"{path}/arrived")
    assert "not_allowed" == calls.post(f"{path}/arrived", 409)["code"]
    for body, pointer, code in (
        ({"line": line, "condition": "resell"}, "/text", "required"),
        ({"condition": "stays"}, "/line", "required"),
        ({"line": gone["lines"][1]["id"], "condition": "stays"}, "/line", "unknown_line"),
        ({"line": line, "condition": "sold"}, "/condition", "not_allowed_value"),
    ):
        assert [{"pointer": pointer, "code": code}] == calls.post(f"{path}/check", 422, **body)["errors"]
    taken = calls.put_away("Saddle")
    refused = calls.post(f"{path}/check", 409, line=line, condition="check", text=card_text(taken["code"]))
    assert ("taken", "arrived") == (refused["code"], calls.get(path)["state"])


def test_returns_are_listed_by_state(calls: Calls, gone: Any) -> None:
    """In the order in which they were opened, page by page."""
    one, two = (line["id"] for line in gone["lines"])
    made = [calls.post("/api/returns", 201, order=gone["id"], lines=[each])["id"] for each in (one, two)]
    made.append(calls.post("/api/returns", 201)["id"])
    calls.post(f"/api/returns/{made[1]}/arrived")
    page = calls.get("/api/returns?limit=2")
    assert made[:2] == [each["id"] for each in page["returns"]]
    rest = calls.get(f"/api/returns?limit=2&cursor={page['next']}")
    assert (made[2:], None) == ([each["id"] for each in rest["returns"]], rest["next"])
    assert [made[0], made[2]] == [each["id"] for each in calls.get("/api/returns?state=expected")["returns"]]
    assert [made[1]] == [each["id"] for each in calls.get("/api/returns?state=arrived")["returns"]]


@SQLITE_ONLY
def test_a_helper_takes_in_and_scraps_nothing(app: Flask, shop: Shop, calls: Calls, gone: Any) -> None:
    """Nor takes a scrapping back: 403, and nothing is changed by it."""
    helper = Calls(client_of(app, shop, Role.HELPER))
    one, two = (line["id"] for line in gone["lines"])
    path = f"/api/returns/{helper.post('/api/returns', 201, order=gone['id'])['id']}"
    helper.post(f"{path}/arrived")
    helper.post(f"{path}/check", 403, line=one, condition="scrap")
    assert ["released", "released"] == states(calls, gone)
    helper.post(f"{path}/check", line=one, condition="resell", text=card_text("D005"))
    calls.post(f"{path}/check", line=two, condition="scrap")
    helper.post(f"{path}/check", 403, line=two, condition="resell", text=card_text("D006"))
    calls.post(f"{path}/check", line=two, condition="resell", text=card_text("D006"))
    assert ["returned", "returned"] == states(calls, gone)
