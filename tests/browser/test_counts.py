"""A shelf is counted in a browser: by photos, by a scanner, put right, closed."""

from __future__ import annotations

import re
from pathlib import Path

import control_names
import pytest
from calls import bars
from furnished import furnish
from live_shop import Live, sign_in, type_fast
from page_text import figures
from PIL import Image
from playwright.sync_api import Browser, Locator, Page, expect

from labels.slot_code import bin_text, card_text
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.counts.stocktake import Look
from scanflow.domain.life import StayState
from scanflow.domain.things import Stay
from scanflow.domain.words import FINDINGS
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import lists
from scanflow.workflow import stock
from scanflow.workflow.counts import stocktakes

NONE_KEPT = """async () => {
  const { photos } = await import("/static/js/phone/unsent.js");
  return (await photos.all()).length === 0;
}"""


@pytest.fixture
def shop(live: Live) -> Shop:
    """D001 … D012, four to a bin, with things in all but the last two."""

    def fill(unit: SqlUnit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=4, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=12))
        for number in range(10):
            stock.put_away(unit, stock.PutAway(title=f"Rear derailleur {number + 1}", section="D"))

    live.shop.act("owner", fill)
    return live.shop


def start(page: Page, live: Live, area: str) -> None:
    sign_in(page, live)
    page.goto(f"/counts?area={area}")
    page.get_by_role("button", name=control_names.START_COUNTING).click()
    page.wait_for_url("**/counts/*")


def taken(path: Path, *texts: str) -> Path:
    path.write_bytes(bars(*texts))
    return path


def amiss(kind: FindingKind, **places: str) -> str:
    """What stands above a finding of this kind."""
    return FINDINGS[kind].amiss.format(**places)


def way(how: str) -> str:
    """Selects the field that says how a finding is resolved."""
    return f"input[name=how][value={how}]"


def put_right(finding: Locator) -> Locator:
    """The button that says that it is as it should be."""
    return finding.locator(f"form:has({way('put_right')}) button")


def cards(*codes: str) -> list[str]:
    return [card_text(code) for code in codes]


def test_a_shelf_is_counted_put_right_and_closed(live: Live, shop: Shop, page: Page, tmp_path: Path) -> None:
    """Photos and scans say what stands where; three findings are resolved, one is undone; the report counts."""
    start(page, live, "shelf:A-1")
    first = taken(tmp_path / "1.png", bin_text("A-1-1"), *cards("D001", "D003", "D004", "D005"))
    nameless = taken(tmp_path / "2.png", *cards("D006", "D007", "D008"))
    page.set_input_files("form.shoot input", [first, nameless])
    sending = page.locator("[data-sending] li")
    expect(sending.filter(has_text="Photo 1").locator(".meta")).to_contain_text(figures("A-1-1", 4, 1), timeout=60_000)
    expect(page.locator("[data-sending] h2")).to_have_text(figures(1))
    expect(sending.first).to_contain_text("Photo 2")
    page.get_by_role("button", name=control_names.PHOTO_LARGER.format("2")).click()
    assert page.locator(".sent img").evaluate("each => each.offsetWidth > 2 * each.parentElement.offsetWidth")
    sending.filter(has_text="Photo 2").get_by_role("combobox").select_option("A-1-2")
    expect(sending.filter(has_text="Photo 2").locator(".meta")).to_contain_text(figures("A-1-2", 3), timeout=60_000)
    page.get_by_role("link", name="A-1-1").click()
    expect(page.get_by_role("img", name=control_names.OUTLINED.format("A-1-1", "4"))).to_be_visible()
    assert "D002" not in page.content() and "Rear derailleur" not in page.content()  # the count is blind

    for text in (bin_text("A-1-3"), *cards("D009", "D010", "D012")):
        type_fast(page, text)
    page.get_by_role("button", name=control_names.THAT_IS_ALL.format("A-1-3")).click()
    expect(sending.filter(has_text="A-1-3").locator(".meta")).to_contain_text(figures("A-1-3", 3, 1))
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
    page.get_by_role("link", name=control_names.LOOK_AGAIN.format("A-1-1")).click()
    for text in cards("D001", "D003", "D004", "D005"):
        type_fast(page, text)
    page.get_by_role("button", name=control_names.THAT_IS_ALL.format("A-1-1")).click()
    expect(sending.first.locator(".meta")).to_contain_text(figures("A-1-1", 4, 1))
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()

    def finding(code: str) -> Locator:
        return page.locator(".finding").filter(has=page.locator(".plate", has_text=re.compile(f"^{code}$")))

    expect(page.locator(".finding h2")).to_have_text(
        [
            amiss(FindingKind.MISSING, home="A-1-1"),
            amiss(FindingKind.ELSEWHERE, where="A-1-1", home="A-1-2"),
            amiss(FindingKind.SLOT_FREE, where="A-1-3"),
        ]
    )
    put_right(finding("D005")).click()
    expect(finding("D005")).to_have_count(0)
    type_fast(page, card_text("D012"))  # as it is laid into the tray
    expect(finding("D012")).to_have_count(0)
    finding("D002").get_by_text(control_names.SOMETHING_ELSE).click()
    gone = finding("D002").locator("details details").filter(has=page.locator(way("withdraw")))
    gone.locator("summary").click()
    gone.locator("[name=reason]").fill("Nowhere to be found")
    gone.get_by_role("button").click()
    expect(page.locator(".finding")).to_have_count(0)
    assert StayState.WITHDRAWN is stay_of(shop, "D002")

    settled = page.locator("main .line").filter(has_text="Nowhere to be found")
    settled.get_by_role("button", name=control_names.UNDO).click()
    expect(page.locator(".finding h2")).to_have_text([amiss(FindingKind.MISSING, home="A-1-1")])
    assert StayState.STORED is stay_of(shop, "D002")

    page.get_by_role("button", name=control_names.CLOSE_THE_COUNT).click()
    page.wait_for_url("**/report")
    expect(page.locator("main .plate").first).to_contain_text("8/10")
    expect(page.locator("main .say")).to_have_text(figures(8, 10))


