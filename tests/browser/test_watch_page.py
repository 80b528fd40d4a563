"""The page of a camera at a station, looked at in Chromium."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from live_shop import go_on
from playwright.sync_api import Browser, Page, ViewportSize, expect
from watched import seeing, served

from labels import slot_code
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS

TEXT = slot_code.card_text("D014")
ANSWER = {
    "verdict": "refused",
    "reason": "other_order",
    "advice": "Another order's. This is D014, wanted by B-2. Put it in basket 2.",
    "changed": False,
    "code": "D014",
    "title": "Rear derailleur, long cage",
    "photo": None,
    "released": [],
}


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    """A page that fails the test for any error in a script."""
    page = browser.new_page(viewport=ViewportSize(width=390, height=780))
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield page
    page.close()
    assert [] == errors


def test_what_is_read_is_outlined_and_told(page: Page) -> None:
    """The picture with an outline and its text; a new verdict covers the page as at every station, and stays in words.

    A verdict of before the page was opened is not shown again.
    """
    watched = seeing("D014")
    watched.answers, watched.answer = 1, ANSWER
    with served(watched) as address:
        page.goto(address)
        expect(page.locator("svg text")).to_have_text(f"{TEXT} scanned")
        expect(page.locator("#hint")).to_have_text("Hold a card up.")
        expect(page.locator("#last")).to_contain_text("Put it in basket 2.")
        expect(page.locator("dialog")).to_have_count(0)
        watched.answer, watched.answers = ANSWER | {"advice": "Put it back in A-1-1.", "reason": "not_ordered"}, 2
        expect(page.locator("dialog.no")).to_contain_text(REFUSALS[Reason.NOT_ORDERED].heading)
        go_on(page)
        expect(page.locator("dialog")).to_have_count(0)
        watched.waits = f"Not recorded yet: {TEXT}. Waiting for the network."
        expect(page.locator(".frame")).to_contain_text("Not recorded yet")
    expect(page.locator("#hint")).to_contain_text("The camera was stopped", timeout=15_000)
