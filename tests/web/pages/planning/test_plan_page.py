"""Planning a section page by page: what was typed goes along, and only the last page changes the room."""

from __future__ import annotations

import re
from html import unescape

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.things import Bin, Section, Slot
from scanflow.planning.bulk import bulk
from scanflow.planning.measures import size
from scanflow.planning.sizing import Demand, size_section
from scanflow.shop import Shop
from scanflow.storage.views import ledger as ledger_views

pytestmark = SQLITE_ONLY
GOODS = {"section": "Bells & horns", "code": "b"}
FLOW = GOODS | {"slots_per_bin": "12", "intake": "10", "stay": "40", "risk": "0.01"}
WHOLE = FLOW | {"count": "60", "colour": "green"}


def fields(html: str) -> dict[str, str]:
    """Names and values of the form on the page, hidden ones too, as a browser would send them."""
    form = html[html.index('<form class="form"') :]
    form = form[: form.index("</form>")]
    found = {}
    for tag in re.findall(r"<input[^>]*>", form):
        name, value = (re.search(rf'\b{each}="([^"]*)"', tag) for each in ("name", "value"))
        if name and ('type="radio"' not in tag or "checked" in tag):
            found[name[1]] = unescape(value[1]) if value else ""
    chosen = re.search(r'<select[^>]*name="(\w+)".*?<option value="([^"]+)" selected', form, re.DOTALL)
    text = re.search(r'<textarea[^>]*name="(\w+)"[^>]*>([^<]*)</textarea>', form)
    found |= {chosen[1]: chosen[2]} if chosen else {}
    return found | ({text[1]: unescape(text[2])} if text else {})


def heading(html: str) -> str:
    found = re.search("<h1>([^<]*)</h1>", html)
    assert found is not None
    return found[1]


def test_whole_way(shop: Shop, client: FlaskClient) -> None:
    """From the first page to the last by what the pages themselves send; then the section stands."""
    typed = [
        GOODS,
        {"slots_per_bin": "12"},
        {"intake": "10", "stay": "40", "risk": "0.01"},
        {"colour": "green"},
    ]
    html = client.get("/plan").text
    for step, answers in enumerate(typed, 2):
        html = client.get("/plan", query_string=fields(html) | answers | {"step": step}).text
        with shop.looking() as unit:
            assert () == unit.find(Section)
    assert "Make the section?" == heading(html)
    response = client.post("/plan", data=fields(html))
    assert (303, "/plan/made/B") == (response.status_code, response.headers["Location"])
    sizing = size_section(Demand(10, 40), 0.01, 12)
    with shop.looking() as unit:
        assert Section("B", "Bells & horns", 12, "green", 3, sizing.chosen.slots) == unit.get(Section, "B")
        assert sizing.bins == len(unit.find(Bin, section="B"))
        assert {events.SectionAdded, events.SlotsAdded} <= {
            type(entry.event) for entry in ledger_views.newest(unit.connection, limit=5)
        }
    assert 'href="/cards?section=B"' in client.get("/plan/made/B").text


def test_back_keeps_what_was_typed(client: FlaskClient) -> None:
    """Going back to any page, everything typed on all pages is still there."""
    for step in range(1, 5):
        html = client.get("/plan", query_string=WHOLE | {"step": step}).text
        assert WHOLE | {"code": "B"} == {name: fields(html)[name] for name in WHOLE}


def test_the_answer_is_that_of_the_planning(client: FlaskClient) -> None:
    """The page says the cards, the bins and the assumptions that sizing has for what was typed."""
    html = unescape(client.get("/plan", query_string=FLOW | {"step": 4}).text)
    sizing = size_section(Demand(10, 40), 0.01, 12)
    assert f"{sizing.needed.slots} cards would do. {sizing.bins} bins of 12 make {sizing.chosen.slots}" in html
    assert ([True, True], str(sizing.chosen.slots)) == (
        [words in html for words in sizing.assumptions[:2]],
        fields(html)["count"],
    )


def test_a_proposed_count_follows_the_plan_and_a_typed_one_stays(client: FlaskClient) -> None:
    """Who goes back and plans for more gets the new proposal, unless a count of their own was typed."""
    proposed = fields(client.get("/plan", query_string=FLOW | {"step": 4}).text)
    more = str(size_section(Demand(30, 40), 0.01, 12).chosen.slots)
    again = client.get("/plan", query_string=proposed | {"intake": "30", "step": 4}).text
    assert more == fields(again)["count"]
    own = client.get("/plan", query_string=proposed | {"count": "61", "intake": "30", "step": 4}).text
    assert "61" == fields(own)["count"]


def test_bulk_from_sizes(client: FlaskClient) -> None:
    """Without a number of things in a bin it is worked out from the sizes of some, with its warnings."""
    things = ["5x4x3in"] * 5 + ["12x8x6in"] * 5
    query = GOODS | {"bin_size": "23x8x6in", "things": "\n".join(things), "step": "3"}
    html = unescape(client.get("/plan", query_string=query).text)
    expected = bulk([size(each) for each in things], size("23x8x6in"))
    assert f"{expected.count.slots_per_bin} in every bin;" in html
    assert [True] * len(expected.warnings) == [words in html for words in expected.warnings]
    assert len(expected.warnings) > 0


