"""A thing's picture from the camera's file to the verdict; a round on paper entered by its bars."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

import control_names
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from paperwork import jpeg
from playwright.sync_api import Browser, Page, expect

from labels import slot_code
from scanflow.domain.life import Hold, LineState, ParcelState
from scanflow.domain.things import Line, Order, Parcel
from scanflow.storage.views import picking as round_views
from scanflow.vision import photographs
from scanflow.workflow.stock import photos

LOADED = """(image) => image.complete ? image.naturalWidth > 0 : new Promise((done) => {
  image.onload = () => done(true);
  image.onerror = () => done(false);
})"""


def test_a_picture_is_taken_and_shown(live: Live, page: Page) -> None:
    """Put away with a picture, by keyboard and file; it is there at once, and whole when it is pressed."""
    furnish(live.shop, 4)
    sign_in(page, live)
    page.goto("/put-away")
    type_fast(page, slot_code.card_text("D009"))
    expect(page.locator("#title")).to_be_focused()
    page.set_input_files("#photo", [{"name": "phone.jpg", "mimeType": "image/jpeg", "buffer": jpeg()}])
    page.keyboard.type("Rear derailleur, rare")
    page.keyboard.press("Enter")
    picture = page.get_by_role("img", name=control_names.PICTURE_OF.format("Rear derailleur, rare"))
    picture.wait_for()
    assert picture.evaluate(LOADED)
    picture.click()
    page.wait_for_url("**/photo?hash=*")


def test_a_picture_is_taken_with_a_webcam(live: Live, launch: Callable[..., Browser]) -> None:
    """At a computer the page's own camera takes it, by keyboard alone; it is shown before it is sent."""
    room = furnish(live.shop, 4)
    own = launch("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
    page = own.new_page(base_url=live.address)
    sign_in(page, live)
    page.goto(f"/put-away/{room.stays[0].id}")
    page.get_by_text(control_names.TAKE_ITS_PICTURE).press("Enter")
    page.get_by_role("button", name=control_names.TAKE_WITH_WEBCAM).press("Enter")
    page.get_by_role("button", name=control_names.TAKE_THE_PICTURE).press("Enter")
    page.get_by_role("img", name=control_names.PICTURE_NOW).wait_for()
    assert 0 == page.locator("video").count()
    page.get_by_role("button", name=control_names.KEEP_THIS_PICTURE).press("Enter")
    kept = page.get_by_role("img", name=control_names.PICTURE_OF.format("Rear derailleur 1"))
    kept.wait_for()
    assert kept.evaluate(LOADED)
    own.close()


def test_the_verdict_shows_the_thing_and_one_press_holds_it(live: Live, page: Page) -> None:
    """At the bin its picture stands before the scan, in the verdict, and beside the press that says: not this."""
    room = furnish(live.shop, 25)
    assert room.round is not None
    with live.shop.looking() as unit:
        stops = round_views.round_stops(unit.connection, room.round.id)
    stop = next(each for each in stops if each.state == "waiting" and not each.holds)
    picture = photographs.photo(live.shop.readers, jpeg())
    live.shop.act("owner", lambda unit: photos.keep(unit, stop.stay, picture))
    sign_in(page, live)
    page.goto(f"/rounds/{room.round.id}")
    assert page.locator(".face .shot img").evaluate(LOADED)
    type_fast(page, slot_code.card_text(stop.code))
    shown = page.locator("dialog.yes img")
    shown.wait_for()
    assert f"Picture of {stop.title}" == shown.get_attribute("alt")
    page.wait_for_selector("dialog", state="detached")
    assert page.locator(".last img").evaluate(LOADED)
    page.get_by_role("button", name=control_names.NOT_THIS_THING.format(stop.code)).click()
    page.wait_for_url(f"**/rounds/{room.round.id}")
    with live.shop.looking() as unit:
        line = unit.get(Line, stop.id)
    assert line is not None and (Hold.SUSPECT, LineState.PICKED) == (line.hold, line.state)


def test_a_round_is_entered_by_the_bars_of_its_sheet(live: Live, page: Page) -> None:
    """From any page: scan a stop's bars, type the digit, Enter; then the next; what is wrong is told and stays."""
    room = furnish(live.shop, 25)
    assert room.round is not None
    with live.shop.looking() as unit:
        stops = round_views.round_stops(unit.connection, room.round.id)
    first, second, *_ = (each for each in stops if each.state == "waiting" and not each.holds)
    sign_in(page, live)
    for stop, wrong, told in ((first, 0, "Picked"), (second, 1, "Not taken")):
        type_fast(page, slot_code.stop_text(stop.stop))
        field = page.get_by_label(control_names.ITS_LAST_DIGIT.format(stop.code))
        expect(field).to_be_focused()
        page.wait_for_timeout(200)
        page.keyboard.type(str((int(slot_code.calc_check_digit(stop.code)) + wrong) % 10))
        page.keyboard.press("Enter")
        expect(page.locator(".told .title")).to_have_text(told)
    with live.shop.looking() as unit:
        states = [unit.get(Line, each.id).state for each in (first, second)]  # type: ignore[union-attr]
    assert [LineState.PICKED, LineState.WAITING] == states


def test_the_right_box_gets_the_right_label(live: Live, page: Page) -> None:
    """By scanner alone: slip, label; the label again tells its order, and on another box it is refused."""
    furnish(live.shop, 25)
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, bind_labels=True)))
    with live.shop.looking() as unit:
        parcel = unit.find(Parcel, state=ParcelState.CLOSED)[0]
        order = unit.get(Order, parcel.orders[0])
    assert order is not None
    sign_in(page, live)
    page.goto("/hand-over")
    type_fast(page, slot_code.slip_text(order.slip))
    heading = page.get_by_role("heading", level=1)
    expect(heading).to_have_text("Scan its shipping label")
    page.wait_for_timeout(200)
    type_fast(page, "RR123456785DE")
    expect(heading).to_have_text("Its label is bound")
    page.wait_for_timeout(200)
    type_fast(page, "RR123456785DE")
    expect(heading).to_have_text("This label is on the parcel of")
    expect(page.locator(".face .plate .no")).to_have_text(order.number)


def test_slips_are_printed_from_the_pages(live: Live, page: Page) -> None:
    """Order, list of orders and round each have a button; the paper chosen last is offered first."""
    room = furnish(live.shop, 25)
    assert room.round is not None
    sign_in(page, live)
    places = {
        f"/orders/{room.orders[0].id}": "Print the slip",
        "/orders?state=waiting": "Print the slips of orders waiting",
        f"/rounds/{room.round.id}": "Print all slips",
    }
    for address, label in places.items():
        page.goto(address)
        page.evaluate("document.querySelectorAll('main details').forEach((each) => { each.open = true })")
        form = page.locator("form.printing", has=page.get_by_role("button", name=label))
        form.locator("select").select_option("4x6")
        action, query = form.evaluate("(form) => [form.action, new URLSearchParams(new FormData(form)).toString()]")
        answer = page.request.get(f"{action}?{query}")
        assert (200, "application/pdf") == (answer.status, answer.headers["content-type"])
        page.reload()
        assert re.search(
            "4 × 6", page.locator("form.printing select").first.evaluate("(s) => s.selectedOptions[0].text")
        )
