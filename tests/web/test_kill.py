"""The service is killed under load and at every commit: what was answered stays, what was not is answered once."""

from __future__ import annotations

import json
import random
import threading
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from typing import Any

import pytest
from clients import new_token
from racer import Caller, Racer, Sent, Unanswered
from served import Server, answers_hold, forked_services, furnish, ledger, nothing_doubled
from sqlalchemy import text

from labels.slot_code import card_text
from scanflow.domain.access import Role
from scanflow.domain.things import Doubt
from scanflow.shop import Shop
from scanflow.storage.database import Database

CLIENTS = 4
KILLS = {"sqlite": 12, "postgresql": 4}
MANY = 4
"""Times as many kills where a test may take long."""


@pytest.mark.parametrize("times", [1, pytest.param(MANY, marks=pytest.mark.long)])
def test_killed_under_load(database_url: str, times: int) -> None:
    """Killed at random moments while clients work: each answer is given again, each open call is answered once."""
    kills = times * KILLS[database_url.partition(":")[0]]
    token, chance, up, stop = furnish(database_url), random.Random(7), threading.Event(), threading.Event()
    with forked_services() as services:
        current: list[Server] = [services.start(database_url)]
        racers = [Racer(Caller(lambda: current[0].port, token), f"k{number}") for number in range(CLIENTS)]

        def load(racer: Racer) -> None:
            while not stop.is_set():
                up.wait()
                try:
                    racer.step()
                except Unanswered:
                    time.sleep(0.001)

        with ThreadPoolExecutor(CLIENTS) as pool:
            working = [pool.submit(load, racer) for racer in racers]
            for _ in range(kills):
                up.set()
                _wait_for(racers, chance.randint(2, 12))
                time.sleep(chance.uniform(0, 0.02))
                current[0].kill()
                up.clear()
                current[0] = services.start(database_url)
            stop.set()
            up.set()
        for each in working:
            each.result()
        caller = Caller(lambda: current[0].port, token)
        sent = [each for racer in racers for each in racer.log]
        again = [caller.send(each.key, each.path, each.body) for each in sent if _settled(each)]
        third = [caller.send(each.key, each.path, each.body) for each in again if _settled(each)]
        entries = ledger(caller)
    assert [True] * len(third) == [each.replayed for each in third]
    answered = {each.key: each for each in sent if each.status is not None and each.status < 400}
    assert [replace(answered[each.key], replayed=True) for each in again if each.key in answered] == [
        each for each in again if each.key in answered
    ]
    answers_hold(database_url, [*sent, *again, *third], entries)
    nothing_doubled(database_url, entries)
    _whole(database_url)
    open_calls = sum(each.status is None for each in sent)
    assert kills // 2 <= open_calls and kills <= len(answered), (open_calls, len(answered))


def _wait_for(racers: list[Racer], more: int) -> None:
    """Until the clients together were answered so many calls more, or a client has failed."""
    before, end = sum(len(racer.log) for racer in racers), time.monotonic() + 30
    while sum(len(racer.log) for racer in racers) < before + more:
        assert time.monotonic() < end, "the clients stand still"
        time.sleep(0.001)


def _settled(sent: Sent) -> bool:
    """Whether a repeat must find the first answer, or was never answered: problems of calls are not kept."""
    return sent.status is None or sent.status < 400


def _whole(url: str) -> None:
    """SQLite's own check finds nothing wrong in the file."""
    database = Database(url)
    if database.kind == "sqlite":
        with database.engine.connect() as connection:
            told = [
                connection.execute(text(f"PRAGMA {name}_check")).fetchall() for name in ("integrity", "foreign_key")
            ]
        assert [[("ok",)], []] == told
    database.close()


Known = dict[str, Any]
Step = tuple[str, Callable[[Known], tuple[str, Any]], int, list[str]]


def _scan(station: str, stay: str, **more: str) -> Callable[[Known], tuple[str, Any]]:
    def call(known: Known) -> tuple[str, Any]:
        spot = {name: known[of]["id"] for name, of in more.items()}
        return "/api/scans", {"station": station, "text": card_text(known[stay]["code"]), **spot}

    return call


def _lines(*stays: str) -> Callable[[Known], tuple[str, Any]]:
    lines: Callable[[Known], list[Any]] = lambda known: [{"reference": known[stay]["reference"]} for stay in stays]  # noqa: E731
    return lambda known: ("/api/orders", {"number": "-".join(stays), "lines": lines(known)})


def _line(known: Known, what: str) -> str:
    return f"/api/lines/{known['order']['lines'][0]['id']}/{what}"


def _doubt(known: Known) -> tuple[str, Any]:
    """What was said of the thing is settled; no call has answered with the doubt's name, so it is looked up."""
    shop = Shop(Database(known["database"]))
    with shop.looking() as unit:
        name = next(each.id for each in unit.find(Doubt) if each.open)
    shop.close()
    return f"/api/doubts/{name}/settle", {"how": "seen", "text": card_text(known["one"]["code"])}


