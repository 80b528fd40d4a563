"""The day's page names one thing to do next: what is under way before what waits, what waits before what stands."""

from __future__ import annotations

import html
import re
from dataclasses import replace

from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish, reference, scan
from shown_counts import opened

from scanflow.domain.life import CardState, Hold, LineState, ParcelState
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.things import Line, Listing, Parcel, Slot, Station
from scanflow.shop import Shop
from scanflow.workflow import orders, parcels, stock
from scanflow.workflow.counts import stocktakes
from scanflow.workflow.orders import receiving
from scanflow.workflow.picking import rounds
from scanflow.workflow.stock import listings

pytestmark = SQLITE_ONLY


def next_words(client: FlaskClient) -> str:
    found = re.findall(r'<(?:a|button) class="next"[^>]*>([^<]*)<', client.get("/").text)
    assert 1 == len(found)
    return str(found[0])


def test_next(shop: Shop, client: FlaskClient) -> None:
    """From an empty room through a day: each thing done brings up the next."""
    words = [next_words(client)]
    room = furnish(shop, 25)
    words.append(next_words(client))
    with shop.looking() as unit:
        parcel = unit.find(Parcel, state=ParcelState.OPEN)[0]
        order = next(each for each in room.orders if each.id == parcel.orders[0])
    shop.act("owner", lambda unit: parcels.set_aside(unit, parcel.id))
    words.append(next_words(client))
    assert room.round is not None
    shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id if room.round else ""))
    words.append(next_words(client))
    assert ["Plan the first section", f"Go on packing {order.number}"] == words[:2]
    shapes = [r"Go on with the round, \d+ stops?", r"Pack \d+ things?"]
    assert [True, True] == [
        re.fullmatch(shape, said) is not None for shape, said in zip(shapes, words[2:], strict=True)
    ]


def test_next_when_nothing_waits(shop: Shop, client: FlaskClient) -> None:
    """Then what is held is settled, offers are taken down, cards are scanned into the tray, and things are put away."""
    stay = furnish(shop, 1).stays[0]
    with shop.looking() as unit:
        line = unit.find(Line, stay=stay.id)[0]
    shop.act("owner", lambda unit: orders.hold(unit, line.id, orders.NotThis(why="Not this thing.")))
    words = [next_words(client)]
    shop.act("owner", lambda unit: orders.cancel(unit, line.order, orders.Cancel()))
    words.append(next_words(client))
    shop.act("owner", lambda unit: stock.withdraw(unit, stay.id, stock.Withdraw(reason="Broken")))
    words.append(next_words(client))
    with shop.looking() as unit:
        (offer,) = unit.find(Listing)
    shop.act("owner", lambda unit: listings.end(unit, offer.id))
    words.append(next_words(client))
    assert ["Settle 1 held line", "Put something away", "Take down 1 offer", "Scan 1 card into the tray"] == words


def test_shop_that_does_not_scan_at_the_bin(shop: Shop, client: FlaskClient) -> None:
    """There the table packs what waits: no round is offered."""
    room = furnish(shop, 2)
    order = room.orders[0]
    assert room.round is not None
    shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id if room.round else ""))
    with shop.looking() as unit:
        line = unit.find(Line, order=order.id)[0]
    shop.act("owner", lambda unit: (orders.short(unit, line.id, orders.Short()), orders.found(unit, line.id)))
    assert "Start a round of 1 thing" == next_words(client)
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, scan_at_bin=False)))
    assert "Pack 1 thing" == next_words(client)
    assert f"Pack {order.number}" in client.get("/table").text


def test_lines_of_the_day(shop: Shop, client: FlaskClient) -> None:
    """What is held and why, what is missing, what is out of place and which cards are due stand on the page."""
    furnish(shop, 25)
    page = client.get("/").text
    with shop.looking() as unit:
        held = next(each for each in unit.find(Line) if each.has(Hold.DOUBTFUL))
        short = unit.find(Line, state=LineState.SHORT)[0]
        due = unit.find(Slot, card=CardState.DUE)[0]
    for words in (held.why.split("“")[0], f"/orders/{short.order}", f"Card {due.code}", "out of place"):
        assert words in page


def one_thing(shop: Shop) -> tuple[str, str]:
    """A thing that an order wants, on no round: its line and its stay."""
    room = furnish(shop, 2)
    scan(shop, Station.SHELF, room.stays[0].code, bin="A-1-1")
    shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id if room.round else ""))
    with shop.looking() as unit:
        return unit.find(Line, order=room.orders[0].id)[0].id, room.stays[0].id


def out_of_place(client: FlaskClient) -> list[str]:
    """What the day's page says under that heading."""
    _, _, after = client.get("/").text.partition("out of place</h2>")
    return [html.unescape(each) for each in re.findall(r'<span class="meta">([^<]*)', after.partition("</section>")[0])]


