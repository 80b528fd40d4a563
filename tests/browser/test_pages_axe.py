"""No page breaks a rule of WCAG 2.2 AA that axe can check, in either theme, on a phone or a desktop."""

from __future__ import annotations

from dataclasses import replace

import control_names
import pytest
from axe_playwright_python.base import AXE_SCRIPT
from calls import photo
from every_page import addresses, front_door
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from paperwork import jpeg
from playwright.sync_api import Browser, Page, ViewportSize, expect
from watched import seeing, served

from labels import slot_code
from scanflow.domain.life import CardState, LineState
from scanflow.domain.things import Line, Slot, Station
from scanflow.vision import photographs
from scanflow.workflow import orders
from scanflow.workflow.picking import scans
from scanflow.workflow.picking.reading import ScanBase, StationReading
from scanflow.workflow.stock import photos

RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
COLOURS = ["color-contrast"]
"""What another theme can break in a page that breaks no other rule in the first."""
SIZES = {"phone": (360, 740), "desktop": (1440, 900)}
RUN = """async (rules) => {
  const { passes, violations } = await axe.run({ runOnly: rules, resultTypes: ["violations"] });
  const broken = violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 200)}`);
  return { passed: passes.map(({ id }) => id), broken };
}"""


def violations(page: Page, where: str, rules: list[str] = RULES) -> list[str]:
    if page.evaluate("typeof axe") == "undefined":
        page.evaluate(AXE_SCRIPT)
    found = page.evaluate(RUN, rules)
    assert "color-contrast" in found["passed"], where  # the rules did run
    return [f"{where}: {each}" for each in found["broken"]]


SMALL = """() => [...document.querySelectorAll("a, button, summary, select, input, textarea")].filter((each) => {
  const target = each.closest("label.tick, label.photo") ?? (each.matches(".title") ? each.closest(".line") : each);
  const { width, height } = target.getBoundingClientRect();
  const inline = each.matches("a") && getComputedStyle(each).display === "inline" && each.closest("p, dd");
  return width > 0 && height > 0 && !inline && !each.matches(".skip") && (width < 44 || height < 48);
}).map((each) => each.outerHTML.slice(0, 120))"""
"""What is pressed with a finger and lower than 48 px, links within sentences aside."""


def test_pages(live: Live, page: Page) -> None:
    """Axe finds nothing on any page, on a phone by day and on a desktop in the dark, everything that is folded away
    unfolded; in the dark it looks at colours alone.
    """
    room = furnish(live.shop, 25)
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    picture = photographs.photo(live.shop.readers, jpeg())
    for stay in room.stays[::2]:
        live.shop.act("owner", lambda unit, name=stay.id: photos.keep(unit, name, picture))
    sign_in(page, live)
    found = []
    for address in addresses(live.shop, room):
        page.goto(address)
        page.evaluate("document.querySelectorAll('main details').forEach((each) => { each.open = true })")
        for scheme, size, rules in (("light", "phone", RULES), ("dark", "desktop", COLOURS)):
            width, height = SIZES[size]
            page.set_viewport_size({"width": width, "height": height})
            page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
            where = f"{address}, {scheme}"
            found += violations(page, where, rules)
            found += [f"{where}: too small: {each}" for each in page.evaluate(SMALL)]
            wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
            found += [f"{where} is {wide} px too wide"] if wide > 0 else []
    assert [] == found


def test_empty_room_and_front_door(live: Live, page: Page) -> None:
    """Nor on the pages before the sign-in and in a room with nothing in it."""
    found = []
    for address in front_door(live.shop):
        page.goto(address)
        found += violations(page, address)
    sign_in(page, live)
    for address in (
        "/",
        "/put-away",
        "/orders",
        "/rounds",
        "/table",
        "/tray",
        "/shelf",
        "/slots",
        "/ledger",
        "/trouble",
        "/settings",
        "/cards",
        "/room",
        "/counts",
    ):
        page.goto(address)
        found += violations(page, f"empty {address}")
    assert [] == found


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_pictures_that_were_looked_at(live: Live, page: Page, scheme: str) -> None:
    """Nor on the page that shows what is in pictures: cards, other codes, nothing, no picture at all."""
    furnish(live.shop, 25)
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    sign_in(page, live)
    page.goto("/look")
    files = {"cards": photo("D001", "D002"), "other": photo("Z001"), "none": photo(), "torn": b"torn"}
    page.set_input_files(
        "#pictures", [{"name": name, "mimeType": "image/png", "buffer": data} for name, data in files.items()]
    )
    page.get_by_role("button", name=control_names.LOOK_AT_PICTURES).click()
    page.wait_for_selector(".seen")
    assert 4 == page.locator(".seen").count()
    assert [] == violations(page, "pictures looked at") + page.evaluate(SMALL)


