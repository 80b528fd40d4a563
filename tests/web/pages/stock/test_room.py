"""The room is drawn on a page as it stands, and its walk is compared with that of other rooms."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish

from labels.paper import COLOURS
from scanflow.domain.access import Role
from scanflow.planning.racking import Measured
from scanflow.shop import Shop
from scanflow.workflow import stock

pytestmark = SQLITE_ONLY


def drawing(html: str, name: str) -> str:
    """The drawings of this kind, one after another: a rack has a front of its own."""
    found = re.findall(rf'<svg class="drawn {name}\b.*?</svg>', html, re.DOTALL)
    assert found
    return "".join(found)


def heights(client: FlaskClient) -> set[str]:
    """How high racks are drawn, in mm."""
    front = drawing(client.get("/room").text, "front")
    return set(re.findall(r'translate[^>]*><rect x="0" y="0" width="\d+" height="(\d+)"', front))


def metres(html: str) -> dict[str, float]:
    """The walks that the page tells, by the room."""
    return {room: float(walk) for room, walk in re.findall(r"<dt>([^<]*)</dt><dd>([\d.]+) m", html)}


def test_every_bin_leads_to_what_stands_in_it(shop: Shop, client: FlaskClient) -> None:
    """The front has a link for each bin of the aisle, and the link leads to the bin's own page."""
    furnish(shop, 25)  # three bins of each of four sections, a rack each
    links = re.findall(r'<a href="(/shelf\?bin=[^"]+)"', drawing(client.get("/room").text, "front"))
    assert 12 == len(links)
    assert "<h1>In bin A-1-1</h1>" in client.get(links[0]).text


def test_fronts_begin_where_bins_do(shop: Shop, client: FlaskClient) -> None:
    """No empty tiers stand above the highest bin: a rack is drawn as high as that, with the bins on their floors."""
    furnish(shop, 25)  # three bins of five on the lowest tier
    assert {"300"} == heights(client)
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=30)))
    assert {"600"} == heights(client)


def test_racks_lead_to_their_aisle(shop: Shop, client: FlaskClient) -> None:
    """A rack of the plan leads to the fronts of its own aisle."""
    furnish(shop, 25)
    shop.act("owner", lambda unit: stock.place_rack(unit, "D", stock.PlaceRack(aisle=3, start=0.0)))
    plan = drawing(client.get("/room").text, "plan")
    assert {"0", "3"} == set(re.findall(r"aisle=(\d)", plan))
    front = drawing(client.get("/room?aisle=3").text, "front")
    assert ["D"] == re.findall('data-rack="([^"]+)"', front)


def test_what_matters_is_filled(shop: Shop, client: FlaskClient) -> None:
    """Bins are filled with their section's paper; with a section chosen only its bins, and only its racks are shown."""
    furnish(shop, 25)
    html = client.get("/room").text
    assert {"url(#paper-yellow)", "url(#paper-pink)", "url(#paper-green)", "url(#paper-blue)"} == set(
        re.findall(r'fill="(url[^"]+)"', drawing(html, "front"))
    )
    pattern = re.search(r'<pattern id="paper-green".*?</pattern>', html)
    assert pattern is not None
    assert COLOURS["green"].hex in pattern[0]
    chosen = drawing(client.get("/room?section=S").text, "front")
    assert ({"url(#paper-pink)"}, ["B"]) == (
        set(re.findall(r'fill="(url[^"]+)"', chosen)),
        re.findall('data-rack="([^"]+)"', chosen),
    )


def test_walk_is_compared(shop: Shop, client: FlaskClient) -> None:
    """Sections on racks far from each other walk farther than bins that fill the first rack by their letters."""
    furnish(shop, 25)
    for number, rack in enumerate("ABCD"):
        shop.act(
            "owner",
            lambda unit, rack=rack, number=number: stock.place_rack(
                unit, rack, stock.PlaceRack(aisle=0, start=10.0 * number)
            ),
        )
    html = client.get("/room").text
    walks = metres(html)
    assert ["Here", "If bins stood in order of their letters", "If bins stood anywhere"] == list(walks)
    assert (
        walks["If bins stood in order of their letters"] < 2.3 < 10 < walks["Here"]
    )  # twelve bins fit on the first rack, 1.1 m wide
    assert "so every bin counts alike" in html


def test_visits_are_what_left(shop: Shop, client: FlaskClient) -> None:
    """Sections count by the things that left them, once enough have; what only moved within the room did not leave."""
    stays = furnish(shop, 66).stays  # one of them shipped
    for stay in stays[1:59:2]:
        shop.act("owner", lambda unit, id=stay.id: stock.withdraw(unit, id, stock.Withdraw(reason="Sold at the fair")))
    assert "in the last 90 days, 30 things." in client.get("/room").text
    shop.act("owner", lambda unit: stock.move(unit, stays[61].id, stock.Move(to="D071")))
    assert "in the last 90 days, 30 things." in client.get("/room").text


