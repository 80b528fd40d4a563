"""A shop moves in: fifty things come by file, five are sold meanwhile, and the walk finds two that are not there."""

from __future__ import annotations

from itertools import groupby
from pathlib import Path

import control_names
from live_shop import Live, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import bin_text, card_text
from scanflow.domain.counts.findings import FindingKind
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Slot
from scanflow.domain.words import FINDINGS
from scanflow.storage.unit import SqlUnit
from scanflow.workflow import stock
from scanflow.workflow.orders import receiving

NUMBERS = [f"D{number:03}" for number in range(1, 51)]
SOLD, GONE = ("D003", "D011", "D024", "D037", "D050"), ("D018", "D042")


def furnish(live: Live) -> list[tuple[str, list[str]]]:
    """Fifty empty slots, by their bins."""

    def work(unit: SqlUnit) -> None:
        stock.add_section(unit, stock.AddSection(code="D", name="Derailleurs", slots_per_bin=10, colour="blue"))
        stock.add_slots(unit, "D", stock.AddSlots(count=len(NUMBERS)))

    live.shop.act("owner", work)
    with live.shop.looking() as unit:
        slots = sorted(unit.find(Slot), key=lambda slot: slot.code)
    return [(name, [slot.code for slot in some]) for name, some in groupby(slots, lambda slot: slot.bin)]


def sell(live: Live) -> None:
    """An order for each, by the number alone, from before the thing was in the account."""
    for number in SOLD:
        line = IncomingLine(number, f"Rear derailleur {number}", f"L{number}")
        order = IncomingOrder(f"W-{number}", "north", "2026-01-05T10:00:00Z", None, (line,))
        live.shop.act("owner", lambda unit, order=order: receiving.receive(unit, order))


def test_fifty_things_move_in(live: Live, page: Page, tmp_path: Path) -> None:
    """Two presses load the file; one scan confirms a thing, in a round or in the count."""
    bins = furnish(live)
    file = tmp_path / "stock.csv"
    rows = "".join(f"{number},Rear derailleur {number},L{number}\n" for number in NUMBERS)
    file.write_text(f"Stock number,Title,Listing id\n{rows}", encoding="utf-8")
    sign_in(page, live)
    page.goto("/stock/load")
    page.wait_for_load_state()
    page.set_input_files("#file", file)
    page.get_by_role("button", name="Store 50 things").click()
    expect(page.get_by_role("heading", level=1)).to_have_text(control_names.FILE_IS_LOADED)

    sell(live)
    page.goto("/")
    page.get_by_role("button", name=control_names.START_A_ROUND.format("5")).click()
    page.wait_for_url("**/rounds/*")
    for number in SOLD:
        type_fast(page, card_text(number))
        expect(page.locator("dialog.yes")).to_be_visible()
        expect(page.locator("dialog.yes")).to_have_count(0)

    page.goto("/counts?area=section:D")
    page.get_by_role("button", name=control_names.START_COUNTING).click()
    page.wait_for_url("**/counts/*")
    for name, numbers in bins:
        type_fast(page, bin_text(name))
        expect(page.locator(".face .plate")).to_contain_text(name)
        here = [number for number in numbers if number not in SOLD + GONE]
        for number in here:
            type_fast(page, card_text(number))
        expect(page.locator("[data-hand] li")).to_have_count(len(here))
    page.get_by_role("button", name=control_names.THAT_IS_ALL.format(bins[-1][0])).click()
    expect(page.locator(".places [data-looked]")).to_have_count(len(bins))
    page.get_by_role("link", name=control_names.WHAT_IS_AMISS).click()
    missing = FINDINGS[FindingKind.MISSING].amiss
    home = {number: name for name, numbers in bins for number in numbers}
    expect(page.locator(".finding h2")).to_have_text([missing.format(home=home[number]) for number in GONE])
    page.goto("/slots?state=unseen")
    expect(page.locator("main .line .title")).to_have_text([f"Rear derailleur {number}" for number in GONE])
