"""Orders, their lines, and files of them over HTTP, as the contract has them."""

from __future__ import annotations

from typing import Any

import pytest
from calls import Calls

from scanflow.exchange.mapping import ColumnMapping, signature


def test_an_order_is_taken_in_and_bound(calls: Calls) -> None:
    """201 with the order, its lines bound to stays, and its address."""
    calls.section()
    stay = calls.put_away("Rear derailleur")
    body = {
        "number": "1001",
        "channel": "market",
        "ordered_at": "2099-11-03T14:05:00+01:00",
        "ship_by": "2099-11-05",
        "lines": [{"reference": stay["reference"]}],
    }

    response = calls.client.post("/api/orders", json=body)
    order = response.get_json()
    assert 201 == response.status_code
    assert f"/api/orders/{order['id']}" == response.headers["Location"]
    assert ("1001", "market", "waiting") == (order["number"], order["channel"], order["state"])
    assert ("2099-11-03T13:05:00+00:00", "2099-11-05T23:59:59+00:00") == (order["ordered_at"], order["ship_by"])
    (line,) = order["lines"]
    del line["id"]
    assert {
        "reference": stay["reference"],
        "code": stay["code"],
        "stay": stay["id"],
        "title": "Rear derailleur",
        "state": "waiting",
        "hold": None,
        "why": "",
        "holds": [],
    } == line
    assert order["slip"].startswith("ORD")


def test_an_order_sent_again_changes_nothing(calls: Calls) -> None:
    """200 with the same order; the ledger has no new entry."""
    calls.section()
    stay = calls.put_away()
    order = calls.order("1001", stay)
    before = calls.get("/api/health")["ledger"]

    lines = [{"reference": stay["reference"], "title": stay["title"]}]
    assert order == calls.post("/api/orders", 200, number="1001", lines=lines)
    assert before == calls.get("/api/health")["ledger"]


def test_lines_absent_later_are_held_and_new_ones_bound(calls: Calls) -> None:
    """An order that comes again with another line keeps the absent one, held `not_in_file`."""
    calls.section()
    first, second = calls.put_away("Saddle"), calls.put_away("Lamp")
    lines = [{"reference": stay["reference"], "title": stay["title"]} for stay in (first, second)]
    calls.post("/api/orders", 201, number="1001", channel="market", lines=lines[:1])

    order = calls.post("/api/orders", 200, number="1001", channel="market", lines=lines[1:])
    assert ["not_in_file", None] == [line["hold"] for line in order["lines"]]
    assert second["id"] == order["lines"][1]["stay"]


def test_another_order_under_the_same_number_is_answered_as_it_is_kept(calls: Calls) -> None:
    """201 with a marked number where no channel is named and no line is shared; sent again 200 with the same order."""
    calls.section()
    first, second = calls.put_away("Saddle"), calls.put_away("Lamp")
    one, two = calls.order("1001", first), calls.order("1001", second)
    assert ("1001 (2)", "held", "held") == (two["number"], two["state"], calls.get(f"/api/orders/{one['id']}")["state"])
    lines = [{"reference": second["reference"], "title": second["title"]}]
    assert two == calls.post("/api/orders", 200, number="1001", lines=lines)


def test_what_can_not_be_bound_is_held_with_a_reason(calls: Calls) -> None:
    """Unknown and free slots leave lines unbound and the order held."""
    calls.section()

    order = calls.post("/api/orders", 201, number="1001", lines=[{"reference": "D001"}, {"reference": "lamp"}])
    assert "held" == order["state"]
    assert ["slot_free", "unknown_code"] == [line["hold"] for line in order["lines"]]
    assert all(line["why"] for line in order["lines"])


@pytest.mark.parametrize("text", ["2026-02-30T10:00:00Z", "0001-01-01T00:00:00Z", "1999-12-31", "9999-12-31T23:59:59Z"])
@pytest.mark.parametrize("name", ["ordered_at", "ship_by"])
def test_a_time_that_is_none_is_a_fault_of_its_field(calls: Calls, name: str, text: str) -> None:
    """422 that points at the time and says how one is written, of which years."""
    problem = calls.post("/api/orders", 422, number="1001", **{name: text}, lines=[{"reference": "D001"}])
    assert [{"pointer": f"/{name}", "code": "bad_time"}] == problem["errors"]
    assert "of the years 2000 to 2199" in problem["detail"]


