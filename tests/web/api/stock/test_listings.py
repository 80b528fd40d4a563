"""Offers of things over HTTP: listed by their state, ended, and held against what a channel offers."""

from __future__ import annotations

from typing import Any

import pytest
from calls import Calls
from clients import client_of
from flask import Flask

from scanflow.domain.access import Role
from scanflow.shop import Shop


def offer(calls: Calls, stay: Any, channel: str, listing: str = "") -> Any:
    body = {"listing": listing or f"{channel[0]}-{stay['code']}", "channel": channel}
    return calls.post(f"/api/stays/{stay['id']}/listings", **body)


def sold(calls: Calls) -> tuple[Any, Any]:
    """A thing that is offered on two channels and sold on one, and the other offer."""
    calls.section()
    stay = calls.put_away()
    offer(calls, stay, "fair")
    other = offer(calls, stay, "corner")
    lines = [{"reference": stay["reference"]}]
    calls.post("/api/orders", 201, number="1", channel="fair", lines=lines)
    return stay, other


def listed(calls: Calls, state: str = "") -> list[tuple[str, str]]:
    found = calls.get(f"/api/listings{'?state=' + state if state else ''}")["listings"]
    return [(each["listing"], each["state"]) for each in found]


def test_what_was_sold_elsewhere_is_to_be_taken_down(calls: Calls) -> None:
    """It has channel and id to be found by, and is no duty once it is said to be down; said twice is the same."""
    stay, other = sold(calls)
    (duty,) = calls.get("/api/listings?state=to_take_down")["listings"]
    assert duty == {
        "id": other["id"],
        "channel": "corner",
        "listing": "c-D001",
        "stay": stay["id"],
        "code": "D001",
        "title": "Rear derailleur",
        "state": "to_take_down",
        "since": other["since"],
    }
    for _ in range(2):
        assert duty | {"state": "ended"} == calls.post(f"/api/listings/{other['id']}/ended")
    assert [] == listed(calls, "to_take_down")
    assert [("f-D001", "ended"), ("c-D001", "ended")] == listed(calls)
    assert 404 == calls.client.post("/api/listings/none/ended", json={}).status_code


def test_offers_are_listed_page_by_page(calls: Calls) -> None:
    """In the order in which they came; a state that is none is refused."""
    calls.section()
    for title in ("Saddle", "Lamp", "Bell"):
        offer(calls, calls.put_away(title), "fair")
    first = calls.get("/api/listings?limit=2&state=up")
    second = calls.get(f"/api/listings?limit=2&state=up&cursor={first['next']}")
    told = [[each["title"] for each in page["listings"]] for page in (first, second)]
    assert ([["Saddle", "Lamp"], ["Bell"]], None) == (told, second["next"])
    assert 422 == calls.client.get("/api/listings?state=sold").status_code


def test_a_stay_shows_the_first_offer_that_has_not_ended(calls: Calls) -> None:
    """The id that put-away or PATCH says is one without a channel; another one takes its place."""
    calls.section()
    body = {"title": "Lamp", "section": "D", "listing": "L-1"}
    stay = calls.post("/api/stays", 201, **body)
    corner = offer(calls, stay, "corner")
    path = f"/api/stays/{stay['id']}"
    told = [calls.client.patch(path, json={"listing": each}).get_json()["listing"] for each in ("L-2", "")]
    calls.post(f"/api/listings/{corner['id']}/ended")
    assert ("L-1", ["c-D001", "c-D001"], "") == (stay["listing"], told, calls.get(path)["listing"])
    assert [("L-1", "ended"), ("c-D001", "ended"), ("L-2", "ended")] == listed(calls)


def check(calls: Calls, *rows: str, channel: str = "corner", status: int = 200) -> Any:
    file = "\r\n".join(("reference,listing,title", *rows, "")).encode()
    return calls.upload("/api/listings/check", status, file=file, channel=channel)


def test_a_channels_file_is_held_against_the_room(calls: Calls) -> None:
    """What is about to be sold twice is told first, with its channel's id; nothing is changed."""
    stay, _ = sold(calls)
    other = calls.put_away("Saddle")
    before = calls.get("/api/health")["ledger"]
    found = check(calls, f"{stay['reference']},c-D001,Derailleur", f"{other['reference']},c-9,Saddle")
    assert ("corner", 2) == (found["channel"], found["rows"])
    gone, new = found["differs"]
    assert gone == {
        "kind": "gone",
        "why": "Order 1 has it.",
        "row": 2,
        "reference": stay["reference"],
        "listing": "c-D001",
        "title": "Rear derailleur",
        "stay": stay["id"],
        "code": "D001",
        "correct": stay["reference"],
    }
    assert ("new_id", 3, "c-9") == (new["kind"], new["row"], new["listing"])
    assert before == calls.get("/api/health")["ledger"]


@pytest.mark.parametrize(("fields", "pointer"), [({"channel": "corner"}, "/file"), ({"file": b"a"}, "/channel")])
def test_a_check_needs_a_file_and_a_channel(calls: Calls, fields: dict[str, Any], pointer: str) -> None:
    """Each is asked for by its name."""
    answer = calls.upload("/api/listings/check", 422, **fields)
    assert pointer in [each["pointer"] for each in answer["errors"]]


def test_a_helper_takes_down_and_does_not_check(app: Flask, shop: Shop, calls: Calls) -> None:
    """A duty is anybody's; what all of a channel's offers are is not."""
    _, other = sold(calls)
    helper = Calls(client_of(app, shop, Role.HELPER))
    assert "ended" == helper.post(f"/api/listings/{other['id']}/ended")["state"]
    check(helper, status=403)
