"""Shelves are filmed for a count: Chromium plays films of labelled bins as its camera."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from io import BytesIO
from pathlib import Path

import control_names
import filmed
import pytest
from calls import bars
from live_shop import PASSWORD, Live, sign_in
from page_text import figures
from PIL import Image
from playwright.sync_api import Browser, Page, Route, expect

from labels.slot_code import bin_text, card_text
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.counts.stocktake import Look
from scanflow.domain.words import FINDINGS
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes

FAKE = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")
SIZE = (1280, 960)
STAYS, GOES = filmed.RATE, filmed.RATE
"""Frames in which the camera stands before a bin, and goes on to the next."""

HIDDEN = """() => {
  Object.defineProperty(document, "hidden", { value: true });
  document.dispatchEvent(new Event("visibilitychange"));
}"""

BUZZES = "window.buzzes = []; navigator.vibrate = (pattern) => buzzes.push(pattern)"
"""What the hand feels is noted down: Chromium on a desk has nothing that shakes."""

Filming = Callable[..., AbstractContextManager[Page]]


@pytest.fixture
def shop(live: Live) -> Shop:
    """D001 … D008, four to a bin, with a thing in each."""

    def fill(unit: SqlUnit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=8))
        for number in range(8):
            stock.put_away(unit, stock.PutAway(title=f"Rear derailleur {number + 1}", section="D"))

    live.shop.act("owner", fill)
    return live.shop


@pytest.fixture
def filming(live: Live, shop: Shop, launch: Callable[..., Browser], tmp_path: Path) -> Filming:
    """A phone's page of a running count, whose camera goes along these bins, over and over."""

    @contextmanager
    def make(*bins: tuple[str, ...]) -> Iterator[Page]:
        path = tmp_path / "film.mjpeg"
        path.write_bytes(walk(*bins))
        own = launch(*FAKE, f"--use-file-for-fake-video-capture={path}")
        page = own.new_page(viewport={"width": 360, "height": 740}, base_url=live.address)
        errors: list[str] = []
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.add_init_script(BUZZES)
        sign_in(page, live)
        count = shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="section:D")))
        page.goto(f"/counts/{count.id}")
        page.get_by_role("button", name=control_names.FILM).click()
        yield page
        own.close()
        assert [] == errors

    return make