def test_orders_are_listed_by_state(calls: Calls) -> None:
    """Each state finds the orders that stand there, and all of them without one."""
    calls.section("D", 12)
    calls.post("/api/orders", 201, number="held", lines=[{"reference": "lamp"}])
    _, cancelled = calls.ordered("cancelled")
    calls.post(f"/api/orders/{cancelled['id']}/cancel")
    calls.packed("released", 1)
    stays, packing = calls.picked("packing", 2)
    calls.post("/api/parcels", 201, orders=[packing["id"]])
    for stay in stays[:1]:
        calls.scan("table", stay["code"])
    short = packing["lines"][1]["id"]
    calls.post(f"/api/orders/{packing['id']}/cancel", line=short)
    calls.picked("picking", 1)
    calls.ordered("waiting", 1)

    every = calls.get("/api/orders")["orders"]
    assert [order["number"] for order in every] == [order["state"] for order in every]
    for order in every:
        assert [order] == calls.get(f"/api/orders?state={order['state']}")["orders"]
        assert order == calls.get(f"/api/orders/{order['id']}")
    assert [] == calls.get("/api/orders?state=returned")["orders"]


def test_a_line_or_a_whole_order_is_cancelled(calls: Calls) -> None:
    """`line` cancels one; without it all; a line of another order is a 422."""
    calls.section()
    _, order = calls.ordered("1001", 2)
    _, other = calls.ordered("1002", 1)
    first, second = (line["id"] for line in order["lines"])
    path = f"/api/orders/{order['id']}/cancel"

    assert "unknown_line" == calls.post(path, 422, line=other["lines"][0]["id"])["code"]
    assert ["cancelled", "waiting"] == [line["state"] for line in calls.post(path, line=first)["lines"]]
    assert "cancelled" == calls.post(path)["state"]
    assert "cancelled" == calls.post(f"/api/lines/{second}/short", 409)["detail"].split()[-1].rstrip(".")


def test_what_has_left_is_not_cancelled(calls: Calls) -> None:
    """409 `already_released` once its parcel was handed over; until then the parcel is kept here."""
    calls.section()
    _, order, parcel = calls.packed()
    _, late, left = calls.packed("2")

    assert "cancelled_in_box" == calls.post(f"/api/orders/{late['id']}/cancel")["lines"][0]["hold"]
    assert "cancelled" == calls.post("/api/hand-over", key="late", text=left["slip"])["reason"]
    calls.post("/api/hand-over", key="out", text=parcel["slip"])
    assert "already_released" == calls.post(f"/api/orders/{order['id']}/cancel", 409)["code"]


def test_a_line_is_settled_by_naming_its_thing(calls: Calls) -> None:
    """An unbound line needs a `stay`; with it the hold goes and the line waits."""
    calls.section()
    stay = calls.put_away()
    order = calls.post("/api/orders", 201, number="1001", lines=[{"reference": "lamp"}])
    path = f"/api/lines/{order['lines'][0]['id']}/settle"

    assert [{"pointer": "/stay", "code": "required"}] == calls.post(path, 422)["errors"]
    assert "unknown_stay" == calls.post(path, 422, stay="none")["code"]
    line = calls.post(path, stay=stay["id"])
    assert (stay["id"], stay["code"], "waiting", None) == (line["stay"], line["code"], line["state"], line["hold"])


def test_a_thing_is_missed_found_doubted_and_settled(calls: Calls) -> None:
    """`short`, `found`, then `revive` of a cancelled line and `hold`, each answering the line; a doubt stays."""
    calls.section()
    _, order = calls.ordered()
    line = f"/api/lines/{order['lines'][0]['id']}"

    assert "short" == calls.post(f"{line}/short", note="not there")["state"]
    assert "waiting" == calls.post(f"{line}/found")["state"]
    held = calls.post(f"{line}/hold", why="Another saddle.")
    assert ("suspect", "Another saddle.") == (held["hold"], held["why"])
    assert "doubted" == calls.post(f"{line}/settle", 409)["code"]
    calls.post(f"/api/orders/{order['id']}/cancel")
    revived = calls.post(f"{line}/revive")
    assert ("waiting", "suspect") == (revived["state"], revived["hold"])
    assert "not_allowed" == calls.post(f"{line}/revive", 409)["code"]


FILE = """number,channel,ordered_at,ship_by,reference,title,listing
1001,market,2099-11-03,,{first},Saddle,
1001,market,2099-11-03,,{second},Lamp,
1002,market,2099-11-03,,D099,Crank,
,market,2099-11-03,,D001,Wheel,
"""


def csv(calls: Calls) -> bytes:
    calls.section()
    first, second = calls.put_away("Saddle"), calls.put_away("Lamp")
    return FILE.format(first=first["reference"], second=second["reference"]).encode()


