"""What stands in the room already comes in by file, under the numbers on its cards."""

from __future__ import annotations

import csv
import io
from typing import Any

import pytest
from calls import Calls
from clients import client_of
from flask import Flask
from hypothesis import given
from hypothesis import strategies as st

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.workflow import stock
from scanflow.workflow.stock import cards, loading

HEAD = "number,title,listing,notes,since,bin"


def load(calls: Calls, *rows: str, head: str = HEAD, status: int = 200, **fields: str) -> Any:
    return calls.upload("/api/stock/load", status, file="\r\n".join((head, *rows, "")).encode(), **fields)


def codes(loaded: Any) -> list[tuple[int, str]]:
    return [(each["row"], each["code"]) for each in loaded["refused"]]


def stored(calls: Calls) -> list[Any]:
    """The things that are in stock, with the numbers of their slots."""
    slots = calls.get("/api/slots")["slots"]
    return [calls.get(f"/api/stays/{slot['stay']}") for slot in slots if slot["stay"]]


def saved(calls: Calls) -> str:
    return calls.client.get("/api/stock.csv").text


def order(calls: Calls, reference: str, **line: Any) -> Any:
    """The line of a new order for it, from October."""
    said = {"number": f"R-{reference}", "channel": "north", "ordered_at": "2026-10-01T10:00:00Z"}
    lines = [{"reference": reference, "title": "Crank", **line}]
    return calls.post("/api/orders", 201, **said, lines=lines)


def test_what_can_be_stored_is_and_the_rest_is_listed(calls: Calls) -> None:
    """Nothing is guessed: a number twice in the file is stored for neither row."""
    calls.section(slots=8)
    calls.put_away("Saddle")  # in D001
    loaded = load(
        calls,
        "D002,Crank,L-2,left arm,2026-01-05,",
        "D001,Lamp,,,,",
        "D003,,,,,",
        "D099,Bell,,,,",
        "D004,Fork,,,,",
        "d 004,Fork,,,,",
        "D005,Rim,,,not a day,",
        "D006,Rim,,,2199-01-01,",
        f"{card_text('D007')},Hub,,,,",
        "D008-1X,Pump,,,,",
        "D008,Pump, chromed,L-9,,,A-1-1",
    )
    told = [(3, "taken"), (4, "required"), (5, "unknown_code"), (6, "twice"), (7, "twice"), (8, "bad_time")]
    assert [*told, (9, "bad_time"), (11, "unknown_code"), (12, "bad_row")] == codes(loaded)
    assert (2, 0) == (loaded["stored"], loaded["unchanged"])
    assert [("D001", "Saddle"), ("D002", "Crank"), ("D007", "Hub")] == [(s["code"], s["title"]) for s in stored(calls)]
    assert ("L-2", "left arm") == (stored(calls)[1]["listing"], stored(calls)[1]["notes"])


def test_a_look_beforehand_stores_nothing(calls: Calls) -> None:
    """It says the same as loading does afterwards."""
    calls.section()
    rows = ("D001,Crank,,,,", "D099,Bell,,,,")
    seen = load(calls, *rows, dry_run="true")
    assert [] == stored(calls)
    assert seen == load(calls, *rows)
    assert 1 == len(stored(calls))


def test_loading_again_changes_nothing_twice(calls: Calls) -> None:
    """What has left meanwhile is named, and does not come back into stock; another thing under its number does."""
    calls.section()
    rows = ("D001,Crank,,,,", "D002,Saddle,,,,", "D003,Lamp,,,,")
    load(calls, *rows)
    calls.post(f"/api/stays/{stored(calls)[1]['id']}/withdraw", reason="cracked")
    again = load(calls, *rows)
    assert (0, 2, [(3, "left")]) == (again["stored"], again["unchanged"], codes(again))
    assert [(2, "left")] == codes(load(calls, "D002,Bell,,,2020-01-01,"))
    assert 1 == load(calls, "D002,Bell,,,,")["stored"]


def test_out_and_in_again_is_the_same_stock(calls: Calls) -> None:
    """Formulas, line breaks and a day that nobody knows too: in other slots all else comes out as it went in."""
    calls.section(slots=9)
    notes = 'D003,Crank,,"two\r\nlines",,'
    assert 3 == load(calls, "D001,=1+1,L-1,,2026-02-03 08:30,A-1-1", notes, "D004,-5° saddle,,,2026-02-03,")["stored"]
    calls.client.patch(f"/api/stays/{stored(calls)[0]['id']}", json={"packing": "Fragile, “two” screws"})
    before = saved(calls)
    other = before.replace("D001", "D006").replace("D003", "D007").replace("D004", "D008")
    other = other.replace("A-1-1", "").replace("A-1-2", "")
    for stay in stored(calls):
        calls.post(f"/api/stays/{stay['id']}/withdraw", reason="moved")
    assert 3 == load(calls, *other.split("\r\n")[1:-1], head=other.split("\r\n")[0])["stored"]

    def rows(text: str) -> list[list[str]]:
        told = ("title", "listing", "notes", "since", "packing")
        return [[row[name] for name in told] for row in csv.DictReader(io.StringIO(text))]

    assert rows(before) == rows(saved(calls))
    assert ["Fragile, “two” screws", "", ""] == [row[4] for row in rows(before)]
    assert ["2026-02-03 08:30:00+00:00", "", "2026-02-03 00:00:00+00:00"] == [row[3] for row in rows(before)]


