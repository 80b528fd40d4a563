"""A round whose stops are held or missing, and a parcel in which something was cancelled: the pages say what is so."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

from calls import Calls
from clients import SQLITE_ONLY
from flask.testing import FlaskClient

pytestmark = SQLITE_ONLY


def head(client: FlaskClient, address: str) -> str:
    found = re.search(r"<h1[^>]*>(.*?)</h1>", client.get(address).text, re.DOTALL)
    assert found is not None
    return unescape(found[1])


def said(client: FlaskClient, address: str) -> str:
    found = re.search(r'<p class="say">(.*?)</p>', client.get(address).text, re.DOTALL)
    assert found is not None
    return unescape(found[1])


def main_button(client: FlaskClient, address: str) -> list[str]:
    return re.findall(r'<(?:a|button) class="next"[^>]*>([^<]*)<', client.get(address).text)


def walk_of(calls: Calls, things: int) -> tuple[str, Any]:
    """The address of a round for one order of so many things, and that order."""
    calls.section()
    _, order = calls.ordered(things=things)
    return f"/rounds/{calls.post('/api/rounds', 201)['id']}", order


def test_a_held_stop_is_not_done(client: FlaskClient, calls: Calls) -> None:
    """It is told apart while the round goes on, and when no other stop is left."""
    page, order = walk_of(calls, 3)
    calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", why="Not this thing.")
    assert "0 of 3 stops done, 1 held" == head(client, page)
    for code in ("D002", "D003"):
        calls.scan("bin", code, round=page.rsplit("/", 1)[1])
    expected = "2 things picked, 1 held. What is held waits for another round once it is settled."
    assert ("All stops are visited", expected) == (head(client, page), said(client, page))


def test_a_missing_stop_is_told(client: FlaskClient, calls: Calls) -> None:
    """It is not done either, and a round without such stops says that all are."""
    page, order = walk_of(calls, 2)
    calls.scan("bin", "D001", round=page.rsplit("/", 1)[1])
    calls.post(f"/api/lines/{order['lines'][1]['id']}/short")
    assert ("All stops are visited", "1 thing picked, 1 missing.") == (head(client, page), said(client, page))
    calls.scan("bin", "D002", round=page.rsplit("/", 1)[1])
    assert ("All stops are done", "2 things picked.") == (head(client, page), said(client, page))


def test_a_round_without_a_stop_left_is_not_under_way(client: FlaskClient, calls: Calls) -> None:
    """However its stops ended, it is on neither page; a stop that wants walking again brings it back."""
    page, order = walk_of(calls, 3)
    walk = page.rsplit("/", 1)[1]
    calls.scan("bin", "D001", round=walk, key="pick")
    calls.post(f"/api/orders/{order['id']}/cancel", line=order["lines"][1]["id"])
    assert [True, True] == [walk in client.get(address).text for address in ("/", "/rounds")]
    calls.post(f"/api/lines/{order['lines'][2]['id']}/hold", why="Not this thing.")
    assert [False, False] == [walk in client.get(address).text for address in ("/", "/rounds")]
    calls.post("/api/scans/pick/undo")
    assert ["Go on with the round, 1 stop"] == main_button(client, "/")


def test_what_must_come_out_is_what_the_table_says(client: FlaskClient, calls: Calls) -> None:
    """No parcel that would be refused is offered to be closed; the last thing out, the empty one is put away."""
    calls.section()
    _, order = calls.picked(things=2)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", "D001")
    calls.post(f"/api/orders/{order['id']}/cancel")
    expected = ("1 thing must come out", "1 thing in the parcel. D001 was cancelled.", ["Take out D001"])
    assert expected == (head(client, "/table"), said(client, "/table"), main_button(client, "/table"))
    calls.scan("table", "D001", take_out=True)
    assert ("The parcel is empty", ["Set the empty parcel aside"]) == (
        head(client, "/table"),
        main_button(client, "/table"),
    )
    assert ["Put something away"] == main_button(client, "/")
    action = re.search(r'action="(/table/[^"]+/set-aside)"', client.get("/table").text)
    assert action is not None
    client.post(action[1], data={"table": "main"})
    assert "Which order do you pack?" == head(client, "/table")


def test_a_held_thing_in_the_parcel(client: FlaskClient, calls: Calls) -> None:
    """It is named with its reason, and closing is not offered, neither whole nor as a part."""
    calls.section()
    _, order = calls.picked(things=2)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", "D001")
    calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", why="Not this thing.")
    assert "Close it as a part" not in client.get("/table").text
    calls.post(f"/api/orders/{order['id']}/cancel", line=order["lines"][1]["id"])
    assert "1 thing in the parcel. D001 is held: Not this thing." == said(client, "/table")
    assert "in the parcel of 1001 at table main" in client.get("/table").text
    assert [] == main_button(client, "/table")