def test_a_file_of_orders_is_loaded_and_no_row_is_lost(calls: Calls) -> None:
    """Rows of one number are one order; what has no number is listed by its row, what can't be bound is held."""
    done = calls.upload("/api/orders/import", file=csv(calls))

    assert (2, 0, 0) == (done["loaded"], done["changed"], done["unchanged"])
    assert [(5, "no_number")] == [(row["row"], row["code"]) for row in done["refused"]]
    assert "Wheel" in done["refused"][0]["text"]
    (held,) = calls.get("/api/orders?state=held")["orders"]
    assert [line["id"] for line in held["lines"]] == done["held"]


def test_what_only_warns_is_no_part_of_the_answer(calls: Calls) -> None:
    """A date that can't be read, a title line and a row that stands twice hold and refuse nothing."""
    calls.section()
    stay = calls.put_away("Saddle")
    row = f"1001;soon;{stay['reference']}\n"
    content = f"sep=;\nOrders of the fair\nnumber;ordered at;reference\n{row}{row}".encode()
    expected = {"loaded": 1, "changed": 0, "unchanged": 0, "held": [], "refused": []}
    assert expected == calls.upload("/api/orders/import", file=content, channel="fair")


def test_a_corrected_file_mends_a_row(calls: Calls) -> None:
    """A row whose cells were out of place waits for its thing once the file comes with them in place."""
    calls.section()
    stay = calls.put_away("Saddle")
    header = "number,channel,title,reference\n"
    bad = calls.upload("/api/orders/import", file=f"{header}1001,fair,Saddle, red,{stay['reference']}\n".encode())
    done = calls.upload("/api/orders/import", file=f'{header}1001,fair,"Saddle, red",{stay["reference"]}\n'.encode())
    assert (1, 1, []) == (len(bad["held"]), done["changed"], done["held"])
    (order,) = calls.get("/api/orders")["orders"]
    assert [("waiting", stay["reference"], None)] == [
        (line["state"], line["reference"], line["hold"]) for line in order["lines"]
    ]


def test_the_same_file_twice_changes_nothing(calls: Calls) -> None:
    """All orders count as unchanged, and the ledger has no new entry."""
    content = csv(calls)
    first = calls.upload("/api/orders/import", file=content)
    before = calls.get("/api/health")["ledger"]

    again = calls.upload("/api/orders/import", file=content)
    assert first | {"loaded": 0, "unchanged": 2} == again
    assert before == calls.get("/api/health")["ledger"]


def test_a_later_file_changes_orders(calls: Calls) -> None:
    """A line gone from its order makes it changed and is held."""
    content = csv(calls)
    calls.upload("/api/orders/import", file=content)

    later = b"\n".join(line for line in content.splitlines() if b"Lamp" not in line)
    done = calls.upload("/api/orders/import", file=later)
    assert (0, 1, 1) == (done["loaded"], done["changed"], done["unchanged"])
    assert 2 == len(done["held"])


def test_a_remembered_mapping_finds_the_columns(calls: Calls) -> None:
    """By its name, and without a name by the file's headers; an unknown name is a 422."""
    calls.section()
    stay = calls.put_away("Saddle")
    content = f"x,y\n1001,{stay['reference']}\n".encode()
    columns = ColumnMapping({"number": "x", "reference": "y"}).to_json()
    assert "bad_columns" == calls.upload("/api/orders/import", 422, file=content)["code"]
    shop = calls.client.application.extensions["scanflow"]
    for _ in range(2):  # remembered again, in place of the first
        shop.act("tester", lambda unit: unit.mappings.save("plain", signature(("x", "y")), columns))

    assert "unknown_mapping" == calls.upload("/api/orders/import", 422, file=content, mapping="other")["code"]
    assert 1 == calls.upload("/api/orders/import", file=content, mapping="plain", channel="fair")["loaded"]
    assert 1 == calls.upload("/api/orders/import", file=content, channel="fair")["unchanged"]


@pytest.mark.parametrize(
    ("fields", "pointer", "code"),
    [
        ({"file": b""}, "/file", "bad_file"),
        ({"file": b"%PDF-1.7"}, "/file", "bad_file"),
        ({}, "/file", "required"),
        ({"file": "a text without a file name"}, "/file", "type"),
        ({"file": b"a,b\n1,2\n", "map": "plain"}, "/map", "unknown_field"),
    ],
)
def test_a_file_that_is_no_table_is_a_fault_of_its_field(
    calls: Calls, fields: dict[str, Any], pointer: str, code: str
) -> None:
    """422 that points at the file."""
    problem = calls.upload("/api/orders/import", 422, **fields)
    assert {"pointer": pointer, "code": code} in problem["errors"]