def test_a_cell_has_any_number_of_listing_ids(calls: Calls) -> None:
    """Spaces, commas and semicolons part them; each is an offer, and all go out as they came in."""
    calls.section()
    row = 'D001,Crank,"L-1, L-2;L-3",,,'
    assert 1 == load(calls, row)["stored"]
    offers = calls.get("/api/listings")["listings"]
    assert [("", "L-1"), ("", "L-2"), ("", "L-3")] == [(each["channel"], each["listing"]) for each in offers]
    assert ["L-1 L-2 L-3"] == [each["listing"] for each in csv.DictReader(io.StringIO(saved(calls)))]
    assert (0, 1) == tuple(load(calls, row)[name] for name in ("stored", "unchanged"))
    head, again, _ = saved(calls).split("\r\n")
    assert 1 == load(calls, again, head=head)["unchanged"]
    assert [(2, "taken")] == codes(load(calls, "D001,Crank,L-1 L-4,,,"))
    assert [(2, "too_long")] == codes(load(calls, f"D002,Lamp,{'x' * 201},,,"))


@given(st.lists(st.text(st.sampled_from("aé1-\"', ;"), min_size=1, max_size=6), max_size=4, unique=True))
def test_ids_come_out_of_a_cell_as_they_went_in(ids: list[str]) -> None:
    """Those with a space, a comma, a semicolon or a quotation mark too."""
    wanted = tuple(each for each in ids if each.strip())
    assert wanted == loading.ids_of(loading.cell_of(wanted))


def test_an_adopted_number_is_one(shop: Shop, calls: Calls) -> None:
    """Also where a spreadsheet dropped the zeros in front: that is said, and not guessed."""
    calls.section()
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="0417", code="D001")))
    shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="0418", code="D002")))
    loaded = load(calls, "0417,Crank,,,,", "418,Lamp,,,,")
    assert [(3, "unknown_code")] == codes(loaded)
    assert "Is it 0418?" in loaded["refused"][0]["text"]
    assert "waiting" == order(calls, "0417")["state"]


@pytest.mark.parametrize(
    ("since", "state", "hold"),
    [("", "waiting", None), ("2026-09-01", "waiting", None), ("2026-10-02", "held", "stale_code")],
)
def test_a_day_that_nobody_knows_is_compared_with_none(calls: Calls, since: str, state: str, hold: str | None) -> None:
    """What is here since later than the order is another thing."""
    calls.section()
    load(calls, f"D001,Crank,,,{since},")
    made = order(calls, "D001")
    assert (state, hold) == (made["state"], made["lines"][0]["hold"])


def test_a_listing_id_outweighs_days_turns_and_words(calls: Calls) -> None:
    """The thing of that listing is the one that was bought, whatever its title was, and whatever stood there before."""
    calls.section()
    calls.post(f"/api/stays/{calls.put_away('Bell')['id']}/withdraw", reason="cracked")
    load(calls, "D001,Crank arm,L-77,,,")
    assert "waiting" == order(calls, "D001", title="Something else", listing="L-77")["state"]


def test_a_bin_that_differs_is_taken_over(calls: Calls) -> None:
    """A bin of another section, or of none, is refused."""
    calls.section()
    calls.section("S")
    other = calls.get("/api/slots?section=S")["slots"][0]["bin"]
    loaded = load(calls, "D001,Crank,,,,A-1-2", "D002,Rim,,,,Z-9-9", f"D003,Hub,,,,{other}")
    assert [(3, "unknown_bin"), (4, "other_section")] == codes(loaded)
    assert "A-1-2" == calls.get("/api/slots?section=D")["slots"][0]["bin"]


def test_columns_are_known_by_their_words(calls: Calls) -> None:
    """Semicolons, other words, days with the day first."""
    calls.section()
    rows = ("Crank;D001;13.02.2026", "Rim;D002;01.02.2026")
    assert 2 == load(calls, *rows, head="Item;Stock number;Date added")["stored"]
    assert "2026-02-01" in saved(calls)
    assert "bad_columns" == load(calls, "1,2", head="a,b", status=422)["code"]
    assert "bad_file" == load(calls, status=422)["code"]


def test_a_lost_card_stands_for_nothing(shop: Shop, calls: Calls) -> None:
    """It is scanned at the tray when it turns up."""
    calls.section()
    shop.act("owner", lambda unit: stock.lose_card(unit, "D001"))
    assert [(2, "retired")] == codes(load(calls, "D001,Crank,,,,"))


def test_a_helper_loads_nothing(app: Flask, shop: Shop, calls: Calls) -> None:
    """What stands in the room is the owner's to say."""
    calls.section()
    load(Calls(client_of(app, shop, Role.HELPER)), "D001,Crank,,,,", status=403)