def stay_of(shop: Shop, code: str) -> StayState:
    with shop.looking() as unit:
        return unit.find(Stay, code=code)[-1].state


def test_bins_are_gone_through_with_a_scanner(live: Live, shop: Shop, page: Page) -> None:
    """A label begins a bin, the next one ends it; a list outlives page and network; what is no good is dropped."""
    start(page, live, "section:D")
    for text in (bin_text("A-1-1"), *cards("D001", "D002")):
        type_fast(page, text)
    hand = page.locator("[data-hand] li")
    expect(hand).to_have_count(2)
    page.reload()
    expect(hand).to_have_count(2)
    type_fast(page, "D0039")  # a wrong check digit
    expect(page.locator("main .said")).to_contain_text("D0039")
    expect(hand).to_have_count(2)
    type_fast(page, "Z0014")  # a card of another room, which the service has to judge
    expect(page.locator("main .said")).to_have_count(0)
    expect(hand).to_have_count(3)
    page.route("**/looks", lambda route: route.abort())
    type_fast(page, bin_text("A-1-2"))
    expect(page.locator("[data-sending] li")).to_contain_text("sent again")
    page.unroute("**/looks")
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-1", 3, 1), timeout=20_000)
    type_fast(page, card_text("D005"))  # the next bin's list is another
    with shop.looking() as unit:
        assert [("A-1-1", {"D001", "D002", "Z0014"})] == [(each.place, set(each.texts)) for each in unit.find(Look)]

    page.get_by_role("button", name=control_names.OUT_OF_THE_LIST.format("D0057")).click()
    page.get_by_role("link", name="A-1-1").click()
    page.get_by_text(control_names.THIS_IS_NO_GOOD).click()
    page.get_by_role("button", name=control_names.DROP_THIS_LIST).click()
    expect(page.locator(".say").first).to_contain_text("Turn all cards to you")
    with shop.looking() as unit:
        assert () == unit.find(Look)


def enter(field: Locator, text: str) -> None:
    """As by an on-screen keyboard, whose keys have no times."""
    field.fill(text)
    field.evaluate("field => field.form.requestSubmit()")