DAY: list[Step] = [
    (
        "section",
        lambda known: ("/api/sections", {"code": "D", "name": "Cranks", "slots_per_bin": 3, "colour": "pink"}),
        201,
        ["section added"],
    ),
    ("slots", lambda known: ("/api/sections/D/slots", {"count": 4}), 201, ["slots added"]),
    ("one", lambda known: ("/api/stays", {"title": "Crank", "section": "D"}), 201, ["put away"]),
    ("two", lambda known: ("/api/stays", {"title": "Pedal", "code": "D003"}), 201, ["put away"]),
    ("three", lambda known: ("/api/stays", {"title": "Chain", "text": card_text("D004")}), 201, ["put away"]),
    ("order", _lines("one", "two"), 201, ["order received"]),
    ("other", _lines("three"), 201, ["order received"]),
    ("short", lambda known: (_line(known, "short"), {}), 200, ["short", "doubted"]),
    ("found", lambda known: (_line(known, "found"), {}), 200, ["found", "doubt settled"]),
    ("hold", lambda known: (_line(known, "hold"), {"why": "other colour"}), 200, ["doubted", "held"]),
    ("settle", _doubt, 200, ["doubt settled"]),
    ("round", lambda known: ("/api/rounds", {"orders": [known["order"]["id"]]}), 201, ["round opened"]),
    ("pick", _scan("bin", "one", round="round"), 200, ["scan"]),
    ("undo", lambda known: (f"/api/scans/{known['key of pick']}/undo", {}), 200, ["undone"]),
    ("pick again", _scan("bin", "one", round="round"), 200, ["scan"]),
    ("pick two", _scan("bin", "two", round="round"), 200, ["scan"]),
    ("end of round", lambda known: (f"/api/rounds/{known['round']['id']}/close", {}), 200, ["round closed"]),
    ("parcel", lambda known: ("/api/parcels", {"orders": [known["order"]["id"]]}), 201, ["parcel opened"]),
    ("wrong card", _scan("table", "three"), 200, ["scan"]),
    ("pack", _scan("table", "one"), 200, ["scan"]),
    ("aside", lambda known: (f"/api/parcels/{known['parcel']['id']}/set-aside", {}), 200, ["parcel set aside"]),
    ("resume", lambda known: ("/api/parcels", {"orders": [known["order"]["id"]]}), 201, ["parcel resumed"]),
    ("pack the last", _scan("table", "two"), 200, ["parcel closed", "scan"]),
    ("reopen", lambda known: (f"/api/parcels/{known['parcel']['id']}/reopen", {}), 200, ["parcel reopened"]),
    ("close", lambda known: (f"/api/parcels/{known['parcel']['id']}/close", {}), 200, ["parcel closed"]),
    ("tray", _scan("tray", "one"), 200, ["scan"]),
    ("cancel", lambda known: (f"/api/orders/{known['other']['id']}/cancel", {}), 200, ["cancelled"]),
    ("revive", lambda known: (f"/api/lines/{known['other']['lines'][0]['id']}/revive", {}), 200, ["revived"]),
    ("move", lambda known: (f"/api/stays/{known['three']['id']}/move", {"to": "D001"}), 200, ["moved"]),
    ("cancel again", lambda known: (f"/api/orders/{known['other']['id']}/cancel", {}), 200, ["cancelled"]),
    (
        "withdraw",
        lambda known: (f"/api/stays/{known['move']['id']}/withdraw", {"reason": "cracked"}),
        200,
        ["withdrawn"],
    ),
]
"""A day of one call of each kind: its name, the call, its status, and what it leaves in the account."""


@pytest.mark.parametrize("moment", ["inside", "before", "after"])
def test_killed_at_every_commit(database_url: str, moment: str) -> None:
    """Killed in its transaction, before its commit or after it, each kind of call is done once when it is repeated.

    The service that answers the repeat is the one that dies in the next call.
    """
    shop = Shop(Database(database_url))
    token = new_token(shop, "clerk", Role.OWNER)
    shop.close()
    known: Known = {"database": database_url}
    caller = Caller(lambda: server.port, token)
    done = moment == "after"
    with forked_services() as services:
        server = services.start(database_url, die=moment)
        for number, (name, call, status, _) in enumerate(DAY):
            path, body = call(known)
            with pytest.raises(Unanswered):
                caller.send(f"day-{number}", path, body)
            server.wait()
            caller.close()
            server = services.start(database_url, die=moment, spared=not done)
            told = [caller.send(f"day-{number}", path, body) for _ in range(2)]
            assert 2 * [(name, status)] == [(name, each.status) for each in told], told
            assert ([done, True], told[0].answer) == ([each.replayed for each in told], told[1].answer)
            known |= {name: told[0].answer, f"key of {name}": f"day-{number}"}
        entries = ledger(caller)
    kinds = ["token made", *(kind for *_, left in DAY for kind in left)]
    assert kinds == [entry["kind"] for entry in entries], json.dumps(entries[-3:])
    nothing_doubled(database_url, entries)
    _whole(database_url)
