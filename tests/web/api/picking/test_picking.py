"""Rounds, parcels and scans over HTTP, as the contract has them."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest
from calls import Calls, photo
from clients import SQLITE_ONLY

from labels.slot_code import calc_check_digit, card_text, parse_slip
from scanflow.shop import Shop
from scanflow.vision import Certainty, PictureReadings, Reading, Symbology

SLIP = "ORD" + "1" * 29
SLIP += calc_check_digit(SLIP)  # of an order that no database can count to

VERDICT = {
    "verdict",
    "reason",
    "advice",
    "replayed",
    "changed",
    "code",
    "title",
    "photo",
    "order",
    "order_number",
    "line",
    "line_state",
    "order_state",
    "parcel",
    "parcel_state",
    "released",
}


def test_a_round_is_planned_for_all_that_wait(calls: Calls) -> None:
    """201 with a stop for each waiting line, and the orders left out with the reason."""
    calls.section()
    (stay,), order = calls.ordered()
    held = calls.post("/api/orders", 201, number="held", lines=[{"reference": "lamp"}])

    response = calls.client.post("/api/rounds", json={"orders": [order["id"], held["id"]]})
    round_ = response.get_json()
    assert 201 == response.status_code
    assert f"/api/rounds/{round_['id']}" == response.headers["Location"]
    stop = {
        "bin": stay["bin"],
        "code": stay["code"],
        "title": stay["title"],
        "photo": None,
        "order": order["id"],
        "line": order["lines"][0]["id"],
        "basket": 1,
        "state": "waiting",
    }
    assert ("open", [stop]) == (round_["state"], round_["stops"])
    assert [{"order": held["id"], "why": "held"}] == round_["left_out"]
    assert round_ | {"left_out": []} == calls.get(f"/api/rounds/{round_['id']}")
    assert [{"order": order["id"], "why": "on_round"}] == calls.post("/api/rounds", 201)["left_out"]


def test_a_scan_that_waited_is_as_old_as_it_says(calls: Calls) -> None:
    """A reading from before another does not move the card's sighting, text or photo; one key, one answer."""
    calls.section(slots_per_bin=1)
    (stay,), _ = calls.ordered()
    home, away = stay["bin"], calls.get("/api/slots")["slots"][1]["bin"]
    round_ = calls.post("/api/rounds", 201)["id"]
    calls.scan("shelf", stay["code"], bin=home)
    old = {"station": "shelf", "key": "old", "bin": away, "text": card_text(stay["code"])}
    first = calls.post("/api/scans", **old, age_ms=60_000)
    assert "wrong_bin" == first["reason"]
    assert first | {"replayed": True} == calls.post("/api/scans", **old, age_ms=90_000)
    shown = {"station": "shelf", "key": "old-photo", "bin": away, "image": photo(stay["code"])}
    assert "wrong_bin" == calls.upload("/api/scans", **shown, age_ms="60000")["reason"]
    assert [home] == [stop["bin"] for stop in calls.get(f"/api/rounds/{round_}")["stops"]]


def test_a_stop_follows_its_thing(calls: Calls) -> None:
    """While it waits, its bin is where the card was read last, and that of the new slot after a move; then it stays."""
    calls.section(slots_per_bin=1)
    (stay,), _ = calls.ordered()
    round_ = calls.post("/api/rounds", 201)["id"]

    def bin_() -> str:
        (stop,) = calls.get(f"/api/rounds/{round_}")["stops"]
        return str(stop["bin"])

    elsewhere = [each["bin"] for each in calls.get("/api/slots")["slots"] if each["bin"] != stay["bin"]]
    bins = [bin_()]
    calls.scan("shelf", stay["code"], bin=elsewhere[0])
    bins.append(bin_())
    calls.scan("shelf", stay["code"], bin=stay["bin"])
    bins.append(bin_())
    moved = calls.post(f"/api/stays/{stay['id']}/move", to="D004")
    bins.append(bin_())
    calls.scan("bin", "D004", round=round_)
    bins.append(bin_())
    assert [stay["bin"], elsewhere[0], stay["bin"], moved["bin"], stay["bin"]] == bins


