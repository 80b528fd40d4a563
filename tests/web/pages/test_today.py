"""The day's page names one thing to do next: what is under way before what waits, what waits before what stands."""

from __future__ import annotations

import re
from dataclasses import replace

from clients import SQLITE_ONLY
from flask.testing import FlaskClient
from furnished import furnish
from shown_counts import opened

from scanflow.domain.life import CardState, Hold, LineState, ParcelState
from scanflow.domain.things import Line, Parcel, Slot
from scanflow.shop import Shop
from scanflow.workflow import orders, parcels, rounds, stock, stocktakes

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
    """Then what is held is settled, cards are scanned into the tray, and things are put away."""
    stay = furnish(shop, 1).stays[0]
    with shop.looking() as unit:
        line = unit.find(Line, stay=stay.id)[0]
    shop.act("owner", lambda unit: orders.hold(unit, line.id, "Not this thing."))
    words = [next_words(client)]
    shop.act("owner", lambda unit: orders.cancel(unit, line.order))
    words.append(next_words(client))
    shop.act("owner", lambda unit: stock.withdraw(unit, stay.id, "Broken"))
    words.append(next_words(client))
    assert ["Settle 1 held line", "Put something away", "Scan 1 card into the tray"] == words


def test_shop_that_does_not_scan_at_the_bin(shop: Shop, client: FlaskClient) -> None:
    """There the table packs what waits: no round is offered."""
    room = furnish(shop, 2)
    order = room.orders[0]
    assert room.round is not None
    shop.act("owner", lambda unit: rounds.close_round(unit, room.round.id if room.round else ""))
    with shop.looking() as unit:
        line = unit.find(Line, order=order.id)[0]
    shop.act("owner", lambda unit: (orders.short(unit, line.id), orders.found(unit, line.id)))
    assert "Start a round of 1 thing" == next_words(client)
    shop.act("owner", lambda unit: unit.set_settings(replace(unit.settings, scan_at_bin=False)))
    assert "Pack 1 thing" == next_words(client)
    assert f"Pack {order.number}" in client.get("/table").text


def test_lines_of_the_day(shop: Shop, client: FlaskClient) -> None:
    """What is held and why, what is missing, what must go back and which cards are due stand on the page."""
    furnish(shop, 25)
    html = client.get("/").text
    with shop.looking() as unit:
        held = next(each for each in unit.find(Line) if each.has(Hold.DOUBTFUL))
        short = unit.find(Line, state=LineState.SHORT)[0]
        due = unit.find(Slot, card=CardState.DUE)[0]
    for words in (held.why.split("“")[0], f"/orders/{short.order}", f"Card {due.code}", "to put back"):
        assert words in html


def test_counts_under_way(shop: Shop, client: FlaskClient) -> None:
    """Each leads on from the day's page, until it ends."""
    furnish(shop, 4)
    count = opened(shop, "shelf:A-1")
    assert f'href="/counts/{count.id}">Count of shelf A-1</a>' in client.get("/").text
    shop.act("owner", lambda unit: stocktakes.cancel(unit, count.id))
    assert "Count of" not in client.get("/").text
