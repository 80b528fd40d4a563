"""Slips and rounds are printed, and what was done on paper is entered."""

from __future__ import annotations

import re

import pytest
from clients import SQLITE_ONLY, client_of
from flask import Flask
from flask.testing import FlaskClient
from furnished import Furnished, furnish
from paperwork import jpeg, seen, words
from pypdfium2 import PdfDocument
from werkzeug.test import TestResponse

from labels import slot_code
from scanflow.domain.access import Role
from scanflow.domain.life import LineState
from scanflow.domain.things import Line, Order, Stay
from scanflow.shop import Shop
from scanflow.storage.views import orders as order_views
from scanflow.storage.views import picking as round_views
from scanflow.vision import photographs
from scanflow.workflow import orders
from scanflow.workflow.picking import rounds
from scanflow.workflow.stock import cards, photos

pytestmark = SQLITE_ONLY


@pytest.fixture
def room(shop: Shop) -> Furnished:
    return furnish(shop, 25)


def pdf(answer: TestResponse) -> PdfDocument:
    assert (200, "application/pdf") == (answer.status_code, answer.mimetype)
    return PdfDocument(answer.data)


def text_of(answer: TestResponse) -> str:
    return " ".join(words(page) for page in pdf(answer))


@pytest.mark.parametrize(("paper", "width"), [("letter", 612), ("a4", 595), ("4x6", 288)])
def test_an_order_s_slip(client: FlaskClient, shop: Shop, room: Furnished, paper: str, width: int) -> None:
    """Its number, its things with their bins, and the bars that open it at the table; the paper is remembered."""
    order = room.orders[0]
    page = pdf(client.get(f"/orders/{order.id}/slip.pdf?paper={paper}"))[0]
    assert width == round(page.get_width())
    with shop.looking() as unit:
        things = order_views.order_lines(unit.connection, order.id)
    assert all(told in words(page) for each in things for told in (order.number, each.title, each.bin))
    assert [slot_code.slip_text(order.slip)] == seen(page)
    again = pdf(client.get(f"/orders/{order.id}/slip.pdf"))[0]
    assert width == round(again.get_width())