def test_what_lies_in_a_basket_is_sold_again(calls: Calls) -> None:
    """The stop of the new round has the thing's own bin, and a scan of it there puts it into the new basket."""
    calls.section()
    (stay,), order = calls.picked()
    calls.post(f"/api/orders/{order['id']}/cancel")
    calls.order("1002", stay)
    round_ = calls.post("/api/rounds", 201)
    assert [(stay["bin"], "waiting")] == [(stop["bin"], stop["state"]) for stop in round_["stops"]]
    assert "Put it in basket 2." == calls.scan("bin", stay["code"], round=round_["id"])["advice"]


def test_a_round_is_closed_once(calls: Calls) -> None:
    """200, then 409 `not_allowed`; a scan of it is refused `closed`."""
    calls.section()
    (stay,), order = calls.ordered()
    round_ = calls.post("/api/rounds", 201)

    assert "closed" == calls.post(f"/api/rounds/{round_['id']}/close")["state"]
    assert "not_allowed" == calls.post(f"/api/rounds/{round_['id']}/close", 409)["code"]
    assert "closed" == calls.scan("bin", stay["code"], round=round_["id"])["reason"]
    assert [order["id"]] == [stop["order"] for stop in calls.post("/api/rounds", 201)["stops"]]


@pytest.mark.parametrize("path", ["/api/rounds", "/api/parcels"])
def test_an_unknown_order_is_a_fault_of_its_field(calls: Calls, path: str) -> None:
    """422 that points into the list."""
    calls.section()
    _, order = calls.ordered()

    problem = calls.post(path, 422, orders=[order["id"], "none"])
    assert [{"pointer": "/orders/1", "code": "unknown_order"}] == problem["errors"]


def test_a_parcel_is_opened_and_only_one_at_a_table(calls: Calls) -> None:
    """201 with the lines of its orders and its slip; 409 `parcel_open` names the one that is open."""
    calls.section()
    _, order = calls.picked("1001")
    _, other = calls.ordered("1002")

    response = calls.client.post("/api/parcels", json={"orders": [order["id"]]})
    parcel = response.get_json()
    assert 201 == response.status_code
    assert f"/api/parcels/{parcel['id']}" == response.headers["Location"]
    assert ("open", "main", [order["id"]]) == (parcel["state"], parcel["table"], parcel["orders"])
    assert 1 == parse_slip(parcel["slip"])
    assert ["picked"] == [line["state"] for line in parcel["lines"]]
    assert parcel == calls.get(f"/api/parcels/{parcel['id']}")
    problem = calls.post("/api/parcels", 409, orders=[other["id"]])
    assert ("parcel_open", parcel["id"]) == (problem["code"], problem["parcel"])
    assert "second" == calls.post("/api/parcels", 201, orders=[other["id"]], table="second")["table"]


def test_a_parcel_is_closed_in_part_and_reopened(calls: Calls) -> None:
    """`nothing_packed`, then `lines_missing` unless `partial`; `reopen` takes it back."""
    calls.section()
    (first, _), order = calls.picked("1001", 2)
    path = f"/api/parcels/{calls.post('/api/parcels', 201, orders=[order['id']])['id']}"

    assert "nothing_packed" == calls.post(f"{path}/close", 409, partial=True)["code"]
    calls.scan("table", first["code"])
    assert "lines_missing" == calls.post(f"{path}/close", 409)["code"]
    closed = calls.post(f"{path}/close", partial=True)
    assert ("closed", ["released", "picked"]) == (closed["state"], [line["state"] for line in closed["lines"]])
    assert "open" == calls.post(f"{path}/reopen")["state"]
    assert "not_allowed" == calls.post(f"{path}/reopen", 409)["code"]


def test_a_parcel_is_set_aside_and_taken_up_again(calls: Calls) -> None:
    """Set aside it frees the table; opened for the same order it is the same parcel."""
    calls.section()
    (first, _), order = calls.picked("1001", 2)
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", first["code"])

    assert "aside" == calls.post(f"/api/parcels/{parcel['id']}/set-aside")["state"]
    assert "no_parcel" == calls.scan("table", first["code"])["reason"]
    assert parcel["id"] == calls.post("/api/parcels", 201, orders=[order["id"]])["id"]


