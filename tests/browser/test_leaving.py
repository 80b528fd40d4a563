"""From the closed parcel to the carrier, and to the buyer at the door, in Chromium."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import control_names as names
import pypdfium2
import pytest
from calls import Calls
from clients import client_of
from live_shop import Live, go_on, sign_in, type_fast
from playwright.sync_api import Page, expect

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.life import ParcelState
from scanflow.domain.things import Parcel
from scanflow.domain.verdict import Reason
from scanflow.domain.words import AT_THE_DOOR, REFUSALS
from scanflow.web import create_app

LABELS = ("RR123456785DE", "RR123456799DE", "RR123456808DE")


@pytest.fixture
def calls(live: Live) -> Calls:
    """A shop that binds labels and records what leaves, with a section."""
    live.shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, hand_overs=True, bind_labels=True)))
    made = Calls(client_of(create_app(live.shop), live.shop, Role.OWNER))
    made.section()
    return made


def scan(page: Page, text: str, word: str) -> None:
    """A scan that gets a yes with this word, which goes by itself."""
    type_fast(page, text)
    expect(page.locator("dialog.yes")).to_contain_text(word)
    expect(page.locator("dialog.yes")).to_have_count(0)


def no(page: Page, heading: str) -> None:
    expect(page.locator("dialog.no")).to_contain_text(heading)
    go_on(page)
    expect(page.locator("dialog.no")).to_have_count(0)


def states(live: Live) -> list[str]:
    with live.shop.looking() as unit:
        return [parcel.state for parcel in unit.find(Parcel)]


def pack(page: Page, calls: Calls, number: str) -> Any:
    """A picked order goes through its slip and its card; its parcel is closed then."""
    (stay,), order = calls.picked(number)
    scan(page, order["slip"], "Open")
    scan(page, card_text(stay["code"]), names.RELEASED)
    return order


def test_from_the_table_to_the_carrier(live: Live, page: Page, calls: Calls) -> None:
    """Closed, labelled at the table, one cancelled meanwhile: it stays, all others go, and the list is printed."""
    sign_in(page, live)
    page.goto("/table")
    pack(page, calls, "1001")
    face = page.locator('[data-live="face"]')
    expect(face).to_contain_text(names.SCAN_ITS_LABEL)
    expect(face).to_contain_text("1001")
    scan(page, LABELS[0], "Label bound")
    expect(face).to_contain_text(names.WHICH_ORDER)
    scan(page, LABELS[0], "Done before")
    order = pack(page, calls, "1002")
    type_fast(page, LABELS[0])
    no(page, REFUSALS[Reason.OTHER_ORDER].heading)
    scan(page, LABELS[1], "Label bound")
    pack(page, calls, "1003")
    page.get_by_role("button", name=names.LABEL_IT_LATER).click()
    expect(face).to_contain_text(names.WHICH_ORDER)
    calls.post(f"/api/orders/{order['id']}/cancel")

    page.goto("/hand-over")
    page.get_by_label(names.CARRIER).fill("The red van")
    type_fast(page, LABELS[1])
    no(page, AT_THE_DOOR[Reason.CANCELLED].heading)
    scan(page, LABELS[0], "Handed over")
    page.keyboard.press("Enter")
    expect(page.get_by_label(names.CARRIER)).to_have_value("The red van")
    assert [ParcelState.HANDED_OVER, ParcelState.CLOSED, ParcelState.CLOSED] == states(live)
    page.get_by_role("button", name=names.ALL_WENT.format(2)).click()
    no(page, AT_THE_DOOR[Reason.CANCELLED].heading)
    assert [ParcelState.HANDED_OVER, ParcelState.CLOSED, ParcelState.HANDED_OVER] == states(live)
    expect(page.get_by_label(names.CARRIER)).to_have_value("The red van")

    link = page.get_by_role("link", name=names.LIST_TO_SIGN).get_attribute("href") or ""
    [sheet] = pypdfium2.PdfDocument(page.request.get(link).body())
    text = sheet.get_textpage().get_text_bounded()
    assert [True, False, True, True, True] == [
        each in text for each in ("1001", "1002", "1003", "The red van", LABELS[0][-4:])
    ]
    page.goto("/")
    expect(page.locator("main")).to_contain_text("Must stay here")


def test_collected_in_person(live: Live, page: Page, calls: Calls) -> None:
    """No label is asked for; a key without a text presses nothing; one press lets it go, with who took it."""
    one = calls.put_away("Saddle, brown leather")
    order = calls.post(f"/api/stays/{one['id']}/sell", 201, number="D-1", collected=True)
    walk = calls.post("/api/rounds", 201, orders=[order["id"]])
    calls.scan("bin", one["code"], round=walk["id"])
    sign_in(page, live)
    page.goto("/table")
    scan(page, order["slip"], "Open")
    scan(page, card_text(one["code"]), names.RELEASED)
    expect(page.locator("h1")).to_contain_text(names.BUYER_COMES)
    page.keyboard.press("Enter")
    type_fast(page, LABELS[0])
    no(page, REFUSALS[Reason.UNKNOWN_CODE].heading)
    assert [ParcelState.CLOSED] == states(live)
    page.get_by_role("button", name=names.KEEP_IT_HERE).click()
    expect(page.locator("h1")).to_contain_text(names.WHICH_ORDER)

    page.goto("/hand-over")
    type_fast(page, order["slip"])
    no(page, AT_THE_DOOR[Reason.HELD].heading)
    page.get_by_role("link", name=names.IS_COLLECTED).click()
    page.wait_for_url("**/hand-over?parcel=*")
    page.wait_for_load_state()
    page.get_by_label(names.WHO_COLLECTED).fill("Ann with the dog")
    page.get_by_role("button", name=names.COLLECTED).click()
    expect(page.get_by_role("link", name="Collected by Ann with the dog")).to_be_visible()
    assert [ParcelState.HANDED_OVER] == states(live)
