"""Things are put away one after the other: a scan and a title each."""

from __future__ import annotations

import control_names
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text
from scanflow.domain.things import Item, Slot, Stay
from scanflow.workflow.stock import cards


def free_cards(live: Live, count: int) -> list[str]:
    with live.shop.looking() as unit:
        taken = {stay.code for stay in unit.find(Stay)}
        return [slot.code for slot in unit.find(Slot, section="D") if slot.code not in taken][:count]


def stood(live: Live, since: int) -> list[tuple[str, str]]:
    """Slot and title of each thing that was put away after the first ones."""
    with live.shop.looking() as unit:
        titles = {item.id: item.title for item in unit.find(Item)}
        return [(stay.code, titles[stay.item]) for stay in unit.find(Stay)[since:]]


def write(page: Page, title: str) -> None:
    """As a person types, who then takes the scanner up."""
    page.keyboard.type(title, delay=60)
    page.wait_for_timeout(400)


def test_the_next_scan_puts_this_one_away(live: Live, page: Page) -> None:
    """No key but those of the titles; what was put away just now stands below, with its bin and its reference."""
    room = furnish(live.shop, 9)
    sign_in(page, live)
    page.goto("/put-away")
    free = free_cards(live, 3)
    for code, title in zip(free, ("Brass bell", "Track hub", "Chain guard"), strict=True):
        type_fast(page, card_text(code))
        expect(page.locator("#text")).to_have_value(card_text(code))
        expect(page.locator("#title")).to_be_focused()
        write(page, title)
    expect(page.get_by_text("Put away just now")).to_be_visible()
    expect(page.locator("main .line .title")).to_have_text("Track hub")
    page.keyboard.press("Enter")
    expect(page.get_by_role("button", name=control_names.COPY_REFERENCE)).to_be_visible()
    assert [*zip(free, ("Brass bell", "Track hub", "Chain guard"), strict=True)] == stood(live, len(room.stays))


def test_a_next_card_without_a_check_is_scanned_twice(live: Live, page: Page) -> None:
    """The first reading stores nothing, and takes nothing of what is written."""
    room = furnish(live.shop, 3)
    live.shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    free, texts = free_cards(live, 2), ("BX-00410", "BX-00411")
    for text, code in zip(texts, free, strict=True):
        live.shop.act("owner", lambda unit, t=text, c=code: cards.adopt(unit, cards.Adopt(text=t, code=c)))
    sign_in(page, live)
    page.goto("/put-away")
    for _ in range(2):
        type_fast(page, texts[0])
    expect(page.locator("#title")).to_be_focused()
    write(page, "Brass bell")
    type_fast(page, texts[1])
    expect(page.locator(".said")).to_contain_text("once more")
    expect(page.locator("#title")).to_have_value("Brass bell")
    assert [] == stood(live, len(room.stays))
    type_fast(page, texts[1])
    expect(page.locator("#text")).to_have_value(texts[1])
    write(page, "Track hub")
    page.keyboard.press("Enter")
    expect(page.get_by_role("button", name=control_names.COPY_REFERENCE)).to_be_visible()
    assert [(free[0], "Brass bell"), (free[1], "Track hub")] == stood(live, len(room.stays))
