"""Cards are designed on a page: what it shows is what the files hold."""

from __future__ import annotations

import re
from io import BytesIO
from zipfile import ZipFile

import pypdfium2
import pytest
import zxingcpp
from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish
from PIL import Image

from labels import slot_code
from labels.card import Style
from scanflow.shop import Shop
from scanflow.workflow import stock

pytestmark = SQLITE_ONLY
POINTS = 72 / 25.4


def said(html: str) -> str:
    """The sentence of a refusal."""
    found = re.search(r'<p class="said" role="alert">([^<]*)</p>', html)
    return found[1] if found else ""


def size_of(svg: str) -> tuple[float, float]:
    """Width and height in mm that the picture says of itself."""
    found = re.search(r'width="([\d.]+)mm" height="([\d.]+)mm"', svg)
    assert found is not None
    return float(found[1]), float(found[2])


def test_first_numbers_are_those_not_used_yet(shop: Shop, client: FlaskClient) -> None:
    """The cards to print first are those of slots that never had a thing."""
    furnish(shop, 2)  # D001 and S001 had one, of seven each
    assert 'name="numbers" value="2-7"' in client.get("/cards").text
    assert 'name="numbers" value="1-7"' in client.get("/cards?section=L").text


@pytest.mark.parametrize(
    ("paper", "width", "height"),
    [("letter", (215.9 - 10.2) / 3, (279.4 - 15.5) / 6), ("a4", (210 - 10.2) / 3, (297 - 15.5) / 6)],
)
def test_card_has_its_true_size(shop: Shop, client: FlaskClient, paper: str, width: float, height: float) -> None:
    """The picture of a card is as large in mm as the grid makes it: margins of 5 mm, cut lines, and the scale bar."""
    furnish(shop, 1)
    response = client.get(f"/cards/card.svg?section=D&paper={paper}")
    assert "image/svg+xml" == response.mimetype
    assert (width, height) == pytest.approx(size_of(response.text), abs=0.01)


def test_pdf_holds_the_cards_asked_for(shop: Shop, client: FlaskClient) -> None:
    """The file has a page for every grid full of cards, of the size of the sheet, and their codes are read from it."""
    furnish(shop, 16)
    response = client.get("/cards/print?section=D&numbers=2-8,10&paper=letter&columns=2&rows=3")
    assert ("application/pdf", "attachment; filename=cards-D.pdf") == (
        response.mimetype,
        response.headers["Content-Disposition"],
    )
    with pypdfium2.PdfDocument(response.data) as document:
        assert 2 == len(document)
        assert (215.9 * POINTS, 279.4 * POINTS) == pytest.approx(document[0].get_size(), abs=0.01)
        pictures = [document[at].render(scale=200 / 72).to_pil() for at in range(2)]
    texts = [each.text for picture in pictures for each in zxingcpp.read_barcodes(picture)]
    assert sorted(slot_code.card_text(f"D{number:03}") for number in (2, 3, 4, 5, 6, 7, 8, 10)) == sorted(texts)


def test_several_pictures_are_packed(shop: Shop, client: FlaskClient) -> None:
    """One sheet is one picture; several come packed together."""
    furnish(shop, 16)
    alone = client.get("/cards/print?section=D&numbers=1&format=png&dpi=300")
    with Image.open(BytesIO(alone.data)) as picture:
        assert (2481, 3508) == picture.size  # 210 x 297 mm at 300 dots an inch, rounded up
    packed = client.get("/cards/print?section=D&numbers=1-4&rows=1&format=svg")
    with ZipFile(BytesIO(packed.data)) as archive:
        assert ["cards-D-01.svg", "cards-D-02.svg"] == archive.namelist()
        assert (210, 297) == size_of(archive.read("cards-D-01.svg").decode())


def test_bin_fronts(shop: Shop, client: FlaskClient) -> None:
    """Bin fronts are made for the bins of these slots, and say all that a bin holds."""
    furnish(shop, 10)  # fifteen slots a section, ten a bin
    html = client.get("/cards?section=D&style=bin&numbers=3,12&columns=2&rows=2").text
    assert ("2 bin fronts on 1 page." in html, "D001 to D010" in html) == (True, True)
    assert "D011 to D015" in client.get("/cards/sheet.svg?section=D&style=bin&numbers=3,12&columns=2&rows=2").text


