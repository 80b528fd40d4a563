"""Forms with a browser: a card is fetched, scans go into the field that asks for them, Back does nothing twice."""

from __future__ import annotations

import control_names
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels import slot_code
from scanflow.domain.things import Item, Slot, Stay
from scanflow.workflow.stock import cards


def card(code: str) -> str:
    return slot_code.card_text(code)


def stored(live: Live) -> list[tuple[str, str]]:
    """Slot and title of what stands in the room."""
    with live.shop.looking() as unit:
        titles = {item.id: item.title for item in unit.find(Item)}
        return [(stay.code, titles[stay.item]) for stay in unit.find(Stay) if stay.open]


def test_a_card_is_fetched_and_scanned(live: Live, page: Page) -> None:
    """The section names the card; its scan asks for the title, and Enter stores."""
    furnish(live.shop, 0)
    sign_in(page, live)
    page.goto("/put-away")
    page.locator("summary", has_text="No card in hand").click()
    page.select_option("#section", "L")
    page.get_by_role("button", name=control_names.SHOW_CARD_TO_FETCH).click()
    expect(page.locator("h1")).to_have_text("Fetch card L001")
    type_fast(page, card("L001"))
    page.keyboard.type("Dynamo lamp")
    page.keyboard.press("Enter")
    page.wait_for_url("**/put-away/*")
    assert [("L001", "Dynamo lamp")] == stored(live)


def test_back_and_pressed_again(live: Live, page: Page) -> None:
    """Who goes back and sends the same form again gets the same page, and one card is fetched or one thing stored."""
    furnish(live.shop, 0)
    sign_in(page, live)
    page.goto("/put-away")

    def press() -> str:
        page.fill("#text", card("L002"))
        page.fill("#title", "Dynamo lamp")
        page.get_by_role("button", name=control_names.PUT_IT_AWAY).click()
        page.wait_for_url("**/put-away/*")
        return page.url

    first = press()
    page.go_back()
    page.wait_for_url("**/put-away")
    assert first == press()
    assert [("L002", "Dynamo lamp")] == stored(live)


def test_a_card_without_a_check(live: Live, page: Page) -> None:
    """Put away asks for a second look; neither it nor a third beep becomes the title."""
    furnish(live.shop, 0)
    live.shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    live.shop.act("owner", lambda unit: cards.adopt(unit, cards.Adopt(text="0421", code="S003")))
    sign_in(page, live)
    page.goto("/put-away")
    type_fast(page, "0421")
    expect(page.locator(".said")).to_contain_text("once more")
    expect(page.locator("#text")).to_be_focused()
    for _ in range(2):
        type_fast(page, "0421")
        expect(page.locator("#title")).to_be_focused()
    expect(page.locator("#title")).to_have_value("")
    page.keyboard.type("Saddle")
    page.keyboard.press("Enter")
    page.wait_for_url("**/put-away/*")
    assert [("S003", "Saddle")] == stored(live)


def test_a_thing_is_moved_by_a_scan(live: Live, page: Page) -> None:
    """The open fold takes the card that is scanned, and the page stays the thing's."""
    stay = furnish(live.shop, 1).stays[0]
    sign_in(page, live)
    page.goto(f"/stays/{stay.id}")
    page.locator("summary", has_text="Move it").click()
    expect(page.locator("#to")).to_be_focused()
    type_fast(page, card("S002"))
    page.wait_for_url(lambda url: "/stays/" in url and stay.id not in url.partition("?")[0])
    assert ["S002"] == [code for code, _ in stored(live)]


def test_a_scan_in_a_chosen_slot(live: Live, page: Page) -> None:
    """Its card goes into its field, and nothing lies over the button."""
    furnish(live.shop, 0)
    sign_in(page, live)
    page.goto("/put-away?code=D002")
    type_fast(page, card("D002"))
    expect(page.locator("#text")).to_have_value(card("D002"))
    expect(page.locator("#title")).to_be_focused()
    expect(page.locator(".scanned")).to_have_count(0)


def test_a_scan_where_a_bin_is_asked_for(live: Live, page: Page) -> None:
    """The label of a bin leads to it; a card says that a bin is asked for first."""
    furnish(live.shop, 0)
    sign_in(page, live)
    page.goto("/shelf")
    type_fast(page, card("D002"))
    expect(page.locator(".said")).to_contain_text("is a card")
    with live.shop.looking() as unit:
        bin_ = unit.find(Slot)[0].bin
    type_fast(page, slot_code.bin_text(bin_))
    expect(page.locator("h1")).to_have_text(f"In bin {bin_}")
