"""A form that changes something is answered once: its key is in each form, and sent again it does nothing."""

from __future__ import annotations

import re
import threading
from collections.abc import Iterable, Iterator
from dataclasses import replace
from html.parser import HTMLParser
from io import BytesIO
from pathlib import Path

import pytest
from clients import SQLITE_ONLY, client_of
from every_page import addresses
from flask import Flask
from flask.testing import FlaskClient
from form_fields import fields_of
from furnished import Furnished, furnish
from werkzeug.test import TestResponse

import scanflow.web
from labels import slot_code
from scanflow.domain import events
from scanflow.domain.access import Role, Visitor
from scanflow.domain.life import LineState
from scanflow.domain.things import Item, Line, Order, Stay
from scanflow.shop import Shop
from scanflow.storage.unit import SqlUnit
from scanflow.web import once
from scanflow.web.pages import forms
from scanflow.web.pages.declare import PAGES
from scanflow.workflow import orders, stock
from scanflow.workflow.stock import cards

UNSEEN = frozenset(
    {
        *("table_page.open_parcel", "table_page.close", "order_page.pack"),
        *("count_page.start", "count_page.due", "device_page.pair"),
        *("order_page.send_again", "return_page.expect", "return_page.not_arrived"),
        *("stock_file_page.take_back", "slot_page.free", "slot_page.bring_back"),
        *("amiss_page.accept", "table_page.pack_apart"),
        *("table_page.later", "hand_over_page.collected", "hand_over_page.all_went", "hand_over_page.take_off"),
        *("order_file_page.take_back", "order_page.settle_many"),
    }
)
"""Rules whose forms are not met in the room below: other parcels and counts would have to be open in it, something
would have had to come back, to be loaded, lent or kept for somebody, or something be amiss with the data."""


class Forms(HTMLParser):
    """The forms of a page that are sent by POST: where to, and the keys in them."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.found: list[tuple[str, list[str]]] = []
        self._inside = False
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if tag == "form":
            self._inside = given.get("method") == "post"
            if self._inside:
                self.found.append((given.get("action", ""), []))
        elif tag == "input" and self._inside and given.get("name") == forms.KEY:
            self.found[-1][1].append(given.get("value", ""))


def sent(app: Flask, client: FlaskClient, pages: Iterable[str]) -> Iterator[tuple[str, str, list[str]]]:
    """The page, the endpoint and the keys of each form."""
    for address in pages:
        answer = client.get(address, follow_redirects=True)
        for action, keys in Forms(answer.text).found:
            path = (action or answer.request.path).partition("#")[0].partition("?")[0]
            endpoint, _ = app.url_map.bind("localhost").match(path, method="POST")
            yield address, endpoint, keys


def doubted_and_twice(shop: Shop, room: Furnished) -> str:
    """A line whose thing is in doubt; a card that was printed again after it was lost; a browser that is signed in."""

    def work(unit: SqlUnit) -> str:
        line = unit.find(Line, state=LineState.WAITING)[0]
        orders.hold(unit, line.id, orders.NotThis(why="Not this thing."))
        stock.lose_card(unit, room.stays[1].code)
        cards.reprint(unit, room.stays[1].code, cards.Reprint(lost="Gone"))
        unit.access.set_password("four reclaimed bells")
        unit.access.make_session(Visitor("owner", Role.OWNER))
        return line.id

    return shop.act("owner", work)


@SQLITE_ONLY
def test_each_form_has_a_key_of_its_own(app: Flask, client: FlaskClient, shop: Shop) -> None:
    """The POST rules of the pages are met by forms that were rendered, and each has one key, like no other's."""
    room = furnish(shop, 25)
    line = doubted_and_twice(shop, room)
    pages = [
        *(f"/lines/{line}", f"/slots/{room.stays[1].code}"),
        *(f"/stays/{stay.id}" for stay in room.stays),
        *(f"/orders/{order.id}" for order in room.orders),
        *addresses(shop, room),
    ]
    settings = {"check": "none", "bind_labels": True, "count_weeks": 4, "count_began": "2026-01-05"}
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, **settings)))
    found = [each for each in sent(app, client, pages) if PAGES[each[1]].roles]
    assert [] == [(page, endpoint) for page, endpoint, keys in found if len(keys) != 1 or not keys[0]]
    keys = [key for _, _, keys in found for key in keys]
    assert len(keys) == len(set(keys))
    expected = {endpoint for endpoint, each in PAGES.items() if each.method == "POST" and each.roles}
    assert expected - UNSEEN == {endpoint for _, endpoint, _ in found}


def test_no_template_has_a_form_without_a_key() -> None:
    """Each form that is sent by POST begins with the fields of `csrf_field`, but those before the sign-in."""
    home = Path(scanflow.web.__file__).parent / "templates"
    written = {
        path.relative_to(home).as_posix(): re.findall(r'<form[^>]*method="post".*?</form>', path.read_text(), re.DOTALL)
        for path in home.rglob("*.html")
    }
    without = {
        name for name, found in written.items() for form in found if not re.search(r"csrf_field\(\)|fields\(", form)
    }
    assert {"access/login.html", "access/pair.html", "access/set_up.html"} == without


def test_pages_write_through_the_key() -> None:
    """Beside `forms.write` write only the pages before the sign-in and a link whose secret is not kept."""
    home = Path(scanflow.web.__file__).parent / "pages"
    written = {path.name: path.read_text() for path in home.rglob("*.py")}
    assert ["forms.py"] == [name for name, text in written.items() if re.search(r"shop\(\)\s*\.act", text)]
    beside = {name for name, text in written.items() if re.search(r"\bwrite_untold\(", text)}
    assert {"login.py", "pairing.py", "devices.py"} == beside - {"forms.py"}


