"""A section's page: how many cards it needs, from what was typed or from its own past."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.domain.access import Role
from scanflow.domain.things import Bin, Rack, Slot
from scanflow.planning.layout import walks_to
from scanflow.planning.placing import compare
from scanflow.planning.sizing import Burst, Demand, judge_section, size_section
from scanflow.shop import Shop
from scanflow.web.pages.planning.form import odds
from scanflow.workflow import stock

pytestmark = SQLITE_ONLY


def test_typed_demand(shop: Shop, client: FlaskClient) -> None:
    """The page says what sizing says: cards, bins, the risk chosen, and what one bin more buys."""
    furnish(shop, 4)
    html = client.get("/sections/S?intake=15&stay=45&risk=0.01&batch=4,12,20").text
    sizing = size_section(Demand(15, 45, Burst((4, 12, 20))), 0.01, 10)
    assert f"{sizing.needed.slots} cards would do. {sizing.bins} bins of 10 make {sizing.chosen.slots}" in html
    assert f"{sizing.one_more.slots} cards: {odds(sizing.one_more.risk)}, room for" in html
    assert f"about {sizing.no_card_a_year:.1f} times a year" in html
    assert "9 cards are too few for such buying days" in html
    assert all(words.replace("'", "&#39;") in html for words in sizing.assumptions)


def test_the_reverse(shop: Shop, client: FlaskClient) -> None:
    """With so many cards, or those it has, the page says how often none is free."""
    furnish(shop, 4)  # nine slots a section
    for query, cards in (("", 9), ("&cards=120", 120)):
        html = client.get(f"/sections/S?intake=15&stay=45{query}").text
        risk = judge_section(Demand(15, 45), cards, 10).chosen.risk
        assert f"With {cards} cards, you run out of cards for {odds(risk)} things." in html


def test_lost_cards_do_not_count(shop: Shop, client: FlaskClient) -> None:
    """A slot whose card is lost is no card that could be free."""
    furnish(shop, 4)
    shop.act("owner", lambda unit: stock.lose_card(unit, "S009"))
    assert "With 8 cards, you run out" in client.get("/sections/S?intake=15&stay=45").text


def test_own_past(shop: Shop, client: FlaskClient) -> None:
    """Intake and stays come from the shop's own past where nothing is typed; what was typed goes before."""
    start = datetime(2026, 3, 2, tzinfo=UTC)

    def at(days: float) -> None:
        shop.clock = lambda: start + timedelta(days=days)

    at(0)
    shop.act(
        "owner",
        lambda unit: (
            stock.add_section(unit, stock.AddSection(code="B", name="Bells", slots_per_bin=5, colour="green")),
            stock.add_slots(unit, "B", stock.AddSlots(count=5)),
        ),
    )
    stays = []
    for day in (0, 2, 4, 6):
        at(day)
        stays.append(shop.act("owner", lambda unit: stock.put_away(unit, stock.PutAway(title="Bell", section="B"))))
    for day, stay in zip((10, 12, 24, 26), stays, strict=True):  # stays of 10, 10, 20 and 20 days
        at(day)
        shop.act(
            "owner", lambda unit, stay=stay: stock.withdraw(unit, stay.id, stock.Withdraw(reason="Sold at the fair"))
        )
    at(28)
    html = client.get("/sections/B").text
    assert ("15 days on average" in html, "1.0 a week over the last 4 weeks" in html) == (True, True)
    needed = size_section(Demand(1, 15), 0.01, 5).needed.slots
    assert f"{needed} cards would do." in html
    typed = client.get("/sections/B?intake=2&stay=40").text
    assert f"{size_section(Demand(2, 40), 0.01, 5).needed.slots} cards would do." in typed
    assert "You typed 40" in typed
    at(400)
    long_after = client.get("/sections/B").text
    assert ("nothing in the last 13 weeks" in long_after, 'role="alert"' in long_after) == (True, False)


def test_proposed_slots_fill_the_last_bin(shop: Shop, client: FlaskClient) -> None:
    """After somebody worked it out, the slots that are missing are added so that every bin is full."""
    furnish(shop, 4)
    html = client.get("/sections/S?intake=15&stay=14").text
    proposed = re.search(r'name="count" value="(\d+)"><button class="next">', html)
    assert proposed is not None
    assert 303 == client.post("/sections/S/slots", data={"count": proposed[1]}).status_code
    with shop.looking() as unit:
        slots = len(unit.find(Slot, section="S"))
    assert (0, True) == (slots % 10, slots >= size_section(Demand(15, 14), 0.01, 10).needed.slots)
    assert 'class="next">Add' not in client.get("/sections/S").text


