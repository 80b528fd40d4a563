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
from page_text import figures, text_of
from PIL import Image
from scipy.stats import hypergeom
from shown_counts import amiss, opened, shown, two_counts

from labels.slot_code import bin_text, card_text
from scanflow.domain.access import Role
from scanflow.domain.counts.stocktake import How, Stocktake
from scanflow.domain.life import StocktakeState
from scanflow.shop import Shop
from scanflow.web import count_words
from scanflow.workflow.counts import cycle, looks, stocktakes
from scanflow.workflow.counts.looks import IncomingLook, LabelReading

pytestmark = SQLITE_ONLY


def next_of(html: str) -> str:
    """The one thing to do next, with its tag."""
    found = re.search(r'<\w+ class="next"[^>]*>.*?</(?:a|button|label)>', html, re.DOTALL)
    assert found is not None
    return found[0]


def names(text: str, *bins: str) -> bool:
    """Whether these bins alone are named, in this order."""
    return list(bins) == re.findall(r"\b[A-Z]-\d-\d\b", text_of(text))


@pytest.mark.parametrize(
    ("area", "taken", "places"),
    [
        ("", "room", 13),
        ("tray", "tray", 1),
        ("section:D", "section:D", 3),
        ("rack:B", "rack:B", 3),
        ("shelf:C-1", "shelf:C-1", 3),
        ("bin:D-1-2", "bin:D-1-2", 1),
        ("bin:Z-9-9", "room", 13),
        ("shelf", "room", 13),
    ],
)
def test_an_area_is_chosen_and_begun(client: FlaskClient, shop: Shop, area: str, taken: str, places: int) -> None:
    """The room unless another area that there is was asked for; the page of the new count follows."""
    furnish(shop, 25)
    html = client.get(f"/counts?area={area}").text
    assert count_words.area(taken) in text_of(next_of(html))
    assert places == 1 or figures(places).search(text_of(html))
    sent = re.search(r'name="area" value="([^"]+)"', html)
    assert sent is not None and taken == sent[1]
    begun = client.post("/counts", data={"area": sent[1], "note": "After the fair"})
    assert 303 == begun.status_code
    assert count_words.area(taken) in client.get(begun.location).text
    with shop.looking() as unit:
        assert [("After the fair", taken)] == [(each.note, each.area) for each in unit.find(Stocktake)]


def test_what_runs_is_gone_on_with(client: FlaskClient, shop: Shop) -> None:
    """With a count under way that is next; its area is not begun a second time."""
    furnish(shop, 4)
    count = opened(shop, "section:D")
    assert f'href="/counts/{count.id}"' in next_of(client.get("/counts").text)
    assert f'href="/counts/{count.id}"' in next_of(client.get("/counts?area=section:D").text)
    another = next_of(client.get("/counts?area=section:S").text)
    assert another.startswith("<button") and count_words.area("section:S") in text_of(another)
    assert 422 == client.post("/counts", data={"area": "section:Q"}).status_code


def test_a_sample_is_drawn_and_gone_through(client: FlaskClient, shop: Shop) -> None:
    """The page says how many bins that takes, draws them, and leads from one to the next; the report speaks of all."""
    furnish(shop, 120)
    asked = client.get("/counts?area=section:D&sure=80&amiss=20").text
    # 13 bins, of which 3 are more than 20 %: 5 leave them unseen in one draw of five, 4 more often (hypergeometric)
    assert hypergeom.pmf(0, 13, 3, 5) <= 0.2 < hypergeom.pmf(0, 13, 3, 4)
    assert figures(5, 13, 20, 80).search(text_of(asked))
    begun = client.post("/counts", data={"area": "section:D", "sample": "5"})
    with shop.looking() as unit:
        (count,) = unit.find(Stocktake)
    assert count.sample is not None
    first, second, *_, last = count.sample.bins
    assert f"/counts/{count.id}?place={first}" == begun.location
    html = client.get(begun.location).text
    assert names(next_of(html), first) and f"?place={second}" in html
    assert f"?place={first}" in client.get(f"/counts/{count.id}").text
    assert count_words.subject(count) in text_of(client.get("/").text)
    shown(shop, count, last, key="one")
    client.post(f"/counts/{count.id}/close")
    assert figures(1, 5, 13).search(text_of(client.get(f"/counts/{count.id}/report").text))


@pytest.mark.parametrize("query", ["sure=95&amiss=1", "sure=x&amiss=3", ""])
def test_a_small_room_has_no_sample(client: FlaskClient, shop: Shop, query: str) -> None:
    """Where it would take all bins, the whole area is counted; what can't be chosen counts as the usual."""
    furnish(shop, 4)
    html = client.get(f"/counts?area=room&{query}").text
    assert 'name="sample"' not in html and figures(4).search(text_of(html))
    asked = [client.post("/counts", data={"area": "room", "sample": each}) for each in ("99", "0", "some")]
    assert [422] * 3 == [each.status_code for each in asked]


def plan(shop: Shop, weeks: int) -> None:
    shop.act("owner", lambda unit: unit.set_settings(cycle.planned(unit, weeks)))


