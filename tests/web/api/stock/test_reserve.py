"""A thing is kept for somebody until a day; an order on it is held meanwhile, and says for whom."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from calls import Calls
from flask.testing import FlaskClient

from scanflow.domain.things import Item
from scanflow.house import JOBS
from scanflow.shop import Shop


def in_days(shop: Shop, days: float) -> str:
    return (shop.clock() + timedelta(days=days)).isoformat(timespec="seconds")


def reserved(shop: Shop, calls: Calls, days: float = 3) -> Any:
    """A thing that is kept for Ann."""
    calls.section()
    stay = calls.put_away()
    calls.post(f"/api/stays/{stay['id']}/reserve", **{"for": "Ann", "until": in_days(shop, days)})
    return stay


def holds(calls: Calls, order: Any) -> list[str]:
    [line] = calls.get(f"/api/orders/{order['id']}")["lines"]
    return [each["hold"] for each in line["holds"]]


def pass_time(shop: Shop, days: float) -> None:
    """Let time pass; then the house does what is due."""
    later = shop.clock() + timedelta(days=days)
    shop.clock = lambda: later
    [job] = [job for job in JOBS if job.name == "end reservations"]
    job.work(shop)


def test_an_order_on_it_is_held_and_says_for_whom(shop: Shop, calls: Calls) -> None:
    """The person who settles it gives it to the order; then it is kept for nobody."""
    stay = reserved(shop, calls)
    order = calls.order("7", stay)
    [line] = order["lines"]
    assert ("held", "reserved", stay["id"]) == (order["state"], line["hold"], line["stay"])
    assert "kept for Ann until" in line["why"]
    assert [] == calls.post("/api/rounds", 201, orders=[order["id"]])["stops"]
    calls.post(f"/api/lines/{line['id']}/settle")
    assert [] == holds(calls, order)
    with shop.looking() as unit:
        assert ["", None] == [value for item in unit.find(Item) for value in (item.kept_for, item.kept_until)]


def test_it_ends_by_itself(shop: Shop, calls: Calls) -> None:
    """What waited for that goes on, and a later order is not held."""
    stay = reserved(shop, calls)
    order = calls.order("7", stay)
    pass_time(shop, 2)
    assert ["reserved"] == holds(calls, order)
    pass_time(shop, 2)
    assert [] == holds(calls, order)
    assert "waiting" == calls.get(f"/api/orders/{order['id']}")["state"]


def test_an_order_after_it_is_over_is_not_held(shop: Shop, calls: Calls) -> None:
    """Also where the house has not come to it yet."""
    stay = reserved(shop, calls, days=1)
    later = shop.clock() + timedelta(days=2)
    shop.clock = lambda: later
    assert "waiting" == calls.order("7", stay)["state"]


def test_it_goes_with_the_thing(shop: Shop, calls: Calls) -> None:
    """A move ends nothing; a line that a person binds to the thing is held, too."""
    stay = reserved(shop, calls)
    moved = calls.post(f"/api/stays/{stay['id']}/move", to="D004")
    order = calls.post("/api/orders", 201, number="7", lines=[{"reference": "no code", "title": "Lamp"}])
    calls.post(f"/api/lines/{order['lines'][0]['id']}/settle", stay=moved["id"])
    assert ["reserved"] == holds(calls, order)


def test_what_can_not_be_reserved(shop: Shop, calls: Calls) -> None:
    """What an order wants, what has left, and a time that is past."""
    calls.section()
    [wanted], _ = calls.ordered()
    free = calls.put_away()
    said = {"for": "Ann", "until": in_days(shop, 1)}
    assert "has_live_line" == calls.post(f"/api/stays/{wanted['id']}/reserve", 409, **said)["code"]
    past = calls.post(f"/api/stays/{free['id']}/reserve", 422, **said | {"until": "2020-01-01"})
    assert [{"pointer": "/until", "code": "past"}] == past["errors"]
    assert "/for" == calls.post(f"/api/stays/{free['id']}/reserve", 422, until=said["until"])["errors"][0]["pointer"]
    calls.post(f"/api/stays/{free['id']}/withdraw", reason="cracked")
    assert "not_in_stock" == calls.post(f"/api/stays/{free['id']}/reserve", 409, **said)["code"]


@pytest.mark.parametrize("step", ["free", "reserve"])
def test_its_page(shop: Shop, calls: Calls, client: FlaskClient, step: str) -> None:
    """It says for whom; one press ends it, another word takes its place. The ledger has no name."""
    stay = reserved(shop, calls)
    path = f"/stays/{stay['id']}"
    assert "Ann, until" in client.get(path).text
    assert 303 == client.post(f"{path}/{step}", data={"for": "Bert", "until": in_days(shop, 5)[:10]}).status_code
    shown = client.get(path).text
    assert (False, step == "reserve") == ("Ann, until" in shown, "Bert, until" in shown)
    assert "Ann" not in client.get("/api/ledger").text
