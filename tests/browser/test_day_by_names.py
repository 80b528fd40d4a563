"""A whole day without a mouse: by the keyboard alone, and by roles and names alone, as a screen reader tells them."""

from __future__ import annotations

import re
from pathlib import Path

import control_names
import pytest
from clients import setup_link
from live_shop import PASSWORD, Live, sign_in, type_fast
from page_text import figures
from playwright.sync_api import Locator, Page, expect

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.things import Line
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS
from scanflow.workflow import stock

DESKTOP, PHONE = {"width": 1280, "height": 800}, {"width": 360, "height": 740}
MOST_TABS = 60


def build(live: Live) -> None:
    def two_sections(unit: stock.Unit) -> None:
        for code, name, paper in (("D", "Derailleurs", "yellow"), ("S", "Saddles", "pink")):
            stock.add_section(unit, stock.AddSection(code=code, name=name, slots_per_bin=5, colour=paper))
            stock.add_slots(unit, code, stock.AddSlots(count=5))

    live.shop.act("owner", two_sections)


def file_of_orders(folder: Path, *references: str) -> Path:
    path = folder / "orders.csv"
    rows = [f"B-{n},fair,{reference}" for n, reference in enumerate(references, 1)]
    path.write_text("\n".join(["Order number,Channel,Reference", *rows]), encoding="utf-8")
    return path


def released(live: Live) -> int:
    with live.shop.looking() as unit:
        return len(unit.find(Line, state=LineState.RELEASED))


class Keys:
    """Hands on a keyboard: Tab until the control of this role and name has the focus, then a key."""

    def __init__(self, page: Page) -> None:
        self.page = page

    def go(self, role: str, name: str) -> None:
        wanted = self.page.get_by_role(role, name=name, exact=True)  # type: ignore[arg-type]
        expect(wanted.first).to_be_attached()
        for _ in range(MOST_TABS):
            if wanted.and_(self.page.locator(":focus")).count():
                return
            self.page.keyboard.press("Tab")
        raise AssertionError(f"No Tab leads to the {role} “{name}”.")

    def press(self, role: str, name: str, key: str = "Enter") -> None:
        self.go(role, name)
        self.page.keyboard.press(key)

    def write(self, words: str) -> None:
        self.page.keyboard.type(words)

    def scan(self, code: str, verdict: str) -> None:
        """A scan that is taken, until its verdict has gone by itself."""
        type_fast(self.page, slot_code.card_text(code))
        expect(self.page.get_by_role("alertdialog", name=verdict)).to_be_visible()
        expect(self.page.get_by_role("alertdialog")).to_have_count(0)


def test_by_keyboard_alone(live: Live, page: Page, tmp_path: Path) -> None:
    """Put away, order, round, table with a wrong card, release and tray: every control is reached by Tab."""
    build(live)
    page.set_viewport_size(DESKTOP)  # type: ignore[arg-type]
    keys = Keys(page)
    page.goto(f"/set-up/{setup_link(live.shop)}")
    expect(page.locator("#password")).to_be_focused()
    keys.write(PASSWORD)
    page.keyboard.press("Tab")
    expect(page.locator("#again")).to_be_focused()
    keys.write(PASSWORD)
    keys.press("button", control_names.SET_THE_PASSWORD)
    page.wait_for_url(f"{live.address}/")

    references = []
    for code, title in (("D002", "Rear derailleur"), ("S001", "Leather saddle")):
        keys.press("link", control_names.PUT_AWAY)
        page.wait_for_url("**/put-away")
        type_fast(page, slot_code.card_text(code))
        keys.go("textbox", control_names.WHAT_IT_IS)
        keys.write(title)
        page.keyboard.press("Enter")
        page.wait_for_url("**/put-away/*")
        references.append(page.get_by_role("status", name=control_names.WRITE_INTO_LISTING).inner_text())

    keys.press("link", control_names.ORDERS)
    page.wait_for_url("**/orders")
    keys.press("link", control_names.LOAD_A_FILE)
    page.wait_for_url("**/orders/load")
    expect(page.locator("#file")).to_be_focused()
    page.wait_for_load_state()
    page.set_input_files("#file", file_of_orders(tmp_path, *references))  # in the system's dialog
    expect(page.get_by_role("heading", level=1)).to_have_text(control_names.CHECK_THE_FILE)
    keys.press("button", control_names.LOAD_ORDERS.format("2 orders"))
    expect(page.get_by_role("heading", level=1)).to_have_text(control_names.FILE_IS_LOADED)
    keys.press("link", control_names.GO_TO_TODAY)
    page.wait_for_url(f"{live.address}/")

    keys.press("button", control_names.START_A_ROUND.format("2"))
    page.wait_for_url("**/rounds/*")
    for code in ("D002", "S001"):
        keys.scan(code, control_names.PICKED)
    keys.press("button", control_names.FINISH_THE_ROUND)
    page.wait_for_url("**/table")

    keys.press("button", control_names.PACK.format("B-1"))
    expect(page.get_by_role("heading", level=1)).to_have_text(figures(1))
    type_fast(page, slot_code.card_text("S001"))
    expect(page.get_by_role("alertdialog", name=REFUSALS[Reason.OTHER_ORDER].heading)).to_be_visible()
    expect(page.get_by_role("button", name=control_names.GO_ON)).to_be_enabled()
    keys.press("button", control_names.GO_ON)
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    assert 0 == released(live)
    keys.scan("D002", control_names.RELEASED)
    keys.press("button", control_names.PACK.format("B-2"))
    expect(page.get_by_role("heading", level=1)).to_have_text(figures(1))
    keys.scan("S001", control_names.RELEASED)
    assert 2 == released(live)

    keys.press("link", control_names.TRAY)
    page.wait_for_url("**/tray")
    for code in ("D002", "S001"):
        keys.scan(code, control_names.IN_THE_TRAY)
    expect(page.get_by_text(control_names.EVERY_CARD_BELONGS)).to_be_visible()


