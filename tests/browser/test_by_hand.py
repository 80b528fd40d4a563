"""An order is taken down by hand with a scanner: each card goes where the page asks for it."""

from __future__ import annotations

import control_names
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text
from scanflow.domain.life import LineState
from scanflow.domain.things import Line, Order
from scanflow.workflow import stock


def test_two_things_are_scanned_into_an_order(live: Live, page: Page) -> None:
    """Wherever the focus is, what was written stays; words find the third thing; the order has all three."""

    def furnish(unit: stock.Unit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=5, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=3))
        for title in ("Rear derailleur", "Front derailleur", "Chain guard"):
            stock.put_away(unit, stock.PutAway(title=title, section="D"))

    live.shop.act("owner", furnish)
    sign_in(page, live)
    page.goto("/orders")
    page.get_by_role("link", name=control_names.ORDER_BY_HAND).click()
    type_fast(page, card_text("D001"))
    expect(page.get_by_role("button", name=control_names.NOT_IN_ORDER.format("D001"))).to_be_visible()
    page.get_by_label(control_names.NOTE).fill("Rings at noon")
    page.get_by_role("heading", level=1).click()
    type_fast(page, card_text("D002"))
    expect(page.get_by_role("button", name=control_names.NOT_IN_ORDER.format("D002"))).to_be_visible()
    expect(page.get_by_label(control_names.NOTE)).to_have_value("Rings at noon")
    page.get_by_label(control_names.ANOTHER_THING).fill("guard")
    page.keyboard.press("Enter")
    page.get_by_role("button", name=control_names.ADD_TO_ORDER.format("D003")).click()
    page.get_by_role("button", name=control_names.MAKE_THE_ORDER).click()
    page.wait_for_url("**/orders/*")
    expect(page.get_by_role("heading", level=1)).to_have_text("Order Sale D001-019")
    with live.shop.looking() as unit:
        [order], lines = unit.find(Order), unit.find(Line)
    assert ("Rings at noon", [LineState.WAITING] * 3) == (order.note, [line.state for line in lines])