def test_lost_cards_are_not_printed(shop: Shop, client: FlaskClient) -> None:
    """The number of a lost card rests: it is left out, and the page says so."""
    furnish(shop, 4)
    shop.act("owner", lambda unit: stock.lose_card(unit, "D003"))
    html = client.get("/cards?section=D&numbers=2-4").text
    assert ("2 cards on" in html, "may turn up: D003." in html) == (True, True)
    assert 422 == client.get("/cards/print?section=D&numbers=3").status_code


def test_used_cards_are_minded(shop: Shop, client: FlaskClient) -> None:
    """Who prints a card that was used already is told what that means."""
    furnish(shop, 4)
    assert "1 of these cards had a thing already." in client.get("/cards?section=D&numbers=1-4").text
    assert "had a thing already" not in client.get("/cards?section=D&numbers=2-4").text


def test_a_picture_is_no_finer_than_600_dots_an_inch(shop: Shop, client: FlaskClient) -> None:
    """2400 would take gigabytes: the answer says what is possible. A PDF's bars still go by the printer's dots."""
    furnish(shop, 4)
    address = "/cards/print?section=D&numbers=1&dpi=2400&format="
    refused = client.get(f"{address}png")
    assert 422 == refused.status_code
    assert "Dots per inch of a picture: write a number from 72 to 600." in refused.text
    assert [200, 200] == [client.get(address + kind).status_code for kind in ("pdf", "svg")]


@pytest.mark.parametrize(
    ("query", "sentence"),
    [
        ("numbers=99", "Section D has no slot 99. Make more slots first."),
        ("numbers=x", "&#39;x&#39; is no number or range like 1-18."),
        ("numbers=1,1", "A number stands twice, and a slot has one card."),
        ("rows=0", "Cards down: write a whole number from 1 to 40."),
        (
            "label=63.5",
            "Size of a label: &#39;63.5&#39; is no pair of measures like 63.5x38.1 or 4x6in, in mm, cm or in.",
        ),
        ("columns=9", "Bars of D0024 need a card at least 33.0 mm wide."),
        ("colour=plaid", "Choose one of yellow, orange, pink, green, blue, grey, violet, white."),
    ],
)
def test_what_cannot_be_printed(shop: Shop, client: FlaskClient, query: str, sentence: str) -> None:
    """The page says what is wrong and shows no card; there is no file."""
    furnish(shop, 1)
    html = client.get(f"/cards?section=D&{query}").text
    assert (sentence, False) == (said(html), "card.svg" in html)
    assert 422 == client.get(f"/cards/print?section=D&{query}").status_code


def test_ready_labels(shop: Shop, client: FlaskClient) -> None:
    """Ready labels are given by their measures, in inches too; a card is as large as its label."""
    furnish(shop, 1)
    query = "section=D&paper=letter&columns=2&rows=5&label=4x2in&corner=0.15x0.5in&pitch=4.1x2in&numbers=1"
    assert (101.6, 50.8) == pytest.approx(size_of(client.get(f"/cards/card.svg?{query}").text), abs=0.01)


def test_room_without_sections(client: FlaskClient) -> None:
    """Without a section the page says what comes first; a section that is none is not found."""
    assert "there is no section yet" in client.get("/cards").text
    assert (404, 404) == (client.get("/cards?section=Q").status_code, client.get("/cards/card.svg").status_code)


def test_each_style_can_be_chosen(shop: Shop, client: FlaskClient) -> None:
    """The page offers every style of card there is, in words."""
    furnish(shop, 1)
    offered = re.search(r'<select id="style".*?</select>', client.get("/cards?section=D").text, re.DOTALL)
    assert {style.value for style in Style} == set(re.findall(r'value="(\w+)"[^>]*>\w', offered[0] if offered else ""))
