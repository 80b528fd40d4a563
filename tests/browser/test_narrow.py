"""The narrowest phone and a tablet show every page without scrolling sideways, however long the names are."""

from __future__ import annotations

from dataclasses import replace

import pytest
from every_page import addresses
from flask import render_template_string
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from paperwork import jpeg
from playwright.sync_api import Page, expect
from sqlalchemy import func, update

from labels import slot_code
from scanflow.domain.things import Line
from scanflow.storage.tables import doubts, items, listings, orders, sections
from scanflow.storage.unit import SqlUnit
from scanflow.vision import photographs
from scanflow.web import create_app
from scanflow.workflow.stock import photos

NARROW = {"width": 360, "height": 740}
TABLET = {"width": 768, "height": 1024}
DESKTOP = {"width": 1440, "height": 900}

OUTSIDE = """() => [...document.querySelectorAll("header *, main *")].filter((each) => {
  const { left, right, width } = each.getBoundingClientRect();
  return width > 0 && (left < 0 || right > innerWidth + 1) && !each.closest(".scroll, .heard, svg");
}).map((each) => each.outerHTML.slice(0, 120))"""
"""What sticks out of the page, though nobody could scroll there; drawings have a part of their own to scroll."""


def test_no_page_scrolls_sideways(live: Live, page: Page) -> None:
    """Titles, notes, sections, the shop, order numbers and channels of 200 characters without a space fit on 360 and on
    768 px.
    """
    name = ("Reclaimed" * 23)[:200]
    room = furnish(live.shop, 25, name)
    picture = photographs.photo(live.shop.readers, jpeg())

    def lengthen(unit: SqlUnit) -> None:
        unit.set_settings(replace(unit.settings, name=name, bind_labels=True))
        for column in (sections.c.name, listings.c.listing, items.c.notes, orders.c.channel, doubts.c.words):
            unit.connection.execute(update(column.table).values({column: name}))
        for line in unit.find(Line):
            holds = tuple(replace(each, why=name) for each in line.holds)
            unit.put(replace(line, title=f"{name[:190]} anew", holds=holds))
        longer = orders.c.number.concat(func.substr(name, 1, 190))
        unit.connection.execute(update(orders).where(orders.c.n % 2 == 0).values(number=longer))
        for stay in room.stays[::2]:
            photos.keep(unit, stay.id, picture)

    live.shop.act("owner", lengthen)
    sign_in(page, live)
    found = []
    for address in addresses(live.shop, room):
        page.goto(address)
        page.evaluate("document.querySelectorAll('main details').forEach((each) => { each.open = true })")
        for size in (NARROW, TABLET):
            page.set_viewport_size(size)  # type: ignore[arg-type]
            wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
            found += [f"{address} is {wide} px too wide"] if wide > 0 else []
            found += [f"{address}: {each}" for each in page.evaluate(OUTSIDE)]
    assert [] == found


@pytest.mark.parametrize("size", [NARROW, TABLET, DESKTOP], ids=["phone", "tablet", "desktop"])
def test_numbers_stay_on_their_plates(live: Live, page: Page, size: dict[str, int]) -> None:
    """However many there are, and whatever a shop calls its orders: the row of a long number is not a tower."""
    furnish(live.shop, 4)
    name = "Reclaimed " * 20

    def multiply(unit: SqlUnit) -> None:
        unit.connection.execute(update(orders).values(number=orders.c.number.concat(name.strip())))

    live.shop.act("owner", multiply)
    page.set_viewport_size(size)  # type: ignore[arg-type]
    sign_in(page, live)
    page.goto("/orders")
    app = create_app(live.shop)
    with app.test_request_context("/"):
        plates = [
            render_template_string("{% import 'parts.html' as parts %}{{ parts.number(n, 'slots') }}", n=n)
            for n in (8, 1_234, 99_999, 123_456, 9_999_999, 99_999_999)
        ]
    rows = page.evaluate("[...document.querySelectorAll('.line')].map((each) => each.offsetHeight)")
    page.evaluate("(all) => { document.querySelector('.face').innerHTML = all }", "".join(plates))
    over = "[...document.querySelectorAll('.face .plate')].map((each) => each.scrollWidth - each.clientWidth)"
    assert ([0] * len(plates), True) == (page.evaluate(over), max(rows) < 150)


def test_a_no_fits(live: Live, page: Page) -> None:
    """However long the title, a no shows its word, the plate, what to do and the button without scrolling."""
    furnish(live.shop, 25, "Reclaimed" * 22)
    page.set_viewport_size(NARROW)  # type: ignore[arg-type]
    sign_in(page, live)
    page.goto("/table")
    type_fast(page, slot_code.card_text("D002"))
    sheet = page.locator("dialog.no")
    for part in (".word", ".plate", ".advice", "button"):
        expect(sheet.locator(part)).to_be_in_viewport(ratio=0.99)


def test_no_answer_covers_nothing(live: Live, page: Page) -> None:
    """What is said of the lost network pushes the page down and does not lie on it; then the page moves back."""
    furnish(live.shop, 4)
    page.set_viewport_size(NARROW)  # type: ignore[arg-type]
    sign_in(page, live)
    page.goto("/table")
    page.route("**/api/scans", lambda route: route.abort())
    type_fast(page, slot_code.card_text("D002"))
    expect(page.locator(".frame")).to_be_visible()
    bottom = "document.querySelector('.frame p').getBoundingClientRect().bottom + scrollY"
    top = "document.querySelector('.head').getBoundingClientRect().top + scrollY"
    assert page.evaluate(bottom) <= page.evaluate(top)
    page.unroute("**/api/scans")
    expect(page.locator(".frame")).to_have_count(0, timeout=20_000)
    assert 0 == page.evaluate(top)
