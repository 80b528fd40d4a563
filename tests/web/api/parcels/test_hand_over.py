"""Parcels leave the house over HTTP, as the contract has it."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from calls import Calls

from labels.slot_code import card_text
from scanflow.domain.life import Hold
from scanflow.domain.things import Line, Parcel
from scanflow.shop import Shop


def leave(calls: Calls, text: str, key: str = "out-1", status: int = 200) -> Any:
    return calls.post("/api/hand-over", status, key=key, text=text)


def told(answer: Any) -> tuple[Any, ...]:
    return answer["verdict"], answer["reason"], answer["changed"], answer["parcel_state"]


def packed(calls: Calls, number: str = "1001", things: int = 1) -> tuple[list[Any], Any, Any]:
    """Things, their order, and its closed parcel as it stands."""
    return calls.packed(number, things)


def test_a_closed_parcel_leaves_by_its_slip(calls: Calls) -> None:
    """A verdict as a scan's, all fields always there; the parcel is handed over, and a key has one answer."""
    calls.section()
    _, order, parcel = packed(calls)

    answer = leave(calls, parcel["slip"])
    scanned = calls.scan("tray", "D001")
    assert scanned.keys() == answer.keys()
    assert ("accepted", None, True, "handed_over") == told(answer)
    assert (order["id"], "1001", parcel["id"], None, []) == (
        *(answer["order"], answer["order_number"], answer["parcel"]),
        *(answer["line"], answer["released"]),
    )
    assert "handed_over" == calls.get(f"/api/parcels/{parcel['id']}")["state"]
    assert {**answer, "replayed": True} == leave(calls, parcel["slip"])
    assert ("accepted", None, False, "handed_over") == told(leave(calls, parcel["slip"], "out-2"))


