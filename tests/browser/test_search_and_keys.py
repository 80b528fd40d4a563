"""What is found comes as one types, and a ? shows the keys of a page."""

from __future__ import annotations

from furnished import furnish
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text


def test_what_is_found_comes_as_one_types(live: Live, page: Page) -> None:
    """Nobody is led away before Enter, though the words so far name one order; Enter leads there."""
    room = furnish(live.shop, 9)
    sign_in(page, live)
    page.goto("/search")
    page.locator(".find input").press_sequentially("saddle", delay=30)
    expect(page.locator("main .line .title")).to_have_text(["Leather saddle 6", "Leather saddle 2"])
    page.locator(".find input").fill(room.orders[0].number)
    expect(page.locator("main .line .title")).to_have_text([f"Order {room.orders[0].number}"])
    assert "/search?" in page.url
    page.keyboard.press("Enter")
    page.wait_for_url(f"**/orders/{room.orders[0].id}")


def test_a_list_is_narrowed_as_one_types(live: Live, page: Page) -> None:
    """Slots and orders; the state that was chosen holds with the words, and the way back leads to the same list."""
    room = furnish(live.shop, 9)
    sign_in(page, live)
    rows = page.locator("main .line .title")
    page.goto("/slots?state=taken")
    expect(rows).to_have_count(9)
    page.keyboard.press("Alt+w")
    for words, count in (("e", 9), ("saddle", 2), ("saddle leather 6", 1), ("saddle leather", 2)):
        page.get_by_label("Only with these words").fill(words)
        expect(rows).to_have_count(count)
        page.wait_for_url(f"**/slots?state=taken&words={words.replace(' ', '+')}")
    expect(rows).to_have_text(["Leather saddle 2", "Leather saddle 6"])
    expect(page.get_by_label("Only with these words")).to_be_focused()
    page.get_by_role("link", name="free", exact=True).click()
    expect(page.get_by_text("No slot is like that.")).to_be_visible()
    page.go_back()
    expect(rows).to_have_text(["Leather saddle 2", "Leather saddle 6"])
    expect(page.get_by_label("Only with these words")).to_have_value("saddle leather")

    page.goto("/orders")
    expect(rows).to_have_count(len(room.orders))
    page.get_by_label("Only with these words").fill(room.orders[1].number.lower())
    expect(rows).to_have_count(1)
    rows.click()
    page.wait_for_url(f"**/orders/{room.orders[1].id}")
    page.go_back()
    page.get_by_label("Only with these words").fill("no order has this")
    expect(page.get_by_text("No order here has these words")).to_be_visible()


def test_a_question_mark_shows_the_keys(live: Live, page: Page) -> None:
    """At a station too, where the box is empty afterwards; the next key, or a scan, puts them away."""
    furnish(live.shop, 3)
    sign_in(page, live)
    keys = page.get_by_role("status").filter(has_text="Keys of this page")
    page.goto("/orders")
    page.keyboard.press("?")
    expect(keys).to_contain_text("T Today")
    page.keyboard.press("Escape")
    expect(keys).to_have_count(0)
    page.goto("/tray")
    page.keyboard.press("?")
    expect(keys).to_contain_text("F Search")
    expect(page.locator("#scan-text")).to_have_value("")
    type_fast(page, card_text("D001"))
    expect(page.locator("dialog.no")).to_be_visible()
    expect(keys).to_have_count(0)


def test_a_question_mark_that_is_written_is_none_of_it(live: Live, page: Page) -> None:
    """In a field of a form it is a letter like any other."""
    furnish(live.shop, 3)
    sign_in(page, live)
    page.goto("/put-away")
    page.locator("#title").press_sequentially("Is it brass?")
    page.wait_for_timeout(500)  # longer than a ? on its own is waited for
    expect(page.get_by_role("status").filter(has_text="Keys of this page")).to_have_count(0)
    expect(page.locator("#title")).to_have_value("Is it brass?")
