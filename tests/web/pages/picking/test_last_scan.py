"""What stands under a station's face: the last scan there, as it stands now, and what Undo takes back."""

from __future__ import annotations

import html
import re
from datetime import timedelta
from html import unescape

from calls import Calls
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from paperwork import jpeg

from scanflow.domain.life import Hold, LineState, ParcelState
from scanflow.domain.things import Line, Parcel
from scanflow.shop import Shop
from scanflow.vision import photographs
from scanflow.workflow.stock import photos

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


TOLD = "The order says “LONG cage – rear mech”."


def last(client: FlaskClient, address: str) -> str:
    """The block of the last scan as the page says it, empty where there is none."""
    found = re.search(r'<div class="last">.*?</div></div></div>', client.get(address).text, re.DOTALL)
    return html.unescape(found[0]) if found else ""


def sold(calls: Calls, shop: Shop, said: str = "LONG cage – rear mech") -> tuple[str, str, str]:
    """A thing with a picture that an order wants under other words: its code, its order and its line."""
    calls.section()
    stay = calls.put_away("Rear derailleur, long cage")
    photo = photographs.photo(shop.readers, jpeg())
    shop.act("owner", lambda unit: photos.keep(unit, stay["id"], photo))
    order = calls.post("/api/orders", 201, number="7", lines=[{"reference": stay["reference"], "title": said}])
    return stay["code"], order["id"], order["lines"][0]["id"]


def test_after_a_yes_the_thing_stays_on_the_page(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """At the bin: its picture, both titles, “not this thing” and undo; the next scan takes their place."""
    code, order, _ = sold(calls, shop)
    walk = calls.post("/api/rounds", 201, orders=[order])["id"]
    assert TOLD in html.unescape(client.get(f"/rounds/{walk}").text)
    assert calls.scan("bin", code, round=walk)["advice"].endswith(TOLD)
    told = last(client, f"/rounds/{walk}")
    wanted = ("Picture of Rear derailleur, long cage", TOLD, f"{code}: not this thing", "data-undo")
    assert [True] * 4 == [each in told for each in wanted]
    assert "small" not in told.split("img")[0]
    calls.scan("bin", "D002", round=walk)
    assert (False, True) == (code in last(client, f"/rounds/{walk}"), "D002" in last(client, f"/rounds/{walk}"))


def test_of_a_closed_parcel_the_last_thing_can_be_doubted(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """The scan that closed it stays to be compared; one press opens the parcel again and holds the line."""
    code, order, line = sold(calls, shop)
    walk = calls.post("/api/rounds", 201, orders=[order])["id"]
    calls.scan("bin", code, round=walk)
    parcel = calls.post("/api/parcels", 201, orders=[order])["id"]
    assert TOLD in html.unescape(client.get("/table").text)
    answer = calls.scan("table", code)
    assert ("closed", True) == (answer["parcel_state"], answer["advice"].endswith(TOLD))
    told = last(client, "/table")
    assert (True, True, True) == ("/photo?hash=" in told, TOLD in told, f"{code}: not this thing" in told)
    fields = dict(re.findall(r'name="(words|round|table)" value="([^"]*)"', told))
    action = re.search(r'action="(/lines/[^"]+/hold)"', told)
    assert action is not None
    assert "/table?table=main" == client.post(action[1], data=fields).headers["Location"]
    with shop.looking() as unit:
        held, box = unit.get(Line, line), unit.get(Parcel, parcel)
    assert held is not None and box is not None
    assert (LineState.PACKED, Hold.SUSPECT, ParcelState.OPEN) == (held.state, held.hold, box.state)


def test_what_has_left_is_not_doubted_here(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """Where the parcel counts as gone nothing is offered that would be refused."""
    code, order, _ = sold(calls, shop, "")
    walk = calls.post("/api/rounds", 201, orders=[order])["id"]
    calls.scan("bin", code, round=walk)
    calls.post("/api/parcels", 201, orders=[order])
    calls.scan("table", code)
    clock = shop.clock
    shop.clock = lambda: clock() + timedelta(days=4)
    assert (True, False) == (code in last(client, "/table"), "not this thing" in last(client, "/table"))


def test_both_titles_stand_on_the_order_and_its_slip(client: FlaskClient, calls: Calls, shop: Shop) -> None:
    """Where they are the same but for case and punctuation, only ours stands there."""
    _, order, _ = sold(calls, shop)
    assert TOLD in html.unescape(client.get(f"/orders/{order}").text)
    stay = calls.put_away("Brass bell")
    same = calls.post("/api/orders", 201, number="8", lines=[{"reference": stay["reference"], "title": "BRASS, bell!"}])
    assert "The order says" not in client.get(f"/orders/{same['id']}").text
    assert b"%PDF" == client.get(f"/orders/{order}/slip.pdf").data[:4]


def test_a_thing_in_a_parcel_is_told_by_its_order(client: FlaskClient, calls: Calls) -> None:
    """The table says in whose parcel a thing lies: by the order's number, not by the slot's."""
    calls.section()
    stays, order = calls.picked("B-77", 2)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stays[1]["code"])
    assert "in the parcel of B-77 at table main" in client.get("/table").text
