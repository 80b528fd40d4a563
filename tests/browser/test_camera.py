"""A live camera scans what is held before it: Chromium plays films of printed cards as its camera."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path

import control_names
import filmed
import pytest
from furnished import furnish
from live_shop import PASSWORD, Live, go_on, sign_in
from playwright.sync_api import Browser, Page, expect

from labels import slot_code
from scanflow.domain.life import CardState
from scanflow.domain.things import Scan, Slot, Station
from scanflow.domain.verdict import Reason
from scanflow.domain.words import REFUSALS
from scanflow.storage.views import ledger as ledger_views
from scanflow.workflow.counts import stocktakes

FAKE = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
ABLE = """
MediaStreamTrack.prototype.getCapabilities = () => ({ torch: true, zoom: { min: 1, max: 5, step: 0.5 } });
window.asked = [];
MediaStreamTrack.prototype.applyConstraints = async ({ advanced }) => asked.push(advanced[0]);
"""
"""A camera that has a light and a zoom, as phones have."""

KNOWS = """
window.BarcodeDetector = class {
  static getSupportedFormats = async () => ["code_128", "qr_code"];
  detect = async (canvas) => (canvas.width > 0 ? [{ rawValue: "%s" }] : []);
};
"""
"""A browser that decodes by itself, as those of some phones do (Shape Detection API); this one does not."""

SENT = """performance.getEntriesByType("resource")
  .filter(({ name }) => name.endsWith("/decode")).map(({ startTime }) => startTime)"""
"""When each frame went out, in ms by the page's own clock."""

LATE = 500
"""ms that a busy machine may take to draw the first frame, from when its turn has begun."""

Filmed = Callable[..., AbstractContextManager[Page]]


@pytest.fixture
def before(live: Live, launch: Callable[..., Browser], tmp_path: Path) -> Filmed:
    """Makes a phone's page whose camera sees these cards, a frame each."""

    @contextmanager
    def make(*cards: filmed.Frame | None, seen: filmed.Seen = filmed.light) -> Iterator[Page]:
        path = filmed.film(tmp_path / "film.mjpeg", seen, cards)
        own = launch(*FAKE, f"--use-file-for-fake-video-capture={path}")
        page = own.new_page(viewport={"width": 390, "height": 780}, base_url=live.address)
        errors: list[str] = []
        page.on("pageerror", lambda error: errors.append(str(error)))
        yield page
        own.close()
        assert [] == errors

    return make


def due(live: Live) -> str:
    """The code of a card that is due back in the tray."""
    with live.shop.looking() as unit:
        return unit.find(Slot, card=CardState.DUE)[0].code


def scans(live: Live) -> int:
    with live.shop.looking() as unit:
        return len(unit.find(Scan, station=Station.TRAY))


def open_camera(live: Live, page: Page, address: str = "/tray") -> None:
    sign_in(page, live)
    page.goto(address)
    page.get_by_role("button", name=control_names.CAMERA).press("Enter")


@pytest.mark.parametrize("seen", [filmed.light, filmed.dark, filmed.motion], ids=["light", "dark", "motion"])
def test_a_card_that_is_held_up_is_scanned_once(live: Live, before: Filmed, seen: filmed.Seen) -> None:
    """In bright light, in the dark and in a shaking hand; for as long as it stays in the picture it is one scan."""
    furnish(live.shop, 25)
    code = due(live)
    with before(*[filmed.face(code)] * 2 * filmed.RATE, seen=seen) as page:
        open_camera(live, page)
        expect(page.locator("dialog.yes")).to_contain_text(control_names.IN_THE_TRAY, timeout=20_000)
        expect(page.locator("dialog")).to_have_count(0, timeout=3000)
        page.wait_for_timeout(2500)
        expect(page.locator("dialog")).to_have_count(0)
    assert 1 == scans(live)
    with live.shop.looking() as unit:
        entry = ledger_views.newest(unit.connection, about=[code], limit=1)[0]
    assert ("camera", [slot_code.card_text(code)]) == (entry.event.via, list(entry.event.text))


def test_a_card_that_comes_again_is_scanned_again(live: Live, before: Filmed) -> None:
    """Once it has left the picture. A no stays, and nothing is scanned while it stands."""
    furnish(live.shop, 25)
    shown, away = [filmed.face("D002")] * 2 * filmed.RATE, [None] * 3 * filmed.RATE
    with before(*shown, *away) as page:
        open_camera(live, page)
        expect(page.locator("dialog.no")).to_contain_text(REFUSALS[Reason.NOT_RELEASED].heading, timeout=20_000)
        page.wait_for_timeout(6000)
        assert 1 == scans(live)
        go_on(page)
        expect(page.locator("dialog.no")).to_be_visible(timeout=20_000)
    assert 2 == scans(live)