def test_the_day_from_bin_to_tray(calls: Calls) -> None:
    """Pick, the wrong card refused, pack, release, tray, and the slot is used again."""
    calls.section()
    (stay,), order = calls.picked("1001")
    (wrong,), _ = calls.picked("1002")
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])

    refused = calls.scan("table", wrong["code"])
    assert ("refused", "other_order", "1002") == (refused["verdict"], refused["reason"], refused["order_number"])
    packed = calls.scan("table", stay["code"])
    assert VERDICT == packed.keys()
    assert ("accepted", None, True, False) == tuple(
        packed[name] for name in ("verdict", "reason", "changed", "replayed")
    )
    assert (parcel["id"], "closed", [stay["code"]]) == tuple(
        packed[name] for name in ("parcel", "parcel_state", "released")
    )
    assert ("released", "released") == (packed["line_state"], packed["order_state"])
    assert "accepted" == calls.scan("tray", stay["code"])["verdict"]
    again = calls.put_away()
    assert (stay["code"], 2) == (again["code"], again["turn"])


def test_a_slip_opens_its_parcel(calls: Calls) -> None:
    """The order's slip, scanned at the table, opens that order's parcel."""
    calls.section()
    _, order = calls.picked()

    answer = calls.post("/api/scans", station="table", key="slip", text=order["slip"])
    assert ("accepted", order["id"], "open") == (answer["verdict"], answer["order"], answer["parcel_state"])


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "unreadable"),
        ("D0011", "bad_check"),
        ("Z0010", "bad_check"),
        ("lamp", "unknown_code"),
        (SLIP, "unknown_code"),
    ],
)
def test_a_scan_that_can_be_judged_is_answered(calls: Calls, text: str, reason: str) -> None:
    """200 refused, with every field, null or empty where it doesn't apply."""
    calls.section()

    answer = calls.post("/api/scans", station="tray", key="a", text=text)
    assert ("refused", reason) == (answer["verdict"], answer["reason"])
    assert VERDICT == answer.keys()
    empty = VERDICT - {"verdict", "reason", "advice", "replayed", "changed", "released"}
    assert {None} == {answer[name] for name in empty}


@pytest.mark.parametrize(
    ("body", "pointer", "code"),
    [
        ({"station": "bin"}, "/round", "required"),
        ({"station": "bin", "round": "none"}, "/round", "unknown_round"),
        ({"station": "shelf"}, "/bin", "required"),
        ({"station": "shelf", "bin": "Z-9-9"}, "/bin", "unknown_bin"),
        ({"station": "door"}, "/station", "not_allowed_value"),
        ({"station": "tray", "key": "a b"}, "/key", "pattern"),
        ({"station": "tray", "key": "a" * 65}, "/key", "pattern"),
        ({"station": "tray", "at": "2026-02-30"}, "/at", "bad_time"),
        ({"station": "tray", "at": "1970-01-01T00:00:00Z"}, "/at", "bad_time"),
        ({"station": "tray", "at": "9999-12-31T23:59:59-12:00"}, "/at", "bad_time"),
        ({"station": "tray", "image": "x"}, "/image", "unknown_field"),
        ({"station": "tray", "take_out": "yes"}, "/take_out", "type"),
    ],
)
def test_a_scan_that_can_not_be_judged_is_a_fault_of_its_field(
    calls: Calls, body: dict[str, Any], pointer: str, code: str
) -> None:
    """422 that points at the field, and no verdict is kept."""
    calls.section()

    problem = calls.post("/api/scans", 422, **{"key": "a", "text": "D0010"} | body)
    assert [{"pointer": pointer, "code": code}] == problem["errors"]
    assert not calls.post("/api/scans", station="tray", key="a", text="D0010")["replayed"]


