"""Sections, slots and stays over HTTP, as the contract has them."""

from __future__ import annotations

from typing import Any

import pytest
from calls import Calls
from flask.testing import FlaskClient

from labels.paper import COLOURS
from labels.slot_code import card_text, reference


def test_a_section_is_made_with_the_colour_least_used(calls: Calls) -> None:
    """201 with the section, its counts and its address; without a colour it gets the first one not in use."""
    response = calls.client.post("/api/sections", json={"code": "D", "name": "Derailleurs", "slots_per_bin": 4})

    assert 201 == response.status_code
    assert "/api/sections/D" == response.headers["Location"]
    expected = {
        "code": "D",
        "name": "Derailleurs",
        "slots_per_bin": 4,
        "colour": next(iter(COLOURS)),
        "digits": 3,
        "slots": {"free": 0, "taken": 0, "due": 0, "retired": 0},
    }
    assert expected == response.get_json()
    assert expected == calls.get("/api/sections/D")
    second = calls.post("/api/sections", 201, code="S", name="Saddles", slots_per_bin=2)
    assert list(COLOURS)[1] == second["colour"]


def test_letters_in_use_are_refused(calls: Calls) -> None:
    """409 `section_exists`."""
    calls.section("D", 0)

    assert "section_exists" == calls.post("/api/sections", 409, code="D", name="Other", slots_per_bin=4)["code"]


def test_numbers_go_on_and_bins_are_filled_in_order(calls: Calls) -> None:
    """201 with the codes; the last bin of before is filled up before a new one is made."""
    calls.section("D", 3, slots_per_bin=2)

    assert {"codes": ["D004", "D005"]} == calls.post("/api/sections/D/slots", 201, count=2, rack="A")
    bins = [slot["bin"] for slot in calls.get("/api/slots?section=D")["slots"]]
    assert 3 == len(set(bins))
    assert bins[0] == bins[1] != bins[2] == bins[3] != bins[4]


def test_sections_are_listed_with_counts_of_their_slots(calls: Calls) -> None:
    """A taken, a due, a retired and the free ones are counted; a lost card on a stored item leaves its slot taken."""
    calls.section("D", 6)
    calls.packed("1001", 1)  # D001 is due
    calls.put_away()  # D002
    with_lost_card = calls.put_away()["code"]  # D003
    for code in (with_lost_card, "D004"):
        lose_card(calls, code)

    (section,) = calls.get("/api/sections")["sections"]
    assert {"free": 2, "taken": 2, "due": 1, "retired": 1} == section["slots"]
    for state, expected in (
        ("free", ["D005", "D006"]),
        ("taken", ["D002", "D003"]),
        ("due", ["D001"]),
        ("retired", ["D004"]),
    ):
        listed = calls.get(f"/api/slots?section=D&state={state}")["slots"]
        assert expected == [slot["code"] for slot in listed]
        assert {state} == {slot["state"] for slot in listed}


def lose_card(calls: Calls, code: str) -> None:
    from scanflow.workflow import stock

    shop = calls.client.application.extensions["scanflow"]
    shop.act("tester", lambda unit: stock.lose_card(unit, code))


def test_slots_are_listed_with_what_stands_in_them(calls: Calls) -> None:
    """Each slot has its open stay, null without one, and where its card is."""
    calls.section("D", 2)
    stay = calls.put_away()

    first, second = calls.get("/api/slots")["slots"]
    bin_ = first.pop("bin")
    assert {"code": "D001", "section": "D", "state": "taken", "stay": stay["id"], "card": "on_item"} == first
    assert bin_ == second["bin"] == stay["bin"]
    assert (None, "tray", "free") == (second["stay"], second["card"], second["state"])