@pytest.mark.parametrize(
    ("query", "sentence"),
    [
        ("intake=many&stay=9", "Things that come in a week: write a number from 0.01 to 10,000."),
        ("intake=9&stay=0", "Days that a thing stays: write a number from 0.1 to 10,000."),
        ("intake=9&stay=9&batch=2,x", "Things bought on each of some days: write whole numbers like 4, 12, 20."),
        ("intake=9&stay=9&cards=0", "Cards: write a whole number from 1 to 100,000."),
        ("intake=10000&stay=10000", "That is more than 10000 items at once."),
        ("intake=9&stay=9&risk=2", "Choose one of 0.01, 0.05, 0.1, 0.001."),
    ],
)
def test_what_makes_no_sense(shop: Shop, client: FlaskClient, query: str, sentence: str) -> None:
    """The page says what is wrong, keeps what was typed, and draws no curve."""
    furnish(shop, 4)
    html = client.get(f"/sections/S?{query}").text
    assert (True, False) == (f'role="alert">{sentence}</p>' in html, 'class="curve"' in html)
    assert f'value="{query.split("&")[0].split("=")[1]}"' in html


def test_only_the_owner_adds_slots(app: Flask, shop: Shop) -> None:
    """A helper sees the plan and has no way to change the room."""
    furnish(shop, 4)
    helper = client_of(app, shop, Role.HELPER)
    html = helper.get("/sections/S?intake=15&stay=45").text
    assert ("cards would do" in html, "/sections/S/slots" in html) == (True, False)
    assert 403 == helper.post("/sections/S/slots", data={"count": "5"}).status_code


def test_refused_slots(shop: Shop, client: FlaskClient) -> None:
    """More slots than the section has numbers for are refused on its page; an unknown section is not found."""
    furnish(shop, 4)
    response = client.post("/sections/S/slots", data={"count": "1000"})
    assert (422, True) == (response.status_code, "Section S has numbers up to 999." in response.text)
    assert 404 == client.get("/sections/Q").status_code
    assert 404 == client.post("/sections/Q/slots", data={"count": "5"}).status_code


NEAR = "/sections/S/near?intake=35&quick=50&quick_stay=10&slow_stay=90"


def test_near_places(shop: Shop, client: FlaskClient) -> None:
    """The page says what the simulation says, for the bins of the section as they hang."""
    furnish(shop, 4)
    shop.act(
        "owner", lambda unit: stock.add_slots(unit, "S", stock.AddSlots(count=291))
    )  # one bin after the other, up to 30 on a rack
    html = client.get(NEAR).text
    with shop.looking() as unit:
        walks = walks_to(unit.find(Bin, section="S"), unit.find(Rack))
    found = compare(35, 0.5, 10, 90, 10, walks)
    assert found.metres_saved > 0
    assert (
        f"up to {found.reserved} for quick things saves {found.metres_saved:.2f} m of walking for each thing. "
        f"It takes {found.bins_more:.1f} more bins."
    ) in html


@pytest.mark.parametrize(
    ("query", "words"),
    [
        (NEAR.replace("=50", "=100"), "Share that sells quickly: write a number from 1 to 99."),
        (NEAR.replace("=90", "=soon"), "Days of the others: write a number"),
        (NEAR.replace("intake=35", "intake=3500"), "A section holds up to 2,000 things here."),
    ],
)
def test_near_places_that_make_no_sense(shop: Shop, client: FlaskClient, query: str, words: str) -> None:
    """A field that is wrong says what it wants."""
    furnish(shop, 4)
    assert words in client.get(query).text


def test_near_places_start_from_its_past(shop: Shop, client: FlaskClient) -> None:
    """The intake of the section stands in the form; a section that is not there is no page."""
    furnish(shop, 4)
    assert 'name="intake" inputmode="decimal" value="1"' in client.get("/sections/S/near").text
    assert 404 == client.get("/sections/Q/near").status_code