def walk(*bins: tuple[str, ...]) -> bytes:
    """A film of bins that stand side by side, a view each: its label and cards before goods."""
    wide, high = SIZE
    shelf = Image.effect_noise((len(bins) * wide // 16, high // 16), 40).resize((len(bins) * wide, high)).convert("RGB")
    for place, texts in enumerate(bins):
        shelf.paste(Image.open(BytesIO(bars(*texts))), (place * wide + 340, 40))
    goes = [place * wide + wide * step // GOES for place in range(len(bins) - 1) for step in range(GOES)]
    stays = [place * wide for place in range(len(bins)) for _ in range(STAYS)]
    out = BytesIO()
    for left in sorted(goes + stays):
        shelf.crop((left, 0, left + wide, high)).save(out, "JPEG", quality=90)
    return out.getvalue()


def bin_view(name: str, *codes: str) -> tuple[str, ...]:
    return (bin_text(name), *map(card_text, codes))


def test_a_card_of_another_bin_is_found(shop: Shop, filming: Filming) -> None:
    """Two bins pass by: each is looked at by its label, once for the hand; a card in the wrong one is a finding."""
    with filming(bin_view("A-1-1", "D001", "D002", "D005"), bin_view("A-1-2", "D006", "D007")) as page:
        panel = page.get_by_role("dialog", name="5 cards read in 2 of 2 bins")
        expect(panel).to_be_visible(timeout=60_000)
        expect(panel.locator("li").filter(has_text="D005")).to_contain_text("A-1-1unexpected")
        expect(panel.locator("li").filter(has_text="D006")).to_contain_text("A-1-2")
        expect(panel.get_by_role("img", name=control_names.FRAME_READ_LAST)).to_be_visible()
        assert 2 == page.evaluate("buzzes").count(60)
        panel.get_by_role("button", name=control_names.DONE).click()
        expect(page.get_by_role("button", name=control_names.FILM)).to_be_visible()
        page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
        expect(
            page.locator(".finding h2").filter(
                has_text=FINDINGS[FindingKind.ELSEWHERE].amiss.format(where="A-1-1", home="A-1-2")
            )
        ).to_have_count(1)


def test_frames_without_a_label_are_passed_over(shop: Shop, filming: Filming) -> None:
    """In a quiet word; paused or hidden, the camera is given back, and nothing was looked at."""
    with filming((card_text("D001"), card_text("D002"))) as page:
        hint = page.locator("dialog .hint")
        expect(hint).to_have_text("No bin's label in view.", timeout=60_000)
        page.get_by_role("button", name=control_names.FILM_PAUSE).click()
        expect(hint).to_have_text("Paused.")
        assert "ended" == page.evaluate("document.querySelector('video').srcObject.getTracks()[0].readyState")
        page.get_by_role("button", name=control_names.FILM_GO_ON).click()
        expect(hint).to_have_text("No bin's label in view.", timeout=10_000)
        page.evaluate(HIDDEN)
        expect(hint).to_have_text("Paused.")
    with shop.looking() as unit:
        assert () == unit.find(Look)


def test_shelves_that_go_by_too_fast(shop: Shop, filming: Filming) -> None:
    """While the service is slow few frames wait, one of them on its way; that others were left out is said and felt.

    With the panel closed the page tells of those that wait, until they are read.
    """
    with filming(*[bin_view(f"A-1-{place}", "D001") for place in (1, 2, 1, 2)]) as page:
        held: list[Route] = []
        page.route("**/looks", lambda route: held.append(route))
        expect(page.locator("dialog .hint")).to_contain_text("Too fast: a part was left out", timeout=60_000)
        assert 1 == len(held)
        assert 1 == page.evaluate("buzzes").count([140, 90, 140, 90, 140])
        page.get_by_role("button", name=control_names.DONE).click()
        waits = page.locator(".shoot").get_by_role("status")
        expect(waits).to_contain_text("frames wait to be read. Stay on this page.")
        page.unroute("**/looks")  # which lets go what is held
        expect(page.get_by_role("heading", name=figures(2, 2))).to_be_visible(timeout=60_000)
        expect(waits).to_be_hidden()


def test_without_https_the_panel_says_what_is_missing(live: Live, shop: Shop, launch: Callable[..., Browser]) -> None:
    """Browsers give no camera to a page that came in plain from the network: the way to HTTPS is told, and photos."""
    count = shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="section:D")))
    own = launch(*FAKE, "--host-resolver-rules=MAP room.test 127.0.0.1")
    sign_in(own.new_page(base_url=live.address), live)
    page = own.new_page(base_url=live.address.replace("127.0.0.1", "room.test"))
    page.goto(f"/login?next=/counts/{count.id}")
    page.locator("input[name=password]").fill(PASSWORD)
    page.locator("input[name=password]").press("Enter")
    page.wait_for_url("**/counts/*")  # and its scripts
    page.get_by_role("button", name=control_names.FILM).click()
    expect(page.locator("dialog .hint")).to_contain_text("needs HTTPS")
    expect(page.locator("dialog video")).to_be_hidden()
    with page.expect_file_chooser():
        page.get_by_role("button", name=control_names.PHOTOGRAPH_BIN_AFTER_BIN).click()
    expect(page.locator("dialog")).to_be_hidden()
    own.close()


def test_a_device_without_a_camera(live: Live, shop: Shop, page: Page) -> None:
    """Nothing dark stands where no picture will be; one that was only kept from the page can be tried again."""
    count = shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="section:D")))
    sign_in(page, live)
    page.goto(f"/counts/{count.id}")
    panel = page.locator("dialog.film")
    for error, on in (("NotFoundError", "Photograph bin after bin"), ("NotAllowedError", "Try again")):
        page.evaluate(
            "(name) => navigator.mediaDevices.getUserMedia = async () => { throw new DOMException('', name); }", error
        )
        page.get_by_role("button", name=control_names.FILM).click()
        expect(panel.get_by_role("button", name=on)).to_be_visible()
        expect(panel.get_by_role("button")).to_have_text([on, "Done"])
        expect(panel.locator("video")).to_be_hidden()
        panel.get_by_role("button", name=control_names.DONE).click()


def test_a_phone_held_across(shop: Shop, filming: Filming) -> None:
    """The picture stands beside what came of it, both as high as the screen."""
    with filming((card_text("D001"),)) as page:
        page.set_viewport_size({"width": 740, "height": 360})
        picture, came, hold = (page.locator(f"dialog {part}").bounding_box() for part in ("video", ".came", ".hold"))
        assert picture and came and hold
        assert (360, 740) == (picture["height"], picture["width"] + came["width"])
        assert 180 < came["height"]