def test_what_is_out_of_place(shop: Shop, client: FlaskClient) -> None:
    """A missing thing that was read says who needs it, a card refused at the tray goes back on, a loose one there."""
    line, _ = one_thing(shop)
    assert [] == out_of_place(client)
    shop.act("owner", lambda unit: orders.short(unit, line, orders.Short()))
    assert [] == out_of_place(client)
    scan(shop, Station.SHELF, "D001", key="read", bin="B-1-1")
    scan(shop, Station.TRAY, "S001")
    scan(shop, Station.TABLE, "L003")
    assert [
        "Missing from bin A-1-1, but its card was seen in bin B-1-1. Order B-1 still needs it: bring it to the table.",
        "In the tray by the records, but its card was seen at table main. Bring it to the tray, and scan it there.",
        "In bin B-1-1 by the records, but its card is not on it: look in the tray. Put the card back on it.",
    ] == out_of_place(client)


def test_what_was_picked_and_sold_again(shop: Shop, client: FlaskClient) -> None:
    """It lies in its basket still: not a thing to put back, but one that an order wants."""
    room = furnish(shop, 2)
    shop.act("owner", lambda unit: orders.cancel(unit, room.orders[0].id, orders.Cancel()))
    assert ["In basket 1. Put it back in A-1-1."] == out_of_place(client)
    lines = (IncomingLine(reference(room.stays[0])),)
    shop.act("owner", lambda unit: receiving.receive(unit, IncomingOrder("C-1", lines=lines)))
    wanted = "In basket 1. Order C-1 wants it: bring it to the table, or pick it on a round."
    assert [wanted] == out_of_place(client)


def test_what_is_missing_and_nobody_wants(shop: Shop, client: FlaskClient) -> None:
    """It stands in a list of its own, until an order wants it or its card is read."""
    line, stay = one_thing(shop)
    shop.act("owner", lambda unit: orders.short(unit, line, orders.Short()))
    heading = "1 thing missing that no order wants"
    seen = [heading in client.get("/").text]
    with shop.looking() as unit:
        order = unit.get(Line, line)
    assert order is not None
    shop.act("owner", lambda unit: orders.cancel(unit, order.order, orders.Cancel()))
    page = client.get("/").text
    seen.append(heading in page)
    assert f'href="/stays/{stay}"' in page
    scan(shop, Station.SHELF, "D001", key="seen", bin="A-1-1")
    seen.append(heading in client.get("/").text)
    assert [False, True, False] == seen


def test_two_cards_of_one_number(shop: Shop, client: FlaskClient) -> None:
    """Once both were read the day's page says which to destroy, until a person says so on the slot's page."""
    stay = furnish(shop, 2).stays[1]
    heading = "Two cards with the same code"
    assert 303 == client.post(f"/slots/{stay.code}/lost").status_code
    printed = client.post(f"/slots/{stay.code}/reprint", data={"lost": "Nowhere to be found"})
    assert "application/pdf" == printed.mimetype
    scan(shop, Station.SHELF, stay.code, bin="B-1-1")
    seen = [heading in client.get("/").text]
    scan(shop, Station.TRAY, stay.code)
    page = client.get("/").text
    seen.append(heading in page)
    assert "Destroy the one that is not on the thing, Leather saddle 2." in html.unescape(page)
    (doubt,) = client.get(f"/api/stays/{stay.id}/doubts").get_json()["doubts"]
    assert ("not_this", True) == (doubt["kind"], "One of them is a twin: destroy it." in doubt["words"])
    assert "The other card is destroyed" in client.get(f"/slots/{stay.code}").text
    assert 303 == client.post(f"/slots/{stay.code}/destroyed").status_code
    seen.append(heading in client.get("/").text)
    assert [False, True, False] == seen
    assert 409 == client.post(f"/slots/{stay.code}/destroyed").status_code
    assert "The other card is destroyed" not in client.get(f"/slots/{stay.code}").text


def test_a_card_lost_once_more_has_no_twin_that_was_read(shop: Shop, client: FlaskClient) -> None:
    """What was told of former twins says nothing of the new one."""
    stay = furnish(shop, 2).stays[1]
    for key in ("first", "second"):
        client.post(f"/slots/{stay.code}/lost")
        client.post(f"/slots/{stay.code}/reprint", data={"lost": "Nowhere to be found"})
        if key == "first":
            scan(shop, Station.SHELF, stay.code, bin="B-1-1")
            scan(shop, Station.TRAY, stay.code)
            client.post(f"/slots/{stay.code}/destroyed")
    assert "Two cards with the same code" not in client.get("/").text


def test_counts_under_way(shop: Shop, client: FlaskClient) -> None:
    """Each leads on from the day's page, until it ends."""
    furnish(shop, 4)
    count = opened(shop, "shelf:A-1")
    assert f'href="/counts/{count.id}">Count of shelf A-1</a>' in client.get("/").text
    shop.act("owner", lambda unit: stocktakes.cancel(unit, count.id))
    assert "Count of" not in client.get("/").text