def test_sizes_without_a_unit_are_in_that_of_the_bin(client: FlaskClient) -> None:
    """Nobody who measures a bin in inches means millimetres by the things."""
    query = GOODS | {"bin_size": "23x8x6in", "step": "3"}
    pages = [client.get("/plan", query_string=query | {"things": each}).text for each in ("5x4x3", "5 x 4 x 3 in")]
    each = bulk([size("5x4x3in")], size("23x8x6in")).count.slots_per_bin
    assert [True, True] == [f"{each} in every bin" in page for page in pages]


@pytest.mark.parametrize(
    ("wrong", "step", "question", "sentence"),
    [
        (
            {"slots_per_bin": "", "bin_size": "23x8x6in", "things": "5x4x3mm"},
            3,
            "How big are they?",
            "of these would lie in one bin. Check the units of the bin and of the things.",
        ),
        ({"code": "B4"}, 5, "What do you sell?", "One or two letters from A to Z."),
        ({"code": "S"}, 3, "What do you sell?", "Section S exists. Choose other letters."),
        ({"section": ""}, 2, "What do you sell?", "Name is needed."),
        ({"slots_per_bin": ""}, 4, "How big are they?", "Things in one bin: write a whole number from 1 to 999."),
        (
            {"slots_per_bin": "", "things": "4x4x4in\nbig"},
            3,
            "How big are they?",
            "Line 2: 'big' is no size like 23x8x6in, in mm, cm or in.",
        ),
        (
            {"stay": "x"},
            4,
            "How many, and for how long?",
            "Days that a thing stays: write a number from 0.1 to 10,000.",
        ),
        ({"risk": "7"}, 4, "How many, and for how long?", "Choose one of 0.01, 0.05, 0.1, 0.001."),
        ({"count": "0"}, 5, "How many cards?", "Cards to begin with: write a whole number from 1 to 5,000."),
        (
            {"colour": "plaid"},
            5,
            "How many cards?",
            "Colour: choose 'yellow', 'orange', 'pink', 'green', 'blue', 'grey', 'violet' or 'white'.",
        ),
    ],
)
def test_what_lacks_is_asked_again(
    shop: Shop, client: FlaskClient, wrong: dict[str, str], step: int, question: str, sentence: str
) -> None:
    """The page whose answer can't be used comes again and says why, however far the next one was."""
    furnish(shop, 0)
    for response in (
        client.get("/plan", query_string=WHOLE | wrong | {"step": step}),
        client.post("/plan", data=WHOLE | wrong),
    ):
        html = unescape(response.text)
        assert (True, question, True) == (response.status_code in (409, 422), heading(html), sentence in html)
    with shop.looking() as unit:
        assert ((), None) == (unit.find(Slot, section="B"), unit.get(Section, "B"))


def test_large_sections_have_wider_numbers(shop: Shop, client: FlaskClient) -> None:
    """A section of more than 500 cards has four digits, so that it can grow without new cards."""
    assert 303 == client.post("/plan", data=WHOLE | {"count": "501"}).status_code
    with shop.looking() as unit:
        section = unit.get(Section, "B")
    assert section is not None
    assert 4 == section.digits


def test_only_the_owner_makes_sections(app: Flask, shop: Shop) -> None:
    """A helper plans none either, and no page of an empty room leads there."""
    helper = client_of(app, shop, Role.HELPER)
    assert [403, 403] == [helper.get("/plan").status_code, helper.post("/plan", data=WHOLE).status_code]
    assert [] == [
        path for path in ("/put-away", "/slots", "/shelf", "/room", "/counts") if "/plan" in helper.get(path).text
    ]
    assert 404 == helper.get("/plan/made/B").status_code


@pytest.mark.parametrize(("rack", "first"), [(None, "A-1-4"), ("B", "B-1-4"), ("-", "E-1-1")])
def test_where_bins_hang(shop: Shop, client: FlaskClient, rack: str | None, first: str) -> None:
    """The first rack with room for all the bins is proposed; another, or one of its own, can be chosen."""
    furnish(shop, 25)  # three bins on each of four racks
    html = client.get("/plan", query_string=WHOLE | {"step": 5}).text
    assert "rack A in aisle 0, 27 free places" in html
    sent = fields(html) | ({"rack": rack} if rack else {})
    assert 303 == client.post("/plan", data=sent).status_code
    with shop.looking() as unit:
        assert first == unit.find(Bin, section="B")[0].name


def test_too_many_bins_for_any_rack(shop: Shop, client: FlaskClient) -> None:
    """Where no rack has room for all, one of its own is proposed; a rack that is not there is refused."""
    furnish(shop, 25)
    html = client.get("/plan", query_string=WHOLE | {"count": "360", "step": "5"}).text
    assert "-" == fields(html)["rack"]
    assert 404 == client.post("/plan", data=fields(html) | {"rack": "Q"}).status_code
