"""A whole day without a mouse: by the keyboard alone, and by roles and names alone, as a screen reader tells them."""

from __future__ import annotations

from pathlib import Path

from clients import setup_link
from live_shop import PASSWORD, Live, type_fast
from playwright.sync_api import Locator, Page, expect

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.things import Line
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
    rows = [f"B-{n},{reference}" for n, reference in enumerate(references, 1)]
    path.write_text("\n".join(["Order number,Reference", *rows]), encoding="utf-8")
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
    keys.press("button", "Set the password")
    page.wait_for_url(f"{live.address}/")

    references = []
    for code, title in (("D002", "Rear derailleur"), ("S001", "Leather saddle")):
        keys.press("link", "Put away")
        page.wait_for_url("**/put-away")
        type_fast(page, slot_code.card_text(code))
        keys.go("textbox", "What it is")
        keys.write(title)
        page.keyboard.press("Enter")
        page.wait_for_url("**/put-away/*")
        references.append(page.get_by_role("status", name="Write this into the listing").inner_text())

    keys.press("link", "Orders")
    page.wait_for_url("**/orders")
    keys.press("link", "Load a file of orders")
    page.wait_for_url("**/orders/load")
    expect(page.locator("#file")).to_be_focused()
    page.set_input_files("#file", file_of_orders(tmp_path, *references))  # in the system's dialog
    keys.press("button", "Look at the file")
    expect(page.get_by_role("heading", level=1)).to_have_text("Check the file before it is loaded")
    keys.press("button", "Load 2 orders")
    expect(page.get_by_role("heading", level=1)).to_have_text("The file is loaded")
    keys.press("link", "Go to today")
    page.wait_for_url(f"{live.address}/")

    keys.press("button", "Start a round of 2 things")
    page.wait_for_url("**/rounds/*")
    for code in ("D002", "S001"):
        keys.scan(code, "Picked")
    keys.press("button", "Finish the round")
    page.wait_for_url("**/table")

    keys.press("button", "Pack B-1")
    expect(page.get_by_role("heading", level=1)).to_have_text("1 thing missing")
    type_fast(page, slot_code.card_text("S001"))
    expect(page.get_by_role("alertdialog", name="Another order’s")).to_be_visible()
    expect(page.get_by_role("button", name="Go on")).to_be_enabled()
    keys.press("button", "Go on")
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    assert 0 == released(live)
    keys.scan("D002", "Released")
    keys.press("button", "Pack B-2")
    expect(page.get_by_role("heading", level=1)).to_have_text("1 thing missing")
    keys.scan("S001", "Released")
    assert 2 == released(live)

    keys.press("link", "Tray")
    page.wait_for_url("**/tray")
    for code in ("D002", "S001"):
        keys.scan(code, "In the tray")
    expect(page.get_by_text("Every card is where it belongs.")).to_be_visible()


class Names:
    """Somebody who hears the page: finds things by role and name, and writes what a card says."""

    def __init__(self, page: Page) -> None:
        self.page = page

    def one(self, role: str, name: str) -> Locator:
        found = self.page.get_by_role(role, name=name, exact=True)  # type: ignore[arg-type]
        expect(found).to_have_count(1)
        return found

    def heading(self, words: str) -> None:
        expect(self.page.get_by_role("heading", level=1)).to_have_text(words)

    def visit(self, name: str) -> None:
        self.page.get_by_text("Go to", exact=True).click()
        self.page.get_by_role("navigation", name="All pages").get_by_role("link", name=name, exact=True).click()

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
    reader.heading("Set the owner's password")
    page.get_by_label("Password at least").fill(PASSWORD)
    page.get_by_label("The same again").fill(PASSWORD)
    reader.one("button", "Set the password").click()
    reader.heading("Today")

    references = []
    for code, title in (("D002", "Rear derailleur"), ("S001", "Leather saddle")):
        reader.visit("Put away")
        reader.heading("Put a thing away")
        page.get_by_role("textbox", name="Card in your hand").fill(slot_code.card_text(code))
        reader.one("textbox", "What it is").fill(title)
        reader.one("button", "Put it away").click()
        reader.one("button", "Copy the reference")
        references.append(reader.one("status", "Write this into the listing").inner_text())

    reader.visit("Orders")
    reader.one("link", "Load a file of orders").click()
    page.get_by_label("CSV file").set_input_files(file_of_orders(tmp_path, *references))
    reader.one("button", "Look at the file").click()
    reader.one("button", "Load 2 orders").click()
    reader.one("link", "Go to today").click()

    reader.one("button", "Start a round of 2 things").click()
    for code in ("D002", "S001"):
        reader.write_card("Scan the card at the bin", code, "Picked")
        expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.heading("All stops are done")
    reader.one("button", "Finish the round").click()

    reader.heading("Which order do you pack?")
    reader.one("button", "Pack B-1").click()
    reader.heading("1 thing missing")
    expect(page.get_by_role("img", name="not packed", exact=True)).to_have_count(1)
    reader.write_card("Scan a card of this order", "S001", "Another order’s")
    expect(reader.one("button", "Go on")).to_be_enabled()
    reader.one("button", "Go on").click()
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.write_card("Scan a card of this order", "D002", "Released")
    expect(page.get_by_role("alertdialog")).to_have_count(0)
    reader.heading("Which order do you pack?")
    reader.one("button", "Pack B-2").click()
    reader.write_card("Scan a card of this order", "S001", "Released")
    reader.heading("Which order do you pack?")
    assert 2 == released(live)

    reader.visit("Tray")
    for code in ("D002", "S001"):
        reader.write_card("Scan a card into the tray", code, "In the tray")
        expect(page.get_by_role("alertdialog")).to_have_count(0)
    expect(page.get_by_text("Every card is where it belongs.")).to_be_visible()
