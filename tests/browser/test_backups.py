"""The page of backups follows what it began, and the recovery key is typed from its sheet."""

from __future__ import annotations

from pathlib import Path

import control_names
from axe_playwright_python.sync_playwright import Axe
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect

from scanflow.storage import backups as copies
from scanflow.workflow import backups


def test_a_backup_and_its_encryption(live: Live, page: Page, tmp_path: Path) -> None:
    """One is made at a press, and shown as soon as it is there; the sheet's key is tried; a reload shows no key."""
    stick = tmp_path / "stick"
    stick.mkdir()
    live.shop.act("owner", lambda unit: backups.add(unit, backups.NamePlace(path=str(stick))))
    sign_in(page, live)
    page.goto("/backups")
    expect(page.get_by_text("no backup yet", exact=True)).to_be_visible()
    page.get_by_role("button", name=control_names.BACK_UP_NOW).click()
    expect(page.get_by_text("1 backup,")).to_be_visible()
    expect(page.get_by_role("button", name=control_names.BACK_UP_NOW)).to_be_visible()
    page.get_by_text(control_names.CHANGE_OR_REMOVE).click()
    page.get_by_role("button", name=control_names.ENCRYPT_BACKUPS).click()
    key = page.locator("#recovery").inner_text()
    assert [] == Axe().run(page).response["violations"]
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    page.get_by_role("textbox", name=control_names.RECOVERY_KEY).fill(key)
    page.get_by_role("button", name=control_names.TRY_RECOVERY_KEY).click()
    page.wait_for_url("**/backups")
    expect(page.get_by_text("Encrypted.")).to_be_visible()
    expect(page.get_by_role("button", name=control_names.BACK_UP_NOW)).to_be_visible()
    expect(page.get_by_text("not tried")).to_have_count(0)
    assert key not in page.content()
    copies.check(stick, copies.listed(stick)[0], key)
    live.shop.keeper.close()
