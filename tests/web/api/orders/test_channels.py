"""Channels over HTTP: said, listed, and what they make of a file of orders."""

from __future__ import annotations

from calls import Calls

HEADER = "number,reference,title,status\n"


def things(calls: Calls, count: int) -> list[str]:
    """The references of so many things in stock."""
    calls.section()
    return [calls.put_away(f"Saddle {number}")["reference"] for number in range(1, count + 1)]


def test_a_channel_is_said_and_listed(calls: Calls) -> None:
    """201 and its address for a new one, 200 when said again; a channel that orders name is listed too."""
    first = calls.client.post("/api/channels", json={"name": "fair", "statuses": {"Paid": "pack"}})
    assert (201, "/api/channels") == (first.status_code, first.headers["Location"])
    again = calls.post("/api/channels", 200, name="fair", complete=True)
    assert {"name": "fair", "statuses": {"Paid": "pack"}, "complete": True} == again
    calls.post("/api/orders", 201, number="1", channel="corner", lines=[{"reference": "Q1"}])
    listed = calls.get("/api/channels")
    assert [{"name": "corner", "statuses": {}, "complete": False}, again] == listed["channels"]
    page = calls.get("/api/channels?limit=1")
    assert ["fair"] == [each["name"] for each in calls.get(f"/api/channels?cursor={page['next']}")["channels"]]


def test_a_meaning_that_there_is_not_is_refused(calls: Calls) -> None:
    """422 at the value; and no order may come in as sent by itself."""
    problem = calls.post("/api/channels", 422, name="fair", statuses={"Paid": "ship it"})
    assert [("/statuses/Paid", "not_allowed_value")] == [(each["pointer"], each["code"]) for each in problem["errors"]]
    sent = {"number": "1", "status": "sent", "lines": [{"reference": "Q1"}]}
    assert "not_allowed_value" == calls.client.post("/api/orders", json=sent).get_json()["code"]


def test_a_file_needs_a_channel(calls: Calls) -> None:
    """Where rows name none it is said beside the file: 422 at `/channel`; cells win, empty ones take what is said."""
    first, second = things(calls, 2)
    problem = calls.upload("/api/orders/import", 422, file=f"number,reference\n1,{first}\n".encode())
    assert [{"pointer": "/channel", "code": "required"}] == problem["errors"]
    mixed = f"number,channel,reference\n1,corner,{first}\n1,,{second}\n".encode()
    assert 2 == calls.upload("/api/orders/import", file=mixed, channel="fair")["loaded"]
    assert [("1", "corner"), ("1", "fair")] == [
        (order["number"], order["channel"]) for order in calls.get("/api/orders")["orders"]
    ]


def test_statuses_of_a_file_count_as_they_were_said(calls: Calls) -> None:
    """Packed, set aside, cancelled; sent ones that nobody knows are told; a word that nobody explained leaves out the
    whole order; a later file lifts what was set aside.
    """
    one, two, three, four = things(calls, 4)
    meant = {"Paid": "pack", "Not paid": "aside", "Called off": "cancelled", "Sent": "sent"}
    calls.post("/api/channels", 201, name="fair", statuses=meant)
    rows = (
        *(f"1,{one},Saddle 1,paid", f"2,{two},Saddle 2,Not  paid", f"3,{three},Saddle 3,Called off"),
        *("4,Q1,Bell,Sent", f"5,{four},Saddle 4,Paid", "5,Q2,Bell,On its way"),
    )
    done = calls.upload("/api/orders/import", file=(HEADER + "\n".join(rows)).encode(), channel="fair")
    assert (3, [5, 6, 7]) == (done["loaded"], [row["row"] for row in done["refused"]])
    assert ["already_sent", "new_status", "new_status"] == [row["code"] for row in done["refused"]]
    assert "“On its way”" in done["refused"][1]["text"]
    states = {order["number"]: order["state"] for order in calls.get("/api/orders")["orders"]}
    assert {"1": "waiting", "2": "held", "3": "cancelled"} == states
    [held] = calls.get("/api/orders?state=held")["orders"]
    assert ["not_cleared"] == [hold["hold"] for hold in held["lines"][0]["holds"]]
    paid = (HEADER + rows[1].replace("Not  paid", "Paid")).encode()
    assert 1 == calls.upload("/api/orders/import", file=paid, channel="fair")["changed"]
    assert "waiting" == calls.get(f"/api/orders/{held['id']}")["state"]


def test_a_row_may_be_cancelled_alone(calls: Calls) -> None:
    """Its order goes on with the other rows; in a later file too; a person who wants it after all is heard."""
    one, two = things(calls, 2)
    calls.post("/api/channels", 201, name="fair", statuses={"Paid": "pack", "Called off": "cancelled"})
    rows = f"1,{one},Saddle 1,Paid\n1,{two},Saddle 2,Paid\n"
    calls.upload("/api/orders/import", file=(HEADER + rows).encode(), channel="fair")
    later = rows.replace("2,Paid", "2,Called off")
    for changed in (1, 0):
        done = calls.upload("/api/orders/import", file=(HEADER + later).encode(), channel="fair")
        [order] = calls.get("/api/orders")["orders"]
        assert ["waiting", "cancelled"] == [line["state"] for line in order["lines"]]
        assert (changed, []) == (done["changed"], done["held"])
    calls.post(f"/api/lines/{order['lines'][1]['id']}/revive")
    calls.upload("/api/orders/import", file=(HEADER + later).encode(), channel="fair")
    [order] = calls.get("/api/orders")["orders"]
    assert ["waiting", "waiting"] == [line["state"] for line in order["lines"]]


def test_what_a_complete_file_lacks_is_held_unless_it_is_a_part(calls: Calls) -> None:
    """Said beside the file; the same question is not asked twice."""
    one, two = things(calls, 2)
    calls.post("/api/channels", 201, name="fair", complete=True)
    both = f"number,reference\n1,{one}\n2,{two}\n".encode()
    calls.upload("/api/orders/import", file=both, channel="fair")
    second = f"number,reference\n2,{two}\n".encode()
    assert [] == calls.upload("/api/orders/import", file=second, channel="fair", part="true")["held"]
    [held] = calls.upload("/api/orders/import", file=second, channel="fair")["held"]
    [order] = calls.get("/api/orders?state=held")["orders"]
    assert ("1", held, "not_in_file") == (order["number"], order["lines"][0]["id"], order["lines"][0]["hold"])
    calls.post(f"/api/lines/{held}/settle")
    assert [] == calls.upload("/api/orders/import", file=second + b"\n", channel="fair")["held"]
