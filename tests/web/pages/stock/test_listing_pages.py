"""Offers on pages: the thing's own, the list of duties, and a channel's file beside the room."""

from __future__ import annotations

import io
import re

from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from form_fields import fields_of
from page_text import figures, text_of
from werkzeug.test import TestResponse

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.things import Listing
from scanflow.shop import Shop

pytestmark = SQLITE_ONLY


def offered(calls: Calls) -> str:
    """A thing that is offered on two channels and sold on one of them: its stay."""
    calls.section()
    stay = calls.put_away()
    path = f"/stays/{stay['id']}/listings"
    for channel in ("fair", "corner"):
        form = {"listing": f"{channel[0]}-1", "channel": channel}
        assert 303 == calls.client.post(path, data=form).status_code
    calls.post("/api/orders", 201, number="1", channel="fair", lines=[{"reference": stay["reference"]}])
    return str(stay["id"])


def states(shop: Shop) -> dict[str, bool]:
    """Whether each offer has not ended."""
    with shop.looking() as unit:
        return {each.listing: each.ended is None for each in unit.find(Listing)}


def test_a_sold_thing_is_a_duty_until_its_other_offer_is_down(calls: Calls, shop: Shop) -> None:
    """Today leads to it; the press ends it, and nothing is left to take down."""
    offered(calls)
    assert "Take down 1 offer" in text_of(calls.client.get("/").text)
    page = calls.client.get("/listings").text
    assert re.search(figures(1, "offer to take down"), text_of(page))
    assert "on corner" in text_of(page)
    [action] = re.findall(r'action="(/listings/[^"]*/ended)"', page)
    assert 303 == calls.client.post(action).status_code
    assert {"f-1": True, "c-1": False} == states(shop)
    assert "No offer is to be taken down" in text_of(calls.client.get("/listings").text)
    assert "Take down" not in text_of(calls.client.get("/").text)


def test_the_list_is_narrowed_by_state_and_words(calls: Calls) -> None:
    """By a word of the title, slot or channel, or by the whole id; a state that is none is what is to be taken down."""
    offered(calls)

    def found(query: str) -> list[str]:
        return re.findall(r'<output id="listing-[^"]*">([^<]*)', calls.client.get(f"/listings?{query}").text)

    assert ["c-1"] == found("") == found("state=sold")
    assert ["c-1", "f-1"] == found("state=all") == found("state=all&words=derailleur") == found("state=all&words=D001")
    assert ["f-1"] == found("state=ended") == found("state=all&words=fair") == found("state=all&words=f-1")
    assert [] == found("state=up") == found("state=all&words=f-")


def test_a_thing_shows_its_offers(calls: Calls, shop: Shop) -> None:
    """Each with its channel and state; one is added and ended on its page, and a search finds it by any id."""
    stay = offered(calls)
    page = calls.client.get(f"/stays/{stay}").text
    told = text_of(page.partition('id="offers"')[2].partition("</section>")[0])
    assert re.search("corner To take down .* fair Ended", told)
    [action] = re.findall(r'action="(/listings/[^"]*/ended)"', page)
    answer = calls.client.post(action, data={"stay": stay})
    assert f"/stays/{stay}" == answer.location
    assert 422 == calls.client.post(f"/stays/{stay}/listings", data={"channel": "web"}).status_code
    for listing in ("c-1", "f-1"):
        assert "Rear derailleur" in calls.client.get(f"/search?q={listing}").text


def test_put_away_asks_for_a_channel_where_some_are_known(calls: Calls, shop: Shop) -> None:
    """Before that the listing's id alone; the next thing's channel is that of the one before."""
    calls.section()
    assert 'name="channel"' not in calls.client.get("/put-away").text
    form = {"title": "Lamp", "listing": "L-1", "channel": "fair", "text": card_text("D001"), "next": card_text("D002")}
    answer = calls.client.post("/put-away", data=form)
    assert "channel=fair" in answer.location
    assert "<option selected>fair</option>" in calls.client.get(answer.location).text
    with shop.looking() as unit:
        assert [("fair", "L-1")] == [(each.channel, each.listing) for each in unit.find(Listing)]


def look(client: FlaskClient, *rows: str, channel: str = "corner", header: str = "reference,listing") -> TestResponse:
    file = "\r\n".join((header, *rows, "")).encode()
    return client.post("/listings/check", data={"file": (io.BytesIO(file), "corner.csv"), "channel": channel})