BELL = {"text": slot_code.card_text("D001"), "title": "Bell"}
SADDLE = {"text": slot_code.card_text("D002"), "title": "Saddle"}


def key_of(html: str, action: str) -> str:
    """The key in the form that is sent there."""
    return next(keys[0] for where, keys in Forms(html).found if where == action)


def stays(shop: Shop) -> list[str]:
    with shop.looking() as unit:
        return [stay.code for stay in unit.find(Stay)]


def where(answer: TestResponse) -> tuple[int, str]:
    return answer.status_code, answer.headers.get("Location", "")


def test_put_away_pressed_twice(client: FlaskClient, shop: Shop) -> None:
    """The second press gets the page of the first, and one thing stands."""
    furnish(shop, 0)
    fields = BELL | {"key": key_of(client.get("/put-away").text, "/put-away")}
    first, second = client.post("/put-away", data=fields), client.post("/put-away", data=fields)
    assert (303, where(first)) == (first.status_code, where(second))
    assert ["D001"] == stays(shop)


def test_put_away_pressed_twice_before_the_answer(app: Flask, shop: Shop) -> None:
    """Of two presses at the same time one does it, and the other waits for its page."""
    furnish(shop, 0)
    clients = [client_of(app, shop, role) for role in (Role.OWNER,)] * 2
    fields = BELL | {"key": "once"}
    answers: list[tuple[int, str]] = []

    def press(number: int) -> None:
        client = app.test_client()
        client.environ_base = clients[number].environ_base
        answers.append(where(client.post("/put-away", data=fields)))

    threads = [threading.Thread(target=press, args=(number,)) for number in range(2)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert (303, 1) == (answers[0][0], len(set(answers)))
    assert ["D001"] == stays(shop)


def test_the_key_with_other_fields(client: FlaskClient, shop: Shop) -> None:
    """A form that comes back with other words does nothing, says so, and has a new key to be sent with."""
    furnish(shop, 0)
    fields = BELL | {"key": "once"}
    client.post("/put-away", data=fields)
    again = client.post("/put-away", data=fields | SADDLE)
    assert (422, True) == (again.status_code, forms.REUSED in again.text)
    assert ["D001"] == stays(shop)
    client.post("/put-away", data=SADDLE | {"key": key_of(again.text, "/put-away")})
    assert ["D001", "D002"] == stays(shop)


@SQLITE_ONLY
def test_a_refused_form_may_be_corrected(client: FlaskClient, shop: Shop) -> None:
    """A refusal is not kept: the same key goes through once the card is right, and then no more."""
    furnish(shop, 0)
    right = BELL | {"key": "once"}
    wrong = right | {"text": "D0010"}
    assert [422, 303, 303] == [client.post("/put-away", data=each).status_code for each in (wrong, right, right)]
    assert ["D001"] == stays(shop)


@SQLITE_ONLY
def test_two_pictures_are_two_forms(client: FlaskClient, shop: Shop) -> None:
    """What is in a file counts: the same words with another picture are not the same form."""
    stay = furnish(shop, 1).stays[0]

    def send(colour: tuple[int, int, int]) -> int:
        from PIL import Image

        out = BytesIO()
        Image.new("RGB", (64, 64), colour).save(out, "JPEG")
        fields = {"key": "once", "photo": (BytesIO(out.getvalue()), "thing.jpg")}
        return client.post(f"/stays/{stay.id}/photo", data=fields).status_code

    def picture() -> str | None:
        with shop.looking() as unit:
            item = unit.get(Item, stay.item)
        return item.photo if item else None

    first = (send((200, 0, 0)), send((200, 0, 0)), picture())
    assert (303, 303, 422, first[2]) == (*first[:2], send((0, 0, 200)), picture())


@SQLITE_ONLY
def test_an_order_file_loaded_twice(client: FlaskClient, shop: Shop) -> None:
    """The second press shows the same outcome, where loading anew would say that nothing changed."""
    furnish(shop, 1)
    file = b"number,channel,reference\r\n77,fair,D001\r\n"
    check = client.post("/orders/load", data={"file": (BytesIO(file), "orders.csv")}).text
    fields = fields_of(check) | {"step": "apply", "key": "once"}
    first, second = client.post("/orders/load", data=fields), client.post("/orders/load", data=fields)
    assert (200, first.data) == (first.status_code, second.data)
    with shop.looking() as unit:
        assert ["B-1", "77"] == [order.number for order in unit.find(Order)]


@SQLITE_ONLY
def test_a_card_printed_again_twice(client: FlaskClient, shop: Shop) -> None:
    """The second press gets the same PDF to keep, and the ledger tells of one card."""
    furnish(shop, 1)
    fields = {"text": slot_code.card_text("D001"), "key": "once"}
    first, second = (client.post("/slots/D001/reprint", data=fields) for _ in range(2))
    assert ("application/pdf", first.data) == (second.mimetype, second.data)
    assert "attachment" in second.headers["Content-Disposition"]
    with shop.looking() as unit:
        assert 1 == sum(isinstance(event, events.CardReprinted) for _, event in unit.told_since(0))


@SQLITE_ONLY
def test_done_without_a_page(client: FlaskClient, shop: Shop, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the service stopped before its page was known, the form is told as done and does nothing more."""
    furnish(shop, 0)
    fields = BELL | {"key": "once"}
    with monkeypatch.context() as patched:
        patched.setattr(once, "answer", lambda *given: None)
        client.post("/put-away", data=fields)
    monkeypatch.setattr(forms, "PATIENCE", 0.0)
    again = client.post("/put-away", data=fields)
    assert (409, True) == (again.status_code, forms.UNKNOWN in again.text)
    assert ["D001"] == stays(shop)
