"""Makes the README's pictures of the example shop: `python tests/screenshots.py`, after a change of the look."""

from __future__ import annotations

import tempfile
from pathlib import Path

import chromium
import control_names
from listening import listening
from live_shop import PASSWORD
from playwright.sync_api import Page, sync_playwright

from labels import slot_code
from scanflow import demo
from scanflow.demo.goods import KINDS
from scanflow.demo.pictures import Photographer
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.engine import sqlite_url
from scanflow.web import create_app

PICTURES = Path(__file__).parents[1] / ".pictures"
PHONE = {"width": 360, "height": 740}
CHROMIUM = ["--no-sandbox", "--disable-background-networking", "--disable-gpu"]


def main() -> None:
    PICTURES.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        data = Path(folder)
        demo.run(data, lambda _: None)
        shop = Shop(Database(sqlite_url(data)))
        shop.act("owner", lambda unit: unit.access.set_password(PASSWORD))
        with listening(create_app(shop), shop) as server, sync_playwright() as playwright:
            browser = playwright.chromium.launch(executable_path=chromium.program(), args=CHROMIUM)
            page = browser.new_page(viewport=PHONE, base_url=f"http://127.0.0.1:{server.effective_port}")
            take_all(page)
            take_count(page, data)
            browser.close()
        shop.close()


def take_all(page: Page) -> None:
    page.goto("/login")
    page.fill("input[name=password]", PASSWORD)
    page.press("input[name=password]", "Enter")
    page.wait_for_url("**/")
    take(page, "today")
    page.goto("/put-away")
    take(page, "put-away")
    page.goto("/orders?state=held")
    take(page, "orders")
    page.goto("/rounds")
    page.click("a[href^='/rounds/']")
    page.wait_for_url("**/rounds/*")
    take(page, "round")
    page.goto("/table")
    take(page, "table")
    page.keyboard.type(slot_code.card_text("W009"))
    page.keyboard.press("Enter")
    page.wait_for_selector("dialog.no")
    take(page, "refused")
    page.goto("/tray")
    take(page, "tray")


def take_count(page: Page, data: Path) -> None:
    """A bin is photographed, one card of another among its own; its findings so far are shown."""
    sheets = {each.code: data / "cards" / f"{each.code}.pdf" for each in KINDS}
    photo = Photographer(sheets, data).take("A-1-1", "S003", "S005", "S009", "S006")
    page.goto("/counts?area=section:S")
    page.get_by_role("button", name=control_names.START_COUNTING).click()
    page.wait_for_url("**/counts/*")
    page.locator("#places").get_by_role("link", name="A-1-1").click()
    page.set_input_files("form.shoot input", photo)
    page.wait_for_selector("img.whole")
    page.evaluate("scrollTo(0, 0)")
    take(page, "count")
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
    page.wait_for_url("**/findings")
    page.locator(".finding").first.scroll_into_view_if_needed()
    take(page, "findings")


SEEN = """() => [...document.images].every(
  (each) => each.naturalWidth || !each.checkVisibility() || each.getBoundingClientRect().top > innerHeight)"""
"""Pictures of things come when they are near the screen, and some time after the page; those in a fold, never."""


DECODED = """() => Promise.all(
  [...document.images].filter((each) => each.complete && each.naturalWidth).map((each) => each.decode()))"""


DECODED = """() => Promise.all(
  [...document.images].filter((each) => each.complete && each.naturalWidth).map((each) => each.decode()))"""


def take(page: Page, name: str) -> None:
    page.wait_for_load_state()
    page.wait_for_function(SEEN)
    page.evaluate(DECODED)
    page.screenshot(path=PICTURES / f"{name}.png", animations="disabled")


if __name__ == "__main__":
    main()
