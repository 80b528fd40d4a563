"""Three channels' files, each in its own words: chosen, explained, settled; what is not paid is not packed."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

import control_names
from live_shop import Live, sign_in
from playwright.sync_api import Page, expect

from labels import slot_code
from scanflow.domain.things import Line, Order, Stay
from scanflow.workflow import stock

FAIR = "Sale number;Date of sale;Item description;Stock number;State of payment"
WEB = "Order,Bought on,Ship no later than,Product,SKU"
CORNER = "Order no,Shop,Ref,Name"


def furnish(live: Live) -> list[Stay]:
    """Eight things in stock."""

    def work(unit: stock.Unit) -> list[Stay]:
        stock.add_section(unit, stock.AddSection(code="L", name="Lamps", slots_per_bin=4, colour="green"))
        stock.add_slots(unit, "L", stock.AddSlots(count=8))
        return [stock.put_away(unit, stock.PutAway(title=f"Dynamo lamp {n}", section="L")) for n in range(1, 9)]

    return live.shop.act("owner", work)


def choose(page: Page, folder: Path, header: str, rows: Iterable[str]) -> None:
    """Choose a file of these rows; its page comes by itself."""
    path = folder / "orders.csv"
    path.write_text("\n".join([header, *rows]), encoding="utf-8")
    page.goto("/orders/load")
    page.wait_for_load_state()
    page.set_input_files("#file", path)
    page.wait_for_selector("text=Check the file")


def load(page: Page, orders: str) -> None:
    page.get_by_role("button", name=control_names.LOAD_ORDERS.format(orders)).click()
    expect(page.get_by_role("heading", level=1)).to_have_text(control_names.FILE_IS_LOADED)


def states(live: Live) -> dict[tuple[str, str], str]:
    """Channel and number of each order, and the state and gravest hold of its first line."""
    with live.shop.looking() as unit:
        lines = {(order.channel, order.number): unit.find(Line, order=order.id)[0] for order in unit.find(Order)}
    return {key: f"{line.state} {line.hold or ''}".strip() for key, line in lines.items()}


def test_three_channels(live: Live, page: Page, tmp_path: Path) -> None:
    """Equal numbers of two channels stay two orders; a status is explained once, and the next file lifts the hold."""
    stays = furnish(live)
    named = [slot_code.reference(stay.code, stay.turn) for stay in stays]
    sign_in(page, live)

    rows = [f"1001;28-Nov-36;Dynamo lamp 1;{named[0]};Paid", f"1002;29-Nov-36;Dynamo lamp 2;{named[1]};Owing"]
    choose(page, tmp_path, FAIR, rows)
    page.get_by_label(control_names.FILE_IS_FROM).fill("fair")
    page.get_by_role("button", name=control_names.LOOK_WITH_THESE_COLUMNS).click()
    page.get_by_label("Owing").select_option("aside")
    page.get_by_role("button", name=control_names.LOAD_ORDERS.format("1 order")).click()  # it is shown again first
    load(page, "2 orders")

    choose(page, tmp_path, WEB, [f"1001,11/28/2036,,Dynamo lamp 3,{named[2]}"])
    page.get_by_label(control_names.FILE_IS_FROM).fill("web")
    page.get_by_role("button", name=control_names.LOOK_WITH_THESE_COLUMNS).click()
    load(page, "1 order")

    choose(page, tmp_path, CORNER, [f"7,corner,{named[3]},Dynamo lamp 4"])
    load(page, "1 order")
    expected = {
        ("fair", "1001"): "waiting",
        ("fair", "1002"): "waiting not_cleared",
        ("web", "1001"): "waiting",
        ("corner", "7"): "waiting",
    }
    assert expected == states(live)

    choose(page, tmp_path, FAIR, [rows[0], rows[1].replace("Owing", "Paid")])
    expect(page.get_by_label(control_names.FILE_IS_FROM)).to_have_value("fair")
    load(page, "1 order")
    assert expected | {("fair", "1002"): "waiting"} == states(live)
