"""Hand-over: slips choose parcels, labels are bound and recognised."""

from __future__ import annotations

from dataclasses import replace

import pytest
from calls import Calls
from clients import client_of
from flask import Flask
from flask.testing import FlaskClient

from scanflow.domain.access import Role
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
