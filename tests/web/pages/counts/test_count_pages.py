"""The pages of a running count: begun for an area, blind, each place with what was done there."""

from __future__ import annotations

import re
from io import BytesIO

import pytest
from calls import Calls
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from PIL import Image
from scipy.stats import hypergeom
from shown_counts import amiss, opened, shown, two_counts

from labels.slot_code import bin_text, card_text
from scanflow.domain.access import Role
from scanflow.domain.counts.stocktake import How, Stocktake
from scanflow.domain.life import StocktakeState
from scanflow.shop import Shop
from scanflow.workflow.counts import cycle, looks, stocktakes
from scanflow.workflow.counts.looks import IncomingLook, LabelReading

pytestmark = SQLITE_ONLY


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", html))


def next_of(html: str) -> str:
    """The words of the one thing to do next."""
    found = re.search(r'class="next"[^>]*>(.*?)</(?:a|button|label)>', html, re.DOTALL)
    assert found is not None
    return text_of(found[1]).strip()


@pytest.mark.parametrize(
    ("area", "words", "places"),
    [
        ("", "the room", 13),
        ("tray", "the tray", 1),
        ("section:D", "section D", 3),
        ("rack:B", "rack B", 3),
        ("shelf:C-1", "shelf C-1", 3),
        ("bin:D-1-2", "bin D-1-2", 1),
        ("bin:Z-9-9", "the room", 13),
        ("shelf", "the room", 13),
    ],
)
def test_an_area_is_chosen_and_begun(client: FlaskClient, shop: Shop, area: str, words: str, places: int) -> None:
    """The room unless another area that there is was asked for; the page of the new count follows."""
    furnish(shop, 25)
    html = client.get(f"/counts?area={area}").text
    assert f"Start counting {words}" == next_of(html)
    assert places == 1 or f"{places} places to look at" in text_of(html)
    sent = re.search(r'name="area" value="([^"]+)"', html)
    assert sent is not None
    begun = client.post("/counts", data={"area": sent[1], "note": "After the fair"})
    assert 303 == begun.status_code
    assert f"Count of {words}" in client.get(begun.location).text
    with shop.looking() as unit:
        assert ["After the fair"] == [each.note for each in unit.find(Stocktake)]


def test_what_runs_is_gone_on_with(client: FlaskClient, shop: Shop) -> None:
    """With a count under way that is next; its area is not begun a second time."""
    furnish(shop, 4)
    count = opened(shop, "section:D")
    assert "Go on counting section D" == next_of(client.get("/counts").text)
    html = client.get("/counts?area=section:D").text
    assert "Go on counting section D" == next_of(html) and f'href="/counts/{count.id}"' in html
    assert "Start counting section S" == next_of(client.get("/counts?area=section:S").text)
    assert 422 == client.post("/counts", data={"area": "section:Q"}).status_code


def test_a_sample_is_drawn_and_gone_through(client: FlaskClient, shop: Shop) -> None:
    """The page says how many bins that takes, draws them, and leads from one to the next; the report speaks of all."""
    furnish(shop, 120)
    asked = client.get("/counts?area=section:D&sure=80&amiss=20").text
    # 13 bins, of which 3 are more than 20 %: 5 leave them unseen in one draw of five, 4 more often (hypergeometric)
    assert hypergeom.pmf(0, 13, 3, 5) <= 0.2 < hypergeom.pmf(0, 13, 3, 4)
    assert "5 of 13 bins, drawn by lot: if nothing is amiss in them, at most 20 % of all are, with 80 %" in text_of(
        asked
    )
    begun = client.post("/counts", data={"area": "section:D", "sample": "5"})
    with shop.looking() as unit:
        (count,) = unit.find(Stocktake)
    assert count.sample is not None
    first, second, *_, last = count.sample.bins
    assert f"/counts/{count.id}?place={first}" == begun.location
    html = client.get(begun.location).text
    assert f"Photograph {first}" == next_of(html) and f"Next: {second}" in text_of(html)
    assert f"Next: {first}" in text_of(client.get(f"/counts/{count.id}").text)
    assert "Count of 5 bins drawn from section D" in text_of(client.get("/").text)
    shown(shop, count, last, key="one")
    client.post(f"/counts/{count.id}/close")
    assert "1 of 5 places chosen of 13 bins" in text_of(client.get(f"/counts/{count.id}/report").text)