def test_what_is_due_is_counted(client: FlaskClient, shop: Shop) -> None:
    """With a plan the page says how many bins are due this week, and begins their count; a second goes on with it."""
    furnish(shop, 25)
    assert 'action="/counts/due"' not in client.get("/counts").text
    assert 409 == client.post("/counts/due").status_code
    plan(shop, 4)
    html = client.get("/counts").text
    assert re.search(r'action="/counts/due".*class="next"', html, re.DOTALL) and figures(4, 4).search(text_of(html))
    html = client.get("/counts?area=room").text
    assert 'action="/counts/due"' in html and figures(4, 12, 4).search(text_of(html))
    assert count_words.area("room") in text_of(next_of(html))
    begun = client.post("/counts/due")
    assert begun.location == client.post("/counts/due").location
    with shop.looking() as unit:
        (count,) = unit.find(Stocktake)
    assert count.sample is not None and f"/counts/{count.id}?place={count.sample.bins[0]}" == begun.location
    assert count_words.subject(count) in text_of(client.get(begun.location).text)
    html = client.get("/counts").text
    assert f'href="/counts/{count.id}' in next_of(html) and 'action="/counts/due"' not in html
    client.post(f"/counts/{count.id}/close")
    assert figures(0, 4, 12).search(text_of(client.get(f"/counts/{count.id}/report").text))


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
    for told in (("2/3",), (2, 3), ("A-1-1", 1, 1, 1), ("A-1-2", 1)):
        assert figures(*told).search(text)
    assert ["A-1-1", "A-1-2"] == re.findall(r'href="/counts/\w+\?place=([\w-]+)[^>]*data-looked', html)
    assert names(next_of(html)) and "?place=A-1-3" in html
    there = client.get(f"/counts/{count.id}?place=a-1-1").text
    assert names(next_of(there), "A-1-3")
    again = re.search(r'href="([^"]+)" data-again>', there)
    assert again is not None
    once_more = client.get(again[1].replace("&amp;", "&")).text
    assert names(next_of(once_more), "A-1-1") and "?place=A-1-3" in once_more
    assert names(next_of(client.get(f"/counts/{count.id}?place=A-1-3").text), "A-1-3")
    assert names(next_of(client.get(f"/counts/{count.id}?place=A-1-1&hand=1").text), "A-1-1")


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
    assert figures(3, 2, "A-1-1").search(text) and figures("A-1-1", 1, 2).search(text)
    html = client.get(f"/counts/{count.id}?place=A-1-3").text
    assert figures("A-1-3", 2, 4, 2).search(text_of(html))
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
    assert ["D003"] == re.findall(r"[A-Z]\d{3}", text_of(next_of(client.get(address).text)))
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
    assert figures(1, todo).search(text) and figures(2, 3).search(text)
    after = client.post(f"/counts/{count.id}/cancel", follow_redirects=True).text
    assert 'role="status"' in after and count_words.subject(count) in after
    assert count_words.subject(count) not in client.get("/counts?cancelled=nothing").text


def test_there_is_no_such_count(client: FlaskClient) -> None:
    """A page of a count that never was is a page of the shop too."""
    missing = client.get("/counts/nothere")
    assert 404 == missing.status_code and "<h1" in missing.text


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
    assert figures(4, 1, 3, 1).search(text)


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
    assert 'type="file"' not in html
    assert 409 == client.post(f"/counts/{counts[1].id}/cancel").status_code
    with shop.looking() as unit:
        states = [each.state for each in unit.find(Stocktake)]
    assert [StocktakeState.CLOSED, StocktakeState.CANCELLED] == states


def test_how_counts_went(client: FlaskClient, shop: Shop, calls: Calls) -> None:
    """Closed counts are listed by their area, the newest first, each with what agreed; of one chosen its own alone."""
    furnish(shop, 25)
    _, closed = two_counts(shop)
    count = opened(shop, "section:S")
    shown(shop, count, "B-1-1", "S002", "S003", "S004", "S005", "S006", key="all")
    report = calls.post(f"/api/stocktakes/{count.id}/close")
    agreed, counted = (sum(each[name] for each in report["sections"]) for name in ("agreed", "counted"))
    text = text_of(client.get("/counts").text)
    (newest,) = re.finditer(rf"Section S {agreed}/{counted} ", text)
    assert newest.start() < text.rindex("Section D")
    html = client.get("/counts?area=section:D").text
    assert f"/counts/{closed.id}/report" in html and f"/counts/{count.id}/report" not in html
    assert "0/0" not in html


def test_helpers_count_too(app: Flask, shop: Shop) -> None:
    """They begin, look, put right and close; only the owner deletes photos."""
    furnish(shop, 25)
    running, closed = two_counts(shop)
    helper = client_of(app, shop, Role.HELPER)
    paths = ("/counts", f"/counts/{running.id}", f"/counts/{running.id}/findings", f"/counts/{closed.id}/report")
    assert [200] * 4 == [helper.get(path).status_code for path in paths]
    assert f"/counts/{closed.id}/forget" not in helper.get(paths[-1]).text
    assert 403 == helper.post(f"/counts/{closed.id}/forget").status_code
    assert 303 == helper.post(f"/counts/{running.id}/close").status_code
