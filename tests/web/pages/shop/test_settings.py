"""The owner says how the shop works; others look."""

from __future__ import annotations

import re
from datetime import timedelta

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from pypdfium2 import PdfDocument

from scanflow.domain.access import Role
from scanflow.domain.closing import WEEKDAYS, ClosingDays
from scanflow.domain.things import Rack, Section, Slot
from scanflow.shop import Shop
from scanflow.workflow.ports import Settings
from scanflow.workflow.settings import ChangeSettings

pytestmark = SQLITE_ONLY
SECTION = {"code": "lp", "section": "Levers", "slots_per_bin": "4", "count": "9", "digits": "2", "colour": "violet"}


def test_shop(shop: Shop, client: FlaskClient) -> None:
    """Name, zone, ways of working and how long photos are kept stand together, and are written into the ledger."""
    fields = {"name": "Reclaimed parts", "zone": "Europe/Berlin", "photo_days": "30"}
    fields |= {"scan_at_bin": "yes", "by_person": "yes"}
    assert 303 == client.post("/settings", data=fields).status_code
    with shop.looking() as unit:
        said = {"zone": "Europe/Berlin", "name": "Reclaimed parts", "photo_days": 30, "by_person": True}
        assert Settings(auto_close=False, **said) == unit.settings
    assert "settings changed" in client.get("/ledger").text


OPEN = {"name": "Reclaimed parts", "zone": "UTC"}


def test_days_off(shop: Shop, client: FlaskClient) -> None:
    """Weekdays and days are kept and shown; a form that asks for neither leaves them, one that says none ends them."""
    fields = OPEN | {"closed_on": ["sunday", "saturday"], "closed_dates": "2026-12-24 to 2027-01-02\r\n2026-05-01"}
    assert 303 == client.post("/settings", data=fields).status_code
    client.post("/settings", data=OPEN)
    with shop.looking() as unit:
        kept = ClosingDays(("saturday", "sunday"), ("2026-05-01", "2026-12-24/2027-01-02"))
        assert kept == unit.settings.closing
    page = client.get("/settings").text
    assert ["saturday", "sunday"] == re.findall(r'name="closed_on"\s+value="(\w+)" checked', page)
    assert "2026-05-01 2026-12-24 to 2027-01-02</textarea>" in page
    client.post("/settings", data=OPEN | {"closed_dates": ""})
    with shop.looking() as unit:
        assert ClosingDays() == unit.settings.closing


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        ({"closed_dates": "24.12.2026"}, "“24.12.2026” is no day"),
        ({"closed_dates": "2026-12-26 to 2026-12-24"}, "the last day comes after the first"),
        ({"closed_on": [*WEEKDAYS], "closed_dates": ""}, "Leave one day of the week open"),
        ({"closed_on": ["noday"], "closed_dates": ""}, "choose"),
    ],
)
def test_days_off_refused(shop: Shop, client: FlaskClient, wrong: dict[str, str | list[str]], said: str) -> None:
    """What is no day, a range backwards and a shop that never opens are refused; what was typed stands there still."""
    answer = client.post("/settings", data=OPEN | wrong)
    assert (422, True) == (answer.status_code, said in answer.text)
    assert f">{wrong['closed_dates']}</textarea>" in answer.text
    with shop.looking() as unit:
        assert Settings() == unit.settings


def test_dates_and_paper(shop: Shop, client: FlaskClient) -> None:
    """Days are written as the shop writes them, and what is printed is offered on its paper."""
    room = furnish(shop, 1)
    slip = f"/orders/{room.orders[0].id}/slip.pdf"
    now = shop.clock()
    shop.clock = lambda: now + timedelta(days=40)
    assert f"received {now.day} {now:%b}" in client.get("/orders").text
    assert 595 == round(PdfDocument(client.get(slip).data)[0].get_width())  # A4, in points
    fields = {"name": "Reclaimed parts", "zone": "UTC", "dates": "month-first", "paper": "letter"}
    assert 303 == client.post("/settings", data=fields).status_code
    assert f"received {now:%b} {now.day}" in client.get("/orders").text
    assert 612 == round(PdfDocument(client.get(slip).data)[0].get_width())  # Letter
    assert '<option value="letter" selected>' in client.get(f"/orders/{room.orders[0].id}").text
    assert '<option value="letter" selected>' in client.get("/cards").text