class Names:
    """Somebody who hears the page: finds things by role and name, and writes what a card says."""

    def __init__(self, page: Page) -> None:
        self.page = page

    def one(self, role: str, name: str) -> Locator:
        found = self.page.get_by_role(role, name=name, exact=True)  # type: ignore[arg-type]
        expect(found).to_have_count(1)
        return found

    def heading(self, words: str | re.Pattern[str]) -> None:
        expect(self.page.get_by_role("heading", level=1)).to_have_text(words)

    def visit(self, name: str) -> None:
        self.page.get_by_text(control_names.ALL_PAGES, exact=True).click()
        pages = self.page.get_by_role("navigation", name=control_names.ALL_PAGES)
        pages.get_by_role("link", name=name, exact=True).click()

    def write_card(self, label: str, code: str, verdict: str) -> None:
        self.page.wait_for_load_state()  # the page's scripts are there
        self.one("textbox", label).fill(slot_code.card_text(code))
        self.page.keyboard.press("Enter")
        expect(self.page.get_by_role("alertdialog", name=verdict)).to_be_visible()


def test_by_names_alone(live: Live, page: Page, tmp_path: Path) -> None:
    """The same day on a phone, where nothing is known of a page but the roles and names of what stands on it."""
    build(live)
    page.set_viewport_size(PHONE)  # type: ignore[arg-type]
    reader = Names(page)
    page.goto(f"/set-up/{setup_link(live.shop)}")
    reader.heading(control_names.SET_OWNERS_PASSWORD)
    page.get_by_label(control_names.PASSWORD).fill(PASSWORD)
    page.get_by_label(control_names.PASSWORD_AGAIN).fill(PASSWORD)
    reader.one("button", control_names.SET_THE_PASSWORD).click()
    reader.heading(control_names.TODAY)

    references = []
    for code, title in (("D002", "Rear derailleur"), ("S001", "Leather saddle")):
        reader.visit(control_names.PUT_AWAY)
        reader.heading(control_names.PUT_A_THING_AWAY)
        page.get_by_role("textbox", name=control_names.CARD_IN_YOUR_HAND).fill(slot_code.card_text(code))
        reader.one("textbox", control_names.WHAT_IT_IS).fill(title)
        reader.one("button", control_names.PUT_IT_AWAY).click()
        reader.one("button", control_names.COPY_REFERENCE)
        references.append(reader.one("status", control_names.WRITE_INTO_LISTING).inner_text())

    reader.visit(control_names.ORDERS)
    reader.one("link", control_names.LOAD_A_FILE).click()
    page.wait_for_url("**/orders/load")
    page.wait_for_load_state()  # the script that looks at a chosen file is there
    page.get_by_label(control_names.CSV_FILE).set_input_files(file_of_orders(tmp_path, *references))
    reader.one("button", control_names.LOAD_ORDERS.format("2 orders")).click()
    reader.one("link", control_names.GO_TO_TODAY).click()

    reader.one("button", control_names.START_A_ROUND.format("2")).click()
    for code in ("D002", "S001"):
        reader.write_card(control_names.SCAN_AT_BIN, code, control_names.PICKED)
        expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.heading(control_names.ALL_STOPS_DONE)
    reader.one("button", control_names.FINISH_THE_ROUND).click()

    reader.heading(control_names.WHICH_ORDER)
    reader.one("button", control_names.PACK.format("B-1")).click()
    reader.heading(figures(1))
    expect(page.get_by_role("img", name=control_names.NOT_PACKED, exact=True)).to_have_count(1)
    reader.write_card(control_names.SCAN_OF_ORDER, "S001", REFUSALS[Reason.OTHER_ORDER].heading)
    expect(reader.one("button", control_names.GO_ON)).to_be_enabled()
    reader.one("button", control_names.GO_ON).click()
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.write_card(control_names.SCAN_OF_ORDER, "D002", control_names.RELEASED)
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.heading(control_names.WHICH_ORDER)
    reader.one("button", control_names.PACK.format("B-2")).click()
    reader.write_card(control_names.SCAN_OF_ORDER, "S001", control_names.RELEASED)
    reader.heading(control_names.WHICH_ORDER)
    assert 2 == released(live)

    reader.visit(control_names.TRAY)
    for code in ("D002", "S001"):
        reader.write_card(control_names.SCAN_INTO_TRAY, code, control_names.IN_THE_TRAY)
        expect(page.get_by_role("alertdialog")).to_have_count(0)
    expect(page.get_by_text(control_names.EVERY_CARD_BELONGS)).to_be_visible()


@pytest.mark.parametrize(("key", "path"), [("Alt+o", "/orders"), ("Alt+Shift+m", "/room"), ("Alt+e", "/help")])
def test_keys_lead_to_pages_while_their_list_is_closed(live: Live, page: Page, key: str, path: str) -> None:
    """With the keys that browsers use for it: Alt, or Alt and Shift."""
    sign_in(page, live)
    page.goto("/table")
    page.wait_for_load_state()
    page.keyboard.press(key)
    page.wait_for_url(f"**{path}")