@pytest.mark.parametrize("query", ["sure=95&amiss=1", "sure=x&amiss=3", ""])
def test_a_small_room_has_no_sample(client: FlaskClient, shop: Shop, query: str) -> None:
    """Where it would take all bins, the whole area is counted; what can't be chosen counts as the usual."""
    furnish(shop, 4)
    html = client.get(f"/counts?area=room&{query}").text
    assert "That takes all 4 bins" in html and 'name="sample"' not in html
    asked = [client.post("/counts", data={"area": "room", "sample": each}) for each in ("99", "0", "some")]
    assert [422] * 3 == [each.status_code for each in asked]


def plan(shop: Shop, weeks: int) -> None:
    shop.act("owner", lambda unit: unit.set_settings(cycle.planned(unit, weeks)))


def test_what_is_due_is_counted(client: FlaskClient, shop: Shop) -> None:
    """With a plan the page says how many bins are due this week, and begins their count; a second goes on with it."""
    furnish(shop, 25)
    assert "Due this week" not in client.get("/counts").text
    assert 409 == client.post("/counts/due").status_code
    plan(shop, 4)
    html = client.get("/counts").text
    assert "Count what is due" == next_of(html)
    assert re.search(r"4 bins due this week .* within 4 weeks", text_of(html))
    html = client.get("/counts?area=room").text
    assert "Start counting the room" == next_of(html)
    assert re.search(r"Due this week 4 of 12 bins\. .* within 4 weeks", text_of(html))
    begun = client.post("/counts/due")
    assert begun.location == client.post("/counts/due").location
    with shop.looking() as unit:
        (count,) = unit.find(Stocktake)
    assert count.sample is not None and f"/counts/{count.id}?place={count.sample.bins[0]}" == begun.location
    assert "Count of 4 bins due" in text_of(client.get(begun.location).text)
    html = client.get("/counts").text
    assert "Go on counting 4 bins due" == next_of(html) and "Due this week" not in html
    client.post(f"/counts/{count.id}/close")
    assert "0 of 4 places chosen of 12 bins" in text_of(client.get(f"/counts/{count.id}/report").text)


def test_a_stop_asks_for_a_photo(client: FlaskClient, shop: Shop) -> None:
    """A round that passes a bin that is due begins its count; the stop links to it until the bin was looked at, and the
    way on from there is back to the round.
    """
    room = furnish(shop, 25)
    plan(shop, 1)
    asks = "Photograph this bin while you are here"
    assert room.round is not None and asks not in client.get(f"/rounds/{room.round.id}").text
    client.post(f"/rounds/{room.round.id}/close")
    walk = client.post("/rounds").location
    with shop.looking() as unit:
        (count,) = unit.find(Stocktake)
    found = re.search(rf'href="(/counts/{count.id}\?place=([^"&]+)&amp;round=[^"]+)">{asks}', client.get(walk).text)
    assert found is not None
    address = found[1].replace("&amp;", "&")
    before = client.get(address).text
    assert f'<a href="{walk}">Back to the round</a>' in before and "Next:" not in text_of(before)
    shown(shop, count, found[2], key="by-the-way")
    assert asks not in client.get(walk).text
    assert f'<a class="next" href="{walk}" data-back>Back to the round</a>' in client.get(address).text


def test_a_count_is_blind(client: FlaskClient, shop: Shop) -> None:
    """No title, and no code that was not seen, stands on the page of a place or of the count."""
    room = furnish(shop, 25)
    count = opened(shop, "room")
    shown(shop, count, "A-1-1", "D002", "S001", key="one")
    for address in (f"/counts/{count.id}", f"/counts/{count.id}?place=A-1-1", f"/counts/{count.id}?place=B-1-1"):
        text = text_of(client.get(address).text)
        said = {stay.code for stay in room.stays if stay.code in text.replace(" ", "")}
        assert set() == said - {"D002", "S001"}, address
        assert "derailleur" not in text and "saddle" not in text