@pytest.mark.parametrize("wrong", [{"zone": "Mars/Olympus"}, {"name": ""}, {"name": "x" * 61}, {"photo_days": "0"}])
def test_shop_refused(shop: Shop, client: FlaskClient, wrong: dict[str, str]) -> None:
    """An unknown zone, a missing name and photos that are kept no day are refused, and nothing changes."""
    fields = {"name": "Reclaimed parts", "zone": "UTC"} | wrong
    assert 422 == client.post("/settings", data=fields).status_code
    with shop.looking() as unit:
        assert Settings() == unit.settings


def test_a_plan_to_count(shop: Shop, client: FlaskClient) -> None:
    """It begins when it is switched on and stays while other settings change; weeks are whole."""
    fields = {"name": "Reclaimed parts", "zone": "UTC"}
    assert 303 == client.post("/settings", data=fields | {"count_weeks": "8"}).status_code
    with shop.looking() as unit:
        first = unit.settings
    assert (8, True) == (first.count_weeks, first.count_began <= shop.clock().isoformat())
    assert 422 == client.post("/settings", data=fields | {"count_weeks": "1.5"}).status_code
    assert 303 == client.post("/settings", data=fields).status_code
    with shop.looking() as unit:
        assert (8, first.count_began) == (unit.settings.count_weeks, unit.settings.count_began)


def test_new_section(shop: Shop, client: FlaskClient) -> None:
    """A section is made with its first slots; more slots go on with the next numbers."""
    assert 303 == client.post("/settings/sections", data=SECTION).status_code
    assert 303 == client.post("/sections/LP/slots", data={"count": "2"}).status_code
    with shop.looking() as unit:
        assert Section("LP", "Levers", 4, "violet", 2, 11) == unit.get(Section, "LP")
        assert ["LP10", "LP11"] == [slot.code for slot in unit.find(Slot)][-2:]
    assert 409 == client.post("/settings/sections", data=SECTION).status_code


@pytest.mark.parametrize(
    "wrong", [{"code": "D1"}, {"code": "ABC"}, {"count": "0"}, {"digits": "x"}, {"colour": "plaid"}, {"section": ""}]
)
def test_new_section_refused(shop: Shop, client: FlaskClient, wrong: dict[str, str]) -> None:
    """What can't be a section is refused whole: no section without its slots."""
    assert 422 == client.post("/settings/sections", data=SECTION | wrong).status_code
    with shop.looking() as unit:
        assert ((), ()) == (unit.find(Section), unit.find(Slot))


def test_rack(shop: Shop, client: FlaskClient) -> None:
    """A rack is put where it stands."""
    furnish(shop, 1)
    assert 303 == client.post("/settings/racks/A", data={"aisle": "2", "start": "3.5"}).status_code
    with shop.looking() as unit:
        assert Rack("A", 2, 3.5) == unit.get(Rack, "A")
    assert 422 == client.post("/settings/racks/A", data={"aisle": "2", "start": "nan"}).status_code
    assert 404 == client.post("/settings/racks/Q", data={"aisle": "2", "start": "1"}).status_code


def test_only_the_owner_changes_settings(app: Flask, shop: Shop) -> None:
    """A helper neither sees nor changes the settings; a program has no pages."""
    helper, program = client_of(app, shop, Role.HELPER), client_of(app, shop, Role.PROGRAM)
    fields = {"name": "Other", "zone": "UTC"}
    assert (403, 403) == (helper.get("/settings").status_code, helper.post("/settings", data=fields).status_code)
    assert 403 == helper.post("/settings/sections", data=SECTION).status_code
    assert 403 == program.get("/").status_code


def test_each_setting_that_is_asked_for_is_kept(client: FlaskClient) -> None:
    """The form asks for each setting of its command, and for nothing that the command would pass over."""
    form = client.get("/settings").text.partition('id="shop"')[2].partition("</form>")[0]
    asked = set(re.findall(r'<(?:input|select|textarea)[^>]* name="(\w+)"', form)) - {"csrf", "key"}
    assert set(ChangeSettings.model_fields) == asked
