"""Pictures of cards are judged on a page, and tried as cards of another system."""

from __future__ import annotations

import re
from io import BytesIO

import pytest
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish
from pictures import as_file
from print_faults import picture, symbol

from scanflow.shop import Shop
from scanflow.web.pages.stock.check import MOST_PICTURES
from scanflow.workflow import stock

pytestmark = SQLITE_ONLY


def scan(**faults: float) -> bytes:
    """A card's bars (D0145) as a scanner of 300 dpi sees them."""
    return as_file(picture(symbol(**faults)), dpi=(300, 300))


def checked(client: FlaskClient, *files: bytes, status: int = 200, **fields: str) -> str:
    pictures = [(BytesIO(data), f"{number}.png") for number, data in enumerate(files, 1)]
    response = client.post("/cards/check", data={"pictures": pictures, **fields})
    assert status == response.status_code
    return response.text


def test_a_good_and_a_poor_card(client: FlaskClient) -> None:
    """The poorer comes first, with its weakest measure, what to do and its profile; both count."""
    html = checked(client, scan(), scan(dark=0.55))
    assert ["D0145: about F", "D0145: about A"] == re.findall("D0145: about [A-F]", html)
    assert "1 of 2 cards are C or better" in html
    assert "Weakest: minimum reflectance, 55%." in html  # the ink was made so pale
    assert "print them in full black" in html
    assert [True, False] == [" open" in fold for fold in re.findall('<details class="fold"[^>]*>', html)[-2:]]
    assert 2 == html.count('<polyline class="profile"')


def test_the_printer_scaled(client: FlaskClient) -> None:
    """With the width that the narrowest bar should have, a scan tells at how many per cent it was printed."""
    assert "printed at 94% of its size" in checked(client, scan(), module="0.72")


def test_owned_cards_are_tried(shop: Shop, client: FlaskClient) -> None:
    """With a section chosen, the page tells what the cards mean and which slots are still without one."""
    furnish(shop, 1)
    html = checked(client, scan(), section="D")
    assert "“D0145” names no slot of the room." in html
    shop.act("owner", lambda unit: stock.add_slots(unit, "D", stock.AddSlots(count=14)))
    html = checked(client, scan(), section="D")
    assert ("“D0145” names no slot" in html, "1 of 1 cards read" in html) == (False, True)
    assert "Slots of section D without a card so far: D001" in html


@pytest.mark.parametrize(
    ("files", "fields", "status", "words"),
    [
        ([], {}, 422, "Choose one picture, or up to 12."),
        ([b"x"] * (MOST_PICTURES + 1), {}, 422, "Choose one picture, or up to 12."),
        ([b"torn"], {}, 200, "1.png: This file is not a picture that can be opened here."),
        ([b"torn"], {"module": "wide"}, 422, "Width of the narrowest bar: write a number from 0.1 to 2."),
        ([b"torn"], {"section": "Q"}, 404, ""),
    ],
)
def test_what_can_not_be_judged(
    client: FlaskClient, files: list[bytes], fields: dict[str, str], status: int, words: str
) -> None:
    """The page says what it lacks, or why a picture tells nothing."""
    html = checked(client, *files, status=status, **fields)
    assert (True, False) == (words in html, "0/0" in html)


def test_cards_lead_there(shop: Shop, client: FlaskClient) -> None:
    """The designer hands on how wide its narrowest bar is."""
    furnish(shop, 1)
    found = re.search(r'href="(/cards/check\?module=0\.\d+)"', client.get("/cards?section=D").text)
    assert found is not None
    assert f'value="{found[1][-5:]}"' in client.get(found[1]).text
