"""A phone is paired by the owner's code, works as a helper, and is out once it is revoked; no page of it breaks axe."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import control_names
import pytest
from axe_playwright_python.sync_playwright import Axe
from furnished import furnish
from listening import listening
from live_shop import Live, sign_in
from playwright.sync_api import Browser, Page, expect

from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.web import create_app
from scanflow.web.door.addresses import Listening
from scanflow.web.door.certificates import Home


@pytest.fixture
def live(sqlite_template: Path, tmp_path: Path, readers: Readers) -> Iterator[Live]:
    """A service that believes to be in a home network, with an authority of its own."""
    path = tmp_path / "shop.db"
    shutil.copy(sqlite_template, path)
    shop = Shop(Database(f"sqlite:///{path}"), readers)
    home = Home(tmp_path / "https", lambda: ["bench", "192.168.1.7"])
    app = create_app(shop, Listening("192.168.1.7", 8765, https=True), home)
    with listening(app, shop) as server:
        yield Live(shop, f"http://127.0.0.1:{server.effective_port}")
    shop.database.close()


RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}


def amiss(page: Page, where: str) -> list[str]:
    """What axe finds, everything that is folded away unfolded; and whether the page is too wide."""
    page.evaluate("document.querySelectorAll('main details').forEach((each) => { each.open = true })")
    found = [f"{where}: {each['id']}: {each['nodes'][0]['html'][:200]}" for each in _axe(page)]
    wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    return found + ([f"{where} is {wide} px too wide"] if wide > 0 else [])


def _axe(page: Page) -> list[dict[str, Any]]:
    response = Axe().run(page, options=RULES).response
    assert "color-contrast" in {each["id"] for each in response["passes"]}  # the rules did run
    return list(response["violations"])


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_a_phone_from_pairing_to_revoking(browser: Browser, live: Live, page: Page, scheme: str) -> None:
    """By keyboard alone: the owner makes a code, the phone opens its link and scans, the owner revokes it."""
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    furnish(live.shop, 3)
    sign_in(page, live)
    page.goto("/devices")
    found = amiss(page, "no devices")
    page.get_by_role("button", name=control_names.PAIR_A_PHONE).press("Enter")
    expect(page.get_by_role("img", name=control_names.PAIRING_CODE)).to_be_visible()
    link = page.locator("#link").inner_text()
    found += amiss(page, "code")
    with browser.new_context(viewport={"width": 390, "height": 780}, color_scheme=scheme) as context:  # type: ignore[arg-type]
        phone = context.new_page()
        phone.goto(link.replace("https://192.168.1.7:8765", live.address))
        found += amiss(phone, "phone")
        phone.get_by_label(control_names.NAME_OF_THIS_PHONE).fill("Blue phone")
        phone.keyboard.press("Enter")
        phone.wait_for_url(f"{live.address}/")
        phone.goto(f"{live.address}/put-away")
        expect(phone.get_by_role("heading", level=1)).to_be_visible()
        expect(phone.get_by_role("link", name=control_names.SETTINGS)).to_have_count(0)
        phone.goto(f"{live.address}/trust")
        found += amiss(phone, "trust")
        page.goto("/devices")
        page.get_by_text(control_names.RENAME_OR_REVOKE.format("Blue phone")).press("Enter")
        found += amiss(page, "devices")
        page.get_by_role("button", name=control_names.REVOKE.format("Blue phone")).press("Enter")
        expect(page.get_by_text("Blue phone")).to_have_count(0)
        phone.goto(f"{live.address}/put-away")
        expect(phone).to_have_url(f"{live.address}/login?next=/put-away")
    assert [] == found
