"""Pictures of goods are looked at on a page: what is in them, what it is now, how sure that is; nothing moves."""

from __future__ import annotations

import re
from base64 import b64decode
from io import BytesIO

import pytest
from calls import Calls, photo
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import furnish
from PIL import Image
from sqlalchemy import func, select

from labels.slot_code import card_text, slip_text
from scanflow.domain.access import Role
from scanflow.shop import Shop
from scanflow.storage import tables
from scanflow.vision import Book, Certainty, PictureReadings, Reading, Symbology
from scanflow.vision.workers import Readers
from scanflow.web.pages.stock.cards_in_pictures import MOST_PICTURES

pytestmark = SQLITE_ONLY
CORNERS = ((60.0, 40.0), (500.0, 40.0), (500.0, 180.0), (60.0, 180.0))


class Seen(Readers):
    """Readers to whom every picture shows the same readings; they keep the book they were given."""

    def __init__(self, *readings: Reading) -> None:
        super().__init__(1)
        self.picture = PictureReadings(600, 200, 1.0, readings)

    def read(self, image: object, book: Book | None = None) -> PictureReadings:
        self.book = book
        return self.picture


def looked(client: FlaskClient, *files: bytes, status: int = 200) -> str:
    pictures = [(BytesIO(data), f"{number}.png") for number, data in enumerate(files, 1)]
    response = client.post("/look", data={"pictures": pictures}, content_type="multipart/form-data")
    assert status == response.status_code
    return response.text


def test_cards_are_named_with_their_things(calls: Calls, client: FlaskClient) -> None:
    """Each card leads to its slot, with the title and bin of what stands there, or that nothing does."""
    calls.section()
    stay = calls.put_away("Brass bell")
    html = looked(client, photo("D001", "D002"))

    assert ["/slots/D001", "/slots/D002"] == re.findall(r'class="title" href="([^"]+)"', html)
    assert ("Brass bell" in html, f"bin {stay['bin']}" in html, "no thing stands in it" in html) == (True, True, True)
    assert "2 decoded, 0 matched, 0 labels not read." in html


def test_how_sure_each_is(calls: Calls, shop: Shop, client: FlaskClient) -> None:
    """Decoded, matched and unread are counted apart and named so; the book holds every card of the room."""
    codes = calls.section()
    shop.readers = readers = Seen(
        Reading(card_text("D001"), Symbology.CODE128, "zbar", CORNERS),
        Reading(card_text("D002"), Symbology.CODE128, "match", CORNERS, Certainty.MATCHED),
        Reading(None, Symbology.CODE128, "locate", CORNERS, Certainty.UNREAD),
    )
    html = looked(client, photo())

    assert "1 decoded, 1 matched, 1 label not read." in html
    assert ["decoded", "matched"] == re.findall(r'<span class="state">(\w+)</span>', html)
    assert "1 label could not be read: dotted in the picture." in html
    assert Book(map(card_text, codes)) == readers.book


def test_other_codes_stand_apart(calls: Calls, shop: Shop, client: FlaskClient) -> None:
    """A slip, another's code, a card of no slot and one with a wrong check are no cards of the room."""
    calls.section()
    texts = [slip_text(1), "X-00417", card_text("D999"), "D0146"]
    shop.readers = Seen(*(Reading(text, Symbology.CODE128, "zbar", CORNERS) for text in texts))
    html = looked(client, photo())

    assert list(
        zip(
            texts,
            ["a slip", "not a card of this room", "a card of no slot here", "like a card, but its check is wrong"],
            strict=True,
        )
    ) == re.findall(r'<li>(\S+) <span class="soft">([^<]+)</span>', html)
    assert "0 decoded, 0 matched" in html


def test_the_picture_is_shown_with_its_outlines(calls: Calls, client: FlaskClient) -> None:
    """It comes back in the page, no larger than 1,600 pixels, with something drawn on it."""
    calls.section()
    large = Image.open(BytesIO(photo("D001"))).resize((3000, 1000))
    out = BytesIO()
    large.save(out, "PNG")
    (data,) = re.findall(r'src="data:image/jpeg;base64,([^"]+)"', looked(client, out.getvalue()))
    shown = Image.open(BytesIO(b64decode(data)))

    assert (1600, 533) == shown.size
    assert any(blue > red + 60 for _, (red, _, blue) in shown.getcolors(1 << 24) or [])  # the page itself is grey


def test_looking_changes_nothing(shop: Shop, client: FlaskClient) -> None:
    """The ledger, sightings and every slot are as before, and it is said."""
    furnish(shop, 25)

    def everything() -> list[object]:
        with shop.looking() as unit:
            counted = unit.connection.scalar(select(func.count()).select_from(tables.ledger))
            return [counted, unit.connection.execute(select(tables.slots)).all()]

    before = everything()
    html = looked(client, photo("D001", "D002"))

    assert before == everything()
    assert "This changes nothing." in html


def test_a_bad_picture_has_its_error_and_the_others_are_seen(calls: Calls, client: FlaskClient) -> None:
    """One file that is no picture costs the others nothing; pictures come in the order they were chosen."""
    calls.section()
    html = looked(client, photo("D001"), b"torn", photo())

    assert ["1.png", "2.png", "3.png"] == re.findall(r"<h2>(\d\.png)</h2>", html)
    assert "This file is not a picture that can be opened here." in html
    assert "No card of this room was found in it." in html
    assert "/slots/D001" in html


@pytest.mark.parametrize("files", [[], [b"x"] * (MOST_PICTURES + 1)])
def test_none_and_too_many_are_refused(client: FlaskClient, files: list[bytes]) -> None:
    """One picture at least, and no more than are read while a person waits."""
    assert f"Choose one picture, or up to {MOST_PICTURES}." in looked(client, *files, status=422)


def test_what_is_no_form_or_too_large_is_refused(client: FlaskClient) -> None:
    """415 for another kind of body, 413 for one beyond the service's limit."""
    assert 415 == client.post("/look", data=b"{}", content_type="application/json").status_code
    looked(client, bytes(33 << 20), status=413)


def test_helpers_may_look_and_strangers_not(app: Flask, shop: Shop, anonymous: FlaskClient) -> None:
    """A helper sees the page; without signing in nobody does."""
    helper = client_of(app, shop, Role.HELPER)
    assert (200, 200) == (helper.get("/look").status_code, 200 if looked(helper, photo()) else 0)
    assert anonymous.get("/look").status_code in (302, 303, 401)
    assert anonymous.post("/look", data={"pictures": (BytesIO(photo()), "a.png")}).status_code in (302, 303, 401, 403)
