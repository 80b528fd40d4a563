"""What stands under a station's face: the last scan there, as it stands now, and what Undo takes back."""

from __future__ import annotations

import re
from html import unescape

from calls import Calls
from clients import SQLITE_ONLY
from flask.testing import FlaskClient

pytestmark = SQLITE_ONLY


def told(client: FlaskClient, address: str) -> tuple[str, list[str]]:
    """The sentence, and the words on the Undo button if there is one."""
    html = client.get(address).text
    block = re.search(r'<div class="last">.*?</div>', html, re.DOTALL)
    assert block is not None
    sentence = re.search(r"<p>([^<]+)</p>", block[0])
    assert sentence is not None
    return unescape(sentence[1]), re.findall(r"<button[^>]*data-undo[^>]*>([^<]*)<", block[0])


def test_an_undone_pick_is_told_as_undone(client: FlaskClient, calls: Calls) -> None:
    """The round says where the thing is and no more where to put it; there is nothing left to undo."""
    calls.section()
    calls.ordered(things=2)
    walk = f"/rounds/{calls.post('/api/rounds', 201)['id']}"
    calls.scan("bin", "D001", round=walk.rsplit("/", 1)[1], key="pick")
    assert ("D001: Put it in basket 1.", ["Undo D001"]) == told(client, walk)
    calls.post("/api/scans/pick/undo")
    assert ("D001: undone. It is in bin A-1-1.", []) == told(client, walk)


def test_an_undone_closing_is_told_as_undone(client: FlaskClient, calls: Calls) -> None:
    """The table says where the thing of the last scan is after its parcel is open again."""
    calls.section()
    _, order = calls.picked()
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", "D001", key="pack")
    calls.post("/api/scans/pack/undo")
    assert ("D001: undone. It is in basket 1.", []) == told(client, "/table")


def test_undo_after_a_double_beep(client: FlaskClient, calls: Calls) -> None:
    """A second beep leaves the first scan to be undone, also the one that closed a parcel."""
    calls.section()
    _, order = calls.picked()
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", "D001", key="first")
    calls.scan("table", "D001", key="second")
    html = client.get("/table").text
    assert ['data-undo="first"'] == re.findall(r'data-undo="[^"]*"', html)
    assert "picked" == calls.post("/api/scans/first/undo")["state"]


def test_undo_names_what_it_takes_back(client: FlaskClient, calls: Calls) -> None:
    """After a stop is said to be missing, or to be the wrong thing, Undo names the pick before it."""
    calls.section()
    stays, order = calls.ordered(things=3)
    walk = calls.post("/api/rounds", 201)
    calls.scan("bin", stays[0]["code"], round=walk["id"])
    for line, step in ((order["lines"][1], "short"), (order["lines"][2], "hold")):
        client.post(f"/lines/{line['id']}/{step}", data={"round": walk["id"]})
        assert ["Undo D001"] == told(client, f"/rounds/{walk['id']}")[1]


def test_what_went_on_elsewhere(client: FlaskClient, calls: Calls) -> None:
    """A round's last pick that is packed by now, or held, is told as it stands."""
    calls.section()
    stays, order = calls.ordered(things=2)
    walk = calls.post("/api/rounds", 201)
    for stay in stays:
        calls.scan("bin", stay["code"], round=walk["id"])
    page = f"/rounds/{walk['id']}"
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", "D002")
    assert ("D002 is in the parcel of 1001 at table main.", []) == told(client, page)
    calls.scan("table", "D002", take_out=True)
    client.post(f"/lines/{order['lines'][1]['id']}/hold", data={"words": "Not this thing."})
    assert ("D002 is on table main. Held: Not this thing.", []) == told(client, page)
