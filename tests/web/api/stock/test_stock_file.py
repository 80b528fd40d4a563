"""What stands in the room goes out as a file."""

from __future__ import annotations

import csv
import io

from calls import Calls
from clients import client_of
from flask import Flask

from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.workflow.stock import cards


def rows(calls: Calls, **query: str) -> list[dict[str, str]]:
    answer = calls.client.get("/api/stock.csv", query_string=query)
    assert (200, "text/csv") == (answer.status_code, answer.mimetype), answer.text
    return list(csv.DictReader(io.StringIO(answer.text)))


def test_what_stands_here_is_a_row_each(calls: Calls) -> None:
    """What has left is none, what was moved is one in its new slot; a formula is a title and no more."""
    calls.section()
    one, two, three = (calls.put_away(title) for title in ("Crank", "=1+1", "Saddle"))
    calls.post(f"/api/stays/{one['id']}/withdraw", reason="cracked")
    calls.post(f"/api/stays/{three['id']}/move", to="D006")
    calls.client.patch(f"/api/stays/{two['id']}", json={"listing": "L-2", "notes": 'Two, "as new"', "packing": "Flat"})
    shown = [[row[name] for name in ("number", "title", "listing", "notes", "packing", "bin")] for row in rows(calls)]
    two_is = ["D002", "'=1+1", "L-2", 'Two, "as new"', "Flat", "A-1-1"]
    assert [two_is, ["D006", "Saddle", "", "", "", "A-1-2"]] == shown


def test_a_number_stands_as_on_its_card(shop: Shop, calls: Calls) -> None:
    """An adopted card bears its own."""
    calls.section()
    calls.put_away()
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="0417", code="D001")))
    assert ["0417"] == [row["number"] for row in rows(calls)]


def test_what_stood_here_on_a_day(calls: Calls) -> None:
    """At the end of a day that is past nothing stood here yet; at the end of the century all that stands now."""
    calls.section()
    calls.put_away()
    assert ([], 1) == (rows(calls, on="2020-12-31"), len(rows(calls, on="2099-12-31")))
    assert 422 == calls.client.get("/api/stock.csv?on=tomorrow").status_code


def test_a_helper_does_not_get_it(app: Flask, shop: Shop) -> None:
    """What all of it is and since when is the owner's to give away."""
    assert 403 == client_of(app, shop, Role.HELPER).get("/api/stock.csv").status_code
