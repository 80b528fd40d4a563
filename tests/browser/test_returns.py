"""A thing leaves, comes back and leaves again for the next buyer, all with a scanner that types."""

from __future__ import annotations

from dataclasses import replace

import control_names
from calls import Calls
from clients import client_of
from live_shop import Live, go_on, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.life import LineState, ReturnState
from scanflow.domain.things import Line, Return, Stay
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS
from scanflow.web import create_app


def scan(page: Page, text: str, sheet: str = "yes") -> str:
    """Scan, and what the sheet says; a yes is left to go by itself."""
    type_fast(page, text)
    words = page.locator(f"dialog.{sheet}").inner_text()
    if sheet == "no":
        go_on(page)
    expect(page.locator("dialog")).to_have_count(0)
    return words


def test_what_comes_back_is_sold_again(live: Live, page: Page) -> None:
    """Table, hand-over, return expected, arrived by its slip, stored by a free card; the next order of it is picked and
    packed by that card alone.
    """
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, hand_overs=True)))
    calls = Calls(client_of(create_app(live.shop), live.shop, Role.OWNER))
    calls.section()
    (first,), order = calls.picked("1001")
    sign_in(page, live)
    page.goto("/table")
    scan(page, order["slip"])
    assert control_names.RELEASED in scan(page, card_text(first["code"]))
    page.goto("/hand-over")
    scan(page, order["slip"])

    page.goto(f"/orders/{order['id']}")
    page.get_by_text(control_names.EXPECT_A_RETURN).click()
    page.get_by_label("Why").fill("Too small")
    page.get_by_role("button", name=control_names.EXPECT_THIS_RETURN).click()
    page.wait_for_url("**/returns/*")
    expect(page.locator("main")).to_contain_text("Too small")

    page.goto("/returns")
    type_fast(page, order["slip"])
    page.wait_for_url("**/returns/*")
    expect(page.get_by_role("heading", level=1)).to_have_text(control_names.RETURN_OF.format("1001"))
    page.get_by_label(control_names.SELL_IT_AGAIN).check()
    type_fast(page, card_text("D004"))
    page.get_by_role("link", name=control_names.PUT_INTO_ITS_BIN.format("D004")).click()
    reference = page.locator("#reference").inner_text()

    second = calls.post("/api/orders", 201, number="1002", lines=[{"reference": reference}])
    page.goto("/")
    page.locator("main .next").press("Enter")
    page.wait_for_url("**/rounds/*")
    scan(page, card_text("D004"))
    expect(page.locator("h1")).to_have_text(control_names.ALL_STOPS_DONE)
    page.goto("/table")
    scan(page, second["slip"])
    assert REFUSALS[Reason.SLOT_FREE].heading in scan(page, card_text(first["code"]), "no")
    assert control_names.RELEASED in scan(page, card_text("D004"))
    with live.shop.looking() as unit:
        states, (back,) = [line.state for line in unit.find(Line)], unit.find(Return)
        items = {stay.item for stay in unit.find(Stay)}
    assert ([LineState.RETURNED, LineState.RELEASED], ReturnState.CHECKED, {first["item"]}) == (
        states,
        back.state,
        items,
    )


def test_a_scan_without_a_choice_stores_nothing(live: Live, page: Page) -> None:
    """The card waits in its field until a person has said how the thing is."""
    calls = Calls(client_of(create_app(live.shop), live.shop, Role.OWNER))
    calls.section()
    _, order, parcel = calls.packed()
    calls.post("/api/hand-over", key="out", text=parcel["slip"])
    path = f"/returns/{calls.post('/api/returns', 201, order=order['id'])['id']}"
    calls.post(f"/api{path}/arrived")
    sign_in(page, live)
    page.goto(path)
    type_fast(page, card_text("D004"))
    expect(page.get_by_label(control_names.CARD_IN_HAND)).to_have_value(card_text("D004"))
    assert "arrived" == calls.get(f"/api{path}")["state"]
    page.get_by_label(control_names.SELL_IT_AGAIN).check()
    page.get_by_role("button", name=control_names.IT_IS_CHECKED).click()
    expect(page.get_by_role("link", name=control_names.PUT_INTO_ITS_BIN.format("D004"))).to_be_visible()
    assert "checked" == calls.get(f"/api{path}")["state"]
