"""With 5,000 things that orders want every page is still one that a phone can load and a person can read."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from shutil import copy

import pytest
from big_shop import ROUND, fill_big_shop, some_bin
from clients import client_of
from flask.testing import FlaskClient

from scanflow.domain.access import Role
from scanflow.domain.things import Stop
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.vision.workers import Readers
from scanflow.web import create_app

MOST_BYTES = 500_000


@pytest.fixture(scope="module")
def big_shop(sqlite_template: Path, tmp_path_factory: pytest.TempPathFactory, readers: Readers) -> Iterator[Shop]:
    path = tmp_path_factory.mktemp("big") / "shop.db"
    copy(sqlite_template, path)
    shop = Shop(Database(f"sqlite:///{path}"), readers)
    fill_big_shop(shop)
    yield shop
    shop.database.close()


@pytest.fixture(scope="module")
def visitor(big_shop: Shop) -> FlaskClient:
    return client_of(create_app(big_shop), big_shop, Role.OWNER)


ADDRESSES = (
    *("/", "/put-away", "/orders", "/orders?state=held", "/orders?state=released&from=5000", "/rounds", "/table"),
    *(f"/rounds/{ROUND}", f"/rounds/{ROUND}?stop=700", f"/rounds/{ROUND}?from=900", f"/rounds/{ROUND}/paper"),
    *("/tray", "/shelf", "/shelf?bin={bin}", "/slots", "/slots?state=away", "/slots?from=5900", "/slots/A0001"),
    *("/sections/A", "/sections/A?intake=90&stay=60", "/sections/A/near?quick=30&quick_stay=9&slow_stay=90"),
    *("/room", "/room?section=A", "/room/anew", "/cards", "/ledger", "/trouble", "/settings", "/hand-over", "/devices"),
    *("/counts", "/counts?area=rack:R1"),
    *(
        "/search?q=wheel",
        "/search?q=36+holes",
        "/orders/o3",
        "/orders/o5",
        "/lines/l3-1",
        "/stays/s2A0001",
    ),
)


@pytest.mark.parametrize("address", ADDRESSES)
def test_weight(big_shop: Shop, visitor: FlaskClient, address: str) -> None:
    """No page weighs 500 kB; its time is a bench's."""
    reply = visitor.get(address.format(bin=some_bin(big_shop)))
    assert 200 == reply.status_code
    assert MOST_BYTES > len(reply.data)


@pytest.mark.parametrize(
    ("address", "figure", "unit"),
    [
        ("/", "3,000", "things to send"),
        ("/table", "250", "orders to pack"),
        ("/rounds", "1,000", "things wait"),
        ("/hand-over", "300", "parcels to hand over"),
        ("/tray", "500", "cards due back"),
        ("/slots?section=A", "6,000", "slots of section A"),
        ("/orders?state=held", "250", "orders held"),
    ],
)
def test_the_plate_counts_all(visitor: FlaskClient, big_shop: Shop, address: str, figure: str, unit: str) -> None:
    """The plate says how many there are, not how many of them are listed."""
    big_shop.act("owner", lambda work: work.set_settings(replace(work.settings, hand_overs=True)))
    plate = re.search(r'class="figures">([\d,]+)<.*?class="under">([^<]*)<', visitor.get(address).text, re.DOTALL)
    assert plate is not None
    assert (figure, unit) == plate.groups()


def test_a_round_that_a_person_can_walk(visitor: FlaskClient, big_shop: Shop) -> None:
    """Of 1,000 things that wait one round takes the most urgent 100, and says so before."""
    assert "Start a round of up to 100 things" in visitor.get("/rounds").text
    walk = visitor.post("/rounds").headers["Location"]
    assert "All 100 stops" in visitor.get(walk).text
    with big_shop.looking() as unit:
        assert 1000 + 100 == len(unit.find(Stop))


def test_a_long_round_is_turned_over(visitor: FlaskClient) -> None:
    """The list of stops comes in pages, each stop on one of them, and begins where the walk is."""
    listed = re.compile(r'class="meta">bin ([^,]+), basket')
    pages = [listed.findall(visitor.get(f"/rounds/{ROUND}?from={skip}").text) for skip in range(0, 1000, 50)]
    assert (1000, 50) == (sum(map(len, pages)), len(pages[-1]))
    assert pages[14] == listed.findall(visitor.get(f"/rounds/{ROUND}?stop=710").text)
