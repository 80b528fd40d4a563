"""A page is one view of the room: all of it is as it was at one moment, on both databases."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from typing import Any

import pytest
from every_page import addresses, front_door
from flask.testing import FlaskClient
from furnished import furnish

from scanflow.domain import events
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.unit import SqlUnit
from scanflow.storage.views import where as where_views
from scanflow.web.door.visitors import Recent

UNSEEN = {"/offline": 0, "/no-such-page": 0}
"""What shows nothing of the room."""


@pytest.fixture
def views(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Who opened a view of the room, each time; who calls is known from the first call on."""
    opened: list[str] = []
    reading = Database.reading

    @contextmanager
    def counted(self: Database, at: Any, who: str = "", *more: Any) -> Iterator[SqlUnit]:
        opened.append(who)
        with reading(self, at, who, *more) as unit:
            yield unit

    monkeypatch.setattr(Database, "reading", counted)
    monkeypatch.setattr(Recent, "LASTS", timedelta(days=1))
    monkeypatch.setattr(Recent, "forget", lambda self: None)
    return opened


def test_a_page_is_one_view(shop: Shop, client: FlaskClient, views: list[str]) -> None:
    """Each page opens one, however much it shows, and closes it."""
    pages = [*addresses(shop, furnish(shop, 25)), *front_door(shop)]
    client.get("/")
    opened = {}
    for address in pages:
        views.clear()
        client.get(address)
        opened[address] = len(views)
    assert UNSEEN == {address: times for address, times in opened.items() if times != 1}
    assert 0 == shop.database._reader.pool.checkedout()  # type: ignore[attr-defined]


def test_an_answer_shows_what_its_form_did(shop: Shop, client: FlaskClient, views: list[str]) -> None:
    """A form that is answered by a page gets a view from after its write, and no other is open meanwhile."""
    room = furnish(shop, 25)
    assert room.round is not None
    path = f"/rounds/{room.round.id}/paper"
    stop = re.search(r'name="gone-(\d+)"', client.get(path).text)
    assert stop is not None
    html = client.post(path, data={f"gone-{stop[1]}": "on"}).text
    assert ("Noted as missing" in html, f'name="gone-{stop[1]}"' in html) == (True, False)
    assert 0 == shop.database._reader.pool.checkedout()  # type: ignore[attr-defined]


def test_what_happens_meanwhile_is_news(shop: Shop, client: FlaskClient, monkeypatch: pytest.MonkeyPatch) -> None:
    """What somebody does while a page is made is not on it, so that the page asks for it afterwards."""
    stay = furnish(shop, 4).stays[0]
    asked = where_views.whereabouts_of

    def meanwhile(*given: Any) -> Any:
        shop.act("helper", lambda unit: unit.record(events.TwinDestroyed(code=stay.code)))
        return asked(*given)

    with shop.looking() as unit:
        before = unit.seq
    monkeypatch.setattr(where_views, "whereabouts_of", meanwhile)
    html = client.get(f"/slots/{stay.code}").text
    assert (f'data-seq="{before}"' in html, "<strong>twin destroyed</strong>" in html) == (True, False)