def test_a_thing_is_put_away_in_the_lowest_free_slot(calls: Calls) -> None:
    """201 with the stay: its slot, turn, and the reference that goes into the listing."""
    calls.section("D", 2)

    response = calls.client.post("/api/stays", json={"title": "Rear derailleur", "section": "D", "listing": "L1"})
    stay = response.get_json()
    assert 201 == response.status_code
    assert f"/api/stays/{stay['id']}" == response.headers["Location"]
    assert ("D001", 1, reference("D001", 1)) == (stay["code"], stay["turn"], stay["reference"])
    assert ("stored", "Rear derailleur", "L1", "") == (stay["state"], stay["title"], stay["listing"], stay["notes"])
    assert stay == calls.get(f"/api/stays/{stay['id']}")


@pytest.mark.parametrize("where", [{"text": card_text("D002")}, {"code": "D002"}])
def test_a_thing_is_put_away_by_its_card_or_in_a_chosen_slot(calls: Calls, where: dict[str, str]) -> None:
    """The card in hand, or the code of a slot, says where."""
    calls.section("D", 2)

    assert "D002" == calls.post("/api/stays", 201, title="Crank", **where)["code"]
    assert "taken" == calls.post("/api/stays", 409, title="Other", **where)["code"]


@pytest.mark.parametrize("where", [{}, {"section": "D", "code": "D001"}, {"section": "D", "text": "D0010"}])
def test_exactly_one_place_is_named(calls: Calls, where: dict[str, str]) -> None:
    """None or two of `text`, `code` and `section` are a 422."""
    calls.section("D", 2)

    assert "exactly_one" == calls.post("/api/stays", 422, title="Crank", **where)["code"]


@pytest.mark.parametrize(
    ("where", "pointer", "code"),
    [
        ({"section": "X"}, "/section", "unknown_section"),
        ({"code": "D099"}, "/code", "unknown_code"),
        ({"text": "D0011"}, "/text", "bad_check"),
        ({"text": "lamp"}, "/text", "unknown_code"),
    ],
)
def test_an_unknown_place_is_a_fault_of_its_field(calls: Calls, where: dict[str, str], pointer: str, code: str) -> None:
    """422 that points at the field."""
    calls.section("D", 2)

    problem = calls.post("/api/stays", 422, title="Crank", **where)
    assert [{"pointer": pointer, "code": code}] == problem["errors"]


def test_a_full_section_names_the_free_slots_of_its_bulk(calls: Calls) -> None:
    """409 `section_full` with sections of as many slots per bin or fewer."""
    calls.section("D", 1, slots_per_bin=4)
    calls.section("S", 3, slots_per_bin=2)
    calls.section("K", 5, slots_per_bin=9)
    calls.put_away(section="D")

    problem = calls.post("/api/stays", 409, title="Crank", section="D")
    assert ("section_full", {"S": 3}) == (problem["code"], problem["free"])


def test_a_number_whose_card_is_away_is_not_handed_out(calls: Calls) -> None:
    """409 `card_due` after a release, until the card was seen in the tray."""
    calls.section("D", 1)
    calls.packed("1001", 1)

    assert "card_due" == calls.post("/api/stays", 409, title="Crank", code="D001")["code"]
    assert "accepted" == calls.scan("tray", "D001")["verdict"]
    assert 2 == calls.post("/api/stays", 201, title="Crank", code="D001")["turn"]


def test_an_item_gets_new_words(calls: Calls) -> None:
    """PATCH changes what is given and leaves the rest."""
    calls.section()
    stay = calls.put_away("Rear derailleur")

    response = calls.client.patch(f"/api/stays/{stay['id']}", json={"notes": "long cage"})
    assert stay | {"notes": "long cage"} == response.get_json()


def test_a_thing_has_a_packing_note_beside_its_notes(calls: Calls) -> None:
    """It is told when the thing is put away, changed without the notes, and limited in length."""
    calls.section()
    told = {"title": "Bell", "notes": "paid 3", "packing": "Fragile"}
    stay = calls.post("/api/stays", 201, section="D", **told)
    assert told == {name: stay[name] for name in told}
    changed = calls.client.patch(f"/api/stays/{stay['id']}", json={"packing": "Two screws in the bag"}).get_json()
    assert stay | {"packing": "Two screws in the bag"} == changed == calls.get(f"/api/stays/{stay['id']}")
    long = calls.client.patch(f"/api/stays/{stay['id']}", json={"packing": "x" * 201})
    assert (422, "too_long") == (long.status_code, long.get_json()["code"])