def test_a_slip_names_no_buyer_and_nothing_cancelled(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """Only the order's number; what was cancelled belongs in no parcel, and neither channel nor listing is told."""
    order = room.orders[-1]
    shop.act("owner", lambda unit: orders.cancel(unit, order.id, orders.Cancel()))
    said = text_of(client.get(f"/orders/{order.id}/slip.pdf"))
    assert ("0 things" in said, "fair" in said) == (True, False)


def test_slips_of_a_round_in_the_order_of_its_baskets(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """All in one file, so that the first goes into basket 1."""
    assert room.round is not None
    pages = pdf(client.get(f"/rounds/{room.round.id}/slips.pdf?paper=4x6"))
    with shop.looking() as unit:
        lines = sorted(unit.find(Line, round=room.round.id), key=lambda line: line.basket or 0)
        slips = [unit.get(Order, name).slip for name in dict.fromkeys(line.order for line in lines)]  # type: ignore[union-attr]
    assert [[slot_code.slip_text(number)] for number in slips] == [seen(page) for page in pages]
    assert len(slips) > 5


@pytest.mark.parametrize(("paper", "size"), [("half-a4", (595, 842)), ("half-letter", (612, 792))])
def test_two_slips_on_a_sheet(
    client: FlaskClient, shop: Shop, room: Furnished, paper: str, size: tuple[int, int]
) -> None:
    """One above the other in the order of the baskets, whole and to be cut apart; the last may be alone."""
    assert room.round is not None
    alone = pdf(client.get(f"/rounds/{room.round.id}/slips.pdf?paper=4x6"))
    slips = [text for page in alone for text in seen(page)]
    pages = pdf(client.get(f"/rounds/{room.round.id}/slips.pdf?paper={paper}"))
    assert size == tuple(map(round, pages[0].get_size()))
    assert [sorted(slips[at : at + 2]) for at in range(0, len(slips), 2)] == [sorted(seen(page)) for page in pages]


def test_slips_of_all_orders_in_one_state(client: FlaskClient, room: Furnished) -> None:
    """As they are listed; a state that is none is refused, and no order is no file."""
    pages = pdf(client.get("/orders/slips.pdf?state=waiting&paper=4x6"))
    listed = re.findall(r"B-[0-9]+", client.get("/orders?state=waiting").text)
    found = [match[0] for page in pages if (match := re.search(r"B-[0-9]+", words(page)))]
    assert list(dict.fromkeys(listed)) == found
    assert 422 == client.get("/orders/slips.pdf?state=none").status_code
    assert 404 == client.get("/orders/slips.pdf?state=returned").status_code


def test_a_picture_is_on_slip_and_sheet(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """The small one, of the thing that is wanted."""
    assert room.round is not None
    with shop.looking() as unit:
        stop = round_views.round_stops(unit.connection, room.round.id)[0]
    photo = photographs.photo(shop.readers, jpeg())
    shop.act("owner", lambda unit: photos.keep(unit, stop.stay, photo))
    for address in (f"/orders/{stop.order}/slip.pdf", f"/rounds/{room.round.id}/sheet.pdf"):
        assert 1 == sum(obj.type == 3 for page in pdf(client.get(address)) for obj in page.get_objects())


def waiting(shop: Shop, round_id: str) -> list[tuple[int, str, str]]:
    """Number, line and slot code of each stop that still waits."""
    with shop.looking() as unit:
        stops = round_views.round_stops(unit.connection, round_id)
    free = [stop for stop in stops if stop.state == "waiting" and not stop.holds]
    return [(stop.stop, stop.id, stop.code) for stop in free]


def test_the_round_s_sheet_has_bars_for_what_waits(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """A stop's own number, and no card's text anywhere; what is done says so."""
    assert room.round is not None
    answer = client.get(f"/rounds/{room.round.id}/sheet.pdf?paper=a4")
    stops = waiting(shop, room.round.id)
    read = [each for page in pdf(answer) for each in seen(page)]
    assert sorted(slot_code.stop_text(number) for number, _, _ in stops) == sorted(read)
    said = text_of(answer)
    with shop.looking() as unit:
        cards = [slot_code.card_text(each.code) for each in unit.find(Stay)]
    assert [] == [text for text in cards if text in said]
    assert "picked" in said


def enter(client: FlaskClient, round_id: str, **fields: str) -> TestResponse:
    form = re.search(r'name="key" value="([^"]+)"', client.get(f"/rounds/{round_id}/paper").text)
    assert form is not None
    return client.post(f"/rounds/{round_id}/paper", data={"key": form[1], **fields})


def state(shop: Shop, line: str) -> LineState:
    with shop.looking() as unit:
        found = unit.get(Line, line)
    assert found is not None
    return found.state


def test_a_round_is_entered_from_paper(app: Flask, shop: Shop, room: Furnished) -> None:
    """Right digits pick, a wrong one is told and holds up no other, a tick says missing; a helper may do it."""
    assert room.round is not None
    helper = client_of(app, shop, Role.HELPER)
    (first, line, code), (second, wrong, _), (third, gone, _), *_ = waiting(shop, room.round.id)
    right = slot_code.calc_check_digit(code)
    bad = str((int(slot_code.calc_check_digit(waiting(shop, room.round.id)[1][2])) + 1) % 10)
    fields = {f"digit-{first}": right, f"digit-{second}": bad, f"gone-{third}": "yes"}
    page = enter(helper, room.round.id, **fields).text
    expected = [LineState.PICKED, LineState.WAITING, LineState.SHORT]
    assert expected == [state(shop, each) for each in (line, wrong, gone)]
    assert ["Picked", "Not taken", "Missing"] == re.findall(
        r'<li class="line told">.*?<span class="title">([^<]*)', page, re.DOTALL
    )
    assert f"digit-{second}" in page and f"digit-{first}" not in page


def test_a_sheet_of_several_stops_sent_again_gets_the_same_page(
    client: FlaskClient, shop: Shop, room: Furnished
) -> None:
    """Each stop is a write of its own; the page that came of all of them is kept for the form's repeat."""
    assert room.round is not None
    stops = waiting(shop, room.round.id)[:3]
    form = {f"digit-{number}": slot_code.calc_check_digit(code) for number, _, code in stops} | {"key": "sheet-1"}
    first, again = (client.post(f"/rounds/{room.round.id}/paper", data=form) for _ in range(2))
    assert (200, 200, first.text) == (first.status_code, again.status_code, again.text)
    assert [LineState.PICKED] * 3 == [state(shop, line) for _, line, _ in stops]


def test_a_card_without_a_check_is_scanned_in_its_basket(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """Where cards have no check digit, what is written down picks nothing, and the page says what does."""
    assert room.round is not None
    number, line, code = waiting(shop, room.round.id)[0]
    shop.act("owner", lambda unit: cards.choose_check(unit, "none"))
    answers = [enter(client, room.round.id, **{f"digit-{number}": written}).text for written in (code[-1], code)]
    assert [True, True] == ["as on a round" in page.partition('role="status"')[2][:600] for page in answers]
    assert LineState.WAITING is state(shop, line)


def test_the_bars_of_a_stop_lead_to_its_line(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """Scanned on any page they open the entry of that round at that stop; with a wrong check they lead nowhere."""
    assert room.round is not None
    number = waiting(shop, room.round.id)[2][0]
    answer = client.get(f"/search?q={slot_code.stop_text(number)}")
    assert (303, f"/rounds/{room.round.id}/paper?stop={number}") == (answer.status_code, answer.headers["Location"])
    page = client.get(answer.headers["Location"]).text
    assert [f"digit-{number}"] == re.findall(r'name="(digit-[0-9]+)"[^>]*autofocus', page)
    assert 200 == client.get("/search?q=STP000127").status_code


@pytest.mark.parametrize("station", ["bin", "table", "tray", "shelf"])
def test_the_bars_of_a_stop_are_no_card(client: FlaskClient, shop: Shop, room: Furnished, station: str) -> None:
    """At every station they are refused as a code that is no card's, and nothing moves."""
    assert room.round is not None
    number, line, _ = waiting(shop, room.round.id)[0]
    at = {"bin": {"round": room.round.id}, "shelf": {"bin": "A-1-1"}}.get(station, {})
    body = {"station": station, "key": f"bars-{station}", "text": slot_code.stop_text(number), **at}
    answer = client.post("/api/scans", json=body).get_json()
    assert ("refused", "unknown_code") == (answer["verdict"], answer["reason"])
    assert LineState.WAITING is state(shop, line)


def test_a_round_entered_after_it_ended(client: FlaskClient, shop: Shop, room: Furnished) -> None:
    """It is still taken, while its line waits."""
    assert room.round is not None
    number, line, code = waiting(shop, room.round.id)[0]
    walk = room.round.id
    shop.act("owner", lambda unit: rounds.close_round(unit, walk))
    enter(client, walk, **{f"digit-{number}": slot_code.calc_check_digit(code)})
    assert LineState.PICKED is state(shop, line)


def test_unknown_things_are_not_found(client: FlaskClient) -> None:
    """404 for an order or a round that is none."""
    for address in ("/orders/none/slip.pdf", "/rounds/none/slips.pdf", "/rounds/none/sheet.pdf", "/rounds/none/paper"):
        assert (address, 404) == (address, client.get(address).status_code)


def test_the_choice_of_paper_is_sent_by_tls_alone(shop: Shop, client: FlaskClient) -> None:
    """Under HTTPS the cookie is marked so (RFC 6265bis, 4.1.2.5); in plain it could not be kept."""
    order = furnish(shop, 4).orders[0].id
    address = f"/orders/{order}/slip.pdf?paper=a4"
    marked = ["Secure" in client.get(address, base_url=base).headers["Set-Cookie"] for base in BASES]
    assert [True, False] == marked


BASES = ("https://localhost", "http://localhost")
