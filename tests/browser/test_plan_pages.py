"""Planning and designing by the keyboard, in a browser."""

from __future__ import annotations

import re

import control_names
from furnished import furnish
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect

from labels import slot_code
from scanflow.domain.things import Section

TEXT = slot_code.card_text("B001")
WIDTH = "(image) => image.decode().then(() => image.getBoundingClientRect().width)"


def test_from_what_is_sold_to_the_cards(live: Live, page: Page) -> None:
    """Enter leads on from page to page, and back in the browser keeps what was typed; at the end the cards show."""
    sign_in(page, live)
    page.goto("/plan")
    expect(page.locator("#section")).to_be_focused()
    for name, word in (("section", "Bells"), ("code", "b")):
        page.fill(f"#{name}", word)
    page.keyboard.press("Enter")
    expect(page.locator("h1")).to_have_text("How big are they?")
    page.keyboard.type("12")
    page.keyboard.press("Enter")
    expect(page.locator("h1")).to_have_text("How many, and for how long?")
    page.get_by_role("button", name=control_names.BACK).press("Enter")
    expect(page.locator("#slots_per_bin")).to_have_value("12")
    page.go_back()
    for name, word in (("intake", "10"), ("stay", "40")):
        page.fill(f"#{name}", word)
    page.keyboard.press("Enter")
    expect(page.locator(".curve")).to_be_visible()
    page.get_by_role("button", name=control_names.LOOK_IT_OVER).press("Enter")
    page.get_by_role("button", name=control_names.MAKE_SECTION.format("B")).press("Enter")
    expect(page.locator("h1")).to_have_text("Section B is made")
    with live.shop.looking() as unit:
        section = unit.get(Section, "B")
    assert section is not None
    page.locator(".next").press("Enter")
    expect(page.locator(".true img")).to_have_attribute("alt", f"Card B001 of section Bells; its bars say {TEXT}.")
    expect(page.locator(".face .say")).to_contain_text(f"{section.last} cards on")


def test_preview_follows_what_is_typed(live: Live, page: Page) -> None:
    """The card changes with the form, at its true size of 96 pixels an inch; what can't be printed is said at once."""
    furnish(live.shop, 4)
    sign_in(page, live)
    page.goto("/cards?section=D&paper=letter")
    image = page.locator(".true img")
    expect(image).to_be_visible()
    assert round((215.9 - 10.2) / 3 / 25.4 * 96) == round(image.evaluate(WIDTH))
    page.fill("#columns", "2")
    expect(image).to_have_attribute("src", re.compile("columns=2&"))
    assert round((215.9 - 10.1) / 2 / 25.4 * 96) == round(image.evaluate(WIDTH))
    page.fill("#columns", "30")
    expect(page.locator(".said")).to_contain_text("need a card at least")
    expect(image).to_have_count(0)
    page.fill("#columns", "3")
    expect(image).to_be_visible()
    with page.expect_download() as kept:
        page.get_by_role("button", name=control_names.DOWNLOAD_SHEETS).press("Enter")
    assert "cards-D.pdf" == kept.value.suggested_filename
