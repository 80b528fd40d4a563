"""An order is taken down by hand on its page, or from the page of its one thing."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish, reference

from labels.slot_code import card_text
from scanflow.domain.things import Line, Order, Stay
from scanflow.shop import Shop

pytestmark = SQLITE_ONLY


@pytest.fixture
def free(shop: Shop) -> list[Stay]:
    """Things in stock that no order wants: D002 and S001."""
    stays = furnish(shop, 12).stays
    with shop.looking() as unit:
        wanted = {line.stay for line in unit.find(Line) if line.live}
        return [each for each in stays if each.id not in wanted and unit.get(Stay, each.id).open][:2]  # type: ignore[union-attr]


def chosen(page: str) -> list[str]:
    return re.findall(r'name="stay" value="([^"]*)">', page.split("Find it")[0])


def test_things_are_found_by_card_code_reference_and_words(client: FlaskClient, free: list[Stay]) -> None:
    """Each is put beside those before, none twice; words that are no name list what has them; one can be dropped."""
    one, two = free
    for words in (card_text(one.code), one.code.lower(), reference(one)):
        assert [one.id] == chosen(client.post("/orders/new", data={"q": words}).text)
    both = client.post("/orders/new", data={"q": card_text(two.code), "stay": [one.id]})
    assert [one.id, two.id] == chosen(both.text)
    assert [one.id] == chosen(client.post("/orders/new", data={"q": one.code, "stay": [one.id]}).text)
    listed = client.post("/orders/new", data={"q": "e", "number": "A-7", "note": "Rings at noon"})
    assert f">Add {one.code}</button>" in listed.text
    assert 'value="A-7"' in listed.text and 'value="Rings at noon"' in listed.text
    assert [two.id] == chosen(client.post("/orders/new", data={"stay": [one.id, two.id], "drop": one.id}).text)


def test_what_an_order_wants_is_refused_on_the_spot(client: FlaskClient, shop: Shop, free: list[Stay]) -> None:
    """With whose it is; so is an order without a thing, and nothing is made."""
    with shop.looking() as unit:
        line = next(each for each in unit.find(Line) if each.live and each.stay)
        wanted, before = unit.get(Stay, line.stay or ""), len(unit.find(Order))
    assert wanted is not None
    refused = client.post("/orders/new", data={"q": card_text(wanted.code), "stay": [free[0].id]})
    assert (409, [free[0].id]) == (refused.status_code, chosen(refused.text))
    assert " wants that thing." in refused.text
    assert 422 == client.post("/orders/new", data={"make": "yes"}).status_code
    assert 409 == client.post("/orders/new", data={"make": "yes", "stay": [free[0].id, wanted.id]}).status_code
    with shop.looking() as unit:
        assert before == len(unit.find(Order))


def test_the_order_is_made_and_its_table_tells_the_note(client: FlaskClient, shop: Shop, free: list[Stay]) -> None:
    """Its page says that it is collected; whoever packs it reads the note."""
    fields = {"make": "yes", "stay": [each.id for each in free], "channel": "phone", "ship_by": "2026-12-24"}
    made = client.post("/orders/new", data=fields | {"note": "Wrap it as a present", "collected": "true"})
    assert 303 == made.status_code
    page = client.get(made.location).text
    assert "no, the buyer comes for it" in page and "Wrap it as a present" in page
    with shop.looking() as unit:
        order = unit.find(Order)[-1]
    assert (True, "phone", 2) == (order.collected, order.channel, page.count('<li class="line">'))
    opened = client.post("/table/open", data={"order": order.id, "table": "four"})
    assert 303 == opened.status_code, opened.text
    assert "The buyer comes for it. Wrap it as a present" in client.get("/table?table=four").text


def test_a_thing_is_sold_from_its_page(client: FlaskClient, free: list[Stay]) -> None:
    """To an order named for it, or by the number that was written; then its page offers that no more."""
    address = f"/stays/{free[0].id}"
    assert "It is sold" in client.get(address).text
    sold = client.post(f"{address}/sell", data={"number": "", "note": "Cash"})
    assert 303 == sold.status_code
    assert f"Order Sale {reference(free[0])}" in client.get(sold.location).text
    assert "It is sold" not in client.get(address).text
    again = client.post(f"{address}/sell", data={})
    assert (409, True) == (again.status_code, "wants that thing." in again.text)