def test_a_label_lets_its_parcel_go(calls: Calls, shop: Shop) -> None:
    """It was bound on the page; it is read with or without its spaces."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    calls.section()
    _, _, parcel = packed(calls)
    calls.client.post("/hand-over", data={"text": "RR 123456785 DE", "parcel": parcel["id"]})

    assert parcel["id"] == leave(calls, "RR123456785DE")["parcel"]


def test_a_key_is_of_one_text_and_of_one_kind_of_scan(calls: Calls) -> None:
    """422 `key_reused` at `/key` for another text, for a key of a scan, and for a scan with a key of a hand-over."""
    calls.section()
    _, _, parcel = packed(calls)
    calls.scan("tray", "D001", key="scan-1")
    leave(calls, parcel["slip"])

    faults = [leave(calls, "RR123456785DE", status=422), leave(calls, parcel["slip"], "scan-1", 422)]
    faults.append(calls.post("/api/scans", 422, station="tray", key="out-1", text=card_text("D001")))
    assert [[{"pointer": "/key", "code": "key_reused"}]] * 3 == [fault["errors"] for fault in faults]


def test_what_must_not_leave_is_refused_in_order(calls: Calls, shop: Shop) -> None:
    """`unknown_code`, `not_closed`, `cancelled`, `held`; nothing changes, and each is in the ledger."""
    calls.section()
    (stay,), order, parcel = packed(calls)
    calls.ordered("1002")
    line = order["lines"][0]["id"]

    def held(hold: Hold, why: str) -> None:
        shop.act("owner", lambda unit: unit.put(unit.get(Line, line).held(hold, why)))  # type: ignore[union-attr]

    other = calls.get("/api/orders")["orders"][1]
    answers = [leave(calls, "RR123456785DE", "a"), leave(calls, other["slip"], "b")]
    calls.scan("shelf", stay["code"], bin=stay["bin"])
    answers.append(leave(calls, parcel["slip"], "c"))
    held(Hold.CANCELLED_IN_BOX, "Cancelled.")
    answers.append(leave(calls, parcel["slip"], "d"))
    assert [
        ("refused", "unknown_code", False, None),
        ("refused", "not_closed", False, None),
        ("refused", "held", False, "closed"),
        ("refused", "cancelled", False, "closed"),
    ] == [told(answer) for answer in answers]
    assert (stay["code"], line) == (answers[2]["code"], answers[2]["line"])
    entries = [each["data"] for each in calls.get("/api/ledger?limit=500")["entries"] if each["kind"] == "hand-over"]
    assert [("a", "refused"), ("b", "refused"), ("c", "refused"), ("d", "refused")] == [
        (data["key"], data["verdict"]) for data in entries
    ]
    assert "RR123456785DE" not in str(entries)


@pytest.mark.parametrize("how", ["reopen", "hold"])
def test_what_was_opened_again_stays(calls: Calls, how: str) -> None:
    """By its parcel, or by “Not this thing”: both open it, and no scan lets it go."""
    calls.section()
    _, order, parcel = packed(calls)
    if how == "reopen":
        calls.post(f"/api/parcels/{parcel['id']}/reopen")
    else:
        calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", why="Another saddle")

    assert ("refused", "not_closed", False, "open") == told(leave(calls, parcel["slip"]))


def test_what_left_is_not_opened_again(calls: Calls) -> None:
    """409 `handed_over`, by “Not this thing” and by the undo of the scan that closed it too."""
    calls.section()
    (stay,), order = calls.picked()
    parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stay["code"], key="last")
    leave(calls, parcel["slip"])

    assert "handed_over" == calls.post(f"/api/parcels/{parcel['id']}/reopen", 409)["code"]
    assert "handed_over" == calls.post(f"/api/lines/{order['lines'][0]['id']}/hold", 409, why="Another")["code"]
    assert "handed_over" == calls.post("/api/scans/last/undo", 409)["code"]
    assert "nothing_to_undo" == calls.post("/api/scans/out-1/undo", 409)["code"]


def test_closed_parcels_that_have_not_left_are_listed(calls: Calls) -> None:
    """Page by page, each as a parcel is shown; what left, what is open and what was opened again are not in it."""
    calls.section()
    parcels = [packed(calls, number)[2] for number in ("1001", "1002", "1003")]
    calls.post("/api/parcels", 201, orders=[calls.picked("1004")[1]["id"]], table="two")
    assert {"parcels": parcels, "next": None} == calls.get("/api/hand-over")
    leave(calls, parcels[0]["slip"])
    first = calls.get("/api/hand-over?limit=1")
    second = calls.get(f"/api/hand-over?limit=1&cursor={first['next']}")
    assert ([parcels[1]], [parcels[2]], None) == (first["parcels"], second["parcels"], second["next"])
    calls.post(f"/api/parcels/{parcels[1]['id']}/reopen")
    assert [parcels[2]] == calls.get("/api/hand-over")["parcels"]


def test_lines_that_went_in_another_parcel_are_told_apart(calls: Calls) -> None:
    """Each line names the parcel that it is in, None while it is in none."""
    calls.section()
    stays, order = calls.picked("1001", 3)
    one = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stays[0]["code"])
    calls.post(f"/api/parcels/{one['id']}/close", partial=True)
    two = calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", stays[1]["code"])

    for parcel in (one, two):
        lines = calls.get(f"/api/parcels/{parcel['id']}")["lines"]
        assert [one["id"], two["id"], None] == [line["parcel"] for line in lines]


def test_what_was_read_of_one_part_keeps_the_other_here(calls: Calls, shop: Shop) -> None:
    """Two boxes of an order have one slip: a card read on a shelf stops the last of them, until a person has looked."""
    calls.section()
    stays, order = calls.picked("1001", 2)
    for stay in stays:
        parcel = calls.post("/api/parcels", 201, orders=[order["id"]])
        if calls.scan("table", stay["code"])["parcel_state"] == "open":
            calls.post(f"/api/parcels/{parcel['id']}/close", partial=True)
    first = leave(calls, parcel["slip"])
    shelf = calls.scan("shelf", stays[0]["code"], bin="A-1-1")
    shop.clock = lambda: datetime.now(UTC) + timedelta(minutes=1)
    second = leave(calls, parcel["slip"], "out-2")
    assert ("accepted", "refused", "refused") == (first["verdict"], shelf["verdict"], second["verdict"])
    assert ("held", stays[0]["code"]) == (second["reason"], second["code"])
    calls.post(f"/api/lines/{second['line']}/settle")
    assert ("accepted", parcel["id"]) == tuple(
        leave(calls, parcel["slip"], "out-3")[name] for name in ("verdict", "parcel")
    )


def test_where_boxes_close_by_their_slips_no_card_closes_one(calls: Calls, shop: Shop) -> None:
    """The last card leaves it open, the slip closes it; what was read twice is answered twice."""
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, slip_closes=True)))
    calls.section()
    (stay,), order = calls.picked()
    slip = calls.get(f"/api/orders/{order['id']}")["slip"]

    def scan(key: str) -> tuple[Any, ...]:
        answer = calls.post("/api/scans", station="table", key=key, text=slip)
        return answer["verdict"], answer["changed"], answer["parcel_state"], answer["released"]

    assert ("accepted", True, "open", []) == scan("a")
    assert ("accepted", False, "open", []) == scan("b")
    assert "open" == calls.scan("table", stay["code"])["parcel_state"]
    assert ("accepted", True, "closed", [stay["code"]]) == scan("c")
    assert ("accepted", False, "closed", [stay["code"]]) == scan("d")


def test_who_takes_it_along_may_be_said(calls: Calls, shop: Shop) -> None:
    """The parcel keeps it, and who handed it over; a key is of one carrier, and a parcel that is collected of none."""
    calls.section()
    _, _, parcel = packed(calls)
    said = {"key": "out-1", "text": parcel["slip"], "carrier": "The red van"}
    first, again = (calls.post("/api/hand-over", **said) for _ in range(2))
    assert {**first, "replayed": True} == again
    fault = calls.post("/api/hand-over", 422, **{**said, "carrier": "The blue van"})
    assert [{"pointer": "/key", "code": "key_reused"}] == fault["errors"]
    with shop.looking() as unit:
        now = unit.get(Parcel, parcel["id"])
    assert now is not None
    assert ("The red van", "boss") == (now.carrier, now.handed_by)
    one = calls.put_away("Saddle")
    order = calls.post(f"/api/stays/{one['id']}/sell", 201, number="D-1", collected=True)
    walk = calls.post("/api/rounds", 201, orders=[order["id"]])
    calls.scan("bin", one["code"], round=walk["id"])
    calls.post("/api/parcels", 201, orders=[order["id"]])
    calls.scan("table", one["code"])
    wrong = calls.post("/api/hand-over", key="out-2", text=order["slip"], carrier="The red van")
    assert [("refused", "held", False, "closed"), ("accepted", None, True, "handed_over")] == [
        told(wrong),
        told(leave(calls, order["slip"], "out-3")),
    ]