def test_each_place_says_what_was_done_there(client: FlaskClient, shop: Shop) -> None:
    """Not yet, by photo or by hand; the next place is the one after it that nobody looked at."""
    furnish(shop, 25)
    count = opened(shop, "section:D")
    shown(shop, count, "A-1-1", "D002", unread=1, key="one")
    by_hand = IncomingLook("two", "two", (LabelReading("D0129"),), place="A-1-2")
    shop.act("owner", lambda unit: looks.look(unit, count.id, by_hand))
    html = client.get(f"/counts/{count.id}").text
    text = text_of(html)
    for told in (
        "2/3",
        "2 of 3 looked at",
        "A-1-1 1 photo, 1 card, 1 unread",
        "A-1-2 by hand, 1 card",
        "A-1-3 not yet",
    ):
        assert told in text
    assert "Photograph bins with labels" == next_of(html)
    assert "Next: A-1-3" in text
    there = client.get(f"/counts/{count.id}?place=a-1-1").text
    assert "Photograph A-1-3" == next_of(there) and ">Next:" not in there
    again = re.search(r'href="([^"]+)" data-again>', there)
    assert again is not None
    once_more = client.get(again[1].replace("&amp;", "&")).text
    assert "Photograph A-1-1" == next_of(once_more) and "Next: A-1-3" in text_of(once_more)
    assert "Photograph A-1-3" == next_of(client.get(f"/counts/{count.id}?place=A-1-3").text)
    assert "Photograph A-1-1" == next_of(client.get(f"/counts/{count.id}?place=A-1-1&hand=1").text)


def test_what_a_photo_shows_and_what_a_bin_has(client: FlaskClient, shop: Shop) -> None:
    """Cards of the bins beside it are told apart; a photo of which nothing was read has a mark and its own words."""
    furnish(shop, 25)
    count = opened(shop, "section:D")
    labelled = [(bin_text(name), 300 + 600 * at) for at, name in enumerate(("A-1-1", "A-1-2"))]
    hung = [(card_text(code), 300 + 600 * at) for code, at in (("D002", 0), ("D004", 0), ("D006", 1))]
    texts = tuple(
        LabelReading(text, corners=box(x, 900 if text in dict(labelled) else 500)) for text, x in labelled + hung
    )
    photo = IncomingLook("both", "both", texts, How.PHOTO, "A-1-1", image=True, size=(1200, 1000))
    shop.act("owner", lambda unit: looks.look(unit, count.id, photo))
    shown(shop, count, "A-1-3", unread=2, key="dark")
    shown(shop, count, "A-1-3", unread=2, key="dim")
    text = text_of(client.get(f"/counts/{count.id}?place=A-1-1").text)
    assert "3 cards read, 2 of them in A-1-1 " in text and "1 photo, 2 cards" in text
    html = client.get(f"/counts/{count.id}?place=A-1-3").text
    assert "Nothing could be read. Unless it is empty, go nearer, with more light." in html
    assert "A-1-3 2 photos, nothing read, 4 unread in 2 photos" in text_of(html)
    assert ["full", "", "blank"] == re.findall(r'class="square (\w*)"', html)


def box(x: float, y: float) -> tuple[float, ...]:
    """Bars around this point of a picture."""
    return (x - 100, y - 30, x + 100, y - 30, x + 100, y + 30, x - 100, y + 30)


def test_a_closer_photo_says_of_what(client: FlaskClient, shop: Shop) -> None:
    """The card that no decoder read is shown, cut from the first photo, or the one that was asked for."""
    furnish(shop, 25)
    count = opened(shop)
    amiss(shop, count, "look")
    address = f"/counts/{count.id}?place=A-1-1&closer=look1"
    assert "Take a closer photo of D003" == next_of(client.get(address).text)
    cuts = [re.search(r'class="cut" src="[^"]+of=(\w+)"', client.get(f"{address}{of}").text) for of in ("", "&of=D012")]
    assert ["D003", "D012"] == [cut and cut[1] for cut in cuts]


def test_what_ending_leaves_and_loses(client: FlaskClient, shop: Shop) -> None:
    """Before it is closed the page says what is left, before it is cancelled what is lost; after that it is told."""
    furnish(shop, 25)
    count = opened(shop)
    amiss(shop, count, "look")
    assert f'href="/counts/{count.id}?end=1#end"' in client.get(f"/counts/{count.id}").text
    text = text_of(client.get(f"/counts/{count.id}?end=1").text)
    with shop.looking() as unit:
        todo = len(stocktakes.state(unit, count.id).found)
    assert f"1 place not looked at, {todo} things amiss still open. The report will say so." in text
    assert "what was seen in 2 places, 3 photos, is of no use any more" in text
    after = client.post(f"/counts/{count.id}/cancel", follow_redirects=True).text
    assert "The count of section D is cancelled. It has no report" in after
    assert "is cancelled" not in client.get("/counts?cancelled=nothing").text


def test_there_is_no_such_count(client: FlaskClient) -> None:
    """A page of a count that never was says so in the shop's words."""
    missing = client.get("/counts/nothere")
    assert 404 == missing.status_code and "There is no such count." in missing.text