def test_what_is_typed_and_refused(live: Live, shop: Shop, page: Page) -> None:
    """It stands in the field again, the words beside it, in view; a scan takes its place. A bin to look into by hand
    again begins there.
    """
    start(page, live, "section:D")
    count, field, said = page.url, page.locator("#typed"), page.locator("#by-hand .said")
    page.get_by_text(control_names.GO_THROUGH_BY_HAND).click()
    field.press_sequentially("d0016", delay=100)  # slower than any scanner
    field.press("Enter")
    expect(said).to_contain_text("First the bin")
    expect(said).to_be_in_viewport(ratio=1)
    expect(field).to_have_value("d0016")
    type_fast(page, bin_text("A-1-2"))
    expect(page.locator(".face .plate")).to_contain_text("A-1-2")
    expect(field).to_have_value("")
    expect(said).to_have_count(0)
    for text in (bin_text("A-1-2")[:-1] + "#", bin_text("A-1-2")[:-1] + "A", "D00I7"):
        enter(field, text)
        expect(said).to_contain_text(text)
    enter(field, "DOOI6")  # letters for figures, as a person may write card D001
    expect(page.locator("[data-hand] .plate")).to_have_text("D001")
    expect(page.get_by_label(control_names.CARD_OR_NEXT_BIN.format("A-1-2"))).to_have_value("")
    page.get_by_role("button", name=control_names.THROW_LIST_AWAY).click()
    page.goto(f"{count}?place=A-1-3&hand=1")
    expect(field).to_be_focused()
    expect(field).to_be_in_viewport(ratio=1)


def test_a_scan_goes_to_the_bin_scanned_last(live: Live, shop: Shop, page: Page) -> None:
    """Though the page of that bin does not come, for there is no network; a list that was left goes as it was."""
    start(page, live, "section:D")
    type_fast(page, bin_text("A-1-1"))
    expect(page.locator(".face .plate")).to_contain_text("A-1-1")
    page.route("**/counts/*?place=*", lambda route: route.abort())
    for text in (bin_text("A-1-3"), *cards("D009")):
        type_fast(page, text)
    expect(page.get_by_role("button", name=control_names.THAT_IS_ALL.format("A-1-3"))).to_be_visible()
    expect(page.locator(".face .plate")).to_contain_text("A-1-3")
    page.unroute("**/counts/*?place=*")
    page.goto(page.url.replace("A-1-3", "A-1-2"))
    type_fast(page, card_text("D005"))
    expect(page.get_by_role("button", name=control_names.THAT_IS_ALL.format("A-1-2"))).to_be_visible()
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-3", 1))
    with shop.looking() as unit:
        assert [("A-1-3", {"D009"})] == [(each.place, set(each.texts)) for each in unit.find(Look)]


def test_one_bin_leads_to_the_next(live: Live, shop: Shop, page: Page, tmp_path: Path) -> None:
    """The next photo is of the next bin as soon as one is taken; each goes out for the bin that the button named."""
    start(page, live, "section:D")
    page.goto(page.url + "?place=A-1-1")
    shoot, photos = page.locator("[data-words]"), [taken(tmp_path / f"{n}.png", *cards("D001")) for n in range(3)]
    page.route("**/looks", lambda route: route.abort())
    for name, photo in zip(("A-1-1", "A-1-2", "A-1-3"), photos, strict=True):
        expect(shoot).to_have_text(f"Photograph {name}")
        page.set_input_files("form.shoot input", photo)
        expect(page.locator(".face .plate")).to_contain_text(name)
    page.unroute("**/looks")
    expect(page.locator(".places [data-looked]")).to_have_count(3, timeout=60_000)
    with shop.looking() as unit:
        assert ["A-1-1", "A-1-2", "A-1-3"] == [each.place for each in sorted(unit.find(Look), key=lambda it: it.at)]


def test_photos_without_an_answer_outlive_the_page(live: Live, shop: Shop, page: Page, tmp_path: Path) -> None:
    """Those taken without network go out when their count is looked at again; of a count that is over none is kept."""
    sign_in(page, live)
    ended, open_ = (
        live.shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="section:D"))).id
        for _ in range(2)
    )
    photo = taken(tmp_path / "1.png", bin_text("A-1-1"), *cards("D001"))
    page.route("**/looks", lambda route: route.abort())
    for count in (ended, open_):
        page.goto(f"/counts/{count}")
        page.set_input_files("form.shoot input", photo)
        expect(page.locator("[data-sending] li")).to_contain_text("It is kept")
    page.goto("/counts")
    page.unroute("**/looks")
    live.shop.act("owner", lambda unit: stocktakes.cancel(unit, ended))
    page.goto(f"/counts/{open_}")
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-1", 1), timeout=60_000)
    page.wait_for_function(NONE_KEPT)
    with shop.looking() as unit:
        assert [open_] == [each.stocktake for each in unit.find(Look)]