@pytest.mark.parametrize(("scheme", "size"), [("light", "phone"), ("dark", "desktop")])
def test_what_to_change(live: Live, page: Page, scheme: str, size: str) -> None:
    """Nor on the page of what goes wrong once it says what to change."""
    furnish(live.shop, 25)
    for number in range(5):
        reading = StationReading(
            ScanBase(station=Station.TRAY, key=f"k{number}", via="typed"), ("D0019",), f"k{number}"
        )
        live.shop.act("owner", lambda unit, reading=reading: scans.scan(unit, reading))
    width, height = SIZES[size]
    page.set_viewport_size({"width": width, "height": height})
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    sign_in(page, live)
    page.goto("/trouble")
    expect(page.get_by_role("link", name="Codes of section D are mistyped: 5 times")).to_be_visible()
    wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert ([], 0) == (violations(page, "/trouble") + page.evaluate(SMALL), wide)


def test_sheets(live: Live, page: Page) -> None:
    """Nor on the sheets of a no and of a yes, nor in the frame of a scan that got no answer."""
    furnish(live.shop, 25)
    with live.shop.looking() as unit:
        due = unit.find(Slot, card=CardState.DUE)[0].code
    sign_in(page, live)
    page.goto("/tray")
    page.evaluate(
        "const wait = setTimeout; window.setTimeout = (go, ms) => ms === 1000 ? 0 : wait(go, ms)"
    )  # yes stays
    found = []
    for code, sheet in (("D002", "dialog.no"), (due, "dialog.yes")):
        type_fast(page, slot_code.card_text(code))
        page.wait_for_selector(sheet)
        found += violations(page, sheet)
        expect(page.locator("[aria-disabled]")).to_have_count(0)
        page.keyboard.press("Escape")
        page.wait_for_selector("dialog", state="detached")
    page.route("**/api/scans", lambda route: route.abort())
    type_fast(page, slot_code.card_text("D003"))
    page.wait_for_selector(".frame")
    assert [] == found + violations(page, "frame")


def test_without_network(live: Live, page: Page) -> None:
    """Nor on what the round's list says, on the round without network, and on what is to be put back."""
    room = furnish(live.shop, 25)
    assert room.round is not None
    with live.shop.looking() as unit:
        waits = {line.stay: line for line in unit.find(Line, round=room.round.id, state=LineState.WAITING)}
        stay, line = next((each, waits[each.id]) for each in room.stays if each.id in waits)
    sign_in(page, live)
    page.goto(f"/rounds/{room.round.id}")
    page.route("**/api/scans", lambda route: route.abort())
    found = []
    for code, sheet in ((stay.code, "dialog.noted.good"), ("D009", "dialog.noted:not(.good)")):
        type_fast(page, slot_code.card_text(code))
        page.wait_for_selector(sheet)
        if code == "D009":
            found += violations(page, sheet) + page.evaluate(SMALL)
            page.keyboard.press("Enter")
        page.wait_for_selector("dialog", state="detached")
        found += violations(page, "round without network") + page.evaluate(SMALL)
    live.shop.act("owner", lambda unit: orders.cancel(unit, line.order, orders.Cancel()))
    page.unroute("**/api/scans")
    page.wait_for_selector(".putback", timeout=20_000)
    assert [] == found + violations(page, "put back") + page.evaluate(SMALL)


@pytest.mark.parametrize(("scheme", "size"), [("light", "phone"), ("dark", "desktop")])
def test_camera_at_a_station(browser: Browser, scheme: str, size: str) -> None:
    """Nor on the page of `scanflow watch`, with a picture and without one."""
    width, height = SIZES[size]
    page = browser.new_page(viewport=ViewportSize(width=width, height=height), color_scheme=scheme)  # type: ignore[arg-type]
    with served(watched := seeing("D014")) as address:
        page.goto(address)
        expect(page.locator("svg text")).to_be_visible()
        found = violations(page, "picture") + page.evaluate(SMALL)
        watched.jpeg = b""
        expect(page.locator("#picture")).to_be_hidden()
        found += violations(page, "no picture")
        wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    page.close()
    assert ([], 0) == (found, wide)