def test_the_same_key_gets_the_same_answer_once(calls: Calls) -> None:
    """`replayed` is all that differs, also with defaults spelt out; another body is a 422 `key_reused`."""
    calls.section()
    (stay,), order = calls.ordered()
    round_ = calls.post("/api/rounds", 201)
    scan = {"station": "bin", "key": "k", "text": card_text(stay["code"]), "round": round_["id"]}

    first = calls.post("/api/scans", **scan)
    before = calls.get("/api/health")["ledger"]
    assert ("accepted", order["id"]) == (first["verdict"], first["order"])
    assert first | {"replayed": True} == calls.post("/api/scans", **scan, table="main", take_out=False)
    assert before == calls.get("/api/health")["ledger"]
    problem = calls.post("/api/scans", 422, **scan | {"text": ""})
    assert [{"pointer": "/key", "code": "key_reused"}] == problem["errors"]


def test_repeats_that_come_at_once_are_one_scan(calls: Calls) -> None:
    """Of eight equal scans at the same time one is judged; the others wait and get its answer."""
    calls.section()
    (stay,), _ = calls.ordered()
    round_ = calls.post("/api/rounds", 201)
    body = {"station": "bin", "key": "k", "text": card_text(stay["code"]), "round": round_["id"]}
    token = calls.client.environ_base["HTTP_AUTHORIZATION"]
    app = calls.client.application

    def send(_: int) -> Any:
        return app.test_client().post("/api/scans", json=body, headers={"Authorization": token}).get_json()

    with ThreadPoolExecutor(8) as pool:
        answers = list(pool.map(send, range(8)))
    assert [False] + [True] * 7 == sorted(answer.pop("replayed") for answer in answers)
    assert all(answer == answers[0] for answer in answers)


@SQLITE_ONLY
def test_a_photograph_is_a_scan(calls: Calls) -> None:
    """A picture of one card is judged like its text; of two `many_codes`; of none `unreadable`."""
    calls.section()
    stay = calls.put_away()

    for key, image, expected in (
        ("one", photo("D001"), (None, stay["code"])),
        ("two", photo("D001", "D002"), ("many_codes", None)),
        ("none", photo(), ("unreadable", None)),
    ):
        answer = calls.upload("/api/scans", station="shelf", key=key, bin=stay["bin"], image=image)
        assert expected == (answer["reason"], answer["code"])
        assert not answer["replayed"]


class Seen:
    """Readers to whom every picture shows the same readings."""

    def __init__(self, *readings: Reading) -> None:
        self.picture = PictureReadings(600, 400, 1.0, readings)

    def read(self, image: bytes) -> PictureReadings:
        return self.picture

    def glance(self, image: bytes) -> PictureReadings:
        return self.read(image)


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("decoded", "expected"), [([], ("refused", "unreadable", None)), (["D001"], ("accepted", None, "D001"))]
)
def test_only_decoded_readings_are_a_scan(
    calls: Calls, shop: Shop, decoded: list[str], expected: tuple[str, str | None, str | None]
) -> None:
    """Cards that were matched or merely located in the picture move no line and are not counted as cards in view."""
    calls.section()
    stays, order = calls.ordered(things=2)
    walk = calls.post("/api/rounds", 201)["id"]
    assert ["D001", "D002"] == [stay["code"] for stay in stays]
    corners = ((0.0, 0.0), (9.0, 0.0), (9.0, 5.0), (0.0, 5.0))
    shop.readers = Seen(  # type: ignore[assignment]
        Reading(card_text("D002"), Symbology.CODE128, "match", corners, Certainty.MATCHED),
        *(Reading(card_text(code), Symbology.CODE128, "zxing-cpp", corners) for code in decoded),
        Reading(None, Symbology.CODE128, "locate", corners, Certainty.UNREAD),
    )

    answer = calls.upload("/api/scans", station="bin", round=walk, key="k", image=photo())
    assert expected == (answer["verdict"], answer["reason"], answer["code"])
    states = [line["state"] for line in calls.get(f"/api/orders/{order['id']}")["lines"]]
    assert ["picked" if stay["code"] in decoded else "waiting" for stay in stays] == states


