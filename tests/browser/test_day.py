"""A whole day at the pages, by the keyboard: what is typed is what a scanner types."""

from __future__ import annotations

import json
from pathlib import Path

import control_names
from clients import setup_link
from live_shop import PASSWORD, Live, go_on, type_fast
from page_text import figures
from playwright.sync_api import Page, expect

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.things import Line, Order
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS
from scanflow.workflow import stock


def card(code: str) -> str:
    return slot_code.card_text(code)


def first_sign_in(page: Page, live: Live) -> None:
    page.goto(f"/set-up/{setup_link(live.shop)}")
    expect(page.locator("#password")).to_be_focused()
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Tab")
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url(f"{live.address}/")


def put_away(page: Page, text: str, title: str) -> str:
    """With the card in hand, from anywhere on the page; the reference to write into the listing."""
    page.goto("/put-away")
    type_fast(page, text)
    page.keyboard.type(title)
    page.keyboard.press("Enter")
    page.wait_for_url("**/put-away/*")
    return page.locator("#reference").inner_text()


def load_orders(page: Page, folder: Path, rows: list[str]) -> None:
    path = folder / "orders.csv"
    path.write_text("\n".join(["Shop,Sale,Item ref,What", *(f"fair,{row}" for row in rows)]), encoding="utf-8")
    page.goto("/orders/load")
    page.set_input_files("#file", path)
    page.wait_for_selector("text=Check the file")


def scan(page: Page, text: str, sheet: str) -> str:
    """Scan, and what the sheet says; a yes is left to go by itself."""
    type_fast(page, text)
    words = page.locator(f"dialog.{sheet}").inner_text()
    if sheet == "yes":
        expect(page.locator("dialog")).to_have_count(0, timeout=3000)
    return words


def test_day(live: Live, page: Page, tmp_path: Path) -> None:
    """First sign-in, put away, load orders, round, wrong card at the table, right card, release, undo."""

    def build(unit: stock.Unit) -> None:
        for code, name, paper in (("D", "Derailleurs", "yellow"), ("S", "Saddles", "pink")):
            stock.add_section(unit, stock.AddSection(code=code, name=name, slots_per_bin=5, colour=paper))
            stock.add_slots(unit, code, stock.AddSlots(count=5))

    live.shop.act("owner", build)
    first_sign_in(page, live)

    rear = put_away(page, card("D002"), "Rear derailleur, eight speed")
    saddle = put_away(page, card("S001"), "Leather saddle, brown")
    assert (slot_code.reference("D002", 1), slot_code.reference("S001", 1)) == (rear, saddle)

    load_orders(page, tmp_path, [f"B-1,{rear},Rear derailleur", f"B-2,{saddle},Leather saddle", "B-3,Q777,A bell"])
    page.select_option("#column-number", "Sale")
    page.select_option("#column-reference", "Item ref")
    page.select_option("#column-title", "What")
    page.get_by_role("button", name=control_names.LOOK_WITH_THESE_COLUMNS).press("Enter")
    expect(page.locator(".plate").first).to_contain_text("3")
    expect(page.locator("main")).to_contain_text("1 line held")
    page.get_by_role("button", name=control_names.LOAD_ORDERS.format("3 orders")).press("Enter")
    expect(page.locator("h1")).to_have_text(control_names.FILE_IS_LOADED)

    page.goto("/")
    page.locator("main .next").press("Enter")
    page.wait_for_url("**/rounds/*")
    expect(page.locator("h1")).to_have_text(figures(0, 2))
    assert REFUSALS[Reason.NOT_ON_ROUND].heading not in scan(page, card("D002"), "yes")
    expect(page.locator("h1")).to_have_text(figures(1, 2))
    assert control_names.PICKED in scan(page, card("S001"), "yes")
    expect(page.locator("h1")).to_have_text(control_names.ALL_STOPS_DONE)
    page.keyboard.press("Enter")
    page.wait_for_url("**/table")

    page.get_by_role("button", name=control_names.PACK.format("B-1")).press("Enter")
    expect(page.locator("h1")).to_have_text(figures(1))
    refusal = scan(page, card("S001"), "no")
    assert REFUSALS[Reason.OTHER_ORDER].heading in refusal
    assert "B-2" in refusal

    type_fast(page, card("D002"))  # the no stands until it is pressed: this scan is not taken
    page.wait_for_timeout(1500)
    expect(page.locator("dialog.no")).to_be_visible()
    expect(page.locator("dialog.no")).to_contain_text("B-2")
    go_on(page)
    expect(page.locator("dialog")).to_have_count(0)
    assert 0 == released(live, "B-1")

    assert control_names.RELEASED in scan(page, card("D002"), "yes")
    assert 1 == released(live, "B-1")
    expect(page.locator(".last")).to_contain_text("D002")

    page.get_by_role("button", name=control_names.UNDO).press("Enter")
    expect(page.locator("h1")).to_have_text(figures(1))
    assert 0 == released(live, "B-1")
    assert control_names.RELEASED in scan(page, card("D002"), "yes")

    page.goto("/tray")
    expect(page.locator(".plate .figures").first).to_have_text("1")
    assert control_names.IN_THE_TRAY in scan(page, card("D002"), "yes")
    expect(page.locator(".plate .figures").first).to_have_text("0")
    assert slot_code.reference("D002", 2) == put_away(page, card("D002"), "Front derailleur")


def released(live: Live, number: str) -> int:
    """How many lines of an order have left."""
    with live.shop.looking() as unit:
        order = unit.find(Order, number=number)[0]
        return len(unit.find(Line, order=order.id, state=LineState.RELEASED))


def test_no_answer_is_no_verdict(live: Live, page: Page) -> None:
    """While the network is gone a scan is shown as not recorded; it goes out with the same key when it is back.

    It says how long it has waited.
    """

    def build(unit: stock.Unit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=5, colour="yellow"))
        stock.add_slots(unit, "D", stock.AddSlots(count=5))

    live.shop.act("owner", build)
    first_sign_in(page, live)
    page.goto("/tray")
    page.route("**/api/scans", lambda route: route.abort())
    type_fast(page, card("D003"))
    expect(page.locator(".frame")).to_contain_text(f"Not recorded yet: {card('D003')}")
    expect(page.locator("dialog")).to_have_count(0)
    sent: list[str] = []
    page.on("request", lambda call: sent.append(call.post_data or "") if call.url.endswith("/scans") else None)
    page.wait_for_timeout(1200)
    page.unroute("**/api/scans")
    expect(page.locator("dialog.yes")).to_be_visible(timeout=15000)
    expect(page.locator(".frame")).to_have_count(0)
    told = [json.loads(each) for each in sent]
    ages = [each.pop("age_ms", 0) for each in told]
    assert [told[0]] * len(told) == told
    assert ages == sorted(ages)
    assert (True, True) == (len(sent) >= 2, ages[-1] >= 1000)
