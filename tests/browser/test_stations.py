"""What a scan does on the other pages, by photo, and backwards."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import control_names
from furnished import furnish
from live_shop import Live, anew, sign_in, type_fast
from pictures import TEXT, as_file, card
from playwright.sync_api import Page, Route, expect

from labels import slot_code
from scanflow.domain.life import LineState
from scanflow.domain.things import Line, Scan, Station
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import ledger as ledger_views
from scanflow.workflow import parcels, stock


def test_photo(live: Live, page: Page) -> None:
    """A photograph of a card is a scan."""
    furnish(live.shop, 60)
    code = slot_code.parse_card(TEXT)
    sign_in(page, live)
    page.goto("/tray")
    page.set_input_files(
        ".photo input", files=[{"name": "card.png", "mimeType": "image/png", "buffer": as_file(card())}]
    )
    sheet = page.locator("dialog.no")
    expect(sheet).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading, timeout=60_000)
    assert code == sheet.locator(".plate .no").inner_text().replace("\n", "")


def test_a_scan_waits_for_a_new_sign_in(live: Live, page: Page) -> None:
    """A page of an earlier sign-in loads itself anew and sends the scan then, once; a young page waits ten seconds."""
    room = furnish(live.shop, 3)
    sign_in(page, live)
    page.goto("/tray")
    anew(page)
    page.evaluate("() => { performance.now = () => 9000; }")  # the page has stood for nine seconds
    type_fast(page, slot_code.card_text(room.stays[0].code))
    expect(page.locator(".said")).to_contain_text("It loads itself again in a few seconds")
    expect(page.locator("dialog.no")).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading)
    with live.shop.looking() as unit:
        assert 1 == len(unit.find(Scan, code=room.stays[0].code, station=Station.TRAY))


def test_a_photo_does_not_wait_for_a_sign_in(live: Live, page: Page) -> None:
    """Who was signed out is told that the photo is not recorded, and the words stay."""
    furnish(live.shop, 3)
    sign_in(page, live)
    page.goto("/tray")
    page.route("**/api/changes", lambda route: route.abort())  # it leads to the sign-in by itself, sooner or later
    page.context.clear_cookies()
    page.set_input_files(
        ".photo input", files=[{"name": "card.png", "mimeType": "image/png", "buffer": as_file(card())}]
    )
    expect(page.locator(".said")).to_contain_text("The photo was not recorded: you are signed out.")
    assert page.url.endswith("/tray")


def test_scan_on_any_page_finds_the_thing(live: Live, page: Page) -> None:
    """Where no station is, a scan leads to what was scanned, and a half typed text stays in the search box."""
    furnish(live.shop, 4)
    sign_in(page, live)
    type_fast(page, slot_code.card_text("S001"))
    page.wait_for_url("**/slots/S001")
    page.locator("h1").click()
    page.keyboard.type("S0", delay=250)
    expect(page.locator(".find input")).to_have_value("S0")


def test_take_out(live: Live, page: Page) -> None:
    """A scan after “Take out” takes the thing out; a second beep packs nothing, and a later scan packs it again."""
    room = furnish(live.shop, 3)
    with live.shop.looking() as unit:
        line = unit.find(Line, state=LineState.PICKED)[0]
        stay = next(each for each in room.stays if each.id == line.stay)
    live.shop.act("owner", _by_hand)
    live.shop.act("owner", lambda unit: parcels.open_parcel(unit, parcels.OpenParcel(orders=[line.order], table="two")))
    sign_in(page, live)
    page.goto("/table?table=two")
    for word, seconds in (("Packed", 0), ("Taken out", 0), ("Done before", 0), ("Packed", 6)):
        if word == "Taken out":
            page.get_by_label(control_names.TAKE_OUT).check()
        live.shop.clock = lambda ahead=seconds: datetime.now(UTC) + timedelta(seconds=ahead)
        page.locator("h1").click()
        type_fast(page, slot_code.card_text(stay.code))
        expect(page.locator("dialog.yes .word")).to_have_text(word)
        expect(page.locator("dialog")).to_have_count(0, timeout=3000)
    expect(page.get_by_label(control_names.TAKE_OUT)).not_to_be_checked()
    page.keyboard.press("Enter")  # nothing is missing: an empty Enter closes the parcel
    expect(page.locator("h1")).to_have_text(control_names.WHICH_ORDER)
    with live.shop.looking() as unit:
        after = unit.get(Line, line.id)
    assert after is not None
    assert LineState.RELEASED is after.state


def _by_hand(unit: SqlUnit) -> None:
    unit.set_settings(replace(unit.settings, auto_close=False))


def test_empty_enter_and_typing(live: Live, page: Page) -> None:
    """An Enter without a text is no scan; a text typed by hand is one, and the box is empty after it."""
    furnish(live.shop, 4)
    sign_in(page, live)
    page.goto("/tray")
    page.keyboard.press("Enter")
    page.keyboard.type("d0016", delay=120)
    page.keyboard.press("Enter")
    expect(page.locator("dialog.no")).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading)
    assert "" == page.locator("#scan-text").input_value()
    with live.shop.looking() as unit:
        tray = unit.find(Scan, station=Station.TRAY)
        entries = ledger_views.newest(unit.connection, about=["D001"], limit=1)
    assert (1, "typed") == (len(tray), entries[0].event.via)


def test_the_scan_box_stays_beside_a_long_list(live: Live, page: Page) -> None:
    """On a wide screen the box stands under the face, however long the list beside it is, and goes along with it."""
    page.set_viewport_size({"width": 1440, "height": 900})
    live.shop.act("owner", _sixty_in_one_bin)
    sign_in(page, live)
    page.goto("/shelf?bin=A-1-1")
    box = page.locator("#scan-text")
    expect(box).to_be_focused()
    assert 0 == page.evaluate("scrollY")
    expect(box).to_be_in_viewport()
    page.locator("text=Another bin").scroll_into_view_if_needed()
    assert page.evaluate("scrollY") > 0
    expect(box).to_be_in_viewport()


def _sixty_in_one_bin(unit: SqlUnit) -> None:
    stock.add_section(unit, stock.AddSection(code="B", name="Bells", slots_per_bin=60, colour="pink"))
    stock.add_slots(unit, "B", stock.AddSlots(count=60))


def test_an_enter_before_the_scripts(live: Live, page: Page) -> None:
    """What is typed before the page's scripts have come stays in the box and on the page; the next Enter scans it."""
    furnish(live.shop, 4)
    sign_in(page, live)
    held: list[Route] = []
    page.route("**/js/scanning/station.js", lambda route: held.append(route))
    page.goto("/tray", wait_until="commit")
    expect(page.locator("#scan-text")).to_be_visible()
    page.locator("#scan-text").press_sequentially(slot_code.card_text("D001"))
    page.keyboard.press("Enter")
    expect(page.locator("#scan-text")).to_have_value(slot_code.card_text("D001"))
    held[0].continue_()
    page.wait_for_load_state()
    page.keyboard.press("Enter")
    expect(page.locator("dialog.no")).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading)


def test_keys_arrive_after_a_no_was_clicked_away(live: Live, page: Page) -> None:
    """Whoever presses the button with a mouse types on without a click into the box."""
    furnish(live.shop, 25)
    sign_in(page, live)
    page.goto("/table")
    type_fast(page, slot_code.card_text("D002"))
    button = page.locator("dialog.no button")
    expect(button).to_be_enabled()
    button.click()
    expect(page.locator("dialog")).to_have_count(0)
    box = page.locator("form.scan input[name=text]")
    expect(box).to_be_focused()
    page.keyboard.type("T0", delay=220)
    expect(box).to_have_value("T0")
