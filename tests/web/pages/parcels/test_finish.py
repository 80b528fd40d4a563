"""The table after a parcel has closed: it asks for the label, or for who comes for it, and can go on without."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from calls import Calls, bars
from clients import client_of
from flask import Flask

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Label, Parcel, Scan
from scanflow.shop import Shop

LABEL = "RR123456785DE"


@pytest.fixture
def table(shop: Shop, calls: Calls) -> Calls:
    """The owner's calls, in a shop that binds labels and has a section."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    calls.section(slots=12)
    return calls


@pytest.fixture
def helper(app: Flask, shop: Shop) -> Calls:
    """Who works at the table."""
    return Calls(client_of(app, shop, Role.HELPER))


def page(calls: Calls, address: str = "/table") -> str:
    return calls.client.get(address).text


def press(calls: Calls, address: str, **fields: Any) -> int:
    return calls.client.post(address, data=fields).status_code


def collected(calls: Calls) -> tuple[Any, Any]:
    """A thing that was sold to somebody who comes for it, packed; and its parcel."""
    one = calls.put_away("Saddle, brown leather")
    order = calls.post(f"/api/stays/{one['id']}/sell", 201, number="D-1", collected=True)
    walk = calls.post("/api/rounds", 201, orders=[order["id"]])
    calls.scan("bin", one["code"], round=walk["id"])
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", one["code"])
    return order, parcel


def read(calls: Calls, text: str, key: str, **more: Any) -> Any:
    return calls.post("/api/scans", station="table", key=key, text=text, **more)


def test_the_table_asks_for_the_label_and_says_whose_it_is(table: Calls, helper: Calls, shop: Shop) -> None:
    """Order and title stand there; the label is bound by its scan, and can be taken off again."""
    _, _, parcel = table.packed("1001")
    shown = page(helper)
    assert [True] * 3 == [words in shown for words in ("Scan its shipping label", "1001", "Thing 0 of 1001")]
    answer = read(helper, LABEL, "label")
    assert ("accepted", True, parcel["id"]) == (answer["verdict"], answer["changed"], answer["parcel"])
    shown = page(helper)
    assert (False, True) == ("Scan its shipping label" in shown, "Wrong label: take it off" in shown)
    assert 303 == press(helper, f"/hand-over/{parcel['id']}/label-off", table="main")
    assert "Scan its shipping label" in page(helper)
    with shop.looking() as unit:
        assert () == unit.find(Label)
        assert LABEL not in repr(unit.find(Scan))
    assert LABEL not in str(table.client.get("/api/ledger?limit=500").get_json())


def test_a_camera_s_photo_of_the_label_binds_it(table: Calls, helper: Calls) -> None:
    """One code in view is the label; two are a no, and a card is a card."""
    table.packed("1001")
    answers = [
        table.upload("/api/scans", station="table", key=key, image=bars(*texts))
        for key, texts in (("a", (LABEL, "RR987654321DE")), ("b", (card_text("D001"),)), ("c", (LABEL,)))
    ]
    assert [("refused", "many_codes"), ("refused", "no_parcel"), ("accepted", None)] == [
        (each["verdict"], each["reason"]) for each in answers
    ]


def test_a_refusal_never_stands_on_the_next_parcel(table: Calls, helper: Calls) -> None:
    """What was refused for one parcel is not said beside another one, by whichever way that came to the table."""
    table.packed("1001")
    read(helper, LABEL, "first")
    table.packed("1002")
    assert "other_order" == read(helper, LABEL, "second")["reason"]
    assert "This label is on the parcel of 1001" in page(helper)
    parcel = table.get("/api/hand-over")["parcels"][1]
    assert 303 == press(helper, f"/table/{parcel['id']}/later", table="main")
    assert "This label is on" not in page(helper)
    order = table.picked("1003")[1]
    table.post("/api/parcels", 201, orders=[order["id"]])
    shown = page(helper)
    assert (True, False) == ("1003" in shown, "This label is on" in shown)


def test_the_table_goes_on_without_a_label(table: Calls, helper: Calls, shop: Shop) -> None:
    """It asks no more, also after a repeated press; the hand-over's page lists it, and takes its label."""
    _, _, parcel = table.packed("1001")
    for _ in range(2):
        assert 303 == press(helper, f"/table/{parcel['id']}/later", table="main")
    assert "Which order do you pack?" in page(helper)
    assert "unknown_code" == read(helper, LABEL, "label")["reason"]
    assert "No label yet" in page(helper, "/hand-over")
    assert 303 == press(helper, "/hand-over", text=LABEL, parcel=parcel["id"])
    with shop.looking() as unit:
        assert [parcel["id"]] == [each.parcel for each in unit.find(Label)]


def test_what_is_collected_goes_from_the_table(table: Calls, helper: Calls, shop: Shop) -> None:
    """The table asks who took it; the name stands on its page and in no entry of the ledger."""
    _, parcel = collected(table)
    shown = page(helper)
    assert [True, True, False] == [
        words in shown for words in ("The buyer comes for it", "Collected: it has gone", "Scan its shipping label")
    ]
    assert 303 == press(helper, f"/hand-over/{parcel['id']}/collected", who="Ann with the dog", table="main")
    assert "Which order do you pack?" in page(helper)
    with shop.looking() as unit:
        now = unit.get(Parcel, parcel["id"])
    assert now is not None
    assert (ParcelState.HANDED_OVER, "Ann with the dog", "helper") == (now.state, now.collected_by, now.handed_by)
    assert "collected by Ann with the dog" in page(helper, f"/hand-over?parcel={parcel['id']}")
    assert "Ann with" not in str(table.client.get("/api/ledger?limit=500").get_json())


def test_what_is_collected_waits_if_nobody_came(table: Calls, helper: Calls) -> None:
    """Marked as such to hand over and on Today; cancelled meanwhile, it stays, and its page says why."""
    order, parcel = collected(table)
    press(helper, f"/table/{parcel['id']}/later", table="main")
    for address in ("/hand-over", "/"):
        assert "Is collected" in page(helper, address)
    table.post(f"/api/orders/{order['id']}/cancel")
    answer = table.client.post(f"/hand-over/{parcel['id']}/collected", data={"who": ""})
    assert (409, True, True) == (answer.status_code, "It was cancelled" in answer.text, "data-no" in answer.text)


def test_an_order_is_sent_after_all(table: Calls, helper: Calls, shop: Shop) -> None:
    """Its parcel then waits for a label; the other way for its buyer. Once it has left nothing changes that."""
    order, parcel = collected(table)
    assert [403, 303] == [press(each, f"/orders/{order['id']}/way") for each in (helper, table)]
    assert "Scan its shipping label" in page(helper)
    assert 303 == press(table, f"/orders/{order['id']}/way", collected="true")
    assert "The buyer comes for it" in page(helper)
    press(helper, f"/hand-over/{parcel['id']}/collected")
    assert 409 == press(table, f"/orders/{order['id']}/way")
    assert table.get(f"/api/orders/{order['id']}")["collected"]
