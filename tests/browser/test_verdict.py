"""A verdict is seen, heard, felt and told; what got no answer looks like neither yes nor no."""

from __future__ import annotations

import re
from typing import Any

import control_names
import small_disk
from furnished import furnish
from live_shop import Live, go_on, sign_in, type_fast
from playwright.sync_api import Page, Route, expect

from labels import slot_code
from scanflow.domain.life import CardState
from scanflow.domain.things import Scan, Slot, Station
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS

SENSES = """
window.felt = { tones: [], buzzes: [], said: [], answered: 0, painted: 0 };
const start = OscillatorNode.prototype.start;
OscillatorNode.prototype.start = function (at) {
  felt.tones.push([this.type, this.frequency.value]);
  return start.call(this, at);
};
navigator.vibrate = (pattern) => felt.buzzes.push(([pattern].flat().length + 1) / 2);
window.speechSynthesis.speak = (words) => felt.said.push(words.text);
const ask = window.fetch;
window.fetch = async (path, ...rest) => {
  const reply = await ask(path, ...rest);
  if (path === "/api/scans") felt.answered = performance.now();
  return reply;
};
new MutationObserver(() => {
  if (document.querySelector("dialog") && !felt.painted)
    requestAnimationFrame(() => setTimeout(() => (felt.painted = performance.now())));
}).observe(document, { childList: true, subtree: true });
"""


def open_tray(live: Live, page: Page) -> str:
    """The tray's page, its senses written down; the code of a card that is due back."""
    furnish(live.shop, 25)
    with live.shop.looking() as unit:
        due = unit.find(Slot, card=CardState.DUE)[0].code
    page.add_init_script(SENSES)
    sign_in(page, live)
    page.goto("/tray")
    return due


def felt(page: Page) -> dict[str, Any]:
    found: dict[str, Any] = page.evaluate("felt")
    return found


def test_yes_and_no_differ_to_every_sense(live: Live, page: Page) -> None:
    """Yes rises and buzzes once, no knocks low and buzzes three times; a live region tells both, and no stays."""
    due = open_tray(live, page)
    type_fast(page, slot_code.card_text(due))
    told = re.compile(f"{control_names.IN_THE_TRAY}.*{due}")
    expect(page.locator("dialog.yes [aria-live=assertive]")).to_contain_text(told)
    yes = felt(page)
    expect(page.locator("dialog")).to_have_count(0, timeout=3000)
    page.evaluate("() => { felt.tones = []; felt.buzzes = []; }")
    type_fast(page, slot_code.card_text("D002"))
    expect(page.locator("dialog.no [aria-live=assertive]")).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading)
    no = felt(page)
    assert ([1], [3]) == (yes["buzzes"], no["buzzes"])
    (first, second), (low, lower) = yes["tones"], no["tones"]
    assert first[0] != low[0]
    assert second[1] > first[1] > 2 * max(low[1], lower[1])
    assert 0 < yes["painted"] - yes["answered"]
    page.wait_for_timeout(1500)
    expect(page.locator("dialog.no")).to_be_visible()
    go_on(page)
    expect(page.locator("dialog")).to_have_count(0)


def test_second_enter_does_not_answer_the_no(live: Live, page: Page) -> None:
    """A scanner that ends each text with two Enters, or is used again, leaves a no on the page."""
    open_tray(live, page)
    for _ in range(2):
        type_fast(page, slot_code.card_text("D002"))
        page.keyboard.press("Enter")
        expect(page.locator("dialog.no")).to_be_visible()
    with live.shop.looking() as unit:
        assert 1 == len(unit.find(Scan, station=Station.TRAY))


def test_voice(live: Live, page: Page) -> None:
    """Nothing is said until this device is told to; then each verdict and what comes next, also after a reload."""
    due = open_tray(live, page)
    type_fast(page, slot_code.card_text("D002"))
    page.get_by_role("button", name=control_names.GO_ON).click()
    expect(page.locator("dialog")).to_have_count(0)
    assert [] == felt(page)["said"]
    page.get_by_role("button", name=control_names.VOICE_IS_OFF).press("Enter")
    expect(page.get_by_role("button", name=control_names.VOICE_IS_ON)).to_be_visible()
    page.reload()
    type_fast(page, slot_code.card_text(due))
    expect(page.locator("dialog.yes")).to_have_count(1)
    for _ in range(100):
        if len(felt(page)["said"]) > 1:
            break
        page.wait_for_timeout(50)
    assert ["In the tray.", "0 cards due back."] == felt(page)["said"]


def test_silent_service_is_no_verdict(live: Live, page: Page) -> None:
    """While no answer comes the frame says so; there is no sheet, no sound, and the scan is asked once."""
    due = open_tray(live, page)
    held: list[Route] = []
    page.route("**/api/scans", lambda route: held.append(route))
    type_fast(page, slot_code.card_text(due))
    frame = page.locator(".frame")
    expect(frame).to_contain_text("Waiting for an answer")
    expect(page.locator("dialog")).to_have_count(0)
    assert ([], []) == (felt(page)["tones"], felt(page)["buzzes"])
    held[0].continue_()
    expect(page.locator("dialog.yes")).to_be_visible()
    expect(frame).to_have_count(0)
    assert 1 == len(held)


def test_lost_answer_is_asked_for_with_the_same_key(live: Live, page: Page) -> None:
    """A scan whose answer was lost on the way is sent again with its key once the network is back, and counts once."""
    due = open_tray(live, page)
    keys: list[str] = []

    def lose(route: Route) -> None:
        keys.append(route.request.post_data_json["key"])
        if len(keys) > 1:
            route.continue_()
            return
        route.fetch()
        route.abort()

    page.route("**/api/scans", lose)
    type_fast(page, slot_code.card_text(due))
    expect(page.locator(".frame")).to_contain_text("Waiting for the network")
    page.evaluate("dispatchEvent(new Event('online'))")
    expect(page.locator("dialog.yes")).to_be_visible(timeout=15000)
    assert (2, 1) == (len(keys), len(set(keys)))
    with live.shop.looking() as unit:
        assert 1 == len(unit.find(Scan, station=Station.TRAY))


def test_trouble_of_the_service_is_no_refusal(live: Live, page: Page) -> None:
    """An error of the service keeps the scan and says that it is not recorded yet, in the frame and not on a sheet."""
    due = open_tray(live, page)
    page.route("**/api/scans", lambda route: route.fulfill(status=503, body="{}"))
    type_fast(page, slot_code.card_text(due))
    expect(page.locator(".frame")).to_contain_text("The service is in trouble")
    expect(page.locator("dialog")).to_have_count(0)
    page.unroute("**/api/scans")
    expect(page.locator("dialog.yes")).to_be_visible(timeout=15000)


def test_a_full_disk_is_told_at_the_station(live: Live, page: Page) -> None:
    """The frame says why nothing is recorded; the scan is kept, and is accepted once there is room."""
    due = open_tray(live, page)
    with small_disk.full(None):
        type_fast(page, slot_code.card_text(due))
        expect(page.locator(".frame")).to_contain_text("Not recorded yet: ")
        expect(page.locator(".frame")).to_contain_text("The disk of the shop's data is full")
        expect(page.locator("dialog")).to_have_count(0)
    expect(page.locator("dialog.yes")).to_be_visible(timeout=15000)
    with live.shop.looking() as unit:
        assert 1 == len(unit.find(Scan, station=Station.TRAY))