def press(client: FlaskClient, page: str, words: str) -> str:
    """Press the first button of these words in a page of differences: the page that comes."""
    value = re.findall(rf'name="settle" value="([^"]*)">{words}<', page)[0]
    done = client.post("/listings/check", data=fields_of(page) | {"settle": value})
    assert 200 == done.status_code
    return done.text


def headings(page: str) -> list[str]:
    return re.findall("<h2>([^<]*)</h2>", page)


def test_each_row_of_a_check_has_its_way(calls: Calls, shop: Shop) -> None:
    """What is sold already comes first; each press settles its row, and the page shows what differs still."""
    offered(calls)
    others = [calls.put_away(f"Thing {number}") for number in range(4)]
    rows = ["D001-019,c-1", f"{others[0]['reference']},c-2", f"{others[1]['reference']},c-3"]
    wrong = others[2]["reference"][:-1] + "?"
    page = look(calls.client, *rows, f"{wrong},c-4", "Q-1,c-5").text
    assert [
        "Offered, but not for sale: 1",
        "Here, but not offered: 1",
        "Wrong references: 1",
        "Known to nobody here: 1",
        "New listing ids: 2",
    ] == headings(page)
    assert others[2]["reference"] in page
    assert {"f-1": True, "c-1": True} == states(shop)
    page = press(calls.client, page, "It is down")
    page = press(calls.client, page, "Learn this id")
    assert {"f-1": True, "c-1": False, "c-2": True} == states(shop)
    assert "New listing ids: 1" == headings(page)[-1]
    assert "Here, but not offered: 1" == headings(page)[0]


def test_all_of_a_kind_are_settled_by_one_press(calls: Calls, shop: Shop) -> None:
    """The ids of a first check are many; what the next file lacks is down."""
    calls.section()
    stays = [calls.put_away(f"Thing {number}") for number in range(3)]
    rows = [f"{stay['reference']},c-{number}" for number, stay in enumerate(stays)]
    page = press(calls.client, look(calls.client, *rows).text, "Learn all these ids")
    assert "All that is offered stands here" in text_of(page)
    assert {"c-0": True, "c-1": True, "c-2": True} == states(shop)
    for number, stay in enumerate(stays[:2]):
        calls.post("/api/orders", 201, number=f"{number}", channel="web", lines=[{"reference": stay["reference"]}])
    page = press(calls.client, look(calls.client, rows[2]).text, "All these are down")
    assert ([], {"c-0": False, "c-1": False, "c-2": True}) == (headings(page), states(shop))


def test_a_file_that_cannot_be_checked(calls: Calls) -> None:
    """It says why, and keeps the channel; other columns can be chosen for one whose headers say nothing."""
    calls.section()
    stay = calls.put_away()
    none = look(calls.client, "D001-019,c-1", channel=" ")
    assert (422, True) == (none.status_code, "Say which channel" in none.text)
    empty = calls.client.post("/listings/check", data={"channel": "corner"})
    assert (422, True, True) == (empty.status_code, "Choose a file" in empty.text, 'value="corner"' in empty.text)
    asked = look(calls.client, "L-1,x", header="Mark,Colour")
    assert (422, True) == (asked.status_code, "No column holds the reference" in asked.text)
    fields = fields_of(asked.text) | {"column-listing": "Mark"}
    page = calls.client.post("/listings/check", data=fields).text
    assert ["Here, but not offered: 1", "Known to nobody here: 1"] == headings(page)
    assert f"/stays/{stay['id']}#offers" in page


def test_a_press_with_other_columns_than_were_shown_does_nothing(calls: Calls, shop: Shop) -> None:
    """The page is shown anew instead."""
    calls.section()
    stay = calls.put_away()
    page = look(calls.client, f"{stay['reference']},c-1").text
    fields = fields_of(page) | {"column-title": "listing", "settle": "new_id", "since": "yesterday"}
    assert ["New listing ids: 1"] == headings(calls.client.post("/listings/check", data=fields).text)
    assert {} == states(shop)


def test_a_helper_takes_down_and_does_not_check(app: Flask, shop: Shop, calls: Calls) -> None:
    """The list has no link to the check for them."""
    offered(calls)
    helper = client_of(app, shop, Role.HELPER)
    page = helper.get("/listings").text
    assert "/listings/check" not in page
    assert 403 == helper.get("/listings/check").status_code
    [action] = re.findall(r'action="(/listings/[^"]*/ended)"', page)
    assert 303 == helper.post(action).status_code