def test_a_matched_card_wants_a_closer_photo(live: Live, shop: Shop, page: Page, tmp_path: Path) -> None:
    """Bars of 0.8 pixels per module are known by their looks; once they are decoded from nearer, one may act."""
    start(page, live, "section:D")
    near = taken(tmp_path / "near.png", *cards("D009", "D001"))
    whole = Image.open(near)
    whole.resize((whole.width // 5, whole.height // 5), Image.Resampling.BOX).save(tmp_path / "far.png")
    count = page.url
    for text in (bin_text("A-1-1"), *cards("D002", "D003", "D004")):
        type_fast(page, text)
    page.get_by_role("button", name=control_names.THAT_IS_ALL.format("A-1-1")).click()
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-1", 3))
    page.goto(count + "?place=A-1-3")
    page.set_input_files("form.shoot input", tmp_path / "far.png")
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-3", 2, 1), timeout=60_000)
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
    finding = page.locator(".finding").filter(has_text=amiss(FindingKind.ELSEWHERE, where="A-1-3", home="A-1-1"))
    expect(finding).to_contain_text("it only looks like this one")
    finding.get_by_role("link", name=control_names.CLOSER_PHOTO).click()
    page.set_input_files("form.shoot input", near)
    expect(page.locator("[data-sending] .meta")).to_contain_text(figures("A-1-3", 2, 1), timeout=60_000)
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
    expect(finding).not_to_contain_text("it only looks like this one")
    put_right(finding).click()
    expect(finding).to_have_count(0)


def test_what_is_open_has_the_thumb(live: Live, page: Page) -> None:
    """A page has one thing to do next: with the sample unfolded that is to draw it, folded away to count all."""
    furnish(live.shop, 120)
    sign_in(page, live)
    page.goto("/counts?area=section:D&sure=80&amiss=20")
    following = page.locator(".next:visible")
    expect(following).to_have_text("Draw 5 bins")
    page.get_by_text(control_names.COUNT_A_SAMPLE).click()
    expect(following).to_have_text("Start counting section D")


def test_keys_come_to_the_photo_before_the_places(live: Live, page: Page) -> None:
    """What stands second on the screen is second for the keyboard too, whatever number of places follows."""
    furnish(live.shop, 120)
    count = live.shop.act("owner", lambda unit: stocktakes.open_count(unit, stocktakes.OpenCount(area="room")))
    sign_in(page, live)
    page.goto(f"/counts/{count.id}")
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS_SO_FAR).focus()
    page.keyboard.press("Tab")
    expect(page.get_by_label(control_names.PHOTOGRAPH_LABELLED_BINS)).to_be_focused()


def test_two_count_at_once(live: Live, shop: Shop, page: Page, browser: Browser) -> None:
    """Each sees how far both are, and the findings are of what both saw."""
    start(page, live, "section:D")
    link = shop.act("owner", lambda unit: unit.access.make_pairing_link())
    with browser.new_context(base_url=live.address) as context:
        phone = context.new_page()
        phone.goto(f"/pair/{link}")
        phone.get_by_label(control_names.NAME_OF_THIS_PHONE).fill("Blue phone")
        phone.keyboard.press("Enter")
        phone.wait_for_url(f"{live.address}/")
        phone.goto(page.url)
        for one, texts in ((page, (bin_text("A-1-1"), *cards("D001"))), (phone, (bin_text("A-1-2"), *cards("D002")))):
            for text in texts:
                type_fast(one, text)
            one.get_by_role("button", name=control_names.THAT_IS_ALL.format("").strip()).click()
        for one in (page, phone):
            one.get_by_role("link", name=control_names.ALL_PLACES).click()
            expect(one.locator(".face .plate")).to_contain_text("2/3")
        phone.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
        expect(
            phone.locator(".finding").filter(has_text=amiss(FindingKind.ELSEWHERE, where="A-1-2", home="A-1-1"))
        ).to_contain_text("D002")
    with shop.looking() as unit:
        told = lists.ledger_page(unit.connection, 0, 500)
    assert ["owner", "Blue phone"] == [entry.actor for entry in told if entry.kind == "looked"]
