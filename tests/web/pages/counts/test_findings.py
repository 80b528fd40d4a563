"""What a count found: a list of things to do, each with what shows it, put right, left, or taken back."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from shown_counts import amiss, opened, shown

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.counts.stocktake import Resolved, Stocktake
from scanflow.domain.life import StayState
from scanflow.domain.things import Stay
from scanflow.shop import Shop
from scanflow.web.pages.counts.findings import SIZE
from scanflow.workflow.counts import looks, stocktakes
from scanflow.workflow.counts import report as stocktake_report
from scanflow.workflow.counts.looks import IncomingLook, LabelReading

pytestmark = SQLITE_ONLY


@pytest.fixture
def count(shop: Shop) -> Stocktake:
    """A furnished room, and a count of section D that runs, with a bit of everything amiss."""
    furnish(shop, 25)
    count = opened(shop)
    amiss(shop, count, "look")
    return count


def page(client: FlaskClient, count: Stocktake) -> str:
    return client.get(f"/counts/{count.id}/findings").text


def items(html: str) -> dict[str, str]:
    """What stands on the plate of each finding that is open → its part of the page."""
    parts = re.findall(r'<li class="finding"[^>]*>(.*?)</li>', html, re.DOTALL)
    plates = [part.partition('class="no">')[2].partition("<div>")[0] for part in parts]
    return {re.sub("<[^>]*>", "", plate).strip(): part for plate, part in zip(plates, parts, strict=True)}


def send(client: FlaskClient, count: Stocktake, finding: str, how: str, **more: str) -> int:
    form = {"finding": finding, "how": how, **more}
    return client.post(f"/counts/{count.id}/findings", data=form).status_code


def how(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return [each.how for each in unit.find(Resolved)]


def test_each_finding_shows_why(client: FlaskClient, count: Stocktake) -> None:
    """Its plate, what is amiss, and the photo cut to the card."""
    found = items(page(client, count))
    assert {"D004", "D005", "S001", "D012", "Q0771", "A-1-1"} == found.keys()
    assert f"/counts/{count.id}/looks/look3.jpg?of=D004" in found["D004"]
    assert "In A-1-2, not in A-1-1" in found["D004"] and "It is in A-1-1" in found["D004"]
    assert f'/counts/{count.id}/looks/look1.jpg"' in found["A-1-1"]  # the whole photo: nobody knows which card it is


def test_looks_alone_want_a_closer_photo(client: FlaskClient, shop: Shop, count: Stocktake) -> None:
    """The first thing to do leads to it; nothing changes before somebody says to have looked at the card."""
    found = items(page(client, count))["D005"]
    assert (
        f"/counts/{count.id}?place=A-1-2&amp;closer=look3" in found and "The bars of this card were not read" in found
    )
    assert 409 == send(client, count, "elsewhere-D005", "put_right")
    assert [] == how(shop)
    html = client.get(f"/counts/{count.id}?place=A-1-2&closer=look3").text
    assert "Take a closer photo of D005" in html and 'data-closer="look3"' in html
    shown(shop, count, "A-1-2", "D005", key="near", closer="look3")
    assert "The bars of this card were not read" not in items(page(client, count))["D005"]
    assert 303 == send(client, count, "elsewhere-D005", "put_right")


def test_a_finding_is_resolved_and_taken_back(client: FlaskClient, shop: Shop, count: Stocktake) -> None:
    """Settled, it says how, why and by whom; undone, it is to do again."""
    assert 422 == send(client, count, "elsewhere-S001", "withdraw")  # without a reason
    assert 303 == send(client, count, "elsewhere-S001", "withdraw", reason="Broken")
    html = page(client, count)
    assert "S001" not in items(html) and "thing withdrawn, “Broken”, by boss" in html
    with shop.looking() as unit:
        assert StayState.WITHDRAWN is unit.find(Stay, code="S001")[-1].state
    assert 409 == send(client, count, "elsewhere-S001", "put_right")
    undone = client.post(f"/counts/{count.id}/findings/undo", data={"finding": "elsewhere-S001"})
    assert f"/counts/{count.id}/findings#elsewhere-S001" == undone.location
    assert "S001" in items(page(client, count))
    with shop.looking() as unit:
        assert StayState.STORED is unit.find(Stay, code="S001")[-1].state


def test_a_press_goes_on_to_the_next(client: FlaskClient, shop: Shop) -> None:
    """On the page where it was, at what now stands there; after the last one, and for one that is gone, at the top."""
    furnish(shop, 4)
    count = opened(shop)
    shown(shop, count, "A-1-1", *[f"Q{number:03}" for number in range(1, SIZE + 4)], key="many")
    address = f"/counts/{count.id}/findings"
    found = re.findall(r'<li class="finding" id="([^"]*)"', client.get(f"{address}?from={SIZE}").text)
    form = {"finding": found[1], "how": "put_right", "at": str(SIZE + 1)}
    assert f"{address}?from={SIZE}#{found[2]}" == client.post(f"{address}?from={SIZE}", data=form).location
    undone = client.post(f"{address}/undo", data={"finding": found[1]}).location
    assert f"{address}?from={SIZE}#{found[1]}" == undone
    last = {"finding": found[-1], "how": "put_right", "at": str(SIZE + len(found) - 1)}
    assert f"{address}#main" == client.post(f"{address}?from={SIZE}", data=last).location


def test_a_refusal_stands_in_its_finding(client: FlaskClient, count: Stocktake) -> None:
    """Beside what was filled in, unfolded; of a finding that is not open any more it stands on top, with its name."""
    form = {"finding": "elsewhere-S001", "how": "moved", "to": "d999"}
    answer = client.post(f"/counts/{count.id}/findings", data=form)
    refused = items(answer.text)["S001"]
    assert 'role="alert"' in refused and 'value="d999"' in refused
    assert ["Other ways to settle it", "It stays in A-1-2"] == re.findall(
        r'class="fold" open><summary>([^<]*)', answer.text
    )
    assert 1 == answer.text.count('role="alert"')
    assert 303 == send(client, count, "elsewhere-S001", "put_right")
    again = client.post(f"/counts/{count.id}/findings", data=form).text
    assert '<p class="said" role="alert">S001: This was resolved already: put right.</p>' in again


def test_every_form_does_what_it_says(client: FlaskClient, shop: Shop, count: Stocktake) -> None:
    """The first way that each finding offers is one that its kind has: none is refused as not for it."""
    for part in items(page(client, count)).values():
        first = part.partition("</form>")[0]
        form = dict(re.findall(r'name="(finding|how)" value="([^"]*)"', first))
        more = {"sure": "on"} if 'name="sure"' in part else {}
        if 'name="text"' in first:
            more["text"] = card_text(form["finding"].partition("-")[2])
        assert 303 == send(client, count, **form, **more), form
    assert len(how(shop)) == 6
    assert "All that was amiss is settled" in page(client, count)


def test_what_asks_for_something_is_a_fold_of_its_own(client: FlaskClient, count: Stocktake) -> None:
    """Named by its act, with what it asks for inside; what asks for nothing is a button."""
    part = re.sub('<span class="heard">, S001</span>', "", items(page(client, count))["S001"])
    others = part.partition("Other ways to settle it</summary>")[2]
    folds = re.findall(r"<summary>([^<]*)</summary>(.*?)</details>", others, re.DOTALL)
    asked = {name: re.findall(r"<label for=[^>]*>([^<]*)", inside) for name, inside in folds}
    assert {
        "It stays in A-1-2": ["Into slot "],
        "The thing is gone": ["Why it is gone"],
        "Change nothing": ["Why you change nothing"],
    } == asked
    assert all(f'<button class="boxed plain">{name}</button>' in inside for name, inside in folds)


def test_what_was_held_up_is_said(client: FlaskClient, shop: Shop, count: Stocktake) -> None:
    """A bin that was gone through by hand has no photo; that says how what is missing there is known."""
    seen = IncomingLook("hand", "hand", (LabelReading("D0024"),), place="A-1-1")
    shop.act("owner", lambda unit: looks.look(unit, count.id, seen))
    missing = [part for part in items(page(client, count)).values() if "<h2>Not in A-1-1</h2>" in part]
    assert missing != []
    for part in missing:
        assert "Gone through by hand: A-1-1." in part and "It is in A-1-1" in part


def test_what_is_missing_in_one_bin_is_one_block(client: FlaskClient, shop: Shop) -> None:
    """Why is said once; each card has its own ways beneath."""
    furnish(shop, 25)
    count = opened(shop)
    shop.act("owner", lambda unit: looks.look(unit, count.id, IncomingLook("hand", "hand", (), place="A-1-1")))
    html = page(client, count)
    found = items(html)
    assert len(found) > 2
    assert [f"<h2>{len(found)} not in A-1-1</h2>"] == re.findall(
        '<li class="together">.*?(<h2>.*?</h2>)', html, re.DOTALL
    )
    assert (1, len(found)) == (html.count("was gone through"), html.count(">It is in A-1-1<"))


def test_a_picture_says_where_and_when(client: FlaskClient, count: Stocktake) -> None:
    """Of which bin it is stands under each, beside the time."""
    found = items(page(client, count))["D004"]
    assert [("A-1-2", "today")] == re.findall(r"<figcaption[^>]*>([^,]*), (\w+) \d\d:\d\d<", found)


def test_what_is_pressed_names_its_card(client: FlaskClient, count: Stocktake) -> None:
    """Heard alone, no two buttons or folds of the page are one another's."""
    send(client, count, "elsewhere-S001", "put_right")
    send(client, count, "unknown-Q0771", "put_right")
    main = page(client, count).partition('<div class="back">')[2]
    named = re.findall(r"<(?:button|summary)[^>]*>(.*?)</(button|summary)>", main)
    assert 2 == sum(name.startswith("Undo") for name, _ in named)
    assert len(named) == len(set(named))


