"""The hand-over as a station: a slip or a label lets its parcel go, and a wrong one gets the whole no."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from calls import Calls
from clients import client_of
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels import slot_code
from scanflow.domain.access import Role
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Parcel
from scanflow.domain.verdict import Reason
from scanflow.domain.words import AT_THE_DOOR
from scanflow.web import create_app


@pytest.fixture
def closed(live: Live) -> list[Any]:
    """Two closed parcels, in a shop that records what leaves."""
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, hand_overs=True)))
    calls = Calls(client_of(create_app(live.shop), live.shop, Role.OWNER))
    calls.section()
    return [calls.packed(number)[2] for number in ("1001", "1002")]


def states(live: Live) -> list[ParcelState]:
    with live.shop.looking() as unit:
        return [parcel.state for parcel in unit.find(Parcel)]


def test_a_slip_lets_its_parcel_go(live: Live, page: Page, closed: list[Any]) -> None:
    """A yes, and one parcel less to hand over; the same again is a yes too."""
    sign_in(page, live)
    page.goto("/hand-over")
    for word in ("Handed over", "Done before"):
        type_fast(page, closed[0]["slip"])
        expect(page.locator("dialog.yes")).to_contain_text(word)
        expect(page.locator("dialog.yes")).to_have_count(0)
    expect(page.locator(".plate").first).to_contain_text("1")
    assert [ParcelState.HANDED_OVER, ParcelState.CLOSED] == states(live)


def test_what_is_on_no_parcel_is_a_no(live: Live, page: Page, closed: list[Any]) -> None:
    """It stays until it is pressed, and nothing has left."""
    sign_in(page, live)
    page.goto("/hand-over")
    type_fast(page, slot_code.card_text("D001"))
    expect(page.locator("dialog.no")).to_contain_text(AT_THE_DOOR[Reason.UNKNOWN_CODE].heading)
    assert [ParcelState.CLOSED] * 2 == states(live)


def test_a_slip_without_a_label_asks_for_it_first(live: Live, page: Page, closed: list[Any]) -> None:
    """Where labels are bound: a card is a no there, the label is bound, and scanned again it lets the parcel go."""
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    sign_in(page, live)
    page.goto("/hand-over")
    type_fast(page, closed[1]["slip"])
    page.wait_for_url("**/hand-over?parcel=*")
    type_fast(page, slot_code.card_text("D001"))
    expect(page.locator("dialog.no")).to_contain_text("Wrong label")
    page.locator("dialog.no button:not([aria-disabled])").click()
    type_fast(page, "RR123456785DE")
    page.wait_for_url("**told=bound")
    type_fast(page, "RR123456785DE")
    expect(page.locator("dialog.yes")).to_contain_text("Handed over")
    assert [ParcelState.CLOSED, ParcelState.HANDED_OVER] == states(live)
