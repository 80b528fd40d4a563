"""No state is without a way on: each step of each life is taken by a person, on a page or by a station's scan."""

from __future__ import annotations

from typing import Any

import pytest
from clients import SQLITE_ONLY
from diagrams import TABLES
from flask import Flask

from scanflow.domain.things import Station

WAYS = {
    "line": """
        unbound, settle: order_page.settle
        unbound, cancel: order_page.cancel
        waiting, pick: bin table paper_page.enter
        waiting, miss: order_page.change
        waiting, cancel: order_page.cancel
        waiting, unbind: order_page.settle
        picked, pack: table
        picked, put back: shelf
        picked, miss: order_page.change
        picked, cancel: order_page.cancel
        packed, take out: table
        packed, close: table table_page.close
        short, find: order_page.change bin table shelf
        short, cancel: order_page.cancel
        released, reopen: table_page.reopen order_page.change
        released, return: return_page.check
        cancelled, revive: order_page.revive
        cancelled, revive unbound: order_page.revive
        returned, send again: order_page.send_again
    """,
    "stay": """
        stored, release: table table_page.close
        stored, withdraw: slot_page.withdraw count_findings.resolve
        stored, move: slot_page.move slot_page.exchange
        shipped, reopen: table_page.reopen
    """,
    "card": """
        tray, take: put_away.store slot_page.move return_page.check
        tray, see in tray: tray
        tray, reopen: table_page.reopen
        tray, lose: slot_page.lose_card
        hand, attach: put_away.store
        on_item, release: table table_page.close slot_page.withdraw
        on_item, see on item: bin table shelf
        on_item, lose: slot_page.lose_card
        due, take: put_away.store return_page.check
        due, see in tray: tray
        due, reopen: table_page.reopen
        due, lose: slot_page.lose_card
        lost, take: put_away.store
        lost, see in tray: tray
        lost, see on item: bin table shelf
        lost, release: table table_page.close
        lost, reopen: table_page.reopen
    """,
    "parcel": """
        open, close: table table_page.close
        open, set aside: table_page.set_aside
        open, drop: table_page.set_aside
        aside, resume: table table_page.open_parcel order_page.pack
        closed, reopen: table_page.reopen
        closed, hand over: api_hand_over.create
    """,
    "round": """
        open, close: round_page.close
    """,
    "stocktake": """
        open, close: count_page.close
        open, cancel: count_page.cancel
    """,
    "return": """
        expected, arrive: return_page.arrived return_page.take_in
        expected, give up: return_page.give_up
        arrived, check: return_page.check
        arrived, not arrived: return_page.not_arrived
        arrived, give up: return_page.check
        checked, check: return_page.check
    """,
}
"""State and event, then what takes that step: stations by their scans, else the form of a page. The scan of a hand-over
has a call of its own.
"""

FINAL = {
    "stay": {"withdrawn", "moved"},
    "parcel": {"handed_over", "dropped"},
    "round": {"closed"},
    "stocktake": {"closed", "cancelled"},
    "return": {"given_up"},
}
"""Where a life ends."""


def ways(name: str) -> dict[tuple[str, str], list[str]]:
    found = {}
    for line in WAYS[name].strip().splitlines():
        step, by = line.strip().split(": ")
        state, event = step.split(", ")
        found[state, event] = by.split()
    return found


def states(name: str) -> set[str]:
    table: Any = TABLES[name]
    return {str(state) for state in type(next(iter(table))[0])}


@pytest.mark.parametrize("name", TABLES)
def test_every_step_is_taken_by_somebody(name: str) -> None:
    """Each row of each table has at least one way, and no way is for a row that there is not."""
    assert {(str(state), event) for state, event in TABLES[name]} == ways(name).keys()


@pytest.mark.parametrize("name", TABLES)
def test_every_state_has_a_way_on_or_is_an_end(name: str) -> None:
    """What is no end has a step, and what is one has none."""
    assert states(name) - FINAL.get(name, set()) == {state for state, _ in ways(name)}


@SQLITE_ONLY
@pytest.mark.parametrize("name", TABLES)
def test_every_way_is_there(app: Flask, name: str) -> None:
    """Each is a station, or a form that the map of addresses has."""
    forms = {rule.endpoint for rule in app.url_map.iter_rules() if "POST" in (rule.methods or set())}
    named = {by for each in ways(name).values() for by in each}
    assert set() == named - forms - set(Station)
