"""A file of orders is loaded part by part: others have their turn meanwhile, and one that is cut off goes on."""

from __future__ import annotations

import json
import threading
import urllib.request
from collections.abc import Callable
from contextlib import ExitStack
from dataclasses import astuple
from datetime import timedelta
from random import Random
from typing import Any

import pytest
import small_disk
from calls import Calls
from clients import SQLITE_ONLY, new_token
from served import forked_services
from sqlalchemy import text

from scanflow import shop as shops
from scanflow.domain import events
from scanflow.domain.access import Role
from scanflow.domain.orders.incoming import IncomingLine, IncomingOrder
from scanflow.domain.orders.loaded import Loaded
from scanflow.domain.things import Line, Order
from scanflow.exchange import order_files
from scanflow.shop import Shop
from scanflow.storage.database import Database
from scanflow.storage.writing import failing
from scanflow.workflow.orders import file as order_file
from scanflow.workflow.ports import Unit

HEADER = "number,channel,ordered_at,ship_by,reference,title,listing\n"


@pytest.fixture
def small_parts(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each part is one order."""
    monkeypatch.setattr(shops, "SLICE", 0.0)
    monkeypatch.setattr(shops, "GAP", 0.0)


def file_of(count: int) -> bytes:
    """Orders of two lines each that are all held, the second lines after all the first; the last row is refused."""
    rows = [f"{n},fair,,,{reference},Saddle,\n" for reference in ("nothing", "") for n in range(1, count + 1)]
    return (HEADER + "".join(rows) + ",fair,,,D001-01,no number,\n").encode()


def first_part(shop: Shop, file: bytes) -> Callable[[Unit], Loaded | None]:
    """What loads the next part of this file."""
    parsed = order_files.read(shop.looking, file)
    with shop.looking() as unit:
        return order_file.in_parts(unit, parsed.key, parsed.orders, parsed.rows, shops.a_while)


def far(shop: Shop, file: bytes) -> int:
    """How many orders of this file are in by a load that was ended."""
    with shop.looking() as unit:
        return unit.loads.far(order_files.read(shop.looking, file).key).done


def orders_of(shop: Shop) -> list[tuple[Any, ...]]:
    """What stands of orders and lines, without their random names."""
    with shop.looking() as unit:
        lines = {
            order.id: [astuple(line)[2:] for line in unit.find(Line, order=order.id)] for order in unit.find(Order)
        }
        return [(order.number, order.slip, lines[order.id]) for order in unit.find(Order)]


@pytest.mark.usefixtures("small_parts")
def test_parts_come_to_the_same(calls: Calls, shop: Shop, monkeypatch: pytest.MonkeyPatch) -> None:
    """Rows of an order that stand far apart are its lines; counts, held lines and refused rows are of the whole."""
    done = calls.upload("/api/orders/import", file=file_of(7))
    stand = orders_of(shop)
    assert (7, 0, 0, 14) == (done["loaded"], done["changed"], done["unchanged"], len(set(done["held"])))
    assert ([16], 7 * [2]) == ([row["row"] for row in done["refused"]], [len(lines) for _, _, lines in stand])
    again = calls.upload("/api/orders/import", file=file_of(7))
    assert (0, 7, done["held"]) == (again["loaded"], again["unchanged"], again["held"])
    fewer = b"".join(line for line in file_of(7).splitlines(keepends=True) if b"3,fair,,,nothing" not in line)
    later = calls.upload("/api/orders/import", file=fewer)
    assert (1, 6) == (later["changed"], later["unchanged"])
    with shop.looking() as unit:
        assert 0 == unit.connection.execute(text("SELECT count(*) FROM answers")).scalar()


@pytest.mark.usefixtures("small_parts")
def test_others_have_their_turn_between_two_parts(calls: Calls, shop: Shop) -> None:
    """What another one does while a file is loaded stands in the ledger between the file's orders."""
    wrote = threading.Event()
    with shop.looking() as unit:
        begun = unit.seq

    def other() -> None:
        while not wrote.is_set():
            with shop.looking() as unit:
                if unit.seq == begun:
                    continue
            shop.act("other", lambda unit: unit.record(events.Changed()))
            wrote.set()

    thread = threading.Thread(target=other)
    thread.start()
    calls.upload("/api/orders/import", file=file_of(60))
    thread.join()
    told = [entry["kind"] for entry in calls.get(f"/api/ledger?after={begun}&limit=500")["entries"]]
    assert ("order received", "orders loaded") == (told[0], told[-1])
    assert events.Changed.kind in told


@pytest.mark.usefixtures("small_parts")
@SQLITE_ONLY
def test_a_load_that_finds_the_disk_full_goes_on(calls: Calls, shop: Shop, monkeypatch: pytest.MonkeyPatch) -> None:
    """It says that a part is done; the page shows how many; sent again, no order is done twice, and all are counted."""
    with ExitStack() as stack:
        parts: list[float] = []

        def pause(seconds: float) -> None:
            parts.append(seconds)
            if len(parts) == 3:
                stack.enter_context(small_disk.full(None))

        monkeypatch.setattr(shops.time, "sleep", pause)
        problem = calls.upload("/api/orders/import", 503, file=file_of(9))
    assert (failing.FULL, True) == (problem["code"], problem["detail"].endswith(shops.BEGUN))
    assert 3 == len(orders_of(shop)) == far(shop, file_of(9))
    monkeypatch.undo()
    done = calls.upload("/api/orders/import", file=file_of(9))
    received = [each for each in calls.get("/api/ledger?limit=500")["entries"] if each["kind"] == "order received"]
    assert (9, 0, 18, 9) == (done["loaded"], done["unchanged"], len(set(done["held"])), len(received))


@SQLITE_ONLY
@pytest.mark.usefixtures("small_parts")
def test_a_load_cut_off_long_ago_begins_anew(calls: Calls, shop: Shop, monkeypatch: pytest.MonkeyPatch) -> None:
    """Days later the room is another: each order is looked at again, and none is there twice."""
    shop.act("x", first_part(shop, file_of(4)))
    now = shop.clock()
    monkeypatch.setattr(shop, "clock", lambda: now + timedelta(days=2))
    done = calls.upload("/api/orders/import", file=file_of(4))
    assert (3, 1, 4) == (done["loaded"], done["unchanged"], len(orders_of(shop)))


@SQLITE_ONLY
def test_killed_in_the_middle_and_sent_again(database_url: str) -> None:
    """The service is killed when the first part is in. The same call is answered as if it had not been."""
    shop = Shop(Database(database_url))
    token = new_token(shop, "program", Role.PROGRAM)
    count = 900

    def send(port: int) -> Any:
        head = {"Authorization": f"Bearer {token}", "Content-Type": "multipart/form-data; boundary=b"}
        head["Idempotency-Key"] = "load1"
        part = b'--b\r\nContent-Disposition: form-data; name="file"; filename="f.csv"\r\n\r\n'
        body = part + file_of(count) + b"\r\n--b--\r\n"
        call = urllib.request.Request(f"http://127.0.0.1:{port}/api/orders/import", body, head)
        with urllib.request.urlopen(call, timeout=60) as answer:
            return json.load(answer)

    with forked_services() as services:
        with pytest.raises(OSError):
            send(services.start(database_url, "after").port)
        first = len(orders_of(shop))
        server = services.start(database_url)
        done, again = send(server.port), send(server.port)
    with shop.looking() as unit:
        query = text("SELECT count(*) FROM ledger WHERE kind = 'order received'")
        received = unit.connection.execute(query).scalar()
    assert 0 < first < count
    assert (count, 0, 2 * count, done) == (done["loaded"], done["unchanged"], len(set(done["held"])), again)
    assert count == received == len(orders_of(shop))
    shop.database.close()


def some_orders(random: Random, references: list[str]) -> list[IncomingOrder]:
    """Orders of few numbers, so that many come again, with and without a channel, and want the same things."""
    found = []
    for _ in range(random.randint(1, 8)):
        lines = tuple(
            IncomingLine(
                random.choice([*references, "nothing", ""]),
                random.choice(["Saddle", "Lamp", ""]),
                random.choice(["", "L1"]),
            )
            for _ in range(random.randint(0, 3))
        )
        when = random.choice([None, "2026-11-03T14:05:00+01:00", "never"])
        found.append(IncomingOrder(str(random.randint(1, 3)), random.choice(["", "fair"]), when, None, lines))
    return found


@SQLITE_ONLY
def test_a_trial_tells_what_a_load_does(calls: Calls, shop: Shop) -> None:
    """In a room where orders stand already: the same counts, holds and refused rows; and it changes nothing."""
    calls.section(slots=6)
    references = [calls.put_away(title)["reference"] for title in ("Saddle", "Lamp", "Bell", "Brass bell")]
    random = Random(5)

    def told(unit: Any, done: Loaded) -> Any:
        held = [(line.reference, line.stay, line.holds, line.state) for line in (unit.get(Line, x) for x in done.held)]
        return done.loaded, done.changed, done.unchanged, done.refused, held

    for _ in range(40):
        orders = some_orders(random, references)
        rows = {(each.channel, each.number): (1,) for each in orders}
        before = orders_of(shop)
        with shop.trying("owner") as unit:
            tried = told(unit, order_file.load(unit, orders, rows))
        assert before == orders_of(shop)
        assert tried == shop.act("owner", lambda unit: told(unit, order_file.load(unit, orders, rows)))  # noqa: B023


@pytest.mark.usefixtures("small_parts")
def test_what_a_complete_file_lacks_is_held_part_by_part(calls: Calls, shop: Shop) -> None:
    """Each absent order once; one that was cancelled between two parts stays as it is."""
    calls.section()
    stays = [calls.put_away(f"Saddle {n}") for n in range(4)]
    calls.post("/api/channels", 201, name="fair", complete=True)
    rows = [f"{n},fair,,,{stay['reference']},{stay['title']},\n" for n, stay in enumerate(stays)]
    whole, rest = (HEADER + "".join(rows)).encode(), (HEADER + rows[0]).encode()
    shop.act_in_parts("owner", first_part(shop, whole))

    parsed = order_files.read(shop.looking, rest)
    with shop.looking() as unit:
        part = order_file.in_parts(unit, "rest", parsed.orders, parsed.rows, lambda: lambda: True, parsed.listed)
    assert None is shop.act("owner", part)
    [last] = [order for order in calls.get("/api/orders")["orders"] if order["number"] == "3"]
    calls.post(f"/api/orders/{last['id']}/cancel", 200)
    assert (None, 2) == (shop.act("owner", part), len(shop.act("owner", part).held))
    holds = {each["number"]: each["lines"][0]["hold"] for each in calls.get("/api/orders")["orders"]}
    assert {"0": None, "1": "not_in_file", "2": "not_in_file", "3": None} == holds