def test_the_last_look_is_shown(client: FlaskClient, shop: Shop) -> None:
    """Of all places, or of the one chosen, or the one asked for; it says what was read, matched, unread, unexpected."""
    furnish(shop, 25)
    count = opened(shop)
    amiss(shop, count, "look")

    def photo(query: str) -> str:
        found = re.search(r"/looks/(\w+)\.jpg", client.get(f"/counts/{count.id}{query}").text)
        return found[1] if found else ""

    seen = [photo(query) for query in ("", "?place=A-1-1", "?place=A-1-2&look=look2", "?place=A-1-3")]
    assert ["look3", "look1", "look2", ""] == seen
    text = text_of(client.get(f"/counts/{count.id}?place=A-1-1").text)
    assert "4 cards read, 1 of them matched, 3 unexpected; 1 label for someone to look at." in text


def test_the_photo_with_its_outlines(client: FlaskClient, shop: Shop) -> None:
    """Whole, or cut to one card; asked for again it is not sent twice; it is gone once the photos are deleted."""
    furnish(shop, 25)
    count = opened(shop)
    shown(shop, count, "A-1-1", "D002", "D004", "D006", "D012", key="one")
    address = f"/counts/{count.id}/looks/one.jpg"
    whole, cut = client.get(address), client.get(f"{address}?of=D012")
    assert ["image/jpeg"] * 2 == [whole.mimetype, cut.mimetype]
    sizes = [Image.open(BytesIO(each.data)).size for each in (whole, cut)]
    assert (600, 800) == sizes[0] and sizes[1][1] < 800
    assert 304 == client.get(address, headers={"If-None-Match": whole.headers["ETag"]}).status_code
    assert 404 == client.get(f"/counts/{count.id}/looks/two.jpg").status_code
    shop.act("owner", lambda unit: stocktakes.forget_photos(unit, count.id))
    assert 404 == client.get(address).status_code


def test_a_count_ends(client: FlaskClient, shop: Shop) -> None:
    """Closed, it is its report; cancelled, it says so and takes nothing more; neither can end again."""
    furnish(shop, 4)
    counts = opened(shop), opened(shop)
    assert f"/counts/{counts[0].id}/report" == client.post(f"/counts/{counts[0].id}/close").location
    assert f"/counts/{counts[0].id}/report" == client.get(f"/counts/{counts[0].id}").location
    assert f"/counts?cancelled={counts[1].id}" == client.post(f"/counts/{counts[1].id}/cancel").location
    html = client.get(f"/counts/{counts[1].id}").text
    assert "was cancelled" in html and 'type="file"' not in html
    assert 409 == client.post(f"/counts/{counts[1].id}/cancel").status_code
    with shop.looking() as unit:
        states = [each.state for each in unit.find(Stocktake)]
    assert [StocktakeState.CLOSED, StocktakeState.CANCELLED] == states


def test_how_counts_went(client: FlaskClient, shop: Shop, calls: Calls) -> None:
    """Closed counts are listed by their area, the newest first, each with what agreed; of one chosen its own alone."""
    furnish(shop, 25)
    two_counts(shop)
    count = opened(shop, "section:S")
    shown(shop, count, "B-1-1", "S002", "S003", "S004", "S005", "S006", key="all")
    report = calls.post(f"/api/stocktakes/{count.id}/close")
    agreed, counted = (sum(each[name] for each in report["sections"]) for name in ("agreed", "counted"))
    text = text_of(client.get("/counts").text).partition("How it went")[2]
    assert 0 <= text.index(f"Section S {agreed}/{counted} Section S, today") < text.index("Section D")
    text = text_of(client.get("/counts?area=section:D").text).partition("How it went in section D")[2]
    assert "Section D, today" in text and "Section S" not in text
    assert "0/0" not in text


def test_helpers_count_too(app: Flask, shop: Shop) -> None:
    """They begin, look, put right and close; only the owner deletes photos."""
    furnish(shop, 25)
    running, closed = two_counts(shop)
    helper = client_of(app, shop, Role.HELPER)
    paths = ("/counts", f"/counts/{running.id}", f"/counts/{running.id}/findings", f"/counts/{closed.id}/report")
    assert [200] * 4 == [helper.get(path).status_code for path in paths]
    assert "Delete its photos" not in helper.get(paths[-1]).text
    assert 403 == helper.post(f"/counts/{closed.id}/forget").status_code
    assert 303 == helper.post(f"/counts/{running.id}/close").status_code
