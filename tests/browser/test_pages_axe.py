"""No page breaks a rule of WCAG 2.2 AA that axe can check, in either theme, on a phone or a desktop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from axe_playwright_python.sync_playwright import Axe
from calls import photo
from furnished import Furnished, furnish
from live_shop import Live, sign_in, type_fast
from paperwork import jpeg
from playwright.sync_api import Page

from labels import slot_code
from scanflow.domain.life import CardState, Hold, LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Slot
from scanflow.workflow import orders, photos

RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}
SIZES = {"phone": (360, 740), "desktop": (1440, 900)}


def addresses(live: Live, room: Furnished) -> Iterator[str]:
    """Every page, with something on it and, where that is another page, with nothing."""
    stay, order = room.stays[0].id, room.orders[0].id
    with live.shop.looking() as unit:
        held = unit.find(Line, hold=Hold.DOUBTFUL)[0]
        unbound = unit.find(Line, hold=Hold.UNKNOWN_CODE)[0]
    yield from ("/", "/put-away", "/put-away?code=D009", f"/put-away/{stay}", "/orders", "/orders?state=returned")
    yield from (f"/orders/{order}", f"/orders/{unbound.order}", f"/lines/{held.id}", f"/lines/{unbound.id}")
    yield from (
        "/orders/load",
        "/rounds",
        f"/rounds/{room.round.id if room.round else ''}",
        "/table",
        "/table?table=two",
    )
    yield from ("/tray", "/shelf", "/shelf?bin=A-1-1", "/shelf?bin=Z-9-9", "/slots", "/slots?section=D&state=taken")
    yield from ("/slots/D001", f"/stays/{stay}", f"/stays/{stay}?why=By+mistake", "/search", "/search?q=saddle")
    yield from (
        "/search?q=nothing+at+all",
        "/ledger",
        "/ledger?about=D001",
        "/settings",
        "/scanner",
        "/no-such-page",
        "/look",
    )
    yield from ("/cards", "/cards?rows=99", "/cards/check?module=0.6")
    yield from ("/room", "/room/anew?heavy=W", "/room?section=D&kg=2&rated=1", "/sections/D?intake=9&stay=9")
    walk = room.round.id if room.round else ""
    yield from (f"/rounds/{walk}/paper", f"/rounds/{walk}/paper?stop=7")
    with live.shop.looking() as unit:
        closed = unit.find(Parcel, state=ParcelState.CLOSED)[0].id
    yield from ("/hand-over", f"/hand-over?parcel={closed}", f"/hand-over?parcel={closed}&told=known")
    yield "/sections/D/near?intake=9&quick=30&quick_stay=9&slow_stay=90"
    yield from ("/devices", "/trust", "/offline")
    plan = "/plan?section=Bells&code=b&slots_per_bin=9&things=5x4x3in&intake=9&stay=9&count=9&colour=pink&step="
    yield from ("/plan", f"{plan}2", f"{plan}3", f"{plan}4", f"{plan}5", "/plan/made/D")


def violations(page: Page, where: str) -> list[str]:
    results = Axe().run(page, options=RULES)
    passed = {each["id"] for each in results.response["passes"]}
    assert "color-contrast" in passed, where  # the rules did run
    return [f"{where}: {each['id']}: {each['nodes'][0]['html'][:200]}" for each in results.response["violations"]]


SMALL = """() => [...document.querySelectorAll("a, button, summary, select, input, textarea")].filter((each) => {
  const target = each.closest("label.tick, label.photo") ?? (each.matches(".title") ? each.closest(".line") : each);
  const { width, height } = target.getBoundingClientRect();
  const inline = each.matches("a") && getComputedStyle(each).display === "inline" && each.closest("p, dd");
  return width > 0 && height > 0 && !inline && !each.matches(".skip") && (width < 44 || height < 48);
}).map((each) => each.outerHTML.slice(0, 120))"""
"""What is pressed with a finger and lower than 48 px, links within sentences aside."""


@pytest.mark.parametrize(("scheme", "size"), [("light", "phone"), ("dark", "desktop")])
def test_pages(live: Live, page: Page, scheme: str, size: str) -> None:
    """Axe finds nothing on any page, everything that is folded away unfolded."""
    room = furnish(live.shop, 25)
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    picture = live.shop.photo(jpeg())
    for stay in room.stays[::2]:
        live.shop.act("owner", lambda unit, name=stay.id: photos.keep(unit, name, picture))
    width, height = SIZES[size]
    page.set_viewport_size({"width": width, "height": height})
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    sign_in(page, live)
    found = []
    for address in addresses(live, room):
        page.goto(address)
        page.evaluate("document.querySelectorAll('main details').forEach((each) => { each.open = true })")
        found += violations(page, address)
        found += [f"{address}: too small: {each}" for each in page.evaluate(SMALL)]
        wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        found += [f"{address} is {wide} px too wide"] if wide > 0 else []
    assert [] == found


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_empty_room_and_front_door(live: Live, page: Page, scheme: str) -> None:
    """Nor on the pages before the sign-in and in a room with nothing in it."""
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    found = []
    for address in ("/login", f"/set-up/{live.shop.setup_link()}", "/set-up/used", "/pair/used", "/trust"):
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
        "/settings",
        "/cards",
        "/room",
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
    page.get_by_role("button", name="Look at these pictures").click()
    page.wait_for_selector(".seen")
    assert 4 == page.locator(".seen").count()
    assert [] == violations(page, "pictures looked at") + page.evaluate(SMALL)


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
    live.shop.act("owner", lambda unit: orders.cancel(unit, line.order))
    page.unroute("**/api/scans")
    page.wait_for_selector(".putback", timeout=20_000)
    assert [] == found + violations(page, "put back") + page.evaluate(SMALL)