def test_a_thing_is_sold_unless_an_order_wants_it(calls: Calls) -> None:
    """201 with the order, which tells the note; 409 once an order wants it, and for a number that is another's."""
    calls.section()
    one, two = calls.put_away(), calls.put_away()
    order = calls.post(f"/api/stays/{one['id']}/sell", 201, number="At the door 1", note="Cash", collected=True)
    assert ("At the door 1", "Cash", True) == (order["number"], order["note"], order["collected"])
    assert [(one["id"], "waiting")] == [(line["stay"], line["state"]) for line in order["lines"]]
    assert order == calls.get(f"/api/orders/{order['id']}") == calls.get("/api/orders")["orders"][0]
    assert "has_live_line" == calls.post(f"/api/stays/{one['id']}/sell", 409)["code"]
    assert "taken" == calls.post(f"/api/stays/{two['id']}/sell", 409, number="At the door 1")["code"]


def test_a_thing_is_withdrawn_unless_an_order_wants_it(calls: Calls) -> None:
    """200 with the stay withdrawn; 409 `has_live_line` while an order wants it."""
    calls.section()
    free = calls.put_away()
    (wanted,), _ = calls.ordered()

    assert "withdrawn" == calls.post(f"/api/stays/{free['id']}/withdraw", reason="cracked")["state"]
    assert "has_live_line" == calls.post(f"/api/stays/{wanted['id']}/withdraw", 409, reason="cracked")["code"]


def test_a_thing_moves_and_its_line_follows(calls: Calls) -> None:
    """The answer is the new stay, and the order's line is bound to it."""
    calls.section()
    (stay,), order = calls.ordered()

    new = calls.post(f"/api/stays/{stay['id']}/move", to="D005")
    assert ("D005", stay["item"], "stored") == (new["code"], new["item"], new["state"])
    assert "moved" == calls.get(f"/api/stays/{stay['id']}")["state"]
    assert new["id"] == calls.get(f"/api/orders/{order['id']}")["lines"][0]["stay"]
    assert "/to" == calls.post(f"/api/stays/{new['id']}/move", 422, to="D999")["errors"][0]["pointer"]


@pytest.mark.parametrize(
    ("method", "path"),
    [
        ("get", "/api/sections/X"),
        ("post", "/api/sections/X/slots"),
        ("get", "/api/stays/none"),
        ("patch", "/api/stays/none"),
        ("get", "/api/stays/none/photo"),
        ("post", "/api/stays/none/withdraw"),
        ("post", "/api/stays/none/move"),
        ("get", "/api/orders/none"),
        ("post", "/api/orders/none/cancel"),
        ("post", "/api/lines/none/settle"),
        ("post", "/api/lines/none/short"),
        ("post", "/api/lines/none/found"),
        ("post", "/api/lines/none/hold"),
        ("post", "/api/lines/none/revive"),
        ("get", "/api/rounds/none"),
        ("post", "/api/rounds/none/close"),
        ("get", "/api/parcels/none"),
        ("post", "/api/parcels/none/close"),
        ("post", "/api/parcels/none/set-aside"),
        ("post", "/api/parcels/none/reopen"),
        ("post", "/api/scans/none/undo"),
        ("get", "/api/stays/%00"),
        ("get", "/api/stays/%ED%A0%80"),
    ],
)
def test_an_unknown_id_in_the_path_is_not_found(client: FlaskClient, method: str, path: str) -> None:
    """404 as problem details, whatever the id is made of."""
    bodies: dict[str, Any] = {"slots": {"count": 1}, "withdraw": {"reason": "x"}, "move": {"to": "D001"}}
    bodies |= {"none": {"title": "x"}, "hold": {"why": "x"}}
    body = bodies.get(path.rsplit("/", 1)[1], {}) if method != "get" else None

    response = client.open(path, method=method.upper(), json=body)
    assert (404, "not_found") == (response.status_code, response.get_json()["code"])
    assert "application/problem+json" == response.mimetype
