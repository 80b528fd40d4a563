"""One thing is offered on two channels and sold on one: its other offer is taken down."""

from __future__ import annotations

from pathlib import Path

import control_names
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect

from labels.slot_code import reference
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Listing
from scanflow.workflow import stock
from scanflow.workflow.orders import receiving


def furnish(live: Live) -> str:
    """Two things, of which one is offered on no channel yet: its stay."""

    def work(unit: stock.Unit) -> str:
        stock.add_section(unit, stock.AddSection(code="S", name="Saddles", slots_per_bin=5, colour="pink"))
        stock.add_slots(unit, "S", stock.AddSlots(count=3))
        stay = stock.put_away(unit, stock.PutAway(title="Leather saddle", section="S"))
        stock.put_away(unit, stock.PutAway(title="Child's saddle", section="S", listing="c-2", channel="corner"))
        return stay.id

    return live.shop.act("owner", work)


def sell(live: Live, channel: str) -> None:
    order = IncomingOrder("W-1", channel, lines=(IncomingLine(reference("S001", 1), "Leather saddle"),))
    live.shop.act("owner", lambda unit: receiving.receive(unit, order))


def ended(live: Live) -> list[str]:
    with live.shop.looking() as unit:
        return [each.listing for each in unit.find(Listing) if each.ended is not None]


def test_the_other_offer_of_a_sold_thing_is_taken_down(live: Live, page: Page) -> None:
    """Its page takes two offers; after the sale today leads to the one that is still up, and a press ends it."""
    stay = furnish(live)
    sign_in(page, live)
    page.goto(f"/stays/{stay}")
    for channel in ("fair", "corner"):
        page.locator("summary", has_text=control_names.ADD_AN_OFFER).click()
        page.get_by_label(control_names.LISTING_ID).fill(f"{channel[0]}-1")
        page.get_by_label(control_names.CHANNEL).fill(channel)
        page.get_by_role("button", name=control_names.ADD_THIS_OFFER).click()
        expect(page.locator("#offers output", has_text=f"{channel[0]}-1")).to_be_visible()
    sell(live, "fair")
    page.goto("/")
    page.get_by_role("link", name=control_names.TAKE_DOWN.format("1 offer")).click()
    expect(page.locator("main .line output")).to_have_text(["c-1"])
    expect(page.locator("main .line .meta")).to_contain_text("on corner")
    page.get_by_label("Only with these words").fill("no such thing")
    expect(page.locator("main .line")).to_have_count(0)
    page.get_by_label("Only with these words").fill("saddle")
    page.get_by_role("button", name=control_names.IT_IS_DOWN).click()
    expect(page.locator("main .line")).to_have_count(0)
    assert ["c-1"] == ended(live)


def test_a_channels_file_is_checked(live: Live, page: Page, tmp_path: Path) -> None:
    """The channel is chosen, then the file: what is sold already stands first, and an id is learned by a press."""
    furnish(live)
    sell(live, "fair")
    file = tmp_path / "corner.csv"
    rows = f"{reference('S001', 1)},c-1\n{reference('S002', 1)},c-9\n"
    file.write_text(f"reference,listing id\n{rows}", encoding="utf-8")
    sign_in(page, live)
    page.goto("/listings")
    page.get_by_role("link", name=control_names.CHECK_A_CHANNEL).click()
    page.get_by_label(control_names.CHANNEL).fill("corner")
    page.set_input_files("#file", file)
    expect(page.locator("main section h2").first).to_have_text("Offered, but not for sale: 1")
    page.get_by_role("button", name=control_names.IT_IS_DOWN).first.click()
    expect(page.locator("main section h2").first).to_have_text("New listing ids: 1")
    page.get_by_role("button", name=control_names.LEARN_THIS_ID).click()
    expect(page.locator("main section h2")).to_have_text(["No longer offered there: 1"])
    assert ["c-1"] == ended(live)