def test_light_and_zoom_are_offered_where_the_camera_has_them(live: Live, before: Filmed) -> None:
    """And set by the keyboard; a camera without them shows neither."""
    furnish(live.shop, 25)
    with before(None) as page:
        open_camera(live, page)
        expect(page.locator(".camera video")).to_be_visible()
        expect(page.locator(".camera .hint")).to_have_text("Hold a card into the band.", timeout=10_000)
        expect(page.get_by_role("slider", name=control_names.ZOOM)).to_have_count(0)
        page.add_init_script(ABLE)
        page.reload()  # a page that was left with its camera open begins with it
        page.get_by_role("button", name=control_names.LIGHT).press("Enter")
        expect(page.get_by_role("button", name=control_names.LIGHT, pressed=True)).to_be_visible()
        page.get_by_role("slider", name=control_names.ZOOM).press("ArrowRight")
        assert [{"torch": True}, {"zoom": 1.5}] == page.evaluate("asked")
        page.get_by_role("button", name=control_names.CAMERA).press("Enter")
        expect(page.locator(".camera")).to_have_count(0)


def test_a_browser_that_decodes_asks_nobody(live: Live, before: Filmed) -> None:
    """Its own decoder is used where it knows Code 128: no frame leaves the phone."""
    furnish(live.shop, 25)
    with before(None) as page:
        page.add_init_script(KNOWS % slot_code.card_text(due(live)))
        asked: list[str] = []
        page.on("request", lambda call: asked.append(call.url))
        open_camera(live, page)
        expect(page.locator("dialog.yes")).to_be_visible(timeout=10_000)
        assert not [url for url in asked if url.endswith("/decode")]


def test_few_frames_go_out_and_one_at_a_time(live: Live, before: Filmed) -> None:
    """At most eight a second, grey, the middle of the picture alone; none once the camera is closed."""
    furnish(live.shop, 25)
    with before(None) as page:
        open_camera(live, page)
        page.wait_for_function(f"() => {SENT}.length > 24", timeout=60_000)
        page.get_by_role("button", name=control_names.CAMERA).press("Enter")
        page.wait_for_timeout(500)
        begun = page.evaluate(SENT)
        page.wait_for_timeout(1000)
        assert len(page.evaluate(SENT)) <= len(begun) + 1  # one may have been on its way
        assert len(begun) - 1 <= 8 * (begun[-1] - begun[0] + LATE) / 1000


def test_put_away(live: Live, before: Filmed) -> None:
    """The card in hand goes into its field, and the title is asked for."""
    furnish(live.shop, 4)
    with before(filmed.face("D004")) as page:
        open_camera(live, page, "/put-away")
        expect(page.locator("#text")).to_have_value(slot_code.card_text("D004"), timeout=20_000)
        expect(page.locator("#title")).to_be_focused()


def test_a_count_shows_the_whole_band(live: Live, before: Filmed) -> None:
    """Where cards of a bin are held up the band is as wide as the picture and two thirds as high, as everywhere."""
    furnish(live.shop, 4)
    count = live.shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="room")))
    with before(None) as page:
        sign_in(page, live)
        page.goto(f"/counts/{count.id}?hand=1")
        page.get_by_role("button", name=control_names.CAMERA).press("Enter")
        page.locator(".camera .band").wait_for()
        band, picture = (page.locator(f".camera {part}").bounding_box() for part in (".band", ".picture"))
        assert band and picture
        assert (picture["width"], 0.66 * picture["height"]) == pytest.approx((band["width"], band["height"]), abs=6)


def test_without_https_the_page_says_what_is_missing(live: Live, launch: Callable[..., Browser]) -> None:
    """Browsers give no camera to a page that came in plain from the network: the way to HTTPS is told."""
    furnish(live.shop, 4)
    own = launch(*FAKE, "--host-resolver-rules=MAP room.test 127.0.0.1")
    page = own.new_page(base_url=live.address.replace("127.0.0.1", "room.test"))
    sign_in(own.new_page(base_url=live.address), live)
    page.goto("/login")
    page.locator("input[name=password]").fill(PASSWORD)  # a page behind another one has no focus to type into
    page.locator("input[name=password]").press("Enter")
    page.wait_for_url("**/")
    page.goto("/tray")
    page.get_by_role("button", name=control_names.CAMERA).press("Enter")
    expect(page.locator(".camera")).to_contain_text("needs HTTPS")
    page.get_by_role("link", name=control_names.HOW_TO_GET_HTTPS).press("Enter")
    expect(page.locator("h1")).to_have_text("This phone")
    own.close()