@pytest.mark.parametrize(
    ("query", "sentence"),
    [
        ("rack=24x48x72in&bin=23x8x6in", "5 bins across with 153 mm to spare, 6 tiers: 30 on a rack."),
        ("rack=600x1000x1800&bin=580x400x200", "2 bins across with 150 mm to spare, 5 tiers: 10 on a rack."),
        ("rack=600x1000x1800&bin=580x4000x200", "Not one such bin goes onto such a rack."),
        ("rack=large&bin=23x8x6in", "is no size like 23x8x6in, in mm, cm or in."),
        ("kg=heavy", "Weight of a full bin: write a number from 0 to 100,000."),
        ("kg=12&rated=50", "A shelf of 5 full bins carries 60 kg, more than its maker&#39;s rating of 50 kg."),
    ],
)
def test_what_fits(shop: Shop, client: FlaskClient, query: str, sentence: str) -> None:
    """Bins across and tiers up are told for any rack, with what to mind."""
    furnish(shop, 1)
    assert sentence in client.get(f"/room?{query}").text


def test_empty_room(client: FlaskClient) -> None:
    """A room with nothing in it says how it fills."""
    html = client.get("/room").text
    assert ("once a section has slots" in html, '<svg class="drawn' in html) == (True, False)


MEASURES = {"rack": "600x1475x1000", "bin": "580x350x180", "kg": "9", "rated": "30", "table": "1"}


def test_measures_are_kept(shop: Shop, client: FlaskClient) -> None:
    """What racks and bins measure is kept and drawn: how wide and high a tier is, and the table before an aisle."""
    client.post("/room", data=MEASURES)
    furnish(shop, 25)
    html = client.get("/room").text
    assert 'name="rack" value="600x1475x1000"' in html
    assert "Racks are 1.48 m wide and 0.60 m deep" in html
    assert "A shelf of 4 full bins carries 36 kg, more than its maker&#39;s rating of 30 kg." in html
    front = drawing(html, "front")
    assert '<rect x="0" y="0" width="1475" height="320"' in front
    assert '<rect x="1400" y="300" width="1200" height="600"' in drawing(html, "plan")
    assert "Keep these measures" not in html
    assert "Keep these measures" in client.get("/room?table=0").text


def test_measures_that_can_not_be_kept(shop: Shop, app: Flask, client: FlaskClient) -> None:
    """Bins that hang already need their places; sizes must be sizes; and only the owner measures."""
    furnish(shop, 25)
    narrow = client.post("/room", data=MEASURES | {"bin": "580x700x180"})
    assert (422, True) == (narrow.status_code, "bins would have no place where 2 go across and 3 up" in narrow.text)
    assert 422 == client.post("/room", data=MEASURES | {"rack": "tall"}).status_code
    assert 403 == client_of(app, shop, Role.HELPER).post("/room", data=MEASURES).status_code
    with shop.looking() as unit:
        assert Measured() == unit.settings.racks


def test_settings_leave_the_measures(shop: Shop, client: FlaskClient) -> None:
    """Saving the other settings keeps what was measured."""
    client.post("/room", data=MEASURES)
    client.post("/settings", data={"name": "Reclaimed parts", "zone": "UTC"})
    with shop.looking() as unit:
        assert ("Reclaimed parts", "1") == (unit.settings.name, unit.settings.racks.table)


def test_the_room_planned_anew(shop: Shop, client: FlaskClient) -> None:
    """All bins go on one rack, heavy ones at the bottom, and the walk is shorter than it is."""
    furnish(shop, 25)
    html = client.get("/room/anew?heavy=w").text
    walks = metres(html)
    now = re.search(r"Now it walks ([\d.]+) m, on 4 racks", html)
    assert now is not None
    assert walks["Planned so"] <= min(walks.values()) < float(now[1])
    front = drawing(html, "front")
    assert ["A"] == re.findall('data-rack="([^"]+)"', front)
    wheels = {int(tier) for tier in re.findall('data-bin="A-([0-9])-[0-9]" data-section="W"', front)}
    assert max(wheels) <= 4  # shelves up to 1 m, tests/planning/test_racking.py
    assert ("<a " in front, "No bins belong to Q." in client.get("/room/anew?heavy=q").text) == (False, True)


def test_nothing_to_plan_anew(client: FlaskClient) -> None:
    """Without bins the way leads back to the room."""
    assert "/room" == client.get("/room/anew").headers["Location"]