@SQLITE_ONLY
def test_a_frame_is_read_and_nothing_else(calls: Calls, shop: Shop) -> None:
    """It answers with what was decoded whole, top down, records nothing, and refuses what is no picture."""
    calls.section()
    before = calls.get("/api/ledger")["entries"]

    for frame, codes in ((photo("D001"), ["D001"]), (photo("D002", "D001"), ["D002", "D001"]), (photo(), [])):
        assert {"texts": [card_text(code) for code in codes]} == calls.upload("/api/decode", image=frame)
    assert "bad_image" == calls.upload("/api/decode", 422, image=b"no picture")["code"]
    corners = ((0.0, 0.0), (9.0, 0.0), (9.0, 5.0), (0.0, 5.0))
    shop.readers = Seen(  # type: ignore[assignment]
        Reading(card_text("D002"), Symbology.CODE128, "match", corners, Certainty.MATCHED),
        Reading(None, Symbology.CODE128, "locate", corners, Certainty.UNREAD),
    )
    assert {"texts": []} == calls.upload("/api/decode", image=photo("D002"))
    assert before == calls.get("/api/ledger")["entries"]


@SQLITE_ONLY
def test_a_photograph_sent_again_is_replayed(calls: Calls) -> None:
    """The same key and picture get the same answer; another picture or other fields are `key_reused`."""
    calls.section()
    stay = calls.put_away()
    fields = {"station": "shelf", "key": "k", "bin": stay["bin"]}

    first = calls.upload("/api/scans", **fields, image=photo("D001"))
    assert first | {"replayed": True} == calls.upload("/api/scans", **fields, image=photo("D001"))
    assert "key_reused" == calls.upload("/api/scans", 422, **fields, image=photo("D002"))["code"]
    assert "key_reused" == calls.upload("/api/scans", 422, **fields, image=photo("D001"), table="b")["code"]
    assert "key_reused" == calls.post("/api/scans", 422, **fields, text="D0010")["code"]


@SQLITE_ONLY
@pytest.mark.parametrize(
    ("fields", "pointer", "code"),
    [
        ({"image": b"no picture"}, "/image", "bad_image"),
        ({"image": photo("D001")[:200]}, "/image", "bad_image"),
        ({"image": b""}, "/image", "bad_image"),
        ({}, "/image", "required"),
        ({"image": photo("D001"), "text": "D0010"}, "/text", "unknown_field"),
        ({"image": photo("D001"), "take_out": "perhaps"}, "/take_out", "type"),
        ({"image": photo("D001"), "station": "bin"}, "/round", "required"),
    ],
)
def test_a_form_that_can_not_be_judged_is_a_fault_of_its_field(
    calls: Calls, fields: dict[str, Any], pointer: str, code: str
) -> None:
    """422 that points at the field."""
    calls.section()

    problem = calls.upload("/api/scans", 422, **{"station": "tray", "key": "k"} | fields)
    assert {"pointer": pointer, "code": code} in problem["errors"]
    assert problem["detail"]


def test_what_lies_in_the_box_is_taken_out_by_a_scan(calls: Calls) -> None:
    """`take_out` at the table brings the line back to picked."""
    calls.section()
    (first, _), order = calls.picked("1001", 2)
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", first["code"])

    assert "picked" == calls.scan("table", first["code"], take_out=True)["line_state"]


def test_a_scan_is_undone_with_the_closing_it_caused(calls: Calls) -> None:
    """Undo answers the line and reopens the parcel; it can't be undone twice."""
    calls.section()
    (stay,), order = calls.picked()
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stay["code"], key="last")

    line = calls.post("/api/scans/last/undo")
    assert (order["lines"][0]["id"], "picked") == (line["id"], line["state"])
    assert "open" == calls.get(f"/api/parcels/{parcel['id']}")["state"]
    assert 409 == calls.client.post("/api/scans/last/undo").status_code


def test_a_scan_is_not_undone_once_its_slot_is_used_again(calls: Calls) -> None:
    """409 `slot_reused`."""
    calls.section()
    (stay,), order = calls.picked()
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stay["code"], key="last")
    calls.scan("tray", stay["code"])
    calls.post("/api/stays", 201, title="Crank", code=stay["code"])

    assert "slot_reused" == calls.post("/api/scans/last/undo", 409)["code"]
