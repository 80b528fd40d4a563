"""Hand-over: slips choose parcels, labels are bound and recognised."""

from __future__ import annotations

import re
from dataclasses import replace

import pypdfium2
import pytest
from calls import Calls
from clients import client_of
from flask import Flask
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Parcel
from scanflow.shop import Shop

TEXT = "RR123456785DE"


@pytest.fixture
def parcels(shop: Shop, calls: Calls) -> list[tuple[str, str, str]]:
    """Two closed parcels as (id, slip, order number), in a shop that binds labels."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    calls.section("D", 6)
    made = [(calls.packed(number)[2], number) for number in ("1001", "1002")]
    return [(parcel["id"], parcel["slip"], number) for parcel, number in made]


def send(client: FlaskClient, text: str, parcel: str = "") -> tuple[int, str, str]:
    answer = client.post("/hand-over", data={"text": text, "parcel": parcel})
    return answer.status_code, answer.headers.get("Location", ""), answer.text


def test_a_label_is_bound_and_known_again(app: Flask, shop: Shop, parcels: list[tuple[str, str, str]]) -> None:
    """Slip, label; then the label alone shows its order, here and by any search; on both databases, by a helper."""
    helper = client_of(app, shop, Role.HELPER)
    (one, slip, number), _ = parcels
    assert (303, f"/hand-over?parcel={one}") == send(helper, slip)[:2]
    assert (303, f"/hand-over?parcel={one}&told=bound") == send(helper, TEXT, one)[:2]
    where = send(helper, TEXT)[1]
    assert f"/hand-over?parcel={one}&told=known" == where == helper.get(f"/search?q={TEXT}").headers["Location"]
    page = helper.get(where).text
    assert number in page and "This label is on the parcel of" in page
    assert "Label ends in 85DE" in helper.get("/hand-over").text


def test_a_label_sent_again_is_bound_again(client: FlaskClient, parcels: list[tuple[str, str, str]]) -> None:
    """The same form sent twice leads to the same page, and so does the same label scanned once more."""
    (one, _, _), _ = parcels
    form = {"text": TEXT, "parcel": one, "key": "form-1"}
    answers = [client.post("/hand-over", data=each) for each in (form, form, {**form, "key": "form-2"})]
    assert [(303, f"/hand-over?parcel={one}&told=bound")] * 3 == [
        (each.status_code, each.headers["Location"]) for each in answers
    ]


def test_another_parcel_s_label_is_refused(client: FlaskClient, parcels: list[tuple[str, str, str]]) -> None:
    """It says whose it is and what frees it; a label that nobody knows asks for the slip first."""
    (one, _, _), (other, _, _) = parcels
    status, _, page = send(client, TEXT)
    assert (409, True) == (status, "on no parcel yet" in page)
    send(client, TEXT, one)
    status, _, page = send(client, TEXT, other)
    assert (409, True) == (status, "on the parcel of 1001" in page and "take this one off" in page)


def test_switched_off_it_says_where_to_switch_it_on(client: FlaskClient, shop: Shop) -> None:
    """No field to scan into; the owner's settings have the switch."""
    page = client.get("/hand-over").text
    assert (True, False) == ("Switch it on" in page, 'id="label"' in page)
    client.post("/settings", data={"name": "Shop", "zone": "UTC", "bind_labels": "yes"})
    assert 'id="label"' in client.get("/hand-over").text


@pytest.fixture
def leaving(shop: Shop, calls: Calls) -> list[tuple[str, str, str]]:
    """Three closed parcels as (id, slip, order number), in a shop that records hand-overs."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, hand_overs=True)))
    calls.section("D", 6)
    made = [(calls.packed(number)[2], number) for number in ("1001", "1002", "1003")]
    return [(parcel["id"], parcel["slip"], number) for parcel, number in made]


def went(client: FlaskClient, *parcels: str, **more: str) -> tuple[int, str]:
    answer = client.post("/hand-over/all", data={"parcel": list(parcels), **more})
    return answer.status_code, answer.text


def test_all_that_the_page_showed_went(
    app: Flask, shop: Shop, calls: Calls, leaving: list[tuple[str, str, str]]
) -> None:
    """A helper's press takes these and no others, with the carrier; what came to the list since stays on it."""
    helper = client_of(app, shop, Role.HELPER)
    page = helper.get("/hand-over").text
    ids = re.findall('name="parcel" value="([^"]+)"', page)
    assert sorted(id for id, _, _ in leaving) == sorted(ids)
    later = calls.packed("1004")[2]["id"]
    assert 303 == went(helper, *ids, carrier="The red van")[0]
    assert [later] == [each["id"] for each in calls.get("/api/hand-over")["parcels"]]
    with shop.looking() as unit:
        told = {(each.carrier, each.handed_by) for each in unit.find(Parcel, state=ParcelState.HANDED_OVER)}
    assert {("The red van", "helper")} == told
    page = helper.get("/hand-over").text
    assert ("1001, 1002, 1003" in page, 'value="The red van"' in page) == (True, True)


def test_what_must_stay_is_named_and_the_others_go(
    client: FlaskClient, calls: Calls, leaving: list[tuple[str, str, str]]
) -> None:
    """In the whole no; it is listed with its reason afterwards, on Today too."""
    order = calls.get("/api/orders")["orders"][1]
    calls.post(f"/api/orders/{order['id']}/cancel")
    status, page = went(client, *(id for id, _, _ in leaving))
    assert (200, True, True) == (status, 'data-no="Cancelled since"' in page, f"{order['number']}: It was" in page)
    assert [order["id"]] == [name for each in calls.get("/api/hand-over")["parcels"] for name in each["orders"]]
    for address in ("/hand-over", "/"):
        shown = client.get(address).text
        assert ("Must stay here", order["number"]) == tuple(
            words for words in ("Must stay here", order["number"]) if words in shown
        )


def test_the_list_is_printed_to_be_signed(
    client: FlaskClient, calls: Calls, shop: Shop, leaving: list[tuple[str, str, str]]
) -> None:
    """Numbers, carrier and room to sign, of what went with that carrier in one go; nothing else of the order."""
    one, two, three = (id for id, _, _ in leaving)
    went(client, one, two, carrier="The red van")
    went(client, three, carrier="The blue van")
    links = re.findall('href="(/hand-over/[^"]+list.pdf)"', client.get("/hand-over").text)
    assert [f"/hand-over/{three}/{three}/list.pdf", f"/hand-over/{one}/{two}/list.pdf"] == links
    answer = client.get(links[1])
    assert "application/pdf" == answer.mimetype
    text = " ".join(page.get_textpage().get_text_bounded() for page in pypdfium2.PdfDocument(answer.data))
    assert [True, True, True, True, False, False] == [
        words in text for words in ("1001", "1002", "The red van", "Signature", "1003", "Thing 0")
    ]
    calls.packed("1004")
    closed = calls.get("/api/hand-over")["parcels"][0]["id"]
    assert [404, 404] == [client.get(f"/hand-over/{each}/{one}/list.pdf").status_code for each in (closed, "none")]
