"""A thing is out of its bin for a while: its stop says where it is, and the table takes it by its scan."""

from __future__ import annotations

from typing import Any

from calls import Calls
from page_text import text_of

from labels.slot_code import card_text


def taken_out(calls: Calls) -> tuple[Any, str]:
    """A thing that is ordered, on a round, and on the bench; and its round."""
    calls.section()
    (stay,), order = calls.ordered()
    assert 303 == calls.client.post(f"/stays/{stay['id']}/out", data={"where": "On the bench"}).status_code
    return stay, calls.post("/api/rounds", 201, orders=[order["id"]])["id"]


def test_its_stop_its_page_and_today_say_where_it_is(calls: Calls) -> None:
    """Once it is back, as a person says, none of them does."""
    stay, walk = taken_out(calls)
    pages = [f"/rounds/{walk}", f"/stays/{stay['id']}", "/"]
    assert [True, True, True] == ["On the bench, since" in text_of(calls.client.get(page).text) for page in pages]
    assert "In stock, out of bin A-1-1." in text_of(calls.client.get(pages[1]).text)
    assert 303 == calls.client.post(f"/stays/{stay['id']}/back").status_code
    assert [False, False, False] == ["On the bench" in text_of(calls.client.get(page).text) for page in pages]


def test_a_scan_of_its_card_ends_it(calls: Calls) -> None:
    """Where it was found is where it was taken from: it is picked and packed as any other."""
    stay, walk = taken_out(calls)
    assert "accepted" == calls.scan("bin", stay["code"], round=walk)["verdict"]
    assert "On the bench" not in calls.client.get(f"/stays/{stay['id']}").text


def test_it_is_back_once_it_is_read_in_its_bin(calls: Calls) -> None:
    """A refused reading elsewhere ends nothing."""
    stay, _ = taken_out(calls)
    calls.scan("tray", stay["code"])
    assert "On the bench" in calls.client.get(f"/stays/{stay['id']}").text
    calls.post("/api/scans", station="shelf", key="k", bin="A-1-1", text=card_text(stay["code"]))
    assert "On the bench" not in calls.client.get(f"/stays/{stay['id']}").text


def test_what_has_left_is_nowhere(calls: Calls) -> None:
    """A thing that is out of stock can't be out of its bin."""
    calls.section()
    stay = calls.put_away()
    calls.post(f"/api/stays/{stay['id']}/withdraw", reason="cracked")
    assert 409 == calls.client.post(f"/stays/{stay['id']}/out", data={"where": "On the bench"}).status_code