@pytest.mark.parametrize("places", [1, 3])
def test_what_is_next(client: FlaskClient, shop: Shop, count: Stocktake, places: int) -> None:
    """The places that are left, then to close; after that the report."""
    if places == 3:
        shown(shop, count, "A-1-3", key="empty")
    html = page(client, count)
    assert ("Go on counting, 1 place left" in html, "End the count" in html) == (places == 1, places == 3)
    shop.act("owner", lambda unit: stocktake_report.close(unit, count.id))
    assert "Show the report" in page(client, count)


def test_many_findings_are_paged(client: FlaskClient, shop: Shop) -> None:
    """The plate counts all; a page has so many, and a page behind the last one is the last one."""
    furnish(shop, 4)
    count = opened(shop)
    codes = [f"Q{number:03}" for number in range(1, SIZE + 4)]
    shown(shop, count, "A-1-1", *codes, key="many")
    found = [len(items(client.get(f"/counts/{count.id}/findings?from={skip}").text)) for skip in (0, SIZE, 5 * SIZE)]
    with shop.looking() as unit:
        total = len(stocktakes.state(unit, count.id).found)
    assert [SIZE, total - SIZE, total - SIZE] == found


def test_a_helper_is_offered_what_a_helper_may(app: Flask, shop: Shop, count: Stocktake) -> None:
    """To withdraw a thing and to print a card again is the owner's; sent all the same, it is refused."""
    helper = client_of(app, shop, Role.HELPER)
    assert not re.findall('value="(withdraw|reprint)"', page(helper, count))
    assert 403 == send(helper, count, "elsewhere-S001", "withdraw", reason="Gone")
    owner = client_of(app, shop, Role.OWNER)
    assert 303 == send(owner, count, "elsewhere-S001", "withdraw", reason="Gone")
    assert [1, 0] == [len(re.findall("/findings/undo", page(each, count))) for each in (owner, helper)]
    undo = f"/counts/{count.id}/findings/undo"
    assert [403, 303] == [each.post(undo, data={"finding": "elsewhere-S001"}).status_code for each in (helper, owner)]
